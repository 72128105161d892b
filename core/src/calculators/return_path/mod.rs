//! The way back, with the door shut: how much pressure a shut door builds up, how much opening
//! keeps it within a limit, and how large a return grille is.

mod drawing;
mod input;
mod sheet;
mod shown;
mod words;

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::measure::unit::{FPM, PASCAL};
use crate::measure::{Length, Measure};
use crate::rules::air::doors::{self, Rule};
use crate::rules::air::fittings::Fitting;
use crate::rules::air::grilles::{FILTER, RETURN, RETURN_NET};
use crate::rules::air::run::{Duct, DuctKind, Run, flow_at, inches};
use crate::rules::air::standard_air::PASCALS;
use crate::rules::air::working::near;
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
    /// The grilles or openings that air meets one behind the other, net.
    pub parts: Vec<f64>,
    /// The duct between them, its boots included.
    pub duct: Option<Duct>,
    /// What it passes, with the room at [`Answer::at`].
    pub flow: f64,
    /// The opening that passes as much there.
    pub net: f64,
    /// The smaller grille's face, where it has one.
    pub face: Option<f64>,
}

/// A return grille.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grille {
    /// How fast air runs through it.
    pub speed: Measure,
    /// How fast its face is sized for.
    pub wanted: Measure,
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
    /// What has to get past the door.
    pub back: f64,
    /// Whether its own return takes more than it gets: then that comes in past the door.
    pub low: bool,
    /// The gap that is left over the finished floor.
    pub gap: Length,
    /// The gap's area.
    pub undercut: f64,
    /// The other ways.
    pub ways: Vec<Opening>,
    /// All of it, as openings.
    pub total: f64,
    /// The pressure that flows and openings are told at: the room's, else the limit.
    pub at: f64,
    /// Room against house, below it where that is pulled low; none where it is as good as shut.
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

/// Pascals.
const LEAST_TOLD: f64 = 1e-5;
/// Less than this, in square inches, is no way out: a keyhole.
const LEAST: f64 = 1.0;

/// Works a room with its door shut.
///
/// - Flow: `Q = 1.07 × net sq in × √Pa`. Side by side areas add; one behind the other
///   `1 ÷ A² = sum of 1 ÷ Aᵢ²`. A jump duct loses what a branch of its size does, and two boots.
/// - Bound: the room's own leaks are not counted, so that a real room has less pressure than this.
///
/// # Errors
/// None: a room that is as good as shut has no pressure but an area that is missing, and one whose own
/// return takes just what it gets has none to build up. One whose return takes more is pulled low.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    let number = |of: Option<Measure>| of.map_or(0.0, Measure::number);
    let flow = input.flow.unwrap_or(Measure::whole(&crate::measure::unit::CFM, 0));
    let net = flow.number() - number(input.own);
    let (back, low) = (libm::fabs(net), net < 0.0);
    let gap = input.gap.unwrap_or_default().minus(input.floor.unwrap_or_default());
    let gap = gap.max(Length::ZERO);
    let undercut = inches(input.door.unwrap_or_default()) * inches(gap);
    let mut ways: Vec<Opening> = input.ways.iter().map(opening).collect();
    let limit = input.rule.most(flow);
    let most = limit.value.number();
    let needed = doors::area(back, most);
    let worth = |pascals: f64| {
        ways.iter().fold(undercut, |sum, way| sum + doors::area(way.passes(pascals), pascals))
    };
    let at_limit = worth(most);
    let missing = (needed - at_limit).max(0.0);
    let pressure = if back == 0.0 {
        Some(0.0)
    } else if at_limit < LEAST && missing > 0.0 {
        None
    } else if ways.iter().all(|way| way.duct.is_none()) {
        Some(doors::pressure(back, at_limit))
    } else {
        // What is worth less at another pressure: by halving, from where it surely is too much.
        let past = 4.0 * doors::pressure(back, at_limit.min(worth(0.01))).max(1.0);
        Some(flow_at(back, past, &|pascals| doors::flow(worth(pascals), pascals)))
    };
    // Too little to be told is no pressure to tell flows at.
    let at = pressure.filter(|pascals| *pascals >= LEAST_TOLD).unwrap_or(most);
    // As it is told, so that the working says the same.
    let at = near(&PASCAL, at).number();
    for way in &mut ways {
        way.flow = way.passes(at);
        way.net = doors::area(way.flow, at);
    }
    let total = ways.iter().fold(undercut, |sum, way| sum + way.net);
    let pressure = pressure.map(|pascals| if low { -pascals } else { pascals });
    Ok(Answer {
        back,
        low,
        gap,
        undercut,
        total,
        at,
        pressure,
        limit,
        needed,
        missing,
        passes: doors::flow(at_limit, most),
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
        WayKind::Pair | WayKind::Jump => (vec![face * share, other * share], Some(face.min(other))),
    };
    let duct = (way.kind == WayKind::Jump).then(|| {
        let [diameter, length] = [way.diameter, way.length].map(Option::unwrap_or_default);
        let run = Run::round(DuctKind::Flex, diameter, length, way.slack);
        run.duct().fitted(Fitting::Boot.cost().0, BOOTS)
    });
    Opening { parts, duct, flow: 0.0, net: 0.0, face }
}

/// A jump duct's, one at each end.
const BOOTS: f64 = 2.0;

impl Opening {
    /// The grilles or openings alone.
    pub fn grilles(&self) -> f64 {
        if let [one] = self.parts[..] { one } else { doors::in_series(&self.parts) }
    }

    /// cfm that it passes at a pressure above nothing.
    fn passes(&self, pascals: f64) -> f64 {
        let grilles = self.grilles();
        let most = doors::flow(grilles, pascals);
        let Some(duct) = &self.duct else { return most };
        flow_at(pascals, most, &|cfm| doors::pressure(cfm, grilles) + duct.loss(cfm).drop * PASCALS)
    }
}

fn grille(input: &Input) -> Option<Grille> {
    let limit = match input.central {
        Central::None => return None,
        Central::Return => RETURN,
        Central::Filter => FILTER,
    };
    let flow = input.central_flow?.number();
    let open = if input.central == Central::Return { RETURN_NET.number() / 100.0 } else { 1.0 };
    let size = input.central_wide.zip(input.central_high);
    let speed = match size {
        Some((wide, high)) => near(&FPM, flow * 144.0 / (inches(wide) * inches(high) * open)),
        None => input.central_speed.unwrap_or(limit.value),
    };
    // One that is there is told what it should be by the limit.
    let wanted = if size.is_some() { limit.value } else { speed };
    let area = flow / wanted.number() * 144.0;
    let net = (input.central == Central::Return).then_some(area);
    Some(Grille { speed, wanted, limit, net, face: area / open })
}

/// Whether the rule has sizes of its own.
fn is_florida(input: &Input) -> bool {
    input.rule == Rule::Florida
}

#[cfg(test)]
mod tests;
