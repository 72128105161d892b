//! What no federal rule settles: the state's, the county's and the city's own.

use crate::words;

words! {
    STRICTER_SAYS = "A state, a county or a city may set lower limits, ask for a permit, or let only certified contractors do the work. Many do.";
    STRICTER_SEEN = "read in a city code that starts at 50 sq ft, a state rule that starts at 25 and a county agency that lets only certified contractors be hired";
    UNSAID_SAYS = "What isn't said isn't known: nothing opens on a blank.";
    UNSAID_SEEN = "common practice";
}

source!(
    /// That they are stricter.
    STRICTER, "state-and-local", "State and local rules", STRICTER_SAYS, STRICTER_SEEN, Read
);
source!(
    /// Why a blank holds.
    UNSAID, "practice-unsaid", "Common practice", UNSAID_SAYS, UNSAID_SEEN, CommonPractice
);
