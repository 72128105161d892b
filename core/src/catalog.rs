//! The list of calculators, and how any of them is worked from a tree by its id.
//!
//! Re-solving under the other editions happens here, once for all calculators.

mod batch;
mod link;

pub use batch::{answer_line, describe, list};
pub use link::{Link, LinkProblem};

use crate::calculators::{self, Trade};
use crate::edition::{Basis, Electrical};
use crate::fields::{Form, Reader, Row};
use crate::measure::Units;
use crate::rules::compare;
use crate::sheet::{Check, Faults, Sheet, Verdict};
use crate::wire::Node;
use crate::words::{Amount, Phrase, Text};

/// A calculator as the page and the batch door see it.
#[derive(Debug)]
pub struct Entry {
    /// Its name in links, marks and the batch door.
    pub id: &'static str,
    /// Of its input's shape.
    pub version: u16,
    /// Whom it speaks to.
    pub trade: Trade,
    /// Its name on screen.
    pub name: &'static Phrase,
    /// What it answers.
    pub about: &'static Phrase,
    /// Whether the edition of the electrical code can change the answer.
    pub electrical: bool,
    /// Its fields.
    pub rows: &'static [Row],
    sample: fn() -> Node,
    canonical: fn(&Node, Units) -> Result<Node, Faults>,
    solve: fn(&Node, Units, Basis) -> Solved,
}

/// A sheet and what was left out of it, or why there is none.
type Solved = Result<(Sheet, Faults), Faults>;

/// All calculators, in the order of a job.
pub static ALL: &[Entry] = &[
    entry::<calculators::box_fill::BoxFill>(),
    entry::<calculators::cable_securing::CableSecuring>(),
];

const fn entry<C: calculators::Calculator>() -> Entry {
    Entry {
        id: C::ID,
        version: C::VERSION,
        trade: C::TRADE,
        name: C::NAME,
        about: C::ABOUT,
        electrical: C::ELECTRICAL,
        rows: C::Input::ROWS,
        sample: || C::sample().write_parts(),
        canonical: |node, units| {
            Reader::form::<C::Input>(node, units).map(|(input, _)| input.write_parts())
        },
        solve: |node, units, basis| {
            let (input, mut left_out) = Reader::form::<C::Input>(node, units)?;
            match C::solve(&input, basis) {
                Ok(answer) => Ok((C::sheet(&input, &answer, basis), left_out)),
                Err(mut faults) => {
                    faults.append(&mut left_out);
                    Err(faults)
                }
            }
        },
    }
}

/// The calculator of this id.
pub fn find(id: &str) -> Option<&'static Entry> {
    ALL.iter().find(|entry| entry.id == id)
}

/// An answer, and what other editions would say.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Worked {
    /// The sheet, under the edition shown.
    pub sheet: Sheet,
    /// The edition shown: the job's, or the strictest of the verified ones where it has none.
    pub edition: Option<Electrical>,
    /// Verified editions whose verdict differs from the one shown. One that asks only for want of
    /// its text, while these agree, differs from none.
    pub flips: Vec<Flip>,
    /// What could not be read in a field that feeds a check of its own: the sheet is worked as if
    /// those fields were empty, so that their checks are left out. Mostly none.
    pub left_out: Faults,
}

/// Another edition that says otherwise.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Flip {
    /// Which edition.
    pub edition: Electrical,
    /// Its verdict on the whole.
    pub verdict: Verdict,
    /// Its answer.
    pub answer: Amount,
    /// What the answer is called.
    pub name: Text,
}

impl Entry {
    /// What the screen opens with, complete.
    pub fn sample(&self) -> Node {
        (self.sample)()
    }

    /// The input as it was worked and is kept: every field, every unit written out, and what
    /// [`Worked::left_out`] tells of left empty.
    ///
    /// # Errors
    /// What could not be read.
    pub fn canonical(&self, input: &Node, units: Units) -> Result<Node, Faults> {
        (self.canonical)(input, units)
    }

    /// Works an input. Bare numbers are in `units`.
    ///
    /// # Errors
    /// What could not be read, or does not fit. A fault in a row that stands aside is no error by
    /// itself: see [`Worked::left_out`].
    pub fn work(&self, input: &Node, units: Units, basis: Basis) -> Result<Worked, Faults> {
        if !self.electrical {
            let (sheet, left_out) = (self.solve)(input, units, basis)?;
            return Ok(Worked { sheet, edition: None, flips: Vec::new(), left_out });
        }
        let under = |edition| (self.solve)(input, units, Basis { electrical: Some(edition) });
        let mut all = Vec::new();
        // What can't be read is the same under every edition.
        let mut left_out = Vec::new();
        for edition in Electrical::VERIFIED {
            let (sheet, faults) = under(edition)?;
            left_out = faults;
            all.push((edition, sheet));
        }
        let shown = match basis.electrical {
            Some(edition) => all.iter().position(|(known, _)| *known == edition),
            // The newest of the strictest, so that a tie shows today's wording.
            None => (0..all.len()).max_by_key(|at| strictness(&all[*at].1)),
        };
        let (edition, sheet) = match (shown, basis.electrical) {
            (Some(at), _) => all.remove(at),
            (None, edition) => {
                let edition = edition.unwrap_or(Electrical::NEWEST_VERIFIED);
                (edition, settle(under(edition)?.0, &all))
            }
        };
        let verdict = sheet.verdict();
        // Where all verified editions say within, an unverified one asks for want of its text: it
        // doesn't disagree with them.
        let all_within = all.iter().all(|(_, other)| other.verdict() == Verdict::Within);
        let agreed = !edition.is_verified() && verdict == Verdict::Ask && all_within;
        let flips = all
            .into_iter()
            .filter(|(_, other)| !agreed && other.verdict() != verdict)
            .map(|(edition, sheet)| Flip {
                edition,
                verdict: sheet.verdict(),
                answer: sheet.headline.amount,
                name: sheet.headline.name,
            })
            .collect();
        Ok(Worked { sheet, edition: Some(edition), flips, left_out })
    }
}

/// The sheet of an unverified edition beside those of the verified ones.
fn settle(mut sheet: Sheet, verified: &[(Electrical, Sheet)]) -> Sheet {
    let settled = |check: Check| {
        let same = verified.iter().filter_map(|(_, sheet)| {
            sheet.checks.iter().find(|other| other.key == check.key).map(|other| other.verdict)
        });
        let same: Vec<Verdict> = same.collect();
        compare::settled(check, same)
    };
    sheet.checks = sheet.checks.into_iter().map(settled).collect();
    sheet
}

/// How strict a sheet is: its verdict, then how little its lead check leaves.
fn strictness(sheet: &Sheet) -> (Verdict, i64) {
    let spare = sheet.lead().map_or(0, |check| match check.margin() {
        Amount::Length(length) => length.nanometres(),
        Amount::Volume(volume) => volume.units(),
        Amount::Count(count) => count,
    });
    (sheet.verdict(), -spare)
}
