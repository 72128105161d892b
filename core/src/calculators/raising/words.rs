//! All that a person is asked about a raised ceiling. What the answer says stands in `shown`.

use crate::words;

words! {
    NAME = "Raising a ceiling";
    ABOUT = "Studs to cut, board, air and what has to move with it";
    NOTHING = "";

    SHAPE = "New ceiling";
    FLAT = "Flat";
    TRAY = "Tray";
    GABLE = "Vault, two slopes";
    SHED = "Vault, one slope";

    KNOWN = "Measured";
    KNOWN_HINT = "A stud is told from a hole in the wall; the framing from where the ceiling is down.";
    BY_STUD = "A stud";
    BY_FRAMING = "Subfloor to joists";
    STUD = "Old stud";
    STUD_HINT = "Without its plates. Older studs are often 8 ft and more: measure.";
    FRAMING = "Subfloor to joists";
    FRAMING_HINT = "Bare framing, to the underside of the joists.";
    WHY_STUD = "no wall of a house is that high.";
    PLATES = "Plates, bottom and top";
    PLATES_HINT = "Mostly one under and two over.";
    WHY_PLATES = "no wall has that many.";
    OLD_PLATE = "One old plate, thick";
    OLD_PLATE_HINT = "Empty: 1-1/2 in. Older ones are 1-5/8 or 2.";
    OLD_BOARD = "Ceiling now, thick";
    OLD_BOARD_HINT = "All of it: board or lath and plaster, strapping too.";
    NEW_BOARD = "New board, thick";
    WHY_BOARD = "no finish is that thick.";
    FLOOR_FINISH = "Floor finish, over the subfloor";

    TO = "What you want";
    BY = "Say it as";
    BY_HEIGHT = "A height";
    BY_RAISE = "So much higher";
    HEIGHT = "Finished height";
    HEIGHT_HINT = "Finished floor to the new ceiling; of a tray, to its top.";
    RAISE = "Higher by";
    RAISE_HINT = "Finish to finish.";
    WHY_HEIGHT = "no room of a house is that high.";

    LONG = "Room, length";
    LONG_HINT = "Wall to wall.";
    WIDE = "Room, width";
    WHY_SIDE = "larger than that, work it in parts.";
    FLOOR = "Floor area";
    FLOOR_HINT = "Empty: length times width. For an L, take it from the room.";
    PERIMETER = "Walls that go up, end to end";
    PERIMETER_HINT = "Empty: all four.";
    BORDER = "Border at today's height, wide";
    BORDER_HINT = "From the walls to where the tray starts.";
    KEEPS = "The border's old board stays";
    KEEPS_HINT = "Else it comes down too, and is boarded anew.";
    LEAN = "Tray's sides lean in";
    LEAN_HINT = "Empty: they stand plumb.";
    PITCH = "Slope of the ceiling";
    PITCH_HINT = "Its rise in 12. It starts at the walls, at today's height.";
    WHY_PITCH = "steeper than that is a wall.";
    RIDGE = "Ridge or high wall runs";
    RIDGE_LONG = "Along the length";
    RIDGE_WIDE = "Along the width";

    ROOM = "Room";
    LIVED_IN = "To live in, or a hall";
    BATH = "Bath, toilet or laundry";
    OVERHEAD = "Over the ceiling";
    OVERHEAD_HINT = "Look in the attic: metal plates at the joints are trusses.";
    OLD = "What comes down";
    OLD_HINT = "It is held until it is tested: see Before you disturb old material.";
    NOT_SAID = "Not said";
    TEXTURE = "Textured, on board or plaster";
    PLASTER = "Plaster";
    BOARD = "Board with joint compound";
    BARE = "Nothing: bare joists";

    WALL = "Walls that go up";
    HOW = "Framed with";
    HOW_HINT = "New studs carry over the whole height. A short wall is a joint that bends.";
    FULL = "New studs";
    STACKED = "A short wall on the old plates";
    ADDED = "Plates of the short wall";
    ADDED_HINT = "Under and over it, 1-1/2 in each.";
    CARRIES = "They are";
    CARRIES_HINT = "If you can't tell, they carry.";
    NOT_KNOWN = "Not known";
    BEARING = "Outside or bearing";
    CARRIES_NOTHING = "Partitions";
    SPACING = "Studs apart";
    SPACING_HINT = "Empty: 16 in.";
    WHY_SPACING = "no wall is framed that wide.";

    CLEAR = "In the way";
    CLEAR_HINT = "Only what is there.";
    FAN = "Fan, ceiling to blades";
    FAN_HINT = "With its rod.";
    BEAM = "Beam or duct, over the floor";
    BEAM_HINT = "The lowest that stays.";
    DOOR = "Door header, over the subfloor";
    DOOR_HINT = "To its underside.";

    // What can't be taken.
    NEEDED = "Needed for this shape: type a length.";
    NOT_HIGHER = "The ceiling is at {0} now: this is no higher.";
    NOT_RAISED = "The thinner board alone gives {0}. The joists stay where they are.";
    MORE_THAN_ROOM = "It has to be no more than length times width: {0}.";
    NO_TRAY = "Border and sides take {0} of each side, and the room is {1} wide: no tray is left.";
    NO_SHORT_WALL = "The plates alone take {0}, and the joists go up {1}: no short wall fits. Fewer plates, or new studs.";
}
