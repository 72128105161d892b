//! The box in section, filled from the back by what each share takes of its volume, to scale.

use super::fill::Side;
use super::input::Input;
use super::shown as s;
use super::{Answer, enclosure};
use crate::measure::{Length, Volume};
use crate::say;
use crate::sheet::{Anchor, Drawing, Ink, Line, Point, Surface};
use crate::words::{Amount, Arg, Text};

/// One share as a layer of the box.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Layer {
    /// Which share, by its place.
    pub share: usize,
    /// From this far off the back.
    pub from: Length,
    /// To this far off the back; past the depth where it is over.
    pub to: Length,
}

/// The section of one side.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Section {
    /// How wide: the table's, or two inches a gang.
    pub width: Length,
    /// How deep: the table's or what was given, else what the volume asks.
    pub depth: Length,
    /// The depth is the box's own.
    pub known: bool,
    /// How far off the back all of it reaches.
    pub filled: Length,
    /// Layer by layer from the back. Shares that take nothing have none.
    pub layers: Vec<Layer>,
}

/// A gang's width and a box's height where they aren't given: those of the table's 3 × 2 rows.
const GANG: Length = Length::inches(2, 1);
const TALL: Length = Length::inches(3, 1);

pub(super) fn section(input: &Input, sides: &[Side], at: usize) -> Section {
    let side = &sides[at];
    let metal = input.enclosure.metal();
    let whole = metal.is_some_and(|metal| !metal.family.gangs()) && sides.len() == 1;
    let face = metal.and_then(|metal| metal.face).map_or(GANG, |face| face.0);
    let width = if whole { face } else { face.times(side.gangs) };
    let known = enclosure::depth(input);
    let depth = known.unwrap_or_else(|| across(side.volume, width, TALL)).max(LEAST);
    let mut from = Volume::ZERO;
    let mut layers = Vec::new();
    for (share, each) in side.shares.iter().enumerate() {
        if each.volume > Volume::ZERO {
            let to = from.plus(each.volume);
            let deep = |volume| part_of(volume, side.volume, depth);
            layers.push(Layer { share, from: deep(from), to: deep(to) });
            from = to;
        }
    }
    let filled = part_of(side.fill, side.volume, depth);
    Section { width, depth, known: known.is_some(), filled, layers }
}

/// Less depth than this can't be drawn.
const LEAST: Length = Length::inches(1, 64);

/// The depth that a volume has over a face, to the nanometre.
fn across(volume: Volume, width: Length, tall: Length) -> Length {
    // A volume's unit is 10^-5 mm³, which is 10^13 nm³.
    let face = i128::from(width.nanometres()) * i128::from(tall.nanometres());
    let nanometres = i128::from(volume.units()) * 10_000_000_000_000 / face.max(1);
    Length::from_nanometres(i64::try_from(nanometres).unwrap_or(i64::MAX))
}

/// How deep `volume` stands in a box of `depth` that holds `whole`, to the nanometre.
fn part_of(volume: Volume, whole: Volume, depth: Length) -> Length {
    let nanometres = i128::from(depth.nanometres()) * i128::from(volume.units())
        / i128::from(whole.units()).max(1);
    Length::from_nanometres(i64::try_from(nanometres).unwrap_or(i64::MAX))
}

/// The page that the drawing is laid out for, in pixels: a 320 px phone less its margins.
const PAGE: i64 = 288;
/// Left of the box stands the depth's figure, right of it a column of labels; over it is room for
/// the figure of a shallow box, which is longer than the box is deep.
const LEFT: i64 = 34;
const TOP: i64 = 50;
const BOX: i64 = 100;
const BOX_TALL: i64 = 130;
const COLUMN: i64 = 146;
const LABEL_GAP: i64 = 18;

fn bare(volume: Volume) -> Arg {
    Arg::Bare(Amount::Volume(volume))
}

