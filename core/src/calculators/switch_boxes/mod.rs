//! Switches of one light, box by box: cables, what their wires do, and how full the boxes are.

mod drawing;
mod runs;
mod sheet;
mod words;

pub use runs::{Place, Role, Run, Wire};

use super::{Calculator, Trade, box_fill};
use crate::edition::{Basis, Electrical};
use crate::fields::{Form, Kind, Span, When, row};
use crate::measure::Volume;
use crate::rules::electrical::switch_neutral::{ONE_PATH, WHITE_HOT};
use crate::sheet::{Caution, Faults, Sheet};
use crate::words::Phrase;
use crate::{choice, form};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct SwitchBoxes;

choice! {
    /// Where the feed comes in.
    pub enum Feed {
        /// To the first switch.
        Switch = "switch", w::AT_SWITCH;
        /// To the light.
        Light = "light", w::AT_LIGHT;
    }
}

choice! {
    /// Where the light's cable leaves.
    pub enum Leaves {
        /// Where the feed comes in.
        First = "first", w::FIRST;
        /// At the other end.
        Last = "last", w::LAST;
    }
}

choice! {
    /// Where a neutral is.
    pub enum Neutral {
        /// In every switch's box.
        Each = "each", w::EACH;
        /// Where the way of the cables brings it.
        AsItLies = "as-it-lies", w::WHERE_IT_LIES;
    }
}

choice! {
    /// The wires' size.
    pub enum Size {
        /// 14 AWG.
        Awg14 = "14", w::S14;
        /// 12 AWG.
        Awg12 = "12", w::S12;
    }
}

form! {
    /// A light and its switches.
    pub struct Input {
        /// How many switches.
        points: i64 = 2, row(&w::POINTS, &w::NOTHING, Kind::Count { least: 1, most: 6, why: &w::WHY_POINTS });
        /// Where the feed comes in.
        feed: Feed, row(&w::FEED, &w::NOTHING, Kind::Choice(Feed::PICKS));
        /// Whether it goes on from there.
        onward: bool, row(&w::ONWARD, &w::NOTHING, Kind::Flag);
        /// Where the light's cable leaves.
        leaves: Leaves, row(&w::LEAVES, &w::NOTHING, Kind::Choice(Leaves::PICKS)).when(When::Is("feed", &["switch"]));
        /// Where a neutral is.
        neutral: Neutral, row(&w::NEUTRAL, &w::NOTHING, Kind::Choice(Neutral::PICKS));
        /// The wires' size.
        size: Size, row(&w::SIZE, &w::NOTHING, Kind::Choice(Size::PICKS));
        /// What each box holds.
        volume: Volume, row(&w::VOLUME, &w::VOLUME_HINT, Kind::Volume(Span {
            least: Volume::hundredths(100),
            most: Volume::hundredths(5_000),
            why: &w::WHY_VOLUME,
            common: &[Volume::hundredths(1_800), Volume::hundredths(2_030), Volume::hundredths(2_250)],
            optional: false,
        }));
        /// Whether the boxes clamp inside.
        clamps: bool, row(&w::CLAMPS, &w::NOTHING, Kind::Flag);
    }
    sample {
        volume: Volume::hundredths(2_250),
    }
}

/// A box and what is in it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Filled {
    /// Which.
    pub place: Place,
    /// As the fill of boxes counts it.
    pub side: box_fill::Side,
    /// Whether a neutral is in it.
    pub has_neutral: bool,
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The edition it was worked under.
    pub edition: Electrical,
    /// All cables, from the feed on.
    pub runs: Vec<Run>,
    /// The switches' boxes, from the first on.
    pub switches: Vec<Filled>,
    /// The light's box: its cables alone.
    pub light: Filled,
}

impl Calculator for SwitchBoxes {
    const ID: &'static str = "switch-boxes";
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
        solve(input, basis.electrical.unwrap_or(Electrical::NEWEST_VERIFIED))
    }

    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        Caution::all(&[
            (&w::DEAD, None),
            (WHITE_HOT.says, Some(&WHITE_HOT)),
            (ONE_PATH.says, Some(&ONE_PATH)),
            (&w::LICENSED, None),
        ])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// What is in the box at a place, counted as a box's fill is.
fn filled(
    input: &Input,
    runs: &[Run],
    place: Place,
    edition: Electrical,
) -> Result<Filled, Faults> {
    let mut cables = Vec::new();
    let mut has_neutral = false;
    for run in runs.iter().filter(|run| run.from == place || run.to == place) {
        cables.push(box_fill::Cable { cable: run.cable, ..box_fill::Cable::blank() });
        has_neutral |= run.wires.iter().any(|wire| wire.role == Role::Neutral);
    }
    let inside = box_fill::Clamps::Inside;
    let is_switch = matches!(place, Place::Switch(_));
    let of = box_fill::Input {
        marked: input.volume,
        cables,
        devices: if is_switch { vec![box_fill::Device::blank()] } else { Vec::new() },
        clamps: if input.clamps { inside } else { box_fill::Clamps::Outside },
        ..box_fill::Input::blank()
    };
    let answer = box_fill::solve(&of, edition)?;
    let side = answer.sides.into_iter().next().ok_or_else(Vec::new)?;
    Ok(Filled { place, side, has_neutral })
}

/// Lays out the cables of a light's switches under an edition, and fills their boxes.
///
/// # Errors
/// Those of a box's fill.
///
/// # Source
/// NEC 404.2(A), 300.3(B), 200.7(C), 314.16, as `rules::electrical` has them.
pub fn solve(input: &Input, edition: Electrical) -> Result<Answer, Faults> {
    let runs = runs::runs(input);
    let mut switches = Vec::new();
    for at in 1..=input.points {
        switches.push(filled(input, &runs, Place::Switch(at), edition)?);
    }
    let light = filled(input, &runs, Place::Light, edition)?;
    Ok(Answer { edition, runs, switches, light })
}

#[cfg(test)]
mod tests;
