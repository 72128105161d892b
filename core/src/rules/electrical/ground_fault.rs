//! 210.8(A): which receptacles of a dwelling are protected against ground faults.

use super::dwelling_rooms::{Beside, Room};
use crate::edition::Electrical;
use crate::words;

words! {
    SAYS = "Ground-fault protection: bathrooms, garages, outdoors, crawl spaces, unfinished basements, laundries, kitchen counters, within 6 ft of sinks, tubs and showers. From 2020 all basements and 250 V too; from 2023 every kitchen receptacle.", es "Protección de falla a tierra: baños, cocheras, exteriores, espacios bajo el piso (crawl), sótanos sin terminar, lavanderías, cubiertas de cocina, a 6 ft o menos de fregaderos o lavabos, tinas y regaderas. Desde 2020 también todos los sótanos y 250 V; desde 2023 todo contacto de cocina.";
    SEEN = "read in an older text of the clause and in makers' summaries; 2020's basements from memory. States change this list", es "leído en un texto más viejo de la cláusula y en resúmenes de fabricantes; los sótanos de 2020 son de memoria. Los estados cambian esta lista";
}

source!(
    /// Where it is published.
    GROUND_FAULT, "nec-210.8(A)", "NEC 210.8(A)", SAYS, SEEN, Read
);

/// Whether a receptacle there has it. 2026: not verified.
pub const fn covers(edition: Electrical, room: Room, beside: Beside) -> Option<bool> {
    if !matches!(beside, Beside::Nothing) {
        return match edition {
            Electrical::E2026 => None,
            _ => Some(true),
        };
    }
    let from_2020 = !matches!(edition, Electrical::E2017);
    let from_2023 = from_2020 && !matches!(edition, Electrical::E2020);
    match (edition, room) {
        (Electrical::E2026, _) => None,
        (_, Room::Kitchen) => Some(from_2023),
        (_, Room::Finished) => Some(from_2020),
        (_, Room::Bedroom | Room::Living | Room::Hall | Room::Attic) => Some(false),
        _ => Some(true),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use Electrical::{E2017, E2020, E2023, E2026};

    /// Source: NEC 210.8(A) of 2017, 2020 and 2023, room by room.
    #[test]
    fn rooms_are_added_by_edition() {
        for (room, want) in [
            (Room::Bedroom, [false, false, false]),
            (Room::Living, [false, false, false]),
            (Room::Hall, [false, false, false]),
            (Room::Attic, [false, false, false]),
            (Room::Kitchen, [false, false, true]),
            (Room::Finished, [false, true, true]),
            (Room::Unfinished, [true, true, true]),
            (Room::Laundry, [true, true, true]),
            (Room::Bath, [true, true, true]),
            (Room::Garage, [true, true, true]),
            (Room::Crawl, [true, true, true]),
            (Room::Outdoors, [true, true, true]),
        ] {
            let has = [E2017, E2020, E2023].map(|it| covers(it, room, Beside::Nothing).unwrap());
            assert_eq!(has, want, "{room:?}");
            for beside in [Beside::Counter, Beside::Sink, Beside::Tub] {
                assert_eq!(covers(E2017, room, beside), Some(true));
                assert_eq!(covers(E2026, room, beside), None);
            }
            assert_eq!(covers(E2026, room, Beside::Nothing), None);
        }
    }
}
