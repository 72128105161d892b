//! All that stands behind an answer, each under a heading that opens and closes. Headings stay
//! as they were left while what is under them changes; on a wide page they start open.

use super::{checks, pace, parts, shown, working};
use crate::elements::{El, Piece, el, live, live_text, when};
use crate::question::Question;
use crate::signal::{Memo, RwSignal};
use crate::wide::is_wide;
use crate::{speech, words as w};
use ledgerboard_core::catalog::Worked;
use ledgerboard_core::say;
use ledgerboard_core::sheet::{Caution, Source};
use ledgerboard_core::words::{Phrase, Voice};

/// Checks, the calculator's own, working, materials, cautions, sources.
pub(crate) fn headings(question: Question) -> Piece {
    let here = |phrase, there: fn(&Worked) -> bool, show: fn(&Worked, Voice) -> El| {
        while_there(question, phrase, there, show)
    };
    Piece::all([
        here(&w::CHECKS, |it| !it.sheet.checks.is_empty(), checks::checks),
        parts::parts(question),
        here(&w::WORKING, |it| !it.sheet.working.is_empty(), working::working),
        here(&w::FIGURES, |it| !it.sheet.figures.is_empty(), figures),
        pace::pace(question),
        here(&w::MATERIALS, |it| !it.sheet.materials.is_empty(), materials),
        cautions(question),
        here(&w::SOURCES, |it| !it.sheet.sources().is_empty(), sources),
    ])
}

/// A heading that is there when the last answer had something under it. A fault takes no heading
/// away, so that what was open is open when the answer is back.
fn while_there(
    question: Question,
    phrase: &'static Phrase,
    there: fn(&Worked) -> bool,
    show: fn(&Worked, Voice) -> El,
) -> Piece {
    let is_there = Memo::new(move |before: Option<&bool>| {
        let before = before.copied().unwrap_or(false);
        question.worked.with(|worked| worked.as_ref().map_or(before, there))
    });
    when(
        move || is_there.get(),
        move || {
            let title = live_text(move || speech::phrase(phrase));
            titled(question, title, move || shown(question, show))
        },
    )
}

/// One heading with what is under it. Of a long question that is built only while it is open.
pub(super) fn titled(question: Question, title: Piece, body: impl Fn() -> Piece + 'static) -> El {
    let details = el("details").class("heading");
    let details = if is_wide() { details.attr("open", "") } else { details };
    let open = RwSignal::new(is_wide());
    let node = details.node().clone();
    details
        .with(el("summary").with(el("h2").with(title)))
        .with(
            el("div").class("body").with(when(move || open.get() || !question.is_long.get(), body)),
        )
        .on("toggle", move |_| open.set(node.has_attribute("open")))
}

/// A line with its figure at the end.
pub(super) fn row(name: &str, value: &str) -> El {
    el("li")
        .class("row")
        .with(el("span").text(name))
        .text(" ")
        .with(el("span").class("value").text(value))
}

fn figures(worked: &Worked, voice: Voice) -> El {
    let rows = worked
        .sheet
        .figures
        .iter()
        .map(|figure| row(&voice.say(&figure.name), &voice.say(&figure.value())));
    el("ul").class("rows").with_all(rows)
}

fn materials(worked: &Worked, voice: Voice) -> El {
    let rows = worked.sheet.materials.iter().map(|material| {
        row(&voice.say(&material.name), &voice.say(&say!(w::FIGURE, material.amount)))
    });
    el("ul").class("rows").with_all(rows)
}

/// All but the first, which stands under the answer. They never wait for it: while a fault stands,
/// all that may hurt is told, since the first may be of the answer before.
fn cautions(question: Question) -> Piece {
    let lines = move || {
        let voice = question.voice();
        let all = question.worked.with(|worked| match worked {
            Ok(worked) => worked.sheet.cautions.iter().skip(1).cloned().collect(),
            Err(_) => (question.entry.cautions)(),
        });
        let line = |it: &Caution| el("li").text(&voice.say(&it.text));
        el("ul").class("lines").with_all(all.iter().map(line))
    };
    let title = live_text(move || speech::phrase(&w::CAUTIONS));
    titled(question, title, move || live(lines)).into()
}

fn sources(worked: &Worked, voice: Voice) -> El {
    let one = |source: &'static Source| {
        let sure = say!(w::SURE, source.seen, source.confidence.words());
        el("li")
            .with(el("strong").text(&voice.phrase(&source.clause)))
            .text(" ")
            .say(source.says)
            .with(el("p").class("quiet").text(&voice.say(&sure)))
    };
    el("ul").class("lines").with_all(worked.sheet.sources().into_iter().map(one))
}
