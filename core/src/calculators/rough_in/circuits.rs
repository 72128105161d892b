//! Circuits: which cables each one is made of, how it branches out from the panel, what it feeds
//! and what it loses.

use super::graph::Laid;
use super::input::{Input, Volts, What};
use super::labels::{Index, known_as};
use crate::edition::Electrical;
use crate::measure::unit::{PERCENT, VOLT};
use crate::measure::{Length, Measure, Rounding, divide};
use crate::rules::electrical::ampacity::{amperes, carries};
use crate::rules::electrical::cable_sizes::Sheathed;
use crate::rules::electrical::conductor_volume::Awg;
use crate::rules::electrical::voltage_drop::{of_cable, resistance};

/// The end of a circuit that loses most of its voltage.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Worst {
    /// Lost there, in volts.
    pub volts: Measure,
    /// Of the voltage.
    pub share: Measure,
    /// Cables from the panel on, each with the current through it.
    pub path: Vec<(usize, Measure)>,
}

/// A circuit.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Circuit {
    /// Its name, in capitals.
    pub name: String,
    /// Its cables, by their places in the list.
    pub cables: Vec<usize>,
    /// Its breaker: the largest that any of its cables names, else the usual one of its thickest.
    pub breaker: Measure,
    /// No cable names one.
    pub assumed: bool,
    /// Its cables name more than one.
    pub differ: bool,
    /// Its thinnest wire.
    pub thinnest: Awg,
    /// All that it feeds.
    pub load: Measure,
    /// Along all cables whose way is known.
    pub length: Length,
    /// Where it loses most; none where nothing is fed, where something is unknown, or it closes a loop.
    pub worst: Option<Worst>,
    /// Cables that keep what it loses from being known: of no length on the way to a load or to nobody
    /// knows where, or with a load and fed from nowhere.
    pub unknown: Vec<usize>,
    /// Boxes in a loop, each once, the panel first where it is in it.
    pub looped: Vec<usize>,
    /// Cables that no panel feeds.
    pub unfed: i64,
}

/// A place in a circuit: a box, all panels as one, or a coiled end of its own.
type Node = usize;
/// All panels.
const ROOT: Node = usize::MAX;

/// Makes circuits, and notes on each cable which one it is of and which way it is fed.
pub(super) fn circuits(input: &Input, cables: &mut [Laid], edition: Electrical) -> Vec<Circuit> {
    let name = |run: &super::input::Run| match run.cable.power() {
        Some(_) => known_as(&run.circuit),
        None => String::new(),
    };
    let index = Index::new(input.cables.iter().map(name).collect());
    let mut all = Vec::new();
    for (name, places) in index.groups() {
        if !name.is_empty() {
            all.push(circuit(input, cables, name, places, all.len(), edition));
        }
    }
    all
}

fn sheathed(input: &Input, at: usize) -> Sheathed {
    input.cables[at].cable.power().unwrap_or_default()
}

fn circuit(
    input: &Input,
    cables: &mut [Laid],
    name: &str,
    places: &[usize],
    number: usize,
    edition: Electrical,
) -> Circuit {
    let size = |at: &usize| sheathed(input, *at).conductors().0;
    let thinner = |a: Awg, b: Awg| if b.thickness() < a.thickness() { b } else { a };
    let thicker = |a: Awg, b: Awg| if b.thickness() > a.thickness() { b } else { a };
    let first = size(&places[0]);
    let usual = places.iter().map(size).fold(first, thicker);
    let usual = edition.or_newest(|edition| carries(edition, usual));
    let mut said = places.iter().filter_map(|at| input.cables[*at].breaker);
    let one = said.next();
    let largest = said.clone().fold(one, |most, it| most.max(Some(it)));
    let mut length = Length::ZERO;
    let mut load = 0;
    for at in places {
        let laid = &mut cables[*at];
        laid.circuit = Some(number);
        length = length.plus(laid.way.unwrap_or_default());
        load += input.cables[*at].load.map_or(0, Measure::millionths);
    }
    let mut circuit = Circuit {
        name: name.to_owned(),
        cables: places.to_vec(),
        breaker: largest.or(usual.map(|it| it.usual)).unwrap_or(amperes(0)),
        assumed: one.is_none(),
        differ: said.any(|it| Some(it) != one),
        thinnest: places.iter().map(size).fold(first, thinner),
        load: amperes(0).of_same(load),
        length,
        worst: None,
        unknown: Vec::new(),
        looped: Vec::new(),
        unfed: 0,
    };
    Walk::new(input, cables, &mut circuit).run(input, cables, &mut circuit);
    circuit
}

