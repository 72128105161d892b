//! Box fill: whether what is planned for a box fits in it, what else would, and what to do where
//! it doesn't.
//!
//! `input` holds the fields, `fill` the count, `advice` what else fits and what mends, `fit` the
//! depth, setback and free conductor, `sheet`, `shown` and `words` how it is shown, `section` the drawing.

mod advice;
mod choices;
mod enclosure;
mod fill;
mod fit;
mod input;
mod section;
mod sheet;
mod shown;
mod sizes;
mod words;

pub use advice::{Mend, Room, Suits, Wall};
pub use choices::{
    AddKind, BarrierKind, CableGround, Clamps, CutInto, DeviceKind, DeviceSize, How, SupportKind,
};
pub use enclosure::{Enclosure, Ring};
pub use fill::{Kind, Share, Side};
pub use fit::Fit;
pub use input::{Add, Barrier, Block, Cable, Device, Finish, Free, Input, Support, Wire};
pub use section::{Layer, Section};

use super::{Calculator, Trade};
use crate::edition::{Basis, Electrical};
use crate::measure::{Area, Volume};
use crate::rules::hazards::{Deed, Disturbs};
use crate::sheet::{Caution, Faults, Sheet};
use crate::words::Phrase;

/// The most paint that a cutout for one gang breaks, with what comes off beside it. Common
/// practice, and generous: a gang takes some 2 by 3 inches.
const PAINT_A_GANG: Area = Area::square_feet(1);

/// The calculator.
#[derive(Debug)]
pub struct BoxFill;

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The edition it was worked under.
    pub edition: Electrical,
    /// The box itself with all its gangs, before rings, covers and barriers.
    pub body: Volume,
    /// What rings and covers add.
    pub added: Volume,
    /// What barriers take.
    pub barriers: Volume,
    /// Each side that barriers make; one where there is none. Never empty.
    pub sides: Vec<Side>,
    /// The side with the least to spare, by its place in `sides`.
    pub tightest: usize,
    /// What else each side would take.
    pub room: Vec<Room>,
    /// The smallest boxes that would hold it all.
    pub suits: Vec<Suits>,
    /// What would make it fit, least work first; empty where it does.
    pub mends: Vec<Mend>,
    /// Depth, setback and free conductor.
    pub fit: Fit,
    /// The tightest side in section, filled from the back.
    pub section: Section,
}

impl Calculator for BoxFill {
    const ID: &'static str = "box-fill";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::RoughIn;
    const NAME: &'static Phrase = &words::NAME;
    const ABOUT: &'static Phrase = &words::ABOUT;
    const ELECTRICAL: bool = true;
    type Input = Input;
    type Answer = Answer;

    fn sample() -> Input {
        Input::sample()
    }

    fn solve(input: &Input, basis: Basis) -> Result<Answer, Faults> {
        solve(input, basis.electrical.unwrap_or(Electrical::NEWEST_VERIFIED))
    }

    fn cautions(input: Option<&Input>) -> Vec<Caution> {
        sheet::cautions(input)
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }

    fn disturbs(input: &Input) -> Option<Disturbs> {
        let painted = Some(PAINT_A_GANG.times(input.gangs));
        let of = |material| Disturbs { material, deed: Deed::Cut, area: None, painted };
        input.cut.material().map(of)
    }
}

/// Works a box under an edition.
///
/// - Fill: the sum of [`Share`]s, each an allowance of Table 314.16(B) times its count.
/// - Volume: box, rings and covers, less barriers, shared out to the sides by their gangs.
/// - Rounding: none; a side's share is rounded down to a millionth of a cubic inch.
///
/// # Errors
/// A conductor of 4 AWG or larger, a barrier or item on a side that isn't there, barriers that
/// leave no volume.
///
/// # Source
/// NEC 314.16, as `rules::electrical` names it clause by clause.
pub fn solve(input: &Input, edition: Electrical) -> Result<Answer, Faults> {
    let volumes = enclosure::volumes(input)?;
    let sides = fill::sides(input, edition, &volumes)?;
    let tightest = fill::tightest(&sides);
    let over = sides.iter().any(|side| side.fill > side.volume);
    Ok(Answer {
        edition,
        body: volumes.body,
        added: volumes.added,
        barriers: volumes.barriers,
        tightest,
        room: advice::room(input, edition, &sides),
        suits: advice::suits(input, edition, &volumes),
        mends: if over { advice::mends(input, edition) } else { Vec::new() },
        fit: fit::fit(input),
        section: section::section(input, &sides, tightest),
        sides,
    })
}

#[cfg(test)]
mod shown_tests;
#[cfg(test)]
mod tests;
