//! All that a person reads of ceiling joists.

use crate::words;

words! {
    NAME = "Ceiling joists, as a check on what is there";
    ABOUT = "How far the code's table lets them span, and what hangs on them";
    NOTHING = "";

    SPECIES = "Species and grade";
    SPECIES_HINT = "From the stamp on a joist. Nothing is guessed of old lumber.";
    SIZE = "Size";
    SIZE_HINT = "Dressed sizes of today. Old lumber is another size.";
    APART = "Joists apart";
    APART_HINT = "Take the farthest two. Between these, the next one up.";
    ATTIC = "Attic above, row of the table";
    ATTIC_HINT = "Pounds on a square foot. Heavy board or deep insulation belongs in the row with storage.";
    SPAN = "Span there";
    SPAN_HINT = "Level, from bearing to bearing.";
    WHY_SPAN = "no ceiling joist spans that far.";
    CEILING = "Ceiling on them";
    SECOND = "And under it";
    SECOND_HINT = "New board over old stays in the weight.";
    FILL = "Insulation on it";
    DEPTH = "Insulation, depth";
    WHY_DEPTH = "no attic is filled that deep.";
    DENSITY = "Insulation, weight of a cubic foot";
    DENSITY_HINT = "From the bag, settled.";
    WHY_DENSITY = "nothing loose is that heavy.";
    ALSO = "Is any of this so?";
    ALSO_HINT = "Each takes the joists out of the table.";
    TIES = "They are the roof's ties";
    FLOOR = "An attic floor or a walkway is on them";
    LOADED = "Ducts, equipment, a wall or roof braces stand or hang on them";
    HARMED = "Some are cut, notched, bored, cracked or spliced";

    TOO_MUCH = "These numbers are past what is held. Look again.";

    TABLE = "Span by the table";
    STIFF = "By stiffness";
    STRONG = "By strength";
    THERE = "Span there";
    JOISTS = "Joists weigh";
    LAYERS = "Ceiling weighs";
    FILL_WEIGHS = "Insulation weighs";
    DEAD = "Joists, ceiling and insulation weigh";
    CHECK_SPAN = "Span of the joists";
    CHECK_DEAD = "Weight against the row's";
    CHECK_SCOPE = "Outside the table";
    ASK_SCOPE = "These joists are outside the table.";
    ASK_WHO = "The table has no such joist: the engineer or the inspector tells.";
    NOTE_DEAD = "Take the row with storage, or less weight. Over that too: an engineer.";

    WHY_PART = "What the table doesn't know";
    ASK = "ask";
    FIRST = "A check on what is there, and no design. New, moved or cut joists, ties and beams are a licensed engineer's work.";
    OLD = "Old ceilings, loose fill and vermiculite can hold asbestos: have them tested before anything is disturbed.";
    STEP = "Walk on joists or planks only, lit, with live cables known. Ceilings carry nobody.";
    SAG = "A joist that sags, is split or wet needs an engineer, whatever a table says. Trusses are in no such table.";
    LOCAL = "Local code and the building department decide.";
}
