//! Which edition an answer is under, which others say otherwise, and the two settings of a
//! question: edition and units.

use crate::drawing::verdict;
use crate::elements::{El, Piece, el, live};
use crate::question::Question;
use crate::words as w;
use ledgerboard_core::catalog::{Flip, Worked};
use ledgerboard_core::edition::{Basis, Electrical};
use ledgerboard_core::measure::Units;
use ledgerboard_core::say;
use ledgerboard_core::words::{Arg, Phrase, Text, Voice};
use leptos::prelude::event_target_value;

/// The edition of the answer; where editions disagree, what each of the others says.
pub(super) fn line(question: Question) -> Piece {
    if !question.entry.electrical {
        return Piece::NONE;
    }
    live(move || {
        let voice = question.voice();
        let set = question.basis.get().electrical.is_some();
        let comparing = question.comparing.get();
        let said = |worked: &Worked| said(worked, set, comparing, voice);
        question.worked.with(|worked| worked.as_ref().ok().map(said))
    })
}

fn said(worked: &Worked, set: bool, comparing: bool, voice: Voice) -> Piece {
    let disagree = (!worked.flips.is_empty()).then(|| {
        el("div")
            .class("flips")
            .with(el("p").say(&w::FLIPS))
            .with(el("ul").with_all(worked.flips.iter().map(|flip| other(flip, voice))))
    });
    let under = worked.edition.map(|edition| {
        let says = if comparing { say!(w::COMPARING, edition.name()) } else { under(edition, set) };
        el("p").class("edition quiet").text(&voice.say(&says))
    });
    Piece::all([disagree, under])
}

fn under(edition: Electrical, set: bool) -> Text {
    if set {
        return say!(w::UNDER, edition.name());
    }
    let mut args: Vec<Arg> = Electrical::VERIFIED.iter().map(|it| Arg::from(it.name())).collect();
    args.push(edition.name().into());
    Text { phrase: &w::UNDER_STRICTEST, args }
}

fn other(flip: &Flip, voice: Voice) -> El {
    let amount = say!(w::PAIR, flip.edition.name(), flip.answer);
    el("li").text(&voice.say(&amount)).text(" ").with(verdict(flip.verdict, flip.verdict.words()))
}

/// Edition and units of the question.
pub(crate) fn settings(question: Question) -> El {
    let edition = question.entry.electrical.then(|| {
        edition_picker(move || question.basis.get(), move |basis| question.basis.set(basis))
    });
    el("div").class("terms").with(edition).with(units_picker(
        &w::UNITS,
        move || question.units.get(),
        move |units| question.change_units(units),
    ))
}

/// A picker of editions, also for a job.
pub(crate) fn edition_picker(
    now: impl Fn() -> Basis + Copy + 'static,
    set: impl Fn(Basis) + 'static,
) -> El {
    let option = |edition: Option<Electrical>| {
        let (key, name) =
            edition.map_or(("", &w::EDITION_NOT_SET), |edition| (edition.key(), edition.name()));
        let option = el("option").attr("value", key).say(name);
        option.prop_live("selected", move || now().electrical == edition)
    };
    let all = Electrical::ALL.into_iter().map(Some);
    let select = el("select")
        .id("edition")
        .attr("aria-describedby", "edition-note")
        .with_all(std::iter::once(None).chain(all).map(option))
        .on("change", move |event| {
            set(Basis { electrical: Electrical::from_key(&event_target_value(&event)) });
        });
    el("div")
        .class("field stacked")
        .with(el("label").class("label").attr("for", "edition").say(&w::EDITION_OF_JOB))
        .with(select)
        .with(el("p").class("note").id("edition-note").say(&w::EDITION_HINT))
}

/// The two ways to read and write a quantity.
pub(crate) fn units_picker(
    label: &'static Phrase,
    now: impl Fn() -> Units + Copy + 'static,
    set: impl Fn(Units) + Copy + 'static,
) -> El {
    let one = |(units, name): (Units, &'static Phrase)| {
        let radio = el("input")
            .attr("type", "radio")
            .attr("name", "units")
            .prop_live("checked", move || now() == units)
            .on("change", move |_| set(units));
        el("label").class("segment").with(radio).with(el("span").say(name))
    };
    let both = [(Units::Customary, &w::CUSTOMARY), (Units::Metric, &w::METRIC)];
    el("div")
        .class("field stacked")
        .attr("role", "radiogroup")
        .attr("aria-labelledby", "units")
        .with(el("span").class("label").id("units").say(label))
        .with(el("span").class("segments").with_all(both.map(one)))
}
