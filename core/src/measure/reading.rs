//! Reading numbers as people on site write them: `9' 4 1/2"`, `9-4-1/2`, `112 1/2`, `20.3`.

use super::Decimal;

/// Why a text could not be read as a quantity.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Problem {
    /// Nothing was typed.
    Empty,
    /// It is not a number, or a number with something else in it.
    NotANumber,
    /// The unit is of another kind, or unknown.
    UnknownUnit,
    /// A comma that may be a thousands mark, so that nobody can say what was meant.
    Comma,
    /// It was read, but is too large to be held.
    TooLarge,
    /// It may be small, but is written with more digits than can be held.
    TooManyDigits,
    /// A fraction over zero, such as `1/0`.
    ZeroDenominator,
    /// It means one thing to some and another to others, such as `3/4/2026` or `$18.450`.
    TwoMeanings,
}

/// What reading a text gives.
pub type Reading<T> = Result<T, Problem>;

/// Walks a text by trade tokens. Never looks back, so reading takes one pass.
#[derive(Debug)]
pub struct Scanner<'a> {
    rest: &'a str,
}

/// A number token: a decimal, a fraction, or a whole number with a fraction.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Number {
    /// The decimal part.
    pub decimal: Decimal,
    /// A fraction to add: numerator over denominator.
    pub fraction: Option<(i128, i128)>,
}

impl Number {
    /// This many of `unit`, to the nearest base unit.
    pub(crate) fn times(self, unit: i64) -> Reading<i64> {
        i64::try_from(self.times_wide(unit.into())?).map_err(|_| Problem::TooLarge)
    }

    /// The same for a quantity that is held in 128 bits.
    pub(crate) fn times_wide(self, unit: i128) -> Reading<i128> {
        let base = self.decimal.times(unit).ok_or(Problem::TooLarge)?;
        let Some((over, under)) = self.fraction else { return Ok(base) };
        let over = Decimal { whole: over, places: 0 }.times(unit).ok_or(Problem::TooLarge)?;
        let part = super::divide(over, under, super::Rounding::Nearest);
        base.checked_add(part).ok_or(Problem::TooLarge)
    }

    /// A whole number of the unit, with nothing behind the point.
    pub(crate) fn is_whole(self) -> bool {
        self.fraction.is_none() && self.decimal.places == 0
    }
}

impl<'a> Scanner<'a> {
    /// Starts at the beginning of `text`, past leading space.
    pub fn new(text: &'a str) -> Self {
        Self { rest: text.trim() }
    }

    /// Nothing is left.
    pub fn is_done(&self) -> bool {
        self.rest.is_empty()
    }

