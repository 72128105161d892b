//! Whether the browser promises not to clear what is kept here: looked up at the start, and asked
//! for once, after the first number was saved, because browsers answer by how much a page is used.

use super::news;
use js_sys::{Function, Promise, Reflect};
use leptos::prelude::window;
use std::cell::Cell;
use wasm_bindgen::prelude::*;

thread_local! {
    static ASKED: Cell<bool> = const { Cell::new(false) };
    static STAYS: Cell<Option<bool>> = const { Cell::new(None) };
}

/// What the browser answered, once it has.
pub(crate) fn stays() -> Option<bool> {
    STAYS.get()
}

fn call(method: &str, hear: impl FnOnce(bool) + 'static) {
    let storage = Reflect::get(&window().navigator(), &"storage".into()).ok();
    let promise = storage.and_then(|storage| {
        let method = Reflect::get(&storage, &method.into()).ok()?.dyn_into::<Function>().ok()?;
        method.call0(&storage).ok()?.dyn_into::<Promise>().ok()
    });
    let then = promise.as_ref().and_then(|it| Reflect::get(it, &"then".into()).ok());
    let (Some(promise), Some(then)) = (promise, then.and_then(|it| it.dyn_into::<Function>().ok()))
    else {
        return;
    };
    let good = Closure::once_into_js(move |answer: JsValue| hear(answer.is_truthy()));
    let bad = Closure::once_into_js(|_: JsValue| {});
    let _ = then.call2(&promise, &good, &bad);
}

fn heard(stays: bool) {
    STAYS.set(Some(stays));
    news::changed();
}

/// Looks what was promised before. This asks for nothing.
pub(super) fn look() {
    call("persisted", heard);
}

/// Asks, the first time.
pub(super) fn ask() {
    if !ASKED.replace(true) {
        call("persist", heard);
    }
}
