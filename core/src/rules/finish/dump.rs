//! What torn-out board heaps up to.

use crate::measure::Measure;
use crate::measure::unit::LB_PER_YARD;
use crate::words;

words! {
    SAYS = "Loose board weighs 400 to 500 lb a cubic yard. Wet texture is kept apart from clean board.", es "La tablaroca suelta pesa 400 a 500 lb por yarda cúbica. La textura mojada va aparte de la tablaroca limpia.";
    SEEN = "400 read in a pollution-prevention page, 500 in a training sheet; apart, common practice", es "400 leído en una página de prevención de contaminación, 500 en una hoja de capacitación; que va aparte, costumbre del oficio";
}

source!(
    /// Where it is told.
    LOOSE_BOARD, "loose-board", "Loose drywall debris" es "Escombro suelto de tablaroca", SAYS, SEEN, Read
);

/// Dense and loose. Source: [`LOOSE_BOARD`].
pub const HEAPED: [Measure; 2] =
    [Measure::whole(&LB_PER_YARD, 500), Measure::whole(&LB_PER_YARD, 400)];
