//! What a person writes about a kept number: title, room or spot, note. Kept as it is typed.

use crate::desk::Desk;
use crate::elements::{El, el};
use crate::later::later;
use crate::signal::RwSignal;
use crate::store::MarkPlace;
use crate::{speech, words as w};
use ledgerboard_core::job::{LONGEST_NOTE, LONGEST_SPOT, LONGEST_TITLE, Mark};
use ledgerboard_core::words::Phrase;
use leptos::prelude::*;

/// The three fields of a mark.
pub(crate) fn details(desk: Desk, place: MarkPlace) -> Option<El> {
    let job = untrack(|| desk.job(&place.job))?;
    let seen = job.mark(&place.mark)?.clone();
    let Mark { title, spot, note, .. } = seen.clone();
    let spots = job.newest_first_by_spot();
    let spots: Vec<String> = spots.iter().map(|spot| spot.name.to_owned()).collect();
    let (title, spot, note) = (RwSignal::new(title), RwSignal::new(spot), RwSignal::new(note));
    let fault = RwSignal::new(String::new());
    let (place, seen) = (StoredValue::new(place), StoredValue::new(seen));
    let soon = later(move |_| {
        let Some(MarkPlace { job, mark: id }) = place.try_get_value() else { return };
        let (Some(seen_so), Some(title), Some(spot), Some(note)) = (
            seen.try_get_value(),
            title.try_get_untracked(),
            spot.try_get_untracked(),
            note.try_get_untracked(),
        ) else {
            return;
        };
        // Worked anew meanwhile on this page: only what a person wrote is changed here.
        let there = untrack(|| desk.job(&job)).and_then(|job| job.mark(&id).cloned());
        let now = there.unwrap_or_else(|| seen_so.clone());
        let Mark { title: t, spot: s, note: n, .. } = &seen_so;
        let before = Mark { title: t.clone(), spot: s.clone(), note: n.clone(), ..now.clone() };
        if (&before.title, &before.spot, &before.note) != (&title, &spot, &note) {
            let ours = Mark { title, spot, note, ..now };
            let made = desk.change(&job, &before, ours.clone());
            // As it stands in the fields, whatever another tab made of it.
            let fault_now = made.map(|_| seen.try_set_value(ours)).err();
            fault.set(fault_now.map(|it| speech::say(&it.says())).unwrap_or_default());
        }
    });
    let known = spots.iter().filter(|spot| !spot.is_empty());
    let known = known.map(|spot| el("option").attr("value", spot).own());
    let field = |id, longest, text: RwSignal<String>, tag| {
        text_field(id, longest, tag).value_live(move || text.get()).on("input", move |event| {
            text.set(event_target_value(&event));
            soon();
        })
    };
    let title = field("mark-title", LONGEST_TITLE, title, "input");
    let spot = field("mark-spot", LONGEST_SPOT, spot, "input");
    let is_empty = note.with_untracked(String::is_empty);
    let noted = if is_empty { el("details") } else { el("details").attr("open", "") };
    let note = field("mark-note", LONGEST_NOTE, note, "textarea").attr("rows", "2");
    let note = note.named(&speech::phrase(&w::NOTE));
    Some(
        el("div")
            .class("details")
            .with(below("mark-title", &w::TITLE, title))
            .with(below("mark-spot", &w::SPOT, spot.attr("list", "spots")))
            .with(el("datalist").id("spots").with_all(known))
            .with(noted.with(el("summary").say(&w::NOTE)).with(note))
            .with(fault_line(fault)),
    )
}

/// A field for a person's own words.
pub(crate) fn text_field(id: &str, longest: usize, tag: &str) -> El {
    let field = el(tag).id(id).own().attr("autocomplete", "off");
    let field = if tag == "input" { field.attr("type", "text") } else { field };
    field.attr("maxlength", &longest.to_string())
}

/// A field under its label.
pub(crate) fn below(id: &str, label: &'static Phrase, field: El) -> El {
    let label = el("label").class("label").attr("for", id).say(label);
    el("div").class("field stacked").with(label).with(field)
}

/// Why the last change was refused.
pub(super) fn fault_line(fault: RwSignal<String>) -> El {
    el("p").class("fault").attr("aria-live", "polite").text_live(move || fault.get())
}
