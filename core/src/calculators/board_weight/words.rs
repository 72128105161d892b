//! All that a person reads of what board weighs.

use crate::words;

words! {
    NAME = "Weight of board and pails";
    ABOUT = "What there is to carry and to lift, and what board bears on a ceiling";
    NOTHING = "";

    PANEL = "Board";
    WIDE = "Wide";
    W48 = "48 in";
    W54 = "54 in";
    LONG = "Long";
    WHY_LONG = "no longer ones are made.";
    SHEETS = "Sheets";
    WHY_SHEETS = "that is a truckload.";
    PAILS = "Pails of compound, 4.5 gal";
    PEOPLE = "Lift one together";
    WHY_PEOPLE = "they won't fit.";
    HUNG = "Hung on a ceiling";
    SPACING = "Framing apart";
    SPACING_HINT = "Center to center, board across it.";
    WHY_SPACING = "no board spans that.";
    TEXTURED = "Water-based texture goes on it";
    TEXTURED_HINT = "A wet board sags.";
    INSULATION = "Insulation lying on it";
    INSULATION_HINT = "What it weighs on a square foot: the heat of a raised ceiling tells it.";
    WHY_INSULATION = "that is no insulation.";

    SHEET = "A sheet";
    EACH = "Each who lifts it";
    PAIL = "A pail, full";
    ALL = "To carry in all";
    LOAD = "Weight the framing carries";

    CHECK_LIFT = "Lifted by each";
    MORE_HANDS = "More hands or a panel lift: no law makes it a limit, backs do.";
    CHECK_SAG = "Insulation on the board";
    THIN = "No figure for board this thin: take thicker board, or its maker's word.";

    NEXT = "{0} to a sheet, on edge, a clear way. A panel lift for ceilings.";
    STACK = "A stack is heavy: 60 sheets of 1/2 in weigh a ton and a half. Spread it flat along walls, across joists; leaned, it tips and kills.";
    BACK = "Over the head, and on ladders or stairs, a back bears far less. Lift the pail with the legs.";
    JOISTS = "Whether old joists hold it is a question of their span: see ceiling joists, or an engineer.";
}
