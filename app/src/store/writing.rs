//! Every writing of a job.
//!
//! The working copy in local storage is written at once; the mirror decides: it asks in one
//! transaction whether another tab was there first. Where one was, the two copies are made one
//! and written again.

use super::book::{Held, READY, WRITER, held, ids, name, with};
use super::meeting::{From, hear, look_again};
use super::working::write_local;
use super::{Trouble, Why, Written, aside, local, may_write, mirror, news, stay};
use crate::clock;
use ledgerboard_core::job::Job;
use ledgerboard_core::job::record::{self, Head, RecordProblem};
use leptos::prelude::set_timeout;
use std::cell::Cell;
use std::time::Duration;

/// Writes one job as soon as may be, whole or not at all.
pub(crate) fn save(job: Job) {
    let id = job.id.clone();
    // A backup brings back a job of which no copy could be read. Once those bytes stand aside
    // nothing is lost by writing in their place.
    let own = name(&id);
    let copied = !aside::is_locked(&own)
        && !mirror::SLOTS.iter().any(|slot| aside::is_locked(&[&own, *slot].concat()));
    with(&id, |entry| {
        let unreadable = matches!(&entry.shut, Some(Why::Record(why)) if !matches!(why, RecordProblem::Newer(_)));
        if unreadable && copied {
            entry.shut = None;
        }
        entry.describe(&job);
        entry.waiting = Some(job);
        entry.text.clear();
        entry.removed = false;
        if entry.shut.is_some() {
            entry.trouble = Some(Trouble::SetAside);
        }
    });
    tend(&id);
    news::changed();
}

/// Calls `then` once a store has the job's last change.
pub(crate) fn once_held(id: &str, then: impl FnOnce() + 'static) {
    with(id, |entry| entry.then.push(Box::new(then)));
    run_waiting(id);
}

pub(super) fn run_waiting(id: &str) {
    if matches!(held(id), Held::Once | Held::Twice | Held::Away) {
        for then in with(id, |entry| std::mem::take(&mut entry.then)) {
            then();
        }
    }
}

/// Does for a job what is to be done: a removal, a writing, or a copy that a store lacks.
pub(super) fn tend(id: &str) {
    if !READY.get() || may_write().is_err() || with(id, |entry| entry.shut.is_some()) {
        return;
    }
    if with(id, |entry| entry.removed) {
        let revision = with(id, |entry| entry.revision);
        let (id, gone_id) = (id.to_owned(), id.to_owned());
        // The mirror first: another tab that hears of the other finds it gone there.
        let gone = move |_| {
            if with(&id, |entry| entry.removed) {
                local::remove(&name(&id));
                with(&id, |entry| (entry.local, entry.mirror, entry.size) = (0, 0, 0));
            }
        };
        return mirror::remove(&gone_id, revision, Box::new(gone));
    }
    if with(id, |entry| entry.waiting.is_some() && entry.text.is_empty()) {
        look_again(id);
        write_down(id);
    }
    write_local(id);
    write_mirror(id);
    run_waiting(id);
}

/// Gives what waits its revision and its bytes.
pub(super) fn write_down(id: &str) {
    let writer = WRITER.with_borrow(Clone::clone);
    with(id, |entry| {
        let Some(job) = &entry.waiting else { return };
        let head = Head::new(entry.revision + 1, &writer, clock::now().at);
        entry.text = record::write(job, &head);
        entry.revision = head.revision;
    });
}

pub(super) fn write_mirror(id: &str) {
    let (revision, text) = with(id, |entry| {
        let ready = !entry.in_flight && entry.mirror != entry.revision && !entry.text.is_empty();
        entry.in_flight |= ready;
        (entry.revision, if ready { entry.text.clone() } else { String::new() })
    });
    if text.is_empty() {
        return;
    }
    let sent = with(id, |entry| entry.waiting.clone());
    let (id, to) = (id.to_owned(), id.to_owned());
    let answered = move |answer: mirror::Answer| {
        with(&id, |entry| entry.in_flight = false);
        if with(&id, |entry| entry.removed) {
            return;
        }
        match answer {
            mirror::Answer::Kept => {
                super::mirror_is(Ok(()));
                stay::ask();
                with(&id, |entry| {
                    entry.mirror = revision;
                    entry.base = sent.or(entry.base.take());
                    entry.trouble = None;
                    if entry.revision == revision && !entry.text.is_empty() {
                        (entry.waiting, entry.text) = (None, String::new());
                    }
                });
                // There is room for this, and there may be for others.
                for other in ids() {
                    if other != id && matches!(held(&other), Held::Not(_)) {
                        tend(&other);
                    }
                }
            }
            mirror::Answer::Other(theirs) => hear(&id, &theirs, From::Mirror),
            mirror::Answer::Failed(trouble) => {
                super::mirror_is(Err(trouble));
                with(&id, |entry| {
                    if entry.local == entry.revision {
                        // One store has it, and it is the only one that can decide.
                        entry.base = entry.waiting.take().or(sent).or(entry.base.take());
                        entry.text.clear();
                    } else {
                        // The next change, or the next start, tries again.
                        entry.trouble = Some(entry.trouble.unwrap_or(trouble));
                    }
                });
                run_waiting(&id);
                return news::changed();
            }
        }
        tend(&id);
        news::changed();
    };
    mirror::write(&to, revision, &text, Box::new(answered));
}

thread_local! {
    /// Another try is on its way.
    static TRYING: Cell<bool> = const { Cell::new(false) };
}

/// How long what was refused waits.
const PAUSE: Duration = Duration::from_secs(10);

/// Tries again what no store has taken: there may be room by now.
pub(crate) fn try_again() {
    super::type_again();
    for id in ids() {
        if matches!(held(&id), Held::Not(_)) {
            tend(&id);
        }
    }
    news::changed();
}

/// Tries again in a while, once.
pub(crate) fn try_soon() {
    if !TRYING.replace(true) {
        let again = || {
            TRYING.set(false);
            try_again();
        };
        set_timeout(again, PAUSE);
    }
}

/// Removes one job that the person has removed. Never one that could not be read.
///
/// # Errors
/// Why it stays.
pub(crate) fn remove(id: &str) -> Written {
    may_write()?;
    if with(id, |entry| entry.shut.is_some()) {
        return Err(Trouble::SetAside);
    }
    with(id, |entry| {
        entry.removed = true;
        (entry.waiting, entry.base, entry.trouble) = (None, None, None);
        entry.text.clear();
    });
    tend(id);
    // There is room again for what found none.
    for other in ids().into_iter().filter(|other| other != id) {
        tend(&other);
    }
    Ok(())
}
