//! A box between two edges: its place, the stud it is packed off, and with what.

mod drawing;
mod packing;
mod sheet;
mod words;

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::fields::{Form, Item, Kind, Preset, Row, Span, When, row};
use crate::measure::Length;
use crate::rules::compare::is_at_most;
use crate::rules::electrical::box_packing::{INTO_STUD, MOST_PACKED, screw};
use crate::sheet::{Caution, Fault, Faults, Sheet};
use crate::words::Phrase;
use crate::{choice, form};
pub use packing::Packing;
use packing::pack;
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct BetweenEdges;

choice! {
    /// Where the box is wanted.
    pub enum Aim {
        /// Equal reveals.
        Even = "even", w::EVEN;
        /// As said.
        Placed = "placed", w::PLACED;
    }
}

/// In sixteenths of an inch.
const fn length(
    label: &'static Phrase,
    hint: &'static Phrase,
    [least, most]: [i64; 2],
    common: &'static [Length],
) -> Row {
    let (least, most) = (Length::inches(least, 16), Length::inches(most, 16));
    row(label, hint, Kind::Length(Span { least, most, why: &w::WHY, common, optional: false }))
}

form! {
    /// A sheet at hand.
    pub struct Sheets {
        /// Its thickness.
        thick: Option<Length>, length(&w::EACH, &w::NOTHING, [2, 32], &[]).foremost(|_| true);
    }
}

static SHEETS: Item = Item {
    name: &w::SHEET,
    rows: Sheets::ROWS,
    most: 6,
    blank: || Sheets::blank().write_parts(),
    presets: &[
        Preset { label: &w::T4, sets: &[("thick", "1/4 in")] },
        Preset { label: &w::T6, sets: &[("thick", "3/8 in")] },
        Preset { label: &w::T8, sets: &[("thick", "1/2 in")] },
        Preset { label: &w::T10, sets: &[("thick", "5/8 in")] },
        Preset { label: &w::T12, sets: &[("thick", "3/4 in")] },
    ],
};

form! {
    /// Two edges with studs behind, and a box.
    pub struct Input {
        /// Edge to edge.
        gap: Option<Length>, length(&w::GAP, &w::GAP_HINT, [16, 3_840], &[]);
        /// The box's width.
        wide: Length = Length::inches(9, 4), length(&w::WIDE, &w::NOTHING, [8, 320], &[]);
        /// Its plate's.
        plate: Length = Length::inches(11, 4), length(&w::PLATE, &w::NOTHING, [8, 320], &[]);
        /// Where it is wanted.
        aim: Aim, row(&w::AIM, &w::NOTHING, Kind::Choice(Aim::PICKS));
        /// Its middle.
        at: Option<Length>, length(&w::AT, &w::NOTHING, [0, 3_840], &[]).when(When::Is("aim", &["placed"]));
        /// A stud's middle.
        stud: Option<Length>, length(&w::STUD, &w::STUD_HINT, [0, 3_840], &[]);
        /// The studs', middle to middle.
        spacing: Length = Length::inches(16, 1), length(&w::SPACING, &w::NOTHING, [96, 768], &[Length::inches(16, 1), Length::inches(24, 1)]);
        /// A stud's thickness.
        thick: Length = Length::inches(3, 2), length(&w::THICK, &w::NOTHING, [8, 64], &[]);
        /// What there is to pack with.
        sheets: Vec<Sheets>, row(&w::SHEETS, &w::SHEETS_HINT, Kind::List(&SHEETS));
        /// What the screw goes through first.
        side: Length = Length::inches(1, 8), length(&w::SIDE, &w::NOTHING, [0, 16], &[]);
    }
    sample {
        gap: Some(Length::inches(21, 1)),
        stud: Some(Length::inches(7, 1)),
        sheets: [(1, 4), (1, 2), (3, 4)].map(|(over, under)| Sheets { thick: Some(Length::inches(over, under)) }).to_vec(),
    }
}

