//! Rooms worked by hand and by solvers, and every plan counted again from its pieces.

mod drawn;
mod fewest;
mod joists;
mod outlines;
mod strips;
mod two_widths;
mod walls;

use super::*;
use crate::calculators::Progress;
use crate::calculators::room::Shape;
use crate::measure::{Area, Length};
use crate::rules::finish::board_weights::Panel;
use crate::sheet::Verdict;
use proptest::prelude::*;

fn inches(count: i64) -> Length {
    Length::inches(count, 1)
}

fn only(feet: &[i64]) -> Stock {
    let has = |length: i64| feet.contains(&length);
    Stock { l8: has(8), l9: has(9), l10: has(10), l12: has(12), l14: has(14), l16: has(16) }
}

fn ceiling(long: i64, wide: i64, spacing: i64, feet: &[i64]) -> Input {
    Input {
        long: Some(inches(long)),
        wide: Some(inches(wide)),
        spacing: inches(spacing),
        stock: only(feet),
        ..Input::sample()
    }
}

/// Counts a plan again from its pieces alone.
fn check(input: &Input, answer: &Answer, plan: &Plan) {
    let widths = input.board.widths();
    let mut joints: Vec<(usize, Length)> = Vec::new();
    let mut covered = Area::ZERO;
    for run in &answer.ground.runs {
        let mut at = run.along[0];
        for piece in plan.pieces.iter().filter(|it| it.run == *run) {
            assert_eq!(piece.along[0], at, "a gap or an overlap");
            at = piece.along[1];
            let long = at.minus(piece.along[0]);
            assert!(long >= input.least.min(run.along[1].minus(run.along[0])));
            if at != run.along[1] {
                assert!(answer.ground.stops.contains(&at), "a joint off the framing");
                joints.push((run.row, at));
            }
        }
        assert_eq!(at, run.along[1], "a run is not covered");
        let high = run.across[1].minus(run.across[0]);
        assert!(high <= run.board && widths.contains(&run.board));
        covered = covered.plus(Area::of(at.minus(run.along[0]), high));
    }
    assert!(covered >= answer.ground.area(), "less is covered than there is");
    for (row, at) in &joints {
        assert!(!joints.contains(&(row + 1, *at)), "joints in line");
    }
    assert_eq!(plan.joints, joints.len());
    for (board, Size { long, wide }) in plan.boards.iter().enumerate() {
        let own = plan.pieces.iter().filter(|it| it.board == board);
        assert!(own.into_iter().all(|it| it.run.board == *wide), "cut from another width");
        let sum = |lane: usize| {
            let cut = plan.pieces.iter().filter(|it| it.board == board && it.lane == lane);
            cut.fold(Length::ZERO, |sum, it| sum.plus(it.along[1].minus(it.along[0])))
        };
        let used = sum(0).plus(sum(1).max(sum(2)));
        assert!(used <= *long && used > Length::ZERO, "board {board} is cut too often");
        assert!(input.stock.lengths().contains(long));
        assert!(input.longest.is_none_or(|longest| *long <= longest));
    }
    let lanes = plan.pieces.iter().filter(|it| it.lane > 0);
    for piece in lanes {
        assert!(piece.run.across[1].minus(piece.run.across[0]).times(2) <= piece.run.board);
    }
    // Rows lie edge to edge, and their depths come to the whole.
    let deep = answer.ground.outline.iter().map(|it| it[1]).max().unwrap();
    let mut from = Length::ZERO;
    for (row, band) in answer.ground.bands.iter().enumerate() {
        let to = from.plus(band.high);
        for run in answer.ground.runs.iter().filter(|run| run.row == row) {
            assert!(run.across[0] >= from && run.across[1] <= to && run.board == band.board);
        }
        from = to;
    }
    assert_eq!(from, deep);
    assert!(plan.bought() >= answer.least_bought, "less is bought than can be");
}

fn worked(input: &Input) -> Answer {
    let answer = solve(input).unwrap();
    assert_eq!(answer.progress, Progress::Whole);
    for plan in &answer.plans {
        check(input, &answer, plan);
    }
    answer
}

/// What a part says: names, then cells or values.
fn part_says(sheet: &Sheet, key: &str) -> Vec<Vec<String>> {
    let say = |text: &crate::words::Text| crate::words::Voice::default().say(text);
    let part = sheet.parts.iter().find(|part| part.key == key).unwrap();
    let mut all: Vec<Vec<String>> = Vec::new();
    for row in &part.rows {
        all.push(vec![say(&row.name), say(&row.value)]);
    }
    for row in part.table.iter().flat_map(|table| &table.rows) {
        all.push(std::iter::once(&row.name).chain(&row.cells).map(say).collect());
    }
    all
}
