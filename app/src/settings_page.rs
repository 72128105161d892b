//! What the page is set to, where no job says otherwise.

use crate::desk::Desk;
use crate::elements::{El, el};
use crate::sheet_view::units_picker;
use crate::{speech, words as w};
use leptos::prelude::*;

/// The page of settings.
pub(crate) fn settings_page(desk: Desk) -> El {
    let languages = speech::KEYS.iter().zip([&w::ENGLISH, &w::SPANISH, &w::PSEUDO]);
    let options = languages.map(|(key, name)| {
        let option = el("option").attr("value", key).say(name);
        option.prop_live("selected", move || desk.settings.read().language == *key)
    });
    let language = el("select")
        .id("language")
        .attr("aria-describedby", "language-note")
        .with_all(options)
        .on("change", move |event| {
            desk.set(|all| all.language = event_target_value(&event));
            let _ = window().location().reload();
        });
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
        .with(
            el("div")
                .class("field stacked")
                .with(label("language", &w::LANGUAGE))
                .with(language)
                .with(el("p").class("note").id("language-note").say(&w::LANGUAGE_HINT)),
        )
        .with(
            el("div")
                .class("field")
                .with(label("demo", &w::DEMO))
                .with(el("span").class("tick").with(demo)),
        )
}
