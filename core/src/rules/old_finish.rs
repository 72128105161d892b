//! What may be in an old wall or ceiling that is cut, scraped or sanded. Whether it is there only a
//! laboratory can tell; nothing here ever says that a wall is free of it.

use crate::words;

words! {
    SAYS = "Sprayed or troweled surfacing put up in 1980 or earlier is presumed to hold asbestos until sampled; paint in a house from before 1978 is presumed to hold lead until tested.";
    SEEN = "read in university pages on presumed asbestos and in 73 FR 21692 (2008) on lead; that joint compound of those years may hold it too is from memory";
}

source!(
    /// Where both presumptions are published.
    OLD_FINISH, "old-finish", "29 CFR 1926.1101, 40 CFR 745", SAYS, SEEN, Read
);
