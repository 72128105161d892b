//! 314.27(C): what a ceiling fan hangs from.

use crate::words;

words! {
    SAYS = "A ceiling fan hangs from a box that is listed and marked for fans, or from framing.";
    SEEN = "written down from memory";
}

source!(
    /// Where it is published.
    FAN_BOXES, "nec-314.27(c)", "NEC 314.27(C)", SAYS, SEEN, Memory
);
