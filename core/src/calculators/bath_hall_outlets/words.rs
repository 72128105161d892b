//! All that a person reads of receptacles in baths, halls, foyers and laundries.

use crate::words;

words! {
    NAME = "Receptacles in bath, hall and laundry", es "Contactos en baño, pasillo y lavandería";
    ABOUT = "How many these need, how near a basin, and how far from a tub or shower by edition", es "Cuántos piden, qué tan cerca de un lavabo, y qué tan lejos de una tina o regadera por edición";
    NOTHING = "", es "";

    BASINS = "Basins of one bathroom", es "Lavabos de un baño";
    BASINS_HINT = "Each with the receptacle nearest to it: one may serve two.", es "Cada uno con su contacto más cercano: uno puede servir a dos.";
    BASIN = "Basin", es "Lavabo";
    SIDE = "Its outside edge to the receptacle", es "De su orilla de afuera al contacto";
    BELOW = "Receptacle below the basin's top", es "Contacto abajo del borde del lavabo";
    BELOW_HINT = "Level or over it is zero.", es "A su nivel o más arriba es cero.";
    HALLS = "Halls", es "Pasillos";
    HALL = "Hall", es "Pasillo";
    LONG = "Long, along its middle", es "Largo, por su centro";
    AREA = "Foyer, its floor", es "Recibidor, su piso";
    WALLS = "Foyer walls 3 ft wide or more", es "Paredes del recibidor de 3 ft o más";
    LAUNDRY = "There is a laundry area", es "Hay un área de lavandería";
    HAVE = "Receptacles there now, in all of these", es "Contactos ahí ahora, en todos estos";
    TUB = "Receptacle nearest a tub or shower", es "Contacto más cercano a tina o regadera";
    NO_TUB = "None near", es "Ninguno cerca";
    OVER = "In it, or straight over it", es "Adentro, o derecho arriba";
    BESIDE = "Beside it", es "Al lado";
    TUB_SIDE = "Level distance to its rim or threshold", es "Distancia a nivel a su borde o umbral";
    HEIGHT = "How high", es "A qué altura";
    WITHIN = "From the rim to 8 ft over it", es "Del borde hasta 8 ft arriba de él";
    LOW = "Below the rim", es "Abajo del borde";
    HIGH = "More than 8 ft over the rim", es "A más de 8 ft arriba del borde";
    BARRIER = "A wall, door or fixed barrier between", es "Pared, puerta o barrera fija en medio";
    WHY = "no such room of a house takes that.", es "ningún cuarto así de una casa da para eso.";
    NOTHING_IN = "Put in a basin, a hall, a foyer, a laundry or a tub.", es "Ponga un lavabo, un pasillo, un recibidor, una lavandería o una tina.";

    NEEDED = "Receptacles needed, at least", es "Contactos que hacen falta, al menos";
    IN_BATH = "At basins, one may serve two", es "En lavabos, uno puede servir a dos";
    IN_HALLS = "In halls", es "En pasillos";
    IN_FOYER = "In the foyer", es "En el recibidor";
    IN_LAUNDRY = "In the laundry", es "En la lavandería";
    NEXT = "A small count: the rest is where you will plug in.", es "Es una cuenta chica: los demás van donde vaya a enchufar.";
    CHECK_HAVE = "Receptacles there", es "Contactos ahí";
    CHECK_SIDE = "Basin {0}, from its edge", es "Lavabo {0}, desde su orilla";
    CHECK_BELOW = "Basin {0}, below its top", es "Lavabo {0}, abajo de su borde";
    CHECK_OVER = "In or over a tub or shower", es "En una tina o regadera, o arriba";
    CHECK_TUB = "From the tub or shower", es "Desde la tina o regadera";
    SMALL = "Where the bath is too small for that, its receptacle goes on the farthest wall. Ask.", es "Donde el baño es muy chico para eso, su contacto va en la pared más lejana. Pregunte.";

    GFCI = "GFCI in baths and laundries, tamper-resistant everywhere; a bath's own 20 A circuit. From memory: ask.", es "GFCI en baños y lavanderías, tamper-resistant en todas partes; un circuito de 20 A propio del baño. De memoria: pregunte.";
    DEAD = "Dead, and proved dead, before a box or a cable in the wall is touched.", es "Sin corriente, y comprobado sin corriente, antes de tocar una caja o un cable en la pared.";
    LICENSED = "Where the law says so, a licensed electrician adds receptacles; local amendments go first.", es "Donde la ley lo dice, un electricista con licencia agrega contactos; los cambios locales van primero.";
}
