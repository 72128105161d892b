//! 210.52(C)(3): how high over a counter its receptacles are.

use crate::edition::Electrical;
use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    SAYS = "A counter's receptacles are on it or no more than 20 in over it; from 2023 none hang below it.", es "Los contactos de una cubierta van sobre ella o a no más de 20 in arriba de ella; desde 2023 ninguno cuelga abajo.";
    SEEN = "read in a state's residential code and forum pages that quote the rule; older exceptions below the counter are left out", es "leído en el código residencial de un estado y en páginas de foros que citan la regla; se dejan fuera excepciones más viejas abajo de la cubierta";
}

source!(
    /// Where it is published.
    COUNTER_HEIGHT, "nec-210.52-c-3", "NEC 210.52(C)(3)", SAYS, SEEN, Read
);

/// The most over the counter. 2026: not verified.
pub const fn most(edition: Electrical) -> Option<Limit<Length>> {
    match edition {
        Electrical::E2026 => None,
        _ => Some(Limit { value: Length::inches(20, 1), source: &COUNTER_HEIGHT }),
    }
}
