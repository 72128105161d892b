//! All that a person reads of a ceiling under a gable.

use crate::words;

words! {
    NAME = "A ceiling raised into a gable";
    ABOUT = "What is left flat, and what higher ties do to rafters, walls and nails: numbers for the engineer";
    NOTHING = "";

    // What is asked.
    ROOF = "Roof over it";
    ROOF_HINT = "Look in the attic. A ridge beam is posted down to a footing; a ridge board only keeps rafters apart.";
    UNKNOWN = "Not known";
    BOARD = "Rafters on a ridge board";
    BEAM = "Rafters on a ridge beam";
    TRUSSES = "Trusses";
    SPAN = "Span, outside of wall to outside";
    SPAN_HINT = "At the top of the plates, square to the ridge. What is left flat is counted the same way: the walls come off it.";
    WHY_SPAN = "wider than that, nothing here is prescriptive.";
    PITCH = "Slope, rise in 12";
    PITCH_HINT = "A level and a tape on a rafter: up in 12 in along.";
    WHY_PITCH = "steeper than that is a wall.";
    UP = "Joists or ties raised by";
    UP_HINT = "Top of the plate to their underside. Empty: they stay.";
    RIDGE_UNDER = "Plate to the ridge's underside";
    RIDGE_UNDER_HINT = "Measured plumb, from the top of the plate: the code's third is of this. Empty: only span and slope tell.";
    WHY_RIDGE = "no ridge of a house is that high.";
    WHY_UP = "no room of a house goes up that far.";
    SPACING = "Ties apart";
    SPACING_HINT = "Those that go on being ties, center to center.";
    WHY_SPACING = "that far apart nothing is tied.";
    GIVEN = "Roof load is given";
    GIVEN_HINT = "Live or snow from the building department; dead is what the roof itself weighs.";
    ON_THE_FLAT = "All in one, on the flat";
    APART = "Dead on the slope, live or snow on the flat";
    LOAD = "Roof load, on the flat";
    LOAD_HINT = "Dead and live or snow, over a square foot of floor plan.";
    DEAD = "Roof, along its slope";
    DEAD_HINT = "Wood roof with shingles, panel and board: about 15.";
    LIVE = "Live or snow, on the flat";
    LIVE_HINT = "Roof live load is often 20; snow is local.";
    WHY_LOAD = "no house roof is built for that.";
    STOPS = "Is any of this so?";
    STOPS_HINT = "Each takes the gable out of the code's tables.";
    CUT = "A tie is cut, notched or spliced";
    ACROSS = "Ties don't run along the rafters, wall to wall";
    PURLINS = "Purlins or braces hold the rafters";
    UNEQUAL = "Sides differ in span, slope or load";
    HIPS = "Hips, valleys or dormers are near";
    NAILS = "Nails in a heel joint";
    NAILS_HINT = "From the heel-joint table of your adopted code, ties at the plate.";
    WHY_NAILS = "no heel joint takes that many.";
    INSULATION = "Insulation wanted";
    NONE = "Not asked";
    BY_R = "By R";
    BY_DEPTH = "By depth";
    R = "R";
    R_HINT = "The adopted energy code has it.";
    WHY_R = "no house needs that much.";
    R_PER_INCH = "R of an inch";
    R_PER_INCH_HINT = "From the bag.";
    WHY_R_PER_INCH = "nothing sold holds that much.";
    DEPTH = "Depth";
    WHY_DEPTH = "no attic is filled that deep.";
    HEEL = "Plate to top of rafter, plumb";
    HEEL_HINT = "At the outside of the wall.";
    RAFTER = "Depth of a rafter";
    RAFTER_HINT = "Measured, square to its slope.";
    WHY_RAFTER = "no rafter is that deep.";

    // What can't be taken.
    TOO_HIGH = "The ridge is {0} over the plate. It has to be less.";
    TOO_HIGH_LOW = "Under 3 in 12 no tie does: the ridge is a beam for an engineer to design. It is {0} over the plate, and ties have to be lower.";
    RIDGE_HIGH = "By span and slope the rafters meet {0} over the plate, and the ridge's underside is no higher. Measure it, the span or the slope again.";
    TOO_MUCH = "These numbers are past what is held. Look again.";

    // What comes out.
    FLAT = "Flat width left, not flat to the eaves";
    FLAT_ALL = "Flat width";
    RISE = "Ridge over plate, by span and slope";
    SHARE = "Ties, share of the ridge's height";
    ON_FLAT = "Roof load, on the flat";
    THRUST_NOW = "Thrust now, ties at the plate";
    THRUST = "Thrust on each foot of wall";
    TIE_NOW = "Tension now, ties at the plate";
    TIE = "Tension in one tie";
    RIDGE = "Ridge beam carries";
    WALL = "Each wall carries";
    RAFTERS = "Rafter spans, times";
    NAIL_FACTOR = "Heel nails, times";
    NAIL_COUNT = "Heel nails";
    EAVE = "Left for insulation at the wall";
    SLOPE = "Left for insulation in the slope";
    WANTED = "Insulation, depth wanted";

    CHECK_THIRD = "Ties over the plate";
    CHECK_SLOPE = "Slope of the roof";
    CHECK_SPACING = "Ties apart";
    CHECK_MOVED = "Ties moved";
    CHECK_SCOPE = "Outside the tables";
    CHECK_EAVE = "Insulation at the wall";
    CHECK_FILL = "Insulation in the slope";
    ASK_RIDGE = "By span and slope only. The code measures to the ridge's underside, which is lower: measure it.";
    ASK_MOVED = "A licensed engineer's to say, whatever the other lines say.";
    ASK_BEAM = "Whether the ridge is a beam, carried down to footings: the engineer's to say.";
    ASK_SCOPE = "This gable is outside the code's tables.";
    ASK_ROOF = "Find out what the roof is first.";
    ASK_SPACING = "2024 asks for no more. Ask which edition is adopted.";
    ASK_AIR = "The 1 in of air is from memory. Ask; a roof made without vents differs.";

    WHY_PART = "Why it takes an engineer";
    STOP = "stop";
    ROWS_PART = "The code's rows taken";
    ROWS_NOTE = "The ridge's underside isn't put in: taken as {0} under where the rafters meet.";
    ROW_RAFTERS = "Rafter spans, ties at {0}";
    ROW_NAILS = "Heel nails, ties at {0}";
    TIMES = "× {0}";

    FIRST = "Moving joists or ties, cutting trusses, and sizing a beam, post or footing is a licensed engineer's work: these numbers are for that talk.";
    FIRST_TRUSS = "Nothing of a truss is moved, cut, notched or spliced without its designer: no numbers here for that.";
    SHORE = "Ties hold walls and ridge. None comes out before its replacement is in, or before shoring that an engineer has drawn.";
    LATHER = "Old ceilings, loose fill and vermiculite can hold asbestos, old paint lead: have them tested first. Live cables run over ceilings.";
    WIND = "Drifted snow, wind uplift, walls over 10 ft and gable walls that lose their ceiling are not in these numbers.";
    LOCAL = "Local code and the building department decide.";

    DRAWING = "The gable in section, to scale";
    RAFTER_LINE = "A rafter";
    TIE_BEFORE = "The ties now";
    TIE_AFTER = "The ties, raised";
    LOWER_THIRD = "The lower third of the rise";
    ABOVE_THIRD = "Over a third of the rise";
    WALL_LINE = "A wall";
    LEGEND = "dashed: ties now; heavy: raised";
    LEGEND_THIRD = "tone: lower third";
    LEGEND_OVER = "tone: lower third; hatch: over it";
    TWIN = "A gable {0} wide, its ridge {1} over the plates.";
    TWIN_UP = "The ties go from the plates, dashed, up by {0}, where {1} are left between the rafters.";
    TWIN_OVER = "They stand over the lower third, which ends at {0}; what is between is hatched.";
    TWIN_NEAR = "By span and slope the lower third ends at {0}; under the ridge itself it ends lower.";
    TWIN_IN = "They stand in the lower third, which ends at {0}.";
}
