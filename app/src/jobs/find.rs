//! Any kept number, found by typing a few letters of it.

use super::details::{below, text_field};
use super::mark_line::shown;
use crate::desk::Desk;
use crate::drawing::{held, verdict};
use crate::elements::{El, Piece, el, focus_soon, live};
use crate::later::{Because, later};
use crate::signal::RwSignal;
use crate::store::{self, MarkPlace};
use crate::{route, speech, words as w, works};
use ledgerboard_core::catalog;
use ledgerboard_core::job::{self, Found, LONGEST_TITLE};
use ledgerboard_core::say;
use ledgerboard_core::words::Phrase;
use leptos::prelude::*;

/// The most that are listed: who needs more types another letter.
const MOST: usize = 20;

/// The field, and under it what it finds. Who opens one and comes back finds both as they were left,
/// and who reloads too: the browser keeps what was typed with this step of its history.
pub(super) fn find(desk: Desk) -> El {
    let sought = desk.sought.with_untracked(|sought| sought.typed.clone());
    let sought = if sought.is_empty() { route::noted().unwrap_or_default() } else { sought };
    desk.sought.update(|it| it.typed.clone_from(&sought));
    if !sought.is_empty() {
        route::note(&sought);
    }
    let typed = RwSignal::new(sought.clone());
    let asked = RwSignal::new(sought);
    let keep = move || {
        let typed = typed.get_untracked();
        desk.sought.update(|sought| sought.typed = typed);
    };
    let soon = later(move |because| {
        let typed = typed.try_get_untracked().filter(|_| because != Because::Left);
        if let Some(typed) = typed {
            route::note(&typed);
            asked.set(typed);
        }
    });
    let field = text_field("find", LONGEST_TITLE, "input")
        .attr("enterkeyhint", "search")
        .value_live(move || typed.get())
        .on("input", move |event| {
            typed.set(event_target_value(&event));
            keep();
            soon();
        });
    let results = live(move || {
        let words = asked.get();
        if words.trim().is_empty() {
            return Piece::NONE;
        }
        desk.jobs.with(|jobs| {
            let (found, count) = job::find(jobs, &words, MOST);
            let over = found.iter().filter(|it| it.may_be_short()).map(place_of).collect();
            let known = words_known(desk, over);
            let lines = el("ul").with_all(found.iter().map(|it| line(it, known)));
            let says = match count > found.len() {
                true => say!(w::FOUND_SOME, found.len() as i64, count as i64),
                false => say!(w::FOUND_COUNT, count as i64),
            };
            let status = el("p").class("quiet").attr("role", "status").text(&speech::say(&says));
            let close = el("button").attr("type", "button").class("quiet").say(&w::CLOSE);
            let close = close.tap(move || {
                typed.set(String::new());
                asked.set(String::new());
                keep();
                route::note("");
                focus_soon("#find");
            });
            Piece::all([el("div").class("row").with(status).with(close), lines])
        })
    });
    el("div").class("find").with(below("find", &w::FIND_NUMBER, field)).with(results)
}

fn place_of(found: &Found<'_>) -> MarkPlace {
    MarkPlace { job: found.job.id.clone(), mark: found.mark.id.clone() }
}

/// The words that are known once a number is worked again.
type Known = RwSignal<Vec<(MarkPlace, &'static Phrase)>>;

/// Works numbers for their words, in slices: the first of them before anything is shown.
fn words_known(desk: Desk, over: Vec<MarkPlace>) -> Known {
    let known: Known = RwSignal::new(Vec::new());
    let at = StoredValue::new(0);
    let part = move || {
        let (mut more, mut said) = (works::slice(), Vec::new());
        // The list is drawn anew: what was begun for it is dropped.
        let Some(mut next) = at.try_get_value() else { return false };
        while let Some(place) = over.get(next).filter(|_| more()) {
            // What stops the page is known by its name the next time.
            let name = store::job_name(&place.job);
            store::opening(&name);
            desk.read_job(&place.job, &mut |job| {
                let word = job.mark(&place.mark).map(|mark| Found { job, mark }.word());
                said.extend(word.map(|word| (place.clone(), word)));
            });
            store::opened(&name);
            next += 1;
        }
        at.try_set_value(next);
        known.update(|known| known.extend(said));
        next < over.len()
    };
    if part() {
        works::in_slices(part);
    }
    known
}

fn line(found: &Found<'_>, known: Known) -> El {
    let Found { job, mark } = *found;
    let kept = &mark.kept;
    let voice = speech::voice(job.units);
    let name = catalog::find(&mark.calculator).map(|entry| speech::phrase(entry.name));
    let heading = speech::say(&job.heading());
    let place = [name.as_deref().unwrap_or_default(), mark.spot.trim(), &*heading];
    let place: Vec<&str> = place.into_iter().filter(|part| !part.is_empty()).collect();
    let place = place.join(" · ");
    let says = match kept.is_held() {
        true => Some(held()),
        false if kept.is_bare() => None,
        false => {
            let (place, stood, so_far) =
                (place_of(found), kept.verdict(), kept.word(&mark.calculator));
            Some(el("span").with(live(move || {
                let said = |known: &Vec<(MarkPlace, _)>| {
                    known.iter().find(|(it, _)| *it == place).map(|(_, word)| *word)
                };
                verdict(stood, known.with(said).unwrap_or(so_far))
            })))
        }
    };
    let link = el("a")
        .class("mark-line")
        .attr("href", &route::mark(&job.id, &mark.id))
        .with(el("span").class("mark-title").own_text(&mark.title))
        .text(" ")
        .with(el("span").class("value").text(&voice.say(&shown(&kept.answer))))
        .text(" ")
        .with(says);
    el("li").class("mark").with(link).with(el("p").class("quiet").own_text(&place))
}
