//! The plan from above, to scale: each wall with its length, outside walls heavier, openings as
//! gaps, and which way the joists run. What finds no clear place on a narrow phone is left to the
//! words beside the drawing.

use super::outline::open_in;
use super::shown as s;
use super::{Answer, Input, OpeningKind};
use crate::measure::{Area, Length, Rounding, Units};
use crate::plan::{Axis, Corner, Heading, Side, Spot};
use crate::say;
use crate::sheet::{Anchor, Drawing, Ink, Line, Point, Surface, distance};
use crate::words::{Phrase, Text};

/// The page of a phone 320 px wide, in pixels.
const PAGE: i64 = 288;
/// Round the plan, for the lengths of its walls.
const MARGIN: i64 = 28;
/// The plan is no higher than this, so that it stays on one screen.
const HIGHEST: i64 = 280;
/// A character's width and a line's height in tenths of a pixel, cautiously.
const CHARACTER: i64 = 74;
const LINE: i64 = 130;

/// Left, top, right, bottom, in tenths of a pixel.
type Box = [i64; 4];

/// The page as it fills.
struct Page {
    /// One pixel.
    unit: Length,
    origin: Point,
    high: i64,
    walls: Vec<Box>,
    taken: Vec<Box>,
    ink: Vec<Ink>,
}

pub(super) fn drawing(input: &Input, answer: &Answer) -> Drawing {
    let (low, high) = answer.plan.bounds();
    let (long, wide) = (high.x.minus(low.x), high.y.minus(low.y));
    let unit = long.part(PAGE - 2 * MARGIN).max(wide.part(HIGHEST));
    // A pixel up, so that the plan keeps inside what `part` rounds down.
    let unit = unit.plus(Length::from_nanometres(1));
    let left = unit.times(PAGE).minus(long).part(2).minus(low.x);
    let origin = Point::new(left, unit.times(MARGIN).minus(low.y));
    let height = wide.plus(unit.times(2 * MARGIN));
    let mut page = Page {
        unit,
        origin,
        high: height.nanometres().saturating_mul(10) / unit.nanometres().max(1),
        walls: Vec::new(),
        taken: Vec::new(),
        ink: Vec::new(),
    };
    page.floor(answer);
    for (at, side) in answer.plan.sides().iter().enumerate() {
        page.wall(input, at, side, answer.outside.get(at) == Some(&true));
    }
    for side in answer.plan.sides() {
        page.length(side);
    }
    for (at, side) in answer.plan.sides().iter().enumerate() {
        page.number(at, side);
    }
    page.joists(input, answer);
    Drawing {
        title: (&s::DRAWING).into(),
        width: unit.times(PAGE),
        height,
        ink: page.ink,
        twin: twin(input, answer, long, wide),
    }
}

impl Page {
    fn px(&self, count: i64) -> Length {
        self.unit.times(count)
    }

    fn at(&self, spot: Spot) -> Point {
        Point::new(self.origin.x.plus(spot.x), self.origin.y.plus(spot.y))
    }

    fn tenths(&self, length: Length) -> i64 {
        length.nanometres().saturating_mul(10) / self.unit.nanometres().max(1)
    }

    fn path(&mut self, line: Line, points: &[Point], closed: bool, means: &'static Phrase) {
        self.ink.push(Ink::Path {
            line,
            points: points.to_vec(),
            closed,
            surface: if closed { Surface::Tone(0) } else { Surface::Open },
            means: Some(means.into()),
        });
    }

    fn floor(&mut self, answer: &Answer) {
        let corners = answer.plan.sides().iter().map(|side| self.at(side.from));
        let corners: Vec<Point> = corners.collect();
        self.path(Line::Leader, &corners, true, &s::DRAWING_FLOOR);
        for side in answer.plan.sides() {
            let (from, to) = (self.at(side.from), self.at(side.to));
            let x = (self.tenths(from.x.min(to.x)), self.tenths(from.x.max(to.x)));
            let y = (self.tenths(from.y.min(to.y)), self.tenths(from.y.max(to.y)));
            self.walls.push([x.0 - 10, y.0 - 10, x.1 + 10, y.1 + 10]);
        }
    }

