//! Friction of ducts against a general-purpose library and the handbook's examples.

use super::fittings::Cost;
use super::friction::{GALVANIZED, Regime};
use super::run::{Duct, DuctKind, Run, flow_at, in_series};
use super::standard_air::PASCALS;
use super::working;
use crate::measure::unit::PERCENT;
use crate::measure::{Length, Measure};
use crate::sheet::Value;
use crate::words::Amount;
use proptest::prelude::*;

pub(crate) fn round(kind: DuctKind, inches: i64, feet: i64, slack: i64) -> Duct {
    let slack = Some(Measure::whole(&PERCENT, slack));
    Run::round(kind, Length::inches(inches, 1), Length::inches(feet * 12, 1), slack).duct()
}

/// Source: Colebrook's equation by the `fluids` 1.3 library (PyPI), density 0.075 lb/ft³, two of its
/// methods: diameter, cfm, fpm, Re, then f and in wc per 100 ft of galvanized and of stretched
/// flexible duct.
#[test]
fn friction_of_26_ducts_within_half_a_percent() {
    #[rustfmt::skip]
    const ROWS: &[(i64, f64, f64, f64, [f64; 4])] = &[
        (4, 20.0, 229.2, 7847.0, [0.03417, 0.0336, 0.04335, 0.0426]),
        (4, 40.0, 458.4, 15694.0, [0.02916, 0.1145, 0.04029, 0.1583]),
        (4, 60.0, 687.5, 23542.0, [0.02689, 0.2377, 0.03915, 0.3460]),
        (5, 50.0, 366.7, 15694.0, [0.02884, 0.0580, 0.03819, 0.0768]),
        (5, 75.0, 550.0, 23542.0, [0.02651, 0.1200, 0.03693, 0.1671]),
        (5, 100.0, 733.4, 31389.0, [0.02511, 0.2020, 0.03625, 0.2917]),
        (6, 50.0, 254.6, 13079.0, [0.02983, 0.0241, 0.03747, 0.0303]),
        (6, 75.0, 382.0, 19618.0, [0.02726, 0.0496, 0.03590, 0.0653]),
        (6, 100.0, 509.3, 26157.0, [0.02570, 0.0831, 0.03505, 0.1133]),
        (6, 125.0, 636.6, 32697.0, [0.02463, 0.1244, 0.03451, 0.1743]),
        (6, 150.0, 763.9, 39236.0, [0.02383, 0.1733, 0.03414, 0.2484]),
        (7, 100.0, 374.2, 22421.0, [0.02633, 0.0394, 0.03429, 0.0513]),
        (7, 150.0, 561.3, 33631.0, [0.02428, 0.0817, 0.03318, 0.1117]),
        (7, 200.0, 748.4, 44841.0, [0.02304, 0.1378, 0.03259, 0.1950]),
        (8, 100.0, 286.5, 19618.0, [0.02696, 0.0207, 0.03383, 0.0260]),
        (8, 150.0, 429.7, 29427.0, [0.02475, 0.0427, 0.03253, 0.0562]),
        (8, 200.0, 573.0, 39236.0, [0.02341, 0.0718, 0.03182, 0.0977]),
        (8, 250.0, 716.2, 49045.0, [0.02248, 0.1078, 0.03138, 0.1505]),
        (9, 300.0, 679.1, 52315.0, [0.02207, 0.0846, 0.03040, 0.1165]),
        (10, 300.0, 550.0, 47083.0, [0.02237, 0.0506, 0.02988, 0.0676]),
        (10, 400.0, 733.4, 62778.0, [0.02125, 0.0855, 0.02935, 0.1181]),
        (12, 400.0, 509.3, 52315.0, [0.02174, 0.0351, 0.02852, 0.0461]),
        (12, 600.0, 763.9, 78472.0, [0.02024, 0.0736, 0.02780, 0.1011]),
        (14, 800.0, 748.4, 89683.0, [0.01962, 0.0587, 0.02666, 0.0798]),
        (14, 1000.0, 935.4, 112_103.0, [0.01893, 0.0885, 0.02636, 0.1232]),
        (16, 1200.0, 859.4, 117_708.0, [0.01863, 0.0643, 0.02552, 0.0881]),
    ];
    assert_eq!(ROWS.len(), 26);
    for &(inches, cfm, fpm, reynolds, want) in ROWS {
        let (metal, flex) =
            (round(DuctKind::Round, inches, 100, 0), round(DuctKind::Flex, inches, 100, 0));
        let got = [metal.factor(cfm), metal.rate(cfm), flex.factor(cfm), flex.rate(cfm)];
        for (got, want) in got.into_iter().zip(want) {
            // Half a percent, and what the last printed digit holds back.
            assert!(
                (got - want).abs() < 0.005 * want + 6e-5,
                "{inches} in, {cfm} cfm: {got}, {want}"
            );
        }
        assert!((metal.velocity(cfm) - fpm).abs() < 0.06, "{inches} in, {cfm} cfm");
        assert!((metal.reynolds(cfm) / reynolds - 1.0).abs() < 1e-3, "{inches} in, {cfm} cfm");
    }
}

