//! What the whole page shares: where it is, its settings, the jobs, and what is wrong with the
//! store. One door changes a job here: it is applied, written, and only then shown as saved.

use crate::clock;
use crate::route::Route;
use crate::signal::RwSignal;
use crate::store::{self, Loaded, MarkPlace, SetAside, Settings, Trouble, Written};
use crate::{speech, words as w};
use ledgerboard_core::catalog::Entry;
use ledgerboard_core::job::{DEMO_ID, Edit, Job, Refusal, Stamp, apply, demo, hand_over};
use ledgerboard_core::measure::Units;
use ledgerboard_core::say;
use leptos::prelude::*;
use std::ops::Deref;

/// The most calculators that are remembered as opened lately.
const MOST_RECENT: usize = 5;

/// A hold on what all of the page shares, for as long as there is a page.
#[derive(Clone, Copy)]
pub(crate) struct Desk(&'static Shared);

impl Deref for Desk {
    type Target = Shared;

    fn deref(&self) -> &Shared {
        self.0
    }
}

/// The question that is open on the page.
#[derive(Clone, Debug)]
pub(crate) struct OnPage {
    /// Its calculator.
    pub(crate) calculator: &'static Entry,
    /// The mark that it stands for.
    pub(crate) mark: Option<MarkPlace>,
}

/// What all of the page shares.
pub(crate) struct Shared {
    pub(crate) route: RwSignal<Route>,
    pub(crate) settings: RwSignal<Settings>,
    /// The person's own jobs; the invented one is never among them.
    pub(crate) jobs: RwSignal<Vec<Job>>,
    pub(crate) aside: RwSignal<Vec<SetAside>>,
    /// The last write that failed, until one succeeds.
    pub(crate) trouble: RwSignal<Option<Trouble>>,
    /// The question that is open, while one is.
    pub(crate) on_page: RwSignal<Option<OnPage>>,
    /// The question from which a new job is being made.
    pub(crate) comes_from: RwSignal<Option<OnPage>>,
}

/// An edit that was made: what undoes it, and whether the phone has it.
#[derive(Debug)]
pub(crate) struct Made {
    /// Undoes it.
    pub(crate) inverse: Edit,
    /// Whether it was written.
    pub(crate) written: Written,
}

impl Desk {
    /// Reads the store and the address.
    pub(crate) fn open() -> Self {
        let Loaded { mut settings, is_first_visit, jobs, aside, trouble } = store::load_all();
        speech::speak(&settings.language);
        let route = Route::current();
        // Who comes by a link has come for its number, not to be shown around.
        let by_link = matches!(
            route,
            Route::Question(_) | Route::Calculator(_) | Route::Unreadable(..) | Route::Mark(..)
        );
        settings.demo_hidden |= is_first_visit && by_link;
        Self(Box::leak(Box::new(Shared {
            route: RwSignal::new(route),
            settings: RwSignal::new(settings),
            jobs: RwSignal::new(jobs),
            aside: RwSignal::new(aside),
            trouble: RwSignal::new(trouble),
            on_page: RwSignal::new(None),
            comes_from: RwSignal::new(None),
        })))
    }

    /// Shows what became of a write.
    pub(crate) fn report(self, written: Written) {
        let trouble = written.err();
        if self.trouble.try_get_untracked().is_some_and(|known| known != trouble) {
            self.trouble.set(trouble);
        }
    }

    /// Changes the settings and keeps them.
    pub(crate) fn set(self, change: impl FnOnce(&mut Settings)) {
        let before = self.settings.get_untracked();
        let mut settings = before.clone();
        change(&mut settings);
        if settings != before {
            self.report(store::save_settings(&settings));
            self.settings.set(settings);
        }
    }

    /// Notes that a calculator was opened.
    pub(crate) fn remember(self, calculator: &str) {
        self.set(|settings| {
            settings.recent.retain(|id| id != calculator);
            settings.recent.insert(0, calculator.to_owned());
            settings.recent.truncate(MOST_RECENT);
        });
    }

    /// A job by its id, the invented one too.
    pub(crate) fn job(self, id: &str) -> Option<Job> {
        if id == DEMO_ID {
            return Some(demo(speech::voice(Units::Customary)));
        }
        self.jobs.with(|jobs| jobs.iter().find(|job| job.id == id).cloned())
    }

    /// The job that is being worked on, if one is.
    pub(crate) fn present(self) -> Option<Job> {
        let id = self.settings.with(|settings| settings.job.clone())?;
        self.jobs.with(|jobs| jobs.iter().find(|job| job.id == id).cloned())
    }

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
        let written = self.write(changed);
        Ok(Made { inverse, written })
    }

    /// Moves a mark to another job.
    ///
    /// # Errors
    /// The [`Refusal`]; nothing has changed then.
    pub(crate) fn move_mark(self, from: &str, to: &str, mark: &str) -> Result<(), Refusal> {
        let (Some(mut one), Some(mut other)) = (self.job(from), self.job(to)) else {
            return Err(Refusal::NoSuchMark(mark.to_owned()));
        };
        hand_over(&mut one, &mut other, mark, &self.stamp())?;
        // First where it goes, then where it was: twice for a moment, never nowhere.
        if self.write(other).is_ok() {
            let _ = self.write(one);
        }
        Ok(())
    }

    /// Writes a job and shows it. Where it could not be written it is shown all the same, with
    /// the trouble said; but what another tab wrote, or could not be read, stands.
    fn write(self, job: Job) -> Written {
        let written = store::save_job(&job, &self.settings.read_untracked().device);
        self.report(written);
        if written == Err(Trouble::OtherTab) {
            self.reload(&store::job_key(&job.id));
            return written;
        }
        self.jobs.update(|jobs| match jobs.iter_mut().find(|it| it.id == job.id) {
            Some(place) => *place = job,
            None => jobs.push(job),
        });
        written
    }

    /// Adds a job.
    ///
    /// # Errors
    /// The [`Refusal`]: a name that is too long.
    pub(crate) fn new_job(self, name: &str, place: &str) -> Result<String, Refusal> {
        let mut job = Job::new(name, place, &self.stamp())?;
        job.units = self.settings.read_untracked().units;
        let id = job.id.clone();
        let _ = self.write(job);
        Ok(id)
    }

    /// Brings back a job as it was.
    pub(crate) fn put_back(self, job: Job) {
        let _ = self.write(job);
    }

    /// Removes a job and gives it back, for as long as Undo is offered.
    pub(crate) fn remove_job(self, id: &str) -> Option<Job> {
        let removed = store::remove_job(id);
        self.report(removed);
        removed.ok()?;
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
        gone
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
        let _ = self.write(job.clone());
        self.set(|settings| settings.loose = Some((today, id)));
        Ok(job)
    }

    /// Takes over what another tab wrote.
    pub(crate) fn reload(self, key: &str) {
        let Some((id, job)) = store::reload_job(key) else { return };
        self.jobs.update(|jobs| {
            jobs.retain(|it| it.id != id);
            jobs.extend(job);
        });
    }
}
