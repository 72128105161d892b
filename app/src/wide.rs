//! Whether the page is wide enough to show everything at once, by the size of its text.

use leptos::prelude::{StoredValue, WithValue, on_cleanup, window};
use wasm_bindgen::prelude::*;

const WIDE: &str = "(min-width: 56.25em)";

/// Whether the page is wide now.
pub(crate) fn is_wide() -> bool {
    let query = window().match_media(WIDE).ok().flatten();
    query.is_some_and(|query| query.matches())
}

/// Calls `turned` now and whenever the page becomes wide or narrow, for as long as the present
/// owner lives.
pub(crate) fn follow_width(turned: impl Fn(bool) + 'static) {
    turned(is_wide());
    let Ok(Some(query)) = window().match_media(WIDE) else { return };
    let hear = Closure::<dyn Fn()>::new(move || turned(is_wide())).into_js_value();
    let hear: js_sys::Function = hear.unchecked_into();
    let _ = query.add_event_listener_with_callback("change", &hear);
    let both = StoredValue::new_local((query, hear));
    on_cleanup(move || {
        let _ = both.try_with_value(|(query, hear)| {
            query.remove_event_listener_with_callback("change", hear)
        });
    });
}
