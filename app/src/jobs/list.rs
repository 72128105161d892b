//! All jobs, and a new one.

use super::aside;
use super::details::{below, fault_line, text_field};
use super::find::find;
use crate::desk::Desk;
use crate::elements::{El, Piece, each, el, flag, live, when};
use crate::signal::{Memo, RwSignal};
use crate::store::{Held, Listed};
use crate::{backup, route, speech, words as w};
use ledgerboard_core::job::{LONGEST_NAME, LONGEST_PLACE, heading_of};
use ledgerboard_core::say;
use leptos::prelude::*;

/// The jobs worked on last, as lines that open them; where there are none, what to do. Those that
/// are put away are not among them.
pub(crate) fn job_lines(desk: Desk, most: usize) -> Piece {
    let all = desk.list;
    let none = flag(move || all.with(Vec::is_empty));
    live(move || {
        if none.get() {
            return el("p").class("quiet").say(&w::NO_JOBS);
        }
        untrack(|| lines(desk, all, most, false))
    })
}

/// The jobs that are done with, folded.
fn put_away(desk: Desk) -> Piece {
    let all = desk.list;
    let count = Memo::new(move |_| all.with(|all| all.iter().filter(|it| it.is_put_away).count()));
    live(move || {
        let count = count.get() as i64;
        if count == 0 {
            return None;
        }
        let summary = el("summary").text(&speech::say(&say!(w::JOBS_PUT_AWAY, count)));
        let lines = untrack(|| lines(desk, all, usize::MAX, true));
        Some(el("details").class("away").with(summary).with(lines))
    })
}

/// Lines by job: one that stays is left alone.
fn lines(desk: Desk, all: Memo<Vec<Listed>>, most: usize, away: bool) -> El {
    let keys = move || {
        all.with(|all| {
            let these = all.iter().filter(|it| it.is_put_away == away).take(most);
            these.map(|it| it.id.clone()).collect::<Vec<_>>()
        })
    };
    el("ul").class("doors").with(each(keys, move |id, _| line(desk, all, id)))
}

fn line(desk: Desk, all: Memo<Vec<Listed>>, id: &str) -> El {
    let of = StoredValue::new(id.to_owned());
    let own = Memo::new(move |_| {
        all.with(|all| all.iter().find(|it| of.with_value(|id| it.id == *id)).cloned())
    });
    let name = move || {
        own.with(|own| own.as_ref().map(|own| speech::say(&heading_of(&own.name))))
            .unwrap_or_default()
    };
    let about = move || {
        let count = own.with(|own| own.as_ref().map_or(0, |own| own.count));
        let text = match of.with_value(|id| desk.held(id)) {
            Held::Not(_) => say!(w::MARK_COUNT_UNSAVED, count),
            Held::Away => say!(w::LISTED_AWAY, say!(w::MARK_COUNT, count)),
            _ => say!(w::MARK_COUNT, count),
        };
        speech::say(&match of.with_value(|id| desk.edits_of(id, None)) {
            0 => text,
            edits => say!(w::LISTED_EDITS, text, edits),
        })
    };
    let about = el("span").class("quiet").text_live(about);
    let name = el("span").own().text_live(name);
    el("li").with(el("a").attr("href", &route::job(id)).with(name).text(" ").with(about))
}

/// A line that leads somewhere: what, and a word about it.
pub(crate) fn door(address: &str, name: El, about: &str) -> El {
    let about = el("span").class("quiet").text(about);
    el("li").with(el("a").attr("href", address).with(name).text(" ").with(about))
}

