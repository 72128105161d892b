//! The hold: what has to be known before old material is cut, scraped, sanded, torn out or
//! covered, and what a bid can say meanwhile.
//!
//! One hold is one homogeneous area: the same material, colour, texture and date. It is shut
//! until every gate is open, and a blank never opens one. Nothing here says that a thing may be
//! done; it says what is still missing. Gates:
//!
//! - **Surface**: place, material, what is done, area, the house's year; pipe length for wraps.
//!   Nothing of it, 0, is not measured.
//! - **Report**: none detected, by a named and accredited laboratory, with date and place. A
//!   trace asks the authority and stays shut; more than one percent and vermiculite stay shut.
//!   A house or a material of after 1980 needs a report as any other: its year proves nothing.
//! - **Samples**: at least as many as the area takes.
//! - **Paint**, in a house of before 1978 or of an unknown year: a test without lead with who and
//!   when; or a certified firm does the work; or the painted surface is said and minor, no window
//!   is said to be replaced, and nothing painted is torn out. A test that found lead shuts no more than none: what is
//!   minor stays minor, with conditions. Paint in a later house is not asked about.
//! - **State and local rule**: asked, with who said what; a stricter one has been met.
//!
//! How asbestos or lead work is done is not here and never will be.

mod gates;
mod input;
mod opening;
mod sheet;
mod words;

pub use gates::{Gate, Reason, Settled};
pub use input::{
    Asbestos, Building, Input, Lead, Local, Office, Paint, Prices, Report, Who, Window,
};
pub use opening::{Miss, Opened, solve};
pub use sheet::{ahead, instead};

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::rules::compare::Limit;
use crate::rules::hazards::asbestos::{ADVICE, SAMPLES};
use crate::rules::hazards::local::STRICTER;
use crate::say;
use crate::sheet::{Caution, Faults, Sheet, Source, Standing};
use crate::words::{Phrase, Text};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct Hold;

/// What comes out.
#[derive(Debug)]
pub struct Answer {
    /// What has to be settled.
    pub gates: Vec<Gate>,
    /// What settles the paint.
    pub settled: Option<Settled>,
    /// The fewest samples of the area; of an unknown one, the fewest of any.
    pub samples: Limit<i64>,
    /// Samples could open it; else no count does.
    pub samples_help: bool,
    /// Those samples at the price given, in whole dollars.
    pub lab_cost: Option<i64>,
    /// Whether an agency is told ahead, should it hold more than one percent.
    pub notice: Notice,
    /// What presumes that it holds asbestos, if anything does.
    pub presumed: Option<&'static Source>,
    /// Whether the local limit on its area is reached; none where none is said.
    pub local: Option<bool>,
    /// What opens it, once every gate is open.
    pub opened: Option<Opened>,
}

impl Answer {
    /// All that keeps it shut, in the order in which it is settled.
    pub fn reasons(&self) -> impl Iterator<Item = &Reason> {
        self.gates.iter().flat_map(|gate| &gate.reasons)
    }
}

/// Whether an agency is told ahead of asbestos work.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Notice {
    /// The area isn't said.
    SizeUnknown,
    /// It is loose, and its volume decides.
    Loose,
    /// It is below the size that is told.
    Below,
    /// It is of that size, and the number of dwellings decides.
    DwellingsUnknown,
    /// It is of that size, in a building that is left out.
    LeftOut,
    /// It is due.
    Due,
}

impl Calculator for Hold {
    const ID: &'static str = "hold";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::First;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = false;
    const OPENS: Option<fn(Answer) -> Option<Opened>> = Some(|answer| answer.opened);
    type Input = Input;
    type Answer = Answer;

    fn sample() -> Input {
        Input::sample()
    }

    fn solve(input: &Input, _: Basis) -> Result<Answer, Faults> {
        Ok(solve(input))
    }

    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        Caution::all(&[
            (&w::DO_NOT, Some(&ADVICE)),
            (&w::STRICTER_CAUTION, Some(&STRICTER)),
            (ADVICE.says, Some(&ADVICE)),
            (&w::INSPECTOR, Some(&SAMPLES)),
        ])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }

    fn standing(answer: &Answer) -> Standing {
        match &answer.opened {
            Some(opened) => Standing::Opened(opened.says()),
            None => Standing::Held(answer.reasons().map(|reason| reason.says.clone()).collect()),
        }
    }
}

impl Opened {
    /// Which hold it is, in words.
    pub fn says(&self) -> Text {
        say!(w::OPENED_BY, self.place(), self.material().label(), self.dated().exact())
    }
}

#[cfg(test)]
mod tests;
