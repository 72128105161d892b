//! All that a person reads of the heat that a raised ceiling adds.

use crate::words;

words! {
    NAME = "Heat of a raised ceiling";
    ABOUT = "What more heat and air the room asks for, and how deep to insulate";
    NOTHING = "";

    WALL = "Raised wall";
    WALL_HINT = "Only what is new: take it whole from the raised ceiling.";
    WHY_AREA = "larger than that, work it in parts.";
    BEHIND = "Behind it";
    OUTSIDE = "Outside";
    ATTIC = "An attic";
    HEATED = "A heated room";
    INSIDE = "Of it, beside heated rooms";
    INSIDE_HINT = "Partitions take nothing: it comes off. Empty: none.";
    HOLDS = "What the wall holds back";
    HOLDS_HINT = "What is behind it, and its R or U.";
    BY = "Told by its";
    BY_R = "R";
    BY_U = "U, of the whole wall";
    R = "Its R";
    R_HINT = "Studs let more through: the whole wall has less than its insulation.";
    WHY_R = "no wall or ceiling has that.";
    U = "Its U";
    WHY_U = "a single window has less.";
    AIR = "Air added";
    AIR_HINT = "Take it from the raised ceiling.";
    CHANGES = "Air changes an hour";
    CHANGES_HINT = "Of the house; half is common, a drafty one has more.";
    WHY_CHANGES = "no house is that drafty.";
    HEATING = "Inside over outside, in winter";
    HEATING_HINT = "The design difference: ask who sized the furnace.";
    COOLING = "Outside over inside, in summer";
    COOLING_HINT = "Empty: summer is left out.";
    WHY_DEGREES = "no climate asks for that.";
    SUPPLY_HEAT = "Register over room, heating";
    SUPPLY_HEAT_HINT = "How much warmer its air is. Empty: no air is told.";
    SUPPLY_COOL = "Register under room, cooling";
    SUPPLY_COOL_HINT = "Often about 20 °F.";

    CEILING = "The ceiling itself";
    CEILING_HINT = "Insulation that changes, or an area that does.";
    COUNT = "Count it too";
    OLD_AREA = "Area now";
    OLD_R = "R now";
    OLD_R_HINT = "Bare board under an attic is about R 2.";
    NEW_AREA = "Area to be";
    NEW_R = "R to be";
    ZONE = "Climate zone";
    ZONE_HINT = "From the building department.";

    FILL = "Blown insulation";
    FILL_HINT = "How deep, and whether the board bears it.";
    KIND = "What";
    WANTED = "R wanted";
    PER_INCH = "R an inch";
    PER_INCH_HINT = "From the bag. Empty: the low end of its kind.";
    WHY_PER_INCH = "nothing blown has that.";
    DENSITY = "Weight, settled";
    DENSITY_HINT = "From the bag. Empty: the high end of its kind.";
    WHY_DENSITY = "nothing blown is that heavy.";
    BOARD = "Ceiling board";

    HEAT = "More heat, in winter";
    HEAT_LESS = "Less heat, in winter";
    HEAT_WALL = "Through the wall, in winter";
    HEAT_AIR = "With the air, in winter";
    HEAT_CEILING = "Through the ceiling, more or less, in winter";
    HEAT_CFM = "Warm air for it";
    COOL = "More heat, in summer";
    COOL_LESS = "Less heat, in summer";
    COOL_WALL = "Through the wall, in summer";
    COOL_AIR = "With the air, in summer";
    COOL_CEILING = "Through the ceiling, more or less, in summer";
    COOL_CFM = "Cool air for it";
    DEPTH = "Insulation, deep";
    WEIGHT = "Its weight on the board";

    CHECK_R = "Ceiling R to be";
    CHECK_SAG = "Insulation on the board";
    ASK_R = "New ceilings need more under some edition: see below. An old one is filled as deep as its cavity, and more where local code asks.";

    BY_EDITION = "Asked of a new house here";
    BY_EDITION_NOTE = "Which edition your town holds to, and what it asks of an old house, the building department says.";
    CEILING_IN = "Ceiling, IRC {0}";
    WALL_IN = "Wood wall, IRC {0}";
    FROM_MEMORY = "{0}, from memory: ask";
    JUST = "{0}";

    MORE_INSIDE = "It has to be no more than the raised wall: {0}.";
    NEEDED = "Needed, unless a heated room is behind the wall.";

    M_FILL = "Blown insulation, {0} deep, settled";

    DEFER = "This sizes nothing. Furnace, ducts and registers go by a load calculation of the whole house, by somebody who does them.";
    SUN = "Sun on a wall, a hot attic and moisture are not in it: in summer it is the least.";
    TEST = "Old loose fill may be vermiculite with asbestos: leave it until it is tested.";
    CLEAR = "Keep insulation off lights and flues that aren't made for it, and keep 1 in of air under the roof.";
    LOCAL = "Local code and the building department decide.";
}
