//! The present job, always shown, and the switch to another.

use crate::desk::Desk;
use crate::elements::{El, Piece, el, focus_soon, live};
use crate::signal::{Memo, RwSignal};
use crate::store::Listed;
use crate::{route, speech, words as w};
use ledgerboard_core::job::heading_of;
use leptos::prelude::*;
use std::time::Duration;

const LOOSE: &str = "";
const NEW: &str = "+";
/// Longer than a page takes to be drawn.
const ARRIVED: Duration = Duration::from_millis(150);

/// The switch at the top of every page.
pub(crate) fn switch(desk: Desk) -> El {
    let again = RwSignal::new(());
    let loose = move || desk.todays_loose_notes();
    let jobs = Memo::new(move |_| {
        let present = desk.settings.with(|settings| settings.job.clone());
        let is_at_hand = |it: &&Listed| !it.is_put_away || present.as_ref() == Some(&it.id);
        desk.list.with(|jobs| {
            let jobs = jobs.iter().filter(is_at_hand);
            jobs.map(|it| (it.id.clone(), it.name.clone())).collect::<Vec<_>>()
        })
    });
    let options = live(move || {
        again.track();
        let present = desk.settings.with(|settings| settings.job.clone()).unwrap_or_default();
        let option = |value: &str| {
            let option = el("option").attr("value", value);
            if value == present { option.attr("selected", "") } else { option }
        };
        let loose = loose();
        jobs.with(|jobs| {
            let named = |heading: &str, value: &str| option(value).own_text(heading);
            Piece::all([
                option(LOOSE).say(&w::NO_JOB).into(),
                Piece::all(
                    jobs.iter()
                        // Today's loose notes are where numbers go when no job is picked.
                        .filter(|(id, _)| loose.as_ref() != Some(id) || *id == present)
                        .map(|(id, name)| named(&speech::say(&heading_of(name)), id)),
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
                again.set(());
                route::go(route::JOBS);
                // After the page has come to its heading, with forty jobs above the form.
                set_timeout(|| focus_soon("#job-name"), ARRIVED);
            }
            id => desk.set(|settings| settings.job = Some(id.to_owned()).filter(|id| id != LOOSE)),
        },
    )
}
