//! What a person reads of a cut's answer.

use crate::words;

words! {
    HOLE = "Hole";
    NOTCH = "Notch";
    PAPERS = "Paper to get first";

    // Checks.
    SIZE = "Size, for the structure";
    EDGE = "Wood at the nearer edge";
    EDGE_JOIST = "Wood to top or bottom";
    NONE_PASSES = "None passes; wood to top or bottom";
    OFF = "{0}, bit off its mark";
    INSIDE = "Hole and bit off its mark, between the faces";
    IN_A_ROW = "Doubled studs in a row";
    SECTION = "Notches at the hole";
    APART_HOLE = "Wood to the next hole";
    APART_NOTCH = "Wood to the next notch";
    LENGTH = "Length of the notch";
    CUT_AWAY = "Gone at one section";
    SUM = "All holes together";
    TIE = "Length of the tie";
    BARE = "Wood before a steel plate";
    STEEL = "Steel plates";
    AT_HAND = "Papers at hand";

    ASK_WALL = "This wall's plans or the inspector come first: bracing, fire rating or load may ask more.";
    ASK_WORDS = "More than half. The rule's words are for pipes and ducts in exterior and bearing walls: ask whether it is tied all the same.";
    ASK_SOLE = "More than half, and no rule is printed for a sole plate: ask how both ends are held.";
    ASK_OFF = "On its mark it is within the rule; {0} off it, it isn't. Mark it and start it true.";
    ASK_INSIDE = "It may break out of a face: it is a notch then. Move it, or ask for it as a notch.";
    ASK_PLACE = "Say where along the span: in the middle third no notch is allowed.";
    ASK_THICK = "What is 4 in thick or more is notched on its tension side, mostly its bottom, only at its ends: ask.";
    ASK_SHEATHED = "The exception needs wood structural panel over that whole side of the wall. Show it to the inspector.";
    ASK_SUM = "Holes at other sections don't add up by the words. Some inspectors add them: ask before you leave the tie out.";
    ASK_APART = "Common practice keeps them a hole's width apart.";
    SEVERED = "Nothing is sure to be left across the plate. A tie alone is no remedy: use wider framing, go round, or ask.";
    ENGINEER_NOTE = "A licensed engineer's paper says where and how large.";
    PAPER_NOTE = "Only the maker's literature or a registered designer's paper says where and how large.";
    TIE_NOTE = "Then a steel tie, {0} or longer, {1} nails on each side.";

    // What to do.
    NEXT_PAPER = "Get the paper first. This page gives no numbers for it.";
    NEXT_HERE = "Largest here: {0}.";
    NEXT_MOVE = "None passes here. In the middle up to {0}.";
    NEXT_NONE = "No hole passes. Run over it, round it, or on a board beside it.";
    NEXT_TIE = "Tie it: steel {0} long or longer, {1} nails each side.";
    NEXT_STEEL = "The structure takes it. Put steel on {0}.";
    NEXT_ASK = "{0} Then steel on {1}.";
    NEXT_FACES = "Put steel on {0}.";
    TOP_EDGE = "the top";
    BOTTOM_EDGE = "the bottom";
    BOTH_EDGES = "top and bottom";
    NEAR_FACE = "the face you measure from";
    FAR_FACE = "the other face";
    BOTH_FACES = "both faces";
    OPEN_FACE = "the notch";

    // What may be drilled.
    MAY = "What may I drill?";
    MAY_CUT = "What may I cut?";
    MAY_NOTE = "In sixteenths, with the bit as far off its mark as it may be.";
    SOLE_NOTE = "No rule is printed for a sole plate. Up to half its width is advice.";
    PLATE_NOTE = "A top plate has no limit of its own: up to half its width it needs no tie.";
    HERE = "Largest bit here";
    CENTERED = "Largest bit in the middle";
    HERE_BARE = "Largest here without a steel plate";
    CENTERED_BARE = "Largest in the middle without a steel plate";
    WINDOW = "Center of this bit, off the face";
    WINDOW_TOP = "Center of this bit, from the top";
    WINDOW_PLATE = "Center of this bit, no tie needed";
    WINDOW_BARE = "The same without a steel plate";
    DEEPEST = "Deepest notch";
    LONGEST = "Longest notch";
    FROM_TO = "{0} to {1}";
    IS = "{0}";
    NONE = "none";

    STEEL_TAKES = "Steel plates it takes";

    // Figures and working.
    SHARE = "Of the width";
    LIMIT = "Largest by its width";
    CLEAR = "Wood on the side measured from";
    CLEAR_FAR = "Wood on the other side";
    CLEAR_TOP = "Wood over it, from the top";
    CLEAR_BOTTOM = "Wood under it";
    CLEAR_EACH = "Wood on each side";
    TIE_LEAST = "Shortest tie";
    THIRD_FROM = "Middle third, from";
    THIRD_TO = "Middle third, to";

    // On hand.
    STEEL_CABLE = "Steel plate for cable, 1/16 in or listed";
    STEEL_PIPE = "Steel plate for pipe, 16 gauge";
    TIE_STEEL = "Galvanized tie, 1-1/2 in wide, 0.054 in thick";
    NAILS = "10d nails, 0.148 × 1-1/2 in";
    SEALANT = "Approved fireblock fill, a hole";

    COUNTED_BARE = "Counted as bare framing: if anything old covers it, choose that. {0}";
    BEHIND = "Know what is behind: prove wiring dead and find pipes before the bit goes in.";
    NO_PROOF = "Within a limit is no proof of strength. A moved, sistered or already cut member, and any bearing change, is an engineer's.";
    NOT_A_TIE = "A plate against nails is not the tie, unless its maker says so. One tie or one a plate: see the code's figure with the inspector.";
    LOCAL = "Local code and the inspector decide.";

    // The drawing.
    DRAWING = "The wood lying, what is measured from on top, and its section";
    WOOD = "The wood";
    SECTION_CUT = "The wood, cut at the hole";
    ZONE = "No hole's edge here";
    ZONE_BARE = "A hole's edge here takes steel";
    WINDOW_INK = "Where the center may be";
    VIEW_SIDE = "along the bit";
    VIEW_SECTION = "in section";
    KEY_ZONE = "hatched: no hole's edge, {0}";
    KEY_BARE = "shaded: takes steel, {0}";
    KEY_HOLE = "hole {0}";
    KEY_NOTCH = "notch {0} deep";
    KEY_LONG = "and {0} long";
    KEY_CLEAR = "left {0}, {1}";
    KEY_WINDOW = "bar: center {0} to {1}";
    KEY_CENTER = "bar: center at {0}";
    TWIN = "{0}, {1} wide.";
    TWIN_HOLE = "A hole of {0}, {1} of wood on one side and {2} on the other.";
    TWIN_NOTCH = "A notch {0} deep and {1} long.";
    TWIN_WINDOW = "The center of this bit may be {0} to {1} off the face.";
    TWIN_DEEP = "{0}, {1} deep.";
    TWIN_TOP = "The center of this bit may be {0} to {1} from the top.";
    TWIN_HALF = "Wherever it is, it takes more than half.";
    TWIN_NO_WINDOW = "This bit may be nowhere in it.";
}
