//! What the worker behind the page has to say: it works without signal, a new version waits, or
//! one could not be fetched. Nothing is ever taken unasked.

use crate::elements::{El, el, live};
use crate::signal::RwSignal;
use crate::words as w;
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

fn failed(event: &web_sys::Event) -> Heard {
    let first = event
        .dyn_ref::<web_sys::CustomEvent>()
        .and_then(|event| js_sys::Reflect::get(&event.detail(), &"first".into()).ok())
        .is_some_and(|first| first.is_truthy());
    if first { Heard::FirstFailed } else { Heard::Failed }
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
    let act = match news {
        Heard::Waiting => Some(button(&w::TAKE_UPDATE).tap(|| {
            if let Ok(event) = web_sys::CustomEvent::new("ledgerboard:take-update") {
                let _ = window().dispatch_event(&event);
            }
        })),
        Heard::Elsewhere => Some(button(&w::RELOAD).tap(|| {
            let _ = window().location().reload();
        })),
        _ => None,
    };
    let close = button(&w::CLOSE).tap(move || heard.set(None));
    el("p").with(el("span").say(phrase)).with(act).with(close)
}
