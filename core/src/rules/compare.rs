//! The one place where a quantity meets its limit. A value exactly on a limit is within.

use crate::sheet::{Check, Sense, Source, Verdict};
use crate::words;
use crate::words::{Amount, Phrase, Text};

words! {
    NOT_VERIFIED = "This edition's text could not be verified here; the limit shown is NEC 2023's.";
}

/// A published limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Limit<T> {
    /// The limit.
    pub value: T,
    /// Where it is published.
    pub source: &'static Source,
}

/// No more than the limit.
pub fn at_most<T: Ord + Copy + Into<Amount>>(
    key: &str,
    name: Text,
    value: T,
    limit: Limit<T>,
) -> Check {
    let verdict = if value <= limit.value { Verdict::Within } else { Verdict::Over };
    check(key, name, value.into(), limit.value.into(), Sense::AtMost, verdict, limit.source)
}

/// No less than the limit.
pub fn at_least<T: Ord + Copy + Into<Amount>>(
    key: &str,
    name: Text,
    value: T,
    limit: Limit<T>,
) -> Check {
    let verdict = if value >= limit.value { Verdict::Within } else { Verdict::Over };
    check(key, name, value.into(), limit.value.into(), Sense::AtLeast, verdict, limit.source)
}

/// Whether a value is no more than its limit, where no check is shown for it.
pub fn is_at_most<T: Ord + Copy>(value: T, limit: Limit<T>) -> bool {
    value <= limit.value
}

/// Whether a value is no less than its limit, where no check is shown for it.
pub fn is_at_least<T: Ord + Copy>(value: T, limit: Limit<T>) -> bool {
    value >= limit.value
}

/// The same check as a question for the local authority, with the reason.
pub fn ask(check: Check, why: &'static Phrase) -> Check {
    Check { verdict: Verdict::Ask, note: Some(why.into()), ..check }
}

/// The same check under an edition whose text could not be verified.
pub fn unverified(check: Check) -> Check {
    ask(check, &NOT_VERIFIED)
}

fn check(
    key: &str,
    name: Text,
    value: Amount,
    limit: Amount,
    sense: Sense,
    verdict: Verdict,
    source: &'static Source,
) -> Check {
    Check { key: key.to_owned(), name, value, limit, sense, verdict, note: None, source }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::Volume;
    use crate::rules::electrical::box_fill::FILL;

    #[test]
    fn on_the_limit_is_within_and_a_unit_past_is_not() {
        let limit = Limit { value: Volume::hundredths(3030), source: &FILL };
        let one = Volume::from_units(1);
        for (value, verdict) in [
            (limit.value.minus(one), Verdict::Within),
            (limit.value, Verdict::Within),
            (limit.value.plus(one), Verdict::Over),
        ] {
            assert_eq!(at_most("k", (&NOT_VERIFIED).into(), value, limit).verdict, verdict);
        }
        for (value, verdict) in [
            (limit.value.minus(one), Verdict::Over),
            (limit.value, Verdict::Within),
            (limit.value.plus(one), Verdict::Within),
        ] {
            assert_eq!(at_least("k", (&NOT_VERIFIED).into(), value, limit).verdict, verdict);
        }
    }
}