/// Source: `tests/references/make_duct_vectors.py`, which works Colebrook's equation in SI units
/// with `fluids` 1.3.1 (PyPI).
#[test]
fn friction_of_96_more_worked_in_other_units() {
    let rows = include_str!("../../../../tests/vectors/duct-friction.csv");
    let mut seen = 0;
    for row in rows.lines().skip(1) {
        let parts: Vec<&str> = row.split(',').collect();
        let number = |at: usize| parts[at].parse::<f64>().unwrap();
        let kind = if parts[0] == "flex" { DuctKind::Flex } else { DuctKind::Round };
        let duct = round(kind, parts[1].parse().unwrap(), 100, 0);
        let cfm = number(2);
        for (got, want) in [
            (duct.reynolds(cfm), number(3)),
            (duct.factor(cfm), number(4)),
            (duct.loss(cfm).drop, number(5)),
        ] {
            assert!((got / want - 1.0).abs() < 0.005, "{row}: {got} and not {want}");
        }
        seen += 1;
    }
    assert_eq!(seen, 96);
}

/// Source: ASHRAE Fundamentals 2021, ch. 21, Table 2: 250 mm, 1.8 m, 470 L/s: 7.7 Pa in spiral duct
/// of 0.12 mm, 11.4 Pa in stretched flexible duct, 19.5, 40.0 and 68.9 Pa with 4, 15 and 30 % slack.
/// The book's own f is a little above Colebrook's, which gives 7.61 and 11.25 Pa.
#[test]
fn the_handbooks_piece_of_flexible_duct() {
    let cfm = 470.0 / 0.471_947_443;
    let inches = 250.0 / 25.4;
    let feet = 1.8 / 0.3048;
    let duct = |rough: f64, share: f64| Duct {
        diameter: inches,
        area: std::f64::consts::FRAC_PI_4 * inches * inches,
        rough,
        feet,
        correction: super::flex::correction(share, inches),
        fittings: 0.0,
        c: 0.0,
    };
    for (rough_mm, share, printed, colebrook) in [
        (0.12, 0.0, 7.7, 7.61),
        (0.9, 0.0, 11.4, 11.25),
        (0.9, 0.04, 19.5, 11.25 * 1.67),
        (0.9, 0.15, 40.0, 11.25 * 3.52),
        (0.9, 0.30, 68.9, 11.25 * 6.04),
    ] {
        let got = duct(rough_mm / 304.8, share).loss(cfm).drop * PASCALS;
        assert!((got / printed - 1.0).abs() < 0.04, "{rough_mm} mm, {share}: {got}");
        assert!((got / colebrook - 1.0).abs() < 0.005, "{rough_mm} mm, {share}: {got}");
    }
}

/// Source: Colebrook by `fluids` 1.3 (PyPI), solved for the flow: cfm at 0.08 and at 0.10 in wc per
/// 100 ft, galvanized, then flexible pulled tight and 4 and 15 % slack.
#[test]
fn flows_at_two_rates() {
    #[rustfmt::skip]
    const ROWS: &[(DuctKind, i64, i64, f64, f64)] = &[
        (DuctKind::Round, 4, 0, 32.7, 37.1),
        (DuctKind::Round, 5, 0, 59.9, 67.8),
        (DuctKind::Round, 6, 0, 97.9, 110.8),
        (DuctKind::Round, 7, 0, 148.0, 168.0),
        (DuctKind::Round, 8, 0, 212.0, 240.0),
        (DuctKind::Round, 12, 0, 628.0, 709.0),
        (DuctKind::Flex, 6, 0, 83.4, 93.7),
        (DuctKind::Flex, 10, 0, 327.0, 367.0),
        (DuctKind::Flex, 6, 4, 56.6, 63.7),
        (DuctKind::Flex, 8, 4, 131.0, 147.0),
        (DuctKind::Flex, 6, 15, 35.2, 39.7),
        (DuctKind::Flex, 8, 15, 85.1, 95.8),
    ];
    for &(kind, inches, slack, low, high) in ROWS {
        let duct = round(kind, inches, 100, slack);
        for (rate, want) in [(0.08, low), (0.10, high)] {
            let got = flow_at(rate, 5000.0, &|cfm| duct.rate(cfm));
            assert!((got / want - 1.0).abs() < 0.005, "{kind:?} {inches} in: {got} and not {want}");
        }
    }
}

/// Source: Colebrook by `fluids` 1.3 and the handbook's equivalent diameter: 10 × 6 in, 150 cfm.
#[test]
fn a_rectangular_duct_by_its_equivalent_and_its_real_area() {
    let (wide, high) = (Some(Length::inches(10, 1)), Some(Length::inches(6, 1)));
    let length = Some(Length::inches(1200, 1));
    let kind = DuctKind::Rectangular;
    let duct = Run { kind, diameter: None, wide, high, length, slack: None }.duct();
    assert!((duct.velocity(150.0) - 360.0).abs() < 0.01);
    assert!((duct.loss(150.0).drop - 0.0338).abs() < 2e-4);
}

