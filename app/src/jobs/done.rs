//! What was just done to numbers of a list, each shown in its number's place with the tap that takes
//! it back, for as long as nothing else was done to that number.

use super::mark_line::focus_on;
use crate::desk::Desk;
use crate::elements::{El, el, focus_soon};
use crate::sheet_view::undo_later;
use crate::signal::RwSignal;
use crate::{speech, words as w};
use ledgerboard_core::job::{Clock, Edit, Job, Mark};
use ledgerboard_core::say;
use leptos::prelude::*;

/// Something that was done to a number.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Done {
    /// The number as it was.
    pub(super) mark: Mark,
    /// The number that was changed by it, as it was then; none where nothing here was.
    pub(super) after: Option<Mark>,
    pub(super) what: What,
}

/// What was done. The edits bring back how it was.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum What {
    Removed(Edit),
    /// Moved to the job of this id.
    Moved(String),
    /// Still there, with a linked value taken.
    Taken(Edit),
    /// Still there, with a link cut.
    Kept(Edit),
    /// Put in the place of the one of which it is another version.
    Used(Edit),
}

/// So many are kept; nobody takes more back.
const MOST: usize = 30;

/// Notes what was done.
pub(super) fn add(done: RwSignal<Vec<Done>>, one: Done) {
    // What was tapped has gone.
    focus_soon(&["[data-done='", &one.mark.id, "'] button"].concat());
    done.update(|done| {
        if done.len() == MOST {
            done.remove(0);
        }
        done.push(one);
    });
}

impl Done {
    /// Whether its number is off the list.
    fn is_off(&self) -> bool {
        !matches!(self.what, What::Taken(_) | What::Kept(_))
    }

    /// Whether the number stands as this left it, so that taking it back throws nothing away.
    fn holds(&self, job: &Job) -> bool {
        let bare = |mark: &Mark| Mark { clock: Clock::default(), ..mark.clone() };
        let is_as_left =
            |after: &Mark| job.mark(&after.id).is_some_and(|now| bare(now) == bare(after));
        self.is_off() != job.mark(&self.mark.id).is_some()
            && self.after.as_ref().is_none_or(is_as_left)
    }
}

/// What was done last to a number that is still there.
pub(super) fn to_mark(done: &[Done], job: &Job, id: &str) -> Option<Done> {
    let mut of_it = done.iter().rev().filter(|it| !it.is_off() && it.mark.id == id);
    of_it.find(|it| it.holds(job)).cloned()
}

/// What is off the list, once each.
pub(super) fn off_list(done: &[Done], job: &Job) -> Vec<Done> {
    let mut off: Vec<Done> = Vec::new();
    for it in done.iter().rev().filter(|it| it.is_off() && it.holds(job)) {
        if !off.iter().any(|other| other.mark.id == it.mark.id) {
            off.push(it.clone());
        }
    }
    off
}

/// The place where a number was, or what was done to it, and the tap that takes it back.
pub(super) fn done_line(desk: Desk, job: &str, here: Done, done: RwSignal<Vec<Done>>) -> El {
    let text = match &here.what {
        What::Removed(_) => say!(w::MARK_REMOVED, &*here.mark.title),
        What::Taken(_) => say!(w::SETTLED),
        What::Kept(_) => say!(w::KEPT_MINE),
        What::Used(_) => say!(w::VERSION_USED),
        What::Moved(to) => match untrack(|| desk.job(to)) {
            Some(to) => say!(w::MARK_MOVED, to.heading()),
            None => say!(w::REMOVED),
        },
    };
    let id = here.mark.id.clone();
    let tag = if here.is_off() { "li" } else { "p" };
    let job = job.to_owned();
    let undo = move || {
        let is_undone = match &here.what {
            What::Removed(inverse)
            | What::Taken(inverse)
            | What::Kept(inverse)
            | What::Used(inverse) => desk.edit(&job, inverse.clone()).is_ok(),
            What::Moved(to) => desk.move_mark(to, &job, &here.mark.id).is_ok(),
        };
        if is_undone {
            done.update(|done| done.retain(|it| *it != here));
            focus_on(&here.mark.id);
        }
    };
    el(tag)
        .class("undo")
        .attr("role", "status")
        .attr("data-done", &id)
        .with(el("span").own_text(&speech::say(&text)))
        .with(undo_later().tap(undo))
}
