//! The lanes of the first coat, to scale: along the longer side, which is drawn level.

use super::words as w;
use super::{Answer, Input};
use crate::measure::Length;
use crate::say;
use crate::sheet::{Anchor, Drawing, Ink, Line, Point, Surface};

/// Lanes past this many run together on a phone.
const MOST_DRAWN: i64 = 60;

pub(super) fn drawing(input: &Input, answer: &Answer) -> Drawing {
    let (short, long) = (input.long.min(input.wide), input.long.max(input.wide));
    let unit = long.part(236).max(Length::from_nanometres(1));
    let px = |count: i64| unit.times(count);
    let (left, top) = (px(40), px(28));
    let bottom = top.plus(short);
    let right = left.plus(long);
    let mut ink = Vec::new();
    let passes = answer.passes[0];
    let step = input.blade.minus(input.overlap);
    for number in 0..passes.min(MOST_DRAWN) {
        let from = top.plus(step.times(number));
        // The last lane is as wide as what is left.
        let to = if number + 1 == passes { bottom } else { from.plus(step) };
        let corners = [(left, from), (right, from), (right, to), (left, to)];
        let points = corners.map(|(x, y)| Point::new(x, y)).to_vec();
        let surface = Surface::Tone(u8::from(number % 2 == 1));
        ink.push(Ink::Path {
            line: Line::Seen,
            points,
            closed: true,
            surface,
            means: Some((&w::LANE).into()),
        });
    }
    let corners = [(left, top), (right, top), (right, bottom), (left, bottom)];
    let points = corners.map(|(x, y)| Point::new(x, y)).to_vec();
    ink.push(Ink::Path {
        line: Line::Cut,
        points,
        closed: true,
        surface: Surface::Open,
        means: Some((&w::SURFACE).into()),
    });
    ink.push(Ink::Dimension { from: Point::new(left, px(22)), to: Point::new(right, px(22)) });
    let mut height = bottom.plus(px(8));
    if short >= px(150) {
        ink.push(Ink::Dimension { from: Point::new(px(34), top), to: Point::new(px(34), bottom) });
    } else {
        // A side too short for its figure is told below.
        let at = Point::new(px(158), bottom.plus(px(12)));
        ink.push(Ink::Label { at, anchor: Anchor::Middle, text: say!(w::ACROSS, short) });
        height = bottom.plus(px(24));
    }
    let mut twin = vec![say!(w::TWIN, passes, long, short)];
    if passes > MOST_DRAWN {
        twin.push(say!(w::TWIN_SOME, MOST_DRAWN));
    }
    Drawing { title: (&w::DRAWING).into(), width: px(288), height, ink, twin }
}
