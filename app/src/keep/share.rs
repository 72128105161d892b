//! Handing on a question as an address, or a text: by the phone's own sheet, else by copying it, else by
//! showing it to be copied by hand.

use crate::question::Question;
use crate::{route, speech};
use js_sys::{Function, Promise, Reflect};
use leptos::prelude::*;
use wasm_bindgen::prelude::*;

/// What became of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum Shared {
    /// It is on the clipboard.
    Copied,
    /// It has to be copied by hand.
    Shown(String),
}

/// The whole address of a question.
fn address(question: Question) -> String {
    let here = window().location().href().unwrap_or_default();
    let page = here.split('#').next().unwrap_or_default();
    [page, &route::question(&question.link())].concat()
}

/// Shares a question; `done` hears of it where the phone's own sheet does not show it.
pub(super) fn share(question: Question, done: impl Fn(Shared) + Clone + 'static) {
    let data = web_sys::ShareData::new();
    data.set_title(&speech::phrase(question.entry.name));
    let address = address(question);
    data.set_url(&address);
    hand_on(address, &data, done);
}

/// Shares a text.
pub(crate) fn send(title: &str, text: String, done: impl Fn(Shared) + Clone + 'static) {
    let data = web_sys::ShareData::new();
    data.set_title(title);
    data.set_text(&text);
    hand_on(text, &data, done);
}

fn hand_on(what: String, data: &web_sys::ShareData, done: impl Fn(Shared) + Clone + 'static) {
    let navigator = window().navigator();
    if let Ok(true) = Reflect::has(&navigator, &"share".into()) {
        let sheet = navigator.share_with_data(data);
        // Closing the sheet without sharing is no fault; only a phone that can't is.
        then(
            &sheet,
            |_| {},
            move |error| {
                let name = Reflect::get(&error, &"name".into()).ok().and_then(|it| it.as_string());
                if name.as_deref() != Some("AbortError") {
                    done(Shared::Shown(what));
                }
            },
        );
        return;
    }
    match copy(&what) {
        Some(copied) => {
            let shown = done.clone();
            then(&copied, move |_| done(Shared::Copied), move |_| shown(Shared::Shown(what)));
        }
        None => done(Shared::Shown(what)),
    }
}

/// Looked up by name: the clipboard is not there on a page without encryption.
pub(crate) fn copy(text: &str) -> Option<Promise> {
    let clipboard = Reflect::get(&window().navigator(), &"clipboard".into()).ok()?;
    let write = Reflect::get(&clipboard, &"writeText".into()).ok()?.dyn_into::<Function>().ok()?;
    write.call1(&clipboard, &text.into()).ok()?.dyn_into().ok()
}

/// Hears what comes of a promise.
pub(crate) fn then(
    promise: &Promise,
    good: impl FnOnce(JsValue) + 'static,
    bad: impl FnOnce(JsValue) + 'static,
) {
    let good = Closure::once_into_js(good);
    let bad = Closure::once_into_js(bad);
    let method = Reflect::get(promise, &"then".into()).ok();
    if let Some(method) = method.and_then(|it| it.dyn_into::<Function>().ok()) {
        let _ = method.call2(promise, &good, &bad);
    }
}
