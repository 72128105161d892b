//! What the stores have to tell, and how safe things are with them.

use super::Desk;
use crate::store::{self, Held, News, Trouble};
use ledgerboard_core::job::Job;
use leptos::prelude::*;
use std::time::Duration;

/// How long what was read waits to be shown with what comes next.
const GATHERED: Duration = Duration::from_millis(250);

fn put(jobs: &mut Vec<Job>, job: Job) {
    match jobs.iter_mut().find(|it| it.id == job.id) {
        Some(place) => *place = job,
        None => jobs.push(job),
    }
}

impl Desk {
    /// Takes in what the stores have to tell.
    pub(super) fn hear(self, news: News) {
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

    pub(super) fn show_all(self) {
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

    pub(super) fn show(self, job: Job) {
        self.show_all();
        self.jobs.update(|jobs| put(jobs, job));
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

    /// Follows the answers of the stores.
    pub(crate) fn track_stores(self) {
        self.stores.track();
    }

    /// How safe a job is, and again whenever a store has answered.
    pub(crate) fn held(self, job: &str) -> Held {
        self.stores.track();
        store::held(job)
    }
}
