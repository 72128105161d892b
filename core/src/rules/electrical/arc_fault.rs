//! 210.12: protection against arcs, and what work on a circuit brings it.

use super::dwelling_rooms::Room;
use crate::edition::Electrical;
use crate::measure::Length;
use crate::rules::compare::{Limit, is_at_most};
use crate::words;

words! {
    SAYS = "Circuits of 120 V and 15 or 20 A in living rooms, bedrooms, halls, kitchens, laundries and like rooms have arc-fault protection once they are extended, modified or replaced. No more than 6 ft of added wire with no added outlet or device is exempt; from 2020 splices and wire inside boxes don't count.", es "Los circuitos de 120 V y de 15 o 20 A en salas, recámaras, pasillos, cocinas, lavanderías y cuartos parecidos tienen protección de falla de arco una vez que se alargan, modifican o reemplazan. No más de 6 ft de alambre agregado, sin salida (outlet) ni dispositivo agregado, queda exento; desde 2020 no cuentan los empalmes ni el alambre dentro de las cajas.";
    SEEN = "exemption read in continuing-education pages on 2017 and forum pages on 2023; the rooms are from memory", es "la exención, leída en páginas de educación continua sobre 2017 y páginas de foros sobre 2023; los cuartos son de memoria";
}

source!(
    /// Where it is published.
    ARC_FAULT, "nec-210.12", "NEC 210.12(A), (D) in 2017 and 2020, (E) in 2023" es "NEC 210.12(A), (D) en 2017 y 2020, (E) en 2023", SAYS, SEEN, Memory
);

/// Whether its outlets have it. 2026: not verified.
pub const fn covers(edition: Electrical, room: Room) -> Option<bool> {
    use Room::{Bedroom, Finished, Hall, Kitchen, Laundry, Living};
    match edition {
        Electrical::E2026 => None,
        _ => Some(matches!(room, Bedroom | Living | Hall | Kitchen | Laundry | Finished)),
    }
}

/// The most wire that may be added without it. 2026: not verified.
pub const fn added(edition: Electrical) -> Option<Limit<Length>> {
    match edition {
        Electrical::E2026 => None,
        _ => Some(Limit { value: Length::inches(72, 1), source: &ARC_FAULT }),
    }
}

/// Whether so much added wire brings none: not with an added outlet or device. 2026: not verified.
pub fn exempts(edition: Electrical, wire: Length, adds_outlet: bool) -> Option<bool> {
    added(edition).map(|most| !adds_outlet && is_at_most(wire, most))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: NEC 210.12: 6 ft is exempt, a sixteenth more isn't, nor is an added outlet.
    #[test]
    fn six_feet_are_exempt_and_a_sixteenth_more_is_not() {
        for edition in Electrical::VERIFIED {
            for (sixteenths, outlet, want) in
                [(0, false, true), (1152, false, true), (1153, false, false), (16, true, false)]
            {
                let wire = Length::inches(sixteenths, 16);
                assert_eq!(exempts(edition, wire, outlet), Some(want), "{sixteenths}");
            }
        }
        assert_eq!(exempts(Electrical::E2026, Length::ZERO, false), None);
        assert_eq!(covers(Electrical::E2026, Room::Bedroom), None);
    }

    /// Source: NEC 210.12(A), 2014 on: no bathrooms, garages, outdoors or unfinished parts.
    #[test]
    fn rooms_where_people_live_have_it() {
        let covered = Room::ALL.iter().filter(|room| covers(Electrical::E2017, **room).unwrap());
        let keys: Vec<_> = covered.map(|room| room.key()).collect();
        let want = ["bedroom", "living", "hall", "kitchen", "laundry", "finished-basement"];
        assert_eq!(keys, want);
    }
}
