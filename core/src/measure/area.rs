//! Areas of floors, walls and openings.

use super::{Length, Problem, Reading, Rounding, Scanner, Shown, Units, arithmetic, decimal};

/// An area, held as whole square nanometres.
///
/// In 128 bits, since a room's floor is past 64 of them: so the product of any two lengths is held
/// without rounding. Source: 1 ft² is 0.092 903 04 m² exactly, NIST SP 811 (2008), B.8.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
// Aligned as the other quantities are: whatever can hold an area, as all that is shown can, would
// be half as large again.
#[repr(Rust, packed(8))]
pub struct Area(i128);

const SQUARE_INCH: i128 = 25_400_000 * 25_400_000;
const SQUARE_FOOT: i128 = 144 * SQUARE_INCH;
const SQUARE_YARD: i128 = 9 * SQUARE_FOOT;
const SQUARE_MILLIMETRE: i128 = 1_000_000_000_000;
const SQUARE_METRE: i128 = 1_000_000 * SQUARE_MILLIMETRE;

arithmetic!(Area, i128);

impl Area {
    /// The largest that is read: a square mile.
    pub const MAX: Self = Self(Length::MAX.nanometres() as i128 * Length::MAX.nanometres() as i128);

    /// `wide` times `high`, exactly.
    pub const fn of(wide: Length, high: Length) -> Self {
        Self(wide.nanometres() as i128 * high.nanometres() as i128)
    }

    /// Whole square feet, for published values.
    pub const fn square_feet(count: i64) -> Self {
        Self(SQUARE_FOOT * count as i128)
    }

    /// Whole square nanometres.
    pub const fn from_square_nanometres(square_nanometres: i128) -> Self {
        Self(square_nanometres)
    }

    /// Whole square nanometres.
    pub const fn square_nanometres(self) -> i128 {
        self.0
    }

    /// Reads `160 sq ft`, `160 sqft`, `160 ft2`, `14.9 m2`, `12 sq in`. A bare number is square
    /// feet, or square metres under [`Units::Metric`].
    ///
    /// # Errors
    /// The [`Problem`]; [`Problem::TooLarge`] past [`Area::MAX`].
    pub fn read(text: &str, units: Units) -> Reading<Self> {
        let mut scan = Scanner::new(text);
        if scan.is_done() {
            return Err(Problem::Empty);
        }
        let minus = scan.take_minus();
        let number = scan.number()?;
        let size = match scan.joined_unit().as_str() {
            "" if units == Units::Metric => SQUARE_METRE,
            "" | "ft2" | "ft²" | "ft^2" | "sqft" | "sq.ft." | "sq.ft" | "sf" => SQUARE_FOOT,
            "in2" | "in²" | "in^2" | "sqin" | "sq.in." | "sq.in" => SQUARE_INCH,
            "yd2" | "yd²" | "yd^2" | "sqyd" | "sq.yd." | "sq.yd" => SQUARE_YARD,
            "m2" | "m²" | "m^2" | "sqm" => SQUARE_METRE,
            "cm2" | "cm²" | "cm^2" => 100 * SQUARE_MILLIMETRE,
            "mm2" | "mm²" | "mm^2" => SQUARE_MILLIMETRE,
            unit => return Err(scan.unknown(unit)),
        };
        if !scan.is_done() {
            return Err(Problem::NotANumber);
        }
        let total = number.times_wide(size)?;
        if total > Self::MAX.0 {
            return Err(Problem::TooLarge);
        }
        Ok(Self(if minus { -total } else { total }))
    }

    /// The text that reads back as exactly this area, with its unit.
    pub fn exact(self) -> String {
        let sign = if self.0 < 0 { "-" } else { "" };
        let size = self.0.saturating_abs();
        for (unit, name, most) in [(SQUARE_FOOT, " ft2", 2), (SQUARE_INCH, " in2", 8)] {
            let (text, moved) = decimal::show(size, unit, 0, most, Rounding::Nearest);
            if !moved {
                return [sign, &text, name].concat();
            }
        }
        let text = decimal::show(size, SQUARE_MILLIMETRE, 0, 12, Rounding::Nearest).0;
        [sign, &text, " mm2"].concat()
    }

    /// The bare figure that reads back as exactly this area, as a person can read it: square feet with up
    /// to four decimals, else with a fraction of one that is whole square inches, `251-19/24`; or square
    /// metres with up to eight decimals. None where it takes more than that.
    pub fn figure(self, units: Units) -> Option<String> {
        if self.0 < 0 {
            return None;
        }
        let (unit, most) = match units {
            Units::Customary => (SQUARE_FOOT, 4),
            Units::Metric => (SQUARE_METRE, 8),
        };
        let (text, moved) = decimal::show(self.0, unit, 0, most, Rounding::Nearest);
        if !moved {
            return Some(text);
        }
        if units == Units::Metric || self.0 % SQUARE_INCH != 0 {
            return None;
        }
        const WHOLE: i128 = SQUARE_FOOT / SQUARE_INCH;
        let inches = self.0 / SQUARE_INCH;
        // Euclid's: what both parts of the fraction can be divided by.
        let (mut by, mut left) = (WHOLE, inches % WHOLE);
        while left > 0 {
            (by, left) = (left, by % left);
        }
        let number = |count: i128| decimal::show(count, 1, 0, 0, Rounding::Nearest).0;
        let fraction = [&*number(inches % WHOLE / by), "/", &number(WHOLE / by)].concat();
        Some(match inches / WHOLE {
            0 => fraction,
            feet => [&*number(feet), "-", &fraction].concat(),
        })
    }

    /// As a person reads it: square feet to the tenth, or square metres to the hundredth.
    pub fn show(self, units: Units, rounding: Rounding) -> Shown {
        let (unit, size, most) = match units {
            Units::Customary => ("sq ft", SQUARE_FOOT, 1),
            Units::Metric => ("m²", SQUARE_METRE, 2),
        };
        let (figure, rounded) = decimal::show_something(self.0, size, 0, (most, most), rounding);
        Shown { figure, unit, rounded }
    }
}
