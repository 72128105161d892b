//! Registers by their nominal size, the inside of the opening, and how much of one is open.

use crate::choice;
use crate::measure::unit::PERCENT;
use crate::measure::{Length, Measure};
use crate::words;

words! {
    SAYS = "A stamped face with its damper open lets 55 to 75 % of its nominal size through; 65 % is taken. The maker's area factor goes first, and only with readings by that maker's probe.", es "Una cara troquelada con su compuerta abierta deja pasar 55 a 75 % de su medida nominal; se toma 65 %. Va primero el factor de área del fabricante, y solo con lecturas de la sonda de ese fabricante.";
    SEEN = "common practice; a maker's catalog says over 75 % of a floor register", es "costumbre del oficio; el catálogo de un fabricante dice más de 75 % en una rejilla de piso";
    S10X6 = "10 × 6", es "10 × 6";
    S2X10 = "2 × 10", es "2 × 10";
    S2X12 = "2-1/4 × 12", es "2-1/4 × 12";
    S2X14 = "2-1/4 × 14", es "2-1/4 × 14";
    S8X4 = "8 × 4", es "8 × 4";
    S10X4 = "10 × 4", es "10 × 4";
    S12X4 = "12 × 4", es "12 × 4";
    S14X4 = "14 × 4", es "14 × 4";
    S8X6 = "8 × 6", es "8 × 6";
    S12X6 = "12 × 6", es "12 × 6";
    S14X6 = "14 × 6", es "14 × 6";
    S8X8 = "8 × 8", es "8 × 8";
    S10X8 = "10 × 8", es "10 × 8";
    S14X8 = "14 × 8", es "14 × 8";
    S10X10 = "10 × 10", es "10 × 10";
    S12X12 = "12 × 12", es "12 × 12";
}

source!(
    /// Where the share stands.
    OPEN, "register-open-share", "Stamped registers, habit" es "Rejillas troqueladas, costumbre", SAYS, SEEN, CommonPractice
);
/// What is open of a stamped face.
pub const OPEN_SHARE: Measure = Measure::whole(&PERCENT, 65);

choice! {
    /// A register by its name, width first. Floor ones are often told the other way round.
    pub enum Size {
        /// 10 × 6.
        S10x6 = "10x6", S10X6;
        /// 2 × 10.
        S2x10 = "2x10", S2X10;
        /// 2-1/4 × 12.
        S2x12 = "2.25x12", S2X12;
        /// 2-1/4 × 14.
        S2x14 = "2.25x14", S2X14;
        /// 8 × 4.
        S8x4 = "8x4", S8X4;
        /// 10 × 4.
        S10x4 = "10x4", S10X4;
        /// 12 × 4.
        S12x4 = "12x4", S12X4;
        /// 14 × 4.
        S14x4 = "14x4", S14X4;
        /// 8 × 6.
        S8x6 = "8x6", S8X6;
        /// 12 × 6.
        S12x6 = "12x6", S12X6;
        /// 14 × 6.
        S14x6 = "14x6", S14X6;
        /// 8 × 8.
        S8x8 = "8x8", S8X8;
        /// 10 × 8.
        S10x8 = "10x8", S10X8;
        /// 14 × 8.
        S14x8 = "14x8", S14X8;
        /// 10 × 10.
        S10x10 = "10x10", S10X10;
        /// 12 × 12.
        S12x12 = "12x12", S12X12;
    }
}

/// Quarter inches each way, in the order of [`Size`].
const SIDES: [[i64; 2]; 16] = [
    [40, 24],
    [8, 40],
    [9, 48],
    [9, 56],
    [32, 16],
    [40, 16],
    [48, 16],
    [56, 16],
    [32, 24],
    [48, 24],
    [56, 24],
    [32, 32],
    [40, 32],
    [56, 32],
    [40, 40],
    [48, 48],
];

impl Size {
    /// Both sides.
    pub const fn sides(self) -> [Length; 2] {
        let [wide, high] = SIDES[self as usize];
        [Length::inches(wide, 4), Length::inches(high, 4)]
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Each size says its own sides.
    #[test]
    fn a_name_is_its_sides() {
        for size in Size::ALL {
            let [wide, high] = size.sides().map(|side| side.nanometres() as f64 / 25_400_000.0);
            assert_eq!(size.key(), format!("{wide}x{high}"));
        }
    }
}
