//! Layouts checked by counting again what they say, against rooms worked by hand and by solvers.

use super::bound::{Cutting, Prices};
use super::*;
use proptest::prelude::*;

/// In tenths of an inch: along the boards, across them, framing apart and from where, stock, width.
fn room([long, wide, space, first, stock, width]: [i64; 6]) -> Rows {
    let mut stops = Vec::new();
    let mut at = first;
    while at < long {
        if at > 0 {
            stops.push(at);
        }
        at += space;
    }
    let full = usize::try_from(wide / width).unwrap();
    let run = |row, thin| Run { row, from: 0, to: long, thin, width: 0 };
    let mut runs: Vec<Run> = (0..full).map(|row| run(row, false)).collect();
    if wide % width > 0 {
        runs.push(run(full, 2 * (wide % width) <= width));
    }
    Rows { runs, stops, stock, least: 240, ..Rows::default() }
}

/// Counts a layout again from its pieces alone: runs covered, ends on framing, joints apart, and
/// what is cut from each board no more than there is in it.
pub(super) fn check(rows: &Rows, layout: &Layout) {
    let mut joints: Vec<(usize, i64)> = Vec::new();
    let mut pieces = 0;
    // Which width each board is: pieces of another never come from it.
    let mut wide: Vec<Option<usize>> = vec![None; layout.boards];
    for run in &rows.runs {
        let mut at = run.from;
        let within = |cut: &&Cut| cut.row == run.row && cut.from >= run.from && cut.to <= run.to;
        for cut in layout.cuts.iter().filter(within) {
            assert_eq!(cut.from, at, "a gap or an overlap in row {}", run.row);
            let least = rows.least.min(run.to - run.from);
            assert!(cut.length() >= least && cut.length() <= rows.stock);
            assert_eq!(cut.lane > 0, run.thin, "only what is thin comes from lanes");
            assert_eq!(*wide[cut.board].get_or_insert(run.width), run.width, "of another width");
            at = cut.to;
            pieces += 1;
            if at != run.to {
                assert!(rows.stops.contains(&at), "a joint off the framing");
                joints.push((run.row, at));
            }
        }
        assert_eq!(at, run.to, "row {} is not covered", run.row);
    }
    assert_eq!(pieces, layout.cuts.len(), "a piece in no run");
    for (row, at) in &joints {
        assert!(!joints.contains(&(row + 1, *at)), "joints in line");
    }
    assert_eq!(layout.joints, joints.len());
    for board in 0..layout.boards {
        let sum = |lane: usize| {
            let cuts = layout.cuts.iter().filter(|cut| cut.board == board && cut.lane == lane);
            cuts.map(Cut::length).sum::<i64>()
        };
        assert!(sum(0) + sum(1).max(sum(2)) <= rows.stock, "board {board} is cut too often");
        assert!(sum(0) + sum(1) + sum(2) > 0, "board {board} is not used");
    }
    assert!(layout.cuts.iter().all(|cut| cut.board < layout.boards && cut.lane < 3));
}

fn front(rows: &Rows) -> Vec<Found> {
    let front = search(rows);
    for pair in front.windows(2) {
        assert!(pair[0].layout.boards > pair[1].layout.boards);
        assert!(pair[0].layout.joints < pair[1].layout.joints);
    }
    for found in &front {
        check(rows, &found.layout);
        assert!(found.bound <= found.layout.boards);
    }
    front
}

/// The fewest boards with their joints, and the fewest joints with their boards.
fn both(front: &[Found]) -> Option<[(usize, usize); 2]> {
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
        let front = front(&room(*of));
        assert_eq!(both(&front), Some(*want), "{of:?}");
        assert!(front.iter().all(|it| it.bound == it.layout.boards && it.fewest_joints), "{of:?}");
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
        let front = front(&rows);
        let [boards, joints] = both(&front).expect("each room can be laid");
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
            for found in &front {
                let Layout { boards: ours, joints: our_joints, .. } = found.layout;
                if our_joints >= joints {
                    assert!(found.bound <= boards, "a bound above what can be done: {line}");
                }
                let claims = found.fewest_joints && ours >= boards && our_joints > joints;
                assert!(!claims, "joints said to be the fewest that aren't: {line}");
            }
            assert!(ours >= (a, b), "better than what was proven: {line}");
            assert_eq!(ours.0, a, "{line}");
            tally[usize::from(ours != (a, b))] += 1;
        }
    }
    println!(
        "{rooms} rooms; equal, worse, unproven: boards first {fewest_boards:?}, joints first {fewest_joints:?}"
    );
    assert_eq!(rooms, 150);
    assert!(fewest_boards[1] <= MOST_WORSE[0] && fewest_joints[1] <= MOST_WORSE[1]);
}