    /// A wall, with its openings evenly along it as far as they fit.
    fn wall(&mut self, input: &Input, at: usize, side: &Side, outside: bool) {
        let line = if outside { Line::Cut } else { Line::Seen };
        let here = input.openings.iter().filter(|it| it.wall.wall() == Some(at));
        let mut gaps: Vec<(OpeningKind, Length)> = Vec::new();
        if open_in(input, at) <= side.length {
            for it in here {
                let width = it.width.unwrap_or_default();
                gaps.extend((0..it.count).map(|_| (it.kind, width)));
            }
        }
        let open = gaps.iter().fold(Length::ZERO, |sum, (_, width)| sum.plus(*width));
        let between = side.length.minus(open).part(gaps.len() as i64 + 1);
        let mut done = Length::ZERO;
        for (kind, width) in gaps {
            let (from, to) = (done.plus(between), done.plus(between).plus(width));
            self.stretch(line, side, done, from, &s::DRAWING_WALL);
            let line = if kind == OpeningKind::Window { Line::Leader } else { Line::Hidden };
            self.stretch(line, side, from, to, kind.label());
            done = to;
        }
        self.stretch(line, side, done, side.length, &s::DRAWING_WALL);
    }

    fn stretch(
        &mut self,
        line: Line,
        side: &Side,
        from: Length,
        to: Length,
        means: &'static Phrase,
    ) {
        let points = [from, to].map(|along| self.at(step(side.from, side.heading, along)));
        self.path(line, &points, false, means);
    }

    /// A wall's length beside it: outside the room if there is a clear place, else inside.
    fn length(&mut self, side: &Side) {
        let (from, to) = (self.at(side.from), self.at(side.to));
        // The figure stands above a level line and left of a plumb one, whichever side it is on.
        let [near, far] = match side.heading {
            Heading::Right | Heading::Up => [-10, 24],
            Heading::Left | Heading::Down => [24, -10],
        };
        for off in [near, far] {
            let off = self.px(off);
            let (from, to) = match side.heading.axis() {
                Axis::Along => {
                    (Point::new(from.x, from.y.plus(off)), Point::new(to.x, to.y.plus(off)))
                }
                Axis::Across => {
                    (Point::new(from.x.plus(off), from.y), Point::new(to.x.plus(off), to.y))
                }
            };
            let length = distance(from, to);
            let texts = [Units::Customary, Units::Metric]
                .map(|units| length.show(units, Rounding::Nearest).text().chars().count());
            let half = texts[0].max(texts[1]) as i64 * CHARACTER / 2;
            let (x, y) =
                (self.tenths(from.x.plus(to.x).part(2)), self.tenths(from.y.plus(to.y).part(2)));
            let place = match side.heading.axis() {
                Axis::Along => [x - half, y - 160, x + half, y - 20],
                Axis::Across => [x - 160, y - half, x - 20, y + half],
            };
            if self.take(place) {
                self.ink.push(Ink::Dimension { from, to });
                return;
            }
        }
    }

    /// A wall's number, inside the room.
    fn number(&mut self, at: usize, side: &Side) {
        let inward = side.heading.past(Corner::Inside);
        // By its middle, else nearer an end, else past a length that stands inside.
        for (eighths, off) in [(4, 11), (2, 11), (6, 11), (1, 11), (7, 11), (4, 36)] {
            let beside = step(side.from, side.heading, side.length.times(eighths).part(8));
            let place = self.at(step(beside, inward, self.px(off)));
            if self.label(place, say!(s::NUMBER, at as i64 + 1), 2) {
                return;
            }
        }
    }

