//! What a kept number says today, and how it stands with those that it takes from.

use crate::question::{Linked, linked};
use ledgerboard_core::catalog::Worked;
use ledgerboard_core::job::{Job, Mark, Stale, Survey};
use std::sync::Arc;

/// One number as it is today.
pub(super) struct Today {
    /// What it says.
    pub(super) says: Arc<Result<Worked, Stale>>,
    /// One for each of its links.
    pub(super) links: Vec<Linked>,
    /// The titles of those that take from it.
    pub(super) users: String,
}

impl Today {
    /// All numbers of a job, in the order of its marks.
    pub(super) fn of_all(job: &Job, survey: &Survey<'_>) -> Vec<Self> {
        let one = |mark: &Mark| {
            let users: Vec<&str> = survey.users(&mark.id).map(|user| user.title.trim()).collect();
            Some(Self {
                says: survey.outcome(&mark.id)?,
                links: mark.ties.iter().map(|tie| linked(job, survey, tie)).collect(),
                users: users.join(", "),
            })
        };
        job.marks.iter().filter_map(one).collect()
    }
}
