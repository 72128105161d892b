//! Three ways to keep the floor from scrapings: plastic, catching at the blade, or a bare slab that
//! is cleaned; side by side.
//!
//! It goes with scraping old texture and is held with it.

mod sheet;
mod words;

use super::hold::{Hold, Prices};
use super::strip::{self, Painted, Plastic};
use super::{Calculator, Trade, Withheld};
use crate::edition::Basis;
use crate::fields::{Form, Kind, Row, Span, row};
use crate::measure::unit::{HOUR, PERCENT, SQUARE_FOOT_AN_HOUR, WEIGHT};
use crate::measure::{Area, Length, Measure, Unit};
use crate::rules::finish::labor::{CLEAN_SLAB, PROTECT, STRIPPING};
use crate::rules::finish::sheeting::{LAP, TURN_UP};
use crate::rules::finish::texture::{CARRIED, DEBRIS};
use crate::rules::hazards::{Deed, Disturbs};
use crate::sheet::{Caution, Expr, Faults, Sheet, Steps};
use crate::words::{Amount, Phrase};
use crate::{choice, form};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct FloorCover;

choice! {
    /// What the floor is of.
    pub enum Floor {
        /// Nobody has said.
        NotSaid = "not-said", w::NOT_SAID;
        /// Wood, tile, carpet: it stays.
        Finished = "finished", w::FINISHED;
        /// Nothing on the concrete.
        Slab = "slab", w::SLAB;
    }
}

const fn side(label: &'static Phrase) -> Row {
    let (least, most) = (Length::inches(12, 1), Length::inches(1200, 1));
    row(
        label,
        &w::NOTHING,
        Kind::Length(Span { least, most, why: &w::WHY, common: &[], optional: false }),
    )
}

const fn measure(
    label: &'static Phrase,
    hint: &'static Phrase,
    unit: &'static Unit,
    [least, most]: [i64; 2],
    optional: bool,
) -> Row {
    let (least, most) = (Measure::whole(unit, least), Measure::whole(unit, most));
    row(label, hint, Kind::Measure(Span { least, most, why: &w::WHY, common: &[], optional }))
}

form! {
    /// A floor under a ceiling that is scraped.
    pub struct Input {
        /// Along one side.
        long: Length, side(&w::LONG).of_room("longest");
        /// Square to it.
        wide: Length, side(&w::WIDE).of_room("widest");
        /// What comes down, wet.
        wet: Option<Measure>, measure(&w::WET, &w::WET_HINT, &WEIGHT, [1, 50_000], false);
        /// Whether the texture is.
        painted: Painted, row(&w::TEXTURE, &w::NOTHING, Kind::Choice(Painted::PICKS));
        /// What it is of.
        floor: Floor, row(&w::FLOOR, &w::NOTHING, Kind::Choice(Floor::PICKS));
        /// Up each wall.
        turn_up: Length = TURN_UP, row(&w::TURN_UP, &w::NOTHING, Kind::Length(Span {
            least: Length::ZERO, most: Length::inches(48, 1), why: &w::WHY, common: &[], optional: false,
        }));
        /// As it comes off the roll.
        roll: Length = Length::inches(120, 1), row(&w::ROLL, &w::NOTHING, Kind::Length(Span {
            least: Length::inches(24, 1), most: Length::inches(480, 1), why: &w::WHY, common: &[], optional: false,
        }));
        /// One width over the next.
        lap: Length = LAP, row(&w::LAPS, &w::NOTHING, Kind::Length(Span {
            least: Length::ZERO, most: Length::inches(48, 1), why: &w::WHY, common: &[], optional: false,
        }));
        /// A bag weighs at most.
        carried: Measure = CARRIED, measure(&w::CARRIED, &w::NOTHING, &WEIGHT, [5, 100], false);
        /// In the pan or the hose at the blade.
        caught: Measure = Measure::whole(&PERCENT, 70), measure(&w::CAUGHT, &w::CAUGHT_HINT, &PERCENT, [0, 100], false);
        /// A full pan.
        pan: Measure = Measure::whole(&WEIGHT, 10), measure(&w::PAN, &w::NOTHING, &WEIGHT, [1, 100], false);
        /// Own rate on a slab.
        clean: Option<Measure>, measure(&w::CLEAN, &w::EMPTY, &SQUARE_FOOT_AN_HOUR, [10, 1_000], true);
        /// Own rate of laying plastic.
        protect: Option<Measure>, measure(&w::PROTECT, &w::EMPTY, &SQUARE_FOOT_AN_HOUR, [10, 1_000], true);
        /// Prices given.
        prices: Prices = Prices::blank(), row(&w::PRICES, &w::PRICES_HINT, Kind::Group(Prices::ROWS));
    }
    sample {
        long: Length::inches(192, 1),
        wide: Length::inches(144, 1),
        wet: Some(Measure::whole(&WEIGHT, 70)),
    }
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// With what turns up, and of which roll.
    pub plastic: Plastic,
    /// Bags to carry, whichever way it is caught.
    pub bags: i64,
    /// Misses the pan.
    pub falls: Measure,
    /// To empty.
    pub pans: i64,
    /// One worker's to lay plastic: quick, likely, slow.
    pub laying: [Measure; 3],
    /// One worker's to clean a slab: quick, likely, slow.
    pub cleaning: [Measure; 3],
    /// How.
    pub working: Steps,
}

