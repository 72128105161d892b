//! Slants, areas and volumes of tray and vaulted ceilings.

use crate::measure::Length;
use crate::sheet::{Expr, Value};
use crate::words;
use crate::words::Amount;

words! {
    SOLIDS_SAYS = "A slant is the root of run squared plus rise squared. A prismoid holds its height times its two ends and four times its middle, over six.", es "Una inclinada es la raíz de avance al cuadrado más subida al cuadrado. Un prismoide tiene su altura por sus dos caras de los extremos más cuatro veces la de en medio, entre seis.";
    SOLIDS_SEEN = "worked out; tests compare both with slices added up", es "calculado; las pruebas comparan los dos con rebanadas sumadas";
}

source!(
    /// What they are worked by.
    SOLIDS, "mensuration", "Mensuration: right triangle and prismoid" es "Medición: triángulo recto y prismoide", SOLIDS_SAYS, SOLIDS_SEEN, Derived
);

/// The slant over a run and a rise, as it is written out.
pub fn slant(run: Length, rise: Length) -> Expr {
    let square = |side| Expr::length(side).times(Expr::length(side));
    Expr::Root(2, Box::new(Expr::Sum(vec![square(run), square(rise)])))
}

/// The same, to the nearest nanometre.
pub fn slanted(run: Length, rise: Length) -> Length {
    match slant(run, rise).value().and_then(Value::amount) {
        Some(Amount::Length(slant)) => slant,
        _ => run.max(rise),
    }
}
