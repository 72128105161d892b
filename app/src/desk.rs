//! What the whole page shares: where it is, its settings, the jobs, and what is wrong with the
//! store. One door changes a job here: it is applied, written, and only then shown as saved.

use crate::clock;
use crate::elements::on_change;
use crate::later::later;
use crate::route::Route;
use crate::signal::{Memo, RwSignal};
use crate::store::{self, Held, Listed, Loaded, MarkPlace, News, Settings, Trouble};
use crate::{daylight, speech, words as w};
use ledgerboard_core::catalog::Entry;
use ledgerboard_core::job::backup::{self, Step, carry_out};
use ledgerboard_core::job::{
    DEMO_ID, Edit, Job, LONGEST_TITLE, Mark, Moment, Refusal, Stamp, apply, demo, hand_over,
    meet_marks,
};
use ledgerboard_core::measure::Units;
use ledgerboard_core::say;
use ledgerboard_core::wire::Node;
use leptos::prelude::*;
use std::ops::Deref;
use std::time::Duration;

/// The most calculators that are remembered as opened lately.
const MOST_RECENT: usize = 5;

/// How long what was read waits to be shown with what comes next.
const GATHERED: Duration = Duration::from_millis(250);

/// A hold on what all of the page shares, for as long as there is a page.
#[derive(Clone, Copy)]
pub(crate) struct Desk(&'static Shared);

impl Deref for Desk {
    type Target = Shared;

    fn deref(&self) -> &Shared {
        self.0
    }
}

/// A job that was taken away.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct GoneJob {
    pub(crate) job: Job,
    /// Numbers were saved to it.
    was_present: bool,
}

/// The question that is open on the page.
#[derive(Clone, Debug)]
pub(crate) struct OnPage {
    /// Its calculator.
    pub(crate) calculator: &'static Entry,
    /// The mark that it stands for.
    pub(crate) mark: Option<MarkPlace>,
}

/// The last restore, or the undoing of one.
#[derive(Clone, Debug)]
pub(crate) struct Restored {
    /// The way back from it.
    pub(crate) back: backup::Restored,
    pub(crate) at: Moment,
    /// It undid a restore.
    pub(crate) is_undo: bool,
    /// Where it changed what counts as the last backup: when that was made, and the one before it.
    pub(crate) counted: Option<(Option<i64>, Option<i64>)>,
}

/// What a saved number is looked for by, and how far down the list of jobs was left.
#[derive(Clone, Debug, Default)]
pub(crate) struct Sought {
    pub(crate) typed: String,
    pub(crate) place: f64,
}

/// What all of the page shares.
pub(crate) struct Shared {
    pub(crate) route: RwSignal<Route>,
    pub(crate) settings: RwSignal<Settings>,
    /// The person's own jobs; the invented one is never among them.
    pub(crate) jobs: RwSignal<Vec<Job>>,
    /// A line for each job, in the order in which they were worked on: also for one that is still
    /// being read.
    pub(crate) list: Memo<Vec<Listed>>,
    /// All jobs have been read.
    all_read: RwSignal<bool>,
    /// Jobs that were read and are not shown yet.
    came: RwSignal<Vec<Job>>,
    /// Goes up when something was set aside, or a job is shut.
    pub(crate) aside: RwSignal<u32>,
    /// Goes up when a store has answered.
    stores: RwSignal<u32>,
    /// What keeps things from being saved now.
    pub(crate) trouble: RwSignal<Option<Trouble>>,
    /// The question that is open, while one is.
    pub(crate) on_page: RwSignal<Option<OnPage>>,
    /// Goes up when all numbers of the job at hand have been worked.
    pub(crate) worked: RwSignal<u32>,
    /// The question from which a new job is being made.
    pub(crate) comes_from: RwSignal<Option<OnPage>>,
    /// What was restored last.
    pub(crate) restored: RwSignal<Option<Restored>>,
    /// Kept from one look at the jobs to the next.
    pub(crate) sought: RwSignal<Sought>,
}

/// An edit that was made.
#[derive(Debug)]
pub(crate) struct Made {
    /// Undoes it.
    pub(crate) inverse: Edit,
}

fn put(jobs: &mut Vec<Job>, job: Job) {
    match jobs.iter_mut().find(|it| it.id == job.id) {
        Some(place) => *place = job,
        None => jobs.push(job),
    }
}

impl Desk {
    /// Reads the store and the address.
    pub(crate) fn open() -> Self {
        let route = Route::current();
        let Loaded { mut settings, is_first_visit, jobs, listed } = store::load(route.job());
        speech::speak(&settings.language);
        daylight::shine(&settings.light);
        // Who comes by a link has come for its number, not to be shown around.
        let by_link = matches!(
            route,
            Route::Question(_) | Route::Calculator(_) | Route::Unreadable(..) | Route::Mark(..)
        );
        settings.demo_hidden |= is_first_visit && by_link;
        let (jobs, all_read) = (RwSignal::new(jobs), RwSignal::new(false));
        let list = Memo::new(move |_| {
            let mut all: Vec<Listed> = jobs.with(|jobs| jobs.iter().map(Listed::of).collect());
            if !all_read.get() {
                let known: Vec<&str> = all.iter().map(|it| it.id.as_str()).collect();
                let unread = listed.iter().filter(|it| !known.contains(&&*it.id));
                let unread: Vec<Listed> = unread.cloned().collect();
                all.extend(unread);
            }
            store::newest_first(all)
        });
        let desk = Self(Box::leak(Box::new(Shared {
            route: RwSignal::new(route),
            settings: RwSignal::new(settings),
            jobs,
            list,
            all_read,
            came: RwSignal::new(Vec::new()),
            aside: RwSignal::new(0),
            stores: RwSignal::new(0),
            trouble: RwSignal::new(None),
            on_page: RwSignal::new(None),
            worked: RwSignal::new(0),
            comes_from: RwSignal::new(None),
            restored: RwSignal::new(None),
            sought: RwSignal::new(Sought::default()),
        })));
        store::listen(move |news| desk.hear(news));
        store::read_mirror();
        desk.look();
        let keep = later(move |_| store::keep_list(&desk.list.get_untracked()));
        on_change(
            move || {
                desk.list.with(|_| ());
                desk.all_read.track();
            },
            keep,
        );
        desk
    }

