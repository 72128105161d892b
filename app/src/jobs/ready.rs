//! What stands before each part of the work: what is over, what is to ask, what nobody has looked
//! at. It says what is so, and never that anything has passed.

use super::no_such_job;
use super::owner::word;
use crate::clock;
use crate::desk::Desk;
use crate::drawing::{held, spare, verdict};
use crate::elements::{El, Piece, el};
use crate::signal::Memo;
use crate::{route, speech, words as w, works};
use ledgerboard_core::job::ready::{
    Answer, Found, Looked, Phase, Ready, Snag, Within, looked_at, ready,
};
use ledgerboard_core::job::{Edit, Job, Survey, told_sources};
use ledgerboard_core::say;
use ledgerboard_core::sheet::Check;
use ledgerboard_core::words::{Text, Voice};
use leptos::prelude::*;

/// A line for each part of the work that has numbers here, on the job's page.
pub(super) fn ready_lines(job: &Job, survey: &Survey<'_>) -> Piece {
    let lines = ready(job, survey).into_iter().filter(Ready::is_told).map(|it| {
        let name = el("a").attr("href", &route::ready(&job.id)).say(it.phase.name());
        el("li")
            .class("row")
            .with(el("span").with(name))
            .with(el("span").text(&speech::say(&counts(&it))))
    });
    el("ul").class("rows ready").with_all(lines).into()
}

/// How many of each there are.
fn counts(ready: &Ready) -> Text {
    let count = |of: usize| of as i64;
    let (over, ask) = (count(ready.overs()), count(ready.asks()));
    let counts = say!(w::READY_COUNTS, over, ask, count(ready.open()));
    let counts = match ready.waits() {
        0 => counts,
        wait => say!(w::READY_WAIT, counts, count(wait)),
    };
    let counts = match ready.unlike() {
        0 => counts,
        unlike => say!(w::READY_UNLIKE, counts, count(unlike)),
    };
    let counts = match ready.later.len() {
        0 => counts,
        held => say!(w::READY_LATER_COUNT, counts, count(held)),
    };
    match ready.owner.len() {
        0 => counts,
        said => say!(w::READY_OWNER, counts, count(said)),
    }
}

/// The page of it.
pub(crate) fn ready_page(desk: Desk, id: String) -> El {
    let Some(job) = desk.job(&id) else { return no_such_job() };
    let home = el("a").class("door").attr("href", &route::job(&id));
    let home = home.own_text(&speech::say(&job.heading()));
    let id = StoredValue::new(id);
    let all = ready(&job, &works::survey(&job));
    let parts = Phase::ALL.into_iter().enumerate().map(|(at, phase)| {
        let found = found(&job, &all, at);
        let looked = all.get(at).map(|ready| &*ready.points).unwrap_or_default();
        let points = looked.iter().map(|it| point(desk, id, phase, it.clone(), !job.invented));
        let points = el("ul").class("points").with_all(points.collect::<Vec<_>>());
        el("section")
            .attr("aria-labelledby", phase.key())
            .with(el("h2").id(phase.key()).say(phase.name()))
            .with(found)
            .with(el("h3").say(&w::LOOKED_FOR))
            .with(points)
    });
    el("main")
        .with(el("h1").attr("tabindex", "-1").say(&w::READY))
        .with(el("p").with(home))
        .with(el("p").class("on-paper").text(&speech::say(&clock::now().text())))
        .with(el("p").class("caution").say(&w::READY_SAYS))
        .with_all(parts.collect::<Vec<_>>())
}

/// What is over and what is to ask, of one part of the work.
fn found(job: &Job, all: &[Ready], at: usize) -> Piece {
    let Some(ready) = all.get(at) else { return Piece::NONE };
    let voice = speech::voice(job.units);
    let lines = |found: &[Found]| {
        let lines = found.iter().map(|found| one(job, found, voice));
        el("ul").with_all(lines.collect::<Vec<_>>())
    };
    let later = ready.later.len() as i64;
    let later = (later > 0).then(|| {
        let says = el("p").class("caution").text(&speech::say(&say!(w::READY_LATER, later)));
        Piece::all([says, lines(&ready.later)])
    });
    let Within { counted, sampled, partly, taken, old, held } = ready.within;
    let mut rest = match ready.marks {
        0 => say!(w::READY_NO_MARKS),
        _ => say!(w::READY_WITHIN, counted as i64),
    };
    for (phrase, more) in [
        (&w::READY_SAMPLED, sampled),
        (&w::READY_PARTLY, partly),
        (&w::READY_TAKEN, taken),
        (&w::READY_OLD, old),
        (&w::READY_HELD, held),
    ] {
        if more > 0 {
            rest = say!(*phrase, rest, more as i64);
        }
    }
    let rest = el("p").class("quiet").text(&speech::say(&rest));
    let owner = (!ready.owner.is_empty()).then(|| {
        let answers = ready.owner.iter().map(|it| answer(job, it, voice));
        let answers = el("ul").with_all(answers.collect::<Vec<_>>());
        Piece::all([el("h3").say(&w::OWNERS_ANSWERS), answers])
    });
    Piece::all([
        lines(&ready.over).into(),
        lines(&ready.ask).into(),
        lines(&ready.doubtful).into(),
        Piece::from(later),
        // What is held further down is about this.
        Piece::from((ready.marks > 0 || ready.later.is_empty()).then_some(rest)),
        Piece::from(owner),
    ])
}

