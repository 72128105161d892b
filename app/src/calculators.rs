//! The calculators: those opened last, all by trade, or those that a few letters find.

use crate::desk::Desk;
use crate::elements::{El, Piece, el, live, when};
use crate::signal::RwSignal;
use crate::{jobs, route, speech, words as w};
use ledgerboard_core::calculators::Trade;
use ledgerboard_core::catalog::{self, Entry};
use ledgerboard_core::job::{LONGEST_TITLE, find_calculators};
use ledgerboard_core::say;
use leptos::prelude::*;

/// The list under its heading, with the field that makes it shorter.
pub(crate) fn calculators(desk: Desk) -> El {
    let typed = RwSignal::new(String::new());
    let field = jobs::text_field("find-calculator", LONGEST_TITLE, "input")
        .attr("enterkeyhint", "go")
        .value_live(move || typed.get())
        .on("input", move |event| typed.set(event_target_value(&event)));
    let form = el("form")
        .attr("role", "search")
        .with(jobs::below("find-calculator", &w::FIND_CALCULATOR, field))
        .on("submit", move |event| {
            event.prevent_default();
            if let Some(first) = typed.with_untracked(|typed| find_calculators(typed)).first() {
                route::go(&route::calculator(first.id));
            }
        });
    let list = live(move || match typed.with(|typed| typed.trim().is_empty()) {
        true => untrack(|| by_trade(desk)),
        false => found(&typed.get()),
    });
    el("section")
        .attr("aria-labelledby", "calculators")
        .with(el("h2").id("calculators").say(&w::CALCULATORS))
        .with(form)
        .with(list)
}

fn by_trade(desk: Desk) -> Piece {
    let last = when(
        move || desk.settings.with(|settings| !settings.recent.is_empty()),
        move || opened_last(desk),
    );
    let trades = Trade::ALL.iter().map(|trade| {
        let of_trade = catalog::ALL.iter().filter(|entry| entry.trade == *trade);
        let id = ["trade-", trade.key()].concat();
        el("section")
            .attr("aria-labelledby", &id)
            .with(el("h3").id(&id).say(trade.name()))
            .with(el("ul").class("doors").with_all(of_trade.map(door)))
            .into()
    });
    Piece::all([last].into_iter().chain(trades))
}

/// The calculators that were opened last, before all others.
fn opened_last(desk: Desk) -> El {
    let recent = desk.settings.with(|settings| settings.recent.clone());
    let doors = recent.iter().filter_map(|id| catalog::find(id)).map(|entry| {
        el("a").class("chip").attr("href", &route::calculator(entry.id)).say(entry.name)
    });
    el("section")
        .attr("aria-labelledby", "opened-last")
        .with(el("h3").id("opened-last").say(&w::OPENED_LAST))
        .with(el("p").class("chips").with_all(doors))
}

fn found(typed: &str) -> Piece {
    let found = find_calculators(typed);
    let says = match found.len() {
        0 => say!(w::NO_CALCULATOR_FOUND),
        count => say!(w::CALCULATORS_FOUND, count as i64),
    };
    let status = el("p").class("quiet").attr("role", "status").text(&speech::say(&says));
    Piece::all([status, el("ul").class("doors").with_all(found.into_iter().map(door))])
}

fn door(entry: &Entry) -> El {
    let name = el("span").say(entry.name);
    jobs::door(&route::calculator(entry.id), name, &speech::phrase(entry.about))
}
