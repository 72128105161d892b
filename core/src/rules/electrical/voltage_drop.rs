//! Chapter 9, Table 8, and the notes of 210.19: what a run of copper loses of its voltage.

use super::conductor_volume::Awg;
use crate::measure::unit::{FACTOR, OHMS_A_THOUSAND_FEET, PERCENT, VOLT};
use crate::measure::{Length, Measure};
use crate::rules::compare::Limit;
use crate::sheet::Expr;
use crate::{choice, words};

words! {
    SAYS = "Uncoated copper at 75 °C, ohms in 1000 ft, solid and stranded: 14 AWG 3.07 and 3.14, 12 AWG 1.93 and 1.98, 10 AWG 1.21 and 1.24, 8 AWG 0.764 and 0.778, 6 AWG stranded 0.491. Each degree less takes 0.323 % off.", es "Cobre sin recubrir a 75 °C, ohms en 1000 ft, sólido y trenzado: 14 AWG 3.07 y 3.14, 12 AWG 1.93 y 1.98, 10 AWG 1.21 y 1.24, 8 AWG 0.764 y 0.778, 6 AWG trenzado 0.491. Cada grado menos quita 0.323 %.";
    SEEN = "from memory; solid sizes come out of copper's resistivity and the gauge's diameters to the last digit printed", es "de memoria; los tamaños sólidos salen de la resistividad del cobre y los diámetros del calibre hasta el último dígito impreso";
    ADVICE_SAYS = "A branch that loses no more than 3 % of its voltage, and 5 % with its feeder, works well.", es "Un ramal que no pierde más del 3 % de su voltaje, y del 5 % con su alimentador, trabaja bien.";
    ADVICE_SEEN = "from memory of informational notes: advice, and no inspector's limit", es "de memoria de notas informativas: consejo, y no límite de inspector";
    SOLID = "Solid", es "Sólido";
    STRANDED = "Stranded", es "Trenzado";
    H75 = "75 °C, as the table", es "75 °C, como la tabla";
    H60 = "60 °C, the most for this cable", es "60 °C, lo máximo para este cable";
    H30 = "30 °C, lightly loaded", es "30 °C, con poca carga";
}

source!(
    /// Where resistance is published.
    RESISTANCE, "nec-9-8", "NEC chapter 9, Table 8" es "NEC, capítulo 9, Tabla 8", SAYS, SEEN, Memory
);

source!(
    /// Where the advice is published.
    ADVICE, "nec-210.19-note", "NEC 210.19 and 215.2, informational notes" es "NEC 210.19 y 215.2, notas informativas", ADVICE_SAYS, ADVICE_SEEN, Memory
);

/// The most that a branch is advised to lose. Never a limit.
pub const OF_BRANCH: Limit<Measure> = Limit { value: Measure::whole(&PERCENT, 3), source: &ADVICE };
/// The same, with its feeder.
pub const IN_ALL: Limit<Measure> = Limit { value: Measure::whole(&PERCENT, 5), source: &ADVICE };

choice! {
    /// How a conductor is made.
    pub enum Strand {
        /// One wire.
        Solid = "solid", SOLID;
        /// Seven or more.
        Stranded = "stranded", STRANDED;
    }
}

choice! {
    /// How hot a conductor runs.
    pub enum Heat {
        /// The table's.
        At75 = "75", H75;
        /// What ends the column that nonmetallic cable is held to.
        At60 = "60", H60;
        /// Hardly warmer than a room.
        At30 = "30", H30;
    }
}

/// How the conductors of nonmetallic cable are made: solid to 10 AWG.
pub const fn of_cable(size: Awg) -> Strand {
    if size.thickness() <= Awg::Awg10.thickness() { Strand::Solid } else { Strand::Stranded }
}

/// What 1000 ft of copper resist at 75 °C; none where the size is not made so, or is not a
/// circuit's in nonmetallic cable. The same in all editions.
///
/// Source: NEC chapter 9, Table 8.
pub fn resistance(size: Awg, strand: Strand) -> Option<Measure> {
    let millionths = match (size, strand) {
        (Awg::Awg14, Strand::Solid) => 3_070_000,
        (Awg::Awg14, Strand::Stranded) => 3_140_000,
        (Awg::Awg12, Strand::Solid) => 1_930_000,
        (Awg::Awg12, Strand::Stranded) => 1_980_000,
        (Awg::Awg10, Strand::Solid) => 1_210_000,
        (Awg::Awg10, Strand::Stranded) => 1_240_000,
        (Awg::Awg8, Strand::Solid) => 764_000,
        (Awg::Awg8, Strand::Stranded) => 778_000,
        (Awg::Awg6, Strand::Stranded) => 491_000,
        _ => return None,
    };
    Some(Measure::new(&OHMS_A_THOUSAND_FEET, millionths))
}

/// How much of that it resists at another heat: `1 + 0.00323 × (T − 75)`.
///
/// Source: NEC chapter 9, Table 8, its note on temperature.
pub fn at(heat: Heat) -> Measure {
    Measure::new(
        &FACTOR,
        match heat {
            Heat::At75 => 1_000_000,
            Heat::At60 => 951_550,
            Heat::At30 => 854_650,
        },
    )
}

