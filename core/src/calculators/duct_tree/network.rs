//! Flows in a tree of ducts that all start at one pressure and all end in rooms at none.
//!
//! Loss rises with flow in every duct, so the flows are the lowest point of a bowl, and Newton's
//! method with a bounded step finds it from anywhere. Each step takes every duct's loss as a line
//! and solves the tree of lines exactly, from the ends up to the start and back: a branch that
//! loses a billionth of what its trunk does is still told from its neighbor.

use crate::rules::air::run::{Duct, Loss};

/// As many ends as are solved.
pub(super) const MOST: usize = 8;

/// Ducts in an order in which each comes after the one that it leaves.
#[derive(Clone, Debug, Default)]
pub(super) struct Network {
    pub(super) ducts: Vec<Duct>,
    /// The duct that each leaves; none at the start.
    pub(super) from: Vec<Option<usize>>,
    /// Those that end in a room. Every other one has some that leave it.
    pub(super) ends: Vec<usize>,
}

/// What is held.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Drive {
    /// cfm in all.
    Total(f64),
    /// In wc at the start.
    Pressure(f64),
}

/// What comes out.
#[derive(Clone, Debug, PartialEq)]
pub struct Flows {
    /// cfm through each duct.
    pub ducts: Vec<f64>,
    /// cfm at each end.
    pub ends: Vec<f64>,
    /// In wc at the start.
    pub pressure: f64,
    /// By how much the pressures at both sides of a duct miss its loss, as a share of it: the most
    /// of all ducts.
    pub left_over: f64,
    /// Steps that it took.
    pub steps: u32,
}

/// Left over where the search may end.
pub(super) const ENOUGH: f64 = 1e-9;
/// Left over where a further step gains nothing.
const FINEST: f64 = 1e-13;
/// Steps at most: of 200,000 random trees the hardest took 48, and 99 in 100 took 14 or fewer.
const STEPS: u32 = 100;

/// A flow that rises in a line with the pressure that drives it: so much at none, and so much more
/// a unit of it.
#[derive(Clone, Copy, Default)]
struct Rising {
    at_none: f64,
    more: f64,
}

impl Rising {
    fn at(self, pressure: f64) -> f64 {
        self.at_none + self.more * pressure
    }

    fn add(&mut self, other: Self) {
        self.at_none += other.at_none;
        self.more += other.more;
    }
}

/// What a duct loses, either way round: on its way to the answer the search may turn a flow.
fn loss(duct: &Duct, flow: f64) -> Loss {
    // Laminar, so that the loss is a line through nothing.
    const LITTLE: f64 = 1e-9;
    let size = flow.abs();
    if size < LITTLE {
        let slope = duct.loss(LITTLE).slope;
        return Loss { drop: slope * flow, slope };
    }
    let Loss { drop, slope } = duct.loss(size);
    Loss { drop: drop.copysign(flow), slope }
}

impl Network {
    /// The flows with some ends wholly shut, and one open at least: what leads to no other end is
    /// taken out, and nothing flows there.
    pub(super) fn solve_but(&self, is_shut: &dyn Fn(usize) -> bool, drive: Drive) -> Flows {
        let mut kept = vec![false; self.ducts.len()];
        for end in self.ends.iter().filter(|end| !is_shut(**end)) {
            let mut at = Some(*end);
            while let Some(duct) = at {
                kept[duct] = true;
                at = self.from[duct];
            }
        }
        let places: Vec<usize> = (0..kept.len()).filter(|at| kept[*at]).collect();
        let place = |at: usize| places.iter().position(|kept| *kept == at);
        let open = Self {
            ducts: places.iter().map(|at| self.ducts[*at]).collect(),
            from: places.iter().map(|at| self.from[*at].and_then(place)).collect(),
            ends: self.ends.iter().filter_map(|end| place(*end)).collect(),
        };
        let found = open.solve(drive);
        let mut ducts = vec![0.0; kept.len()];
        for (at, flow) in places.iter().zip(&found.ducts) {
            ducts[*at] = *flow;
        }
        let ends = self.ends.iter().map(|end| ducts[*end]).collect();
        Flows { ducts, ends, ..found }
    }

    /// What flows through each duct, by what flows at the ends.
    fn through(&self, ends: &[f64]) -> Vec<f64> {
        let mut flows = vec![0.0; self.ducts.len()];
        for (at, flow) in self.ends.iter().zip(ends) {
            flows[*at] = *flow;
        }
        for at in (0..flows.len()).rev() {
            if let Some(from) = self.from[at] {
                flows[from] += flows[at];
            }
        }
        flows
    }

    /// Where the search starts: as if each last duct were alone, scaled to what is held.
    fn guess(&self, drive: Drive) -> Vec<f64> {
        let pressure = if let Drive::Pressure(pressure) = drive { pressure } else { 0.1 };
        // Loss goes nearly with the square of the flow.
        let alone = |at: &usize| 100.0 * libm::sqrt(pressure / self.ducts[*at].loss(100.0).drop);
        let mut ends: Vec<f64> = self.ends.iter().map(alone).collect();
        if let Drive::Total(total) = drive {
            let sum: f64 = ends.iter().sum();
            ends.iter_mut().for_each(|flow| *flow *= total / sum);
        }
        ends
    }

