//! Heights off one line: how far up or down from a level line each box is marked.

mod drawing;
mod input;
mod sheet;
mod words;

pub use input::{BoxKind, Datum, Floor, Input, To, Wanted};

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::measure::{Length, Rounding, divide};
use crate::say;
use crate::sheet::{Caution, Fault, Faults, Sheet};
use crate::words::{Phrase, Text};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct SetOut;

/// A box, set out. What is down from the line is above zero.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Mark {
    /// From the line down to the point that its height is measured to.
    pub down: Length,
    /// From the line down to its bottom.
    pub bottom: Length,
    /// The line over its own finished floor.
    pub floor: Length,
    /// The line over that floor as it lies today.
    pub today: Length,
}

impl Mark {
    /// The same point over its own finished floor.
    pub fn height(&self) -> Length {
        self.floor.minus(self.down)
    }

    /// Its bottom over a level so far below the line.
    pub fn bottom_over(&self, level: Length) -> Length {
        level.minus(self.bottom)
    }
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The line over each finished floor. Never empty.
    pub floors: Vec<Length>,
    /// The highest of them, by its place: the least below the line.
    pub highest: usize,
    /// The lowest.
    pub lowest: usize,
    /// How far they differ.
    pub out: Length,
    /// Each box. Never empty.
    pub marks: Vec<Mark>,
    /// How far off the farthest mark may be, either way.
    pub tolerance: Option<Length>,
}

impl Answer {
    /// The line over the highest finished floor.
    pub fn line(&self) -> Length {
        self.floors[self.highest]
    }
}

impl Calculator for SetOut {
    const ID: &'static str = "set-out";
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
        solve(input)
    }

    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        Caution::all(&[(&w::DEAD, None), (&w::CUT, None), (&w::LICENSED, None)])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Sets boxes out.
///
/// - Finished floor: `reading − (board + bed + cover)` below the line.
/// - Mark: `finished floor − height`, of the highest floor or of the box's own; below zero it is up.
/// - Tolerance: the instrument's error × distance ÷ the distance that it is given over, up.
///
/// # Errors
/// No floor, no box, or a box over a floor that isn't there.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    let mut faults = Faults::new();
    let mut fault = |path: String, label, given: String, says| {
        faults.push(Fault { path, label, given, says });
    };
    let count = input.floors.len();
    if count == 0 {
        fault("floors".to_owned(), &w::FLOORS, String::new(), say!(w::NO_FLOOR));
    }
    if input.boxes.is_empty() {
        fault("boxes".to_owned(), &w::BOXES, String::new(), say!(w::NO_BOX));
    }
    for (at, wanted) in input.boxes.iter().enumerate() {
        if count > 0 && place(wanted) >= count {
            let path = ["boxes.", &at.to_string(), ".floor"].concat();
            let says = say!(w::NO_SUCH, wanted.floor, count as i64);
            fault(path, &w::STANDS, wanted.floor.to_string(), says);
        }
    }
    if !faults.is_empty() {
        return Err(faults);
    }
    let mut floors = Vec::new();
    let (mut highest, mut lowest) = (0, 0);
    for (at, floor) in input.floors.iter().enumerate() {
        let finished = floor.down.unwrap_or_default().minus(floor.build_up());
        floors.push(finished);
        if finished < floors[highest] {
            highest = at;
        }
        if finished > floors[lowest] {
            lowest = at;
        }
    }
    let mut marks = Vec::new();
    for wanted in &input.boxes {
        let at = place(wanted);
        let datum = if input.from == Datum::Own { at } else { highest };
        let down = floors[datum].minus(wanted.height.unwrap_or_default());
        let below = match wanted.to {
            To::Middle => input.tall.part(2),
            To::Bottom => Length::ZERO,
            To::Top => input.tall,
        };
        marks.push(Mark {
            down,
            bottom: down.plus(below),
            floor: floors[at],
            today: input.floors[at].down.unwrap_or_default(),
        });
    }
    let tolerance = input.reach.map(|reach| {
        let off = i128::from(input.off.nanometres()) * i128::from(reach.nanometres());
        let off = divide(off, input.over.nanometres().max(1).into(), Rounding::Up);
        Length::from_nanometres(i64::try_from(off).unwrap_or(i64::MAX))
    });
    let out = floors[lowest].minus(floors[highest]);
    Ok(Answer { floors, highest, lowest, out, marks, tolerance })
}

/// A box's floor, from 0.
fn place(wanted: &Wanted) -> usize {
    usize::try_from(wanted.floor - 1).unwrap_or(usize::MAX)
}

/// What a box is called.
fn name(at: usize, wanted: &Wanted) -> Text {
    let number = at as i64 + 1;
    match wanted.name.trim() {
        "" => say!(w::NAMED, number, wanted.kind.label()),
        own => say!(w::NAMED, number, own),
    }
}

/// What a floor is called.
fn floor_name(input: &Input, at: usize) -> Text {
    let number = at as i64 + 1;
    match input.floors.get(at).map_or("", |floor| floor.name.trim()) {
        "" => say!(w::NAMED, number, &w::FLOOR),
        own => say!(w::NAMED, number, own),
    }
}

#[cfg(test)]
mod tests;
