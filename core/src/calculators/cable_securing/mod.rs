//! Securing a cable: how many staples a run takes from box to box, and how far apart.

mod sheet;
mod words;

use super::{Calculator, Trade};
use crate::edition::{Basis, Electrical};
use crate::fields::{Kind, Span, row};
use crate::form;
use crate::measure::{Length, Rounding, divide};
use crate::rules::electrical::cable_securing::{End, from_box};
use crate::sheet::{Caution, Faults, Sheet};
use crate::words::Phrase;
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct CableSecuring;

const fn length(most: i64, why: &'static Phrase) -> Kind {
    Kind::Length(Span {
        least: Length::inches(1, 1),
        most: Length::inches(most, 1),
        why,
        common: &[],
        optional: false,
    })
}

form! {
    /// A run of cable along framing, box to box.
    pub struct Input {
        /// Along the cable, box to box.
        run: Length, row(&w::RUN, &w::RUN_HINT, length(6000, &w::WHY_RUN));
        /// How far apart it is to be secured, at most.
        spacing: Length, row(&w::SPACING, &w::SPACING_HINT, length(120, &w::WHY_SPACING));
        /// What it starts in.
        from: End, row(&w::FROM, &w::NOTHING, Kind::Choice(End::PICKS));
        /// What it ends in.
        to: End, row(&w::TO, &w::NOTHING, Kind::Choice(End::PICKS));
    }
    sample {
        run: Length::inches(100, 1),
        spacing: Length::inches(54, 1),
    }
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The edition it was worked under.
    pub edition: Electrical,
    /// Farthest from the first box.
    pub first: Length,
    /// Farthest from the last box.
    pub last: Length,
    /// Between the first staple and the last, when they stand as far out as they may.
    pub between: Length,
    /// Staples in all, one at least.
    pub staples: i64,
    /// Evenly apart, rounded up to the nanometre; nothing where there is one.
    pub gap: Length,
}

impl Calculator for CableSecuring {
    const ID: &'static str = "cable-securing";
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
        Caution::all(&[(&w::FLAT, None), (&w::DEAD, None), (&w::SLACK, None), (&w::LICENSED, None)])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Works a run under an edition.
///
/// - Shape: a straight run along framing. Where both end distances meet, one staple does.
/// - Formula: `1 + ⌈max(0, run − first − last) ÷ spacing⌉`, derived from NEC 334.30.
/// - Rounding: the count up, exactly.
pub fn solve(input: &Input, edition: Electrical) -> Answer {
    let at = |end| {
        let known = edition.or_newest(|edition| from_box(edition, end));
        known.map_or(Length::ZERO, |limit| limit.value)
    };
    let (first, last) = (at(input.from), at(input.to));
    let between = input.run.minus(first).minus(last).max(Length::ZERO);
    let (between_nm, spacing) =
        (between.nanometres().into(), input.spacing.nanometres().max(1).into());
    let gaps = i64::try_from(divide(between_nm, spacing, Rounding::Up)).unwrap_or(i64::MAX);
    let gap = match gaps {
        0 => Length::ZERO,
        gaps => {
            let even = divide(between_nm, gaps.into(), Rounding::Up);
            Length::from_nanometres(i64::try_from(even).unwrap_or(i64::MAX))
        }
    };
    Answer { edition, first, last, between, staples: gaps.saturating_add(1), gap }
}

#[cfg(test)]
mod tests;
