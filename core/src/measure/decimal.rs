//! Decimal numbers as text, through whole numbers only.
//!
//! Ours because the standard float reader and writer cost 20 KB of the compressed page
//! (measured), and because a decimal that goes through a float is no longer what was typed.

use super::{Rounding, divide};

/// A typed decimal: `whole` ten-to-the-minus-`places`. `20.3` is `203` with one place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Decimal {
    /// The digits, without the point.
    pub whole: i64,
    /// How many digits stand behind the point.
    pub places: u32,
}

impl Decimal {
    /// The most digits that are read, on both sides of the point together.
    pub const MOST_DIGITS: usize = 15;

    /// This many units of `unit`, to the nearest whole base unit; `None` if it does not fit.
    pub fn times(self, unit: i64) -> Option<i64> {
        let scaled = i128::from(self.whole) * i128::from(unit);
        let by = 10_i128.pow(self.places);
        i64::try_from(divide(scaled, by, Rounding::Nearest)).ok()
    }
}

/// As [`show`]: with up to `exact` decimals if they hold it all, else with up to `most`; and a
/// value that would show as nothing and isn't, to its first decimal that says something.
pub(crate) fn show_something(
    value: i64,
    unit: i64,
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
    value: i64,
    unit: i64,
    least: usize,
    most: u32,
    rounding: Rounding,
) -> (String, bool) {
    let scale = 10_i128.pow(most);
    let scaled = i128::from(value) * scale;
    let digits = divide(scaled, i128::from(unit), rounding);
    let moved = digits * i128::from(unit) != scaled;
    let (whole, part) = (digits.abs() / scale, digits.abs() % scale);
    let mut text = String::new();
    if digits < 0 {
        text.push('−');
    }
    text.push_str(&whole.to_string());
    if most > 0 {
        let padded = part.to_string();
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
