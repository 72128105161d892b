//! The present job, always shown, and the switch to another.

use super::list::newest_first;
use crate::desk::Desk;
use crate::elements::{El, Piece, el, live};
use crate::{route, speech, words as w};
use leptos::prelude::*;

const LOOSE: &str = "";
const NEW: &str = "+";

/// The switch at the top of every page.
pub(crate) fn switch(desk: Desk) -> El {
    let options = live(move || {
        let present = desk.settings.with(|settings| settings.job.clone()).unwrap_or_default();
        let option = |value: &str| {
            let option = el("option").attr("value", value);
            if value == present { option.attr("selected", "") } else { option }
        };
        let loose = desk.todays_loose_notes();
        desk.jobs.with(|jobs| {
            let named = |heading: &str, value: &str| option(value).own_text(heading);
            Piece::all([
                option(LOOSE).say(&w::NO_JOB).into(),
                Piece::all(
                    newest_first(jobs)
                        .into_iter()
                        // Today's loose notes are where numbers go when no job is picked.
                        .filter(|job| loose.as_ref() != Some(&job.id) || job.id == present)
                        .map(|job| named(&speech::say(&job.heading()), &job.id)),
                ),
                option(NEW).say(&w::NEW_JOB_PICK).into(),
            ])
        })
    });
    el("select").class("switch").named(&speech::phrase(&w::THIS_JOB)).with(options).on(
        "change",
        move |event| match event_target_value(&event).as_str() {
            NEW => {
                // The new one is made on its page; until then the switch shows the present job.
                desk.comes_from.set(desk.on_page.get_untracked());
                desk.jobs.update(|_| ());
                route::go(route::JOBS);
            }
            id => desk.set(|settings| settings.job = Some(id.to_owned()).filter(|id| id != LOOSE)),
        },
    )
}
