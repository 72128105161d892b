//! What the stores hold of each job when the page starts, made one.

use super::book::{READY, ids, name, shut_it, with};
use super::meeting::{one_of_two, take_in, take_waiting};
use super::news::{self, News};
use super::writing::tend;
use super::{GONE, JOB, Why, Written, aside, local, mirror, note, working};
use ledgerboard_core::job::record::{self, RecordProblem};
use ledgerboard_core::job::{Job, judge, may_be_later};
use leptos::prelude::set_timeout;
use std::time::Duration;

/// Reads a working copy, so that the page opens at once. What can't be read waits for the mirror.
pub(super) fn read_local(id: &str) -> Option<Job> {
    let name = name(id);
    let text = &*local::text(&name)?;
    if note::stopped_at(&name) {
        return None;
    }
    note::opening(&name);
    let judged = judge(id, &[Some(text)]);
    note::opened(&name);
    let (_, head, job) = judged.latest?;
    with(id, |entry| {
        (entry.revision, entry.base) = (head.revision, Some(job.clone()));
        (entry.local, entry.size) = (head.revision, text.len());
        entry.describe(&job);
    });
    Some(job)
}

/// Reads one job before its turn, wherever it is.
pub(super) fn want(id: &str) {
    let known = with(id, |entry| entry.base.is_some() || entry.removed || entry.shut.is_some());
    if known {
        return;
    }
    if let Some(job) = read_local(id) {
        return news::tell(News::Job(Box::new(job)));
    }
    let own = id.to_owned();
    let there = move |slots: Option<mirror::Slots>| {
        // All may have been read by now.
        if !READY.get() && with(&own, |entry| entry.base.is_none()) {
            settle(&own, slots.unwrap_or_default());
        }
    };
    mirror::read(id, Box::new(there));
}

/// Reads the mirror, makes of all copies one, and only then lets anything be written.
pub(super) fn read_mirror() {
    let done = |read: Written| {
        // Those that only local storage has, or all of them where the mirror gives nothing.
        for name in local::names(JOB) {
            let id = name.strip_prefix(JOB).unwrap_or_default();
            let unread = with(id, |it| {
                !it.removed && it.shut.is_none() && it.mirror == 0 && it.text.is_empty()
            });
            if unread {
                settle(id, [None, None]);
            }
        }
        super::mirror_is(read);
        READY.set(true);
        working::fill();
        for id in ids() {
            tend(&id);
        }
        news::aside();
    };
    mirror::read_all(settle, other_record, Box::new(done));
}

/// Takes in what the mirror has besides jobs.
pub(super) fn other_record(name: &str, text: String) {
    match name.strip_prefix(GONE) {
        Some(id) => {
            let last = text.parse().unwrap_or(0);
            let is_gone = with(id, |entry| {
                let is_gone = entry.local <= last && entry.waiting.is_none();
                if is_gone {
                    (entry.removed, entry.revision, entry.base) = (true, last, None);
                }
                is_gone
            });
            if is_gone {
                news::tell(News::Gone(id.to_owned()));
            }
        }
        None if name.starts_with(super::ASIDE) => aside::found(name, text),
        None => {}
    }
}

/// Makes one of all copies of a job.
pub(super) fn settle(id: &str, slots: mirror::Slots) {
    let own = name(id);
    if note::stopped_at(&own) {
        return shut_it(id, Why::Stopped);
    }
    // Taken away before all was read.
    if with(id, |entry| entry.removed) {
        return;
    }
    note::opening(&own);
    let local = local::text(&own);
    let [a, b] = &slots;
    let copies = [local.as_deref(), a.as_deref(), b.as_deref()];
    let judged = judge(id, &copies);
    // Not before it is shown, where it is: what follows a signal runs when this is over.
    let shown = own.clone();
    set_timeout(move || note::opened(&shown), Duration::ZERO);
    for (at, problem) in &judged.bad {
        let name = if *at == 0 { own.clone() } else { [&own, mirror::SLOTS[at - 1]].concat() };
        // What a newer program wrote is no rubbish; all else that can't be read is copied.
        if !matches!(problem, RecordProblem::Newer(_)) {
            let text = copies[*at].unwrap_or_default();
            match &judged.latest {
                Some((_, holds, _)) if may_be_later(text, holds) => {
                    aside::keep_later(&name, text, holds.saved_at);
                }
                _ => aside::keep(&name, text),
            }
        }
    }
    if let Some(head) = judged.newer {
        news::tell(News::Gone(id.to_owned()));
        return shut_it(id, Why::Record(RecordProblem::Newer(head.schema)));
    }
    let Some((at, head, job)) = judged.latest else {
        if let Some((_, problem)) = judged.bad.into_iter().next() {
            shut_it(id, Why::Record(problem));
        }
        return;
    };
    let text = copies[at].unwrap_or_default();
    // Two tabs may have written one revision each, and neither heard of the other.
    let twin = copies.iter().flatten().find(|copy| {
        **copy != text && record::open(copy).is_ok_and(|(other, _)| other.revision == head.revision)
    });
    let twin = twin.and_then(|twin| record::read(twin).ok()).map(|(_, twin)| twin);
    let known = with(id, |entry| {
        entry.describe(&job);
        entry.local = if copies[0] == Some(text) { head.revision } else { 0 };
        entry.mirror = if copies[1..].contains(&Some(text)) { head.revision } else { 0 };
        entry.size = local.as_deref().map_or(0, str::len);
        entry.revision = head.revision;
        entry.text = text.to_owned();
        entry.base.clone()
    });
    if let Some(twin) = twin {
        with(id, |entry| entry.base = Some(twin.clone()));
        let ours = with(id, |entry| entry.waiting.take()).unwrap_or(job);
        return take_waiting(id, one_of_two(None, &ours, &twin));
    }
    take_in(id, known.as_ref(), job);
    with(id, |entry| {
        // All is as it should be, and nothing is to be written.
        if entry.local == entry.revision && entry.mirror == entry.revision {
            entry.text.clear();
        }
    });
}

/// Opens a job all the same that stopped the page before.
pub(super) fn dare(id: &str) {
    let name = id.to_owned();
    with(id, |entry| entry.shut = None);
    let id = id.to_owned();
    let there = move |slots: Option<mirror::Slots>| {
        settle(&id, slots.unwrap_or_default());
        tend(&id);
        news::aside();
    };
    mirror::read(&name, Box::new(there));
}
