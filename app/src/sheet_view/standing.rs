//! How an answer stands with the holds: what keeps it shut, which hold it is put behind, and the way
//! to one. What opens a hold is the core's; nothing here can.

use crate::elements::{El, Piece, el, live};
use crate::jobs::is_hold;
use crate::question::{Question, source_name};
use crate::signal::Memo;
use crate::{route, speech, store, words as w};
use ledgerboard_core::catalog::{ALL, Entry, hold_for};
use ledgerboard_core::job::{Job, Mark};
use ledgerboard_core::say;
use ledgerboard_core::sheet::Standing;
use ledgerboard_core::words::Text;
use leptos::prelude::event_target_value;

/// Nothing where no old material is disturbed.
pub(super) fn standing(question: Question) -> Piece {
    let now = Memo::new(move |before: Option<&Standing>| {
        question.worked.with(|worked| match worked {
            Ok(worked) => worked.standing.clone(),
            // While a field is half typed, what was held stays held.
            Err(_) => before.cloned().unwrap_or_default(),
        })
    });
    live(move || match now.get() {
        Standing::NotNeeded => Piece::NONE,
        Standing::Opened(_) if question.entry.is_hold => Piece::NONE,
        Standing::Opened(by) => opened(question, &by).into(),
        // The hold's own page says why under its answer.
        Standing::Held(_) if question.entry.is_hold => Piece::NONE,
        Standing::Held(reasons) => shut(question, &reasons).into(),
    })
}

fn shut(question: Question, reasons: &[Text]) -> El {
    let voice = question.voice();
    let why = reasons.iter().map(|reason| el("p").text(&voice.say(reason)));
    let door = ALL.iter().find(|entry| entry.is_hold).map(|entry| {
        let text = speech::say(&say!(w::OPEN_HOLD, entry.name));
        el("a").class("door").attr("href", &hold_address(question, entry)).text(&text)
    });
    // What it is put behind may be shut itself: then that is what there is to see to.
    let behind = question.links.with(|links| links.behind.is_some());
    let still_shut = (behind && question.hold().is_none()).then(|| el("p").say(&w::STILL_SHUT));
    el("div")
        .class("shut")
        .with_all(why)
        .with(still_shut)
        .with(live(move || picker(question)))
        .with(live(move || way_to(question)))
        .with(door.map(|door| el("p").with(door)))
}

/// The way to the hold that it stands behind, while that is shut.
fn way_to(question: Question) -> Option<El> {
    let (job, hold) =
        question.links.with(|links| Some((links.job.clone(), links.behind.clone()?)))?;
    let home = question.desk.job(&job)?;
    let name = source_name(home.mark(&hold)?, None);
    let text = speech::say(&say!(w::OPEN_THAT_HOLD, name));
    let door = el("a").class("door").attr("href", &route::mark(&job, &hold)).own_text(&text);
    Some(el("p").with(door))
}

/// Which hold it is open by, and the way to another.
fn opened(question: Question, by: &Text) -> El {
    let by = say!(w::OPENED_BY, by.clone());
    el("div")
        .class("opened")
        .with(el("p").class("quiet").text(&question.voice().say(&by)))
        .with(live(move || picker(question)))
}

/// The hold's page, told what this work already says; where something was typed there, as it was
/// left.
fn hold_address(question: Question, hold: &Entry) -> String {
    let plain = route::calculator(hold.id);
    if store::draft(hold.id).is_some() {
        return plain;
    }
    let units = question.units.get();
    let work = question.draft.with(|draft| question.entry.disturbs(draft, units));
    work.and_then(|work| hold_for(&work)).map_or(plain, |link| route::question(&link))
}

/// The holds of the question's job, to be put behind one.
fn picker(question: Question) -> Option<El> {
    let job: Job = question.home()?;
    let holds: Vec<&Mark> = job.marks.iter().filter(|mark| is_hold(mark)).collect();
    if holds.is_empty() {
        return None;
    }
    let now = question.links.with(|links| links.behind.clone()).unwrap_or_default();
    let option = |value: &str| {
        let option = el("option").attr("value", value);
        if value == now { option.attr("selected", "") } else { option }
    };
    let options = holds.iter().map(|mark| option(&mark.id).own_text(&source_name(mark, None)));
    let select = el("select")
        .id("which-hold")
        .with(option("").say(&w::BEHIND_NONE))
        .with_all(options)
        .on("change", move |event| {
            let hold = event_target_value(&event);
            question.stand_behind(Some(hold).filter(|hold| !hold.is_empty()));
        });
    let label = el("label").class("label").attr("for", "which-hold").say(&w::BEHIND);
    Some(el("div").class("field stacked").with(label).with(select))
}
