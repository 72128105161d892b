//! Where a return may be, and from where it may not take its air.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    FLAME_SAYS = "A return opening is 10 ft or more from an open combustion chamber or draft hood of another appliance in the same space.", es "Una abertura de retorno va a 10 ft o más de una cámara de combustión abierta o de la campana de tiro de otro aparato en el mismo espacio.";
    FLAME_SEEN = "read in a public copy of the section; M1602.2 of the residential code, 2015 on, is from memory", es "leído en una copia pública de la sección; M1602.2 del código residencial, de 2015 en adelante, es de memoria";
    /// What a return near an open flue can do; said wherever one may be moved.
    FLUE = "A changed return, or one that draws on a space with an open-flue appliance, can pull its smoke back into the house. Carbon monoxide kills: have a licensed sub test it under worst-case depressurization.", es "Un retorno cambiado, o uno que toma aire de un espacio con un aparato de chimenea abierta, puede jalar su humo de regreso a la casa. El monóxido de carbono mata: que un contratista con licencia lo pruebe con la despresurización del peor caso.";
    FROM_SAYS = "No return from a bath, toilet room, kitchen, garage, closet, furnace room or unconditioned attic, and no more air taken from a room than is given to it.", es "Sin retorno en baño, excusado, cocina, garaje, clóset, cuarto del calefactor o ático sin clima, y no se toma más aire de un cuarto del que se le da.";
    FROM_SEEN = "read in a public copy of the section; newer editions allow some of these under conditions", es "leído en una copia pública de la sección; ediciones más nuevas permiten algunos de estos con condiciones";
}

source!(
    /// How far from a flame.
    FLAME, "imc-601.5-1", "IMC 601.5 item 1" es "IMC 601.5 punto 1", FLAME_SAYS, FLAME_SEEN, Read
);
source!(
    /// From which rooms not.
    FROM, "imc-601.5", "IMC 601.5", FROM_SAYS, FROM_SEEN, Read
);
/// The least from an open flame to a return.
pub const FROM_FLAME: Limit<Length> = Limit { value: Length::inches(120, 1), source: &FLAME };
