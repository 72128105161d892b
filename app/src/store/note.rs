//! A note of what is being opened, made before it is worked and taken away when it stands on the
//! page. One that is found at the start tells what stopped the page the last time: it stays shut
//! until somebody opens it all the same, so that no record stops the page for ever.

use super::local;
use std::cell::RefCell;

const NOTE: &str = "ledgerboard.opening";
/// What stays shut, a name a line.
const SHUT: &str = "ledgerboard.shut";

thread_local! {
    static STOPPED_AT: RefCell<Vec<String>> = const { RefCell::new(Vec::new()) };
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
    if let Some(found) = local::text(NOTE) {
        if !shut.contains(&found) {
            shut.push(found);
        }
        keep(shut);
        local::remove(NOTE);
    } else {
        STOPPED_AT.set(shut);
    }
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
        let _ = local::write(NOTE, what);
    }
}

/// It stands on the page.
pub(crate) fn opened(what: &str) {
    if super::may_write().is_ok() && local::text(NOTE).as_deref() == Some(what) {
        local::remove(NOTE);
    }
}
