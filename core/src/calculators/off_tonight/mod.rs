//! A notice for the people who live in the house: what is off, until when, and what that means for
//! them. It tells a plan; that something is dead or empty it never says.

mod clock;
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
    /// From when to when each is off, in minutes: see [`Line::span`] and [`Input::tonight`].
    pub spans: Vec<Option<[i64; 2]>>,
    /// Which of them are off while people sleep; none where that isn't known: a time isn't given, or
    /// may mean either half of a day and isn't at night as it is read.
    pub overnight: Vec<Option<bool>>,
}

impl Calculator for OffTonight {
    const ID: &'static str = "off-tonight";
    const VERSION: u16 = 1;
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
    let (mut order, mut overnight) = (Vec::<usize>::new(), Vec::new());
    let back = |span: Option<[i64; 2]>| span.map_or(i64::MAX, |span| span[1]);
    let is_night_sure = clock::either_half(&[&input.night, &input.morning]).is_none();
    for (at, line) in input.off.iter().enumerate() {
        let span = line.span().map(|span| input.tonight(line, span));
        let is_sure = is_night_sure && clock::either_half(&line.typed()).is_none();
        spans.push(span);
        overnight.push(span.and_then(|it| input.is_overnight(it)).filter(|it| *it || is_sure));
        let place = order.partition_point(|other| back(spans[*other]) <= back(span));
        order.insert(place, at);
    }
    Ok(Answer { order, spans, overnight })
}

/// Times that can't be read, and days that leave open when it is off: such a line counts as one
/// without times, and the sheet asks for them.
fn left_out(input: &Input) -> Faults {
    let mut faults = Faults::new();
    let mut read = |path: String, label, typed: &str| {
        let typed = typed.trim();
        if !typed.is_empty() && minutes(typed).is_none() {
            let (given, says) = (typed.to_owned(), say!(w::CANNOT_READ, typed));
            faults.push(Fault { path, label, given, says });
        }
    };
    read("night".to_owned(), &w::NIGHT, &input.night);
    read("morning".to_owned(), &w::MORNING, &input.morning);
    for (at, line) in input.off.iter().enumerate() {
        let path = |key| ["off.", &at.to_string(), key].concat();
        read(path(".off_time"), &w::OFF_TIME, &line.off_time);
        read(path(".back_time"), &w::BACK_TIME, &line.back_time);
    }
    let mut wrong = |path: &str, label, given: String, says| {
        faults.push(Fault { path: path.to_owned(), label, given, says });
    };
    let path = |at: usize, key| ["off.", &at.to_string(), key].concat();
    for (at, line) in input.off.iter().enumerate() {
        let Some(back) = line.back_day else { continue };
        let is_timed = line.typed().iter().all(|it| minutes(it).is_some());
        match line.off_day {
            None => {
                wrong(&path(at, ".off_day"), &w::OFF_DAY, String::new(), say!(w::NEEDS_OFF_DAY));
            }
            Some(off) if off.number() > back.number() => {
                wrong(&path(at, ".back_day"), &w::BACK_DAY, back.exact(), say!(w::TOO_EARLY));
            }
            Some(_) if is_timed && line.span().is_none() => {
                let given = line.back_time.clone();
                wrong(&path(at, ".back_time"), &w::BACK_TIME, given, say!(w::TOO_EARLY));
            }
            Some(_) => {}
        }
    }
    faults
}

#[cfg(test)]
mod tests;
