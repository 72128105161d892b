//! One job: its kept numbers by room, then its terms.

use super::aside;
use super::details::{below, fault_line, text_field};
use super::marks::marks;
use crate::desk::{Desk, GoneJob};
use crate::elements::{El, Piece, el, flag, focus_soon, live, when};
use crate::later::later;
use crate::sheet_view::{edition_picker, undo_button, units_picker};
use crate::signal::{Memo, RwSignal};
use crate::store::{self, Held};
use crate::{backup, route, speech, words as w};
use ledgerboard_core::calculators::Trade;
use ledgerboard_core::catalog;
use ledgerboard_core::job::turnover::Who;
use ledgerboard_core::job::{Edit, Job, LONGEST_NAME, LONGEST_PLACE, Mark, PUT_AWAY};
use ledgerboard_core::say;
use ledgerboard_core::words::Text;
use leptos::prelude::*;
use std::cell::Cell;
use std::sync::Arc;

/// The page of a job.
pub(crate) fn job_page(desk: Desk, id: String) -> El {
    let removed = RwSignal::new(None::<GoneJob>);
    let wanted = id.clone();
    let there = flag(move || desk.has(&wanted));
    el("main").with(live(move || {
        if there.get() {
            return untrack(|| opened(desk, id.clone(), removed));
        }
        let (heading, taken) = match removed.get() {
            Some(gone) => (&w::JOBS, taken_away(desk, gone, removed).into()),
            None => (&w::NO_SUCH_JOB, aside::of_job(desk, StoredValue::new(id.clone()))),
        };
        let all = el("a").class("door").attr("href", route::JOBS).say(&w::ALL_JOBS);
        Piece::all([h1().say(heading).into(), taken, el("p").with(all).into()])
    }))
}

fn h1() -> El {
    el("h1").attr("tabindex", "-1")
}

fn taken_away(desk: Desk, gone: GoneJob, removed: RwSignal<Option<GoneJob>>) -> El {
    let text = say!(w::JOB_REMOVED, gone.job.heading());
    let undo = move || {
        desk.put_back(gone.clone());
        removed.set(None);
    };
    el("p")
        .class("undo")
        .attr("role", "status")
        .with(el("span").own_text(&speech::say(&text)))
        .with(undo_button().tap(undo))
}

fn opened(desk: Desk, id: String, removed: RwSignal<Option<GoneJob>>) -> Piece {
    // Its working copy comes back, where it had made room for others.
    store::touch(&id);
    let is_at_hand = |job: Job| !job.invented && !job.is_put_away();
    if untrack(|| desk.job(&id)).is_some_and(is_at_hand) {
        // Today's loose notes are where numbers go without a job: picked, they would be tomorrow's too.
        let loose = untrack(|| desk.todays_loose_notes());
        let at_hand = Some(id.clone()).filter(|id| loose.as_ref() != Some(id));
        desk.set(|settings| settings.job = at_hand);
    }
    let id = StoredValue::new(id);
    let job = Memo::new(move |_| id.with_value(|id| desk.job(id)).map(Arc::new));
    let done = RwSignal::new(Vec::new());
    let read = move |read: fn(&Job) -> String| job.with(|job| job.as_deref().map(read));
    let heading = move || read(|job| speech::say(&job.heading())).unwrap_or_default();
    let place = move || read(|job| job.place.clone()).unwrap_or_default();
    let invented = job.with_untracked(|job| job.as_ref().is_some_and(|job| job.invented));
    let is_held = move || id.with_value(|id| speech::say(&held(desk, id)));
    // What a person is writing about a mark takes no line of the list from under the thumb: the
    // lines are drawn anew when something else changes, or when the writing is closed.
    let opened = RwSignal::new(None::<Mark>);
    let lines = Memo::new(move |_| {
        opened.with(|opened| job.with(|job| Some(as_opened(job.as_ref()?, opened.as_ref()))))
    });
    let is_first = Cell::new(true);
    let marks = live(move || {
        // Read, not only tracked: a memo that nobody has read hears of nothing.
        lines.with(|_| ());
        // Lines drawn anew are closed.
        if opened.with_untracked(Option::is_some) {
            opened.set(None);
        }
        job.with_untracked(|job| {
            job.as_ref().map(|job| {
                done.track();
                let first = is_first.replace(false);
                untrack(|| marks(desk, job, done, opened, first))
            })
        })
    });
    let section = el("section")
        .attr("aria-labelledby", "marks")
        .with(el("h2").id("marks").say(&w::SAVED_NUMBERS))
        .with(marks)
        .with((!invented).then(|| work_out(desk, id)));
    Piece::all([
        h1().own().text_live(heading).into(),
        el("p").class("place").own().text_live(place).into(),
        if invented { demo_says(desk) } else { aside::of_job(desk, id) },
        if invented { Piece::NONE } else { present(desk, id) },
        if invented { Piece::NONE } else { el("p").class("quiet held").text_live(is_held).into() },
        doors(&id.get_value()).into(),
        section.into(),
        if invented { Piece::NONE } else { terms(desk, id, job, removed).into() },
    ])
}

