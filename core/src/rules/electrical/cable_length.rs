//! What a run of cable takes beyond its way: at boxes, at the panel, and lost.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::{choice, words};

words! {
    SAYS = "Past its way a cable is given 8 to 12 in at a box with a device, 12 to 24 in in a loop at a ceiling box, 4 to 6 ft at the panel, and 10 to 15 % for bends, sag and loss. It is sold by the foot, and in rolls of 25, 50, 100 and 250 ft.", es "Además de su camino, a un cable se le dan de 8 a 12 in en una caja con dispositivo, de 12 a 24 in en una vuelta en una caja de techo, de 4 a 6 ft en el panel, y de 10 a 15 % por vueltas, colgado y merma. Se vende por pie, y en rollos de 25, 50, 100 y 250 ft.";
    SEEN = "no publication. The wires that stay free in a box are a rule: 300.14", es "sin publicación. Los alambres que quedan libres en una caja sí son regla: 300.14";
    OVERHEAD_SAYS = "A cable that goes up and over crosses at or above both of its boxes.", es "Un cable que sube y cruza lo hace a la altura de sus dos cajas o más arriba.";
    OVERHEAD_SEEN = "what the words say; no publication", es "lo que dicen las palabras; sin publicación";
    DEVICE = "Box with a device", es "Caja con dispositivo";
    CEILING = "Ceiling box", es "Caja de techo";
    PANEL = "The panel", es "El panel";
}

source!(
    /// What crews allow.
    ALLOWANCES, "cable-allowances", "Lengths that crews add to a cable's way" es "Lo que las cuadrillas suman al camino de un cable", SAYS, SEEN, CommonPractice
);

source!(
    /// Where it crosses.
    OVERHEAD, "cable-crosses-above", "A cable that goes up and over" es "Un cable que sube y cruza", OVERHEAD_SAYS, OVERHEAD_SEEN, CommonPractice
);

/// The highest that a box may be off the floor where its cable goes up and over at this level.
pub const fn highest_box(level: Length) -> Limit<Length> {
    Limit { value: level, source: &OVERHEAD }
}

choice! {
    /// What a cable goes to.
    pub enum Ending {
        /// A box with a device.
        Device = "device", DEVICE;
        /// A box overhead.
        Ceiling = "ceiling", CEILING;
        /// The panel.
        Panel = "panel", PANEL;
    }
}

impl Ending {
    /// The least and the most that crews add there, from where the cable reaches it on.
    ///
    /// Source: [`ALLOWANCES`].
    pub const fn allowance(self) -> (Length, Length) {
        let (least, most) = match self {
            Self::Device => (8, 12),
            Self::Ceiling => (12, 24),
            Self::Panel => (48, 72),
        };
        (Length::inches(least, 1), Length::inches(most, 1))
    }
}

/// What is lost of a way, in hundredths: the least and the most that crews count.
///
/// Source: [`ALLOWANCES`].
pub const LOSS: (i64, i64) = (10, 15);

/// Rolls that are sold, in feet. Common practice of makers.
pub const ROLLS: [i64; 4] = [25, 50, 100, 250];

/// The smallest roll sold that holds so much; none past 250 ft.
///
/// Source: [`ALLOWANCES`].
pub fn smallest_roll(length: Length) -> Option<Length> {
    let rolls = ROLLS.map(|feet| Length::inches(feet * 12, 1));
    rolls.into_iter().find(|roll| *roll >= length)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rules::electrical::free_conductor;

    #[test]
    fn the_least_that_is_added_leaves_the_wires_free_that_a_box_asks_for() {
        for ending in Ending::ALL {
            let (least, most) = ending.allowance();
            assert!(least < most && least >= free_conductor::least(Length::ZERO));
        }
        assert!(LOSS.0 < LOSS.1);
    }

    #[test]
    fn a_roll_holds_what_it_is_bought_for() {
        let sixteenths = |inches: i64, more: i64| Length::inches(inches * 16 + more, 16);
        for (length, feet) in [
            (sixteenths(300, 0), Some(25)),
            (sixteenths(300, 1), Some(50)),
            (sixteenths(1200, 1), Some(250)),
            (sixteenths(3000, 0), Some(250)),
            (sixteenths(3000, 1), None),
        ] {
            assert_eq!(smallest_roll(length), feet.map(|feet| Length::inches(feet * 12, 1)));
        }
    }
}
