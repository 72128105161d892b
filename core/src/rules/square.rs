//! How far a four-cornered room is out of square, from its two diagonals.

use crate::sheet::{Confidence, Source};
use crate::words;

words! {
    SAYS = "Opposite walls being equal, the two diagonals squared differ by four times wall 1 times how far the wall opposite has shifted along it.";
    SEEN = "worked out from the law of cosines; comparing diagonals is common practice";
}

/// What the shift stands on.
pub static DIAGONALS: Source = Source {
    key: "two-diagonals",
    clause: "Law of cosines, both diagonals of a parallelogram",
    says: &SAYS,
    seen: &SEEN,
    confidence: Confidence::Derived,
};
