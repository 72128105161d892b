//! Boxes placed by hand, packing against every stack there is, then laws.

use super::*;
use crate::sheet::Verdict;
use proptest::prelude::*;

fn sixteenths(count: i64) -> Length {
    Length::inches(count, 16)
}

fn input(gap: i64, stud: i64) -> Input {
    Input { gap: Some(sixteenths(gap)), stud: Some(sixteenths(stud)), ..Input::sample() }
}

fn verdict(input: &Input, key: &str) -> Option<Verdict> {
    let sheet = BetweenEdges::sheet(input, &solve(input).unwrap(), Basis::default());
    sheet.checks.iter().find(|check| check.key == key).map(|check| check.verdict)
}

/// By hand: 21 in between edges, 2-1/4 of box: 9-3/8 each side. The stud at 7 ends at 7-3/4, so that
/// 1-5/8 is to be packed: 3/4, 3/4 and nothing nearer than 1-1/2 or 1-3/4 from 1/4, 1/2 and 3/4.
#[test]
fn a_box_in_the_middle_is_packed_off_the_nearer_stud() {
    let answer = solve(&Input::sample()).unwrap();
    assert_eq!(answer.wanted, sixteenths(150));
    let Held::Beside { stud, on_right, wanted, packing, screw } = &answer.held else {
        panic!("{answer:?}")
    };
    assert_eq!((*stud, *on_right, *wanted), (sixteenths(112), true, sixteenths(26)));
    assert_eq!(packing.pieces, [(sixteenths(12), 2)]);
    assert_eq!(answer.left, sixteenths(148));
    assert_eq!(answer.right, sixteenths(152));
    // 1-1/2 and 1/8 and 1 in are 2-5/8: 3 in.
    assert_eq!(*screw, Some(sixteenths(48)));
    assert_eq!(verdict(&Input::sample(), "off"), Some(Verdict::Within));
}

/// By hand: with 3/8 at hand too, 1-5/8 is 3/4, 1/2 and 3/8.
#[test]
fn an_exact_stack_is_found_and_leaves_both_sides_alike() {
    let mut input = Input::sample();
    input.sheets.push(Sheets { thick: Some(sixteenths(6)) });
    let answer = solve(&input).unwrap();
    let Held::Beside { packing, .. } = &answer.held else { panic!("{answer:?}") };
    assert_eq!(packing.pieces, [12, 8, 6].map(|thick| (sixteenths(thick), 1)));
    assert_eq!(answer.left, answer.right);
}

/// By hand: the box's left side is at 150 sixteenths; a stud of 24 whose middle is at 138 touches it,
/// a sixteenth farther it meets it.
#[test]
fn a_stud_beside_the_box_or_in_its_place() {
    for (stud, clashes) in [(137, false), (138, false), (139, true), (197, true), (198, false)] {
        let input = input(336, stud);
        let answer = solve(&input).unwrap();
        assert_eq!(matches!(answer.held, Held::Clash { .. }), clashes, "{stud}");
        let want = if clashes { Verdict::Over } else { Verdict::Within };
        assert_eq!(verdict(&input, "stud"), Some(want), "{stud}");
    }
    let Held::Clash { left, right, .. } = solve(&input(336, 168)).unwrap().held else { panic!() };
    assert_eq!((left, right), (sixteenths(30), sixteenths(30)));
}

/// Common practice: 3 in of packing is the most; the plate laps 1/4 in.
#[test]
fn past_three_inches_it_is_a_block() {
    for (stud, is_block) in [(90, false), (89, true)] {
        let mut input = input(336, stud);
        input.spacing = sixteenths(768);
        assert_eq!(matches!(solve(&input).unwrap().held, Held::Block(_)), is_block, "{stud}");
    }
    for (gap, want) in [(43, Verdict::Over), (44, Verdict::Within)] {
        let mut input = input(gap, 400);
        input.spacing = sixteenths(768);
        assert_eq!(verdict(&input, "plate"), Some(want), "{gap}");
    }
    assert_eq!(solve(&input(35, 0)).unwrap_err()[0].path, "wide");
}

/// Every stack of up to so many pieces.
fn nearest_of_all(wanted: Length, sheets: &[Length]) -> (Length, i64) {
    fn all(
        at: usize,
        made: Length,
        count: i64,
        most: i64,
        sheets: &[Length],
        out: &mut Vec<(Length, i64)>,
    ) {
        out.push((made, count));
        if count < most {
            for next in at..sheets.len() {
                all(next, made.plus(sheets[next]), count + 1, most, sheets, out);
            }
        }
    }
    let least = sheets.iter().min().copied().unwrap_or(wanted).max(sixteenths(1));
    let most = wanted.nanometres() / least.nanometres() + 2;
    let mut stacks = Vec::new();
    all(0, Length::ZERO, 0, most, sheets, &mut stacks);
    let off = |made: Length| made.minus(wanted).max(wanted.minus(made));
    stacks.iter().map(|(made, count)| (off(*made), *count)).min().unwrap()
}

proptest! {
    #[test]
    fn no_stack_of_pieces_comes_nearer_or_needs_fewer(
        wanted in 0_i64..=96, sheets in prop::collection::btree_set(8_i64..=32, 0..4),
    ) {
        // In thirty-seconds.
        let sheets: Vec<Length> = sheets.iter().rev().map(|it| Length::inches(*it, 32)).collect();
        let wanted = Length::inches(wanted, 32);
        let packing = pack(wanted, &sheets);
        let off = packing.made().minus(wanted).max(wanted.minus(packing.made()));
        prop_assert_eq!((off, packing.count()), nearest_of_all(wanted, &sheets));
    }

    #[test]
    fn both_sides_and_the_box_come_to_the_gap(
        gap in 36_i64..3_840, stud in 0_i64..3_840, spacing in 96_i64..768,
    ) {
        let input = Input { spacing: sixteenths(spacing), ..input(gap, stud) };
        let answer = solve(&input).unwrap();
        prop_assert_eq!(answer.left.plus(input.wide).plus(answer.right), sixteenths(gap));
        if let Held::Beside { wanted, packing, .. } = &answer.held {
            let off = packing.made().minus(*wanted);
            prop_assert_eq!(answer.left.minus(answer.wanted).max(answer.wanted.minus(answer.left)),
                off.max(Length::ZERO.minus(off)));
        }
    }
}
