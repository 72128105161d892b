//! 334.80 and 310.15: what cables that lie together, or in heat, carry less.

use super::ampacity::{AMPACITY, Carries, amperes};
use crate::edition::Electrical;
use crate::measure::Measure;
use crate::measure::unit::{AMPERE, NUMBER, PERCENT};
use crate::rules::compare::{Limit, is_at_most};
use crate::sheet::{Expr, Source, Value};
use crate::words::Amount;
use crate::{choice, words};

words! {
    SEALED_SAYS = "More than two cables through one hole in wood that is sealed with foam, caulk or insulation are adjusted by their current-carrying conductors, from 90 °C, and end no higher than at 60 °C. A short length is no excuse.", es "Más de dos cables por un mismo agujero en madera que se sella con espuma, sellador o aislante se ajustan por sus conductores que llevan corriente, desde 90 °C, y terminan no más arriba que a 60 °C. Un tramo corto no es excusa.";
    SEALED_SEEN = "read in electricians' pages that quote 334.80", es "leído en páginas de electricistas que citan 334.80";
    TOUCHING_SAYS = "More than two cables that touch each other inside thermal insulation are adjusted as in a sealed hole.", es "Más de dos cables que se tocan dentro de aislante térmico se ajustan como en un agujero sellado.";
    TOUCHING_SEEN = "from memory of 334.80", es "de memoria de 334.80";
    ADJUST_SAYS = "Together for more than 24 in, or where 334.80 says so: 4 to 6 current-carrying conductors 80 %, 7 to 9 70 %, 10 to 20 50 %, 21 to 30 45 %, 31 to 40 40 %, more 35 %. Grounds don't count; a 3-wire cable counts three.", es "Juntos por más de 24 in, o donde lo dice 334.80: de 4 a 6 conductores que llevan corriente 80 %, de 7 a 9 70 %, de 10 a 20 50 %, de 21 a 30 45 %, de 31 a 40 40 %, más 35 %. Las tierras no cuentan; un cable de 3 hilos cuenta tres.";
    ADJUST_SEEN = "7 to 9 read in electricians' pages, the rest from memory. An electrician may count some neutrals out", es "de 7 a 9 leído en páginas de electricistas, lo demás de memoria. Un electricista puede dejar sin contar algunos neutros";
    WARM_SAYS = "Past 30 °C (86 °F) conductors of 90 °C carry less: to 35 °C 0.96, 40 °C 0.91, 45 °C 0.87, 50 °C 0.82, 55 °C 0.76, 60 °C 0.71, 65 °C 0.65, 70 °C 0.58.", es "Pasando de 30 °C (86 °F) los conductores de 90 °C llevan menos: hasta 35 °C 0.96, 40 °C 0.91, 45 °C 0.87, 50 °C 0.82, 55 °C 0.76, 60 °C 0.71, 65 °C 0.65, 70 °C 0.58.";
    WARM_SEEN = "read in a reprint of the table; cooler places carry more, which is not counted here", es "leído en una reimpresión de la tabla; en lugares más frescos llevan más, y eso no se cuenta aquí";
    APART = "Apart, or no more than two", es "Separados, o no más de dos";
    IN_HOLE = "Through one sealed hole", es "Por un agujero sellado";
    IN_INSULATION = "Touching in insulation", es "Tocándose en aislante";
    BUNDLED = "Together for over 24 in", es "Juntos por más de 24 in";
    ROOM = "Up to 86 °F (30 °C)", es "Hasta 86 °F (30 °C)";
    W35 = "To 95 °F (35 °C)", es "Hasta 95 °F (35 °C)";
    W40 = "To 104 °F (40 °C)", es "Hasta 104 °F (40 °C)";
    W45 = "To 113 °F (45 °C)", es "Hasta 113 °F (45 °C)";
    W50 = "To 122 °F (50 °C)", es "Hasta 122 °F (50 °C)";
    W55 = "To 131 °F (55 °C)", es "Hasta 131 °F (55 °C)";
    W60 = "To 140 °F (60 °C)", es "Hasta 140 °F (60 °C)";
    W65 = "To 149 °F (65 °C)", es "Hasta 149 °F (65 °C)";
    W70 = "To 158 °F (70 °C)", es "Hasta 158 °F (70 °C)";
}

