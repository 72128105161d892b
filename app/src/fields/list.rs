//! A list: one tap adds what is common, each item is one line, and what was removed comes back by
//! a tap in the same place.

use super::choice::picker;
use super::count::stepper;
use super::long::Long;
use super::{Place, asked, folding, join, names, one};
use crate::elements::{El, Piece, each, el, on_change, show_soon, text, when};
use crate::question::Question;
use crate::sheet_view::{undo_button, undo_said};
use crate::signal::{Memo, RwSignal};
use crate::{speech, words as w};
use ledgerboard_core::fields::{Item, Kind, Row, hanging};
use ledgerboard_core::say;
use ledgerboard_core::wire::Node;
use ledgerboard_core::words::Phrase;
use leptos::prelude::*;

/// The leaf that a preset raises when an equal item is there.
const COUNT: &str = "count";

/// A list of more items than this shows each as one line of words, and its fields when it is
/// tapped: five hundred cables are as quick to type in as five.
const LONG: usize = 12;

pub(super) fn list(question: Question, item: &'static Item, place: &Place) -> El {
    let path = StoredValue::new(place.path.clone());
    let len = move || question.draft.with(|draft| path.with_value(|path| draft.items(path).len()));
    // A place in the list has a name that goes with what stands there, so that a line is drawn
    // anew only when another item has moved into its place.
    let names = RwSignal::new((0..untrack(len)).map(|at| at.to_string()).collect::<Vec<_>>());
    let next = StoredValue::new(untrack(len));
    let fresh = move || {
        next.update_value(|next| *next += 1);
        next.get_value().to_string()
    };
    let fit = move || {
        let len = untrack(len);
        names.update(|names| {
            names.truncate(len);
            names.resize_with(len, fresh);
        });
    };
    let count = Memo::new(move |_| len());
    on_change(move || count.track(), fit);
    let long = Long::follow(question, place.path.clone());
    // What was there when the list was drawn is in words, if it is long; what a tap adds is open.
    let drawn = StoredValue::new(untrack(len));
    let removed = move |at: usize| {
        drawn.update_value(|drawn| *drawn = untrack(len));
        names.update(|names| {
            names.remove(at);
            names.iter_mut().skip(at).for_each(|name| *name = fresh());
        });
    };
    let lines = each(
        move || names.get(),
        move |_, at| {
            let path = path.get_value();
            if untrack(len) > LONG && at < drawn.get_value() {
                return in_words(question, item, path, at, removed, &long);
            }
            el("li").class("item").with(line(question, item, &path, at, removed))
        },
    );
    let undoing = move || {
        question
            .undo
            .with(|undo| path.with_value(|path| undo.as_ref().map(|it| &it.place) == Some(path)))
    };
    let inside = [
        super::note(question, place).into(),
        el("ul").with(lines).into(),
        adders(question, item, &place.path).into(),
        when(undoing, move || undo_said(question, undo_button())),
    ];
    // What the sample has none of is seldom wanted: it is folded while there is none.
    if question.entry.sample().items(&place.path).is_empty() {
        let within = [&place.path, "."].concat();
        let name = place.path.clone();
        return folding(
            question,
            move || len() > 0,
            move |fault| fault == name || fault.starts_with(&within),
        )
        .class("list")
        .id(&place.path)
        .with(el("summary").with(el("span").class("label").text(&place.label)))
        .with_all(inside);
    }
    el("fieldset")
        .class("list")
        .id(&place.path)
        .attr("tabindex", "-1")
        .with(el("legend").class("label").text(&place.label))
        .with_all(inside)
}

/// One item of a long list, in words; a tap opens its fields in the same place, and so does a
/// fault in one of them.
fn in_words(
    question: Question,
    item: &'static Item,
    list: String,
    at: usize,
    removed: impl Fn(usize) + Copy + Send + Sync + 'static,
    long: &Long,
) -> El {
    let summary = el("summary").own();
    let open = RwSignal::new(false);
    let details = el("details");
    let node = details.node().clone();
    long.watch(at, said(item, at), &summary, &details);
    let details = details.class("in-words").with(summary).with(when(
        move || open.get(),
        move || el("div").class("item").with(line(question, item, &list, at, removed)),
    ));
    el("li").with(details.on("toggle", move |_| open.set(node.has_attribute("open"))))
}

/// An item in words: what it is called, its main choice, and what else is out of the ordinary.
fn said(item: &'static Item, at: usize) -> impl Fn(&Node, &Node) -> String {
    let numbered = numbered(item, at);
    let usual = (item.blank)();
    let (name, main) = (called(item), main(item));
    let is = |row: Option<&Row>, other: &Row| row.is_some_and(|row| row.key == other.key);
    move |root, here| {
        let name = name.map(|row| leaf(here, row.key)).filter(|name| !name.is_empty());
        let mut all = vec![name.unwrap_or_else(|| numbered.clone())];
        for row in item.rows.iter().filter(|row| !is(called(item), row)) {
            let leaf = leaf(here, row.key);
            let differs = leaf != self::leaf(&usual, row.key);
            if (is(main, row) || differs) && row.when.holds(item.rows, here, root) {
                all.push(as_said(row, leaf));
            }
        }
        all.join(", ")
    }
}

