//! How high the blades of a ceiling fan hang.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::sheet::{Confidence, Source};
use crate::words;

words! {
    FAN_BLADES_SAYS = "Blades hang 7 ft over the floor or higher, and about 8 in under the ceiling. Neither code says so; both make a maker's instructions binding.";
    FAN_BLADES_SEEN = "read in a home inspector's pages; read your fan's own sheet";
}

/// Where it is said.
pub static FAN_BLADES: Source = Source {
    key: "maker-fan-blades",
    clause: "Fan makers' instructions",
    says: &FAN_BLADES_SAYS,
    seen: &FAN_BLADES_SEEN,
    confidence: Confidence::Read,
};

/// Blades over the floor.
pub const BLADES: Limit<Length> = Limit { value: Length::inches(84, 1), source: &FAN_BLADES };
