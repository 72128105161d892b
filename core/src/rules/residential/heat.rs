//! What heat goes through a wall and with the air.

use crate::measure::{Measure, unit};
use crate::sheet::{Confidence, Source};
use crate::words;

words! {
    THROUGH_SAYS = "Heat through a surface is its area times the difference of temperatures, over its R or times its U.";
    THROUGH_SEEN = "worked out from what R and U are";
    AIR_SAYS = "A cubic foot of air at sea level takes 0.018 Btu a degree: 1.08 Btu/h for each cfm and degree.";
    AIR_SEEN = "read in a building-science answer page. Leaks go with the shell, not with the room: the air's part is an upper hint, and moisture isn't in it";
}

/// What heat through a surface is worked by.
pub static THROUGH: Source = Source {
    key: "heat-through",
    clause: "Heat through a surface, U A dT",
    says: &THROUGH_SAYS,
    seen: &THROUGH_SEEN,
    confidence: Confidence::Derived,
};

/// Where the heat of air is told.
pub static AIR: Source = Source {
    key: "heat-of-air",
    clause: "Sensible heat of air, 0.018 V n dT",
    says: &AIR_SAYS,
    seen: &AIR_SEEN,
    confidence: Confidence::Read,
};

/// What a cubic foot of air takes to warm by a degree. Source: [`AIR`].
pub const OF_AIR: Measure = Measure::new(&unit::WARMING, 18_000);
