//! 314.27(C): what a ceiling fan hangs from.

use super::dwelling_rooms::Room;
use crate::edition::Electrical;
use crate::words;

words! {
    SAYS = "A ceiling fan hangs from a box that is listed and marked for fans, or from framing.", es "Un ventilador de techo cuelga de una caja listada y marcada para ventiladores, o de la estructura.";
    SEEN = "written down from memory", es "escrito de memoria";
    READY_SAYS = "From 2020 a ceiling box in a habitable room, where a fan could hang, is listed for one or opens to framing that can carry one; in 2017 where a spare switched wire is run to it.", es "Desde 2020, una caja de techo en un cuarto habitable, donde podría colgarse un ventilador, está listada para uno o da a estructura que puede cargar uno; en 2017, donde le llega un alambre de apagador de reserva.";
    READY_SEEN = "read in forum pages that quote 314.27(C), and magazine answers on 2017", es "leído en páginas de foros que citan 314.27(C), y en respuestas de revistas sobre 2017";
}

source!(
    /// Where it is published.
    FAN_BOXES, "nec-314.27(c)", "NEC 314.27(C)", SAYS, SEEN, Memory
);

source!(
    /// Where boxes of lights that a fan could replace are published.
    READY, "nec-314.27(c)-ready", "NEC 314.27(C), where a fan could hang" es "NEC 314.27(C), donde podría colgar un ventilador", READY_SAYS, READY_SEEN, Read
);

/// Whether a light's ceiling box there is to carry a fan too, `spare` with a spare switched wire.
/// 2026: not verified.
pub const fn covers(edition: Electrical, room: Room, spare: bool) -> Option<bool> {
    match edition {
        Electrical::E2026 => None,
        Electrical::E2017 => Some(spare && room.is_habitable()),
        _ => Some(room.is_habitable()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: NEC 314.27(C) of 2017, and of 2020 and 2023.
    #[test]
    fn a_light_in_a_habitable_room_hangs_from_a_box_for_a_fan_since_2020() {
        for (edition, spare, want) in [
            (Electrical::E2017, false, false),
            (Electrical::E2017, true, true),
            (Electrical::E2020, false, true),
            (Electrical::E2023, false, true),
        ] {
            assert_eq!(covers(edition, Room::Bedroom, spare), Some(want));
            assert_eq!(covers(edition, Room::Hall, spare), Some(false));
        }
        assert_eq!(covers(Electrical::E2026, Room::Bedroom, true), None);
    }
}
