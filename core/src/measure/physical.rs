//! Physical quantities that come with a unit: loads, heat, air, shares, temperatures.

use super::unit::Unit;
use super::{Decimal, Problem, Reading, Rounding, Scanner, Shown, Units, decimal, divide};

/// So many millionths of a unit make one.
const ONE: i64 = 1_000_000;

/// A quantity of one unit, held as whole millionths of it.
///
/// Lengths, areas and volumes have exact types of their own; this is for what is measured roughly
/// or worked out by physics. Two of one unit compare; of two units nothing is said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Measure {
    unit: &'static Unit,
    millionths: i64,
}

impl PartialOrd for Measure {
    fn partial_cmp(&self, other: &Self) -> Option<std::cmp::Ordering> {
        Some(self.cmp(other))
    }
}

/// By size, for measures of one unit.
impl Ord for Measure {
    fn cmp(&self, other: &Self) -> std::cmp::Ordering {
        self.millionths.cmp(&other.millionths)
    }
}

/// Small, and without what nobody types on a phone.
fn folded(unit: &str) -> String {
    let mut unit = unit.to_ascii_lowercase();
    unit.retain(|sign| !matches!(sign, ' ' | '°'));
    unit
}

/// Money without the marks of its thousands, as we write it ourselves. Three digits behind a comma
/// are no part of a dollar.
fn without_thousands(money: &str) -> Option<String> {
    let (whole, cents) = money.split_once('.').unwrap_or((money, "0"));
    let mut groups = whole.split(',');
    let mut all =
        groups.next().filter(|first| first.ends_with(|it: char| it.is_ascii_digit()))?.to_owned();
    for group in groups {
        if group.len() != 3 || !group.bytes().all(|it| it.is_ascii_digit()) {
            return None;
        }
        all.push_str(group);
    }
    all.push('.');
    all.push_str(cents);
    Some(all)
}

/// Hours and minutes as a clock tells them, `7:15`, as a number that is read.
fn of_the_clock(hours: &str) -> Option<String> {
    let (whole, minutes) = hours.trim().split_once(':')?;
    let is_part = minutes.len() == 2 && minutes.bytes().all(|it| it.is_ascii_digit());
    let is_read = is_part && minutes < "60" && whole.ends_with(|it: char| it.is_ascii_digit());
    is_read.then(|| [whole, " ", minutes, "/60"].concat())
}

/// Whether a point stands in money as a mark of thousands does, with three digits behind it: `18.450`,
/// but not `0.045`, which is less than a dollar.
fn is_thousands(money: &str) -> bool {
    let Some((whole, behind)) = money.trim_end().split_once('.') else { return false };
    behind.len() == 3
        && behind.bytes().all(|it| it.is_ascii_digit())
        && whole.bytes().any(|it| matches!(it, b'1'..=b'9'))
}

impl Measure {
    /// So many millionths of a unit.
    pub const fn new(unit: &'static Unit, millionths: i64) -> Self {
        Self { unit, millionths }
    }

    /// So many hundredths of a unit, for published values.
    pub const fn hundredths(unit: &'static Unit, hundredths: i64) -> Self {
        Self { unit, millionths: hundredths.saturating_mul(ONE / 100) }
    }

    /// So many of a unit.
    pub const fn whole(unit: &'static Unit, count: i64) -> Self {
        Self { unit, millionths: count.saturating_mul(ONE) }
    }

    /// The nearest to a number of a unit; past the end of the scale its end. Not a number is none.
    pub fn nearest(unit: &'static Unit, value: f64) -> Option<Self> {
        // A cast keeps to the ends of the scale by itself.
        let millionths = libm::round(value * ONE as f64) as i64;
        (!value.is_nan()).then_some(Self { unit, millionths })
    }

    /// As a number of its unit.
    pub fn number(self) -> f64 {
        self.millionths as f64 / ONE as f64
    }

