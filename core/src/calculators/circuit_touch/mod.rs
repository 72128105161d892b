//! What a change to a circuit sets off: a list to settle with the electrician, never a verdict.

mod lines;
mod sheet;
mod words;

pub use lines::Line;

use super::{Calculator, Trade};
use crate::edition::{Basis, Electrical};
use crate::fields::{Kind, Span, When, row};
use crate::measure::Length;
use crate::rules::electrical::dwelling_rooms::{Beside, Room};
use crate::rules::electrical::old_wiring::{Found, STOP};
use crate::sheet::{Caution, Faults, Sheet};
use crate::words::Phrase;
use crate::{choice, form};
use lines::LINES;
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct CircuitTouch;

choice! {
    /// What is done to a circuit.
    pub enum What {
        /// Cable.
        Extend = "extend", w::EXTEND;
        /// A receptacle, to another place.
        Move = "move", w::MOVE;
        /// A receptacle, in its place.
        Replace = "replace", w::REPLACE;
        /// A receptacle.
        Receptacle = "receptacle", w::RECEPTACLE;
        /// A switch of lighting.
        Switch = "switch", w::SWITCH;
        /// A box overhead.
        Light = "light", w::LIGHT;
        /// A fan overhead.
        Fan = "fan", w::FAN;
        /// Alarms alone.
        Alarms = "alarms", w::ALARMS;
    }
}

impl What {
    /// Whether it ends in a receptacle.
    const fn is_receptacle(self) -> bool {
        matches!(self, Self::Move | Self::Replace | Self::Receptacle)
    }
}

/// Where wire may be added without an outlet.
const MAY_ADD: When = When::IsNot("what", &["replace", "receptacle"]);

form! {
    /// The change, and what it is done to.
    pub struct Input {
        /// The change.
        what: What, row(&w::WHAT, &w::NOTHING, Kind::Choice(What::PICKS));
        /// Where.
        room: Room, row(&w::ROOM, &w::NOTHING, Kind::Choice(Room::PICKS));
        /// What the receptacle is near.
        beside: Beside, row(&w::BESIDE, &w::NOTHING, Kind::Choice(Beside::PICKS))
            .when(When::Is("what", &["move", "replace", "receptacle"]));
        /// What is there.
        found: Found, row(&w::FOUND, &w::FOUND_HINT, Kind::Choice(Found::PICKS));
        /// How much is added.
        wire: Option<Length>, row(&w::WIRE, &w::WIRE_HINT, Kind::Length(Span {
            least: Length::ZERO,
            most: Length::inches(2400, 1),
            why: &w::WHY_WIRE,
            common: &[Length::inches(48, 1), Length::inches(72, 1)],
            optional: true,
        }))
            .when(MAY_ADD);
        /// Whether an outlet or a device comes with it.
        outlet: bool, row(&w::OUTLET, &w::NOTHING, Kind::Flag).when(MAY_ADD);
        /// To a ceiling box.
        spare: bool, row(&w::SPARE, &w::NOTHING, Kind::Flag).when(When::Is("what", &["light"]));
        /// Whether the panel is touched.
        service: bool, row(&w::SERVICE, &w::NOTHING, Kind::Flag);
    }
    sample {
        what: What::Light,
        wire: Some(Length::inches(96, 1)),
        found: Found::Grounded,
    }
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The edition it was worked under.
    pub edition: Electrical,
    /// What is to be settled, what stops first.
    pub lines: Vec<&'static Line>,
    /// Those that some verified editions have and some not, with the ones that have them.
    pub differing: Vec<(&'static Line, Vec<Electrical>)>,
    /// Whether arc-fault protection is left out for so short a wire.
    pub is_exempt: bool,
}

impl Calculator for CircuitTouch {
    const ID: &'static str = "circuit-touch";
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
        Ok(solve(input, basis.electrical.unwrap_or(Electrical::NEWEST_VERIFIED)))
    }

    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        Caution::all(&[(&w::DEAD, None), (STOP.says, Some(&STOP)), (&w::LICENSED, None)])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Lists what a change sets off under an edition, or under the newest verified where that one's text
/// was not read.
///
/// # Source
/// NEC 210.8(A), 210.12, 250.130(C), 314.27(C), 404.2(C), 406.4(D), 406.12 and IRC R314, as
/// `rules::electrical` and `rules::residential` have them.
pub fn solve(input: &Input, edition: Electrical) -> Answer {
    let mut lines = Vec::new();
    let mut differing = Vec::new();
    for line in &LINES {
        if (line.brings)(input, edition) {
            lines.push(line);
        }
        let mut having = Electrical::VERIFIED.to_vec();
        having.retain(|edition| (line.brings)(input, *edition));
        if !having.is_empty() && having.len() < Electrical::VERIFIED.len() {
            differing.push((line, having));
        }
    }
    let is_exempt = lines::in_arc_fault_room(input, edition) && lines::is_exempt(input, edition);
    Answer { edition, lines, differing, is_exempt }
}

#[cfg(test)]
mod tests;
