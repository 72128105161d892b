//! What is in one wall before it is covered, as seen from the room, and what a screw meets afterwards.
//!
//! Lengths count from the wall's left end and from its lowest finished floor.

mod drawing;
mod input;
mod sheet;
mod words;

pub use input::{Input, Thing, What};

use super::{Calculator, Trade};
use crate::edition::{Basis, Electrical};
use crate::fields::{Form, row_at};
use crate::measure::Length;
use crate::rules::framing::behind_board::{BESIDE, EDGE, KEEP_OFF};
use crate::say;
use crate::sheet::{Caution, Fault, Faults, Sheet};
use crate::words::{Phrase, Text};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct BehindTheBoard;

/// What a screw meets, by its place in the input's lists. The first that fits holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Meets {
    /// Something to keep off, within [`BESIDE`].
    KeepOff(usize),
    /// No wall.
    Opening(usize),
    /// Backing or blocking that lies on studs.
    Wood(usize),
    /// A stud, by its center.
    Stud(Length),
    /// Backing or blocking of which an end hangs free.
    Loose(usize),
    /// What stands over an opening: a header or short studs, as nobody noted.
    Over(usize),
    /// Board alone.
    Nothing,
}

impl Meets {
    /// Whether a screw may go there, and holds.
    pub const fn holds(self) -> bool {
        matches!(self, Self::Wood(_) | Self::Stud(_))
    }
}

/// A stretch at one height, in which a screw meets the same all along. Its ends may meet either.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stretch {
    /// From the left.
    pub from: Length,
    /// The same as `from` of one screw.
    pub to: Length,
    /// What it meets.
    pub meets: Meets,
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The edition it was worked under.
    pub edition: Electrical,
    /// Centers of studs, from left to right.
    pub studs: Vec<Length>,
    /// Things by their places, from left to right.
    pub order: Vec<usize>,
    /// Along what is to hang, from left to right; none where nothing is.
    pub along: Vec<Stretch>,
    /// Things to keep off within reach of its screws.
    pub reach: Vec<usize>,
}

