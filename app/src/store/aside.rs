//! What can't be read: its bytes are copied under a name of their own before anything may take
//! their place, they are listed, and they are never dropped by the page itself.

use super::{ALL, ASIDE, JOB, Written, local, mirror, news};
use crate::clock;
use ledgerboard_core::job::record::{self, RecordProblem};
use std::cell::RefCell;

/// Bytes that were set aside.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Aside {
    /// The record's whole name.
    pub(crate) name: String,
    /// The bytes.
    pub(crate) text: String,
}

impl Aside {
    /// The name that it had: `job.…`, `draft.…`, `settings`.
    fn was(&self) -> &str {
        let was = self.behind_time();
        let older = was.strip_prefix(LATER).and_then(|rest| rest.split_once('.'));
        older.map_or(was, |(_, was)| was)
    }

    fn behind_time(&self) -> &str {
        let rest = self.name.strip_prefix(ASIDE).unwrap_or(&self.name);
        rest.split_once('.').map_or(rest, |(_, was)| was)
    }

    /// Where an older copy took its place: when that one was saved, in seconds since 1970.
    pub(crate) fn older_one_saved_at(&self) -> Option<i64> {
        let (at, _) = self.behind_time().strip_prefix(LATER)?.split_once('.')?;
        at.parse().ok()
    }

    /// The job that it is a copy of, if it is one.
    pub(crate) fn job(&self) -> Option<&str> {
        let id = self.was().strip_prefix("job.")?;
        Some(mirror::SLOTS.iter().find_map(|slot| id.strip_suffix(slot)).unwrap_or(id))
    }

    /// What is wrong with it. None where it is no job's, or reads well by now.
    pub(crate) fn problem(&self) -> Option<RecordProblem> {
        self.job()?;
        record::read(&self.text).err()
    }
}

/// Before the name of what says to be later than the copy that took its place: then follows when
/// that one was saved.
const LATER: &str = "later.";

/// A name for what is set aside now.
pub(super) fn aside_name(name: &str) -> String {
    let was = name.strip_prefix(ALL).unwrap_or(name);
    [ASIDE, &clock::now().at.to_string(), ".", was].concat()
}

thread_local! {
    static HERE: RefCell<Vec<Aside>> = const { RefCell::new(Vec::new()) };
    /// Names whose bytes could not be copied, so that nothing may take their place.
    static LOCKED: RefCell<Vec<String>> = const { RefCell::new(Vec::new()) };
}

/// All that is set aside.
pub(crate) fn all() -> Vec<Aside> {
    HERE.with_borrow(Clone::clone)
}

/// Takes one into the list that a store gave.
pub(super) fn found(name: &str, text: String) {
    HERE.with_borrow_mut(|here| {
        if !here.iter().any(|aside| aside.name == name) {
            here.push(Aside { name: name.to_owned(), text });
        }
    });
}

/// Whether these bytes of this name are set aside already.
pub(super) fn has(name: &str, text: &str) -> bool {
    let was = name.strip_prefix(ALL).unwrap_or(name);
    HERE.with_borrow(|here| here.iter().any(|aside| aside.was() == was && aside.text == text))
}

/// Whether nothing may be written under this name.
pub(super) fn is_locked(name: &str) -> bool {
    LOCKED.with_borrow(|locked| locked.iter().any(|it| it == name))
}

/// Copies bytes aside, once. Until that is done nothing is written over them.
pub(super) fn keep(name: &str, text: &str) {
    if !has(name, text) {
        keep_as(name, aside_name(name), text);
    }
}

/// The same for a copy that says to be later than the one that took its place.
pub(super) fn keep_later(name: &str, text: &str, saved_at: i64) {
    if !has(name, text) {
        let was = name.strip_prefix(ALL).unwrap_or(name);
        let was = [LATER, &saved_at.to_string(), ".", was].concat();
        keep_as(name, aside_name(&was), text);
    }
}

fn keep_as(name: &str, aside: String, text: &str) {
    if local::write(&aside, text).is_ok() {
        found(&aside, text.to_owned());
        return;
    }
    LOCKED.with_borrow_mut(|locked| locked.push(name.to_owned()));
    let (name, text) = (name.to_owned(), text.to_owned());
    let (at, bytes) = (aside.clone(), text.clone());
    let done = move |written: Written| {
        if written.is_ok() {
            found(&aside, text);
            LOCKED.with_borrow_mut(|locked| locked.retain(|it| *it != name));
            news::aside();
        }
    };
    mirror::put(&at, &bytes, Box::new(done));
}

/// The name of the job's own record, for those that have no copy aside.
pub(crate) fn of_job(id: &str) -> Option<Aside> {
    let name = [JOB, id].concat();
    local::text(&name).map(|text| Aside { name, text })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_tells_whose_copy_it_is_and_what_took_its_place() {
        for (name, was, job, older) in [
            ("1791298800.settings", "settings", None, None),
            ("1791298800.draft.room", "draft.room", None, None),
            ("1791298800.job.t4k", "job.t4k", Some("t4k"), None),
            ("1791298800.job.t4k.b", "job.t4k.b", Some("t4k"), None),
            ("1791298800.later.1791290000.job.t4k", "job.t4k", Some("t4k"), Some(1_791_290_000)),
            ("1791298800.later.-9.job.t4k.a", "job.t4k.a", Some("t4k"), Some(-9)),
        ] {
            let aside = Aside { name: [ASIDE, name].concat(), text: String::new() };
            assert_eq!((aside.was(), aside.job()), (was, job), "{name}");
            assert_eq!(aside.older_one_saved_at(), older, "{name}");
        }
    }
}
