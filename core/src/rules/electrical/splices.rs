//! 300.15 and 314.29: where a cable may be spliced.

use crate::rules::compare::Limit;
use crate::sheet::{Confidence, Source};
use crate::words;

words! {
    SAYS = "Splices are made in boxes, and a box stays where it can be reached without opening the building: never closed in behind board or plaster.";
    SEEN = "written down from memory";
}

/// Where it is published.
pub static SPLICES: Source = Source {
    key: "nec-314.29",
    clause: "NEC 300.15, 314.29",
    says: &SAYS,
    seen: &SEEN,
    confidence: Confidence::Memory,
};

/// Splice boxes that are closed in.
pub const CLOSED_IN: Limit<i64> = Limit { value: 0, source: &SPLICES };