source!(
    /// Where sealed holes are published.
    SEALED, "nec-334.80", "NEC 334.80", SEALED_SAYS, SEALED_SEEN, Read
);

source!(
    /// Where cables in insulation are published.
    TOUCHING, "nec-334.80-insulation", "NEC 334.80, in insulation" es "NEC 334.80, en aislante", TOUCHING_SAYS, TOUCHING_SEEN, Memory
);

source!(
    /// Where the adjustment is published.
    ADJUSTMENT, "nec-310.15(C)(1)", "NEC Table 310.15(C)(1), once 310.15(B)(3)(a)" es "NEC, Tabla 310.15(C)(1), antes 310.15(B)(3)(a)", ADJUST_SAYS, ADJUST_SEEN, Memory
);

source!(
    /// Where the correction for heat is published.
    WARMTH, "nec-310.15(B)(1)", "NEC Table 310.15(B)(1), once 310.15(B)(2)(a)" es "NEC, Tabla 310.15(B)(1), antes 310.15(B)(2)(a)", WARM_SAYS, WARM_SEEN, Read
);

/// The most cables in a sealed hole that are not adjusted. 2026: not verified.
pub const fn in_sealed_hole(edition: Electrical) -> Option<Limit<i64>> {
    match edition {
        Electrical::E2026 => None,
        _ => Some(Limit { value: 2, source: &SEALED }),
    }
}

/// The most cables touching in insulation that are not adjusted. 2026: not verified.
pub const fn in_insulation(edition: Electrical) -> Option<Limit<i64>> {
    match edition {
        Electrical::E2026 => None,
        _ => Some(Limit { value: 2, source: &TOUCHING }),
    }
}

choice! {
    /// How cables lie where they lie closest.
    pub enum Lie {
        /// Nothing warms another.
        Apart = "apart", APART;
        /// In wood, with foam, caulk or insulation round them.
        InHole = "hole", IN_HOLE;
        /// In insulation, without space.
        InInsulation = "insulation", IN_INSULATION;
        /// Anywhere, without space.
        Bundled = "bundled", BUNDLED;
    }
}

/// Whether so many cables that lie so are adjusted, and the clause that says what they carry. 2026: not verified.
pub fn adjusts(edition: Electrical, lie: Lie, cables: i64) -> Option<(bool, &'static Source)> {
    let most = match lie {
        Lie::InHole => in_sealed_hole(edition)?,
        Lie::InInsulation => in_insulation(edition)?,
        Lie::Apart | Lie::Bundled if edition == Electrical::E2026 => return None,
        Lie::Apart => return Some((false, &AMPACITY)),
        Lie::Bundled => Limit { value: 1, source: &ADJUSTMENT },
    };
    let is_adjusted = !is_at_most(cables, most);
    Some((is_adjusted, if is_adjusted { most.source } else { &AMPACITY }))
}

/// How much so many current-carrying conductors together still carry. 2026: not verified.
pub fn adjustment(edition: Electrical, carrying: i64) -> Option<Measure> {
    /// So many at most, and how much in hundredths.
    const TABLE: [(i64, i64); 7] =
        [(3, 100), (6, 80), (9, 70), (20, 50), (30, 45), (40, 40), (i64::MAX, 35)];
    if edition == Electrical::E2026 {
        return None;
    }
    let row = TABLE.iter().find(|row| carrying <= row.0)?;
    Some(Measure::whole(&PERCENT, row.1))
}

choice! {
    /// How warm it gets where cables lie.
    pub enum Warmth {
        /// A room.
        Room = "30", ROOM;
        /// To 35 °C.
        To35 = "35", W35;
        /// To 40 °C.
        To40 = "40", W40;
        /// To 45 °C.
        To45 = "45", W45;
        /// To 50 °C: many attics in summer.
        To50 = "50", W50;
        /// To 55 °C.
        To55 = "55", W55;
        /// To 60 °C.
        To60 = "60", W60;
        /// To 65 °C.
        To65 = "65", W65;
        /// To 70 °C.
        To70 = "70", W70;
    }
}

/// How much a conductor of 90 °C carries there. 2026: not verified.
pub fn correction(edition: Electrical, warmth: Warmth) -> Option<Measure> {
    const HUNDREDTHS: [i64; 9] = [100, 96, 91, 87, 82, 76, 71, 65, 58];
    if edition == Electrical::E2026 {
        return None;
    }
    Some(Measure::hundredths(&NUMBER, HUNDREDTHS[warmth as usize]))
}

