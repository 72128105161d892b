//! One of a few: side by side where they are short and few, else the phone's own picker.

use super::{Place, input, labelled, note, titled};
use crate::elements::{El, el, live};
use crate::question::Question;
use crate::{speech, words as w};
use ledgerboard_core::fields::Pick;
use ledgerboard_core::say;
use ledgerboard_core::wire::Node;
use leptos::prelude::*;

/// Side by side they have to fit a narrow phone, each wide enough for a thumb.
const MOST_SEGMENTS: usize = 4;
const MOST_LETTERS: usize = 24;
/// A picker beside its label has room for this many letters.
const BESIDE: usize = 12;

pub(super) fn choice(question: Question, picks: &'static [Pick], place: &Place) -> El {
    let letters = |pick: &Pick| pick.label.en.chars().count();
    if picks.len() <= MOST_SEGMENTS && picks.iter().map(letters).sum::<usize>() <= MOST_LETTERS {
        return segments(question, picks, place);
    }
    let longest = picks.iter().map(letters).max().unwrap_or(0);
    let layout = if longest > BESIDE { "stacked" } else { "" };
    labelled(question, place, layout, picker(question, picks, place))
}

/// Whether a pick is chosen; where nothing is, the first counts.
fn chosen(
    question: Question,
    picks: &'static [Pick],
    place: &Place,
) -> impl Fn(&str) -> bool + Copy + use<> {
    let text = question.text(&place.path);
    let first = picks.first().map_or("", |pick| pick.key);
    move |key| text.with(|text| text == key || (text.is_empty() && key == first))
}

fn segments(question: Question, picks: &'static [Pick], place: &Place) -> El {
    let chosen = chosen(question, picks, place);
    let all = picks.iter().enumerate().map(|(at, pick)| {
        let (path, tapped) = (place.path.clone(), place.path.clone());
        // The first carries the field's own id, so that a fault leads to it.
        let id = if at == 0 { path.clone() } else { [&path, "=", pick.key].concat() };
        let radio = el("input")
            .attr("type", "radio")
            .attr("name", &path)
            .id(&id)
            .attr("value", pick.key)
            .attr("data-path", &path)
            .prop_live("checked", move || chosen(pick.key))
            // What stood there already is chosen too.
            .on("click", move |_| question.is_own(&tapped))
            .on("change", move |_| question.put(&path, Node::text(pick.key)));
        el("label").class("segment").with(radio).with(el("span").say(pick.label))
    });
    el("div")
        .class("field stacked")
        .attr("role", "radiogroup")
        .attr("aria-labelledby", &place.name())
        .attr("aria-describedby", &place.note())
        .with(titled(question, place, el("span")))
        .with(el("span").class("segments").with_all(all))
        .with(note(question, place))
}

/// The phone's own picker.
pub(super) fn picker(question: Question, picks: &'static [Pick], place: &Place) -> El {
    let chosen = chosen(question, picks, place);
    let text = question.text(&place.path);
    let path = place.path.clone();
    let options = picks.iter().map(|pick| {
        let option = el("option").attr("value", pick.key).say(pick.label);
        option.prop_live("selected", move || chosen(pick.key))
    });
    // A link may ask for what isn't offered: then nothing else may seem to be chosen.
    let stranger = live(move || {
        let given = text.get();
        let known = given.is_empty() || picks.iter().any(|pick| pick.key == given);
        (!known).then(|| {
            let says = speech::say(&say!(w::NO_CHOICE, &*given));
            el("option").attr("value", &given).attr("selected", "").own_text(&says)
        })
    });
    input(question, place, "select").with(stranger).with_all(options).on("change", move |event| {
        question.put(&path, Node::Text(event_target_value(&event)));
    })
}
