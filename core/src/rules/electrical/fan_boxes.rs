//! 314.27(C): what a ceiling fan hangs from.

use crate::words;

words! {
    SAYS = "A ceiling fan hangs from a box that is listed and marked for fans, or from framing.", es "Un ventilador de techo cuelga de una caja listada y marcada para ventiladores, o de la estructura.";
    SEEN = "written down from memory", es "escrito de memoria";
}

source!(
    /// Where it is published.
    FAN_BOXES, "nec-314.27(c)", "NEC 314.27(C)", SAYS, SEEN, Memory
);
