//! What is known of one thing of a job, so that it can be taken over from another device as it
//! stands there, and given back as it was here.
//!
//! Taking over counts as no change of this device's own: if it did, a number that only another
//! device ever changes would soon look changed on both.

use super::clock::Clock;
use super::edit::{Edit, apply, change, keep, remove};
use super::jot::Jot;
use super::mark::Mark;
use super::refusal::{Refusal, usable};
use super::site::{self, Gone, Job};
use super::stamp::Stamp;
use crate::edition::Basis;
use crate::measure::Units;

/// What a job says of itself, with the clock that goes with it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Terms {
    /// Its name.
    pub name: String,
    /// Where it is.
    pub place: String,
    /// The editions it is under.
    pub basis: Basis,
    /// The units its figures are shown in.
    pub units: Units,
    /// How often each device has changed any of them.
    pub clock: Clock,
}

impl Terms {
    /// Those of a job.
    pub fn of(job: &Job) -> Self {
        Self {
            name: job.name.clone(),
            place: job.place.clone(),
            basis: job.basis,
            units: job.units,
            clock: job.clock.clone(),
        }
    }

    /// Whether both say the same, whatever their clocks.
    pub fn agree(&self, other: &Self) -> bool {
        (&self.name, &self.place, self.basis, self.units)
            == (&other.name, &other.place, other.basis, other.units)
    }

    fn put(self, job: &mut Job) {
        let Self { name, place, basis, units, clock } = self;
        (job.name, job.place, job.basis, job.units, job.clock) = (name, place, basis, units, clock);
    }
}

/// What is known of one thing of a job.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Known {
    /// What the job says of itself.
    Terms(Terms),
    /// A mark is here.
    Mark(Box<Mark>),
    /// A mark was removed.
    Gone(Gone),
    /// Words under a name.
    Jot(Jot),
    /// Nothing is known of this id.
    Nothing(String),
}

impl Known {
    /// The clock that goes with it.
    pub(super) fn clock(&self) -> Option<&Clock> {
        match self {
            Self::Terms(terms) => Some(&terms.clock),
            Self::Mark(mark) => Some(&mark.clock),
            Self::Gone(gone) => Some(&gone.clock),
            Self::Jot(jot) => Some(&jot.clock),
            Self::Nothing(_) => None,
        }
    }

    /// The mark's id; empty, which is no mark's, for what is none.
    fn id(&self) -> &str {
        match self {
            Self::Terms(_) | Self::Jot(_) => "",
            Self::Mark(mark) => &mark.id,
            Self::Gone(gone) => &gone.id,
            Self::Nothing(id) => id,
        }
    }

    /// What a job knows of the same thing.
    pub(super) fn here(&self, job: &Job) -> Self {
        match self {
            Self::Terms(_) => Self::Terms(Terms::of(job)),
            Self::Jot(Jot { key, .. }) => {
                Self::Jot(job.jot(key).cloned().unwrap_or_else(|| Jot::nothing(key)))
            }
            _ => Self::of(job, self.id()),
        }
    }

    /// What a job knows of an id.
    pub(super) fn of(job: &Job, id: &str) -> Self {
        match (job.mark(id), job.trace_of(id)) {
            (Some(mark), _) => Self::Mark(Box::new(mark.clone())),
            (None, Ok(trace)) => Self::Gone(job.gone[trace].clone()),
            (None, Err(_)) => Self::Nothing(id.to_owned()),
        }
    }

    /// Puts it in the place of what the job knows, clock and all.
    pub(super) fn put(self, job: &mut Job) {
        if let Ok(at) = job.place_of(self.id()) {
            job.marks.remove(at);
        }
        if let Ok(at) = job.trace_of(self.id()) {
            job.gone.remove(at);
        }
        match self {
            Self::Terms(terms) => terms.put(job),
            Self::Jot(jot) => job.put_jot(jot),
            Self::Mark(mark) => {
                if let Err(at) = job.place_of(&mark.id) {
                    job.marks.insert(at, *mark);
                }
            }
            Self::Gone(gone) => {
                if let Err(at) = job.trace_of(&gone.id) {
                    job.gone.insert(at, gone);
                }
            }
            Self::Nothing(_) => {}
        }
    }

    fn check(&mut self) -> Result<(), Refusal> {
        match self {
            Self::Terms(terms) => site::check(&terms.name, &terms.place),
            Self::Jot(jot) => jot.check(),
            Self::Mark(mark) => {
                mark.tidy_ties();
                mark.check()
            }
            Self::Gone(Gone { id, .. }) | Self::Nothing(id) if !usable(id) => {
                Err(Refusal::BadId(id.clone()))
            }
            Self::Gone(_) | Self::Nothing(_) => Ok(()),
        }
    }
}

/// Takes it over where the job still stands as it did at `over`; where it has been changed since,
/// as a change of this device's own.
///
/// A circle of links is let in: two devices can make one between them, and neither half may be
/// lost. What stands in it is never fresh, and the next change of it is refused until a link is
/// cut.
pub(super) fn learn(
    job: &mut Job,
    mut known: Known,
    over: Option<Clock>,
    stamp: &Stamp,
) -> Result<Edit, Refusal> {
    known.check()?;
    let before = known.here(job);
    if before.clock() == over.as_ref() {
        let over = known.clock().cloned();
        known.put(job);
        return Ok(Edit::Learn { known: before, over });
    }
    match (known, before) {
        (Known::Terms(terms), _) => {
            let Terms { name, place, basis, units, .. } = terms;
            let edits = [Edit::Describe { name, place }, Edit::Basis(basis), Edit::Units(units)];
            apply(job, Edit::Several(edits.into()), stamp)
        }
        (Known::Jot(Jot { key, says, .. }), _) => apply(job, Edit::Jot { key, says }, stamp),
        (Known::Mark(mark), Known::Mark(_)) => change(job, *mark, stamp),
        (Known::Mark(mark), _) => keep(job, *mark, stamp),
        (_, Known::Mark(mark)) => remove(job, mark.id, stamp),
        _ => Ok(Edit::Several(Vec::new())),
    }
}
