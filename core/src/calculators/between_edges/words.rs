//! All that a person reads of a box between two edges.

use crate::words;

words! {
    NAME = "A box between two edges";
    ABOUT = "Where its middle goes, which stud it is packed off, with how many pieces, and the screw";
    NOTHING = "";

    GAP = "Edge to edge";
    GAP_HINT = "Casing to casing, cabinet to corner: as it will be when finished.";
    WIDE = "Box, wide";
    PLATE = "Plate, wide";
    AIM = "Wanted";
    EVEN = "As much left at both sides";
    PLACED = "Its middle where I say";
    AT = "Left edge to its middle";
    STUD = "Left edge to a stud's middle";
    STUD_HINT = "Any stud there; the others follow by their spacing.";
    SPACING = "Studs apart";
    THICK = "Stud, thick";
    SHEETS = "Sheets at hand for packing";
    SHEETS_HINT = "Measure them: 3/4 in plywood is often 23/32.";
    SHEET = "Sheet";
    EACH = "Thickness";
    T4 = "1/4 in";
    T6 = "3/8 in";
    T8 = "1/2 in";
    T10 = "5/8 in";
    T12 = "3/4 in";
    SIDE = "Box's own side";
    WHY = "no wall of a house takes that.";

    NO_FIT = "The box reaches past an edge. Measure again.";

    EACH_SIDE = "Left over, each side";
    AT_LEFT = "Left over, at left";
    AT_RIGHT = "Left over, at right";
    MIDDLE = "Left edge to its middle";
    BESIDE = "Stud's middle, from the left edge";
    WANTED = "Packing wanted";
    MADE = "Packing made";
    OFF = "Off its place by";
    PIECES = "Pieces of packing";
    SCREW = "Screw, at least";
    NEXT_RIGHT = "The box goes on the right of the stud {0} from the left edge: {1}.";
    NEXT_LEFT = "The box goes on the left of the stud {0} from the left edge: {1}.";
    NO_PACKING = "no packing";
    ONE_KIND = "{0} × {1}";
    AND = "{0} + {1}";
    NEXT_BLOCK = "No stud is near: set a block or a bar between the studs, and screw the box to it.";
    NEXT_CLASH = "The box meets a stud there. Move it {0} left or {1} right, or cut in a box that a stud doesn't stop.";
    NEEDS = "Its side, packing and 1 in of stud";

    CHECK_STUD = "Box over a stud";
    CHECK_PLATE = "Left over at the nearer edge, for the plate";
    CHECK_PACK = "Packing";
    ASK_PACK = "More than is packed: a block or a bar.";
    CHECK_OFF = "Off its place";
    ASK_OFF = "The sheets at hand come no nearer. Plane one down, or add another.";
    STOCK = "Packing {0} thick";

    DEAD = "Dead, and proved dead, before a box or a cable in the wall is touched.";
    LICENSED = "A licensed electrician sets boxes where the law says so; the box's own sheet says how it is fastened.";

    DRAWING = "Studs, packing and box between the edges, to scale";
    MEANS_EDGE = "An edge";
    MEANS_STUD = "A stud";
    MEANS_PACKING = "Packing";
    MEANS_BOX = "The box";
    TWIN = "The box is {0} wide, {1} from the left edge and {2} from the right.";
    TWIN_STUD = "A stud's middle is {0} from the left edge.";
}
