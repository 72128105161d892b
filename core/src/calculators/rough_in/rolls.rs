//! What to buy: of each kind what is cut, and the rolls that its cables are cut from whole.

use super::graph::Laid;
use super::input::{Cable, Input};
use super::labels::ordered;
use crate::measure::{Length, Rounding, divide};
use crate::rules::electrical::cable_length::ROLLS;

/// Cable of one kind.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Buy {
    /// Which.
    pub kind: Cable,
    /// Cables whose length is known, added up as they are cut: each up to the whole inch.
    pub cut: Length,
    /// Cables whose length isn't.
    pub unknown: i64,
    /// How many rolls of each length, the longest first; none where a cable is longer than any.
    pub rolls: Vec<(Length, i64)>,
}

impl Buy {
    /// What is left of the rolls.
    pub fn left(&self) -> Length {
        let bought = self.rolls.iter().map(|(long, count)| long.times(*count));
        bought.fold(Length::ZERO, Length::plus).minus(self.cut)
    }
}

/// Up to the whole inch: nobody cuts cable to a sixteenth, and none is cut short.
pub(super) fn whole_inch(cut: Length) -> Length {
    let inch = Length::inches(1, 1).nanometres();
    let inches = divide(cut.nanometres().into(), inch.into(), Rounding::Up);
    Length::inches(i64::try_from(inches).unwrap_or(i64::MAX / inch), 1)
}

pub(super) fn buys(input: &Input, cables: &[Laid]) -> Vec<Buy> {
    let has = [input.rolls.r25, input.rolls.r50, input.rolls.r100, input.rolls.r250];
    // The longest first, in feet.
    let mut sold = Vec::new();
    for (feet, has) in ROLLS.into_iter().zip(has).rev() {
        if has {
            sold.push(feet);
        }
    }
    let mut all = Vec::new();
    for &kind in Cable::ALL {
        let (mut pieces, mut unknown) = (Vec::new(), 0);
        for (_, laid) in input.cables.iter().zip(cables).filter(|(run, _)| run.cable == kind) {
            match laid.cut {
                Some(cut) => pieces.push(whole_inch(cut)),
                None => unknown += 1,
            }
        }
        if pieces.is_empty() && unknown == 0 {
            continue;
        }
        let order = ordered(pieces.len(), &|a, b| pieces[b].cmp(&pieces[a]));
        let pieces: Vec<Length> = order.into_iter().map(|at| pieces[at]).collect();
        let cut = pieces.iter().copied().fold(Length::ZERO, Length::plus);
        all.push(Buy { kind, cut, unknown, rolls: rolls(&pieces, cut, &sold) });
    }
    all
}

fn feet(count: i64) -> Length {
    Length::inches(12 * count, 1)
}

/// The least length of rolls, in the fewest rolls for it, that all pieces are found to be cut
/// from, each whole. Pieces and rolls with the longest first.
pub(super) fn rolls(pieces: &[Length], cut: Length, sold: &[i64]) -> Vec<(Length, i64)> {
    /// Looked at past the least length that could do; then rolls are opened as they are needed.
    const TRIES: i64 = 40;
    let (Some(longest), Some(most), Some(step)) = (pieces.first(), sold.first(), sold.last())
    else {
        return Vec::new();
    };
    if *longest > feet(*most) {
        return Vec::new();
    }
    let least = (cut.nanometres() + feet(*step).nanometres() - 1) / feet(*step).nanometres();
    for tried in least..least + TRIES {
        let mut left = tried * step;
        let mut counts = Vec::new();
        for &long in sold {
            counts.push((feet(long), left / long));
            left %= long;
        }
        if left == 0 && hold(pieces, &counts) {
            counts.retain(|(_, count)| *count > 0);
            return counts;
        }
    }
    // One roll of the longest after another.
    let mut count = 1;
    while !hold(pieces, &[(feet(*most), count)]) {
        count += 1;
    }
    vec![(feet(*most), count)]
}

/// Whether the pieces are cut from these rolls, each from the one where it leaves least.
fn hold(pieces: &[Length], counts: &[(Length, i64)]) -> bool {
    let mut left = Vec::new();
    for (long, count) in counts {
        left.extend((0..*count).map(|_| *long));
    }
    pieces.iter().all(|piece| {
        let mut best: Option<usize> = None;
        for (at, long) in left.iter().enumerate() {
            if long >= piece && best.is_none_or(|best| *long < left[best]) {
                best = Some(at);
            }
        }
        best.is_some_and(|at| {
            left[at] = left[at].minus(*piece);
            true
        })
    })
}
