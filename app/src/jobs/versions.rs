//! Two versions of one number that a merge has left: what differs, and the tap that settles it.

use super::done::{Done, What, add};
use super::marks::Lines;
use super::today::Today;
use crate::elements::{Piece, el};
use crate::signal::RwSignal;
use crate::{speech, words as w};
use ledgerboard_core::job::{Differs, Edit, Mark, differences, in_use, others, use_other};
use ledgerboard_core::say;
use ledgerboard_core::words::Text;
use leptos::prelude::*;

/// What stands with the other version, and with the one in use.
pub(super) fn versions(lines: &Lines, mark: &Mark, _: Option<&Today>) -> Piece {
    let job = &lines.job;
    let voice = speech::voice(job.units);
    let quiet = |text| el("p").class("quiet").own_text(&voice.say(&text));
    let Some(used) = in_use(job, mark) else {
        let lines = others(job, mark).map(|it| quiet(say!(w::HAS_VERSION, &*it.title)));
        return Piece::all(lines);
    };
    let line = |it: &Differs| {
        let says = say!(w::VERSIONS_DIFFER, it.name.clone(), it.here.clone(), it.there.clone());
        el("li").own_text(&voice.say(&says))
    };
    // The title differs by its last words at least.
    let differing =
        differences(&Mark { title: mark.title.clone(), ..used.clone() }, mark, job.units);
    let phrase = if differing.is_empty() { &w::VERSION_TITLED } else { &w::VERSION_OF };
    let says = Text { phrase, args: vec![(&*used.title).into()] };
    let says = el("p").class("now").own_text(&voice.say(&says));
    let differing = (!differing.is_empty())
        .then(|| el("ul").class("differs quiet").with_all(differing.iter().map(line)));
    let differing = Piece::from(differing);
    if job.invented {
        return Piece::all([says.into(), differing]);
    }
    let (desk, done, id) = (lines.desk, lines.done, job.id.clone());
    let (here, used) = (mark.clone(), used.id.clone());
    let fault = RwSignal::new(String::new());
    let settle = move |uses: bool| {
        let Some(job) = untrack(|| desk.job(&id)) else { return };
        let edit = match job.mark(&used).filter(|_| uses) {
            Some(used) => use_other(&job, used, &here),
            None => Edit::Remove(here.id.clone()),
        };
        match desk.edit(&id, edit) {
            Err(refusal) => fault.set(speech::say(&refusal.says())),
            Ok(made) => {
                let after = || untrack(|| desk.job(&id)).and_then(|job| job.mark(&used).cloned());
                let what = if uses { What::Used } else { What::Removed };
                let after = if uses { after() } else { None };
                add(done, Done { mark: here.clone(), after, what: what(made.inverse) });
            }
        }
    };
    let leave = settle.clone();
    let button = |phrase| el("button").attr("type", "button").say(phrase);
    let buttons = el("p")
        .class("buttons")
        .with(button(&w::USE_VERSION).tap(move || settle(true)))
        .with(button(&w::DROP_VERSION).tap(move || leave(false)));
    let fault = el("p").class("fault").attr("aria-live", "polite").text_live(move || fault.get());
    Piece::all([says.into(), differing, buttons.into(), fault.into()])
}
