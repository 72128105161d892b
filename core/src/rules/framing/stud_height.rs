//! How tall a stud may stand with nothing to hold it sideways.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::sheet::{Confidence, Source};
use crate::words;

words! {
    BEARING_STUDS_SAYS = "Bearing studs 2x4 or 2x6 stand 10 ft high at most with nothing to hold them sideways; 2x4 at 24 in apart only under a roof and ceiling.";
    BEARING_STUDS_SEEN = "read in part, in forum pages that quote the table";
    PARTITION_STUDS_SAYS = "A nonbearing 2x4 stud stands 14 ft high at most, a 2x6 20 ft.";
    PARTITION_STUDS_SEEN = "written down from memory";
}

/// Where the height of a bearing stud is published.
pub static BEARING_STUDS: Source = Source {
    key: "irc-r602.3(5)",
    clause: "IRC Table R602.3(5), bearing studs",
    says: &BEARING_STUDS_SAYS,
    seen: &BEARING_STUDS_SEEN,
    confidence: Confidence::Read,
};

/// Where that of a partition is published.
pub static PARTITION_STUDS: Source = Source {
    key: "irc-r602.3(5)-nonbearing",
    clause: "IRC Table R602.3(5), nonbearing studs",
    says: &PARTITION_STUDS_SAYS,
    seen: &PARTITION_STUDS_SEEN,
    confidence: Confidence::Memory,
};

/// A bearing or outside wall.
pub const BEARING: Limit<Length> = Limit { value: Length::inches(120, 1), source: &BEARING_STUDS };
/// A partition of 2x4 that carries nothing.
pub const PARTITION: Limit<Length> =
    Limit { value: Length::inches(168, 1), source: &PARTITION_STUDS };
