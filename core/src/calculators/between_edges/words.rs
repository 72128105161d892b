//! All that a person reads of a box between two edges.

use crate::words;

words! {
    NAME = "A box between two edges", es "Una caja entre dos orillas";
    ABOUT = "Where its middle goes, which stud it is packed off, with how many pieces, and the screw", es "Dónde va su centro, desde qué montante se calza, con cuántas piezas, y el tornillo";
    NOTHING = "", es "";

    GAP = "Edge to edge", es "De orilla a orilla";
    GAP_HINT = "Casing to casing, cabinet to corner: as it will be when finished.", es "De moldura a moldura, de gabinete a esquina: como quedará terminado.";
    WIDE = "Box, wide", es "Caja, ancho";
    PLATE = "Plate, wide", es "Tapa, ancho";
    AIM = "Wanted", es "Lo que quiere";
    EVEN = "As much left at both sides", es "Que sobre igual a los dos lados";
    PLACED = "Its middle where I say", es "Su centro donde yo diga";
    AT = "Left edge to its middle", es "Orilla izquierda a su centro";
    STUD = "Left edge to a stud's middle", es "Orilla izquierda a centro de montante";
    STUD_HINT = "Any stud there; the others follow by their spacing.", es "Cualquier montante de ahí; los demás siguen por su separación.";
    SPACING = "Studs apart", es "Separación de montantes";
    THICK = "Stud, thick", es "Montante, grueso";
    SHEETS = "Sheets at hand for packing", es "Hojas a la mano para calzar";
    SHEETS_HINT = "Measure them: 3/4 in plywood is often 23/32.", es "Mídalas: el triplay de 3/4 in muchas veces es de 23/32.";
    SHEET = "Sheet", es "Hoja";
    EACH = "Thickness", es "Grueso";
    T4 = "1/4 in", es "1/4 in";
    T6 = "3/8 in", es "3/8 in";
    T8 = "1/2 in", es "1/2 in";
    T10 = "5/8 in", es "5/8 in";
    T12 = "3/4 in", es "3/4 in";
    SIDE = "Box's own side", es "El costado de la caja";
    WHY = "no wall of a house takes that.", es "ninguna pared de casa da para eso.";

    NO_FIT = "The box reaches past an edge. Measure again.", es "La caja pasa de una orilla. Mida otra vez.";

    EACH_SIDE = "Left over, each side", es "Sobra a cada lado";
    AT_LEFT = "Left over, at left", es "Sobra a la izquierda";
    AT_RIGHT = "Left over, at right", es "Sobra a la derecha";
    MIDDLE = "Left edge to its middle", es "Orilla izquierda a su centro";
    BESIDE = "Stud's middle, from the left edge", es "Centro del montante, desde la orilla izq.";
    WANTED = "Packing wanted", es "Calza que se pide";
    MADE = "Packing made", es "Calza que se hace";
    OFF = "Off its place by", es "Fuera de su lugar por";
    PIECES = "Pieces of packing", es "Piezas de calza";
    SCREW = "Screw, at least", es "Tornillo, al menos";
    NEXT_RIGHT = "The box goes on the right of the stud {0} from the left edge: {1}.", es "La caja va a la derecha del montante que está a {0} de la orilla izquierda: {1}.";
    NEXT_LEFT = "The box goes on the left of the stud {0} from the left edge: {1}.", es "La caja va a la izquierda del montante que está a {0} de la orilla izquierda: {1}.";
    NO_PACKING = "no packing", es "sin calza";
    ONE_KIND = "{0} × {1}", es "{0} × {1}";
    AND = "{0} + {1}", es "{0} + {1}";
    NEXT_BLOCK = "No stud is near: set a block or a bar between the studs, and screw the box to it.", es "No hay montante cerca: ponga un bloque o una barra entre los montantes, y atornille ahí la caja.";
    NEXT_CLASH = "The box meets a stud there. Move it {0} left or {1} right, or cut in a box that a stud doesn't stop.", es "La caja topa ahí con un montante. Muévala {0} a la izquierda o {1} a la derecha, o use una caja old-work que un montante no estorbe.";
    NEEDS = "Its side, packing and 1 in of stud", es "Su costado, la calza y 1 in de montante";

    CHECK_STUD = "Box over a stud", es "Caja sobre un montante";
    CHECK_PLATE = "Left over at the nearer edge, for the plate", es "Sobra en la orilla más cercana, para la tapa";
    CHECK_PACK = "Packing", es "Calza";
    ASK_PACK = "More than is packed: a block or a bar.", es "Más de lo que se calza: un bloque o una barra.";
    CHECK_OFF = "Off its place", es "Fuera de su lugar";
    ASK_OFF = "The sheets at hand come no nearer. Plane one down, or add another.", es "Las hojas a la mano no llegan más cerca. Cepille una, o agregue otra.";
    STOCK = "Packing {0} thick", es "Calza de {0} de grueso";

    DEAD = "Dead, and proved dead, before a box or a cable in the wall is touched.", es "Sin corriente, y comprobado sin corriente, antes de tocar una caja o un cable en la pared.";
    LICENSED = "A licensed electrician sets boxes where the law says so; the box's own sheet says how it is fastened.", es "Un electricista con licencia pone las cajas donde la ley lo dice; la hoja de la propia caja dice cómo se fija.";

    DRAWING = "Studs, packing and box between the edges, to scale", es "Montantes, calza y caja entre las orillas, a escala";
    MEANS_EDGE = "An edge", es "Una orilla";
    MEANS_STUD = "A stud", es "Un montante";
    MEANS_PACKING = "Packing", es "Calza";
    MEANS_BOX = "The box", es "La caja";
    TWIN = "The box is {0} wide, {1} from the left edge and {2} from the right.", es "La caja mide {0} de ancho, a {1} de la orilla izquierda y a {2} de la derecha.";
    TWIN_STUD = "A stud's middle is {0} from the left edge.", es "El centro de un montante está a {0} de la orilla izquierda.";
}
