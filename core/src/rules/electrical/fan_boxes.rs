//! 314.27(C): what a ceiling fan hangs from.

use crate::sheet::{Confidence, Source};
use crate::words;

words! {
    SAYS = "A ceiling fan hangs from a box that is listed and marked for fans, or from framing.";
    SEEN = "written down from memory";
}

/// Where it is published.
pub static FAN_BOXES: Source = Source {
    key: "nec-314.27(c)",
    clause: "NEC 314.27(C)",
    says: &SAYS,
    seen: &SEEN,
    confidence: Confidence::Memory,
};
