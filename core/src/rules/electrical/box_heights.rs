//! Where crews set boxes off a level line, and what they keep them clear of.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    SET_OUT_SAYS = "Usual heights over the finished floor: receptacles 16 in, switches 48, counters 44, to the middle. Floors more than 1/4 in apart: say which one a height counts from.", es "Alturas usuales sobre el piso terminado: contactos 16 in, apagadores 48, cubiertas 44, al centro. Pisos con más de 1/4 in de diferencia: diga desde cuál se cuenta una altura.";
    CLEAR_SAYS = "A box keeps off a board's level seam, 1 in over a backsplash, and 1 in off a casing, so that its plate clears.", es "Una caja se aparta de la junta a nivel de las hojas, va 1 in arriba de un salpicadero, y a 1 in de una moldura, para que libre su tapa.";
    LASER_SAYS = "A laser or level is off by so much over so much: 1/8 in at 30 ft is usual. Its own sheet says.", es "Un láser o nivel tiene tanto de error en tanta distancia: lo usual es 1/8 in a 30 ft. Lo dice su propia hoja.";
    SEEN = "common practice", es "costumbre del oficio";
}

source!(
    /// Usual heights.
    SET_OUT, "box-heights", "Box heights, habit" es "Alturas de cajas, costumbre", SET_OUT_SAYS, SEEN, CommonPractice
);
source!(
    /// What a box keeps clear of.
    CLEAR, "box-clearances", "Box clearances, habit" es "Distancias de cajas, costumbre", CLEAR_SAYS, SEEN, CommonPractice
);
source!(
    /// How far off an instrument is.
    LASER, "level-accuracy", "Levels and lasers, habit" es "Niveles y láseres, costumbre", LASER_SAYS, SEEN, CommonPractice
);

/// Finished floors this far apart are as good as one.
pub const LEVEL: Limit<Length> = Limit { value: Length::inches(1, 4), source: &SET_OUT };
/// A box doesn't lie across a seam.
pub const OFF_SEAM: Limit<Length> = Limit { value: Length::ZERO, source: &CLEAR };
/// From a box to a backsplash below it or a casing beside it.
pub const FOR_PLATE: Limit<Length> = Limit { value: Length::inches(1, 1), source: &CLEAR };
