//! A notice for the people who live in the house: what is off, until when, and what that means for
//! them. It tells a plan; that something is dead or empty it never says.

mod input;
mod sheet;
mod words;

pub use input::{Cold, Input, Line, Medical, What};

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::measure::time_of_day::minutes;
use crate::rules::residential::smoke_alarms::ALARMS_OUT;
use crate::rules::residential::while_off::{GAS, GENERATOR, MEDICAL, WAY};
use crate::say;
use crate::sheet::{Caution, Fault, Faults, Sheet};
use crate::words::Phrase;
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct OffTonight;

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// Lines by their place in the list, the first that is back first; those without times last.
    pub order: Vec<usize>,
    /// From when to when each is off, in minutes: see [`Line::span`].
    pub spans: Vec<Option<[i64; 2]>>,
    /// Which of them are off while people sleep, as far as their times are known.
    pub overnight: Vec<bool>,
}

impl Calculator for OffTonight {
    const ID: &'static str = "off-tonight";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::First;
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
            (&w::NOT_PROVED, None),
            (ALARMS_OUT.says, Some(&ALARMS_OUT)),
            (MEDICAL.says, Some(&MEDICAL)),
            (WAY.says, Some(&WAY)),
            (GAS.says, Some(&GAS)),
            (GENERATOR.says, Some(&GENERATOR)),
            (&w::SMELL, None),
        ])
    }

    fn left_out(input: &Input) -> Faults {
        left_out(input)
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Works what is off. Hours are those of a day of 24.
///
/// # Errors
/// Nothing is off.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    if input.off.is_empty() {
        let (path, given) = ("off".to_owned(), String::new());
        return Err(vec![Fault { path, label: &w::OFF, given, says: say!(w::NONE) }]);
    }
    let mut spans: Vec<Option<[i64; 2]>> = Vec::new();
    let (mut order, mut overnight): (Vec<usize>, Vec<bool>) = (Vec::new(), Vec::new());
    let back = |span: Option<[i64; 2]>| span.map_or(i64::MAX, |span| span[1]);
    for (at, line) in input.off.iter().enumerate() {
        let span = line.span();
        spans.push(span);
        overnight.push(span.is_some_and(|span| input.is_overnight(span)));
        let place = order.partition_point(|other| back(spans[*other]) <= back(span));
        order.insert(place, at);
    }
    Ok(Answer { order, spans, overnight })
}

/// Times that can't be read: such a line counts as one without times.
fn left_out(input: &Input) -> Faults {
    let mut faults = Faults::new();
    let mut odd = |path: String, label, typed: &str| {
        if !typed.trim().is_empty() && minutes(typed).is_none() {
            let (given, says) = (typed.to_owned(), (&w::TIME_HINT).into());
            faults.push(Fault { path, label, given, says });
        }
    };
    odd("night".to_owned(), &w::NIGHT, &input.night);
    odd("morning".to_owned(), &w::MORNING, &input.morning);
    for (at, line) in input.off.iter().enumerate() {
        let path = |key| ["off.", &at.to_string(), key].concat();
        odd(path(".off_time"), &w::OFF_TIME, &line.off_time);
        odd(path(".back_time"), &w::BACK_TIME, &line.back_time);
    }
    faults
}

#[cfg(test)]
mod tests;
