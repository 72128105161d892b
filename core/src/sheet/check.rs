//! A rule, how near it is, and where it is published.

use super::Source;
use crate::measure::{Length, Measure, Rounding, unit};
use crate::words;
use crate::words::{Amount, Arg, Phrase, Text};

/// What a check says. In order, so that the worst of several is their largest.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Verdict {
    /// At the limit or on the right side of it.
    Within,
    /// The rule leaves it to the local authority or to who works, or could not be verified.
    Ask,
    /// Past the limit.
    Over,
}

words! {
    WITHIN = "within", es "dentro";
    OVER = "over", es "excede";
    SHORT = "short", es "corto";
    ASK = "ask locally", es "pregunte en su localidad";
    /// No authority decides it: who works does.
    SETTLE = "settle it first", es "resuélvalo antes";
    /// Nobody typed it.
    MISSING = "not given", es "falta el dato";
    /// Allowed, and to be known by who works there.
    MIND = "mind it", es "téngalo presente";
    AT_MOST = "{0}, at most {1}", es "{0}, máximo {1}";
    AT_LEAST = "{0}, at least {1}", es "{0}, mínimo {1}";
    JUST = "{0}", es "{0}";
    MOST = "at most {0}", es "máximo {0}";
    LEAST = "at least {0}", es "mínimo {0}";
    /// Not a verdict on a rule: old material comes first.
    HELD = "held", es "detenido";
    /// A hold that isn't shut.
    OPEN = "open", es "abierto";
}

impl Verdict {
    /// As a script reads it.
    pub fn key(self) -> &'static str {
        match self {
            Self::Within => "within",
            Self::Over => "over",
            Self::Ask => "ask",
        }
    }

    /// Reads [`Verdict::key`].
    pub fn from_key(key: &str) -> Option<Self> {
        [Self::Within, Self::Ask, Self::Over].into_iter().find(|verdict| verdict.key() == key)
    }

    /// As a person reads it.
    pub fn words(self) -> &'static Phrase {
        match self {
            Self::Within => &WITHIN,
            Self::Over => &OVER,
            Self::Ask => &ASK,
        }
    }
}

/// Whom a check waits for where it asks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Asks {
    /// The local authority.
    #[default]
    Locally,
    /// Who works: it is to be settled first.
    First,
    /// Whoever has what was not typed.
    Missing,
    /// The same, where without it there is no value: its limit is told alone.
    Unmeasured,
    /// Nobody: it is allowed, and to be minded.
    Minded,
}

impl Asks {
    /// Those that nobody local decides.
    const OWN: [Self; 3] = [Self::First, Self::Missing, Self::Minded];

    /// As a record holds it, in a verdict's place.
    pub fn key(self) -> &'static str {
        match self {
            Self::Locally => Verdict::Ask.key(),
            Self::First => "settle",
            Self::Missing | Self::Unmeasured => "missing",
            Self::Minded => "mind",
        }
    }

    /// Reads [`Asks::key`] of those that nobody local decides.
    pub fn from_key(key: &str) -> Option<Self> {
        Self::OWN.into_iter().find(|asks| asks.key() == key)
    }

    /// As a person reads it.
    pub fn words(self) -> &'static Phrase {
        match self {
            Self::Locally => &ASK,
            Self::First => &SETTLE,
            Self::Missing | Self::Unmeasured => &MISSING,
            Self::Minded => &MIND,
        }
    }
}

/// Which side of its limit a value belongs on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sense {
    /// No more than the limit.
    AtMost,
    /// No less than the limit.
    AtLeast,
}

/// A rule applied. Made by `rules`, which alone compares.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Check {
    /// Stable name, for marks, tests and scripts.
    pub key: String,
    /// What is checked.
    pub name: Text,
    /// The value.
    pub value: Amount,
    /// The limit.
    pub limit: Amount,
    /// Which side is right.
    pub sense: Sense,
    /// The verdict.
    pub verdict: Verdict,
    /// Why it asks, or what else to know.
    pub note: Option<Text>,
    /// Whom it waits for where it asks.
    pub asks: Asks,
    /// Where the limit is published.
    pub source: &'static Source,
}

/// The finest that a length is shown to, in nanometres: 1/16 in, or 0.1 mm.
const SIXTEENTH: i64 = Length::inches(1, 16).nanometres();
const TENTH: u64 = 100_000;

impl Check {
    /// Whether there is a scale to be near to its limit on: not under a ban, whose limit is nothing,
    /// and not without a value.
    pub fn has_scale(&self) -> bool {
        self.has_value() && (self.sense == Sense::AtLeast || self.limit.raw() != 0)
    }

