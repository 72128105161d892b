//! All that a person reads of receptacles around a room.

use crate::words;

words! {
    NAME = "Receptacles around a room";
    ABOUT = "The fewest that the code asks along the walls, where they go on the studs, and what is missing";
    NOTHING = "";

    BREAKS = "Doors and what else breaks the wall";
    BREAKS_HINT = "Walls are numbered from wall 1, on top in the drawing, clockwise. Cabinets that stay with a countertop on them don't break it.";
    BREAK = "Break";
    KIND = "What it is";
    DOOR = "Doorway";
    SLIDER = "Sliding glass door";
    FIREPLACE = "Fireplace";
    CABINET = "Fixed cabinet";
    GLASS = "Fixed glass to the floor";
    WALL = "In wall";
    FROM = "From the wall's left end";
    FROM_HINT = "Facing it from inside, to its nearer edge.";
    WIDE = "How wide";
    HAVE = "Receptacles that are there";
    HAVE_HINT = "Those along the walls: up to 5-1/2 ft, in no cabinet, over no counter.";
    RECEPTACLE = "Receptacle";
    AT = "From the wall's left end, to its middle";
    ON_STUDS = "Beside studs only";
    ON_STUDS_HINT = "Off: a box that is cut in anywhere.";
    FIRST = "Wall's left end to a stud's middle";
    SPACING = "Studs apart";
    THICK = "Stud, thick";
    BOX = "Box, wide";
    KEEP = "Off an opening's edge, at least";
    KEEP_HINT = "Casing and 1 in, so that the plate clears.";
    WHY = "no room of a house takes that.";
    SAY_WALL = "Say which wall it is in.";
    NO_WALL = "There are {0} walls.";
    PAST_WALL = "That is past the wall's end, {0} from its left.";

    FEWEST = "The code's fewest";
    THERE = "Along the walls now";
    MISSING = "Missing";
    SPACES = "Wall spaces that need one";
    NEXT_NEW = "The code's floor is {0}. That is the fewest, not a design: add where you will plug in.";
    NEXT_HAVE = "The code's floor is {0}, you have {1}, and {2} {2?is|are} missing with those that stay.";
    NO_DOOR = "No doorway is put in: the walls are taken to start and end where wall 1 starts.";
    BOTH = "{0} {1}";

    CHECK = "Receptacles missing";
    NO_PLACE = "There is wall with no place for a box within 6 ft: a floor box within 18 in of the wall, or another place.";

    SPOTS = "Where they go";
    EXTRA = "Where the missing ones go";
    NUMBER = "{0}";
    SPOT = "wall {0}, {1} from its left end";
    STAY = "Those that are there";
    STAYS = "wall {0}, {1}: may stay";
    IN_BREAK = "wall {0}, {1}: stands in an opening, and goes";
    NOT_NEEDED = "wall {0}, {1}: may stay; no space there needs one";
    PER_SPACE = "Wall spaces";
    SPACE = "Space {0}";
    SPACE_OF = "{0} from wall {1} on: {2}";
    SHORT_OF = "{0} from wall {1} on: under 2 ft, none";
    STEP = "Space {0}, at least";
    STUDS_NOTE = "Studs are reckoned from each wall's left end. Find them before you cut.";
    NOT_COUNTED = "Not counted: in a cabinet, over 5-1/2 ft up, part of a light, over a counter, a floor box more than 18 in off the wall, or one whose switched half lights the room.";
    ALSO = "Tamper-resistant all of them; a new or longer circuit mostly takes an AFCI. Ask which edition holds.";

    DEAD = "Dead, and proved dead, before a box or a cable in the wall is touched.";
    CUT = "Old board, plaster and paint can hold asbestos and lead: tested before anybody cuts.";
    LICENSED = "Where the law says so, a licensed electrician adds receptacles; local amendments go first.";

    DRAWING = "Plan from above, wall 1 on top, to scale";
    MEANS_WALL = "A wall";
    MEANS_NEW = "A receptacle to set";
    MEANS_HAVE = "A receptacle that is there";
    LABEL_WALL = "wall {0}";
    TWIN = "Receptacle {0}: wall {1}, {2} from its left end.";
    TWIN_BREAK = "{0} in wall {1}, {2} from its left end, {3} wide.";
    TWIN_HAVE = "There now: wall {0}, {1} from its left end.";
}
