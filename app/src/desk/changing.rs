//! The one door that changes a job here: applied, written, and only then shown as saved.

use super::Desk;
use crate::store::{self, MarkPlace};
use crate::{clock, speech, words as w};
use ledgerboard_core::job::backup::{Restored, Step, carry_out};
use ledgerboard_core::job::{
    Edit, Job, LONGEST_TITLE, Mark, Refusal, Stamp, apply, hand_over, meet_marks,
};
use ledgerboard_core::say;
use leptos::prelude::*;

/// An edit that was made.
#[derive(Debug)]
pub(crate) struct Made {
    /// Undoes it.
    pub(crate) inverse: Edit,
}

impl Desk {
    /// Who changes things here, and when.
    pub(crate) fn stamp(self) -> Stamp {
        clock::stamp(&self.settings.read_untracked().device)
    }

    /// Changes a job through the one door, and writes it.
    ///
    /// # Errors
    /// The [`Refusal`]; nothing has changed then.
    pub(crate) fn edit(self, job: &str, edit: Edit) -> Result<Made, Refusal> {
        let found = self.jobs.with_untracked(|jobs| jobs.iter().find(|it| it.id == job).cloned());
        let Some(mut changed) = found else { return Err(Refusal::NoSuchMark(job.to_owned())) };
        let inverse = apply(&mut changed, edit, &self.stamp())?;
        self.write(changed);
        Ok(Made { inverse })
    }

    /// Changes a mark that was `seen` so. What another tab has changed since stays; where it
    /// changed the same part, its mark stays beside this one. Gives the mark as it is then.
    ///
    /// # Errors
    /// The [`Refusal`]; nothing has changed then.
    pub(crate) fn change(
        self,
        job: &str,
        seen: &Mark,
        ours: Mark,
    ) -> Result<(Made, Mark), Refusal> {
        let there = untrack(|| self.job(job)).and_then(|job| job.mark(&ours.id).cloned());
        let (mark, edit) = match there {
            // Removed elsewhere, and changed here: it is wanted.
            None => (ours.clone(), Edit::Keep(ours)),
            Some(theirs) => match meet_marks(Some(seen), &ours, &theirs) {
                Some(one) => (one.clone(), Edit::Change(one)),
                None => {
                    let mut beside = theirs.duplicate(&self.stamp());
                    let longer = speech::say(&say!(w::OTHER_TAB_TITLE, &*theirs.title));
                    if longer.chars().count() <= LONGEST_TITLE {
                        beside.title = longer;
                    }
                    let both = vec![Edit::Change(ours.clone()), Edit::Keep(beside)];
                    (ours, Edit::Several(both))
                }
            },
        };
        Ok((self.edit(job, edit)?, mark))
    }

    /// Moves a mark to another job, and the edits of it that wait.
    ///
    /// # Errors
    /// The [`Refusal`]; nothing has changed then.
    pub(crate) fn move_mark(self, from: &str, to: &str, mark: &str) -> Result<(), Refusal> {
        let (Some(mut one), Some(mut other)) = (self.job(from), self.job(to)) else {
            return Err(Refusal::NoSuchMark(mark.to_owned()));
        };
        let calculator = one.mark(mark).map(|mark| mark.calculator.clone()).unwrap_or_default();
        hand_over(&mut one, &mut other, mark, &self.stamp())?;
        self.write(other);
        let place = MarkPlace { job: from.to_owned(), mark: mark.to_owned() };
        store::move_edits(&calculator, &place, to);
        self.look();
        // First where it goes, then where it was: twice for a moment, never nowhere.
        let (from, mark) = (from.to_owned(), mark.to_owned());
        store::once_held(to, move || {
            let _ = self.edit(&from, Edit::Remove(mark));
        });
        Ok(())
    }

    /// Carries out what restoring asks for, all of it or none, and writes each job that it changes.
    /// Gives back what it did, from which it is undone.
    ///
    /// # Errors
    /// The [`Refusal`]; nothing has changed then.
    pub(crate) fn carry_out(self, steps: Vec<Step>) -> Result<Restored, Refusal> {
        let mut jobs = self.jobs.get_untracked();
        let ids: Vec<String> = steps.iter().map(|step| step.job().to_owned()).collect();
        let done = carry_out(&mut jobs, steps, &self.stamp())?;
        for id in ids {
            match jobs.iter().find(|job| job.id == id) {
                Some(job) => self.write(job.clone()),
                None => drop(self.remove_job(&id)),
            }
        }
        Ok(done)
    }

    /// Shows a job and writes it. Where it can't be written it is shown all the same, and the
    /// page says what is the matter.
    pub(super) fn write(self, job: Job) {
        self.show(job.clone());
        store::save(job);
    }
}
