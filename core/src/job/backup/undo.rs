//! The way back from a restore, for as long as a person may want it: what has been changed since is
//! never thrown away by it.

use super::super::edit::Edit;
use super::super::jot::Jot;
use super::super::known::{Known, Terms};
use super::super::site::Job;
use super::super::stamp::Moment;
use super::super::words as w;
use super::plan::Step;
use super::{Written, read, write};
use crate::say;
use crate::words::Text;

/// What was restored: the jobs that it changed, as they were and as they are. What undoes it follows
/// from both, so that a restore of yesterday is undone as one of just now. What was learnt by it is
/// forgotten then; another device that has heard of it meanwhile would bring it back, as new.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Restored {
    before: Vec<Job>,
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
    /// Of the jobs as they were and as they are; those that are the same in both are left out.
    pub(super) fn new(before: &[Job], after: &[Job]) -> Self {
        let changed = |jobs: &[Job], others: &[Job]| {
            let changed = jobs.iter().filter(|job| found(others, &job.id) != Some(*job));
            changed.cloned().collect()
        };
        let (before, after) = (changed(before, after), changed(after, before));
        Self { before, after }
    }

    /// As two texts, each of them a backup: what was, and what is.
    pub fn write(&self, written: &Written) -> [String; 2] {
        [&self.before, &self.after].map(|jobs| write(jobs, written))
    }

    /// From its two texts, with when they were made. None where either isn't whole: a part of a
    /// restore is not undone.
    pub fn read(texts: [&str; 2]) -> Option<(Self, Moment)> {
        let whole = |text| {
            let backup = read(text).ok()?;
            let is_whole = backup.damaged.is_empty() && backup.cut_after.is_none();
            is_whole.then_some(backup)
        };
        let [before, after] = texts.map(whole);
        let (before, after) = (before?, after?);
        Some((Self { before: before.jobs, after: after.jobs }, after.written.made))
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
        for after in &self.after {
            let Some(now) = found(jobs, &after.id) else { continue };
            let (step, changed) = match found(&self.before, &after.id) {
                // Whatever was done in a job that it added is nowhere else.
                None => {
                    (Step::Remove(Box::new(after.clone())), (now != after).then(Vec::<Text>::new))
                }
                Some(before) => {
                    let (mut edits, mut changed) = (Vec::new(), Vec::new());
                    for was in differing(before, after) {
                        let is = was.here(after);
                        compare(&is, &was.here(now), &mut changed);
                        edits.push(Edit::Learn { known: was, over: is.clock().cloned() });
                    }
                    let edit = Box::new(Edit::Several(edits));
                    let changed = Some(changed).filter(|changed| !changed.is_empty());
                    (Step::Change(after.id.clone(), edit), changed)
                }
            };
            match changed {
                None => back.steps.push(step),
                Some(changed) => back.stays.push(Stays { job: now.heading(), changed }),
            }
        }
        let taken = self.before.iter().filter(|job| found(&self.after, &job.id).is_none());
        let taken = taken.filter(|job| found(jobs, &job.id).is_none());
        back.steps.extend(taken.map(|job| Step::Add(Box::new(job.clone()))));
        back
    }
}

fn found<'a>(jobs: &'a [Job], id: &str) -> Option<&'a Job> {
    jobs.iter().find(|job| job.id == id)
}

/// What a job knew of each thing of which it knows something else after.
fn differing(before: &Job, after: &Job) -> Vec<Known> {
    let mut all = Vec::new();
    let mut add = |known: Known| {
        if known != known.here(after) && !all.contains(&known) {
            all.push(known);
        }
    };
    add(Known::Terms(Terms::of(before)));
    for job in [before, after] {
        let ids = job.marks.iter().map(|it| &it.id).chain(job.gone.iter().map(|it| &it.id));
        ids.for_each(|id| add(Known::of(before, id)));
        job.jots.iter().for_each(|jot| add(Known::Jot(Jot::nothing(&jot.key)).here(before)));
    }
    all
}

/// Names what is no longer as it was, once.
fn compare(was: &Known, now: &Known, changed: &mut Vec<Text>) {
    if was == now {
        return;
    }
    let name = match (was, now) {
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
