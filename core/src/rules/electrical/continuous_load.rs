//! 210.20(A): the breaker in front of a load that stays on for hours.

use crate::edition::Electrical;
use crate::measure::Measure;
use crate::rules::compare::Limit;
use crate::words;

words! {
    SAYS = "A breaker is no smaller than 125 % of what is on for three hours or more, and all of the rest: such a load alone is at most 80 % of it. A breaker and panel listed for 100 % are held to 100 %.", es "Un breaker no es menor que el 125 % de lo que está prendido tres horas o más, y todo lo demás: una carga así, sola, es a lo más el 80 % de él. Un breaker y panel listados para 100 % llegan al 100 %.";
    SEEN = "read in a breaker maker's bulletin that quotes 210.20(A); the three hours, from memory of article 100", es "leído en un boletín de un fabricante de breakers que cita 210.20(A); las tres horas, de memoria del artículo 100";
}

source!(
    /// Where it is published.
    CONTINUOUS, "nec-210.20(A)", "NEC 210.20(A)", SAYS, SEEN, Read
);

/// The most that is on for three hours or more behind a breaker, alone: `breaker ÷ 1.25`. 2026: not
/// verified.
pub fn most_for_hours(edition: Electrical, breaker: Measure) -> Option<Limit<Measure>> {
    if edition == Electrical::E2026 {
        return None;
    }
    let most = breaker.of_same(breaker.millionths() / 5 * 4);
    Some(Limit { value: most, source: &CONTINUOUS })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rules::electrical::ampacity::amperes;
    use proptest::prelude::*;

    /// Source: NEC 210.20(A), 125 % of a continuous load: 12 A behind 15, 16 behind 20, 24 behind 30.
    #[test]
    fn four_fifths_of_a_breaker_are_its_most_for_hours() {
        for (breaker, most) in [(15, 12), (20, 16), (25, 20), (30, 24), (40, 32), (50, 40)] {
            let limit = most_for_hours(Electrical::E2023, amperes(breaker)).unwrap();
            assert_eq!(limit.value, amperes(most), "{breaker}");
            assert_eq!(most_for_hours(Electrical::E2026, amperes(breaker)), None);
        }
    }

    proptest! {
        #[test]
        fn a_quarter_more_of_it_never_passes_the_breaker(millionths in 0_i64..60_000_000) {
            let breaker = amperes(0).of_same(millionths);
            let most = most_for_hours(Electrical::E2017, breaker).unwrap().value;
            prop_assert!(most.millionths() * 5 <= millionths * 4);
            prop_assert!(most.millionths() * 5 > millionths * 4 - 20);
        }
    }
}
