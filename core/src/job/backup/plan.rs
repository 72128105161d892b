//! What restoring a backup would change, and doing it so that it can be undone.

use super::super::edit::{Edit, apply};
use super::super::mark::Mark;
use super::super::merge::{Fate, Merged, beside, from_backup, merge};
use super::super::refusal::Refusal;
use super::super::site::Job;
use super::super::stamp::{Moment, Stamp};
use super::{Backup, Damaged};

/// What would become of one job of the backup.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Planned {
    /// The job as the backup has it.
    pub job: Job,
    /// What would be done.
    pub change: Change,
    /// Numbers that the file's would take the place of.
    pub replaced: Vec<Beside>,
    /// Numbers of the file that stay out: removed or worked anew here since.
    pub left_out: Vec<Beside>,
}

/// A number of the file, and the one that is here.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Beside {
    /// As the file has it.
    pub file: Mark,
    /// As it is here, if it is.
    pub here: Option<Mark>,
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
            let (replaced, left_out) = (Vec::new(), Vec::new());
            return Planned { job: theirs, change: Change::New, replaced, left_out };
        };
        let merged = merge(ours, &theirs);
        let (mut replaced, mut left_out) = (Vec::new(), Vec::new());
        for told in &merged.marks {
            let Some(file) = theirs.mark(&told.id) else { continue };
            let here = ours.mark(&told.id);
            let both = || Beside { file: file.clone(), here: here.cloned() };
            match told.fate {
                Fate::Replaced => replaced.push(both()),
                Fate::StaysGone => left_out.push(both()),
                Fate::Here if here.is_some_and(|here| !says_the_same(here, file)) => {
                    left_out.push(both());
                }
                _ => {}
            }
        }
        // What was brought back once is here, and so is the second one of two.
        left_out.retain(|it| {
            let known = [from_backup(&it.file).id, beside(&it.file).id];
            known.iter().all(|id| ours.mark(id).is_none())
        });
        Planned { change: Change::Merged(Box::new(merged)), job: theirs, replaced, left_out }
    };
    let Backup { written, jobs: theirs, damaged, cut_after } = backup;
    let jobs = theirs.into_iter().map(planned).collect();
    Plan { jobs, damaged, cut_after, made: written.made }
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

/// Carries out all steps or none, and gives back those that undo them. A job that was added and
/// has been changed since is not removed again: what was changed is nowhere else.
///
/// # Errors
/// The [`Refusal`]; nothing has changed then.
pub fn carry_out(
    jobs: &mut Vec<Job>,
    steps: Vec<Step>,
    stamp: &Stamp,
) -> Result<Vec<Step>, Refusal> {
    let mut changed = jobs.clone();
    let mut undo = Vec::with_capacity(steps.len());
    for step in steps {
        let place = changed.iter().position(|job| job.id == step.job());
        match (step, place) {
            (Step::Add(job), Some(_)) => return Err(Refusal::Taken(job.id)),
            (Step::Add(job), None) => {
                undo.push(Step::Remove(job.clone()));
                changed.push(*job);
            }
            (Step::Change(id, _), None) => return Err(Refusal::NoSuchMark(id)),
            (Step::Change(id, edit), Some(at)) => {
                let inverse = apply(&mut changed[at], *edit, stamp)?;
                undo.push(Step::Change(id, Box::new(inverse)));
            }
            (Step::Remove(job), Some(at)) if changed[at] == *job => {
                undo.push(Step::Add(Box::new(changed.remove(at))));
            }
            (Step::Remove(_), _) => {}
        }
    }
    undo.reverse();
    *jobs = changed;
    Ok(undo)
}
