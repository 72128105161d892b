//! All that a person reads of a register whose ceiling goes up.

use crate::words;

words! {
    NAME = "The same register, after the ceiling goes up";
    ABOUT = "Throw, drop, heat and air changes, now and to be, of a high wall register that stays";
    NOTHING = "";

    SIZE = "Register, in inches";
    VANES = "Vanes";
    CFM = "Its air";
    WHY_CFM = "no register of a house gives more.";
    GUESS = "That is a guess";
    GUESS_HINT = "A guess is off by a quarter either way.";
    NOW = "Ceiling height now";
    TO_BE = "Ceiling height to be";
    WHY_HEIGHT = "no ceiling of a room hangs there.";
    GAP = "Its top, below the ceiling now";
    GAP_HINT = "Within 1 ft it blows along the ceiling.";
    WHY_GAP = "that is no high register.";
    WAY = "To the facing wall";
    WHY_WAY = "that is a hall: ask a designer.";
    FLOOR = "Floor area";
    WHY_FLOOR = "that is more than a room.";
    RUN = "Outside walls that grow, end to end";
    WHY_RUN = "that is more than a room.";
    WALL = "Those walls";
    OUTSIDE = "Room against outdoors";
    OUTSIDE_HINT = "Room less the coldest design day.";
    WHY_OUTSIDE = "no winter is that cold.";
    LEAKS = "Air changes by leaks";
    LEAKS_HINT = "0.3 tight, 0.5 middling, 1 and more leaky. Common practice.";
    WHY_LEAKS = "that is a porch.";
    COOL = "Supply against room, cooling";
    WARM = "Supply against room, heating";
    WHY_DIFFERENCE = "no house blows that.";
    NOT_UP = "This is for a ceiling that goes up. Now it is {0}.";
    TOO_LOW = "Below that ceiling, {0} up, there is no such place.";

    THROW_TO_BE = "Throw to 50 fpm, to be";
    THROW_LEAST = "The same, at the least air";
    THROW_MOST = "The same, at the most air";
    THROW_NOW = "Throw to 50 fpm, now";
    DROP_LEAST = "Cold drop to be, least";
    DROP_MOST = "Cold drop to be, most";
    MORE_AIR = "More air in the room";
    WALL_HEAT = "More heat lost through walls";
    LEAK_HEAT = "More heat lost by leaks";
    HEAT = "More heat lost in all";
    CHANGES_NOW = "Air changes now";
    CHANGES_TO_BE = "Air changes to be";
    EXTRA = "More air for that heat";
    LEAVES_CEILING = "It lets go of the ceiling: 0.707 of the throw that it had, and cold air falls.";
    AND = "{0} {1}";
    STAYS_ON = "It still blows along the ceiling: its throw stays.";
    WAS_FREE = "It was free of the ceiling before: its throw stays.";
    GAP_TO_BE = "Its top, below the ceiling to be";

    BOTH = "Now and to be";
    BOTH_NOTE = "Warm air pools higher: heat from a high register gets worse, and floor and ceiling differ more. Common practice.";
    ROW_THROW = "Throw to 50 fpm";
    ROW_GAP = "Top below the ceiling";
    ROW_VOLUME = "Air in the room";
    ROW_CHANGES = "Air changes";
    NOW_TO_BE = "{0} now, {1} to be";

    ESTIMATE = "An estimate for planning. Its maker's throw figures and the HVAC sub's load calculation go first.";
    TIES = "What ties the walls or carries what is above may not be cut. How a ceiling may go up is a licensed engineer's to say.";
    OLD = "Old ceilings, duct tape, wrap and boots can hold asbestos. Have them tested before you touch them.";

    DRAWING = "The register in section, to scale, now and to be";
    OLD_CEILING = "Ceiling now";
    ROOM = "Room";
    JET_NOW = "Throw now";
    JET_TO_BE = "Throw to be, with its drop";
    LABEL_NOW = "now: {0}, dashed";
    LABEL_TO_BE = "to be: {0}, toned";
    TWIN = "The ceiling goes from {0} to {1}. The register throws {2} now, {3} to be.";
}
