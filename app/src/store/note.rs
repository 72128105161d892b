//! A note of what is being opened, made before it is worked and taken away when it stands on the
//! page. One that is found at the start tells what stopped the page the last time: it stays shut
//! until somebody opens it all the same, so that no record stops the page for ever.
//!
//! Each tab has a note of its own: one that another tab is just opening has stopped nothing.

use super::{local, settings};
use crate::clock;
use leptos::prelude::window;
use std::cell::RefCell;

/// Before a tab's own name. What is kept is when, then what.
const NOTE: &str = "ledgerboard.opening";
/// A tab's own name, in the store that goes with the tab.
const TAB: &str = "ledgerboard.tab";
/// In seconds. No page opens anything for that long.
const YOUNG: u64 = 10;
/// What stays shut, a name a line.
const SHUT: &str = "ledgerboard.shut";

thread_local! {
    static STOPPED_AT: RefCell<Vec<String>> = const { RefCell::new(Vec::new()) };
    /// The name of this tab's note.
    static OWN: RefCell<String> = const { RefCell::new(String::new()) };
}

/// The same for as long as there is the tab, reloads too; where that can't be kept, anew each time.
fn own_note() -> String {
    let storage = window().session_storage().ok().flatten();
    let known = storage.as_ref().and_then(|it| it.get_item(TAB).ok().flatten());
    let tab = known.unwrap_or_else(|| {
        let tab = settings::by_chance();
        if let Some(storage) = storage {
            let _ = storage.set_item(TAB, &tab);
        }
        tab
    });
    [NOTE, ".", &tab].concat()
}

/// What a note tells to have stopped the page. A young one of another tab tells nothing yet; a
/// clock that was set makes none young for ever. One without a time is of an older version.
fn stopped_by(note: &str, is_own: bool, now: i64) -> Option<&str> {
    let (at, what) = note.split_once(' ').unwrap_or(("0", note));
    let age = now.abs_diff(at.parse().unwrap_or(0));
    (is_own || age > YOUNG).then_some(what)
}

fn keep(shut: Vec<String>) {
    if shut.is_empty() {
        local::remove(SHUT);
    } else {
        let _ = local::write(SHUT, &shut.join("\n"));
    }
    STOPPED_AT.set(shut);
}

/// Reads the note of the last time: what it names stays shut.
pub(super) fn read() {
    let shut = local::text(SHUT).unwrap_or_default();
    let mut shut: Vec<String> = shut.lines().map(str::to_owned).collect();
    let (own, now) = (own_note(), clock::now().at);
    for (name, note) in local::all(NOTE) {
        let Some(what) = stopped_by(&note, name == own, now) else { continue };
        if !shut.iter().any(|it| it == what) {
            shut.push(what.to_owned());
            keep(shut.clone());
        }
        local::remove(&name);
    }
    STOPPED_AT.set(shut);
    OWN.set(own);
}

/// Whether the page stopped while it opened this.
pub(crate) fn stopped_at(what: &str) -> bool {
    STOPPED_AT.with_borrow(|shut| shut.iter().any(|it| it == what))
}

/// It is opened all the same.
pub(super) fn dare(what: &str) {
    if stopped_at(what) {
        let mut shut = STOPPED_AT.with_borrow(Clone::clone);
        shut.retain(|it| it != what);
        keep(shut);
    }
}

/// This is about to be opened.
pub(crate) fn opening(what: &str) {
    if super::may_write().is_ok() {
        let note = [&clock::now().at.to_string(), " ", what].concat();
        let _ = OWN.with_borrow(|own| local::write(own, &note));
    }
}

/// The page is left by a person, who can't leave one that is stuck: what is being opened has not
/// stopped it.
pub(crate) fn left() {
    let own = OWN.with_borrow(Clone::clone);
    if super::may_write().is_ok() && !own.is_empty() {
        local::remove(&own);
    }
}

/// It stands on the page.
pub(crate) fn opened(what: &str) {
    let own = OWN.with_borrow(Clone::clone);
    let noted = local::text(&own);
    let is_noted = noted.is_some_and(|it| it.split_once(' ').is_some_and(|(_, it)| it == what));
    if super::may_write().is_ok() && is_noted {
        local::remove(&own);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_young_note_of_another_tab_has_stopped_nothing() {
        let now = 1_791_298_800;
        for (note, is_own, want) in [
            ("1791298800 job.one", true, Some("job.one")),
            ("1791298795 job.one", true, Some("job.one")),
            ("1791298790 job.one", false, None),
            ("1791298789 job.one", false, Some("job.one")),
            // Before the clock was set back.
            ("1791299900 job.one", false, Some("job.one")),
            ("job.one", false, Some("job.one")),
        ] {
            assert_eq!(stopped_by(note, is_own, now), want, "{note}");
        }
    }
}
