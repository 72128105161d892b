//! Table 310.16 and 240.4: what copper conductors carry, and the breakers in front of them.

use super::conductor_volume::Awg;
use crate::edition::Electrical;
use crate::measure::Measure;
use crate::measure::unit::AMPERE;
use crate::rules::compare::{Limit, ask, at_least, is_at_most};
use crate::sheet::{Check, Source, Verdict};
use crate::words;
use crate::words::Text;

words! {
    SAYS = "Copper at 30 °C, by size, at 60 and 90 °C: 14 AWG 15 and 25 A, 12 AWG 20 and 30, 10 AWG 30 and 40, 8 AWG 40 and 55, 6 AWG 55 and 75.", es "Cobre a 30 °C, por tamaño, a 60 y 90 °C: 14 AWG 15 y 25 A, 12 AWG 20 y 30, 10 AWG 30 y 40, 8 AWG 40 y 55, 6 AWG 55 y 75.";
    SEEN = "12 and 10 AWG at 90 °C read in electricians' pages, the rest from memory. Tables before 2011 list more at 60 °C", es "12 y 10 AWG a 90 °C leídos en páginas de electricistas, lo demás de memoria. Las tablas de antes de 2011 dan más a 60 °C";
    BREAKER_SAYS = "However much it carries, 14 AWG copper has a breaker of 15 A at most, 12 AWG 20 A, 10 AWG 30 A.", es "Por mucho que lleve, el cobre 14 AWG tiene un breaker de 15 A como máximo, 12 AWG 20 A, 10 AWG 30 A.";
    BREAKER_SEEN = "read in electricians' pages that quote 240.4(D)", es "leído en páginas de electricistas que citan 240.4(D)";
    NEXT_SAYS = "Where what a wire carries lies between standard breakers, the next larger may stand, but not on circuits of several receptacles for plug-in loads, and never past 240.4(D).", es "Donde lo que lleva un alambre queda entre breakers estándar, se puede quedar el siguiente más grande, pero no en circuitos de varios contactos para cargas de enchufe, y nunca pasando de 240.4(D).";
    NEXT_SEEN = "from memory, with the standard sizes of 240.6(A)", es "de memoria, con los tamaños estándar de 240.6(A)";
    ASK_NEXT = "It carries less than its breaker. The next standard size may be allowed, but not for several receptacles: ask the electrician.", es "Lleva menos que su breaker. Puede permitirse el siguiente tamaño estándar, pero no para varios contactos: pregunte al electricista.";
}

source!(
    /// Where ampacities are published.
    AMPACITY, "nec-310.16", "NEC Table 310.16, once 310.15(B)(16)" es "NEC, Tabla 310.16, antes 310.15(B)(16)", SAYS, SEEN, Memory
);

source!(
    /// Where the largest breakers are published.
    SMALL_CONDUCTORS, "nec-240.4(D)", "NEC 240.4(D)", BREAKER_SAYS, BREAKER_SEEN, Read
);

source!(
    /// Where the next larger breaker is published.
    NEXT_BREAKER, "nec-240.4(B)", "NEC 240.4(B)", NEXT_SAYS, NEXT_SEEN, Memory
);

/// What a size carries, and its breakers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Carries {
    /// In the column of 60 °C.
    pub at_60: Measure,
    /// In the column of 90 °C.
    pub at_90: Measure,
    /// The usual breaker. Common practice from 8 AWG on.
    pub usual: Measure,
    /// The largest breaker, where it is fixed by size.
    pub largest: Option<Limit<Measure>>,
}

/// Amperes.
pub const fn amperes(count: i64) -> Measure {
    Measure::whole(&AMPERE, count)
}

/// A size's row; none for sizes that nonmetallic cable doesn't come in here. 2026: not verified.
pub fn carries(edition: Electrical, size: Awg) -> Option<Carries> {
    let (at_60, at_90, usual) = match (edition, size) {
        (Electrical::E2026, _) => return None,
        (_, Awg::Awg14) => (15, 25, 15),
        (_, Awg::Awg12) => (20, 30, 20),
        (_, Awg::Awg10) => (30, 40, 30),
        (_, Awg::Awg8) => (40, 55, 40),
        (_, Awg::Awg6) => (55, 75, 50),
        _ => return None,
    };
    let fixed = usual <= 30;
    let [at_60, at_90, usual] = [at_60, at_90, usual].map(amperes);
    let largest = fixed.then_some(Limit { value: usual, source: &SMALL_CONDUCTORS });
    Some(Carries { at_60, at_90, usual, largest })
}

/// Standard breakers in amperes, smallest first.
const STANDARD: [i64; 10] = [10, 15, 20, 25, 30, 35, 40, 45, 50, 60];

/// The smallest standard breaker that is no smaller than this; none past 60 A.
pub fn next_breaker(carried: Measure) -> Option<Measure> {
    STANDARD.map(amperes).into_iter().find(|breaker| *breaker >= carried)
}

/// Whether what is carried is no less than the breaker; where the breaker is only the next standard
/// size, and no larger than the conductor's largest, it asks. `source` says what is carried.
pub fn behind(
    key: &str,
    name: Text,
    carried: Measure,
    breaker: Measure,
    of: &Carries,
    source: &'static Source,
) -> Check {
    let check = at_least(key, name, carried, Limit { value: breaker, source });
    let within = of.largest.is_none_or(|largest| is_at_most(breaker, largest));
    if check.verdict == Verdict::Over && within && next_breaker(carried) == Some(breaker) {
        return Check { source: &NEXT_BREAKER, ..ask(check, &ASK_NEXT) };
    }
    check
}
