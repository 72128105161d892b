//! The surface with every piece in its place and its board's number in it, boards from left to
//! right; how far end joints stand from the wall, and cut-outs from their piece's end. What finds no
//! room is told by the tables and the cut list.

use super::input::{Input, Surface, Wide};
use super::places::{cut_off, shows_face, side, within};
use super::plans::{Answer, Piece, Plan};
use super::surface::Part;
use super::words as w;
use crate::measure::{Length, Rounding, Units, divide};
use crate::say;
use crate::sheet::{Anchor, Clear, Drawing, Ink, Line, Point, Surface as Fill};
use crate::words::{Phrase, Text};

/// What the surface takes of the page of a narrow phone.
const LEFT: i64 = 30;
const LONG: i64 = 250;
const TALL: i64 = 300;
const TOP: i64 = 26;
/// A number of two figures takes so much.
const NUMBER: [i64; 2] = [20, 15];
/// A label's middle stands so far off an edge that it goes along.
const OFF_EDGE: i64 = 8;

/// How wide a length is written, at most: in inches, or in millimeters.
fn wide_as(long: Length) -> i64 {
    let shown = long.show(Units::Customary, Rounding::Nearest);
    let signs = shown.figure.chars().count() + shown.unit.len() + if shown.rounded { 4 } else { 2 };
    (signs as i64 * 15 / 2).max(90)
}

/// What is drawn, on its way to a page.
struct Sketch<'a> {
    answer: &'a Answer,
    plan: &'a Plan,
    page: Clear,
    left: Length,
}

pub(super) fn drawing(input: &Input, answer: &Answer, plan: &Plan) -> Drawing {
    let far = |at: usize| answer.ground.outline.iter().map(|it| it[at]).max().unwrap_or_default();
    let (long, deep) = (far(0), far(1));
    let unit = long.part(LONG).max(deep.part(TALL)).max(Length::from_nanometres(1));
    let high =
        TOP + 8 + divide(deep.nanometres().into(), unit.nanometres().into(), Rounding::Up) as i64;
    let page = Clear::new(unit, high);
    // In the middle, so that a narrow one has room for its figure.
    let left = page.px(LEFT).plus(page.px(LONG).minus(long).part(2));
    let mut sketch = Sketch { answer, plan, page, left };
    sketch.shapes();
    sketch.sides(long, deep);
    for piece in &plan.pieces {
        sketch.number(piece);
    }
    for piece in &plan.pieces {
        sketch.joint(piece);
        sketch.cut_out(piece);
    }
    for piece in &plan.pieces {
        sketch.long(piece);
    }
    sketch.page.done(&w::DRAWING, twin(input, answer, plan, [long, deep]))
}

