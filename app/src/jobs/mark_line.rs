//! One kept number: a line that opens it, and what can be done with it.

use super::details::details;
use super::ties::links;
use crate::desk::Desk;
use crate::drawing::{held, sketch, verdict};
use crate::elements::{El, Piece, el, focus_soon, live, when};
use crate::sheet_view::undo_button;
use crate::signal::RwSignal;
use crate::store::MarkPlace;
use crate::{route, speech, words as w};
use ledgerboard_core::catalog;
use ledgerboard_core::job::{Edit, Job, Kept, LONGEST_TITLE, Mark, Stale, Survey};
use ledgerboard_core::measure::Rounding;
use ledgerboard_core::say;
use ledgerboard_core::sheet::Verdict;
use ledgerboard_core::words::{Amount, Arg, Phrase, Text};
use leptos::prelude::*;

/// What was just taken from the list, shown in its place until the next change.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Gone {
    /// Removed; the edit brings it back.
    Removed(Mark, Edit),
    /// Moved to the job of this id.
    Moved(Mark, String),
    /// Still there, with a linked value taken or kept; the edit brings back how it was.
    Settled(Mark, Edit),
}

impl Gone {
    /// The mark as it was.
    pub(super) fn mark(&self) -> &Mark {
        match self {
            Self::Removed(mark, _) | Self::Moved(mark, _) | Self::Settled(mark, _) => mark,
        }
    }
}

/// A kept answer from its exact text.
pub(crate) fn shown(answer: &str) -> Text {
    match Amount::from_exact(answer) {
        Some(amount) => say!(w::FIGURE, Arg::Amount(amount, Rounding::Nearest)),
        None => say!(w::FIGURE, answer),
    }
}

/// Whether a mark is a hold.
pub(crate) fn is_hold(mark: &Mark) -> bool {
    catalog::find(&mark.calculator).is_some_and(|entry| entry.is_hold)
}

/// The word for how a kept answer stood: a hold that isn't shut is open.
pub(crate) fn word_of(calculator: &str, kept: &Kept) -> &'static Phrase {
    let is_hold = catalog::find(calculator).is_some_and(|entry| entry.is_hold);
    if is_hold && !kept.is_held() { &w::HOLD_OPEN } else { kept.word() }
}

/// The line of a mark.
pub(super) fn mark_line(
    desk: Desk,
    job: &Job,
    survey: &Survey<'_>,
    mark: &Mark,
    gone: RwSignal<Option<Gone>>,
    opened: RwSignal<Option<Mark>>,
) -> El {
    let voice = speech::voice(job.units);
    let kept = &mark.kept;
    let answer = shown(&kept.answer);
    let word = kept.verdict();
    // Whatever it was on its day, what is held today is held.
    let is_held = match survey.worked(&mark.id) {
        Some(Ok(worked)) => worked.standing.is_held(),
        _ => kept.is_held(),
    };
    let (opens, now) = match survey.worked(&mark.id) {
        None => (true, None),
        Some(Ok(worked)) => {
            let now = Kept::of(worked);
            let differs = (!now.agrees(kept)).then(|| {
                let today = shown(&now.answer);
                let (then, now) =
                    (word_of(&mark.calculator, kept), word_of(&mark.calculator, &now));
                say!(w::THEN_NOW, answer.clone(), then, today, now)
            });
            (true, differs)
        }
        Some(Err(stale)) => (matches!(stale, Stale::Refused(_)), Some(stale.says())),
    };
    let is_over = match survey.worked(&mark.id) {
        Some(Ok(worked)) => worked.sheet.verdict() == Verdict::Over && !is_hold(mark),
        _ => false,
    };
    // A bare count says nothing by itself.
    let is_count = matches!(Amount::from_exact(&kept.answer), Some(Amount::Count(_)));
    let named = match survey.worked(&mark.id) {
        Some(Ok(worked)) if is_count => {
            let headline = &worked.sheet.headline;
            let as_kept = headline.amount.exact() == kept.answer;
            let value = headline.said.clone().filter(|_| as_kept).unwrap_or_else(|| answer.clone());
            say!(w::PAIR, headline.name.clone(), value)
        }
        _ => answer.clone(),
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
        .with((!is_held).then(|| verdict(word, word_of(&mark.calculator, kept))))
        .with((is_held && is_over).then(|| verdict(Verdict::Over, Verdict::Over.words())));
    let note = (!mark.note.is_empty()).then(|| el("p").class("quiet").own_text(&mark.note));
    // A room is known by its plan.
    let plan = match survey.worked(&mark.id) {
        Some(Ok(worked)) if catalog::find(&mark.calculator).is_some_and(|it| it.is_room) => {
            worked.sheet.drawing.as_ref().map(|drawing| sketch(drawing, &mark.id, voice))
        }
        _ => None,
    };
    let day = say!(w::SAVED_ON, mark.at.text());
    el("li")
        .class("mark")
        .attr("data-mark", &mark.id)
        .with(line)
        .with(plan)
        .with(note)
        .with((!job.invented).then(|| el("p").class("quiet").text(&speech::say(&day))))
        .with(now.map(|now| el("p").class("now").text(&voice.say(&now))))
        .with(links(desk, job, survey, mark, gone))
        .with((!job.invented).then(|| actions(desk, job, mark, gone, opened)))
}

/// What can be done with a mark, folded under its line and built when it is opened.
fn actions(
    desk: Desk,
    job: &Job,
    mark: &Mark,
    gone: RwSignal<Option<Gone>>,
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
                Piece::all([fields, Some(buttons(desk, &place, gone))])
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
fn focus_on(mark: &str) {
    focus_soon(&["[data-mark='", mark, "'] .mark-line"].concat());
}

fn buttons(desk: Desk, place: &MarkPlace, gone: RwSignal<Option<Gone>>) -> El {
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
            gone.set(Some(Gone::Removed(mark, made.inverse)));
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
                    gone.set(Some(Gone::Moved(mark, to)));
                }
            })
    });
    el("div")
        .class("buttons")
        .with(button(&w::AGAIN).tap(again))
        .with(mover)
        .with(button(&w::REMOVE).tap(remove))
}

/// The place where a mark was, or what was done to it, and the tap that takes it back.
pub(super) fn gone_line(desk: Desk, job: &str, here: Gone, gone: RwSignal<Option<Gone>>) -> El {
    let stays = matches!(here, Gone::Settled(..));
    let text = match &here {
        Gone::Removed(mark, _) => say!(w::MARK_REMOVED, &*mark.title),
        Gone::Settled(..) => say!(w::SETTLED),
        Gone::Moved(_, to) => match untrack(|| desk.job(to)) {
            Some(to) => say!(w::MARK_MOVED, to.heading()),
            None => say!(w::REMOVED),
        },
    };
    let job = job.to_owned();
    let undo = move || {
        let done = match &here {
            Gone::Removed(_, inverse) | Gone::Settled(_, inverse) => {
                desk.edit(&job, inverse.clone()).is_ok()
            }
            Gone::Moved(mark, to) => desk.move_mark(to, &job, &mark.id).is_ok(),
        };
        if done {
            gone.set(None);
            focus_on(&here.mark().id);
        }
    };
    el(if stays { "p" } else { "li" })
        .class("undo")
        .attr("role", "status")
        .with(el("span").own_text(&speech::say(&text)))
        .with(undo_button().tap(undo))
}
