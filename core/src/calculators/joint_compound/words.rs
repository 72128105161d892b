//! All that a person reads of compound, tape and screws.

use crate::words;

words! {
    NAME = "Compound, tape and screws";
    ABOUT = "What joints or an area take, to which level, and what an old ceiling's pops and cracks add";
    NOTHING = "";

    BY = "Reckon by";
    BY_HINT = "Joints, where you know them: one room has more to a square foot than a house.";
    BY_JOINTS = "Its joints";
    BY_AREA = "Its area";
    AREA = "Board, its surface";
    AREA_HINT = "Blank: no published rule beside it. Needed by area and for level 5.";
    WHY_RUN = "that is more than a house; work it in parts.";
    TAPERED = "Tapered joints";
    TAPERED_HINT = "Long edges that meet, end to end.";
    ENDS = "End joints";
    ENDS_HINT = "Board ends that meet, each as long as the board is wide.";
    FEATHER = "End joints feathered";
    FEATHER_HINT = "In all, both sides.";
    CORNERS = "Inside corners";
    CORNERS_HINT = "For a ceiling, its way round.";
    BEADS = "Outside corners, with bead";
    SCREWS = "Screws";
    SCREWS_HINT = "About one a square foot.";
    LEVEL = "Level of finish";
    LEVEL_HINT = "What each asks for stands below.";
    KIND = "Compound";
    SHRINK = "It shrinks";
    SHRINK_HINT = "From its sheet. Blank: likely for its kind.";
    WHY_SHRINK = "its standard allows no more.";
    WASTE = "Lost";
    WASTE_HINT = "10 percent is a habit; small rooms lose more.";
    WHY_WASTE = "look for the leak.";
    MENDS = "An old ceiling is mended";
    MEND = "What is mended";
    POPS = "Popped screws or nails";
    POPS_HINT = "A row of them: the board is loose. Screw it down at 12 in first.";
    CRACKS = "Cracked joints, taped anew";
    CRACKS_HINT = "Cut loose tape out and screw both sides. One that comes back follows the framing.";
    PATCHES = "Edges of patches";
    PATCHES_HINT = "All the way round each, taped like end joints.";
    OLD = "It is";
    OLD_HINT = "Mending cuts and screws into it.";

    NEEDED_BY_AREA = "Needed, to go by area.";
    NEEDED_LEVEL = "Needed for level 5: all of it is skimmed.";

    WET = "Compound, wet";
    WET_BY_AREA = "Compound, wet, by {0} of board";
    LOW = "At least";
    HIGH = "At most";
    RULE = "By the published rule";
    RULE_LOW = "By that rule, at least";
    RULE_HIGH = "By that rule, at most";
    WEIGHT = "Its weight";
    POWDER = "Powder";
    PAILS = "Pails of {0}";
    PAILS_MOST = "Pails of {0}, at most";
    BAGS = "Bags of {0}";
    BAGS_MOST = "Bags of {0}, at most";
    PACKAGES = "Pails or bags";
    TAPE = "Tape";
    ALL_SCREWS = "Screws to cover";
    NEW_SCREWS = "New screws, to mend";
    WATER = "Water in it";

    ON_TAPERED = "Tapered joints, dry";
    ON_ENDS = "End joints, dry";
    ON_CORNERS = "Inside corners, dry";
    ON_BEADS = "Beads, dry";
    ON_SCREWS = "Screws, dry";
    ON_POPS = "Pops, dry";
    ON_CRACKS = "Cracks, dry";
    ON_PATCHES = "Patches, dry";
    DRY = "All, dry";
    SHRUNK = "Wet, before it shrinks";
    SKIM = "Level 5 skim, wet";
    TOTAL = "All, wet";

    WHY = "Two ways to reckon it";
    WHY_NOTE = "Published rules average whole houses of long boards; a room has more corner and end joint to a square foot. Far apart: measure the joints again.";
    WHY_JOINTS = "By joints";
    WHY_RULE = "By area";
    SPREAD = "{0}, from {1} to {2}";
    TAPE_RULE = "Tape by area, nothing lost";
    TAPE_JOINTS = "Tape by joints, nothing lost";
    TAPE_SHORT = "By area, tape falls short in a small room: fill in its joints, and the longer counts.";
    JUST = "{0}";
    DRIVERS = "What moves it";
    DRIVER_TAPER = "Depth of the taper";
    DRIVER_TAPER_SAYS = "{0} to {1}, dry";
    DRIVER_FEATHER = "End joints, 18 to 36 in wide";
    DRIVER_SHRINK = "Shrinkage";
    DRIVER_SHRINK_SAYS = "{0} to {1}";
    LEVELS = "What each level asks for";

    M_COMPOUND = "Compound, {0}";
    M_TAPE = "Joint tape";
    M_BEAD = "Corner bead";
    M_SCREW = "Drywall screws";

    NEXT = "Each coat dries before the next; level {0} takes {1} {1?coat|coats} on flat joints.";
    DUST = "Sanding dust is fine and may hold silica. Sand wet or with a vacuum, in a fit-tested N95 at least.";
    POWDER_DUST = "Setting powder is alkaline: gloves and eye protection, and mix it without dust.";
    ELECTRIC = "Power off before a knife or a screw goes near a box or a cable.";
    GAPS = "Fill gaps of 1/4 in and more first; drying-type compound then waits 24 h before tape.";
    CONTRACT = "The contract names the level, the maker's sheet the way. Fire-rated board has a taping of its own.";
}