    /// An arrow both ways in the largest rectangle of floor, and how far apart they are.
    fn joists(&mut self, input: &Input, answer: &Answer) {
        let Some(axis) = input.framing.runs.axis() else { return };
        let mut largest = (Area::ZERO, Spot::default(), Length::ZERO, Length::ZERO);
        for part in answer.plan.rectangles(Axis::Along) {
            let (long, wide) = part.sizes();
            let area = Area::of(long, wide);
            if area > largest.0 {
                largest = (area, part.low, long, wide);
            }
        }
        let (_, low, long, wide) = largest;
        let middle = Spot::new(low.x.plus(long.part(2)), low.y.plus(wide.part(2)));
        let (reach, on, back) = match axis {
            Axis::Along => (long, Heading::Right, Heading::Left),
            Axis::Across => (wide, Heading::Down, Heading::Up),
        };
        let half = reach.part(4);
        let head = self.px(5).min(half);
        for way in [on, back] {
            let tip = step(middle, way, half);
            let neck = step(tip, if way == on { back } else { on }, head);
            let side = way.past(Corner::Inside);
            let other = way.past(Corner::Outside);
            let points = [middle, tip, step(neck, side, head), tip, step(neck, other, head)];
            let points = points.map(|spot| self.at(spot));
            self.path(Line::Leader, &points, false, &s::JOIST_WAY);
        }
        let text = say!(s::JOISTS, input.framing.spacing.length());
        // In either unit: `joists ≈ 19-3/16 in`, `joists ≈ 487.7 mm`.
        let characters = 20;
        // Beside a level arrow, past the end of a plumb one.
        let off = match axis {
            Axis::Along => self.px(12),
            Axis::Across => half.plus(self.px(11)),
        };
        for way in [Heading::Down, Heading::Up] {
            if self.label(self.at(step(middle, way, off)), text.clone(), characters) {
                return;
            }
        }
    }

    /// Puts a label of so many characters at the most round a place, if it is clear there.
    fn label(&mut self, at: Point, text: Text, characters: i64) -> bool {
        let (x, y, wide) = (self.tenths(at.x), self.tenths(at.y), characters * CHARACTER);
        let clear = self.take([x - wide / 2, y - LINE / 2 - 5, x + wide / 2, y + LINE / 2 + 5]);
        if clear {
            self.ink.push(Ink::Label { at, anchor: Anchor::Middle, text });
        }
        clear
    }

    /// Takes a place if it is on the page and clear of walls and words.
    fn take(&mut self, place: Box) -> bool {
        let [left, top, right, bottom] = place;
        let apart = |other: &Box| {
            right <= other[0] || other[2] <= left || bottom <= other[1] || other[3] <= top
        };
        let clear = left >= 0
            && top >= 0
            && right <= PAGE * 10
            && bottom <= self.high
            && self.walls.iter().all(apart)
            && self.taken.iter().all(apart);
        if clear {
            self.taken.push(place);
        }
        clear
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

fn twin(input: &Input, answer: &Answer, long: Length, wide: Length) -> Vec<Text> {
    let sides = answer.plan.sides();
    let mut all = vec![say!(s::TWIN_SIZE, sides.len() as i64, long, wide)];
    for (at, side) in sides.iter().enumerate() {
        let number = at as i64 + 1;
        all.push(match side.end {
            Corner::Inside => say!(s::TWIN_WALL, number, side.length),
            Corner::Outside => say!(s::TWIN_WALL_OUT, number, side.length),
        });
        if answer.outside.get(at) == Some(&true) {
            all.push(say!(s::TWIN_OUTSIDE, number));
        }
    }
    for it in &input.openings {
        let (wide, high) = (it.width.unwrap_or_default(), it.height.unwrap_or_default());
        let drawn = it.wall.wall().filter(|wall| {
            sides.get(*wall).is_some_and(|side| open_in(input, *wall) <= side.length)
        });
        all.push(match drawn {
            Some(wall) => {
                say!(s::TWIN_OPENING, wall as i64 + 1, it.count, it.kind.label(), wide, high)
            }
            None => say!(s::TWIN_LOOSE, it.count, it.kind.label(), wide, high),
        });
    }
    let apart = input.framing.spacing.length();
    match input.framing.runs.axis() {
        Some(Axis::Along) => all.push(say!(s::TWIN_ALONG, apart)),
        Some(Axis::Across) => all.push(say!(s::TWIN_ACROSS, apart)),
        None => {}
    }
    all
}
