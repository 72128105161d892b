//! The answer: its figure, its limit, the verdict, the margin rule, what to do next, and the one
//! caution that matters. The top of it stays in view while fields change.

use super::{editions, pace, parts, standing, undo_line};
use crate::drawing::{held, margin_rule, spare, verdict};
use crate::elements::{El, Piece, el, flag, keep_up, live, when};
use crate::question::{OWN, Origin, Question};
use crate::signal::Memo;
use crate::{speech, words as w};
use ledgerboard_core::calculators::Progress;
use ledgerboard_core::catalog::Worked;
use ledgerboard_core::fields::{Kind, Row, is_missing, row_at};
use ledgerboard_core::say;
use ledgerboard_core::sheet::{
    Check, Confidence, Fault, Faults, Sense, Sheet, Source, Standing, Verdict,
};
use ledgerboard_core::words::{Amount, Arg, Text, Voice};
use leptos::prelude::document;
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;

/// The answer of a question.
pub(crate) fn answer(question: Question) -> Piece {
    let tag = move || match question.origin.get() {
        // Beside the figure that may yet change, also where no more than that is in view.
        _ if question.progress() == Progress::Going => Some(&w::STILL_LOOKING),
        _ if question.progress() == Progress::Stopped => Some(&w::STOPPED_LOOKING),
        // A hold opens blank: there is no sample of it.
        Origin::Sample if question.entry.is_hold => None,
        Origin::Sample => Some(&w::SAMPLE),
        Origin::Left => Some(&w::AS_LEFT),
        Origin::Link => Some(&w::FROM_LINK),
        Origin::Own => None,
    };
    let some = move || Some(question.from_sample.with(Vec::len)).filter(|some| *some > 0);
    let tag = live(move || {
        let says = match tag() {
            Some(tag) => say!(w::FIGURE, tag),
            None => say!(w::SOME_SAMPLE, some()? as i64),
        };
        Some(el("span").class("sample").text(&speech::say(&says)))
    });
    // What can hurt somebody stays said while a field is half typed, or empty from the start.
    let caution = Memo::new(move |before: Option<&String>| {
        let voice = question.voice();
        question
            .worked
            .with(|worked| match worked {
                Ok(worked) => worked.sheet.cautions.first().map(|it| voice.say(&it.text)),
                // What leads before an input can be read leads again: what was told last may be of an
                // answer that a choice has since undone. What only an answer adds stays.
                Err(_) => {
                    let waiting = (question.entry.cautions)();
                    let told =
                        |text: &String| waiting.iter().any(|it| voice.say(&it.text) == *text);
                    let added = before.filter(|text| !text.is_empty() && !told(text)).cloned();
                    added.or_else(|| waiting.first().map(|it| voice.say(&it.text)))
                }
            })
            .unwrap_or_default()
    });
    let caution = live(move || {
        let text = caution.get();
        (!text.is_empty()).then(|| el("p").class("caution").text(&text))
    });
    let top = live(move || {
        let voice = question.voice();
        question.worked.with(|worked| match worked {
            Ok(worked) => figure(worked, question.entry.is_hold, voice),
            Err(faults) => needs(question, faults),
        })
    });
    let below = el("div").class("answer-rest");
    stands_still(question, &below);
    let rest = live(move || {
        let voice = question.voice();
        question.worked.with(|worked| match worked {
            Ok(worked) => said(question, worked, voice),
            Err(faults) => faults.first().map(|fault| next(&voice.say(&fault.says))).into(),
        })
    });
    let name = el("div")
        .class("answer-name")
        .with(el("h2").id("answer").text_live(move || name(question)))
        .with(tag);
    let told = el("div").attr("aria-live", "polite").attr("aria-atomic", "true").with(top);
    let answer = el("section")
        .class("answer")
        .attr("aria-labelledby", "answer")
        .with(el("div").class("answer-top").with(name).with(told));
    let rest = below
        .with(still_sample(question))
        .with(parts::foremost(question))
        .with(standing::standing(question))
        .with(el("div").class("looking").with(el("div").with(rest)).with(stop(question)))
        .with(pace::line(question))
        .with(caution)
        .with(editions::line(question));
    Piece::all([answer, rest])
}

