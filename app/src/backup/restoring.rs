//! Restoring from a file: chosen, looked at, carried out, taken back.

use super::last::{self, Counted};
use super::planned::planned;
use super::show;
use crate::desk::{Desk, Restored};
use crate::elements::{El, Piece, el, live, text, when};
use crate::keep::then;
use crate::sheet_view::undo_later;
use crate::signal::Memo;
use crate::store::Held;
use crate::{speech, words as w};
use ledgerboard_core::job::backup::{self, BackupProblem, Plan, Stays, Step};
use ledgerboard_core::say;
use ledgerboard_core::words::{Phrase, Text};
use wasm_bindgen::prelude::*;
use web_sys::{Event, HtmlInputElement, HtmlTextAreaElement};

/// The file's field, and what it leads to.
pub(super) fn restore(desk: Desk) -> El {
    let place = el("div").attr("role", "status");
    rest(desk, &place);
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
    let leave = button(&w::RESTORE_LEAVE).tap(move || rest(desk, &here));
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

/// What stands here while no file is looked at: the last restore, for as long as it can be undone.
fn rest(desk: Desk, place: &El) {
    show(place, Piece::NONE);
    let here = place.clone();
    last::find(desk, move |head| {
        // A file may have been chosen by now.
        if here.node().has_child_nodes() {
            return;
        }
        let says = move || match head.is_undo {
            true => say!(w::TAKEN_BACK_ON, head.at.text()),
            false => say!(w::RESTORED_ON, head.at.text()),
        };
        if desk.restored.with_untracked(Option::is_some) {
            return show(&here, done(desk, &here, says()));
        }
        let line = el("span").text(&speech::say(&says()));
        let there = here.clone();
        let undo = undo_later().tap(move || {
            let here = there.clone();
            last::read(desk, head, move |last| {
                let Some(last) = last else {
                    return show(&here, el("p").class("now").say(&w::WAY_BACK_LOST));
                };
                let back = desk.jobs.with_untracked(|jobs| last.back.back(jobs));
                // What of it would stay is told before the rest goes back.
                if back.stays.is_empty() && !back.steps.is_empty() {
                    take_back(desk, &here);
                } else {
                    show(&here, done_now(desk, &here, says()));
                }
            });
        });
        show(&here, el("p").class("undo").with(line).with(undo));
    });
}

/// Carries it out and gives the line that says so, with the way back.
fn carry_out(
    desk: Desk,
    place: &El,
    steps: Vec<Step>,
    says: &'static Phrase,
    backed_up: Option<i64>,
) -> Option<El> {
    let back = match desk.carry_out(steps) {
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
    last::note(desk, back, false, backed_up.map(|at| (Some(at), before)));
    Some(done_now(desk, place, says.into()))
}

/// The same of what was done just now: what was tapped has gone.
fn done_now(desk: Desk, place: &El, says: Text) -> El {
    let line = done(desk, place, says).attr("tabindex", "-1");
    line.clone().focus_in_place();
    line
}

/// The last restore: whether it is held, what of it was changed since, and the tap that undoes the
/// rest.
fn done(desk: Desk, place: &El, says: Text) -> El {
    let last = desk.restored;
    let ids: Vec<String> = last.with_untracked(|last| {
        last.iter().flat_map(|last| last.back.jobs()).map(str::to_owned).collect()
    });
    // It is restored once a store has all of it.
    let so = text(move || {
        let held = ids.iter().map(|id| desk.held(id));
        let worst = held.fold(says.clone(), |worst, held| match held {
            Held::Not(trouble) => trouble.says(),
            Held::Soon => say!(w::JOB_SAVING),
            _ => worst,
        });
        speech::say(&worst)
    });
    let back = Memo::new(move |_| {
        let back = |last: &Restored| desk.jobs.with(|jobs| last.back.back(jobs));
        let back = last.with(|last| last.as_ref().map(back)).unwrap_or_default();
        (!back.steps.is_empty(), back.stays.iter().map(stays).collect::<Vec<String>>())
    });
    let here = place.clone();
    let undo = when(
        move || back.with(|(any, _)| *any),
        move || {
            let here = here.clone();
            undo_later().tap(move || take_back(desk, &here))
        },
    );
    let kept = live(move || {
        let says = back.with(|(_, stays)| stays.clone());
        Piece::all(says.iter().map(|says| el("p").class("now").own_text(says)))
    });
    let line = el("p").class("undo").with(el("span").text_live(move || so.get())).with(undo);
    el("div").with(line).with(kept)
}

/// A job that stays as it is, with what of it was changed since.
fn stays(it: &Stays) -> String {
    let mut changed: Option<Text> = None;
    for one in &it.changed {
        changed = Some(match changed {
            Some(others) => say!(w::AND, others, one.clone()),
            None => one.clone(),
        });
    }
    speech::say(&match changed {
        Some(changed) => say!(w::RESTORE_STAYS_WITH, it.job.clone(), changed),
        None => say!(w::RESTORE_STAYS, it.job.clone()),
    })
}

/// Undoes the last restore, or the undoing of it. Jobs that were changed since stay, and are named.
fn take_back(desk: Desk, place: &El) {
    let Some(last) = desk.restored.get_untracked() else { return };
    let back = desk.jobs.with_untracked(|jobs| last.back.back(jobs));
    match desk.carry_out(back.steps) {
        Err(refusal) => refused(place, &refusal.says()),
        Ok(made) => {
            let counted = counts_again(desk, &last);
            last::note(desk, made, !last.is_undo, counted);
            let left = back.stays.iter().map(|it| el("p").class("quiet").own_text(&stays(it)));
            let says = if last.is_undo { &w::RESTORED } else { &w::TAKEN_BACK };
            let taken = done_now(desk, place, says.into());
            show(place, Piece::all(std::iter::once(taken).chain(left)));
        }
    }
}

/// The last backup is as it was before a restore that counted as one, unless one was made since.
fn counts_again(desk: Desk, last: &Restored) -> Counted {
    let (was, before) = last.counted?;
    let now = desk.settings.with_untracked(|settings| settings.backed_up);
    if now != was {
        return None;
    }
    desk.set(|settings| settings.backed_up = before);
    Some((before, now))
}
