//! The surface with every piece in its place and its board's number in it, boards from left to
//! right; how far end joints stand from the wall, and cut-outs from their piece's end. What finds no
//! room is told by the tables and the cut list.

use super::input::{Input, Run, Surface, Wide};
use super::places::{cut_off, side, within};
use super::plans::{Answer, Piece, Plan};
use super::surface::Part;
use super::words as w;
use crate::measure::{Area, Length, Rounding, Units, divide};
use crate::plan::put_in_order;
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
/// Half of a line of words.
const HALF_LINE: i64 = 7;
/// A label's middle stands so far off an edge that it goes along.
const OFF_EDGE: i64 = 8;

/// How wide a length is written in either units, in pixels, with a little air.
fn wide_as(long: Length) -> i64 {
    let signs = |units| long.show(units, Rounding::Nearest).text().chars().count() as i64;
    signs(Units::Customary).max(signs(Units::Metric)) * 15 / 2 + 4
}

/// What is drawn, on its way to a page.
struct Sketch<'a> {
    answer: &'a Answer,
    plan: &'a Plan,
    page: Clear,
    left: Length,
    /// Where no board is left: openings, and outside of the surface.
    gone: Vec<Part>,
    /// Boards run down the page: upright on a wall, square to wall 1 on a ceiling. A wall is seen from
    /// the room all the same, and a ceiling from above.
    turned: bool,
}

pub(super) fn drawing(input: &Input, answer: &Answer, plan: &Plan) -> Drawing {
    let turned = input.run == Run::Square;
    let far = |at: usize| answer.ground.outline.iter().map(|it| it[at]).max().unwrap_or_default();
    let size = [far(0), far(1)];
    let [long, deep] = turn(turned, size);
    let unit = long.part(LONG).max(deep.part(TALL)).max(Length::from_nanometres(1));
    let high =
        TOP + 8 + divide(deep.nanometres().into(), unit.nanometres().into(), Rounding::Up) as i64;
    let page = Clear::new(unit, high);
    // In the middle, so that a narrow one has room for its figure.
    let left = page.px(LEFT).plus(page.px(LONG).minus(long).part(2));
    let mut gone = answer.ground.outside(size.map(|size| [Length::ZERO, size]));
    gone.extend(&answer.ground.holes);
    let mut sketch = Sketch { answer, plan, page, left, gone, turned };
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
    sketch.page.done(&w::DRAWING, twin(input, answer, plan, size))
}

/// Along the boards and across them, as to the right and down.
fn turn<T>(turned: bool, [along, across]: [T; 2]) -> [T; 2] {
    if turned { [across, along] } else { [along, across] }
}

