//! The first page: the calculators, the jobs, and one line that leads to an invented job.

use crate::calculators::calculators;
use crate::desk::Desk;
use crate::elements::{El, el, when};
use crate::{backup, jobs, route, words as w};
use ledgerboard_core::job::DEMO_ID;

/// Jobs that are listed here; the rest are a tap away.
const MOST_JOBS: usize = 5;

/// The first page.
pub(crate) fn home(desk: Desk) -> El {
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
    let all = el("a").class("door").attr("href", route::JOBS).say(&w::ALL_JOBS);
    el("main")
        .with(el("h1").attr("tabindex", "-1").say(&w::HOME_HEADING))
        .with(to_jobs)
        .with(calculators(desk).with(demo))
        .with(
            el("section")
                .attr("aria-labelledby", "jobs")
                .with(el("h2").id("jobs").say(&w::JOBS))
                .with(jobs::job_lines(desk, MOST_JOBS))
                .with(backup::overdue(desk))
                .with(el("p").with(all)),
        )
}
