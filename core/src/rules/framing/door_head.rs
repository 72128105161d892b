//! How high the bottom of a header stands over a door.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::sheet::{Confidence, Source};
use crate::words;

words! {
    DOOR_HEAD_SAYS = "A header for a door of 6 ft 8 in is set 82-1/2 in over the subfloor.";
    DOOR_HEAD_SEEN = "common practice; go by the door you hang";
}

/// What carpenters do.
pub static DOOR_HEAD: Source = Source {
    key: "practice-door-head",
    clause: "Common practice, door headers",
    says: &DOOR_HEAD_SAYS,
    seen: &DOOR_HEAD_SEEN,
    confidence: Confidence::CommonPractice,
};

/// The bottom of the header, over the subfloor.
pub const HEADER: Limit<Length> = Limit { value: Length::inches(165, 2), source: &DOOR_HEAD };
