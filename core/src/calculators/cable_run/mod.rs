//! A cable from box to box: how long to cut it, what holds it, what it loses and carries.

mod drawing;
mod input;
mod sheet;
mod words;

pub use input::{Attic, Input, Known, Leg, Load, Made, Near, Volts, Way};

use super::{Calculator, Trade, cable_securing};
use crate::edition::{Basis, Electrical};
use crate::measure::unit::{NUMBER, PERCENT, VOLT, WEIGHT};
use crate::measure::{Length, Measure};
use crate::rules::electrical::ampacity::{AMPACITY, Carries, amperes, carries};
use crate::rules::electrical::bundling::{self, WARMTH, adjustment, adjusts, correction};
use crate::rules::electrical::cable_bend::{BEND, TIMES};
use crate::rules::electrical::cable_length::{ALLOWANCES, Ending, smallest_roll};
use crate::rules::electrical::cable_securing::{End, SPACING, spacing};
use crate::rules::electrical::cable_sizes::SIZES;
use crate::rules::electrical::free_conductor;
use crate::rules::electrical::guard_strips::{GUARD_STRIPS, guarded};
use crate::rules::electrical::nail_protection::beside_centred;
use crate::rules::electrical::voltage_drop::{
    ADVICE, OF_BRANCH, RESISTANCE, Strand, at, lost, of_cable, resistance,
};
use crate::say;
use crate::sheet::{Caution, Expr, Fault, Faults, Sheet, Source, Steps};
use crate::words::{Amount, Phrase};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct CableRun;

/// What it loses on the way to its load.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Drop {
    /// In volts.
    pub volts: Measure,
    /// Of the voltage.
    pub share: Measure,
    /// The same with what the feeder loses.
    pub in_all: Option<Measure>,
    /// How far its load may stand at the advised most.
    pub farthest: Length,
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The edition it was worked under.
    pub edition: Electrical,
    /// Its way, part by part.
    pub legs: Vec<(Way, Length)>,
    /// All parts and plates.
    pub way: Length,
    /// What bends, sag and loss take.
    pub loss: Length,
    /// Past the first box and the last.
    pub more: [Length; 2],
    /// All of it.
    pub cut: Length,
    /// The smallest roll sold that holds it.
    pub roll: Option<Length>,
    /// Staples.
    pub staples: i64,
    /// Holes in studs or joists.
    pub holes: i64,
    /// The least wires that stay free in a box.
    pub free: Length,
    /// Wood to either edge beside a hole.
    pub wood: Length,
    /// Wood to either edge beside cables side by side; none where their size was not read.
    pub edge: Option<Length>,
    /// What it loses.
    pub drop: Option<Drop>,
    /// By the table.
    pub carries: Carries,
    /// What it carries here.
    pub here: Measure,
    /// Its breaker.
    pub breaker: Measure,
    /// The clause that says what it carries here.
    pub by: &'static Source,
    /// The least bend, and the weight, where the maker's sheet was read.
    pub radius: Option<Length>,
    /// In pounds.
    pub weight: Option<Measure>,
    /// How much of it lies between guard strips.
    pub guarded: Length,
    /// Worked out.
    pub steps: Steps,
}

impl Calculator for CableRun {
    const ID: &'static str = "cable-run";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::RoughIn;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = true;
    type Input = Input;
    type Answer = Answer;

    fn sample() -> Input {
        Input::sample()
    }

