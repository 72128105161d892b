//! R314: smoke alarms where permitted work is done.

use crate::sheet::{Confidence, Source};
use crate::words;

words! {
    SMOKE_ALARMS_SAYS = "Work under permit inside a dwelling brings its smoke alarms up to today's rule. On a peaked ceiling: within 36 in of the peak, not in its top 4 in.";
    SMOKE_ALARMS_SEEN = "written down from memory";
}

/// Where it is published.
pub static SMOKE_ALARMS: Source = Source {
    key: "irc-r314",
    clause: "IRC R314, smoke alarms; NFPA 72",
    says: &SMOKE_ALARMS_SAYS,
    seen: &SMOKE_ALARMS_SEEN,
    confidence: Confidence::Memory,
};
