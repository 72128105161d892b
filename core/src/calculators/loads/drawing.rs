//! The beam with its loads and what its ends carry, to scale.

use super::words as w;
use super::{Answer, Input};
use crate::measure::{Length, Measure};
use crate::say;
use crate::sheet::{Anchor, Drawing, Ink, Line, Point, Surface};
use crate::words::{Phrase, Text};

/// The page of a phone 320 px wide, in pixels; the beam on it; the largest end's arrow.
const PAGE: i64 = 288;
const BEAM: i64 = 232;
const ARROW: f64 = 56.0;

pub(super) fn drawing(input: &Input, answer: &Answer) -> Option<Drawing> {
    let worst = answer.worst()?;
    let unit = input.span.part(BEAM).plus(Length::from_nanometres(1));
    let px = |count: i64| unit.times(count);
    let most = worst.left.max(worst.right).number().max(1e-6);
    // A force as a length, two of the largest end's at the most.
    let long = |force: Measure| px((force.number() / most * ARROW).min(2.0 * ARROW) as i64);
    let points = worst.point.map_or(Length::ZERO, long);
    // Half of the even load is what it brings to an end.
    let even = worst.line.number() * input.span.nanometres() as f64 / 609_600_000.0;
    let even = px((even / most * ARROW).min(ARROW) as i64);

    let left = px((PAGE - BEAM) / 2);
    let right = left.plus(input.span);
    let line = px(40).plus(points.max(even));
    let mut ink = Vec::new();
    let mut path = |line, points: &[(Length, Length)], surface, means: &'static Phrase| {
        let points = points.iter().map(|(x, y)| Point::new(*x, *y)).collect();
        let closed = surface != Surface::Open;
        ink.push(Ink::Path { line, points, closed, surface, means: Some(means.into()) });
    };
    if even > Length::ZERO {
        let top = line.minus(even);
        let block = [(left, top), (right, top), (right, line), (left, line)];
        path(Line::Leader, &block, Surface::Tone(0), &w::EVEN_LOAD);
    }
    path(Line::Cut, &[(left, line), (right, line)], Surface::Open, &w::BEAM_LINE);
    let mut arrow = |x: Length, tail: Length, tip: Length, means| {
        let neck = if tail < tip { tip.minus(px(5)) } else { tip.plus(px(5)) };
        let head = [(x.minus(px(3)), neck), (x, tip), (x.plus(px(3)), neck)];
        path(Line::Seen, &[(x, tail), (x, tip)], Surface::Open, means);
        path(Line::Seen, &head, Surface::Open, means);
    };
    if worst.point.is_some() {
        let x = left.plus(input.point_at());
        arrow(x, line.minus(points.max(px(6))), line, &w::POINT_ARROW);
    }
    let under = line.plus(px(3));
    for (x, force) in [(left, worst.left), (right, worst.right)] {
        arrow(x, under.plus(long(force).max(px(6))), under, &w::END_ARROW);
    }
    let mut label = |x: i64, y: Length, anchor, text: Text| {
        ink.push(Ink::Label { at: Point::new(px(x), y), anchor, text });
    };
    label(PAGE / 2, px(10), Anchor::Middle, say!(w::ROW, worst.line));
    if let Some(point) = worst.point {
        label(PAGE / 2, px(26), Anchor::Middle, say!(w::LABEL_POINT, point, input.point_at()));
    }
    let foot = under.plus(px(66));
    label(8, foot, Anchor::Start, say!(w::ROW, worst.left));
    label(PAGE - 8, foot, Anchor::End, say!(w::ROW, worst.right));
    let dimension = foot.plus(px(32));
    ink.push(Ink::Dimension {
        from: Point::new(left, dimension),
        to: Point::new(right, dimension),
    });

    let mut twin = vec![say!(w::TWIN, input.span, worst.line, worst.of.sum)];
    if let Some(point) = worst.point {
        twin.push(say!(w::TWIN_POINT, point, input.point_at()));
    }
    twin.push(say!(w::TWIN_ENDS, worst.left, worst.right));
    Some(Drawing {
        title: (&w::DRAWING).into(),
        width: px(PAGE),
        height: dimension.plus(px(10)),
        ink,
        twin,
    })
}