    fn solve(input: &Input, basis: Basis) -> Result<Answer, Faults> {
        solve(input, basis.electrical.unwrap_or(Electrical::NEWEST_VERIFIED))
    }

    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        Caution::all(&[(&w::DEAD, None), (&w::OLD, None), (&w::LICENSED, None)])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// A plate's thickness.
const PLATE: Length = Length::inches(3, 2);
const SIXTEENTH: Length = Length::inches(1, 16);

/// Its way, part by part. A box higher than where the cable crosses is reached upwards.
fn legs(input: &Input) -> Vec<(Way, Length)> {
    let or_none = Option::unwrap_or_default;
    if input.known == Known::Parts {
        return input.legs.iter().map(|leg| (leg.way, or_none(leg.length))).collect();
    }
    let level = match input.known {
        Known::Over => or_none(input.level),
        _ => Length::ZERO.minus(or_none(input.below)),
    };
    let rise = |high: Option<Length>| level.minus(high.unwrap_or(level));
    let across = if input.bored { Way::Through } else { Way::Along };
    let (up, down) = (rise(input.from_high), rise(input.to_high));
    let upright = |by: Length, up, down| {
        if by < Length::ZERO { (down, Length::ZERO.minus(by)) } else { (up, by) }
    };
    let mut all = vec![upright(up, Way::Up, Way::Down), (across, or_none(input.across))];
    all.push(upright(down, Way::Down, Way::Up));
    all.retain(|leg| leg.1 > Length::ZERO);
    all
}

/// Staples where it runs along framing: each part between holes is held as if it ran from box to
/// box, since a hole holds no better than a box.
fn staples(input: &Input, legs: &[(Way, Length)], edition: Electrical) -> Vec<Expr> {
    let end = |of: Ending| if of == Ending::Device { input.held } else { End::Clamped };
    let apart = edition.or_newest(spacing).map_or(Length::ZERO, |limit| limit.value);
    let mut all = Vec::new();
    let parts: Vec<_> = legs.split(|leg| leg.0 == Way::Through).collect();
    for (at, part) in parts.iter().enumerate() {
        let run = part.iter().fold(Length::ZERO, |sum, leg| sum.plus(leg.1));
        let from = if at == 0 { end(input.from) } else { End::Clamped };
        let to = if at + 1 == parts.len() { end(input.to) } else { End::Clamped };
        // At a box it is held once even where it goes straight into a hole.
        let is_end = at == 0 || at + 1 == parts.len();
        if run > Length::ZERO || is_end {
            let run = cable_securing::Input { run, spacing: apart, from, to };
            all.push(Expr::count(cable_securing::solve(&run, edition).staples));
        }
    }
    all
}

fn count(amount: Option<Amount>) -> i64 {
    match amount {
        Some(Amount::Count(count)) => count,
        _ => 0,
    }
}

/// Works a cable under an edition.
///
/// - Cut: way + way × loss, up to the next sixteenth, + what is given at both ends. Way: all parts,
///   and 1-1/2 in a plate.
/// - Holes: `⌈part ÷ spacing⌉` for each part through framing, the most that it can meet.
/// - Lost: `2 × (before + way + what is given at both ends) × current × resistance × heat`.
/// - Carries: `min(at 90 °C × together × warm, at 60 °C)`, all cables there as this one.
///
/// # Errors
/// No way, or solid wires in a size that is not made so.
///
/// # Source
/// NEC 300.14, 334.30, 334.80, chapter 9 Table 8, as `rules::electrical` has them; the sums are derived.
pub fn solve(input: &Input, edition: Electrical) -> Result<Answer, Faults> {
    let or_none = Option::unwrap_or_default;
    let refused = |path: &str, label, says| {
        Err(vec![Fault { path: path.to_owned(), label, given: String::new(), says }])
    };
    let legs = legs(input);
    let (size, conductors) = input.cable.conductors();
    let made = match input.load.made {
        Made::AsCable => of_cable(size),
        Made::Solid => Strand::Solid,
        Made::Stranded => Strand::Stranded,
    };
    let Some(ohms) = resistance(size, made) else {
        return refused("load.made", &w::MADE, say!(w::NO_SUCH));
    };
    let mut steps = Steps::default();
    let mut parts: Vec<Expr> = legs.iter().map(|leg| Expr::length(leg.1)).collect();
    if input.plates > 0 {
        parts.push(Expr::count(input.plates).times(Expr::length(PLATE)));
    }
    let way = steps.length("way", &w::WAY, None, Expr::Sum(parts)).unwrap_or_default();
    if way == Length::ZERO {
        let parts = input.known == Known::Parts;
        let (path, label) = if parts { ("legs", &w::LEGS) } else { ("across", &w::ACROSS) };
        return refused(path, label, say!(w::NO_WAY));
    }
    let sixteenths =
        Expr::length(way).times(Expr::measure(input.loss)).over(Expr::length(SIXTEENTH));
    let loss = Expr::length(SIXTEENTH).times(Expr::RoundUp(Box::new(sixteenths)));
    let loss = steps.length("loss", &w::LOST_LENGTH, Some(&ALLOWANCES), loss).unwrap_or_default();
    let more = [(input.from_more, input.from), (input.to_more, input.to)]
        .map(|(own, ending)| own.unwrap_or(ending.allowance().1));
    let sum = Expr::Sum([way, loss, more[0], more[1]].map(Expr::length).into());
    let cut = steps.length("cut", &w::CUT, Some(&ALLOWANCES), sum).unwrap_or_default();

    let through = legs.iter().filter(|leg| leg.0 == Way::Through);
    let holes = through
        .map(|leg| Expr::RoundUp(Box::new(Expr::length(leg.1).over(Expr::length(input.spacing)))));
    let holes: Vec<_> = holes.collect();
    let holes = count(steps.amount("holes", &w::HOLES, None, Expr::Sum(holes)));
    let staples = Expr::Sum(staples(input, &legs, edition));
    let staples = count(steps.amount("staples", &w::STAPLES, Some(&SPACING), staples));

    let drop = dropped(input, [way, more[0], more[1]], ohms, &mut steps);
    let Some(carries) = edition.or_newest(|edition| carries(edition, size)) else {
        return refused("cable", &w::CABLE, say!(w::NO_WAY));
    };
    let (cables, lie) = (input.near.cables, input.near.lie);
    let together = edition.or_newest(|edition| {
        let (is_adjusted, by) = adjusts(edition, lie, cables)?;
        let share = adjustment(edition, cables.saturating_mul(conductors))?;
        Some((Some(share).filter(|_| is_adjusted), by))
    });
    let (together, by) = together.unwrap_or((None, &AMPACITY));
    let warm = edition.or_newest(|edition| correction(edition, input.near.warmth));
    let warm = warm.unwrap_or(Measure::whole(&NUMBER, 1));
    let by = if together.is_none() && warm != Measure::whole(&NUMBER, 1) { &WARMTH } else { by };
    let carried = bundling::carried(&carries, together, warm);
    let here = bundling::in_amperes(&carried);
    if let Some(share) = together {
        steps.amount("together", &w::TOGETHER, Some(by), Expr::measure(share));
    }
    let source = if warm == Measure::whole(&NUMBER, 1) { &AMPACITY } else { &WARMTH };
    steps.amount("carries", &w::CARRIES, Some(source), carried);

    let size = input.cable.size();
    let radius = size.and_then(|(wide, _)| {
        let five = Expr::count(TIMES).times(Expr::length(wide));
        steps.length("radius", &w::RADIUS, Some(&BEND), five)
    });
    let weight = input.cable.weight().and_then(|per| {
        let weighs = Expr::length(cut).times(Expr::measure(per));
        steps.measure("weight", &w::WEIGHT, Some(&SIZES), &WEIGHT, weighs)
    });
    let crossing = or_none(input.attic.crossing);
    let guarded = guarded(input.attic.entrance, crossing, or_none(input.attic.near));
    if crossing > Length::ZERO {
        let both = Expr::count(2).times(Expr::length(guarded));
        steps.length("strips", &w::STRIPS, Some(&GUARD_STRIPS), both);
    }
    Ok(Answer {
        edition,
        way,
        loss,
        more,
        cut,
        roll: smallest_roll(cut),
        staples,
        holes,
        free: free_conductor::least(or_none(input.emerges)),
        wood: beside_centred(input.depth, input.bit),
        edge: size.map(|(wide, _)| beside_centred(input.depth, wide.times(input.near.flat))),
        drop,
        here,
        breaker: input.near.breaker.unwrap_or(carries.usual),
        carries,
        by,
        radius,
        weight,
        guarded,
        legs,
        steps,
    })
}

/// Over all that lies once boxes are wired: its way and what is given past both boxes, as the plan of a
/// whole job counts it. What bends and sag take is not known to lie there.
fn dropped(
    input: &Input,
    [way, from, to]: [Length; 3],
    ohms: Measure,
    steps: &mut Steps,
) -> Option<Drop> {
    let load = &input.load;
    let current = load.amperes.filter(|it| *it > amperes(0))?;
    let before = load.before.unwrap_or_default();
    let one_way = Expr::Sum([before, way, from, to].map(Expr::length).into());
    let one_way = steps.length("one-way", &w::ONE_WAY, None, one_way)?;
    let lost = lost(one_way, current, ohms, load.heat);
    let volts = steps.measure("drop", &w::DROP, Some(&RESISTANCE), &VOLT, lost)?;
    let supply = if load.volts == Volts::V120 { 120 } else { 240 };
    let supply = || Expr::measure(Measure::whole(&VOLT, supply));
    let share = Expr::measure(volts).over(supply());
    let share = steps.measure("share", &w::SHARE, Some(&ADVICE), &PERCENT, share)?;
    let in_all = load.feeder.and_then(|feeder| {
        let sum = Expr::Sum([share, feeder].map(Expr::measure).into());
        steps.measure("share-all", &w::SHARE_ALL, Some(&ADVICE), &PERCENT, sum)
    });
    let each = Expr::count(2)
        .times(Expr::measure(current))
        .times(Expr::measure(ohms))
        .times(Expr::measure(at(load.heat)));
    let farthest = supply().times(Expr::measure(OF_BRANCH.value)).over(each);
    let farthest = steps.length("farthest", &w::FARTHEST, Some(&ADVICE), farthest)?;
    Some(Drop { volts, share, in_all, farthest })
}

#[cfg(test)]
mod tests;
