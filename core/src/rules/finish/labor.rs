//! What one worker finishes in an hour: habits, never a rule.

use crate::measure::Measure;
use crate::measure::unit::SQUARE_FOOT_AN_HOUR;
use crate::words;

words! {
    SAYS = "One worker skims 40 to 90 sq ft an hour a coat, likely 60, and sands 100 to 220 with a vacuum, likely 150. Ceilings 8 to 9 ft high, rooms empty.";
    SEEN = "common practice; put your own beside it";
}

source!(
    /// Where the rates come from.
    LABOR, "finishing-labor", "Finishing rates, habit", SAYS, SEEN, CommonPractice
);

const fn rates(low: i64, likely: i64, high: i64) -> [Measure; 3] {
    [
        Measure::whole(&SQUARE_FOOT_AN_HOUR, low),
        Measure::whole(&SQUARE_FOOT_AN_HOUR, likely),
        Measure::whole(&SQUARE_FOOT_AN_HOUR, high),
    ]
}

/// A skim coat: slow, likely, fast. Source: [`LABOR`].
pub const SKIM: [Measure; 3] = rates(40, 60, 90);
/// Sanding with a vacuum: slow, likely, fast. Source: [`LABOR`].
pub const SAND: [Measure; 3] = rates(100, 150, 220);
