//! The room itself: floor, walls, ceiling, corners and air, by shape or wall by wall.
//!
//! It sizes nothing and counts no framing: which way the joists run is carried for what comes
//! after.

mod choices;
mod drawing;
mod input;
mod outline;
pub(in crate::calculators) mod rows;
mod sheet;
mod shown;
mod words;
mod working;

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::measure::{Area, Length, Rounding, Volume, divide};
use crate::plan::Plan;
use crate::sheet::{Caution, Faults, Sheet};
use crate::words::{Phrase, Text};
pub use choices::{At, End, OpeningKind, Runs, Shape, Spacing};
pub use input::{Framing, Input, Opening, OutsideWall, Walked};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct Room;

/// What a ceiling height makes of the room.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Tall {
    /// Floor to ceiling.
    pub height: Length,
    /// All walls, openings and all.
    pub walls: Area,
    /// Less what they are open for; nothing where they are open for more.
    pub net: Area,
    /// The air in it, to the nearest hundred-thousandth of a cubic millimetre.
    pub volume: Volume,
}

/// What two diagonals say of four walls.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OutOfSquare {
    /// How far the diagonals differ.
    pub difference: Length,
    /// How far the wall opposite wall 1 has shifted along it, to the nearest nanometre.
    pub shift: Length,
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The outline.
    pub plan: Plan,
    /// The floor; a flat ceiling has the same.
    pub floor: Area,
    /// All walls together.
    pub perimeter: Length,
    /// What the walls are open for.
    pub openings: Area,
    /// As it stands.
    pub now: Tall,
    /// As it will be.
    pub to_be: Option<Tall>,
    /// Whether each wall has the weather behind it.
    pub outside: Vec<bool>,
    /// From both diagonals.
    pub square: Option<OutOfSquare>,
    /// What doesn't fit together, though the areas stand.
    pub doubts: Vec<Text>,
}

impl Calculator for Room {
    const ID: &'static str = "room";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::Room;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = false;
    const IS_ROOM: bool = true;
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
            (&shown::SQUARE_UP, None),
            (&shown::OLD_FINISH, None),
            (&shown::TIES, None),
            (&shown::LOCAL, None),
        ])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Works a room out.
///
/// - Shape: all corners square, the ceiling flat. Lengths are finish to finish.
/// - Floor: exact. Walls: perimeter × height, exact. Air: floor × height.
/// - Shift: `(d₁² − d₂²) ÷ (4 × wall 1)`, derived from the law of cosines.
///
/// # Errors
/// Walls that make no room, at the field that is to be mended.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    let plan = outline::plan(input)?;
    let (floor, perimeter) = (plan.area(), plan.perimeter());
    let openings =
        input.openings.iter().fold(Area::ZERO, |sum, it| sum.plus(it.each().times(it.count)));
    let tall = |height: Length| {
        let walls = Area::of(perimeter, height);
        let net = walls.minus(openings).max(Area::ZERO);
        Tall { height, walls, net, volume: Volume::over(floor, height) }
    };
    let mut outside: Vec<bool> = plan.sides().iter().map(|_| false).collect();
    let said = input.outside.iter().filter_map(|it| it.wall.wall());
    let walked = input.walls.iter().enumerate().filter(|(_, it)| it.outside).map(|(at, _)| at);
    // Of the two lists the one that isn't asked is empty.
    for at in said.chain(walked) {
        if let Some(outside) = outside.get_mut(at) {
            *outside = true;
        }
    }
    let mut answer = Answer {
        floor,
        perimeter,
        openings,
        now: tall(input.height.unwrap_or_default()),
        to_be: input.height_to_be.map(tall),
        outside,
        square: square(input),
        doubts: Vec::new(),
        plan,
    };
    answer.doubts = outline::doubts(input, &answer);
    Ok(answer)
}

impl Opening {
    /// The area of one.
    pub fn each(&self) -> Area {
        Area::of(self.width.unwrap_or_default(), self.height.unwrap_or_default())
    }
}

fn square(input: &Input) -> Option<OutOfSquare> {
    let (first, second) = (input.diagonal_1?, input.diagonal_2?);
    let (longer, shorter) = (first.max(second), first.min(second));
    let more = Area::of(longer, longer).minus(Area::of(shorter, shorter)).square_nanometres();
    let by = i128::from(input.long?.nanometres().max(1)) * 4;
    let shift = i64::try_from(divide(more, by, Rounding::Nearest)).unwrap_or(i64::MAX);
    Some(OutOfSquare { difference: longer.minus(shorter), shift: Length::from_nanometres(shift) })
}

/// A room of the twelve rows of an outline, which another calculator's input has too.
macro_rules! of_outline {
    ($input:expr) => {
        $crate::calculators::room::Input {
            shape: $input.shape,
            long: $input.long,
            wide: $input.wide,
            notch_long: $input.notch_long,
            notch_wide: $input.notch_wide,
            leg_wide: $input.leg_wide,
            leg_long: $input.leg_long,
            leg_off: $input.leg_off,
            gap_long: $input.gap_long,
            gap_deep: $input.gap_deep,
            gap_off: $input.gap_off,
            walls: $input.walls.clone(),
            ..$crate::fields::Form::blank()
        }
    };
}
pub(crate) use of_outline;

#[cfg(test)]
mod tests;
