//! How high the blades of a ceiling fan hang.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    FAN_BLADES_SAYS = "Blades hang 7 ft over the floor or higher, and about 8 in under the ceiling. Neither code says so; both make a maker's instructions binding.", es "Las aspas cuelgan a 7 ft del piso o más, y como 8 in bajo el techo. Ningún código lo dice; los dos hacen obligatorias las instrucciones del fabricante.";
    FAN_BLADES_SEEN = "read in a home inspector's pages; read your fan's own sheet", es "leído en páginas de un inspector de casas; lea la hoja de su propio ventilador";
}

source!(
    /// Where it is said.
    FAN_BLADES, "maker-fan-blades", "Fan makers' instructions" es "Instrucciones de fabricantes de ventiladores", FAN_BLADES_SAYS, FAN_BLADES_SEEN, Read
);

/// Blades over the floor.
pub const BLADES: Limit<Length> = Limit { value: Length::inches(84, 1), source: &FAN_BLADES };
