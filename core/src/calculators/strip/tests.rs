//! Cases worked by hand, then laws. The published weight of a gallon of water is 8.34 lb.

use super::*;
use crate::measure::unit::{OUNCE, WEIGHT};
use crate::measure::{Length, Measure};
use crate::sheet::{Value, Verdict};
use proptest::prelude::*;

fn feet(count: i64) -> Length {
    Length::inches(12 * count, 1)
}

fn near(got: Measure, want: f64, within: f64) {
    assert!((got.number() - want).abs() <= within, "{got:?}, not {want}");
}

/// Worked by hand: 192 sq ft × 1/8 in is 2 cu ft, at 15 lb 30 lb; 2 × 1.25 gal for 100 sq ft is
/// 4.8 gal, 40 lb of water: 70 lb wet, 2 bags by weight, 1 by volume.
#[test]
fn a_ceiling_of_192_square_feet_comes_down_in_two_bags() {
    let answer = solve(&Input::sample()).unwrap();
    let [low, likely, high] = answer.ends;
    assert_eq!(answer.area, Area::square_feet(192));
    assert_eq!(likely.volume, crate::measure::Volume::hundredths(2 * 172_800));
    assert_eq!(likely.dry, Measure::whole(&WEIGHT, 30));
    near(likely.water, 4.8, 0.0);
    near(likely.wet, 70.032, 1e-6);
    assert_eq!((likely.bags, likely.fills), (2, 3));
    near(likely.hours, 1.92 + 3.84, 1e-6);
    near(likely.crew, 2.88, 1e-6);
    // 1/16 in at 10 lb, one pass of a gallon; 3/8 in at 30 lb, three of 1-1/2.
    near(low.dry, 10.0, 0.0);
    near(low.water, 1.92, 0.0);
    near(high.dry, 180.0, 0.0);
    near(high.wet, 180.0 + 8.64 * 8.34, 1e-5);
}

/// Worked by hand: 16 by 12 ft, 1 ft up and over: 252 sq ft; of a roll of 10 ft two widths of 14
/// ft, of one of 20 ft one.
#[test]
fn plastic_goes_the_way_that_takes_less() {
    let answer = solve(&Input::sample()).unwrap();
    assert_eq!(answer.floor.area, Area::square_feet(252));
    let best = answer.floor.best();
    assert_eq!((best.widths, best.each, best.roll), (2, feet(14), feet(28)));
    assert_eq!(answer.floor.ways[0].roll, feet(36));
    let best = solve(&Input { roll: feet(20), ..Input::sample() }).unwrap().floor.best();
    assert_eq!((best.widths, best.roll), (1, feet(14)));
    // An exact fit takes no width more: 28 ft across is 3 × 9 + 1.
    let exact = Input { long: feet(26), wide: feet(26), ..Input::sample() };
    assert_eq!(solve(&exact).unwrap().floor.best().widths, 3);
    let walls = answer.walls.unwrap();
    assert_eq!((walls.area, walls.best().roll), (Area::square_feet(56 * 8), feet(57)));
    // To buy: 28 + 57 ft of a roll, 850 sq ft where the areas come to 700.
    let sheet = sheet::sheet(&Input::sample(), &answer);
    let bought = |at: usize| (sheet.materials[at].amount, &*sheet.materials[at].key);
    assert_eq!(bought(0), (feet(28).into(), "plastic floor 6 mil 10 ft"));
    assert_eq!(bought(1), (feet(57).into(), "plastic wall 6 mil 10 ft"));
}

/// Source: 40 CFR 745.85: plastic 6 ft past the work; by hand 4 + 2 × 6 ft each way.
#[test]
fn plastic_round_a_patch_reaches_six_feet_past_it() {
    let patch = Input { long: feet(4), wide: feet(4), spread: Spread::Patch, ..Input::sample() };
    let answer = solve(&patch).unwrap();
    assert_eq!(answer.floor.area, Area::square_feet(256));
    assert_eq!(answer.walls, None);
}

/// Worked by hand: 2.5 oz a square foot are 30 lb on 192.
#[test]
fn a_weighed_square_foot_speaks_for_the_ceiling() {
    let patch = Some(Measure::hundredths(&OUNCE, 250));
    let answer = solve(&Input { patch, ..Input::sample() }).unwrap();
    for end in answer.ends {
        near(end.dry, 30.0, 1e-6);
    }
    // Until it is weighed, bags are bought for the high end.
    for (patch, end) in [(None, 2), (patch, 1)] {
        let input = Input { patch, ..Input::sample() };
        let answer = solve(&input).unwrap();
        let materials = sheet::sheet(&input, &answer).materials;
        let bags = materials.iter().find(|it| it.key == "bags heavy").unwrap();
        assert_eq!(bags.amount, answer.ends[end].bags.into());
    }
    // At 1/8 in that is 15 lb a cubic foot.
    let driver = amounts::drivers(&Input { patch, ..Input::sample() }, 1);
    near(driver.density, 15.0, 1e-6);
}

