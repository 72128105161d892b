//! How large a grille's face has to be, by how fast air may run through it.

use crate::measure::Measure;
use crate::measure::unit::{FPM, PERCENT};
use crate::rules::compare::Limit;
use crate::sheet::{Confidence, Source};
use crate::words;
use crate::words::Phrase;

words! {
    RETURN_SAYS = "A return grille without a filter runs at 500 fpm or less through what is open of it; one with a filter at 300 fpm of face.", es "Una rejilla de retorno sin filtro trabaja a 500 fpm o menos por lo que tiene abierto; una con filtro, a 300 fpm de cara.";
    RETURN_SEEN = "read in a register maker's engineering pages; that 0.70 of a face is open is common practice", es "leído en las páginas de ingeniería de un fabricante de rejillas; que 0.70 de una cara está abierto es costumbre del oficio";
    TRANSFER_SAYS = "A transfer grille runs at 200 fpm of face or less.", es "Una rejilla de paso trabaja a 200 fpm de cara o menos.";
    TRANSFER_SEEN = "read in Home Energy, 2006, and a wholesaler's tech tip", es "leído en Home Energy, 2006, y en un consejo técnico de un mayorista";
}

source!(
    /// Where return grilles stand.
    RETURNS, "return-grille-velocity", "Register makers' engineering data, return grilles" es "Datos de fabricantes, rejillas de retorno", RETURN_SAYS, RETURN_SEEN, Read
);
static TRANSFERS: Source = Source {
    key: "transfer-grille-velocity",
    clause: Phrase {
        en: "Home Energy, Jan/Feb 2006, transfer grilles",
        es: "Home Energy, ene/feb de 2006, rejillas de paso",
    },
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
