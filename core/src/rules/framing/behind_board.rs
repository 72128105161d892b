//! What is noted of a wall before it is covered, and how near to it anybody screws afterwards.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    ENDS_SAYS = "Backing lies on half a stud's face at both ends, blocking against a stud's side.", es "Un refuerzo apoya en media cara de un montante en sus dos puntas; un bloque, contra su lado.";
    KEEP_SAYS = "A note is good to the tape that took it: screws stay 2 in beside what was noted, or end 1/4 in short of it.", es "Un apunte vale lo que la cinta que lo midió: los tornillos quedan a 2 in al lado de lo apuntado, o terminan 1/4 in antes.";
    HOLD_SAYS = "What hangs on a wall is screwed into a stud or backing, 1/4 in off its edges at least. Elsewhere the board alone holds it: the anchor's own sheet says how much.", es "Lo que cuelga de una pared se atornilla a un montante o a un refuerzo, al menos a 1/4 in de sus orillas. En lo demás solo lo aguanta la tablaroca: la hoja del taquete dice cuánto.";
    SEEN = "common practice", es "costumbre del oficio";
}

source!(
    /// Where backing ends.
    ENDS, "backing-ends", "Backing, habit" es "Refuerzos, costumbre", ENDS_SAYS, SEEN, CommonPractice
);
source!(
    /// How far off a note is kept.
    KEEP_OFF, "keep-off-notes", "Screws near what was noted, habit" es "Tornillos cerca de lo apuntado, costumbre", KEEP_SAYS, SEEN, CommonPractice
);
source!(
    /// What holds.
    HOLD, "hang-on-wood", "Hanging on a wall, habit" es "Colgar en una pared, costumbre", HOLD_SAYS, SEEN, CommonPractice
);

/// Ends of backing that lie on no stud.
pub const NONE_LOOSE: Limit<i64> = Limit { value: 0, source: &ENDS };
/// Beside what was noted, and over and under it.
pub const BESIDE: Length = Length::inches(2, 1);
/// From a screw's tip to what was noted.
pub const SHORT: Limit<Length> = Limit { value: Length::inches(1, 4), source: &KEEP_OFF };
/// From a screw to the edge of what it holds in.
pub const EDGE: Length = Length::inches(1, 4);
/// Places to screw into.
pub const ONE_HOLDS: Limit<i64> = Limit { value: 1, source: &HOLD };
