//! All that a person reads of receptacles around a room.

use crate::words;

words! {
    NAME = "Receptacles around a room", es "Contactos alrededor de un cuarto";
    ABOUT = "The fewest that the code asks along the walls, where they go on the studs, and what is missing", es "Los menos que el código pide en las paredes, dónde van en los montantes, y cuántos faltan";
    NOTHING = "", es "";

    BREAKS = "Doors and what else breaks the wall", es "Puertas y lo demás que corta la pared";
    BREAKS_HINT = "Walls are numbered from wall 1, on top in the drawing, clockwise. Cabinets that stay with a countertop on them don't break it.", es "Las paredes se numeran desde la pared 1, arriba en el dibujo, como el reloj. Los gabinetes que se quedan y llevan cubierta no la cortan.";
    BREAK = "Break", es "Corte";
    KIND = "What it is", es "Qué es";
    DOOR = "Doorway", es "Vano de puerta";
    SLIDER = "Sliding glass door", es "Corrediza de vidrio";
    FIREPLACE = "Fireplace", es "Chimenea (hogar)";
    CABINET = "Fixed cabinet", es "Gabinete fijo";
    GLASS = "Fixed glass to the floor", es "Vidrio fijo hasta el piso";
    WALL = "In wall", es "En la pared";
    FROM = "From the wall's left end", es "De la punta izquierda de la pared";
    FROM_HINT = "Facing it from inside, to its nearer edge.", es "Viéndola desde adentro, hasta su orilla más cercana.";
    WIDE = "How wide", es "Qué ancho";
    HAVE = "Receptacles that are there", es "Contactos que ya están";
    HAVE_HINT = "Those along the walls: up to 5-1/2 ft, in no cabinet, over no counter.", es "Los de las paredes: hasta 5-1/2 ft, en ningún gabinete, sobre ninguna cubierta.";
    RECEPTACLE = "Receptacle", es "Contacto";
    AT = "From the wall's left end, to its middle", es "De la punta izquierda de la pared a su centro";
    ON_STUDS = "Beside studs only", es "Solo junto a montantes";
    ON_STUDS_HINT = "Off: a box that is cut in anywhere.", es "Sin marcar: una caja old-work en cualquier lugar.";
    FIRST = "Wall's left end to a stud's middle", es "De punta izquierda a centro de montante";
    SPACING = "Studs apart", es "Separación de montantes";
    THICK = "Stud, thick", es "Montante, grueso";
    BOX = "Box, wide", es "Caja, ancho";
    KEEP = "Off an opening's edge, at least", es "Lejos de la orilla de un vano, al menos";
    KEEP_HINT = "Casing and 1 in, so that the plate clears.", es "La moldura y 1 in, para que libre la tapa.";
    WHY = "no room of a house takes that.", es "ningún cuarto de casa da para eso.";
    SAY_WALL = "Say which wall it is in.", es "Diga en qué pared está.";
    NO_WALL = "There are {0} walls.", es "Hay {0} paredes.";
    PAST_WALL = "That is past the wall's end, {0} from its left.", es "Eso pasa de la punta de la pared, a {0} de su izquierda.";

    FEWEST = "The code's fewest", es "Lo menos del código";
    THERE = "Along the walls now", es "En las paredes ahora";
    MISSING = "Missing", es "Faltan";
    SPACES = "Wall spaces that need one", es "Espacios de pared que piden uno";
    FEWEST_STUDS = "Fewest on your studs", es "Lo menos en sus montantes";
    FEWEST_FITS = "Fewest where a box fits", es "Lo menos donde cabe una caja";
    FLOOR = "The code's floor is {0}", es "El mínimo del código es {0}";
    FLOOR_STUDS = "{0} by code, {1} on your studs", es "{0} por código, {1} en sus montantes";
    FLOOR_FITS = "{0} by code, {1} where a box fits", es "{0} por código, {1} donde cabe una caja";
    NEXT_NEW = "{0}. That is the fewest, not a design: add where you will plug in.", es "{0}. Eso es lo menos, no un diseño: agregue donde vaya a enchufar.";
    NEXT_HAVE = "{0}; you have {1}, and {2} {2?is|are} missing with those that stay.", es "{0}; usted tiene {1}, y {2?falta|faltan} {2} con los que se quedan.";
    NO_DOOR = "No doorway is put in: the walls are taken to start and end where wall 1 starts.", es "No se puso ningún vano de puerta: se toma que las paredes empiezan y terminan donde empieza la pared 1.";
    BOTH = "{0} {1}", es "{0} {1}";

    CHECK = "Receptacles missing", es "Contactos que faltan";
    NO_PLACE = "There is wall with no place for a box within 6 ft: a floor box within 18 in of the wall, or another place.", es "Hay pared sin lugar para una caja en 6 ft: una caja de piso a 18 in o menos de la pared, u otro lugar.";

    SPOTS = "Where they go", es "Dónde van";
    EXTRA = "Where the missing ones go", es "Dónde van los que faltan";
    NUMBER = "{0}", es "{0}";
    SPOT = "wall {0}, {1} from its left end", es "pared {0}, a {1} de su punta izquierda";
    STAY = "Those that are there", es "Los que ya están";
    STAYS = "wall {0}, {1}: may stay", es "pared {0}, {1}: se puede quedar";
    IN_BREAK = "wall {0}, {1}: stands in an opening, and goes", es "pared {0}, {1}: queda en un vano, y se quita";
    NOT_NEEDED = "wall {0}, {1}: may stay; no space there needs one", es "pared {0}, {1}: se puede quedar; ningún espacio ahí pide uno";
    PER_SPACE = "Wall spaces", es "Espacios de pared";
    SPACE = "Space {0}", es "Espacio {0}";
    SPACE_OF = "{0} from wall {1} on: {2}", es "{0} desde la pared {1}: {2}";
    SHORT_OF = "{0} from wall {1} on: under 2 ft, none", es "{0} desde la pared {1}: menos de 2 ft, ninguno";
    STEP = "Space {0}, at least", es "Espacio {0}, al menos";
    STUDS_NOTE = "Studs are reckoned from each wall's left end. Find them before you cut.", es "Los montantes se cuentan desde la punta izquierda de cada pared. Encuéntrelos antes de cortar.";
    NOT_COUNTED = "Not counted: in a cabinet, over 5-1/2 ft up, part of a light, over a counter, a floor box more than 18 in off the wall, or one whose switched half lights the room.", es "No se cuentan: en un gabinete, a más de 5-1/2 ft de alto, parte de una luz, sobre una cubierta, una caja de piso a más de 18 in de la pared, o uno cuya mitad con apagador alumbra el cuarto.";
    ALSO = "Tamper-resistant all of them; a new or longer circuit mostly takes an AFCI. Ask which edition holds.", es "Todos tamper-resistant; un circuito nuevo o alargado casi siempre lleva AFCI. Pregunte qué edición vale.";

    DEAD = "Dead, and proved dead, before a box or a cable in the wall is touched.", es "Sin corriente, y comprobado sin corriente, antes de tocar una caja o un cable en la pared.";
    CUT = "Old board, plaster and paint can hold asbestos and lead: tested before anybody cuts.", es "La tablaroca, el yeso y la pintura viejos pueden tener asbesto y plomo: se analizan antes de que alguien corte.";
    LICENSED = "Where the law says so, a licensed electrician adds receptacles; local amendments go first.", es "Donde la ley lo dice, un electricista con licencia agrega contactos; los cambios locales van primero.";

    DRAWING = "Plan from above, wall 1 on top, to scale", es "Plano desde arriba, la pared 1 arriba, a escala";
    MEANS_WALL = "A wall", es "Una pared";
    MEANS_NEW = "A receptacle to set", es "Un contacto por poner";
    MEANS_HAVE = "A receptacle that is there", es "Un contacto que ya está";
    LABEL_WALL = "wall {0}", es "pared {0}";
    TWIN = "Receptacle {0}: wall {1}, {2} from its left end.", es "Contacto {0}: pared {1}, a {2} de su punta izquierda.";
    TWIN_BREAK = "{0} in wall {1}, {2} from its left end, {3} wide.", es "{0} en la pared {1}, a {2} de su punta izquierda, {3} de ancho.";
    TWIN_HAVE = "There now: wall {0}, {1} from its left end.", es "Ahora ahí: pared {0}, a {1} de su punta izquierda.";
}