/// Of those that were proven, so many have the count that goes first but more of the other: a
/// ratchet.
const MOST_WORSE: [usize; 2] = [0, 0];

#[test]
fn a_row_that_no_framing_lets_break_has_no_layout() {
    let rows = Rows { stops: vec![50], ..room([2400, 1440, 160, 0, 1440, 480]) };
    assert_eq!(search(&rows), []);
}

/// By hand: five runs of 96 in of one width and three of another from boards of 16 ft, two from each:
/// three and two boards, where four would hold eight runs of one width.
#[test]
fn an_offcut_hangs_in_rows_of_its_own_width_alone() {
    let run = |row: usize| Run { row, from: 0, to: 960, thin: false, width: usize::from(row > 4) };
    let runs: Vec<Run> = (0..8).map(run).collect();
    let rows = Rows { runs, stock: 1920, least: 240, widths: vec![8, 9], ..Rows::default() };
    let found = front(&rows);
    assert_eq!(both(&found), Some([(5, 0), (5, 0)]));
    assert!(found[0].bound == 5 && found[0].fewest_joints);
    let one: Vec<Run> = rows.runs.iter().map(|run| Run { width: 0, ..*run }).collect();
    let one = front(&Rows { runs: one, widths: Vec::new(), ..rows });
    assert_eq!(both(&one), Some([(4, 0), (4, 0)]));
}

#[test]
fn units_make_no_difference() {
    let rows = room([3450, 4320, 160, 0, 960, 480]);
    // A tenth of an inch in nanometres.
    let fine = |at: &i64| at * 2_540_000;
    let run = |run: &Run| Run { from: fine(&run.from), to: fine(&run.to), ..*run };
    let finer = Rows {
        runs: rows.runs.iter().map(run).collect(),
        stops: rows.stops.iter().map(fine).collect(),
        stock: fine(&rows.stock),
        least: fine(&rows.least),
        ..Rows::default()
    };
    let counts = |rows: &Rows| -> Vec<(usize, usize, usize)> {
        let of = |it: &Found| (it.layout.boards, it.layout.joints, it.bound);
        front(rows).iter().map(of).collect()
    };
    assert_eq!(counts(&rows), counts(&finer));
}

