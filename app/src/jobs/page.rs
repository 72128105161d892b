//! One job: its kept numbers by room, then its terms.

use super::details::{below, fault_line, text_field};
use super::mark_line::{Gone, gone_line, mark_line};
use crate::desk::Desk;
use crate::elements::{El, Piece, el, flag, live};
use crate::later::later;
use crate::sheet_view::{edition_picker, undo_button, units_picker};
use crate::signal::{Memo, RwSignal};
use crate::{route, speech, words as w};
use ledgerboard_core::job::{Edit, Job, LONGEST_NAME, LONGEST_PLACE, Survey};
use ledgerboard_core::say;
use leptos::prelude::*;

/// The page of a job.
pub(crate) fn job_page(desk: Desk, id: String) -> El {
    let removed = RwSignal::new(None::<Job>);
    let wanted = id.clone();
    let there = flag(move || desk.job(&wanted).is_some());
    el("main").with(live(move || {
        if there.get() {
            return untrack(|| opened(desk, id.clone(), removed));
        }
        let (heading, taken) = match removed.get() {
            Some(job) => (&w::JOBS, Some(taken_away(desk, job, removed))),
            None => (&w::NO_SUCH_JOB, None),
        };
        let all = el("a").class("door").attr("href", route::JOBS).say(&w::ALL_JOBS);
        Piece::all([Some(h1().say(heading)), taken, Some(el("p").with(all))])
    }))
}

fn h1() -> El {
    el("h1").attr("tabindex", "-1")
}

fn taken_away(desk: Desk, job: Job, removed: RwSignal<Option<Job>>) -> El {
    let text = say!(w::JOB_REMOVED, job.heading());
    let undo = move || {
        desk.put_back(job.clone());
        removed.set(None);
    };
    el("p")
        .class("undo")
        .attr("role", "status")
        .with(el("span").own_text(&speech::say(&text)))
        .with(undo_button().tap(undo))
}

fn opened(desk: Desk, id: String, removed: RwSignal<Option<Job>>) -> Piece {
    let id = StoredValue::new(id);
    let job = Memo::new(move |_| id.with_value(|id| desk.job(id)));
    let gone = RwSignal::new(None::<Gone>);
    let read = move |read: fn(&Job) -> String| job.with(|job| job.as_ref().map(read));
    let heading = move || read(|job| speech::say(&job.heading())).unwrap_or_default();
    let place = move || read(|job| job.place.clone()).unwrap_or_default();
    let invented = job.with_untracked(|job| job.as_ref().is_some_and(|job| job.invented));
    let marks = live(move || job.with(|job| job.as_ref().map(|job| marks(desk, job, gone))));
    let section = el("section")
        .attr("aria-labelledby", "marks")
        .with(el("h2").id("marks").say(&w::SAVED_NUMBERS))
        .with(marks);
    Piece::all([
        h1().own().text_live(heading).into(),
        el("p").class("place").own().text_live(place).into(),
        if invented { demo_says(desk) } else { present(desk, id) },
        section.into(),
        if invented { Piece::NONE } else { terms(desk, id, job, removed).into() },
    ])
}

/// Whether numbers are saved to this job now, or the tap that makes it so.
fn present(desk: Desk, id: StoredValue<String>) -> Piece {
    live(move || {
        let is_present = desk.settings.with(|it| it.job.as_ref() == Some(&id.get_value()));
        if is_present {
            return el("p").class("quiet").say(&w::WORKED_ON);
        }
        el("button")
            .attr("type", "button")
            .say(&w::WORK_ON)
            .tap(move || desk.set(|settings| settings.job = Some(id.get_value())))
    })
}

/// Marks by room, the newest first; one that was just taken away keeps its place.
fn marks(desk: Desk, job: &Job, gone: RwSignal<Option<Gone>>) -> Piece {
    let taken = gone.get().filter(|taken| job.mark(&taken.mark().id).is_none());
    let mut with_taken = job.clone();
    with_taken.marks.extend(taken.as_ref().map(|taken| taken.mark().clone()));
    if with_taken.marks.is_empty() {
        return el("p").class("quiet").say(&w::NO_MARKS).into();
    }
    let survey = Survey::of(job);
    let spots = with_taken.newest_first_by_spot();
    Piece::all(spots.iter().map(|spot| {
        let name = match spot.name {
            "" => el("h3").class("quiet").say(&w::NO_SPOT),
            name => el("h3").own_text(name),
        };
        let lines = spot.marks.iter().map(|mark| match &taken {
            Some(taken) if taken.mark().id == mark.id => {
                gone_line(desk, &job.id, taken.clone(), gone)
            }
            _ => mark_line(desk, job, &survey, mark, gone),
        });
        Piece::all([name, el("ul").with_all(lines)])
    }))
}

fn demo_says(desk: Desk) -> Piece {
    let away = el("button").attr("type", "button").say(&w::TAKE_DEMO_AWAY).tap(move || {
        desk.set(|settings| settings.demo_hidden = true);
        route::go(route::HOME);
    });
    Piece::all([
        el("p").class("caution").say(&w::INVENTED),
        el("p").say(&w::DEMO_SAYS),
        el("p").with(away),
    ])
}

/// Name and place, edition and units, and the way out.
fn terms(
    desk: Desk,
    id: StoredValue<String>,
    job: Memo<Option<Job>>,
    removed: RwSignal<Option<Job>>,
) -> El {
    let start = job.get_untracked();
    let name = RwSignal::new(start.as_ref().map(|job| job.name.clone()).unwrap_or_default());
    let place = RwSignal::new(start.map(|job| job.place).unwrap_or_default());
    let fault = RwSignal::new(String::new());
    let soon = later(move |_| {
        let (Some(id), Some(name), Some(place)) =
            (id.try_get_value(), name.try_get_untracked(), place.try_get_untracked())
        else {
            return;
        };
        let made = desk.edit(&id, Edit::Describe { name, place });
        fault.set(made.err().map(|it| speech::say(&it.says())).unwrap_or_default());
    });
    let field = |name, longest, text: RwSignal<String>| {
        text_field(name, longest, "input").value_live(move || text.get()).on(
            "input",
            move |event| {
                text.set(event_target_value(&event));
                soon();
            },
        )
    };
    let basis = move || job.with(|job| job.as_ref().map(|job| job.basis)).unwrap_or_default();
    let units = move || job.with(|job| job.as_ref().map(|job| job.units)).unwrap_or_default();
    let edit = move |edit| {
        let _ = desk.edit(&id.get_value(), edit);
    };
    let remove = move || removed.set(desk.remove_job(&id.get_value()));
    el("section")
        .attr("aria-labelledby", "terms")
        .with(el("h2").id("terms").say(&w::RENAME))
        .with(below("job-name", &w::JOB_NAME, field("job-name", LONGEST_NAME, name)))
        .with(below("job-place", &w::JOB_PLACE, field("job-place", LONGEST_PLACE, place)))
        .with(fault_line(fault))
        .with(edition_picker(basis, move |basis| edit(Edit::Basis(basis))))
        .with(units_picker(&w::UNITS, units, move |units| edit(Edit::Units(units))))
        .with(el("p").with(el("button").attr("type", "button").say(&w::REMOVE_JOB).tap(remove)))
}
