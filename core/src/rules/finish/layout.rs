//! How boards are laid and fastened.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    JOINTS_SAYS = "Ceilings before walls; boards across the framing, as few end joints as can be and away from the middle of the ceiling, ends and edges on framing, joints of rows that touch a member apart or more, factory edge to factory edge, no gap over 1/16 in.", es "Techos antes que paredes; hojas cruzando la estructura, tan pocas juntas de punta como se pueda y lejos del centro del techo, puntas y orillas sobre estructura, juntas de hileras que se tocan separadas un apoyo o más, orilla de fábrica con orilla de fábrica, ningún hueco de más de 1/16 in.";
    JOINTS_SEEN = "read in a school's specification after ASTM C840, ceilings first in a handbook, stagger in a builders' manual", es "leído en la especificación de una escuela según ASTM C840; techos primero, en un manual; el desfase, en un manual de constructores";
    OPENINGS_SAYS = "No joint in line with the side of a door or window, unless a control joint is put there.", es "Ninguna junta alineada con el lado de una puerta o ventana, salvo que ahí vaya una junta de control.";
    OPENINGS_SEEN = "from memory; ASTM C840 has it among its joints", es "de memoria; ASTM C840 la trae entre sus juntas";
    SCREWS_SAYS = "Screws 12 in apart at most on ceilings, 16 on walls, on each member and along its ends; 5/8 in or more into wood.", es "Tornillos cada 12 in como máximo en techos, 16 en paredes, en cada apoyo y en sus puntas; 5/8 in o más en la madera.";
    STRIP_SAYS = "A strip of board under 2 in wide or long breaks as it is screwed, and both its sides are joints.", es "Una tira de tablaroca de menos de 2 in de ancho o de largo se rompe al atornillarla, y sus dos lados son juntas.";
    STRIP_SEEN = "common practice, no source", es "costumbre del oficio, sin fuente";
    SCREWS_SEEN = "5/8 in read in a repair column, spacing from memory: the label and ASTM C840 have it", es "5/8 in leído en una columna de reparaciones, la separación de memoria: la etiqueta y ASTM C840 la traen";
}

source!(
    /// How boards are laid.
    JOINTS, "board-layout", "ASTM C840, joints" es "ASTM C840, juntas", JOINTS_SAYS, JOINTS_SEEN, Read
);
source!(
    /// Where openings are.
    OPENINGS, "board-openings", "ASTM C840, joints at openings" es "ASTM C840, juntas en vanos", OPENINGS_SAYS, OPENINGS_SEEN, Memory
);
source!(
    /// How they are fastened.
    SCREWS, "board-screws", "Screw spacing, ASTM C840" es "Separación de tornillos, ASTM C840", SCREWS_SAYS, SCREWS_SEEN, Memory
);

source!(
    /// The narrowest piece that is worth hanging.
    STRIP, "board-strip", "Strips of board" es "Tiras de tablaroca", STRIP_SAYS, STRIP_SEEN, Memory
);

/// A piece is no narrower, nor shorter. Source: [`STRIP`].
pub const LEAST_STRIP: Limit<Length> = Limit { value: Length::inches(2, 1), source: &STRIP };

/// Screws on one member are no farther apart. Source: [`SCREWS`].
pub const fn screws_apart(ceiling: bool) -> Length {
    Length::inches(if ceiling { 12 } else { 16 }, 1)
}
