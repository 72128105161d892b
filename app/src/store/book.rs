//! What is known of each job: what was last read or written, which stores hold it, and what still
//! has to be written. Every writing of a job passes here.
//!
//! The working copy in local storage is written at once; the mirror decides: it asks in one
//! transaction whether another tab was there first. Where one was, the two copies are made one
//! (`job::meet`) and written again.

use super::news::{self, News};
use super::{GONE, JOB, Trouble, Why, Written, aside, local, may_write, mirror, note, stay};
use crate::{clock, speech, words as w};
use ledgerboard_core::job::record::{self, Head, RecordProblem};
use ledgerboard_core::job::{Job, judge, meet};
use ledgerboard_core::say;
use leptos::prelude::set_timeout;
use std::cell::{Cell, RefCell};
use std::rc::Rc;
use std::time::Duration;

/// How much of local storage the jobs may take, in bytes: it holds some five million in all, and
/// what is being typed must always find room.
const MOST: usize = 3_500_000;
/// All that local storage holds for one site, in the units that it counts: half of its bytes.
const ALL_OF_LOCAL: usize = 5_242_880;

/// How safe a job is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Held {
    /// It is being written.
    Soon,
    /// One store has it.
    Once,
    /// Both have it.
    Twice,
    /// No store has its last change.
    Not(Trouble),
}

/// What waits for a job to be held.
type Then = Box<dyn FnOnce()>;

#[derive(Default)]
struct Entry {
    /// The job as every tab knows it: what is changed is told by this.
    base: Option<Job>,
    /// The last revision that was read or written here.
    revision: u64,
    /// The job as it was changed here and is not yet in the mirror.
    waiting: Option<Job>,
    /// The revisions that the stores hold; 0 for none.
    local: u64,
    mirror: u64,
    /// The bytes of `revision`, while the mirror lacks them.
    text: String,
    /// How large the working copy is, and when it was written, counted in writes.
    size: usize,
    turn: u64,
    in_flight: bool,
    /// Why it is never written.
    shut: Option<Why>,
    /// It was removed here.
    removed: bool,
    trouble: Option<Trouble>,
    then: Vec<Then>,
}

thread_local! {
    static BOOK: RefCell<Vec<(String, Rc<RefCell<Entry>>)>> = const { RefCell::new(Vec::new()) };
    static TURN: Cell<u64> = const { Cell::new(0) };
    /// Everything has been read: before that nothing is written.
    static READY: Cell<bool> = const { Cell::new(false) };
    static WRITER: RefCell<String> = const { RefCell::new(String::new()) };
}

fn with<T>(id: &str, act: impl FnOnce(&mut Entry) -> T) -> T {
    act(&mut entry(id).borrow_mut())
}

/// A job's entry, made where there is none. Apart, so that its code is there once.
#[inline(never)]
fn entry(id: &str) -> Rc<RefCell<Entry>> {
    BOOK.with_borrow_mut(|book| {
        if let Some((_, entry)) = book.iter().find(|(name, _)| name == id) {
            return Rc::clone(entry);
        }
        let entry = Rc::new(RefCell::new(Entry::default()));
        book.push((id.to_owned(), Rc::clone(&entry)));
        entry
    })
}

/// The name of a job's working copy.
pub(super) fn name(id: &str) -> String {
    [JOB, id].concat()
}

#[inline(never)]
fn ids() -> Vec<String> {
    BOOK.with_borrow(|book| book.iter().map(|(id, _)| id.clone()).collect())
}

/// Who writes, from here on.
pub(super) fn written_by(device: &str) {
    WRITER.set(device.to_owned());
}

/// How safe a job is.
pub(crate) fn held(id: &str) -> Held {
    with(id, |entry| {
        let at = |revision: u64| usize::from(revision > 0 && revision == entry.revision);
        let unwritten = entry.waiting.is_some() && entry.text.is_empty();
        match (at(entry.local) + at(entry.mirror), entry.trouble) {
            (_, Some(trouble)) if entry.shut.is_some() => Held::Not(trouble),
            (count, _) if unwritten || (entry.in_flight && count == 0) => Held::Soon,
            (2, _) => Held::Twice,
            (1, _) => Held::Once,
            (_, Some(trouble)) => Held::Not(trouble),
            _ => Held::Soon,
        }
    })
}

/// What keeps any job from being saved.
pub(super) fn trouble() -> Option<Trouble> {
    ids().iter().find_map(|id| match held(id) {
        Held::Not(trouble) => Some(trouble),
        _ => None,
    })
}

/// The jobs that are shut, and why.
pub(crate) fn shut() -> Vec<(String, Why)> {
    ids()
        .into_iter()
        .filter_map(|id| with(&id, |entry| entry.shut.clone()).map(|why| (id, why)))
        .collect()
}

fn shut_it(id: &str, why: Why) {
    with(id, |entry| {
        entry.shut = Some(why);
        entry.trouble = entry.waiting.is_some().then_some(Trouble::SetAside);
    });
    news::aside();
}

// --- Reading at the start ---