/// The page of all jobs.
pub(crate) fn jobs_page(desk: Desk) -> El {
    let name = RwSignal::new(String::new());
    let place = RwSignal::new(String::new());
    let fault = RwSignal::new(String::new());
    // Made from a calculator, a job is one step aside: the way leads back, with what was saved.
    let from = desk.comes_from.get_untracked();
    on_cleanup(move || {
        desk.comes_from.set(None);
    });
    let along = from.as_ref().and_then(|from| {
        let place = from.mark.clone()?;
        let mark = untrack(|| desk.job(&place.job))?.mark(&place.mark)?.clone();
        Some((place, mark))
    });
    // A number of a job that somebody named stays there, unless it is said otherwise.
    let loose = untrack(|| desk.todays_loose_notes());
    let is_loose = along.as_ref().is_some_and(|(place, _)| loose.as_ref() == Some(&place.job));
    let takes_along = RwSignal::new(is_loose);
    let back = from.as_ref().map(|from| {
        let address = route::calculator(from.calculator.id);
        let text = speech::say(&say!(w::BACK_TO, from.calculator.name));
        el("p").with(el("a").class("door").attr("href", &address).text(&text))
    });
    let tick = along.as_ref().map(|(place, mark)| {
        let tick = el("input")
            .attr("type", "checkbox")
            .id("along")
            .prop_live("checked", move || takes_along.get())
            .on("change", move |event| takes_along.set(event_target_checked(&event)));
        let label = el("label").class("label").attr("for", "along");
        let says = match untrack(|| desk.job(&place.job)).filter(|_| !is_loose) {
            Some(job) => say!(w::TAKE_OUT_OF, &*mark.title, job.heading()),
            None => say!(w::TAKE_ALONG, &*mark.title),
        };
        let label = label.own_text(&speech::say(&says));
        el("div").class("field").with(label).with(el("span").class("tick").with(tick))
    });
    let there = move |job: &str| match (&along, &from) {
        (Some((place, mark)), _) if takes_along.get_untracked() => {
            match desk.move_mark(&place.job, job, &mark.id) {
                Ok(()) => route::mark(job, &mark.id),
                Err(_) => route::job(job),
            }
        }
        (_, Some(from)) => route::calculator(from.calculator.id),
        _ => route::job(job),
    };
    let make = move || {
        let (name, place) = (name.get_untracked(), place.get_untracked());
        match desk.new_job(name.trim(), place.trim()) {
            Ok(id) => {
                desk.set(|settings| settings.job = Some(id.clone()));
                route::go(&there(&id));
            }
            Err(refusal) => fault.set(speech::say(&refusal.says())),
        }
    };
    let typed = |field: El, text: RwSignal<String>| {
        field.on("input", move |event| text.set(event_target_value(&event)))
    };
    let named = typed(text_field("job-name", LONGEST_NAME, "input"), name);
    let named = below("job-name", &w::JOB_NAME, named.attr("aria-describedby", "job-name-note"))
        .with(el("p").class("note").id("job-name-note").say(&w::JOB_SAMPLE_HINT));
    let placed = typed(text_field("job-place", LONGEST_PLACE, "input"), place);
    let form = el("form")
        .with(named)
        .with(below("job-place", &w::JOB_PLACE, placed))
        .with(tick)
        .with(fault_line(fault))
        .with(el("button").attr("type", "submit").class("main").say(&w::MAKE_JOB))
        .on("submit", move |event| {
            event.prevent_default();
            make();
        });
    let new = el("section")
        .attr("aria-labelledby", "new-job")
        .with(el("h2").id("new-job").say(&w::NEW_JOB))
        .with(back)
        .with(form);
    // Where what is tapped leads away from, and back to.
    let left = move || {
        let place = window().scroll_y().unwrap_or_default();
        desk.sought.update(|sought| sought.place = place);
    };
    el("main")
        .tap(left)
        .with(el("h1").attr("tabindex", "-1").say(&w::JOBS))
        .with(when(move || desk.list.with(|all| !all.is_empty()), move || find(desk)))
        .with(job_lines(desk, usize::MAX))
        .with(put_away(desk))
        .with(aside::aside(desk))
        .with(aside::stays(desk))
        .with(new)
        .with(backup::section(desk))
}
