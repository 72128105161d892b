//! Stripping a textured ceiling: water, what comes down, bags, plastic and hours.
//!
//! It scrapes old texture whatever is put in, so that it is always held until a hold for that is
//! open; till then its sheet has the area, the samples, what they cost and a price to get.

mod amounts;
mod input;
mod plastic;
mod sheet;
mod words;

pub use amounts::Amounts;
pub use input::{Input, Painted, Spread};
pub use plastic::{Laid, Plastic, floor, floor_material, lap_fits};

use super::hold::Hold;
use super::{Calculator, Trade, Withheld};
use crate::edition::Basis;
use crate::measure::{Area, Length};
use crate::rules::finish::sheeting::SHEETING;
use crate::rules::hazards::{Deed, Disturbs, Material};
use crate::sheet::{Caution, Expr, Faults, Sheet, Steps};
use crate::words::Phrase;
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct Strip;

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// What is scraped.
    pub area: Area,
    /// Low, likely, high.
    pub ends: [Amounts; 3],
    /// On the floor.
    pub floor: Plastic,
    /// On the walls.
    pub walls: Option<Plastic>,
    /// To buy for both, strips cut whole.
    pub roll: Length,
    /// How.
    pub working: Steps,
}

impl Calculator for Strip {
    const ID: &'static str = "stripping";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::Strip;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = false;
    const PACED: &'static [&'static str] = &["hours", "bags"];
    type Input = Input;
    type Answer = Answer;

    fn sample() -> Input {
        Input::sample()
    }

    fn solve(input: &Input, _: Basis) -> Result<Answer, Faults> {
        solve(input)
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }

    /// Nothing of the plan: what holds it.
    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        Hold::cautions(None)
    }

    fn disturbs(input: &Input) -> Option<Disturbs> {
        Some(disturbs(Deed::Strip, input.scraped(), input.painted))
    }

    fn withholds(input: &Input) -> Option<Withheld> {
        Some(Withheld { prices: input.prices.clone(), part: None })
    }
}

/// What a deed does to so much old texture. Paint that nobody has looked at is not none.
pub fn disturbs(deed: Deed, area: Area, painted: Painted) -> Disturbs {
    let painted = match painted {
        Painted::NotSaid => None,
        Painted::No => Some(Area::ZERO),
        Painted::Yes => Some(area),
    };
    Disturbs { material: Material::Texture, deed, area: Some(area), painted }
}

/// Works a ceiling that is scraped.
///
/// - Dry: area × thickness × density, or area × what a dried test square foot weighed.
/// - Water: area ÷ 100 sq ft × gallons × passes. Wet: dry + water.
/// - Bags: the more of heaped volume ÷ bag and wet ÷ what one carries, each rounded up.
/// - Plastic: (long + 2 × turn-up) × (wide + 2 × turn-up), in the direction that takes less of a roll.
/// - Hours: area ÷ rates to protect and to scrape.
///
/// # Errors
/// A lap as wide as the roll.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    lap_fits(input.roll, input.lap)?;
    let mut working = Steps::default();
    let area = input.scraped();
    // The likely end is written out; the others are worked aside.
    let ends = [0, 1, 2].map(|end| {
        let mut aside = Steps::default();
        amounts::amounts(input, end, if end == 1 { &mut working } else { &mut aside })
    });
    let floor = plastic::floor(input, &mut working);
    let walls = plastic::walls(input, &mut working);
    let both = [Some(floor), walls].into_iter().flatten();
    let roll = Expr::Sum(both.map(|it| Expr::length(it.best().roll)).collect());
    let roll = working.length("roll", &w::ROLL_ALL, Some(&SHEETING), roll).unwrap_or_default();
    Ok(Answer { area, ends, floor, walls, roll, working })
}

#[cfg(test)]
mod tests;
