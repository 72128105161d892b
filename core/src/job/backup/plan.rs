//! What restoring a backup would change, and doing it so that it can be undone.

use super::super::edit::{Edit, apply};
use super::super::merge::{Merged, merge};
use super::super::refusal::Refusal;
use super::super::site::Job;
use super::super::stamp::Stamp;
use super::{Backup, Damaged};

/// What would become of one job of the backup.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Planned {
    /// The job as the backup has it.
    pub job: Job,
    /// What would be done.
    pub change: Change,
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
}

/// What restoring a backup beside these jobs would change. `jobs` are the person's own; the
/// invented one is never among them.
pub fn plan(backup: Backup, jobs: &[Job]) -> Plan {
    let planned = |theirs: Job| {
        let change = match jobs.iter().find(|ours| ours.id == theirs.id) {
            Some(ours) => Change::Merged(Box::new(merge(ours, &theirs))),
            None => Change::New,
        };
        Planned { job: theirs, change }
    };
    Plan { jobs: backup.jobs.into_iter().map(planned).collect(), damaged: backup.damaged }
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
    /// Whether anything is to be done. Nothing is where all of it is here already.
    pub fn changes(&self) -> bool {
        self.jobs.iter().any(|planned| match &planned.change {
            Change::New => true,
            Change::Merged(merged) => merged.edit.is_some(),
        })
    }

    /// What is to be done.
    pub fn into_steps(self) -> Vec<Step> {
        let mut steps = Vec::new();
        for Planned { job, change } in self.jobs {
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
