//! A job's boxes and cables as one graph: what each box holds, how long each cable is, what
//! each hole and circuit carries, what to buy and what to write on each end.

mod circuits;
mod clock;
mod counted;
mod drawing;
mod graph;
mod holes;
mod input;
mod labels;
mod off_wall;
mod rolls;
mod schedule;
mod sheet;
mod shown;
mod words;

pub use circuits::{Circuit, Worst};
pub use graph::{Answer, Laid, State as BoxState, solve};
pub use holes::Bundle;
pub use input::{Cable, Hole, Input, Mount, PlacedBox, Proof, Rolls, Run, State, Volts, What};
pub use rolls::Buy;

use super::{Calculator, Step, Trade, with_blanks};
use crate::edition::{Basis, Electrical};
use crate::rules::electrical::low_voltage::APART;
use crate::rules::electrical::rough_in::PLAN;
use crate::sheet::{Caution, Faults, Sheet};
use crate::words::Phrase;
use counted::Without;

/// The calculator.
#[derive(Debug)]
pub struct RoughIn;

impl Calculator for RoughIn {
    const ID: &'static str = "rough-in";
    const VERSION: u16 = 2;
    // 2: the room that boxes are placed in.
    const STEPS: &'static [Step] = &[with_blanks];
    const TRADE: Trade = Trade::RoughIn;
    const NAME: &'static Phrase = &words::NAME;
    const ABOUT: &'static Phrase = &words::ABOUT;
    const ELECTRICAL: bool = true;
    const TELLS_PLACES: bool = true;
    type Input = Input;
    type Answer = Answer;

    fn sample() -> Input {
        Input::sample()
    }

    fn solve(input: &Input, basis: Basis) -> Result<Answer, Faults> {
        Ok(solve(input, basis.electrical.unwrap_or(Electrical::NEWEST_VERIFIED)))
    }

    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        Caution::all(&[
            (&shown::DEAD, None),
            (&shown::OLD, None),
            (&shown::LICENSED, None),
            (&shown::NOT_ALL, None),
            (APART.says, Some(&APART)),
            (PLAN.says, Some(&PLAN)),
        ])
    }

    fn left_out(input: &Input) -> Faults {
        let mut all = counted::left_out(input);
        all.append(&mut clock::faults(input));
        all
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        match counted::counted(input) {
            None => sheet::sheet(input, answer, &Without::default()),
            Some(counted) => sheet::sheet(&counted.input, answer, &counted.without),
        }
    }
}

#[cfg(test)]
mod tests;
