//! All that a person reads of heights off one line.

use crate::words;

words! {
    NAME = "Heights off one line", es "Alturas desde una línea";
    ABOUT = "How far up or down from a level line each box is marked, over floors that aren't level", es "Cuánto arriba o abajo de una línea a nivel se marca cada caja, sobre pisos que no están a nivel";
    NOTHING = "", es "";

    FLOORS = "Floors under the line", es "Pisos bajo la línea";
    FLOORS_HINT = "The floor as it is today, at its high and low spots, and each that will be built up.", es "El piso como está hoy, en sus puntos alto y bajo, y cada uno que se va a subir.";
    FLOOR = "Floor", es "Piso";
    HERE = "As it is", es "Como está";
    TILED = "To be tiled", es "Por enlosetar";
    CALL = "Call it", es "Nombre";
    DOWN = "Line down to it", es "De la línea a él";
    DOWN_HINT = "To what lies there today.", es "Hasta lo que hay ahí hoy.";
    BACKER = "Board to come", es "Hoja base por poner";
    BED = "Bed, thinset", es "Cama, thinset";
    COVER = "Tile or flooring", es "Loseta o piso";
    FROM = "Heights count from", es "Alturas desde";
    HIGHEST = "The highest finished floor, all alike", es "El piso terminado más alto, todas igual";
    OWN = "Each box's own finished floor", es "El piso terminado de cada caja";
    BOXES = "Boxes", es "Cajas";
    BOX = "Box", es "Caja";
    KIND = "What it is", es "Qué es";
    RECEPTACLE = "Receptacle", es "Contacto";
    SWITCH = "Switch", es "Apagador";
    COUNTER = "Over a counter", es "Sobre una cubierta";
    ALARM = "Alarm on a wall", es "Alarma en una pared";
    OTHER = "Something else", es "Otra cosa";
    HEIGHT = "Height", es "Alto";
    TO = "To its", es "Hasta su";
    MIDDLE = "Middle", es "Centro";
    BOTTOM = "Bottom", es "Parte de abajo";
    TOP = "Top", es "Parte de arriba";
    STANDS = "Over floor number", es "Sobre el piso número";
    ALONG = "Along the wall, to its middle", es "Por la pared, hasta su centro";
    ALONG_HINT = "From the left. Empty: drawn side by side.", es "Desde la izquierda. Vacío: se dibujan lado a lado.";
    TALL = "Box, tall", es "Caja, alto";
    WIDE = "Box, wide", es "Caja, ancho";
    OFF = "Line or laser off by", es "Error de línea o láser";
    OVER = "Over", es "En una distancia de";
    REACH = "Farthest mark from it", es "La marca más lejos de él";
    SEAM = "Board's seam, over the highest floor", es "Junta de hojas, sobre el piso más alto";
    SEAM_HINT = "Boards laid level from the floor meet at 48 or 54 in.", es "Las hojas acostadas desde el piso se juntan a 48 o 54 in.";
    COUNTER_TOP = "Counter top, over the highest floor", es "Cubierta, sobre el piso más alto";
    SPLASH = "Backsplash on it", es "Salpicadero sobre ella";
    COURSE = "Tile on the wall, with a joint", es "Azulejo en la pared, con junta";
    DOOR = "Door's stud, along the wall", es "Montante de la puerta, por la pared";
    DOOR_HINT = "The edge on the opening's side.", es "La orilla del lado del vano.";
    CASING = "Casing, wide", es "Moldura, ancho";
    HAND = "Within reach from a wheelchair", es "Al alcance desde silla de ruedas";
    SURFACE = "Round the box", es "Alrededor de la caja";
    BOARD = "Board to come", es "Tablaroca por poner";
    TILE = "Tile on it", es "Azulejo sobre ella";
    SKIM = "Skim on it", es "Capa delgada sobre ella";
    PROUD = "Box past the stud", es "Caja fuera del montante";
    WHY = "no wall of a house takes that.", es "ninguna pared de casa da para eso.";

    NO_FLOOR = "Put in one floor at least.", es "Ponga al menos un piso.";
    NO_BOX = "Put in one box at least.", es "Ponga al menos una caja.";
    NO_SUCH = "There is no floor {0}: {1} {1?floor is|floors are} given.", es "No hay piso {0}: {1?se dio|se dieron} {1} {1?piso|pisos}.";

    NAMED = "{0}. {1}", es "{0}. {1}";
    FROM_LINE_DOWN = "{0}, down from the line", es "{0}, abajo de la línea";
    FROM_LINE_UP = "{0}, up from the line", es "{0}, arriba de la línea";
    IS_DOWN = "{0} down", es "{0} abajo";
    IS_UP = "{0} up", es "{0} arriba";
    ON_LINE = "on the line", es "en la línea";
    ONE = "{0}", es "{0}";
    OUT = "Finished floors out of level", es "Desnivel de pisos terminados";
    HIGH_FLOOR = "Highest finished floor", es "Piso terminado más alto";
    LOW_FLOOR = "Lowest finished floor", es "Piso terminado más bajo";
    LINE_OVER = "Line over the highest finished floor", es "Línea sobre el piso terminado más alto";
    WITHIN = "A mark is good to, either way", es "Error de una marca, más o menos";
    PROJECTION = "Finish past the stud", es "Acabado fuera del montante";
    NEXT_HIGH = "All heights count from the highest finished floor, {0}; elsewhere they come out as much taller as that floor is lower.", es "Todas las alturas se cuentan desde el piso terminado más alto, {0}; en lo demás salen más altas por lo que ese piso está más bajo.";
    NEXT_OWN = "Each height counts from the finished floor under it: boxes side by side step with the floor.", es "Cada altura se cuenta desde el piso terminado de abajo: cajas lado a lado hacen escalón con el piso.";

    MARKS = "Marks from the line", es "Marcas desde la línea";
    MARKS_NOTE = "To the middle, bottom or top, as asked. Over its own floor: finished, then as it lies today.", es "Al centro, abajo o arriba, como se pidió. Sobre su propio piso: terminado, luego como está hoy.";
    MARK = "{0} · {1} over its floor, {2} today", es "{0} · {1} sobre su piso, {2} hoy";
    COURSES = "{0} · {1} over its floor, {2} today · bottom {3} and top {4} over a tile joint", es "{0} · {1} sobre su piso, {2} hoy · abajo {3} y arriba {4} sobre una junta de azulejo";
    SPOTS = "Floors", es "Pisos";
    SPOT = "{0} down today, {1} finished", es "{0} abajo hoy, {1} terminado";

    CHECK_LEVEL = "Highest finished floor over the lowest", es "Piso terminado más alto sobre el más bajo";
    SAY_HIGH = "Write it on the wall: heights are over the highest floor.", es "Escríbalo en la pared: las alturas son sobre el piso más alto.";
    SAY_OWN = "Write it on the wall: heights are over each box's own floor.", es "Escríbalo en la pared: las alturas son sobre el piso de cada caja.";
    CHECK_SEAM = "{0}, off the board's seam", es "{0}, lejos de la junta de hojas";
    ASK_SEAM = "It lies across the seam: the joint is cut and taped round it. Move it up or down.", es "Queda sobre la junta: la junta se corta y se encinta alrededor. Muévala arriba o abajo.";
    CHECK_SPLASH = "{0}, over the backsplash", es "{0}, sobre el salpicadero";
    ASK_SPLASH = "Its plate meets the backsplash. Move it up.", es "Su tapa topa con el salpicadero. Muévala arriba.";
    CHECK_DOOR = "{0}, past the casing", es "{0}, pasando la moldura";
    ASK_DOOR = "Its plate meets the casing. Move it along.", es "Su tapa topa con la moldura. Muévala a un lado.";
    CHECK_LOW = "{0}, lower part, over its floor", es "{0}, parte baja, sobre su piso";
    CHECK_HIGH = "{0}, upper part, over its floor", es "{0}, parte alta, sobre su piso";
    CHECK_BACK = "Box front behind the finish", es "Frente de la caja atrás del acabado";
    PROUD_OF = "It stands out past the finish: its plate won't sit.", es "Sale más allá del acabado: su tapa no asienta.";

    STEP_FLOOR = "Line over {0}, finished", es "Línea sobre {0}, terminado";
    STEP_HIGH = "Line over the highest", es "Línea sobre el más alto";
    STEP_PART = "Lower part, of the lowest box", es "Parte baja, de la caja más baja";

    DEAD = "Dead, and proved dead, before a box or a cable in the wall is touched.", es "Sin corriente, y comprobado sin corriente, antes de tocar una caja o un cable en la pared.";
    LICENSED = "Where the law says so, a licensed electrician places and wires boxes; local amendments go first.", es "Donde la ley lo dice, un electricista con licencia ubica y conecta las cajas; los cambios locales van primero.";
    CUT = "Old board, plaster and paint can hold asbestos and lead: tested before anybody cuts.", es "La tablaroca, el yeso y la pintura viejos pueden tener asbesto y plomo: se analizan antes de que alguien corte.";

    DRAWING = "The wall from the room, to scale", es "La pared desde el cuarto, a escala";
    MEANS_LINE = "The level line", es "La línea a nivel";
    MEANS_FLOOR = "A finished floor", es "Un piso terminado";
    MEANS_SEAM = "The board's seam", es "La junta de hojas";
    MEANS_BOX = "A box", es "Una caja";
    LABEL_LINE = "line", es "línea";
    LABEL_SEAM = "seam", es "junta";
    TWIN_BOX = "{0}: {1}.", es "{0}: {1}.";
    TWIN_FLOOR = "{0}: finished {1} below the line.", es "{0}: terminado {1} abajo de la línea.";
}
