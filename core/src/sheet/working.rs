//! Working that can't lie: a step is an expression, and what is printed is its evaluation.

use super::Source;
use crate::measure::unit::{self, Dims, LENGTH, PURE, Unit};
use crate::measure::{Area, CUBIC_NANOMETRES, Length, Measure, Rounding, Volume, decimal};
use crate::words::{Amount, Text, Voice};

/// An expression over quantities.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Expr {
    /// A value.
    Is(Amount),
    /// A sum; of nothing it is nothing.
    Sum(Vec<Expr>),
    /// The first less the second.
    Less(Box<Expr>, Box<Expr>),
    /// A product.
    Times(Box<Expr>, Box<Expr>),
    /// The first divided by the second.
    Over(Box<Expr>, Box<Expr>),
    /// The largest.
    Most(Vec<Expr>),
    /// The smallest.
    Least(Vec<Expr>),
    /// Up to the next whole number.
    RoundUp(Box<Expr>),
    /// Down to the next whole number.
    RoundDown(Box<Expr>),
    /// To the nearest whole one, halves away from nothing: money to its cent.
    ToNearest(Box<Expr>),
    /// Its square root, or its cube root where that is 3.
    Root(i8, Box<Expr>),
    /// A plain number above nothing, to so many thousandths of the first power.
    Power(i16, Box<Expr>),
    /// The same, told in this unit; none where it measures something else.
    In(&'static Unit, Box<Expr>),
}

/// What an expression comes to: a number of base units, and of which kind.
///
/// Exact while whole numbers hold it, which is always the case for lengths, areas, volumes and
/// counts that are added, multiplied and divided; a root, or a product past 128 bits, is held as the
/// nearest float.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Value {
    dims: Dims,
    /// A box's volume, told in cubic inches; a room's is not.
    boxed: bool,
    /// What it is to be told in.
    unit: Option<&'static Unit>,
    number: Number,
}

#[derive(Clone, Copy, Debug, PartialEq)]
enum Number {
    /// A fraction of whole numbers in its lowest terms; what it is divided by is above zero.
    Exact(i128, i128),
    /// Never infinite, never not a number.
    Near(f64),
}
use Number::{Exact, Near};

const AREA: Dims = unit::with(LENGTH, LENGTH, 1);
const VOLUME: Dims = unit::with(AREA, LENGTH, 1);

impl Number {
    fn exact(over: i128, under: i128) -> Option<Self> {
        let by = i128::try_from(gcd(over.unsigned_abs(), under.unsigned_abs())).ok()?;
        let by = if under < 0 { -by } else { by };
        (under != 0).then(|| Exact(over / by, under / by))
    }

    fn near(value: f64) -> Option<Self> {
        value.is_finite().then_some(Near(value))
    }

    fn float(self) -> f64 {
        match self {
            Exact(over, under) => over as f64 / under as f64,
            Near(value) => value,
        }
    }

    fn plus(self, other: Self) -> Option<Self> {
        let sum = |a: i128, b: i128, c: i128, d: i128| {
            Some((a.checked_mul(d)?.checked_add(c.checked_mul(b)?)?, b.checked_mul(d)?))
        };
        match (self, other) {
            (Exact(a, b), Exact(c, d)) => sum(a, b, c, d),
            _ => None,
        }
        .map_or_else(
            || Self::near(self.float() + other.float()),
            |(over, under)| Self::exact(over, under),
        )
    }

    fn times(self, other: Self) -> Option<Self> {
        match (self, other) {
            (Exact(a, b), Exact(c, d)) => a.checked_mul(c).zip(b.checked_mul(d)),
            _ => None,
        }
        .map_or_else(
            || Self::near(self.float() * other.float()),
            |(over, under)| Self::exact(over, under),
        )
    }

    fn flipped(self) -> Option<Self> {
        match self {
            Exact(over, under) => Self::exact(under, over),
            Near(value) => Self::near(1.0 / value),
        }
    }

    /// To a whole number.
    fn rounded(self, rounding: Rounding) -> i128 {
        match self {
            Exact(over, under) => crate::measure::divide(over, under, rounding),
            // A cast keeps to the ends of the scale.
            Near(value) => match rounding {
                Rounding::Nearest => libm::round(value) as i128,
                Rounding::Up => libm::ceil(value) as i128,
                Rounding::Down => libm::floor(value) as i128,
            },
        }
    }
}

impl Value {
    fn new(dims: Dims, number: Number) -> Self {
        Self { dims, boxed: false, unit: None, number }
    }