/// Reads a working copy, so that the page opens at once. What can't be read waits for the mirror.
pub(super) fn read_local(id: &str, text: &str) -> Option<Job> {
    let name = name(id);
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
    });
    Some(job)
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
        for id in ids() {
            tend(&id);
        }
        news::aside();
    };
    mirror::read_all(settle, other_record, Box::new(done));
}

/// Takes in what the mirror has besides jobs.
fn other_record(name: &str, text: String) {
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
fn settle(id: &str, slots: mirror::Slots) {
    let own = name(id);
    if note::stopped_at(&own) {
        return shut_it(id, Why::Stopped);
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
            aside::keep(&name, copies[*at].unwrap_or_default());
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

fn one_of_two(base: Option<&Job>, ours: &Job, theirs: &Job) -> Job {
    let titled = |title: &str| speech::say(&say!(w::OTHER_TAB_TITLE, title));
    let writer = WRITER.with_borrow(Clone::clone);
    meet(base, ours, theirs, &clock::stamp(&writer), &titled)
}

fn take_waiting(id: &str, job: Job) {
    with(id, |entry| {
        entry.waiting = Some(job.clone());
        entry.text.clear();
    });
    news::tell(News::Job(Box::new(job)));
}

/// Takes a job over that a store has later than it was known here; what was changed here since
/// `base` goes into it.
fn take_in(id: &str, base: Option<&Job>, theirs: Job) {
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

// --- Writing ---

/// Writes one job as soon as may be, whole or not at all.
pub(crate) fn save(job: Job) {
    let id = job.id.clone();
    with(&id, |entry| {
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

fn run_waiting(id: &str) {
    if matches!(held(id), Held::Once | Held::Twice) {
        for then in with(id, |entry| std::mem::take(&mut entry.then)) {
            then();
        }
    }
}

/// Does for a job what is to be done: a removal, a writing, or a copy that a store lacks.
fn tend(id: &str) {
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

/// Another tab may have written the working copy since it was read here.
fn look_again(id: &str) {
    let Some(text) = local::text(&name(id)) else { return };
    let known = with(id, |entry| entry.revision);
    if let Ok((head, _)) = record::open(&text)
        && head.revision > known
    {
        hear(id, &text, From::Local);
    }
}

/// Gives what waits its revision and its bytes.
fn write_down(id: &str) {
    let writer = WRITER.with_borrow(Clone::clone);
    with(id, |entry| {
        let Some(job) = &entry.waiting else { return };
        let head = Head::new(entry.revision + 1, &writer, clock::now().at);
        entry.text = record::write(job, &head);
        entry.revision = head.revision;
    });
}

fn write_local(id: &str) {
    let (revision, text, has) =
        with(id, |entry| (entry.revision, entry.text.clone(), entry.local == entry.revision));
    if has || text.is_empty() {
        return;
    }
    let written = make_room(id, text.len()).and_then(|()| {
        loop {
            match local::write(&name(id), &text) {
                Err(Trouble::Full) if drop_one(id) => {}
                written => break written,
            }
        }
    });
    with(id, |entry| match written {
        Ok(()) => {
            entry.turn = TURN.replace(TURN.get() + 1);
            (entry.local, entry.size, entry.trouble) = (revision, text.len(), None);
        }
        Err(trouble) => {
            entry.local = 0;
            entry.trouble = Some(trouble);
        }
    });
    if written.is_ok() {
        super::type_again();
        stay::ask();
    }
}

/// Working copies of other jobs go, the longest unused first, if the mirror has them.
fn make_room(id: &str, size: usize) -> Written {
    loop {
        let others = ids().into_iter().filter(|other| other != id);
        let others: usize = others.map(|other| with(&other, |entry| entry.size)).sum();
        if others + size <= MOST {
            return Ok(());
        }
        if !drop_one(id) {
            return Err(Trouble::Full);
        }
    }
}

fn drop_one(for_id: &str) -> bool {
    let mut oldest: Option<(u64, String)> = None;
    for id in ids().into_iter().filter(|id| id != for_id) {
        let turn = with(&id, |it| (it.local > 0 && it.mirror == it.revision).then_some(it.turn));
        if let Some(turn) =
            turn.filter(|turn| oldest.as_ref().is_none_or(|(least, _)| turn < least))
        {
            oldest = Some((turn, id));
        }
    }
    let Some((_, id)) = oldest else { return false };
    local::remove(&name(&id));
    with(&id, |entry| (entry.local, entry.size) = (0, 0));
    true
}

fn write_mirror(id: &str) {
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

/// Where another tab's writing was found.
#[derive(Clone, Copy, PartialEq, Eq)]
enum From {
    Local,
    Mirror,
}

/// Takes in what another tab has written.
fn hear(id: &str, text: &str, from: From) {
    let judged = judge(id, &[Some(text)]);
    if let Some(head) = judged.newer {
        return shut_it(id, Why::Record(RecordProblem::Newer(head.schema)));
    }
    let Some((_, head, job)) = judged.latest else { return };
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
    for other in ids() {
        tend(&other);
    }
    Ok(())
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

/// How much room local storage has left, in thousands of letters.
pub(crate) fn room_left() -> i64 {
    i64::try_from(ALL_OF_LOCAL.saturating_sub(local::used()) / 1024).unwrap_or(0)
}
