//! What is known of each job: what was last read or written, which stores hold it, and what still
//! has to be written.

use super::{JOB, Trouble, Why, local, news};
use ledgerboard_core::job::Job;
use std::cell::{Cell, RefCell};
use std::rc::Rc;

/// How safe a job is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Held {
    /// It is being written.
    Soon,
    /// One store has it.
    Once,
    /// Both have it.
    Twice,
    /// The larger store has it, in its two slots; its working copy has made room.
    Away,
    /// No store has its last change.
    Not(Trouble),
}

/// What waits for a job to be held.
pub(super) type Then = Box<dyn FnOnce()>;

#[derive(Default)]
pub(super) struct Entry {
    /// The job as every tab knows it: what is changed is told by this.
    pub(super) base: Option<Job>,
    /// The last revision that was read or written here.
    pub(super) revision: u64,
    /// The job as it was changed here and is not yet in the mirror.
    pub(super) waiting: Option<Job>,
    /// The revisions that the stores hold; 0 for none.
    pub(super) local: u64,
    pub(super) mirror: u64,
    /// The bytes of `revision`, while the mirror lacks them.
    pub(super) text: String,
    /// How large the working copy is, and when it was written, counted in writes.
    pub(super) size: usize,
    pub(super) turn: u64,
    /// When the job was worked on last, and whether it is done with.
    pub(super) last: i64,
    pub(super) is_put_away: bool,
    pub(super) in_flight: bool,
    /// Why it is never written.
    pub(super) shut: Option<Why>,
    /// It was removed here.
    pub(super) removed: bool,
    pub(super) trouble: Option<Trouble>,
    pub(super) then: Vec<Then>,
}

impl Entry {
    /// Notes what decides whose working copy makes room first.
    pub(super) fn describe(&mut self, job: &Job) {
        (self.last, self.is_put_away) = (job.last_worked(), job.is_put_away());
    }

    /// Both slots of the mirror are enough for a job that is not at hand.
    pub(super) fn is_in_mirror(&self) -> bool {
        self.revision > 0 && self.mirror == self.revision
    }
}

thread_local! {
    static BOOK: RefCell<Vec<(String, Rc<RefCell<Entry>>)>> = const { RefCell::new(Vec::new()) };
    pub(super) static TURN: Cell<u64> = const { Cell::new(0) };
    /// Everything has been read: before that nothing is written.
    pub(super) static READY: Cell<bool> = const { Cell::new(false) };
    pub(super) static WRITER: RefCell<String> = const { RefCell::new(String::new()) };
}

pub(super) fn with<T>(id: &str, act: impl FnOnce(&mut Entry) -> T) -> T {
    act(&mut entry(id).borrow_mut())
}

/// A job's entry, made where there is none. Apart, so that its code is there once.
#[inline(never)]
pub(super) fn entry(id: &str) -> Rc<RefCell<Entry>> {
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
pub(super) fn ids() -> Vec<String> {
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
            (_, None) if entry.is_in_mirror() && local::probe().is_ok() => Held::Away,
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

pub(super) fn shut_it(id: &str, why: Why) {
    with(id, |entry| {
        entry.shut = Some(why);
        entry.trouble = entry.waiting.is_some().then_some(Trouble::SetAside);
    });
    news::aside();
}
