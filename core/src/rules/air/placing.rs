//! Where a return may be, and from where it may not take its air.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    FLAME_SAYS = "A return opening is 10 ft or more from an open combustion chamber or draft hood of another appliance in the same space.";
    FLAME_SEEN = "read in a public copy of the section; M1602.2 of the residential code, 2015 on, is from memory";
    /// What a return near an open flue can do; said wherever one may be moved.
    FLUE = "A changed return, or one that draws on a space with an open-flue appliance, can pull its smoke back into the house. Carbon monoxide kills: have a licensed sub test it under worst-case depressurization.";
    FROM_SAYS = "No return from a bath, toilet room, kitchen, garage, closet, furnace room or unconditioned attic, and no more air taken from a room than is given to it.";
    FROM_SEEN = "read in a public copy of the section; newer editions allow some of these under conditions";
}

source!(
    /// How far from a flame.
    FLAME, "imc-601.5-1", "IMC 601.5 item 1", FLAME_SAYS, FLAME_SEEN, Read
);
source!(
    /// From which rooms not.
    FROM, "imc-601.5", "IMC 601.5", FROM_SAYS, FROM_SEEN, Read
);
/// The least from an open flame to a return.
pub const FROM_FLAME: Limit<Length> = Limit { value: Length::inches(120, 1), source: &FLAME };
