//! Volumes of boxes and what fills them.

use super::{Problem, Reading, Rounding, Scanner, Shown, Units, decimal};

/// A volume, held as whole hundred-thousandths of a cubic millimetre.
///
/// 1/16 in³, 0.01 in³ and 1 cm³ are all whole, so a fill that sits on a stamped volume
/// compares as on it. Source: 1 in³ is 16 387.064 mm³ exactly, NIST SP 811 (2008), B.8.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Volume(i64);

const CUBIC_INCH: i64 = 1_638_706_400;
const CUBIC_CENTIMETRE: i64 = 100_000_000;

impl Volume {
    /// Nothing.
    pub const ZERO: Self = Self(0);
    /// The largest that is read: a million cubic inches.
    pub const MAX: Self = Self(1_000_000 * CUBIC_INCH);

    /// Hundredths of a cubic inch, for published values: `Volume::hundredths(3030)` is 30.3 in³.
    pub const fn hundredths(count: i64) -> Self {
        Self(CUBIC_INCH / 100 * count)
    }

    /// Whole hundred-thousandths of a cubic millimetre.
    pub const fn from_units(units: i64) -> Self {
        Self(units)
    }

    /// Whole hundred-thousandths of a cubic millimetre.
    pub const fn units(self) -> i64 {
        self.0
    }

    /// The sum.
    pub const fn plus(self, other: Self) -> Self {
        Self(self.0.saturating_add(other.0))
    }

    /// The difference, below zero if `other` is larger.
    pub const fn minus(self, other: Self) -> Self {
        Self(self.0.saturating_sub(other.0))
    }

    /// This volume `times` over.
    pub const fn times(self, times: i64) -> Self {
        Self(self.0.saturating_mul(times))
    }

    /// `over / under` of it, rounded down to the unit. `under` is one or more.
    pub fn share(self, over: i64, under: i64) -> Self {
        let part = i128::from(self.0) * i128::from(over);
        let part = part.div_euclid(i128::from(under.max(1)));
        Self(i64::try_from(part).unwrap_or(i64::MAX))
    }

    /// Reads `20.3`, `20,3`, `20.3 in3`, `20.3 cu in`, `333 cm3`. A bare number is cubic inches, or cubic
    /// centimetres under [`Units::Metric`].
    ///
    /// # Errors
    /// The [`Problem`]; [`Problem::TooLarge`] past [`Volume::MAX`].
    pub fn read(text: &str, units: Units) -> Reading<Self> {
        let mut scan = Scanner::new(text);
        if scan.is_done() {
            return Err(Problem::Empty);
        }
        let minus = scan.take('-') || scan.take('−');
        let number = scan.number()?;
        let mut unit = scan.unit().to_ascii_lowercase();
        unit.push_str(&scan.unit().to_ascii_lowercase());
        let size = match unit.as_str() {
            "" if units == Units::Metric => CUBIC_CENTIMETRE,
            "" | "in3" | "in³" | "in^3" | "cuin" | "cu.in." | "cu.in" | "ci" => CUBIC_INCH,
            "cm3" | "cm³" | "cm^3" | "cc" | "ml" => CUBIC_CENTIMETRE,
            unit => return Err(scan.unknown(unit)),
        };
        if !scan.is_done() {
            return Err(Problem::NotANumber);
        }
        let total = number.times(size)?;
        if total > Self::MAX.0 {
            return Err(Problem::TooLarge);
        }
        Ok(Self(if minus { -total } else { total }))
    }

    /// The text that reads back as exactly this volume, with its unit.
    pub fn exact(self) -> String {
        let sign = if self.0 < 0 { "-" } else { "" };
        let size = self.0.saturating_abs();
        let (text, moved) = decimal::show(size, CUBIC_INCH, 1, 4, Rounding::Nearest);
        if !moved {
            return format!("{sign}{text} in3");
        }
        format!("{sign}{} cm3", decimal::show(size, CUBIC_CENTIMETRE, 0, 8, Rounding::Nearest).0)
    }

    /// As a person reads it: cubic inches with every place they have, up to four, since the
    /// code's allowances are sixteenths of one, else to the hundredth; or cubic centimetres to the
    /// tenth. What isn't nothing is shown with as many places as it takes.
    pub fn show(self, units: Units, rounding: Rounding) -> Shown {
        let (unit, size, exact, most) = match units {
            Units::Customary => ("in³", CUBIC_INCH, 4, 2),
            Units::Metric => ("cm³", CUBIC_CENTIMETRE, 1, 1),
        };
        let (figure, rounded) = decimal::show_something(self.0, size, 1, (exact, most), rounding);
        Shown { figure, unit, rounded }
    }
}
