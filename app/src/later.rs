//! A write that waits until typing pauses, and is made at once when the page is hidden or left:
//! a phone may never come back to a page that it has hidden.

use leptos::prelude::*;
use std::time::Duration;

/// Long enough that a word typed is one write, short enough that nothing is lost by it.
const PAUSE: Duration = Duration::from_millis(250);

/// What makes a write is told why it is made now.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Because {
    /// Typing paused, or the page was hidden.
    Paused,
    /// The page is being left: what it is reloaded by is settled.
    Gone,
    /// Its screen is being left; the address is another's already.
    Left,
}

/// Makes a write that may wait, in the present owner. What comes back asks for it.
///
/// `write` may be called while its owner is on its way out.
pub(crate) fn later(
    write: impl Fn(Because) + Copy + Send + Sync + 'static,
) -> impl Fn() + Copy + Send + Sync + 'static {
    let waiting = StoredValue::new(None::<TimeoutHandle>);
    let stop = move || {
        let handle = waiting.try_update_value(Option::take).flatten();
        handle.inspect(TimeoutHandle::clear).is_some()
    };
    let now = move |because| {
        if stop() {
            write(because);
        }
    };
    let hide = window_event_listener_untyped("visibilitychange", move |_| {
        if document().hidden() {
            now(Because::Paused);
        }
    });
    let leave = window_event_listener_untyped("pagehide", move |_| now(Because::Gone));
    on_cleanup(move || {
        hide.remove();
        leave.remove();
        now(Because::Left);
    });
    move || {
        stop();
        let handle = set_timeout_with_handle(move || now(Because::Paused), PAUSE);
        waiting.try_set_value(handle.ok());
    }
}
