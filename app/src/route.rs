//! Where the page is: the part of the address behind `#`, read and written here and nowhere else.
//!
//! Addresses live in the fragment, so that they work on any static host, under any folder and
//! without a network, and never reach a server.

use ledgerboard_core::catalog::{Link, LinkProblem};
use ledgerboard_core::job::turnover::Who;
use leptos::prelude::window;
use wasm_bindgen::JsValue;

/// A place in the page.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum Route {
    /// The calculators and the jobs.
    Home,
    /// A calculator, as last left or with a whole question.
    Calculator(String),
    /// A calculator with a question.
    Question(Link),
    /// A question that can't be read, and the calculator it names.
    Unreadable(String, LinkProblem),
    /// The list of jobs.
    Jobs,
    /// One job.
    Job(String),
    /// What to buy for a job.
    Buying(String),
    /// What stands before each part of a job's work.
    Ready(String),
    /// A sheet of a job to hand over.
    Sheet(String, Who),
    /// A kept number: its job and its own id.
    Mark(String, String),
    /// What this page is told about the phone, and what it is set to.
    Settings,
}

impl Route {
    /// Reads an address as the browser gives it, with its `#`.
    pub(crate) fn read(fragment: &str) -> Self {
        let address = fragment.trim_start_matches('#').trim_start_matches('/');
        let mut parts = address.split('/');
        match (parts.next().unwrap_or_default(), parts.next(), parts.next()) {
            ("", ..) => Self::Home,
            ("jobs", None, _) => Self::Jobs,
            ("settings", None, _) => Self::Settings,
            ("job", Some(job), None) => Self::Job(job.to_owned()),
            ("job", Some(job), Some("buy")) => Self::Buying(job.to_owned()),
            ("job", Some(job), Some("ready")) => Self::Ready(job.to_owned()),
            ("job", Some(job), Some(who)) if Who::from_key(who).is_some() => {
                Self::Sheet(job.to_owned(), Who::from_key(who).unwrap_or(Who::Owner))
            }
            ("mark", Some(job), Some(mark)) => Self::Mark(job.to_owned(), mark.to_owned()),
            _ => match Link::read(address) {
                Ok(link) if address.contains('?') => Self::Question(link),
                Ok(link) => Self::Calculator(link.calculator),
                Err(problem) => {
                    let id = address.split('?').next().unwrap_or_default();
                    Self::Unreadable(id.to_owned(), problem)
                }
            },
        }
    }

    /// The job that a place belongs to.
    pub(crate) fn job(&self) -> Option<&str> {
        match self {
            Self::Job(id)
            | Self::Buying(id)
            | Self::Ready(id)
            | Self::Sheet(id, _)
            | Self::Mark(id, _) => Some(id),
            _ => None,
        }
    }

    /// Reads the address that the browser is at.
    pub(crate) fn current() -> Self {
        Self::read(&here())
    }
}

/// The part of the address behind and with its `#`, as the browser has it now.
pub(crate) fn here() -> String {
    window().location().hash().unwrap_or_default()
}

/// The address of a question, for a link on this page.
pub(crate) fn question(link: &Link) -> String {
    ["#/", &link.write()].concat()
}

/// The address of a calculator as it was last left.
pub(crate) fn calculator(id: &str) -> String {
    ["#/", id].concat()
}

/// The address of a job.
pub(crate) fn job(id: &str) -> String {
    ["#/job/", id].concat()
}

/// The address of what to buy for a job.
pub(crate) fn buying(id: &str) -> String {
    [&job(id), "/buy"].concat()
}

/// The address of what stands before each part of a job's work.
pub(crate) fn ready(id: &str) -> String {
    [&job(id), "/ready"].concat()
}

/// The address of a sheet to hand over.
pub(crate) fn sheet(id: &str, who: Who) -> String {
    [&job(id), "/", who.key()].concat()
}

/// The address of a mark.
pub(crate) fn mark(job: &str, mark: &str) -> String {
    ["#/mark/", job, "/", mark].concat()
}

/// The address of the first page.
pub(crate) const HOME: &str = "#/";
/// The address of the list of jobs.
pub(crate) const JOBS: &str = "#/jobs";
/// The address of the settings.
pub(crate) const SETTINGS: &str = "#/settings";

/// Goes to an address of this page.
pub(crate) fn go(address: &str) {
    let _ = window().location().set_hash(address);
}

/// Writes an address over the present one, without going anywhere: Back still leads out.
pub(crate) fn replace(address: &str) {
    if let Ok(history) = window().history() {
        let _ = history.replace_state_with_url(&JsValue::NULL, "", Some(address));
    }
}

/// Notes a text with the present step of the browser's history: a reload and a way back find it there,
/// and no address carries it.
pub(crate) fn note(text: &str) {
    if let Ok(history) = window().history() {
        let _ = history.replace_state(&JsValue::from_str(text), "");
    }
}

/// The text that was noted with this step, if one was.
pub(crate) fn noted() -> Option<String> {
    window().history().ok()?.state().ok()?.as_string()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_address_of_ours_is_read_back() {
        let place = |text: &str| text.to_owned();
        for (address, want) in [
            ("", Route::Home),
            ("#", Route::Home),
            (HOME, Route::Home),
            (JOBS, Route::Jobs),
            (SETTINGS, Route::Settings),
            (&job("a1"), Route::Job(place("a1"))),
            (&buying("a1"), Route::Buying(place("a1"))),
            (&ready("a1"), Route::Ready(place("a1"))),
            (&sheet("a1", Who::Inspector), Route::Sheet(place("a1"), Who::Inspector)),
            (&mark("a1", "b2"), Route::Mark(place("a1"), place("b2"))),
            (&calculator("any"), Route::Calculator(place("any"))),
            ("#/any?x=%", Route::Unreadable(place("any"), LinkProblem::Encoding)),
            ("#/any?~nec=1066", Route::Unreadable(place("any"), LinkProblem::Setting)),
        ] {
            assert_eq!(Route::read(address), want, "{address}");
        }
    }

    #[test]
    fn a_typed_length_with_slashes_stays_one_question() {
        let link = Link::read("any?a=9'%204-1/2%22").unwrap();
        assert_eq!(Route::read(&question(&link)), Route::Question(link));
    }
}
