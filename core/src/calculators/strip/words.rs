//! All that a person reads of stripping texture.

use crate::words;

words! {
    NAME = "Stripping a textured ceiling";
    ABOUT = "Water, bags, plastic and hours, once a result has opened it";
    NOTHING = "";

    LONG = "One side";
    LONG_HINT = "From the room.";
    WIDE = "The other";
    AREA = "Ceiling area, of another shape";
    AREA_HINT = "Plastic still goes by both sides.";
    WHY_ROOM = "work it in parts.";
    HEIGHT = "Floor to ceiling";
    PAINTED = "The texture is";
    PAINTED_HINT = "Once the hold is open, wet a square foot: bare texture drinks it.";
    NOT_SAID = "Not said";
    UNPAINTED = "Bare";
    IS_PAINTED = "Painted";
    PATCH = "Off a test square foot, dried";
    PATCH_HINT = "Once the hold is open, scrape one square foot, dry it, weigh it: it speaks for the whole ceiling.";
    THICK = "Thickness, on average";
    EMPTY = "Empty takes the usual range.";
    DENSITY = "Weight, dry";
    WATER = "Water for 100 sq ft, a pass";
    PASSES = "Passes of water";
    SPRAYER = "Sprayer holds";
    BULKING = "Scrapings heap up, times";
    BAG = "A bag holds";
    CARRIED = "A bag weighs at most";
    WHY_MUCH = "look at it again.";
    SPREAD = "Under plastic";
    ALL_FLOOR = "The whole floor";
    A_PATCH = "6 ft round a patch, in an open room";
    TURN_UP = "Turned up each wall";
    WALLS = "Walls are hung with plastic";
    ROLL = "Roll, wide";
    LAP = "Laps";
    PEOPLE = "Who work";
    PRICES = "Prices you were given";
    PRICES_HINT = "In whole dollars; told while it is held.";
    TOO_FAR_OVER = "Less than the roll, {0}.";

    VOLUME = "Texture";
    DRY = "It weighs, dry";
    SPRAYED = "Water to spray";
    FILLS = "Sprayer fills";
    WET = "Wet debris";
    HEAPED = "Heaped";
    BAGS = "Bags";
    HOURS = "One worker's hours";
    CREW = "The crew's hours";
    STRIPPED = "Ceiling to strip";
    FLOOR = "Floor plastic";
    WIDTHS = "Widths of the roll";
    ALONG_FIRST = "Roll for the floor, along the first side";
    ALONG_OTHER = "Roll for the floor, along the other";
    ROLL_ALL = "Roll to buy, strips cut whole";
    WALL_PLASTIC = "Wall plastic";
    WALL_ROLL = "Roll for the walls";
    LAID = "{0} × {1} = {2}";
    WAYS = "Which way the roll goes";
    RANGES = "Low, likely, high";
    RANGES_NOTE = "Habits, not rules: weigh and measure your own.";
    SOAKS = "Each pass soaks";
    WETTED = "Wetted at once";
    DRIVERS = "What drives them";
    THREE = "{0} · {1} · {2}";
    ONE = "{0}";

    CHECK_WATER = "Takes water";
    ASK_WATER = "Wet a square foot first: painted texture won't take water.";
    CHECK_HIGH = "Ceiling, for a bench";

    M_PLASTIC = "Plastic, 6 mil, {0} wide";
    M_BAGS = "Bags, heavy";

    NEXT = "Scrape and weigh a test square foot first.";
    NEXT_WEIGHED = "Wet, soak, scrape, bag as you go.";
    POWER = "Power off at the ceiling's boxes, tested dead, boxes and holes taped: water runs into them.";
    SEAL = "Plastic over registers and doors; one way in, with a flap; out through it only bagged and wiped.";
    MASK = "A fit-tested N95 at least, goggles, hood. Where lead was found, half-mask P100. Wet it; never dry.";
    SAG = "Too wet, board sags and tape lets go. Scrape as soon as it gives.";
    OTHER = "Another layer, color or joint compound under it is another material: stop, and have it sampled.";
}
