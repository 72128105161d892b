//! Lead paint: which houses the renovation rule reaches, and how little of a painted surface
//! counts as minor.
//!
//! The rule also leaves out housing for the elderly or disabled without a child under six, and
//! units without a bedroom. Neither is offered here: who may use that knows it.

use crate::measure::{Area, Length};
use crate::rules::compare::{Limit, is_at_least, is_at_most};
use crate::words;

words! {
    TARGET_SAYS = "The renovation rule reaches housing put up before 1978.", es "La regla de renovación alcanza a las viviendas construidas antes de 1978.";
    TARGET_SEEN = "read in 73 FR 21692 (2008)", es "leído en 73 FR 21692 (2008)";
    MINOR_SAYS = "Minor is up to 6 sq ft of painted surface a room inside, or 20 sq ft outside: no window replaced, nothing painted torn out, none of the forbidden ways of work. All work in a room within 30 days adds up, and what is taken off counts whole.", es "Menor es hasta 6 sq ft de superficie pintada por cuarto adentro, o 20 sq ft afuera: sin reemplazar ventanas, sin arrancar nada pintado, sin ninguna de las formas de trabajo prohibidas. Todo el trabajo en un cuarto dentro de 30 días se suma, y lo que se quita cuenta completo.";
    MINOR_SEEN = "read in EPA's answers on 40 CFR 745.83 and a page that quotes it", es "leído en las respuestas de la EPA sobre 40 CFR 745.83 y en una página que lo cita";
    WORK_SAYS = "Lead paint: plastic on the floor to 6 ft past the work inside, 10 ft outside; a HEPA vacuum and a wet mop.", es "Pintura con plomo: plástico en el piso hasta 6 ft más allá del trabajo adentro, 10 ft afuera; aspiradora HEPA y trapeador húmedo.";
    WORK_SEEN = "read in EPA's answers on 40 CFR 745.85", es "leído en las respuestas de la EPA sobre 40 CFR 745.85";
    FIRM_SAYS = "More lead paint than is minor is for a certified firm with a certified renovator, who hand over the pamphlet and keep records for 3 years.", es "Más pintura con plomo de lo que es menor es para una empresa certificada con un renovador certificado, que entregan el folleto y guardan registros por 3 años.";
    FIRM_SEEN = "from memory of 40 CFR 745 subpart E", es "de memoria de 40 CFR 745 subparte E";
    OWNER_SAYS = "The lead rule binds who is paid, and who rents the house out. Lead in an owner's own house does the same harm: it is held all the same.", es "La regla del plomo obliga a quien cobra, y a quien da la casa en renta. El plomo en la casa propia de un dueño hace el mismo daño: queda detenido de todos modos.";
    OWNER_SEEN = "that it is about paid work read in 75 FR 24802 (2010); who rents out, from memory", es "que se trata de trabajo pagado, leído en 75 FR 24802 (2010); quien da en renta, de memoria";
}

source!(
    /// Which houses.
    TARGET, "cfr-40-745", "40 CFR 745, 73 FR 21692", TARGET_SAYS, TARGET_SEEN, Read
);
source!(
    /// What is minor.
    MINOR, "cfr-40-745.83", "40 CFR 745.83", MINOR_SAYS, MINOR_SEEN, Read
);
source!(
    /// How the work is done.
    WORK, "cfr-40-745.85", "40 CFR 745.85", WORK_SAYS, WORK_SEEN, Read
);
source!(
    /// Who does it.
    FIRM, "cfr-40-745-e", "40 CFR 745 subpart E" es "40 CFR 745, subparte E", FIRM_SAYS, FIRM_SEEN, Memory
);
source!(
    /// Owners.
    OWNER, "cfr-40-745.82", "40 CFR 745.82", OWNER_SAYS, OWNER_SEEN, Memory
);

/// The first year that the rule doesn't reach.
const FIRST_OUT: Limit<i64> = Limit { value: 1978, source: &TARGET };
/// The most of a painted surface that is minor in one room, and outside.
const INSIDE: Limit<Area> = Limit { value: Area::square_feet(6), source: &MINOR };
const OUTSIDE: Limit<Area> = Limit { value: Area::square_feet(20), source: &MINOR };
/// Plastic reaches so far past the work inside, or farther where dust does.
pub const PLASTIC_PAST: Limit<Length> = Limit { value: Length::inches(72, 1), source: &WORK };
/// Work in one room within so many days adds up.
pub const ADDS_UP_DAYS: Limit<i64> = Limit { value: 30, source: &MINOR };

/// Whether the rule reaches a house; one of an unknown year is reached.
///
/// Source: 40 CFR 745 as 73 FR 21692 (2008) has it, before 1978.
pub fn reaches(built: Option<i64>) -> bool {
    built.is_none_or(|year| !is_at_least(year, FIRST_OUT))
}

/// The most that is minor.
pub const fn most_minor(outside: bool) -> Limit<Area> {
    if outside { OUTSIDE } else { INSIDE }
}

/// Whether a job is minor. `torn_out`: something painted is taken out, and not only broken into.
///
/// Source: 40 CFR 745.83, minor repair and maintenance. A window never is.
pub fn is_minor(painted: Area, outside: bool, window: bool, torn_out: bool) -> bool {
    let nothing = painted == Area::ZERO;
    !window && (nothing || (!torn_out && is_at_most(painted, most_minor(outside))))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: 40 CFR 745 as 73 FR 21692 (2008) has it: before 1978, so that 1978 itself is out.
    #[test]
    fn a_house_of_1977_is_reached_and_one_of_1978_is_not() {
        for (year, want) in [(1976, true), (1977, true), (1978, false), (1979, false)] {
            assert_eq!(reaches(Some(year)), want, "{year}");
        }
        assert!(reaches(None));
    }

    #[test]
    fn each_limit_names_its_regulation() {
        assert_eq!(FIRST_OUT.source.clause.en, "40 CFR 745, 73 FR 21692");
        let minor = [INSIDE.source, OUTSIDE.source, ADDS_UP_DAYS.source];
        assert_eq!(minor.map(|source| source.clause.en), ["40 CFR 745.83"; 3]);
        assert_eq!(PLASTIC_PAST.source.clause.en, "40 CFR 745.85");
    }

    /// Source: 40 CFR 745.83: 6 sq ft a room inside, 20 sq ft outside.
    #[test]
    fn six_square_feet_inside_and_twenty_outside_are_still_minor() {
        for (inches, outside, want) in [
            (6 * 144 - 1, false, true),
            (6 * 144, false, true),
            (6 * 144 + 1, false, false),
            (20 * 144 - 1, true, true),
            (20 * 144, true, true),
            (20 * 144 + 1, true, false),
        ] {
            let painted = Area::of(Length::inches(inches, 1), Length::inches(1, 1));
            assert_eq!(is_minor(painted, outside, false, false), want, "{inches}");
            assert!(!is_minor(painted, outside, true, false), "a window is never minor");
            assert!(!is_minor(painted, outside, false, true), "tearing out is never minor");
        }
        assert!(is_minor(Area::ZERO, false, false, true), "nothing painted is torn out");
        assert_eq!(ADDS_UP_DAYS.value, 30);
    }
}
