//! The member from the side, along the bit, and in section through the cut: lying, with the face
//! that is measured from on top. What a phone has no room for beside it stands under it.

use super::choices::Rule;
use super::input::Input;
use super::shown as s;
use super::{Answer, Hole, Made, bare, bore};
use crate::measure::Length;
use crate::say;
use crate::sheet::{Anchor, Drawing, Ink, Line, Point, Surface};
use crate::words::{Phrase, Text};

/// The page of a phone 320 px wide, less its margins, in pixels.
const PAGE: i64 = 288;
/// Room over the wood for a dimension's figure, which may be longer than its line.
const TOP: i64 = 58;
/// The wood is no higher than this, and its section no wider.
const TALL: i64 = 110;
const THICK: i64 = 60;
/// The side view from here to there, the section from there on.
const LEFT: i64 = 52;
const RIGHT: i64 = 190;
const SECTION: i64 = 212;
/// The first line under the drawing, and how far apart they are.
const UNDER: i64 = TOP + TALL + 22;
const LINE: i64 = 18;
/// Cosine and sine of 15°, in millionths.
const TURN: (i64, i64) = (965_926, 258_819);

struct Page {
    unit: Length,
    top: Length,
    ink: Vec<Ink>,
    under: i64,
}

impl Page {
    fn px(&self, count: i64) -> Length {
        self.unit.times(count)
    }

    fn path(
        &mut self,
        line: Line,
        surface: Surface,
        corners: &[(Length, Length)],
        means: &'static Phrase,
    ) {
        let points = corners.iter().map(|(x, y)| Point::new(*x, self.top.plus(*y)));
        let points: Vec<Point> = points.collect();
        let (closed, means) = (points.len() > 2, Some(means.into()));
        self.ink.push(Ink::Path { line, points, closed, surface, means });
    }

    /// A piece of the wood from one height to another, down from its top.
    fn piece(
        &mut self,
        (left, right): (Length, Length),
        (high, low): (Length, Length),
        (line, surface): (Line, Surface),
        means: &'static Phrase,
    ) {
        if high < low {
            let corners = [(left, high), (right, high), (right, low), (left, low)];
            self.path(line, surface, &corners, means);
        }
    }

    /// The hole, as far as it is in this piece of the wood.
    fn circle(
        &mut self,
        (x, y): (Length, Length),
        bit: Length,
        side: (Length, Length),
        low: Length,
    ) {
        let kept = |at: Length, least: Length, most: Length| at.max(least).min(most);
        let (mut right, mut down) = (bit.part(2), Length::ZERO);
        let mut corners = Vec::new();
        for _ in 0..24 {
            corners
                .push((kept(x.plus(right), side.0, side.1), kept(y.plus(down), Length::ZERO, low)));
            let turned =
                |a: Length, b: Length| a.times(TURN.0).plus(b.times(TURN.1)).part(1_000_000);
            (right, down) = (turned(right, Length::ZERO.minus(down)), turned(down, right));
        }
        self.path(Line::Cut, Surface::Open, &corners, &s::HOLE);
    }

    fn say(&mut self, text: Text) {
        let at = Point::new(self.px(8), self.px(self.under));
        self.under += LINE;
        self.ink.push(Ink::Label { at, anchor: Anchor::Start, text });
    }

    fn view(&mut self, x: Length, name: &'static Phrase) {
        let at = Point::new(x, self.px(TOP - 12));
        self.ink.push(Ink::Label { at, anchor: Anchor::Middle, text: name.into() });
    }

    /// From the top of the wood down to here.
    fn dimension(&mut self, x: i64, to: Length) {
        let x = self.px(x);
        let to = Point::new(x, self.top.plus(to));
        self.ink.push(Ink::Dimension { from: Point::new(x, self.top), to });
    }
}

