//! The one door that changes a job.

use super::clock::Clock;
use super::jot::jot;
use super::known::{Known, learn};
use super::mark::Mark;
use super::refusal::Refusal;
use super::site::{self, Gone, Job};
use super::stamp::Stamp;
use super::tie::circle;
use crate::edition::Basis;
use crate::measure::Units;

/// A change to a job.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Edit {
    /// Another name and place.
    Describe {
        /// The name.
        name: String,
        /// Where it is.
        place: String,
    },
    /// Under other editions. The marks' kept answers stay: they are the answers of their day.
    Basis(Basis),
    /// Shown in other units.
    Units(Units),
    /// Adds a mark, or brings back one that was removed.
    Keep(Mark),
    /// Puts a mark in the place of the one with its id.
    Change(Mark),
    /// Removes the mark of this id and leaves a trace of it.
    Remove(String),
    /// Says something under a name; nothing clears it.
    Jot {
        /// What it is about.
        key: String,
        /// The words.
        says: String,
    },
    /// Takes over what another device knows, as it stands there: see [`super::merge()`].
    Learn {
        /// What it knows.
        known: Known,
        /// The clock of what it stands over, none where nothing is known; over anything else it
        /// is a change of this device's own.
        over: Option<Clock>,
    },
    /// All of these in order, or none.
    Several(Vec<Edit>),
}

impl Edit {
    /// Removes every mark.
    pub fn clear(job: &Job) -> Self {
        Self::Several(job.marks.iter().map(|mark| Self::Remove(mark.id.clone())).collect())
    }
}

/// Makes an edit and gives back the edit that undoes it.
///
/// - Done and undone, the job is the same in everything but clocks and traces of what is gone:
///   those only ever go up, because another device may have seen what was done. What was learnt
///   from another device and is taken back at once is forgotten with its clock: nobody else can
///   have seen that it was known here.
/// - Marks that the edit doesn't name are not touched.
///
/// # Errors
/// The [`Refusal`]; the job is then as it was.
pub fn apply(job: &mut Job, edit: Edit, stamp: &Stamp) -> Result<Edit, Refusal> {
    match edit {
        Edit::Describe { name, place } => {
            site::check(&name, &place)?;
            job.clock.bump(&stamp.device);
            Ok(Edit::Describe {
                name: std::mem::replace(&mut job.name, name),
                place: std::mem::replace(&mut job.place, place),
            })
        }
        Edit::Basis(basis) => {
            job.clock.bump(&stamp.device);
            Ok(Edit::Basis(std::mem::replace(&mut job.basis, basis)))
        }
        Edit::Units(units) => {
            job.clock.bump(&stamp.device);
            Ok(Edit::Units(std::mem::replace(&mut job.units, units)))
        }
        Edit::Keep(mark) => keep(job, mark, stamp),
        Edit::Change(mark) => change(job, mark, stamp),
        Edit::Remove(id) => remove(job, id, stamp),
        Edit::Jot { key, says } => {
            let says = jot(job, key.clone(), says, stamp)?;
            Ok(Edit::Jot { key, says })
        }
        Edit::Learn { known, over } => learn(job, known, over, stamp),
        Edit::Several(edits) => several(job, edits, stamp),
    }
}

pub(super) fn keep(job: &mut Job, mut mark: Mark, stamp: &Stamp) -> Result<Edit, Refusal> {
    mark.check()?;
    mark.tidy_ties();
    straight(job, &mark)?;
    let Err(at) = job.place_of(&mark.id) else { return Err(Refusal::Taken(mark.id)) };
    if let Ok(trace) = job.trace_of(&mark.id) {
        mark.clock.join(&job.gone.remove(trace).clock);
    }
    mark.clock.bump(&stamp.device);
    let id = mark.id.clone();
    job.marks.insert(at, mark);
    Ok(Edit::Remove(id))
}

pub(super) fn change(job: &mut Job, mut mark: Mark, stamp: &Stamp) -> Result<Edit, Refusal> {
    mark.check()?;
    mark.tidy_ties();
    straight(job, &mark)?;
    let place = job.place_of(&mark.id).ok().and_then(|at| job.marks.get_mut(at));
    let Some(place) = place else { return Err(Refusal::NoSuchMark(mark.id)) };
    mark.clock.join(&place.clock);
    mark.clock.bump(&stamp.device);
    Ok(Edit::Change(std::mem::replace(place, mark)))
}

/// Refuses a mark that would draw on itself, through whatever marks.
fn straight(job: &Job, mark: &Mark) -> Result<(), Refusal> {
    let Some(way) = circle(&job.marks, mark) else { return Ok(()) };
    let named = |id: &String| {
        let title =
            if *id == mark.id { Some(&mark.title) } else { job.mark(id).map(|it| &it.title) };
        title.filter(|title| !title.trim().is_empty()).unwrap_or(id).clone()
    };
    Err(Refusal::Circle(way.iter().map(named).collect()))
}

pub(super) fn remove(job: &mut Job, id: String, stamp: &Stamp) -> Result<Edit, Refusal> {
    let Ok(at) = job.place_of(&id) else { return Err(Refusal::NoSuchMark(id)) };
    let mark = job.marks.remove(at);
    let mut clock = mark.clock.clone();
    clock.bump(&stamp.device);
    let gone = Gone { id, clock, at: stamp.moment() };
    match job.trace_of(&gone.id) {
        Ok(trace) => job.gone[trace] = gone,
        Err(trace) => job.gone.insert(trace, gone),
    }
    Ok(Edit::Keep(mark))
}

fn several(job: &mut Job, edits: Vec<Edit>, stamp: &Stamp) -> Result<Edit, Refusal> {
    let before = job.clone();
    let mut inverses = Vec::with_capacity(edits.len());
    for edit in edits {
        match apply(job, edit, stamp) {
            Ok(inverse) => inverses.push(inverse),
            Err(refusal) => {
                *job = before;
                return Err(refusal);
            }
        }
    }
    inverses.reverse();
    Ok(Edit::Several(inverses))
}

/// Moves a mark from one job to another: kept in one first, then removed from the other, so that
/// it is in one of them at every moment. Gives back what undoes it in `from` and in `to`.
///
/// # Errors
/// The [`Refusal`] of either side; both jobs are then as they were.
pub fn hand_over(
    from: &mut Job,
    to: &mut Job,
    mark: &str,
    stamp: &Stamp,
) -> Result<(Edit, Edit), Refusal> {
    if from.id == to.id {
        return Err(Refusal::SameJob);
    }
    let Some(moved) = from.mark(mark).cloned() else {
        return Err(Refusal::NoSuchMark(mark.to_owned()));
    };
    let mut edits = vec![Edit::Keep(moved)];
    edits.extend(to.note_sample(mark, &from.noted_sample(mark), from.is_said_own(mark)));
    let undo_to = apply(to, Edit::Several(edits), stamp)?;
    // It was found above, so that nothing is left that could refuse this.
    let undo_from = apply(from, Edit::Remove(mark.to_owned()), stamp)?;
    Ok((undo_from, undo_to))
}