    /// The flows; what is left over says whether they were found. There is one end at least.
    pub(super) fn solve(&self, drive: Drive) -> Flows {
        let ends = self.guess(drive);
        let mut best = Flows {
            ducts: self.through(&ends),
            ends,
            pressure: 0.0,
            left_over: f64::INFINITY,
            steps: 0,
        };
        let mut flows = best.ducts.clone();
        for steps in 0..=STEPS {
            let (next, pressure, left_over) = self.next(&flows, drive);
            if left_over < best.left_over {
                let ends = self.ends.iter().map(|at| flows[*at]).collect();
                best = Flows { ducts: flows.clone(), ends, pressure, left_over, steps };
            } else if best.left_over <= ENOUGH {
                break;
            }
            if best.left_over <= FINEST {
                break;
            }
            flows = self.stepped(&flows, &next);
        }
        best
    }

    /// The flows if every loss were a line from here, the pressure at the start, and what is left
    /// over here.
    fn next(&self, flows: &[f64], drive: Drive) -> (Vec<f64>, f64, f64) {
        let count = self.ducts.len();
        let mut each = vec![Rising::default(); count];
        // What leaves the end of each duct, and the start.
        let mut after = vec![Rising::default(); count];
        let mut start = Rising::default();
        let losses: Vec<_> = self.ducts.iter().zip(flows).map(|(duct, q)| loss(duct, *q)).collect();
        for at in (0..count).rev() {
            let (loss, flow) = (losses[at], flows[at]);
            // At no pressure at its end it would lose so much less.
            let short = loss.slope * flow - loss.drop;
            each[at] = if self.ends.contains(&at) {
                Rising { at_none: short / loss.slope, more: 1.0 / loss.slope }
            } else {
                let Rising { at_none, more } = after[at];
                let by = 1.0 + loss.slope * more;
                Rising { at_none: (at_none + more * short) / by, more: more / by }
            };
            self.from[at].map_or(&mut start, |from| &mut after[from]).add(each[at]);
        }
        let pressure = match drive {
            Drive::Pressure(pressure) => pressure,
            Drive::Total(total) => (total - start.at_none) / start.more,
        };
        let (mut next, mut at_end) = (vec![0.0; count], vec![0.0; count]);
        let mut left_over = 0.0_f64;
        for at in 0..count {
            let before = self.from[at].map_or(pressure, |from| at_end[from]);
            next[at] = each[at].at(before);
            if !self.ends.contains(&at) {
                at_end[at] = (next[at] - after[at].at_none) / after[at].more;
            }
            let off = losses[at].slope * (next[at] - flows[at]);
            left_over = left_over.max((off / losses[at].drop).abs());
        }
        (next, pressure, left_over)
    }

