//! One kept number: a line that opens it, and what can be done with it.

use super::details::details;
use super::done::{Done, What, add};
use super::marks::Lines;
use super::owner::owner_says;
use super::ties::links;
use super::today::Today;
use super::versions::versions;
use crate::desk::Desk;
use crate::drawing::{held, sketch, verdict};
use crate::elements::{El, Piece, el, flag, focus_soon, live, when};
use crate::signal::{Memo, RwSignal};
use crate::store::MarkPlace;
use crate::{route, speech, words as w};
use ledgerboard_core::catalog::{self, Worked};
use ledgerboard_core::job::turnover::{Seen, said};
use ledgerboard_core::job::{Edit, Job, Kept, LONGEST_TITLE, Mark, Stale, told_sources};
use ledgerboard_core::measure::Rounding;
use ledgerboard_core::say;
use ledgerboard_core::sheet::{Verdict, calendar};
use ledgerboard_core::words::{Amount, Arg, Phrase, Text};
use leptos::prelude::*;

/// A kept answer from its exact text.
pub(crate) fn shown(answer: &str) -> Text {
    match Amount::from_exact(answer) {
        Some(Amount::Day(day)) => calendar::told(day),
        Some(amount) => say!(w::FIGURE, Arg::Amount(amount, Rounding::Nearest)),
        None => say!(w::FIGURE, answer),
    }
}

/// Whether a mark is a hold.
pub(crate) fn is_hold(mark: &Mark) -> bool {
    catalog::find(&mark.calculator).is_some_and(|entry| entry.is_hold)
}

/// What was kept, and what that is now: in the phrase's words, with a word for how either stood. None
/// where a person would call them the same.
pub(crate) fn then_now(
    phrase: &'static Phrase,
    calculator: &str,
    then: &Kept,
    worked: &Worked,
) -> Option<Text> {
    let both = [then, &Kept::of(worked)];
    if both[1].agrees(then) {
        return None;
    }
    let [was, is] = both.map(|kept| shown(&kept.answer));
    if both.iter().all(|kept| kept.is_bare()) {
        return Some(say!(w::THEN_NOW_BARE, was, is));
    }
    let [stood, stands] = both.map(|kept| kept.word_beside(calculator, worked));
    Some(say!(*phrase, was, stood, is, stands))
}

/// What a mark's item holds. It says what was kept, and what that is today once `is_told`.
pub(super) fn mark_line(lines: &Lines, mark: &Mark, is_told: Memo<bool>) -> Piece {
    let part = |build: fn(&Lines, &Mark, Option<&Today>) -> Piece| {
        let (lines, id) = (lines.clone(), mark.id.clone());
        live(move || {
            let is_told = is_told.get();
            let mark = lines.job.mark(&id)?;
            let told = || lines.today(mark, |today| build(&lines, mark, Some(today)));
            let today = if is_told { untrack(told) } else { None };
            Some(today.unwrap_or_else(|| untrack(|| build(&lines, mark, None))))
        })
    };
    let is_own = !lines.job.invented;
    let note = (!mark.note.is_empty()).then(|| el("p").class("quiet").own_text(&mark.note));
    let day = || el("p").class("quiet").text(&speech::say(&say!(w::SAVED_ON, mark.at.text())));
    Piece::all([
        part(line),
        note.into(),
        is_own.then(day).into(),
        part(owner),
        is_own.then(|| waits(lines, &mark.id)).into(),
        part(sampled),
        part(versions),
        part(changed),
        is_own.then(|| actions(lines.desk, &lines.job, mark, lines.done, lines.opened)).into(),
    ])
}

/// The worked answer of today, where there is one.
fn worked(today: Option<&Today>) -> Option<&Worked> {
    today.and_then(|today| (*today.says).as_ref().ok())
}

