//! Studs in one piece from floor to roof.

use crate::rules::compare::Limit;
use crate::sheet::{Confidence, Source};
use crate::words;

words! {
    ONE_PIECE_SAYS = "Studs of an outside wall run in one piece from the floor to a ceiling or roof that holds them sideways, or the wall is designed. A short wall on old plates bends at the joint; gable walls under a vault run to the slope.";
    ONE_PIECE_SEEN = "read in a plan sheet that quotes the section and a code chapter's handout on vaulted gable walls";
}

/// Where it is published.
pub static ONE_PIECE: Source = Source {
    key: "irc-r602.3",
    clause: "IRC R602.3, studs in one piece",
    says: &ONE_PIECE_SAYS,
    seen: &ONE_PIECE_SEEN,
    confidence: Confidence::Read,
};

/// Joints between the floor and what holds the wall above.
pub const JOINTS: Limit<i64> = Limit { value: 0, source: &ONE_PIECE };
