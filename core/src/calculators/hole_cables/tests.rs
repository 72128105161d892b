//! Published tables and examples worked by hand from them, then laws.

use super::*;
use crate::measure::{Rounding, Units};
use crate::rules::electrical::conductor_volume::Awg;
use crate::sheet::{Check, Verdict};
use Verdict::{Ask, Over, Within};
use proptest::prelude::*;

const E2023: Electrical = Electrical::E2023;

fn of(cable: Sheathed, count: i64) -> Cable {
    Cable { cable, count, ..Cable::blank() }
}

/// In a sealed hole of this many sixteenths.
fn sealed(cables: Vec<Cable>, bit: i64) -> Input {
    Input { cables, bit: Some(Length::inches(bit, 16)), ..Input::sample() }
}

fn checks(input: &Input) -> Vec<Check> {
    sheet::sheet(&solve(input, E2023)).checks
}

fn says(input: &Input, key: &str) -> Option<Verdict> {
    checks(input).iter().find(|check| check.key == key).map(|check| check.verdict)
}

fn shown(measure: Measure) -> String {
    measure.show(Units::Customary, Rounding::Nearest).text()
}

/// What the first kind carries, in hundredths of an ampere.
fn carried(input: &Input) -> i64 {
    solve(input, E2023).loads[0].here.millionths() / 10_000
}

/// Source: NEC Table 310.16, copper at 60 and 90 °C, and 240.4(D).
#[test]
fn what_copper_carries_is_as_published() {
    for (size, at_60, at_90, largest) in [
        (Awg::Awg14, 15, 25, Some(15)),
        (Awg::Awg12, 20, 30, Some(20)),
        (Awg::Awg10, 30, 40, Some(30)),
        (Awg::Awg8, 40, 55, None),
        (Awg::Awg6, 55, 75, None),
    ] {
        for edition in Electrical::VERIFIED {
            let row = carries(edition, size).unwrap();
            assert_eq!((row.at_60, row.at_90), (amperes(at_60), amperes(at_90)));
            assert_eq!(row.largest.map(|limit| limit.value), largest.map(amperes));
        }
        assert_eq!(carries(Electrical::E2026, size), None);
    }
}

/// Source: NEC Table 310.15(C)(1), both ends of every row.
#[test]
fn adjustment_is_as_published() {
    for (from, to, percent) in [
        (0, 3, 100),
        (4, 6, 80),
        (7, 9, 70),
        (10, 20, 50),
        (21, 30, 45),
        (31, 40, 40),
        (41, 999, 35),
    ] {
        for carrying in [from, to] {
            assert_eq!(adjustment(E2023, carrying), Some(Measure::whole(&PERCENT, percent)));
        }
    }
    assert_eq!(adjustment(Electrical::E2026, 4), None);
}

/// Source: NEC Table 310.15(B)(1), the column of 90 °C.
#[test]
fn correction_for_heat_is_as_published() {
    let published = [100, 96, 91, 87, 82, 76, 71, 65, 58];
    for (warmth, hundredths) in Warmth::ALL.iter().zip(published) {
        assert_eq!(correction(E2023, *warmth), Some(Measure::hundredths(&NUMBER, hundredths)));
        assert_eq!(correction(Electrical::E2026, *warmth), None);
    }
    assert_eq!(Warmth::ALL.len(), published.len());
}

/// Source: a maker's data sheet for type NM-B, outside sizes; areas of a flat oval by hand.
#[test]
fn what_a_cable_takes_is_its_flat_oval() {
    for (cable, thousandths) in [
        (Sheathed::Nm14x2, 59),
        (Sheathed::Nm14x3, 77),
        (Sheathed::Nm14x4, 96),
        (Sheathed::Nm12x2, 72),
        (Sheathed::Nm12x3, 92),
        (Sheathed::Nm12x4, 123),
        (Sheathed::Nm10x2, 100),
    ] {
        let (wide, thick) = cable.size().unwrap();
        let off = outline(wide, thick).millionths() - thousandths * 1_000;
        assert!(off.abs() <= 500, "{cable:?}: {off}");
        assert_eq!(outline(thick, wide), outline(wide, thick));
    }
    let read = Sheathed::ALL.iter().filter(|cable| cable.size().is_none());
    assert_eq!(read.map(|cable| cable.key()).collect::<Vec<_>>(), UNREAD);
    // A hole of 3/4 in: π × 0.375².
    let hole = outline(Length::inches(3, 4), Length::inches(3, 4));
    assert_eq!(hole.millionths(), 441_786);
}