/// The line that opens the mark, and the plan of one that is a room.
fn line(lines: &Lines, mark: &Mark, today: Option<&Today>) -> Piece {
    let (desk, job) = (lines.desk, &lines.job);
    let voice = speech::voice(job.units);
    let kept = &mark.kept;
    let answer = shown(&kept.answer);
    let word = kept.verdict();
    let now = worked(today);
    let opens = today.is_none_or(|it| matches!(&*it.says, Ok(_) | Err(Stale::Refused(_))));
    // Whatever it was on its day, what is held today is held.
    let is_held = now.map_or_else(|| kept.is_held(), |worked| worked.standing.is_held());
    let over = now.and_then(|worked| worked.sheet.decisive());
    let over = over.filter(|check| check.verdict == Verdict::Over && is_held && !is_hold(mark));
    let stood = match now {
        Some(worked) => kept.word_beside(&mark.calculator, worked),
        None => kept.word(&mark.calculator),
    };
    // A bare count says nothing by itself.
    let is_count = matches!(Amount::from_exact(&kept.answer), Some(Amount::Count(_)));
    let named = match now.filter(|_| is_count) {
        Some(worked) => {
            let headline = &worked.sheet.headline;
            let as_kept = headline.amount.exact() == kept.answer;
            let value = headline.said.clone().filter(|_| as_kept).unwrap_or(answer);
            say!(w::PAIR, headline.name.clone(), value)
        }
        None => answer,
    };
    let (id, home, was) = (mark.id.clone(), job.id.clone(), mark.title.clone());
    let title = move || {
        // Looked up where it stands: the invented job is worked anew by each call for it.
        let now = desk.jobs.with(|jobs| {
            let job = jobs.iter().find(|job| job.id == home)?;
            job.mark(&id).map(|mark| mark.title.clone())
        });
        now.unwrap_or_else(|| was.clone())
    };
    let line =
        if opens { el("a").attr("href", &route::mark(&job.id, &mark.id)) } else { el("span") };
    let line = line
        .class("mark-line")
        .with(live(move || el("span").class("mark-title").own_text(&title())))
        .text(" ")
        .with(el("span").class("value").text(&voice.say(&named)))
        .text(" ")
        .with(is_held.then(held))
        .with((!is_held && !kept.is_bare()).then(|| verdict(word, stood)))
        .with(over.map(|check| verdict(Verdict::Over, check.word())));
    // A room is known by its plan.
    let is_room = catalog::find(&mark.calculator).is_some_and(|it| it.is_room);
    let plan = now.filter(|_| is_room).and_then(|worked| {
        worked.sheet.drawing.as_ref().map(|drawing| sketch(drawing, &mark.id, voice))
    });
    Piece::all([Piece::from(line), plan.into()])
}

/// What the owner said of it, where that leaves something to settle.
fn owner(lines: &Lines, mark: &Mark, today: Option<&Today>) -> Piece {
    let said = said(&lines.job, &mark.id);
    let now = Seen::of(mark, worked(today));
    let says = said.filter(|said| said.is_open(&now)).map(|said| {
        let voice = speech::voice(lines.job.units);
        el("p").class("now").text(&voice.say(&owner_says(&said, &now)))
    });
    says.into()
}

/// An edit of it waits: it opens where that can be gone on with.
fn waits(lines: &Lines, mark: &str) -> Piece {
    let address = route::mark(&lines.job.id, mark);
    let (desk, home, mark) = (lines.desk, lines.job.id.clone(), mark.to_owned());
    let is_there = flag(move || desk.edits_of(&home, Some(&mark)) > 0);
    when(
        move || is_there.get(),
        move || {
            let opens = el("a").class("door").attr("href", &address).say(&w::EDIT_OF_IT);
            el("p").class("now").with(opens)
        },
    )
}

/// How many of its fields are still the sample's, and which numbers with such fields it takes from.
fn sampled(lines: &Lines, mark: &Mark, _: Option<&Today>) -> Piece {
    let count = lines.job.still_sample(mark).len() as i64;
    let says = say!(w::STILL_SAMPLE, count);
    let own = (count > 0).then(|| el("p").class("now").text(&speech::say(&says)));
    let taken = told_sources(&lines.job.takes_sample(mark));
    let taken = taken.map(|says| el("p").class("now").own_text(&speech::say(&says)));
    Piece::all([Piece::from(own), taken.into()])
}

