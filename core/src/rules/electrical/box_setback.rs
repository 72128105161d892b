//! 314.20: how far behind the finished surface a box's front may be.

use crate::choice;
use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    GYPSUM = "Board, plaster, tile", es "Tablaroca, yeso, loseta";
    WOOD = "Wood, panelling", es "Madera, panel de madera";
    SAYS = "In board, plaster or tile a box's front may be 1/4 in back, no more; in wood it must be flush or proud.", es "En tablaroca, yeso o loseta el frente de una caja puede quedar 1/4 in atrás, no más; en madera debe quedar al ras o salido.";
    SEEN = "read in a continuing-education page on the clause and a trade magazine on panelling", es "leído en una página de educación continua sobre la cláusula y en una revista del oficio sobre panel de madera";
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
