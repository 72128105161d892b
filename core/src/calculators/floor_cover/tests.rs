//! Cases worked by hand, then laws.

use super::*;
use crate::sheet::{Value, Verdict};
use proptest::prelude::*;

/// Worked by hand: 18 by 14 ft; 70 lb are two bags of 40; 49 of them seven tenths, five pans of 10,
/// and 21 fall; 192 ÷ 100 and 192 ÷ 120 hours.
#[test]
fn seventy_pounds_over_a_room() {
    let answer = solve(&Input::sample()).unwrap();
    assert_eq!(answer.plastic.area, Area::square_feet(252));
    // Two widths of 14 ft, of a roll of 10 ft.
    assert_eq!(answer.plastic.best().roll, Length::inches(28 * 12, 1));
    let lap = Length::inches(120, 1);
    assert_eq!(solve(&Input { roll: lap, lap, ..Input::sample() }).unwrap_err()[0].path, "lap");
    assert_eq!((answer.bags, answer.pans), (2, 5));
    assert_eq!(answer.falls, Measure::whole(&WEIGHT, 21));
    assert_eq!(answer.laying[1], Measure::hundredths(&HOUR, 192));
    assert_eq!(answer.cleaning[1], Measure::hundredths(&HOUR, 160));
}

/// Exact fits: 80 lb are two bags, and a pound more three.
#[test]
fn an_exact_fit_takes_no_bag_more() {
    let bags = |pounds| {
        let wet = Some(Measure::whole(&WEIGHT, pounds));
        solve(&Input { wet, ..Input::sample() }).unwrap().bags
    };
    assert_eq!([bags(79), bags(80), bags(81)], [2, 2, 3]);
}

#[test]
fn only_a_bare_slab_goes_without_plastic() {
    for (floor, want) in [
        (Floor::NotSaid, Verdict::Ask),
        (Floor::Finished, Verdict::Ask),
        (Floor::Slab, Verdict::Within),
    ] {
        let input = Input { floor, ..Input::sample() };
        let sheet = sheet::sheet(&input, &solve(&input).unwrap());
        assert_eq!(sheet.verdict(), want);
        let said: Vec<_> = sheet.parts[0]
            .rows
            .iter()
            .map(|row| crate::words::Voice::default().say(&row.value))
            .collect();
        assert_eq!(said.iter().all(|it| it.ends_with("not here")), floor != Floor::Slab);
    }
}

/// The floor of one room is one thing to buy, whoever asks for it: its key is stripping's.
#[test]
fn the_floor_is_bought_under_strippings_key() {
    use crate::calculators::strip::Strip;
    let input = Input::sample();
    let own = sheet::sheet(&input, &solve(&input).unwrap()).materials.remove(0);
    let of = Strip::sample();
    let answer = Strip::solve(&of, Basis::default()).unwrap();
    let other = Strip::sheet(&of, &answer, Basis::default()).materials.remove(0);
    assert_eq!(own, other, "16 by 12 ft both");
    let voice = crate::words::Voice::default();
    assert!(voice.say(&own.name).contains("stripping counts it too"));
}

proptest! {
    #[test]
    fn ranges_never_turn_round(
        long in 12_i64..1200, wide in 12_i64..1200, wet in 1_i64..50_000, caught in 0_i64..=100,
        own in prop::option::of(10_i64..1000),
    ) {
        let input = Input {
            long: Length::inches(long, 1),
            wide: Length::inches(wide, 1),
            wet: Some(Measure::whole(&WEIGHT, wet)),
            caught: Measure::whole(&PERCENT, caught),
            clean: own.map(|own| Measure::whole(&SQUARE_FOOT_AN_HOUR, own)),
            ..Input::sample()
        };
        let answer = solve(&input).unwrap();
        for [quick, likely, slow] in [answer.laying, answer.cleaning] {
            prop_assert!(quick.millionths() <= likely.millionths());
            prop_assert!(likely.millionths() <= slow.millionths());
        }
        prop_assert!(answer.falls.millionths() <= Measure::whole(&WEIGHT, wet).millionths());
        prop_assert!(answer.bags * 40 >= wet && (answer.bags - 1) * 40 < wet);
        let sheet = sheet::sheet(&input, &answer);
        for figure in sheet.figures.iter().chain([&sheet.headline]) {
            let key = if figure.key == "floor-roll" { "roll-" } else { figure.key };
            let step = sheet.working.iter().find(|step| {
                step.key == key
                    || step.key.starts_with(key) && step.name.phrase == figure.name.phrase
            });
            let step = step.unwrap();
            prop_assert_eq!(step.expr.value().and_then(Value::amount), Some(figure.amount));
        }
    }
}
