//! Pieces too narrow or too short to be worth hanging.

use super::plans::{Answer, Piece, Plan};
use super::words as w;
use crate::measure::Length;
use crate::rules::compare::{at_least, is_at_least, settle};
use crate::rules::finish::layout::LEAST_STRIP;
use crate::say;
use crate::sheet::Check;
use crate::words::Text;

/// A piece to hang that is a strip.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Strip {
    /// Its shorter way.
    pub(super) size: Length,
    /// Its row, from 0.
    pub(super) row: usize,
    /// Where it starts, from where the boards start; a narrow row where the row does.
    pub(super) from: Length,
}

/// Strips of a plan, row by row; a narrow row once, of however many pieces it is.
pub(super) fn strips(answer: &Answer, plan: &Plan) -> Vec<Strip> {
    let mut all: Vec<Strip> = Vec::new();
    for run in &answer.ground.runs {
        for piece in plan.pieces.iter().filter(|piece| piece.run == *run) {
            let strip = strip(answer, piece);
            if !is_at_least(strip.size, LEAST_STRIP) && !all.contains(&strip) {
                all.push(strip);
            }
        }
    }
    all
}

fn strip(answer: &Answer, piece: &Piece) -> Strip {
    let [from, to] = piece.along;
    let [top, bottom] = answer.ground.across(&piece.run, piece.along);
    let (long, wide) = (to.minus(from), bottom.minus(top));
    let from = if wide < long { piece.run.along[0] } else { from };
    Strip { size: long.min(wide), row: piece.run.row, from }
}

/// Asks where there is one, and says where.
pub(super) fn check(answer: &Answer, plan: &Plan) -> Option<Check> {
    let strips = strips(answer, plan);
    let least = strips.iter().map(|it| it.size).min()?;
    let check = at_least("strips", (&w::CHECK_STRIP).into(), least, LEAST_STRIP);
    let one = |it: &Strip| say!(w::STRIP, it.size, it.row as i64 + 1, it.from);
    let both = |all: Text, next: Text| say!(w::AND_MORE, all, next);
    let note = strips.iter().map(one).reduce(both).map(|all| say!(w::ASK_STRIP, all));
    Some(Check { note, ..settle(check, &w::CHECK_STRIP) })
}
