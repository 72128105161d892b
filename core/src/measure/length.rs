//! Lengths.

use super::reading::Number;
use super::{Problem, Reading, Rounding, Scanner, Shown, Units, arithmetic, decimal, divide};

/// A length, held as whole nanometres.
///
/// 1/64 in is 396 875 nm and 0.00001 in is 254 nm, so whatever a tape or a drawing gives is
/// held without rounding. Source: the inch is 25.4 mm exactly, NIST SP 811 (2008), B.8.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Length(i64);

const INCH: i64 = 25_400_000;
const FOOT: i64 = 12 * INCH;
const YARD: i64 = 3 * FOOT;
const MILLIMETRE: i64 = 1_000_000;
const SIXTY_FOURTH: i64 = INCH / 64;

arithmetic!(Length, i64);

impl Length {
    /// The longest that is read: a mile. Anything longer is a slip of the thumb.
    pub const MAX: Self = Self(63_360 * INCH);

    /// `over / under` inches, for published values: `Length::inches(5, 4)` is 1-1/4 in.
    pub const fn inches(over: i64, under: i64) -> Self {
        Self(INCH / under * over)
    }

    /// Whole nanometres.
    pub const fn from_nanometres(nanometres: i64) -> Self {
        Self(nanometres)
    }

    /// Whole nanometres.
    pub const fn nanometres(self) -> i64 {
        self.0
    }

    /// An equal part of it, rounded down to the nanometre. `by` is one or more.
    pub fn part(self, by: i64) -> Self {
        Self(self.0.div_euclid(by.max(1)))
    }

    /// Reads trade text: `9' 4 1/2"`, `9-4-1/2` and `9 4 1/2` (feet, inches), `9ft 4.5in`,
    /// `112 1/2`, `2.86 m`, `2860mm`. A bare number is inches, or millimetres under
    /// [`Units::Metric`], where `9 4` is refused.
    ///
    /// # Errors
    /// The [`Problem`]; [`Problem::TooLarge`] past [`Length::MAX`].
    pub fn read(text: &str, units: Units) -> Reading<Self> {
        let mut scan = Scanner::new(text);
        if scan.is_done() {
            return Err(Problem::Empty);
        }
        let minus = scan.take_minus();
        let first = scan.number()?;
        let total = match scan.unit() {
            "" if scan.take_dash() => feet_then_inches(first, &mut scan)?,
            "" if units == Units::Metric => first.times(MILLIMETRE)?,
            "" if is_feet_before(first, scan.rest()) => feet_then_inches(first, &mut scan)?,
            "" => first.times(INCH)?,
            unit if is_feet(unit) => {
                let feet = first.times(FOOT)?;
                let _ = scan.take_dash();
                if scan.is_done() { feet } else { add(feet, inches(&mut scan)?)? }
            }
            unit => first.times(size(unit).ok_or_else(|| scan.unknown(unit))?)?,
        };
        if !scan.is_done() {
            return Err(Problem::NotANumber);
        }
        if total > Self::MAX.0 {
            return Err(Problem::TooLarge);
        }
        Ok(Self(if minus { -total } else { total }))
    }

    /// The text that reads back as exactly this length, with its unit.
    pub fn exact(self) -> String {
        let sign = if self.0 < 0 { "-" } else { "" };
        let size = Self(self.0.saturating_abs());
        if size.0 % SIXTY_FOURTH == 0 {
            return self.feet_and_inches(64);
        }
        let (text, moved) = decimal::show(size.0.into(), INCH.into(), 1, 5, Rounding::Nearest);
        if !moved {
            return format!("{sign}{text} in");
        }
        let (text, _) = decimal::show(size.0.into(), MILLIMETRE.into(), 0, 6, Rounding::Nearest);
        format!("{sign}{text} mm")
    }