impl Calculator for BehindTheBoard {
    const ID: &'static str = "behind-the-board";
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
        Caution::all(&[(&w::DRAWN, None), (&w::SCAN, None), (KEEP_OFF.says, Some(&KEEP_OFF))])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Works a wall.
///
/// # Errors
/// What lies outside the wall, or in an opening, each at its field.
pub fn solve(input: &Input, edition: Electrical) -> Result<Answer, Faults> {
    let faults = faults(input);
    if !faults.is_empty() {
        return Err(faults);
    }
    let studs = studs(input);
    let mut order: Vec<usize> = Vec::new();
    for (at, thing) in input.things.iter().enumerate() {
        let place = order.partition_point(|other| input.things[*other].left <= thing.left);
        order.insert(place, at);
    }
    let mut along = Vec::new();
    let mut reach = Vec::new();
    if let (true, Some(low), Some(left)) = (input.hang, input.at_low, input.at_left) {
        let right = left.plus(input.across);
        along = stretches(input, &studs, low, [left, right]);
        for (at, thing) in input.things.iter().enumerate() {
            let [from, to, bottom, top] = kept_off(thing);
            if !thing.what.holds() && from <= right && left <= to && bottom <= low && low <= top {
                reach.push(at);
            }
        }
    }
    Ok(Answer { edition, studs, order, along, reach })
}

/// Centers as measured; or on the spacing, with one at each end and at each side of an opening.
fn studs(input: &Input) -> Vec<Length> {
    let (wall, half) = (input.wall.unwrap_or_default(), input.thick.part(2));
    let mut all: Vec<Length> = Vec::new();
    let mut add = |at: Length| {
        if Length::ZERO <= at && at <= wall {
            insert(&mut all, at);
        }
    };
    for stud in &input.studs {
        add(stud.at.unwrap_or_default());
    }
    if input.studs.is_empty() {
        let mut at = input.first;
        while at < wall {
            add(at);
            at = at.plus(input.spacing.max(Length::inches(1, 1)));
        }
        add(half);
        add(wall.minus(half));
        for opening in &input.openings {
            let left = opening.from.unwrap_or_default();
            add(left.minus(half));
            add(left.plus(opening.wide).plus(half));
        }
    }
    all
}

/// A thing with what is kept off round it.
fn kept_off(thing: &Thing) -> [Length; 4] {
    let [left, right, bottom, top] = thing.edges();
    [left.minus(BESIDE), right.plus(BESIDE), bottom.minus(BESIDE), top.plus(BESIDE)]
}

/// An opening: left, right, bottom, top.
fn gap(opening: &super::boards::Opening) -> [Length; 4] {
    let left = opening.from.unwrap_or_default();
    [left, left.plus(opening.wide), opening.sill, opening.sill.plus(opening.high)]
}

/// What a screw at a place meets.
fn meets(input: &Input, studs: &[Length], x: Length, y: Length) -> Meets {
    let within = |[left, right, bottom, top]: [Length; 4]| {
        left <= x && x <= right && bottom <= y && y <= top
    };
    let things = &input.things;
    if let Some(at) = things.iter().position(|it| !it.what.holds() && within(kept_off(it))) {
        return Meets::KeepOff(at);
    }
    if let Some(at) = input.openings.iter().position(|it| within(gap(it))) {
        return Meets::Opening(at);
    }
    let wood = |free| {
        let is = |it: &Thing| {
            it.what.holds() && within(inside(it)) && lies(input, studs, it).contains(&false) == free
        };
        things.iter().position(is)
    };
    if let Some(at) = wood(false) {
        return Meets::Wood(at);
    }
    let most = input.thick.part(2).minus(EDGE);
    if let Some(stud) = studs.iter().find(|stud| stud.minus(most) <= x && x <= stud.plus(most)) {
        return Meets::Stud(*stud);
    }
    if let Some(at) = wood(true) {
        return Meets::Loose(at);
    }
    let over = |opening: &super::boards::Opening| {
        let [from, to, _, head] = gap(opening);
        from <= x && x <= to && head < y
    };
    input.openings.iter().position(over).map_or(Meets::Nothing, Meets::Over)
}

/// What of backing or blocking a screw may go into.
fn inside(thing: &Thing) -> [Length; 4] {
    let [left, right, bottom, top] = thing.edges();
    [left.plus(EDGE), right.minus(EDGE), bottom.plus(EDGE), top.minus(EDGE)]
}

/// Whether the left and the right end of backing or blocking lie on a stud: backing on half of its face,
/// blocking against its side.
fn lies(input: &Input, studs: &[Length], thing: &Thing) -> [bool; 2] {
    let half = input.thick.part(2);
    let bears = if thing.what == What::Backing { Length::ZERO } else { half };
    let [left, right, ..] = thing.edges();
    [
        studs.iter().any(|stud| stud.minus(half) <= left && left <= stud.plus(bears)),
        studs.iter().any(|stud| stud.minus(bears) <= right && right <= stud.plus(half)),
    ]
}

/// What screws meet between two places at one height: between any two edges it is what their middle
/// meets.
fn stretches(
    input: &Input,
    studs: &[Length],
    y: Length,
    [left, right]: [Length; 2],
) -> Vec<Stretch> {
    let mut cuts = vec![left, right];
    let mut cut = |edge: Length| {
        if left < edge && edge < right {
            insert(&mut cuts, edge);
        }
    };
    for thing in &input.things {
        let edges = if thing.what.holds() { inside(thing) } else { kept_off(thing) };
        cut(edges[0]);
        cut(edges[1]);
    }
    for opening in &input.openings {
        let [from, to, ..] = gap(opening);
        cut(from);
        cut(to);
    }
    let most = input.thick.part(2).minus(EDGE);
    for stud in studs {
        cut(stud.minus(most));
        cut(stud.plus(most));
    }
    let mut all: Vec<Stretch> = Vec::new();
    for ends in cuts.windows(2) {
        let (from, to) = (ends[0], ends[1]);
        let meets = meets(input, studs, from.plus(to).part(2), y);
        match all.last_mut() {
            Some(last) if last.meets == meets => last.to = to,
            _ => all.push(Stretch { from, to, meets }),
        }
    }
    all
}

fn faults(input: &Input) -> Faults {
    let (mut faults, mut sizes) = (Faults::new(), Faults::new());
    // What starts inside and ends outside is told at its size, else at its start.
    let wall = [input.wall.unwrap_or_default(), input.high];
    let mut past = [Faults::new(), Faults::new()];
    let mut furthest = wall;
    let mut outside = |path: &str, keys: [&str; 4], [left, right, low, top]: [Length; 4]| {
        for (at, (from, to)) in [(left, right), (low, top)].into_iter().enumerate() {
            if to > wall[at] {
                let (key, given) =
                    if from > wall[at] { (keys[at], from) } else { (keys[at + 2], to.minus(from)) };
                let path = [path, key].concat();
                let label = row_at(Input::ROWS, &path).map_or(&w::WALL, |row| row.label);
                let says = say!(w::OUTSIDE, wall[at].minus(from).max(Length::ZERO));
                past[at].push(Fault { path, label, given: given.exact(), says });
                furthest[at] = furthest[at].max(to);
            }
        }
    };
    for (at, opening) in input.openings.iter().enumerate() {
        let path = ["openings.", &at.to_string(), "."].concat();
        outside(&path, ["from", "sill", "wide", "high"], gap(opening));
    }
    for (at, thing) in input.things.iter().enumerate() {
        let path = ["things.", &at.to_string(), "."].concat();
        // A run without a length would be a point, and all along it a place for screws.
        let is_point = thing.wide == Length::ZERO && thing.tall == Length::ZERO;
        if is_point && thing.what != What::Box {
            let says = say!(w::NO_SIZE);
            let (path, given) = ([&path, "wide"].concat(), thing.wide.exact());
            sizes.push(Fault { path, label: &w::WIDE, given, says });
        }
        outside(&path, ["left", "low", "wide", "tall"], thing.edges());
    }
    if let (true, Some(low), Some(left)) = (input.hang, input.at_low, input.at_left) {
        let edges = [left, left.plus(input.across), low, low];
        outside("", ["at_left", "at_low", "across", "at_low"], edges);
    }
    // Where several lie outside, the wall is the slip.
    let of_wall = [("wall", &w::WALL), ("high", &w::HIGH)];
    for (at, ((path, label), mut each)) in of_wall.into_iter().zip(past).enumerate() {
        if each.len() > 1 {
            let says = say!(w::TOO_SHORT, furthest[at]);
            each = vec![Fault { path: path.to_owned(), label, given: wall[at].exact(), says }];
        }
        faults.append(&mut each);
    }
    for (at, thing) in input.things.iter().enumerate() {
        let [left, right, low, top] = thing.edges();
        let over = |[from, to, sill, head]: [Length; 4]| {
            left < to && from < right && low < head && sill < top
        };
        if let Some(open) = input.openings.iter().position(|it| over(gap(it))) {
            let path = ["things.", &at.to_string(), ".left"].concat();
            let says = say!(w::IN_OPENING, open as i64 + 1);
            faults.push(Fault { path, label: &w::LEFT, given: left.exact(), says });
        }
    }
    faults.append(&mut sizes);
    faults
}

/// What a thing is called: as it is numbered in its list.
fn name(at: usize, thing: &Thing) -> Text {
    let named = say!(w::NAMED, at as i64 + 1, thing.what.label());
    match thing.note.trim() {
        "" => named,
        note => say!(w::OF, named, note),
    }
}

/// Puts a place among others from left to right, once.
fn insert(all: &mut Vec<Length>, at: Length) {
    let place = all.partition_point(|other| *other < at);
    if all.get(place) != Some(&at) {
        all.insert(place, at);
    }
}

#[cfg(test)]
mod tests;
