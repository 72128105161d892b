//! Volumes: of boxes and what fills them, and of rooms.

use super::{
    Area, Length, Problem, Reading, Rounding, Scanner, Shown, Units, arithmetic, decimal, divide,
};

/// A volume, held as whole hundred-thousandths of a cubic millimetre.
///
/// 1/16 in³, 0.01 in³ and 1 cm³ are all whole, so a fill that sits on a stamped volume
/// compares as on it. Source: 1 in³ is 16 387.064 mm³ exactly, NIST SP 811 (2008), B.8.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Volume(i64);

const CUBIC_INCH: i64 = 1_638_706_400;
const CUBIC_FOOT: i64 = 1728 * CUBIC_INCH;
const CUBIC_CENTIMETRE: i64 = 100_000_000;
const LITER: i64 = 1000 * CUBIC_CENTIMETRE;
const CUBIC_METRE: i64 = 1000 * LITER;
/// Cubic nanometres in the unit that a volume is held in.
pub(crate) const CUBIC_NANOMETRES: i128 = 10_000_000_000_000;

arithmetic!(Volume, i64);

impl Volume {
    /// The largest that is read: a million cubic feet.
    pub const MAX: Self = Self(1_000_000 * CUBIC_FOOT);

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

    /// What stands on `floor` to a height, to the nearest unit: a hundred-thousandth of a cubic
    /// millimetre.
    pub fn over(floor: Area, high: Length) -> Self {
        Self::part_over(floor, high, 1)
    }

    /// An equal part of that, rounded once: half of it is a wedge. `by` is one or more.
    pub fn part_over(floor: Area, high: Length, by: i64) -> Self {
        let cubic = floor.square_nanometres().saturating_mul(high.nanometres().into());
        let cubic = cubic.clamp(-(i128::MAX / 4), i128::MAX / 4);
        let by = CUBIC_NANOMETRES * i128::from(by.max(1));
        let units = divide(cubic, by, Rounding::Nearest);
        Self(i64::try_from(units).unwrap_or(i64::MAX))
    }

    /// `over / under` of it, rounded down to the unit. `under` is one or more.
    pub fn share(self, over: i64, under: i64) -> Self {
        let part = i128::from(self.0) * i128::from(over);
        let part = part.div_euclid(i128::from(under.max(1)));
        Self(i64::try_from(part).unwrap_or(i64::MAX))
    }

    /// Reads `20.3`, `20,3`, `20.3 in3`, `20.3 cu in`, `333 cm3`, `1344 cu ft`, `38 m3`, `35 L`. A bare number is cubic inches, or
    /// cubic centimetres under [`Units::Metric`].
    ///
    /// # Errors
    /// The [`Problem`]; [`Problem::TooLarge`] past [`Volume::MAX`].
    pub fn read(text: &str, units: Units) -> Reading<Self> {
        Self::read_bare(text, if units == Units::Metric { CUBIC_CENTIMETRE } else { CUBIC_INCH })
    }

    /// The same for a room's: a bare number is cubic feet or cubic metres.
    ///
    /// # Errors
    /// As [`Volume::read`].
    pub fn read_as_room(text: &str, units: Units) -> Reading<Self> {
        Self::read_bare(text, if units == Units::Metric { CUBIC_METRE } else { CUBIC_FOOT })
    }

    fn read_bare(text: &str, bare: i64) -> Reading<Self> {
        let mut scan = Scanner::new(text);
        if scan.is_done() {
            return Err(Problem::Empty);
        }
        let minus = scan.take_minus();
        let number = scan.number()?;
        let size = match scan.joined_unit().as_str() {
            "" => bare,
            "in3" | "in³" | "in^3" | "cuin" | "cu.in." | "cu.in" | "ci" => CUBIC_INCH,
            "cm3" | "cm³" | "cm^3" | "cc" | "ml" => CUBIC_CENTIMETRE,
            "ft3" | "ft³" | "ft^3" | "cuft" | "cu.ft." | "cu.ft" | "cf" => CUBIC_FOOT,
            "l" | "liter" | "liters" | "litre" | "litres" => LITER,
            "m3" | "m³" | "m^3" => CUBIC_METRE,
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
        self.exactly((CUBIC_INCH, 1, 4, " in3"), (CUBIC_CENTIMETRE, 8, " cm3"))
    }

    /// The same for a room's: in cubic feet or cubic metres.
    pub fn exact_as_room(self) -> String {
        self.exactly((CUBIC_FOOT, 0, 5, " ft3"), (CUBIC_METRE, 14, " m3"))
    }

    /// In the first unit, with so many places at least and at most, if that says it all; else in
    /// the second, of which so many places say everything.
    fn exactly(self, first: (i64, usize, u32, &str), second: (i64, u32, &str)) -> String {
        let sign = if self.0 < 0 { "-" } else { "" };
        let size = self.0.saturating_abs().into();
        let (text, moved) =
            decimal::show(size, first.0.into(), first.1, first.2, Rounding::Nearest);
        if !moved {
            return [sign, &text, first.3].concat();
        }
        let text = decimal::show(size, second.0.into(), 0, second.1, Rounding::Nearest).0;
        [sign, &text, second.2].concat()
    }

    /// As a person reads it: cubic inches with every place they have, up to four, since the
    /// code's allowances are sixteenths of one, else to the hundredth; or cubic centimetres to the
    /// tenth. What isn't nothing is shown with as many places as it takes.
    pub fn show(self, units: Units, rounding: Rounding) -> Shown {
        let (unit, size, exact, most) = match units {
            Units::Customary => ("in³", CUBIC_INCH, 4, 2),
            Units::Metric => ("cm³", CUBIC_CENTIMETRE, 1, 1),
        };
        let (figure, rounded) =
            decimal::show_something(self.0.into(), size.into(), 1, (exact, most), rounding);
        Shown { figure, unit, rounded }
    }

    /// A room's volume as a person reads it: whole cubic feet, or cubic metres to the tenth. What is
    /// small, as a bag of scrapings is: a tenth of a cubic foot, or liters.
    pub fn show_as_room(self, units: Units, rounding: Rounding) -> Shown {
        let is_less = |size: i64| self.0.saturating_abs() < size;
        let (unit, size, most) = match units {
            Units::Customary if is_less(10 * CUBIC_FOOT) => ("cu ft", CUBIC_FOOT, 1),
            Units::Customary => ("cu ft", CUBIC_FOOT, 0),
            Units::Metric if self.0 != 0 && is_less(10 * LITER) => ("L", LITER, 1),
            Units::Metric if self.0 != 0 && is_less(CUBIC_METRE) => ("L", LITER, 0),
            Units::Metric => ("m³", CUBIC_METRE, 1),
        };
        let (figure, rounded) = decimal::show(self.0.into(), size.into(), 0, most, rounding);
        Shown { figure, unit, rounded }
    }
}
