//! Raising a ceiling: studs to cut, board, air, what has to move with it, and what it must keep to.
//!
//! It sizes no joist, tie, beam or post and never says that one may move: that is an engineer's.

mod choices;
mod drawing;
mod input;
mod sheet;
mod shown;
mod tray;
mod vault;
mod walls;
mod words;
mod working;

pub use choices::{By, Carries, How, Known, OldCeiling, Ridge, Room, Shape};
pub use input::{Clear, Goal, Input, Wall};
pub use tray::Tray;
pub use vault::Vault;
pub use walls::Walls;

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::measure::{Area, Length, Volume};
use crate::rules::framing::lumber::THICK;
use crate::rules::framing::overhead::Overhead;
use crate::rules::hazards::asbestos::PRESUMED;
use crate::rules::hazards::lead::TARGET;
use crate::rules::hazards::{Deed, Disturbs};
use crate::rules::residential::fireblocking::CEILING_LINE;
use crate::rules::residential::smoke_alarms::SMOKE_ALARMS;
use crate::say;
use crate::sheet::{Caution, Fault, Faults, Sheet};
use crate::words::{Phrase, Text};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct Raising;

/// What the new ceiling makes of the room.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Made {
    /// Level: the walls go up.
    Flat(Walls),
    /// A border stays.
    Tray(Tray),
    /// It slopes from today's height.
    Vault(Vault),
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// From the subfloor to the joists, now.
    pub framing: Length,
    /// From finished floor to finished ceiling, now.
    pub now: Length,
    /// The highest that the finished ceiling will be.
    pub highest: Length,
    /// How much higher that is.
    pub higher: Length,
    /// The room's floor.
    pub floor: Area,
    /// The new ceiling's board.
    pub board: Area,
    /// New upright wall: over the old ones, a tray's sides, or what closes a vault's ends.
    pub upright: Area,
    /// Air that the room gains.
    pub air: Volume,
    /// The rest, by its shape.
    pub made: Made,
}

impl Calculator for Raising {
    const ID: &'static str = "raising";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::Framing;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = false;
    const TELLS_PLACES: bool = true;
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
            (&shown::TEST, Some(&PRESUMED)),
            (TARGET.says, Some(&TARGET)),
            (&shown::LIVE, None),
            (&shown::SHORE, None),
            (CEILING_LINE.says, Some(&CEILING_LINE)),
            (SMOKE_ALARMS.says, Some(&SMOKE_ALARMS)),
            (&shown::PERMIT, None),
        ])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }

    fn disturbs(input: &Input) -> Option<Disturbs> {
        let area = solve(input).ok().map(|answer| answer.taken_down());
        let of = |material| Disturbs { material, deed: Deed::TearOut, area, painted: area };
        input.old.material().map(of)
    }
}

impl Answer {
    /// How much of the old ceiling comes down: all of it, or what a tray opens in one whose border
    /// stays.
    pub fn taken_down(&self) -> Area {
        match self.made {
            Made::Tray(tray) if tray.keeps => tray.opening,
            _ => self.floor,
        }
    }
}

/// Works a raised ceiling.
///
/// - Heights: framing = stud + plates; finished = framing − board − floor finish. Both exact.
/// - Flat: upright = walls × raise of the framing; air = floor × raise of the finish.
/// - Tray and vault: see [`Tray`] and [`Vault`]. A tray's border and a vault's low walls stay at
///   today's finished height; the border is boarded anew unless its board is kept.
///
/// # Errors
/// A ceiling that is no higher, a short wall that its plates fill, a tray that its border fills.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    let asked = |length: Option<Length>| length.unwrap_or_default();
    let (long, wide) = (asked(input.long), asked(input.wide));
    let rectangle = Area::of(long, wide);
    let framing = framing(input);
    let now = framing.minus(asked(input.board)).minus(asked(input.floor_finish));
    let floor = input.floor.unwrap_or(rectangle);
    if floor > rectangle {
        let says = say!(w::MORE_THAN_ROOM, rectangle);
        return Err(fault("floor", &w::FLOOR, &floor.exact(), says));
    }
    let answer = |highest: Length, board, upright, air, made| Answer {
        framing,
        now,
        highest,
        higher: highest.minus(now),
        floor,
        board,
        upright,
        air,
        made,
    };
    match input.shape {
        Shape::Flat => {
            let highest = wanted(input, now)?;
            let walls = walls::walls(input, framing, highest)?;
            let upright = Area::of(walls.perimeter, walls.raise);
            let air = Volume::over(floor, highest.minus(now));
            Ok(answer(highest, floor, upright, air, Made::Flat(walls)))
        }
        Shape::Tray => {
            let highest = wanted(input, now)?;
            let tray = tray::tray(input, highest.minus(now))?;
            let border = if tray.keeps { Area::ZERO } else { floor.minus(tray.opening) };
            let board = border.plus(tray.sides).plus(tray.top);
            Ok(answer(highest, board, tray.sides, tray.air, Made::Tray(tray)))
        }
        Shape::Gable | Shape::Shed => {
            let vault = vault::vault(input, now)?;
            let (board, ends) = (vault.ceiling, vault.ends.plus(vault.high_wall));
            let highest = now.plus(vault.rise);
            Ok(answer(highest, board, ends, vault.air, Made::Vault(vault)))
        }
    }
}

/// Whether nothing may be cut yet, so that there is nothing to cut, count or buy: under trusses, and
/// under what nobody has looked at.
fn is_stopped(input: &Input) -> bool {
    matches!(input.overhead, Overhead::Trusses | Overhead::Unknown)
}

/// From the subfloor to the joists as they are.
fn framing(input: &Input) -> Length {
    match input.known {
        Known::Framing => input.framing.unwrap_or_default(),
        Known::Stud => {
            let plate = input.old_plate.unwrap_or(THICK);
            input.stud.unwrap_or_default().plus(plate.times(input.plates))
        }
    }
}

/// The finished height that is wanted: higher than it is now.
fn wanted(input: &Input, now: Length) -> Result<Length, Faults> {
    let goal = &input.to;
    let (path, label, said, height) = match goal.by {
        By::Height => ("to.height", &w::HEIGHT, goal.height, goal.height),
        By::Raise => ("to.raise", &w::RAISE, goal.raise, goal.raise.map(|raise| now.plus(raise))),
    };
    match height {
        None => Err(fault(path, label, "", say!(w::NEEDED))),
        Some(height) if height <= now => {
            let given = said.map(Length::exact).unwrap_or_default();
            Err(fault(path, label, &given, say!(w::NOT_HIGHER, now)))
        }
        Some(height) => Ok(height),
    }
}

fn fault(path: &str, label: &'static Phrase, given: &str, says: Text) -> Faults {
    vec![Fault { path: path.to_owned(), label, given: given.to_owned(), says }]
}

#[cfg(test)]
mod tests;
