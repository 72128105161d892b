//! Cables through a hole: whether they fit, and what they may carry once the hole is sealed or the
//! cables are bundled.

mod sheet;
mod words;

use super::{Calculator, Trade};
use crate::edition::{Basis, Electrical};
use crate::fields::{Form, Item, Kind, Preset, Row, Span, When, row};
use crate::measure::unit::{NUMBER, PERCENT, SQUARE_INCH};
use crate::measure::{Length, Measure};
use crate::rules::compare::is_at_most;
use crate::rules::electrical::ampacity::{Carries, amperes, carries};
use crate::rules::electrical::bundling::{
    Warmth, adjustment, carried, correction, in_amperes, in_sealed_hole,
};
use crate::rules::electrical::cable_sizes::{self, MOST_TAKEN, Sheathed, UNREAD, outline};
use crate::sheet::{Caution, Expr, Faults, Sheet, Value};
use crate::words::{Amount, Phrase};
use crate::{choice, form};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct HoleCables;

choice! {
    /// A cable's breaker.
    pub enum Breaker {
        /// The usual one for its size.
        BySize = "by-size", w::BY_SIZE;
        /// 15 A.
        A15 = "15", w::B15;
        /// 20 A.
        A20 = "20", w::B20;
        /// 25 A.
        A25 = "25", w::B25;
        /// 30 A.
        A30 = "30", w::B30;
        /// 35 A.
        A35 = "35", w::B35;
        /// 40 A.
        A40 = "40", w::B40;
        /// 45 A.
        A45 = "45", w::B45;
        /// 50 A.
        A50 = "50", w::B50;
        /// 60 A.
        A60 = "60", w::B60;
    }
}

impl Breaker {
    /// Its size, where one is said.
    fn amperes(self) -> Option<Measure> {
        self.key().parse().ok().map(amperes)
    }
}

choice! {
    /// What closes the hole round the cables.
    pub enum Hole {
        /// It is sealed.
        Sealed = "sealed", w::SEALED;
        /// It stays open.
        Open = "open", w::OPEN;
    }
}

const fn size(label: &'static Phrase, hint: &'static Phrase) -> Row {
    let span = Span {
        least: Length::inches(1, 16),
        most: Length::inches(2, 1),
        why: &w::WHY_WIDE,
        common: &[],
        optional: false,
    };
    row(label, hint, Kind::Length(span)).when(When::Is("cable", UNREAD)).foremost(|_| true)
}

form! {
    /// Cables of one kind on breakers of one size.
    pub struct Cable {
        /// The kind.
        cable: Sheathed, row(&w::CABLE, &w::NOTHING, Kind::Choice(Sheathed::PICKS));
        /// How many.
        count: i64 = 1, row(&w::COUNT, &w::NOTHING, Kind::Count { least: 1, most: 12, why: &w::WHY_COUNT });
        /// Its width, where no size is published here.
        wide: Option<Length>, size(&w::WIDE, &w::WIDE_HINT);
        /// Its thickness.
        thick: Option<Length>, size(&w::THICK, &w::NOTHING);
        /// Its breaker.
        breaker: Breaker, row(&w::BREAKER, &w::NOTHING, Kind::Choice(Breaker::PICKS));
    }
}

static CABLES: Item = Item {
    name: &w::CABLE,
    rows: Cable::ROWS,
    most: 12,
    blank: || Cable::blank().write_parts(),
    presets: &[
        Preset { label: &cable_sizes::C14_2, sets: &[("cable", "14-2")] },
        Preset { label: &cable_sizes::C14_3, sets: &[("cable", "14-3")] },
        Preset { label: &cable_sizes::C12_2, sets: &[("cable", "12-2")] },
        Preset { label: &cable_sizes::C12_3, sets: &[("cable", "12-3")] },
        Preset { label: &cable_sizes::C10_2, sets: &[("cable", "10-2")] },
        Preset { label: &cable_sizes::C10_3, sets: &[("cable", "10-3")] },
    ],
};

form! {
    /// Cables and the hole that they share.
    pub struct Input {
        /// What goes through.
        cables: Vec<Cable>, row(&w::CABLES, &w::NOTHING, Kind::List(&CABLES));
        /// The hole's diameter.
        bit: Option<Length>, row(&w::HOLE, &w::NOTHING, Kind::Length(Span {
            least: Length::inches(1, 4),
            most: Length::inches(8, 1),
            why: &w::WHY_HOLE,
            common: &[Length::inches(3, 4), Length::inches(7, 8), Length::inches(1, 1), Length::inches(11, 8)],
            optional: false,
        }));
        /// Whether it is sealed round them.
        hole: Hole, row(&w::ROUND, &w::ROUND_HINT, Kind::Choice(Hole::PICKS));
        /// They lie together for more than 24 in.
        bundled: bool, row(&w::BUNDLED, &w::NOTHING, Kind::Flag);
        /// How warm it gets.
        warmth: Warmth, row(&w::WARMTH, &w::WARMTH_HINT, Kind::Choice(Warmth::PICKS));
    }
    sample {
        cables: vec![Cable { count: 3, ..Cable::blank() }],
        bit: Some(Length::inches(3, 4)),
    }
}

