//! A calculator's own headings: shares, what else fits, mends. A row that knows what to put in
//! does so by one tap, and the tap can be taken back in the same place.

use super::headings::{row, titled};
use super::waits;
use crate::elements::{El, Piece, each, el, live, live_text, when};
use crate::question::Question;
use crate::signal::{Memo, RwSignal};
use crate::words as w;
use ledgerboard_core::say;
use ledgerboard_core::sheet::{FOREMOST, Part, PartRow, SCREEN_ONLY, Table, TableRow};
use ledgerboard_core::words::{Phrase, Text, Voice};
use leptos::prelude::*;

/// Between a part's key and its order; no path of a field has it.
const APART: &str = "+";

/// All of them by key, so that what is open stays open.
pub(super) fn parts(question: Question) -> Piece {
    // The headings of the last answer stay while a fault stands.
    let all = Memo::new(move |before: Option<&Vec<String>>| {
        question.worked.with(|worked| match worked {
            Ok(worked) => {
                let mut keys = keys(&worked.sheet.parts);
                keys.retain(|key| !key.starts_with(FOREMOST));
                keys
            }
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

/// Lines of what belongs with the answer that are in view at once.
const IN_VIEW: usize = 4;

/// What belongs with the answer itself, under it: the first lines, and the others by a tap.
pub(super) fn foremost(question: Question) -> Piece {
    let open = RwSignal::new(false);
    live(move || {
        let voice = question.voice();
        question.worked.with(|worked| {
            let parts = &worked.as_ref().ok()?.sheet.parts;
            let part = parts.iter().find(|part| part.key == FOREMOST)?;
            Some(in_view(question, part, open, voice))
        })
    })
}

fn in_view(question: Question, part: &Part, open: RwSignal<bool>, voice: Voice) -> El {
    let lines = |rows: &[PartRow]| {
        let one = |row| line(question, row, FOREMOST, voice);
        el("ul").class("rows").with_all(rows.iter().map(one))
    };
    // One line more is no longer than the words that would stand for it.
    let first = if part.rows.len() > IN_VIEW + 1 { IN_VIEW } else { part.rows.len() };
    let (first, rest) = part.rows.split_at(first);
    let more = (!rest.is_empty()).then(|| {
        let count = say!(w::MORE_LINES, rest.len() as i64, part.rows.len() as i64);
        let details = el("details").class("more");
        let details = if open.get_untracked() { details.attr("open", "") } else { details };
        let node = details.node().clone();
        details
            .with(el("summary").text(&voice.say(&count)))
            .with(lines(rest))
            .on("toggle", move |_| open.set(node.has_attribute("open")))
    });
    let note = part.note.as_ref().map(|note| el("p").class("quiet").text(&voice.say(note)));
    el("div")
        .class("foremost")
        .with(el("h3").text(&voice.say(&part.title)))
        .with(note)
        .with(lines(first))
        .with(more)
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
    let key = StoredValue::new(key);
    let body = move || {
        let here = move || {
            let place = question.undo.with(|undo| undo.as_ref().map(|undo| undo.place.clone()));
            place.is_some_and(|place| key.with_value(|key| *key == place))
        };
        let undo = when(here, move || undo_line(question, &w::USED));
        let rows = live(move || {
            let voice = question.voice();
            let rows = |part: &Part| key.with_value(|key| rows(question, part, key, voice));
            question.at_rest(|worked| match worked {
                Ok(worked) => key.with_value(|key| find(&worked.sheet.parts, key).map(rows)).into(),
                Err(faults) => Piece::from(waits(faults)),
            })
        });
        Piece::all([undo, rows])
    };
    let heading = titled(question, live_text(move || title.get()), body);
    if is_on_screen_only { heading.class("screen-only") } else { heading }
}

fn rows(question: Question, part: &Part, key: &str, voice: Voice) -> Piece {
    let note = part.note.as_ref().map(|note| el("p").class("quiet").text(&voice.say(note)));
    if let Some(shown) = &part.table {
        return Piece::all([note, Some(table(shown, voice))]);
    }
    let rows = part.rows.iter().map(|row| line(question, row, key, voice));
    Piece::all([note, Some(el("ul").class("rows").with_all(rows))])
}

/// Rows and columns, each cell read with the heads of both.
pub(crate) fn table(table: &Table, voice: Voice) -> El {
    let head = |scope: &str, text: &Text| el("th").attr("scope", scope).text(&voice.say(text));
    let heads = table.heads.iter().map(|it| head("col", it));
    let row = |row: &TableRow| {
        let cells = row.cells.iter().map(|cell| el("td").text(&voice.say(cell)));
        el("tr").with(head("row", &row.name)).with_all(cells)
    };
    let table = el("table")
        .class("columns")
        .with(el("thead").with(el("tr").with_all(heads)))
        .with(el("tbody").with_all(table.rows.iter().map(row)));
    // With large letters it is wider than a phone: it is pushed across by itself, by keys too.
    el("div").class("across").attr("tabindex", "0").with(table)
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
    let button = undo_later();
    button.clone().focus_in_place();
    button
}

/// The button of an undo that may have stood there before.
pub(crate) fn undo_later() -> El {
    el("button").attr("type", "button").say(&w::UNDO)
}

/// What was just done, and the tap that takes it back.
pub(crate) fn undo_line(question: Question, done: &'static Phrase) -> El {
    el("p")
        .class("undo")
        .attr("role", "status")
        .with(el("span").say(done))
        .with(undo_button().tap(move || question.take_back()))
}

/// The same in the undo's own words.
pub(crate) fn undo_said(question: Question, button: El) -> El {
    let says = move || {
        question.undo.with(|undo| undo.as_ref().map(|it| it.says.clone()).unwrap_or_default())
    };
    el("p")
        .class("undo")
        .attr("role", "status")
        .with(el("span").text_live(says))
        .with(button.tap(move || question.take_back()))
}

/// The same beside a field that is typed in, which keeps the focus.
pub(crate) fn undo_beside(question: Question) -> El {
    undo_said(question, el("button").attr("type", "button").say(&w::UNDO))
}