/// Where today's answer isn't the kept one, and what the mark takes from others.
fn changed(lines: &Lines, mark: &Mark, today: Option<&Today>) -> Piece {
    let Some(today) = today else { return Piece::NONE };
    let kept = &mark.kept;
    let now = match &*today.says {
        Ok(worked) => then_now(&w::THEN_NOW, &mark.calculator, kept, worked),
        Err(stale) => Some(stale.says()),
    };
    let voice = speech::voice(lines.job.units);
    let now = now.map(|now| el("p").class("now").text(&voice.say(&now)));
    Piece::all([now.into(), links(lines.desk, &lines.job, today, mark, lines.done)])
}

/// What can be done with a mark, folded under its line and built when it is opened.
fn actions(
    desk: Desk,
    job: &Job,
    mark: &Mark,
    done: RwSignal<Vec<Done>>,
    opened: RwSignal<Option<Mark>>,
) -> El {
    let as_it_is = mark.clone();
    let place = MarkPlace { job: job.id.clone(), mark: mark.id.clone() };
    let open = RwSignal::new(false);
    let is_alone = desk.jobs.with_untracked(|jobs| jobs.len() < 2);
    let can = if is_alone { &w::CHANGE_DETAILS_ALONE } else { &w::CHANGE_DETAILS };
    let summary = el("summary").say(can);
    let details_element = el("details").class("actions").with(summary);
    let node = details_element.node().clone();
    details_element
        .with(when(
            move || open.get(),
            move || {
                let fields = details(desk, place.clone());
                Piece::all([fields, Some(buttons(desk, &place, done))])
            },
        ))
        .on("toggle", move |_| {
            let now = node.has_attribute("open");
            open.set(now);
            // Opened, its line stays as it is; closed, it says what was written.
            let this = opened.try_get_untracked().flatten();
            if now {
                opened.set(Some(as_it_is.clone()));
            } else if this.is_some_and(|this| this.id == as_it_is.id) {
                opened.set(None);
            }
        })
}

/// Goes to a mark's line, once the list has been drawn anew.
pub(super) fn focus_on(mark: &str) {
    focus_soon(&["[data-mark='", mark, "'] .mark-line"].concat());
}

fn buttons(desk: Desk, place: &MarkPlace, done: RwSignal<Vec<Done>>) -> El {
    let button = |phrase| el("button").attr("type", "button").say(phrase);
    let now = {
        let place = place.clone();
        move || untrack(|| desk.job(&place.job)).and_then(|job| job.mark(&place.mark).cloned())
    };
    let (job, copied) = (place.job.clone(), now.clone());
    let again = move || {
        if let Some(mark) = copied() {
            let mut copy = mark.duplicate(&desk.stamp());
            let longer = speech::say(&say!(w::COPIED_TITLE, &*mark.title));
            if longer.chars().count() <= LONGEST_TITLE {
                copy.title = longer;
            }
            let id = copy.id.clone();
            if desk.edit(&job, Edit::Keep(copy)).is_ok() {
                focus_on(&id);
            }
        }
    };
    let (here, taken) = (place.clone(), now.clone());
    let remove = move || {
        if let Some(mark) = taken()
            && let Ok(made) = desk.edit(&here.job, Edit::Remove(here.mark.clone()))
        {
            add(done, Done { mark, after: None, what: What::Removed(made.inverse) });
        }
    };
    let others = desk.jobs.with_untracked(|jobs| {
        let others = jobs.iter().filter(|job| job.id != place.job);
        let option =
            |job: &Job| el("option").attr("value", &job.id).own_text(&speech::say(&job.heading()));
        others.map(option).collect::<Vec<_>>()
    });
    let here = place.clone();
    let mover = (!others.is_empty()).then(|| {
        el("select")
            .named(&speech::phrase(&w::MOVE))
            .with(el("option").attr("value", "").say(&w::MOVE))
            .with_all(others)
            .on("change", move |event| {
                let to = event_target_value(&event);
                if let Some(mark) = now()
                    && desk.move_mark(&here.job, &to, &here.mark).is_ok()
                {
                    add(done, Done { mark, after: None, what: What::Moved(to) });
                }
            })
    });
    el("div")
        .class("buttons")
        .with(button(&w::AGAIN).tap(again))
        .with(mover)
        .with(button(&w::REMOVE).tap(remove))
}
