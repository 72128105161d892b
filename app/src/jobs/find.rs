//! Any kept number, found by typing a few letters of it.

use super::details::{below, text_field};
use super::mark_line::{shown, word_of};
use crate::desk::Desk;
use crate::drawing::{held, verdict};
use crate::elements::{El, Piece, el, focus_soon, live};
use crate::later::{Because, later};
use crate::signal::RwSignal;
use crate::{route, speech, words as w};
use ledgerboard_core::catalog;
use ledgerboard_core::job::{self, Found, LONGEST_TITLE};
use ledgerboard_core::say;
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
        if let (Because::Paused, Some(typed)) = (because, typed.try_get_untracked()) {
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
            let voice = speech::voice(desk.settings.with(|settings| settings.units));
            let (found, count) = job::find(jobs, &words, MOST, voice);
            let lines = el("ul").with_all(found.iter().map(line));
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

fn line(found: &Found<'_>) -> El {
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
        false => Some(verdict(kept.verdict(), word_of(&mark.calculator, kept))),
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
