//! How loud air is at a register, and how fast it is let out of its face.

use crate::measure::Measure;
use crate::measure::unit::FPM;
use crate::rules::compare::Limit;
use crate::words::Text;
use crate::{say, words};

words! {
    FACE_SAYS = "Out of a supply register's face in a house: 500 to 700 fpm usual, 800 at most.", es "Por la cara de una rejilla de salida en una casa: 500 a 700 fpm lo usual, 800 a lo más.";
    FACE_SEEN = "800 was read in a trade note on sizing registers; 700 is habit, from memory", es "800 se leyó en una nota del oficio sobre dimensionar rejillas; 700 es costumbre, de memoria";
    NC_SAYS = "Supply opening, lined duct: 250 to 300 fpm is about NC 15 to 20, 350 to 425 NC 25 to 30, 500 to 575 NC 35 to 40. NC 30 suits bedrooms and living rooms.", es "Abertura de salida, ducto forrado: 250 a 300 fpm es cerca de NC 15 a 20, 350 a 425 NC 25 a 30, 500 a 575 NC 35 a 40. NC 30 va bien en recámaras y salas.";
    NC_UNDER = "NC {0} or less", es "NC {0} o menos";
    NC_BAND = "about NC {0} to {1}", es "cerca de NC {0} a {1}";
    NC_OVER = "NC {0} or more", es "NC {0} o más";
    NC_SEEN = "read in an acoustics text and a grille maker's guide. Stamped faces are louder than fixed bars", es "leído en un texto de acústica y en la guía de un fabricante de rejillas. Las caras troqueladas suenan más que las barras fijas";
}

source!(
    /// How fast out of a face.
    FACE, "register-face-velocity", "Sizing supply registers, trade note and habit" es "Tamaño de rejillas de salida, nota del oficio y costumbre", FACE_SAYS, FACE_SEEN, Read
);
source!(
    /// How loud.
    SOUND, "register-sound", "Noise criteria by opening velocity, acoustics text" es "Criterios de ruido por velocidad de salida, texto de acústica", NC_SAYS, NC_SEEN, Read
);

/// The most.
pub const FASTEST: Limit<Measure> = Limit { value: Measure::whole(&FPM, 800), source: &FACE };
/// Where it begins to be much.
pub const USUAL: Limit<Measure> = Limit { value: Measure::whole(&FPM, 700), source: &FACE };

/// The fastest through an opening that is still NC 30.
pub const QUIET: Limit<Measure> = Limit { value: Measure::whole(&FPM, 425), source: &SOUND };

/// Up to so many fpm each step of five, from NC 15.
const STEPS: [i64; 7] = [250, 300, 350, 425, 500, 575, 650];

/// The band that a velocity through the opening falls in: no louder than NC 15; between two; or
/// from NC 45 up, with no end.
pub fn band(leaves: Measure) -> (Option<i64>, Option<i64>) {
    let at = STEPS.iter().position(|most| leaves <= Measure::whole(&FPM, *most));
    match at {
        Some(0) => (None, Some(15)),
        Some(at) => (Some(10 + 5 * at as i64), Some(15 + 5 * at as i64)),
        None => (Some(45), None),
    }
}

/// The band as a person reads it.
pub fn sound(leaves: Measure) -> Text {
    match band(leaves) {
        (None, Some(most)) => say!(NC_UNDER, most),
        (Some(least), Some(most)) => say!(NC_BAND, least, most),
        (least, _) => say!(NC_OVER, least.unwrap_or_default()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: an architectural acoustics text, supply registers: 250–300 fpm NC 15–20, 300–350
    /// 20–25, 350–425 25–30, 425–500 30–35, 500–575 35–40, 575–650 40–45.
    #[test]
    fn bands_are_the_tables() {
        for (fpm, want) in [
            (200, (None, Some(15))),
            (250, (None, Some(15))),
            (275, (Some(15), Some(20))),
            (325, (Some(20), Some(25))),
            (400, (Some(25), Some(30))),
            (425, (Some(25), Some(30))),
            (426, (Some(30), Some(35))),
            (550, (Some(35), Some(40))),
            (600, (Some(40), Some(45))),
            (651, (Some(45), None)),
        ] {
            assert_eq!(band(Measure::whole(&FPM, fpm)), want, "{fpm}");
        }
    }
}