    fn of(amount: Amount) -> Self {
        let exact = |dims| Self::new(dims, Exact(amount.raw(), 1));
        match amount {
            Amount::Count(_) | Amount::Day(_) => exact(PURE),
            Amount::Length(_) => exact(LENGTH),
            Amount::Area(_) => exact(AREA),
            // 64 bits times 44 are well within 128.
            Amount::Volume(_) | Amount::Room(_) => Self {
                boxed: matches!(amount, Amount::Volume(_)),
                ..Self::new(VOLUME, Exact(amount.raw() * CUBIC_NANOMETRES, 1))
            },
            Amount::Measure(measure) => {
                let unit = measure.unit();
                let (over, under) = unit.size;
                let one = Exact(measure.millionths().into(), 1_000_000);
                let number = Number::exact(over, under).and_then(|size| one.times(size));
                let value = Self::new(unit.dims, number.unwrap_or(Exact(0, 1)));
                Self { unit: Some(unit), ..value }
            }
        }
    }

    /// As a quantity: exact, or to the nearest base unit of its kind. None of a kind that has no
    /// name of its own: see [`Expr::In`].
    pub fn amount(self) -> Option<Amount> {
        let nearest = |number: Number| number.rounded(Rounding::Nearest);
        let narrow = |number| i64::try_from(nearest(number)).ok();
        if let Some(unit) = self.unit {
            let (over, under) = unit.size;
            let by = Number::exact(1_000_000, 1)?.times(Number::exact(under, over)?)?;
            let millionths = narrow(self.number.times(by)?)?;
            return Some(Amount::Measure(Measure::new(unit, millionths)));
        }
        Some(match self.dims {
            PURE => Amount::Count(narrow(self.number)?),
            LENGTH => Amount::Length(Length::from_nanometres(narrow(self.number)?)),
            AREA => Amount::Area(Area::from_square_nanometres(nearest(self.number))),
            VOLUME => {
                let units = self.number.times(Exact(1, CUBIC_NANOMETRES))?;
                let volume = Volume::from_units(narrow(units)?);
                if self.boxed { Amount::Volume(volume) } else { Amount::Room(volume) }
            }
            _ => return None,
        })
    }

    fn plus(self, other: Self) -> Option<Self> {
        if self.dims != other.dims || self.boxed != other.boxed {
            return None;
        }
        Some(Self {
            number: self.number.plus(other.number)?,
            unit: self.unit.filter(|_| self.unit == other.unit),
            ..self
        })
    }

    fn times(self, other: Self) -> Option<Self> {
        let number = self.number.times(other.number)?;
        let boxed = (self.boxed && other.dims == PURE) || (other.boxed && self.dims == PURE);
        let value = Self::new(unit::with(self.dims, other.dims, 1), number);
        // So many of a unit are told in it.
        let counted = |count: Self, of: Self| of.unit.filter(|_| count.is_count());
        let unit = counted(other, self).or_else(|| counted(self, other));
        Some(Self { boxed, unit, ..value })
    }

    fn over(self, other: Self) -> Option<Self> {
        let flipped = other.number.flipped()?;
        let dims = unit::with(PURE, other.dims, -1);
        self.times(Self { unit: other.unit, ..Self::new(dims, flipped) })
    }

    fn is_count(self) -> bool {
        self.dims == PURE && self.unit.is_none()
    }

    fn minus(self) -> Option<Self> {
        Some(Self { number: self.number.times(Exact(-1, 1))?, ..self })
    }

    fn is_more(self, other: Self) -> Option<bool> {
        Some(self.plus(other.minus()?)?.number.float() > 0.0)
    }

    /// A plain number to so many thousandths of the first power; none of what isn't above nothing.
    fn power(self, thousandths: i16) -> Option<Self> {
        let value = self.number.float();
        let power = libm::pow(value, f64::from(thousandths) / 1000.0);
        let plain = self.dims == PURE && value > 0.0;
        plain.then(|| Number::near(power)).flatten().map(|number| Self::new(PURE, number))
    }

    /// Its square or cube root; none below zero, or of what is the square or cube of nothing.
    fn root(self, of: i8) -> Option<Self> {
        if self.dims.iter().any(|power| power % of != 0) {
            return None;
        }
        let value = self.number.float();
        let root = if of == 3 { libm::cbrt(value) } else { libm::sqrt(value) };
        Some(Self::new(self.dims.map(|power| power / of), Number::near(root)?))
    }
}

