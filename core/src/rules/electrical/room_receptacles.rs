//! 210.52(D), (F), (H), (I) and 406.9(C): receptacles in baths, halls, foyers and laundries.

use crate::edition::Electrical;
use crate::measure::{Area, Length};
use crate::rules::compare::{Limit, is_at_least, is_at_most};
use crate::words;

words! {
    BATH_SAYS = "A bathroom has a receptacle within 3 ft of the outside edge of each basin, no more than 12 in below its top or the counter's.", es "Un baño tiene un contacto a 3 ft o menos de la orilla de afuera de cada lavabo, a no más de 12 in abajo de su borde o del de la cubierta.";
    BATH_SEEN = "read in a forum's quotation of the rule", es "leído en la cita de la regla en un foro";
    HALL_SAYS = "A hall 10 ft long or more has one; length goes along its middle, through no door.", es "Un pasillo de 10 ft de largo o más tiene uno; el largo va por su centro, sin pasar por una puerta.";
    HALL_SEEN = "read in a contractors' magazine; how its length goes, from memory", es "leído en una revista de contratistas; cómo va el largo, de memoria";
    REST_SAYS = "A foyer over 60 sq ft that is no hall has one in each wall 3 ft wide or more; a laundry area has one.", es "Un recibidor de más de 60 sq ft que no es pasillo tiene uno en cada pared de 3 ft de ancho o más; un área de lavandería tiene uno.";
    REST_SEEN = "written down from memory", es "escrito de memoria";
    TUB_SAYS = "No receptacle in or straight over a tub or shower. From 2020 none within 3 ft of it level and 8 ft over its rim or threshold, from 2023 also below that, to the floor; a wall, door or fixed barrier ends it. Where a bath is too small, the one it needs goes on the farthest wall.", es "Ningún contacto en una tina o regadera ni derecho arriba de ella. Desde 2020 ninguno a 3 ft o menos de ella a nivel y hasta 8 ft arriba de su borde o umbral, desde 2023 tampoco abajo de eso, hasta el piso; una pared, puerta o barrera fija le pone fin. Donde un baño es muy chico, el que hace falta va en la pared más lejana.";
    TUB_SEEN = "read in continuing-education and device makers' pages", es "leído en páginas de educación continua y de fabricantes de dispositivos";
}

source!(
    /// Basins.
    BATH, "nec-210.52-d", "NEC 210.52(D)", BATH_SAYS, BATH_SEEN, Read
);
source!(
    /// Halls.
    HALLS, "nec-210.52-h", "NEC 210.52(H)", HALL_SAYS, HALL_SEEN, Read
);
source!(
    /// Foyers and laundries.
    REST, "nec-210.52-f-i", "NEC 210.52(F) and (I)" es "NEC 210.52(F) e (I)", REST_SAYS, REST_SEEN, Memory
);
source!(
    /// Tubs and showers.
    TUB, "nec-406.9-c", "NEC 406.9(C)", TUB_SAYS, TUB_SEEN, Read
);

/// A rule that every verified edition has alike. 2026: not verified.
const fn alike<T: Copy>(edition: Electrical, limit: Limit<T>) -> Option<Limit<T>> {
    match edition {
        Electrical::E2026 => None,
        _ => Some(limit),
    }
}

/// From a basin's outside edge, at most.
pub const fn from_basin(edition: Electrical) -> Option<Limit<Length>> {
    alike(edition, Limit { value: Length::inches(36, 1), source: &BATH })
}

/// Below a basin's top, at most.
pub const fn below_basin(edition: Electrical) -> Option<Limit<Length>> {
    alike(edition, Limit { value: Length::inches(12, 1), source: &BATH })
}

/// Whether a hall needs one. Source: [`HALLS`].
pub fn is_hall(long: Length) -> bool {
    is_at_least(long, Limit { value: Length::inches(120, 1), source: &HALLS })
}

/// Whether a foyer needs any. Source: [`REST`].
pub fn is_foyer(area: Area) -> bool {
    !is_at_most(area, Limit { value: Area::square_feet(60), source: &REST })
}

/// In or straight over a tub or shower.
pub const fn over_tub(edition: Electrical) -> Option<Limit<i64>> {
    alike(edition, Limit { value: 0, source: &TUB })
}

/// How high beside a tub, over its rim or a shower's threshold.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Beside {
    /// More than 8 ft over it.
    Above,
    /// From the rim to 8 ft over it.
    Within,
    /// Below the rim.
    Below,
}

/// The least level distance from a tub or shower; nothing where the edition has none there. 2026: not
/// verified.
pub const fn from_tub(edition: Electrical, beside: Beside) -> Option<Limit<Length>> {
    let value = match (edition, beside) {
        (Electrical::E2026, _) => return None,
        (Electrical::E2020 | Electrical::E2023, Beside::Within)
        | (Electrical::E2023, Beside::Below) => Length::inches(36, 1),
        _ => Length::ZERO,
    };
    Some(Limit { value, source: &TUB })
}
