//! R314: smoke alarms where permitted work is done.

use crate::words;

words! {
    SMOKE_ALARMS_SAYS = "Work under permit inside a dwelling brings its smoke alarms up to today's rule. On a peaked ceiling: within 36 in of the peak, not in its top 4 in.";
    SMOKE_ALARMS_SEEN = "written down from memory";
}

source!(
    /// Where it is published.
    SMOKE_ALARMS, "irc-r314", "IRC R314, smoke alarms; NFPA 72", SMOKE_ALARMS_SAYS, SMOKE_ALARMS_SEEN, Memory
);
