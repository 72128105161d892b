//! Cases worked by hand, then laws.

use super::*;
use crate::fields::Form;
use crate::sheet::{Value, Verdict};
use crate::words::Amount;
use proptest::prelude::*;

fn heat(load: i64, difference: i64, feet: i64) -> Input {
    Input {
        load: Measure::whole(&BTUH, load),
        difference: Measure::whole(&DEGREES, difference),
        altitude: Measure::whole(&ALTITUDE, feet),
        ..Input::blank()
    }
}

/// Worked by hand from 60 × 0.075 lb/cu ft × 0.24 Btu/lb·°F and the ratio of pressures: 6,000
/// Btu/h at 20 °F; 4,500 at 45 °F when heating. Factors by altitude: 1.08 times the ratios of a
/// psychrometrics library, to three decimals.
#[test]
fn heat_asks_for_its_air() {
    for (input, want) in
        [(heat(6000, 20, 0), 277.8), (heat(6000, 20, 5000), 333.8), (heat(4500, 45, 0), 92.6)]
    {
        let air = solve(&input).unwrap().air.number();
        assert!((air - want).abs() < 0.06, "{air}, not {want}");
    }
    let factors = [1.080, 1.042, 1.004, 0.968, 0.933, 0.899, 0.866, 0.833, 0.802];
    for (thousands, want) in (0..).zip(factors) {
        let carries = solve(&heat(6000, 20, 1000 * thousands)).unwrap().carries.number();
        assert!((carries - want).abs() < 0.0006, "{thousands} thousand feet: {carries}");
    }
}

/// Worked by hand: 168 sq ft, 8 ft high, 26 ft of bare outside wall with 24 sq ft of single glass,
/// R-19 over it, half a change an hour, 60 °F colder outdoors: 0.25 × 184 × 60 = 2,760; 1.1 × 24 ×
/// 60 = 1,584; 168 × 60 ÷ 19 = 530.5; 0.5 × 1,344 ÷ 60 × 1.08 × 60 = 725.8.
#[test]
fn a_rough_loss_is_the_sum_of_its_parts() {
    let attic = Some(Measure::whole(&R_VALUE, 19));
    let input = Input { by: By::Rough, attic, ..Input::sample() };
    let answer = solve(&input).unwrap();
    let losses = answer.losses.iter().map(|(_, _, loss)| measured(loss.clone()).unwrap().number());
    for (got, want) in losses.zip([2760.0, 1584.0, 530.5, 725.8]) {
        assert!((got - want).abs() < 0.06, "{got}, not {want}");
    }
    assert!((answer.heat.number() - 5600.3).abs() < 0.1, "{:?}", answer.heat);
    let glass = Input { windows: Area::square_feet(209), ..input };
    assert_eq!(solve(&glass).unwrap_err()[0].path, "windows");
}

/// By hand: 5,600.3 Btu/h at 45 °F are 5,600.3 ÷ (1.08 × 45) = 115.2 cfm; cooling's 20 °F would make
/// it 259.3. Common practice: 30 to 60 °F warmer.
#[test]
fn a_rough_reckoning_heats_by_its_own_difference() {
    let attic = Some(Measure::whole(&R_VALUE, 19));
    let rough = Input { by: By::Rough, attic, ..Input::sample() };
    let air = solve(&rough).unwrap().air.number();
    assert!((air - 115.2).abs() < 0.06, "{air}");
    let cooled = Input { difference: Measure::whole(&DEGREES, 15), ..rough.clone() };
    assert_eq!(solve(&cooled).unwrap().air.number(), air);
    for (warm, want) in
        [(29, Verdict::Ask), (30, Verdict::Within), (60, Verdict::Within), (61, Verdict::Ask)]
    {
        let input = Input { warm: Measure::whole(&DEGREES, warm), ..rough.clone() };
        let sheet = RoomAir::sheet(&input, &solve(&input).unwrap(), Basis::default());
        let check = sheet.checks.iter().find(|check| check.key == "warm").unwrap();
        assert_eq!(check.verdict, want, "{warm}");
    }
    let known = Input::sample();
    let sheet = RoomAir::sheet(&known, &solve(&known).unwrap(), Basis::default());
    assert!(sheet.checks.iter().all(|check| check.key != "warm"));
}

