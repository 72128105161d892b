//! 725.136 and 800.133: cables of signals, kept apart from power.

use crate::measure::Length;
use crate::words;

words! {
    SAYS = "Cables of data, thermostats and doorbells don't share a box with power, unless a barrier divides it. Along framing they keep off power cables too.", es "Los cables de datos, termostatos y timbres no comparten caja con la corriente, a menos que una división la separe. Por la estructura también se apartan de los cables de corriente.";
    SEEN = "from memory; 725.136 has more exceptions than are told here", es "de memoria; 725.136 tiene más excepciones de las que se dicen aquí";
    SIZES_SAYS = "Across: data 0.24 in, thermostat 0.2 in, doorbell 0.15 in.", es "Diámetro: datos 0.24 in, termostato 0.2 in, timbre 0.15 in.";
    SIZES_SEEN = "from memory; makers differ", es "de memoria; los fabricantes difieren";
}

source!(
    /// Where the rule is published.
    APART, "nec-725.136", "NEC 725.136 and 800.133" es "NEC 725.136 y 800.133", SAYS, SEEN, Memory
);

source!(
    /// How wide they are.
    SIZES, "signal-cable-sizes", "Sizes of data, thermostat and doorbell cable" es "Medidas de cable de datos, termostato y timbre", SIZES_SAYS, SIZES_SEEN, Memory
);

/// How wide a round cable of data, a thermostat or a doorbell is.
///
/// Source: [`SIZES`].
pub const ACROSS: [Length; 3] =
    [Length::inches(24, 100), Length::inches(20, 100), Length::inches(15, 100)];
