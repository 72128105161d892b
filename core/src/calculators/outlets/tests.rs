//! Rooms by hand, the fewest against every set of places there is, then laws.

use super::*;
use crate::sheet::Verdict;
use crate::words::Amount;
use proptest::prelude::*;

const NEC: Electrical = Electrical::E2023;

fn inches(count: i64) -> Length {
    Length::inches(count, 1)
}

fn at_wall(number: usize) -> At {
    At::ALL[number]
}

fn put(kind: BreakKind, wall: usize, from: i64, wide: i64) -> Break {
    Break { kind, wall: at_wall(wall), from: Some(inches(from)), wide: Some(inches(wide)) }
}

fn there(wall: usize, at: i64) -> There {
    There { wall: at_wall(wall), at: Some(inches(at)) }
}

/// A room with boxes cut in anywhere.
fn room(long: i64, wide: i64, breaks: Vec<Break>) -> Input {
    Input {
        long: Some(inches(long)),
        wide: Some(inches(wide)),
        breaks,
        on_studs: false,
        ..Input::sample()
    }
}

/// All of it but the first `long` of wall 1 and all of wall 2 is cabinets.
fn corner(first: i64, second: i64) -> Input {
    use BreakKind::Cabinet;
    room(first, second, vec![put(Cabinet, 3, 0, first), put(Cabinet, 4, 0, second)])
}

/// Source: NEC 210.52(A)(1) and (2), 6 ft and spaces round corners: 13 ft of 8 and 5 take two, at
/// 3 ft 3 in and 9 ft 9 in; 12 ft take one at 6 ft, and a hair more takes two.
#[test]
fn wall_is_measured_round_corners() {
    let answer = solve(&corner(96, 60), NEC).unwrap();
    assert_eq!(answer.spots, [(0, inches(39)), (1, inches(21))]);
    assert_eq!(answer.spaces.len(), 1);
    let answer = solve(&corner(84, 60), NEC).unwrap();
    assert_eq!(answer.spots, [(0, inches(72))]);
    let all = |long: Length| cover(long, &[[Length::ZERO, long]], &[], inches(72)).spots.len();
    let hair = Length::from_nanometres(1);
    assert_eq!([inches(144).minus(hair), inches(144), inches(144).plus(hair)].map(all), [1, 1, 2]);
}

/// Source: NEC 210.52(A)(2): a space is 2 ft wide or more.
#[test]
fn under_two_feet_of_wall_needs_none() {
    for (beside, want) in [(23, 0), (24, 1), (25, 1)] {
        use BreakKind::{Cabinet, Door};
        let breaks = vec![
            put(Cabinet, 1, beside, 120 - beside),
            put(Cabinet, 2, 0, 96),
            put(Door, 3, 0, 120),
            put(Cabinet, 4, 0, 96),
        ];
        let answer = solve(&room(120, 96, breaks), NEC).unwrap();
        assert_eq!(answer.fewest, want, "{beside}");
        assert_eq!(answer.spaces[0].needs, want > 0);
    }
    assert!(is_space(inches(24)) && !is_space(Length::inches(239, 10)));
    let answer = solve(&corner(96, 60), Electrical::E2026).unwrap();
    let sheet = Outlets::sheet(&corner(96, 60), &answer, Basis::default());
    assert_eq!(sheet.verdict(), Verdict::Ask, "its text was not verified");
}

/// By hand: 13 by 12 ft with a door of 32 in leave 568 in of wall, which 144 in apart take ⌈3.94⌉ = 4,
/// with 2 in to spare at each: beside studs 16 in apart they take one more. Both are told.
#[test]
fn studs_may_take_more_than_the_code() {
    let mut input = room(156, 144, vec![put(BreakKind::Door, 1, 12, 32)]);
    let told = |input: &Input| {
        let sheet = Outlets::sheet(input, &solve(input, NEC).unwrap(), Basis::default());
        let by_code = sheet.figure("by-code").map(|it| it.amount);
        let voice = crate::words::Voice::default();
        let said = [&sheet.headline.name, sheet.next.as_ref().unwrap()].map(|it| voice.say(it));
        (sheet.headline.amount, by_code, said)
    };
    let (amount, by_code, [name, next]) = told(&input);
    assert_eq!((amount, by_code, &*name), (Amount::Count(4), None, "The code's fewest"));
    assert!(next.starts_with("The code's floor is 4. That is"), "{next}");
    input.on_studs = true;
    let (amount, by_code, [name, next]) = told(&input);
    assert_eq!((amount, by_code), (Amount::Count(5), Some(Amount::Count(4))));
    assert_eq!(name, "Fewest on your studs");
    assert!(next.starts_with("4 by code, 5 on your studs. That is"), "{next}");
    input.have = vec![there(3, 72)];
    let (.., [_, next]) = told(&input);
    assert!(next.starts_with("4 by code, 5 on your studs; you have 1, and "), "{next}");
}

