//! All that a person reads of a wall's notes.

use crate::words;

words! {
    NAME = "Behind the board, one wall", es "Detrás de la tablaroca, una pared";
    ABOUT = "What is in a wall before it is covered, where, and where a screw may go afterwards", es "Qué hay en una pared antes de taparla, dónde, y dónde puede ir después un tornillo";
    NOTHING = "", es "";

    WALL = "Wall, end to end", es "Pared, de punta a punta";
    WALL_HINT = "As seen from the room; all that follows counts from its left end.", es "Vista desde el cuarto; todo lo que sigue se cuenta desde su punta izquierda.";
    HIGH = "Finished floor to ceiling", es "De piso terminado a techo";
    HIGH_HINT = "From the lowest finished floor, as all heights here.", es "Desde el piso terminado más bajo, como toda altura aquí.";
    SPACING = "Studs, center to center", es "Montantes, a centros";
    FIRST = "First center on that spacing", es "Primer centro de esa separación";
    FIRST_HINT = "Studs at both ends and beside openings are added.", es "Se agregan montantes en las puntas y junto a los vanos.";
    STUDS = "Stud centers as measured", es "Centros de montantes como se midieron";
    STUDS_HINT = "Uneven framing: all of them, in the place of the above.", es "Estructura dispareja: todos, en lugar de lo de arriba.";
    THICK = "Studs, thick", es "Montantes, grueso";
    OPENINGS = "Openings", es "Vanos";
    THINGS = "In the wall", es "En la pared";
    THINGS_HINT = "A straight run is as long one way as it runs, and as thick the other; a bend starts another.", es "Un tramo recto mide a lo largo lo que corre, y lo otro es su grueso; una vuelta empieza otro.";
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
    COVER = "What it goes through first", es "Lo que atraviesa primero";
    COVER_HINT = "Board, tile, and what hangs.", es "Tablaroca, azulejo y lo que cuelga.";
    WHY = "no wall of a house takes that.", es "ninguna pared de casa da para eso.";

    OUTSIDE = "It ends outside the wall: {0} is left.", es "Termina fuera de la pared: quedan {0}.";
    IN_OPENING = "It lies in opening {0}.", es "Queda en el vano {0}.";

    NOTED = "Noted in this wall", es "Apuntado en esta pared";
    COUNT_STUDS = "Studs", es "Montantes";
    NAMED = "{0}. {1}", es "{0}. {1}";
    NAMED_NOTE = "{0}. {1}, {2}", es "{0}. {1}, {2}";
    FROM_LEFT = "From the left", es "Desde la izquierda";
    FROM_FLOOR = "From the floor", es "Desde el piso";
    BEHIND = "Behind the face", es "Detrás de la cara";
    ONE = "{0}", es "{0}";
    TO = "{0} to {1}", es "{0} a {1}";
    NOT_GIVEN = "not noted", es "sin apuntar";
    ALONG = "Where a screw may go, {0} from the floor", es "Dónde puede ir un tornillo, a {0} del piso";
    ALONG_NOTE = "From the left end of the wall.", es "Desde la punta izquierda de la pared.";
    IS_STUD = "stud, center at {0}", es "montante, centro en {0}";
    IS_WOOD = "into {0}", es "en {0}";
    IS_OPENING = "opening {0}", es "vano {0}";
    IS_NOTHING = "nothing to screw into", es "nada en que atornillar";
    IS_OFF = "keep off: {0} within 2 in", es "no: {0} a menos de 2 in";
    NEXT = "{0}: {1}.", es "{0}: {1}.";
    NEXT_MANY = "{0} {0?place|places} to screw into along {1}.", es "{0} {0?lugar|lugares} en que atornillar en {1}.";

    CHECK_DEEP = "{0}, behind the face", es "{0}, detrás de la cara";
    CHECK_NO_DEPTH = "Runs of no depth, no plate noted", es "Tramos sin profundidad ni placa apuntada";
    ASK_DEPTH = "Measure from the stud's face while it is open.", es "Mida desde la cara del montante mientras está abierto.";
    CHECK_ENDS = "Backing ends off a stud", es "Puntas de refuerzo fuera de montante";
    CHECK_ENDS_OF = "{0}, ends off a stud", es "{0}, puntas fuera de montante";
    LEFT_OFF = "Its left end lies on no stud.", es "Su punta izquierda no apoya en montante.";
    RIGHT_OFF = "Its right end lies on no stud.", es "Su punta derecha no apoya en montante.";
    BOTH_OFF = "Neither end lies on a stud.", es "Ninguna punta apoya en montante.";
    CHECK_HOLD = "Places to screw into", es "Lugares en que atornillar";
    CHECK_TIP = "Screw's tip, short of {0}", es "Punta del tornillo, antes de {0}";
    CHECK_REACH = "In the screws' way, and not to be told by how much", es "En el camino de los tornillos, sin saber por cuánto";
    ASK_REACH = "Move it, or note its depth and the screw.", es "Muévalo, o apunte su profundidad y el tornillo.";
    PAST = "Screw past the stud's face", es "Tornillo, pasada la cara del montante";

    DRAWN = "This is what was noted, not what is there. Photos with a tape in them, from the same corner, before the board goes up.", es "Esto es lo que se apuntó, no lo que hay. Fotos con cinta a la vista, desde la misma esquina, antes de la tablaroca.";
    SCAN = "Scan before you drill, and go in shallow. What a circuit feeds is proved dead first.", es "Pase el detector antes de taladrar, y entre poco. Lo que alimenta un circuito se comprueba sin corriente antes.";
    INSPECT = "Covered only after the inspection, where the law asks one.", es "Se tapa solo después de la inspección, donde la ley la pide.";

    DRAWING = "The wall from the room, to scale", es "La pared desde el cuarto, a escala";
    MEANS_WALL = "The wall", es "La pared";
    MEANS_STUD = "A stud", es "Un montante";
    MEANS_OPENING = "An opening", es "Un vano";
    MEANS_HANG = "Where something is to hang", es "Donde algo se va a colgar";
    TWIN = "{0}: {1} from the left, {2} from the floor.", es "{0}: {1} desde la izquierda, {2} desde el piso.";
    TWIN_WALL = "{0} long, {1} high.", es "{0} de largo, {1} de alto.";
}
