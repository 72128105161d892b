//! The graph: cables' ends found among the boxes, then each box's contents and each cable's length.

use super::circuits::{Circuit, circuits};
use super::counted::{counted, index};
use super::holes::{Bundle, bundles};
use super::input::{Input, Mount, PlacedBox, Run, What};
use super::rolls::{Buy, buys};
use crate::calculators::cable_securing;
use crate::edition::Electrical;
use crate::fields::Typed;
use crate::measure::{Length, Rounding, Volume, divide};
use crate::rules::electrical::box_fill::Contents;
use crate::rules::electrical::cable_securing::{End, spacing};
use crate::rules::electrical::enclosure::Enclosure;

/// A box as its cables make it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct State {
    /// What is in it, signals left out.
    pub contents: Contents,
    /// What that takes.
    pub fill: Volume,
    /// What it holds; none where that isn't said, and of a panel.
    pub volume: Option<Volume>,
    /// Ends of cables of signals.
    pub signals: i64,
    /// Cables with both ends in it.
    pub both_ends: i64,
}

impl State {
    /// What is left, where its volume is said.
    pub fn spare(&self) -> Option<Volume> {
        self.volume.map(|volume| volume.minus(self.fill))
    }
}

/// A cable as it lies.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Laid {
    /// The box it starts in, by its place in the list.
    pub from: usize,
    /// The box it ends in; none while that end is coiled, or lost.
    pub to: Option<usize>,
    /// That end names no box: nobody knows where it goes, so it has no length.
    pub lost: bool,
    /// Box to box; none where that can't be told.
    pub way: Option<Length>,
    /// With what is given at both ends: as it lies once boxes are wired.
    pub laid: Option<Length>,
    /// And with what is lost.
    pub cut: Option<Length>,
    /// What holds it; none of signals.
    pub staples: i64,
    /// Its circuit, by its place among [`Answer::circuits`].
    pub circuit: Option<usize>,
    /// Whether power comes in at its start; none where no panel feeds it, or in a loop.
    pub forth: Option<bool>,
}

/// What comes out. Boxes and cables stand as in their lists.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The edition it was worked under.
    pub edition: Electrical,
    /// Boxes.
    pub boxes: Vec<State>,
    /// Cables.
    pub cables: Vec<Laid>,
    /// By name.
    pub circuits: Vec<Circuit>,
    /// Holes that cables go through, by label.
    pub holes: Vec<Bundle>,
    /// What to buy of each kind.
    pub buys: Vec<Buy>,
    /// In all.
    pub staples: i64,
}

/// Works a plan under an edition.
///
/// - Fill: of each box from the cables that end in it; one with both ends there counts twice.
/// - Way: up or down to where cables cross, along both walls, up or down again; or as measured.
/// - Lost: over the way and what is given at both ends.
/// - Cut: way + way × loss, up to the next sixteenth, + what is given at both ends.
/// - What to buy: the cuts, each up to the whole inch as it is told to be cut.
///
/// What can't be counted is left out: a box or a hole without a label of its own, a cable's end that
/// names no box and its length, a length that can't be read, the height of a box that is over the ceiling
/// and the place of one that is past the room. The answer is that of the plan without them.
///
/// # Source
/// NEC 314.16, 334.30, 334.80, 240.4(D), as `rules::electrical` has them.
pub fn solve(input: &Input, edition: Electrical) -> Answer {
    match counted(input) {
        None => solve_all(input, &[], edition),
        Some(counted) => solve_all(&counted.input, &counted.lost, edition),
    }
}

fn solve_all(input: &Input, lost: &[bool], edition: Electrical) -> Answer {
    let boxes = index(&mut input.boxes.iter().map(|it| it.label.as_str()));
    let holes = index(&mut input.holes.iter().map(|it| it.label.as_str()));
    let mut cables = Vec::with_capacity(input.cables.len());
    for (at, run) in input.cables.iter().enumerate() {
        let lost = lost.get(at).copied().unwrap_or_default();
        // What counts starts in a box that is there.
        let from = boxes.find(&run.from).unwrap_or_default();
        let to = if lost || run.to.trim().is_empty() { None } else { boxes.find(&run.to) };
        let (way, laid, cut, circuit, forth) = (None, None, None, None, None);
        cables.push(Laid { from, to, lost, way, laid, cut, staples: 0, circuit, forth });
    }
    let boxes = filled(input, &cables, edition);
    for (run, laid) in input.cables.iter().zip(&mut cables) {
        measure(input, run, laid, edition);
    }
    let circuits = circuits(input, &mut cables, edition);
    Answer {
        edition,
        holes: bundles(input, &holes, &cables, &circuits, edition),
        buys: buys(input, &cables),
        staples: cables.iter().map(|laid| laid.staples).sum(),
        boxes,
        cables,
        circuits,
    }
}