/// By hand: an L of 16 by 12 ft less 6 by 5, with doors of 32 in in walls 1 and 4. Round the walls
/// are 56 ft. From door to door they are 11 ft + 7 ft + 6 ft less what the doors take.
#[test]
fn two_doors_make_two_spaces_of_an_l() {
    use BreakKind::Door;
    let mut input = room(192, 144, vec![put(Door, 1, 20, 32), put(Door, 4, 14, 32)]);
    input.shape = room::Shape::Ell;
    (input.notch_long, input.notch_wide) = (Some(inches(72)), Some(inches(60)));
    let answer = solve(&input, NEC).unwrap();
    let long: Vec<Length> = answer.spaces.iter().map(|space| space.long).collect();
    // 140 + 84 + 72 + 14, and the rest of 672 less 64.
    assert_eq!(long, [310, 298].map(inches));
    assert_eq!(answer.fewest, 6);
    input.have =
        vec![there(1, 100), there(2, 40), there(3, 60), there(5, 60), there(6, 100), there(4, 30)];
    let answer = solve(&input, NEC).unwrap();
    assert_eq!(answer.fates[5], Fate::Goes);
    assert_eq!(answer.fates[..5], [Fate::Stays; 5]);
}

/// By hand: 30 ft of wall with one at 3 ft: 9 ft are served, 21 ft more take two.
#[test]
fn those_that_are_there_count() {
    use BreakKind::Cabinet;
    let mut input = room(
        360,
        96,
        vec![put(Cabinet, 2, 0, 96), put(Cabinet, 3, 0, 360), put(Cabinet, 4, 0, 96)],
    );
    assert_eq!(solve(&input, NEC).unwrap().fewest, 3);
    input.have = vec![there(1, 36)];
    let answer = solve(&input, NEC).unwrap();
    assert_eq!((answer.missing(), answer.fewest), (2, 3));
    // 108 to 360 in: a quarter and three quarters along.
    assert_eq!(answer.spots, [(0, inches(171)), (0, inches(297))]);
    input.have = [36, 180, 324].map(|at| there(1, at)).to_vec();
    let answer = solve(&input, NEC).unwrap();
    assert_eq!(answer.missing(), 0);
    let sheet = Outlets::sheet(&input, &answer, Basis::default());
    assert_eq!(sheet.verdict(), Verdict::Within);
    input.have[2] = there(1, 325);
    assert_eq!(solve(&input, NEC).unwrap().missing(), 1);
}

/// By hand: fixed glass counts as wall and takes no box: past 12 ft of it no box in the wall comes
/// near enough to its middle.
#[test]
fn glass_is_wall_that_takes_no_box() {
    use BreakKind::{Cabinet, Glass, Slider};
    let with = |kind, wide| {
        let shut = vec![put(Cabinet, 2, 0, 96), put(Cabinet, 3, 0, 360), put(Cabinet, 4, 0, 96)];
        let mut input = room(360, 96, shut);
        (input.keep, input.wide_box) = (Length::ZERO, inches(2));
        input.breaks.push(put(kind, 1, 60, wide));
        solve(&input, NEC).unwrap()
    };
    assert_eq!((with(Glass, 142).bare, with(Glass, 143).bare), (0, 1));
    assert_eq!((with(Slider, 143).bare, with(Slider, 143).spaces.len()), (0, 2));
}

#[test]
fn what_is_in_no_wall_is_told_at_its_field() {
    use BreakKind::Door;
    for (it, path) in [
        (put(Door, 5, 0, 32), "breaks.0.wall"),
        (put(Door, 0, 0, 32), "breaks.0.wall"),
        (put(Door, 2, 70, 32), "breaks.0.from"),
    ] {
        assert_eq!(solve(&room(120, 96, vec![it]), NEC).unwrap_err()[0].path, path);
    }
    let mut input = room(120, 96, Vec::new());
    input.have = vec![there(2, 97)];
    assert_eq!(solve(&input, NEC).unwrap_err()[0].path, "have.0.at");
}

