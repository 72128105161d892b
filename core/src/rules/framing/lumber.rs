//! What a nominal size measures.

use crate::measure::Length;
use crate::{choice, words};

words! {
    SAYS = "Dry dressed lumber is 1-1/2 in thick where it is called 2, and 1/2 in less than its name in width up to 6 in, 3/4 in less above.", es "La madera seca cepillada mide 1-1/2 in de grueso donde se llama 2, y de ancho 1/2 in menos que su nombre hasta 6 in, 3/4 in menos de ahí en adelante.";
    SEEN = "read in a summary of the standard. Older houses differ: 1-5/8 by 3-5/8 in the 1950s, full size before; measure", es "leído en un resumen de la norma. Las casas viejas difieren: 1-5/8 por 3-5/8 in en los años 1950, medida completa antes; mida";
    TWO_BY_THREE = "2x3", es "2x3";
    TWO_BY_FOUR = "2x4", es "2x4";
    TWO_BY_SIX = "2x6", es "2x6";
    TWO_BY_EIGHT = "2x8", es "2x8";
    TWO_BY_TEN = "2x10", es "2x10";
    TWO_BY_TWELVE = "2x12", es "2x12";
    MEASURED = "Measured", es "Medida";
}

source!(
    /// Where dressed sizes are published.
    DRESSED, "ps-20", "PS 20, American Softwood Lumber Standard, dry dressed sizes" es "PS 20, American Softwood Lumber Standard, medidas en seco y cepillado", SAYS, SEEN, Read
);

/// The dressed thickness of what is called 2, and of one plate.
pub const THICK: Length = Length::inches(3, 2);

choice! {
    /// A size by its name.
    pub enum Nominal {
        /// 2x4.
        TwoByFour = "2x4", TWO_BY_FOUR;
        /// 2x3.
        TwoByThree = "2x3", TWO_BY_THREE;
        /// 2x6.
        TwoBySix = "2x6", TWO_BY_SIX;
        /// 2x8.
        TwoByEight = "2x8", TWO_BY_EIGHT;
        /// 2x10.
        TwoByTen = "2x10", TWO_BY_TEN;
        /// 2x12.
        TwoByTwelve = "2x12", TWO_BY_TWELVE;
        /// Its width was measured.
        Measured = "measured", MEASURED;
    }
}

impl Nominal {
    /// The dressed width; none where it was measured.
    pub const fn width(self) -> Option<Length> {
        let quarters = match self {
            Self::TwoByThree => 10,
            Self::TwoByFour => 14,
            Self::TwoBySix => 22,
            Self::TwoByEight => 29,
            Self::TwoByTen => 37,
            Self::TwoByTwelve => 45,
            Self::Measured => return None,
        };
        Some(Length::inches(quarters, 4))
    }
}
