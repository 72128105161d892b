//! The way back from a restore, for as long as a person may want it: what has been changed since is
//! never thrown away by it.

use super::super::edit::Edit;
use super::super::jot::Jot;
use super::super::known::{Known, Terms};
use super::super::site::Job;
use super::super::words as w;
use super::plan::Step;
use crate::say;
use crate::words::Text;

/// What was restored, and what undoes it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Restored {
    undo: Vec<Step>,
    /// The jobs that it is about, as they were then.
    after: Vec<Job>,
}

/// How a restore can be undone now.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Back {
    /// What is to be done for it; nothing where no job is as it was restored.
    pub steps: Vec<Step>,
    /// The jobs that stay as they are.
    pub stays: Vec<Stays>,
}

/// A job that something was done to since it was restored.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stays {
    /// Its name.
    pub job: Text,
    /// What was changed of what the restore had changed; nothing of a job that it had added, where
    /// any change counts.
    pub changed: Vec<Text>,
}

impl Restored {
    /// Of the steps that undo it, and the jobs as they are then.
    pub fn new(undo: Vec<Step>, jobs: &[Job]) -> Self {
        let after = undo.iter().filter_map(|step| found(jobs, step.job()).cloned()).collect();
        Self { undo, after }
    }

    /// The ids of the jobs that it is about.
    pub fn jobs(&self) -> impl Iterator<Item = &str> {
        self.after.iter().map(|job| &*job.id)
    }

    /// How it can be undone, as the jobs are now. A job stays as it is where something that would go
    /// back was changed since, and is named with that; one that was removed since is passed by. What
    /// the restore had left alone counts for nothing, and is left alone again.
    pub fn back(&self, jobs: &[Job]) -> Back {
        let mut back = Back::default();
        for step in &self.undo {
            let Some(now) = found(jobs, step.job()) else { continue };
            let changed = match (step, found(&self.after, step.job())) {
                (Step::Remove(job), _) => (now != &**job).then(Vec::new),
                (Step::Change(_, edit), Some(was)) => {
                    let mut changed = Vec::new();
                    compare(edit, was, now, &mut changed);
                    Some(changed).filter(|changed| !changed.is_empty())
                }
                // Nothing is to be added by it that is there.
                (Step::Change(..) | Step::Add(_), _) => continue,
            };
            match changed {
                None => back.steps.push(step.clone()),
                Some(changed) => back.stays.push(Stays { job: now.heading(), changed }),
            }
        }
        back
    }
}

fn found<'a>(jobs: &'a [Job], id: &str) -> Option<&'a Job> {
    jobs.iter().find(|job| job.id == id)
}

/// What an edit is about and what is no longer as it was, each named once.
fn compare(edit: &Edit, was: &Job, now: &Job, changed: &mut Vec<Text>) {
    let about = match edit {
        Edit::Several(edits) => {
            return edits.iter().for_each(|edit| compare(edit, was, now, changed));
        }
        Edit::Describe { .. } | Edit::Basis(_) | Edit::Units(_) => Known::Terms(Terms::of(was)),
        Edit::Keep(mark) | Edit::Change(mark) => Known::Nothing(mark.id.clone()),
        Edit::Remove(id) => Known::Nothing(id.clone()),
        Edit::Jot { key, .. } => Known::Jot(Jot::nothing(key)),
        Edit::Learn { known, .. } => known.clone(),
    };
    let (before, after) = (about.here(was), about.here(now));
    if before == after {
        return;
    }
    let name = match (&before, &after) {
        (_, Known::Mark(mark)) | (Known::Mark(mark), _) => say!(w::AS_TYPED, &*mark.title),
        (Known::Terms(_), _) => say!(w::ITS_TERMS),
        (Known::Jot(_), _) => say!(w::ITS_JOTS),
        // One that was removed there, and again here: nothing of it is to be seen.
        (Known::Gone(_) | Known::Nothing(_), _) => return,
    };
    if !changed.contains(&name) {
        changed.push(name);
    }
}
