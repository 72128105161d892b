//! What may be in an old wall or ceiling that is cut, scraped or sanded. Whether it is there only a
//! laboratory can tell; nothing here ever says that a wall is free of it.

use crate::sheet::{Confidence, Source};
use crate::words;

words! {
    SAYS = "Sprayed or troweled surfacing put up in 1980 or earlier is presumed to hold asbestos until sampled; paint in a house from before 1978 is presumed to hold lead until tested.";
    SEEN = "read in university pages on presumed asbestos and in 73 FR 21692 (2008) on lead; that joint compound of those years may hold it too is from memory";
}

/// Where both presumptions are published.
pub static OLD_FINISH: Source = Source {
    key: "old-finish",
    clause: "29 CFR 1926.1101, 40 CFR 745",
    says: &SAYS,
    seen: &SEEN,
    confidence: Confidence::Read,
};