fn gcd(a: u128, b: u128) -> u128 {
    if b == 0 { a } else { gcd(b, a % b) }
}

impl Expr {
    /// A count.
    pub fn count(count: i64) -> Self {
        Self::Is(Amount::Count(count))
    }

    /// A length.
    pub fn length(length: Length) -> Self {
        Self::Is(Amount::Length(length))
    }

    /// An area.
    pub fn area(area: Area) -> Self {
        Self::Is(Amount::Area(area))
    }

    /// A volume.
    pub fn volume(volume: Volume) -> Self {
        Self::Is(Amount::Volume(volume))
    }

    /// A quantity with a unit of its own.
    pub fn measure(measure: Measure) -> Self {
        Self::Is(Amount::Measure(measure))
    }

    /// The same, told in a unit.
    pub fn told_in(self, unit: &'static Unit) -> Self {
        Self::In(unit, Box::new(self))
    }

    /// `self × other`.
    pub fn times(self, other: Self) -> Self {
        Self::Times(Box::new(self), Box::new(other))
    }

    /// `self ÷ other`.
    pub fn over(self, other: Self) -> Self {
        Self::Over(Box::new(self), Box::new(other))
    }

    /// `self − other`.
    pub fn less(self, other: Self) -> Self {
        Self::Less(Box::new(self), Box::new(other))
    }

    /// What it comes to; none where kinds don't fit or a number is past what is held.
    pub fn value(&self) -> Option<Value> {
        match self {
            Self::Is(amount) => Some(Value::of(*amount)),
            Self::Sum(parts) => {
                let (first, rest) = parts.split_first()?;
                rest.iter().try_fold(first.value()?, |sum, part| sum.plus(part.value()?))
            }
            Self::Less(from, what) => from.value()?.plus(what.value()?.minus()?),
            Self::Times(a, b) => a.value()?.times(b.value()?),
            Self::Over(a, b) => a.value()?.over(b.value()?),
            Self::Most(parts) => extreme(parts, true),
            Self::Least(parts) => extreme(parts, false),
            Self::RoundUp(of) => whole(of, Rounding::Up),
            Self::RoundDown(of) => whole(of, Rounding::Down),
            Self::ToNearest(of) => whole(of, Rounding::Nearest),
            Self::Root(power, of) => of.value()?.root(*power),
            Self::Power(thousandths, of) => of.value()?.power(*thousandths),
            Self::In(unit, of) => {
                let value = of.value()?;
                (value.dims == unit.dims).then_some(Value { unit: Some(unit), ..value })
            }
        }
    }

    /// As it is written out, with the numbers in.
    pub fn written(&self, voice: Voice) -> String {
        let mut out = String::new();
        self.write(voice, 0, &mut out);
        out
    }

    fn write(&self, voice: Voice, tightness: u8, out: &mut String) {
        let own = match self {
            Self::Sum(parts) if parts.len() > 1 => 1,
            Self::Less(..) => 1,
            Self::Times(..) | Self::Over(..) => 2,
            // It wraps what is in it by itself.
            _ => 3,
        };
        let wrap = own < tightness;
        if wrap {
            out.push('(');
        }
        match self {
            Self::Is(amount) => out.push_str(&amount.show(voice.units, Rounding::Nearest).text()),
            // One alone is wrapped as it would be by itself.
            Self::Sum(parts) if parts.len() == 1 => join(parts, "", voice, tightness, out),
            Self::Sum(parts) => join(parts, " + ", voice, 1, out),
            Self::Less(a, b) => pair(a, " − ", b, voice, (1, 2), out),
            Self::Times(a, b) => pair(a, " × ", b, voice, (2, 2), out),
            Self::Over(a, b) => pair(a, " ÷ ", b, voice, (2, 3), out),
            Self::Most(parts) => around("max(", parts, ")", voice, out),
            Self::Least(parts) => around("min(", parts, ")", voice, out),
            Self::RoundUp(of) => around("⌈", std::slice::from_ref(of), "⌉", voice, out),
            Self::RoundDown(of) => around("⌊", std::slice::from_ref(of), "⌋", voice, out),
            Self::ToNearest(of) => around("⌊", std::slice::from_ref(of), "⌉", voice, out),
            Self::Root(3, of) => around("∛(", std::slice::from_ref(of), ")", voice, out),
            Self::Root(_, of) => around("√(", std::slice::from_ref(of), ")", voice, out),
            Self::Power(thousandths, of) => {
                let power = i128::from(*thousandths);
                around("(", std::slice::from_ref(of), ")^", voice, out);
                out.push_str(&decimal::show(power, 1000, 0, 3, Rounding::Nearest).0);
            }
            Self::In(_, of) => of.write(voice, tightness, out),
        }
        if wrap {
            out.push(')');
        }
    }
}

