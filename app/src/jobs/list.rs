//! All jobs, and a new one.

use super::aside;
use super::details::{below, fault_line, text_field};
use crate::desk::Desk;
use crate::elements::{El, Piece, el, live};
use crate::signal::RwSignal;
use crate::store::Held;
use crate::{backup, route, speech, words as w};
use ledgerboard_core::job::{Job, LONGEST_NAME, LONGEST_PLACE};
use ledgerboard_core::say;
use leptos::prelude::*;

/// The jobs worked on last, as lines that open them; where there are none, what to do.
pub(crate) fn job_lines(desk: Desk, most: usize) -> Piece {
    live(move || {
        desk.jobs.with(|jobs| {
            if jobs.is_empty() {
                return el("p").class("quiet").say(&w::NO_JOBS);
            }
            let lines = newest_first(jobs).into_iter().take(most);
            el("ul").class("doors").with_all(lines.map(|job| line(desk, job)))
        })
    })
}

/// The jobs worked on last come first. Put in place one by one: a sort from the library is more
/// code than this page's list is worth.
pub(super) fn newest_first(jobs: &[Job]) -> Vec<&Job> {
    let last = |job: &Job| job.marks.iter().map(|mark| mark.at.at).fold(job.made.at, i64::max);
    let mut order: Vec<(i64, &Job)> = Vec::with_capacity(jobs.len());
    for job in jobs {
        let at = last(job);
        let place = order.partition_point(|(other, _)| *other >= at);
        order.insert(place, (at, job));
    }
    order.into_iter().map(|(_, job)| job).collect()
}

fn line(desk: Desk, job: &Job) -> El {
    let count = job.marks.len() as i64;
    let count = match desk.held(&job.id) {
        Held::Not(_) => say!(w::MARK_COUNT_UNSAVED, count),
        _ => say!(w::MARK_COUNT, count),
    };
    door(
        &route::job(&job.id),
        el("span").own_text(&speech::say(&job.heading())),
        &speech::say(&count),
    )
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
    let takes_along = RwSignal::new(true);
    let back = from.as_ref().map(|from| {
        let address = route::calculator(from.calculator.id);
        let text = speech::say(&say!(w::BACK_TO, from.calculator.name));
        el("p").with(el("a").class("door").attr("href", &address).text(&text))
    });
    let tick = along.as_ref().map(|(_, mark)| {
        let tick = el("input")
            .attr("type", "checkbox")
            .id("along")
            .prop_live("checked", move || takes_along.get())
            .on("change", move |event| takes_along.set(event_target_checked(&event)));
        let label = el("label").class("label").attr("for", "along");
        let label = label.own_text(&speech::say(&say!(w::TAKE_ALONG, &*mark.title)));
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
    el("main")
        .with(el("h1").attr("tabindex", "-1").say(&w::JOBS))
        .with(job_lines(desk, usize::MAX))
        .with(aside::aside(desk))
        .with(aside::stays(desk))
        .with(new)
        .with(backup::section(desk))
}
