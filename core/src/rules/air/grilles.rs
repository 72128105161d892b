//! How large a grille's face has to be, by how fast air may run through it.

use crate::measure::Measure;
use crate::measure::unit::{FPM, PERCENT};
use crate::rules::compare::Limit;
use crate::sheet::{Confidence, Source};
use crate::words;

words! {
    RETURN_SAYS = "A return grille without a filter runs at 500 fpm or less through what is open of it; one with a filter at 300 fpm of face.";
    RETURN_SEEN = "read in a register maker's engineering pages; that 0.70 of a face is open is common practice";
    TRANSFER_SAYS = "A transfer grille runs at 200 fpm of face or less.";
    TRANSFER_SEEN = "read in Home Energy, 2006, and a wholesaler's tech tip";
}

source!(
    /// Where return grilles stand.
    RETURNS, "return-grille-velocity", "Register makers' engineering data, return grilles", RETURN_SAYS, RETURN_SEEN, Read
);
static TRANSFERS: Source = Source {
    key: "transfer-grille-velocity",
    clause: "Home Energy, Jan/Feb 2006, transfer grilles",
    says: &TRANSFER_SAYS,
    seen: &TRANSFER_SEEN,
    confidence: Confidence::Read,
};

/// Of a return grille, through what is open of it.
pub const RETURN: Limit<Measure> = Limit { value: Measure::whole(&FPM, 500), source: &RETURNS };
/// Of a filter grille, of its face.
pub const FILTER: Limit<Measure> = Limit { value: Measure::whole(&FPM, 300), source: &RETURNS };
/// Of a transfer grille, of its face.
pub const TRANSFER: Limit<Measure> = Limit { value: Measure::whole(&FPM, 200), source: &TRANSFERS };
/// What is open of a return grille's face.
pub const RETURN_NET: Measure = Measure::whole(&PERCENT, 70);
