//! All that a person reads of a wall's notes.

use crate::words;

words! {
    NAME = "Behind the board, one wall", es "Detrás de la tablaroca, una pared";
    ABOUT = "What is in a wall before it is covered, and where a screw may go afterwards", es "Qué hay en una pared antes de taparla, y dónde puede ir después un tornillo";
    NOTHING = "", es "";

    WALL = "Wall from the room, end to end", es "Pared desde el cuarto, de punta a punta";
    HIGH = "Lowest finished floor to ceiling", es "Del piso terminado más bajo al techo";
    SPACING = "Studs, center to center", es "Montantes, a centros";
    FIRST = "First center on that spacing", es "Primer centro de esa separación";
    FIRST_HINT = "One at each end and beside openings is added.", es "Se agrega uno en cada punta y junto a los vanos.";
    STUDS = "Stud centers as measured", es "Centros de montantes como se midieron";
    STUDS_HINT = "In the place of all these.", es "En lugar de todos estos.";
    THICK = "Studs, thick", es "Montantes, grueso";
    THINGS = "In the wall", es "En la pared";
    THINGS_HINT = "Of a straight run: as long one way as it runs, its thickness the other. A bend starts another.", es "De un tramo recto: a lo largo lo que corre, lo otro su grueso. Una vuelta empieza otro.";
    THING = "Thing", es "Cosa";
    WHAT = "What it is", es "Qué es";
    BOX = "Box", es "Caja";
    CABLE = "Cable", es "Cable";
    PIPE = "Pipe", es "Tubo";
    DUCT = "Duct", es "Ducto";
    BACKING = "Backing", es "Refuerzo";
    BLOCKING = "Blocking", es "Bloque";
    PLATE = "Steel plate", es "Placa de acero";
    VENT = "Vent", es "Ventila";
    OTHER = "Other", es "Otra";
    NOTE = "Note", es "Apunte";
    LEFT = "From the left, to its left edge", es "Desde la izquierda, a su orilla izquierda";
    LOW = "From the floor, to its lower edge", es "Desde el piso, a su orilla de abajo";
    WIDE = "Wide", es "Ancho";
    TALL = "High", es "Alto";
    DEEP = "Behind the stud's face", es "Detrás de la cara del montante";
    DEEP_HINT = "To its nearest part.", es "A su parte más cercana.";
    PLATED = "A steel plate covers it", es "Lo cubre una placa de acero";
    HANG = "Something is to hang here", es "Algo se va a colgar aquí";
    AT_LOW = "Its screws, from the floor", es "Sus tornillos, desde el piso";
    AT_LEFT = "From the left", es "Desde la izquierda";
    ACROSS = "To the right from there", es "De ahí a la derecha";
    ACROSS_HINT = "Nothing for one screw.", es "Nada si es un solo tornillo.";
    SCREW = "Screw, long", es "Tornillo, largo";
    COVER = "Board and all that it goes through first", es "Tablaroca y todo lo que atraviesa primero";
    WHY = "no wall of a house takes that.", es "ninguna pared de casa da para eso.";

    NO_SIZE = "How wide or how high it is, is needed: of a cable, pipe or duct how far it runs.", es "Hace falta el ancho o el alto: de un cable, tubo o ducto, cuánto corre.";
    OUTSIDE = "It ends outside the wall: {0} is left.", es "Termina fuera de la pared: quedan {0}.";
    TOO_SHORT = "What is noted in it reaches to {0}.", es "Lo apuntado en ella llega hasta {0}.";
    IN_OPENING = "It lies in opening {0}.", es "Queda en el vano {0}.";

    NOTED = "Things noted in this wall", es "Cosas apuntadas en esta pared";
    NAMED = "{0}. {1}", es "{0}. {1}";
    OF = "{0} · {1}", es "{0} · {1}";
    FROM_FLOOR = "From the floor", es "Desde el piso";
    ONE = "{0}", es "{0}";
    TO = "{0} to {1}", es "{0} a {1}";
    NOT_GIVEN = "not noted", es "sin apuntar";
    ALONG = "Where a screw may go", es "Dónde puede ir un tornillo";
    IS_STUD = "stud, center at {0}", es "montante, centro en {0}";
    IS_ON_SPACING = "a stud by the spacing, center at {0}: find it first", es "un montante según la separación, centro en {0}: búsquelo antes";
    IS_OPENING = "opening {0}", es "vano {0}";
    IS_NOTHING = "nothing to screw into", es "nada en que atornillar";
    IS_LOOSE = "{0}: an end hangs free", es "{0}: una punta queda al aire";
    IS_OVER = "over opening {0}, a header or short studs: find it first", es "sobre el vano {0}, un dintel o montantes cortos: búsquelo antes";
    IS_OFF = "keep off {0}", es "no: {0}";

    ASK_DEPTH = "Measure from the stud's face while it is open.", es "Mida desde la cara del montante mientras está abierto.";
    LEFT_OFF = "Its left end lies on no stud.", es "Su punta izquierda no apoya en montante.";
    RIGHT_OFF = "Its right end lies on no stud.", es "Su punta derecha no apoya en montante.";
    FIND_FIRST = "A stud by the spacing alone: find it, or note its center.", es "Un montante solo según la separación: búsquelo, o apunte su centro.";
    ASK_REACH = "Move it, or note its depth and the screw.", es "Muévalo, o apunte su profundidad y el tornillo.";

    DRAWN = "This is what was noted, not what is there. Take photos with a tape in them before the board goes up.", es "Esto es lo que se apuntó, no lo que hay. Tome fotos con cinta a la vista antes de la tablaroca.";
    SCAN = "Scan before you drill, and go in shallow; prove what is there dead first.", es "Pase el detector antes de taladrar, y entre poco; compruebe antes que no hay corriente.";

    DRAWING = "The wall from the room, to scale", es "La pared desde el cuarto, a escala";
    MEANS_STUD = "A stud", es "Un montante";
    MEANS_ON_SPACING = "A stud by the spacing", es "Un montante según la separación";
    TWIN = "{0} · {1} from the left, {2} from the floor.", es "{0} · {1} desde la izquierda, {2} desde el piso.";
}
