//! All that a person reads of a room's air.

use crate::words;

words! {
    NAME = "Air for a room", es "Aire para un cuarto";
    ABOUT = "What its heat asks for in cfm, its share of the system, how often it changes", es "Los cfm que pide su calor, su parte del sistema, cada cuánto cambia";
    NOTHING = "", es "";

    BY = "Its heat", es "Su calor";
    BY_HINT = "The load of the room from a load calculation is the one to go by.", es "Guíese por la carga del cuarto que da un cálculo de carga.";
    KNOWN = "Known, from a load calculation", es "Se sabe, de un cálculo de carga";
    ROUGH = "Rough, heating only", es "Aproximado, solo calefacción";
    LOAD = "Sensible load of the room", es "Carga sensible del cuarto";
    LOAD_HINT = "Heat alone, without what dries the air.", es "Solo calor, sin lo que seca el aire.";
    WHY_LOAD = "that is a house.", es "eso es una casa.";
    DIFFERENCE = "Supply against room", es "Salida contra el cuarto";
    DIFFERENCE_HINT = "Cooling: some 15 to 20 °F. Heating: 30 to 60.", es "Frío: unos 15 a 20 °F. Calefacción: 30 a 60.";
    WARM = "Supply against room, heating", es "Salida contra el cuarto, calefacción";
    WARM_HINT = "Usual 30 to 60 °F: a heat pump's is small, a furnace's large.", es "Lo usual, 30 a 60 °F: la de una bomba de calor es chica, la de un calefactor (furnace) grande.";
    CHECK_WARM = "Supply against room, heating", es "Salida contra el cuarto, calefacción";
    ASK_WARM = "Outside what houses heat with, 30 to 60 °F. Measure it at the register, or ask the HVAC sub.", es "Fuera de lo que calienta una casa, 30 a 60 °F. Mídalo en la rejilla, o pregunte al contratista de clima.";
    WHY_DIFFERENCE = "no house blows that.", es "ninguna casa sopla eso.";
    ALTITUDE = "Above the sea", es "Sobre el nivel del mar";
    WHY_ALTITUDE = "nobody builds there.", es "nadie construye ahí.";
    FLOOR = "Floor area", es "Área del piso";
    WHY_FLOOR = "that is more than a room.", es "eso es más que un cuarto.";
    HEIGHT = "Ceiling height", es "Altura del techo";
    WHY_HEIGHT = "no ceiling of a room hangs there.", es "ningún techo de cuarto está ahí.";
    OUTSIDE = "Room against outdoors", es "Cuarto contra afuera";
    OUTSIDE_HINT = "Room less the coldest design day, from the building department.", es "El cuarto menos el día de diseño más frío, de la oficina de construcción.";
    WHY_OUTSIDE = "no winter is that cold.", es "ningún invierno es tan frío.";
    RUN = "Outside walls, end to end", es "Paredes exteriores, largo total";
    WHY_RUN = "that is more than a room.", es "eso es más que un cuarto.";
    WALL = "Outside wall", es "Pared exterior";
    GLASS_AREA = "Windows", es "Ventanas";
    GLASS = "Glass", es "Vidrio";
    ATTIC = "R over the ceiling", es "R arriba del techo";
    ATTIC_HINT = "Blank: heated rooms above.", es "Vacío: cuartos con calefacción arriba.";
    WHY_ATTIC = "no attic has that.", es "ningún ático tiene eso.";
    LEAKS = "Air changes by leaks", es "Cambios de aire por fugas";
    LEAKS_HINT = "0.3 tight, 0.5 middling, 1 and more leaky. Common practice.", es "0.3 cerrada, 0.5 media, 1 y más con fugas. Costumbre del oficio.";
    WHY_LEAKS = "that is a porch.", es "eso es un porche.";
    SYSTEM = "Air of the system", es "Aire del sistema";
    SYSTEM_HINT = "From its label or the HVAC sub. Blank: its share isn't worked.", es "De su etiqueta o del contratista de clima. Vacío: no se calcula su parte.";
    WHY_SYSTEM = "that is more than a house.", es "eso es más que una casa.";
    HOUSE = "Sensible load of the house", es "Carga sensible de la casa";
    HOUSE_HINT = "By the same reckoning as the room's.", es "Con el mismo cálculo que la del cuarto.";
    TOO_MUCH_GLASS = "Windows take {0}, and the outside walls are {1}. Measure again.", es "Las ventanas ocupan {0}, y las paredes exteriores son {1}. Mida otra vez.";
    MORE_THAN_HOUSE = "The room has {0}, more than the house. Look at both.", es "El cuarto tiene {0}, más que la casa. Revise los dos.";

    AIR = "Air it needs", es "Aire que necesita";
    HEAT = "Its heat", es "Su calor";
    CARRIES = "What 1 cfm carries", es "Lo que lleva 1 cfm";
    DENSITY = "Air, against sea level", es "Aire, contra el nivel del mar";
    VOLUME = "Air in the room", es "Aire en el cuarto";
    VOLUME_HINT = "Blank: floor times height. Under a slope, take it from the room.", es "Vacío: piso por altura. Si el techo es inclinado, tómelo del cuarto.";
    CHANGES_SAID = "Changes of the room's air: {0}. {1}", es "Cambios del aire del cuarto: {0}. {1}";
    CHANGES = "Air changes", es "Cambios de aire";
    A_FOOT = "cfm for each sq ft", es "cfm por cada sq ft";
    SHARE = "Its share of the house", es "Su parte de la casa";
    GIVEN = "Its share of the system's air", es "Su parte del aire del sistema";
    WALLS_LOSE = "Lost through walls", es "Se pierde por paredes";
    GLASS_LOSES = "Lost through glass", es "Se pierde por vidrios";
    CEILING_LOSES = "Lost through the ceiling", es "Se pierde por el techo";
    LEAKS_LOSE = "Lost by leaks", es "Se pierde por fugas";
    CHECK_GIVEN = "Its share of the system, for what it needs", es "Su parte del sistema, para lo que necesita";
    ASK_GIVEN = "Balancing may not give it this. Ask the HVAC sub.", es "Puede que el balanceo no le dé esto. Pregunte al contratista de clima.";
    CHECK_FOOT = "cfm for each sq ft, by plain sense", es "cfm por cada sq ft, por sentido común";
    ASK_FOOT = "Outside what houses take, 0.3 to 1 cfm a sq ft. Look at the load and the difference again.", es "Fuera de lo que toma una casa, 0.3 a 1 cfm por sq ft. Revise la carga y la diferencia.";
    NEXT_ROUGH = "Rough, for heating: no sun, people or floor, so never for cooling. A load calculation (Manual J) goes first.", es "Aproximado, para calefacción: sin sol, gente ni piso, así que nunca para frío. Va primero un cálculo de carga (Manual J).";
    NEXT = "A load calculation, room by room (Manual J), and duct design (Manual D) go first.", es "Van primero un cálculo de carga, cuarto por cuarto (Manual J), y el diseño de ductos (Manual D).";

    NO_SIZING = "Never size equipment or ducts by this. That is a load calculation's and the HVAC sub's.", es "Nunca dimensione equipo ni ductos con esto. Eso es de un cálculo de carga y del contratista de clima.";
    STARVE = "Air that comes in has to get out: a shut door can starve a room whose register is right.", es "El aire que entra tiene que salir: una puerta cerrada puede dejar sin aire un cuarto con buena rejilla.";
    FLUE = "More supply or a changed return can pull flue gas back down an open flue. Have the sub test that.", es "Más salida de aire o un retorno cambiado pueden jalar gas de combustión de regreso por una chimenea abierta. Que el contratista lo pruebe.";
}