fn around(before: &str, parts: &[Expr], after: &str, voice: Voice, out: &mut String) {
    out.push_str(before);
    join(parts, ", ", voice, 0, out);
    out.push_str(after);
}

fn extreme(parts: &[Expr], most: bool) -> Option<Value> {
    let (first, rest) = parts.split_first()?;
    rest.iter().try_fold(first.value()?, |best, part| {
        let part = part.value()?;
        let better = if most { part.is_more(best)? } else { best.is_more(part)? };
        Some(if better { part } else { best })
    })
}

/// To whole ones of what it is told in, else of what its kind is held in.
fn whole(of: &Expr, rounding: Rounding) -> Option<Value> {
    let of = of.value()?;
    let (over, under) = of.unit.map_or((1, 1), |unit| unit.size);
    let one = Number::exact(over, under)?;
    let count = of.number.times(one.flipped()?)?.rounded(rounding);
    Some(Value { number: Number::exact(count, 1)?.times(one)?, ..of })
}

fn pair(a: &Expr, sign: &str, b: &Expr, voice: Voice, tight: (u8, u8), out: &mut String) {
    a.write(voice, tight.0, out);
    out.push_str(sign);
    b.write(voice, tight.1, out);
}

fn join(parts: &[Expr], sign: &str, voice: Voice, tight: u8, out: &mut String) {
    for (at, part) in parts.iter().enumerate() {
        if at > 0 {
            out.push_str(sign);
        }
        part.write(voice, tight, out);
    }
}

/// One step of the working.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Step {
    /// Stable name.
    pub key: String,
    /// What it works out.
    pub name: Text,
    /// How.
    pub expr: Expr,
    /// Where the rule behind it is published.
    pub source: Option<&'static Source>,
}