/// A number, and what the owner said of it.
fn answer(job: &Job, answer: &Answer, voice: Voice) -> El {
    let title = el("a").attr("href", &route::mark(&job.id, &answer.mark)).own_text(&answer.title);
    let line = el("p").class("row").with(el("span").with(title).text(" ").own_text(&answer.spot));
    let says = word(&answer.said, &answer.now, answer.said.at.date().into());
    el("li").class("found").with(line).with(el("p").class("now").text(&voice.say(&says)))
}

fn one(job: &Job, found: &Found, voice: Voice) -> El {
    let title = el("a").attr("href", &route::mark(&job.id, &found.mark)).own_text(&found.title);
    let snags = found.snags.iter().map(|snag| match snag {
        Snag::Held => held(),
        Snag::Moved => el("span").class("now").say(&w::READY_MOVED),
        Snag::Stale(stale) => el("span").class("now").text(&speech::say(&stale.says())),
    });
    let line = el("p").class("row").with(el("span").with(title).text(" ").own_text(&found.spot));
    let sampled = say!(w::STILL_SAMPLE, found.sampled as i64);
    let sampled = (found.sampled > 0).then(|| el("span").class("now").text(&speech::say(&sampled)));
    let taken = told_sources(&found.takes_sample);
    let taken = taken.map(|says| el("p").class("now").own_text(&voice.say(&says)));
    let unlike =
        found.unlike.iter().map(|it| el("p").class("now").own_text(&voice.say(&it.says())));
    let checks = found.checks.iter().map(|it| check(it, voice));
    el("li")
        .class("found")
        .with(line.with_all(snags.collect::<Vec<_>>()).with(sampled))
        .with(taken)
        .with_all(unlike.collect::<Vec<_>>())
        .with(el("ul").with_all(checks.collect::<Vec<_>>()))
}

fn check(check: &Check, voice: Voice) -> El {
    let says = match &check.note {
        Some(note) => note.clone(),
        None => spare(check),
    };
    let name = el("span").text(&voice.say(&check.name));
    el("li")
        .with(el("p").class("row").with(name).text(" ").with(verdict(check.verdict, check.word())))
        .with(el("p").text(&voice.say(&says)))
        .with(el("p").class("quiet").text(&voice.phrase(&check.source.clause)))
}

/// Something to look for, with its tick. Ticked, nothing is drawn anew: the focus stays.
fn point(desk: Desk, id: StoredValue<String>, phase: Phase, looked: Looked, is_own: bool) -> El {
    let Looked { point, at: then, changed } = looked;
    let name = looked_at(phase, point);
    let key = name.clone();
    let at = Memo::new(move |_| {
        if !is_own {
            return then;
        }
        desk.jobs.with(|jobs| {
            let job = id.with_value(|id| jobs.iter().find(|job| job.id == *id))?;
            job.written(&key).map(|jot| jot.at)
        })
    });
    let key = name.clone();
    let tick = is_own.then(|| {
        let tick = el("input").attr("type", "checkbox").id(&name);
        tick.prop_live("checked", move || at.read().is_some()).on("change", move |event| {
            let says = if event_target_checked(&event) { "yes" } else { "" };
            let edit = Edit::Jot { key: key.clone(), says: says.to_owned() };
            id.with_value(|id| drop(desk.edit(id, edit)));
        })
    });
    let source = match point.source {
        Some(source) => speech::phrase(&source.clause),
        None => speech::phrase(&w::HABIT),
    };
    // Ticked again it is of today.
    let when = move || match (*at.read(), &changed) {
        (Some(at), Some(changed)) if then == Some(at) => {
            speech::say(&say!(w::LOOKED_BEFORE, at.text(), &**changed))
        }
        (Some(at), _) => speech::say(&say!(w::LOOKED_ON, at.text())),
        (None, _) => String::new(),
    };
    let label = el("label")
        .attr("for", &name)
        .with(el("span").say(point.says))
        .text(" ")
        .with(el("span").class("quiet").text(&source))
        .text(" ")
        .with(el("span").class("quiet").text_live(when));
    el("li").class("buy-line point").with(tick).with(label)
}
