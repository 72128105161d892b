//! Where smoke alarms may sit: how many a house needs, and one place measured.

mod sheet;
mod words;

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::fields::{Kind, Row, Span, When, row};
use crate::measure::Length;
use crate::rules::residential::alarm_places::Sensing;
use crate::sheet::{Caution, Faults, Sheet};
use crate::words::Phrase;
use crate::{choice, form};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct AlarmPlaces;

choice! {
    /// What it is fastened to.
    pub enum Mount {
        /// Flat.
        Ceiling = "ceiling", w::CEILING;
        /// Below it.
        Wall = "wall", w::WALL;
        /// Up to a peak.
        Slope = "slope", w::SLOPE;
    }
}

/// One that feeds a check of its own; in inches.
const fn far(label: &'static Phrase, hint: &'static Phrase, most: i64) -> Row {
    let (least, most) = (Length::ZERO, Length::inches(most, 1));
    row(label, hint, Kind::Length(Span { least, most, why: &w::WHY, common: &[], optional: true }))
        .aside()
}

const fn count(label: &'static Phrase, hint: &'static Phrase) -> Row {
    row(label, hint, Kind::Count { least: 0, most: 12, why: &w::WHY })
}

form! {
    /// A house, and a place for one alarm.
    pub struct Input {
        /// Each takes one.
        bedrooms: i64 = 1, count(&w::BEDROOMS, &w::NOTHING);
        /// One outside each.
        areas: i64 = 1, count(&w::AREAS, &w::AREAS_HINT);
        /// One on each.
        levels: i64, count(&w::LEVELS, &w::NOTHING);
        /// There now.
        have: Option<i64>, row(&w::HAVE, &w::NOTHING, Kind::Number(Span { least: 0, most: 60, why: &w::WHY, common: &[], optional: true }));
        /// How it senses.
        sensing: Sensing, row(&w::SENSING, &w::NOTHING, Kind::Choice(Sensing::PICKS));
        /// A button on it.
        silence: bool, row(&w::SILENCE, &w::NOTHING, Kind::Flag);
        /// What it is fastened to.
        mount: Mount, row(&w::MOUNT, &w::NOTHING, Kind::Choice(Mount::PICKS));
        /// To a bathroom's door.
        bath: Option<Length>, far(&w::BATH, &w::BATH_HINT, 1_200);
        /// To a supply register's edge.
        register: Option<Length>, far(&w::REGISTER, &w::NOTHING, 1_200);
        /// To a fan's blades.
        fan: Option<Length>, far(&w::FAN, &w::NOTHING, 1_200);
        /// To where it is cooked.
        cooking: Option<Length>, far(&w::COOKING, &w::COOKING_HINT, 1_200);
        /// To the farthest bedroom's door.
        bedroom: Option<Length>, far(&w::BEDROOM, &w::BEDROOM_HINT, 1_200);
        /// Its top below the ceiling.
        top: Option<Length>, far(&w::TOP, &w::NOTHING, 120).when(When::Is("mount", &["wall"]));
        /// To the peak.
        peak: Option<Length>, far(&w::PEAK, &w::NOTHING, 600).when(When::Is("mount", &["slope"]));
        /// Below it.
        below: Option<Length>, far(&w::BELOW, &w::NOTHING, 240).when(When::Is("mount", &["slope"]));
    }
    sample {
        bedrooms: 3,
        levels: 1,
        sensing: Sensing::Photo,
        bath: Some(Length::inches(48, 1)),
        register: Some(Length::inches(40, 1)),
        cooking: Some(Length::inches(264, 1)),
    }
}

/// What comes out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Answer {
    /// In bedrooms, outside sleeping areas, on other levels.
    pub needed: [i64; 3],
}

impl Answer {
    /// All of them.
    pub fn all(&self) -> i64 {
        self.needed.iter().sum()
    }
}

impl Calculator for AlarmPlaces {
    const ID: &'static str = "alarm-places";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::RoughIn;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = false;
    const TELLS_PLACES: bool = true;
    type Input = Input;
    type Answer = Answer;

    fn sample() -> Input {
        Input::sample()
    }

    fn solve(input: &Input, _: Basis) -> Result<Answer, Faults> {
        Ok(solve(input))
    }

    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        sheet::cautions()
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Counts the alarms that a house needs.
///
/// - Needed: one in each bedroom, outside each sleeping area and on each level that has neither.
pub fn solve(input: &Input) -> Answer {
    Answer { needed: [input.bedrooms, input.areas, input.levels] }
}

#[cfg(test)]
mod tests;