    fn has_value(&self) -> bool {
        self.verdict != Verdict::Ask || self.asks != Asks::Unmeasured
    }

    /// How much is to spare; below zero past the limit.
    pub fn margin(&self) -> Amount {
        let (most, least) = match self.sense {
            Sense::AtMost => (self.limit, self.value),
            Sense::AtLeast => (self.value, self.limit),
        };
        difference(most, least)
    }

    /// How the margin is rounded when it is shown: as the same amount is anywhere else on the
    /// sheet. See [`Rounding`].
    pub const fn margin_rounding(&self) -> Rounding {
        Rounding::Nearest
    }

    /// How the limit is rounded when it is shown: like all else, but for a length that no tape has, or
    /// that is over it, to its own side. 60 % of 3-1/2 in is 2.1: on a tape that is 2-1/16, not the nearer
    /// 2-1/8, which is over. A value so near to it that it would read as past that is shown beside the
    /// nearer.
    pub const fn limit_rounding(&self) -> Rounding {
        match (self.limit, self.sense) {
            (Amount::Length(_), Sense::AtMost) if self.has_own_side() => Rounding::Down,
            (Amount::Length(_), Sense::AtLeast) if self.has_own_side() => Rounding::Up,
            _ => Rounding::Nearest,
        }
    }

    /// How the value is rounded when it is shown: as it is anywhere else.
    pub const fn value_rounding(&self) -> Rounding {
        Rounding::Nearest
    }

    const fn has_own_side(&self) -> bool {
        let (Amount::Length(value), Amount::Length(limit)) = (self.value, self.limit) else {
            return false;
        };
        let (value, limit) = (value.nanometres(), limit.nanometres());
        let nearest = (value + SIXTEENTH / 2).div_euclid(SIXTEENTH);
        let reads_within = match self.sense {
            Sense::AtMost => nearest <= limit.div_euclid(SIXTEENTH),
            Sense::AtLeast => nearest >= -(-limit).div_euclid(SIXTEENTH),
        };
        let is_near = (limit - value).unsigned_abs() < TENTH;
        matches!(self.verdict, Verdict::Over) || limit % SIXTEENTH != 0 && reads_within && !is_near
    }

    /// Its value and its limit: `28.0 in³, at most 28.0 in³`. Of what asks because it is there at all,
    /// the value alone: nothing limits it; of what waits for its value, the limit alone.
    pub fn told(&self) -> Text {
        if !self.has_value() {
            let phrase = if self.sense == Sense::AtMost { &MOST } else { &LEAST };
            let limit = Arg::Amount(self.limit, self.limit_rounding());
            return Text { phrase, args: vec![limit] };
        }
        let value = Arg::Amount(self.value, self.value_rounding());
        if self.verdict == Verdict::Ask && !self.has_scale() {
            return Text { phrase: &JUST, args: vec![value] };
        }
        let limit = Arg::Amount(self.limit, self.limit_rounding());
        let phrase = match self.sense {
            Sense::AtMost => &AT_MOST,
            Sense::AtLeast => &AT_LEAST,
        };
        Text { phrase, args: vec![value, limit] }
    }

    /// The word for the verdict; too little is "short".
    pub fn word(&self) -> &'static Phrase {
        match (self.verdict, self.sense) {
            (Verdict::Over, Sense::AtLeast) => &SHORT,
            (Verdict::Ask, _) => self.asks.words(),
            (verdict, _) => verdict.words(),
        }
    }
}

/// The difference of two amounts of one kind; of two kinds there is none, so nothing.
fn difference(most: Amount, least: Amount) -> Amount {
    let same = most.is_like(least);
    let off = most.of_same(if same { most.raw().saturating_sub(least.raw()) } else { 0 });
    match off {
        // Two temperatures are so many degrees apart, whatever nothing is called.
        Amount::Measure(off) if *off.unit() == unit::FAHRENHEIT => {
            Measure::new(&unit::DEGREES, off.millionths()).into()
        }
        off => off,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_room_on_its_least_temperature_has_no_degree_to_spare() {
        let warm = |count| Amount::Measure(Measure::whole(&unit::FAHRENHEIT, count));
        let apart = |count| Amount::Measure(Measure::whole(&unit::DEGREES, count));
        assert_eq!(difference(warm(55), warm(55)), apart(0));
        assert_eq!(difference(warm(50), warm(55)), apart(-5));
    }
}
