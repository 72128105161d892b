//! Quantities as types, and how the trade writes them.
//!
//! Every quantity is a whole number of a unit small enough that halves, sixteenths,
//! hundredths and millimetres are all exact: a value that sits on a limit compares as on the
//! limit. Nothing here knows a rule, a calculator or a screen.

mod area;
mod day;
pub(crate) mod decimal;
mod length;
mod physical;
mod reading;
pub mod time_of_day;
pub mod unit;
mod volume;

pub use area::Area;
pub use day::Day;
pub use decimal::Decimal;
pub use length::Length;
pub use physical::Measure;
pub use reading::{Problem, Reading, Scanner};
pub use unit::Unit;
pub(crate) use volume::CUBIC_NANOMETRES;
pub use volume::Volume;

/// Which units a person reads and types by default. Text with a unit is read the same in both.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Units {
    /// Feet, inches and sixteenths; square feet; cubic inches, cubic feet for a room's.
    #[default]
    Customary,
    /// Millimetres; square metres; cubic centimetres, cubic metres for a room's.
    Metric,
}

impl Units {
    /// As they are written in records.
    pub fn key(self) -> &'static str {
        match self {
            Self::Customary => "customary",
            Self::Metric => "metric",
        }
    }

    /// Reads [`Units::key`].
    pub fn from_key(key: &str) -> Option<Self> {
        [Self::Customary, Self::Metric].into_iter().find(|units| units.key() == key)
    }
}

/// Which way a figure is rounded.
///
/// What is shown is rounded to the nearest, everywhere: else one value would print as two on one
/// sheet, and a box on its limit would look over it. Nothing is decided by a shown figure; and what
/// isn't nothing is never shown as nothing, so that a margin keeps its sign however small.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rounding {
    /// To the nearest, halves away from nothing: for what is shown.
    Nearest,
    /// Down: for counts and marks of which part of one is none.
    Down,
    /// Up: for counts and marks of which part of one takes a whole.
    Up,
}

/// Divides with the given rounding. `by` is above zero.
pub(crate) fn divide(value: i128, by: i128, rounding: Rounding) -> i128 {
    match rounding {
        Rounding::Down => value.div_euclid(by),
        Rounding::Up => -(-value).div_euclid(by),
        // A half goes away from nothing, so that what is over by so much reads like it.
        Rounding::Nearest if value < 0 => -((by - 2 * value) / (2 * by)),
        Rounding::Nearest => (2 * value + by) / (2 * by),
    }
}

/// The small arithmetic of a quantity that is held as one whole number. Never inlined: what keeps
/// to the end of the scale is ten times as long as a call, and stands wherever sums are made.
macro_rules! arithmetic {
    ($quantity:ident, $held:ty) => {
        impl $quantity {
            /// Nothing.
            pub const ZERO: Self = Self(0);

            /// The sum; past the end of the scale it holds its largest value.
            #[inline(never)]
            pub const fn plus(self, other: Self) -> Self {
                Self(self.0.saturating_add(other.0))
            }

            /// The difference, below zero if `other` is larger.
            #[inline(never)]
            pub const fn minus(self, other: Self) -> Self {
                Self(self.0.saturating_sub(other.0))
            }

            /// So many of it.
            #[inline(never)]
            pub const fn times(self, times: i64) -> Self {
                Self(self.0.saturating_mul(times as $held))
            }
        }
    };
}
use arithmetic;

/// A quantity shown as text, and whether showing it moved it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shown {
    /// The figure without its unit: `28.0`, `9 ft 4-1/2`.
    pub figure: String,
    /// The unit, as read after the figure: `in³`, `in`, `mm`.
    pub unit: &'static str,
    /// The text is not the exact value.
    pub rounded: bool,
}

impl Shown {
    /// Figure and unit, with `≈` before a rounded one.
    pub fn text(&self) -> String {
        let mut text = String::new();
        if self.rounded {
            text.push_str("≈ ");
        }
        // Money is written as on a till, always with its cents, and money for an hour like it.
        if let Some(rest) = self.unit.strip_prefix('$') {
            let owed = self.figure.strip_prefix('−');
            text.push_str(if owed.is_some() { "−$" } else { "$" });
            let figure = owed.unwrap_or(&self.figure);
            let (whole, part) = figure.split_once('.').unwrap_or((figure, ""));
            for (at, digit) in whole.chars().enumerate() {
                if at > 0 && (whole.len() - at).is_multiple_of(3) {
                    text.push(',');
                }
                text.push(digit);
            }
            text.push('.');
            text.push_str(part);
            for _ in part.len()..2 {
                text.push('0');
            }
            text.push_str(rest);
            return text;
        }
        text.push_str(&self.figure);
        if !self.unit.is_empty() {
            text.push(' ');
            text.push_str(self.unit);
        }
        text
    }
}

#[cfg(test)]
mod tests;