impl Sketch<'_> {
    fn px(&self, count: i64) -> Length {
        self.page.px(count)
    }

    fn place(&self, [x, y]: [Length; 2]) -> Point {
        Point::new(self.left.plus(x), self.px(TOP).plus(y))
    }

    fn path(&mut self, line: Line, corners: &[[Length; 2]], surface: Fill, means: &'static Phrase) {
        let points: Vec<Point> = corners.iter().map(|it| self.place(*it)).collect();
        let (closed, means) = (points.len() > 2, Some(means.into()));
        self.page.ink.push(Ink::Path { line, points, closed, surface, means });
    }

    fn shapes(&mut self) {
        let corners = |[[left, right], [top, bottom]]: Part| {
            [[left, top], [right, top], [right, bottom], [left, bottom]]
        };
        let (answer, plan) = (self.answer, self.plan);
        for (number, piece) in plan.pieces.iter().enumerate() {
            let means = if piece.lane > 0 { &w::MEANS_STRIP } else { &w::MEANS_PIECE };
            let tone = Fill::Tone((number % 2) as u8);
            let across = answer.ground.across(&piece.run, piece.along);
            self.path(Line::Seen, &corners([piece.along, across]), tone, means);
        }
        for (_, part) in plan.pieces.iter().flat_map(|piece| cut_off(answer, piece)) {
            self.path(Line::Seen, &corners(part), Fill::Open, &w::MEANS_OFF);
        }
        for at in &answer.ground.stops {
            for [along, [top, bottom]] in &answer.ground.parts {
                if along[0] < *at && *at < along[1] {
                    let line = [[*at, *top], [*at, *bottom]];
                    self.path(Line::Hidden, &line, Fill::Open, &w::MEANS_FRAMING);
                }
            }
        }
        for hole in &answer.ground.holes {
            self.path(Line::Cut, &corners(*hole), Fill::Open, &w::MEANS_HOLE);
        }
        self.path(Line::Cut, &answer.ground.outline, Fill::Open, &w::MEANS_EDGE);
    }

    /// Both sides, end to end; what is too short for its figure is told in words.
    fn sides(&mut self, long: Length, deep: Length) {
        let (left, plumb) = (self.left, self.left.minus(self.px(6)));
        let (top, level) = (self.px(TOP), self.px(TOP - 6));
        let right = left.plus(long);
        let level = [Point::new(left, level), Point::new(right, level)];
        let plumb = [Point::new(plumb, top), Point::new(plumb, top.plus(deep))];
        for [from, to] in [level, plumb] {
            self.page.put(Ink::Dimension { from, to });
        }
    }

    fn label(&mut self, at: [Length; 2], anchor: Anchor, text: Text) -> bool {
        let at = self.place(at);
        self.page.put(Ink::Label { at, anchor, text })
    }

    /// The number of a piece's board, clear of the framing's lines.
    fn number(&mut self, piece: &Piece) {
        let ([from, to], [top, bottom]) =
            (piece.along, self.answer.ground.across(&piece.run, piece.along));
        let [wide, high] = NUMBER.map(|count| self.px(count));
        if to.minus(from) < wide || bottom.minus(top) < high {
            return;
        }
        let (off, side) = (self.px(9), self.px(10));
        let mut middle = from.plus(to).part(2);
        let near = |at: &&Length| at.minus(middle).max(middle.minus(**at)) < off;
        if let Some(at) = self.answer.ground.stops.iter().find(near) {
            let sides = [at.plus(side), at.minus(side)];
            let fits = |at: &&Length| at.minus(off) > from && at.plus(off) < to;
            middle = sides.iter().find(fits).copied().unwrap_or(middle);
        }
        let level = top.plus(bottom).part(2);
        self.label([middle, level], Anchor::Middle, say!(w::NUMBER, piece.board as i64 + 1));
    }

    /// How far an end joint stands from the end where the boards start: along its row's upper edge or
    /// its lower one, beside the joint. What finds no room stands in the table of rows.
    fn joint(&mut self, piece: &Piece) {
        let at = piece.along[1];
        if at >= piece.run.along[1] {
            return;
        }
        let [top, bottom] = self.answer.ground.across(&piece.run, piece.along);
        let (off, side) = (self.px(OFF_EDGE), self.px(3));
        if bottom.minus(top) < off.times(2) {
            return;
        }
        for level in [top.plus(off), bottom.minus(off)] {
            for (at, anchor) in [(at.minus(side), Anchor::End), (at.plus(side), Anchor::Start)] {
                if self.label([at, level], anchor, say!(w::PIECE_LONG, piece.along[1])) {
                    return;
                }
            }
        }
    }

    /// How far what is cut out or off stands from the left end of its piece, on a line at one of its edges;
    /// one that begins at that end takes none.
    fn cut_out(&mut self, piece: &Piece) {
        let [top, bottom] = self.answer.ground.across(&piece.run, piece.along);
        let off = cut_off(self.answer, piece).into_iter().map(|it| it.1);
        for part in self.answer.ground.holes.iter().copied().chain(off) {
            let Some([along, down]) = within(self.answer, piece, &part) else { continue };
            if along[0] == Length::ZERO {
                continue;
            }
            let (left, off) = (piece.along[0], self.px(OFF_EDGE + 9));
            let levels = [down[0].plus(off), down[1].minus(self.px(4))].map(|it| top.plus(it));
            for level in levels.into_iter().filter(|it| it.minus(off) >= top && *it < bottom) {
                let [from, to] = [left, left.plus(along[0])].map(|x| self.place([x, level]));
                if self.page.put(Ink::Dimension { from, to }) {
                    break;
                }
            }
        }
    }

    /// A piece's own length, under its number.
    fn long(&mut self, piece: &Piece) {
        let [from, to] = piece.along;
        // Where it starts at the wall, its joint says the same.
        if from == Length::ZERO && to < piece.run.along[1] {
            return;
        }
        let [top, bottom] = self.answer.ground.across(&piece.run, piece.along);
        let level = top.plus(bottom).part(2).plus(self.px(NUMBER[1]));
        let long = to.minus(from);
        if long >= self.px(wide_as(long)) && level.plus(self.px(8)) <= bottom {
            self.label([from.plus(to).part(2), level], Anchor::Middle, say!(w::PIECE_LONG, long));
        }
    }
}

fn twin(input: &Input, answer: &Answer, plan: &Plan, [long, deep]: [Length; 2]) -> Vec<Text> {
    let rows = answer.ground.bands.len() as i64;
    let seen = match (input.of, shows_face(input)) {
        (Surface::Wall, true) => &w::TWIN_WALL,
        (Surface::Wall, false) => &w::TWIN_WALL_TURNED,
        (Surface::Ceiling, true) => &w::TWIN_CEILING_TURNED,
        (Surface::Ceiling, false) => &w::TWIN_CEILING,
    };
    let mut twin: Vec<Text> =
        vec![say!(w::TWIN, plan.count(), rows), say!(w::TWIN_SIZE, long, deep), seen.into()];
    let all = [[Length::ZERO, long], [Length::ZERO, deep]];
    for part in answer.ground.outside(all) {
        let [along, down] = part;
        twin.push(say!(w::TWIN_LESS, side(&all, &part), along[0], along[1], down[0], down[1]));
    }
    if input.board == Wide::Both {
        for (row, band) in answer.ground.bands.iter().enumerate() {
            twin.push(say!(w::TWIN_WIDE, row as i64 + 1, band.high, band.board));
        }
    }
    for piece in plan.jointed() {
        twin.push(say!(w::TWIN_JOINT, piece.run.row as i64 + 1, piece.along[1]));
    }
    for piece in &plan.pieces {
        let (board, row) = (piece.board as i64 + 1, piece.run.row as i64 + 1);
        for (side, [along, down]) in cut_off(answer, piece) {
            let [from, to, top, bottom] = [along[0], along[1], down[0], down[1]];
            twin.push(say!(w::TWIN_OFF, board, row, side, from, to, top, bottom));
        }
    }
    for [along, across] in &answer.ground.holes {
        let [[left, right], [top, bottom]] = [*along, *across];
        twin.push(say!(w::TWIN_HOLE, left, right, top, bottom));
    }
    twin
}
