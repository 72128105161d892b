//! Working that can't lie: a step is an expression, and what is printed is its evaluation.

use super::Source;
use crate::measure::{Area, CUBIC_NANOMETRES, Length, Rounding, Volume};
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
    /// Up to the next whole number.
    RoundUp(Box<Expr>),
}

/// What an expression comes to: a fraction of base units, and of which kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Value {
    kind: Kind,
    over: i128,
    under: i128,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Kind {
    Number,
    Length,
    Area,
    Volume,
    Room,
}

impl Value {
    fn new(kind: Kind, over: i128, under: i128) -> Option<Self> {
        if under == 0 {
            return None;
        }
        let sign = if under < 0 { -1 } else { 1 };
        let by = gcd(over.unsigned_abs(), under.unsigned_abs()).max(1);
        let by = i128::try_from(by).ok()?;
        Some(Self {
            kind,
            over: over.checked_mul(sign)? / by,
            under: under.checked_mul(sign)? / by,
        })
    }

    /// As a quantity: exact, or to the nearest base unit of its kind.
    pub fn amount(self) -> Option<Amount> {
        let units = crate::measure::divide(self.over, self.under, Rounding::Nearest);
        if self.kind == Kind::Area {
            return Some(Amount::Area(Area::from_square_nanometres(units)));
        }
        let units = i64::try_from(units).ok()?;
        Some(match self.kind {
            Kind::Area => return None,
            Kind::Number => Amount::Count(units),
            Kind::Length => Amount::Length(Length::from_nanometres(units)),
            Kind::Volume => Amount::Volume(Volume::from_units(units)),
            Kind::Room => Amount::Room(Volume::from_units(units)),
        })
    }

    fn plus(self, other: Self) -> Option<Self> {
        if self.kind != other.kind {
            return None;
        }
        let over =
            self.over.checked_mul(other.under)?.checked_add(other.over.checked_mul(self.under)?)?;
        Self::new(self.kind, over, self.under.checked_mul(other.under)?)
    }

    fn times(self, other: Self) -> Option<Self> {
        let (kind, by) = match (self.kind, other.kind) {
            (Kind::Number, kind) | (kind, Kind::Number) => (kind, 1),
            (Kind::Length, Kind::Length) => (Kind::Area, 1),
            (Kind::Area, Kind::Length) | (Kind::Length, Kind::Area) => {
                (Kind::Room, CUBIC_NANOMETRES)
            }
            _ => return None,
        };
        let under = self.under.checked_mul(other.under)?.checked_mul(by)?;
        Self::new(kind, self.over.checked_mul(other.over)?, under)
    }

    fn over(self, other: Self) -> Option<Self> {
        let kind = match (self.kind, other.kind) {
            (kind, Kind::Number) => kind,
            (Kind::Area, Kind::Length) => Kind::Length,
            (a, b) if a == b => Kind::Number,
            _ => return None,
        };
        Self::new(kind, self.over.checked_mul(other.under)?, self.under.checked_mul(other.over)?)
    }

    fn minus(self) -> Self {
        Self { over: -self.over, ..self }
    }

    fn is_more(self, other: Self) -> Option<bool> {
        Some(self.plus(other.minus())?.over > 0)
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
            Self::Is(Amount::Count(count)) => Value::new(Kind::Number, i128::from(*count), 1),
            Self::Is(Amount::Length(length)) => {
                Value::new(Kind::Length, i128::from(length.nanometres()), 1)
            }
            Self::Is(Amount::Area(area)) => Value::new(Kind::Area, area.square_nanometres(), 1),
            Self::Is(Amount::Volume(volume)) => {
                Value::new(Kind::Volume, i128::from(volume.units()), 1)
            }
            Self::Is(Amount::Room(volume)) => Value::new(Kind::Room, i128::from(volume.units()), 1),
            Self::Sum(parts) => {
                let (first, rest) = parts.split_first()?;
                rest.iter().try_fold(first.value()?, |sum, part| sum.plus(part.value()?))
            }
            Self::Less(from, what) => from.value()?.plus(what.value()?.minus()),
            Self::Times(a, b) => a.value()?.times(b.value()?),
            Self::Over(a, b) => a.value()?.over(b.value()?),
            Self::Most(parts) => {
                let (first, rest) = parts.split_first()?;
                rest.iter().try_fold(first.value()?, |most, part| {
                    let part = part.value()?;
                    Some(if part.is_more(most)? { part } else { most })
                })
            }
            Self::RoundUp(of) => {
                let of = of.value()?;
                Value::new(of.kind, crate::measure::divide(of.over, of.under, Rounding::Up), 1)
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
            _ => 3,
        };
        let wrap = own < tightness;
        if wrap {
            out.push('(');
        }
        match self {
            Self::Is(amount) => out.push_str(&amount.show(voice.units, Rounding::Nearest).text()),
            Self::Sum(parts) => join(parts, " + ", voice, 1, out),
            Self::Less(a, b) => pair(a, " − ", b, voice, (1, 2), out),
            Self::Times(a, b) => pair(a, " × ", b, voice, (2, 2), out),
            Self::Over(a, b) => pair(a, " ÷ ", b, voice, (2, 3), out),
            Self::Most(parts) => {
                out.push_str("max(");
                join(parts, ", ", voice, 0, out);
                out.push(')');
            }
            Self::RoundUp(of) => {
                out.push('⌈');
                of.write(voice, 0, out);
                out.push('⌉');
            }
        }
        if wrap {
            out.push(')');
        }
    }
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

    #[test]
    fn kinds_that_do_not_fit_have_no_value() {
        let length = Expr::length(Length::inches(1, 1));
        let volume = Expr::volume(Volume::hundredths(100));
        assert_eq!(Expr::Sum(vec![length.clone(), volume]).value(), None);
        let room = length.clone().times(length.clone()).times(length.clone());
        assert_eq!(room.clone().times(length.clone()).value(), None);
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
