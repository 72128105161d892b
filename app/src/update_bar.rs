//! What the worker behind the page has to say: it works without signal, a new version waits, or
//! one could not be fetched; and what came of a look for one. Nothing is ever taken unasked.

use crate::elements::{El, el, live};
use crate::signal::RwSignal;
use crate::{speech, words as w};
use ledgerboard_core::say;
use ledgerboard_core::words::Phrase;
use leptos::prelude::*;
use wasm_bindgen::JsCast;

/// The last thing heard.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Heard {
    OfflineReady,
    Waiting,
    Failed,
    FirstFailed,
    Elsewhere,
}

/// What there is to say: what asks for something, and what is only good to know.
pub(crate) fn update_bars() -> [El; 2] {
    let heard = RwSignal::new(None::<Heard>);
    let listen = |name: &str, hear: fn(&web_sys::Event) -> Heard| {
        // For as long as the page: boot speaks at any time.
        let _ = window_event_listener_untyped(name, move |event| {
            let news = hear(&event);
            // A version that waits is not forgotten for a lesser word.
            let waits = heard.get_untracked() == Some(Heard::Waiting);
            if !(waits && news == Heard::OfflineReady) {
                heard.set(Some(news));
            }
        });
    };
    listen("ledgerboard:offline-ready", |_| Heard::OfflineReady);
    listen("ledgerboard:update-waiting", |_| Heard::Waiting);
    listen("ledgerboard:update-failed", failed);
    listen("ledgerboard:updated-elsewhere", |_| Heard::Elsewhere);
    [false, true].map(|quiet| {
        let view = live(move || {
            let news = heard.get().filter(|news| (*news == Heard::OfflineReady) == quiet);
            news.map(|news| said(news, heard))
        });
        el("div").class("update").attr("role", "status").with(view)
    })
}

/// What boot says of an event besides its name.
fn detail(event: &web_sys::Event, key: &str) -> wasm_bindgen::JsValue {
    let event = event.dyn_ref::<web_sys::CustomEvent>();
    event
        .and_then(|event| js_sys::Reflect::get(&event.detail(), &key.into()).ok())
        .unwrap_or_default()
}

fn failed(event: &web_sys::Event) -> Heard {
    if detail(event, "first").is_truthy() { Heard::FirstFailed } else { Heard::Failed }
}

fn tell(name: &str) {
    if let Ok(event) = web_sys::CustomEvent::new(name) {
        let _ = window().dispatch_event(&event);
    }
}

fn said(news: Heard, heard: RwSignal<Option<Heard>>) -> El {
    let phrase = match news {
        Heard::OfflineReady => &w::OFFLINE_READY,
        Heard::Waiting => &w::UPDATE_WAITING,
        Heard::Failed => &w::UPDATE_FAILED,
        Heard::FirstFailed => &w::FIRST_FAILED,
        Heard::Elsewhere => &w::UPDATED_ELSEWHERE,
    };
    let button = |phrase| el("button").attr("type", "button").say(phrase);
    // Where none waits any more, to take it is to reload.
    let act = match news {
        Heard::Waiting => Some(&w::TAKE_UPDATE),
        Heard::Elsewhere => Some(&w::RELOAD),
        _ => None,
    };
    let act = act.map(|phrase| button(phrase).tap(|| tell("ledgerboard:take-update")));
    let close = button(&w::CLOSE).tap(move || heard.set(None));
    el("p").with(el("span").say(phrase)).with(act).with(close)
}

/// Which version this is, short enough to read out.
pub(crate) fn version() -> String {
    let meta = document().query_selector("meta[name=ledgerboard-version]").ok().flatten();
    let whole = meta.and_then(|meta| meta.get_attribute("content")).unwrap_or_default();
    whole.chars().take(8).collect()
}

/// Which version this is, and a look for a newer one.
pub(crate) fn updates() -> El {
    let said = RwSignal::new(None::<&'static Phrase>);
    let listen = |name: &str, hear: fn(&web_sys::Event) -> Option<&'static Phrase>| {
        let listener = window_event_listener_untyped(name, move |event| said.set(hear(&event)));
        on_cleanup(move || listener.remove());
    };
    listen("ledgerboard:looked", |event| match detail(event, "found").as_string()?.as_str() {
        "newest" => Some(&w::NEWEST),
        "fetching" => Some(&w::FETCHING),
        "no-answer" => Some(&w::NO_ANSWER),
        "no-worker" => Some(&w::NO_WORKER),
        // A bar says it.
        _ => None,
    });
    // What came of the fetch, a bar says too.
    listen("ledgerboard:update-waiting", |_| None);
    listen("ledgerboard:update-failed", |_| None);
    let look = el("button").attr("type", "button").say(&w::LOOK).tap(move || {
        said.set(Some(&w::LOOKING));
        tell("ledgerboard:look");
    });
    el("section")
        .attr("aria-labelledby", "updates")
        .with(el("h2").id("updates").say(&w::UPDATES))
        .with(el("p").text(&speech::say(&say!(w::WHICH_VERSION, version()))))
        .with(el("p").with(look))
        .with(
            el("div")
                .attr("role", "status")
                .with(live(move || said.get().map(|phrase| el("p").say(phrase)))),
        )
}
