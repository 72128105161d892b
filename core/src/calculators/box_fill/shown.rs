//! What a person reads of a box's answer.

use crate::words;

words! {
    FILL = "Box fill";
    FILL_SIDE = "Fill, side {0}";
    VOLUME = "Volume of the box";
    VOLUME_SIDE = "Volume, side {0}";
    SPARE = "To spare";
    FREE_NEEDED = "Free wire to leave";
    SETBACK = "Box behind the surface";
    DEPTH = "Depth of the box";
    FREE = "Free wire at the box";
    STANDS_PROUD = "The box stands out past the surface. The plate needs it flush, or the box set deeper.";

    NEXT_OVER = "Over by {0}. Least work that fits it: {1}.";
    NEXT_TAKE_OUT = "Over by {0}. Take something out, or use a bigger box.";

    // Each item's share.
    SHARES = "What takes the room";
    SHARES_SIDE = "What takes the room, side {0}";
    SHARE_CABLES = "{0} × {1}: {2} {2?conductor|conductors}";
    SHARE_WIRES = "{0} × {1}: {2}";
    SHARE_CLAMPS = "Clamps inside, all together, as {0}";
    SHARE_SUPPORT = "{0}, as {1}";
    SHARE_DEVICES = "{0} × {1} on {2}";
    SHARE_DEVICES_LARGEST = "{0} × {1}, counted as {2}, the largest here";
    SHARE_DEVICES_WIDE = "{0} × {1}, {3} gangs, on {2}";
    SHARE_DEVICES_WIDE_LARGEST = "{0} × {1}, {3} gangs, counted as {2}, the largest here";
    ASSUMED = "{0} counted as {1}, the largest here; say what is on it.";
    ASSUMED_ALL = "Devices counted as {0}, the largest here; say what is on each.";
    SHARE_GROUNDS = "{0} {0?ground|grounds}, largest {1}";
    SHARE_ISOLATED = "{0} isolated {0?ground|grounds}, largest {1}";
    SHARE_BLOCKS = "{0} terminal {0?block|blocks} on {1}";
    SHARE_INSIDE = "{0} × {1} {0?pigtail|pigtails}: stays inside, counts none";
    SHARE_CANOPY_OUT = "{0} × {1} from the canopy: may be left out";
    SHARE_CANOPY_IN = "{0} × {1} from the canopy: more than four, all counted";
    SHARE_NO_DEVICE_WIRE = "{0} × {1}: no wire in the box yet";
    CANOPY_ASK = "More than four small light fixture (luminaire) wires: the exception no longer fits. All are counted here, the cautious reading.";
    SHORT_STUD = "Stud";
    SHORT_HEAVY = "Range";
    SHORT_WIRES = "{0} wires";
    SHORT_CABLES = "{0}×{1}";
    SHORT_CLAMPS = "Clamps";
    SHORT_GROUNDS = "Grounds";
    SHORT_ISOLATED = "Isolated";
    SHORT_BLOCKS = "Blocks";

    // What else would fit.
    ROOM = "What else would fit";
    ROOM_SIDE = "What else would fit, side {0}";
    ROOM_NOTE = "Each line alone, with its ground as in today's cable.";
    ROOM_CABLES = "More {0}";
    ROOM_COUNT = "{0}";
    ROOM_NONE = "none";
    ROOM_DEVICE = "One more device, one gang";
    ROOM_YES = "fits by volume";

    // Boxes that would hold it.
    SUITS = "Boxes that hold it";
    SUITS_NOTE = "The smallest that do, without rings. Depth is looked at where you gave it.";
    SUITS_MARKED = "Any box marked";
    SUITS_OR_MORE = "{0} or more";
    SUITS_GANGS = "{0}, {1} ganged";
    SUITS_HOLD = "{0} of {1}";

    // Mends.
    MENDS = "What would make it fit";
    MENDS_NOTE = "Least work first. Each was worked through and fits by volume. What to have on hand is for the first one.";
    MEND_RING = "a ring or cover marked {0} or more";
    MEND_EXTENSION = "an extension ring, {0}";
    MEND_BOX = "a deeper box, {0}";
    MEND_MARKED = "a box marked {0} or more; in a finished wall a cut-in (old-work) one";
    MEND_CUT_IN = "a cut-in (old-work) box marked {0} or more";
    MEND_CUT_IN_WIDER = "a cut-in (old-work) box, {0}-gang, marked {1} or more";
    MEND_OPENS = "{0} (in an old wall: test before you cut)";
    MEND_GANG = "the same box, {0} ganged";
    MEND_OTHER = "another box, {0}";

    // Working.
    STEP_VOLUME = "Volume of the box";
    STEP_TOTAL = "Volume for this side";
    STEP_SPARE = "To spare";
    STEP_FREE = "Free wire to leave";
    STEP_SETBACK = "Box behind the surface";

    // Materials.
    BOX_MARKED = "Box, marked {0} or more, {1}-gang";
    BOX_METAL = "Box, {0}";
    RING_MARKED = "Ring or cover, marked {0} or more";
    RING_EXTENSION = "Extension ring, {0}";

    // Cautions.
    DEAD = "Turn the breaker off and lock it. Test every wire to every other and to ground, with a meter you prove on a live source before and after.";
    TWO_CIRCUITS = "A box may hold two circuits. A white wire may be hot. A stick tester alone is no proof.";
    OLD_WALL = "Changing a box may cut an old wall. Plaster, board and mud may hold asbestos, paint from before 1978 lead. Have it tested before you cut, and leave it alone until you know.";
    LICENSED = "Wiring is a licensed electrician's where the law says so. Nothing is energized before inspection.";
    NOT_ALL = "Fill within the limit is not the whole of a box: listing, depth, cover, support and heat count too. The inspector's edition decides.";
    OLD_WIRING = "Cable with a thin ground or none is old. Aluminum, knob and tube, brittle insulation or no ground: stop, and hand over to the electrician.";
    DEAD_SAYS = "Prove dead with a tester that is itself proved before and after.";
    DEAD_SEEN = "read in a published checklist that quotes OSHA 1910.333(b)(2)";

    // The drawing.
    SECTION = "The box in section on its back, filled to scale by volume";
    SECTION_OPEN = "front";
    OUTLINE = "The box, cut";
    LABEL = "{0} {1}";
    LABEL_OVER = "over {0}";
    LABEL_SPARE = "spare {0}";
    TWIN_BOX = "The box is {0} wide and {1} deep, on its back with the front up.";
    TWIN_BOX_MARKED = "The depth was not given: the box is drawn {0} wide, and as deep as its volume asks if it is {1} tall.";
    TWIN_LAYER = "{0}: {1}.";
    TWIN_OVER = "{0} stands above the front: over.";
    TWIN_SPARE = "{0} is left at the front.";
}
