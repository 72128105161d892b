//! What is taken down or covered before the work, and put back after it: what is still down, in
//! which order it goes back, and which alarms warn nobody meanwhile.

mod input;
mod sheet;
mod words;

pub use input::{How, Input, Taken, What};

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::say;
use crate::sheet::{Caution, Fault, Faults, Sheet};
use crate::words::Phrase;
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct TakenDown;

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// What isn't back yet, by its place in the list, in the order in which it goes back: what came
    /// down last first. What isn't dated comes down last.
    pub order: Vec<usize>,
    /// Alarms among them.
    pub alarms: i64,
}

impl Calculator for TakenDown {
    const ID: &'static str = "taken-down";
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
        solve(input)
    }

    fn cautions(input: Option<&Input>) -> Vec<Caution> {
        sheet::cautions(input)
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Works what is still down.
///
/// An alarm on the list is out until it is said to be back and tested, whatever its days say.
///
/// # Errors
/// Back before it came down.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    let mut faults = Vec::new();
    let mut order: Vec<usize> = Vec::new();
    let mut alarms = 0;
    for (at, taken) in input.items.iter().enumerate() {
        if let (Some(off), Some(back)) = (taken.off, taken.back)
            && back < off
        {
            let path = ["items.", &at.to_string(), ".back"].concat();
            let says = say!(w::TOO_EARLY, off.exact());
            faults.push(Fault { path, label: &w::BACK, given: back.exact(), says });
        }
        if taken.is_back() {
            continue;
        }
        alarms += i64::from(taken.what.is_alarm());
        // In place one by one: later days first, and of one day the later on the list.
        let is_later = |other: &usize| match (input.items[*other].off, taken.off) {
            (Some(other), Some(off)) => other > off,
            (other, off) => other.is_none() && off.is_some(),
        };
        let place = order.partition_point(is_later);
        order.insert(place, at);
    }
    if faults.is_empty() { Ok(Answer { order, alarms }) } else { Err(faults) }
}

#[cfg(test)]
mod tests;
