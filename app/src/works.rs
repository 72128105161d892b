//! What the numbers of the job at hand say today, worked once for all pages that ask. A job of
//! hundreds is worked in slices, between keys and frames.

use crate::desk::Desk;
use crate::store;
use js_sys::Date;
use ledgerboard_core::job::{Job, Survey, Works};
use leptos::prelude::set_timeout;
use std::cell::{Cell, RefCell};
use std::time::Duration;

/// How long one slice may take, in milliseconds.
const SLICE: f64 = 8.0;

thread_local! {
    static WORKS: RefCell<Works> = RefCell::new(Works::default());
    /// Tells the slices that go on from those that are no longer asked for.
    static ASKED: Cell<u32> = const { Cell::new(0) };
}

/// All numbers of a job; what isn't known yet is worked now.
pub(crate) fn survey(job: &Job) -> Survey<'_> {
    WORKS.with_borrow_mut(|works| works.survey(job))
}

/// So few are worked at once.
const FEW: usize = 12;

/// Whether all numbers of a job are known, or so few are not that a survey is there at once.
pub(crate) fn are_known(job: &Job) -> bool {
    WORKS.with_borrow(|works| works.left(job)) <= FEW
}

/// The same for what reads a job again when it is not: all is begun then, and who asks is told when it
/// is known.
pub(crate) fn known_or_begun(desk: Desk, job: &Job) -> bool {
    let known = are_known(job);
    if !known {
        desk.worked.track();
        begin(desk, &job.id);
    }
    known
}

/// Something that takes longer than a frame, done a part at a time: `part` gives whether there is
/// more.
pub(crate) fn in_slices(part: impl Fn() -> bool + 'static) {
    part_of(Box::new(part));
}

fn part_of(part: Box<dyn Fn() -> bool>) {
    let next = move || {
        if part() {
            part_of(part);
        }
    };
    set_timeout(next, Duration::ZERO);
}

/// Says when a slice is over.
pub(crate) fn slice() -> impl FnMut() -> bool {
    let start = Date::now();
    move || Date::now() - start < SLICE
}

/// Works a job in slices; `desk.worked` tells when all is known. What was begun for another is
/// dropped.
pub(crate) fn begin(desk: Desk, id: &str) {
    let id = id.to_owned();
    let number = ASKED.get() + 1;
    ASKED.set(number);
    in_slices(move || {
        if ASKED.get() != number {
            return false;
        }
        // What stops the page is known by its name the next time.
        let name = store::job_name(&id);
        store::opening(&name);
        let mut done = true;
        desk.read_job(&id, &mut |job| {
            done = WORKS.with_borrow_mut(|works| works.work_while(job, &mut slice()));
        });
        store::opened(&name);
        if done {
            desk.worked.update(|times| *times += 1);
        }
        !done
    });
}
