//! The plan with every place's jet, and under it a section along the first place's. What finds no
//! clear place on a narrow phone is left to the words beside the drawing.

use super::input::{Aim, Input, Place, Spot};
use super::place::{chord, on_plan, others, spread};
use super::words as w;
use super::{Answer, Worked};
use crate::measure::Length;
use crate::plan::{Axis, Plan};
use crate::say;
use crate::sheet::{Anchor, Drawing, Ink, Line, Point, Surface};
use crate::words::{Phrase, Text};

/// The page of a phone 320 px wide, in pixels, and what of it the room takes.
const PAGE: i64 = 288;
const LEFT: i64 = 12;
const LONG: i64 = 264;
const TALL: i64 = 200;
const TOP: i64 = 10;

struct Page {
    unit: Length,
    /// Where the plan, or the section, starts.
    origin: [Length; 2],
    /// How large it is.
    size: [Length; 2],
    /// Where letters stand, and marks.
    taken: Vec<[Length; 2]>,
    marks: Vec<[Length; 2]>,
    ink: Vec<Ink>,
}

pub(super) fn drawing(input: &Input, answer: &Answer) -> Drawing {
    let (low, high) = answer.plan.bounds();
    let (long, wide) = (high.x.minus(low.x), high.y.minus(low.y));
    let longest = long.max(wide);
    let unit = longest.part(LONG).max(input.high.part(TALL)).plus(Length::from_nanometres(1));
    let mut page = Page {
        unit,
        origin: [unit.times(LEFT), unit.times(TOP)],
        size: [long, wide],
        taken: Vec::new(),
        marks: Vec::new(),
        ink: Vec::new(),
    };
    let mut twin = Vec::new();
    let corners = answer.plan.sides().iter();
    let corners: Vec<_> =
        corners.map(|side| [side.from.x.minus(low.x), side.from.y.minus(low.y)]).collect();
    page.path(Line::Cut, &corners, Surface::Open, &w::MEANS_ROOM);
    for (spot, worked) in input.spots.iter().zip(&answer.spots) {
        page.jet(&answer.plan, spot, worked);
    }
    let mut marks: Vec<([Length; 2], Text)> = Vec::new();
    for (at, worked) in answer.spots.iter().enumerate() {
        let number = at as i64 + 1;
        page.mark(worked.at, &w::MEANS_REGISTER);
        marks.push((worked.at, say!(w::NUMBER, number)));
        twin.push(say!(w::TWIN, number, worked.throw.told(), worked.way));
    }
    for (at, name, letter) in others(input) {
        if let Some(place) = at.at() {
            page.mark(place, &w::MEANS_OTHER);
            marks.push((place, letter.into()));
            twin.push(say!(w::TWIN_OTHER, letter, name));
        }
    }
    for (place, text) in marks {
        page.letter(place, text);
    }
    let plan_end = page.origin[1].plus(wide);
    page.key(plan_end, (&w::KEY_PLAN).into());

    let (at, first) = answer.first();
    let spot = &input.spots[at];
    let across = if spot.place.is_aimed() { first.along } else { long };
    page.origin[1] = plan_end.plus(unit.times(34));
    page.size = [across, input.high];
    page.room();
    page.section(input, spot, first);
    let end = page.origin[1].plus(input.high);
    page.key(end, say!(w::KEY_SECTION, at as i64 + 1));
    Drawing {
        title: (&w::DRAWING).into(),
        width: unit.times(PAGE),
        height: end.plus(unit.times(26)),
        ink: page.ink,
        twin,
    }
}

impl Page {
    /// A place, kept within the walls.
    fn point(&self, [x, y]: [Length; 2]) -> Point {
        let [long, wide] = self.size;
        let x = x.max(Length::ZERO).min(long);
        let y = y.max(Length::ZERO).min(wide);
        Point::new(self.origin[0].plus(x), self.origin[1].plus(y))
    }

    fn path(
        &mut self,
        line: Line,
        places: &[[Length; 2]],
        surface: Surface,
        means: &'static Phrase,
    ) {
        let points = places.iter().map(|place| self.point(*place)).collect();
        self.ink.push(Ink::Path { line, points, closed: true, surface, means: Some(means.into()) });
    }

    fn room(&mut self) {
        let ([long, wide], none) = (self.size, Length::ZERO);
        let corners = [[none, none], [long, none], [long, wide], [none, wide]];
        self.path(Line::Cut, &corners, Surface::Open, &w::MEANS_ROOM);
    }