/// Source: NEC 334.80 and its tables: three 14-2 carry 25 A × 0.8 = 20 A, held to 15 A. By hand:
/// 3 × 0.0588 ÷ 0.4418 = 39.9 %, and 11/16 in leaves half free: 0.1765 ÷ 0.3712 = 47.5 %.
#[test]
fn three_14_2_in_a_sealed_hole_carry_20_a_and_count_15() {
    let input = Input::sample();
    let answer = solve(&input, E2023);
    assert_eq!((answer.carrying, answer.sealed), (6, true));
    assert_eq!(answer.together, Some(Measure::whole(&PERCENT, 80)));
    assert_eq!(shown(answer.taken), "≈ 39.9 %");
    assert_eq!(answer.smallest, Length::inches(11, 16));
    assert_eq!(carried(&input), 1500);
    let step = sheet::sheet(&answer).working.into_iter().find(|step| step.key == "carries-1");
    let step = step.unwrap().equation(crate::words::Voice::default());
    assert_eq!(step, "min(25 A × 80 % × 1, 15 A) = 15 A");
    assert!(checks(&input).iter().all(|check| check.verdict == Within));
    // Two need no adjustment, nor do any that aren't sealed or bundled.
    assert_eq!(solve(&sealed(vec![of(Sheathed::Nm14x2, 2)], 12), E2023).together, None);
    let open = Input { hole: Hole::Open, ..input.clone() };
    assert_eq!(solve(&open, E2023).together, None);
    let bundled = Input { bundled: true, ..open };
    assert_eq!(solve(&bundled, E2023).together, Some(Measure::whole(&PERCENT, 80)));
}

/// Source: NEC 334.80 and Tables 310.16 and 310.15, worked by hand.
#[test]
fn what_bundles_carry() {
    use Sheathed::{Nm8x3, Nm10x2, Nm12x2, Nm12x3, Nm14x2};
    #[rustfmt::skip]
    let cases = [
        // cables, warmth, hundredths of an ampere, verdict on the usual breaker
        (of(Nm12x2, 4), Warmth::Room, 2000, Within), // 8: 30 × 0.7 = 21, held to 20
        (of(Nm12x2, 5), Warmth::Room, 1500, Over),   // 10: 30 × 0.5 = 15, and 15 is no 20
        (of(Nm14x2, 5), Warmth::Room, 1250, Ask),    // 10: 25 × 0.5 = 12.5, the next is 15
        (of(Nm12x3, 3), Warmth::Room, 2000, Within), // 9: 30 × 0.7 = 21
        (of(Nm12x3, 4), Warmth::Room, 1500, Over),   // 12
        (of(Nm10x2, 3), Warmth::Room, 3000, Within), // 6: 40 × 0.8 = 32, held to 30
        (of(Nm10x2, 3), Warmth::To40, 2912, Ask),    // 32 × 0.91, the next is 30
        (of(Nm14x2, 3), Warmth::To50, 1500, Within), // 20 × 0.82 = 16.4
        (of(Nm14x2, 3), Warmth::To60, 1420, Ask),    // 20 × 0.71
        (of(Nm14x2, 12), Warmth::To70, 652, Over),   // 24: 25 × 0.45 × 0.58 = 6.525
        (of(Nm8x3, 2), Warmth::Room, 4000, Within),  // not adjusted: two
        (of(Nm8x3, 3), Warmth::Room, 3850, Ask),     // 9: 55 × 0.7, the next is 40
    ];
    for (cable, warmth, hundredths, verdict) in cases {
        let size = Some(Length::inches(1, 2));
        let cable = Cable { wide: size, thick: size, ..cable };
        let input = Input { warmth, ..sealed(vec![cable.clone()], 48) };
        assert_eq!(carried(&input), hundredths, "{cable:?} {warmth:?}");
        assert_eq!(says(&input, "carries-1"), Some(verdict), "{cable:?} {warmth:?}");
    }
}

/// By hand: nine conductors up to 60 °C, 25 × 0.7 × 0.71 = 12.425 A; that is no 12.43.
#[test]
fn what_is_carried_is_never_rounded_up() {
    let cables = vec![of(Sheathed::Nm14x3, 3)];
    let input = Input { warmth: Warmth::To60, ..sealed(cables, 48) };
    assert_eq!(shown(solve(&input, E2023).loads[0].here), "12.42 A");
    for carrying in 1..=12 {
        for warmth in Warmth::ALL {
            for cable in Sheathed::ALL {
                let size = Some(Length::inches(1, 2));
                let cable = Cable { wide: size, thick: size, ..of(*cable, carrying) };
                let answer = solve(&Input { warmth: *warmth, ..sealed(vec![cable], 128) }, E2023);
                let load = &answer.loads[0];
                let of = |measure: Measure| i128::from(measure.millionths());
                let share = answer.together.map_or(100_000_000, of);
                let exact = of(load.carries.at_90) * share * of(answer.warm) / 100_000_000_000_000;
                let exact = exact.min(of(load.carries.at_60));
                assert_eq!(of(load.here), exact / 10_000 * 10_000, "{:?}", load.cable);
            }
        }
    }
}

