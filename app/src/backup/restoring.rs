//! Restoring from a file: chosen, looked at, carried out, taken back.

use super::planned::planned;
use super::show;
use crate::desk::Desk;
use crate::elements::{El, Piece, el};
use crate::keep::then;
use crate::sheet_view::undo_button;
use crate::{speech, words as w};
use ledgerboard_core::job::backup::{self, BackupProblem, Plan, Step};
use ledgerboard_core::say;
use ledgerboard_core::words::Text;
use leptos::prelude::*;
use wasm_bindgen::prelude::*;
use web_sys::{Event, HtmlInputElement};

/// The file's field, and what it leads to.
pub(super) fn restore(desk: Desk) -> El {
    let place = el("div").attr("role", "status");
    let here = place.clone();
    let field = el("input")
        .attr("type", "file")
        .id("restore")
        .attr("accept", ".json,.txt,application/json,text/plain")
        .attr("aria-describedby", "restore-note")
        .on("change", move |event| chosen(desk, here.clone(), &event));
    let label = el("label").class("label").attr("for", "restore").say(&w::RESTORE);
    let note = el("p").class("note").id("restore-note").say(&w::RESTORE_NOTE);
    let stacked = el("div").class("field stacked").with(label).with(field).with(note);
    el("div").with(stacked).with(place)
}

fn chosen(desk: Desk, place: El, event: &Event) {
    let field = event.target().and_then(|it| it.dyn_into::<HtmlInputElement>().ok());
    let Some(field) = field else { return };
    let Some(file) = field.files().and_then(|files| files.get(0)) else { return };
    // The same file chosen again is a choice too.
    field.set_value("");
    // By its size, before a byte of it is read.
    if let Err(problem) = backup::fits(file.size() as u64) {
        return refused(&place, &problem.says());
    }
    show(&place, el("p").class("quiet").say(&w::RESTORE_READS));
    let failed = place.clone();
    then(
        &file.text(),
        move |text| match backup::read(&text.as_string().unwrap_or_default()) {
            Ok(read) => {
                let plan = desk.jobs.with_untracked(|jobs| backup::plan(read, jobs));
                look(desk, &place, plan);
            }
            Err(problem) => refused(&place, &problem.says()),
        },
        move |_| refused(&failed, &BackupProblem::Empty.says()),
    );
}

fn refused(place: &El, why: &Text) {
    let why = el("p").class("fault").text(&speech::say(why));
    show(place, Piece::all([why, el("p").say(&w::NOTHING_CHANGED)]));
}

fn heading(tag: &str) -> El {
    let heading = el(tag).attr("tabindex", "-1");
    heading.clone().focus_in_place();
    heading
}

/// What would change, and nothing has yet.
fn look(desk: Desk, place: &El, plan: Plan) {
    let damaged = !plan.damaged.is_empty();
    let says = match plan.changes() {
        _ if plan.jobs.is_empty() && !damaged => &w::RESTORE_EMPTY,
        false => &w::RESTORE_ALL_HERE,
        true => &w::RESTORE_WOULD,
    };
    let told = Piece::all([heading("h3").say(says).into(), planned(&plan)]);
    let button = |phrase| el("button").attr("type", "button").say(phrase);
    let buttons = plan.changes().then(|| {
        let (here, mut plan) = (place.clone(), Some(plan));
        let go = move || {
            if let Some(plan) = plan.take() {
                carry_out(desk, &here, plan.into_steps(), damaged);
            }
        };
        let here = place.clone();
        let go = button(&w::RESTORE_GO).class("main").tap(go);
        let leave = button(&w::RESTORE_LEAVE).tap(move || show(&here, Piece::NONE));
        el("div").class("buttons").with(go).with(leave)
    });
    show(place, Piece::all([told, buttons.into()]));
}

fn carry_out(desk: Desk, place: &El, steps: Vec<Step>, damaged: bool) {
    let undo = match desk.carry_out(steps) {
        Ok(made) => made,
        Err(refusal) => return refused(place, &refusal.says()),
    };
    // What the phone could not keep of it, the page says at its top.
    let text = if damaged { say!(w::RESTORED_BUT_DAMAGED) } else { say!(w::RESTORED) };
    let (here, mut undo) = (place.clone(), Some(undo));
    let back = move || take_back(desk, &here, undo.take().unwrap_or_default());
    let line = el("p").class("undo").with(el("span").text(&speech::say(&text)));
    show(place, line.with(undo_button().tap(back)));
}

/// Jobs that were changed since they were added stay, and are named.
fn take_back(desk: Desk, place: &El, undo: Vec<Step>) {
    let added = undo.iter().filter(|step| matches!(step, Step::Remove(_)));
    let added: Vec<String> = added.map(|step| step.job().to_owned()).collect();
    match desk.carry_out(undo) {
        Err(refusal) => refused(place, &refusal.says()),
        Ok(_) => {
            let left = added.iter().filter_map(|id| untrack(|| desk.job(id)));
            let left = left.map(|job| {
                let says = say!(w::RESTORE_STAYS, job.heading());
                el("p").class("quiet").text(&speech::say(&says))
            });
            let taken = heading("p").say(&w::TAKEN_BACK);
            show(place, Piece::all(std::iter::once(taken).chain(left)));
        }
    }
}
