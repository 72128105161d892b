//! Layouts checked by counting again what they say, against rooms worked by hand and by solvers.

use super::bound::weights;
use super::*;
use proptest::prelude::*;

/// In tenths of an inch: along the boards, across them, framing apart and from where, stock, width.
fn room([long, wide, space, first, stock, width]: [i64; 6]) -> Rows {
    let strip = match wide % width {
        0 => Strip::None,
        rest if 2 * rest <= width => Strip::Paired,
        _ => Strip::Single,
    };
    let mut stops = Vec::new();
    let mut at = first;
    while at < long {
        if at > 0 {
            stops.push(at);
        }
        at += space;
    }
    let full = usize::try_from(wide / width).unwrap();
    Rows { long, full, strip, stops, stock, least: 240 }
}

/// Counts a layout again from its pieces alone: rows covered, ends on framing, joints apart, and
/// what is cut from each board no more than there is in it.
fn check(rows: &Rows, layout: &Layout) {
    let mut joints: Vec<Vec<i64>> = Vec::new();
    for row in 0..rows.count() {
        let mut at = 0;
        let mut ends = Vec::new();
        for cut in layout.cuts.iter().filter(|cut| cut.row == row) {
            assert_eq!(cut.from, at, "a gap or an overlap in row {row}");
            assert!(cut.length() >= rows.least.min(rows.long) && cut.length() <= rows.stock);
            at = cut.to;
            if at != rows.long {
                assert!(rows.stops.contains(&at), "a joint off the framing");
                ends.push(at);
            }
        }
        assert_eq!(at, rows.long, "row {row} is not covered");
        if let Some(before) = joints.last() {
            assert!(before.iter().all(|joint| !ends.contains(joint)), "joints in line");
        }
        joints.push(ends);
    }
    assert_eq!(layout.joints, joints.iter().map(Vec::len).sum::<usize>());
    assert_eq!(layout.cuts.len(), layout.joints + rows.count(), "a piece in no row");
    for board in 0..layout.boards {
        let sum = |lane: usize| {
            let cuts = layout.cuts.iter().filter(|cut| cut.board == board && cut.lane == lane);
            cuts.map(Cut::length).sum::<i64>()
        };
        assert!(sum(0) + sum(1).max(sum(2)) <= rows.stock, "board {board} is cut too often");
        assert!(sum(0) + sum(1) + sum(2) > 0, "board {board} is not used");
    }
    for cut in &layout.cuts {
        assert!(cut.board < layout.boards);
        let thin = rows.strip == Strip::Paired && cut.row + 1 == rows.count();
        assert_eq!(cut.lane > 0, thin, "only a narrow last row comes from lanes");
    }
}

/// The fewest boards with their joints, and the fewest joints with their boards.
fn both(rows: &Rows) -> Option<[(usize, usize); 2]> {
    let front = search(rows);
    for pair in front.windows(2) {
        assert!(pair[0].layout.boards > pair[1].layout.boards);
        assert!(pair[0].layout.joints < pair[1].layout.joints);
    }
    for found in &front {
        check(rows, &found.layout);
        assert!(found.bound <= found.layout.boards);
    }
    let counts = |found: &Found| (found.layout.boards, found.layout.joints);
    Some([counts(front.last()?), counts(front.first()?)])
}

/// Derived by hand from the rules, and the same by two integer-program solvers (see
/// `tests/references/make_board_counts.py` for the method).
#[test]
fn worked_rooms_come_out() {
    #[rustfmt::skip]
    /// What is asked, then boards and joints of both plans.
    type Case = ([i64; 6], [(usize, usize); 2]);
    const CASES: &[Case] = &[
        ([1920, 1440, 160, 0, 960, 480], [(6, 4), (6, 4)]),
        ([1920, 1440, 160, 0, 1440, 480], [(4, 3), (4, 3)]),
        ([1920, 1440, 160, 0, 1920, 480], [(3, 0), (3, 0)]),
        // Four joints force every piece of full width to 96 in and more, and no two share a board.
        ([2400, 1680, 160, 0, 1440, 480], [(6, 5), (7, 4)]),
        ([2160, 1440, 240, 0, 960, 480], [(7, 6), (7, 6)]),
        ([2080, 1920, 160, 0, 1440, 480], [(6, 4), (6, 4)]),
        ([2640, 1440, 160, 0, 1680, 480], [(5, 4), (6, 3)]),
        ([1800, 1560, 240, 0, 1440, 480], [(5, 4), (5, 4)]),
        ([1800, 1560, 240, 0, 1920, 480], [(4, 0), (4, 0)]),
    ];
    for (of, want) in CASES {
        let rows = room(*of);
        assert_eq!(both(&rows), Some(*want), "{of:?}");
        assert!(search(&rows).iter().all(|found| found.bound == found.layout.boards), "{of:?}");
    }
}

