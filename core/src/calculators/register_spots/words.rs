//! All that a person reads of places for a register.

use crate::words;

words! {
    NAME = "Where to put the register";
    ABOUT = "Up to four places side by side: how far each throws, returns, alarms and glass";
    NOTHING = "";

    HIGH = "Ceiling height";
    WHY_ROOM = "that is a hall: ask a designer.";
    SPOTS = "Places";
    SPOTS_HINT = "Today's first: of two as good, the one put in first stays.";
    SPOT = "Place";
    LABEL = "Call it";
    LABEL_HINT = "So that it is known again in a week.";
    HIGH_WALL = "High on a wall";
    FLOOR = "Floor, blows up";
    ROUND = "Ceiling, all round";
    SLOT = "Ceiling slot, one way";
    PLACE = "Where";
    FROM_LEFT = "From the left, along wall 1";
    FROM_TOP = "From wall 1, into the room";
    AIM = "Blows, in the drawing";
    UP = "Up, to wall 1's side";
    DOWN = "Down, away from wall 1";
    RIGHT = "To the right";
    LEFT = "To the left";
    SIZE = "Register, in inches";
    VANES = "Vanes";
    NECK = "Neck of a ceiling one";
    WHY_NECK = "larger than that is no register of a house.";
    GAP = "Top below the ceiling, high on a wall";
    GAP_HINT = "Within 1 ft it blows along the ceiling.";
    WHY_GAP = "that is no high register.";
    CFM = "Its air";
    WHY_CFM = "no register of a house gives more.";
    GUESS = "That is a guess";
    GUESS_HINT = "A guess is off by a quarter either way.";
    SEASON = "Season that matters";
    SEASON_HINT = "Heating from above is another matter than cooling.";
    BOTH_SEASONS = "Cooling and heating";
    COOLING = "Cooling";
    HEATING = "Heating";
    COOL = "Supply against room, cooling";
    WARM = "Supply against room, heating";
    WHY_DIFFERENCE = "no house blows that.";
    RETURN = "Return";
    ALARM = "Smoke alarm";
    WINDOW = "Window";
    WINDOW_HINT = "The middle of its glass.";
    FLUE = "Appliance with an open flue";
    FLUE_HINT = "A water heater or furnace that takes its air from the room. A sealed one isn't meant.";
    THERMOSTAT = "Thermostat";
    IS_THERE = "There is one here";

    NO_SPOTS = "Put in one place at least: today's.";
    PAST_ROOM = "That is outside the room, {0} at most. Measure again.";
    IN_NOTCH = "That is outside the walls, in the part that the room doesn't have. Measure again.";
    NOT_AT_WALL = "It is {0} from the nearest wall, and hangs on one. Put in where that wall is.";
    AT_OWN_WALL = "It hangs on the wall that it blows at. Turn it round.";

    FIRST = "Best place";
    NUMBER = "{0}";
    NUMBERED = "Place {0}";
    CALLED = "Place {0}, {1}";
    THROW_OF = "Throw to 50 fpm, {0}";
    CHECK_ALARM = "Smoke alarm to the register's edge";
    CHECK_FLUE = "Return to the open flue";
    IN_STREAM = "Far enough, but in its stream: move one of the two.";
    CHECK_HEAT = "Heating from above";
    HEAT_MOVED = "Today's floor register meets the cold air that falls off the glass. From above nothing does: ask the HVAC sub how the room stays warm.";
    HEAT_ABOVE = "Warm air from above stays up there. Ask the HVAC sub.";
    ACROSS_OF = "throws {0}, blows at a wall {1} off; {2}.";
    ROUND_OF = "throws {0}, nearest wall {1} off; {2}.";
    UP_OF = "throws {0}, ceiling {1} up; {2}.";
    BEST = "{0} (best): {1}";
    OTHER = "{0}: {1}";
    TWO = "{0} {1}";
    NO_VERDICT = "An order to talk about, no verdict: the HVAC sub decides.";

    NEXT_FLUE = "Carbon monoxide kills: the return is {0} from the open flue, and the least is {1}. Before anything moves, have a licensed sub test it under worst-case depressurization.";

    ORDER = "The places, with the reason";
    ORDER_NOTE = "Alarms count most, then returns, thermostats, throw, heating, speed, glass. As good as another: the one put in first.";
    RANKED = "{0} of {1}: {2}";
    BOTH = "{0}; {1}";
    CLEAR = "nothing here speaks against it";
    BY_FLUE = "the return is too near the open flue";
    BY_ALARM = "it is within 36 in of the smoke alarm";
    BY_STREAM = "its air meets the smoke alarm";
    BY_RETURN = "the return takes its air straight back";
    BY_THERMOSTAT = "it blows at the thermostat";
    BY_THROW = "its throw fits neither rule";
    BY_HEAT = "from above it heats less well";
    BY_ASK = "its throw is a question: the rules or the range of the air disagree";
    BY_FAST = "its air leaves fast, and may be heard";
    BY_GLASS = "it leaves the window alone";

    ROW_WAY = "Way in front";
    ROW_SWEEP = "Of the floor's length it reaches";
    ROW_ALARM = "Its edge to the smoke alarm";
    ROW_RETURN = "To the return";
    ROW_GLASS = "To the window";


    ESTIMATE = "An estimate to talk with. Its maker's throw figures, local code and the HVAC sub's design go first.";
    OLD_HOLE = "Disconnect the old run at the trunk and patch its hole: a capped stub leaks.";
    SHUT_DOWN = "Shut the air handler down and lock it out before you open ducts. Attics: mind falls and heat.";
    OLD = "Old ceilings, duct tape, wrap and boots can hold asbestos, old paint lead. Have them tested before you touch them.";

    DRAWING = "Plan, and a section along the best place's jet, to scale";
    MEANS_ROOM = "Walls";
    MEANS_JET = "Throw to 50 fpm";
    MEANS_REGISTER = "A place for the register";
    MEANS_OTHER = "What is in the room";
    KEY_PLAN = "from above, wall 1 on top";
    KEY_SECTION = "section along {0}";
    R = "R";
    A = "A";
    W = "W";
    F = "F";
    T = "T";
    TWIN = "Place {0} throws {1} over a way of {2}.";
    TWIN_OTHER = "{0}: {1}.";
}
