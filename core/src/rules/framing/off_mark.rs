//! How far a bit ends up off its mark: no rule counts it, a careful hand does.

use crate::measure::Length;
use crate::words;

words! {
    SAYS = "A bit starts or runs off its mark, by 1/16 in if nobody says. A hole that breaks out of a face is a notch.";
    SEEN = "no publication; the code's limits are for the hole as it is in the end";
}

source!(
    /// What crews reckon with.
    OFF_MARK, "bit-off-its-mark", "A bit off its mark", SAYS, SEEN, CommonPractice
);

/// How far, if nobody says.
pub const WANDER: Length = Length::inches(1, 16);
