//! Joint compound: gallons, weight, pails, tape and screws, by joints and by a published rule.

mod amounts;
mod input;
mod sheet;
mod words;

pub use input::{By, Input, Mend};

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::measure::unit::{GALLON, WEIGHT};
use crate::measure::{Length, Measure};
use crate::rules::finish::levels::Level;
use crate::rules::hazards::{Deed, Disturbs};
use crate::sheet::{Caution, Fault, Faults, Sheet, Steps};
use crate::words::Phrase;
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct JointCompound;

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// Wet, with what is lost.
    pub wet: Measure,
    /// At least and at most.
    pub range: [Measure; 2],
    /// By joints and by area, whichever the answer goes by: low, likely, high, with what is mended.
    pub by_joints: Option<[Measure; 3]>,
    /// The same by the published rule.
    pub by_area: Option<[Measure; 3]>,
    /// Of ready-mixed compound, or of powder.
    pub weight: Measure,
    /// Pails or bags.
    pub packages: i64,
    /// The same at most.
    pub packages_at_most: i64,
    /// With what is lost.
    pub tape: Length,
    /// To cover.
    pub screws: i64,
    /// To drive.
    pub new_screws: i64,
    /// In ready-mixed compound, to dry out.
    pub water: Option<Measure>,
    /// How.
    pub working: Steps,
}

impl Calculator for JointCompound {
    const ID: &'static str = "joint-compound";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::Finish;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = false;
    const PACED: &'static [&'static str] = &["wet"];
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

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }

    fn disturbs(input: &Input) -> Option<Disturbs> {
        let of = |material| Disturbs { material, deed: Deed::Cut, area: None, painted: None };
        input.mend.old.material().filter(|_| input.mends).map(of)
    }
}

/// Works compound.
///
/// - By joints: Σ length × what a foot takes × coats of the level ÷ coats of level 4, dry;
///   ÷ (1 − shrinkage); × (1 + lost).
/// - By area: area × gallons for 1000 sq ft × the level's share; what is lost is in that rule. Of a
///   compound that shrinks less, so many fewer gallons dry to as much.
/// - Tape: joints, or the rule where that is more and the area is gone by; × (1 + lost).
/// - Level 5: a skim over the area more.
///
/// # Errors
/// No area, by area or at level 5.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    let says = match (input.area, input.by, input.level) {
        (None, By::Area, _) => Some(&w::NEEDED_BY_AREA),
        (None, _, Level::Five) => Some(&w::NEEDED_LEVEL),
        _ => None,
    };
    if let Some(says) = says {
        let path = "area".to_owned();
        return Err(vec![Fault { path, label: &w::AREA, given: String::new(), says: says.into() }]);
    }
    let mut working = Steps::default();
    // The way that the answer goes by is written out; the others are worked aside.
    let [by_joints, by_area] = [By::Joints, By::Area].map(|by| {
        let known = by == By::Joints && input.by == by || by == By::Area && input.area.is_some();
        known.then(|| {
            [0, 1, 2].map(|end| {
                let mut aside = Steps::default();
                let shown = by == input.by && end == 1;
                amounts::wet(input, by, end, if shown { &mut working } else { &mut aside })
                    .unwrap_or(Measure::whole(&GALLON, 0))
            })
        })
    });
    let all = if input.by == By::Area { by_area } else { by_joints };
    let [low, wet, high] = all.unwrap_or([Measure::whole(&GALLON, 0); 3]);
    let packed = amounts::packed(input, wet, &mut working);
    let most = amounts::packed(input, high, &mut Steps::default());
    let packages_at_most = most.map_or(0, |(_, count)| count);
    let (weight, packages) = packed.unwrap_or((Measure::whole(&WEIGHT, 0), 0));
    let water = amounts::water(input.kind, weight, &mut working);
    let tape = amounts::tape(input, &mut working).unwrap_or_default();
    let (screws, new_screws) = amounts::screws(input);
    let range = [low, high];
    Ok(Answer {
        wet,
        range,
        by_joints,
        by_area,
        weight,
        packages,
        packages_at_most,
        tape,
        screws,
        new_screws,
        water,
        working,
    })
}

#[cfg(test)]
mod tests;
