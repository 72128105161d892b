//! How an answer stands with the holds: what keeps it shut, which hold it is put behind, and the way
//! to one. What opens a hold is the core's; nothing here can.

use crate::elements::{El, Piece, el, live};
use crate::question::{Question, source_name};
use crate::signal::Memo;
use crate::{route, speech, words as w};
use ledgerboard_core::catalog::{self, ALL};
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
        Standing::Opened(by) => el("p").class("quiet").text(&question.voice().say(&by)).into(),
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
        el("a").class("door").attr("href", &route::calculator(entry.id)).text(&text)
    });
    el("div")
        .class("shut")
        .with_all(why)
        .with(live(move || picker(question)))
        .with(door.map(|door| el("p").with(door)))
}

fn is_hold(mark: &Mark) -> bool {
    catalog::find(&mark.calculator).is_some_and(|entry| entry.is_hold)
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
        .id("behind")
        .with(option("").say(&w::BEHIND_NONE))
        .with_all(options)
        .on("change", move |event| {
            let hold = event_target_value(&event);
            question.stand_behind(Some(hold).filter(|hold| !hold.is_empty()));
        });
    let label = el("label").class("label").attr("for", "behind").say(&w::BEHIND);
    Some(el("div").class("field stacked").with(label).with(select))
}
