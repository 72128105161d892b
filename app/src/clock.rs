//! Now, here, and by chance: the one place that asks the browser for any of them. No rule and no
//! screen reads a clock by itself.

use js_sys::{Date, Math};
use ledgerboard_core::job::{Moment, Stamp};

/// The present moment with the phone's own zone.
pub(crate) fn now() -> Moment {
    // The browser counts minutes that the zone is behind; a moment counts minutes ahead.
    let zone = -(Date::new_0().get_timezone_offset() as i32);
    Moment { at: (Date::now() / 1000.0) as i64, zone }
}

/// Who changes a job, and when.
pub(crate) fn stamp(device: &str) -> Stamp {
    let Moment { at, zone } = now();
    Stamp { at, zone, device: device.to_owned(), random: chance() }
}

/// A number that nobody else has drawn, in all likelihood.
pub(crate) fn chance() -> u64 {
    let half = || (Math::random() * 4_294_967_296.0) as u64;
    (half() << 32) | half()
}