    /// A step towards `next`, short enough that its end isn't far past the lowest point on the way.
    fn stepped(&self, flows: &[f64], next: &[f64]) -> Vec<f64> {
        let way = |at: usize| next[at] - flows[at];
        // The bowl's slope along the way is each duct's loss, less that of its line at `next`: both
        // add up to the same pressure. Worked duct by duct it keeps its last digits.
        let here: Vec<Loss> =
            self.ducts.iter().zip(flows).map(|(duct, flow)| loss(duct, *flow)).collect();
        let slope = |far: f64| {
            let each = |at: usize| {
                let Loss { drop, slope } = here[at];
                let there = loss(&self.ducts[at], flows[at] + far * way(at)).drop;
                (there - drop - slope * way(at)) * way(at)
            };
            (0..flows.len()).map(each).sum::<f64>()
        };
        let start = slope(0.0);
        let mut far = 1.0;
        for _ in 0..30 {
            if slope(far) <= -0.5 * start {
                break;
            }
            far /= 2.0;
        }
        let ends: Vec<f64> = self.ends.iter().map(|at| flows[*at] + far * way(*at)).collect();
        self.through(&ends)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::unit::PERCENT;
    use crate::measure::{Length, Measure};
    use crate::rules::air::fittings::{Cost, blocked};
    use crate::rules::air::run::{DuctKind, Run};
    use proptest::prelude::*;

    prop_compose! {
        fn a_duct()(
            kind in prop::sample::select(DuctKind::ALL), inches in 16_i64..384,
            other in 16_i64..384, length in 96_i64..57_600,
            slack in prop::option::of(0_i64..60), open in 0.05_f64..=1.0,
        ) -> Duct {
            let at = |sixteenths| Some(Length::inches(sixteenths, 16));
            let slack = slack.map(|share| Measure::whole(&PERCENT, share));
            let (diameter, wide, high) = (at(inches), at(inches), at(other));
            let run = Run { kind, diameter, wide, high, length: at(length), slack };
            run.duct().fitted(Cost::C(blocked(open)), 1.0)
        }
    }

    /// Any tree: each trunk leaves one before it or the start, each branch any trunk or the start.
    pub(in super::super) fn a_network() -> impl Strategy<Value = Network> {
        let trunks = prop::collection::vec((a_duct(), any::<prop::sample::Index>()), 0..4);
        let ends = prop::collection::vec((a_duct(), any::<prop::sample::Index>()), 1..=MOST);
        (trunks, ends).prop_map(|(trunks, ends)| {
            let mut network = Network::default();
            let mut places = vec![None];
            for (duct, from) in trunks {
                places.push(Some(network.ducts.len()));
                network.from.push(*from.get(&places[..places.len() - 1]));
                network.ducts.push(duct);
            }
            for (duct, from) in ends {
                network.ends.push(network.ducts.len());
                network.from.push(*from.get(&places));
                network.ducts.push(duct);
            }
            // A trunk that nothing leaves ends in a room itself.
            for at in 0..network.ducts.len() {
                if !network.ends.contains(&at) && !network.from.contains(&Some(at)) {
                    network.ends.push(at);
                }
            }
            network
        })
    }

    fn a_drive() -> impl Strategy<Value = Drive> {
        prop_oneof![
            (0.7_f64..3.7).prop_map(|log| Drive::Total(libm::pow(10.0, log))),
            (-2.0_f64..0.3).prop_map(|log| Drive::Pressure(libm::pow(10.0, log))),
        ]
    }

    /// The way to an end, found and added up here and not by the solver.
    fn way_loss(network: &Network, flows: &Flows, end: usize) -> f64 {
        let is_on = |at: usize, end: usize| {
            let mut here = Some(end);
            while let Some(place) = here.filter(|place| *place != at) {
                here = network.from[place];
            }
            here.is_some()
        };
        let through = |at: usize| -> f64 {
            let ends = network.ends.iter().zip(&flows.ends);
            ends.filter(|(end, _)| is_on(at, **end)).map(|(_, flow)| flow).sum()
        };
        let on_way = (0..network.ducts.len()).filter(|at| is_on(*at, end));
        on_way.map(|at| network.ducts[at].loss(through(at)).drop).sum()
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(2000))]
        #[test]
        fn flows_add_up_and_every_way_loses_the_same(network in a_network(), drive in a_drive()) {
            let flows = network.solve(drive);
            prop_assert!(flows.left_over <= ENOUGH, "{flows:?}");
            prop_assert!(flows.ends.iter().all(|flow| *flow > 0.0));
            match drive {
                Drive::Total(total) => {
                    let sum: f64 = flows.ends.iter().sum();
                    prop_assert!((sum / total - 1.0).abs() < 1e-9);
                }
                Drive::Pressure(pressure) => prop_assert_eq!(flows.pressure, pressure),
            }
            for end in &network.ends {
                let off = way_loss(&network, &flows, *end) / flows.pressure - 1.0;
                prop_assert!(off.abs() <= 1.1 * ENOUGH, "{off}");
            }
        }

        #[test]
        fn what_is_blocked_gets_less_and_nobody_else_does(
            network in a_network(), total in 50.0_f64..2000.0, which in any::<prop::sample::Index>(),
        ) {
            let which = which.index(network.ends.len());
            let mut blocked = network.clone();
            blocked.ducts[network.ends[which]].c += 10.0;
            let drive = Drive::Total(total);
            let (before, after) = (network.solve(drive), blocked.solve(drive));
            prop_assert!(after.pressure >= before.pressure * (1.0 - 1e-9));
            let alone = network.ends.len() == 1;
            for (at, (before, after)) in before.ends.iter().zip(&after.ends).enumerate() {
                let slip = 1e-7 * before;
                if at == which {
                    prop_assert!(alone || *after < before + slip);
                } else {
                    prop_assert!(*after > before - slip);
                }
            }
        }
    }

    #[test]
    fn nothing_jumps_where_a_branch_turns_laminar() {
        let duct = |inches| {
            let (size, length) = (Length::inches(inches, 1), Length::inches(600, 1));
            Run::round(DuctKind::Flex, size, length, None).duct()
        };
        let ducts = vec![duct(4), duct(8)];
        let network = Network { ducts, from: vec![None; 2], ends: vec![0, 1] };
        let mut last: Option<Flows> = None;
        // Re of the smaller branch passes 4000 and 2300 on the way.
        for step in 0..4000 {
            let flows = network.solve(Drive::Total(120.0 - f64::from(step) * 0.029));
            assert!(flows.left_over <= ENOUGH);
            if let Some(last) = last {
                for (now, before) in flows.ends.iter().zip(&last.ends) {
                    assert!((before - now).abs() < 0.06, "{before} to {now}");
                }
            }
            last = Some(flows);
        }
    }
}
