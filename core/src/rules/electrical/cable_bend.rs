//! 334.24: how tight nonmetallic cable is bent.

use crate::measure::Length;
use crate::words;

words! {
    SAYS = "Nonmetallic cable is bent to no less than 5 times its width, measured inside the bend.", es "El cable no metálico se dobla a no menos de 5 veces su ancho, medido por dentro del doblez.";
    SEEN = "from memory; a flat cable by its wide side", es "de memoria; un cable plano, por su lado ancho";
}

source!(
    /// Where it is published.
    BEND, "nec-334.24", "NEC 334.24", SAYS, SEEN, Memory
);

/// Of a cable's width, the least radius.
pub const TIMES: i64 = 5;

/// The least radius, inside the bend, of a cable so wide.
///
/// Source: NEC 334.24.
pub const fn least_radius(wide: Length) -> Length {
    wide.times(TIMES)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rules::electrical::cable_sizes::Sheathed;

    /// By hand: 14-2 is 0.372 in wide, so 1.86 in; 12-2 0.422 in, so 2.11 in.
    #[test]
    fn the_radius_is_five_widths() {
        for (cable, hundredths) in [(Sheathed::Nm14x2, 186), (Sheathed::Nm12x2, 211)] {
            let (wide, _) = cable.size().unwrap();
            assert_eq!(least_radius(wide), Length::inches(hundredths, 100));
        }
    }
}