/// What is made of all numbers of the job.
fn doors(id: &str) -> El {
    let door = |address: &str, phrase| el("a").class("chip").attr("href", address).say(phrase);
    let sheets = Who::ALL.map(|who| door(&route::sheet(id, who), who.name()));
    el("nav")
        .named(&speech::phrase(&w::OF_ALL_NUMBERS))
        .with(
            el("p")
                .class("chips")
                .with(door(&route::ready(id), &w::READY))
                .with(door(&route::buying(id), &w::TO_BUY)),
        )
        .with(el("p").class("quiet").say(&w::TURNOVER))
        .with(el("p").class("chips").with_all(sheets))
}

/// How safe the job is, as it is now.
fn held(desk: Desk, id: &str) -> Text {
    match desk.held(id) {
        Held::Soon => say!(w::JOB_SAVING),
        Held::Once if !store::mirror_works() => say!(w::JOB_ONLY_ONCE),
        Held::Once => say!(w::JOB_ONCE),
        Held::Twice => say!(w::JOB_TWICE),
        Held::Away => say!(w::JOB_AWAY),
        Held::Not(trouble) => trouble.says(),
    }
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

/// The way to the calculators, with this job as the one that numbers are saved to.
fn work_out(desk: Desk, id: StoredValue<String>) -> El {
    let doors = move |entry: &'static catalog::Entry| {
        let to_this = move || {
            desk.set(|settings| settings.job = Some(id.get_value()));
            store::detach_draft(entry.id, &id.get_value());
        };
        let door = el("a").class("chip").attr("href", &route::calculator(entry.id));
        door.say(entry.name).tap(to_this)
    };
    let trades = Trade::ALL.iter().map(|trade| {
        let open = RwSignal::new(false);
        let details = el("details").with(el("summary").say(trade.name()));
        let node = details.node().clone();
        let doors = move || {
            let theirs = catalog::ALL.iter().filter(|entry| entry.trade == *trade);
            el("div").class("chips").with_all(theirs.map(doors))
        };
        details
            .with(when(move || open.get(), doors))
            .on("toggle", move |_| open.set(node.has_attribute("open")))
    });
    el("div").with(el("h3").say(&w::ADD_TO_JOB)).with_all(trades)
}

