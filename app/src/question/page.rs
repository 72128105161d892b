//! A calculator's page: answer, fields, drawing, and all that stands behind the answer, in that
//! order on a phone.

use super::{Opening, Question, keeping};
use crate::desk::Desk;
use crate::elements::{El, el, on_change, text};
use crate::{fields, keep, sheet_view, words as w};
use leptos::prelude::{Set, Track, With};

/// The page of one open question. `address` tells whether the address should hold the question
/// from the start; a mark's own address is left standing until something is changed.
pub(crate) fn question_page(desk: Desk, opening: Opening, address: bool) -> El {
    let question = Question::new(opening);
    keeping::follow(desk, question, address);
    desk.remember(question.entry.id);
    let present = text(move || desk.settings.with(|all| all.job.clone()).unwrap_or_default());
    let follow_job = move || {
        // Another job brings its own editions and units.
        if let Some(job) = desk.present() {
            question.basis.set(job.basis);
            question.change_units(job.units);
        }
    };
    on_change(move || present.track(), follow_job);
    let side = el("div")
        .class("side")
        .with(sheet_view::answer(question))
        .with(sheet_view::drawing(question));
    let form = el("section")
        .class("fields")
        .attr("aria-labelledby", "fields")
        .with(el("h2").id("fields").say(&w::FIELDS))
        .with(fields::rows(question, question.entry.rows, ""))
        .with(sheet_view::settings(question));
    el("main")
        .class("question")
        .with(el("h1").attr("tabindex", "-1").say(question.entry.name))
        .with(side)
        .with(form)
        .with(el("div").class("behind").with(sheet_view::headings(question)))
        .with(keep::bar(desk, question))
}
