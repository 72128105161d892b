//! R314: smoke alarms where permitted work is done.

use crate::rules::compare::Limit;
use crate::words;

words! {
    SMOKE_ALARMS_SAYS = "Work under permit inside a dwelling brings its smoke alarms up to today's rule. On a peaked ceiling: within 36 in of the peak, not in its top 4 in.";
    SMOKE_ALARMS_SEEN = "written down from memory";
}

source!(
    /// Where it is published.
    SMOKE_ALARMS, "irc-r314", "IRC R314, smoke alarms; NFPA 72", SMOKE_ALARMS_SAYS, SMOKE_ALARMS_SEEN, Memory
);

words! {
    OUT_SAYS = "An alarm that is off, bagged or covered warns nobody: back and tested, or another in its place, before anyone sleeps there. Monitored ones: call who monitors them first. Local rules may ask for a watch.";
    OUT_SEEN = "common practice";
    CO_SAYS = "Work under permit in a dwelling with fuel burned in it, or a garage at it, brings carbon monoxide alarms near where people sleep.";
    CO_SEEN = "written down from memory";
}

source!(
    /// While they are down.
    ALARMS_OUT, "practice-alarms-out", "Common practice", OUT_SAYS, OUT_SEEN, CommonPractice
);
source!(
    /// Carbon monoxide.
    CO_ALARMS, "irc-r315", "IRC R315, carbon monoxide alarms", CO_SAYS, CO_SEEN, Memory
);

/// How many may be out. Source: [`ALARMS_OUT`].
pub const NONE_OUT: Limit<i64> = Limit { value: 0, source: &ALARMS_OUT };