/// A cable reached on the walk.
struct Reached {
    cable: usize,
    /// The one before it on the way from the start, by its place among those reached.
    before: Option<usize>,
    /// Where it leads.
    to: Node,
    /// The walk began at a panel.
    fed: bool,
}

/// A walk over a circuit, from the panel on, then from whatever it didn't reach.
struct Walk {
    /// Each end: where, of which cable, and where that leads.
    ends: Vec<(Node, usize, Node)>,
    reached: Vec<Reached>,
}

impl Walk {
    fn new(input: &Input, cables: &[Laid], circuit: &mut Circuit) -> Self {
        let node = |at: usize| if input.boxes[at].what == What::Panel { ROOT } else { at };
        let mut ends = Vec::new();
        let mut reached = Vec::new();
        for &cable in &circuit.cables {
            let laid = &cables[cable];
            let from = node(laid.from);
            // A coiled end is a place of its own.
            let to = laid.to.map_or(ROOT - 1 - cable, node);
            if from == to {
                // Between panels it is a feeder; both ends in one box lead nowhere.
                if from == ROOT {
                    reached.push(Reached { cable, before: None, to, fed: true });
                }
                continue;
            }
            ends.push((from, cable, to));
            ends.push((to, cable, from));
        }
        let order = super::labels::ordered(ends.len(), &|a, b| ends[a].cmp(&ends[b]));
        Self { ends: order.into_iter().map(|at| ends[at]).collect(), reached }
    }

    /// The ends at a place.
    fn at(&self, node: Node) -> std::ops::Range<usize> {
        let first = self.ends.partition_point(|end| end.0 < node);
        let last = self.ends.partition_point(|end| end.0 <= node);
        first..last
    }

    fn run(mut self, input: &Input, cables: &mut [Laid], circuit: &mut Circuit) {
        // By the first end at each place, that cable through which the place was reached.
        let mut seen = vec![false; self.ends.len()];
        let mut starts = vec![ROOT];
        starts.extend(self.ends.iter().map(|end| end.0));
        for start in starts {
            let here = self.at(start);
            if here.is_empty() || seen[here.start] {
                continue;
            }
            seen[here.start] = true;
            let mut queue = vec![(start, None)];
            let mut next = 0;
            while let Some(&(node, before)) = queue.get(next) {
                next += 1;
                for end in self.at(node) {
                    let (_, cable, to) = self.ends[end];
                    let came = before.map(|at: usize| self.reached[at].cable);
                    if came == Some(cable) {
                        continue;
                    }
                    let there = self.at(to).start;
                    if seen[there] {
                        if circuit.looped.is_empty() {
                            circuit.looped = self.looped(before, node, to, start);
                        }
                        continue;
                    }
                    seen[there] = true;
                    self.reached.push(Reached { cable, before, to, fed: start == ROOT });
                    queue.push((to, Some(self.reached.len() - 1)));
                }
            }
        }
        for each in self.reached.iter().filter(|each| each.fed) {
            let laid = &mut cables[each.cable];
            laid.forth = Some(laid.to.is_none_or(|to| to == each.to || each.to == ROOT));
        }
        let unfed = circuit.cables.iter().filter(|at| cables[**at].forth.is_none());
        circuit.unfed = unfed.count() as i64;
        if circuit.looped.is_empty() {
            let currents = self.currents(input);
            circuit.unknown = self.unknown(input, cables, circuit, &currents);
            if circuit.unknown.is_empty() {
                circuit.worst = self.worst(input, cables, &currents);
            }
        } else {
            // Round a loop nobody can say which way power comes, and all else is fed still.
            circuit.unfed = 0;
            circuit.cables.iter().for_each(|at| cables[*at].forth = None);
        }
    }

    /// From the start to a place, the nearest last.
    fn back(&self, mut at: Option<usize>, node: Node, start: Node) -> Vec<Node> {
        let mut way = vec![node];
        while let Some(place) = at {
            at = self.reached[place].before;
            way.push(at.map_or(start, |before| self.reached[before].to));
        }
        way
    }

