//! A room worked by hand, then laws.

use super::*;
use crate::fields::Form;
use crate::measure::unit::PERCENT;
use crate::sheet::Value;
use crate::words::{Amount, Voice};
use proptest::prelude::*;

/// 14 × 16 ft, from 8 to 9-1/2 ft, 30 ft of bare outside wall, 60 °F, half a change an hour.
fn room() -> Input {
    Input {
        floor: Area::square_feet(224),
        run: Length::inches(360, 1),
        cfm: Measure::whole(&CFM, 120),
        guess: false,
        ..Input::blank()
    }
}

/// Worked by hand: 224 × 1.5 = 336 cu ft; 0.25 × 30 × 1.5 × 60 = 675; 0.018 × 0.5 × 336 × 60 =
/// 181.4; 60 × 120 ÷ 1,792 = 4.02 and ÷ 2,128 = 3.38.
#[test]
fn a_raised_ceiling_costs_what_hand_work_says() {
    let answer = solve(&room()).unwrap();
    let more = answer.volumes[1].minus(answer.volumes[0]);
    assert_eq!(more, Volume::over(Area::square_feet(336), Length::inches(12, 1)));
    for (got, want, within) in [
        (answer.wall_heat, 675.0, 1e-6),
        (answer.leak_heat, 181.4, 0.05),
        (answer.changes[0], 4.02, 0.005),
        (answer.changes[1], 3.38, 0.005),
        (answer.extra, 856.44 / (1.08 * 45.0), 0.001),
    ] {
        assert!((got.number() - want).abs() <= within, "{got:?}, not {want}");
    }
    assert_eq!(answer.attached, [true, false]);
    let share = measured(
        Expr::length(answer.throws[1].throw())
            .over(Expr::length(answer.throws[0].throw()))
            .told_in(&PERCENT),
    );
    assert!((share.unwrap().number() - 70.71).abs() < 0.01, "{share:?}");
    assert!(answer.throws[0].bend.is_none() && answer.throws[1].bend.is_some());
}

/// Handed over alike wherever a register is worked: the same rows by the same names.
#[test]
fn the_sub_is_handed_the_register_to_be_and_the_questions() {
    let say = |text: &crate::words::Text| Voice::default().say(text);
    let of = |sheet: &Sheet, key: &str| {
        let part = sheet.parts.iter().find(|part| part.key == key).unwrap().clone();
        part.rows.iter().map(|row| (say(&row.name), say(&row.value))).collect::<Vec<_>>()
    };
    let input = Input { way: Some(Length::inches(156, 1)), ..room() };
    let sheet = RaisedRegister::sheet(&input, &solve(&input).unwrap(), Basis::default());
    let rows = of(&sheet, "handed");
    let value = |name: &str| rows.iter().find(|(it, _)| it == name).map(|(_, it)| it.clone());
    assert_eq!(value("Register").as_deref(), Some("High on a wall, grille, 10 × 6"));
    assert_eq!(value("Air").as_deref(), Some("120 cfm"));
    assert_eq!(value("Throw to 50 fpm").as_deref(), Some("16 ft 7 in"));
    assert_eq!(value("Its top, below the ceiling to be").as_deref(), Some("2 ft"));
    let alone = register_throw::Input { way: input.way, ..register_throw::Input::sample() };
    let alone = register_throw::RegisterThrow::sheet(
        &alone,
        &register_throw::solve(&alone).unwrap(),
        Basis::default(),
    );
    for name in ["Register", "Air", "Throw to 50 fpm", "Sound, at the opening"] {
        assert!(of(&alone, "handed").iter().any(|(it, _)| it == name), "{name}");
    }
    assert_eq!(of(&alone, "ask"), of(&sheet, "ask"));
}

#[test]
fn a_jet_lets_go_past_a_foot_and_not_on_it() {
    let of = |gap: i64, rise: i64| {
        let gap = Length::inches(gap, 1);
        let to_be = Length::inches(96 * 16 + rise, 16);
        solve(&Input { gap, to_be, ..room() }).unwrap().attached
    };
    assert_eq!(of(6, 6 * 16), [true, true]);
    assert_eq!(of(6, 6 * 16 + 1), [true, false]);
    assert_eq!(of(13, 16), [false, false]);
}

#[test]
fn a_ceiling_that_comes_down_is_refused() {
    let faults = solve(&Input { to_be: Length::inches(96, 1), ..room() }).unwrap_err();
    assert_eq!(faults[0].path, "to_be");
    let says = Voice::default().say(&faults[0].says);
    assert_eq!(says, "This is for a ceiling that goes up. Now it is 8 ft.");
    let slow = solve(&Input { cfm: Measure::whole(&CFM, 10), ..room() }).unwrap_err();
    assert_eq!(slow[0].path, "cfm");
}

proptest! {
    #[test]
    fn higher_never_throws_farther_and_always_costs_more(
        rise in 1_i64..120, more in 0_i64..24, gap in 0_i64..40, cfm in 4_000_i64..100_000,
    ) {
        let of = |rise: i64| solve(&Input {
            to_be: Length::inches(96 + rise, 1),
            gap: Length::inches(gap, 1),
            cfm: Measure::hundredths(&CFM, cfm),
            ..room()
        }).unwrap();
        let (low, high) = (of(rise), of(rise + more));
        prop_assert!(high.throws[1].throw() <= low.throws[1].throw());
        prop_assert!(low.throws[1].throw() <= low.throws[0].throw());
        prop_assert!(high.heat >= low.heat && high.changes[1] <= low.changes[1]);
        let input = Input { to_be: Length::inches(96 + rise, 1), ..room() };
        let answer = solve(&input).unwrap();
        for step in RaisedRegister::sheet(&input, &answer, Basis::default()).working {
            let want = match &*step.key {
                "wall-heat" => answer.wall_heat,
                "leak-heat" => answer.leak_heat,
                "heat" => answer.heat,
                "extra" => answer.extra,
                "changes" => answer.changes[0],
                "changes-to-be" => answer.changes[1],
                _ => continue,
            };
            let comes_to = step.expr.value().and_then(Value::amount);
            prop_assert_eq!(comes_to, Some(Amount::Measure(want)), "{}", step.key);
        }
    }
}