#[test]
fn a_search_in_short_steps_finds_the_same() {
    let rows = room([3450, 4320, 160, 0, 960, 480]);
    let mut search = Search::new(&rows).unwrap();
    while !search.step(7) {}
    assert_eq!(search.found(), super::search(&rows));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(32))]
    #[test]
    fn any_room_is_laid_by_the_rules_and_never_below_its_area(
        long in 48_i64..480, wide in 24_i64..360, space in prop::sample::select(vec![120, 160, 192, 240]),
        first in 0_i64..12, stock in 8_i64..17, width in prop::sample::select(vec![480, 540]),
    ) {
        let rows = room([long * 10, wide * 10, space, first * 10, stock * 120, width]);
        let front = front(&rows);
        prop_assert!(!front.is_empty());
        let halves: i64 = rows.runs.iter().map(|run| if run.thin { 1 } else { 2 }).sum();
        let area = (halves * rows.runs[0].to + 2 * rows.stock - 1) / (2 * rows.stock);
        for found in &front {
            prop_assert!(found.layout.boards as i64 >= area);
            prop_assert!(found.bound as i64 >= area);
        }
    }

    /// Rows broken by doors and windows, of any lengths, over framing anywhere.
    #[test]
    fn runs_of_any_kind_are_laid_by_the_rules(
        runs in prop::collection::vec((0_usize..4, 0_i64..30, 1_i64..30, any::<bool>(), 0_usize..2), 1..7),
        stops in prop::collection::btree_set(1_i64..60, 10..40), stock in 10_i64..20,
    ) {
        let mut kept: Vec<Run> = Vec::new();
        for (row, from, long, thin, width) in runs {
            let run = Run { row, from, to: from + long, thin, width };
            if kept.iter().all(|it| it.row != row || it.to <= run.from || it.from >= run.to) {
                kept.push(run);
            }
        }
        kept.sort_by_key(|run| (run.row, run.from));
        let (stops, widths) = (stops.into_iter().collect(), vec![8, 9]);
        let rows = Rows { runs: kept, stops, stock, least: 2, widths, ..Rows::default() };
        let plain = front(&rows);
        // What is bought of both is never below what is needed of each.
        let sizes = vec![stock - 3, stock];
        let rows = Rows { sizes, ..rows };
        let Some(mut mixed) = Mixed::new(&rows) else { return Ok(()) };
        while !mixed.step(1000) {}
        let Some(layout) = mixed.found() else {
            // Rows that touch can be forced to break at one member: then no search has a layout.
            prop_assert_eq!(plain, []);
            return Ok(());
        };
        check(&rows, &layout);
        let mut all = 0;
        for board in 0..layout.boards {
            let cuts: Vec<&Cut> = layout.cuts.iter().filter(|it| it.board == board).collect();
            let sum = |lane| cuts.iter().filter(|it| it.lane == lane).map(|it| it.length()).sum::<i64>();
            let used = sum(0) + sum(1).max(sum(2));
            let size = rows.sizes.iter().find(|size| **size >= used).unwrap();
            let own = |it: &&Run| it.row == cuts[0].row && it.from <= cuts[0].from && cuts[0].to <= it.to;
            all += size * rows.widths[rows.runs.iter().find(own).unwrap().width];
        }
        prop_assert!(all >= mixed.lowest());
    }

    /// The theorem that the bound stands on: of all that fits a board nothing weighs more than
    /// the heaviest way of cutting it, whatever the weights.
    #[test]
    fn no_more_boards_are_asked_for_than_some_cutting_takes(
        stock in 60_i64..200,
        cut in prop::collection::vec((0_usize..2, prop::collection::vec(20_i64..200, 1..5)), 1..6),
    ) {
        // Boards cut into pieces, each piece a run by itself.
        let mut runs = Vec::new();
        let mut boards = 0;
        for (width, pieces) in cut {
            let mut left = stock;
            for piece in pieces {
                if piece <= left {
                    left -= piece;
                    runs.push(Run { row: 2 * runs.len(), from: 0, to: piece, thin: false, width });
                }
            }
            boards += usize::from(left < stock);
        }
        prop_assume!(!runs.is_empty());
        let widths = vec![8, 9];
        let rows = Rows { runs, stops: Vec::new(), stock, least: 20, widths, ..Rows::default() };
        let mut search = Search::new(&rows).unwrap();
        while !search.step(u32::MAX) {}
        prop_assert!(search.lowest() <= boards);
        prop_assert!(search.found().iter().all(|it| it.bound <= boards));
    }
}

#[test]
fn lengths_with_too_many_sums_are_rounded_to_a_weaker_bound() {
    let lengths: Vec<i64> = (0..40).map(|at| 240_000 + at * at * 1371).collect();
    let numbered: Vec<(usize, i64)> = lengths.iter().copied().enumerate().collect();
    let cutting = Cutting::new(1_920_000, &numbered);
    let prices = Prices::new(1_920_000, &lengths, &[0; 40]);
    assert!(prices.proves == 0.0 && cutting.sums() <= 3000);
}

/// A sliver beside many lengths: it takes a part of the board, or nothing is proven.
#[test]
fn a_length_that_rounds_to_nothing_proves_nothing() {
    let stock = 1_920_000;
    for sliver in [1, 600, 1000, 1874, 1875] {
        let long = (0..40).map(|at| 240_000 + at * at * 1371);
        let lengths: Vec<i64> = long.chain([sliver]).collect();
        let numbered: Vec<(usize, i64)> = lengths.iter().copied().enumerate().collect();
        let cutting = Cutting::new(stock, &numbered);
        assert!(cutting.sums() <= 3000, "{sliver}");
        // By its weight alone, no board proves more of it than go on one.
        let mut weights = vec![0.0; 40];
        weights.push(1.0);
        let most = cutting.most(&weights).0;
        let fit = (stock / sliver) as f64;
        assert!(most == 0.0 || most >= fit, "{sliver}: {most} of {fit}");
        assert_eq!(most == 0.0, sliver < 641, "{sliver}");
    }
}
