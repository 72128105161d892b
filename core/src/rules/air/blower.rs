//! How much pressure a house's blower is made for. No part of it alone can be held against that:
//! the sheet that works ducts says so, and gives no verdict.

use crate::words;

words! {
    SAYS = "What the ducts, coil and filter take together stays within the blower's nameplate, often 0.5 in wc. Only a measured static pressure tells.";
    SEEN = "common practice; the nameplate says what holds";
}

source!(
    /// Where the habit stands.
    NAMEPLATE, "blower-nameplate", "Equipment nameplate, external static pressure", SAYS, SEEN, CommonPractice
);
