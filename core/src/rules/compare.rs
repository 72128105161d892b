//! The one place where a quantity meets its limit. A value exactly on a limit is within.

use crate::sheet::{Asks, Check, Sense, Source, Verdict};
use crate::words;
use crate::words::{Amount, Phrase, Text};

words! {
    NOT_VERIFIED = "This edition's text could not be verified here; the limit shown is NEC 2023's.", es "El texto de esta edición no se pudo verificar aquí; el límite que se muestra es el de NEC 2023.";
    OVER_IN_ALL = "No edition that was verified lets this pass. The text of the edition set here could not be verified.", es "Ninguna edición que se verificó deja pasar esto. El texto de la edición definida aquí no se pudo verificar.";
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

/// The same check as something for who works to settle first, with what to do: no authority decides it.
pub fn settle(check: Check, why: &'static Phrase) -> Check {
    Check { asks: Asks::First, ..ask(check, why) }
}

/// The same check while nobody gave what it is about, with what to do: it has no value yet.
pub fn unmeasured(check: Check, why: &'static Phrase) -> Check {
    Check { asks: Asks::Unmeasured, ..ask(check, why) }
}

/// The same check under an edition whose text could not be verified.
pub fn unverified(check: Check) -> Check {
    ask(check, &NOT_VERIFIED)
}

/// An [`unverified`] check once the verified editions have been worked too: what none of them lets
/// pass is over, for a new edition seldom takes a limit back. `verified` is what each of them says
/// of the same check.
pub fn settled(check: Check, verified: impl IntoIterator<Item = Verdict>) -> Check {
    let asks_for_its_text = check.note.as_ref().is_some_and(|note| note.phrase == &NOT_VERIFIED);
    let mut verified = verified.into_iter().peekable();
    let known = verified.peek().is_some();
    if asks_for_its_text && known && verified.all(|verdict| verdict == Verdict::Over) {
        return Check { verdict: Verdict::Over, note: Some((&OVER_IN_ALL).into()), ..check };
    }
    check
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
    Check {
        key: key.to_owned(),
        name,
        value,
        limit,
        sense,
        verdict,
        note: None,
        asks: Asks::Locally,
        source,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::{Length, Rounding, Units, Volume};
    use crate::rules::electrical::box_fill::FILL;

    #[test]
    fn unverified_is_over_only_where_every_verified_edition_says_so() {
        use Verdict::{Ask, Over, Within};
        let limit = Limit { value: Volume::hundredths(3030), source: &FILL };
        let past = limit.value.plus(Volume::from_units(1));
        for (verified, want) in [
            (&[Over, Over, Over][..], Over),
            (&[Within, Over, Over], Ask),
            (&[Ask, Over, Over], Ask),
            (&[Within, Within, Within], Ask),
            (&[], Ask),
        ] {
            let check = unverified(at_most("k", (&NOT_VERIFIED).into(), past, limit));
            let check = settled(check, verified.iter().copied());
            assert!(check.note.is_some());
            assert_eq!(check.verdict, want, "{verified:?}");
        }
        let known = at_most("k", (&NOT_VERIFIED).into(), limit.value, limit);
        assert_eq!(settled(known.clone(), [Over]), known, "a verified text stands by itself");
    }

    /// By hand: three fifths of 3-1/2 in are 2.1 in. Beside 2-1/16 and less the limit reads 2-1/16, which
    /// may be drilled; 2-1/8 may not.
    #[test]
    fn a_limit_that_no_tape_has_reads_to_its_own_side() {
        let limit = Limit { value: Length::inches(21, 10), source: &FILL };
        for (sixteenths, reads) in [(16, "2-1/16 in"), (33, "2-1/16 in"), (34, "2-1/16 in")] {
            let value = Length::inches(sixteenths, 16);
            let check = at_most("k", (&NOT_VERIFIED).into(), value, limit);
            let shown = check.limit.show(Units::Customary, check.limit_rounding()).text();
            assert_eq!(shown.trim_start_matches("≈ "), reads, "{sixteenths}");
        }
    }

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

    proptest::proptest! {
        /// What is within never reads as if it were past its limit, nor is a limit that is shown to its own
        /// side past itself.
        #[test]
        fn a_length_within_reads_so(
            value in 1_i64..100_000_000, limit in 1_i64..100_000_000, least: bool,
        ) {
            let (value, limit) = (Length::from_nanometres(value), Length::from_nanometres(limit));
            let limited = Limit { value: limit, source: &FILL };
            let check = match least {
                true => at_least("k", (&NOT_VERIFIED).into(), value, limited),
                false => at_most("k", (&NOT_VERIFIED).into(), value, limited),
            };
            let tape = |length: Length, rounding| {
                let shown = length.show(Units::Customary, rounding).text();
                Length::read(shown.trim_start_matches("≈ "), Units::Customary).unwrap()
            };
            let is_past = |one: Length, other: Length| if least { one < other } else { one > other };
            let shown = tape(limit, check.limit_rounding());
            let reads = tape(value, check.value_rounding());
            // Shown to its own side, who cuts to what is shown stays within.
            proptest::prop_assert!(
                check.limit_rounding() == Rounding::Nearest || !is_past(shown, limit)
            );
            if check.verdict == Verdict::Within {
                proptest::prop_assert!(!is_past(reads, shown));
            }
        }
    }
}
