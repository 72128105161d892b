//! All that a person reads of how compound dries.

use crate::words;

words! {
    NAME = "Drying of compound";
    ABOUT = "Hours to dry and what is left of them, whether to open the window, water to carry off";
    NOTHING = "";

    MUD = "Compound";
    MUD_HINT = "Setting compound hardens by its label's minutes, in any air; it is painted only when dry.";
    DRYING = "Drying-type";
    SET_20 = "Setting, labeled 20";
    SET_45 = "Setting, labeled 45";
    SET_90 = "Setting, labeled 90";
    SET_210 = "Setting, labeled 210";
    AGAIN_AFTER = "Coat it again, once hard, after about";
    WORKS_LEAST = "Works, at least";
    WORKS_MOST = "Works, at most";
    TEMPERATURE = "Temperature";
    HUMIDITY = "Relative humidity";
    HUMIDITY_HINT = "Where it dries: wet mud makes a shut room wetter than the house.";
    WHY_WARM = "past what the table and the formula hold for.";
    WHY_WET = "above that it will not dry.";
    WHY_ALL = "air holds no more.";
    THICK = "Coat, wet";
    THICK_HINT = "The thickest part. 1/16 in is taken for the table's.";
    WHY_THICK = "fill that with setting compound.";
    SPELLS = "Since it went on";
    SPELLS_HINT = "Warm and cool spells, one by one; from now on as above. None: it is fresh.";
    SPELL = "Spell";
    HOURS = "Hours";
    WHY_HOURS = "that is a season.";
    OUTDOORS = "Compare with outdoors";
    OUT_TEMPERATURE = "Outdoors";
    OUT_HUMIDITY = "Humidity outdoors";
    GALLONS = "Compound put on, this coat";
    GALLONS_HINT = "Ready-mixed: one coat of the skim, without what the pail keeps. Blank: no water told.";
    WHY_GALLONS = "that is a house; work it in parts.";
    ROOM = "Air in the room";
    ROOM_HINT = "From the room. Blank: no air changes told.";
    WHY_ROOM = "that is no room.";
    WAY = "The water gets out";
    SHUT = "Shut room, dehumidifier or heat";
    WINDOWS = "Open windows";
    FAN = "A fan blows out";
    FLUE = "Appliance with an open flue on the same air";
    FLUE_HINT = "Water heater, furnace, stove or fireplace that draws its air from the house.";
    NOT_SAID = "Not said";
    NO_FLUE = "None, looked for";
    A_FLUE = "There is one";

    TO_DRY = "Hours to dry, from wet";
    TO_DRY_AT = "Hours to dry {0}, {1} and {2}";
    AT_LEAST = "At least";
    AT_MOST = "At most";
    IN_TABLE = "In the table, for 1/16 in";
    DONE = "Dried so far";
    LEFT = "Hours left, as it is now";
    DEW = "Dew point of the room";
    OUT_DEW = "Dew point outdoors";
    LET_IN = "Outdoor air, let in and warmed";
    WITH_OUT = "Hours to dry in that air";
    WATER = "Water to dry out";
    PINTS = "As pints";
    A_DAY = "For a dehumidifier to take, this coat";
    AIR = "Outdoor air that carries it";
    CHANGES = "Air changes for it";
    HEAT = "Heat to warm that air";

    SATURATED = "Vapor, saturated";
    SPELL_DONE = "Spell {0}, of all";
    SPELL_NUMBER = "Spell {0}";
    SPELL_TAKES = "{0} of {1}";
    SPELL_NONE = "too wet, nothing dries";
    RATE = "Water an hour";
    INSIDE_HOLDS = "Vapor in the room's air";
    OUTSIDE_HOLDS = "Vapor in outdoor air, warmed";

    CHECK_WARM = "Temperature";
    WARM_IT = "Warm it: makers ask for 50 °F, or 55, from 48 h before until it is dry.";
    CHECK_FLUE = "Open flues where a fan pulls";
    ASK_FLUE = "Look first: a fan can pull flue gas, with carbon monoxide, into the house.";
    STOP_FLUE = "Stop: the fan can pull flue gas, with carbon monoxide, into the house.";

    TABLE = "The table, hours under tape";
    TABLE_NOTE = "At {0}, {1}, {2}, {3}, {4}, {5} and {6}. From memory.";
    NEAREST = "{0}, the nearest";
    TABLE_ROW = "{0}, {1}, {2}, {3}, {4}, {5}, {6}";
    JUST = "{0}";
    SO_FAR = "Spells so far";
    CLOCKS = "Setting compound, by its clock";
    CLOCKS_NOTE = "Humidity hardly matters, but it wants 45 °F. Coat it again once hard; paint it only when dry, by the hours above.";
    CLOCK = "Labeled {0}";
    CLOCK_VALUE = "works {0} to {1} min, coated again after about {2}";

    NEXT_FRESH = "Don't judge it by the eye alone: the thick places dry last.";
    NEXT_LEFT = "{0} dried, {1} to go as it is now.";
    NEXT_DRY = "By the reckoning it is dry. Look at the thick places before the next coat.";
    NEXT_BOTH = "{0} {1}";
    NEXT_OPEN = "Open the window: outdoor air, warmed, is drier.";
    NEXT_HEAT = "Heat the room first; a window makes it colder.";
    NEXT_SAME = "The window makes no odds here: leave it shut, and take a dehumidifier or heat.";
    NEXT_KEEP = "Keep the window shut: outdoor air brings as much water or more.";

    FREEZING = "It freezes outdoors: keep that draft off wet compound, and the room warm while it is open.";
    HEATER = "No fuel heater without a vent: it adds water, and carbon monoxide that kills. No grill, no generator inside.";
    DETECTOR = "A carbon monoxide alarm that works, on any job with heat, in a house where people sleep.";
    SLOW = "Warm it slowly and evenly: a hot blast cracks joints and dries the skin only.";
    RATED = "A dehumidifier's rating is for warm, damp air; in a cool or dry room it takes far less.";
}
