//! All that a person is asked about a room. What the answer says stands in `shown`.

use crate::words;

words! {
    NAME = "Room";
    ABOUT = "Floor, walls, ceiling and air of a room, for every number that comes after";
    NOTHING = "";

    // Its outline.
    SHAPE = "Shape";
    SHAPE_HINT = "Stand inside. Wall 1 is the longest straight one; number on clockwise. All corners are taken as square.";
    RECTANGLE = "Rectangle";
    ELL = "L";
    TEE = "T";
    U = "U";
    WALK = "Walk the walls";
    LONG = "Along wall 1";
    LONG_HINT = "Wall to wall, finish to finish.";
    WIDE = "Across from wall 1";
    WIDE_HINT = "From wall 1 to the wall farthest from it.";
    NOTCH_LONG = "Notch, along wall 1";
    NOTCH_HINT = "The corner that the room doesn't have, where walls 3 and 4 stand.";
    NOTCH_WIDE = "Notch, across";
    LEG_WIDE = "Leg, along wall 1";
    LEG_HINT = "The part that sticks out of the side opposite wall 1.";
    LEG_LONG = "Leg, how far out";
    LEG_OFF = "Leg, in from the start of wall 1";
    GAP_LONG = "Gap, along wall 1";
    GAP_HINT = "The part that the room goes round, in the side opposite wall 1.";
    GAP_DEEP = "Gap, how far in";
    GAP_OFF = "Gap, in from the start of wall 1";
    OFF_HINT = "Empty: in the middle.";
    WHY_WALL = "longer than that, measure it as two rooms.";
    WALLS = "Walls, clockwise";
    WALLS_HINT = "One tap a wall, by the corner that it ends in. One wall each way may stay empty: it is worked out.";
    WALL = "Wall";
    TO_INSIDE = "wall to an inside corner";
    TO_OUTSIDE = "wall to an outside corner";
    END = "Ends in";
    END_HINT = "Inside: it points away from you, as in any box. Outside: it points at you.";
    INSIDE = "Inside corner";
    OUTSIDE = "Outside corner";
    LENGTH = "Length";
    LENGTH_HINT = "Empty: worked out from the others.";
    OUTSIDE_WALL = "Outside wall";

    // Its walls.
    OUTSIDE_WALLS = "Outside walls";
    OUTSIDE_WALLS_HINT = "Those with the weather behind them.";
    WALL_NUMBER = "Which";
    NOT_SAID = "Not said";
    W1 = "Wall 1";
    W2 = "Wall 2";
    W3 = "Wall 3";
    W4 = "Wall 4";
    W5 = "Wall 5";
    W6 = "Wall 6";
    W7 = "Wall 7";
    W8 = "Wall 8";
    W9 = "Wall 9";
    W10 = "Wall 10";
    W11 = "Wall 11";
    W12 = "Wall 12";
    W13 = "Wall 13";
    W14 = "Wall 14";
    W15 = "Wall 15";
    W16 = "Wall 16";
    OPENINGS = "Doors and windows";
    OPENINGS_HINT = "They come off the wall area.";
    OPENING = "Door or window";
    KIND = "Kind";
    DOOR = "Door";
    WINDOW = "Window";
    CASED = "Opening";
    COUNT = "How many";
    WHY_COUNT = "more than that is a wall of glass: put in its size.";
    WIDTH = "Width";
    SIZE_HINT = "The leaf or sash is near enough. What the board leaves free is closer.";
    HIGH = "Height";
    WHY_OPENING = "larger than that, leave the wall out.";
    IN_WALL = "In";
    IN_WALL_HINT = "To see it in the drawing.";
    DOOR_2_8 = "door 2-8 × 6-8";
    DOOR_2_6 = "door 2-6 × 6-8";
    DOOR_3_0 = "door 3-0 × 6-8";
    DOOR_6_0 = "doors 6-0 × 6-8";
    WINDOW_3_4 = "window 3-0 × 4-0";
    WINDOW_3_5 = "window 3-0 × 5-0";
    OTHER_OPENING = "other opening";

    // Its heights.
    HEIGHT = "Ceiling height now";
    HEIGHT_HINT = "At the floor's highest place, finish to finish: the least there is.";
    TO_BE = "Ceiling height to be";
    TO_BE_HINT = "Only if it will change.";
    WHY_HEIGHT = "no ceiling of a room hangs there.";
    LEVEL = "Floor out of level";
    LEVEL_HINT = "The most, from its highest place to its lowest.";
    WHY_LEVEL = "more than that is a step or a slope.";
    DIAGONAL_1 = "Diagonal from the start of wall 1";
    DIAGONAL_HINT = "Corner to corner, over the floor. Both tell how far it is out of square.";
    DIAGONAL_2 = "Diagonal from the end of wall 1";

    // Over it.
    FRAMING = "Framing above";
    FRAMING_HINT = "Look in the attic, or find the nails with a magnet.";
    RUNS = "Joists run";
    RUNS_HINT = "For the drawing and for what comes after. Nothing is sized by it.";
    NOT_KNOWN = "Not known";
    ALONG = "Along wall 1";
    ACROSS = "Across";
    SPACING = "Apart, centre to centre";
    SPACING_HINT = "Old framing wanders: measure three.";
    S16 = "16 in";
    S24 = "24 in";
    S19 = "19.2 in";
    S12 = "12 in";
    DEPTH = "Depth of one";
    DEPTH_HINT = "Measure it. Old lumber isn't today's: a 2x8 of 1920 may be 1-3/4 by 7-3/4 in.";
    THICKNESS = "Thickness of one";
    WHY_MEMBER = "no joist is that size.";

    // What can't be taken.
    TOO_FEW = "A room has four walls or more. Add them in the order that you pass them.";
    TWO_BLANK = "Wall {0} and wall {1} run the same way, and both are empty. Measure one of them.";
    WRONG_WAY = "This goes round the outside of something. Walk clockwise inside: a plain room's corners are all inside corners.";
    CORNERS = "A room has four more inside corners than outside; here are {0} and {1}. A wall is missing, or a corner is of the other kind.";
    SHORT_ALONG = "The walls end {0} short of the start along wall 1: {1} out, {2} back.";
    PAST_ALONG = "The walls end {0} past the start along wall 1: {1} out, {2} back.";
    SHORT_ACROSS = "The walls end {0} short of the start across wall 1: {1} out, {2} back.";
    PAST_ACROSS = "The walls end {0} past the start across wall 1: {1} out, {2} back.";
    BOTH = "{0} {1}";
    WORKED_OUT = "Wall {0} comes to {1}. A wall before or after it is too long, or a corner is of the other kind.";
    MEETS = "Wall {0} meets wall {1}. A length or a corner on the way is wrong.";
    SHORTER = "It has to be less than the room: {0}.";
    NO_ROOM_BESIDE = "{0} and {1} don't leave any wall beside it: together they have to be less than {2}.";
}
