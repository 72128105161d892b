//! Decimal numbers as text, through whole numbers only.
//!
//! Ours because the standard float reader and writer cost 20 KB of the compressed page
//! (measured), and because a decimal that goes through a float is no longer what was typed.

use super::{Rounding, divide};

/// A typed decimal: `whole` ten-to-the-minus-`places`. `20.3` is `203` with one place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Decimal {
    /// The digits, without the point.
    pub whole: i128,
    /// How many digits stand behind the point.
    pub places: u32,
}

impl Decimal {
    /// The most digits that are read, on both sides of the point together.
    pub const MOST_DIGITS: usize = 28;

    /// This many units of `unit`, to the nearest whole base unit; `None` if it does not fit.
    pub fn times(self, unit: i128) -> Option<i128> {
        let scaled = self.whole.checked_mul(unit).filter(|scaled| *scaled < i128::MAX / 4)?;
        Some(divide(scaled, 10_i128.pow(self.places), Rounding::Nearest))
    }
}

/// As [`show`]: with up to `exact` decimals if they hold it all, else with up to `most`; and a
/// value that would show as nothing and isn't, to its first decimal that says something.
pub(crate) fn show_something(
    value: i128,
    unit: i128,
    least: usize,
    (exact, most): (u32, u32),
    rounding: Rounding,
) -> (String, bool) {
    let whole = show(value, unit, least, exact, rounding);
    if !whole.1 {
        return whole;
    }
    let rough = show(value, unit, least, most, rounding);
    if rounding != Rounding::Nearest || is_something(&rough.0) {
        return rough;
    }
    let mut finer = (most + 1..=12).map(|most| show(value, unit, least, most, rounding));
    finer.find(|(text, _)| is_something(text)).unwrap_or(rough)
}

fn is_something(figure: &str) -> bool {
    figure.bytes().any(|byte| matches!(byte, b'1'..=b'9'))
}

/// `value / unit` with at least `least` and at most `most` decimals, and whether that moved it.
///
/// Trailing zeros past `least` are dropped. `unit` is above zero.
pub(crate) fn show(
    value: i128,
    unit: i128,
    least: usize,
    most: u32,
    rounding: Rounding,
) -> (String, bool) {
    let scale = 10_i128.pow(most);
    // Far past all that is read; kept where the rounding below can't overflow.
    let scaled = value.saturating_mul(scale).clamp(-(i128::MAX / 4), i128::MAX / 4);
    let digits = divide(scaled, unit, rounding);
    let moved = digits * unit != scaled;
    let (whole, part) = (digits.abs() / scale, digits.abs() % scale);
    let mut text = String::new();
    if digits < 0 {
        text.push('−');
    }
    text.push_str(&written(whole));
    if most > 0 {
        let padded = written(part);
        let mut part = "0".repeat(most as usize - padded.len()) + &padded;
        while part.len() > least && part.ends_with('0') {
            part.pop();
        }
        if !part.is_empty() {
            text.push('.');
            text.push_str(&part);
        }
    }
    (text, moved)
}

/// The digits of a number that isn't below zero. The library's writer of so wide a number is as
/// large as the rest of this file.
fn written(mut left: i128) -> String {
    let mut backwards = Vec::new();
    loop {
        backwards.push(b'0' + (left % 10) as u8);
        left /= 10;
        if left == 0 {
            return backwards.into_iter().rev().map(char::from).collect();
        }
    }
}
