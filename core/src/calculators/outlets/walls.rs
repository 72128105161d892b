//! The walls of a room as one line from wall 1's start, its spaces, and where in them a box may be.

use super::{Break, Input};
use crate::measure::Length;
use crate::plan::Plan;

/// The line.
pub(super) struct Walls {
    /// Where each wall starts on it, and how long it is.
    walls: Vec<[Length; 2]>,
    /// All of it.
    round: Length,
}

impl Walls {
    pub(super) fn of(plan: &Plan) -> Self {
        let (mut walls, mut round) = (Vec::new(), Length::ZERO);
        for side in plan.sides() {
            walls.push([round, side.length]);
            round = round.plus(side.length);
        }
        Self { walls, round }
    }

    /// A place in a wall on the line.
    pub(super) fn on_line(&self, wall: usize, along: Length) -> Length {
        self.walls[wall][0].plus(along)
    }

    /// A place on the line, once round at the most, in its wall.
    pub(super) fn in_wall(&self, at: Length) -> (usize, Length) {
        let at = if at >= self.round { at.minus(self.round) } else { at };
        let wall = self.walls.iter().rposition(|[start, _]| *start <= at).unwrap_or(0);
        (wall, at.minus(self.walls[wall][0]))
    }

    /// How far on from `from` a place is, going round.
    pub(super) fn past(&self, from: Length, at: Length) -> Length {
        if at < from { at.plus(self.round).minus(from) } else { at.minus(from) }
    }

    /// What is unbroken: where it starts, how long it is.
    pub(super) fn spaces(&self, breaks: &[Break]) -> Vec<[Length; 2]> {
        let mut all: Vec<[Length; 2]> = Vec::new();
        for it in breaks.iter().filter(|it| it.kind.breaks()) {
            let [from, to] = self.ends(it);
            let at = all.iter().take_while(|other| other[0] <= from).count();
            all.insert(at, [from, to]);
        }
        let Some(first) = all.first().copied() else { return vec![[Length::ZERO, self.round]] };
        let mut spaces = Vec::new();
        let mut done = first[1];
        for [from, to] in all.into_iter().skip(1) {
            if from > done {
                spaces.push([done, from.minus(done)]);
            }
            done = done.max(to);
        }
        let left = first[0].plus(self.round).minus(done);
        if left > Length::ZERO {
            let start = if done >= self.round { done.minus(self.round) } else { done };
            spaces.push([start, left]);
        }
        spaces
    }

    /// On the line: from, to.
    fn ends(&self, it: &Break) -> [Length; 2] {
        let from = self.on_line(it.wall.wall().unwrap_or(0), it.from.unwrap_or_default());
        [from, from.plus(it.wide.unwrap_or_default())]
    }

    /// Where on the line a box may have its middle, in order: clear of corners and openings, and
    /// beside a stud where it has to be.
    pub(super) fn allowed(&self, input: &Input) -> Vec<[Length; 2]> {
        let half = input.wide_box.part(2);
        let off = input.keep.plus(half);
        let mut closed: Vec<[Length; 2]> = Vec::new();
        for it in &input.breaks {
            let [from, to] = self.ends(it);
            let at = closed.iter().take_while(|other| other[0] <= from).count();
            closed.insert(at, [from, to]);
        }
        let mut open = Vec::new();
        for [start, long] in &self.walls {
            let (mut from, end) = (start.plus(half), start.plus(*long).minus(half));
            // An opening keeps boxes off in its own wall only.
            let here = |it: &&[Length; 2]| it[0] >= *start && it[1] <= start.plus(*long);
            for [low, high] in closed.iter().filter(here) {
                let (low, high) = (low.minus(off), high.plus(off));
                if low >= from && low <= end {
                    open.push([from, low]);
                }
                from = from.max(high);
            }
            if from <= end {
                open.push([from, end]);
            }
        }
        if input.on_studs { self.beside_studs(input, &open) } else { open }
    }

    fn beside_studs(&self, input: &Input, open: &[[Length; 2]]) -> Vec<[Length; 2]> {
        let off = input.thick.part(2).plus(input.wide_box.part(2));
        let mut all: Vec<[Length; 2]> = Vec::new();
        for [start, long] in &self.walls {
            let mut stud = input.first;
            while stud < *long {
                for at in [stud.minus(off), stud.plus(off)] {
                    let at = start.plus(at);
                    let place = all.iter().rev().take_while(|it| it[0] > at).count();
                    // Past the wall's end it would stand at the next wall, beside no stud.
                    let here = *start <= at && at <= start.plus(*long);
                    if here && open.iter().any(|it| it[0] <= at && at <= it[1]) {
                        all.insert(all.len() - place, [at, at]);
                    }
                }
                stud = stud.plus(input.spacing.max(Length::inches(1, 1)));
            }
        }
        all
    }
}
