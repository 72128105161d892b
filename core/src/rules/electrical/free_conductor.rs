//! 300.14: how much free conductor is left at a box.

use crate::measure::Length;
use crate::words;

words! {
    SAYS = "Leave 6 in from where a conductor leaves its sheath, and enough to reach 3 in past an opening under 8 in.", es "Deje 6 in desde donde un conductor sale de su forro, y lo suficiente para llegar 3 in más allá de una abertura de menos de 8 in.";
    SEEN = "read in trade magazine and question pages that quote the 2020 and 2023 text", es "leído en páginas de revistas del oficio y de preguntas que citan el texto de 2020 y 2023";
}

source!(
    /// Where it is published.
    FREE_CONDUCTOR, "nec-300.14", "NEC 300.14", SAYS, SEEN, Read
);

/// From where the conductor leaves its sheath or raceway.
pub const FROM_SHEATH: Length = Length::inches(6, 1);
/// Past an opening smaller than 8 in.
pub const PAST_OPENING: Length = Length::inches(3, 1);
/// A loop counts two conductors from this many times the free length. Source: NEC 314.16(B)(1).
pub const LOOP_TIMES: i64 = 2;

/// The least free length at a box whose opening is under 8 in: every box with a device is.
/// `emerges` is the distance from where the sheath ends to the opening.
///
/// - Formula: `max(6 in, emerges + 3 in)`.
/// - Source: NEC 300.14; the formula is derived from its two conditions.
pub fn least(emerges: Length) -> Length {
    FROM_SHEATH.max(emerges.plus(PAST_OPENING))
}
