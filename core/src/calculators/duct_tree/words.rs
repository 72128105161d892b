//! All that a person reads of branches before they are worked out.

use crate::words;

words! {
    NAME = "Branches together, and one blocked";
    ABOUT = "Which branch loses air, and who gets it";
    NOTHING = "";
    PIECE = "Duct";
    PIECES = "Walk from the air handler";
    PIECES_HINT = "A branch leaves where the trunk piece above it ends; above all of them, at the air handler.";
    WHAT = "It is a";
    BRANCH = "Branch";
    TRUNK = "Trunk piece";
    CALLED = "Called";
    CALLED_HINT = "Such as the room.";
    FROM = "Starts";
    FROM_END = "Where the piece above ends";
    FROM_BESIDE = "Where the piece above starts";
    FROM_HANDLER = "At the air handler";
    LENGTH = "Effective length";
    LENGTH_HINT = "Duct and fittings, as feet of this duct.";
    SLACK_HINT = "Blank for pulled tight.";
    OPEN = "Open share of boot or grille";
    OPEN_HINT = "Blank for all, 0 for shut tight. A rug, a damper or a crushed boot leaves less.";
    HELD = "What stays";
    HELD_HINT = "A blower that holds its air, or one of fixed speed on a large trunk: the truth lies between.";
    HELD_TOTAL = "The system's air";
    HELD_PRESSURE = "The pressure at the start";
    TOTAL = "Air in all";
    PRESSURE = "Pressure at the start";
    PRESSURE_HINT = "What these ducts have to lose: not the whole of the blower's.";
    WHY_OPEN = "all is open then.";
    WHY_TOTAL = "that is no house's blower.";
    WHY_PRESSURE = "that is no house's blower.";

    NO_BRANCH = "List at least one branch: air has to come out somewhere.";
    ALL_SHUT = "Every branch is shut: open one, or the air has no way out.";
    MANY = "{0} branches, and up to {1} are worked together. Take some as one.";
    NOT_FOUND = "The flows could not be found to a billionth: check sizes and lengths for slips.";
}