    /// The boxes of the loop that a cable between two reached places closes.
    fn looped(&self, before: Option<usize>, node: Node, to: Node, start: Node) -> Vec<usize> {
        let one = self.back(before, node, start);
        let other = self.reached.iter().position(|each| each.to == to);
        let other = self.back(other, to, start);
        // From where the two ways part out on the one, and back on the other.
        let parts = one.iter().position(|at| other.contains(at)).unwrap_or(one.len() - 1);
        let mut all: Vec<Node> = one[..=parts].iter().rev().copied().collect();
        all.extend(other.iter().take_while(|at| **at != one[parts]));
        all
    }

    /// What each feeds itself, and what those behind it feed, in millionths of an ampere.
    fn currents(&self, input: &Input) -> Vec<i64> {
        let own = |each: &Reached| input.cables[each.cable].load.map_or(0, Measure::millionths);
        let mut currents: Vec<i64> = self.reached.iter().map(own).collect();
        for at in (0..currents.len()).rev() {
            if let Some(before) = self.reached[at].before {
                currents[before] += currents[at];
            }
        }
        currents
    }

    /// Cables without which nobody can say what the circuit loses, in the order of the list.
    fn unknown(
        &self,
        input: &Input,
        cables: &[Laid],
        circuit: &Circuit,
        currents: &[i64],
    ) -> Vec<usize> {
        let mut is_one = vec![false; cables.len()];
        for (each, current) in self.reached.iter().zip(currents) {
            let laid = &cables[each.cable];
            // Past an end that names no box may be any load of the circuit.
            let carries = *current > 0 || (laid.lost && circuit.load.millionths() > 0);
            // Where nothing is fed, nobody knows what goes through what: each has its own load alone.
            let own = input.cables[each.cable].load.map_or(0, Measure::millionths);
            is_one[each.cable] = if each.fed { carries && laid.laid.is_none() } else { own > 0 };
        }
        circuit.cables.iter().copied().filter(|at| is_one[*at]).collect()
    }

    fn worst(&self, input: &Input, cables: &[Laid], currents: &[i64]) -> Option<Worst> {
        // Twice the length that lies × current × resistance, up to each; none where it isn't known.
        let mut lost: Vec<Option<i128>> = Vec::with_capacity(currents.len());
        let mut worst: Option<(i128, usize)> = None;
        for (at, each) in self.reached.iter().enumerate() {
            let before = each.before.map_or(Some(0), |before| lost[before]);
            let size = sheathed(input, each.cable).conductors().0;
            let ohms = resistance(size, of_cable(size));
            let here = || {
                let way = cables[each.cable].laid?.nanometres();
                let product = i128::from(way) * i128::from(currents[at]) * 2;
                Some(before? + product * i128::from(ohms?.millionths()))
            };
            let here = here();
            lost.push(here);
            let by = if input.cables[each.cable].volts == Volts::V120 { 2 } else { 1 };
            if let Some(here) = here.filter(|it| *it > 0 && each.fed)
                && worst.is_none_or(|(most, _)| here * by > most)
            {
                worst = Some((here * by, at));
            }
        }
        let (_, at) = worst?;
        let mut path = Vec::new();
        let mut next = Some(at);
        while let Some(place) = next {
            let each = &self.reached[place];
            path.push((each.cable, amperes(0).of_same(currents[place])));
            next = each.before;
        }
        path.reverse();
        let lost = lost[at]?;
        let supply = volts(input.cables[self.reached[at].cable].volts);
        // Nanometres in 1000 ft, millionths of amperes and of ohms.
        const SCALE: i128 = 304_800_000_000 * 1_000_000;
        let told = |unit, under| {
            let millionths = divide(lost, under, Rounding::Nearest);
            Measure::new(unit, i64::try_from(millionths).unwrap_or(i64::MAX))
        };
        let share = told(&PERCENT, SCALE / 100 * i128::from(supply));
        Some(Worst { volts: told(&VOLT, SCALE), share, path })
    }
}

/// Between a circuit's wires, in volts.
pub(super) const fn volts(of: Volts) -> i64 {
    match of {
        Volts::V120 => 120,
        Volts::V240 => 240,
    }
}
