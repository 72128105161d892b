//! Boards: how many, how each is cut, and where it hangs.

mod bands;
mod drawing;
mod input;
mod places;
mod plans;
mod sheet;
mod strips;
mod surface;
mod words;

pub use bands::{Band, bands};
pub use input::{
    Input, MEMBERS, Member, OPENINGS, Opening, Run as Way, Stock, Surface, Want, Wide,
};
pub use plans::{Answer, Looking, Piece, Plan, Size, fewest};
pub use surface::{Ground, Part, Run};

use super::hold::Prices;
use super::{Begin, Calculator, Going, Step, Trade, Withheld, with_blanks};
use crate::edition::Basis;
use crate::fields::Form;
use crate::rules::hazards::{Deed, Disturbs};
use crate::sheet::{Caution, Faults, Sheet};
use crate::words::Phrase;
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct Boards;

impl Calculator for Boards {
    const ID: &'static str = "boards";
    const VERSION: u16 = 2;
    // 2: which way the joists run.
    const STEPS: &'static [Step] = &[with_blanks];
    const TRADE: Trade = Trade::Finish;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = false;
    const BEGIN: Option<Begin<Input, Answer>> = Some(|input| Ok(Box::new(Looking::new(input)?)));
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

    fn disturbs(input: &Input) -> Option<Disturbs> {
        let area = || Ground::new(input).ok().map(|ground| ground.area());
        let of = |material| Disturbs { material, deed: Deed::Cover, area: area(), painted: None };
        input.old.material().filter(|_| input.over).map(of)
    }

    fn withholds(input: &Input) -> Option<Withheld> {
        let prices = Prices::blank();
        Self::disturbs(input).map(|_| Withheld { prices, part: None })
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Looks for layouts to the end.
///
/// - Model: rows across the surface from its first edge, the last as wide as what is left; of two
///   widths as [`bands`] chooses, each row cut from boards of its own; boards
///   end on framing, no two rows that touch share an end joint, no piece is shorter than the
///   least, any offcut may hang in any run; two strips of half a width or less come from one board.
///   A cut takes nothing.
/// - Over a ceiling's joists that boards run along, or upright on studs, ends meet on backing, and which
///   edges lie on framing is told.
/// - Each length that the shop has is looked at by itself, then all together for the least board
///   bought; see [`crate::layout`] for what is proven.
/// - Of layouts as good, the one whose end joints keep out of the middle third of a ceiling and off
///   the corners of openings.
///
/// # Errors
/// Walls that make no room; openings past the wall or over each other; joists both ways; no length;
/// framing that no board reaches across.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    let mut looking = Looking::new(input)?;
    while !looking.step() {}
    looking.answer()
}

#[cfg(test)]
mod tests;
