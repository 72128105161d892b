//! All that a person reads of branches once they are worked out.

use crate::words;

words! {
    UNNAMED = "Branch {0}";
    NAMED = "{0} {1}";
    PLAIN_TRUNK = "Trunk {0}";
    FLOW = "{0}: air";
    OPEN_FLOW = "{0}: air, all open";
    PRESSURE = "Pressure at the start";
    OPEN_PRESSURE = "Pressure, all open";
    TOTAL = "Air in all";
    OPEN_TOTAL = "Air in all, all open";

    CHECK_VELOCITY = "{0}: velocity";

    NEXT_TOTAL = "{0} loses {1}; the others get it, and the blower works against {2}. A blower of fixed speed comes near the other end, below.";
    NEXT_PRESSURE = "{0} loses {1}; the others keep theirs or gain a little.";
    NEXT_ALONE = "{0} gets the least. Say how much of a boot is open to see who gets its air.";
    BLIND = "Trunk {0} ends blind: nothing leaves it, so it is left out.";

    STEP_BLOCKED = "{0}: what its opening costs, in velocity pressures";
    STEP_LOSS = "{0}: loss at {1}";
    STEP_WAY = "Way to {0}: all it loses";
    STEP_TOTAL = "All branches";
    STEP_LEFT = "Check: how far off the pressures still are";

    PART = "Who gets what";
    ROW = "{0}, Re {1}, {2}";
    ROW_OPEN = "{0}; all open {1}; Re {2}, {3}";
    OTHER_PRESSURE = "If the pressure stays instead";
    OTHER_TOTAL = "If the system's air stays instead";
    OTHER_FLOW = "{0}: air, at the other end";
    AMOUNT = "{0}";
    AGAIN_PART = "Look again";
    AGAIN = "{0}.";

    DOWN = "Shut the air handler down and lock it out before you open a duct.";
    OLD = "Old tape, wrap and boots can hold asbestos, old registers lead paint. Leave them whole until they are tested.";
    DAMPER = "Never shut registers to steer air for long: pressure, noise and leaks rise, and a coil can freeze. Balance with dampers at the take-offs that stay within reach.";
    LICENSED = "Final balance is the HVAC sub's. This takes duct as tight and all rooms at one pressure.";

    DRAWING = "Each way from the air handler, lengths to scale";
    LABEL = "{0}: {1}";
    TRUNK_INK = "Trunk";
    BRANCH_INK = "Branch";
    BLOCKED_INK = "Its boot or grille is partly shut";
    TWIN = "{0}: {1} of duct from the air handler, {2}.";
}
