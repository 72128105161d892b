//! Where crews set boxes off a level line, and what they keep them clear of.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    SET_OUT_SAYS = "Usual heights over the finished floor: receptacles 16 in, switches 48, counters 44, to the middle. Floors more than 1/4 in apart: say which one a height counts from.";
    CLEAR_SAYS = "A box keeps off a board's level seam, 1 in over a backsplash, and 1 in off a casing, so that its plate clears.";
    LASER_SAYS = "A laser or level is off by so much over so much: 1/8 in at 30 ft is usual. Its own sheet says.";
    SEEN = "common practice";
}

source!(
    /// Usual heights.
    SET_OUT, "box-heights", "Box heights, habit", SET_OUT_SAYS, SEEN, CommonPractice
);
source!(
    /// What a box keeps clear of.
    CLEAR, "box-clearances", "Box clearances, habit", CLEAR_SAYS, SEEN, CommonPractice
);
source!(
    /// How far off an instrument is.
    LASER, "level-accuracy", "Levels and lasers, habit", LASER_SAYS, SEEN, CommonPractice
);

/// Finished floors this far apart are as good as one.
pub const LEVEL: Limit<Length> = Limit { value: Length::inches(1, 4), source: &SET_OUT };
/// A box doesn't lie across a seam.
pub const OFF_SEAM: Limit<Length> = Limit { value: Length::ZERO, source: &CLEAR };
/// From a box to a backsplash below it or a casing beside it.
pub const FOR_PLATE: Limit<Length> = Limit { value: Length::inches(1, 1), source: &CLEAR };
