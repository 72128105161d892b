//! Cases worked by hand, exact fits, then laws.

use super::*;
use crate::fields::Form;
use crate::sheet::Value;
use proptest::prelude::*;

fn near(got: Measure, want: f64, within: f64) {
    assert!((got.number() - want).abs() <= within, "{got:?}, not {want}");
}

fn lanes(across: i64, blade: i64, overlap: i64) -> i64 {
    let inches = |count| Length::inches(count, 1);
    let input = Input {
        long: inches(across.max(1200)),
        wide: inches(across),
        blade: inches(blade),
        overlap: inches(overlap),
        ..Input::sample()
    };
    solve(&input).unwrap().passes[0]
}

/// Worked by hand: 12 by 16 ft, two coats of 1/32 in, 10 percent lost, 13.7 lb a gallon and 35
/// percent of it water: 192 × 144 ÷ 32 ÷ 231 = 3.74 gal a coat, 8.23 in all, 39.5 lb of water.
#[test]
fn two_coats_over_a_ceiling() {
    let answer = solve(&Input::sample()).unwrap();
    near(answer.coat, 3.740, 0.001);
    near(answer.gallons, 8.229, 0.001);
    assert_eq!(answer.pails, 2);
    near(answer.water, 39.46, 0.01);
    // 192 × 2 ÷ 60 + 192 ÷ 150.
    near(answer.hours[1], 7.68, 1e-6);
    // 15 lanes of 16 ft and, next coat, 19 of 12 ft, two strokes each: 2 × (240 + 228) ft.
    assert_eq!(answer.passes, [15, 19]);
    assert_eq!(answer.travel, Length::inches(12 * 936, 1));
}

/// One coat is what dries at a time: it is offered before all of them, with nothing lost in pails.
#[test]
fn one_coat_is_told_first() {
    let input = Input::sample();
    let answer = solve(&input).unwrap();
    let sheet = SkimCoat::sheet(&input, &answer, Basis::default());
    assert_eq!((sheet.figures[0].key, sheet.figures[0].amount), ("coat", answer.coat.into()));
    near(answer.gallons, 2.2 * answer.coat.number(), 1e-5);
}

/// A film is told in what a tape tells, and in mils where it doesn't.
#[test]
fn a_film_is_told_as_it_was_picked() {
    let film = |ground, thick| {
        let input = Input { ground, thick, ..Input::sample() };
        let sheet = SkimCoat::sheet(&input, &solve(&input).unwrap(), Basis::default());
        sheet.figures.into_iter().find(|figure| figure.key == "film").unwrap().amount
    };
    let inches = |over, under| Amount::Length(Length::inches(over, under));
    assert_eq!(film(Ground::Uneven, Length::ZERO), inches(3, 64));
    assert_eq!(film(Ground::Own, Length::inches(1, 16)), inches(1, 16));
    let mils = Measure::whole(&MIL, 13);
    assert_eq!(film(Ground::Level5, Length::ZERO), mils.into());
}

/// Worked from 231 in³ a gallon: an inch over 1000 sq ft is 623.38 gal.
#[test]
fn a_thousand_square_feet_by_thickness() {
    for (parts, want) in [(64, 9.74), (32, 19.48), (16, 38.96)] {
        let input = Input {
            area: Some(Area::square_feet(1000)),
            ground: Ground::Own,
            thick: Length::inches(1, parts),
            ..Input::sample()
        };
        let answer = solve(&input).unwrap();
        near(answer.coat, want, 0.005);
        assert_eq!(answer.range, None);
    }
    let uneven =
        Input { area: Some(Area::square_feet(1000)), ground: Ground::Uneven, ..Input::sample() };
    near(solve(&uneven).unwrap().coat, 29.22, 0.005);
    let skim = Input { ground: Ground::Level5, waste: Measure::whole(&PERCENT, 0), ..uneven };
    let [low, high] = solve(&skim).unwrap().range.unwrap();
    near(low, 6.23, 0.005);
    near(high, 9.97, 0.005);
}

