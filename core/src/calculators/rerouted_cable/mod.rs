//! A cable that hung in the old ceiling: whether it reaches the new box, and what to do where it
//! doesn't.

mod input;
mod sheet;
mod words;

pub use input::{Input, Known, Leg, Place, Way};

use super::{Calculator, Trade, cable_securing};
use crate::edition::{Basis, Electrical};
use crate::measure::{Length, Rounding, divide};
use crate::rules::electrical::cable_securing::{End, spacing};
use crate::rules::electrical::free_conductor;
use crate::rules::electrical::splices::SPLICES;
use crate::say;
use crate::sheet::{Caution, Fault, Faults, Sheet};
use crate::words::{Phrase, Text};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct ReroutedCable;

/// What it takes to join a new piece to a cable that is short.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Splice {
    /// How much is missing.
    pub short: Length,
    /// New cable for one, free wires at both of its ends in.
    pub piece: Length,
    /// For all of them.
    pub all: Length,
}

/// What comes out, for each of the cables.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The edition it was worked under.
    pub edition: Electrical,
    /// From where it stays fixed to its end.
    pub have: Length,
    /// The new way, without allowance.
    pub run: Length,
    /// What bends, sag and staples take of it.
    pub allowance: Length,
    /// Free wires in the new box.
    pub free: Length,
    /// All of it.
    pub need: Length,
    /// Where it doesn't reach.
    pub splice: Option<Splice>,
    /// How far apart it is secured at the most.
    pub apart: Length,
    /// How it is secured along the new way, box to box.
    pub secured: cable_securing::Answer,
}

impl Calculator for ReroutedCable {
    const ID: &'static str = "rerouted-cable";
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
        Caution::all(&[
            (&w::DEAD, None),
            (SPLICES.says, Some(&SPLICES)),
            (&w::BRITTLE, None),
            (&w::LICENSED, None),
        ])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Works a cable under an edition.
///
/// - Need: way + way × allowance, up to the next sixteenth, + more + free wires at the box.
/// - New piece: what is missing, + free wires at both of its ends, + what is cut off the old end,
///   up to the next inch: the old cable gives its own free wires at the splice.
///
/// # Errors
/// A cable with no way, one too short to be joined, or a splice box farther back than it is long.
///
/// # Source
/// NEC 300.14, as `rules::electrical::free_conductor` has it; the sums are derived.
pub fn solve(input: &Input, edition: Electrical) -> Result<Answer, Faults> {
    let asked = |length: Option<Length>| length.unwrap_or_default();
    let old = way(&input.old);
    let have = match input.known {
        Known::Length => asked(input.there),
        Known::Way if input.old.is_empty() => {
            return Err(fault("old", &w::OLD, "", say!(w::NO_WAY)));
        }
        Known::Way => old.plus(asked(input.slack)).plus(asked(input.left)),
    };
    let legs = if input.new.is_empty() { old } else { way(&input.new) };
    if legs == Length::ZERO {
        return Err(fault("new", &w::NEW, "", say!(w::NO_NEW_WAY)));
    }
    let run = legs.plus(asked(input.raise));
    let share = i128::from(input.allowance.millionths());
    let allowance = i128::from(run.nanometres()) * share;
    let allowance = up_to(SIXTEENTH, allowance, HUNDRED_PERCENT);
    let free = free_conductor::least(asked(input.emerges));
    let need = run.plus(allowance).plus(asked(input.extra)).plus(free);
    let back = asked(input.back);
    let short = need.minus(have);
    let splice = if short > Length::ZERO {
        if free > have {
            let (path, label) = match input.known {
                Known::Length => ("there", &w::THERE),
                Known::Way => ("old", &w::OLD),
            };
            return Err(fault(path, label, &have.exact(), say!(w::TOO_SHORT, have, free)));
        }
        if back.plus(free) > have {
            let given = back.exact();
            return Err(fault("back", &w::BACK, &given, say!(w::PAST_OLD, have)));
        }
        let piece = short.plus(free.times(2)).plus(back);
        let piece = up_to(INCH, piece.nanometres().into(), 1);
        Some(Splice { short, piece, all: piece.times(input.cables) })
    } else {
        None
    };
    let apart = edition.or_newest(spacing).map(|limit| limit.value).unwrap_or_default();
    let (from, to) = (End::Clamped, End::Clamped);
    let securing = cable_securing::Input { run, spacing: apart, from, to };
    let secured = cable_securing::solve(&securing, edition);
    Ok(Answer { edition, have, run, allowance, free, need, splice, apart, secured })
}

const SIXTEENTH: Length = Length::inches(1, 16);
const INCH: Length = Length::inches(1, 1);

/// `over ÷ under` nanometres up to the next of so many marks of a tape.
fn up_to(mark: Length, over: i128, under: i128) -> Length {
    let marks = divide(over, under * i128::from(mark.nanometres()), Rounding::Up);
    mark.times(i64::try_from(marks).unwrap_or(i64::MAX))
}

/// The millionths of a percent in a whole.
const HUNDRED_PERCENT: i128 = 100_000_000;

fn way(legs: &[Leg]) -> Length {
    legs.iter().fold(Length::ZERO, |sum, leg| sum.plus(leg.length.unwrap_or_default()))
}

fn fault(path: &str, label: &'static Phrase, given: &str, says: Text) -> Faults {
    vec![Fault { path: path.to_owned(), label, given: given.to_owned(), says }]
}

#[cfg(test)]
mod tests;