/// By hand: 138.9 cfm × 60 ÷ 2,000 cu ft, as a room says it under a slope.
#[test]
fn a_volume_of_the_room_itself_goes_before_floor_times_height() {
    let input =
        Input { volume: Some(Volume::hundredths(172_800).times(2000)), ..heat(3000, 20, 0) };
    let answer = solve(&input).unwrap();
    assert!((answer.changes.number() - 4.167).abs() < 0.001, "{:?}", answer.changes);
    let sheet = RoomAir::sheet(&input, &answer, Basis::default());
    let next = crate::words::Voice::default().say(sheet.next.as_ref().unwrap());
    assert!(next.starts_with("Changes of the room's air: ≈ 4.17 an hour."), "{next}");
}

/// Worked by hand: 3,000 of 24,000 Btu/h of 800 cfm is 100 cfm, where 3,000 at 20 °F needs 138.9.
#[test]
fn a_share_that_falls_short_asks() {
    let input = Input {
        system: Some(Measure::whole(&CFM, 800)),
        house: Some(Measure::whole(&BTUH, 24_000)),
        ..Input::sample()
    };
    let answer = solve(&input).unwrap();
    assert_eq!(answer.given, Some(Measure::whole(&CFM, 100)));
    let sheet = RoomAir::sheet(&input, &answer, Basis::default());
    assert_eq!(sheet.checks[1].verdict, Verdict::Ask);
    // 138.9 cfm × 60 ÷ 1,344 cu ft, and over 168 sq ft.
    assert!((answer.changes.number() - 6.20).abs() < 0.005);
    assert!((answer.a_foot.number() - 0.827).abs() < 0.001);
    let small = Input { house: Some(Measure::whole(&BTUH, 2_999)), ..input };
    assert_eq!(solve(&small).unwrap_err()[0].path, "house");
}

proptest! {
    #[test]
    fn more_heat_or_altitude_asks_for_more_and_more_difference_for_less(
        load in 10_i64..90_000, more in 0_i64..10_000, by in 1_i64..90, wider in 0_i64..10,
        feet in 0_i64..11_000, up in 0_i64..1_000,
    ) {
        let air = |load, by, feet| solve(&heat(load, by, feet)).unwrap().air;
        let one = air(load, by, feet);
        prop_assert!(one <= air(load + more, by, feet));
        prop_assert!(one <= air(load, by, feet + up));
        prop_assert!(one >= air(load, by + wider, feet));
    }

    #[test]
    fn working_comes_to_what_is_answered(
        rough in any::<bool>(), load in 10_i64..90_000, by in 1_i64..90, feet in 0_i64..12_000,
        run in 0_i64..2_400, leaks in 0_i64..500, attic in prop::option::of(1_i64..90),
        floor in 1_i64..2_500,
    ) {
        let input = Input {
            by: if rough { By::Rough } else { By::Load },
            run: Length::inches(run, 1),
            leaks: Measure::hundredths(&PER_HOUR, leaks),
            attic: attic.map(|r| Measure::whole(&R_VALUE, r)),
            floor: Area::square_feet(floor),
            ..heat(load, by, feet)
        };
        let answer = solve(&input).unwrap();
        let sheet = RoomAir::sheet(&input, &answer, Basis::default());
        for (key, want) in [
            ("air", answer.air), ("changes", answer.changes), ("carries", answer.carries),
            ("heat", answer.heat),
        ] {
            let Some(step) = sheet.working.iter().find(|step| step.key == key) else {
                prop_assert!(key == "heat" && !rough);
                continue;
            };
            let comes_to = step.expr.value().and_then(Value::amount);
            prop_assert_eq!(comes_to, Some(Amount::Measure(want)), "{}", key);
        }
    }
}
