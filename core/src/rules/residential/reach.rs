//! 308: how high and how low a hand reaches from a wheelchair.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    SAYS = "With nothing in the way, what a hand works is 15 to 48 in over the floor it is worked from. A one-family house of one's own is seldom held to it.", es "Sin nada que estorbe, lo que se maneja con la mano queda de 15 a 48 in sobre el piso desde donde se usa. A una casa propia de una familia rara vez se le exige.";
    SEEN = "read in the 2010 ADA Standards and copies of them", es "leído en las 2010 ADA Standards y copias de ellas";
    PART_SAYS = "The outer of a device's working parts are taken to be 3/4 in from its middle.", es "Se toma que las partes de afuera que se usan de un dispositivo quedan a 3/4 in de su centro.";
    PART_SEEN = "written down from memory of a duplex receptacle's face", es "escrito de memoria de la cara de un contacto doble";
}

source!(
    /// Where it is published.
    REACH, "ada-308", "2010 ADA Standards 308", SAYS, SEEN, Read
);
source!(
    /// How far a device's parts are from its middle.
    PARTS, "device-parts", "Duplex receptacle, its face" es "Contacto doble, su cara", PART_SAYS, PART_SEEN, Memory
);

/// The lowest.
pub const LOWEST: Limit<Length> = Limit { value: Length::inches(15, 1), source: &REACH };
/// The highest.
pub const HIGHEST: Limit<Length> = Limit { value: Length::inches(48, 1), source: &REACH };
/// From a device's middle to its outer parts. Source: [`PARTS`].
pub const TO_PART: Length = Length::inches(3, 4);
