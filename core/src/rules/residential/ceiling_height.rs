//! R305.1: how high a ceiling has to be over the finished floor.

use crate::measure::{Area, Length};
use crate::rules::compare::Limit;
use crate::words;

words! {
    SAYS = "Rooms to live, sleep or eat in, and halls, are 7 ft high or more; baths, toilet rooms and laundries 6 ft 8 in or more. Heights are between finished surfaces.", es "Los cuartos para vivir, dormir o comer, y los pasillos, tienen 7 ft de alto o más; los baños, cuartos de inodoro y lavanderías 6 ft 8 in o más. Las alturas son entre superficies terminadas.";
    SEEN = "read in a forum's breakdown of the 2021 section; that 2018 says the same is from memory. Later editions have moved the section: go by its title", es "leído en el desglose de un foro de la sección de 2021; que 2018 dice lo mismo es de memoria. Las ediciones posteriores movieron la sección: guíese por su título";
    SLOPED_SAYS = "Under a slope, half of the required floor is 7 ft high or more and none of it under 5 ft; what is under 5 ft doesn't count. A room to live in needs 70 sq ft.", es "Bajo una pendiente, la mitad del piso requerido tiene 7 ft de alto o más y nada de él menos de 5 ft; lo que está bajo 5 ft no cuenta. Un cuarto para vivir necesita 70 sq ft.";
    SLOPED_SEEN = "read in the same breakdown of the 2021 section. Some inspectors take half of all that counts: both are shown", es "leído en el mismo desglose de la sección de 2021. Algunos inspectores toman la mitad de todo lo que cuenta: se muestran las dos";
    BEAM_SAYS = "Beams 3 ft or more apart may hang to 6 ft 6 in; beams and ducts in a basement to 6 ft 4 in.", es "Las vigas separadas 3 ft o más pueden bajar hasta 6 ft 6 in; las vigas y ductos en un sótano hasta 6 ft 4 in.";
    BEAM_SEEN = "written down from memory", es "escrito de memoria";
}

source!(
    /// Where both heights are published.
    CEILING_HEIGHT, "irc-r305.1", "IRC 2018, 2021 R305.1, ceiling height" es "IRC 2018, 2021 R305.1, altura del techo", SAYS, SEEN, Read
);

/// The least for rooms that people live in, and halls.
pub const LIVED_IN: Limit<Length> = Limit { value: Length::inches(84, 1), source: &CEILING_HEIGHT };

/// The least for any room at all: a bath, a toilet room or a laundry.
pub const ANY_ROOM: Limit<Length> = Limit { value: Length::inches(80, 1), source: &CEILING_HEIGHT };

source!(
    /// Where sloped ceilings are published.
    SLOPED, "irc-r305.1-sloped", "IRC 2018, 2021 R305.1 and R304, sloped ceilings" es "IRC 2018, 2021 R305.1 y R304, techos inclinados", SLOPED_SAYS, SLOPED_SEEN, Read
);

source!(
    /// Where beams are published.
    BEAMS, "irc-r305.1-beams", "IRC 2018, 2021 R305.1, beams" es "IRC 2018, 2021 R305.1, vigas", BEAM_SAYS, BEAM_SEEN, Memory
);

/// Floor under less than this doesn't count. Source: [`SLOPED`].
pub const COUNTED_FROM: Length = Length::inches(60, 1);
/// The floor that a room to live in needs.
pub const REQUIRED: Limit<Area> = Limit { value: Area::square_feet(70), source: &SLOPED };
/// Half of it is to be 7 ft high.
pub const HALF_REQUIRED: Limit<Area> = Limit { value: Area::square_feet(35), source: &SLOPED };

/// Half of the floor that counts: the stricter reading. Up to the square nanometre.
pub fn half_counted(counted: Area) -> Limit<Area> {
    let half = (counted.square_nanometres() + 1).div_euclid(2);
    Limit { value: Area::from_square_nanometres(half), source: &SLOPED }
}

/// The lowest that any text lets a beam hang.
pub const BEAM: Limit<Length> = Limit { value: Length::inches(76, 1), source: &BEAMS };