/// What the box is fastened to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Held {
    /// The side of a stud.
    Beside {
        /// The stud's middle, from the left edge.
        stud: Length,
        /// The box is on its right.
        on_right: bool,
        /// From the stud's face to the box.
        wanted: Length,
        /// What fills that.
        packing: Packing,
        /// The shortest screw that is sold and long enough.
        screw: Option<Length>,
    },
    /// Nothing near enough; the nearest stud is so far off.
    Block(Length),
    /// A stud stands in its place.
    Clash {
        /// The stud's middle.
        stud: Length,
        /// How far it has to move left to clear it.
        left: Length,
        /// Or right.
        right: Length,
    },
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The box's left side as wanted, from the left edge.
    pub wanted: Length,
    /// And as it comes out with the packing made.
    pub left: Length,
    /// From its right side to the right edge, then.
    pub right: Length,
    /// What it is fastened to.
    pub held: Held,
    /// The studs' middles that are drawn, from the left edge.
    pub studs: Vec<Length>,
}

impl Calculator for BetweenEdges {
    const ID: &'static str = "between-edges";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::RoughIn;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = false;
    type Input = Input;
    type Answer = Answer;

    fn sample() -> Input {
        Input::sample()
    }

    fn solve(input: &Input, _: Basis) -> Result<Answer, Faults> {
        solve(input)
    }

    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        sheet::cautions()
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Places the box and packs it.
///
/// - Stud: the one whose face is nearest the box; of two as near, the left one.
/// - Packing: as near as the sheets come, then the fewest pieces.
///
/// # Errors
/// A box that reaches past an edge.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    let gap = input.gap.unwrap_or_default();
    let (path, label, middle) = match input.aim {
        Aim::Even => ("wide", &w::WIDE, gap.part(2)),
        Aim::Placed => ("at", &w::AT, input.at.unwrap_or_default()),
    };
    let wanted = middle.minus(input.wide.part(2));
    let right = wanted.plus(input.wide);
    if wanted < Length::ZERO || right > gap {
        let given = if path == "at" { middle } else { input.wide }.exact();
        let says = (&w::NO_FIT).into();
        return Err(vec![Fault { path: path.to_owned(), label, given, says }]);
    }
    let studs = studs(input, gap);
    let half = input.thick.part(2);
    let mut nearest: Option<(Length, Length, bool)> = None;
    let mut clash = None;
    for stud in &studs {
        let face = [stud.minus(half), stud.minus(half).plus(input.thick)];
        let on_right = face[1] <= wanted;
        let off = if on_right { wanted.minus(face[1]) } else { face[0].minus(right) };
        if off < Length::ZERO {
            let (left, right) = (right.minus(face[0]), face[1].minus(wanted));
            clash = clash.or(Some(Held::Clash { stud: *stud, left, right }));
        } else if nearest.is_none_or(|(least, ..)| off < least) {
            nearest = Some((off, *stud, on_right));
        }
    }
    let mut left = wanted;
    let held = match (clash, nearest) {
        (Some(clash), _) => clash,
        (None, Some((off, stud, on_right))) if is_at_most(off, MOST_PACKED) => {
            let packing = pack(off, &thicknesses(input));
            let made = packing.made();
            left =
                if on_right { wanted.plus(made).minus(off) } else { wanted.minus(made).plus(off) };
            let screw = screw(made.plus(input.side).plus(INTO_STUD));
            Held::Beside { stud, on_right, wanted: off, packing, screw }
        }
        (None, nearest) => Held::Block(nearest.map_or(gap, |(off, ..)| off)),
    };
    Ok(Answer { wanted, left, right: gap.minus(left).minus(input.wide), held, studs })
}

/// Each once, thickest first.
fn thicknesses(input: &Input) -> Vec<Length> {
    let mut all: Vec<Length> = Vec::new();
    for sheet in &input.sheets {
        let thick = sheet.thick.unwrap_or_default();
        let at = all.iter().take_while(|other| **other > thick).count();
        if all.get(at) != Some(&thick) {
            all.insert(at, thick);
        }
    }
    all
}

/// All from one spacing before the left edge to one past the right.
fn studs(input: &Input, gap: Length) -> Vec<Length> {
    let (first, spacing) = (input.stud.unwrap_or_default(), input.spacing);
    let (low, high) = (Length::ZERO.minus(spacing), gap.plus(spacing));
    let before = first.minus(low).nanometres() / spacing.nanometres().max(1);
    let mut at = first.minus(spacing.times(before.max(0)));
    let mut all = Vec::new();
    while at <= high && all.len() < 64 {
        all.push(at);
        at = at.plus(spacing);
    }
    all
}

#[cfg(test)]
mod tests;
