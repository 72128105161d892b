//! What restoring a backup would change, and doing it so that it can be undone.

use super::super::differs::{Differs, differences};
use super::super::edit::{Edit, apply};
use super::super::mark::Mark;
use super::super::merge::{Fate, Merged, TermsFate, beside, from_backup, merge, other_title, rank};
use super::super::refusal::Refusal;
use super::super::site::{Job, PUT_AWAY};
use super::super::stamp::{Moment, Stamp};
use super::super::words as w;
use super::undo::Restored;
use super::{Backup, Damaged};
use crate::measure::Units;
use crate::words::Phrase;

/// What would become of one job of the backup.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Planned {
    /// The job as the backup has it.
    pub job: Job,
    /// What would be done.
    pub change: Change,
    /// Numbers that the file's would take the place of.
    pub replaced: Vec<Beside>,
    /// Numbers changed here and in the file.
    pub both: Vec<Beside>,
    /// What is to be said of the job's being put away, there or here.
    pub away: Option<&'static Phrase>,
    /// How many other words under a name would be other ones: ticks, prices, what an owner said.
    pub jots: usize,
    /// Numbers of the file that stay out: removed or worked anew here since.
    pub left_out: Vec<Beside>,
}

impl Planned {
    /// Whether there is anything to tell of it: something changes, or what the file has stays out.
    pub fn is_news(&self) -> bool {
        match &self.change {
            Change::New => true,
            Change::Merged(merged) => {
                let is_told = matches!(merged.terms, TermsFate::Told(_));
                merged.changes() || is_told || merged.circle.is_some() || !self.left_out.is_empty()
            }
        }
    }
}

/// A number of the file, and the one that is here.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Beside {
    /// As the file has it.
    pub file: Mark,
    /// As it is here, if it is.
    pub here: Option<Mark>,
    /// Whether the file's is the one that keeps its place, and what others take from it.
    pub file_stays: bool,
}

impl Beside {
    /// Under which title the second one of both will stand.
    pub fn other_title(&self) -> String {
        let second = if self.file_stays { self.here.as_ref() } else { None };
        other_title(&second.unwrap_or(&self.file).title)
    }

    /// What differs between the two, field by field, to be said in these units; nothing where it
    /// isn't here.
    pub fn differences(&self, units: Units) -> Vec<Differs> {
        self.here.as_ref().map_or_else(Vec::new, |here| differences(here, &self.file, units))
    }
}

/// What would be done with a job of the backup.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Change {
    /// It is not here: it would be added.
    New,
    /// It is here: the two would be merged.
    Merged(Box<Merged>),
}

/// What restoring would change.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plan {
    /// Every whole job of the backup, in its order.
    pub jobs: Vec<Planned>,
    /// Those that can't be read.
    pub damaged: Vec<Damaged>,
    /// The last whole job of a file that stops in the middle, by its name.
    pub cut_after: Option<String>,
    /// When the file was made.
    pub made: Moment,
}

/// What restoring a backup beside these jobs would change. `jobs` are the person's own; the
/// invented one is never among them.
pub fn plan(backup: Backup, jobs: &[Job]) -> Plan {
    let planned = |theirs: Job| {
        let Some(ours) = jobs.iter().find(|ours| ours.id == theirs.id) else {
            let (replaced, both, left_out) = (Vec::new(), Vec::new(), Vec::new());
            let away = theirs.is_put_away().then_some(&w::AWAY_TOO);
            let change = Change::New;
            return Planned { job: theirs, change, replaced, both, away, jots: 0, left_out };
        };
        let merged = merge(ours, &theirs);
        let (mut replaced, mut both_kept, mut left_out) = (Vec::new(), Vec::new(), Vec::new());
        for told in &merged.marks {
            let Some(file) = theirs.mark(&told.id) else { continue };
            let here = ours.mark(&told.id);
            let both = |file_stays| Beside { file: file.clone(), here: here.cloned(), file_stays };
            match told.fate {
                Fate::Replaced => replaced.push(both(true)),
                Fate::Both => both_kept.push(both(here.is_some_and(|it| rank(it) <= rank(file)))),
                Fate::StaysGone => left_out.push(both(false)),
                Fate::Here if here.is_some_and(|here| !says_the_same(here, file)) => {
                    left_out.push(both(false));
                }
                _ => {}
            }
        }
        // What was brought back once is here, and so is the second one of two.
        left_out.retain(|it| {
            let known = [from_backup(&it.file).id, beside(&it.file).id];
            known.iter().all(|id| ours.mark(id).is_none())
        });
        let (away, is_other) = away(ours, &theirs);
        let jots = merged.jots.saturating_sub(usize::from(is_other));
        let (change, both) = (Change::Merged(Box::new(merged)), both_kept);
        Planned { change, job: theirs, replaced, both, away, jots, left_out }
    };
    let Backup { written, jobs: theirs, damaged, cut_after } = backup;
    let jobs = theirs.into_iter().map(planned).collect();
    Plan { jobs, damaged, cut_after, made: written.made }
}

