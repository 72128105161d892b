//! All that a person reads of the three ways.

use crate::words;

words! {
    NAME = "Three ways with a textured ceiling";
    ABOUT = "Strip and skim, board over, or tear out and board anew: side by side";
    NOTHING = "";

    LONG = "One side";
    LONG_HINT = "Across the joists: boards run along it.";
    WIDE = "The other";
    AREA = "Ceiling area, of another shape";
    WHY = "look at it again.";
    HEIGHT = "Floor to ceiling";
    HEIGHT_HINT = "To the old board, under the texture.";
    PAINTED = "The texture is";
    TEXTURE = "Texture, on average";
    TEXTURE_HINT = "Left under a new board too. Zero once it is scraped off.";
    OLD = "Board that is there";
    OVER = "Board over it";
    NEW = "Board on bare framing";
    BOARD = "Boards, long";
    BOARD_HINT = "The longest that gets in.";
    SPACING = "Joists, apart";
    SPACING_HINT = "Board ends land on them.";
    WASTE = "Cut away";
    WASTE_HINT = "Of another shape alone: of two sides, boards are laid out.";
    BOXES = "Boxes in the ceiling";
    BEHIND = "Their fronts behind the old board";
    BEHIND_HINT = "Flush is zero.";
    ATTIC = "Above";
    TEMPERATURE = "While it dries";
    HUMIDITY = "Humidity";
    CARRIES = "A load weighs at most";
    BED = "A load holds at most";
    RATES = "Your rates";
    RATES_HINT = "What is empty isn't counted.";
    RATE_HOUR = "An hour's work";
    RATE_BOARD = "A board";
    RATE_PAIL = "A pail of compound";
    RATE_LOAD = "A load to the dump";
    PRICES = "Prices you were given";
    PRICES_HINT = "In whole dollars; told while it is held.";

    STRIP = "Strip and skim";
    OVER_IT = "Board over";
    TEAR_OUT = "Tear out, board anew";

    FEWEST = "Fewest hours, likely: {0}";
    OF = "{0}: {1}";
    THREE = "{0} · {1} · {2}";
    ONE = "{0}";
    NONE = "none";
    SIDE_BY_SIDE = "Side by side";
    ORDER = "Strip and skim · board over · tear out";
    RANGES = "Low, likely, high";
    LOST = "Height lost";
    HIGH = "Ceiling, after";
    BACK = "Boxes behind it, as they are";
    SCREW = "Screws";
    SCREW_NEEDED = "Screw needed";
    LOAD = "Board on framing";
    OUT = "Weight out";
    INTO = "Weight in";
    LOADS = "Dump loads";
    BOARDS = "Boards";
    LAID_OUT = "Boards, laid out";
    PAILS = "Pails of compound";
    DAYS = "Days to dry";
    HOURS = "One worker's hours";
    MONEY = "Money, of your rates";
    TORN = "Old board, torn out";
    HEAP_LEAST = "It heaps up to, at least";
    HEAP_MOST = "It heaps up to, at most";
    TRIM = "Trim";
    TRIM_STRIP = "stays, masked";
    TRIM_OVER = "crown comes off and is cut anew";
    TRIM_OUT = "crown comes off and goes back";
    EXTENDERS = "Box extenders";

    HOLDS = "What each is held by";
    HOLDS_NOTE = "Each way by itself, asbestos and paint, before anybody starts: this comparison opens none.";
    HELD_BY = "{0}: {1}";
    HELD_BY_TWO = "{0}; and by itself {1}: {2}";

    CHECK_HEIGHT = "{0}: ceiling, after";
    ASK_LOW = "Too low for a room to live in; a bath or a laundry may be 6 ft 8 in. Ask.";
    CHECK_BOX = "{0}: boxes behind it";
    ASK_BOX = "A listed extender on each box, or the box moved.";
    CHECK_BOARD = "Tear out: holds open for board and compound";
    ASK_BOARD = "Board and its joint compound need a result and a hold of their own before they come out.";
    CHECK_JOISTS = "Board over: on the joists";
    ASK_JOISTS = "More than the joist table has for board, joists and insulation together: see ceiling joists, or an engineer.";

    NEXT = "Joists, insulation and paint are the same each way and not counted.";
    NEVER_BURY = "Never bury a sprinkler head, a box or an alarm under new board.";
    LIFT = "Ceiling board by two with a lift; torn board falls in sheets: stand clear.";
    ABOVE = "Torn out, what lies above comes down: loose fill may be vermiculite. Look first.";
}
