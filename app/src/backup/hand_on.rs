//! Handing a file to the phone: by its own sheet where that takes files, else as a download.

use crate::keep::then;
use js_sys::{Array, Function, Reflect};
use leptos::prelude::*;
use std::time::Duration;
use wasm_bindgen::prelude::*;
use web_sys::{File, FilePropertyBag, HtmlElement, ShareData, Url};

/// Of a backup.
pub(crate) const JSON: &str = "application/json";
/// Of a table.
pub(crate) const CSV: &str = "text/csv";

/// A browser takes its time with a file that it asks the person about first.
const LET_GO: Duration = Duration::from_secs(120);

/// What became of a file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Handed {
    /// The phone's own sheet took it.
    Shared,
    /// The sheet was closed without.
    NotShared,
    /// The browser was given it to keep among its downloads. Whether it did, no page is told.
    Downloaded,
    /// Neither could be had.
    Refused,
}

/// Hands on a text as a file of this name and kind.
pub(crate) fn hand_on(name: &str, media: &str, text: &str, done: impl Fn(Handed) + 'static) {
    let kind = FilePropertyBag::new();
    kind.set_type(media);
    let parts = Array::of1(&text.into());
    let Ok(file) = File::new_with_str_sequence_and_options(&parts, name, &kind) else {
        return done(Handed::Refused);
    };
    let Some(data) = can_share(&file) else { return done(download(&file)) };
    let done = std::rc::Rc::new(done);
    let shared = done.clone();
    then(
        &window().navigator().share_with_data(&data),
        move |_| shared(Handed::Shared),
        move |error| {
            let name = Reflect::get(&error, &"name".into()).ok().and_then(|it| it.as_string());
            // Closing the sheet is no fault; only a phone that can't is.
            let closed = name.as_deref() == Some("AbortError");
            done(if closed { Handed::NotShared } else { download(&file) });
        },
    );
}

/// What the phone's sheet is given, where it takes such a file. Looked up by name: not every
/// browser has it.
fn can_share(file: &File) -> Option<ShareData> {
    let navigator = window().navigator();
    let data = ShareData::new();
    data.set_files(&Array::of1(file));
    let asks = Reflect::get(&navigator, &"canShare".into()).ok()?.dyn_into::<Function>().ok()?;
    let can = asks.call1(&navigator, &data).ok()?.is_truthy();
    can.then_some(data)
}

fn download(file: &File) -> Handed {
    let Ok(address) = Url::create_object_url_with_blob(file) else { return Handed::Refused };
    let link = document().create_element("a").ok().and_then(|it| it.dyn_into::<HtmlElement>().ok());
    let Some(link) = link else { return Handed::Refused };
    let _ = link.set_attribute("href", &address);
    let _ = link.set_attribute("download", &file.name());
    link.click();
    set_timeout(
        move || {
            let _ = Url::revoke_object_url(&address);
        },
        LET_GO,
    );
    Handed::Downloaded
}