    /// What is left.
    pub(crate) fn rest(&self) -> &'a str {
        self.rest
    }

    fn space(&mut self) {
        self.rest = self.rest.trim_start();
    }

    /// Takes `sign` if it stands here.
    pub(crate) fn take(&mut self, sign: char) -> bool {
        if let Some(rest) = self.rest.strip_prefix(sign) {
            self.rest = rest;
            self.space();
            return true;
        }
        false
    }

    /// Takes a sign that makes the quantity less than nothing.
    pub(crate) fn take_minus(&mut self) -> bool {
        self.take('-') || self.take('−')
    }

    /// Takes the separator of `9-4-1/2` if a digit follows it.
    pub(crate) fn take_dash(&mut self) -> bool {
        let Some(rest) = self.rest.strip_prefix(['-', '–', '‑']) else { return false };
        let rest = rest.trim_start();
        if rest.starts_with(|next: char| next.is_ascii_digit() || vulgar(next).is_some()) {
            self.rest = rest;
            return true;
        }
        false
    }

    /// Whether a digit or a fraction stands here.
    pub(crate) fn at_number(&self) -> bool {
        self.rest.starts_with(|next: char| {
            next.is_ascii_digit() || next == '.' || vulgar(next).is_some()
        })
    }

    /// The letters and signs of a unit: everything up to the next digit, dash or space. A 2 or 3
    /// that ends the text right behind a letter is part of it, as in `in3`; `9'3"` and `9ft3in`
    /// go on with inches.
    pub(crate) fn unit(&mut self) -> &'a str {
        self.space();
        let mut end = self.rest.len();
        let mut raised = false;
        for (at, next) in self.rest.char_indices() {
            let part_of_unit = next.is_alphabetic()
                || matches!(next, '\'' | '"' | '′' | '″' | '’' | '”' | '³' | '²' | '^' | '.')
                || (raised && matches!(next, '2' | '3') && self.rest.len() == at + 1);
            if !part_of_unit {
                end = at;
                break;
            }
            raised = next.is_alphabetic() || next == '^';
        }
        let (unit, rest) = self.rest.split_at_checked(end).unwrap_or((self.rest, ""));
        self.rest = rest;
        self.space();
        unit
    }

    /// Why what stands behind a number can't be taken as `unit`: a slip of the thumb such as
    /// `18..0` or `1e9` is no unit.
    pub(crate) fn unknown(&self, unit: &str) -> Problem {
        let letters = unit.starts_with(|first: char| first.is_alphabetic());
        if self.rest.starts_with(',') {
            Problem::Comma
        } else if letters && self.is_done() {
            Problem::UnknownUnit
        } else {
            Problem::NotANumber
        }
    }

    /// Takes a decimal mark: a point, or a comma with one or two digits behind it. Three digits
    /// may be thousands and more are anybody's guess, so that they are never read as decimals.
    fn take_decimal_mark(&mut self) -> Reading<bool> {
        if let Some(rest) = self.rest.strip_prefix('.') {
            self.rest = rest;
            return Ok(true);
        }
        let Some(rest) = self.rest.strip_prefix(',') else { return Ok(false) };
        let after = rest.trim_start_matches(|next: char| next.is_ascii_digit());
        if !matches!(rest.len() - after.len(), 1 | 2) || after.starts_with([',', '.']) {
            return Err(Problem::Comma);
        }
        self.rest = rest;
        Ok(true)
    }

    /// A unit of one or two words, small and in one: `cuin`, `sqft`, `m2`.
    pub(crate) fn joined_unit(&mut self) -> String {
        let mut unit = self.unit().to_ascii_lowercase();
        unit.push_str(&self.unit().to_ascii_lowercase());
        unit
    }

    fn digits(&mut self) -> &'a str {
        let rest = self.rest.trim_start_matches(|next: char| next.is_ascii_digit());
        let digits = self.rest.strip_suffix(rest).unwrap_or_default();
        self.rest = rest;
        digits
    }

    /// A number: `12`, `4.5`, `4,5`, `1/2`, `4 1/2`, `4-1/2`, `4½`.
    ///
    /// # Errors
    /// [`Problem::NotANumber`], [`Problem::Comma`], [`Problem::TooLarge`],
    /// [`Problem::TooManyDigits`], [`Problem::ZeroDenominator`].
    pub(crate) fn number(&mut self) -> Reading<Number> {
        let nothing = Decimal { whole: 0, places: 0 };
        if let Some(fraction) = self.take_vulgar() {
            return Ok(Number { decimal: nothing, fraction: Some(fraction) });
        }
        let whole = self.digits();
        let before = self.rest;
        if self.take_decimal_mark()? {
            let part = self.digits();
            if whole.is_empty() && part.is_empty() {
                self.rest = before;
                return Err(Problem::NotANumber);
            }
            let decimal = join(whole, part)?;
            return Ok(Number { decimal, fraction: None });
        }
        if whole.is_empty() {
            return Err(Problem::NotANumber);
        }
        let first = join(whole, "")?;
        if self.rest.starts_with(['/', '⁄']) {
            let fraction = self.under(first.whole)?;
            return Ok(Number { decimal: nothing, fraction: Some(fraction) });
        }
        if let Some(fraction) = self.take_vulgar() {
            return Ok(Number { decimal: first, fraction: Some(fraction) });
        }
        let before = self.rest;
        let spaced = self.rest.starts_with(' ');
        self.space();
        if (spaced || self.take_dash()) && self.at_number() {
            if let Some(fraction) = self.take_vulgar() {
                return Ok(Number { decimal: first, fraction: Some(fraction) });
            }
            let over = self.digits();
            if self.rest.starts_with(['/', '⁄']) {
                let over = join(over, "").map_err(|_| Problem::TooManyDigits)?.whole;
                let fraction = self.under(over)?;
                return Ok(Number { decimal: first, fraction: Some(fraction) });
            }
        }
        self.rest = before;
        Ok(Number { decimal: first, fraction: None })
    }

    fn under(&mut self, over: i128) -> Reading<(i128, i128)> {
        let mut past_slash = self.rest.chars();
        past_slash.next();
        self.rest = past_slash.as_str();
        let digits = self.digits();
        if digits.is_empty() {
            return Err(Problem::NotANumber);
        }
        match join(digits, "").map_err(|_| Problem::TooManyDigits)?.whole {
            0 => Err(Problem::ZeroDenominator),
            under => Ok((over, under)),
        }
    }

    fn take_vulgar(&mut self) -> Option<(i128, i128)> {
        let mut rest = self.rest.chars();
        let fraction = vulgar(rest.next()?)?;
        self.rest = rest.as_str();
        Some(fraction)
    }
}

/// The one-character fractions of Unicode that a phone's keyboard offers.
fn vulgar(sign: char) -> Option<(i128, i128)> {
    Some(match sign {
        '½' => (1, 2),
        '¼' => (1, 4),
        '¾' => (3, 4),
        '⅛' => (1, 8),
        '⅜' => (3, 8),
        '⅝' => (5, 8),
        '⅞' => (7, 8),
        '⅓' => (1, 3),
        '⅔' => (2, 3),
        _ => return None,
    })
}

fn join(whole: &str, part: &str) -> Reading<Decimal> {
    let whole = whole.trim_start_matches('0');
    if whole.len() > Decimal::MOST_DIGITS {
        return Err(Problem::TooLarge);
    }
    if whole.len() + part.len() > Decimal::MOST_DIGITS {
        return Err(Problem::TooManyDigits);
    }
    let digits = whole.bytes().chain(part.bytes());
    let whole = digits.fold(0_i128, |sum, digit| sum * 10 + i128::from(digit - b'0'));
    Ok(Decimal { whole, places: u32::try_from(part.len()).unwrap_or(0) })
}