    /// Its unit.
    pub const fn unit(self) -> &'static Unit {
        self.unit
    }

    /// Whole millionths of its unit.
    pub const fn millionths(self) -> i64 {
        self.millionths
    }

    /// The same size on the other side of nothing, and so on: of the same unit.
    pub const fn of_same(self, millionths: i64) -> Self {
        Self { unit: self.unit, millionths }
    }

    /// The difference of two of one unit.
    pub const fn minus(self, other: Self) -> Self {
        self.of_same(self.millionths.saturating_sub(other.millionths))
    }

    /// Reads `30`, `30 psf`, `1.5 kPa`, `-10 °F`, and hours as `7:15` too. A bare number is in the unit, or in its metric
    /// one under [`Units::Metric`].
    ///
    /// # Errors
    /// The [`Problem`]; [`Problem::TooLarge`] past what is held.
    pub fn read(text: &str, unit: &'static Unit, units: Units) -> Reading<Self> {
        let is_money = unit.key.starts_with('$');
        let whole = match unit.key {
            "h" => of_the_clock(text),
            _ if is_money => without_thousands(text),
            _ => None,
        };
        let mut scan = Scanner::new(whole.as_deref().unwrap_or(text));
        if scan.is_done() {
            return Err(Problem::Empty);
        }
        // A dollar stands before its figure, and is its unit with what comes after.
        let minus = scan.take_minus();
        let before = is_money && scan.take('$');
        let minus = minus || scan.take_minus();
        let number = scan.number()?;
        let mut rest = folded(scan.rest());
        if is_money && rest.is_empty() && is_thousands(text) {
            return Err(Problem::TwoMeanings);
        }
        if before && !rest.is_empty() {
            rest.insert(0, '$');
        }
        let given = match (&*rest, unit.metric) {
            ("", metric) => metric.filter(|_| units == Units::Metric),
            (text, _)
                if [unit.key, unit.sign].iter().chain(unit.also).any(|own| text == folded(own)) =>
            {
                None
            }
            (text, Some(metric)) if text == folded(metric.sign) => Some(metric),
            _ => return Err(scan.unknown(&rest)),
        };
        let mut millionths = number.times(ONE)?;
        // A slope is written 4/12 as often as 4 in 12.
        if let (true, Some((over, 12))) = (unit.key == "/12" && rest.is_empty(), number.fraction)
            && number.decimal.whole == 0
        {
            millionths = Decimal { whole: over, places: 0 }
                .times(ONE.into())
                .and_then(|it| it.try_into().ok())
                .ok_or(Problem::TooLarge)?;
        }
        let mut millionths = i128::from(if minus { -millionths } else { millionths });
        if let Some(metric) = given {
            // Two of 64 bits, so well within 128.
            let from = (millionths - i128::from(metric.offset)) * i128::from(metric.under);
            millionths = divide(from, metric.over.into(), Rounding::Nearest);
        }
        let millionths = i64::try_from(millionths).map_err(|_| Problem::TooLarge)?;
        Ok(Self { unit, millionths })
    }

    /// The text that reads back as exactly this, with its unit.
    pub fn exact(self) -> String {
        let sign = if self.millionths < 0 { "-" } else { "" };
        let size = i128::from(self.millionths.unsigned_abs());
        let figure = decimal::show(size, ONE.into(), 0, 6, Rounding::Nearest).0;
        [sign, &figure, " ", self.unit.key].concat()
    }

    /// Reads [`Measure::exact`], whatever its unit.
    pub fn from_exact(text: &str) -> Option<Self> {
        let (_, key) = text.split_once(' ')?;
        Self::read(text, Unit::of_key(key)?, Units::Customary).ok()
    }

    /// As a person reads it: with no more decimals than its unit is told in, but for what would
    /// show as nothing and isn't.
    pub fn show(self, units: Units, rounding: Rounding) -> Shown {
        let places = self.unit.places;
        let (sign, value, size, places) = match self.unit.metric {
            Some(metric) if units == Units::Metric => {
                let over = i128::from(self.millionths) * i128::from(metric.over);
                let offset = i128::from(metric.offset) * i128::from(metric.under);
                let size = i128::from(ONE) * i128::from(metric.under);
                // A small volume is told in liters.
                if metric.sign == "m³" && over != 0 && over.abs() < size {
                    let places = u32::from(over.abs() * 100 < size);
                    let (figure, rounded) =
                        decimal::show_something(over * 1000, size, 0, (places, places), rounding);
                    return Shown { figure, unit: "L", rounded };
                }
                // A metric unit many times as large needs so many more decimals.
                let finer = match metric.under / metric.over.max(1) {
                    0..4 => 0,
                    4..40 => 1,
                    40..400 => 2,
                    _ => 3,
                };
                // And one many times as small needs fewer.
                let coarser = if metric.over / metric.under.max(1) < 40 { 0 } else { 2 };
                (metric.sign, over + offset, size, (places + finer).saturating_sub(coarser))
            }
            _ => (self.unit.sign, self.millionths.into(), ONE.into(), places),
        };
        // What nothing is called there is no measure of how much it is: 32 °F is 0 °C.
        let shown = match self.unit.metric {
            Some(metric) if units == Units::Metric && metric.offset != 0 => {
                decimal::show(value, size, 0, places, rounding)
            }
            _ => decimal::show_something(value, size, 0, (places, places), rounding),
        };
        let (figure, rounded) = shown;
        Shown { figure, unit: sign, rounded }
    }
}
