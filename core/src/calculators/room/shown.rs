//! All that a person reads of a room once it is worked out.

use crate::words;

words! {
    FLOOR = "Floor area";
    PERIMETER = "All walls, end to end";
    CEILING = "Ceiling area, flat";
    LONGEST = "Longest, along wall 1";
    WIDEST = "Widest, across";
    INSIDE = "Inside corners";
    OUTSIDE = "Outside corners";
    HEIGHT = "Ceiling height now";
    HEIGHT_TO_BE = "Ceiling height to be";
    CHANGE_UP = "Ceiling goes up";
    CHANGE_DOWN = "Ceiling comes down";
    VOLUME = "Air in the room now";
    VOLUME_TO_BE = "Air in the room to be";
    AIR_MORE = "More air";
    AIR_LESS = "Less air";
    WALL_AREA = "Wall area now";
    WALL_AREA_TO_BE = "Wall area to be";
    OPENINGS = "Doors and windows";
    NET = "Wall area now, less openings";
    NET_TO_BE = "Wall area to be, less openings";
    OUTSIDE_LENGTH = "Outside walls, end to end";
    SPACING = "Joists apart";
    DEPTH = "Depth of a joist";
    THICKNESS = "Thickness of a joist";
    LEAST = "Ceiling height, least";
    MOST = "Ceiling height, most";
    DIFFERENCE = "Diagonals differ by";
    SHIFT = "Far wall shifted along wall 1";
    WALL = "Wall {0}";
    WALL_WORKED_OUT = "Wall {0}, worked out";

    CHECK_NOW = "Ceiling height now";
    CHECK_TO_BE = "Ceiling height to be";
    ASK_LOW = "Under 7 ft. A bath, toilet room or laundry may be 6 ft 8 in, parts under a slope or a beam may be lower, and an old ceiling may often stay: ask.";

    LEVEL_PART = "Over this floor";
    LEVEL_NOTE = "The ceiling taken as level, its height runs with the floor. Cut studs and board to the place, not to one number.";
    LEVEL_NOW = "Now";
    LEVEL_TO_BE = "To be";
    FROM_TO = "{0} to {1}";

    AGAIN_PART = "Look again";
    AGAIN = "{0}.";
    NO_SUCH_WALL = "Something stands in wall {0}, and this room has {1} walls. Pick its wall again.";
    TOO_WIDE = "Wall {0} is {1} long, and what stands in it takes {2}. Measure again.";
    TOO_HIGH = "{0}, {1} high, under a ceiling of {2}. Measure again.";
    TOO_OPEN = "Doors and windows take {0}, and the walls are {1}. Count again.";
    DIAGONALS_DONT_FIT = "These diagonals don't go with these walls. Opposite walls differ, or a length is off: measure all four walls and both again.";

    SQUARE_UP = "Measure both diagonals. An old room is seldom square, and this takes all its corners as square.";
    OLD_FINISH = "This measures only. Before you cut, drill or scrape: old plaster, board, tile and paint can hold asbestos or lead. Have them tested.";
    TIES = "Joists above often tie the walls together or carry what is over them. Which may move, and how, is a licensed engineer's to say.";
    LOCAL = "Local code and the building department decide.";

    DRAWING = "The room from above, to scale";
    DRAWING_FLOOR = "Floor";
    DRAWING_WALL = "Wall";
    JOISTS = "joists {0}";
    JOIST_WAY = "The way the joists run";
    NUMBER = "{0}";
    TWIN_SIZE = "{0} walls, {1} by {2} at the most. Wall 1 runs along the top; the rest follow clockwise.";
    TWIN_WALL = "Wall {0}: {1}, to an inside corner.";
    TWIN_WALL_OUT = "Wall {0}: {1}, to an outside corner.";
    TWIN_OUTSIDE = "Wall {0} is an outside wall, drawn heavier.";
    TWIN_OPENING = "In wall {0}: {1} × {2}, {3} by {4}. Where along it isn't known; drawn evenly spaced.";
    TWIN_LOOSE = "Not in the drawing: {0} × {1}, {2} by {3}.";
    TWIN_ALONG = "Joists above run along wall 1, {0} apart.";
    TWIN_ACROSS = "Joists above run square to wall 1, {0} apart.";
}