impl Calculator for FloorCover {
    const ID: &'static str = "floor-cover";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::Strip;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = false;
    const PACED: &'static [&'static str] = &["laying", "cleaning"];
    type Input = Input;
    type Answer = Answer;

    fn sample() -> Input {
        Input::sample()
    }

    fn solve(input: &Input, _: Basis) -> Result<Answer, Faults> {
        solve(input)
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }

    /// Nothing of the plan: what holds it.
    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        Hold::cautions(None)
    }

    fn disturbs(input: &Input) -> Option<Disturbs> {
        Some(strip::disturbs(Deed::Strip, Area::of(input.long, input.wide), input.painted))
    }

    fn withholds(input: &Input) -> Option<Withheld> {
        Some(Withheld { prices: input.prices.clone(), part: None })
    }
}

/// Works a floor.
///
/// - Plastic: as stripping has it, in the direction that takes less of a roll.
/// - Bags: wet ÷ what one carries; pans: wet × caught ÷ a pan; both rounded up.
/// - Hours: floor ÷ a rate, to lay plastic or to clean a slab.
///
/// # Errors
/// A lap as wide as the roll.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    strip::lap_fits(input.roll, input.lap)?;
    let mut steps = Steps::default();
    let floor = Expr::area(Area::of(input.long, input.wide));
    let spread = strip::Input {
        long: input.long,
        wide: input.wide,
        turn_up: input.turn_up,
        roll: input.roll,
        lap: input.lap,
        ..strip::Input::blank()
    };
    let plastic = strip::floor(&spread, &mut steps);
    let wet = Expr::measure(input.wet.unwrap_or(Measure::whole(&WEIGHT, 0)));
    let caught = Expr::measure(input.caught);
    let falls = wet.clone().times(Expr::count(1).less(caught.clone()));
    let falls = steps
        .measure("falls", &w::FALLS, Some(&DEBRIS), &WEIGHT, falls)
        .unwrap_or(Measure::whole(&WEIGHT, 0));
    let mut loads = |key, name, expr: Expr| {
        let up = Expr::RoundUp(Box::new(expr));
        match steps.amount(key, name, Some(&DEBRIS), up) {
            Some(Amount::Count(count)) => count,
            _ => 0,
        }
    };
    let bags = loads("bags", &w::BAGS, wet.clone().over(Expr::measure(input.carried)));
    let pans = loads("pans", &w::PANS, wet.times(caught).over(Expr::measure(input.pan)));
    let mut hours = |key, name, own: Option<Measure>, rates: [Measure; 3]| {
        [2, 1, 0].map(|end: usize| {
            let mut aside = Steps::default();
            let steps = if end == 1 { &mut steps } else { &mut aside };
            let hours = floor.clone().over(Expr::measure(own.unwrap_or(rates[end])));
            let hours = steps.measure(key, name, Some(&STRIPPING), &HOUR, hours);
            hours.unwrap_or(Measure::whole(&HOUR, 0))
        })
    };
    let laying = hours("laying", &w::LAYING, input.protect, PROTECT);
    let cleaning = hours("cleaning", &w::CLEANING, input.clean, CLEAN_SLAB);
    Ok(Answer { plastic, bags, falls, pans, laying, cleaning, working: steps })
}

#[cfg(test)]
mod tests;
