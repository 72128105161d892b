//! All that a person reads of heights off one line.

use crate::words;

words! {
    NAME = "Heights off one line";
    ABOUT = "How far up or down from a level line each box is marked, over floors that aren't level";
    NOTHING = "";

    FLOORS = "Floors under the line";
    FLOORS_HINT = "The floor as it is today, at its high and low spots, and each that will be built up.";
    FLOOR = "Floor";
    HERE = "As it is";
    TILED = "To be tiled";
    CALL = "Call it";
    DOWN = "Line down to it";
    DOWN_HINT = "To what lies there today.";
    BACKER = "Board to come";
    BED = "Bed, thinset";
    COVER = "Tile or flooring";
    FROM = "Heights count from";
    HIGHEST = "The highest finished floor, all alike";
    OWN = "Each box's own finished floor";
    BOXES = "Boxes";
    BOX = "Box";
    KIND = "What it is";
    RECEPTACLE = "Receptacle";
    SWITCH = "Switch";
    COUNTER = "Over a counter";
    ALARM = "Alarm on a wall";
    OTHER = "Something else";
    HEIGHT = "Height";
    TO = "To its";
    MIDDLE = "Middle";
    BOTTOM = "Bottom";
    TOP = "Top";
    STANDS = "Over floor number";
    ALONG = "Along the wall, to its middle";
    ALONG_HINT = "From the left. Empty: drawn side by side.";
    TALL = "Box, tall";
    WIDE = "Box, wide";
    OFF = "Line or laser off by";
    OVER = "Over";
    REACH = "Farthest mark from it";
    SEAM = "Board's seam, over the highest floor";
    SEAM_HINT = "Boards laid level from the floor meet at 48 or 54 in.";
    COUNTER_TOP = "Counter top, over the highest floor";
    SPLASH = "Backsplash on it";
    COURSE = "Tile on the wall, with a joint";
    DOOR = "Door's stud, along the wall";
    DOOR_HINT = "The edge on the opening's side.";
    CASING = "Casing, wide";
    HAND = "Within reach from a wheelchair";
    SURFACE = "Round the box";
    BOARD = "Board to come";
    TILE = "Tile on it";
    SKIM = "Skim on it";
    PROUD = "Box past the stud";
    WHY = "no wall of a house takes that.";

    NO_FLOOR = "Put in one floor at least.";
    NO_BOX = "Put in one box at least.";
    NO_SUCH = "There are {0} floors. Say which of them it stands over.";

    NAMED = "{0}. {1}";
    FROM_LINE_DOWN = "{0}: down from the line";
    FROM_LINE_UP = "{0}: up from the line";
    IS_DOWN = "{0} down";
    IS_UP = "{0} up";
    ON_LINE = "on the line";
    ONE = "{0}";
    OUT = "Finished floors out of level";
    HIGH_FLOOR = "Highest finished floor";
    LOW_FLOOR = "Lowest finished floor";
    LINE_OVER = "Line over the highest finished floor";
    WITHIN = "A mark is good to, either way";
    PROJECTION = "Finish past the stud";
    NEXT_HIGH = "All heights count from the highest finished floor, {0}; elsewhere they come out as much taller as that floor is lower.";
    NEXT_OWN = "Each height counts from the finished floor under it: boxes side by side step with the floor.";

    MARKS = "Marks from the line";
    MARKS_NOTE = "To the middle, bottom or top, as asked. Over its own floor: finished, then as it lies today.";
    MARK = "{0} · {1} over its floor, {2} today";
    COURSES = "{0} · {1} over its floor, {2} today · bottom {3} and top {4} over a tile joint";
    SPOTS = "Floors";
    SPOT = "{0} down today, {1} finished";

    CHECK_LEVEL = "Finished floors apart";
    SAY_HIGH = "Write it on the wall: heights are over the highest floor.";
    SAY_OWN = "Write it on the wall: heights are over each box's own floor.";
    CHECK_SEAM = "{0}: off the board's seam";
    ASK_SEAM = "It lies across the seam: the joint is cut and taped round it. Move it up or down.";
    CHECK_SPLASH = "{0}: over the backsplash";
    ASK_SPLASH = "Its plate meets the backsplash. Move it up.";
    CHECK_DOOR = "{0}: past the casing";
    ASK_DOOR = "Its plate meets the casing. Move it along.";
    CHECK_LOW = "{0}: lower part, over its floor";
    CHECK_HIGH = "{0}: upper part, over its floor";
    CHECK_BACK = "Box front behind the finish";
    PROUD_OF = "It stands out past the finish: its plate won't sit.";

    STEP_FLOOR = "Line over {0}, finished";
    STEP_HIGH = "Line over the highest";
    STEP_PART = "Lower part, of the lowest box";

    DEAD = "Dead, and proved dead, before a box or a cable in the wall is touched.";
    LICENSED = "Where the law says so, a licensed electrician places and wires boxes; local amendments go first.";
    CUT = "Old board, plaster and paint can hold asbestos and lead: tested before anybody cuts.";

    DRAWING = "The wall from the room, to scale";
    MEANS_LINE = "The level line";
    MEANS_FLOOR = "A finished floor";
    MEANS_SEAM = "The board's seam";
    MEANS_BOX = "A box";
    LABEL_LINE = "line";
    LABEL_SEAM = "seam";
    TWIN_BOX = "{0}: {1}.";
    TWIN_FLOOR = "{0}: finished {1} below the line.";
}
