//! All that a person reads of a branch once it is worked out.

use crate::words;

words! {
    FLOW_AFTER = "Air after, at the same pressure";
    FLOW_HELD = "Air after, with the system's air the same";
    FLOW_NOW = "Air now";
    OTHER_EACH = "Each other branch then";
    LOST = "Air lost, at the same pressure";
    GAINED = "Air gained, at the same pressure";
    SHARE = "Air kept, at the same pressure";
    LOSS = "Pressure it loses now";
    LOSS_AFTER = "Pressure the same air would take";
    LOSS_HELD = "Pressure after, with the system's air the same";
    RATE = "Friction rate now";
    RATE_AFTER = "Friction rate of the run after";
    VELOCITY = "Velocity now";
    VELOCITY_AFTER = "Velocity after";
    PIECE_VELOCITY = "Velocity in the new piece";
    SIZE_BACK = "Round size of the run that keeps its air";
    TRADE_SIZE = "Next whole inch";
    TIGHT = "Air after, slack cut out";
    SLACK_COST = "Air that the slack costs";
    RUN_SLACK = "Slack of the run";
    PIECE_SLACK = "Slack of the piece";

    NEXT = "Which of the two: a blower of fixed speed comes near the same pressure, one that keeps its air near the other, and works harder for it.";
    NEXT_ALONE = "At the same pressure is the largest change there can be. Say all the system's air to see the smallest.";
    NEXT_NONE = "Nothing is changed yet: say what is added.";

    STEP_VELOCITY = "{0}: velocity";
    STEP_FACTOR = "{0}: friction factor at Re {1}";
    STEP_LOSS = "{0}: loss";
    STEP_CLOSES = "All after: loss, as now";
    STEP_HELD = "At {0}, with the system's air the same: loss, as of each other";
    STEP_CORRECTION = "{0}: times so much for its slack";
    RUN_NOW = "Now";
    RUN_AFTER = "Run after";
    PIECE = "New piece";

    AMOUNT = "{0}";
    HOW_PART = "How the air runs";
    HOW = "Re {0}, {1}";
    GUESS_PART = "If the air now is a guess";
    GUESS_ROW = "{0} now";
    GUESS = "{0} after, at the same pressure";
    FITTINGS_PART = "What each fitting costs";
    FITTING = "{0} × {1}";
    COST_C = "C {0}, as {1} of this duct";
    COST_FEET = "{0} of this duct";
    SIZE_PART = "What gives the air back";
    SIZE_RUN = "The whole run, round";
    SIZE_VALUE = "{0}: take {1}";
    SIZE_NONE = "No size up to 24 in: the new piece alone loses too much";
    SIZE_SLACK = "Its slack cut out";

    DOWN = "Shut the air handler down and lock it out before you open a duct.";
    WRAP = "Old duct tape, wrap and boots can hold asbestos, old register paint lead. Leave them whole until they are tested.";
    BALANCE = "Final balance, and whether the blower's own limit (often 0.5 in wc) still holds, is the HVAC sub's. Sizing a system starts from a room-by-room load.";
    STUB = "Where a run is given up, take it off at the trunk and cap it there: a capped stub still leaks. Seal joints with listed tape or mastic.";

    DRAWING = "The branch now and after, lengths to scale";
    LABEL = "{0} {1}, {2}";
    AFTER = "After";
    DUCT = "The run";
    ADDED = "What is added to the run";
    TWIN_NOW = "Now {0} of duct gives {1}.";
    TWIN_AFTER = "After, {0} of duct gives {1} at the same pressure; {2} of it is new.";
}
