//! Two tabs that wrote one job: what the other wrote is taken in, and what was changed here since
//! goes into it.

use super::book::{READY, WRITER, name, shut_it, with};
use super::news::{self, News};
use super::writing::tend;
use super::{JOB, Why, local, mirror};
use crate::{clock, speech, words as w};
use ledgerboard_core::job::record::{self, RecordProblem};
use ledgerboard_core::job::{Job, judge, meet};
use ledgerboard_core::say;

/// Where another tab's writing was found.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum From {
    Local,
    Mirror,
}

/// Takes in what another tab has written.
pub(super) fn hear(id: &str, text: &str, from: From) {
    let judged = judge(id, &[Some(text)]);
    if let Some(head) = judged.newer {
        return shut_it(id, Why::Record(RecordProblem::Newer(head.schema)));
    }
    let Some((_, head, job)) = judged.latest else {
        // Whole, and no job: nothing is written over it.
        if let Some((_, problem)) = judged.bad.into_iter().next() {
            shut_it(id, Why::Record(problem));
        }
        return;
    };
    let base = with(id, |entry| {
        entry.text.clear();
        match from {
            From::Local => (entry.local, entry.mirror) = (head.revision, 0),
            From::Mirror => (entry.local, entry.mirror) = (0, head.revision),
        }
        entry.base.clone()
    });
    take_in(id, base.as_ref(), job.clone());
    let behind = with(id, |entry| {
        let behind = entry.waiting.is_none() && entry.revision > head.revision;
        entry.revision = entry.revision.max(head.revision);
        if entry.waiting.is_none() && !behind {
            entry.text = text.to_owned();
        }
        behind
    });
    // A later writing of ours stands in one store, and holds nothing that this doesn't.
    if behind {
        take_waiting(id, job);
    }
}

/// Local storage has told that another tab wrote this job's working copy, or took it away.
pub(crate) fn other_tab(key: &str) {
    let Some(id) = key.strip_prefix(JOB) else { return };
    if !READY.get() || with(id, |entry| entry.shut.is_some()) {
        return;
    }
    let Some(text) = local::text(key) else {
        with(id, |entry| (entry.local, entry.size) = (0, 0));
        let (id, asked) = (id.to_owned(), id.to_owned());
        // Taken away to make room, or with the job.
        let there = move |slots: Option<mirror::Slots>| {
            if slots.is_none()
                && with(&id, |entry| entry.waiting.is_none())
                && super::mirror_works()
            {
                with(&id, |entry| (entry.removed, entry.base) = (true, None));
                news::tell(News::Gone(id));
            }
        };
        return mirror::read(&asked, Box::new(there));
    };
    let Ok((head, _)) = record::open(&text) else { return };
    if head.revision <= with(id, |entry| entry.revision) {
        return;
    }
    hear(id, &text, From::Local);
    // Does the second store too: the other tab may not have come to it.
    tend(id);
    news::changed();
}

/// Another tab may have written the working copy since it was read here.
pub(super) fn look_again(id: &str) {
    let Some(text) = local::text(&name(id)) else { return };
    let known = with(id, |entry| entry.revision);
    if let Ok((head, _)) = record::open(&text)
        && head.revision > known
    {
        hear(id, &text, From::Local);
    }
}

/// Takes a job over that a store has later than it was known here; what was changed here since
/// `base` goes into it.
pub(super) fn take_in(id: &str, base: Option<&Job>, theirs: Job) {
    let ours = with(id, |entry| entry.waiting.take());
    let same = ours.is_none() && base == Some(&theirs);
    with(id, |entry| {
        entry.base = Some(theirs.clone());
        entry.removed = false;
    });
    let one = ours.map(|ours| one_of_two(base, &ours, &theirs)).filter(|one| *one != theirs);
    match one {
        Some(one) => take_waiting(id, one),
        None if same => {}
        None => news::tell(News::Job(Box::new(theirs))),
    }
}

pub(super) fn take_waiting(id: &str, job: Job) {
    with(id, |entry| {
        entry.waiting = Some(job.clone());
        entry.text.clear();
    });
    news::tell(News::Job(Box::new(job)));
}

pub(super) fn one_of_two(base: Option<&Job>, ours: &Job, theirs: &Job) -> Job {
    let titled = |title: &str| speech::say(&say!(w::OTHER_TAB_TITLE, title));
    let writer = WRITER.with_borrow(Clone::clone);
    meet(base, ours, theirs, &clock::stamp(&writer), &titled)
}
