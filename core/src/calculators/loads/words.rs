//! All that a person reads of loads.

use crate::words;

words! {
    NAME = "Loads, for the engineer";
    ABOUT = "What a beam or a bearing wall is asked to carry. It sizes nothing";
    NOTHING = "";

    // What is asked.
    LEFT = "Joist span on one side";
    LEFT_HINT = "Support to support. Empty: none.";
    RIGHT = "Joist span on the other side";
    WHY_SPAN = "no joist of a house spans that far.";
    THROUGH = "Joists run through over it";
    THROUGH_HINT = "One piece over both spans, not lapped or butted there.";
    DEAD = "Dead load on the joists";
    DEAD_HINT = "What stays: joists, floor, ceiling, insulation.";
    LIVE = "Live load on the joists";
    LIVE_HINT = "What comes and goes: people, furniture, storage.";
    WHY_LOAD = "no house is built for that.";
    ROOF = "A roof bears here too";
    ROOF_WIDE = "Roof carried here, level width";
    ROOF_WIDE_HINT = "Half of each rafter span that ends here.";
    ROOF_DEAD = "Roof, dead, on the flat";
    ROOF_DEAD_HINT = "What it weighs on its slope is more on the flat.";
    ROOF_LIVE = "Roof live or snow, on the flat";
    ROOF_LIVE_HINT = "Whichever is more; snow from the building department.";
    WALL = "Wall or other weight on its line";
    WALL_HINT = "Of a foot. A 2x4 wall with board both sides, 8 ft high: about 48.";
    BEAM = "Beam's own weight";
    BEAM_HINT = "Of a foot. The engineer's choice; 15 is a start.";
    WHY_LINE = "no line in a house carries that.";
    SPAN = "Beam span";
    SPAN_HINT = "Middle of bearing to middle of bearing.";
    WHY_BEAM = "no beam of a house spans that far.";
    POINT = "A point load on it too";
    POST = "Point load";
    POINT_LOAD = "How much";
    WHY_POINT = "no post in a house carries that.";
    POINT_AT = "From the left end";
    POINT_KIND = "It is";
    KIND_DEAD = "Dead";
    KIND_LIVE = "Live";
    KIND_ROOF = "Roof live or snow";
    RESTS = "Bearing of an end";
    RESTS_HINT = "Only if it is asked.";
    ON = "The heavier end bears on";
    ON_HINT = "The weaker of beam and plate counts.";
    WIDE = "Bearing, across the beam";
    WIDE_HINT = "What really touches: the narrower of beam and plate, or a post's foot.";
    LONG = "Bearing, along the beam";
    WHY_BEARING = "no bearing in a house is that long.";
    SHORING = "Shoring while it is open";
    SHORE_DEAD = "Hanging on the joists then";
    SHORE_DEAD_HINT = "Plaster stays on until it is stripped: count it.";
    WORK = "People and stacks on them";
    WORK_HINT = "20 is common.";
    POSTS = "Shoring posts apart";
    WHY_POSTS = "nothing holds between posts so far apart.";

    // What can't be taken.
    ONE_SIDE = "Joists that run through have a span on both sides. Put in both.";
    NO_LOAD = "Nothing bears here yet. Put in a span, a roof, a weight or a point.";
    SHORE_WHAT = "Shoring holds joists up: put in the span of those that it holds.";
    POINT_NEEDED = "A point load needs its pounds.";
    PAST_END = "The beam is {0} long. It has to be less.";
    TOO_MUCH = "These numbers are past what is held. Look again.";

    // What comes out.
    LINE = "Line load, for the engineer";
    TRIBUTARY = "Tributary width";
    FACTOR = "Joists run through, times";
    WIDTH = "Tributary width, joists run through";
    DEAD_LINE = "Dead, D";
    LIVE_LINE = "Live, L";
    ROOF_LINE = "Roof live or snow, R";
    REACTION_LEFT = "Reaction, left end, for the engineer";
    REACTION_RIGHT = "Reaction, right end, for the engineer";
    LINE_OF = "Line load, {0}";
    LEFT_OF = "Reaction, left end, {0}";
    RIGHT_OF = "Reaction, right end, {0}";
    SHORE_LEFT = "Shoring, one side";
    SHORE_RIGHT = "Shoring, other side";
    POST_LEFT = "One shoring post, one side";
    POST_RIGHT = "One shoring post, other side";
    STRESS = "Bearing stress, across the grain";
    PUBLISHED = "Published for {0}";
    LENGTH = "Along the beam, by that value";
    LEAST = "Code's least";

    CHECK_SIZED = "Beams, posts, footings: for the engineer to size";
    ASK_SIZED = "None is sized here: these are the loads to bring.";
    CHECK_THROUGH = "Joists running through";
    ASK_THROUGH = "How they share is the engineer's to say; a cut over the support changes it, and a short end may lift.";

    SUMS = "Added up, for the engineer";
    SUM = "{0}, ends {1} and {2}";
    SUM_EVEN = "{0}, each end {1}";
    BEARING = "Bearing, for the engineer";
    BEARING_NOTE = "Side by side, and no verdict. It sizes no post: buckling, nails, and the path down to a footing are checks of their own.";
    SHORE_PART = "Shoring, for the engineer";
    SHORE_NOTE = "Both sides, carried down to ground or to what holds it, never on bare subfloor over air.";
    SHORE_LEFT_OUT = "Not in it";
    SHORE_LEFT_OUT_IS = "roof, weight and point on the same line";
    ROW = "{0}";

    FIRST = "Moving joists or ties, removing a bearing wall, sizing a beam, post or footing is a licensed engineer's work. These are loads to talk about, no sizes.";
    SHORE_FIRST = "Shore before you cut, on both sides, as the engineer drew it. Nobody under a wall that is open and not shored.";
    OLD = "Before walls and ceilings are opened: asbestos and lead tests, live wires, gas and water known.";
    WIND = "Wind, earthquake, drifted snow and loads from floors above are not in it unless you put them in.";
    LOCAL = "Local code and the building department decide.";

    DRAWING = "The beam with its loads, to scale";
    BEAM_LINE = "The beam";
    EVEN_LOAD = "The even load";
    POINT_ARROW = "The point load";
    END_ARROW = "What an end carries";
    LABEL_POINT = "{0} at {1}";
    TWIN = "A beam of {0}, {1} along it. Worst sum: {2}.";
    TWIN_POINT = "A point of {0} stands {1} from its left end.";
    TWIN_ENDS = "The left end carries {0}, the right end {1}; arrows are to one scale, the even load's block as high as half of it.";
}
