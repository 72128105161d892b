//! 210.52(C): receptacles at kitchen counters, islands and peninsulas.

use crate::edition::Electrical;
use crate::measure::{Area, Length, Rounding, divide};
use crate::rules::compare::{Limit, is_at_least};
use crate::words;

words! {
    WALLS_SAYS = "Along wall counters 12 in wide or more no point is more than 24 in from a receptacle: one for each 48 in or part, in each space between sink, range and refrigerator.", es "En cubiertas de pared de 12 in de ancho o más, ningún punto queda a más de 24 in de un contacto: uno por cada 48 in o parte, en cada espacio entre fregadero, estufa y refrigerador.";
    WALLS_SEEN = "read in forum pages that quote the rule", es "leído en páginas de foros que citan la regla";
    BEHIND_SAYS = "Behind a sink or range the counter goes on where 12 in of it or more lie there, in a corner 18 in.", es "Detrás de un fregadero o estufa la cubierta sigue donde ahí quedan 12 in de ella o más; en esquina, 18 in.";
    BEHIND_SEEN = "the rule's figure, written down from memory", es "la cifra de la regla, escrita de memoria";
    ISLANDS_SAYS = "Islands and peninsulas: in 2017 one on each of 24 by 12 in or more; in 2020 one for 9 sq ft and one for each 18 more, or part of either, one of them within 2 ft of a peninsula's outer end; from 2023 none, but provision for one later.", es "Islas y penínsulas: en 2017 uno en cada una de 24 por 12 in o más; en 2020 uno por 9 sq ft y uno por cada 18 más, o parte de cualquiera, uno de ellos a 2 ft o menos de la punta de afuera de una península; desde 2023 ninguno, pero sí dejar cómo ponerlo después.";
    ISLANDS_SEEN = "read in forum pages, a kitchen article and a contractors' magazine on the rule", es "leído en páginas de foros, un artículo de cocinas y una revista de contratistas sobre la regla";
}

source!(
    /// Wall counters.
    WALLS, "nec-210.52-c-1", "NEC 210.52(C)(1)", WALLS_SAYS, WALLS_SEEN, Read
);
source!(
    /// Behind sinks and ranges.
    BEHIND, "nec-210.52-c-figure", "NEC 210.52(C)(1), its figure" es "NEC 210.52(C)(1), su figura", BEHIND_SAYS, BEHIND_SEEN, Memory
);
source!(
    /// Islands and peninsulas.
    ISLANDS, "nec-210.52-c-2", "NEC 210.52(C)(2)", ISLANDS_SAYS, ISLANDS_SEEN, Read
);

/// The farthest along a wall counter. 2026: not verified.
pub const fn farthest(edition: Electrical) -> Option<Limit<Length>> {
    match edition {
        Electrical::E2026 => None,
        _ => Some(Limit { value: Length::inches(24, 1), source: &WALLS }),
    }
}

/// Whether a wall counter is wide enough to need any. Source: [`WALLS`].
pub fn is_counter(wide: Length) -> bool {
    is_at_least(wide, Limit { value: Length::inches(12, 1), source: &WALLS })
}

/// Whether the counter goes on behind a sink or range. Source: [`BEHIND`].
pub fn goes_on(behind: Length, in_corner: bool) -> bool {
    let value = Length::inches(if in_corner { 18 } else { 12 }, 1);
    is_at_least(behind, Limit { value, source: &BEHIND })
}

/// How many an island or a peninsula needs. 2026: not verified.
pub fn on_island(edition: Electrical, long: Length, short: Length) -> Option<i64> {
    match edition {
        Electrical::E2017 => {
            let limit = |inches| Limit { value: Length::inches(inches, 1), source: &ISLANDS };
            Some((is_at_least(long, limit(24)) && is_at_least(short, limit(12))).into())
        }
        Electrical::E2020 => {
            let more = Area::of(long, short).minus(Area::square_feet(9)).max(Area::ZERO);
            let each = Area::square_feet(18).square_nanometres();
            Some(1 + divide(more.square_nanometres(), each, Rounding::Up) as i64)
        }
        Electrical::E2023 => Some(0),
        Electrical::E2026 => None,
    }
}