    /// As a person reads it: to the sixteenth, under 1/8 in to the sixty-fourth, or to the
    /// millimetre's tenth, from 10 m up to the millimetre in metres. What isn't nothing is shown with as many places as it takes.
    pub fn show(self, units: Units, rounding: Rounding) -> Shown {
        match units {
            // A long one in metres, with its unit as feet and inches have theirs.
            Units::Metric if self.0.saturating_abs() >= 10_000 * MILLIMETRE => {
                let metre = i128::from(1_000 * MILLIMETRE);
                let (figure, rounded) =
                    decimal::show_something(self.0.into(), metre, 0, (4, 3), rounding);
                Shown { figure: [&figure, " m"].concat(), unit: "", rounded }
            }
            Units::Metric => {
                let (figure, rounded) =
                    decimal::show_something(self.0.into(), MILLIMETRE.into(), 0, (1, 1), rounding);
                Shown { figure, unit: "mm", rounded }
            }
            Units::Customary => {
                // A coat of 1/32 in shown as 1/16 would be twice as thick.
                let parts = if self.0.saturating_abs() < INCH / 8 { 64 } else { 16 };
                let step = INCH / parts;
                let count = divide(i128::from(self.0), i128::from(step), rounding);
                if count == 0 && self.0 != 0 && rounding == Rounding::Nearest {
                    let (figure, rounded) =
                        decimal::show_something(self.0.into(), INCH.into(), 0, (3, 3), rounding);
                    return Shown { figure, unit: "in", rounded };
                }
                let near = Self(i64::try_from(count).unwrap_or(0).saturating_mul(step));
                let text = near.feet_and_inches(parts);
                let (figure, unit) = match text.strip_suffix(" in") {
                    Some(figure) => (figure.to_owned(), "in"),
                    None => (text, ""),
                };
                Shown { figure, unit, rounded: near != self }
            }
        }
    }

    /// Feet, inches and a fraction of `parts` to the inch; feet only from two feet up, as a tape
    /// is read out on site.
    fn feet_and_inches(self, parts: i64) -> String {
        let sign = if self.0 < 0 { "−" } else { "" };
        let count = self.0.saturating_abs() / (INCH / parts);
        let (inches, mut over) = (count / parts, count % parts);
        let mut under = parts;
        while over != 0 && over % 2 == 0 {
            over /= 2;
            under /= 2;
        }
        let (feet, inches) = if inches >= 24 { (inches / 12, inches % 12) } else { (0, inches) };
        let fraction = match (inches, over) {
            (_, 0) => String::new(),
            (0, _) => format!("{over}/{under}"),
            _ => format!("-{over}/{under}"),
        };
        match (feet, inches, over) {
            (0, 0, 0) => format!("{sign}0 in"),
            (0, 0, _) => format!("{sign}{fraction} in"),
            (0, ..) => format!("{sign}{inches}{fraction} in"),
            (_, 0, 0) => format!("{sign}{feet} ft"),
            (_, 0, _) => format!("{sign}{feet} ft {fraction} in"),
            _ => format!("{sign}{feet} ft {inches}{fraction} in"),
        }
    }
}

fn is_feet(unit: &str) -> bool {
    matches!(lower(unit).as_str(), "'" | "′" | "’" | "ft" | "ft." | "feet" | "foot")
}

fn lower(unit: &str) -> String {
    unit.to_ascii_lowercase()
}

/// What one of a unit is, in nanometres.
fn size(unit: &str) -> Option<i64> {
    Some(match lower(unit).as_str() {
        "\"" | "″" | "”" | "''" | "’’" | "in" | "in." | "inch" | "inches" => INCH,
        "'" | "′" | "’" | "ft" | "ft." | "feet" | "foot" => FOOT,
        "yd" | "yard" | "yards" => YARD,
        "mm" => MILLIMETRE,
        "cm" => 10 * MILLIMETRE,
        "m" => 1000 * MILLIMETRE,
        _ => return None,
    })
}

fn add(a: i64, b: i64) -> Reading<i64> {
    a.checked_add(b).ok_or(Problem::TooLarge)
}

/// The inches behind feet; their unit may be left out.
fn inches(scan: &mut Scanner<'_>) -> Reading<i64> {
    let number = scan.number()?;
    match scan.unit() {
        "" => number.times(INCH),
        unit if size(unit) == Some(INCH) => number.times(INCH),
        unit => Err(scan.unknown(unit)),
    }
}

/// Whether a bare number is feet because inches stand behind it with no more than a space between,
/// which is the quickest to type on a phone: `15 6`, `9 4 1/2`. What is one number by itself, such as
/// `48 3/4`, has been taken whole by now; inches have to be fewer than a foot, and feet no more than
/// a house has, so that `1 250` and `2026 11` stay refused.
fn is_feet_before(first: Number, rest: &str) -> bool {
    let after = rest.trim_start_matches(|next: char| next.is_ascii_digit());
    let inches = rest.strip_suffix(after).map(str::parse::<u8>);
    let feet = first.is_whole() && (1..100).contains(&first.decimal.whole);
    feet && inches.is_some_and(|inches| inches.is_ok_and(|inches| inches < 12))
}

/// `9-4-1/2` and `9-4`: feet, a dash, inches. `9 4` is the same.
fn feet_then_inches(feet: Number, scan: &mut Scanner<'_>) -> Reading<i64> {
    if !feet.is_whole() {
        return Err(Problem::NotANumber);
    }
    add(feet.times(FOOT)?, inches(scan)?)
}
