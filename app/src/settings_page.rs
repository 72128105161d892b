//! What the page is set to, where no job says otherwise.

use crate::desk::Desk;
use crate::elements::{El, el};
use crate::sheet_view::units_picker;
use crate::update_bar::updates;
use crate::{daylight, jobs, route, speech, words as w};
use leptos::prelude::*;

/// The page of settings.
pub(crate) fn settings_page(desk: Desk) -> El {
    let demo = el("input")
        .attr("type", "checkbox")
        .id("demo")
        .prop_live("checked", move || !desk.settings.read().demo_hidden)
        .on("change", move |event| {
            desk.set(|all| all.demo_hidden = !event_target_checked(&event));
        });
    let label = |id: &str, phrase| el("label").class("label").attr("for", id).say(phrase);
    el("main")
        .with(el("h1").attr("tabindex", "-1").say(&w::SETTINGS))
        .with(units_picker(
            &w::UNITS_WITHOUT_JOB,
            move || desk.settings.read().units,
            move |units| desk.set(|all| all.units = units),
        ))
        .with(languages(desk))
        .with(daylight::field(desk))
        .with(
            el("div")
                .class("field")
                .with(label("demo", &w::DEMO))
                .with(el("span").class("tick").with(demo)),
        )
        .with(el("p").with(el("a").class("door").attr("href", route::JOBS).say(&w::BACKUPS)))
        .with(updates())
        .with(el("p").with(jobs::rescue(&w::GET_OUT)))
}

/// English or Spanish, each by its own name. The page starts again in it: what was typed is kept.
fn languages(desk: Desk) -> El {
    let one = |(key, name): (&'static str, &'static str)| {
        let radio = el("input")
            .attr("type", "radio")
            .attr("name", "language")
            .prop_live("checked", move || speech::spoken() == key)
            .on("change", move |_| {
                desk.set(|all| all.language = key.to_owned());
                let _ = window().location().reload();
            });
        let name = el("span").attr("lang", key).own_text(name);
        el("label").class("segment").with(radio).with(name)
    };
    el("div")
        .class("field stacked")
        .attr("role", "radiogroup")
        .attr("aria-labelledby", "language")
        .with(el("span").class("label").id("language").say(&w::LANGUAGE))
        .with(el("span").class("segments").with_all(speech::LANGUAGES.map(one)))
}
