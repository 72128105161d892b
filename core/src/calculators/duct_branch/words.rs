//! All that a person reads of a branch before it is worked out.

use crate::words;

words! {
    NAME = "A branch, made longer or moved";
    ABOUT = "How much air a branch still gives, and what gives it back";
    NOTHING = "";
    NOW = "The branch now";
    FIT = "Fitting";
    FITTINGS = "Fittings on it now";
    FITTINGS_HINT = "None where the length above is the effective length.";
    ANGLE = "Turns by";
    C = "Its C";
    C_HINT = "Velocity pressures that it loses.";
    FEET = "Its equivalent length";
    COUNT = "How many";
    ADD_ELBOW = "Smooth elbow";
    ADD_PIECED = "Elbow in pieces";
    ADD_BOOT = "Boot";
    ADD_TEE = "Take-off, tee";
    ADD_PLENUM = "Take-off, plenum";
    FLOW = "Air now";
    FLOW_HINT = "Measured at the register with a hood, or a guess: then say between what, below.";
    FLOW_LEAST = "If a guess: no less than";
    FLOW_LEAST_HINT = "Blank where it was measured.";
    FLOW_MOST = "And no more than";
    SYSTEM = "All the system's air";
    SYSTEM_HINT = "Blank leaves out what happens where the blower holds its air.";
    OTHERS = "Other branches";
    OTHERS_HINT = "Taken as one lump that loses as this one does.";
    ADDED = "Straight duct added";
    ADDED_HINT = "Of the same kind and size. −4 ft where it gets shorter.";
    ADDED_FITTINGS = "Fittings added";
    PIECE = "Piece of another kind";
    PIECE_NONE = "None";
    PIECE_FLEX = "Flexible";
    PIECE_ROUND = "Round metal";
    PIECE_DIAMETER = "Its diameter, inside";
    PIECE_LENGTH = "Its length as it lies";
    PIECE_SLACK = "Shorter than pulled tight by";
    PIECE_TIGHT = "Or its length pulled tight";
    PIECE_TIGHT_HINT = "One of the two; both blank for pulled tight.";
    NEW_DIAMETER = "Whole run anew, diameter";
    CUT_SLACK = "Cut the run's slack out";
    CUT_SLACK_HINT = "Of a flexible run.";
    WRAP = "Old tape or wrap on it";
    WRAP_HINT = "Gray or white cloth, paper or plaster on joints and boots.";
    WRAP_UNKNOWN = "Not looked yet";
    WRAP_YES = "Yes";
    WRAP_NO = "No: bare metal or new duct";
    WHY_CFM = "that is more than a house moves through it.";
    WHY_C = "that is as good as shut.";
    WHY_COUNT = "count again, or put in the effective length.";
    WHY_ADDED = "no branch in a house is that long.";

    TOO_FAST = "Air would run at {0} there. Check size and cfm.";
    NOT_LESS = "It has to be no more than the air now, {0}.";
    NOT_MORE = "It has to be no less than the air now, {0}.";
    SYSTEM_SMALL = "It has to be more than this branch gets, {0}.";
    NOTHING_LEFT = "That leaves nothing of {0}. Take less out.";
    ONE_OF_TWO = "Give the slack or the length pulled tight, not both.";
    TIGHT_SHORT = "It can't lie longer, {0}, than it is pulled tight.";
    TOO_SLACK = "That is {0} shorter than pulled tight, past 60 %: check both lengths.";
}
