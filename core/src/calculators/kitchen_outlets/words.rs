//! All that a person reads of receptacles at counters.

use crate::words;

words! {
    NAME = "Receptacles at counters and islands";
    ABOUT = "How many a kitchen's counters need, where along them, and islands by edition";
    NOTHING = "";

    RUNS = "Wall counters, in order along the wall";
    RUNS_HINT = "Each piece up to a sink, a range, a refrigerator or the end.";
    RUN = "Counter";
    CALL = "Call it";
    LONG = "How long, at the wall";
    END = "Then comes";
    STOP = "Its end, a door or a wall";
    COLD = "A refrigerator";
    SINK = "A sink, range or cooktop";
    CORNER = "One of those, in a corner";
    ACROSS = "How wide that is";
    BEHIND = "Counter behind it";
    ISLANDS = "Islands and peninsulas";
    ISLAND = "Island";
    PENINSULA = "Peninsula";
    KIND = "What it is";
    SIDE = "Longer side";
    OTHER = "Shorter side";
    SIDE_HINT = "A peninsula from where it leaves the wall.";
    HEIGHT = "Receptacles over the counter";
    HEIGHT_HINT = "From the counter's top to their middle.";
    HAVE = "Receptacles at the counters now";
    WHY = "no kitchen of a house takes that.";
    NO_COUNTER = "Put in one counter or island at least.";

    NEEDED = "Receptacles at the counters, at least";
    AT_WALLS = "At wall counters";
    AT_ISLANDS = "On islands and peninsulas";
    CHECK_HAVE = "Receptacles at the counters";
    CHECK_HIGH = "Over the counter";
    NEXT_WALLS = "Even along each space: half a share from its ends, then a share apart. More is easier to live with.";
    NEXT_2020 = "On a peninsula one of them is within 2 ft of its outer end.";
    NEXT_LATER = "An island needs none now, but provision for one later: a cable or a raceway left for it. Ask how.";
    BOTH = "{0} {1}";

    BY_EDITION = "Islands and peninsulas, by edition";
    SPACES = "Each counter";
    SPACE = "Wall counter {0}, {1}";
    SHORT = "under 12 in, none";
    ONE = "one, {0} from either end";
    EVENLY = "{0}: {1} from the ends, then {2} apart";
    ISLAND_OF = "{0} {1}";
    COUNT = "{0}";
    STEP = "Wall counter {0}";
    STEP_ISLAND = "{0} {1}: area past 9 sq ft, by 18";

    GFCI = "All of them GFCI, tamper-resistant, and on two 20 A circuits or more that feed nothing else: from memory, ask.";
    BELOW = "None under the counter's overhang without asking: cords that hang there have scalded children.";
    DEAD = "Dead, and proved dead, before a box or a cable in the wall is touched.";
    LICENSED = "Where the law says so, a licensed electrician adds receptacles; local amendments go first, and islands differ most.";

    DRAWING = "Each wall counter with its receptacles, to scale";
    MEANS_COUNTER = "A counter";
    MEANS_PLACE = "A receptacle";
    TWIN = "Wall counter {0}, {1} long: {2}.";
}
