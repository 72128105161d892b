//! The heat that a raised ceiling adds, the air that it asks for, and how deep to insulate.
//!
//! A hint for the talk with whoever sizes furnace and ducts: it sizes nothing itself.

mod input;
mod season;
mod sheet;
mod words;

pub use input::{Behind, Blown, By, Ceiling, Holds, Input};
pub use season::Season;

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::measure::{Length, Measure, Unit, unit};
use crate::say;
use crate::sheet::{Caution, Expr, Fault, Faults, Sheet, Value};
use crate::words::{Amount, Phrase};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct AddedHeat;

/// Blown insulation.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Depth {
    /// R an inch: the bag's, or the low end of its kind.
    pub per_inch: Measure,
    /// Weight: the bag's, or the high end of its kind.
    pub density: Measure,
    /// Settled.
    pub deep: Length,
    /// On the board under it.
    pub weight: Measure,
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// In winter.
    pub heating: Season,
    /// In summer.
    pub cooling: Option<Season>,
    /// Where something is blown in.
    pub depth: Option<Depth>,
}

impl Calculator for AddedHeat {
    const ID: &'static str = "added-heat";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::Framing;
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
            (&w::DEFER, None),
            (&w::SUN, None),
            (&w::TEST, None),
            (&w::CLEAR, None),
            (&w::LOCAL, None),
        ])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Works what a raised ceiling changes.
///
/// - Heat: wall + air + ceiling, Btu/h, each as [`Season`] has it, to the nearest millionth.
/// - Depth: R ÷ R an inch; weight: depth × density.
///
/// # Errors
/// A wall to the outside or an attic without its R or U; more of it inside than there is.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    let (path, label, given) = match input.holds.by {
        By::R => ("holds.r", &w::R, input.holds.r),
        By::U => ("holds.u", &w::U, input.holds.u),
    };
    if given.is_none() && input.holds.behind != Behind::Heated {
        let (path, given) = (path.to_owned(), String::new());
        return Err(vec![Fault { path, label, given, says: (&w::NEEDED).into() }]);
    }
    let (wall, inside) = (input.wall.unwrap_or_default(), input.holds.inside.unwrap_or_default());
    if inside > wall {
        let (path, given) = ("holds.inside".to_owned(), inside.exact());
        let says = say!(w::MORE_INSIDE, wall);
        return Err(vec![Fault { path, label: &w::INSIDE, given, says }]);
    }
    let season = |degrees: Measure, supply| season::season(input, degrees, supply);
    let none = Measure::whole(&unit::DEGREES, 0);
    Ok(Answer {
        heating: season(input.heating.unwrap_or(none), input.supply_heat),
        cooling: input.cooling.map(|degrees| season(degrees, input.supply_cool)),
        depth: depth(&input.blown),
    })
}

fn depth(blown: &Blown) -> Option<Depth> {
    let (low, heavy) = blown.kind.typical()?;
    let (per_inch, density) = (blown.per_inch.unwrap_or(low), blown.density.unwrap_or(heavy));
    let deep = match deep(blown.r?, per_inch).value().and_then(Value::amount) {
        Some(Amount::Length(deep)) => deep,
        _ => Length::ZERO,
    };
    let weight = told(&weight(deep, density), &unit::PSF);
    Some(Depth { per_inch, density, deep, weight })
}

fn deep(r: Measure, per_inch: Measure) -> Expr {
    Expr::measure(r).over(Expr::measure(per_inch))
}

fn weight(deep: Length, density: Measure) -> Expr {
    Expr::length(deep).times(Expr::measure(density)).told_in(&unit::PSF)
}

/// What an expression comes to in a unit that it measures; else none of it.
fn told(expr: &Expr, unit: &'static Unit) -> Measure {
    match expr.value().and_then(Value::amount) {
        Some(Amount::Measure(measure)) if measure.unit() == unit => measure,
        _ => Measure::whole(unit, 0),
    }
}

#[cfg(test)]
mod tests;