/// The drawing; none where only paper allows a cut.
pub(super) fn drawing(input: &Input, answer: &Answer) -> Option<Drawing> {
    let (width, thick) = (answer.width, input.member.thickness());
    // A nanometre up, so that all keeps inside what `part` rounds down.
    let unit = width.part(TALL).max(thick.part(THICK)).plus(Length::from_nanometres(1));
    let top = unit.times(TOP).plus(unit.times(TALL).minus(width).part(2));
    let mut page = Page { unit, top, ink: Vec::new(), under: UNDER };
    let side = (page.px(LEFT), page.px(RIGHT));
    let section = (page.px(SECTION), page.px(SECTION).plus(thick));
    let is_joist = input.member.rule() == Rule::Joist;
    let mut twin =
        vec![say!(*if is_joist { &s::TWIN_DEEP } else { &s::TWIN }, input.member.label(), width)];
    page.dimension(16, width);
    match &answer.made {
        Made::OnPaper => return None,
        Made::Hole(hole) => {
            bored(&mut page, input, hole, side, section);
            let (near, far) = hole.clear;
            twin.push(say!(s::TWIN_HOLE, hole.bit, near, far));
            twin.push(match hole.bore.window(hole.bit).map(bore::on_tape) {
                Some((from, to)) if is_joist => say!(s::TWIN_TOP, from, to),
                Some((from, to)) => say!(s::TWIN_WINDOW, from, to),
                None if answer.across.is_some() => say!(s::TWIN_HALF),
                None => say!(s::TWIN_NO_WINDOW),
            });
        }
        Made::Notch(notch) => {
            let middle = side.0.plus(side.1).part(2);
            let half = notch.long.min(side.1.minus(side.0)).part(2);
            let (from, to) = (middle.minus(half), middle.plus(half));
            let zero = Length::ZERO;
            let deep = notch.depth.min(width);
            let outline = [
                (side.0, zero),
                (from, zero),
                (from, deep),
                (to, deep),
                (to, zero),
                (side.1, zero),
                (side.1, width),
                (side.0, width),
            ];
            page.path(Line::Seen, Surface::Tone(0), &outline, &s::WOOD);
            let cut = (Line::Cut, Surface::Tone(0));
            page.piece(section, (deep, width), cut, &s::SECTION_CUT);
            page.dimension(38, deep);
            page.say(say!(s::KEY_NOTCH, notch.depth));
            page.say(say!(s::KEY_LONG, notch.long));
            twin.push(say!(s::TWIN_NOTCH, notch.depth, notch.long));
        }
    }
    page.view(side.0.plus(side.1).part(2), &s::VIEW_SIDE);
    page.view(section.0.plus(section.1).part(2), &s::VIEW_SECTION);
    let height = page.px(page.under - LINE + 12);
    let width = page.px(PAGE);
    Some(Drawing { title: (&s::DRAWING).into(), width, height, ink: page.ink, twin })
}

fn bored(
    page: &mut Page,
    input: &Input,
    hole: &Hole,
    side: (Length, Length),
    section: (Length, Length),
) {
    let Hole { bore, bit, center, .. } = hole;
    let width = bore.width;
    let whole = (Length::ZERO, width);
    page.piece(side, whole, (Line::Seen, Surface::Tone(0)), &s::WOOD);
    // Strips along both faces; they meet where there is no more wood.
    let steel = bare(input.passes).map_or(Length::ZERO, |bare| bare.value);
    for (deep, surface, means) in
        [(steel, Surface::Tone(1), &s::ZONE_BARE), (bore.edge, Surface::Hatched, &s::ZONE)]
    {
        // What is hatched needs no shade under it.
        let hidden = surface != Surface::Hatched && deep <= bore.edge;
        let deep = if hidden { Length::ZERO } else { deep.min(width.part(2)) };
        page.piece(side, (Length::ZERO, deep), (Line::Leader, surface), means);
        page.piece(side, (width.minus(deep), width), (Line::Leader, surface), means);
    }
    let at = center.unwrap_or(width.part(2));
    let middle = side.0.plus(side.1).part(2);
    page.circle((middle, at), *bit, side, width);
    let others = if input.member.rule() == Rule::Plate { &*input.holes } else { &[] };
    for other in others {
        let (Some(bit), Some(along)) = (other.bit, other.along) else { continue };
        let (x, half) = (middle.plus(along), bit.part(2));
        // Only what is near enough is in view.
        if x.minus(half) >= side.0 && x.plus(half) <= side.1 {
            page.circle((x, other.center.unwrap_or(width.part(2))), bit, side, width);
        }
    }
    let cut = (Line::Cut, Surface::Tone(0));
    let half = bit.part(2);
    page.piece(section, (Length::ZERO, at.minus(half)), cut, &s::SECTION_CUT);
    page.piece(section, (at.plus(half), width), cut, &s::SECTION_CUT);
    page.dimension(38, at);
    page.say(say!(s::KEY_HOLE, *bit));
    page.say(say!(s::KEY_CLEAR, hole.clear.0, hole.clear.1));
    if bore.edge > Length::ZERO {
        page.say(say!(s::KEY_ZONE, bore.edge));
    }
    if steel > bore.edge {
        page.say(say!(s::KEY_BARE, steel));
    }
    if let Some(window) = bore.window(*bit) {
        let (from, to) = bore::on_tape(window);
        let x = page.px(RIGHT + 8);
        let low = window.1.max(window.0.plus(page.px(1)));
        page.path(Line::Cut, Surface::Open, &[(x, window.0), (x, low)], &s::WINDOW_INK);
        page.say(match to.minus(from) < bore::STEP {
            true => say!(s::KEY_CENTER, from),
            false => say!(s::KEY_WINDOW, from, to),
        });
    }
}
