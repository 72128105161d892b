//! The surface with every piece in its place and its board's number in it, boards from left to
//! right. Numbers that find no room are told by the cut list.

use super::input::{Input, Surface};
use super::plans::{Answer, Plan};
use super::surface::Part;
use super::words as w;
use crate::measure::{Length, Rounding, Units};
use crate::say;
use crate::sheet::{Anchor, Drawing, Ink, Line, Point, Surface as Fill};
use crate::words::{Phrase, Text};

/// The page of a phone 320 px wide, and what of it the surface takes.
const PAGE: i64 = 288;
const LEFT: i64 = 30;
const LONG: i64 = 250;
const TALL: i64 = 300;
const TOP: i64 = 26;
/// A figure along a side takes so much at most.
const LEAST_PLUMB: i64 = 140;
/// A number of two figures takes so much, and with a piece's length under it.
const NUMBER: [i64; 2] = [20, 15];
const LONG_LABEL: i64 = 36;

/// How wide a length is written, at most: in inches, or in millimeters.
fn wide_as(long: Length) -> i64 {
    let shown = long.show(Units::Customary, Rounding::Nearest);
    let signs = shown.figure.chars().count() + shown.unit.len() + if shown.rounded { 4 } else { 2 };
    (signs as i64 * 15 / 2).max(90)
}

pub(super) fn drawing(input: &Input, answer: &Answer, plan: &Plan) -> Drawing {
    let far = |at: usize| answer.ground.outline.iter().map(|it| it[at]).max().unwrap_or_default();
    let (long, deep) = (far(0), far(1));
    let unit = long.part(LONG).max(deep.part(TALL)).max(Length::from_nanometres(1));
    let px = |count: i64| unit.times(count);
    // In the middle, so that a narrow one has room for its figure.
    let left = px(LEFT).plus(px(LONG).minus(long).part(2));
    let place = |[x, y]: [Length; 2]| Point::new(left.plus(x), px(TOP).plus(y));
    let corners = |[along, across]: &Part| {
        let [left, right] = *along;
        let [top, bottom] = *across;
        [[left, top], [right, top], [right, bottom], [left, bottom]].map(place).to_vec()
    };
    let mut ink = Vec::new();
    let mut path = |line, points, closed, surface, means: &'static Phrase| {
        ink.push(Ink::Path { line, points, closed, surface, means: Some(means.into()) });
    };
    for (number, piece) in plan.pieces.iter().enumerate() {
        let means = if piece.lane > 0 { &w::MEANS_STRIP } else { &w::MEANS_PIECE };
        let tone = Fill::Tone((number % 2) as u8);
        let across = answer.ground.across(&piece.run, piece.along);
        path(Line::Seen, corners(&[piece.along, across]), true, tone, means);
    }
    for at in &answer.ground.stops {
        for [along, [top, bottom]] in &answer.ground.parts {
            if along[0] < *at && *at < along[1] {
                let line = [[*at, *top], [*at, *bottom]].map(place).to_vec();
                path(Line::Hidden, line, false, Fill::Open, &w::MEANS_FRAMING);
            }
        }
    }
    for hole in &answer.ground.holes {
        path(Line::Cut, corners(hole), true, Fill::Open, &w::MEANS_HOLE);
    }
    let edge = answer.ground.outline.iter().map(|it| place(*it)).collect();
    path(Line::Cut, edge, true, Fill::Open, &w::MEANS_EDGE);
    for piece in &plan.pieces {
        let [from, to] = piece.along;
        let [top, bottom] = answer.ground.across(&piece.run, piece.along);
        let number = piece.board as i64 + 1;
        let [wide, high] = NUMBER.map(px);
        if to.minus(from) >= wide && bottom.minus(top) >= high {
            // Clear of the framing's line.
            let mut middle = from.plus(to).part(2);
            let near = |at: &&Length| at.minus(middle).nanometres().abs() < px(9).nanometres();
            if let Some(at) = answer.ground.stops.iter().find(near) {
                let sides = [at.plus(px(10)), at.minus(px(10))];
                let fits = |at: &&Length| at.minus(px(9)) > from && at.plus(px(9)) < to;
                middle = sides.iter().find(fits).copied().unwrap_or(middle);
            }
            let level = top.plus(bottom).part(2);
            let long = to.minus(from);
            let room = long >= px(wide_as(long)) && bottom.minus(top) >= px(LONG_LABEL);
            let mut label = |at: Length, off: i64, text: Text| {
                let at = place([at, level.plus(px(off))]);
                ink.push(Ink::Label { at, anchor: Anchor::Middle, text });
            };
            label(middle, if room { -9 } else { 0 }, say!(w::NUMBER, number));
            if room {
                label(from.plus(to).part(2), 9, say!(w::PIECE_LONG, long));
            }
        }
    }
    let level = px(TOP - 6);
    ink.push(Ink::Dimension {
        from: Point::new(left, level),
        to: Point::new(left.plus(long), level),
    });
    let plumb = left.minus(px(6));
    if deep >= px(LEAST_PLUMB) {
        ink.push(Ink::Dimension {
            from: Point::new(plumb, px(TOP)),
            to: Point::new(plumb, px(TOP).plus(deep)),
        });
    }
    let rows = plan.pieces.iter().map(|it| it.run.row + 1).max().unwrap_or(0) as i64;
    let seen = if input.of == Surface::Wall { &w::TWIN_WALL } else { &w::TWIN_CEILING };
    let mut twin: Vec<Text> =
        vec![say!(w::TWIN, plan.count(), rows), say!(w::TWIN_SIZE, long, deep), seen.into()];
    for piece in &plan.pieces {
        if piece.along[1] < piece.run.along[1] {
            twin.push(say!(w::TWIN_JOINT, piece.run.row as i64 + 1, piece.along[1]));
        }
    }
    for [along, across] in &answer.ground.holes {
        let [[left, right], [top, bottom]] = [*along, *across];
        twin.push(say!(w::TWIN_HOLE, left, right, top, bottom));
    }
    let height = px(TOP + 8).plus(deep);
    Drawing { title: (&w::DRAWING).into(), width: px(PAGE), height, ink, twin }
}
