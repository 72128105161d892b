//! Jobs that come, go and come back, and the one that a number goes to.

use super::Desk;
use crate::{clock, speech, store, words as w};
use ledgerboard_core::job::{Job, Refusal};
use ledgerboard_core::say;
use leptos::prelude::*;

/// A job that was taken away.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct GoneJob {
    pub(crate) job: Job,
    /// Numbers were saved to it.
    was_present: bool,
}

impl Desk {
    /// Adds a job.
    ///
    /// # Errors
    /// The [`Refusal`]: a name that is too long.
    pub(crate) fn new_job(self, name: &str, place: &str) -> Result<String, Refusal> {
        let mut job = Job::new(name, place, &self.stamp())?;
        job.units = self.settings.read_untracked().units;
        let id = job.id.clone();
        self.write(job);
        Ok(id)
    }

    /// Brings back a job as it was, and as the present one if it was that.
    pub(crate) fn put_back(self, gone: GoneJob) {
        let GoneJob { job, was_present } = gone;
        let id = job.id.clone();
        self.write(job);
        if was_present {
            self.set(|settings| settings.job = Some(id));
        }
    }

    /// Removes a job and gives it back, for as long as Undo is offered.
    pub(crate) fn remove_job(self, id: &str) -> Option<GoneJob> {
        let was_present = self.settings.with_untracked(|it| it.job.as_deref() == Some(id));
        store::remove(id).ok()?;
        self.look();
        let mut gone = None;
        self.jobs.update(|jobs| {
            if let Some(at) = jobs.iter().position(|job| job.id == id) {
                gone = Some(jobs.remove(at));
            }
        });
        self.set(|settings| {
            if settings.job.as_deref() == Some(id) {
                settings.job = None;
            }
        });
        gone.map(|job| GoneJob { job, was_present })
    }

    /// The job that holds today's loose notes, once there are any.
    pub(crate) fn todays_loose_notes(self) -> Option<String> {
        let loose = self.settings.with(|settings| settings.loose.clone());
        loose.filter(|(date, _)| *date == clock::now().date()).map(|(_, id)| id)
    }

    /// The job that a number goes to: the present one, or the day's loose notes.
    ///
    /// # Errors
    /// Never for want of a job; the [`Refusal`] of a name that is too long.
    pub(crate) fn job_to_save_in(self) -> Result<Job, Refusal> {
        if let Some(job) = untrack(|| self.present()) {
            return Ok(job);
        }
        let today = clock::now().date();
        if let Some(id) = untrack(|| self.todays_loose_notes())
            && let Some(job) = untrack(|| self.job(&id))
        {
            return Ok(job);
        }
        let name = speech::say(&say!(w::LOOSE_NOTES, &*today));
        let mut job = Job::new(&name, "", &self.stamp())?;
        job.units = self.settings.read_untracked().units;
        let id = job.id.clone();
        self.write(job.clone());
        self.set(|settings| settings.loose = Some((today, id)));
        Ok(job)
    }
}
