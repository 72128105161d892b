//! How high the bottom of a header stands over a door.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    DOOR_HEAD_SAYS = "A header for a door of 6 ft 8 in is set 82-1/2 in over the subfloor.", es "Un dintel para puerta de 6 ft 8 in se pone a 82-1/2 in sobre el subpiso.";
    DOOR_HEAD_SEEN = "common practice; go by the door you hang", es "costumbre del oficio; guíese por la puerta que cuelga";
}

source!(
    /// What carpenters do.
    DOOR_HEAD, "practice-door-head", "Common practice, door headers" es "Costumbre del oficio, cabezales de puerta", DOOR_HEAD_SAYS, DOOR_HEAD_SEEN, CommonPractice
);

/// The bottom of the header, over the subfloor.
pub const HEADER: Limit<Length> = Limit { value: Length::inches(165, 2), source: &DOOR_HEAD };
