//! A calculator's own headings: shares, what else fits, mends. A row that knows what to put in
//! does so by one tap, and the tap can be taken back in the same place.

use super::headings::{row, titled};
use super::waits;
use crate::elements::{El, Piece, each, el, live, live_text, when};
use crate::question::Question;
use crate::signal::Memo;
use crate::words as w;
use ledgerboard_core::say;
use ledgerboard_core::sheet::{Part, PartRow, SCREEN_ONLY};
use ledgerboard_core::words::{Phrase, Voice};

/// Between a part's key and its order; no path of a field has it.
const APART: &str = "+";

/// All of them by key, so that what is open stays open.
pub(super) fn parts(question: Question) -> Piece {
    // The headings of the last answer stay while a fault stands.
    let all = Memo::new(move |before: Option<&Vec<String>>| {
        question.worked.with(|worked| match worked {
            Ok(worked) => keys(&worked.sheet.parts),
            Err(_) => before.cloned().unwrap_or_default(),
        })
    });
    each(move || all.get(), move |key, _| one(question, key.to_owned()))
}

/// The key of each part; those of the same name are told apart by their order.
fn keys(parts: &[Part]) -> Vec<String> {
    let before = |at: usize| parts[..at].iter().filter(|part| part.key == parts[at].key).count();
    (0..parts.len()).map(|at| [parts[at].key, APART, &before(at).to_string()].concat()).collect()
}

/// Undo for a tap whose heading is gone: what it mended is no longer wrong.
pub(crate) fn orphaned_undo(question: Question) -> Piece {
    let orphaned = move || {
        let Some(place) = question.undo.with(|undo| undo.as_ref().map(|undo| undo.place.clone()))
        else {
            return false;
        };
        question.worked.with(|worked| {
            worked
                .as_ref()
                .is_ok_and(|it| place.contains(APART) && find(&it.sheet.parts, &place).is_none())
        })
    };
    when(orphaned, move || undo_line(question, &w::USED))
}

fn find<'a>(parts: &'a [Part], key: &str) -> Option<&'a Part> {
    keys(parts).iter().position(|it| it == key).map(|at| &parts[at])
}

fn one(question: Question, key: String) -> El {
    let is_on_screen_only = key.starts_with(SCREEN_ONLY);
    let name = key.clone();
    let title = Memo::new(move |before: Option<&String>| {
        let voice = question.voice();
        let found = question.worked.with(|worked| {
            let part = find(&worked.as_ref().ok()?.sheet.parts, &name)?;
            Some(voice.say(&part.title))
        });
        found.or_else(|| before.cloned()).unwrap_or_default()
    });
    let place = key.clone();
    let undone =
        move || question.undo.with(|undo| undo.as_ref().is_some_and(|undo| undo.place == place));
    let body = live(move || {
        let voice = question.voice();
        question.worked.with(|worked| match worked {
            Ok(worked) => {
                find(&worked.sheet.parts, &key).map(|part| rows(question, part, &key, voice)).into()
            }
            Err(faults) => Piece::from(waits(faults)),
        })
    });
    let undo = when(undone, move || undo_line(question, &w::USED));
    let heading = titled(live_text(move || title.get()), Piece::all([undo, body]));
    if is_on_screen_only { heading.class("screen-only") } else { heading }
}

fn rows(question: Question, part: &Part, key: &str, voice: Voice) -> Piece {
    let note = part.note.as_ref().map(|note| el("p").class("quiet").text(&voice.say(note)));
    let rows = part.rows.iter().map(|row| line(question, row, key, voice));
    Piece::all([note, Some(el("ul").class("rows").with_all(rows))])
}

fn line(question: Question, part: &PartRow, key: &str, voice: Voice) -> El {
    let name = voice.say(&part.name);
    let button = (!part.puts.is_empty()).then(|| {
        let (puts, key) = (part.puts.clone(), key.to_owned());
        el("button")
            .attr("type", "button")
            .named(&voice.say(&say!(w::USE_ROW, &*name)))
            .say(&w::USE)
            .tap(move || question.put_all(&key, &puts))
    });
    row(&name, &voice.say(&part.value)).with(button)
}

/// The button of an undo. What was tapped has gone, so that the focus goes here; the page stays
/// where it is.
pub(crate) fn undo_button() -> El {
    let button = el("button").attr("type", "button").say(&w::UNDO);
    button.clone().focus_in_place();
    button
}

/// What was just done, and the tap that takes it back.
pub(crate) fn undo_line(question: Question, done: &'static Phrase) -> El {
    el("p")
        .class("undo")
        .attr("role", "status")
        .with(el("span").say(done))
        .with(undo_button().tap(move || question.take_back()))
}
