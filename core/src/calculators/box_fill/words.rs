//! All that a person reads of a box.

use crate::words;

words! {
    NAME = "Box fill";
    CUT = "Old wall or ceiling cut for it";
    CUT_HINT = "Old plaster, board and mud are held until a laboratory has looked at them.";
    CUT_OPEN = "None: open framing or new board";
    CUT_PLASTER = "Old plaster";
    CUT_BOARD = "Old board and its joint compound";
    CUT_OTHER = "Another old surface";
    ABOUT = "Does it all fit in the box, what else would, and what to do if not";
    NOTHING = "";

    // The box.
    ENCLOSURE = "Box";
    ENCLOSURE_HINT = "Plastic and cut-in boxes go by the volume stamped in them. Metal ones go by the table.";
    MARKED = "Stamped volume";
    MARKED_HINT = "Read it inside the box, all gangs together. Outside measure doesn't count.";
    GANGS = "Gangs";
    GANGS_HINT = "Devices side by side.";
    DEPTH = "Inside depth";
    DEPTH_HINT = "Only to check a deep device. Leave it empty if you don't need that.";
    WHY_BOX = "this rule covers boxes up to 100 in³.";
    WHY_MARKED = "nothing is marked with more.";
    WHY_GANGS = "wider ones are built to order; ask their maker.";
    WHY_COUNT = "more than that is a panel, not a box.";
    WHY_SIDE = "three barriers make four sides.";
    WHY_LOOP = "longer is a slip of the thumb.";
    WHY_EMERGES = "no box is that deep.";
    WHY_DEPTH = "no box is that deep.";
    WHY_BEHIND = "no device reaches that far.";
    WHY_FINISH = "no finish is that thick.";
    DOES_NOT_GANG = "This box takes {0} {0?device|devices} by a cover or ring and doesn't gang. Pick another box, or fewer gangs.";

    // What deepens it.
    ADDS = "Rings and covers";
    ADDS_HINT = "Only what is marked with a volume counts, or an extension of a listed size. An unmarked flat ring adds nothing.";
    ADD = "Ring or cover";
    ADD_KIND = "Kind";
    ADD_MARKED = "Marked with a volume";
    ADD_EXTENSION = "Extension, listed size";
    ADD_VOLUME = "Marked volume";
    ADD_VOLUME_HINT = "A plaster ring, raised cover or domed cover: read the mark.";
    ADD_RING = "Size";

    // What splits it.
    BARRIERS = "Barriers";
    BARRIERS_HINT = "A barrier shares the volume out by gangs, and each side is checked alone.";
    BARRIER = "Barrier";
    BARRIER_KIND = "Barrier of";
    BARRIER_METAL = "Metal, unmarked";
    BARRIER_PLASTIC = "Plastic, unmarked";
    BARRIER_MARKED = "Marked with a volume";
    BARRIER_VOLUME = "Marked volume";
    BARRIER_AFTER = "After gang";
    BARRIER_AFTER_HINT = "Counted from the left.";
    BARRIER_PLACE = "A barrier stands between two gangs, each further right than the last. This box has {0} {0?gang|gangs}.";
    NO_VOLUME_LEFT = "The barriers leave no volume.";
    SIDE = "Side";
    SIDE_HINT = "Which side of the barriers, counted from the left.";
    NO_SUCH_SIDE = "The barriers make {0} {0?side|sides}.";

    // What goes in.
    CABLES = "Cables";
    CABLES_HINT = "Each cable that comes in. One that runs straight through, uncut, counts once.";
    CABLE = "Cable";
    COUNT = "How many";
    GROUND = "Its ground";
    GROUND_HINT = "Today's has one of its own size; 8 and 6 AWG cable has one of 10 AWG. Old cable may have a thin one, or none.";
    GROUND_SAME = "As in today's cable";
    GROUND_SMALL = "16 AWG";
    GROUND_NONE = "None";
    WIRES = "Other wires";
    WIRES_HINT = "Wires in pipe, loops, pigtails, grounds by hand, light fixture wires.";
    WIRE = "Wires";
    SIZE = "Size";
    HOW = "What it does";
    HOW_ENDED = "Ends or is spliced here";
    HOW_THROUGH = "Straight through, uncut";
    HOW_LOOPED = "Loops through, uncut";
    HOW_INSIDE = "Pigtail, stays inside";
    HOW_GROUND = "Ground or bond, comes in";
    HOW_ISOLATED = "Isolated ground, comes in";
    HOW_CANOPY = "Light fixture (luminaire) wire, from its canopy";
    HOW_CANOPY_GROUND = "Light fixture ground, from its canopy";
    LOOP = "Length of the loop";
    LOOP_HINT = "Twice the free length or more counts two. If you don't say, it counts two.";
    TOO_LARGE = "Conductors of 4 AWG and larger leave this rule: NEC 314.28 sizes the box by distance. Ask your electrician.";
    CLAMPS = "Cable clamps";
    CLAMPS_HINT = "One allowance in all if any is inside.";
    CLAMPS_OUTSIDE = "None, or outside";
    CLAMPS_INSIDE = "Inside the box";
    SUPPORTS = "Light fixture (luminaire) supports";
    SUPPORTS_HINT = "One allowance for each type.";
    SUPPORT = "Support fitting";
    SUPPORT_KIND = "Fitting";
    STUD = "Fixture stud";
    HICKEY = "Hickey";
    DEVICES = "Devices";
    DEVICE = "Device";
    DEVICE_KIND = "Device";
    SWITCH = "Switch";
    THREE_WAY = "3-way";
    RECEPTACLE = "Receptacle";
    GFCI = "GFCI";
    DIMMER = "Dimmer";
    HEAVY = "Range or dryer";
    DEVICE_SIZE = "Wire on it";
    DEVICE_SIZE_HINT = "The largest wire connected to it. If you don't say, it counts as the largest wire in the box.";
    SIZE_LARGEST = "Largest here";
    DEVICE_GANGS = "Gangs wide";
    DEVICE_GANGS_HINT = "2 for a range or dryer receptacle.";
    BEHIND = "Reaches back";
    BEHIND_HINT = "How far it stands behind its yoke: smart dimmers, GFCIs. Leave it empty to skip the depth.";
    BLOCKS = "Terminal blocks";
    BLOCKS_HINT = "They count from the 2023 edition on.";
    BLOCK = "Terminal block";
    BLOCK_SIZE = "Largest wire on it";

    // Round it.
    FREE = "Free conductor";
    FREE_HINT = "How much wire to leave.";
    EMERGES = "Sheath end to opening";
    EMERGES_HINT = "From where the wires leave the sheath to the front of the box. If you don't say, the depth of the box is used.";
    LEFT = "Free length you have";
    LEFT_HINT = "Leave it empty to see only what is needed.";
    FINISH = "Wall getting thicker";
    FINISH_HINT = "Board over, tile or skim in front of the box.";
    PROUD = "Box past framing";
    PROUD_HINT = "How far its front stands out past the studs or joists.";
    BUILD = "Finish in all";
    BUILD_HINT = "Old and new layers together, over the framing.";
    SURFACE = "Surface of";
}
