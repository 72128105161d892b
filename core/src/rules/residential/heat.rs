//! What heat goes through a wall and with the air.

use crate::measure::{Measure, unit};
use crate::words;

words! {
    THROUGH_SAYS = "Heat through a surface is its area times the difference of temperatures, over its R or times its U.";
    THROUGH_SEEN = "worked out from what R and U are";
    AIR_SAYS = "A cubic foot of air at sea level takes 0.018 Btu a degree: 1.08 Btu/h for each cfm and degree.";
    AIR_SEEN = "read in a building-science answer page. Leaks go with the shell, not with the room: the air's part is an upper hint, and moisture isn't in it";
}

source!(
    /// What heat through a surface is worked by.
    THROUGH, "heat-through", "Heat through a surface, U A dT", THROUGH_SAYS, THROUGH_SEEN, Derived
);

source!(
    /// Where the heat of air is told.
    AIR, "heat-of-air", "Sensible heat of air, 0.018 V n dT", AIR_SAYS, AIR_SEEN, Read
);

/// What a cubic foot of air takes to warm by a degree. Source: [`AIR`].
pub const OF_AIR: Measure = Measure::new(&unit::WARMING, 18_000);
