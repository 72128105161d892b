//! How long a board screw has to be.

use crate::measure::Length;
use crate::rules::compare::{Limit, is_at_most};
use crate::words;

words! {
    SAYS = "A board screw reaches 5/8 in into wood through all that is over it. Sold: 1, 1-1/8, 1-1/4, 1-5/8, 2, 2-1/4, 2-1/2 and 3 in.", es "El tornillo de tablaroca entra 5/8 in en la madera después de todo lo que lleva encima. Se vende: 1, 1-1/8, 1-1/4, 1-5/8, 2, 2-1/4, 2-1/2 y 3 in.";
    SEEN = "5/8 read in a repair column; lengths common practice", es "5/8 leído en una columna de reparaciones; los largos, costumbre del oficio";
}

source!(
    /// Where it is told.
    SCREWS, "board-screws", "Board screws into wood" es "Tornillos de tablaroca en madera", SAYS, SEEN, Read
);

/// Into wood. Source: [`SCREWS`].
pub const INTO_WOOD: Length = Length::inches(5, 8);
/// Lengths that are sold, in eighths of an inch. Source: [`SCREWS`].
const SOLD: [i64; 8] = [8, 9, 10, 13, 16, 18, 20, 24];

/// The shortest that is sold and long enough; an exact fit is.
pub fn sold(needed: Length) -> Option<Length> {
    let mut lengths = SOLD.iter().map(|eighths| Length::inches(*eighths, 8));
    lengths.find(|value| is_at_most(needed, Limit { value: *value, source: &SCREWS }))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Worked by hand: 1/2 in over 1/2 in takes 1-5/8 in exactly.
    #[test]
    fn an_exact_fit_is_long_enough() {
        let needed = Length::inches(1, 1).plus(INTO_WOOD);
        let off = Length::inches(1, 64);
        assert_eq!(sold(needed), Some(Length::inches(13, 8)));
        assert_eq!(sold(needed.minus(off)), Some(Length::inches(13, 8)));
        assert_eq!(sold(needed.plus(off)), Some(Length::inches(2, 1)));
        assert_eq!(sold(Length::inches(25, 8)), None);
    }
}
