//! The answer: its figure, its limit, the verdict, the margin rule, what to do next, and the one
//! caution that matters. The top of it stays in view while fields change.

use super::editions;
use super::parts::orphaned_undo;
use crate::drawing::{margin_rule, spare, verdict};
use crate::elements::{El, Piece, el, live, when};
use crate::question::Question;
use crate::{speech, words as w};
use ledgerboard_core::catalog::Worked;
use ledgerboard_core::measure::Rounding;
use ledgerboard_core::say;
use ledgerboard_core::sheet::{Check, Faults, Sense, Verdict};
use ledgerboard_core::words::{Amount, Arg, Text, Voice};
use leptos::prelude::{Get, With, document};
use wasm_bindgen::JsCast;

/// The answer of a question.
pub(crate) fn answer(question: Question) -> Piece {
    let sample = el("span").class("sample").say(&w::SAMPLE);
    let top = live(move || {
        let voice = question.voice();
        question.worked.with(|worked| match worked {
            Ok(worked) => figure(worked, voice),
            Err(faults) => needs(faults),
        })
    });
    let rest = live(move || {
        let voice = question.voice();
        question.worked.with(|worked| match worked {
            Ok(worked) => said(worked, voice),
            Err(faults) => faults.first().map(|fault| next(&voice.say(&fault.says))).into(),
        })
    });
    let name = el("div")
        .class("answer-name")
        .with(el("h2").id("answer").text_live(move || name(question)))
        .with(when(move || question.is_sample.get(), move || sample.clone()));
    let told = el("div").attr("aria-live", "polite").attr("aria-atomic", "true").with(top);
    let answer = el("section")
        .class("answer")
        .attr("aria-labelledby", "answer")
        .with(el("div").class("answer-top").with(name).with(told));
    let rest = el("div")
        .class("answer-rest")
        .with(orphaned_undo(question))
        .with(rest)
        .with(editions::line(question));
    Piece::all([answer, rest])
}

fn name(question: Question) -> String {
    let voice = question.voice();
    question.worked.with(|worked| match worked {
        Ok(worked) => voice.say(&worked.sheet.headline.name),
        Err(_) => voice.phrase(&w::ANSWER),
    })
}

fn figure(worked: &Worked, voice: Voice) -> Piece {
    let sheet = &worked.sheet;
    let headline = &sheet.headline;
    let amount =
        Text { phrase: &w::FIGURE, args: vec![Arg::Amount(headline.amount, headline.rounding)] };
    let lead = sheet.lead().filter(|lead| lead.value == headline.amount);
    let limit = lead.map(|lead| match lead.sense {
        Sense::AtMost => say!(w::OF_AT_MOST, bare(lead.limit, voice)),
        Sense::AtLeast => say!(w::OF_AT_LEAST, bare(lead.limit, voice)),
    });
    // The whole may be worse than the check that the figure belongs to.
    let whole = sheet.verdict();
    let word = lead.filter(|lead| lead.verdict == whole).map_or_else(|| whole.words(), Check::word);
    let line = el("p")
        .class("answer-line")
        .with(el("strong").class("figure").text(&voice.say(&amount)))
        .text(" ")
        .with(limit.map(|limit| el("span").class("limit").text(&voice.say(&limit))));
    let spare = lead.map(|lead| el("span").text(&voice.say(&spare(lead))));
    let verdict = el("p").class("answer-verdict").with(verdict(whole, word)).text(" ").with(spare);
    let rule = sheet.lead().map(|lead| margin_rule(lead, voice.units));
    Piece::all([Some(line), Some(verdict), rule])
}

/// A limit behind its figure: the unit has just been said, unless it is part of the figure.
fn bare(limit: Amount, voice: Voice) -> Arg {
    match limit {
        Amount::Length(length) => length.into(),
        other => other.show(voice.units, Rounding::Nearest).figure.into(),
    }
}

/// The same height as an answer, so that nothing jumps while a field is half typed.
fn needs(faults: &Faults) -> Piece {
    let Some(first) = faults.first() else { return Piece::NONE };
    let path = first.path.clone();
    let more = faults.len() as i64;
    let needed = el("strong").class("figure").text(&speech::say(&say!(w::NEEDS, first.label)));
    let more = (more > 1).then(|| el("span").text(&speech::say(&say!(w::NEEDS_MORE, more))));
    let go = el("button").attr("type", "button").say(&w::GO_TO_FIELD).tap(move || go_to(&path));
    Piece::all([
        el("p").class("answer-line needs").with(needed),
        el("p").class("answer-go").with(more).with(go),
    ])
}

/// Moves to the field of a path, or to the nearest that holds it.
fn go_to(path: &str) {
    let mut path = path;
    loop {
        if let Some(element) = document().get_element_by_id(path) {
            element.scroll_into_view();
            if let Some(element) = element.dyn_ref::<web_sys::HtmlElement>() {
                let _ = element.focus();
            }
            return;
        }
        match path.rsplit_once('.') {
            Some((above, _)) => path = above,
            None => return,
        }
    }
}

fn next(says: &str) -> El {
    el("p").class("next").text(says)
}

fn said(worked: &Worked, voice: Voice) -> Piece {
    let sheet = &worked.sheet;
    let over = sheet.verdict() == Verdict::Over;
    let next = sheet.next.as_ref().map(|says| {
        let next = next(&voice.say(says));
        if over { next.class("next over") } else { next }
    });
    let caution = sheet.cautions.first();
    let caution = caution.map(|it| el("p").class("caution").text(&voice.say(&it.text)));
    Piece::all([next, caution])
}
