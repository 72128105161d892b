//! Keeps the draft and the address in step with what is typed.

use super::Question;
use crate::desk::Desk;
use crate::elements::on_change;
use crate::later::{Because, later};
use crate::route;
use leptos::prelude::{GetValue, SetValue, StoredValue};

/// Follows a question for as long as its page is open. `address` tells whether the address
/// should hold the question before anything is changed.
pub(super) fn follow(desk: Desk, question: Question, address: bool) {
    if address {
        route::replace(&route::question(&question.link()));
    }
    // Whoever has gone elsewhere in the meantime is not called back: the browser tells of a new
    // address later than it has it.
    let here = StoredValue::new(route::here());
    let said = StoredValue::new(route::question(&question.link()));
    let soon = later(move |because| {
        if question.draft.is_disposed() {
            return;
        }
        if because == Because::Paused && here.get_value() == route::here() {
            question.keep_draft();
            said.set_value(route::question(&question.link()));
            route::replace(&said.get_value());
            here.set_value(route::here());
        } else {
            question.keep_draft_behind(&said.get_value());
        }
        desk.look();
    });
    let read = move || {
        question.draft.track();
        question.units.track();
        question.basis.track();
        question.mark.track();
        question.links.track();
        question.sampled.track();
        question.saved.track();
    };
    on_change(read, soon);
}