/// A job in which the mark that is being written about says what it said when that was opened.
fn as_opened(job: &Arc<Job>, opened: Option<&Mark>) -> Arc<Job> {
    let Some(opened) = opened else { return Arc::clone(job) };
    let mut job = Job::clone(job);
    if let Some(mark) = job.marks.iter_mut().find(|mark| mark.id == opened.id) {
        let Mark { title, spot, note, clock, .. } = opened.clone();
        (mark.title, mark.spot, mark.note, mark.clock) = (title, spot, note, clock);
    }
    Arc::new(job)
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
    job: Memo<Option<Arc<Job>>>,
    removed: RwSignal<Option<GoneJob>>,
) -> El {
    let start = job.get_untracked();
    let name = RwSignal::new(start.as_ref().map(|job| job.name.clone()).unwrap_or_default());
    let place = RwSignal::new(start.map(|job| job.place.clone()).unwrap_or_default());
    let seen = StoredValue::new((name.get_untracked(), place.get_untracked()));
    let fault = RwSignal::new(String::new());
    let soon = later(move |_| {
        let (Some(id), Some(name), Some(place)) =
            (id.try_get_value(), name.try_get_untracked(), place.try_get_untracked())
        else {
            return;
        };
        let Some((was, was_at)) = seen.try_get_value() else { return };
        let Some(there) = untrack(|| desk.job(&id)) else { return };
        seen.try_set_value((name.clone(), place.clone()));
        // What wasn't typed here is as another tab may have changed it.
        let name = if name == was { there.name } else { name };
        let place = if place == was_at { there.place } else { place };
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
    let is_away = flag(move || job.with(|job| job.as_ref().is_some_and(|job| job.is_put_away())));
    let put_away = live(move || {
        let (phrase, says) = match is_away.get() {
            true => (&w::TAKE_OUT, ""),
            false => (&w::PUT_AWAY, "yes"),
        };
        let put = move || {
            edit(Edit::Jot { key: PUT_AWAY.to_owned(), says: says.to_owned() });
            // The next number belongs to another.
            let is_this = |job: &Option<String>| id.with_value(|id| job.as_ref() == Some(id));
            if !says.is_empty() {
                desk.set(|to| to.job = to.job.take().filter(|job| !is_this(&Some(job.clone()))));
            }
            focus_soon("#put-away");
        };
        let button = el("button").attr("type", "button").id("put-away").say(phrase).tap(put);
        el("p").class("buttons").with(button)
    });
    let asks = RwSignal::new(false);
    let remove = live(move || {
        if asks.get() {
            return untrack(|| asks_to_remove(desk, id, asks, removed));
        }
        el("button").attr("type", "button").say(&w::REMOVE_JOB).tap(move || asks.set(true))
    });
    el("section")
        .attr("aria-labelledby", "terms")
        .with(el("h2").id("terms").say(&w::RENAME))
        .with(below("job-name", &w::JOB_NAME, field("job-name", LONGEST_NAME, name)))
        .with(below("job-place", &w::JOB_PLACE, field("job-place", LONGEST_PLACE, place)))
        .with(fault_line(fault))
        .with(edition_picker(basis, move |basis| edit(Edit::Basis(basis))))
        .with(units_picker(&w::UNITS, units, move |units| edit(Edit::Units(units))))
        .with(backup::of_one_job(desk, id.get_value()))
        .with(el("p").class("note").say(&w::PUT_AWAY_SAYS))
        .with(put_away)
        .with(el("div").class("buttons").with(remove))
}

/// How much would go with a job, the way to keep it elsewhere first, and the tap that removes it.
fn asks_to_remove(
    desk: Desk,
    id: StoredValue<String>,
    asks: RwSignal<bool>,
    removed: RwSignal<Option<GoneJob>>,
) -> El {
    let count = id.with_value(|id| desk.job(id)).map_or(0, |job| job.marks.len() as i64);
    let question = el("p").attr("tabindex", "-1");
    question.clone().focus_in_place();
    let button = |phrase| el("button").attr("type", "button").say(phrase);
    let remove = move || removed.set(desk.remove_job(&id.get_value()));
    el("div")
        .with(question.text(&speech::say(&say!(w::REMOVE_JOB_ASKS, count))))
        .with(backup::first(desk, Some(id.get_value()), &w::BACK_UP_FIRST))
        .with(
            el("div")
                .class("buttons")
                .with(button(&w::REMOVE).tap(remove))
                .with(button(&w::RESTORE_LEAVE).tap(move || asks.set(false))),
        )
}
