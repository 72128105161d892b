//! Receptacles around a room: the fewest that the code asks, where they go, and what is missing
//! beside those that are there.

mod cover;
mod drawing;
mod input;
mod sheet;
mod walls;
mod words;

pub use input::{Break, BreakKind, Input, There};

use super::room::{self, At};
use super::{Calculator, Trade};
use crate::edition::{Basis, Electrical};
use crate::fields::Form;
use crate::measure::Length;
use crate::plan::Plan;
use crate::rules::electrical::wall_receptacles::{farthest, is_space};
use crate::say;
use crate::sheet::{Caution, Fault, Faults, Sheet};
use crate::words::{Phrase, Text};
use cover::cover;
use walls::Walls;
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct Outlets;

/// A place: its wall from 0, and how far along it.
pub type Spot = (usize, Length);

/// A stretch of wall that nothing breaks.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Space {
    /// The wall that it starts in.
    pub wall: usize,
    /// How long it is, round corners.
    pub long: Length,
    /// Whether it is wide enough to need any.
    pub needs: bool,
    /// The fewest, with none there yet.
    pub fewest: i64,
}

/// What becomes of one that is there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fate {
    /// It counts.
    Stays,
    /// It may stay, and nothing there needs it.
    NotNeeded,
    /// It stands in an opening.
    Goes,
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The edition it was worked under.
    pub edition: Electrical,
    /// The room's outline.
    pub plan: Plan,
    /// In the order of the walk.
    pub spaces: Vec<Space>,
    /// The fewest, with none there yet.
    pub fewest: i64,
    /// Where they go: all of them, or those that are missing beside those that are there.
    pub spots: Vec<Spot>,
    /// What becomes of each that is there.
    pub fates: Vec<Fate>,
    /// Stretches that no place comes near enough to.
    pub bare: i64,
}

impl Answer {
    /// How many are missing; of a room that has none yet, none.
    pub fn missing(&self) -> i64 {
        let new = if self.fates.is_empty() { 0 } else { self.spots.len() as i64 };
        new.saturating_add(self.bare)
    }
}

impl Calculator for Outlets {
    const ID: &'static str = "outlets";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::RoughIn;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = true;
    const TELLS_PLACES: bool = true;
    type Input = Input;
    type Answer = Answer;

    fn sample() -> Input {
        Input::sample()
    }

    fn solve(input: &Input, basis: Basis) -> Result<Answer, Faults> {
        solve(input, basis.electrical.unwrap_or(Electrical::NEWEST_VERIFIED))
    }

    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        Caution::all(&[(&w::DEAD, None), (&w::CUT, None), (&w::LICENSED, None), (&w::ALSO, None)])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Sets receptacles out along a room's walls.
///
/// - Spaces: the walls less what breaks them, measured round corners; under 24 in they need none.
/// - Fewest: no point of a space more than 72 in along the wall from one in that space, exact for
///   the places that a box may have.
///
/// # Errors
/// Walls that make no room; a break or a receptacle in no wall, or past its end.
pub fn solve(input: &Input, edition: Electrical) -> Result<Answer, Faults> {
    let plan = plan(input)?;
    let faults = misplaced(input, &plan);
    if !faults.is_empty() {
        return Err(faults);
    }
    let reach = edition.or_newest(farthest).map_or(Length::ZERO, |limit| limit.value);
    let walls = Walls::of(&plan);
    let allowed = walls.allowed(input);
    let mut fates = vec![Fate::Goes; input.have.len()];
    let (mut spaces, mut spots) = (Vec::new(), Vec::new());
    let (mut fewest, mut bare) = (0, 0);
    for [start, long] in walls.spaces(&input.breaks) {
        let needs = is_space(long);
        let mut here: Vec<Length> = Vec::new();
        for (it, fate) in input.have.iter().zip(&mut fates) {
            let at = walls.on_line(it.wall.wall().unwrap_or(0), it.at.unwrap_or_default());
            let at = walls.past(start, at);
            if at <= long {
                *fate = if needs { Fate::Stays } else { Fate::NotNeeded };
                here.insert(here.iter().take_while(|other| **other < at).count(), at);
            }
        }
        let mut count = 0;
        if needs {
            let mut places: Vec<[Length; 2]> = Vec::new();
            for [from, to] in &allowed {
                let (low, wide) = (walls.past(start, *from), to.minus(*from));
                if low.plus(wide) <= long {
                    // Nearly in order: round the start they begin anew.
                    let after = places.iter().rev().take_while(|other| other[0] > low).count();
                    places.insert(places.len() - after, [low, low.plus(wide)]);
                }
            }
            let new = cover(long, &places, &[], reach);
            count = new.spots.len() as i64;
            let told = if input.have.is_empty() { new } else { cover(long, &places, &here, reach) };
            bare += told.bare.len() as i64;
            for at in told.spots {
                spots.push(walls.in_wall(start.plus(at)));
            }
        }
        fewest += count;
        spaces.push(Space { wall: walls.in_wall(start).0, long, needs, fewest: count });
    }
    Ok(Answer { edition, plan, spaces, fewest, spots, fates, bare })
}

/// The outline, worked as the room itself is.
fn plan(input: &Input) -> Result<Plan, Faults> {
    let room = room::solve(&room::Input {
        shape: input.shape,
        long: input.long,
        wide: input.wide,
        notch_long: input.notch_long,
        notch_wide: input.notch_wide,
        leg_wide: input.leg_wide,
        leg_long: input.leg_long,
        leg_off: input.leg_off,
        gap_long: input.gap_long,
        gap_deep: input.gap_deep,
        gap_off: input.gap_off,
        walls: input.walls.clone(),
        ..room::Input::blank()
    })?;
    Ok(room.plan)
}

/// What is in no wall, or past its end: each at its field.
fn misplaced(input: &Input, plan: &Plan) -> Faults {
    let mut all = Faults::new();
    let mut look = |list: &str, at: usize, wall: At, key: &str, label, from: Length, to: Length| {
        let mut add = |key: &str, label, given: String, says: Text| {
            let path = [list, ".", &at.to_string(), ".", key].concat();
            all.push(Fault { path, label, given, says });
        };
        let sides = plan.sides();
        let given = || wall.key().to_owned();
        match wall.wall().map(|wall| sides.get(wall)) {
            None => add("wall", &w::WALL, given(), say!(w::SAY_WALL)),
            Some(None) => add("wall", &w::WALL, given(), say!(w::NO_WALL, sides.len() as i64)),
            Some(Some(side)) if to > side.length => {
                add(key, label, from.exact(), say!(w::PAST_WALL, side.length));
            }
            Some(Some(_)) => {}
        }
    };
    for (at, it) in input.breaks.iter().enumerate() {
        let from = it.from.unwrap_or_default();
        let to = from.plus(it.wide.unwrap_or_default());
        look("breaks", at, it.wall, "from", &w::FROM, from, to);
    }
    for (at, it) in input.have.iter().enumerate() {
        let place = it.at.unwrap_or_default();
        look("have", at, it.wall, "at", &w::AT, place, place);
    }
    all
}

#[cfg(test)]
mod tests;
