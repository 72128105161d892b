//! The register in section: both ceilings, its throw now and its throw to be with its drop.

use super::words as w;
use super::{Answer, Input};
use crate::measure::Length;
use crate::say;
use crate::sheet::{Anchor, Drawing, Ink, Line, Point, Surface};
use crate::words::Phrase;

/// The page of a phone 320 px wide, in pixels, and what of it the section takes.
const PAGE: i64 = 288;
const LEFT: i64 = 10;
const LONG: i64 = 264;
const TALL: i64 = 220;

pub(super) fn drawing(input: &Input, answer: &Answer) -> Drawing {
    let [now, to_be] = answer.throws.each_ref().map(|throw| throw.throw());
    let long = now.max(to_be).max(input.way.unwrap_or_default());
    let unit = long.part(LONG).max(input.to_be.part(TALL)).plus(Length::from_nanometres(1));
    let px = |count: i64| unit.times(count);
    let (left, top) = (px(LEFT), px(8));
    let floor = top.plus(input.to_be);
    let right = left.plus(input.way.unwrap_or(long));
    let up = |height: Length| floor.minus(height);
    let mut ink = Vec::new();
    let mut path = |line, points: &[(Length, Length)], surface, means: &'static Phrase| {
        ink.push(Ink::Path {
            line,
            points: points.iter().map(|(x, y)| Point::new(*x, *y)).collect(),
            closed: surface != Surface::Open,
            surface,
            means: Some(means.into()),
        });
    };
    let room = [(right, top), (left, top), (left, floor), (right, floor), (right, top)];
    let room = if input.way.is_some() { &room[..] } else { &room[..4] };
    path(Line::Cut, room, Surface::Open, &w::ROOM);
    path(
        Line::Hidden,
        &[(left, up(input.now)), (right, up(input.now))],
        Surface::Open,
        &w::OLD_CEILING,
    );
    let middle = input.now.minus(input.gap).minus(input.size.sides()[1].part(2));
    let axis = up(middle);
    // Half the spread of 22°, cut to a ninth of its length so that it stays in the room.
    let before = left.plus(now);
    path(
        Line::Hidden,
        &[(left, axis), (before, axis.minus(now.part(9)).max(up(input.now))), (before, axis)],
        Surface::Open,
        &w::JET_NOW,
    );
    let drop = answer.throws[1].bend.map_or(Length::ZERO, |bend| bend.by[1]);
    let low = axis.plus(drop).min(floor);
    let (after, half) = (left.plus(to_be), to_be.part(9));
    let points =
        [(left, axis), (after, low.minus(half).max(top)), (after, low.plus(half).min(floor))];
    path(Line::Seen, &points, Surface::Tone(0), &w::JET_TO_BE);
    let [now, to_be] = answer.throws.each_ref().map(|throw| throw.told());
    for (off, text) in [(14, say!(w::LABEL_NOW, now)), (32, say!(w::LABEL_TO_BE, to_be))] {
        let at = Point::new(left, floor.plus(px(off)));
        ink.push(Ink::Label { at, anchor: Anchor::Start, text });
    }
    Drawing {
        title: (&w::DRAWING).into(),
        width: px(PAGE),
        height: floor.plus(px(42)),
        ink,
        twin: vec![say!(w::TWIN, input.now, input.to_be, now, to_be)],
    }
}
