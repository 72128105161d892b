//! Gallons, pails, tape and screws, each as steps of the working.

use super::words as w;
use super::{By, Input};
use crate::measure::unit::{GALLON, WEIGHT};
use crate::measure::{Area, Length, Measure};
use crate::rules::finish::compound::{
    BEAD, CORNER, Compound, FOR_AREA, Feather, GALLONS, JOINTS, POP, POPS, Package, RULE, SCREW,
    SCREWS, SCREWS_A_POP, SHRINKAGE, TAPE, TAPERED, WATER, WEIGHTS, pail_for,
};
use crate::rules::finish::levels::Level;
use crate::rules::finish::skim::{GEOMETRY, LEVEL_5_SKIM};
use crate::sheet::{Expr, Source, Steps};
use crate::words::{Amount, Phrase};

/// So many of so many coats; nothing is written where it is all of them.
fn share(expr: Expr, coats: i64, of: i64) -> Expr {
    if coats == of { expr } else { expr.times(Expr::count(coats)).over(Expr::count(of)) }
}

/// Dry gallons of all that is there, at one end of the range: low, likely, high.
struct Dry<'a> {
    steps: &'a mut Steps,
    all: Vec<Expr>,
}

impl Dry<'_> {
    fn add(&mut self, key: &str, name: &'static Phrase, source: &'static Source, expr: Expr) {
        self.all
            .extend(self.steps.measure(key, name, Some(source), &GALLON, expr).map(Expr::measure));
    }

    fn run(
        &mut self,
        key: &str,
        name: &'static Phrase,
        length: Length,
        rate: Measure,
        coats: [i64; 2],
    ) {
        if length > Length::ZERO && coats[0] > 0 {
            let expr = Expr::length(length).times(Expr::measure(rate));
            self.add(key, name, &JOINTS, share(expr, coats[0], coats[1]));
        }
    }
}

/// Wet gallons with what is lost.
pub(super) fn wet(input: &Input, by: By, end: usize, steps: &mut Steps) -> Option<Measure> {
    let level = input.level;
    let feather = match end {
        0 => Feather::W18,
        1 => input.feather,
        _ => Feather::W36,
    };
    // What a person has set is no end of a range.
    let ends = if end == 0 {
        input.feather.takes().min(feather.takes())
    } else {
        feather.takes().max(input.feather.takes())
    };
    let mut dry = Dry { steps, all: Vec::new() };
    if by == By::Joints {
        let flat = [level.flat(), Level::Four.flat()];
        let screws = [level.screws(), Level::Four.screws()];
        dry.run("tapered", &w::ON_TAPERED, input.tapered, TAPERED[end], flat);
        dry.run("ends", &w::ON_ENDS, input.ends, ends, flat);
        let corners = [level.corners(), Level::Four.corners()];
        dry.run("corners", &w::ON_CORNERS, input.corners, CORNER, corners);
        dry.run("beads", &w::ON_BEADS, input.beads, BEAD, screws);
        let count = input.screws.unwrap_or(0);
        if count > 0 && screws[0] > 0 {
            let expr = Expr::count(count).times(Expr::volume(SCREW));
            dry.add("screws", &w::ON_SCREWS, &JOINTS, share(expr, screws[0], screws[1]));
        }
    }
    if input.mends {
        let mend = &input.mend;
        let pops = mend.pops.unwrap_or(0);
        if pops > 0 {
            dry.add("pops", &w::ON_POPS, &POPS, Expr::count(pops).times(Expr::volume(POP)));
        }
        dry.run("cracks", &w::ON_CRACKS, mend.cracks, ends, [1, 1]);
        dry.run("patches", &w::ON_PATCHES, mend.patches, ends, [1, 1]);
    }
    let all = dry.all;
    let mut wet = Vec::new();
    let mut loses = true;
    if !all.is_empty() {
        let dry = steps.measure("dry", &w::DRY, None, &GALLON, Expr::Sum(all))?;
        let shrinks = input.shrink.unwrap_or(input.kind.shrinks()[end]);
        let left = Expr::count(1).less(Expr::measure(shrinks));
        let shrunk = Expr::measure(dry).over(left);
        wet.push(steps.measure("shrunk", &w::SHRUNK, Some(&SHRINKAGE), &GALLON, shrunk)?);
    }
    if let (Level::Five, Some(area)) = (level, input.area) {
        let skim = Expr::area(area).times(Expr::measure(LEVEL_5_SKIM[end]));
        wet.push(steps.measure("skim", &w::SKIM, Some(&GEOMETRY), &GALLON, skim)?);
    }
    let mut total = Expr::Sum(wet.into_iter().map(Expr::measure).collect());
    if total == Expr::Sum(Vec::new()) {
        total = Expr::measure(Measure::whole(&GALLON, 0));
        loses = false;
    }
    if loses {
        let lost = Expr::Sum(vec![Expr::count(1), Expr::measure(input.waste)]);
        total = total.times(lost);
    }
    if let (By::Area, Some(area), true) = (by, input.area, level.flat() > 0) {
        let rule = ruled(input, area, end);
        let rule = steps.measure("rule", &w::RULE, Some(&RULE), &GALLON, rule)?;
        total =
            if loses { Expr::Sum(vec![Expr::measure(rule), total]) } else { Expr::measure(rule) };
    }
    steps.measure("wet", &w::TOTAL, None, &GALLON, total)
}

