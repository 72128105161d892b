//! Where end joints stand, and where what is cut out or off lies in its board, as tables.

use super::input::{Input, Run, Surface, named};
use super::plans::{Answer, Piece, Plan};
use super::surface::Part as Rectangle;
use super::words as w;
use crate::measure::Length;
use crate::say;
use crate::sheet::{Part, Table, TableRow};
use crate::words::{Phrase, Text};

/// Where end joints stand in a row, from where the boards start.
pub(super) fn joints(plan: &Plan, row: usize) -> impl Iterator<Item = &Piece> {
    plan.jointed().filter(move |it| it.run.row == row)
}

fn heads(all: &[&'static Phrase]) -> Vec<Text> {
    all.iter().map(|it| (*it).into()).collect()
}

/// Row by row: how wide, of which boards, and its end joints.
pub(super) fn rows(input: &Input, answer: &Answer, plan: &Plan) -> Part {
    let mut rows = Vec::new();
    for (at, band) in answer.ground.bands.iter().enumerate() {
        let mut all: Option<Text> = None;
        for piece in joints(plan, at) {
            all = Some(match all {
                Some(others) => say!(w::AND_MORE, others, piece.along[1]),
                None => say!(w::PIECE_LONG, piece.along[1]),
            });
        }
        let joints = all.unwrap_or_else(|| (&w::NO_JOINT).into());
        let cells = vec![say!(w::PIECE_LONG, band.high), named(band.board).into(), joints];
        rows.push(TableRow { name: say!(w::NUMBER, at as i64 + 1), cells });
    }
    let heads = heads(&[&w::HEAD_ROW, &w::HEAD_HIGH, &w::HEAD_BOARD, &w::HEAD_JOINTS]);
    let note = match *input.board.widths() {
        [narrow, wide] => say!(w::ROWS_BOTH, wide, narrow),
        _ => (&w::ROWS_NOTE).into(),
    };
    Part {
        key: "rows",
        title: (&w::ROWS).into(),
        note: Some(note),
        rows: Vec::new(),
        table: Some(Table { heads, rows }),
    }
}

/// What of a hole lies in a piece: along and across, from its left end and its upper edge.
pub(super) fn within(answer: &Answer, piece: &Piece, hole: &Rectangle) -> Option<Rectangle> {
    let [top, bottom] = answer.ground.across(&piece.run, piece.along);
    let cut = |[from, to]: [Length; 2], [low, high]: [Length; 2]| {
        [low.max(from).minus(from), high.min(to).minus(from)]
    };
    let all = [cut(piece.along, hole[0]), cut([top, bottom], hole[1])];
    all.iter().all(|[from, to]| from < to).then_some(all)
}

/// Which corner, edge or end of a rectangle a part of it takes.
pub(super) fn side(of: &Rectangle, part: &Rectangle) -> &'static Phrase {
    let meets = |at: usize| [0, 1].map(|end| of[at][end] == part[at][end]);
    match (meets(0), meets(1)) {
        ([true, _], [true, _]) => &w::UPPER_LEFT,
        ([_, true], [true, _]) => &w::UPPER_RIGHT,
        ([true, _], [_, true]) => &w::LOWER_LEFT,
        ([_, true], [_, true]) => &w::LOWER_RIGHT,
        (_, [true, _]) => &w::UPPER_EDGE,
        (_, [_, true]) => &w::LOWER_EDGE,
        ([true, _], _) => &w::LEFT_END,
        _ => &w::RIGHT_END,
    }
}

/// What of a piece hangs outside the surface: which corner, and where it lies.
pub(super) fn cut_off(answer: &Answer, piece: &Piece) -> Vec<(&'static Phrase, Rectangle)> {
    let all = [piece.along, answer.ground.across(&piece.run, piece.along)];
    answer.ground.outside(all).into_iter().map(|part| (side(&all, &part), part)).collect()
}

/// The drawing shows a board's factory face: a ceiling is drawn from above, which the second way
/// of running boards turns over.
pub(super) fn shows_face(input: &Input) -> bool {
    (input.of == Surface::Wall) == (input.run == Run::Along)
}

/// Each cut-out in its board; none where nothing is cut out or off.
pub(super) fn cut_outs(input: &Input, answer: &Answer, plan: &Plan) -> Option<Part> {
    let mut rows = Vec::new();
    for piece in &plan.pieces {
        let name = say!(w::OF_BOARD, piece.board as i64 + 1, piece.run.row as i64 + 1);
        let holes = answer.ground.holes.iter().map(|hole| (name.clone(), *hole));
        let off = cut_off(answer, piece);
        let off =
            off.into_iter().map(|(side, part)| (say!(w::OFF_BOARD, name.clone(), side), part));
        for (name, part) in holes.chain(off) {
            let Some([along, down]) = within(answer, piece, &part) else { continue };
            let span = |[from, to]: [Length; 2]| say!(w::FROM_TO, from, to);
            rows.push(TableRow { name, cells: vec![span(along), span(down)] });
        }
    }
    let heads = heads(&[&w::PANEL, &w::HEAD_FROM, &w::HEAD_DOWN]);
    let note = if shows_face(input) { &w::CUT_OUTS_NOTE } else { &w::CUT_OUTS_BACK };
    let table = (!rows.is_empty()).then_some(Table { heads, rows })?;
    let title = (&w::CUT_OUTS).into();
    Some(Part {
        key: "cut-outs",
        title,
        note: Some(note.into()),
        rows: Vec::new(),
        table: Some(table),
    })
}
