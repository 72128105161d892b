//! What an attic keeps over and beside a ceiling that goes up into it.

use crate::words;

words! {
    SAYS = "Insulation goes back at full depth, with 1 in of air under the roof at the eaves. A wall that now stands in the attic is insulated, and closed on its attic side and at its top and bottom.", es "El aislante se repone a toda su altura, con 1 in de aire bajo el tejado en los aleros. Una pared que ahora queda en el ático se aísla, y se cierra por el lado del ático y arriba y abajo.";
    SEEN = "the wall read in a building-science guide; the inch of air and the sections from memory", es "la pared leída en una guía de ciencia de la construcción; la pulgada de aire y las secciones de memoria";
}

source!(
    /// Where it is published.
    ATTIC, "irc-n1102.4-attic", "IRC R806.3 and N1102.4.1.1" es "IRC R806.3 y N1102.4.1.1", SAYS, SEEN, Memory
);