/// What cables of one kind carry.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Load {
    /// The kind.
    pub cable: Sheathed,
    /// What its wire carries by the table.
    pub carries: Carries,
    /// What it carries here: no more than at 60 °C.
    pub here: Measure,
    /// Its breaker.
    pub breaker: Measure,
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The edition it was worked under.
    pub edition: Electrical,
    /// What all cables take from outside.
    pub cables: Measure,
    /// The hole.
    pub hole: Measure,
    /// Of the hole, taken.
    pub taken: Measure,
    /// The hole's diameter.
    pub bit: Length,
    /// The widest cable.
    pub widest: Length,
    /// The smallest bit, in sixteenths, that takes the widest and leaves half free.
    pub smallest: Length,
    /// They are more than a sealed hole takes without adjustment.
    pub sealed: bool,
    /// Conductors that carry current.
    pub carrying: i64,
    /// Whether cables are adjusted for lying together: how much they still carry.
    pub together: Option<Measure>,
    /// How much they carry in this heat, as a plain number.
    pub warm: Measure,
    /// Each kind.
    pub loads: Vec<Load>,
}

impl Calculator for HoleCables {
    const ID: &'static str = "hole-cables";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::RoughIn;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = true;
    type Input = Input;
    type Answer = Answer;

    fn sample() -> Input {
        Input::sample()
    }

    fn solve(input: &Input, basis: Basis) -> Result<Answer, Faults> {
        Ok(solve(input, basis.electrical.unwrap_or(Electrical::NEWEST_VERIFIED)))
    }

    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        Caution::all(&[(&w::PULL, None), (&w::OLD, None), (&w::LICENSED, None)])
    }

    fn sheet(_: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(answer)
    }
}

/// `cables ÷ hole`, as the working shows it.
fn taken(cables: Measure, hole: Measure) -> Expr {
    Expr::measure(cables).over(Expr::measure(hole)).told_in(&PERCENT)
}

/// What an expression comes to, as a measure.
fn measured(expr: &Expr) -> Option<Measure> {
    match expr.value().and_then(Value::amount) {
        Some(Amount::Measure(measure)) => Some(measure),
        _ => None,
    }
}

/// Works cables in a hole under an edition.
///
/// - Taken: outlines of all cables ÷ the hole's area.
/// - Carries: `min(at 90 °C × adjustment × correction, at 60 °C)`; each conductor but the ground is
///   counted, and no credit is given for cold.
/// - Rounding: what is carried down to a hundredth of an ampere; the bit up to a sixteenth of an inch.
///
/// # Source
/// NEC 334.80, Tables 310.16 and 310.15, as `rules::electrical` names them.
pub fn solve(input: &Input, edition: Electrical) -> Answer {
    let bit = input.bit.unwrap_or_default();
    let (mut area, mut widest, mut count, mut carrying) = (0, Length::ZERO, 0, 0);
    for each in &input.cables {
        let measured = (each.wide.unwrap_or_default(), each.thick.unwrap_or_default());
        let (wide, thick) = each.cable.size().unwrap_or(measured);
        area += outline(wide, thick).millionths() * each.count;
        widest = widest.max(wide).max(thick);
        count += each.count;
        carrying += each.cable.conductors().1 * each.count;
    }
    let cables = Measure::new(&SQUARE_INCH, area);
    let share =
        |bit| measured(&taken(cables, outline(bit, bit))).unwrap_or(Measure::whole(&PERCENT, 0));
    let mut smallest = Length::inches(1, 16);
    while !is_at_most(share(smallest), MOST_TAKEN) || smallest < widest {
        smallest = smallest.plus(Length::inches(1, 16));
    }
    let sealed = input.hole == Hole::Sealed
        && edition.or_newest(in_sealed_hole).is_some_and(|most| !is_at_most(count, most));
    let adjusted = sealed || (input.bundled && count > 1);
    let together = edition.or_newest(|edition| adjustment(edition, carrying)).filter(|_| adjusted);
    let warm = edition.or_newest(|edition| correction(edition, input.warmth));
    let warm = warm.unwrap_or(Measure::whole(&NUMBER, 1));
    let mut loads = Vec::new();
    for each in &input.cables {
        let Some(carries) =
            edition.or_newest(|edition| carries(edition, each.cable.conductors().0))
        else {
            continue;
        };
        loads.push(Load {
            cable: each.cable,
            here: in_amperes(&carried(&carries, together, warm)),
            breaker: each.breaker.amperes().unwrap_or(carries.usual),
            carries,
        });
    }
    let (hole, taken) = (outline(bit, bit), share(bit));
    Answer {
        edition,
        cables,
        hole,
        taken,
        bit,
        widest,
        smallest,
        sealed,
        carrying,
        together,
        warm,
        loads,
    }
}

#[cfg(test)]
mod tests;