/// The drawing of a section. What is more than twice over is cut off at the top; the words still
/// say by how much.
pub(super) fn drawing(answer: &Answer, side: &Side) -> Drawing {
    let Section { width, depth, known, filled, layers } = &answer.section;
    let unit = width.part(BOX).max(depth.part(BOX_TALL)).max(Length::from_nanometres(1));
    let px = |count: i64| unit.times(count);
    let above = filled.minus(*depth).max(Length::ZERO).min(*depth);
    let front = px(TOP).plus(above);
    let back = front.plus(*depth);
    let (left, right) = (px(LEFT), px(LEFT).plus(*width));
    let level = |deep: Length| back.minus(deep).max(px(TOP));
    let count = layers.len() as i64 + 1;
    let lowest = back.max(px(14 + LABEL_GAP * (count - 1)));

    let mut ink = Vec::new();
    let mut twin = vec![if *known {
        say!(s::TWIN_BOX, *width, *depth)
    } else {
        say!(s::TWIN_BOX_MARKED, *width, TALL)
    }];
    let mut floor = lowest;
    for (number, layer) in layers.iter().enumerate() {
        let share = &side.shares[layer.share];
        let (low, high) = (level(layer.from), level(layer.to));
        if low > front {
            let tone = Surface::Tone(u8::from(number % 2 == 1));
            let corners = [left, right, high.max(front), low];
            ink.push(area(corners, tone, Line::Seen, share.name.clone()));
        }
        // Labels keep their distance and stand as near to their layer as that allows.
        let remaining = count - 1 - number as i64;
        let at = low.plus(high).part(2).min(floor).max(px(14 + LABEL_GAP * remaining));
        floor = at.minus(px(LABEL_GAP));
        let (from, to) =
            (Point::new(right, low.plus(high).part(2)), Point::new(px(COLUMN - 4), at));
        ink.push(Ink::Path {
            line: Line::Leader,
            points: vec![from, to],
            closed: false,
            surface: Surface::Open,
            means: None,
        });
        ink.push(label(px(COLUMN), at, say!(s::LABEL, share.short.clone(), bare(share.volume))));
        twin.push(say!(s::TWIN_LAYER, share.name.clone(), share.volume));
    }
    let (last, says) = if side.fill > side.volume {
        let over = side.fill.minus(side.volume);
        let reason = say!(s::LABEL_OVER, bare(over));
        ink.push(area(
            [left, right, level(*filled), front],
            Surface::Hatched,
            Line::Seen,
            reason.clone(),
        ));
        (reason, say!(s::TWIN_OVER, over))
    } else {
        (say!(s::LABEL_SPARE, bare(side.spare())), say!(s::TWIN_SPARE, side.spare()))
    };
    twin.push(says);
    let middle = level(*filled).plus(front).part(2);
    ink.push(label(px(COLUMN), middle.min(floor).max(px(14)), last));
    ink.push(Ink::Path {
        line: Line::Cut,
        points: vec![
            Point::new(left, front),
            Point::new(left, back),
            Point::new(right, back),
            Point::new(right, front),
        ],
        closed: false,
        surface: Surface::Open,
        means: Some((&s::OUTLINE).into()),
    });
    // Over, the hatch stands where the word would; the rim shows where the box ends.
    if above == Length::ZERO {
        ink.push(Ink::Label {
            at: Point::new(left.plus(right).part(2), front.minus(px(12))),
            anchor: Anchor::Middle,
            text: (&s::SECTION_OPEN).into(),
        });
    } else {
        let rim = [Point::new(left.minus(px(4)), front), Point::new(right.plus(px(4)), front)];
        ink.push(Ink::Path {
            line: Line::Cut,
            points: rim.to_vec(),
            closed: false,
            surface: Surface::Open,
            means: Some((&s::SECTION_OPEN).into()),
        });
    }
    let mut bottom = back.plus(px(12));
    if *known {
        let line = px(LEFT - 6);
        ink.push(Ink::Dimension { from: Point::new(line, front), to: Point::new(line, back) });
        let under = back.plus(px(26));
        ink.push(Ink::Dimension { from: Point::new(left, under), to: Point::new(right, under) });
        bottom = under.plus(px(10)).max(front.plus(depth.part(2)).plus(px(TOP)));
    }
    Drawing {
        title: (&s::SECTION).into(),
        width: px(PAGE),
        height: bottom.max(lowest.plus(px(14))),
        ink,
        twin,
    }
}

fn area([left, right, top, low]: [Length; 4], surface: Surface, line: Line, means: Text) -> Ink {
    let points = [(left, top), (right, top), (right, low), (left, low)];
    Ink::Path {
        line,
        points: points.into_iter().map(|(x, y)| Point::new(x, y)).collect(),
        closed: true,
        surface,
        means: Some(means),
    }
}

fn label(x: Length, y: Length, text: Text) -> Ink {
    Ink::Label { at: Point::new(x, y), anchor: Anchor::Start, text }
}
