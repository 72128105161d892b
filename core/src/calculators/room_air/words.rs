//! All that a person reads of a room's air.

use crate::words;

words! {
    NAME = "Air for a room";
    ABOUT = "What its heat asks for in cfm, its share of the system, how often it changes";
    NOTHING = "";

    BY = "Its heat";
    BY_HINT = "The load of the room from a load calculation is the one to go by.";
    KNOWN = "Known, from a load calculation";
    ROUGH = "Rough, heating only";
    LOAD = "Sensible load of the room";
    LOAD_HINT = "Heat alone, without what dries the air.";
    WHY_LOAD = "that is a house.";
    DIFFERENCE = "Supply against room";
    DIFFERENCE_HINT = "Cooling: some 15 to 20 °F. Heating: 30 to 60.";
    WARM = "Supply against room, heating";
    WARM_HINT = "Usual 30 to 60 °F: a heat pump's is small, a furnace's large.";
    CHECK_WARM = "Supply against room, heating";
    ASK_WARM = "Outside what houses heat with, 30 to 60 °F. Measure it at the register, or ask the HVAC sub.";
    WHY_DIFFERENCE = "no house blows that.";
    ALTITUDE = "Above the sea";
    WHY_ALTITUDE = "nobody builds there.";
    FLOOR = "Floor area";
    WHY_FLOOR = "that is more than a room.";
    HEIGHT = "Ceiling height";
    WHY_HEIGHT = "no ceiling of a room hangs there.";
    OUTSIDE = "Room against outdoors";
    OUTSIDE_HINT = "Room less the coldest design day, from the building department.";
    WHY_OUTSIDE = "no winter is that cold.";
    RUN = "Outside walls, end to end";
    WHY_RUN = "that is more than a room.";
    WALL = "Outside wall";
    GLASS_AREA = "Windows";
    GLASS = "Glass";
    ATTIC = "R over the ceiling";
    ATTIC_HINT = "Blank: heated rooms above.";
    WHY_ATTIC = "no attic has that.";
    LEAKS = "Air changes by leaks";
    LEAKS_HINT = "0.3 tight, 0.5 middling, 1 and more leaky. Common practice.";
    WHY_LEAKS = "that is a porch.";
    SYSTEM = "Air of the system";
    SYSTEM_HINT = "From its label or the HVAC sub. Blank: its share isn't worked.";
    WHY_SYSTEM = "that is more than a house.";
    HOUSE = "Sensible load of the house";
    HOUSE_HINT = "By the same reckoning as the room's.";
    TOO_MUCH_GLASS = "Windows take {0}, and the outside walls are {1}. Measure again.";
    MORE_THAN_HOUSE = "The room has {0}, more than the house. Look at both.";

    AIR = "Air it needs";
    HEAT = "Its heat";
    CARRIES = "What 1 cfm carries";
    DENSITY = "Air, against sea level";
    VOLUME = "Air in the room";
    VOLUME_HINT = "Blank: floor times height. Under a slope, take it from the room.";
    CHANGES_SAID = "Changes of the room's air: {0}. {1}";
    CHANGES = "Air changes";
    A_FOOT = "cfm for each sq ft";
    SHARE = "Its share of the house";
    GIVEN = "Its share of the system's air";
    WALLS_LOSE = "Lost through walls";
    GLASS_LOSES = "Lost through glass";
    CEILING_LOSES = "Lost through the ceiling";
    LEAKS_LOSE = "Lost by leaks";
    CHECK_GIVEN = "Its share of the system, for what it needs";
    ASK_GIVEN = "Balancing may not give it this. Ask the HVAC sub.";
    CHECK_FOOT = "cfm for each sq ft, by plain sense";
    ASK_FOOT = "Outside what houses take, 0.3 to 1 cfm a sq ft. Look at the load and the difference again.";
    NEXT_ROUGH = "Rough, for heating: no sun, people or floor, so never for cooling. A load calculation (Manual J) goes first.";
    NEXT = "A load calculation, room by room (Manual J), and duct design (Manual D) go first.";

    NO_SIZING = "Never size equipment or ducts by this. That is a load calculation's and the HVAC sub's.";
    STARVE = "Air that comes in has to get out: a shut door can starve a room whose register is right.";
    FLUE = "More supply or a changed return can pull flue gas back down an open flue. Have the sub test that.";
}
