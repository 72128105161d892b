//! What torn-out board heaps up to.

use crate::measure::Measure;
use crate::measure::unit::LB_PER_YARD;
use crate::words;

words! {
    SAYS = "Loose board weighs 400 to 500 lb a cubic yard. Wet texture is kept apart from clean board.";
    SEEN = "400 read in a pollution-prevention page, 500 in a training sheet; apart, common practice";
}

source!(
    /// Where it is told.
    LOOSE_BOARD, "loose-board", "Loose drywall debris", SAYS, SEEN, Read
);

/// Dense and loose. Source: [`LOOSE_BOARD`].
pub const HEAPED: [Measure; 2] =
    [Measure::whole(&LB_PER_YARD, 500), Measure::whole(&LB_PER_YARD, 400)];
