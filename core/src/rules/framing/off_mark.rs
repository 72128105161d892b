//! How far a bit ends up off its mark: no rule counts it, a careful hand does.

use crate::measure::Length;
use crate::words;

words! {
    SAYS = "A bit starts or runs off its mark, by 1/16 in if nobody says. A hole that breaks out of a face is a notch.", es "Una broca empieza o se va fuera de su marca, 1/16 in si nadie dice otra cosa. Un agujero que se sale por una cara es una muesca.";
    SEEN = "no publication; the code's limits are for the hole as it is in the end", es "sin publicación; los límites del código son para el agujero como queda al final";
}

source!(
    /// What crews reckon with.
    OFF_MARK, "bit-off-its-mark", "A bit off its mark" es "Una broca fuera de su marca", SAYS, SEEN, CommonPractice
);

/// How far, if nobody says.
pub const WANDER: Length = Length::inches(1, 16);