/// Whether these leave nothing of `0..=long` farther off than `reach`, all in inches.
fn covers(spots: &mut [i64], long: i64, reach: i64) -> bool {
    spots.sort_unstable();
    let (Some(first), Some(last)) = (spots.first(), spots.last()) else { return false };
    *first <= reach
        && long - last <= reach
        && spots.windows(2).all(|pair| pair[1] - pair[0] <= 2 * reach)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_500))]

    /// Every set of ten places or fewer is tried.
    #[test]
    fn no_fewer_places_do_beside_those_that_are_there(
        long in 24_i64..400,
        places in prop::collection::btree_set(0_i64..400, 0..10),
        have in prop::collection::vec(0_i64..400, 0..4),
    ) {
        let places: Vec<i64> = places.into_iter().filter(|at| *at <= long).collect();
        let have: Vec<i64> = have.into_iter().filter(|at| *at <= long).collect();
        let fewest = (0_u32..1 << places.len())
            .filter(|set| {
                let chosen = places.iter().enumerate().filter(|(at, _)| set >> at & 1 == 1);
                let mut all: Vec<i64> = chosen.map(|(_, at)| *at).chain(have.clone()).collect();
                covers(&mut all, long, 72)
            })
            .map(u32::count_ones)
            .min();
        let allowed: Vec<[Length; 2]> = places.iter().map(|at| [inches(*at); 2]).collect();
        let mut had: Vec<Length> = have.iter().map(|at| inches(*at)).collect();
        had.sort_unstable();
        let cover = cover(inches(long), &allowed, &had, inches(72));
        match fewest {
            None => prop_assert!(!cover.bare.is_empty()),
            Some(fewest) => {
                prop_assert!(cover.bare.is_empty());
                prop_assert_eq!(cover.spots.len(), fewest as usize);
                let mut all = have;
                for spot in &cover.spots {
                    prop_assert!(allowed.contains(&[*spot; 2]));
                    all.push(spot.nanometres() / 25_400_000);
                }
                prop_assert!(covers(&mut all, long, 72));
            }
        }
    }

    /// An L with two doors, boxes beside studs: counted again by the shortest chain of places.
    #[test]
    fn rooms_with_doors_and_corners_take_the_fewest(
        long in 100_i64..400, wide in 100_i64..300, notch in 20_i64..80,
        doors in prop::collection::vec((1_usize..=6, 0_i64..300), 1..4),
        first in 0_i64..24, spacing in prop::sample::select(vec![12_i64, 16, 24]),
    ) {
        let mut input = room(long, wide, Vec::new());
        input.shape = room::Shape::Ell;
        (input.notch_long, input.notch_wide) = (Some(inches(notch)), Some(inches(notch)));
        (input.on_studs, input.first, input.spacing) = (true, inches(first), inches(spacing));
        let lengths = [long, wide - notch, notch, notch, long - notch, wide];
        for (wall, from) in doors {
            let most = lengths[wall - 1] - 20;
            input.breaks.push(put(BreakKind::Door, wall, from.min(most), 20));
        }
        let answer = solve(&input, NEC).unwrap();
        let walls = Walls::of(&answer.plan);
        // In sixteenths of an inch: 7/8 and 1-1/8 off the stud, 3-1/4 and 1-1/8 off a door.
        let mut places = Vec::new();
        let mut start = 0;
        for (wall, length) in lengths.iter().enumerate() {
            for stud in (first * 16..length * 16).step_by(spacing as usize * 16) {
                for at in [stud - 30, stud + 30] {
                    let doors = input.breaks.iter().filter(|it| it.wall.wall() == Some(wall));
                    let clear = doors.map(|it| it.from.unwrap().nanometres() / 25_400_000 * 16)
                        .all(|door| at <= door - 70 || at >= door + 320 + 70);
                    if clear && at >= 18 && at <= length * 16 - 18 {
                        places.push(start + at);
                    }
                }
            }
            start += length * 16;
        }
        let sixteenths = |length: Length| length.nanometres() * 16 / 25_400_000;
        let (mut fewest, mut bare) = (0, false);
        for [from, space] in walls.spaces(&input.breaks) {
            let (from, space) = (sixteenths(from), sixteenths(space));
            if space < 24 * 16 {
                continue;
            }
            let mut here: Vec<i64> =
                places.iter().map(|at| (at - from).rem_euclid(start)).filter(|at| *at <= space).collect();
            here.sort_unstable();
            let mut chain: Vec<Option<i64>> = Vec::new();
            for (at, place) in here.iter().enumerate() {
                let before = (0..at).filter(|other| place - here[*other] <= 144 * 16);
                let best = before.filter_map(|other| chain[other]).min().map(|best| best + 1);
                chain.push(if *place <= 72 * 16 { Some(1) } else { best });
            }
            let ends = here.iter().zip(&chain).filter(|(place, _)| space - **place <= 72 * 16);
            match ends.filter_map(|(_, count)| *count).min() {
                Some(count) => fewest += count,
                None => bare = true,
            }
        }
        if bare {
            prop_assert!(answer.bare > 0);
        } else {
            prop_assert_eq!((answer.fewest, answer.bare), (fewest, 0));
            prop_assert_eq!(answer.spots.len() as i64, fewest);
        }
    }

    #[test]
    fn a_longer_wall_never_needs_fewer(long in 24_i64..4_000, more in 0_i64..400, first in 0_i64..16) {
        let at = |long: i64| {
            let places: Vec<[Length; 2]> =
                (0..long).filter(|at| at % 16 == first).map(|at| [inches(at); 2]).collect();
            cover(inches(long), &places, &[], inches(72)).spots.len()
        };
        prop_assert!(at(long + more) >= at(long));
        let even = cover(inches(long), &[[Length::ZERO, inches(long)]], &[], inches(72)).spots;
        prop_assert_eq!(even.len() as i64, (long + 143) / 144);
        for (at, spot) in even.iter().enumerate() {
            let want = inches(long).times(2 * at as i64 + 1).part(2 * even.len() as i64);
            prop_assert_eq!(*spot, want);
        }
    }
}