impl Sketch<'_> {
    fn px(&self, count: i64) -> Length {
        self.page.px(count)
    }

    /// Of a place along the boards and across them.
    fn spot(&self, at: [Length; 2]) -> Point {
        self.place(turn(self.turned, at))
    }

    fn place(&self, [x, y]: [Length; 2]) -> Point {
        Point::new(self.left.plus(x), self.px(TOP).plus(y))
    }

    fn path(&mut self, line: Line, corners: &[[Length; 2]], surface: Fill, means: &'static Phrase) {
        let points: Vec<Point> = corners.iter().map(|it| self.spot(*it)).collect();
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
            self.path(Line::Cut, &corners(*hole), Fill::Blank, &w::MEANS_HOLE);
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

    /// No line of an opening or of the surface's edge runs through what is there on the page.
    fn is_clear(&self, [x, y]: Part) -> bool {
        let apart = |part: &Part| {
            let [wide, high] = turn(self.turned, *part);
            x[1] <= wide[0] || wide[1] <= x[0] || y[1] <= high[0] || high[1] <= y[0]
        };
        self.gone.iter().all(apart)
    }

    /// Rectangles of a piece that nothing is cut from, on the page, the largest first.
    fn spaces(&self, piece: &Piece) -> Vec<Part> {
        let whole = [piece.along, self.answer.ground.across(&piece.run, piece.along)];
        let mut edges = whole.map(|it| it.to_vec());
        for part in self.gone.iter().filter(|it| within(self.answer, piece, it).is_some()) {
            for (edges, (part, [from, to])) in edges.iter_mut().zip(part.iter().zip(whole)) {
                for at in part.iter().filter(|at| from < **at && **at < to) {
                    put_in_order(edges, *at);
                }
            }
        }
        let spans = edges.map(|all| {
            let from = |(at, from): (usize, &Length)| {
                let to = all.iter().skip(at + 1).filter(|to| *to > from);
                to.map(|to| [*from, *to]).collect::<Vec<_>>()
            };
            all.iter().enumerate().flat_map(from).collect::<Vec<_>>()
        });
        let [along, across] = spans;
        let mut all: Vec<Part> =
            along.iter().flat_map(|x| across.iter().map(|y| turn(self.turned, [*x, *y]))).collect();
        all.retain(|it| self.is_clear(*it));
        let size = |[x, y]: &Part| Area::of(x[1].minus(x[0]), y[1].minus(y[0]));
        all.sort_by_key(|it| std::cmp::Reverse(size(it)));
        all
    }

    /// The number of a piece's board, clear of the framing's lines and of what is cut from it, and over
    /// the middle where its length has room under it.
    fn number(&mut self, piece: &Piece) {
        let long = self.px(wide_as(piece.along[1].minus(piece.along[0])));
        let [wide, high] = NUMBER.map(|count| self.px(count));
        let (off, side) = (self.px(9), self.px(10));
        for [[from, to], [top, bottom]] in self.spaces(piece) {
            if to.minus(from) < wide || bottom.minus(top) < high {
                continue;
            }
            let clear = |from: Length, to: Length| {
                let middle = from.plus(to).part(2);
                let near = |at: &&Length| at.minus(middle).max(middle.minus(**at)) < off;
                let Some(at) = self.answer.ground.stops.iter().find(near) else { return middle };
                let sides = [at.plus(side), at.minus(side)];
                let fits = |at: &&Length| at.minus(off) > from && at.plus(off) < to;
                sides.iter().find(fits).copied().unwrap_or(middle)
            };
            let both = to.minus(from) >= long && bottom.minus(top) >= high.times(2);
            let up = if both { self.px(HALF_LINE) } else { Length::ZERO };
            let at = if self.turned {
                [from.plus(to).part(2), clear(top, bottom).minus(up)]
            } else {
                [clear(from, to), top.plus(bottom).part(2).minus(up)]
            };
            if self.label(at, Anchor::Middle, say!(w::NUMBER, piece.board as i64 + 1)) {
                return;
            }
        }
    }

    /// How far an end joint stands from the end where the boards start: along its row's upper edge or
    /// its lower one, beside the joint. What finds no room stands in the table of rows.
    fn joint(&mut self, piece: &Piece) {
        let at = piece.along[1];
        let starts = |it: &&Piece| it.run == piece.run && it.along[0] == at;
        let Some(next) = self.plan.pieces.iter().find(starts) else { return };
        let [top, bottom] = self.answer.ground.across(&piece.run, piece.along);
        let (off, side) = (self.px(OFF_EDGE), self.px(3));
        if bottom.minus(top) < off.times(2) {
            return;
        }
        let wide = self.px(wide_as(at));
        if self.turned {
            let x = top.plus(side);
            for level in [at.minus(off), at.plus(off)] {
                let high = [level.minus(off), level.plus(off)];
                let inside = high[0] >= piece.along[0] && high[1] <= next.along[1];
                let room = [[x, x.plus(wide)], high];
                if inside
                    && room[0][1] <= bottom
                    && self.is_clear(room)
                    && self.label([x, level], Anchor::Start, say!(w::PIECE_LONG, at))
                {
                    return;
                }
            }
            return;
        }
        for level in [top.plus(off), bottom.minus(off)] {
            let high = [level.minus(off), level.plus(off)];
            let [before, after] = [at.minus(side), at.plus(side)];
            let places = [
                (before, Anchor::End, [before.minus(wide), before]),
                (after, Anchor::Start, [after, after.plus(wide)]),
            ];
            for (x, anchor, along) in places {
                let inside = along[0] >= piece.along[0] && along[1] <= next.along[1];
                if inside
                    && self.is_clear([along, high])
                    && self.label([x, level], anchor, say!(w::PIECE_LONG, at))
                {
                    return;
                }
            }
        }
    }

    /// How far an opening stands from the end of its piece where its boards start, on a line at one of
    /// its edges; one that begins at that end takes none. A corner's is in the table: beside a board's
    /// number it would be read as its length.
    fn cut_out(&mut self, piece: &Piece) {
        let [top, bottom] = self.answer.ground.across(&piece.run, piece.along);
        for part in self.answer.ground.holes.clone() {
            let Some([along, down]) = within(self.answer, piece, &part) else { continue };
            if along[0] == Length::ZERO {
                continue;
            }
            let (left, off) = (piece.along[0], self.px(OFF_EDGE + 9));
            let half = self.px(wide_as(along[0])).part(2);
            let middle = left.plus(along[0].part(2));
            let levels = [down[0].plus(off), down[1].minus(self.px(4))].map(|it| top.plus(it));
            for level in levels.into_iter().filter(|it| it.minus(off) >= top && *it < bottom) {
                let figure = [[middle.minus(half), middle.plus(half)], [level.minus(off), level]];
                let [from, to] = [left, left.plus(along[0])].map(|x| self.spot([x, level]));
                if self.is_clear(turn(self.turned, figure))
                    && self.page.put(Ink::Dimension { from, to })
                {
                    break;
                }
            }
        }
    }

    /// A piece's own length, under its number or where there is room.
    fn long(&mut self, piece: &Piece) {
        let long = piece.along[1].minus(piece.along[0]);
        let [wide, half, line] = [wide_as(long), OFF_EDGE, HALF_LINE].map(|count| self.px(count));
        for [[from, to], [top, bottom]] in self.spaces(piece) {
            if to.minus(from) < wide {
                continue;
            }
            let (middle, level) = (from.plus(to).part(2), top.plus(bottom).part(2));
            let lines = [1, 0, -1, 2, -2].map(|lines| level.plus(line.times(lines)));
            for level in lines {
                let inside = top <= level.minus(half) && level.plus(half) <= bottom;
                if inside && self.label([middle, level], Anchor::Middle, say!(w::PIECE_LONG, long))
                {
                    return;
                }
            }
        }
    }
}

fn twin(input: &Input, answer: &Answer, plan: &Plan, [long, deep]: [Length; 2]) -> Vec<Text> {
    let rows = answer.ground.bands.len() as i64;
    let turned = input.run == Run::Square;
    let seen = if input.of == Surface::Wall { &w::TWIN_WALL } else { &w::TWIN_CEILING };
    let first = if turned { &w::TWIN_DOWN } else { &w::TWIN };
    let first = Text { phrase: first, args: vec![plan.count().into(), rows.into()] };
    let mut twin: Vec<Text> = vec![first, say!(w::TWIN_SIZE, long, deep), seen.into()];
    let all = [[Length::ZERO, long], [Length::ZERO, deep]];
    for part in answer.ground.outside(all) {
        let [along, down] = part;
        let side = side(&turn(turned, all), &turn(turned, part));
        twin.push(say!(w::TWIN_LESS, side, along[0], along[1], down[0], down[1]));
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