/// What the published rule has for an area, at a level's share of its coats.
fn ruled(input: &Input, area: Area, end: usize) -> Expr {
    let level = input.level;
    let rule = as_much(Expr::measure(GALLONS[end]), input);
    let rule = Expr::area(area).times(rule).over(Expr::area(FOR_AREA));
    share(rule, level.flat(), Level::Four.flat())
}

/// The gallons of this compound that dry to as much as these of ready-mixed, which the published
/// rule is in.
fn as_much(ready: Expr, input: &Input) -> Expr {
    let [from, to] = [Compound::Ready.shrinks()[1], shrinks(input)];
    let left = |shrinks| Expr::count(1).less(Expr::measure(shrinks));
    if from == to { ready } else { ready.times(left(from)).over(left(to)) }
}

/// Likely, or as its sheet has it.
fn shrinks(input: &Input) -> Measure {
    input.shrink.unwrap_or(input.kind.shrinks()[1])
}

/// Its weight, and the pails or bags that hold it.
pub(super) fn packed(input: &Input, wet: Measure, steps: &mut Steps) -> Option<(Measure, i64)> {
    let kind = input.kind;
    let gallons = Expr::measure(wet);
    let (weight, per, of) = match (kind.package(), kind.weighs()) {
        // Powder and gallons of ready-mixed are told for the same joints.
        (Package::Bag(bag, powder), _) => {
            let makes = as_much(Expr::measure(GALLONS[1]), input);
            let weight = gallons.times(Expr::measure(powder)).over(makes);
            let weight = steps.measure("weight", &w::POWDER, Some(&WEIGHTS), &WEIGHT, weight)?;
            (weight, Expr::measure(bag), Expr::measure(weight))
        }
        (Package::Pail(_), weighs) => {
            let pail = pail_for(wet);
            let weight = gallons.clone().times(Expr::measure(weighs?));
            let weight = steps.measure("weight", &w::WEIGHT, Some(&WEIGHTS), &WEIGHT, weight)?;
            (weight, Expr::measure(pail), gallons)
        }
    };
    let count = Expr::RoundUp(Box::new(of.over(per)));
    match steps.amount("packages", &w::PACKAGES, Some(&WEIGHTS), count)? {
        Amount::Count(count) => Some((weight, count)),
        _ => None,
    }
}

/// What of its weight dries out; none of powder, whose water is told on its bag.
pub(super) fn water(kind: Compound, weight: Measure, steps: &mut Steps) -> Option<Measure> {
    kind.weighs()?;
    let water = Expr::measure(weight).times(Expr::measure(WATER));
    steps.measure("water", &w::WATER, Some(&WEIGHTS), &WEIGHT, water)
}

/// Over tapered and end joints, corners, cracks and patches.
pub(super) fn tape(input: &Input, steps: &mut Steps) -> Option<Length> {
    let some = |runs: &[Length]| {
        let mut all = Vec::new();
        for run in runs {
            if *run > Length::ZERO {
                all.push(Expr::length(*run));
            }
        }
        all
    };
    let taped = input.level.flat() > 0;
    let mut runs = some(&[input.tapered, input.ends, input.corners]);
    let mut source = None;
    if !taped {
        runs.clear();
    } else if let (By::Area, Some(area)) = (input.by, input.area) {
        // The rule is short in a small room: joints that are known go before it.
        let rule = Expr::length(tape_by_area(area));
        let joints = Expr::Sum(std::mem::take(&mut runs));
        let known = joints != Expr::Sum(Vec::new());
        runs.push(if known { Expr::Most(vec![rule, joints]) } else { rule });
        source = Some(&RULE);
    }
    if input.mends {
        runs.append(&mut some(&[input.mend.cracks, input.mend.patches]));
    }
    let lost = Expr::Sum(vec![Expr::count(1), Expr::measure(input.waste)]);
    let tape = Expr::Sum(runs).times(lost).over(Expr::length(FOOT));
    let tape = Expr::RoundUp(Box::new(tape)).times(Expr::length(FOOT));
    steps.length("tape", &w::TAPE, source, tape)
}

/// Tape is told in whole feet.
const FOOT: Length = Length::inches(12, 1);

/// Joints that are taped, as they are.
pub(super) fn joints(input: &Input) -> Length {
    input.tapered.plus(input.ends).plus(input.corners)
}

/// As the published rule has it.
pub(super) fn tape_by_area(area: Area) -> Length {
    let tape = Expr::area(area).times(Expr::length(TAPE)).over(Expr::area(FOR_AREA));
    match tape.value().and_then(crate::sheet::Value::amount) {
        Some(Amount::Length(length)) => length,
        _ => Length::ZERO,
    }
}

/// To cover, and to drive to mend.
pub(super) fn screws(input: &Input) -> (i64, i64) {
    let whole = |count: Expr| match Expr::RoundUp(Box::new(count))
        .value()
        .and_then(crate::sheet::Value::amount)
    {
        Some(Amount::Count(count)) => count,
        _ => 0,
    };
    let cover = match input.by {
        By::Joints => input.screws.unwrap_or(0),
        By::Area => input.area.map_or(0, |area| {
            whole(Expr::area(area).times(Expr::count(SCREWS)).over(Expr::area(FOR_AREA)))
        }),
    };
    if !input.mends {
        return (cover, 0);
    }
    let mend = &input.mend;
    let a_foot = |length: Length| whole(Expr::length(length).over(Expr::length(FOOT)));
    // On both sides of a crack.
    let edges = 2 * a_foot(mend.cracks) + a_foot(mend.patches);
    (cover, mend.pops.unwrap_or(0).saturating_mul(SCREWS_A_POP).saturating_add(edges))
}
