//! Making a backup: of all jobs, or of one. And one quiet line that says how old the last one is.

use super::hand_on::{Handed, JSON, hand_on};
use super::show;
use crate::desk::Desk;
use crate::elements::{El, Piece, el, live};
use crate::keep::{copy, then};
use crate::{clock, route, speech, update_bar, words as w};
use ledgerboard_core::job::backup::{self, Written};
use ledgerboard_core::job::{Job, Moment};
use ledgerboard_core::say;
use ledgerboard_core::words::{Phrase, Text};
use leptos::prelude::untrack;

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
    crate::elements::when(
        move || desk.has_all() && !desk.jobs.read().is_empty(),
        move || buttons(desk, None),
    )
}

/// The button for one job, on its page.
pub(crate) fn of_one_job(desk: Desk, id: String) -> El {
    buttons(desk, Some(id))
}

/// One button, in the words of where it stands: for one job, or for all.
pub(crate) fn first(desk: Desk, one: Option<String>, phrase: &'static Phrase) -> El {
    let place = el("div").attr("role", "status");
    el("div").with(file_button(desk, one, phrase, place.clone())).with(place)
}

/// Said on the first page once much would be lost with the phone.
pub(crate) fn overdue(desk: Desk) -> Piece {
    live(move || {
        let last = desk.settings.read().backed_up;
        let count = desk.jobs.with(|jobs| backup::overdue(jobs, last, clock::now().at))?;
        let says = say!(w::NOT_BACKED_UP, i64::try_from(count).unwrap_or(i64::MAX));
        let door = el("a").class("door").attr("href", route::JOBS).say(&w::BACK_UP);
        let says = el("span").text(&speech::say(&says));
        Some(el("p").class("quiet").with(says).text(" ").with(door))
    })
}

/// The day, behind whose file it is.
fn file_name(desk: Desk, one: Option<&str>) -> String {
    match one.and_then(|id| untrack(|| desk.job(id))) {
        Some(job) => named(&job, ".json"),
        None => dated("backup", ".json"),
    }
}

/// The name of a file about a job.
pub(crate) fn named(job: &Job, ending: &str) -> String {
    dated(&plain(&speech::say(&job.heading())), ending)
}

fn dated(about: &str, ending: &str) -> String {
    ["ledgerboard-", about, "-", &clock::now().date(), ending].concat()
}

/// A name with nothing in it that a file's name can't have.
fn plain(name: &str) -> String {
    const MOST: usize = 40;
    let mut plain = String::with_capacity(name.len());
    for sign in name.chars() {
        if sign.is_ascii_alphanumeric() || !sign.is_ascii() {
            plain.push(sign);
        } else if !plain.is_empty() && !plain.ends_with('-') {
            plain.push('-');
        }
    }
    let cut: String = plain.chars().take(MOST).collect();
    let cut = cut.trim_end_matches('-');
    if cut.is_empty() { "job".to_owned() } else { cut.to_owned() }
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
    backup::write(&jobs(desk, one), &written(desk))
}

/// What is written now, by this phone.
pub(super) fn written(desk: Desk) -> Written {
    let by = [&speech::phrase(&w::NAME), " ", &update_bar::version()].concat();
    let device = desk.settings.read_untracked().device.clone();
    Written { by, made: clock::now(), device }
}

fn button(phrase: &'static Phrase) -> El {
    el("button").attr("type", "button").say(phrase)
}

/// Hands on a file; what comes of it is said in `place`.
fn file_button(desk: Desk, one: Option<String>, phrase: &'static Phrase, place: El) -> El {
    button(phrase).tap(move || {
        let (here, which) = (place.clone(), one.clone());
        let name = file_name(desk, one.as_deref());
        let made = clock::now().at;
        hand_on(&name.clone(), JSON, &text(desk, one.as_deref()), move |handed| {
            let counts = move || desk.set(|settings| settings.backed_up = Some(made));
            let says = |text: &Text| el("p").text(&speech::say(text));
            match handed {
                Handed::Shared => {
                    if which.is_none() {
                        counts();
                    }
                    show(&here, says(&say!(w::BACKUP_SHARED)));
                }
                Handed::NotShared => show(&here, says(&say!(w::BACKUP_NOT_SHARED))),
                // No page is told whether the browser kept it: a person looks.
                Handed::Downloaded => {
                    let place = here.clone();
                    let there = move || {
                        counts();
                        let thanks = el("p").attr("tabindex", "-1").say(&w::BACKUP_IS_THERE);
                        thanks.clone().focus_in_place();
                        show(&place, thanks);
                    };
                    let there = which.is_none().then(|| button(&w::IT_IS_THERE).tap(there));
                    let handed = says(&say!(w::BACKUP_DOWNLOADED, name.as_str()));
                    show(&here, Piece::all([Some(handed), there]));
                }
                Handed::Refused => {
                    let text = as_text(&text(desk, which.as_deref()));
                    show(&here, Piece::all([says(&say!(w::NO_FILE)).into(), text]));
                }
            }
        });
    })
}

fn buttons(desk: Desk, one: Option<String>) -> El {
    let place = el("div").attr("role", "status");
    let phrase = if one.is_some() { &w::BACK_UP_ONE } else { &w::BACK_UP_ALL };
    let file = file_button(desk, one.clone(), phrase, place.clone());
    let here = place.clone();
    let as_text = move || show(&here, as_text(&text(desk, one.as_deref())));
    let as_text = button(&w::BACKUP_AS_TEXT).class("quiet").tap(as_text);
    el("div").with(el("div").class("buttons").with(file).with(as_text)).with(place)
}

/// The backup to be copied, by a tap or by hand.
fn as_text(text: &str) -> Piece {
    let field = el("textarea")
        .attr("readonly", "")
        .attr("rows", "4")
        .named(&speech::phrase(&w::BACKUP_TEXT))
        .own_text(text);
    let (text, came) = (text.to_owned(), el("p").attr("role", "status"));
    let place = came.clone();
    let tap = move || {
        let [good, bad] = [&w::COPIED, &w::NOT_COPIED].map(|phrase| {
            let place = place.clone();
            move || show(&place, el("span").say(phrase))
        });
        match copy(&text) {
            Some(copied) => then(&copied, move |_| good(), move |_| bad()),
            None => bad(),
        }
    };
    let says = el("p").say(&w::BACKUP_TEXT_SAYS);
    Piece::all([says, field, el("p").with(button(&w::COPY_TEXT).tap(tap)), came])
}

#[cfg(test)]
mod tests {
    use super::plain;

    #[test]
    fn a_name_is_one_that_any_phone_can_write() {
        for (name, want) in [
            ("12 Alder St", "12-Alder-St"),
            (" ../../etc: \"x\" ", "etc-x"),
            ("Casa Peña 4", "Casa-Peña-4"),
            ("//", "job"),
            (&"a ".repeat(60), &["a-"; 20].concat()[..39]),
        ] {
            assert_eq!(plain(name), want);
        }
    }
}
