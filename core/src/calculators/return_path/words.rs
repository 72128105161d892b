//! All that a person reads of a room before it is worked out.

use crate::words;

words! {
    NAME = "The way back, with the door shut";
    ABOUT = "How far a shut door pressurizes a room, and how large a way back has to be";
    NOTHING = "";
    FLOW = "Supply air to the room";
    FLOW_HINT = "All its registers together.";
    OWN = "Return air taken in the room";
    OWN_HINT = "Blank where it has no return of its own.";
    DOOR = "Door, how wide";
    GAP = "Gap under the door";
    GAP_HINT = "Over the finished floor. Over a bare subfloor, say below what comes on it.";
    FLOOR = "Floor still to come under it";
    FLOOR_HINT = "Carpet with its pad, tile, boards: it closes the gap.";
    WAYS = "Other ways out";
    WAYS_HINT = "Side by side they add; one behind the other they don't.";
    WAY = "Way out";
    GRILLE = "Grille through door or wall";
    PAIR = "Two grilles, a wall cavity between";
    JUMP = "Jump duct with two grilles";
    KNOWN = "Net area known";
    WIDE = "Grille, one side";
    HIGH = "Grille, other side";
    OTHER_WIDE = "Second grille, if it differs";
    OTHER_HIGH = "Its other side";
    DIAMETER = "Duct diameter, inside";
    DIAMETER_HINT = "Short and pulled tight: its friction is not counted.";
    SHARE = "Open share of the face";
    SHARE_HINT = "Its maker's free area. Blank for 75 %, usual for a transfer grille.";
    NET = "Net area";
    RULE = "Held to";
    RULE_HINT = "They are different rules. Ask which one holds here.";
    CUT = "New opening is cut through";
    CUT_HINT = "Old surfaces are held until a laboratory has looked at them.";
    CUT_NONE = "Nothing old";
    CUT_PLASTER = "Old plaster";
    CUT_BOARD = "Old board and its joint compound";
    CUT_WRAP = "Old duct, its tape or wrap";
    CUT_OTHER = "Something else old, or not known";
    FLAME = "Open-flue appliance or fireplace";
    FLAME_HINT = "A water heater, furnace or hearth that takes its air from the same space as the return.";
    FLAME_UNKNOWN = "Not looked yet";
    FLAME_YES = "Yes";
    FLAME_NO = "None, or sealed only";
    FLAME_OFF = "From it to the return opening";
    CENTRAL = "Size a return grille too";
    CENTRAL_NONE = "No";
    CENTRAL_RETURN = "Return grille, no filter";
    CENTRAL_FILTER = "Filter grille";
    CENTRAL_FLOW = "Its air";
    CENTRAL_SPEED = "Air through it";
    CENTRAL_SPEED_HINT = "Blank for 500 fpm through what is open, or 300 fpm of a filter grille's face.";
    WHY_CFM = "that is more than goes through here in a house.";
    WHY_FACE = "larger is an opening for a designer.";
    WHY_SHARE = "no grille is more open than that.";
    WHY_DOOR = "measure again.";
    WHY_GAP = "that is no undercut.";
    WHY_SPEED = "that roars.";

    TAKES_MORE = "A return may take no more than the room gets, {0}. Where it takes as much, no other way back is needed.";
    NO_WAY = "Hardly anything lets the air back. To stay within {0} it needs {1} net.";
}
