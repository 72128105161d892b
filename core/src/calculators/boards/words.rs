//! All that a person reads of boards and their cuts.

use crate::words;

words! {
    NAME = "Boards and their cuts";
    ABOUT = "How many boards, how each is cut, and where it hangs, on a ceiling or a wall";
    NOTHING = "";

    OF = "To board";
    CEILING = "A ceiling";
    WALL = "A wall";
    WALL_LONG = "Wall, end to end";
    HIGH = "Floor to ceiling";
    HIGH_HINT = "To the board of the ceiling: ceilings go up first.";
    GAP = "Left open at the floor";
    GAP_HINT = "So that board stays off the floor and dry.";
    WHY_GAP = "a baseboard doesn't cover that.";
    WHY_LONG = "that is more than a room; work it in parts.";
    OPENINGS = "Doors and windows";
    OPENINGS_HINT = "As framed. Board hangs over what takes a part of a row, and is cut out.";
    OPENING = "Opening";
    DOOR = "Door";
    WINDOW = "Window";
    FROM_LEFT = "From the wall's left end";
    OPENING_WIDE = "Wide";
    SILL = "Its lower edge over the floor";
    SILL_HINT = "Nothing for a door.";
    OPENING_HIGH = "High";
    OVERLAPS = "Lies over opening {0}: measure each from the wall's left end.";
    PAST_EDGE = "Past the wall: no more than {0}.";
    RUN = "Boards run";
    RUN_HINT = "Across the joists or studs: wall 1's way, or on a wall level, is the first.";
    RUN_ALONG = "Along wall 1, or level";
    RUN_SQUARE = "Square to wall 1, or upright";
    SPACING = "Framing under their ends, apart";
    SPACING_HINT = "Center to center along the boards. Where boards run along the joists: the backing that you put in.";
    WHY_SPACING = "no board spans that.";
    FIRST = "The first one's center";
    FIRST_HINT = "From where the boards start; nothing where it stands at the wall.";
    MEMBERS = "Centers as measured";
    MEMBERS_HINT = "Uneven framing: each center from where the boards start, in the place of both figures above.";
    MEMBER = "Member";
    CENTER = "Its center";
    PANEL = "Board";
    BOARD_WIDE = "Wide";
    W48 = "48 in";
    W54 = "54 in";
    STOCK = "Lengths the shop has";
    L8 = "8 ft";
    L9 = "9 ft";
    L10 = "10 ft";
    L12 = "12 ft";
    L14 = "14 ft";
    L16 = "16 ft";
    L16_HINT = "Few shops keep it: order ahead.";
    LONGEST = "The longest that gets in";
    LONGEST_HINT = "Through the door, round the hall, up the stair. Blank: any.";
    WHY_LONGEST = "no longer ones are made.";
    LEAST = "No piece shorter than";
    LEAST_HINT = "Unless its row is.";
    WHY_LEAST = "that is a board.";
    SPARE = "Spare boards, of the longest";
    SPARE_HINT = "For one that breaks or is cut wrong: in what is bought, not in the plan.";
    WHY_SPARE = "look at the plan again.";
    OVER = "Over an old surface";
    OVER_HINT = "Not on bare framing: screws go through it.";
    OLD = "Under it";
    WANT = "What matters most";
    WANT_NEAR = "Few joints and few boards";
    WANT_HINT = "Few joints and few boards: the fewest end joints for one board more at most.";
    WANT_BOARDS = "Fewest boards";
    WANT_JOINTS = "Fewest end joints";
    WANT_LIGHT = "Lightest to lift";
    WANT_BOUGHT = "Least board bought";

    NO_LENGTH = "Tick a length that the shop has.";
    NONE_GETS_IN = "No length that is ticked gets in: tick a shorter one.";
    NONE_REACHES = "No board that is ticked reaches from one member to a next that is far enough off.";
    NOTHING_YET = "Looking for a layout: a moment.";
    NONE_FOUND = "No layout was found that keeps end joints on framing and out of line.";
    TOO_MANY = "More than {0} members in one run: work the surface in parts.";

    BOARDS = "Boards: {0}";
    OF_ONE = "{0} of {1}";
    AND_MORE = "{0}, {1}";
    LONGEST_BOARD = "Longest board";
    JOINTS = "End joints";
    SEAMS = "Tapered joints, end to end";
    ENDS = "End joints, end to end";
    CORNERS = "Inside corners, with walls";
    SCREWS = "Screws";
    AREA = "Surface";
    BOUGHT = "Board bought";
    LEFT = "Left over, of what is bought";
    HEAVIEST = "Its weight, to carry and lift";

    STEP_BOUGHT = "Board bought";
    STEP_LEFT = "Left over";
    STEP_SHEET = "The longest board weighs";


    LOOKING = "{0} or fewer, still looking.";
    PROVEN_BOTH = "Proven: with {0} boards no layout has fewer for so few end joints, nor fewer end joints for so few boards.";
    PROVEN_BOARDS = "Proven: with {0} boards no layout has fewer for so few end joints.";
    NOT_PROVEN = "The best that was found with {0} boards; none has fewer than {1}.";
    PROVEN_BOUGHT = "Proven: no layout of these lengths buys less.";
    NOT_PROVEN_BOUGHT = "The least that was found, of all lengths together; less than {0} can't do.";
    OTHER_WAYS = "By what matters most";
    OTHER_NOTE = "A tap draws that plan.";
    PLAN = "{0} {0?board|boards}, {1} the longest; {2} end {2?joint|joints}; {3} the heaviest";
    LENGTHS = "By length";
    LENGTHS_NOTE = "Of one length only, the fewest boards.";
    OF_LENGTH = "Boards of {0}";
    FEWEST = "{0}, proven fewest; {1} end {1?joint|joints}";
    FOUND = "{0}, perhaps fewer; {1} end {1?joint|joints}";
    CUTS = "Cut list";
    CUTS_NOTE = "Board by board, as they are cut; hang them row by row. Of layouts as good, end joints keep out of the middle third and off the corners of openings. Measure before you cut: walls are not square.";
    CUT = "Board {0}, {1}: row {2}";
    CUT_WHOLE = "{0} long, {1} wide, from {2}";
    CUT_ONE_STRIP = "{0} long, {1} wide, from {2}; ripped off one edge, its factory edge to the seam";
    CUT_STRIP = "{0} long, {1} wide, from {2}; one of two strips, its factory edge to the seam";

    M_BOARD = "Board, {0}";
    M_LONG = "{0}, {1} by {2}";
    M_SCREWS = "Drywall screws";

    LIFT = "Board goes overhead with a panel lift or enough hands: one that falls breaks necks.";
    LEANS = "Board leaned on a wall tips over: stack it flat, carry it by two.";
    PLATFORM = "Work from a platform, never from stilts or an upturned pail on debris.";
    CUT_OUT = "Power off and tested before a blade or saw goes near a box; nothing is buried under board: every box, alarm and damper stays reachable.";
    DUST = "Cutting and sawing make dust: score and snap, mask on.";
    COVER = "What the inspector wants to see, he sees before it is covered.";

    DRAWING = "Where each piece hangs";
    MEANS_PIECE = "a piece of board";
    MEANS_STRIP = "a ripped piece of board";
    MEANS_EDGE = "the surface";
    MEANS_FRAMING = "framing";
    MEANS_HOLE = "an opening";
    TWIN = "{0} {0?board|boards} in {1} {1?row|rows}, row 1 at the top; numbers are the boards that pieces are cut from.";
    TWIN_SIZE = "{0} along the boards, {1} across them.";
    PIECE_LONG = "{0}";
    TWIN_JOINT = "Row {0}: end joint at {1}.";
    TWIN_HOLE = "Cut out from {0} to {1} along, from {2} to {3} down.";
    TWIN_WALL = "The wall from the room, ceiling at the top.";
    TWIN_CEILING = "The ceiling seen from above, wall 1 at the top; boards run from left to right.";
    NUMBER = "{0}";
}
