//! What a person reads of a plan's answer.

use crate::words;

words! {
    // On top, and the figures.
    OVER = "Boxes over, of {0} {0?box|boxes} and {1} {1?cable|cables}";
    NEXT_OVER = "{0} is over by {1}: a bigger box, or a cable less.";
    COUNT_BOXES = "Boxes";
    COUNT_CABLES = "Cables";
    LENGTH = "Cable in all, to cut";
    KIND = "{0} in all, to cut";
    STAPLES = "Staples, power cables";
    TIGHTEST = "To spare in {0}";
    FILL_OF = "{0}, fill";
    DROP_OF = "Lost on circuit {0}";
    SHARE_OF = "Of its voltage";

    // Checks.
    CHECK_FILL = "{0}, fill";
    CHECK_GANGS = "{0}, gangs of devices";
    CHECK_REACHED = "{0}, cables that reach it";
    CHECK_ENDS = "{0}, cables with both ends in it";
    CHECK_APART = "{0}, signal cables with power";
    CHECK_BREAKER = "Circuit {0}, breaker on its thinnest wire";
    CHECK_CARRIES = "Circuit {0}, its thinnest wire carries";
    CHECK_LOAD = "Circuit {0}, load";
    CHECK_DROP = "Circuit {0}, voltage lost at {1}";
    CHECK_LOOP = "Circuit {0}, loops";
    CHECK_FED = "Circuit {0}, cables that no panel feeds";
    CHECK_DIFFER = "Circuit {0}, breakers besides the largest";
    CHECK_TAKEN = "Hole {0}, taken";
    CHECK_HOLE = "Hole {0}, {1} carries";
    CHECK_LENGTHS = "Cables without a length";
    CHECK_NAMED = "Power cables without a circuit";
    ASK_VOLUME = "Read its stamp and put it in.";
    ASK_REACHED = "No cable reaches it.";
    ASK_ENDS = "Both ends in one box: name the other box.";
    ASK_APART = "A barrier, or a box of their own.";
    ASK_LOOP = "It comes back on itself: {0}. What it loses isn't worked.";
    ASK_FED = "Nothing leads there from a panel.";
    ASK_DIFFER = "Its cables name several breakers. The largest counts.";
    ASK_LENGTHS = "Type their way, or both boxes' places and heights. No length here counts them.";
    ASK_NAMED = "Their breaker isn't checked.";
    ASK_DROP = "Advice, no limit: a thicker wire, or a shorter way.";
    ASK_TAKEN = "It fits tight: about half free is common, so sheaths don't burn.";
    ASK_SIZE = "Some cable's size isn't known here: lay them in.";
    TOO_SMALL = "They don't go in. Another hole, or a larger one.";

    // Parts.
    BOXES = "Boxes, the tightest first";
    BOX_ROW = "{0} {1}";
    BOX_SERVES = "{0} {1}, {2}";
    FILL_ROW = "{0} of {1} in³, {2} {2?cable|cables}: {3}";
    NO_VOLUME = "{0} taken, {1} {1?cable|cables}: volume not said";
    PANEL_ROW = "{0} {0?cable|cables}";
    WITHIN = "within";
    IS_OVER = "over";
    SCHEDULE = "Cable schedule";
    SCHEDULE_NOTE = "circuit | cable | cut to | done | feeds";
    TO = "{0} → {1}";
    TO_COIL = "{0} → coiled";
    TO_COIL_AT = "{0} → coiled at {1}";
    CELLS = "{0} | {1} | {2} | {3} | {4}";
    NO_LENGTH = "no length";
    NONE = "–";
    LABELS = "Labels to write";
    LABELS_NOTE = "On each end: box, where from or to, circuit, feeds, cable.";
    AT = "{0}";
    LABEL = "{0} {1} {2} | {3} | {4} | {5}";
    LABEL_ROLE = "{0} {1} {2} | {3} | {4} | {5} | {6}";
    COILED = "coiled";
    COILED_AT = "coiled at {0}";
    FEED_IN = "feed in";
    FEED_OUT = "feed out";
    CIRCUITS = "Circuits";
    CIRCUIT = "Circuit {0}, {1}";
    CIRCUIT_ROW = "{0} {0?cable|cables}, {1} of way";
    CIRCUIT_LOAD = "{0} {0?cable|cables}, {1} of way, feeds {2}";
    CIRCUIT_DROP = "{0} {0?cable|cables}, {1} of way, feeds {2}, loses {3} ({4}) at {5}";
    HOLES = "Holes";
    HOLE = "{0}";
    HOLE_ROW = "{0} {0?cable|cables}, {1} of power";
    HOLE_LESS = "{0} {0?cable|cables}, {1} of power: each carries {2} of its table value";
    BUYS = "What to buy";
    BUYS_NOTE = "Rolls that hold every cable whole, with the least left that was found.";
    BUY_ROW = "{0}";
    BUY_ROLLS = "{0}: {1}; {2} left";
    ROLL = "{0} × {1}";
    JOIN = "{0} + {1}";
    TESTED = "Tested dead";
    TESTED_NOTE = "A note, no safe state, and not for paper: a breaker may be on again.";
    DEAD_ROW = "Tested dead {0}: prove again before you touch it.";
    LIVE_ROW = "Tested dead {0}, power restored {1}: it is live.";
    LIVE_ONLY = "Power restored {0}: it is live.";
    WHEN_BY = "{0} by {1}";

    M_CABLE = "{0} cable with ground";
    M_SIGNAL = "{0} cable";
    M_STAPLE = "Cable staple, for the cable at hand";

    // Drawing.
    DRAWING = "Boxes at their places, from above; what is over is hatched";
    A_BOX = "A box";
    OVER_BOX = "A box that is over";
    A_CABLE = "A cable";
    TWIN = "{0}: {1} from the left, {2} from the back.";

    DEAD = "Dead, and proved dead with a meter that was tried on a live source before and after. A white wire may be hot, a box may hold two circuits, and a shared neutral shocks with one breaker off.";
    OLD = "Brittle insulation, aluminum, knob-and-tube or no ground: stop and hand over.";
    LICENSED = "A licensed electrician where the law says so, and no power before the inspection.";
    NOT_ALL = "Fill within its limit isn't all: listing, depth, cover and support count too.";
}