/// How many inputs are still the sample's, with the way to the first; a tap says that they are a
/// person's own. Its room stays when none is left: nothing moves under a thumb.
fn still_sample(question: Question) -> Piece {
    let count = Memo::new(move |_| question.from_sample.with(Vec::len));
    let was = Memo::new(move |before: Option<&bool>| before == Some(&true) || count.get() > 0);
    let is_taken =
        flag(move || question.undo.with(|it| it.as_ref().is_some_and(|it| it.place == OWN)));
    let on_paper = live(move || {
        let some = Some(count.get()).filter(|some| *some > 0)?;
        let says = speech::say(&say!(w::STILL_SAMPLE, some as i64));
        Some(el("p").class("on-paper now").text(&says))
    });
    let on_screen = live(move || {
        let button = || el("button").attr("type", "button").class("quiet");
        let go = move || {
            if let Some(path) = question.from_sample.with_untracked(|all| all.first().cloned()) {
                go_to(&path);
            }
        };
        match count.get() {
            0 if is_taken.get() => Some(undo_line(question, &w::NONE_OF_SAMPLE)),
            0 if was.get() => Some(el("p").class("still-sample").say(&w::NONE_OF_SAMPLE)),
            0 => None,
            some => Some(
                el("p")
                    .class("still-sample")
                    .with(button().text(&speech::say(&say!(w::STILL_SAMPLE, some as i64))).tap(go))
                    .with(button().say(&w::ALL_OWN).tap(move || question.all_own())),
            ),
        }
    });
    Piece::all([on_paper, on_screen])
}

/// Stops looking, and goes on: one button, which stays where it is while what is found is drawn anew.
fn stop(question: Question) -> Piece {
    let is_open = flag(move || question.progress() != Progress::Whole);
    let is_stopped = flag(move || question.progress() == Progress::Stopped);
    let says =
        move || speech::phrase(if is_stopped.get() { &w::LOOK_ON } else { &w::STOP_LOOKING });
    when(
        move || is_open.get(),
        move || {
            el("button")
                .attr("type", "button")
                .text_live(says)
                .tap(move || question.stop(!is_stopped.get_untracked()))
        },
    )
}

fn name(question: Question) -> String {
    let voice = question.voice();
    question.worked.with(|worked| match worked {
        Ok(worked) => voice.say(&worked.sheet.headline.name),
        Err(_) => voice.phrase(&w::ANSWER),
    })
}

fn figure(worked: &Worked, is_hold: bool, voice: Voice) -> Piece {
    let sheet = &worked.sheet;
    let headline = &sheet.headline;
    let lead = sheet.lead().filter(|lead| lead.value == headline.amount);
    let limit = lead.map(|lead| match lead.sense {
        Sense::AtMost => say!(w::OF_AT_MOST, bare(lead, voice)),
        Sense::AtLeast => say!(w::OF_AT_LEAST, bare(lead, voice)),
    });
    // The whole may be worse than the check that the figure belongs to: then the worse one speaks.
    // A hold's own gates are no measure: what it says is that it is shut, or open.
    let whole = sheet.verdict();
    // Nor is a check beside an answer that has none of its own, as long as it is within.
    let aside = is_aside(sheet);
    let decisive = sheet.decisive().filter(|_| !is_hold && !aside);
    let word = decisive.map_or_else(|| whole.words(), Check::word);
    let line = el("p")
        .class("answer-line")
        .with(el("strong").class("figure").text(&voice.say(&headline.value())))
        .text(" ")
        .with(limit.map(|limit| el("span").class("limit").text(&voice.say(&limit))));
    let reason = decisive.map(|check| match (lead, check.verdict) {
        (Some(lead), _) if std::ptr::eq(lead, check) => spare(check),
        (_, Verdict::Ask) => check.name.clone(),
        _ => say!(w::PAIR, check.name.clone(), spare(check)),
    });
    let reason = reason.map(|reason| el("span").class("reason").text(&voice.say(&reason)));
    let sign = match worked.standing {
        // What is held may be over its rules as well.
        Standing::Held(_) if whole != Verdict::Within && !is_hold => {
            el("span").class("signs").with(held()).text(" ").with(verdict(whole, word))
        }
        Standing::Held(_) => held(),
        Standing::Opened(_) if is_hold => verdict(Verdict::Within, Standing::open()),
        _ => verdict(whole, word),
    };
    let silent = aside && worked.standing == Standing::NotNeeded;
    let verdict =
        (!silent).then(|| el("p").class("answer-verdict").with(sign).text(" ").with(reason));
    let rule = decisive.filter(|check| check.has_scale());
    let rule = rule.map(|check| margin_rule(check, voice.units));
    Piece::all([Some(line), verdict, rule])
}

/// While a field is half typed, what stands above it keeps its height: nothing slides away from
/// under a thumb.
fn stands_still(question: Question, place: &El) {
    const HEIGHT: &str = "min-block-size";
    let Some(place) = place.node().dyn_ref::<HtmlElement>().cloned() else { return };
    let waits = flag(move || question.comparing.get() || question.worked.with(Result::is_err));
    keep_up(move || {
        let style = place.style();
        let _ = if waits.get() {
            style.set_property(HEIGHT, &[&place.offset_height().to_string(), "px"].concat())
        } else {
            style.remove_property(HEIGHT).map(drop)
        };
    });
}

