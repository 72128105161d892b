//! The plan from above: walls, what breaks them, and each receptacle.

use super::words as w;
use super::{Answer, Input};
use crate::measure::Length;
use crate::plan::{Axis, Corner, Heading, Side, Spot};
use crate::say;
use crate::sheet::{Anchor, Clear, Drawing, Ink, Line, PAGE_PX, Point};
use crate::words::{Phrase, Text};

const MARGIN: i64 = 14;
const HIGHEST: i64 = 260;

struct Page {
    clear: Clear,
    origin: Point,
}

pub(super) fn drawing(input: &Input, answer: &Answer) -> Drawing {
    let (low, high) = answer.plan.bounds();
    let (long, wide) = (high.x.minus(low.x), high.y.minus(low.y));
    let unit = long.part(PAGE_PX - 2 * MARGIN).max(wide.part(HIGHEST));
    let unit = unit.plus(Length::from_nanometres(1));
    let tall = wide.nanometres() / unit.nanometres() + 1 + 2 * MARGIN;
    let clear = Clear::new(unit, tall);
    let left = clear.px(PAGE_PX).minus(long).part(2).minus(low.x);
    let origin = Point::new(left, clear.px(MARGIN).minus(low.y));
    let mut page = Page { clear, origin };
    let sides = answer.plan.sides();
    let mut twin = Vec::new();
    for (wall, side) in sides.iter().enumerate() {
        page.wall(input, wall, side);
    }
    for it in &input.breaks {
        let (from, wide) = (it.from.unwrap_or_default(), it.wide.unwrap_or_default());
        let wall = it.wall.wall().map_or(0, |wall| wall as i64 + 1);
        twin.push(say!(w::TWIN_BREAK, it.kind.label(), wall, from, wide));
    }
    for it in &input.have {
        let (wall, at) = (it.wall.wall().unwrap_or(0), it.at.unwrap_or_default());
        page.mark(&sides[wall], at, 3, &w::MEANS_HAVE);
        twin.push(say!(w::TWIN_HAVE, wall as i64 + 1, at));
    }
    for (at, (wall, along)) in answer.spots.iter().enumerate() {
        let number = at as i64 + 1;
        page.mark(&sides[*wall], *along, 4, &w::MEANS_NEW);
        page.label(&sides[*wall], *along, 14, say!(w::NUMBER, number));
        twin.push(say!(w::TWIN, number, *wall as i64 + 1, *along));
    }
    for (wall, side) in sides.iter().enumerate() {
        // Words lie level: beside a plumb wall they take more room.
        let offs = if side.heading.axis() == Axis::Along { [12, 30] } else { [30, 46] };
        let text = say!(w::LABEL_WALL, wall as i64 + 1);
        if !page.label(side, side.length.part(2), offs[0], text.clone()) {
            page.label(side, side.length.part(2), offs[1], text);
        }
    }
    page.clear.done(&w::DRAWING, twin)
}

impl Page {
    fn at(&self, spot: Spot) -> Point {
        Point::new(self.origin.x.plus(spot.x), self.origin.y.plus(spot.y))
    }

    /// A wall, with what is in it as gaps.
    fn wall(&mut self, input: &Input, wall: usize, side: &Side) {
        let mut here: Vec<(Length, Length, Line, &'static Phrase)> = Vec::new();
        for it in input.breaks.iter().filter(|it| it.wall.wall() == Some(wall)) {
            let from = it.from.unwrap_or_default();
            let line = if it.kind.breaks() { Line::Hidden } else { Line::Leader };
            let at = here.iter().take_while(|other| other.0 <= from).count();
            here.insert(at, (from, from.plus(it.wide.unwrap_or_default()), line, it.kind.label()));
        }
        let mut done = Length::ZERO;
        for (from, to, line, means) in here {
            self.stretch(side, Line::Cut, done, from, &w::MEANS_WALL);
            self.stretch(side, line, from.max(done), to, means);
            done = done.max(to);
        }
        self.stretch(side, Line::Cut, done, side.length, &w::MEANS_WALL);
    }

    fn stretch(
        &mut self,
        side: &Side,
        line: Line,
        from: Length,
        to: Length,
        means: &'static Phrase,
    ) {
        if from < to {
            let ends = [from, to].map(|along| self.at(step(side.from, side.heading, along)));
            self.clear.path(line, &ends, false, means);
        }
    }

    /// A square against the wall, inside the room.
    fn mark(&mut self, side: &Side, along: Length, half: i64, means: &'static Phrase) {
        let (half, inward) = (self.clear.px(half), side.heading.past(Corner::Inside));
        let near = step(side.from, side.heading, along.minus(half));
        let far = step(step(near, side.heading, half.times(2)), inward, half.times(2));
        let line = if *means == w::MEANS_NEW { Line::Cut } else { Line::Seen };
        self.clear.rectangle(line, self.at(near), self.at(far), means);
    }

    fn label(&mut self, side: &Side, along: Length, off: i64, text: Text) -> bool {
        let inward = side.heading.past(Corner::Inside);
        let beside = step(side.from, side.heading, along);
        let at = self.at(step(beside, inward, self.clear.px(off)));
        self.clear.put(Ink::Label { at, anchor: Anchor::Middle, text })
    }
}

/// So far on from a place.
fn step(from: Spot, heading: Heading, by: Length) -> Spot {
    match heading {
        Heading::Right => Spot::new(from.x.plus(by), from.y),
        Heading::Down => Spot::new(from.x, from.y.plus(by)),
        Heading::Left => Spot::new(from.x.minus(by), from.y),
        Heading::Up => Spot::new(from.x, from.y.minus(by)),
    }
}
