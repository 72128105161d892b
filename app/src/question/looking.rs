//! Work that takes longer than a keystroke, gone on with between keys: in slices of a few
//! milliseconds, on the page's own thread, until it is done, something else is asked, or a person
//! stops it. The first slice comes before the first answer: most rooms are done with it, and
//! nothing moves after that.

use crate::signal::RwSignal;
use crate::works::slice;
use ledgerboard_core::calculators::hold::Opened;
use ledgerboard_core::catalog::{Entry, Looking, Worked};
use ledgerboard_core::measure::Units;
use ledgerboard_core::sheet::Faults;
use ledgerboard_core::wire::Node;
use leptos::prelude::set_timeout;
use std::cell::RefCell;
use std::time::Duration;

/// Slices after which what was found so far is shown.
const SHOWN: u32 = 10;

struct Asked {
    id: &'static str,
    input: Node,
    units: Units,
    /// Tells one from the next.
    number: u64,
    work: Box<dyn Looking>,
    slices: u32,
}

thread_local! {
    /// Of the one question that is open.
    static LOOKING: RefCell<Option<Asked>> = const { RefCell::new(None) };
}

/// What is found so far; none where there is nothing to look for step by step. `found` is told
/// when there is more.
pub(super) fn worked(
    entry: &'static Entry,
    input: &Node,
    units: Units,
    hold: Option<&Opened>,
    found: RwSignal<u64>,
) -> Option<Result<Worked, Faults>> {
    found.track();
    LOOKING.with_borrow_mut(|looking| {
        let same = |it: &Asked| it.id == entry.id && it.units == units && it.input == *input;
        if !looking.as_ref().is_some_and(same) {
            let number = looking.as_ref().map_or(0, |it| it.number + 1);
            // What is no longer asked is dropped.
            *looking = None;
            let mut work = entry.begin(input, units)?;
            let done = one_slice(work.as_mut());
            let input = input.clone();
            *looking = Some(Asked { id: entry.id, input, units, number, work, slices: 0 });
            if !done {
                set_timeout(move || go_on(number, found), Duration::ZERO);
            }
        }
        looking.as_ref().map(|it| it.work.worked(hold))
    })
}

/// Stops it, or goes on with it. What is asked anew is never stopped from the start.
pub(super) fn stop(stopped: bool, found: RwSignal<u64>) {
    let number = LOOKING.with_borrow_mut(|looking| {
        let asked = looking.as_mut()?;
        asked.work.stop(stopped);
        // The slice that waits is another's by now.
        asked.number += 1;
        Some(asked.number)
    });
    let Some(number) = number else { return };
    if !stopped {
        set_timeout(move || go_on(number, found), Duration::ZERO);
    }
    found.set(number);
}

/// Whether it is done with this slice. The clock says when to look up, never when to end: the answer
/// is the same on every phone.
fn one_slice(work: &mut dyn Looking) -> bool {
    let mut has_time = slice();
    loop {
        if work.step() {
            return true;
        }
        if !has_time() {
            return false;
        }
    }
}

fn go_on(number: u64, found: RwSignal<u64>) {
    if found.is_disposed() {
        return;
    }
    let more = LOOKING.with_borrow_mut(|looking| {
        let asked = looking.as_mut().filter(|it| it.number == number)?;
        let done = one_slice(asked.work.as_mut());
        asked.slices += 1;
        Some((done, done || asked.slices % SHOWN == 0))
    });
    let Some((done, show)) = more else { return };
    if !done {
        set_timeout(move || go_on(number, found), Duration::ZERO);
    }
    if show {
        found.set(number);
    }
}