/// What merging makes of a job's being put away, where either side says that it is, and whether that
/// is something else than here.
fn away(ours: &Job, theirs: &Job) -> (Option<&'static Phrase>, bool) {
    let (here, there) = (ours.jotted(PUT_AWAY), theirs.jotted(PUT_AWAY));
    let after = match (ours.jot(PUT_AWAY), theirs.jot(PUT_AWAY)) {
        (Some(ours), Some(theirs)) => ours.joined(theirs).says,
        _ => [here, there].concat(),
    };
    let says = match (here.is_empty(), there.is_empty(), after.is_empty()) {
        (true, false, false) => Some(&w::AWAY_TOO),
        (_, false, true) => Some(&w::AWAY_THERE),
        (false, true, true) => Some(&w::AWAY_NO_MORE),
        (_, true, _) | (false, false, false) => None,
    };
    (says, after != here)
}

/// Whether two marks have the same answer from the same input, whatever they are called.
fn says_the_same(one: &Mark, other: &Mark) -> bool {
    one.input == other.input && one.kept.agrees(&other.kept)
}

/// One thing to be done to the jobs.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Step {
    /// Adds a job.
    Add(Box<Job>),
    /// Changes the job of this id.
    Change(String, Box<Edit>),
    /// Removes this job, if it is still as it is here.
    Remove(Box<Job>),
}

impl Step {
    /// The id of the job that it is about.
    pub fn job(&self) -> &str {
        match self {
            Self::Add(job) | Self::Remove(job) => &job.id,
            Self::Change(id, _) => id,
        }
    }
}

impl Plan {
    /// Whether anything would change that a person can see. Nothing does where all of it is here
    /// already, or stays as it is here.
    pub fn changes(&self) -> bool {
        self.jobs.iter().any(|planned| match &planned.change {
            Change::New => true,
            Change::Merged(merged) => merged.changes(),
        })
    }

    /// What brings the numbers that stay out back as new ones, beside what is here.
    pub fn copies(&self) -> Vec<Step> {
        let with = self.jobs.iter().filter(|planned| !planned.left_out.is_empty());
        with.map(|Planned { job, left_out, .. }| {
            let keep = |it: &Beside| Edit::Keep(from_backup(&it.file));
            let edits = left_out.iter().map(keep).collect();
            Step::Change(job.id.clone(), Box::new(Edit::Several(edits)))
        })
        .collect()
    }

    /// What is to be done.
    pub fn into_steps(self) -> Vec<Step> {
        let mut steps = Vec::new();
        for Planned { job, change, .. } in self.jobs {
            match change {
                Change::New => steps.push(Step::Add(Box::new(job))),
                Change::Merged(merged) => {
                    let change = |edit| Step::Change(job.id, Box::new(edit));
                    steps.extend(merged.edit.map(change));
                }
            }
        }
        steps
    }
}

/// Carries out all steps or none, and gives back what they did, from which they are undone. A job
/// that was added and has been changed since is not removed again: what was changed is nowhere else.
///
/// # Errors
/// The [`Refusal`]; nothing has changed then.
pub fn carry_out(
    jobs: &mut Vec<Job>,
    steps: Vec<Step>,
    stamp: &Stamp,
) -> Result<Restored, Refusal> {
    let mut changed = jobs.clone();
    for step in steps {
        let place = changed.iter().position(|job| job.id == step.job());
        match (step, place) {
            (Step::Add(job), Some(_)) => return Err(Refusal::Taken(job.id)),
            (Step::Add(job), None) => changed.push(*job),
            (Step::Change(id, _), None) => return Err(Refusal::NoSuchMark(id)),
            (Step::Change(_, edit), Some(at)) => drop(apply(&mut changed[at], *edit, stamp)?),
            (Step::Remove(job), Some(at)) if changed[at] == *job => drop(changed.remove(at)),
            (Step::Remove(_), _) => {}
        }
    }
    let done = Restored::new(jobs, &changed);
    *jobs = changed;
    Ok(done)
}