#[test]
fn painted_texture_asks_and_takes_longer() {
    let verdict = |painted, height| {
        let input = Input { painted, height, ..Input::sample() };
        sheet::sheet(&input, &solve(&input).unwrap()).verdict()
    };
    assert_eq!(verdict(Painted::No, feet(10)), Verdict::Within);
    assert_eq!(verdict(Painted::No, feet(10).plus(Length::inches(1, 16))), Verdict::Ask);
    assert_eq!(verdict(Painted::Yes, feet(8)), Verdict::Ask);
    assert_eq!(verdict(Painted::NotSaid, feet(8)), Verdict::Ask);
    let input = Input { painted: Painted::Yes, ..Input::sample() };
    near(solve(&input).unwrap().ends[1].hours, 1.92 + 12.8, 1e-5);
    for (painted, want) in [
        (Painted::NotSaid, None),
        (Painted::No, Some(Area::ZERO)),
        (Painted::Yes, Some(Area::square_feet(192))),
    ] {
        let work = Strip::disturbs(&Input { painted, ..Input::sample() }).unwrap();
        assert_eq!((work.painted, work.deed), (want, Deed::Strip));
    }
}

#[test]
fn a_lap_as_wide_as_the_roll_is_refused() {
    let faults = solve(&Input { lap: feet(2), roll: feet(2), ..Input::sample() }).unwrap_err();
    assert_eq!(faults[0].path, "lap");
}

proptest! {
    #[test]
    fn ranges_never_turn_round_and_the_plan_is_its_working(
        long in 12_i64..1200, wide in 12_i64..1200, height in 60_i64..360,
        painted in prop::sample::select(Painted::ALL.to_vec()),
        patch in prop::option::of(10_i64..20_000), passes in prop::option::of(1_i64..9),
        thick in prop::option::of(1_i64..64), carried in 5_i64..100,
    ) {
        let input = Input {
            long: Length::inches(long, 1),
            wide: Length::inches(wide, 1),
            height: Length::inches(height, 1),
            painted,
            patch: patch.map(|it| Measure::hundredths(&OUNCE, it)),
            passes,
            thick: thick.map(|it| Length::inches(it, 64)),
            carried: Measure::whole(&WEIGHT, carried),
            ..Input::sample()
        };
        let answer = solve(&input).unwrap();
        for pair in answer.ends.windows(2) {
            let of = |it: &Amounts| {
                let measures = [it.dry, it.water, it.wet, it.hours, it.crew];
                measures.map(|it| it.millionths())
            };
            for (less, more) in of(&pair[0]).into_iter().zip(of(&pair[1])) {
                prop_assert!(less <= more);
            }
            prop_assert!(pair[0].volume <= pair[1].volume && pair[0].heaped <= pair[1].heaped);
            prop_assert!(pair[0].bags <= pair[1].bags && pair[0].fills <= pair[1].fills);
            prop_assert!(pair[0].bags > 0);
        }
        // No bag is heavier than may be carried.
        let Amounts { bags, wet, .. } = answer.ends[2];
        prop_assert!(wet.number() <= (bags * carried) as f64 + 1e-6);
        let sheet = sheet::sheet(&input, &answer);
        for figure in sheet.figures.iter().chain([&sheet.headline]) {
            let step = sheet.working.iter().find(|step| step.key == figure.key);
            if let Some(step) = step {
                prop_assert_eq!(step.expr.value().and_then(Value::amount), Some(figure.amount));
            }
        }
        // A wider ceiling takes no less of anything.
        let wider = Input { long: input.long.plus(feet(1)), ..input };
        let wider = solve(&wider).unwrap();
        prop_assert!(wider.ends[1].bags >= answer.ends[1].bags);
        prop_assert!(wider.floor.area > answer.floor.area);
        prop_assert!(wider.floor.best().roll >= answer.floor.best().roll);
    }
}

/// Paint that nobody has looked at may be all of it.
#[test]
fn what_is_said_of_paint_goes_to_the_hold() {
    let area = Area::square_feet(192);
    for (painted, want) in
        [(Painted::No, Some(Area::ZERO)), (Painted::Yes, Some(area)), (Painted::NotSaid, None)]
    {
        assert_eq!(disturbs(Deed::Strip, area, painted).painted, want);
    }
}
