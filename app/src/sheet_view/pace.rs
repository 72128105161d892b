//! A person's own pace: what finished work took, and what that makes of what is reckoned.

use super::headings::titled;
use crate::elements::{El, Piece, el, live, live_text};
use crate::later::later;
use crate::question::{Question, as_typed};
use crate::signal::RwSignal;
use crate::store::MarkPlace;
use crate::{speech, words as w};
use ledgerboard_core::job::buying::read_like;
use ledgerboard_core::job::{DEMO_ID, LONGEST_JOT, pace};
use ledgerboard_core::measure::Units;
use ledgerboard_core::say;
use ledgerboard_core::sheet::Figure;
use leptos::prelude::*;

/// The figures that work may take more or less of, as they are worked now.
fn figures(question: Question) -> Vec<Figure> {
    question.at_rest(|worked| {
        let Ok(worked) = worked else { return Vec::new() };
        let paced = question.entry.paced.iter();
        paced.filter_map(|key| worked.sheet.figure(key).cloned()).collect()
    })
}

/// What each figure comes to at a person's own pace, where enough was noted.
fn told(question: Question) -> Vec<String> {
    let voice = question.voice();
    let one = |figure: &Figure| {
        let calculator = question.entry.id;
        let pace = question.desk.jobs.with(|jobs| pace::pace(jobs, calculator, figure))?;
        let (name, jobs) = (figure.name.clone(), pace.jobs as i64);
        Some(voice.say(&say!(w::OWN_PACE_OF, name, pace.likely, pace.least, pace.most, jobs)))
    };
    figures(question).iter().filter_map(one).collect()
}

/// Under the answer: the own pace of what has one.
pub(super) fn line(question: Question) -> Piece {
    if question.entry.paced.is_empty() {
        return Piece::NONE;
    }
    live(move || {
        let lines = told(question);
        let line = |says: &String| el("p").class("quiet").text(says);
        Piece::all(lines.iter().map(line))
    })
}

/// Under its heading: what the saved number took, to be put in when it is done.
pub(super) fn pace(question: Question) -> Piece {
    if question.entry.paced.is_empty() {
        return Piece::NONE;
    }
    let title = live_text(move || speech::phrase(&w::OWN_PACE));
    let inside = move || {
        live(move || {
            let own = question.mark.get().filter(|_| !question.changed.get());
            let Some(place) = own.filter(|it| it.job != DEMO_ID) else {
                return Piece::from(el("p").class("quiet").say(&w::OWN_PACE_SAVE));
            };
            let rows = figures(question).into_iter().map(|it| took(question, &place, it));
            let how = el("p").class("quiet").say(&w::OWN_PACE_HOW);
            Piece::all([el("div").with_all(rows.collect::<Vec<_>>()), how])
        })
    };
    titled(question, title, inside).into()
}

/// What one figure took.
fn took(question: Question, place: &MarkPlace, figure: Figure) -> El {
    let desk = question.desk;
    let voice = question.voice();
    let (job, mark, key) = (place.job.clone(), place.mark.clone(), figure.key);
    let noted = move || {
        let job = desk.job(&job)?;
        pace::noted(&job, &mark, key)
    };
    let id = ["took-", figure.key].concat();
    let label = voice.say(&say!(w::TOOK, figure.name.clone()));
    let like = figure.amount;
    let there = untrack(&noted);
    let text =
        RwSignal::new(there.map(|it| as_typed(it.took, Units::Customary)).unwrap_or_default());
    let fault = RwSignal::new(false);
    let kept = StoredValue::new((place.clone(), figure));
    let soon = later(move |_| {
        let (Some(typed), Some((place, figure))) = (text.try_get_untracked(), kept.try_get_value())
        else {
            return;
        };
        let took = read_like(&typed, figure.amount).filter(|it| it.raw() > 0);
        fault.set(took.is_none() && !typed.trim().is_empty());
        if took.is_some() || typed.trim().is_empty() {
            let _ = desk.edit(&place.job, pace::note(&place.mark, &figure, took));
        }
    });
    let note = [&*id, "-note"].concat();
    let field = el("input")
        .id(&id)
        .own()
        .attr("type", "text")
        .attr("inputmode", "decimal")
        .attr("autocomplete", "off")
        .attr("maxlength", &LONGEST_JOT.to_string())
        .attr("aria-describedby", &note)
        .flag_live("aria-invalid", move || fault.get())
        .value_live(move || text.get())
        .on("input", move |event| {
            text.set(event_target_value(&event));
            soon();
        });
    let says = move || {
        let says = match noted() {
            _ if fault.get() => say!(w::NOT_TOOK, like),
            Some(it) => say!(w::TOOK_OF, it.reckoned, it.at.text()),
            None => say!(w::FIGURE, like),
        };
        voice.say(&says)
    };
    el("div")
        .class("field stacked")
        .class_when("faulty", move || fault.get())
        .with(el("label").class("label").attr("for", &id).text(&label))
        .with(field)
        .with(el("p").class("note").id(&note).attr("aria-live", "polite").text_live(says))
}