impl Step {
    /// The equation in full: what is written, an equals sign, what it comes to.
    pub fn equation(&self, voice: Voice) -> String {
        let mut out = self.expr.written(voice);
        if let Some(amount) = self.expr.value().and_then(Value::amount)
            && !matches!(self.expr, Expr::Is(_))
        {
            out.push_str(" = ");
            out.push_str(&amount.show(voice.units, Rounding::Nearest).text());
        }
        out
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_step_prints_what_it_comes_to() {
        let quarter = Expr::Sum(vec![
            Expr::count(1),
            Expr::count(10).less(Expr::count(4)).over(Expr::count(4)),
        ]);
        let step = Step {
            key: "grounds".to_owned(),
            name: Text::from(&super::super::READ),
            expr: Expr::volume(Volume::hundredths(225)).times(quarter),
            source: None,
        };
        assert_eq!(step.equation(Voice::default()), "2.25 in³ × (1 + (10 − 4) ÷ 4) = 5.625 in³");
    }

    /// By hand: (3 − 1) × 4 is 8, and 3 − 1 × 4 would be −1.
    #[test]
    fn a_sum_of_one_keeps_its_brackets() {
        let less = Expr::count(3).less(Expr::count(1));
        let all = Expr::Sum(vec![less]).times(Expr::count(4));
        assert_eq!(all.written(Voice::default()), "(3 − 1) × 4");
        let two = Expr::Sum(vec![Expr::Sum(vec![Expr::count(3), Expr::count(1)])]);
        let two = Expr::count(8).over(two);
        assert_eq!(two.written(Voice::default()), "8 ÷ (3 + 1)");
    }

    /// Source: the equilibrium of half a gable, by hand: 30 psf over 24 ft at a rise of 6 ft pushes
    /// 30 × 24 × 24 ÷ (8 × 6) = 360 lb on each foot of wall.
    #[test]
    fn loads_and_lengths_come_to_loads() {
        let span = Expr::length(Length::inches(288, 1));
        let push = Expr::measure(Measure::whole(&unit::PSF, 30))
            .times(span.clone())
            .times(span)
            .over(Expr::count(8).times(Expr::length(Length::inches(72, 1))));
        assert_eq!(push.value().and_then(Value::amount), None, "what it is told in is not said");
        let push = push.told_in(&unit::PLF);
        assert_eq!(
            push.value().and_then(Value::amount),
            Some(Amount::Measure(Measure::whole(&unit::PLF, 360)))
        );
        assert_eq!(push.clone().told_in(&unit::PSF).value(), None, "it is no pressure");
        let step = Step {
            key: "push".to_owned(),
            name: Text::from(&super::super::READ),
            expr: push,
            source: None,
        };
        assert_eq!(
            step.equation(Voice::default()),
            "30 psf × 24 ft × 24 ft ÷ (8 × 6 ft) = 360 lb/ft"
        );
    }

    #[test]
    fn roots_are_taken_of_squares_and_cubes_only() {
        let side = |inches| Expr::length(Length::inches(inches, 1));
        let square = |inches| side(inches).times(side(inches));
        let slant = Expr::Root(2, Box::new(Expr::Sum(vec![square(36), square(48)])));
        assert_eq!(
            slant.value().and_then(Value::amount),
            Some(Amount::Length(Length::inches(60, 1)))
        );
        assert_eq!(Expr::Root(2, Box::new(side(4))).value(), None);
        assert_eq!(Expr::Root(2, Box::new(Expr::count(0).less(Expr::count(4)))).value(), None);
        let cube = Expr::Root(3, Box::new(square(10).times(side(10))));
        assert_eq!(
            cube.value().and_then(Value::amount),
            Some(Amount::Length(Length::inches(10, 1)))
        );
        let amperes = Expr::measure(Measure::new(&unit::AMPERE, 2_100_000));
        assert_eq!(
            Expr::RoundUp(Box::new(amperes)).value().and_then(Value::amount),
            Some(Amount::Measure(Measure::whole(&unit::AMPERE, 3)))
        );
        let share = side(1).over(side(3)).told_in(&unit::PERCENT);
        assert_eq!(
            share.value().and_then(Value::amount),
            Some(Amount::Measure(Measure::new(&unit::PERCENT, 33_333_333)))
        );
    }

    /// By hand: 4 to the power −1.5 is an eighth.
    #[test]
    fn powers_are_taken_of_plain_numbers_above_nothing() {
        let power = |of| Expr::Power(-1500, Box::new(of));
        let hours = Expr::measure(Measure::whole(&unit::HOUR, 16)).times(power(Expr::count(4)));
        let step = Step {
            key: "hours".to_owned(),
            name: Text::from(&super::super::READ),
            expr: hours.told_in(&unit::HOUR),
            source: None,
        };
        assert_eq!(step.equation(Voice::default()), "16 h × (4)^−1.5 = 2 h");
        assert_eq!(power(Expr::length(Length::inches(1, 1))).value(), None);
        assert_eq!(power(Expr::count(0)).value(), None);
    }

    /// By hand: 2.5 h at $47.33 are $118.325, and a half of a cent goes up.
    #[test]
    fn money_is_rounded_to_its_cent() {
        let hours = Expr::measure(Measure::new(&unit::HOUR, 2_500_000));
        let rate = Expr::measure(Measure::hundredths(&unit::MONEY_AN_HOUR, 4_733));
        let cents = Expr::ToNearest(Box::new(hours.times(rate).told_in(&unit::CENT)));
        let sum = cents.told_in(&unit::MONEY_SPENT);
        let due = Measure::hundredths(&unit::MONEY_SPENT, 11_833);
        assert_eq!(sum.value().and_then(Value::amount), Some(Amount::Measure(due)));
        assert_eq!(sum.written(Voice::default()), "⌊2.5 h × $47.33/h⌉");
    }

    #[test]
    fn kinds_that_do_not_fit_have_no_value() {
        let length = Expr::length(Length::inches(1, 1));
        let volume = Expr::volume(Volume::hundredths(100));
        assert_eq!(Expr::Sum(vec![length.clone(), volume]).value(), None);
        let room = length.clone().times(length.clone()).times(length.clone());
        assert_eq!(room.clone().times(length.clone()).value().and_then(Value::amount), None);
        assert_eq!(
            room.value().and_then(Value::amount),
            Some(Amount::Room(Volume::hundredths(100)))
        );
        assert_eq!(Expr::count(1).over(Expr::count(0)).value(), None);
        assert_eq!(
            Expr::RoundUp(Box::new(Expr::count(132).over(Expr::count(22)))).value(),
            Expr::count(6).value()
        );
        assert_eq!(Expr::Most(vec![length.clone(), length.clone()]).value(), length.value());
    }
}