/// Source: `tests/references/make_board_counts.py`, OR-tools 9.15 and HiGHS 1.16 from PyPI; 150
/// random rooms, none left out. Where the solver proved its count nothing may beat it.
#[test]
fn counts_stand_beside_those_of_integer_programs() {
    let (mut rooms, mut fewest_boards, mut fewest_joints) = (0, [0; 3], [0; 3]);
    for line in include_str!("../../../tests/vectors/board-counts.csv").lines().skip(1) {
        let parts: Vec<&str> = line.split(',').collect();
        let number = |at: usize| parts[at].parse::<i64>().unwrap();
        let rows = room([1, 2, 3, 4, 5, 6].map(number));
        let front = search(&rows);
        let [boards, joints] = both(&rows).expect("each room can be laid");
        rooms += 1;
        for (ours, at, order, tally) in [
            ((boards.0, boards.1), 7, 0, &mut fewest_boards),
            ((joints.1, joints.0), 10, 1, &mut fewest_joints),
        ] {
            if parts[at + 2] != "proven" {
                tally[2] += 1;
                continue;
            }
            let (a, b) =
                (parts[at + order].parse().unwrap(), parts[at + 1 - order].parse().unwrap());
            let (boards, joints) = if order == 0 { (a, b) } else { (b, a) };
            for found in front.iter().filter(|found| found.layout.joints >= joints) {
                assert!(found.bound <= boards, "a bound above what can be done: {line}");
            }
            assert!(ours >= (a, b), "better than what was proven: {line}");
            tally[usize::from(ours != (a, b))] += 1;
        }
    }
    println!(
        "{rooms} rooms; equal, worse, unproven: boards first {fewest_boards:?}, joints first {fewest_joints:?}"
    );
    assert_eq!(rooms, 150);
    assert!(fewest_boards[0] >= LEAST_EQUAL[0] && fewest_joints[0] >= LEAST_EQUAL[1]);
}

/// Of those that were proven, so many are met: a ratchet.
const LEAST_EQUAL: [usize; 2] = [109, 136];

#[test]
fn a_row_that_no_framing_lets_break_has_no_layout() {
    let rows = Rows { stops: vec![50], ..room([2400, 1440, 160, 0, 1440, 480]) };
    assert_eq!(search(&rows), []);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]
    #[test]
    fn any_room_is_laid_by_the_rules_and_never_below_its_area(
        long in 96_i64..480, wide in 48_i64..360, space in prop::sample::select(vec![120, 160, 192, 240]),
        first in 0_i64..12, stock in 8_i64..17, width in prop::sample::select(vec![480, 540]),
    ) {
        let rows = room([long * 10, wide * 10, space, first * 10, stock * 120, width]);
        let front = search(&rows);
        let halves = match rows.strip {
            Strip::None => 2 * rows.full,
            Strip::Paired => 2 * rows.full + 1,
            Strip::Single => 2 * rows.full + 2,
        };
        for found in &front {
            check(&rows, &found.layout);
            let area = (halves as i64 * rows.long + 2 * rows.stock - 1) / (2 * rows.stock);
            prop_assert!(found.layout.boards as i64 >= area);
            prop_assert!(found.bound as i64 >= area && found.bound <= found.layout.boards);
        }
        prop_assert_eq!(front, search(&rows), "one question, one answer");
    }

    /// The theorem that the bound stands on, for every weight that is used.
    #[test]
    fn what_fits_a_board_weighs_no_more_than_it(
        stock in 60_i64..200, pieces in prop::collection::vec(1_i64..200, 1..12),
    ) {
        let mut left = stock;
        let cut: Vec<i64> = pieces.iter().copied().filter(|piece| {
            let fits = *piece <= left;
            left -= if fits { *piece } else { 0 };
            fits
        }).collect();
        for weight in weights(&pieces, stock) {
            let sum: i64 = cut.iter().map(|piece| weight.of(*piece, stock)).sum();
            prop_assert!(sum <= weight.board(stock), "{weight:?} of {cut:?} in {stock}");
        }
    }
}
