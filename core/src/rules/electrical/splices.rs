//! 300.15 and 314.29: where a cable may be spliced.

use crate::rules::compare::Limit;
use crate::words;

words! {
    SAYS = "Splices are made in boxes, and a box stays where it can be reached without opening the building: never closed in behind board or plaster.", es "Los empalmes se hacen en cajas, y una caja se queda donde se pueda alcanzar sin abrir el edificio: nunca encerrada detrás de tablaroca o yeso.";
    SEEN = "written down from memory", es "escrito de memoria";
}

source!(
    /// Where it is published.
    SPLICES, "nec-314.29", "NEC 300.15, 314.29", SAYS, SEEN, Memory
);

/// Splice boxes that are closed in.
pub const CLOSED_IN: Limit<i64> = Limit { value: 0, source: &SPLICES };