/// What is in each box.
fn filled(input: &Input, cables: &[Laid], edition: Electrical) -> Vec<State> {
    let mut boxes: Vec<State> = input.boxes.iter().map(empty).collect();
    for (run, laid) in input.cables.iter().zip(cables) {
        for end in [Some(laid.from), laid.to].into_iter().flatten() {
            match run.cable.power() {
                Some(cable) => boxes[end].contents.add(cable),
                None => boxes[end].signals += 1,
            }
        }
        if laid.to == Some(laid.from) {
            boxes[laid.from].both_ends += 1;
        }
    }
    for state in &mut boxes {
        state.fill = state.contents.fill(edition);
    }
    boxes
}

/// A box before its cables.
fn empty(of: &PlacedBox) -> State {
    let gangs = of.gangs();
    let volume = match of.enclosure.metal() {
        _ if of.what == What::Panel => None,
        None => of.marked,
        Some(metal) if metal.family.gangs() => Some(metal.volume.times(gangs.max(1))),
        Some(metal) => Some(metal.volume),
    };
    let contents = Contents::of(gangs, of.clamps);
    State { contents, volume, ..State::default() }
}

/// From a box up or down to where cables cross; none where its height isn't said.
fn rise(input: &Input, of: &PlacedBox) -> Option<Length> {
    match of.mount {
        Mount::Ceiling => Some(input.above),
        Mount::Wall => Some(input.high.plus(input.above).minus(of.high?)),
    }
}

fn apart(one: Length, other: Length) -> Length {
    one.max(other).minus(one.min(other))
}

/// A cable's way by the places of its boxes.
fn by_places(input: &Input, from: &PlacedBox, to: &PlacedBox) -> Option<Length> {
    let across = apart(from.x?, to.x?).plus(apart(from.y?, to.y?));
    Some(rise(input, from)?.plus(across).plus(rise(input, to)?))
}

/// What is given past a box.
fn more(input: &Input, of: &PlacedBox) -> Length {
    match (of.what, of.mount) {
        (What::Panel, _) => input.panel_more,
        (_, Mount::Ceiling) => input.ceiling_more,
        (_, Mount::Wall) => input.device_more,
    }
}

/// How a box holds its cables.
pub(super) fn end(of: &PlacedBox) -> End {
    let is_single = of.enclosure == Enclosure::Marked && of.gangs() == 1 && !of.clamps;
    if is_single { End::Single } else { End::Clamped }
}

/// Its way, its cut and its staples.
fn measure(input: &Input, run: &Run, laid: &mut Laid, edition: Electrical) {
    let from = &input.boxes[laid.from];
    let to = laid.to.map(|at| &input.boxes[at]);
    laid.way = match &run.length {
        // What is given at an end hangs on what box it is in.
        _ if laid.lost => None,
        Typed::Empty => to.and_then(|to| by_places(input, from, to)),
        Typed::Read(length) => Some(*length),
        // It was measured, and places may say something else.
        Typed::Unread { .. } => None,
    };
    let Some(way) = laid.way else { return };
    // Millionths of a percent, up to the next sixteenth of an inch.
    const SIXTEENTH: i64 = Length::inches(1, 16).nanometres();
    let lost = i128::from(way.nanometres()) * i128::from(input.loss.millionths());
    let marks = divide(lost, 100_000_000 * i128::from(SIXTEENTH), Rounding::Up);
    let loss = Length::inches(i64::try_from(marks).unwrap_or(i64::MAX), 16);
    let ends = more(input, from).plus(to.map_or(Length::ZERO, |to| more(input, to)));
    laid.laid = Some(way.plus(ends));
    laid.cut = Some(way.plus(loss).plus(ends));
    if run.cable.power().is_some() {
        let spacing = edition.or_newest(spacing).map_or(Length::ZERO, |limit| limit.value);
        let (from, to) = (end(from), to.map_or(End::Clamped, end));
        let run = cable_securing::Input { run: way, spacing, from, to };
        laid.staples = cable_securing::solve(&run, edition).staples;
    }
}
