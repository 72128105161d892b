//! The wall from the side: the door with its undercut, grilles over it, jump ducts over the ceiling,
//! and the air through each.

use super::shown as s;
use super::{Answer, Input, WayKind};
use crate::measure::Length;
use crate::measure::unit::{CFM, PASCAL};
use crate::rules::air::doors;
use crate::rules::air::working::near;
use crate::say;
use crate::sheet::{Anchor, Drawing, Ink, Line, Point, Surface};
use crate::words::{Phrase, Text};

/// An inch a pixel and a half: a page of 288 px, a door of 80 in.
const UNIT: Length = Length::inches(2, 3);
const fn px(count: i64) -> Length {
    UNIT.times(count)
}

/// Where the wall stands, how thick, and the heights, in pixels.
const WALL: [i64; 2] = [140, 147];
const CEILING: i64 = 78;
const HEAD: i64 = 118;
const FLOOR: i64 = 238;

pub(super) fn drawing(input: &Input, answer: &Answer) -> Drawing {
    let mut ink = Vec::new();
    let mut path = |line, places: &[(i64, Length)], closed, surface, means: &'static Phrase| {
        let points = places.iter().map(|(x, y)| Point::new(px(*x), *y)).collect();
        ink.push(Ink::Path { line, points, closed, surface, means: Some(means.into()) });
    };
    let [left, right] = WALL;
    let floor = px(FLOOR);
    let mut boxed = |line, [top, low]: [Length; 2], surface, means| {
        let corners = [(left, top), (right, top), (right, low), (left, low)];
        path(line, &corners, true, surface, means);
    };
    boxed(Line::Cut, [px(CEILING), px(HEAD)], Surface::Tone(0), &s::MEANS_WALL);
    // The gap to scale, so far as a door's leaf is left.
    let low = floor.minus(answer.gap.min(Length::inches(12, 1)));
    boxed(Line::Cut, [px(HEAD), low], Surface::Tone(1), &s::MEANS_DOOR);
    path(Line::Cut, &[(12, floor), (276, floor)], false, Surface::Open, &s::MEANS_WALL);
    path(Line::Cut, &[(12, px(CEILING)), (276, px(CEILING))], false, Surface::Open, &s::MEANS_WALL);
    let mut arrows = Vec::new();
    if answer.undercut > 0.0 {
        arrows.push(floor.minus(px(2)));
    }
    let (mut grilles, mut jumps) = (0, 0);
    for way in &input.ways {
        if way.kind == WayKind::Jump {
            // One over the other.
            let top = 62 - 8 * jumps;
            let up = [(60 - 8 * jumps, px(CEILING)), (60 - 8 * jumps, px(top))];
            let down = [(228 + 8 * jumps, px(top)), (228 + 8 * jumps, px(CEILING))];
            path(Line::Seen, &[up, down].concat(), false, Surface::Open, &s::MEANS_WAY);
            jumps += 1;
        } else {
            arrows.push(px(CEILING + 7 + 9 * grilles));
            grilles += 1;
        }
    }
    // From the room to the house; into a room that is pulled low.
    let [from, to, tip] = if answer.low { [182, 118, 112] } else { [112, 176, 182] };
    for y in arrows {
        let (up, down) = (y.minus(px(3)), y.plus(px(3)));
        path(Line::Seen, &[(from, y), (to, y)], false, Surface::Open, &s::MEANS_WAY);
        let head = [(to, up), (tip, y), (to, down)];
        path(Line::Seen, &head, true, Surface::Tone(1), &s::MEANS_WAY);
    }
    let flow = |cfm: f64| near(&CFM, cfm);
    let under = flow(doors::flow(answer.undercut, answer.at));
    let mut twin = vec![say!(s::TWIN_UNDER, under)];
    let mut lines = vec![say!(s::UNDER, under)];
    for (at, way) in answer.ways.iter().enumerate() {
        let number = at as i64 + 1;
        lines.push(say!(s::OVER, number, flow(way.flow)));
        twin.push(say!(s::TWIN_WAY, number, flow(way.flow)));
    }
    let room = match answer.pressure {
        Some(pascals) => {
            let pascals = near(&PASCAL, pascals);
            twin.insert(0, say!(s::TWIN_ROOM, pascals));
            say!(s::ROOM, pascals)
        }
        None => (&s::SHUT_ROOM).into(),
    };
    let mut label = |x, y, anchor, text: Text| {
        ink.push(Ink::Label { at: Point::new(px(x), px(y)), anchor, text });
    };
    label(12, 10, Anchor::Start, room);
    label(276, 24, Anchor::End, (&s::HOUSE).into());
    let mut y = FLOOR + 18;
    for line in lines {
        label(12, y, Anchor::Start, line);
        y += 16;
    }
    Drawing { title: (&s::DRAWING).into(), width: px(288), height: px(y), ink, twin }
}
