//! Texts that name what stands in other lists of the same question: the names there, one tap each,
//! while such a field is being filled in. A name that isn't there yet can still be typed.

use super::{Place, join};
use crate::elements::{El, Piece, each, el, focus_soon, live_text, when};
use crate::question::Question;
use crate::signal::Memo;
use crate::{speech, words as w};
use ledgerboard_core::fields::{
    Item, Row, each_name, known_as, long_names, names, narrowed, row_at, toggled,
};
use ledgerboard_core::say;
use ledgerboard_core::wire::Node;
use leptos::prelude::untrack;

/// Names that are drawn at a time; of more, those that fit what is typed.
const SHOWN: usize = 12;

fn leaf(question: Question, path: &str) -> String {
    question.draft.with(|draft| draft.at(path).and_then(Node::leaf).unwrap_or_default())
}

/// The names of several words that a field may hold.
fn long(question: Question, row: &'static Row) -> Vec<String> {
    question.draft.with(|draft| long_names(question.entry.rows, draft, row))
}

/// What is offered at a field, and how many more there are.
fn offered(question: Question, row: &'static Row, path: &str) -> (Vec<String>, usize) {
    let all = question.draft.with(|draft| names(question.entry.rows, draft, row, path));
    let typed = leaf(question, path);
    let typed = match row.several {
        // Of several the one that is being typed: the last, with nothing behind it yet.
        true if typed.ends_with([' ', ',', ';']) => "",
        true => each_name(&typed, &long(question, row)).last().copied().unwrap_or_default(),
        false => typed.as_str(),
    };
    narrowed(all, typed, SHOWN)
}

/// The names for a field, while it is the one that is being filled in.
pub(super) fn choices(question: Question, row: &'static Row, place: &Place) -> Piece {
    let path = place.path.clone();
    let title = speech::say(&say!(w::CHOOSE, &*place.label));
    let is_open = move || question.naming.with(|open| *open == path);
    let path = place.path.clone();
    when(is_open, move || opened(question, row, path.clone(), &title))
}

fn opened(question: Question, row: &'static Row, path: String, title: &str) -> El {
    let at = path.clone();
    let all = Memo::new(move |_| offered(question, row, &at));
    let at = path.clone();
    let chips = each(
        move || all.with(|all| all.0.clone()),
        move |name, _| chip(question, row, at.clone(), name.to_owned()),
    );
    let more = live_text(move || match all.with(|all| all.1) {
        0 => String::new(),
        more => speech::say(&say!(w::MORE_NAMES, more as i64)),
    });
    el("div")
        .class("names")
        .attr("role", "group")
        .attr("aria-label", title)
        .attr("data-names", &path)
        .with(el("div").class("chips").with(chips))
        .with(el("p").class("note").with(more))
}

fn chip(question: Question, row: &'static Row, path: String, name: String) -> El {
    let (at, known) = (path.clone(), known_as(&name));
    let is_named = move || {
        let text = leaf(question, &at);
        match row.several {
            true => {
                let all = each_name(&text, &long(question, row));
                all.into_iter().any(|it| known_as(it) == known)
            }
            false => known_as(&text) == known,
        }
    };
    el("button")
        .attr("type", "button")
        .class("chip")
        .own_text(&name)
        .attr_live("aria-pressed", move || if is_named() { "true" } else { "false" }.to_owned())
        .tap(move || {
            let text = match row.several {
                true => untrack(|| toggled(&leaf(question, &path), &name, &long(question, row))),
                false => name.clone(),
            };
            question.put(&path, Node::Text(text));
            if !row.several {
                go_on(question, &path);
            }
        })
}

/// From a name that was chosen to the next of its item that is still empty.
fn go_on(question: Question, path: &str) {
    let mut parts = path.splitn(3, '.');
    let (Some(list), Some(at), Some(key)) = (parts.next(), parts.next(), parts.next()) else {
        return;
    };
    let rows = question.entry.rows;
    let Some(ledgerboard_core::fields::Kind::List(item)) = row_at(rows, list).map(|row| row.kind)
    else {
        return;
    };
    let item_path = join(list, at);
    let next = question.draft.with_untracked(|root| {
        let here = root.at(&item_path)?;
        let behind = item.rows.iter().skip_while(|row| row.key != key).skip(1);
        behind.into_iter().find(|row| {
            let text = here.get(row.key).and_then(Node::leaf).unwrap_or_default();
            !row.names.is_empty()
                && !row.several
                && text.is_empty()
                && row.when.holds(item.rows, here, root)
        })
    });
    if let Some(next) = next {
        begin(question, next, &join(&item_path, next.key));
    }
}

/// A new item waits for its name: the focus goes there, and where it is one of a few names, to the
/// first of these, so that no keyboard comes up.
pub(super) fn begin_item(question: Question, item: &'static Item, list: &str, at: usize) {
    let Some(first) = super::list::called(item) else { return };
    let path = [list, &at.to_string(), first.key].join(".");
    let named = question.draft.with_untracked(|root| root.at(&path).and_then(Node::leaf));
    if named.is_none_or(|name| name.is_empty()) {
        begin(question, first, &path);
    }
}

fn begin(question: Question, row: &'static Row, path: &str) {
    let rows = question.entry.rows;
    let count = question.draft.with_untracked(|root| names(rows, root, row, path).len());
    let field = ["[id=\"", path, "\"]"].concat();
    if row.names.is_empty() {
        focus_soon(&field);
        return;
    }
    question.naming.set(path.to_owned());
    match count {
        1..=SHOWN => focus_soon(&["[data-names=\"", path, "\"] .chip"].concat()),
        _ => focus_soon(&field),
    }
}
