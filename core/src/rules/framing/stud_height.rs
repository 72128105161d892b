//! How tall a stud may stand with nothing to hold it sideways.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    BEARING_STUDS_SAYS = "Bearing studs 2x4 or 2x6 stand 10 ft high at most with nothing to hold them sideways; 2x4 at 24 in apart only under a roof and ceiling.", es "Los montantes de carga de 2x4 o 2x6 miden 10 ft de alto a lo más sin nada que los sujete de lado; los de 2x4 a 24 in, solo bajo tejado y techo.";
    BEARING_STUDS_SEEN = "read in part, in forum pages that quote the table", es "leído en parte, en páginas de foros que citan la tabla";
    PARTITION_STUDS_SAYS = "A nonbearing 2x4 stud stands 14 ft high at most, a 2x6 20 ft.", es "Un montante de 2x4 sin carga mide 14 ft de alto a lo más, uno de 2x6 20 ft.";
    PARTITION_STUDS_SEEN = "written down from memory", es "escrito de memoria";
}

source!(
    /// Where the height of a bearing stud is published.
    BEARING_STUDS, "irc-r602.3(5)", "IRC Table R602.3(5), bearing studs" es "IRC, Tabla R602.3(5), montantes de carga", BEARING_STUDS_SAYS, BEARING_STUDS_SEEN, Read
);

source!(
    /// Where that of a partition is published.
    PARTITION_STUDS, "irc-r602.3(5)-nonbearing", "IRC Table R602.3(5), nonbearing studs" es "IRC, Tabla R602.3(5), montantes sin carga", PARTITION_STUDS_SAYS, PARTITION_STUDS_SEEN, Memory
);

/// A bearing or outside wall.
pub const BEARING: Limit<Length> = Limit { value: Length::inches(120, 1), source: &BEARING_STUDS };
/// A partition of 2x4 that carries nothing.
pub const PARTITION: Limit<Length> =
    Limit { value: Length::inches(168, 1), source: &PARTITION_STUDS };
