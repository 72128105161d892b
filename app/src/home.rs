//! The first page: the calculators, the jobs, and one line that leads to an invented job.

use crate::desk::Desk;
use crate::elements::{El, el, when};
use crate::{backup, jobs, route, speech, words as w};
use ledgerboard_core::calculators::Trade;
use ledgerboard_core::catalog;
use ledgerboard_core::job::DEMO_ID;

/// Jobs that are listed here; the rest are a tap away.
const MOST_JOBS: usize = 5;

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

/// The first page.
pub(crate) fn home(desk: Desk) -> El {
    let trades = Trade::ALL.iter().map(|trade| {
        let of_trade = catalog::ALL.iter().filter(|entry| entry.trade == *trade);
        let doors = of_trade.map(|entry| {
            let name = el("span").say(entry.name);
            jobs::door(&route::calculator(entry.id), name, &speech::phrase(entry.about))
        });
        let id = ["trade-", trade.key()].concat();
        el("section")
            .attr("aria-labelledby", &id)
            .with(el("h3").id(&id).say(trade.name()))
            .with(el("ul").class("doors").with_all(doors))
    });
    let last = when(
        move || desk.settings.with(|settings| !settings.recent.is_empty()),
        move || opened_last(desk),
    );
    let to_jobs = when(
        move || desk.list.with(|jobs| !jobs.is_empty()),
        || {
            let door = el("a").class("chip").attr("href", route::JOBS).say(&w::FIND_OR_OPEN);
            el("p").class("chips").with(door)
        },
    );
    let shows_demo = move || desk.settings.with(|settings| !settings.demo_hidden);
    let demo = when(shows_demo, move || {
        let away = el("button").attr("type", "button").class("quiet").say(&w::TAKE_DEMO_AWAY);
        el("p")
            .class("demo")
            .with(el("a").attr("href", &route::job(DEMO_ID)).say(&w::SEE_DEMO))
            .with(away.tap(move || desk.set(|settings| settings.demo_hidden = true)))
    });
    let section = |id: &str, phrase| {
        el("section").attr("aria-labelledby", id).with(el("h2").id(id).say(phrase))
    };
    let all = el("a").class("door").attr("href", route::JOBS).say(&w::ALL_JOBS);
    el("main")
        .with(el("h1").attr("tabindex", "-1").say(&w::HOME_HEADING))
        .with(to_jobs)
        .with(section("calculators", &w::CALCULATORS).with(last).with_all(trades).with(demo))
        .with(
            section("jobs", &w::JOBS)
                .with(jobs::job_lines(desk, MOST_JOBS))
                .with(backup::overdue(desk))
                .with(el("p").with(all)),
        )
}
