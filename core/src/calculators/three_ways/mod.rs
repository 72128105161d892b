//! Three ways to be rid of a textured ceiling side by side: strip and skim, board over, tear out
//! and board anew.
//!
//! It is held as tearing out is, the deed whose evidence is the strictest: paint then is never
//! minor. A comparison opens no work: each way has a hold of its own.

mod input;
mod sheet;
mod ways;
mod words;

pub use input::{Input, Rates};
pub use ways::{Way, Worked};

use super::hold::Hold;
use super::strip::disturbs;
use super::{Calculator, Trade, Withheld};
use crate::edition::Basis;
use crate::measure::Measure;
use crate::rules::hazards::{Deed, Disturbs};
use crate::sheet::{Caution, Faults, Sheet, Steps};
use crate::words::Phrase;
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct ThreeWays;

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// In the order of [`Way::ALL`].
    pub ways: [Worked; 3],
    /// Boarded over: all that the joists carry as far as it is said, with themselves.
    pub carried: Measure,
    /// Old board alone, torn out.
    pub torn: Measure,
    /// It heaps up to, at least and at most.
    pub heap: [Measure; 2],
    /// How.
    pub working: Steps,
}

impl Calculator for ThreeWays {
    const ID: &'static str = "three-ways";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::Strip;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = false;
    type Input = Input;
    type Answer = Answer;

    fn sample() -> Input {
        Input::sample()
    }

    fn solve(input: &Input, _: Basis) -> Result<Answer, Faults> {
        ways::solve(input)
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }

    /// Nothing of the plan: what holds it.
    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        Hold::cautions(None)
    }

    fn disturbs(input: &Input) -> Option<Disturbs> {
        Some(disturbs(Deed::TearOut, input.ceiling(), input.painted))
    }

    fn withholds(input: &Input) -> Option<Withheld> {
        Some(Withheld { prices: input.prices.clone(), part: Some(sheet::holds()) })
    }
}

#[cfg(test)]
mod tests;
