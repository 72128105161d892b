//! R502.8 and R802.7: how much of a sawn joist or rafter may be bored or notched away, and what
//! is never cut on site's own judgement.

use super::share::Share;
use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    SAYS = "In a sawn joist or rafter a hole is D/3 at most, and 2 in or more from top, bottom, other holes and notches. A notch is D/4 deep at an end; elsewhere D/6, D/3 long, and never in the middle third of the span. What is 4 in nominal or thicker is not notched on its tension side but at its ends.", es "En una vigueta o par de madera sólida un agujero es de D/3 a lo más, y a 2 in o más de arriba, de abajo, de otros agujeros y de muescas. Una muesca es de D/4 de fondo en una punta; en otra parte D/6, D/3 de largo, y nunca en el tercio de en medio del claro. Lo de 4 in nominales o más de grueso no se muesca en su lado de tensión, salvo en las puntas.";
    SEEN = "read in a guide that quotes both sections; the books of 2021 and 2024 were not seen. The exception for rafter tails is left out", es "leído en una guía que cita las dos secciones; no se vieron los libros de 2021 y 2024. Se deja fuera la excepción para colas de pares";
    PAPER_SAYS = "Trusses, I-joists and laminated wood are not cut, notched or bored but as their maker's paper or a registered designer allows.", es "Las armaduras (trusses), viguetas I y madera laminada no se cortan, muescan ni perforan, salvo como lo permita el papel de su fabricante o de un diseñador registrado.";
    PAPER_SEEN = "read in a guide that quotes R802.7.2; R502.8.2 and R502.11.3 from memory", es "leído en una guía que cita R802.7.2; R502.8.2 y R502.11.3 de memoria";
}

source!(
    /// Where the limits are published.
    JOISTS, "irc-r502.8.1", "IRC R502.8.1, R802.7.1", SAYS, SEEN, Read
);

source!(
    /// Where engineered members are left to their makers.
    PAPER, "irc-r502.8.2", "IRC R502.8.2, R802.7.2", PAPER_SAYS, PAPER_SEEN, Read
);

const fn share(over: i64, under: i64) -> Share {
    Share { over, under, source: &JOISTS }
}

/// The largest hole.
pub const HOLE: Share = share(1, 3);

/// The deepest notch at an end.
pub const END_NOTCH: Share = share(1, 4);

/// The deepest notch in an outer third of the span.
pub const NOTCH: Share = share(1, 6);

/// The longest of those.
pub const NOTCH_LENGTH: Share = share(1, 3);

/// The deepest notch in the middle third of the span.
pub const MIDDLE_NOTCH: Share = share(0, 1);

/// The least wood from a hole to top, bottom, another hole or a notch.
pub const CLEAR: Limit<Length> = Limit { value: Length::inches(2, 1), source: &JOISTS };

/// Papers that an engineered member takes first: its maker's, or a registered designer's.
pub const PAPERS: Limit<i64> = Limit { value: 1, source: &PAPER };
