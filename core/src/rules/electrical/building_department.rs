//! Who decides what a house's wiring is worked under.

use crate::words;

words! {
    SAYS = "Whether work takes a permit, which edition holds and who may do it is for the building department. Its own changes come before this list.";
    SEEN = "no publication";
}

source!(
    /// Who decides.
    DECIDES, "building-department", "The building department", SAYS, SEEN, CommonPractice
);
