//! What the whole page shares: where it is, its settings, the jobs, and what is wrong with the
//! store.

mod changing;
mod jobs;
mod stores;

pub(crate) use jobs::GoneJob;

use crate::elements::on_change;
use crate::later::later;
use crate::route::Route;
use crate::signal::{Memo, RwSignal};
use crate::store::{self, Listed, Loaded, MarkPlace, Settings, Trouble, Unsaved};
use crate::{daylight, speech};
use ledgerboard_core::catalog::Entry;
use ledgerboard_core::job::backup;
use ledgerboard_core::job::{DEMO_ID, Job, Moment, demo};
use ledgerboard_core::measure::Units;
use ledgerboard_core::wire::Node;
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
    /// Edits of saved numbers that are not saved, as last kept. Read by nobody, it isn't worked.
    unsaved: Memo<Vec<Unsaved>>,
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
        let stores = RwSignal::new(0);
        let unsaved = Memo::new(move |_| {
            stores.track();
            store::unsaved()
        });
        let desk = Self(Box::leak(Box::new(Shared {
            route: RwSignal::new(route),
            settings: RwSignal::new(settings),
            jobs,
            list,
            all_read,
            came: RwSignal::new(Vec::new()),
            aside: RwSignal::new(0),
            stores,
            unsaved,
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

    /// Whether all jobs have been read: before that, a copy of all would lack some.
    pub(crate) fn has_all(self) -> bool {
        self.all_read.get()
    }

    /// Whether a job has been read.
    pub(crate) fn has(self, id: &str) -> bool {
        id == DEMO_ID || self.jobs.with(|jobs| jobs.iter().any(|job| job.id == id))
    }

    /// What a saved number was worked from; none for one that is not here, or invented.
    pub(crate) fn saved_input(self, place: &MarkPlace) -> Option<Node> {
        self.jobs.with(|jobs| {
            let job = jobs.iter().find(|job| job.id == place.job)?;
            job.mark(&place.mark).map(|mark| mark.input.clone())
        })
    }

    /// How many edits of a job's numbers, or of one of them, wait and are not saved.
    pub(crate) fn edits_of(self, job: &str, mark: Option<&str>) -> i64 {
        let saved = |place: &MarkPlace| self.saved_input(place);
        self.unsaved.with(|all| store::edits_of(all, job, mark, saved))
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
}
