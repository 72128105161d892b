//! R302.11: where concealed spaces are closed against fire at a ceiling.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    CEILING_LINE_SAYS = "Close every stud bay at each ceiling and floor line, at least every 10 ft, and wherever a wall's space meets a dropped, tray or cove ceiling's.", es "Cierre cada espacio entre montantes en cada línea de techo y de piso, al menos cada 10 ft, y donde el hueco de una pared se junta con el de un techo bajado, de charola o curvo.";
    CEILING_LINE_SEEN = "read in a fireblocking guide and a county's list of common defects, where tray ceilings stand", es "leído en una guía de cortafuegos y en la lista de defectos comunes de un condado, donde están los techos de charola";
}

source!(
    /// Where it is published.
    CEILING_LINE, "irc-r302.11-ceiling-line", "IRC R302.11, fireblocking" es "IRC R302.11, cortafuegos", CEILING_LINE_SAYS, CEILING_LINE_SEEN, Read
);

/// A bay, from block to block.
pub const BAY: Limit<Length> = Limit { value: Length::inches(120, 1), source: &CEILING_LINE };
