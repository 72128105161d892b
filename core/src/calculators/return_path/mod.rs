//! The way back, with the door shut: how much pressure a shut door builds up, how much opening
//! keeps it within a limit, and how large a return grille is.

mod input;
mod sheet;
mod shown;
mod words;

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::measure::{Length, Measure};
use crate::rules::air::doors::{self, Rule};
use crate::rules::air::grilles::{FILTER, RETURN, RETURN_NET};
use crate::rules::air::run::inches;
use crate::rules::compare::Limit;
use crate::rules::hazards::{Deed, Disturbs};
use crate::sheet::{Caution, Faults, Sheet};
use crate::words::Phrase;
pub use input::{Central, Cut, Flame, Input, Way, WayKind};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct ReturnPath;

/// A way out as it is worked. Areas in square inches.
#[derive(Clone, Debug, PartialEq)]
pub struct Opening {
    /// What air meets one behind the other, net.
    pub parts: Vec<f64>,
    /// What they are worth together.
    pub net: f64,
    /// The smaller grille's face, where it has one.
    pub face: Option<f64>,
}

/// A return grille.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grille {
    /// How fast air runs through it.
    pub speed: Measure,
    /// The fastest that it should.
    pub limit: Limit<Measure>,
    /// What is open of it; of a filter grille its face is what counts.
    pub net: Option<f64>,
    /// Its face.
    pub face: f64,
}

/// What comes out. Areas in square inches, flows in cfm, pressures in pascals.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// What has to get back past the door.
    pub back: f64,
    /// The gap that is left over the finished floor.
    pub gap: Length,
    /// The gap's area.
    pub undercut: f64,
    /// The other ways.
    pub ways: Vec<Opening>,
    /// All of it.
    pub total: f64,
    /// Room against house; none where the room is as good as shut.
    pub pressure: Option<f64>,
    /// The most of it.
    pub limit: Limit<Measure>,
    /// What the limit needs.
    pub needed: f64,
    /// What is short of it; nothing where it is within.
    pub missing: f64,
    /// What passes at the limit.
    pub passes: f64,
    /// The return grille that was asked for.
    pub grille: Option<Grille>,
}

impl Calculator for ReturnPath {
    const ID: &'static str = "return-path";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::Air;
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

    fn cautions(input: Option<&Input>) -> Vec<Caution> {
        sheet::cautions(input)
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }

    fn disturbs(input: &Input) -> Option<Disturbs> {
        let of = |material| Disturbs { material, deed: Deed::Cut, area: None, painted: None };
        input.cut.material().map(of)
    }
}

/// Less than this, in square inches, is no way out: a keyhole.
const LEAST: f64 = 1.0;

/// Works a room with its door shut.
///
/// - Flow: `Q = 1.07 × net sq in × √Pa`. Side by side areas add; one behind the other
///   `1 ÷ A² = sum of 1 ÷ Aᵢ²`. Leaks of the room are not counted, so the pressure is a cautious one.
///
/// # Errors
/// None: a room that is as good as shut has no pressure but an area that is missing, and one whose own
/// return takes all that it gets has none to build up.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    let number = |of: Option<Measure>| of.map_or(0.0, Measure::number);
    let flow = input.flow.unwrap_or(Measure::whole(&crate::measure::unit::CFM, 0));
    let back = (flow.number() - number(input.own)).max(0.0);
    let gap = input.gap.unwrap_or_default().minus(input.floor.unwrap_or_default());
    let gap = gap.max(Length::ZERO);
    let undercut = inches(input.door.unwrap_or_default()) * inches(gap);
    let ways: Vec<Opening> = input.ways.iter().map(opening).collect();
    let total = ways.iter().fold(undercut, |sum, way| sum + way.net);
    let limit = input.rule.most(flow);
    let needed = doors::area(back, limit.value.number());
    let missing = (needed - total).max(0.0);
    let pressure = if back == 0.0 {
        Some(0.0)
    } else if total < LEAST && missing > 0.0 {
        None
    } else {
        Some(doors::pressure(back, total))
    };
    Ok(Answer {
        back,
        gap,
        undercut,
        total,
        pressure,
        limit,
        needed,
        missing,
        passes: doors::flow(total, limit.value.number()),
        grille: grille(input),
        ways,
    })
}

fn opening(way: &Way) -> Opening {
    let side = |side: Option<Length>| inches(side.unwrap_or_default());
    let face = side(way.wide) * side(way.high);
    let other = side(way.other_wide.or(way.wide)) * side(way.other_high.or(way.high));
    let share = way.open().number() / 100.0;
    let (parts, face) = match way.kind {
        WayKind::Known => (vec![way.net.map_or(0.0, Measure::number)], None),
        WayKind::Grille => (vec![face * share], Some(face)),
        WayKind::Pair => (vec![face * share, other * share], Some(face.min(other))),
        WayKind::Jump => {
            let duct = side(way.diameter);
            let duct = std::f64::consts::FRAC_PI_4 * duct * duct;
            (vec![face * share, duct, other * share], Some(face.min(other)))
        }
    };
    let net = if let [one] = parts[..] { one } else { doors::in_series(&parts) };
    Opening { parts, net, face }
}

fn grille(input: &Input) -> Option<Grille> {
    let limit = match input.central {
        Central::None => return None,
        Central::Return => RETURN,
        Central::Filter => FILTER,
    };
    let speed = input.central_speed.unwrap_or(limit.value);
    let area = input.central_flow?.number() / speed.number() * 144.0;
    let open = input.central == Central::Return;
    let face = if open { area / (RETURN_NET.number() / 100.0) } else { area };
    Some(Grille { speed, limit, net: open.then_some(area), face })
}

/// Whether the rule has sizes of its own.
fn is_florida(input: &Input) -> bool {
    input.rule == Rule::Florida
}

#[cfg(test)]
mod tests;
