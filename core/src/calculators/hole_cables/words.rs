//! All that a person reads of cables in a hole.

use crate::words;

words! {
    NAME = "Cables through a hole";
    ABOUT = "Whether cables fit one hole, the smallest bit for them, and whether sealing it or bundling them asks for smaller breakers";
    NOTHING = "";
    CABLES = "Cables in the hole";
    CABLE = "Cable";
    COUNT = "How many";
    WIDE = "Measured width";
    WIDE_HINT = "No published size was read for it.";
    THICK = "Measured thickness";
    BREAKER = "Breaker";
    BY_SIZE = "Usual for its wire";
    B15 = "15 A";
    B20 = "20 A";
    B25 = "25 A";
    B30 = "30 A";
    B35 = "35 A";
    B40 = "40 A";
    B45 = "45 A";
    B50 = "50 A";
    B60 = "60 A";
    HOLE = "Hole, across";
    ROUND = "The hole round them";
    ROUND_HINT = "Foam, caulk and insulation seal it. Through a plate it mostly is.";
    SEALED = "Sealed";
    OPEN = "Open";
    BUNDLED = "Together without gaps for over 24 in";
    WARMTH = "Warmest it gets there";
    WARMTH_HINT = "An attic in summer: look it up or measure it.";
    WHY_COUNT = "more than that takes another hole.";
    WHY_WIDE = "no cable here is that large.";
    WHY_HOLE = "wider holes are an engineer's.";

    TAKEN = "Of the hole, taken";
    WIDEST = "Hole, for the widest cable";
    SMALLEST = "Smallest bit that leaves half free";
    AREA_CABLES = "Cables, outside";
    AREA_HOLE = "The hole";
    CARRYING = "Conductors that carry";
    TOGETHER = "They carry, being together";
    WARM = "They carry, being warm";
    CARRIES = "{0} carries";
    BREAKER_OF = "{0}, its breaker";
    ASK_HALF = "Common practice, no rule: a fuller hole burns sheaths when you pull.";
    TOO_SMALL = "They don't go in.";
    NEXT_APART = "Two cables to a sealed hole need no adjustment. Drill another.";
    NEXT_SMALLEST = "Smallest bit for them: {0}.";

    OLD = "This is for today's cable. Old wire is good for 60 °C, and brittle near ceiling boxes: stop and call the electrician.";
    PULL = "Dead, and proved dead, before you touch any cable already there.";
    LICENSED = "Running cable and choosing breakers is a licensed electrician's work where the law says so.";
}
