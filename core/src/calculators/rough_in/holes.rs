//! Holes: which cables go through each, how much of it they take, and what they still carry there.

use super::circuits::Circuit;
use super::graph::Laid;
use super::input::Input;
use super::labels::{Index, known_as, ordered};
use crate::edition::Electrical;
use crate::fields::each_name;
use crate::measure::unit::{NUMBER, PERCENT, SQUARE_INCH};
use crate::measure::{Length, Measure};
use crate::rules::electrical::ampacity::{AMPACITY, Carries, carries};
use crate::rules::electrical::bundling::{self, WARMTH, adjustment, adjusts, correction};
use crate::rules::electrical::cable_sizes::outline;
use crate::rules::electrical::conductor_volume::Awg;
use crate::rules::electrical::low_voltage::ACROSS;
use crate::sheet::{Expr, Source, Value};
use crate::words::Amount;

/// Cables of one size and circuit, and what they carry in a hole.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Least {
    /// Their wire.
    pub size: Awg,
    /// Their circuit, by its place among the answer's.
    pub circuit: Option<usize>,
    /// By the table.
    pub carries: Carries,
    /// Here.
    pub here: Measure,
    /// Its circuit's breaker.
    pub breaker: Measure,
}

/// A hole and the cables in it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Bundle {
    /// Its label, in capitals.
    pub label: String,
    /// All cables, each once.
    pub cables: Vec<usize>,
    /// How many of them carry power.
    pub power: i64,
    /// Conductors that carry current.
    pub carrying: i64,
    /// How wide it is, where that is said.
    pub bit: Option<Length>,
    /// What all cables of known size take of it.
    pub taken: Option<Measure>,
    /// Cables whose size was not read.
    pub unread: i64,
    /// How much they still carry, where they are adjusted.
    pub together: Option<Measure>,
    /// They carry less here than anywhere, or it is warm.
    pub is_reduced: bool,
    /// The clause that says so.
    pub by: &'static Source,
    /// Each size of each circuit, the one that carries the least for its breaker first.
    pub least: Vec<Least>,
}

pub(super) fn bundles(
    input: &Input,
    told: &Index,
    cables: &[Laid],
    circuits: &[Circuit],
    edition: Electrical,
) -> Vec<Bundle> {
    let (mut names, mut through) = (Vec::new(), Vec::new());
    let long = long_labels(input);
    for (at, run) in input.cables.iter().enumerate() {
        for label in each_name(&run.holes, &long) {
            names.push(known_as(label));
            through.push(at);
        }
    }
    let index = Index::new(names);
    let mut all = Vec::new();
    for (label, places) in index.groups() {
        // Equal labels keep the order of cables, so that a label that is there twice is beside itself.
        let mut inside: Vec<usize> = places.iter().map(|at| through[*at]).collect();
        inside.dedup();
        let told = told.find(label).map(|at| &input.holes[at]);
        let bit = told.and_then(|hole| hole.bit).or(input.bit);
        let lie = told.map_or(input.lie, |hole| hole.lie);
        all.push(bundle(input, label, inside, (bit, lie), (cables, circuits), edition));
    }
    all
}

/// Labels of several words, as they are known.
pub(super) fn long_labels(input: &Input) -> Vec<String> {
    let labels = input.holes.iter().map(|hole| known_as(&hole.label));
    labels.filter(|label| label.contains(' ')).collect()
}

fn bundle(
    input: &Input,
    label: &str,
    inside: Vec<usize>,
    (bit, lie): (Option<Length>, bundling::Lie),
    (cables, circuits): (&[Laid], &[Circuit]),
    edition: Electrical,
) -> Bundle {
    let (mut area, mut unread, mut power, mut carrying) = (0, 0, 0, 0);
    for at in &inside {
        let kind = input.cables[*at].cable;
        let size = match kind.power() {
            Some(cable) => {
                power += 1;
                carrying += cable.conductors().1;
                cable.size()
            }
            None => {
                let signal = kind as usize - super::input::Cable::Data as usize;
                ACROSS.get(signal).map(|wide| (*wide, *wide))
            }
        };
        match size {
            Some((wide, thick)) => area += outline(wide, thick).millionths(),
            None => unread += 1,
        }
    }
    let taken = bit.and_then(|bit| {
        let share = taken(Measure::new(&SQUARE_INCH, area), bit);
        match share.value().and_then(Value::amount) {
            Some(Amount::Measure(share)) => Some(share),
            _ => None,
        }
    });
    let adjusted = edition.or_newest(|edition| {
        let (is_adjusted, by) = adjusts(edition, lie, power)?;
        let share = adjustment(edition, carrying)?;
        Some((Some(share).filter(|_| is_adjusted), by))
    });
    let (together, by) = adjusted.unwrap_or((None, &AMPACITY));
    let warm = edition.or_newest(|edition| correction(edition, input.warmth));
    let warm = warm.unwrap_or(Measure::whole(&NUMBER, 1));
    let by = if together.is_none() && warm != Measure::whole(&NUMBER, 1) { &WARMTH } else { by };
    let is_reduced = together.is_some() || warm != Measure::whole(&NUMBER, 1);
    let mut least: Vec<Least> = Vec::new();
    for at in &inside {
        let Some(cable) = input.cables[*at].cable.power() else { continue };
        let size = cable.conductors().0;
        let Some(carries) = edition.or_newest(|edition| carries(edition, size)) else { continue };
        let here = bundling::in_amperes(&bundling::carried(&carries, together, warm));
        let circuit = cables[*at].circuit;
        let breaker = circuit.map(|at| circuits[at].breaker);
        let breaker = breaker.or(input.cables[*at].breaker).unwrap_or(carries.usual);
        let like = |it: &Least| (it.circuit, it.breaker, it.size) == (circuit, breaker, size);
        if !least.iter().any(like) {
            least.push(Least { size, circuit, carries, here, breaker });
        }
    }
    // Of those that are equally short the one that carries less; then by the circuit's name.
    let short = |at: usize| {
        let it = &least[at];
        let name = it.circuit.map(|at| circuits[at].name.as_str());
        (it.here.minus(it.breaker), it.here, it.carries.at_90, name)
    };
    let order = ordered(least.len(), &|a, b| short(a).cmp(&short(b)));
    let least = order.into_iter().map(|at| least[at].clone()).collect();
    let label = label.to_owned();
    Bundle {
        label,
        cables: inside,
        power,
        carrying,
        bit,
        taken,
        unread,
        together,
        is_reduced,
        by,
        least,
    }
}

/// `cables ÷ hole`.
fn taken(cables: Measure, bit: Length) -> Expr {
    Expr::measure(cables).over(Expr::measure(outline(bit, bit))).told_in(&PERCENT)
}
