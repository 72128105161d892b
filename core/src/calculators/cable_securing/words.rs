//! All that a person reads of a run.

use crate::words;

words! {
    NAME = "Securing a cable";
    ABOUT = "How many staples a run takes, and how far apart";
    NOTHING = "";
    RUN = "Run, box to box";
    RUN_HINT = "Along the cable, up and over included.";
    SPACING = "Staples apart";
    SPACING_HINT = "The farthest you want them. The rule's most is 54 in.";
    FROM = "Starts in";
    TO = "Ends in";
    WHY_RUN = "a longer run is fed from elsewhere.";
    WHY_SPACING = "nothing holds a cable that far apart.";

    STAPLES = "Staples";
    GAP = "Evenly apart";
    FIRST = "First, from the box";
    LAST = "Last, from the box";
    CHECK_GAP = "Staples apart";
    CHECK_FIRST = "First staple";
    CHECK_LAST = "Last staple";
    BETWEEN = "Between first and last";
    STAPLE = "Cable staple, for the cable at hand";

    FLAT = "Staple flat cable flat, never on edge, and stop when it is snug: a crushed sheath can start a fire.";
    SLACK = "Newer editions also limit the cable between box and first staple to 18 in, slack included. From memory: ask.";
    DEAD = "Dead, and proved dead, before you touch old cable on the same framing.";
    LICENSED = "Running cable is a licensed electrician's work where the law says so.";

    DRAWING = "The run, with its staples, to scale";
    LABEL_FIRST = "first {0}";
    LABEL_LAST = "last {0}";
    LABEL_GAP = "{0} apart";
    TWIN = "{0} {0?staple|staples} along {1}: the first {2} from its box, the last {3} from its box.";
    TWIN_GAP = "Between them evenly {0} apart.";
    CABLE = "The cable";
    AT = "A staple";
}