/// Whether the checks stand beside an answer that none of them is about, and nothing is the matter.
fn is_aside(sheet: &Sheet) -> bool {
    sheet.lead.is_none() && sheet.verdict() == Verdict::Within
}

/// A limit behind its figure: the unit has just been said, unless it is part of the figure.
fn bare(check: &Check, voice: Voice) -> Arg {
    let rounding = check.limit_rounding();
    match check.limit {
        Amount::Length(_) => Arg::Amount(check.limit, rounding),
        other => other.show(voice.units, rounding).figure.into(),
    }
}

/// The same height as an answer, so that nothing jumps while a field is half typed.
fn needs(question: Question, faults: &Faults) -> Piece {
    let Some(first) = faults.first() else { return Piece::NONE };
    let path = first.path.clone();
    let more = faults.len() as i64;
    let what = if is_missing(first) { &w::NEEDS } else { &w::LOOK_AT };
    let label = place_of(question.entry.rows, first);
    let needed = el("strong").class("figure").text(&speech::say(&say!(*what, label)));
    let more = (more > 1).then(|| el("span").text(&speech::say(&say!(w::NEEDS_MORE, more))));
    let go = el("button").attr("type", "button").say(&w::GO_TO_FIELD).tap(move || go_to(&path));
    Piece::all([
        el("p").class("answer-line needs").with(needed),
        el("p").class("answer-go").with(more).with(go),
    ])
}

/// What a field is called where it isn't in sight: one of an item with which of its list that is.
fn place_of(rows: &'static [Row], fault: &Fault) -> Text {
    let Some((list, rest)) = fault.path.split_once('.') else {
        return say!(w::FIGURE, fault.label);
    };
    let at = rest.split('.').next().and_then(|at| at.parse::<i64>().ok());
    match row_at(rows, list).map(|row| (row.kind, at, row.label)) {
        Some((Kind::List(item), Some(at), _)) => say!(w::OF_ITEM, item.name, at + 1, fault.label),
        Some((_, _, group)) => say!(w::PAIR, group, fault.label),
        None => say!(w::FIGURE, fault.label),
    }
}

/// Moves to the field of a path, or to the nearest that holds it.
fn go_to(path: &str) {
    let mut path = path;
    loop {
        if let Some(element) = document().get_element_by_id(path) {
            while let Ok(Some(folded)) = element.closest("details:not([open])") {
                if folded.set_attribute("open", "").is_err() {
                    break;
                }
            }
            // With its label, which says whose it is.
            let field = element.closest(".field").ok().flatten();
            field.as_ref().unwrap_or(&element).scroll_into_view();
            if let Some(element) = element.dyn_ref::<HtmlElement>() {
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

fn said(question: Question, worked: &Worked, voice: Voice) -> Piece {
    let sheet = &worked.sheet;
    let over = sheet.verdict() == Verdict::Over;
    let next = sheet.next.as_ref().map(|says| {
        let next = next(&voice.say(says));
        if over { next.class("next over") } else { next }
    });
    let aside = is_aside(sheet);
    let decisive = sheet.decisive().filter(|_| !aside);
    let note = decisive.filter(|check| check.verdict != Verdict::Within);
    let note = note.and_then(|check| check.note.as_ref()).filter(|_| sheet.next.is_none());
    let note = note.map(|note| el("p").class("next").text(&voice.say(note)));
    let by = |source: &'static Source| {
        let by = match source.confidence {
            Confidence::CommonPractice => say!(w::BY, source.confidence.words()),
            _ => say!(w::BY, &source.clause),
        };
        el("p").class("edition quiet").text(&voice.say(&by))
    };
    let clause = decisive.and_then(|_| sheet.said_by());
    // Where the sentence is of something else than the check that decides, that one's source stands
    // before it, under its own reason. Of a hold no reason is told there.
    let of_reason = decisive.map(|check| check.source).filter(|source| {
        !question.entry.is_hold && clause.is_none_or(|clause| clause.key != source.key)
    });
    let (of_reason, clause) = (of_reason.map(by), clause.map(by));
    let left_out = worked.left_out.first().map(|fault| {
        let path = fault.path.clone();
        let go = el("button").attr("type", "button").say(&w::GO_TO_FIELD);
        el("p")
            .class("answer-go")
            .with(el("span").text(&voice.say(&say!(
                w::LEFT_OUT,
                place_of(question.entry.rows, fault),
                fault.says.clone()
            ))))
            .with(go.tap(move || go_to(&path)))
    });
    Piece::all([of_reason, left_out, next, note, clause])
}
