//! What a kept number takes from others, and which others take from it. What moved can be taken or
//! kept right here.

use super::mark_line::{Gone, gone_line, shown};
use super::today::Today;
use crate::clock;
use crate::desk::Desk;
use crate::elements::{El, Piece, el, live};
use crate::question::Linked;
use crate::signal::RwSignal;
use crate::{speech, words as w, works};
use ledgerboard_core::catalog;
use ledgerboard_core::fields::row_at;
use ledgerboard_core::job::{Edit, Job, Mark, NotTaken, Tie, TieState};
use ledgerboard_core::measure::Rounding;
use ledgerboard_core::say;
use ledgerboard_core::words::{Arg, Text};
use leptos::prelude::*;

/// The links of one mark, both ways.
pub(super) fn links(
    desk: Desk,
    job: &Job,
    today: &Today,
    mark: &Mark,
    gone: RwSignal<Option<Gone>>,
) -> Piece {
    let takes = mark.ties.iter().zip(&today.links);
    let takes = takes.map(|(tie, link)| one(desk, job, link, mark, tie, gone));
    let used = (!today.users.is_empty()).then(|| {
        let users = today.users.clone();
        el("p").class("quiet").own_text(&speech::say(&say!(w::USED_BY, users)))
    });
    let (id, job) = (mark.id.clone(), job.id.clone());
    let settled = live(move || {
        let done = gone.get().filter(|gone| matches!(gone, Gone::Settled(it, _) if it.id == id));
        done.map(|done| gone_line(desk, &job, done, gone))
    });
    Piece::all([Piece::all(takes), used.into(), settled])
}

fn one(
    desk: Desk,
    job: &Job,
    link: &Linked,
    mark: &Mark,
    tie: &Tie,
    gone: RwSignal<Option<Gone>>,
) -> Piece {
    let voice = speech::voice(job.units);
    let label = catalog::find(&mark.calculator).and_then(|entry| row_at(entry.rows, &tie.path));
    let from = match label {
        Some(row) => say!(w::TAKES, row.label, &*link.name),
        None => say!(w::TAKEN_FROM, &*link.name),
    };
    let from = el("p").class("quiet").own_text(&voice.say(&from));
    let says: Text = match link.standing {
        TieState::Fresh => return from.into(),
        TieState::Behind => say!(w::SOURCE_BEHIND),
        TieState::Lost => say!(w::SOURCE_LOST),
        TieState::Moved(now) => {
            let now = Arg::Amount(now, Rounding::Nearest);
            say!(w::SOURCE_MOVED, shown(&tie.seen), now)
        }
    };
    let fault = RwSignal::new(String::new());
    let settle = move |job: &str, before: Mark, after: Mark| {
        if let Ok(made) = desk.edit(job, Edit::Change(after)) {
            gone.set(Some(Gone::Settled(before, made.inverse)));
        }
    };
    let (id, here, path) = (job.id.clone(), mark.clone(), tie.path.clone());
    let keep = move || {
        let mut kept = here.clone();
        kept.ties.retain(|tie| tie.path != path);
        settle(&id, here.clone(), kept);
    };
    let (id, here, path) = (job.id.clone(), mark.clone(), tie.path.clone());
    let take = move || {
        let Some(job) = untrack(|| desk.job(&id)) else { return };
        match works::survey(&job).take(&here, &path, clock::now()) {
            Ok(taken) => settle(&id, here.clone(), taken),
            Err(NotTaken::Refused(faults)) => {
                fault.set(faults.first().map(|it| speech::say(&it.says)).unwrap_or_default());
            }
            Err(_) => fault.set(speech::phrase(&w::SOURCE_LOST)),
        }
    };
    let button = |phrase| el("button").attr("type", "button").say(phrase);
    let take = matches!(link.standing, TieState::Moved(_))
        .then(|| button(&w::TAKE_VALUE).class("main").tap(take));
    let keep = (link.standing != TieState::Behind).then(|| button(&w::KEEP_VALUE).tap(keep));
    let can = !job.invented;
    let buttons: Option<El> = can.then(|| el("p").class("buttons").with(take).with(keep));
    let fault = el("p").class("fault").attr("aria-live", "polite").text_live(move || fault.get());
    Piece::all([
        from.into(),
        el("p").class("now").text(&voice.say(&says)).into(),
        Piece::from(buttons),
        fault.into(),
    ])
}