    /// Takes in what the stores have to tell.
    fn hear(self, news: News) {
        match news {
            News::Job(job) if !store::has_read() => return self.gather(*job),
            News::Changed => {}
            News::Job(job) => self.show(*job),
            News::Gone(id) => {
                self.show_all();
                self.jobs.update(|jobs| jobs.retain(|job| job.id != id));
            }
            News::Aside => {
                self.show_all();
                self.aside.update(|times| *times += 1);
            }
        }
        if store::has_read() && !self.all_read.get_untracked() {
            self.all_read.set(true);
        }
        self.look();
    }

    /// While the stores are read, jobs come by the hundred: those that nobody sees or waits for are
    /// shown a few times a second.
    fn gather(self, job: Job) {
        let is_wanted = self.route.with_untracked(|route| route.job() == Some(&job.id));
        if is_wanted || untrack(|| self.has(&job.id)) {
            self.show(job);
            return self.look();
        }
        let is_first = self.came.with_untracked(Vec::is_empty);
        self.came.update(|came| came.push(job));
        if is_first {
            set_timeout(move || self.show_all(), GATHERED);
        }
    }

    fn show_all(self) {
        let came = self.came.get_untracked();
        if came.is_empty() {
            return;
        }
        self.came.set(Vec::new());
        self.jobs.update(|jobs| {
            for job in came {
                put(jobs, job);
            }
        });
    }

    /// Whether all jobs have been read: before that, a copy of all would lack some.
    pub(crate) fn has_all(self) -> bool {
        self.all_read.get()
    }

    /// Whether a job has been read.
    pub(crate) fn has(self, id: &str) -> bool {
        id == DEMO_ID || self.jobs.with(|jobs| jobs.iter().any(|job| job.id == id))
    }

    /// Looks what keeps things from being saved.
    pub(crate) fn look(self) {
        self.stores.update(|times| *times += 1);
        let trouble = store::trouble();
        if self.trouble.try_get_untracked().is_some_and(|known| known != trouble) {
            self.trouble.set(trouble);
        }
        use Trouble::{Blocked, Differs, Full, TypedFull};
        if matches!(trouble, Some(Blocked | Differs | Full | TypedFull)) {
            store::try_soon();
        }
    }

    /// What a saved number was worked from; none for one that is not here, or invented.
    pub(crate) fn saved_input(self, place: &MarkPlace) -> Option<Node> {
        self.jobs.with(|jobs| {
            let job = jobs.iter().find(|job| job.id == place.job)?;
            job.mark(&place.mark).map(|mark| mark.input.clone())
        })
    }

    /// Follows the answers of the stores.
    pub(crate) fn track_stores(self) {
        self.stores.track();
    }

    /// How safe a job is, and again whenever a store has answered.
    pub(crate) fn held(self, job: &str) -> Held {
        self.stores.track();
        store::held(job)
    }

    /// Changes the settings and keeps them.
    pub(crate) fn set(self, change: impl FnOnce(&mut Settings)) {
        let before = self.settings.get_untracked();
        let mut settings = before.clone();
        change(&mut settings);
        if settings != before {
            store::save_settings(&settings);
            self.look();
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

    /// Reads a job once, where it stands. Gives whether it is there.
    pub(crate) fn read_job(self, id: &str, read: &mut dyn FnMut(&Job)) -> bool {
        if id == DEMO_ID {
            read(&demo(speech::voice(Units::Customary)));
            return true;
        }
        self.jobs.with_untracked(|jobs| {
            let job = jobs.iter().find(|job| job.id == id);
            job.map(read).is_some()
        })
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

    /// Moves a mark to another job.
    ///
    /// # Errors
    /// The [`Refusal`]; nothing has changed then.
    pub(crate) fn move_mark(self, from: &str, to: &str, mark: &str) -> Result<(), Refusal> {
        let (Some(mut one), Some(mut other)) = (self.job(from), self.job(to)) else {
            return Err(Refusal::NoSuchMark(mark.to_owned()));
        };
        hand_over(&mut one, &mut other, mark, &self.stamp())?;
        self.write(other);
        // First where it goes, then where it was: twice for a moment, never nowhere.
        let (from, mark) = (from.to_owned(), mark.to_owned());
        store::once_held(to, move || {
            let _ = self.edit(&from, Edit::Remove(mark));
        });
        Ok(())
    }

    /// Shows a job and writes it. Where it can't be written it is shown all the same, and the
    /// page says what is the matter.
    fn write(self, job: Job) {
        self.show(job.clone());
        store::save(job);
    }

    fn show(self, job: Job) {
        self.show_all();
        self.jobs.update(|jobs| put(jobs, job));
    }

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

    /// Carries out what restoring asks for, all of it or none, and writes each job that it changes.
    /// Gives back what it did, from which it is undone.
    ///
    /// # Errors
    /// The [`Refusal`]; nothing has changed then.
    pub(crate) fn carry_out(self, steps: Vec<Step>) -> Result<backup::Restored, Refusal> {
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
