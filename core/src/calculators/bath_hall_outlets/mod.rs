//! Receptacles in a bathroom, halls, a foyer and a laundry, and off a tub or shower.

mod sheet;
mod words;

use super::{Calculator, Trade};
use crate::edition::{Basis, Electrical};
use crate::fields::{Form, Item, Kind, Preset, Row, Span, When, row};
use crate::measure::{Area, Length};
use crate::rules::electrical::room_receptacles::{Beside, is_foyer, is_hall};
use crate::sheet::{Caution, Fault, Faults, Sheet};
use crate::words::Phrase;
use crate::{choice, form};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct BathHallOutlets;

choice! {
    /// Where the receptacle nearest a tub or shower is.
    pub enum Tub {
        /// Not near.
        None = "none", w::NO_TUB;
        /// Where none may be.
        Over = "over", w::OVER;
        /// Beside it.
        Beside = "beside", w::BESIDE;
    }
}

choice! {
    /// How high beside it.
    pub enum Height {
        /// Where a hand in the tub reaches.
        Within = "within", w::WITHIN;
        /// Lower.
        Low = "low", w::LOW;
        /// Higher.
        High = "high", w::HIGH;
    }
}

impl Height {
    /// As the rule has it.
    pub const fn beside(self) -> Beside {
        match self {
            Self::Within => Beside::Within,
            Self::Low => Beside::Below,
            Self::High => Beside::Above,
        }
    }
}

const fn length(label: &'static Phrase, hint: &'static Phrase, most: i64) -> Row {
    let (least, most) = (Length::ZERO, Length::inches(most, 1));
    row(label, hint, Kind::Length(Span { least, most, why: &w::WHY, common: &[], optional: false }))
}

form! {
    /// A basin, and the receptacle nearest to it.
    pub struct Basin {
        /// From its outside edge.
        side: Option<Length>, length(&w::SIDE, &w::NOTHING, 240).foremost(|_| true);
        /// Below its top.
        below: Length, length(&w::BELOW, &w::BELOW_HINT, 60);
    }
}

form! {
    /// A hall.
    pub struct Hall {
        /// Along its middle.
        long: Option<Length>, length(&w::LONG, &w::NOTHING, 2_400).foremost(|_| true);
    }
}

static BASINS: Item = Item {
    name: &w::BASIN,
    rows: Basin::ROWS,
    most: 4,
    blank: || Basin::blank().write_parts(),
    presets: &[Preset { label: &w::BASIN, sets: &[] }],
};
static HALLS: Item = Item {
    name: &w::HALL,
    rows: Hall::ROWS,
    most: 6,
    blank: || Hall::blank().write_parts(),
    presets: &[Preset { label: &w::HALL, sets: &[] }],
};

form! {
    /// Rooms that need few.
    pub struct Input {
        /// In the bathroom.
        basins: Vec<Basin>, row(&w::BASINS, &w::BASINS_HINT, Kind::List(&BASINS));
        /// The receptacle nearest a tub or shower.
        tub: Tub, row(&w::TUB, &w::NOTHING, Kind::Choice(Tub::PICKS));
        /// Level, to its rim or threshold.
        tub_side: Option<Length>, length(&w::TUB_SIDE, &w::NOTHING, 240).when(When::Is("tub", &["beside"]));
        /// How high.
        height: Height, row(&w::HEIGHT, &w::NOTHING, Kind::Choice(Height::PICKS)).when(When::Is("tub", &["beside"]));
        /// Something between.
        barrier: bool, row(&w::BARRIER, &w::NOTHING, Kind::Flag).when(When::Is("tub", &["beside"]));
        /// Halls.
        halls: Vec<Hall>, row(&w::HALLS, &w::NOTHING, Kind::List(&HALLS));
        /// A foyer's floor.
        foyer: Option<Area>, row(&w::AREA, &w::NOTHING, Kind::Area(Span {
            least: Area::ZERO, most: Area::square_feet(2_000), why: &w::WHY, common: &[], optional: true,
        }));
        /// Its wide walls.
        walls: i64, row(&w::WALLS, &w::NOTHING, Kind::Count { least: 0, most: 12, why: &w::WHY });
        /// A laundry.
        laundry: bool, row(&w::LAUNDRY, &w::NOTHING, Kind::Flag);
        /// There now.
        have: Option<i64>, row(&w::HAVE, &w::NOTHING, Kind::Number(Span { least: 0, most: 60, why: &w::WHY, common: &[], optional: true }));
    }
    sample {
        basins: vec![Basin { side: Some(Length::inches(14, 1)), ..Basin::blank() }],
        tub: Tub::Beside,
        tub_side: Some(Length::inches(40, 1)),
        halls: vec![Hall { long: Some(Length::inches(132, 1)) }],
    }
}

/// What comes out: how many, by room.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The edition it was worked under.
    pub edition: Electrical,
    /// In the bathroom.
    pub bath: i64,
    /// In halls.
    pub halls: i64,
    /// In the foyer.
    pub foyer: i64,
    /// In the laundry.
    pub laundry: i64,
}

impl Answer {
    /// All of them.
    pub fn needed(&self) -> i64 {
        self.bath + self.halls + self.foyer + self.laundry
    }
}

impl Calculator for BathHallOutlets {
    const ID: &'static str = "bath-hall-outlets";
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
        Caution::all(&[(&w::DEAD, None), (&w::GFCI, None), (&w::LICENSED, None)])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Counts what these rooms need.
///
/// # Errors
/// None of them is put in.
pub fn solve(input: &Input, edition: Electrical) -> Result<Answer, Faults> {
    let is_empty = input.basins.is_empty()
        && input.halls.is_empty()
        && input.foyer.is_none()
        && !input.laundry
        && input.tub == Tub::None;
    if is_empty {
        let (path, label) = ("basins".to_owned(), &w::BASINS);
        let says = (&w::NOTHING_IN).into();
        return Err(vec![Fault { path, label, given: String::new(), says }]);
    }
    let halls = input.halls.iter().filter(|hall| is_hall(hall.long.unwrap_or_default()));
    Ok(Answer {
        edition,
        bath: (!input.basins.is_empty()).into(),
        halls: halls.count() as i64,
        foyer: if input.foyer.is_some_and(is_foyer) { input.walls } else { 0 },
        laundry: input.laundry.into(),
    })
}

#[cfg(test)]
mod tests;
