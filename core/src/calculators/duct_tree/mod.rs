//! Branches on one air handler, with trunks they share: what each gets, and who gets the air of one
//! that is blocked.

mod drawing;
mod input;
mod network;
mod sheet;
mod shown;
mod words;

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::measure::Measure;
use crate::rules::air::blower::NAMEPLATE;
use crate::rules::air::fittings::{Cost, blocked};
use crate::rules::air::run::Duct;
use crate::say;
use crate::sheet::{Caution, Fault, Faults, Sheet};
use crate::words::{Phrase, Text};
pub use input::{From, Held, Input, Piece, What};
pub use network::Flows;
use network::{Drive, ENOUGH, Network};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct DuctTree;

/// A duct as it was put in and as it is worked.
#[derive(Clone, Debug, PartialEq)]
pub struct Placed {
    /// Its place in the list.
    pub at: usize,
    /// With what its opening costs.
    pub duct: Duct,
    /// What flows through it.
    pub flow: f64,
    /// What is open of its boot or grille, from 0 to 1.
    pub open: f64,
}

/// What comes out. Flows in cfm, pressures in inches of water.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// Every duct that air goes through.
    pub ducts: Vec<Placed>,
    /// For each branch the ducts on its way, the branch itself last.
    pub ways: Vec<Vec<usize>>,
    /// As it is.
    pub flows: Flows,
    /// With every boot open, where one isn't.
    pub all_open: Option<Flows>,
    /// With the opening as it is, where what isn't held were: the other end, between which and
    /// [`Answer::flows`] the blower stands.
    pub other_end: Option<Flows>,
    /// The branch that keeps the least of its air; where all are open, that gets the least.
    pub worst: usize,
    /// Trunk pieces that nothing leaves, by their place in the list.
    pub blind: Vec<usize>,
}

impl Calculator for DuctTree {
    const ID: &'static str = "duct-tree";
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

    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        Caution::all(&[
            (&shown::DOWN, None),
            (&shown::OLD, None),
            (&shown::DAMPER, None),
            (&shown::LICENSED, None),
            (NAMEPLATE.says, Some(&NAMEPLATE)),
        ])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Works branches together.
///
/// - Flows: at every branch's end all pressure is lost, and in a shared trunk all its branches'
///   flows go. Solved to a billionth of the pressure.
/// - A blocked boot: a thin opening of that share in the branch. One that is wholly shut: no branch.
///
/// # Errors
/// No branch, none that is open, or more than are worked together; flows that were not found, which no input is known
/// to bring about.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    let Laid { network, open, places, ways, blind } = laid_out(input);
    let count = network.ends.len();
    if count == 0 {
        return Err(fault(input, say!(w::NO_BRANCH)));
    }
    if count > network::MOST {
        return Err(fault(input, say!(w::MANY, count as i64, network::MOST as i64)));
    }
    let number = |of: Option<Measure>| of.map_or(0.0, Measure::number);
    let drive = match input.held {
        Held::Total => Drive::Total(number(input.total)),
        Held::Pressure => Drive::Pressure(number(input.pressure)),
    };
    if open.iter().zip(0..).all(|(open, at)| *open == 0.0 || !network.ends.contains(&at)) {
        return Err(fault(input, say!(w::ALL_SHUT)));
    }
    let solved = |drive| network.solve_but(&|at| open[at] == 0.0, drive);
    let flows = solved(drive);
    let is_open = open.iter().all(|open| *open >= 1.0);
    let all_open = (!is_open).then(|| {
        let mut network = network.clone();
        network.ducts.iter_mut().for_each(|duct| duct.c = 0.0);
        network.solve(drive)
    });
    let other_end = all_open.as_ref().map(|open| {
        solved(match drive {
            Drive::Total(_) => Drive::Pressure(open.pressure),
            Drive::Pressure(_) => Drive::Total(open.ends.iter().sum()),
        })
    });
    let found = |flows: &Flows| flows.left_over <= ENOUGH;
    if !found(&flows) || ![&all_open, &other_end].into_iter().flatten().all(found) {
        return Err(fault(input, say!(w::NOT_FOUND)));
    }
    let kept = |at: usize| match &all_open {
        Some(open) => flows.ends[at] / open.ends[at],
        None => flows.ends[at],
    };
    let worst = (1..count).fold(0, |worst, at| if kept(at) < kept(worst) { at } else { worst });
    let mut ducts = Vec::new();
    for (at, duct) in network.ducts.iter().enumerate() {
        ducts.push(Placed { at: places[at], duct: *duct, flow: flows.ducts[at], open: open[at] });
    }
    Ok(Answer { ducts, ways, flows, all_open, other_end, worst, blind })
}

fn fault(input: &Input, says: Text) -> Faults {
    let given = input.pieces.len().to_string();
    vec![Fault { path: "pieces".to_owned(), label: &w::PIECES, given, says }]
}

/// The ducts as they hang together.
struct Laid {
    network: Network,
    /// What is open of each.
    open: Vec<f64>,
    /// Its place in the list.
    places: Vec<usize>,
    /// The way to each end.
    ways: Vec<Vec<usize>>,
    /// Trunks that nothing leaves, by their places in the list.
    blind: Vec<usize>,
}

fn laid_out(input: &Input) -> Laid {
    // Ways to the start and to the end of the trunk piece met last, by places in the list.
    let (mut start, mut end) = (Vec::new(), Vec::new());
    let mut ways: Vec<Vec<usize>> = Vec::new();
    for (at, piece) in input.pieces.iter().enumerate() {
        match (piece.what, piece.from) {
            (What::Branch, _) => {
                ways.push([&end[..], &[at]].concat());
                continue;
            }
            (What::Trunk, From::End) => start = end,
            (What::Trunk, From::Beside) => {}
            (What::Trunk, From::Handler) => start = Vec::new(),
        }
        end = [&start[..], &[at]].concat();
    }
    let mut network = Network::default();
    let (mut open, mut places, mut blind) = (Vec::new(), Vec::new(), Vec::new());
    for (at, piece) in input.pieces.iter().enumerate() {
        if !ways.iter().any(|way| way.contains(&at)) {
            blind.push(at);
            continue;
        }
        let share = match (piece.what, piece.open) {
            (What::Branch, Some(open)) => open.number() / 100.0,
            _ => 1.0,
        };
        let duct = piece.run().duct();
        // One that is shut is taken out, and costs nothing.
        let c = if share > 0.0 && share < 1.0 { blocked(share) } else { 0.0 };
        network.ducts.push(duct.fitted(Cost::C(c), 1.0));
        open.push(share);
        places.push(at);
    }
    network.from = vec![None; places.len()];
    let place = |at: &usize| places.iter().position(|place| place == at);
    for way in &mut ways {
        *way = way.iter().filter_map(place).collect();
        for pair in way.windows(2) {
            network.from[pair[1]] = Some(pair[0]);
        }
        network.ends.extend(way.last());
    }
    Laid { network, open, places, ways, blind }
}

#[cfg(test)]
mod tests;