/// Level 5 is one thin coat here and beside its joints, and takes as much: 192 sq ft of 0.013 in are
/// 1.556 gal, and 10 percent lost.
#[test]
fn level_5_takes_the_same_on_both_screens() {
    use crate::calculators::joint_compound;
    use crate::rules::finish::levels::Level;
    let skim = Input { ground: Ground::Level5, ..Input::sample() };
    let skim = solve(&skim).unwrap();
    near(skim.gallons, 1.1 * 1.556, 0.001);
    let area = Some(Area::square_feet(192));
    let bare = joint_compound::Input { level: Level::Five, area, ..joint_compound::Input::blank() };
    let beside = joint_compound::solve(&bare).unwrap();
    near(beside.wet, skim.gallons.number(), 2e-6);
    for (one, other) in beside.range.into_iter().zip(skim.range.unwrap()) {
        near(one, other.number(), 2e-6);
    }
}

/// An L of 150 sq ft inside 12 by 16 ft has not the rectangle's lanes.
#[test]
fn another_shape_has_no_lanes_and_no_drawing() {
    let of = |feet| {
        let input = Input { area: Some(Area::square_feet(feet)), ..Input::sample() };
        let answer = solve(&input).unwrap();
        let sheet = SkimCoat::sheet(&input, &answer, Basis::default());
        let has = |key| sheet.figures.iter().any(|figure| figure.key == key);
        assert_eq!(has("passes"), has("travel"));
        (has("passes"), sheet.drawing.is_some(), answer.passes, answer.travel > Length::ZERO)
    };
    assert_eq!(of(150), (false, false, [0, 0], false));
    assert_eq!(of(192), (true, true, [15, 19], true), "that is 12 by 16 ft");
}

/// Worked by hand: (144 − 2) ÷ (12 − 2) = 14.2; with 24, 142 ÷ 22 = 6.5; (134 − 2) ÷ 22 is 6 and
/// not 7.
#[test]
fn passes_meet_exact_fits() {
    for (across, blade, overlap, want) in [
        (144, 12, 2, 15),
        (144, 24, 2, 7),
        (134, 24, 2, 6),
        (135, 24, 2, 7),
        (24, 24, 2, 1),
        (25, 24, 2, 2),
    ] {
        assert_eq!(lanes(across, blade, overlap), want, "{across} in by {blade} in");
    }
    let wide = Input { overlap: Length::inches(12, 1), ..Input::sample() };
    assert_eq!(solve(&wide).unwrap_err()[0].path, "overlap");
}

#[test]
fn skimming_over_what_is_old_sands_it() {
    let over = |old| SkimCoat::disturbs(&Input { old, ..Input::sample() });
    assert_eq!(over(OldSurface::New), None);
    let texture = over(OldSurface::Texture).unwrap();
    assert_eq!((texture.deed, texture.area), (Deed::Sand, Some(Area::square_feet(192))));
    assert!(over(OldSurface::NotSaid).is_some(), "nobody has said");
}

proptest! {
    #[test]
    fn lanes_cover_the_width_and_one_fewer_does_not(
        across in 12_i64..1_200, blade in 3_i64..60, overlap in 0_i64..12,
    ) {
        prop_assume!(overlap < blade);
        let count = lanes(across, blade, overlap);
        let covers = |count: i64| blade + (count - 1) * (blade - overlap);
        prop_assert!(covers(count) >= across);
        prop_assert!(count == 1 || covers(count - 1) < across);
    }

    #[test]
    fn more_area_thickness_and_coats_take_no_less(
        area in 1_i64..9_000, more in 0_i64..900, parts in 4_i64..200, coats in 1_i64..5,
    ) {
        let with = |area, parts, coats| solve(&Input {
            area: Some(Area::square_feet(area)), ground: Ground::Own, thick: Length::inches(1, parts), coats,
            ..Input::sample()
        }).unwrap();
        let one = with(area, parts, coats);
        prop_assert!(with(area + more, parts, coats).gallons >= one.gallons);
        prop_assert!(with(area, parts + 1, coats).gallons <= one.gallons);
        prop_assert!(with(area, parts, coats + 1).gallons >= one.gallons);
        prop_assert!(one.hours[0] <= one.hours[1] && one.hours[1] <= one.hours[2]);
        for (key, want) in [("gallons", one.gallons), ("hours", one.hours[1]), ("water", one.water)] {
            let step = one.working.0.iter().find(|step| step.key == key).unwrap();
            prop_assert_eq!(step.expr.value().and_then(Value::amount), Some(Amount::Measure(want)));
        }
    }
}
