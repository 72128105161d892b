//! R602.6.1: when a top plate that is cut for a pipe or duct is tied together again.

use super::share::Share;
use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    SAYS = "Where a pipe or duct cuts, bores or notches more than half the width of a top plate in an exterior or bearing wall, a galvanized steel tie at least 0.054 in thick and 1-1/2 in wide goes across, 6 in or more past the opening, with eight 10d nails (0.148 by 1-1/2 in) or more on each side. None is needed where that whole side of the wall is sheathed in wood structural panel.";
    SEEN = "read in a scan of 2018 and in quotations of newer text; 2024 is taken to say the same; its book was not seen. Older text asks for 16d nails, and a tie to each plate";
    SOLE_SAYS = "No limit is printed for holes in a sole plate. Half its width, as of a top plate, is advice.";
    SOLE_SEEN = "no publication";
}

source!(
    /// Where it is published.
    TOP_PLATES, "irc-r602.6.1", "IRC R602.6.1", SAYS, SEEN, Read
);

/// The widest cut that needs no tie.
pub const UNTIED: Share = Share { over: 1, under: 2, source: &TOP_PLATES };

source!(
    /// What is said of sole plates, without a rule.
    SOLE_PLATES, "sole-plates", "Sole plates", SOLE_SAYS, SOLE_SEEN, CommonPractice
);

/// The widest cut in a sole plate that nobody asks about.
pub const SOLE: Share = Share { over: 1, under: 2, source: &SOLE_PLATES };

/// How far a tie goes past the opening, on each side.
pub const PAST_OPENING: Length = Length::inches(6, 1);

/// The shortest tie across an opening of this length along the plate.
pub fn tie(opening: Length) -> Limit<Length> {
    Limit { value: opening.plus(PAST_OPENING.times(2)), source: &TOP_PLATES }
}

/// Nails on each side of the opening.
pub const NAILS_A_SIDE: i64 = 8;
