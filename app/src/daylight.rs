//! Dark or light: as the phone has it, or as a person sets it here; and black on white for full sun,
//! in which a phone that is set to dark can't be read.

use crate::desk::Desk;
use crate::elements::{El, el};
use crate::words as w;
use ledgerboard_core::words::Phrase;
use leptos::prelude::*;

/// Each by its key, which the style sheet knows it by. The first is the phone's own.
const ALL: [(&str, &Phrase); 4] = [
    ("", &w::LIGHT_OF_PHONE),
    ("light", &w::LIGHT_LIGHT),
    ("dark", &w::LIGHT_DARK),
    ("sun", &w::LIGHT_SUN),
];

/// The ground's color in light, dark and full sun, for the browser's own bars: as the style sheet has
/// them.
const GROUND: [(&str, &str); 3] = [("light", "#f5f3ee"), ("dark", "#14161a"), ("sun", "#ffffff")];

/// Shows the page so. A key that isn't known is the phone's own.
pub(crate) fn shine(light: &str) {
    let Some(root) = document().document_element() else { return };
    let _ = root.set_attribute("data-light", light);
    let Ok(metas) = document().query_selector_all("meta[name='theme-color']") else { return };
    for (at, own) in (0..metas.length()).zip(["light", "dark"]) {
        let ground = GROUND.iter().find(|(key, _)| *key == light);
        let ground = ground.or_else(|| GROUND.iter().find(|(key, _)| *key == own));
        if let Some(meta) = metas.get(at)
            && let Some((_, color)) = ground
        {
            let meta: web_sys::Element = wasm_bindgen::JsCast::unchecked_into(meta);
            let _ = meta.set_attribute("content", color);
        }
    }
}

/// The field of the settings.
pub(crate) fn field(desk: Desk) -> El {
    let one = |(key, name): (&'static str, &'static Phrase)| {
        let radio = el("input")
            .attr("type", "radio")
            .attr("name", "daylight")
            .prop_live("checked", move || desk.settings.read().light == key)
            .on("change", move |_| {
                shine(key);
                desk.set(|all| all.light = key.to_owned());
            });
        el("label").class("segment").with(radio).with(el("span").say(name))
    };
    el("div")
        .class("field stacked")
        .attr("role", "radiogroup")
        .attr("aria-labelledby", "daylight")
        .with(el("span").class("label").id("daylight").say(&w::LIGHT))
        .with(el("span").class("segments").with_all(ALL.map(one)))
}
