//! Limits on and to either side, tubs by edition, then a law.

use super::*;
use crate::sheet::Verdict;
use Electrical::{E2017, E2020, E2023, E2026};
use Verdict::{Ask, Over, Within};
use proptest::prelude::*;

fn quarters(count: i64) -> Length {
    Length::inches(count, 4)
}

fn verdict(input: &Input, edition: Electrical, key: &str) -> Option<Verdict> {
    let sheet = BathHallOutlets::sheet(input, &solve(input, edition).unwrap(), Basis::default());
    sheet.checks.iter().find(|check| check.key == key).map(|check| check.verdict)
}

/// Source: NEC 210.52(D): 3 ft from a basin's edge, 12 in below its top.
#[test]
fn a_basin_has_one_near() {
    for (side, below, want) in
        [(144, 48, [Within, Within]), (145, 49, [Over, Over]), (143, 47, [Within, Within])]
    {
        let basins = vec![Basin { side: Some(quarters(side)), below: quarters(below) }];
        let input = Input { basins, ..Input::sample() };
        for (key, want) in ["side-1", "below-1"].into_iter().zip(want) {
            assert_eq!(verdict(&input, E2020, key), Some(want), "{side} {below}");
            let unverified = verdict(&input, E2026, key);
            assert_eq!(unverified, Some(Ask));
        }
    }
}

/// Source: NEC 210.52(H): 10 ft or more; 9 ft 11 in takes none. (F) and (I), from memory: a foyer
/// past 60 sq ft one in each wide wall, a laundry one.
#[test]
fn halls_foyers_and_laundries() {
    for (long, want) in [(119 * 4, 0), (479, 0), (480, 1), (481, 1)] {
        let input = Input { halls: vec![Hall { long: Some(quarters(long)) }], ..Input::sample() };
        assert_eq!(solve(&input, E2023).unwrap().halls, want, "{long}");
    }
    for (area, want) in [(59, 0), (60, 0), (61, 3)] {
        let foyer = Some(Area::square_feet(area));
        let input = Input { foyer, walls: 3, laundry: true, ..Input::sample() };
        let answer = solve(&input, E2023).unwrap();
        assert_eq!((answer.foyer, answer.laundry), (want, 1), "{area}");
        assert_eq!(answer.needed(), 3 + want);
    }
}

/// Source: NEC 406.9(C) of 2017, 2020 and 2023: nothing beside a tub; 3 ft, from the rim to 8 ft over
/// it; the same and below it to the floor.
#[test]
fn what_is_beside_a_tub_hangs_on_the_edition() {
    use Height::{High, Low};
    for (height, side, want) in [
        (Height::Within, 143, [Within, Over, Over]),
        (Height::Within, 144, [Within; 3]),
        (Low, 143, [Within, Within, Over]),
        (Low, 145, [Within; 3]),
        (High, 0, [Within; 3]),
    ] {
        let mut input = Input { tub_side: Some(quarters(side)), height, ..Input::sample() };
        let now = [E2017, E2020, E2023].map(|edition| verdict(&input, edition, "tub"));
        assert_eq!(now, want.map(Some), "{height:?} {side}");
        input.barrier = true;
        assert_eq!(verdict(&input, E2023, "tub"), None);
        input.tub = Tub::Over;
        assert_eq!(verdict(&input, E2017, "tub"), Some(Over));
    }
    assert_eq!(solve(&Input::blank(), E2023).unwrap_err()[0].path, "basins");
}

proptest! {
    #[test]
    fn a_longer_hall_never_needs_fewer(long in 0_i64..9_600, more in 0_i64..100, have in 0_i64..9) {
        let at = |long| {
            let halls = vec![Hall { long: Some(quarters(long)) }];
            let input = Input { halls, have: Some(have), ..Input::sample() };
            let answer = solve(&input, E2023).unwrap();
            let enough = have >= answer.needed();
            assert_eq!(verdict(&input, E2023, "have") == Some(Within), enough);
            answer.needed()
        };
        prop_assert!(at(long) <= at(long + more));
    }
}
