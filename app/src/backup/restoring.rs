//! Restoring from a file: chosen, looked at, carried out, taken back.

use super::planned::planned;
use super::show;
use crate::desk::Desk;
use crate::elements::{El, Piece, el, text};
use crate::keep::then;
use crate::sheet_view::undo_button;
use crate::store::Held;
use crate::{speech, words as w};
use ledgerboard_core::job::backup::{self, BackupProblem, Plan, Step};
use ledgerboard_core::say;
use ledgerboard_core::words::{Phrase, Text};
use leptos::prelude::*;
use wasm_bindgen::prelude::*;
use web_sys::{Event, HtmlInputElement, HtmlTextAreaElement};

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
    el("div").with(stacked).with(paste(desk, place.clone())).with(place)
}

/// The field for a backup that came as text.
fn paste(desk: Desk, place: El) -> El {
    let field = el("textarea").id("paste").own().attr("rows", "4").attr("autocomplete", "off");
    let field = field.named(&speech::phrase(&w::PASTE));
    let typed = field.node().clone();
    let go = el("button").attr("type", "button").say(&w::PASTE_GO).tap(move || {
        let text = typed.dyn_ref::<HtmlTextAreaElement>().map(HtmlTextAreaElement::value);
        read(desk, &place, &text.unwrap_or_default());
    });
    el("details").with(el("summary").say(&w::PASTE)).with(field).with(el("p").with(go))
}

fn read(desk: Desk, place: &El, text: &str) {
    match backup::read(text) {
        Ok(read) => {
            let plan = desk.jobs.with_untracked(|jobs| backup::plan(read, jobs));
            look(desk, place, plan);
        }
        Err(problem) => refused(place, &problem.says()),
    }
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
        move |text| read(desk, &place, &text.as_string().unwrap_or_default()),
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
    let damaged = !plan.damaged.is_empty() || plan.cut_after.is_some();
    let changes = plan.changes();
    let says = match changes {
        _ if plan.jobs.is_empty() && !damaged => &w::RESTORE_EMPTY,
        false => &w::RESTORE_ALL_HERE,
        true => &w::RESTORE_WOULD,
    };
    let told = Piece::all([heading("h3").say(says).into(), planned(&plan)]);
    let copies = plan.copies();
    // What is on the phone is in the file then, and nothing else is.
    let is_backup = !damaged && desk.jobs.with_untracked(Vec::is_empty);
    let backed_up = is_backup.then_some(plan.made.at);
    let (here, again, mut steps) = (place.clone(), copies.clone(), Some(plan.into_steps()));
    let go = move || {
        let Some(steps) = steps.take() else { return };
        let says = if damaged { &w::RESTORED_BUT_DAMAGED } else { &w::RESTORED };
        if let Some(done) = carry_out(desk, &here, steps, says, backed_up) {
            show(&here, done.with(bring_back(desk, here.clone(), again.clone())));
        }
    };
    let here = place.clone();
    let go = changes.then(|| button(&w::RESTORE_GO).class("main").tap(go));
    let leave = button(&w::RESTORE_LEAVE).tap(move || show(&here, Piece::NONE));
    let leave = (changes || !copies.is_empty()).then_some(leave);
    let copies = bring_back(desk, place.clone(), copies);
    let buttons = el("div").class("buttons").with(go).with(copies).with(leave);
    show(place, Piece::all([told, buttons.into()]));
}

fn button(phrase: &'static Phrase) -> El {
    el("button").attr("type", "button").say(phrase)
}

/// Adds what stays out as new numbers.
fn bring_back(desk: Desk, place: El, copies: Vec<Step>) -> Option<El> {
    let mut copies = Some(copies).filter(|copies| !copies.is_empty());
    copies.is_some().then(|| {
        button(&w::BRING_BACK).tap(move || {
            let Some(copies) = copies.take() else { return };
            if let Some(done) = carry_out(desk, &place, copies, &w::RESTORED, None) {
                show(&place, done);
            }
        })
    })
}

/// Carries it out and gives the line that says so, with the way back.
fn carry_out(
    desk: Desk,
    place: &El,
    steps: Vec<Step>,
    says: &'static Phrase,
    backed_up: Option<i64>,
) -> Option<El> {
    let ids: Vec<String> = steps.iter().map(|step| step.job().to_owned()).collect();
    let undo = match desk.carry_out(steps) {
        Ok(made) => made,
        Err(refusal) => {
            refused(place, &refusal.says());
            return None;
        }
    };
    let before = desk.settings.with_untracked(|settings| settings.backed_up);
    if backed_up.is_some() {
        desk.set(|settings| settings.backed_up = backed_up);
    }
    let (here, mut undo) = (place.clone(), Some(undo));
    let back = move || {
        if backed_up.is_some() {
            desk.set(|settings| settings.backed_up = before);
        }
        take_back(desk, &here, undo.take().unwrap_or_default());
    };
    // It is restored once a store has all of it.
    let so = text(move || {
        let held = ids.iter().map(|id| desk.held(id));
        let worst = held.fold(Text::from(says), |worst, held| match held {
            Held::Not(trouble) => trouble.says(),
            Held::Soon => say!(w::JOB_SAVING),
            _ => worst,
        });
        speech::say(&worst)
    });
    let line = el("p").class("undo").with(el("span").text_live(move || so.get()));
    Some(line.with(undo_button().tap(back)))
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
