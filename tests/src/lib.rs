//! What the tests share.

pub mod any_bytes;
pub mod from_rows;
pub mod open_hold;
pub mod placed;
pub mod rooms;

/// How many inputs to try of a calculator: a twentieth of the others where one answer is a search.
pub fn cases(entry: &ledgerboard_core::catalog::Entry, usual: u32) -> u32 {
    let sample = entry.sample();
    let searches = entry.begin(&sample, ledgerboard_core::measure::Units::Customary).is_some();
    // It lays out boards twice.
    let searches = searches || entry.id == "three-ways";
    if searches { usual / 20 } else { usual }
}
