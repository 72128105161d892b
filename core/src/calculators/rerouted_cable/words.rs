//! All that a person reads of a cable that hung in the old ceiling.

use crate::words;

words! {
    NAME = "A cable that hung in the old ceiling";
    ABOUT = "Whether it reaches the new box, and what to do where it doesn't";
    NOTHING = "";

    KNOWN = "The old cable";
    KNOWN_HINT = "From where it stays fixed: the last staple, hole or box that isn't moved.";
    BY_LENGTH = "Measured loose";
    BY_WAY = "By its old way";
    THERE = "Loose, to its end";
    THERE_HINT = "Off its staples, out of the old box, pulled straight.";
    WHY_CABLE = "measure it from nearer by.";
    OLD = "Its old way, to the old box";
    OLD_HINT = "One part after the other.";
    SLACK = "Slack that comes free";
    SLACK_HINT = "Loops and coils. Empty: none.";
    LEFT = "Free wires in the old box";
    LEFT_HINT = "From where they leave the sheath to their ends.";
    NEW = "Its new way, to the new box";
    NEW_HINT = "From the same place. Empty: the old way.";
    RAISE = "And up by";
    RAISE_HINT = "What the ceiling goes up. Empty if the new way has it.";
    LEG = "Part";
    WAY = "Which way";
    LENGTH = "Length";
    UP = "Up the wall";
    ACROSS = "Across";
    THROUGH = "Through plates";
    DOWN = "Down to the box";

    ALLOWANCE = "Allowance";
    ALLOWANCE_HINT = "For bends, sag and staples; 10 % is common. Of the way, not of the free wires.";
    WHY_ALLOWANCE = "measure its way again.";
    EXTRA = "And more, in feet";
    EXTRA_HINT = "To lower a light, or for a box nobody has placed yet.";
    EMERGES = "Sheath end to opening";
    EMERGES_HINT = "In the new box. Empty: 6 in of free wire is enough.";
    WHY_EMERGES = "no box is that deep.";
    CABLES = "Cables at this box";
    CABLES_HINT = "With the same way.";
    WHY_CABLES = "a ceiling box holds no more.";
    SPLICE = "A splice box would be";
    SPLICE_HINT = "Only if a cable is short.";
    NOT_SAID = "Not said";
    ATTIC = "In an attic with a hatch";
    COVER = "Behind a blank cover in sight";
    CLOSED = "Closed in by board";
    BACK = "Splice box, back from the old end";
    BACK_HINT = "How much of the old cable is cut off to get to where it can be reached.";

    HAVE = "Cable there";
    NEED = "Cable needed";
    RUN = "New way";
    SPARE = "To spare";
    SHORT = "Short by";
    FREE = "Free wires at the box";
    OVERAGE = "Allowance for the way";
    BOXES = "Splice boxes";
    BUY = "New cable, each, up to the inch";
    BUY_ALL = "New cable to buy";
    STAPLES = "Staples, a run";

    CHECK_REACH = "Reaches the new box";
    CHECK_CLOSED = "Splice boxes closed in";
    ASK_WHERE = "Say where the splice box would be. It has to stay within reach for good.";
    NEXT = "Short by {0}. Pull a new cable from the last box, or put a splice box where it stays in reach: {1} of new cable each.";
    NEXT_CLOSED = "Short by {0}, and no splice may be closed in: pull a new cable from the last box that can be reached.";

    M_BOX = "Splice box with blank cover";
    M_CABLE = "Cable as the old one, with ground";
    M_STAPLE = "Cable staple, for the cable at hand";

    NO_WAY = "Say its way part by part.";
    NO_NEW_WAY = "Say its new way, or its old one.";
    TOO_SHORT = "At {0} it is too short to be joined: a splice takes {1} of it. Pull a new cable, or measure again.";
    PAST_OLD = "There are only {0} of old cable: the box can't be that far back.";

    DEAD = "Dead, and proved dead, before you touch it. Tag what you take off.";
    BRITTLE = "Brittle or cloth-covered wires, or no ground: leave them. An electrician looks before anything is joined to them.";
    LICENSED = "Moving and joining cable is a licensed electrician's work where the law says so: get it ready, and have it checked before the board goes up.";
}
