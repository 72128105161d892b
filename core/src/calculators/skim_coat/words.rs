//! All that a person reads of a skim coat.

use crate::words;

words! {
    NAME = "Skim coat", es "Capa delgada (skim)";
    ABOUT = "Compound by the coat, blade passes and lanes, hours, and water that has to dry out", es "Pasta por mano, pasadas y franjas de la espátula, horas, y el agua que tiene que salir";
    NOTHING = "", es "";

    LONG = "Long", es "Largo";
    WIDE = "Wide", es "Ancho";
    WHY_ROOM = "that is more than a room; work it in parts.", es "es más que un cuarto; hágalo por partes.";
    AREA = "Its surface, where it is no rectangle", es "Su superficie, si no es un rectángulo";
    AREA_HINT = "Blank: long times wide. Another area has no lanes told.", es "Vacío: largo por ancho. Con otra área no se dicen franjas.";
    GROUND = "What is skimmed", es "Sobre qué va";
    GROUND_HINT = "A level 5 skim evens out color and grain: it levels nothing.", es "Un skim de nivel 5 empareja el color y el grano: no nivela nada.";
    THICK = "One coat, wet", es "Una mano, mojada";
    WHY_THICK = "compound that thick sags and cracks: fill first.", es "pasta tan gruesa se cuelga y se agrieta: rellene primero.";
    COATS = "Coats", es "Manos";
    COATS_HINT = "Two level a scraped ceiling; they take turns along and across.", es "Dos nivelan un techo raspado; van alternadas, a lo largo y a través.";
    WHY_COATS = "board over it instead.", es "mejor ponga tablaroca encima.";
    BLADE = "Blade", es "Espátula";
    BLADE_HINT = "For lanes; hours are told for any blade.", es "Para las franjas; las horas valen para cualquier espátula.";
    WHY_BLADE = "nobody holds a wider one.", es "nadie sostiene una más ancha.";
    OVERLAP = "Lanes overlap", es "Las franjas se enciman";
    WHY_OVERLAP = "that is a blade's width.", es "eso es el ancho de una espátula.";
    WIPED = "Laid on, then wiped: two strokes a lane", es "Se pone y luego se limpia: dos pasadas por franja";
    SAND = "Sanded at the end", es "Se lija al final";
    WASTE = "Lost", es "Se pierde";
    WHY_WASTE = "look for the leak.", es "busque la fuga.";
    OLD = "Under it", es "Debajo";
    OLD_HINT = "Sanding and feathering cut into it.", es "Lijar y difuminar lo cortan.";
    TOO_FAR_OVER = "Less than the blade, {0}.", es "Menos que la espátula, {0}.";

    GALLONS = "Compound, wet, all coats", es "Pasta, mojada, todas las manos";
    GALLONS_ON = "Compound, wet, {0} {0?coat|coats} on {1}", es "Pasta, mojada, {0} {0?mano|manos} en {1}";
    LOW = "All coats, at least", es "Todas las manos, al menos";
    HIGH = "All coats, at most", es "Todas las manos, como máximo";
    COAT = "One coat, wet, on the surface", es "Una mano, mojada, en la superficie";
    SURFACE = "Surface", es "Superficie";
    FILM = "A coat's wet film", es "Película mojada de una mano";
    PASSES = "Lanes, along the long side", es "Franjas, por el lado largo";
    PASSES_ACROSS = "Lanes, next coat, across", es "Franjas, la mano siguiente, a través";
    TRAVEL = "The blade's way, all coats", es "Recorrido de la espátula, todas las manos";
    WEIGHT = "Its weight, ready-mixed", es "Su peso, lista para usar";
    WATER = "Water in it, to dry out", es "Agua que trae, por secar";
    PAILS_STEP = "Pails", es "Cubetas";
    PAILS = "Pails of {0}", es "Cubetas de {0}";
    PAILS_MOST = "Pails of {0}, at most", es "Cubetas de {0}, como máximo";
    HOURS = "One worker's hours", es "Horas de un trabajador";
    HOURS_LOW = "A quick worker's hours", es "Horas de un trabajador rápido";
    HOURS_HIGH = "A slow worker's hours", es "Horas de un trabajador lento";
    BY_COAT = "Coat by coat", es "Mano por mano";
    COAT_NUMBER = "Coat {0}", es "Mano {0}";
    COAT_ALONE = "{0}", es "{0}";
    COAT_ALONG = "{0}, {1} {1?lane|lanes} along", es "{0}, {1} {1?franja|franjas} a lo largo";
    COAT_ACROSS = "{0}, {1} {1?lane|lanes} across", es "{0}, {1} {1?franja|franjas} a través";

    M_COMPOUND = "Compound, ready-mixed, for skimming", es "Pasta, lista para usar, para skim";

    NEXT = "Each coat dries before the next. Look along it with a lamp before you sand.", es "Cada mano se seca antes de la siguiente. Mírela de lado con una lámpara antes de lijar.";
    PRIME = "Prime torn or fuzzed paper and chalky paint first: bare paper drinks the first coat and blisters.", es "Selle primero el papel roto o peludo y la pintura que suelta polvo: el papel desnudo se chupa la primera mano y hace ampollas.";
    DUST = "Sanding dust is fine and may hold silica: a vacuum sander, or wet, in a fit-tested N95 at least.", es "El polvo de lijar es fino y puede tener sílice: lijadora con aspiradora, o en húmedo, con un N95 con prueba de ajuste al menos.";
    WET = "Power off at ceiling boxes; a soaked board sags.", es "Corriente apagada en las cajas del techo; una hoja empapada se pandea.";
    LADDER = "Overhead work from a platform, never from an upturned pail.", es "Trabajo arriba de la cabeza desde una plataforma, nunca sobre una cubeta volteada.";

    DRAWING = "Lanes of the first coat, to scale", es "Franjas de la primera mano, a escala";
    LANE = "A lane", es "Una franja";
    ACROSS = "{0} across", es "{0} a través";
    TWIN = "{0} {0?lane|lanes} along {1}, side by side over {2}.", es "{0} {0?franja|franjas} a lo largo de {1}, lado a lado en {2}.";
    TWIN_SOME = "The first {0} are drawn.", es "Se dibujan las primeras {0}.";
}
