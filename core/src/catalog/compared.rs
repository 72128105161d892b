//! One input under the verified editions, one after another, and what comes of comparing them.

use super::{Entry, Flip, Opened, Solved, Worked};
use crate::edition::{Basis, Electrical};
use crate::measure::Units;
use crate::rules::compare;
use crate::sheet::{Check, Faults, Sheet, Verdict};
use crate::wire::Node;

/// An input solved under some of the verified editions. It doesn't hold the input: whoever steps
/// it gives the same one each time.
#[derive(Debug, Default)]
pub struct Compared {
    /// In the order of the editions.
    all: Vec<(Electrical, Solved)>,
}

impl Compared {
    /// Solves it under one edition, unless it has been.
    ///
    /// # Errors
    /// What could not be read, or does not fit.
    pub fn add(
        &mut self,
        entry: &Entry,
        input: &Node,
        units: Units,
        edition: Electrical,
    ) -> Result<(), Faults> {
        let place = |of: Electrical| Electrical::ALL.iter().position(|it| *it == of);
        let mut at = 0;
        for (known, _) in &self.all {
            if *known == edition {
                return Ok(());
            }
            at += usize::from(place(*known) < place(edition));
        }
        let solved = (entry.solve)(input, units, Basis { electrical: Some(edition) })?;
        self.all.insert(at, (edition, solved));
        Ok(())
    }

    /// Solves it under one more edition; false where none is left.
    ///
    /// # Errors
    /// What could not be read, or does not fit.
    pub fn step(&mut self, entry: &Entry, input: &Node, units: Units) -> Result<bool, Faults> {
        let is_new = |of: &Electrical| self.all.iter().all(|(known, _)| known != of);
        let Some(next) = Electrical::VERIFIED.into_iter().find(is_new) else { return Ok(false) };
        self.add(entry, input, units, next)?;
        Ok(true)
    }

    /// What one edition says that it has been solved under, with no word of the others.
    pub fn alone(&self, edition: Electrical, hold: Option<&Opened>) -> Option<Worked> {
        let (_, solved) = self.all.iter().find(|(known, _)| *known == edition)?;
        Some(solved.clone().standing_behind(hold, Some(edition), Vec::new()))
    }

    /// What all that it has been solved under say together.
    ///
    /// # Errors
    /// What could not be read, or does not fit, under an edition that isn't verified.
    pub fn worked(
        self,
        entry: &Entry,
        input: &Node,
        units: Units,
        basis: Basis,
        hold: Option<&Opened>,
    ) -> Result<Worked, Faults> {
        let mut all = self.all;
        let shown = match basis.electrical {
            Some(edition) => all.iter().position(|(known, _)| *known == edition),
            // The newest of the strictest, so that a tie shows today's wording.
            None => (0..all.len()).max_by_key(|at| strictness(&all[*at].1.sheet)),
        };
        let (edition, solved) = match (shown, basis.electrical) {
            (Some(at), _) => all.remove(at),
            (None, edition) => {
                let edition = edition.unwrap_or(Electrical::NEWEST_VERIFIED);
                let solved = (entry.solve)(input, units, Basis { electrical: Some(edition) })?;
                (edition, settle(solved, &all))
            }
        };
        let verdict = solved.sheet.verdict();
        // Where all verified editions say within, an unverified one asks for want of its text: it
        // doesn't disagree with them.
        let all_within = all.iter().all(|(_, other)| other.sheet.verdict() == Verdict::Within);
        let agreed = !edition.is_verified() && verdict == Verdict::Ask && all_within;
        let flips = all
            .into_iter()
            .map(|(edition, solved)| (edition, solved.sheet))
            .filter(|(_, other)| !agreed && other.verdict() != verdict)
            .map(|(edition, sheet)| Flip {
                edition,
                verdict: sheet.verdict(),
                answer: sheet.headline.amount,
                name: sheet.headline.name,
            })
            .collect();
        // What can't be read, and what is disturbed, is the same under every edition.
        Ok(solved.standing_behind(hold, Some(edition), flips))
    }
}

/// The sheet of an unverified edition beside those of the verified ones.
fn settle(mut solved: Solved, verified: &[(Electrical, Solved)]) -> Solved {
    let settled = |check: Check| {
        let same = verified.iter().filter_map(|(_, other)| {
            other
                .sheet
                .checks
                .iter()
                .find(|other| other.key == check.key)
                .map(|other| other.verdict)
        });
        let same: Vec<Verdict> = same.collect();
        compare::settled(check, same)
    };
    solved.sheet.checks = solved.sheet.checks.into_iter().map(settled).collect();
    solved
}

/// How strict a sheet is: its verdict, then how little its lead check leaves.
fn strictness(sheet: &Sheet) -> (Verdict, i128) {
    let spare = sheet.lead().map_or(0, |check| check.margin().raw());
    (sheet.verdict(), -spare)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalog::ALL;

    /// Whichever edition is solved first, and whatever is asked of it in between, all together say
    /// the same in the end as at once.
    #[test]
    fn one_edition_first_and_the_others_later_is_all_at_once() {
        for entry in ALL.iter().filter(|entry| entry.electrical) {
            let (input, units) = (entry.sample(), Units::Customary);
            let bases = Electrical::ALL.into_iter().map(Some).chain([None]);
            for basis in bases.map(|electrical| Basis { electrical }) {
                let at_once = entry.work(&input, units, basis);
                for first in Electrical::VERIFIED {
                    let mut later = Compared::default();
                    let begun = later.add(entry, &input, units, first);
                    if begun.is_err() {
                        assert_eq!(begun.err(), at_once.clone().err(), "{}", entry.id);
                        continue;
                    }
                    let alone = later.alone(first, None).unwrap();
                    let under = entry.work(&input, units, Basis { electrical: Some(first) });
                    assert_eq!(alone.sheet, under.unwrap().sheet, "{}", entry.id);
                    assert!(alone.flips.is_empty());
                    while later.step(entry, &input, units).unwrap() {}
                    let all = later.worked(entry, &input, units, basis, None);
                    assert_eq!(all, at_once, "{} from {first:?}", entry.id);
                }
            }
        }
    }
}
