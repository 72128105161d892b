//! What a kept number takes from others, and which others take from it. What moved can be taken or
//! kept right here.

use super::done::{Done, What, add, done_line, to_mark};
use super::mark_line::shown;
use super::today::Today;
use crate::clock;
use crate::desk::Desk;
use crate::elements::{El, Piece, el, live};
use crate::question::{Linked, together};
use crate::signal::RwSignal;
use crate::{speech, words as w, works};
use ledgerboard_core::catalog;
use ledgerboard_core::fields::row_at;
use ledgerboard_core::job::{Edit, Job, Mark, NotTaken, Tie, TieState};
use ledgerboard_core::measure::Rounding;
use ledgerboard_core::say;
use ledgerboard_core::words::{Arg, Text};
use leptos::prelude::*;

/// The links of one mark, both ways. Several to one number that stand alike are told, taken and kept
/// as one.
pub(super) fn links(
    desk: Desk,
    job: &Job,
    today: &Today,
    mark: &Mark,
    done: RwSignal<Vec<Done>>,
) -> Piece {
    let mut groups: Vec<Vec<Pair<'_>>> = Vec::new();
    for pair in mark.ties.iter().zip(&today.links) {
        let is_alike = |group: &&mut Vec<Pair<'_>>| {
            let (tie, link) = group[0];
            tie.mark == pair.0.mark && is_same_kind(&link.standing, &pair.1.standing)
        };
        match groups.iter_mut().find(is_alike) {
            Some(group) => group.push(pair),
            None => groups.push(vec![pair]),
        }
    }
    let takes = groups.iter().map(|group| alike(desk, job, mark, group, done));
    let used = (!today.users.is_empty()).then(|| {
        let users = today.users.clone();
        el("p").class("quiet").own_text(&speech::say(&say!(w::USED_BY, users)))
    });
    let (id, job) = (mark.id.clone(), job.id.clone());
    let settled = live(move || {
        let job = untrack(|| desk.job(&job))?;
        let last = done.with(|done| to_mark(done, &job, &id))?;
        Some(done_line(desk, &job.id, last, done))
    });
    Piece::all([Piece::all(takes), used.into(), settled])
}

/// A link, and how it stands.
type Pair<'a> = (&'a Tie, &'a Linked);

fn is_same_kind(one: &TieState, other: &TieState) -> bool {
    std::mem::discriminant(one) == std::mem::discriminant(other)
}

/// Links of one number that stand alike; at least one.
fn alike(
    desk: Desk,
    job: &Job,
    mark: &Mark,
    group: &[Pair<'_>],
    done: RwSignal<Vec<Done>>,
) -> Piece {
    let voice = speech::voice(job.units);
    let entry = catalog::find(&mark.calculator);
    let label = |tie: &Tie| entry.and_then(|it| row_at(it.rows, &tie.path)).map(|row| row.label);
    let (_, first) = group[0];
    let is_one = group.len() == 1;
    let of = if is_one { &*first.name } else { &*first.title };
    let labels = together(group.iter().filter_map(|(tie, _)| label(tie)));
    let from = match labels {
        Some(labels) => say!(w::TAKES, labels, of),
        None => say!(w::TAKEN_FROM, of),
    };
    let from = el("p").class("quiet").own_text(&voice.say(&from));
    let now = |says: &Text| el("p").class("now").text(&voice.say(says));
    let says = match first.standing {
        TieState::Fresh => return from.into(),
        TieState::Behind => now(&say!(w::SOURCE_BEHIND)).into(),
        TieState::Lost => now(&say!(w::SOURCE_LOST)).into(),
        TieState::Moved(_) => Piece::all(group.iter().map(|(tie, link)| {
            let TieState::Moved(amount) = link.standing else { return Piece::NONE };
            let amount = Arg::Amount(amount, Rounding::Nearest);
            let says = say!(w::SOURCE_MOVED, shown(&tie.seen), amount);
            match label(tie).filter(|_| !is_one) {
                Some(label) => now(&say!(w::PAIR, label, says)).into(),
                None => now(&says).into(),
            }
        })),
    };
    let fault = RwSignal::new(String::new());
    let settle = move |job: &str, before: Mark, after: Mark, what: fn(Edit) -> What| {
        if let Ok(made) = desk.edit(job, Edit::Change(after)) {
            let after = untrack(|| desk.job(job)).and_then(|job| job.mark(&before.id).cloned());
            add(done, Done { mark: before, after, what: what(made.inverse) });
        }
    };
    let paths: Vec<String> = group.iter().map(|(tie, _)| tie.path.clone()).collect();
    let (id, here, those) = (job.id.clone(), mark.clone(), paths.clone());
    let keep = move || {
        let mut kept = here.clone();
        kept.ties.retain(|tie| !those.contains(&tie.path));
        settle(&id, here.clone(), kept, What::Kept);
    };
    let (id, here) = (job.id.clone(), mark.clone());
    let take = move || {
        let Some(job) = untrack(|| desk.job(&id)) else { return };
        let paths: Vec<&str> = paths.iter().map(String::as_str).collect();
        match works::survey(&job).take_all(&here, &paths, clock::now()) {
            Ok(taken) => settle(&id, here.clone(), taken, What::Taken),
            Err(NotTaken::Refused(faults)) => {
                fault.set(faults.first().map(|it| speech::say(&it.says)).unwrap_or_default());
            }
            Err(_) => fault.set(speech::phrase(&w::SOURCE_LOST)),
        }
    };
    let button = |phrase| el("button").attr("type", "button").say(phrase);
    let [takes, keeps] = match is_one {
        true => [&w::TAKE_VALUE, &w::KEEP_VALUE],
        false => [&w::TAKE_VALUES, &w::KEEP_VALUES],
    };
    let take =
        matches!(first.standing, TieState::Moved(_)).then(|| button(takes).class("main").tap(take));
    let keep = (first.standing != TieState::Behind).then(|| button(keeps).tap(keep));
    let can = !job.invented;
    let buttons: Option<El> = can.then(|| el("p").class("buttons").with(take).with(keep));
    let fault = el("p").class("fault").attr("aria-live", "polite").text_live(move || fault.get());
    Piece::all([from.into(), says, Piece::from(buttons), fault.into()])
}
