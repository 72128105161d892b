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
use crate::sheet::{Faults, Sheet, Verdict};
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
    solve: fn(&Node, Units, Basis) -> Result<Sheet, Faults>,
}

/// All calculators, in the order of a job.
pub static ALL: &[Entry] = &[
    entry::<calculators::room::Room>(),
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
            Reader::form::<C::Input>(node, units).map(|input| input.write_parts())
        },
        solve: |node, units, basis| {
            let input = Reader::form::<C::Input>(node, units)?;
            let answer = C::solve(&input, basis)?;
            Ok(C::sheet(&input, &answer, basis))
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
    /// Editions whose verdict differs from the one shown.
    pub flips: Vec<Flip>,
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

    /// The input as it is kept: every field, every unit written out.
    ///
    /// # Errors
    /// What could not be read.
    pub fn canonical(&self, input: &Node, units: Units) -> Result<Node, Faults> {
        (self.canonical)(input, units)
    }

    /// Works an input. Bare numbers are in `units`.
    ///
    /// # Errors
    /// What could not be read, or does not fit.
    pub fn work(&self, input: &Node, units: Units, basis: Basis) -> Result<Worked, Faults> {
        if !self.electrical {
            let sheet = (self.solve)(input, units, basis)?;
            return Ok(Worked { sheet, edition: None, flips: Vec::new() });
        }
        let under = |edition| (self.solve)(input, units, Basis { electrical: Some(edition) });
        let mut all = Vec::new();
        for edition in Electrical::VERIFIED {
            all.push((edition, under(edition)?));
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
                (edition, under(edition)?)
            }
        };
        let verdict = sheet.verdict();
        let flips = all
            .into_iter()
            .filter(|(_, other)| other.verdict() != verdict)
            .map(|(edition, sheet)| Flip {
                edition,
                verdict: sheet.verdict(),
                answer: sheet.headline.amount,
                name: sheet.headline.name,
            })
            .collect();
        Ok(Worked { sheet, edition: Some(edition), flips })
    }
}

/// How strict a sheet is: its verdict, then how little its lead check leaves.
fn strictness(sheet: &Sheet) -> (Verdict, i128) {
    let spare = sheet.lead().map_or(0, |check| match check.margin() {
        Amount::Length(length) => length.nanometres().into(),
        Amount::Area(area) => area.square_nanometres(),
        Amount::Volume(volume) | Amount::Room(volume) => volume.units().into(),
        Amount::Count(count) => count.into(),
    });
    (sheet.verdict(), -spare)
}
