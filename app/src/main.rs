//! The page of Ledgerboard: it shows what the core works out, and keeps what a person types.
//!
//! No rule, no table and no calculator by name is in here: the list of calculators, their fields
//! and their answers all come from the core's catalog.

mod backup;
mod calculators;
mod clock;
mod daylight;
mod desk;
mod drawing;
mod elements;
mod fields;
mod home;
mod jobs;
mod keep;
mod later;
mod question;
mod route;
mod settings_page;
mod sheet_view;
mod shell;
mod signal;
mod speech;
mod store;
mod update_bar;
mod wide;
mod words;
mod works;

use leptos::prelude::{document, window, window_event_listener_untyped};
use wasm_bindgen::prelude::*;

/// Answers one line of the batch door, byte for byte as the native program does.
#[wasm_bindgen]
pub fn answer_line(line: &str) -> String {
    ledgerboard_core::catalog::answer_line(line)
}

/// Stops all writing, and tells the page's script to say so: nothing here may run on.
fn stopped(info: &std::panic::PanicHookInfo<'_>) {
    store::stop();
    if let Some(place) = info.location() {
        let line = place.line().to_string();
        web_sys::console::error_1(&[place.file(), ":", &line].concat().into());
    }
    if let Ok(event) = web_sys::CustomEvent::new("ledgerboard:panic") {
        let _ = window().dispatch_event(&event);
    }
}

fn main() {
    std::panic::set_hook(Box::new(stopped));
    // A trap has no hook: the page's script sees it.
    let _ = window_event_listener_untyped("ledgerboard:stopped", |_| store::stop());
    let place = document().get_element_by_id("app");
    let place = place.and_then(|it| it.dyn_into::<web_sys::HtmlElement>().ok());
    if let Some(place) = place {
        let page = place.clone();
        let build = move || {
            if let Some(shell) = shell::shell().into_node() {
                let _ = page.append_child(&shell);
            }
        };
        leptos::mount::mount_to(place, build).forget();
    }
    if let Some(first_paint) = document().get_element_by_id("shell") {
        first_paint.remove();
    }
}