/// What a conductor carries here: `min(at 90 °C × together × warm, at 60 °C)`, as the working shows
/// it; down to a hundredth of an ampere where it comes out finer, for what is carried is never
/// rounded up.
///
/// Source: NEC 334.80.
pub fn carried(carries: &Carries, together: Option<Measure>, warm: Measure) -> Expr {
    let mut reduced = Expr::measure(carries.at_90);
    for by in together.into_iter().chain([warm]) {
        reduced = reduced.times(Expr::measure(by));
    }
    let hundredths = || reduced.clone().times(Expr::count(100));
    let exact = in_amperes(&reduced.clone().told_in(&AMPERE));
    if exact.millionths() % 10_000 != 0 {
        reduced = Expr::RoundDown(Box::new(hundredths())).over(Expr::count(100));
    }
    Expr::Least(vec![reduced.told_in(&AMPERE), Expr::measure(carries.at_60)])
}

/// What [`carried`] comes to.
pub fn in_amperes(carried: &Expr) -> Measure {
    match carried.value().and_then(Value::amount) {
        Some(Amount::Measure(measure)) => measure,
        _ => amperes(0),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rules::electrical::ampacity::{behind, carries};
    use crate::rules::electrical::conductor_volume::Awg;
    use crate::sheet::Verdict;
    use proptest::prelude::*;

    const E2023: Electrical = Electrical::E2023;

    /// Amperes in hundredths that a conductor carries, of so many cables of two that lie so.
    fn here(size: Awg, lie: Lie, cables: i64, warmth: Warmth) -> i64 {
        let (is_adjusted, _) = adjusts(E2023, lie, cables).unwrap();
        let together = adjustment(E2023, 2 * cables).filter(|_| is_adjusted);
        let warm = correction(E2023, warmth).unwrap();
        let row = carries(E2023, size).unwrap();
        in_amperes(&carried(&row, together, warm)).millionths() / 10_000
    }

    /// Source: NEC 334.80, worked by hand: four 12-2 in one foamed hole are 8 conductors, 30 × 0.7
    /// = 21, held to 20 A; five are 10, 30 × 0.5 = 15 A, under a breaker of 20 A.
    #[test]
    fn four_12_2_in_a_foamed_hole_carry_20_amperes_and_five_carry_15() {
        let row = carries(E2023, Awg::Awg12).unwrap();
        for (cables, hundredths, verdict) in [(4, 2000, Verdict::Within), (5, 1500, Verdict::Over)]
        {
            let carried = here(Awg::Awg12, Lie::InHole, cables, Warmth::Room);
            assert_eq!(carried, hundredths);
            let carried = Measure::hundredths(&AMPERE, carried);
            let check = behind("k", (&APART).into(), carried, amperes(20), &row, &SEALED);
            assert_eq!(check.verdict, verdict);
        }
    }

    /// Two in a hole or in insulation are left alone and three are not; bundled, two are too many.
    #[test]
    fn each_clause_says_from_how_many_on() {
        for (lie, most) in
            [(Lie::InHole, 2), (Lie::InInsulation, 2), (Lie::Bundled, 1), (Lie::Apart, 99)]
        {
            let is_adjusted = |cables| adjusts(E2023, lie, cables).unwrap().0;
            assert!(!is_adjusted(most), "{lie:?}");
            assert_eq!(is_adjusted(most + 1), lie != Lie::Apart, "{lie:?}");
            assert_eq!(adjusts(Electrical::E2026, lie, 9), None);
        }
    }

    proptest! {
        #[test]
        fn one_more_beside_it_or_more_heat_never_carries_more(
            lie in prop::sample::select(Lie::ALL), cables in 1_i64..30,
        ) {
            for size in [Awg::Awg14, Awg::Awg12, Awg::Awg10, Awg::Awg8, Awg::Awg6] {
                for pair in Warmth::ALL.windows(2) {
                    let one = here(size, lie, cables, pair[0]);
                    prop_assert!(here(size, lie, cables + 1, pair[0]) <= one);
                    prop_assert!(here(size, lie, cables, pair[1]) <= one);
                    prop_assert!(here(size, Lie::Apart, cables, pair[0]) >= one);
                }
            }
        }
    }
}
