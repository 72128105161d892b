//! The wall from the room: its studs hidden, its openings blank, and what is in it by its number.

use super::sheet::range;
use super::words as w;
use super::{Answer, Input, gap, name};
use crate::calculators::boards::OPENINGS;
use crate::measure::Length;
use crate::say;
use crate::sheet::{Anchor, Clear, Drawing, Ink, Line, PAGE_PX, Point, Surface};
use crate::words::Phrase;

/// Left for words, and what the wall takes upwards at the most, in pixels.
const SIDE: i64 = 26;
const TOP: i64 = 16;
const TALL: i64 = 240;

pub(super) fn drawing(input: &Input, answer: &Answer) -> Drawing {
    let wall = input.wall.unwrap_or_default();
    let unit = wall.part(PAGE_PX - 2 * SIDE).max(input.high.part(TALL));
    let unit = unit.plus(Length::from_nanometres(1));
    let high = input.high.nanometres() / unit.nanometres() + 1;
    let mut page = Clear::new(unit, high + TOP + SIDE);
    let origin = [page.px(SIDE), page.px(TOP).plus(input.high)];
    let at = |x: Length, y: Length| Point::new(origin[0].plus(x), origin[1].minus(y));
    let area = |page: &mut Clear, surface, line, edges: [Length; 4], means: &'static Phrase| {
        let [left, right, low, top] = edges;
        let mut points = vec![at(left, low), at(right, top)];
        let closed = left != right && low != top;
        if closed {
            points = vec![at(left, low), at(right, low), at(right, top), at(left, top)];
        }
        page.ink.push(Ink::Path { line, points, closed, surface, means: Some(means.into()) });
    };
    let half = input.thick.part(2);
    let none = Length::ZERO;
    let measured = !input.studs.is_empty();
    let stud_means = if measured { &w::MEANS_STUD } else { &w::MEANS_ON_SPACING };
    for stud in &answer.studs {
        let edges = [stud.minus(half).max(none), stud.plus(half).min(wall), none, input.high];
        area(&mut page, Surface::Open, Line::Hidden, edges, stud_means);
    }
    area(&mut page, Surface::Open, Line::Cut, [none, wall, none, input.high], &w::WALL);
    for opening in &input.openings {
        area(&mut page, Surface::Blank, Line::Cut, gap(opening), OPENINGS.name);
    }
    for thing in &input.things {
        // A line has no inside.
        let is_area = thing.wide > none && thing.tall > none;
        let hatched = thing.what.holds() && is_area;
        let surface = if hatched { Surface::Hatched } else { Surface::Open };
        // What a screw must not meet is the strongest.
        let line = if thing.what.is_run() { Line::Cut } else { Line::Seen };
        area(&mut page, surface, line, thing.edges(), thing.what.label());
    }
    if let (true, Some(low), Some(left)) = (input.hang, input.at_low, input.at_left) {
        let (right, tick) = (left.plus(input.across), page.px(4));
        let edges = [left, right, low.minus(tick), low.plus(tick)];
        area(&mut page, Surface::Open, Line::Leader, edges, &w::ALONG);
    }
    let mut twin = vec![say!(w::OF, &w::WALL, wall)];
    for number in &answer.order {
        let thing = &input.things[*number];
        let [left, right, low, top] = thing.edges();
        let middle = at(left.plus(right).part(2), low.plus(top).part(2));
        let (off, up) = (page.px(4), page.px(9));
        let places = [
            (at(right, none).x.plus(off), middle.y, Anchor::Start),
            (at(left, none).x.minus(off), middle.y, Anchor::End),
            (middle.x, at(none, top).y.minus(up), Anchor::Middle),
            (middle.x, at(none, low).y.plus(up), Anchor::Middle),
            (middle.x, middle.y, Anchor::Middle),
        ];
        for (x, y, anchor) in places {
            let text = say!(w::ONE, *number as i64 + 1);
            if page.put(Ink::Label { at: Point::new(x, y), anchor, text }) {
                break;
            }
        }
        twin.push(say!(w::TWIN, name(*number, thing), range(left, right), range(low, top)));
    }
    let (under, beside) = (page.px(20), page.px(6));
    let corner = at(none, none);
    let low = corner.y.plus(under);
    page.put(Ink::Dimension {
        from: Point::new(corner.x, low),
        to: Point::new(at(wall, none).x, low),
    });
    let left = corner.x.minus(beside);
    page.put(Ink::Dimension {
        from: Point::new(left, corner.y),
        to: Point::new(left, at(none, input.high).y),
    });
    page.done(&w::DRAWING, twin)
}