/// What is said of an item that is gone, and of what still names it.
fn gone(hanging: &[(&'static Phrase, i64)]) -> String {
    /// Told by their numbers.
    const TOLD: usize = 6;
    if hanging.is_empty() {
        return speech::phrase(&w::REMOVED);
    }
    let told = hanging.iter().take(TOLD);
    let told: Vec<_> = told.map(|(name, at)| speech::say(&say!(w::NUMBERED, *name, *at))).collect();
    let told = told.join(", ");
    speech::say(&match hanging.len().saturating_sub(TOLD) {
        0 => say!(w::STILL_NAMED, told),
        more => say!(w::STILL_NAMED_MORE, told, more as i64),
    })
}

fn numbered(item: &Item, at: usize) -> String {
    speech::say(&say!(w::NUMBERED, item.name, at as i64 + 1))
}

fn leaf(node: &Node, key: &str) -> String {
    node.get(key).and_then(Node::leaf).unwrap_or_default()
}

/// What an item is called, where that is asked first.
pub(super) fn called(item: &'static Item) -> Option<&'static Row> {
    item.rows.first().filter(|row| matches!(row.kind, Kind::Text(_)))
}

/// Whether a row says how many there are of an item, which more equal ones add to.
fn is_counted(row: &Row) -> bool {
    row.key == COUNT && matches!(row.kind, Kind::Count { .. })
}

/// What kind of item it is.
fn main(item: &'static Item) -> Option<&'static Row> {
    item.rows.iter().find(|row| matches!(row.kind, Kind::Choice(_)))
}

/// One item: what it is called, its main choice and its count, then the rest folded.
fn line(
    question: Question,
    item: &'static Item,
    list: &str,
    at: usize,
    removed: impl Fn(usize) + 'static,
) -> Piece {
    let path = join(list, &at.to_string());
    let numbered = numbered(item, at);
    let count = item.rows.iter().find(|row| is_counted(row));
    let in_view = [called(item), main(item), count];
    let mut in_line = Vec::new();
    let mut notes = Vec::new();
    for row in in_view.into_iter().flatten() {
        let mut place = Place::new(row, &path);
        place.label = speech::say(&say!(w::PAIR, &*numbered, &*place.label));
        in_line.push(match row.kind {
            Kind::Choice(picks) => picker(question, picks, &place).named(&place.label),
            Kind::Count { least, most, .. } => stepper(question, &place, &place.label, least, most),
            Kind::Text(_) => {
                super::name_input(question, row, &place).class("called").named(&place.label)
            }
            _ => continue,
        });
        notes.push(super::note(question, &place).into());
        if let Kind::Text(_) = row.kind {
            notes.push(names::choices(question, row, &place));
            notes.push(super::undone_beside(question, &place));
        }
    }
    let shown = in_view.into_iter().flatten().map(|row| join(&path, row.key));
    notes.push(super::still_sample(question, &path, shown.collect()));
    let rest =
        item.rows.iter().filter(|row| !in_view.into_iter().flatten().any(|it| it.key == row.key));
    let list = list.to_owned();
    let remove = el("button")
        .attr("type", "button")
        .class("quiet")
        .named(&speech::say(&say!(w::REMOVE_ITEM, item.name, at as i64 + 1)))
        .say(&w::REMOVE)
        .tap(move || {
            let mut left = question.draft.with_untracked(|draft| draft.items(&list).to_vec());
            if at < left.len() {
                let hanging = question
                    .draft
                    .with_untracked(|draft| hanging(question.entry.rows, draft, &list, at));
                left.remove(at);
                removed(at);
                question.put_without(&list, at, left);
                // What still names it, and the way back, may stand past the end of a long list.
                show_soon(".undo");
                question.undo.update(|undo| {
                    if let Some(undo) = undo {
                        undo.says = gone(&hanging);
                    }
                });
            }
        });
    let called_forward = rest.clone().filter(|row| row.foremost.is_some()).map(|row| {
        let (asked, path) = (asked(question, item.rows, row, &path), path.clone());
        when(
            move || asked() && question.draft.with(|root| row.is_foremost(root)),
            move || one(question, item.rows, row, &path),
        )
    });
    Piece::all([
        el("span").class("item-line").with_all(in_line).into(),
        Piece::all(notes),
        Piece::all(called_forward),
        el("span")
            .class("item-foot")
            .with(folded(question, item, rest.collect(), path.clone()))
            .with(remove)
            .into(),
    ])
}

/// An item's other fields. What differs from a new item is said without opening them.
fn folded(question: Question, item: &'static Item, rest: Vec<&'static Row>, path: String) -> Piece {
    let all: Vec<_> = rest.iter().map(|row| inside(question, item, row, &path)).collect();
    when(
        move || all.iter().any(|inside| inside()),
        move || {
            let keys: Vec<_> = rest.iter().map(|row| join(&path, row.key)).collect();
            let summary = differences(question, item, rest.clone(), path.clone());
            folding(question, || false, move |fault| keys.iter().any(|key| key == fault))
                .class("folded")
                .with(summary)
                .with_all(rest.iter().map(|row| {
                    let path = path.clone();
                    match row.foremost {
                        None => one(question, item.rows, row, &path),
                        Some(_) => {
                            let row = *row;
                            let inside = inside(question, item, row, &path);
                            when(inside, move || one(question, item.rows, row, &path))
                        }
                    }
                }))
        },
    )
}

/// Whether a row stands under the fold as things are: it is asked, and nothing calls it forward.
fn inside(
    question: Question,
    item: &'static Item,
    row: &'static Row,
    path: &str,
) -> impl Fn() -> bool + Send + Sync + use<> {
    let asked = asked(question, item.rows, row, path);
    move || asked() && !question.draft.with(|root| row.is_foremost(root))
}

fn differences(
    question: Question,
    item: &'static Item,
    rest: Vec<&'static Row>,
    path: String,
) -> El {
    let usual = (item.blank)();
    let said = text(move || {
        question.draft.with(|root| {
            let Some(here) = root.at(&path) else { return String::new() };
            let other = rest.iter().filter(|row| {
                leaf(here, row.key) != leaf(&usual, row.key)
                    && row.when.holds(item.rows, here, root)
                    && !row.is_foremost(root)
            });
            other.map(|row| as_said(row, leaf(here, row.key))).collect::<Vec<_>>().join(", ")
        })
    });
    // On paper, where nothing can be opened, only what it says is of use.
    el("summary").class_when("screen-only", move || said.with(String::is_empty)).text_live(
        move || {
            let said = said.get();
            if said.is_empty() { speech::phrase(&w::MORE_OF_ITEM) } else { said }
        },
    )
}

/// A leaf as it is called.
fn as_said(row: &Row, leaf: String) -> String {
    match row.kind {
        Kind::Choice(picks) => match picks.iter().find(|pick| pick.key == leaf) {
            Some(pick) => speech::phrase(pick.label),
            None => leaf,
        },
        Kind::Flag => {
            let says = if leaf == "yes" { &w::YES } else { &w::NO };
            speech::say(&say!(w::PAIR, row.label, says))
        }
        _ => speech::say(&say!(w::PAIR, row.label, leaf)),
    }
}

/// Buttons that add an item, or one more of an equal one.
fn adders(question: Question, item: &'static Item, list: &str) -> El {
    let path = list.to_owned();
    let is_full = move || question.draft.with(|draft| draft.items(&path).len() >= item.most);
    let button = |label: &str, add: Node| {
        let list = list.to_owned();
        el("button")
            .attr("type", "button")
            .class("chip")
            .named(&speech::say(&say!(w::ADD, label)))
            .text("+ ")
            .text(label)
            .tap(move || {
                let put = question.draft.with_untracked(|draft| added(draft, &list, item, &add));
                if let Some((path, value)) = put {
                    let at = question.draft.with_untracked(|draft| draft.items(&list).len());
                    question.put(&path, value);
                    if path == list {
                        names::begin_item(question, item, &list, at);
                    }
                }
            })
    };
    let presets =
        item.presets.iter().map(|preset| button(&speech::phrase(preset.label), item.fresh(preset)));
    let plain = item.presets.is_empty().then(|| button(&speech::phrase(item.name), (item.blank)()));
    el("div").class("chips").class_when("full", is_full).with_all(presets).with(plain)
}

/// Where a tap on a preset lands: the count of an equal item, or a new item at the end.
fn added(draft: &Node, list: &str, item: &Item, add: &Node) -> Option<(String, Node)> {
    let items = draft.items(list);
    let most = item.rows.iter().find_map(|row| match row.kind {
        Kind::Count { most, .. } if is_counted(row) => Some(most),
        _ => None,
    });
    let others = |node: &Node| {
        let leaves = node.leaves().into_iter();
        leaves.filter(|(key, _)| key != COUNT).collect::<Vec<_>>()
    };
    let wanted = others(add);
    if let Some(most) = most
        && let Some(at) = items.iter().position(|it| others(it) == wanted)
        && let Some(now) = items[at].get(COUNT).and_then(Node::leaf)
        && let Ok(now) = now.trim().parse::<i64>()
        && now < most
    {
        let path = join(&join(list, &at.to_string()), COUNT);
        return Some((path, Node::Whole(now + 1)));
    }
    if items.len() >= item.most {
        return None;
    }
    let mut all = items.to_vec();
    all.push(add.clone());
    Some((list.to_owned(), Node::List(all)))
}
