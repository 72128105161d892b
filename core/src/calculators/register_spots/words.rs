//! All that a person reads of places for a register.

use crate::words;

words! {
    NAME = "Where to put the register";
    ABOUT = "Up to four places side by side: throw, what it sweeps, returns, alarms and glass";
    NOTHING = "";

    LONG = "Along wall 1";
    LONG_HINT = "Stand inside. Wall 1 is along the top of the drawing; 2, 3 and 4 follow clockwise.";
    WIDE = "Across from wall 1";
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
    FROM_4 = "From wall 4, along wall 1";
    FROM_1 = "From wall 1, into the room";
    AIM = "Blows toward";
    W1 = "Wall 1";
    W2 = "Wall 2";
    W3 = "Wall 3";
    W4 = "Wall 4";
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
    COOL = "Supply against room, cooling";
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
    NOT_AT_WALL = "It is {0} from the nearest wall, and hangs on one. Put 0 from wall 4 or 1, or all the way across.";

    FIRST = "First: {0}. Throw to 50 fpm";
    NUMBERED = "{0}";
    CALLED = "{0}, {1}";
    CHECK_ALARM = "Smoke alarm to the register's edge";
    CHECK_FLUE = "Return to the open flue";
    IN_STREAM = "Far enough, but in its stream: move one of the two.";
    BEST = "{0}: {1}. An order to talk about, no verdict: the HVAC sub decides.";

    NEXT_FLUE = "Carbon monoxide kills: the return is {0} from the open flue, and the least is {1}. Before anything moves, have a licensed sub test it under worst-case depressurization.";

    ORDER = "In order, with the reason";
    ORDER_NOTE = "Alarms count most, then returns, thermostats, throw, speed, glass. As good as another: the one put in first.";
    BOTH = "{0}; {1}";
    CLEAR = "nothing here speaks against it";
    BY_FLUE = "the return is too near the open flue";
    BY_ALARM = "it is within 36 in of the smoke alarm";
    BY_STREAM = "its air meets the smoke alarm";
    BY_RETURN = "the return takes its air straight back";
    BY_THERMOSTAT = "it blows at the thermostat";
    BY_THROW = "its throw fits neither rule";
    BY_ASK = "its throw is a question: the rules or the range of the air disagree";
    BY_FAST = "its air leaves fast, and may be heard";
    BY_GLASS = "it leaves the window alone";

    ROW_REGISTER = "Register";
    ROW_AIR = "Air";
    ROW_THROW = "Throw to 50 fpm";
    ROW_WAY = "Way in front";
    ROW_FIT = "Throw for the way";
    ROW_SWEEP = "Sweeps of the floor's length";
    ROW_DROP = "Cold drop at its throw to {0}";
    ROW_SOUND = "Sound, at the opening";
    ROW_ALARM = "Its edge to the smoke alarm";
    ROW_RETURN = "To the return";
    ROW_GLASS = "To the window";
    ONE = "{0}";
    RANGE = "{0}, from {1} to {2}";
    BAND = "{0} to {1}";
    RANGE_LOW = "{0}, from none to {1}";
    SIZED = "{0}, {1}";
    NECKED = "{0}, neck {1}";

    ASK = "Questions for the HVAC sub";
    ASK_FLUE = "Open flue";
    ASK_FLUE_2 = "Does it still draw under worst-case depressurization, every fan on and doors shut? May the return stay where it is?";
    ASK_LOAD = "Load";
    ASK_LOAD_2 = "What does this room lose and take in, by a room-by-room calculation?";
    ASK_PRESSURE = "Static pressure";
    ASK_PRESSURE_2 = "Does the blower stay within its label with the new branch?";
    ASK_DUCT = "Duct";
    ASK_DUCT_2 = "What size, how long, and how is it hung, sealed and insulated?";
    ASK_DAMPER = "Balancing damper";
    ASK_DAMPER_2 = "Back at the take-off, and where is it reached once the board is up?";
    ASK_RETURN = "Way back";
    ASK_RETURN_2 = "How does the air get out with the door shut?";

    ESTIMATE = "An estimate to talk with. Its maker's throw figures, local code and the HVAC sub's design go first.";
    OLD_HOLE = "Disconnect the old run at the trunk and patch its hole: a capped stub leaks.";
    SHUT_DOWN = "Shut the air handler down and lock it out before you open ducts. Attics: mind falls and heat.";
    OLD = "Old ceilings, duct tape, wrap and boots can hold asbestos, old paint lead. Have them tested before you touch them.";

    DRAWING = "Plan, and a section along the first place's jet, to scale";
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
