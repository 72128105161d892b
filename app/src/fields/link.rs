//! Where a value comes from: taken from another number of the job by a tap, followed when that
//! number moves, and cut by typing over.

use super::Place;
use crate::elements::{El, Piece, el, focus_soon, live, when};
use crate::jobs::shown;
use crate::question::{Linked, Question, Source};
use crate::signal::{Memo, RwSignal};
use crate::{route, speech, words as w};
use ledgerboard_core::fields::Row;
use ledgerboard_core::job::TieState;
use ledgerboard_core::measure::Rounding;
use ledgerboard_core::say;
use ledgerboard_core::words::{Amount, Arg};
use leptos::prelude::*;

/// What stands under a quantity: its link, that it was cut, or the way to link it.
pub(super) fn link(question: Question, row: &'static Row, place: &Place) -> Option<El> {
    let like = row.takes()?;
    let place = place.clone();
    let path = place.path.clone();
    let linked = Memo::new(move |_| {
        let linked = question.linked(&path)?;
        Some((linked, question.is_told_together(&path)))
    });
    let path = place.path.clone();
    let cut =
        Memo::new(move |_| question.cut.get().filter(|(at, _)| *at == path).map(|(_, name)| name));
    let path = place.path.clone();
    let unlike = Memo::new(move |_| {
        question.unlike.with(|all| all.iter().find(|it| it.key == path).map(|it| it.says_here()))
    });
    let unlike = live(move || {
        unlike.get().map(|says| el("p").class("now").own_text(&question.voice().say(&says)))
    });
    let open = RwSignal::new(false);
    Some(el("div").class("link").with(unlike).with(live(move || {
        match (linked.get(), cut.get()) {
            (Some((_, true)), _) => Piece::NONE,
            (Some((linked, false)), _) => tied(question, &place, &linked),
            (None, cut) => Piece::all([
                cut.map(|name| {
                    let says = el("p").class("note").attr("role", "status");
                    says.own_text(&speech::say(&say!(w::LINK_CUT, name))).into()
                })
                .unwrap_or(Piece::NONE),
                untied(question, row, like, &place, open),
            ]),
        }
    })))
}

/// What several inputs come from, once for all of them.
pub(crate) fn told_together(question: Question) -> Piece {
    let all = Memo::new(move |_| question.told_together());
    live(move || {
        Piece::all(all.get().into_iter().map(|(linked, labels)| {
            let says = speech::say(&say!(w::TAKES, labels, &*linked.title));
            let from = source(&linked, &says);
            let behind = (linked.standing == TieState::Behind)
                .then(|| el("p").class("now").say(&w::SOURCE_BEHIND));
            el("div").class("link").attr("data-source", &linked.mark).with(from).with(behind)
        }))
    })
}

/// The way to where a value comes from.
fn source(linked: &Linked, says: &str) -> El {
    let to = route::mark(&linked.job, &linked.mark);
    el("p").class("from").with(el("a").attr("href", &to).own_text(says))
}

/// Where the value comes from and, where that has moved, then and now.
fn tied(question: Question, place: &Place, linked: &Linked) -> Piece {
    let voice = question.voice();
    let from = source(linked, &voice.say(&say!(w::TAKEN_FROM, &*linked.name)));
    let path = place.path.clone();
    let back = path.clone();
    let keep = button(&w::KEEP_VALUE).tap(move || {
        question.untie(&path);
        focus_soon(&["[id='", &back, "']"].concat());
    });
    let says = match &linked.standing {
        TieState::Fresh => return from.into(),
        TieState::Behind => {
            return Piece::all([from, el("p").class("now").say(&w::SOURCE_BEHIND)]);
        }
        TieState::Lost => el("p").class("now").say(&w::SOURCE_LOST),
        TieState::Moved(now) => {
            let then = shown(&linked.seen);
            let now = Arg::Amount(*now, Rounding::Nearest);
            el("p").class("now").text(&voice.say(&say!(w::SOURCE_MOVED, then, now)))
        }
    };
    let path = place.path.clone();
    let taken = linked.clone();
    let take = matches!(linked.standing, TieState::Moved(_)).then(|| {
        button(&w::TAKE_VALUE).class("main").tap(move || {
            question.take_now(&path, &taken);
            focus_soon(&["[id='", &path, "']"].concat());
        })
    });
    let buttons = el("p").class("buttons").with(take).with(keep);
    Piece::all([from, says, buttons])
}

fn button(phrase: &'static ledgerboard_core::words::Phrase) -> El {
    el("button").attr("type", "button").say(phrase)
}

/// The way to the figures of the job, where it has any of this kind.
fn untied(
    question: Question,
    row: &'static Row,
    like: Amount,
    place: &Place,
    open: RwSignal<bool>,
) -> Piece {
    let any = move || question.has_sources(like);
    let place = place.clone();
    when(any, move || {
        let named = speech::say(&say!(w::TAKE_FROM_OF, &*place.label));
        let opener = el("button")
            .attr("type", "button")
            .class("quiet")
            .named(&named)
            .flag_live("aria-expanded", move || open.get())
            .say(&w::TAKE_FROM)
            .tap(move || open.update(|open| *open = !*open));
        let place = place.clone();
        Piece::all([
            opener.into(),
            when(move || open.get(), move || offers(question, row, like, &place, open)),
        ])
    })
}

fn offers(
    question: Question,
    row: &'static Row,
    like: Amount,
    place: &Place,
    open: RwSignal<bool>,
) -> El {
    let voice = question.voice();
    let one = |source: Source| {
        let amount = say!(w::FIGURE, Arg::Amount(source.figure.amount, Rounding::Nearest));
        let path = place.path.clone();
        let name = el("span").own_text(&source.name);
        let value = el("span").class("value").text(&voice.say(&amount));
        let offer =
            el("button").attr("type", "button").class("offer").with(name).text(" ").with(value);
        el("li").with(offer.tap(move || {
            open.set(false);
            question.tie(&path, &source);
            focus_soon(&["[id='", &path, "']"].concat());
        }))
    };
    let all = untrack(|| question.sources(row, like));
    el("ul").class("offers").with_all(all.into_iter().map(one))
}
