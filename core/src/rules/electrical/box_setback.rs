//! 314.20: how far behind the finished surface a box's front may be.

use crate::choice;
use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    GYPSUM = "Board, plaster, tile";
    WOOD = "Wood, panelling";
    SAYS = "In board, plaster or tile a box's front may be 1/4 in back, no more; in wood it must be flush or proud.";
    SEEN = "read in a continuing-education page on the clause and a trade magazine on panelling";
}

source!(
    /// Where it is published.
    SETBACK, "nec-314.20", "NEC 314.20", SAYS, SEEN, Read
);

choice! {
    /// What the surface round a box is of.
    pub enum Surface {
        /// Gypsum board, plaster, tile: noncombustible.
        Noncombustible = "board", GYPSUM;
        /// Wood: combustible.
        Combustible = "wood", WOOD;
    }
}

/// The most that a box's front may be behind the surface.
pub const fn most(surface: Surface) -> Limit<Length> {
    let value = match surface {
        Surface::Noncombustible => Length::inches(1, 4),
        Surface::Combustible => Length::ZERO,
    };
    Limit { value, source: &SETBACK }
}
