//! 334.30 and 314.17: where nonmetallic-sheathed cable is secured along framing.

use crate::choice;
use crate::edition::Electrical;
use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    CLAMPED = "Box with clamps", es "Caja con abrazaderas";
    SINGLE = "One-gang plastic, no clamp", es "Plástico de un gang, sin abrazadera";
    SPACING_SAYS = "Cable is secured every 4-1/2 ft or less, and within 12 in of each box.", es "El cable se sujeta cada 4-1/2 ft o menos, y a 12 in o menos de cada caja.";
    SPACING_SEEN = "read in forum and question pages that quote 334.30", es "leído en páginas de foros y preguntas que citan 334.30";
    SINGLE_SAYS = "At a one-gang plastic box without clamps, cable is secured within 8 in of it, along the sheath.", es "En una caja de plástico de un gang sin abrazaderas, el cable se sujeta a 8 in o menos de ella, a lo largo del forro.";
    SINGLE_SEEN = "read in a municipal code that reprints the rule; its letter moved between editions", es "leído en un código municipal que reimprime la regla; su letra cambió entre ediciones";
}

source!(
    /// Where spacing is published.
    SPACING, "nec-334.30", "NEC 334.30", SPACING_SAYS, SPACING_SEEN, Read
);

source!(
    /// Where the shorter distance at a box without clamps is published.
    AT_SINGLE, "nec-314.17", "NEC 314.17", SINGLE_SAYS, SINGLE_SEEN, Read
);

choice! {
    /// What a cable ends in.
    pub enum End {
        /// A box, cabinet or fitting that clamps it.
        Clamped = "clamped", CLAMPED;
        /// A one-gang nonmetallic box that doesn't.
        Single = "single", SINGLE;
    }
}

/// The farthest apart along a run. 2026: not verified.
pub const fn spacing(edition: Electrical) -> Option<Limit<Length>> {
    match edition {
        Electrical::E2026 => None,
        _ => Some(Limit { value: Length::inches(54, 1), source: &SPACING }),
    }
}

/// The farthest from a box. 2026: not verified.
pub const fn from_box(edition: Electrical, end: End) -> Option<Limit<Length>> {
    match (edition, end) {
        (Electrical::E2026, _) => None,
        (_, End::Clamped) => Some(Limit { value: Length::inches(12, 1), source: &SPACING }),
        (_, End::Single) => Some(Limit { value: Length::inches(8, 1), source: &AT_SINGLE }),
    }
}
