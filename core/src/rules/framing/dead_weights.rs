//! What ceilings, insulation and wood weigh.

use crate::measure::Measure;
use crate::measure::unit::{PCF, PSF};
use crate::{choice, words};

words! {
    BOARD_SAYS = "Gypsum board is taken at 0.55 psf an eighth of an inch; its label may say less. Plaster on wood lath is taken at 10 psf.", es "La tablaroca se toma a 0.55 psf por octavo de pulgada; su etiqueta puede decir menos. El yeso sobre listones de madera se toma a 10 psf.";
    BOARD_SEEN = "board from memory, as ASCE 7 has it; plaster read in an old handbook, 8 psf in a table of dead loads", es "tablaroca de memoria, como la trae ASCE 7; yeso leído en un manual viejo, 8 psf en una tabla de cargas muertas";
    FILL_SAYS = "Settled loose fill is taken at the upper end: cellulose 2.0 lb a cubic foot, loose glass fiber 1.0, rock wool 1.7. Older texts have cellulose up to 3.", es "El aislante suelto asentado se toma en su extremo alto: celulosa 2.0 lb por pie cúbico, fibra de vidrio suelta 1.0, lana mineral 1.7. Textos viejos tienen celulosa hasta 3.";
    FILL_SEEN = "read in a page that carries the energy department's table", es "leído en una página que trae la tabla del departamento de energía";
    WOOD_SAYS = "Framing lumber is taken at 35 lb a cubic foot.", es "La madera de estructura se toma a 35 lb por pie cúbico.";
    WOOD_SEEN = "common practice, from memory", es "costumbre del oficio, de memoria";
    NOTHING = "Nothing", es "Nada";
    HALF = "1/2 board", es "Tablaroca de 1/2";
    FIVE_EIGHTHS = "5/8 board", es "Tablaroca de 5/8";
    THREE_EIGHTHS = "3/8 board", es "Tablaroca de 3/8";
    PLASTER = "Plaster on wood lath", es "Yeso sobre listones de madera";
    CELLULOSE = "Cellulose", es "Celulosa";
    GLASS = "Loose glass fiber", es "Fibra de vidrio suelta";
    ROCK_WOOL = "Rock wool", es "Lana mineral";
    OTHER = "Other", es "Otro";
}

source!(
    /// What ceilings weigh.
    CEILINGS, "ceiling-weights", "ASCE 7 dead loads, and handbooks" es "Cargas muertas de ASCE 7, y manuales", BOARD_SAYS, BOARD_SEEN, Memory
);

source!(
    /// What loose insulation weighs.
    FILLS, "loose-fill-weights", "US DOE, densities of loose fill" es "US DOE, densidades de aislante suelto", FILL_SAYS, FILL_SEEN, Read
);

source!(
    /// What wood weighs.
    WOOD, "lumber-weight", "Weight of framing lumber" es "Peso de la madera de estructura", WOOD_SAYS, WOOD_SEEN, CommonPractice
);

/// The weight of [`WOOD`].
pub const LUMBER: Measure = Measure::whole(&PCF, 35);

/// 2x6 joists at 16 in of [`LUMBER`], up to the next hundredth.
pub const JOISTS: Measure = Measure::hundredths(&PSF, 151);
/// A glass fiber batt between them, 5-1/2 in deep, taken at the weight of the loose kind and up to
/// the next hundredth.
pub const BATT: Measure = Measure::hundredths(&PSF, 46);

choice! {
    /// A layer of a ceiling.
    pub enum Layer {
        /// None.
        Nothing = "nothing", NOTHING;
        /// Board.
        Half = "half", HALF;
        /// Board.
        FiveEighths = "five-eighths", FIVE_EIGHTHS;
        /// Board.
        ThreeEighths = "three-eighths", THREE_EIGHTHS;
        /// Plaster on wood lath.
        Plaster = "plaster", PLASTER;
    }
}

impl Layer {
    /// On a square foot.
    pub const fn weight(self) -> Measure {
        Measure::hundredths(
            &PSF,
            match self {
                Self::Nothing => 0,
                Self::ThreeEighths => 165,
                Self::Half => 220,
                Self::FiveEighths => 275,
                Self::Plaster => 1_000,
            },
        )
    }
}

choice! {
    /// Loose insulation.
    pub enum Fill {
        /// None.
        Nothing = "nothing", NOTHING;
        /// Cellulose.
        Cellulose = "cellulose", CELLULOSE;
        /// Glass fiber.
        Glass = "glass", GLASS;
        /// Rock wool.
        RockWool = "rock-wool", ROCK_WOOL;
        /// By its own weight.
        Other = "other", OTHER;
    }
}

impl Fill {
    /// In a cubic foot; none of another, or where there is nothing.
    pub const fn weight(self) -> Option<Measure> {
        let tenths = match self {
            Self::Cellulose => 20,
            Self::Glass => 10,
            Self::RockWool => 17,
            Self::Nothing | Self::Other => return None,
        };
        Some(Measure::hundredths(&PCF, 10 * tenths))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By hand: 1.5 x 5.5 in of 35 lb a cubic foot every 16 in; 5.5 in of 1 lb a cubic foot.
    #[test]
    fn joists_and_a_batt_weigh_what_their_stuff_does() {
        let joists = LUMBER.number() * 1.5 * 5.5 / 12.0 / 16.0;
        let batt = Fill::Glass.weight().unwrap().number() * 5.5 / 12.0;
        for (taken, works) in [(JOISTS, joists), (BATT, batt)] {
            assert!((0.0..0.01).contains(&(taken.number() - works)), "{taken:?}, {works}");
        }
    }
}
