//! 404.2: the wires that belong at a switch.

use super::dwelling_rooms::Room;
use crate::edition::Electrical;
use crate::words;

words! {
    NEUTRAL_SAYS = "A neutral is at each switch of lighting in rooms that people use, bathrooms, halls and stairs. Not: where raceway or an opening lets one be added later, several switch points see the whole room and one has it, or nothing but a receptacle is switched.", es "Hay un neutro en cada apagador de alumbrado en cuartos que la gente usa, baños, pasillos y escaleras. No: donde una canalización o una abertura permite agregarlo después, donde varios puntos de apagador ven todo el cuarto y uno lo tiene, o donde el apagador solo maneja un contacto.";
    NEUTRAL_SEEN = "read in a textbook's question and a continuing-education page", es "leído en una pregunta de un libro de texto y en una página de educación continua";
}

words! {
    PATH_SAYS = "Only the hot is switched, and all wires of a circuit lie in one cable: no neutral and no traveler is borrowed from another, where it would heat, trip arc-fault breakers and shock.", es "Solo se corta el vivo, y todos los alambres de un circuito van en un mismo cable: no se toma prestado neutro ni viajero de otro, donde calentaría, botaría breakers de falla de arco y daría descarga.";
    WHITE_SAYS = "A white wire that is hot is marked so at both ends, and in a switch loop brings supply to the switch, never the switched wire back.", es "Un alambre blanco que es vivo se marca así en las dos puntas, y en el lazo de un apagador (switch loop) trae la alimentación al apagador, nunca es el regreso del apagador.";
    FROM_MEMORY = "written down from memory", es "escrito de memoria";
}

source!(
    /// Where the way of a circuit's wires is published.
    ONE_PATH, "nec-404.2(A)", "NEC 404.2(A), 300.3(B)", PATH_SAYS, FROM_MEMORY, Memory
);

source!(
    /// Where white wires that are hot are published.
    WHITE_HOT, "nec-200.7(C)", "NEC 200.7(C)", WHITE_SAYS, FROM_MEMORY, Memory
);

source!(
    /// Where it is published.
    NEUTRAL, "nec-404.2(C)", "NEC 404.2(C)", NEUTRAL_SAYS, NEUTRAL_SEEN, Read
);

/// Whether a switch of lighting there has one. 2026: not verified.
pub const fn covers(edition: Electrical, room: Room) -> Option<bool> {
    use Room::{Bath, Hall, Laundry};
    match edition {
        Electrical::E2026 => None,
        _ => Some(room.is_habitable() || matches!(room, Bath | Hall | Laundry)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_is_at_switches_of_rooms_that_people_use() {
        let without = Room::ALL.iter().filter(|it| !covers(Electrical::E2020, **it).unwrap());
        let keys: Vec<_> = without.map(|room| room.key()).collect();
        assert_eq!(keys, ["basement", "garage", "attic", "crawl", "outdoors"]);
        assert_eq!(covers(Electrical::E2026, Room::Bath), None);
    }
}
