//! All that a person reads of a skim coat.

use crate::words;

words! {
    NAME = "Skim coat";
    ABOUT = "Compound by the coat, blade passes and lanes, hours, and water that has to dry out";
    NOTHING = "";

    LONG = "Long";
    WIDE = "Wide";
    WHY_ROOM = "that is more than a room; work it in parts.";
    AREA = "Its surface, where it is no rectangle";
    AREA_HINT = "Blank: long times wide. Another area has no lanes told.";
    GROUND = "What is skimmed";
    GROUND_HINT = "A level 5 skim evens out color and grain: it levels nothing.";
    THICK = "One coat, wet";
    WHY_THICK = "compound that thick sags and cracks: fill first.";
    COATS = "Coats";
    COATS_HINT = "Two level a scraped ceiling; they take turns along and across.";
    WHY_COATS = "board over it instead.";
    BLADE = "Blade";
    BLADE_HINT = "For lanes; hours are told for any blade.";
    WHY_BLADE = "nobody holds a wider one.";
    OVERLAP = "Lanes overlap";
    WHY_OVERLAP = "that is a blade's width.";
    WIPED = "Laid on, then wiped: two strokes a lane";
    SAND = "Sanded at the end";
    WASTE = "Lost";
    WHY_WASTE = "look for the leak.";
    OLD = "Under it";
    OLD_HINT = "Sanding and feathering cut into it.";
    TOO_FAR_OVER = "Less than the blade, {0}.";

    GALLONS = "Compound, wet, all coats";
    GALLONS_ON = "Compound, wet, {0} {0?coat|coats} on {1}";
    LOW = "All coats, at least";
    HIGH = "All coats, at most";
    COAT = "One coat, wet, on the surface";
    SURFACE = "Surface";
    FILM = "A coat's wet film";
    PASSES = "Lanes, along the long side";
    PASSES_ACROSS = "Lanes, next coat, across";
    TRAVEL = "The blade's way, all coats";
    WEIGHT = "Its weight, ready-mixed";
    WATER = "Water in it, to dry out";
    PAILS_STEP = "Pails";
    PAILS = "Pails of {0}";
    PAILS_MOST = "Pails of {0}, at most";
    HOURS = "One worker's hours";
    HOURS_LOW = "A quick worker's hours";
    HOURS_HIGH = "A slow worker's hours";
    BY_COAT = "Coat by coat";
    COAT_NUMBER = "Coat {0}";
    COAT_ALONE = "{0}";
    COAT_ALONG = "{0}, {1} {1?lane|lanes} along";
    COAT_ACROSS = "{0}, {1} {1?lane|lanes} across";

    M_COMPOUND = "Compound, ready-mixed, for skimming";

    NEXT = "Each coat dries before the next. Look along it with a lamp before you sand.";
    PRIME = "Prime torn or fuzzed paper and chalky paint first: bare paper drinks the first coat and blisters.";
    DUST = "Sanding dust is fine and may hold silica: a vacuum sander, or wet, in a fit-tested N95 at least.";
    WET = "Power off at ceiling boxes; a soaked board sags.";
    LADDER = "Overhead work from a platform, never from an upturned pail.";

    DRAWING = "Lanes of the first coat, to scale";
    LANE = "A lane";
    ACROSS = "{0} across";
    TWIN = "{0} {0?lane|lanes} along {1}, side by side over {2}.";
    TWIN_SOME = "The first {0} are drawn.";
}