/// Source: C × D ÷ f, by hand: C 0.42 in a 6-in duct at 100 cfm is 8.2 ft of it.
#[test]
fn a_fitting_costs_what_its_equivalent_length_does() {
    let plain = round(DuctKind::Round, 6, 100, 0);
    let feet = 0.42 * 6.0 / 12.0 / plain.factor(100.0);
    assert!((feet - 8.2).abs() < 0.05, "{feet}");
    let (by_c, by_feet) = (plain.fitted(Cost::C(0.42), 1.0), plain.fitted(Cost::Feet(feet), 1.0));
    assert!((by_c.loss(100.0).drop - by_feet.loss(100.0).drop).abs() < 1e-12);
}

/// Source: the limits of Re, by hand: about 9 cfm in a 6-in duct is where it turns from laminar.
#[test]
fn little_air_runs_in_layers() {
    let duct = round(DuctKind::Round, 6, 100, 0);
    assert_eq!(Regime::at(duct.reynolds(8.7)), Regime::Laminar);
    assert_eq!(Regime::at(duct.reynolds(9.0)), Regime::Blended);
    assert_eq!(Regime::at(duct.reynolds(15.4)), Regime::Turbulent);
}

prop_compose! {
    pub(crate) fn a_duct()(
        kind in prop::sample::select(DuctKind::ALL), inches in 32_i64..384, other in 32_i64..384,
        length in 96_i64..57_600, slack in prop::option::of(0_i64..60), c in 0.0_f64..5.0,
        fittings in 0.0_f64..100.0,
    ) -> Duct {
        let at = |sixteenths| Some(Length::inches(sixteenths, 16));
        let slack = slack.map(|share| Measure::whole(&PERCENT, share));
        let run = Run { kind, diameter: at(inches), wide: at(inches), high: at(other), length: at(length), slack };
        run.duct().fitted(Cost::C(c), 1.0).fitted(Cost::Feet(fittings), 1.0)
    }
}

proptest! {
    #[test]
    fn loss_rises_with_flow_length_and_slack_and_falls_with_size(
        duct in a_duct(), cfm in 0.01_f64..2000.0, more in 1.000_1_f64..3.0,
    ) {
        let loss = duct.loss(cfm).drop;
        prop_assert!(loss.is_finite() && loss > 0.0);
        prop_assert!(duct.loss(cfm * more).drop > loss);
        let longer = Duct { feet: duct.feet * more, ..duct };
        prop_assert!(longer.loss(cfm).drop > loss);
        let slacker = Duct { correction: duct.correction * more, ..duct };
        prop_assert!(slacker.loss(cfm).drop > loss);
        let larger = Duct { diameter: duct.diameter * more, area: duct.area * more * more, ..duct };
        // Between the regimes a larger duct may be the more laminar one, and still never loses more.
        prop_assert!(larger.loss(cfm).drop < loss);
    }

    #[test]
    fn the_slope_is_that_of_the_loss(duct in a_duct(), cfm in 0.1_f64..2000.0) {
        let step = cfm * 1e-6;
        let reynolds = duct.reynolds(cfm);
        prop_assume!([2300.0, 4000.0].iter().all(|at: &f64| (at / reynolds - 1.0).abs() > 1e-5));
        let measured = (duct.loss(cfm + step).drop - duct.loss(cfm - step).drop) / (2.0 * step);
        prop_assert!((duct.loss(cfm).slope / measured - 1.0).abs() < 1e-5);
    }

    #[test]
    fn the_equation_that_is_shown_comes_to_the_loss(duct in a_duct(), cfm in 20.0_f64..1000.0) {
        let loss = duct.loss(cfm).drop;
        prop_assume!(loss > 0.01);
        let shown = working::loss(&duct, cfm).value().and_then(Value::amount);
        let Some(Amount::Measure(shown)) = shown else { panic!("no value") };
        prop_assert!((shown.number() / loss - 1.0).abs() < 1e-3, "{} and {loss}", shown.number());
    }
}

#[test]
fn loss_has_no_jump_where_the_regime_changes() {
    let duct = round(DuctKind::Flex, 6, 40, 15);
    for reynolds in [2300.0, 4000.0] {
        let at = reynolds / duct.reynolds(1.0);
        let (before, after) = (duct.loss(at * (1.0 - 1e-10)), duct.loss(at * (1.0 + 1e-10)));
        assert!((after.drop / before.drop - 1.0).abs() < 1e-8);
    }
    assert_eq!(GALVANIZED, 0.0003);
    assert!(in_series(&[duct, duct], 50.0).drop > duct.loss(50.0).drop);
}
