//! Earliest day for each trade: when each step of a job can begin, which chain of steps the last day
//! hangs on, how far the others may slip, and when to call.

mod input;
mod inspections;
mod path;
mod sheet;
mod waits;
mod words;

pub use input::{Input, Off, Step, Who};
pub use inspections::Early;
pub use path::{Answer, Because, Planned, solve};

use super::{Calculator, Step as StepOn, Trade, with_blanks};
use crate::edition::Basis;
use crate::rules::planning::CRITICAL_PATH;
use crate::sheet::{Caution, Faults, Sheet};
use crate::words::Phrase;
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct TradeDays;

impl Calculator for TradeDays {
    const ID: &'static str = "trade-days";
    const VERSION: u16 = 2;
    // 2: what covers nothing.
    const STEPS: &'static [StepOn] = &[with_blanks];
    const TRADE: Trade = Trade::Job;
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
        Caution::all(&[
            (&w::COVER, None),
            (&w::GUESS, None),
            (&w::DRIES, None),
            (CRITICAL_PATH.says, Some(&CRITICAL_PATH)),
        ])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

#[cfg(test)]
mod tests;
