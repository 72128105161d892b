//! 210.52(A): receptacles along the walls of a dwelling's rooms.

use crate::edition::Electrical;
use crate::measure::Length;
use crate::rules::compare::{Limit, is_at_least};
use crate::words;

words! {
    SAYS = "In living rooms, bedrooms, dining rooms, dens and the like, no point along the floor line of a wall space is more than 6 ft from a receptacle. A wall space is 2 ft wide or more, round corners too, unbroken by doors, fireplaces and fixed cabinets; fixed glass counts, sliding panels don't.", es "En salas, recámaras, comedores, estudios y cuartos así, ningún punto por la línea del piso de un espacio de pared queda a más de 6 ft de un contacto. Un espacio de pared mide 2 ft de ancho o más, también dando vuelta a esquinas, sin que lo corten puertas, chimeneas (hogar) ni gabinetes fijos; el vidrio fijo cuenta, los paneles corredizos no.";
    SEEN = "read in a state's residential code chapter and a trade magazine on the rule", es "leído en el capítulo del código residencial de un estado y en una revista del oficio sobre la regla";
}

source!(
    /// Where it is published.
    WALLS, "nec-210.52-a", "NEC 210.52(A)", SAYS, SEEN, Read
);

/// The farthest along the floor line from a receptacle. 2026: not verified.
pub const fn farthest(edition: Electrical) -> Option<Limit<Length>> {
    match edition {
        Electrical::E2026 => None,
        _ => Some(Limit { value: Length::inches(72, 1), source: &WALLS }),
    }
}

/// How many may be missing.
pub const NONE_MISSING: Limit<i64> = Limit { value: 0, source: &WALLS };

/// Whether a stretch of wall is wide enough to need any. Source: [`WALLS`].
pub fn is_space(wide: Length) -> bool {
    is_at_least(wide, Limit { value: Length::inches(24, 1), source: &WALLS })
}