    fn jet(&mut self, plan: &Plan, spot: &Spot, worked: &Worked) {
        let ([x, y], reach) = (worked.at, worked.throw.throw().min(worked.way));
        let half = scaled(reach, spread());
        let (far, near) = (reach, Length::ZERO.minus(reach));
        let (up, down) = (Length::ZERO.minus(half), half);
        let ends = match (spot.place, spot.aim) {
            (Place::Floor, _) => return,
            (Place::Round, _) => {
                let corner = scaled(reach, std::f64::consts::FRAC_1_SQRT_2);
                let back = Length::ZERO.minus(corner);
                let none = Length::ZERO;
                let around = [
                    [far, none],
                    [corner, corner],
                    [none, far],
                    [back, corner],
                    [near, none],
                    [back, back],
                    [none, near],
                    [corner, back],
                ];
                let around = around.map(|[a, b]| [x.plus(a), y.plus(b)]);
                self.path(Line::Seen, &around, Surface::Tone(0), &w::MEANS_JET);
                return;
            }
            (_, Aim::Up) => [[up, near], [down, near]],
            (_, Aim::Right) => [[far, up], [far, down]],
            (_, Aim::Down) => [[up, far], [down, far]],
            (_, Aim::Left) => [[near, up], [near, down]],
        };
        // Where it ends it is no wider than the room.
        let middle = |one: Length, other: Length| one.plus(other).part(2);
        let off = [middle(ends[0][0], ends[1][0]), middle(ends[0][1], ends[1][1])];
        let far = on_plan(plan, [x.plus(off[0]), y.plus(off[1])]);
        let across = if off[0] == Length::ZERO { Axis::Along } else { Axis::Across };
        let (least, most) = chord(plan, across, far);
        let (low, _) = plan.bounds();
        let within = |at: Length, low: Length| at.max(least.minus(low)).min(most.minus(low));
        let ends = ends.map(|[a, b]| match across {
            Axis::Along => [within(x.plus(a), low.x), y.plus(b)],
            Axis::Across => [x.plus(a), within(y.plus(b), low.y)],
        });
        self.path(Line::Seen, &[[x, y], ends[0], ends[1]], Surface::Tone(0), &w::MEANS_JET);
    }

    /// A small square.
    fn mark(&mut self, [x, y]: [Length; 2], means: &'static Phrase) {
        let off = self.unit.times(3);
        let (left, right, above, below) = (x.minus(off), x.plus(off), y.minus(off), y.plus(off));
        let corners = [[left, above], [right, above], [right, below], [left, below]];
        self.path(Line::Cut, &corners, Surface::Tone(1), means);
        let Point { x, y } = self.point([x, y]);
        self.marks.push([x, y]);
    }

    /// A mark's letter, where that is clear.
    fn letter(&mut self, place: [Length; 2], text: Text) {
        let Point { x, y } = self.point(place);
        let tries =
            [(0, 13), (0, -13), (12, 0), (-12, 0), (12, 13), (-12, 13), (12, -13), (-12, -13)];
        for (a, b) in tries {
            let at = Point::new(x.plus(self.unit.times(a)), y.plus(self.unit.times(b)));
            if self.is_clear(at) {
                self.taken.push([at.x, at.y]);
                self.ink.push(Ink::Label { at, anchor: Anchor::Middle, text });
                return;
            }
        }
    }

    /// Within the room, and off every other letter, of 8 by 14 px each, and every mark.
    fn is_clear(&self, at: Point) -> bool {
        let ([left, top], [long, wide]) = (self.origin, self.size);
        let (half, tall) = (self.unit.times(6), self.unit.times(9));
        let inside = at.x >= left.plus(half)
            && at.x <= left.plus(long).minus(half)
            && at.y >= top.plus(tall)
            && at.y <= top.plus(wide).minus(tall);
        let off = |places: &[[Length; 2]], wide: i64, high: i64| {
            let (wide, high) = (self.unit.times(wide), self.unit.times(high));
            let far = |a: Length, b: Length| a.max(b).minus(a.min(b));
            places.iter().all(|[x, y]| far(at.x, *x) >= wide || far(at.y, *y) >= high)
        };
        inside && off(&self.taken, 12, 18) && off(&self.marks, 9, 11)
    }

    /// A line of words under the plan or the section.
    fn key(&mut self, end: Length, text: Text) {
        let at = Point::new(self.origin[0], end.plus(self.unit.times(14)));
        self.ink.push(Ink::Label { at, anchor: Anchor::Start, text });
    }

    /// The jet as it is seen from the side, from left to right.
    fn section(&mut self, input: &Input, spot: &Spot, worked: &Worked) {
        let [across, high] = self.size;
        let reach = worked.throw.throw();
        let none = Length::ZERO;
        let half = |length: Length| scaled(length, spread());
        let places = match spot.place {
            Place::Floor => {
                let (x, far) = (worked.at[0], reach.min(high));
                let top = high.minus(far);
                [[x, high], [x.minus(half(far)), top], [x.plus(half(far)), top]]
            }
            Place::Round => {
                let (x, far) = (worked.at[0], reach.min(worked.way));
                [[x, self.unit.times(12)], [x.minus(far), none], [x.plus(far), none]]
            }
            _ => {
                let x = across.minus(worked.way);
                let far = reach.min(worked.way);
                let gap = if spot.place == Place::Slot {
                    none
                } else {
                    input.gap.plus(input.size.sides()[1].part(2))
                };
                let drop = worked.throw.bend.map_or(none, |bend| bend.by[1]);
                let axis = gap.plus(drop);
                let end = x.plus(far);
                [[x, gap], [end, axis.minus(half(far))], [end, axis.plus(half(far))]]
            }
        };
        self.path(Line::Seen, &places, Surface::Tone(0), &w::MEANS_JET);
    }
}

/// So much of a length, where only ink is concerned.
fn scaled(length: Length, by: f64) -> Length {
    Length::from_nanometres((length.nanometres() as f64 * by) as i64)
}
