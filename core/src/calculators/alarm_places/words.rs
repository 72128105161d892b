//! All that a person reads of where smoke alarms may sit.

use crate::words;

words! {
    NAME = "Where smoke alarms may sit";
    ABOUT = "How many a house needs, and one place against bath, register, fan, cooking and ceiling";
    NOTHING = "";

    BEDROOMS = "Bedrooms";
    AREAS = "Sleeping areas, each with a way out of its own";
    AREAS_HINT = "Bedrooms off one hall are one area.";
    LEVELS = "Levels with no bedroom, basement too";
    HAVE = "Alarms in those places now";
    SENSING = "This alarm is";
    SILENCE = "It has a silencing button";
    MOUNT = "It sits";
    CEILING = "On a flat ceiling";
    WALL = "On a wall";
    SLOPE = "On a slope";
    BATH = "To the bathroom's door";
    BATH_HINT = "A bathroom with a tub or shower. Measured level.";
    REGISTER = "To the supply register's edge";
    FAN = "To the tips of the fan's blades";
    COOKING = "To the range or oven";
    COOKING_HINT = "Along the way that air goes, round walls.";
    BEDROOM = "To the farthest bedroom's door";
    BEDROOM_HINT = "Outside a sleeping area: on the way there.";
    TOP = "Its top below the ceiling";
    PEAK = "To the peak, level";
    BELOW = "Below the peak";
    WHY = "no house of a family takes that.";

    NEEDED = "Smoke alarms needed, at least";
    IN_BEDROOMS = "In bedrooms";
    OUTSIDE = "Outside sleeping areas";
    ON_LEVELS = "On other levels";
    NEXT = "Moving a register, a fan or a door can make a good place bad: measure again when one moves.";
    CHECK_HAVE = "Alarms there";
    CHECK_BATH = "From the bathroom's door";
    CHECK_REGISTER = "From the supply register";
    CHECK_FAN = "From the fan's blades";
    CHECK_COOKING = "From cooking, NFPA 72";
    CHECK_HOME = "From cooking, residential code";
    CHECK_BEDROOM = "From the bedroom's door";
    CHECK_TOP = "Its top below the ceiling";
    CHECK_CORNER = "Off the corner with the ceiling";
    CHECK_PEAK = "From the peak";
    CHECK_BELOW = "Below the peak";
    CORNER_ASK = "Newer rules dropped it; the alarm's own sheet may still ask for it.";
    MEMORY = "From memory: check it in the book, and in the alarm's own sheet.";

    DEAD = "Dead, and proved dead, before a wired alarm is taken down or moved.";
    SHEET = "The alarm's own sheet, local rules and who inspects go first. Wired ones are a licensed electrician's work where the law says so.";

    DRAWING = "How far it is from each, and the least or most, to scale";
    MEANS_FAR = "As measured";
    MEANS_LIMIT = "The limit";
    LABEL = "{0}";
    TWIN = "{0}: {1}, the limit {2}.";
}
