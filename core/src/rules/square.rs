//! How far a four-cornered room is out of square, from its two diagonals.

use crate::words;

words! {
    SAYS = "Opposite walls being equal, the two diagonals squared differ by four times wall 1 times how far the wall opposite has shifted along it.";
    SEEN = "worked out from the law of cosines; comparing diagonals is common practice";
}

source!(
    /// What the shift stands on.
    DIAGONALS, "two-diagonals", "Law of cosines, both diagonals of a parallelogram", SAYS, SEEN, Derived
);
