//! Packing between a box and the stud that it is screwed to.

use crate::measure::Length;
use crate::rules::compare::{Limit, is_at_most};
use crate::words;

words! {
    SAYS = "A box is screwed to a stud's side, 1 in or more into the wood, through packing of plywood up to 3 in; past that a block or a bar. Within 1/8 in nobody sees it. Screws: 1 to 2 in by quarters, to 4 by halves.", es "Una caja se atornilla al costado de un montante, 1 in o más dentro de la madera, a través de calza de triplay de hasta 3 in; más que eso, un bloque o una barra. Dentro de 1/8 in nadie lo nota. Tornillos: de 1 a 2 in por cuartos, hasta 4 por medios.";
    SEEN = "common practice", es "costumbre del oficio";
    INSIDE_SAYS = "A screw through a box stays within 1/4 in of its back or its ends, and none is in the wires' way.", es "Un tornillo que atraviesa una caja queda a 1/4 in o menos de su fondo o de sus puntas, y ninguno estorba a los alambres.";
    INSIDE_SEEN = "1/4 in read in an older exam text; the rest written down from memory", es "el 1/4 in, leído en un texto de examen más viejo; lo demás, escrito de memoria";
}

source!(
    /// What crews do.
    PACKING, "box-packing", "Packing a box off a stud, habit" es "Calzar una caja desde el montante, costumbre", SAYS, SEEN, CommonPractice
);
source!(
    /// Screws inside a box.
    INSIDE, "nec-314.23-b-1", "NEC 314.23(B)(1)", INSIDE_SAYS, INSIDE_SEEN, Memory
);

/// Where a box meets a stud.
pub const NO_OVERLAP: Limit<Length> = Limit { value: Length::ZERO, source: &PACKING };
/// The most packing.
pub const MOST_PACKED: Limit<Length> = Limit { value: Length::inches(3, 1), source: &PACKING };
/// How far off its place a box may be.
pub const OFF_PLACE: Limit<Length> = Limit { value: Length::inches(1, 8), source: &PACKING };
/// Into the stud. Source: [`PACKING`].
pub const INTO_STUD: Length = Length::inches(1, 1);
/// Screws that are sold, in quarters of an inch. Source: [`PACKING`].
const SOLD: [i64; 9] = [4, 5, 6, 7, 8, 10, 12, 14, 16];

/// The shortest screw that is sold and long enough.
pub fn screw(needed: Length) -> Option<Length> {
    let mut lengths = SOLD.iter().map(|quarters| Length::inches(*quarters, 4));
    lengths.find(|value| is_at_most(needed, Limit { value: *value, source: &PACKING }))
}
