//! How fast air is let run in a house's ducts, for quiet.

use super::run::DuctKind;
use crate::measure::Measure;
use crate::measure::unit::FPM;
use crate::rules::compare::{Limit, ask, at_most};
use crate::sheet::{Check, Verdict};
use crate::words;
use crate::words::Text;

words! {
    SAYS = "Supply branches in houses: 600 fpm, 900 at most in metal, 700 in flexible duct. For noise, not safety.", es "Ramales de salida en casas: 600 fpm, 900 a lo más en lámina, 700 en ducto flexible. Por el ruido, no por seguridad.";
    SEEN = "from memory of Manual D's habit", es "de memoria de la costumbre de Manual D";
    ASK = "Fast enough to be heard in many houses. Ask the HVAC sub.", es "Bastante rápido para oírse en muchas casas. Pregunte al contratista de clima.";
}

source!(
    /// Where the habit stands.
    QUIET, "duct-velocity", "ACCA Manual D, velocities for residential duct" es "ACCA Manual D, velocidades en ducto residencial", SAYS, SEEN, Memory
);

/// The fastest in a supply branch.
pub const fn branch(kind: DuctKind) -> Limit<Measure> {
    let most = if matches!(kind, DuctKind::Flex) { 700 } else { 900 };
    Limit { value: Measure::whole(&FPM, most), source: &QUIET }
}

/// A habit only asks.
pub fn check(key: &str, name: Text, kind: DuctKind, fpm: Measure) -> Check {
    let check = at_most(key, name, fpm, branch(kind));
    if check.verdict == Verdict::Over { ask(check, &ASK) } else { check }
}