/// A mark is called by the first choice: of what the hole is, not of how warm it gets.
#[test]
fn the_first_choice_says_which_hole_it_is() {
    let first = Input::ROWS.iter().find(|row| matches!(row.kind, Kind::Choice(_)));
    assert_eq!(first.unwrap().key, "hole");
    assert_eq!(Input::blank().hole, Hole::Sealed, "the one that asks for more");
}

/// Source: NEC 240.4(D): 14 AWG has 15 A at most, however much it carries.
#[test]
fn no_breaker_passes_what_its_wire_is_held_to() {
    for (cable, breaker, carries, capped) in [
        (Sheathed::Nm14x2, Breaker::A15, Within, Some(Within)),
        (Sheathed::Nm14x2, Breaker::A20, Over, Some(Over)),
        (Sheathed::Nm12x2, Breaker::A15, Within, Some(Within)),
        (Sheathed::Nm10x2, Breaker::A35, Over, Some(Over)),
        // 55 A has the next standard breaker at 60 A: never a plain pass.
        (Sheathed::Nm6x2, Breaker::A50, Within, None),
        (Sheathed::Nm6x2, Breaker::A60, Ask, None),
        (Sheathed::Nm8x2, Breaker::A45, Over, None),
    ] {
        let input = sealed(vec![Cable { breaker, ..of(cable, 1) }], 16);
        assert_eq!(says(&input, "carries-1"), Some(carries), "{cable:?} {breaker:?}");
        assert_eq!(says(&input, "breaker-1"), capped, "{cable:?} {breaker:?}");
    }
}

/// Half full passes, fuller asks, and what can't go in is over.
#[test]
fn a_hole_is_full_or_too_small() {
    let cables = |bit| sealed(vec![of(Sheathed::Nm14x2, 3)], bit);
    assert_eq!(says(&cables(11), "taken"), Some(Within));
    assert_eq!(says(&cables(10), "taken"), Some(Ask));
    assert_eq!(says(&cables(7), "taken"), Some(Over));
    assert_eq!(
        (says(&cables(7), "widest"), says(&cables(5), "widest")),
        (Some(Within), Some(Over))
    );
    // One wide cable takes little of the hole that it needs.
    let wide = sealed(vec![of(Sheathed::Nm14x3, 1)], 7);
    assert_eq!((says(&wide, "taken"), says(&wide, "widest")), (Some(Ask), Some(Over)));
    assert_eq!(solve(&wide, E2023).smallest, Length::inches(8, 16));
}

prop_compose! {
    fn any_cables()(
        kinds in prop::collection::vec((prop::sample::select(Sheathed::ALL), 1_i64..12), 0..6),
        bit in 4_i64..128,
        hole in prop::sample::select(Hole::ALL),
        bundled in any::<bool>(),
        warmth in prop::sample::select(Warmth::ALL),
    ) -> Input {
        let size = Some(Length::inches(7, 16));
        let cables = kinds.into_iter().map(|(cable, count)| {
            Cable { wide: size, thick: size, ..of(cable, count) }
        });
        let bit = Some(Length::inches(bit, 16));
        Input { cables: cables.collect(), bit, hole, bundled, warmth }
    }
}

proptest! {
    #[test]
    fn one_more_cable_never_carries_more_nor_takes_less(input in any_cables(), cable in prop::sample::select(Sheathed::ALL)) {
        let mut more = input.clone();
        let size = Some(Length::inches(1, 4));
        more.cables.push(Cable { wide: size, thick: size, ..of(cable, 1) });
        let (few, many) = (solve(&input, E2023), solve(&more, E2023));
        prop_assert!(many.taken >= few.taken && many.smallest >= few.smallest);
        for (few, many) in few.loads.iter().zip(&many.loads) {
            prop_assert!(many.here <= few.here);
            prop_assert!(many.here <= many.carries.at_60);
        }
    }

    #[test]
    fn hotter_never_carries_more(input in any_cables()) {
        for pair in Warmth::ALL.windows(2) {
            let at = |warmth| solve(&Input { warmth, ..input.clone() }, E2023);
            for (cool, hot) in at(pair[0]).loads.iter().zip(&at(pair[1]).loads) {
                prop_assert!(hot.here <= cool.here);
            }
        }
    }

    #[test]
    fn the_smallest_bit_leaves_half_free_and_a_sixteenth_less_does_not(input in any_cables()) {
        let bit = solve(&input, E2023).smallest;
        let with = |bit| checks(&Input { bit: Some(bit), ..input.clone() });
        let passes = |bit| with(bit).iter().take(2).all(|check| check.verdict == Within);
        prop_assert!(passes(bit));
        let less = bit.minus(Length::inches(1, 16));
        prop_assert!(less <= Length::ZERO || !passes(less));
    }
}