/// What a two-wire run loses, in volts: `2 × length × current × resistance × heat`.
///
/// - Shape: out and back, one way `length`, all of `current` at its end.
/// - Source: Ohm's law.
pub fn lost(length: Length, current: Measure, resistance: Measure, heat: Heat) -> Expr {
    let lost = Expr::count(2)
        .times(Expr::length(length))
        .times(Expr::measure(current))
        .times(Expr::measure(resistance));
    let lost = if heat == Heat::At75 { lost } else { lost.times(Expr::measure(at(heat))) };
    lost.told_in(&VOLT)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::unit::AMPERE;
    use crate::sheet::Value;
    use crate::words::Amount;
    use proptest::prelude::*;

    /// Gauge numbers by size.
    const GAUGES: [(Awg, i32); 5] =
        [(Awg::Awg14, 14), (Awg::Awg12, 12), (Awg::Awg10, 10), (Awg::Awg8, 8), (Awg::Awg6, 6)];

    fn volts(expr: &Expr) -> i64 {
        match expr.value().and_then(Value::amount) {
            Some(Amount::Measure(volts)) => volts.millionths(),
            other => panic!("{other:?}"),
        }
    }

    /// Ohms in 1000 ft at 75 °C by physics. Sources: IEC 60028, annealed copper, 1/58 Ω·mm²/m and
    /// 0.00393 per kelvin at 20 °C; ASTM B258, a diameter of 0.127 mm × 92^((36 − n) ÷ 39).
    fn physics(gauge: i32) -> f64 {
        let wide = 0.127 * libm::pow(92.0, f64::from(36 - gauge) / 39.0);
        let area = std::f64::consts::PI * wide * wide / 4.0;
        304.8 / 58.0 / area * (1.0 + 0.00393 * 55.0)
    }

    /// A cell has three digits, so that 10 AWG's own rounding is 0.4 %; all others are within 0.2 %.
    #[test]
    fn solid_copper_is_as_its_physics_to_the_digit_printed() {
        for (size, gauge) in GAUGES {
            let Some(cell) = resistance(size, Strand::Solid) else {
                assert_eq!(size, Awg::Awg6);
                continue;
            };
            let (cell, physics) = (cell.number(), physics(gauge));
            let digit = if cell < 1.0 { 0.001 } else { 0.01 };
            assert!((cell - physics).abs() <= digit / 2.0 + 1e-4, "{size:?}: {cell}, {physics}");
            let share = (cell / physics - 1.0).abs();
            assert!(share <= if size == Awg::Awg10 { 0.005 } else { 0.002 }, "{size:?}: {share}");
        }
    }

    /// Lay makes strands some 2 % longer than the conductor. Source: ASTM B8, class B.
    #[test]
    fn stranded_copper_resists_about_two_percent_more() {
        for (size, gauge) in GAUGES {
            let cell = resistance(size, Strand::Stranded).unwrap().number();
            let more = cell / physics(gauge);
            assert!((1.012..1.028).contains(&more), "{size:?}: {more}");
        }
    }

    /// Source: NEC chapter 9, Table 9, alternating current in PVC, read in a wire maker's reprint:
    /// two digits, and at these sizes the same as stranded copper's direct current.
    #[test]
    fn alternating_current_loses_the_same_at_these_sizes() {
        for ((size, _), cell) in GAUGES.iter().zip([3.1, 2.0, 1.2, 0.78, 0.49]) {
            let direct = resistance(*size, Strand::Stranded).unwrap().number();
            assert!((direct / cell - 1.0).abs() < 0.035, "{size:?}");
        }
    }

    /// By hand: 12 AWG solid, 60 ft one way, 16 A: 2 × 60 × 16 × 1.93 ÷ 1000 = 3.7056 V.
    #[test]
    fn sixty_feet_of_12_awg_lose_3_7_volts() {
        let ohms = resistance(Awg::Awg12, Strand::Solid).unwrap();
        let feet = Length::inches(720, 1);
        let amperes = Measure::whole(&AMPERE, 16);
        assert_eq!(volts(&lost(feet, amperes, ohms, Heat::At75)), 3_705_600);
        // At 60 °C: 3.7056 × (1 − 0.00323 × 15) = 3.526064 V, to the nearest millionth.
        assert_eq!(volts(&lost(feet, amperes, ohms, Heat::At60)), 3_526_064);
        // At 30 °C: 3.7056 × 0.85465 = 3.166991 V.
        assert_eq!(volts(&lost(feet, amperes, ohms, Heat::At30)), 3_166_991);
    }

    #[test]
    fn nonmetallic_cable_is_solid_to_10_awg() {
        for (size, gauge) in GAUGES {
            assert_eq!(of_cable(size) == Strand::Solid, gauge >= 10);
            assert!(resistance(size, of_cable(size)).is_some());
        }
        assert_eq!(resistance(Awg::Awg18, Strand::Solid), None);
    }

    proptest! {
        #[test]
        fn longer_hotter_thinner_or_more_loaded_never_loses_less(
            feet in 0_i64..2_000, more in 0_i64..500, amperes in 0_i64..60, extra in 0_i64..20,
        ) {
            let of = |size, feet, amperes, heat| {
                let ohms = resistance(size, of_cable(size)).unwrap();
                let current = Measure::whole(&AMPERE, amperes);
                volts(&lost(Length::inches(feet * 12, 1), current, ohms, heat))
            };
            for pair in GAUGES.windows(2) {
                let thin = of(pair[0].0, feet, amperes, Heat::At60);
                prop_assert!(thin >= of(pair[1].0, feet, amperes, Heat::At60));
                prop_assert!(thin <= of(pair[0].0, feet + more, amperes, Heat::At60));
                prop_assert!(thin <= of(pair[0].0, feet, amperes + extra, Heat::At60));
                prop_assert!(thin <= of(pair[0].0, feet, amperes, Heat::At75));
                prop_assert!(thin >= of(pair[0].0, feet, amperes, Heat::At30));
            }
        }
    }
}
