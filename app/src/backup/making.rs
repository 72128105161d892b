//! Making a backup: of all jobs, or of one. And one quiet line that says how old the last one is.

use super::hand_on::{Handed, hand_on};
use super::show;
use crate::desk::Desk;
use crate::elements::{El, Piece, el, live};
use crate::{clock, speech, update_bar, words as w};
use ledgerboard_core::job::backup::{self, Written};
use ledgerboard_core::job::{Job, Moment};
use ledgerboard_core::say;

/// How old the last backup is, and what has been saved since.
pub(super) fn reminder(desk: Desk) -> Piece {
    live(move || {
        let last = desk.settings.read().backed_up;
        let since = desk.jobs.with(|jobs| backup::marks_since(jobs, last.unwrap_or(i64::MIN)));
        let since = i64::try_from(since).unwrap_or(i64::MAX);
        let text = match last {
            None if since == 0 => return Piece::NONE,
            None => say!(w::NO_BACKUP_YET, since),
            Some(at) => {
                let moment = Moment { at, ..clock::now() }.text();
                if since == 0 {
                    say!(w::BACKED_UP_ALL, moment)
                } else {
                    say!(w::BACKED_UP_SINCE, moment, since)
                }
            }
        };
        el("p").class("quiet").text(&speech::say(&text)).into()
    })
}

/// The button for all jobs, while there are any.
pub(crate) fn of_all_jobs(desk: Desk) -> Piece {
    crate::elements::when(move || !desk.jobs.read().is_empty(), move || buttons(desk, None))
}

/// The button for one job, on its page.
pub(crate) fn of_one_job(desk: Desk, id: String) -> El {
    buttons(desk, Some(id))
}

/// The jobs that are asked for.
fn jobs(desk: Desk, one: Option<&str>) -> Vec<Job> {
    let mut jobs = desk.jobs.get_untracked();
    if let Some(one) = one {
        jobs.retain(|job| job.id == one);
    }
    jobs
}

fn text(desk: Desk, one: Option<&str>) -> String {
    let by = [&speech::phrase(&w::NAME), " ", &update_bar::version()].concat();
    let device = desk.settings.read_untracked().device.clone();
    backup::write(&jobs(desk, one), &Written { by, made: clock::now(), device })
}

fn buttons(desk: Desk, one: Option<String>) -> El {
    let button = |phrase| el("button").attr("type", "button").say(phrase);
    let place = el("div").attr("role", "status");
    let (phrase, start) = match one {
        Some(_) => (&w::BACK_UP_ONE, "ledgerboard-job-"),
        None => (&w::BACK_UP_ALL, "ledgerboard-backup-"),
    };
    let (here, which) = (place.clone(), one.clone());
    let make = move || {
        let (here, which) = (here.clone(), which.clone());
        let name = [start, &clock::now().date(), ".json"].concat();
        hand_on(&name.clone(), &text(desk, which.as_deref()), move |handed| {
            if which.is_none() && matches!(handed, Handed::Shared | Handed::Downloaded) {
                desk.set(|settings| settings.backed_up = Some(clock::now().at));
            }
            let says = match handed {
                Handed::Shared => say!(w::BACKUP_SHARED),
                Handed::NotShared => say!(w::BACKUP_NOT_SHARED),
                Handed::Downloaded => say!(w::BACKUP_DOWNLOADED, name.as_str()),
                Handed::Refused => return show(&here, as_text(&text(desk, which.as_deref()))),
            };
            show(&here, el("p").text(&speech::say(&says)));
        });
    };
    let here = place.clone();
    let as_text = move || show(&here, as_text(&text(desk, one.as_deref())));
    el("div")
        .with(
            el("div")
                .class("buttons")
                .with(button(phrase).tap(make))
                .with(button(&w::BACKUP_AS_TEXT).class("quiet").tap(as_text)),
        )
        .with(place)
}

/// The backup to be copied by hand.
fn as_text(text: &str) -> Piece {
    let field = el("textarea")
        .attr("readonly", "")
        .attr("rows", "4")
        .named(&speech::phrase(&w::BACKUP_TEXT))
        .own_text(text);
    Piece::all([el("p").say(&w::BACKUP_TEXT_SAYS), field])
}
