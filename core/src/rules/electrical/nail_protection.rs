//! 300.4(A): when cable through wood framing takes a steel plate over it.

use crate::edition::Electrical;
use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    SAYS = "Cable in a bored hole whose edge is less than 1-1/4 in from the nearest edge of the wood, or in a notch, is covered by a steel plate 1/16 in thick or one listed for it. Rigid, intermediate, EMT and PVC conduit take none.";
    SEEN = "read in a trade magazine's code answers; that listed plates may be thinner is from memory. The 2026 edition moves it to 300.6 and could not be verified";
}

source!(
    /// Where it is published.
    CABLES, "nec-300.4(A)", "NEC 300.4(A)", SAYS, SEEN, Read
);

/// The least wood beside a hole that takes no plate. 2026: not verified.
pub const fn clear(edition: Electrical) -> Option<Limit<Length>> {
    match edition {
        Electrical::E2026 => None,
        _ => Some(Limit { value: Length::inches(5, 4), source: &CABLES }),
    }
}
