//! All that a person reads of a register whose ceiling goes up.

use crate::words;

words! {
    NAME = "The same register, after the ceiling goes up", es "La misma rejilla, ya con el techo subido";
    ABOUT = "Throw, drop, heat and air changes, now and to be, of a high wall register that stays", es "Alcance, caída, calor y cambios de aire, ahora y después, de una rejilla alta de pared que se queda";
    NOTHING = "", es "";

    SIZE = "Register, in inches", es "Rejilla, en pulgadas";
    VANES = "Vanes", es "Aletas";
    CFM = "Its air", es "Su aire";
    WHY_CFM = "no register of a house gives more.", es "ninguna rejilla de casa da más.";
    GUESS = "That is a guess", es "Es al tanteo";
    GUESS_HINT = "A guess is off by a quarter either way.", es "Al tanteo falla un cuarto, para más o para menos.";
    NOW = "Ceiling height now", es "Altura del techo ahora";
    TO_BE = "Ceiling height to be", es "Altura del techo nueva";
    WHY_HEIGHT = "no ceiling of a room hangs there.", es "ningún techo de cuarto está ahí.";
    GAP = "Its top, below the ceiling now", es "Su tope, abajo del techo actual";
    GAP_HINT = "Within 1 ft it blows along the ceiling.", es "A 1 ft o menos sopla a lo largo del techo.";
    WHY_GAP = "that is no high register.", es "esa no es rejilla alta.";
    WAY = "To the facing wall", es "Hasta la pared de enfrente";
    WHY_WAY = "that is a hall: ask a designer.", es "eso es un salón: pregunte a un diseñador.";
    FLOOR = "Floor area", es "Área del piso";
    WHY_FLOOR = "that is more than a room.", es "eso es más que un cuarto.";
    RUN = "Outside walls that grow, end to end", es "Paredes exteriores que crecen, largo total";
    WHY_RUN = "that is more than a room.", es "eso es más que un cuarto.";
    WALL = "Those walls", es "Esas paredes";
    OUTSIDE = "Room against outdoors", es "Cuarto contra afuera";
    OUTSIDE_HINT = "Room less the coldest design day.", es "El cuarto menos el día de diseño más frío.";
    WHY_OUTSIDE = "no winter is that cold.", es "ningún invierno es tan frío.";
    LEAKS = "Air changes by leaks", es "Cambios de aire por fugas";
    LEAKS_HINT = "0.3 tight, 0.5 middling, 1 and more leaky. Common practice.", es "0.3 cerrada, 0.5 media, 1 y más con fugas. Costumbre del oficio.";
    WHY_LEAKS = "that is a porch.", es "eso es un porche.";
    COOL = "Supply against room, cooling", es "Salida contra el cuarto, frío";
    WARM = "Supply against room, heating", es "Salida contra el cuarto, calefacción";
    WHY_DIFFERENCE = "no house blows that.", es "ninguna casa sopla eso.";
    NOT_UP = "This is for a ceiling that goes up. Now it is {0}.", es "Esto es para un techo que sube. Ahora está a {0}.";
    TOO_LOW = "Below that ceiling, {0} up, there is no such place.", es "Abajo de ese techo, a {0} de alto, no hay tal lugar.";

    THROW_TO_BE = "Throw to 50 fpm, to be", es "Alcance a 50 fpm, nuevo";
    THROW_LEAST = "The same, at the least air", es "Lo mismo, con el aire mínimo";
    THROW_MOST = "The same, at the most air", es "Lo mismo, con el aire máximo";
    THROW_NOW = "Throw to 50 fpm, now", es "Alcance a 50 fpm, ahora";
    DROP_LEAST = "Cold drop to be, least", es "Caída nueva en frío, mínima";
    DROP_MOST = "Cold drop to be, most", es "Caída nueva en frío, máxima";
    MORE_AIR = "More air in the room", es "Más aire en el cuarto";
    WALL_HEAT = "More heat lost through walls", es "Más calor perdido por paredes";
    LEAK_HEAT = "More heat lost by leaks", es "Más calor perdido por fugas";
    HEAT = "More heat lost in all", es "Más calor perdido en total";
    CHANGES_NOW = "Air changes now", es "Cambios de aire ahora";
    CHANGES_TO_BE = "Air changes to be", es "Cambios de aire, nuevos";
    EXTRA = "More air for that heat", es "Más aire para ese calor";
    LEAVES_CEILING = "It lets go of the ceiling: 0.707 of the throw that it had, and cold air falls.", es "Se despega del techo: 0.707 del alcance que tenía, y el aire frío cae.";
    AND = "{0} {1}", es "{0} {1}";
    STAYS_ON = "It still blows along the ceiling: its throw stays.", es "Sigue soplando a lo largo del techo: su alcance queda igual.";
    WAS_FREE = "It was free of the ceiling before: its throw stays.", es "Ya estaba libre del techo: su alcance queda igual.";
    GAP_TO_BE = "Its top, below the ceiling to be", es "Su tope, abajo del techo nuevo";

    BOTH = "Now and to be", es "Ahora y después";
    BOTH_NOTE = "Warm air pools higher: heat from a high register gets worse, and floor and ceiling differ more. Common practice.", es "El aire caliente se junta más arriba: la calefacción de una rejilla alta empeora, y piso y techo difieren más. Costumbre del oficio.";
    ROW_THROW = "Throw to 50 fpm", es "Alcance a 50 fpm";
    ROW_GAP = "Top below the ceiling", es "Tope abajo del techo";
    ROW_VOLUME = "Air in the room", es "Aire en el cuarto";
    ROW_CHANGES = "Air changes", es "Cambios de aire";
    NOW_TO_BE = "{0} now, {1} to be", es "{0} ahora, {1} después";

    ESTIMATE = "An estimate for planning. Its maker's throw figures and the HVAC sub's load calculation go first.", es "Un estimado para planear. Van primero el alcance del fabricante y el cálculo de carga del contratista de clima.";
    TIES = "What ties the walls or carries what is above may not be cut. How a ceiling may go up is a licensed engineer's to say.", es "Lo que amarra las paredes o carga lo de arriba no se puede cortar. Cómo puede subir un techo lo dice un ingeniero con licencia.";
    OLD = "Old ceilings, duct tape, wrap and boots can hold asbestos. Have them tested before you touch them.", es "Los techos viejos y la cinta, la envoltura y las botas viejas de ductos pueden tener asbesto. Mándelos analizar antes de tocarlos.";

    DRAWING = "The register in section, to scale, now and to be", es "La rejilla en corte, a escala, ahora y después";
    OLD_CEILING = "Ceiling now", es "Techo actual";
    ROOM = "Room", es "Cuarto";
    JET_NOW = "Throw now", es "Alcance ahora";
    JET_TO_BE = "Throw to be, with its drop", es "Alcance nuevo, con su caída";
    LABEL_NOW = "now: {0}, dashed", es "ahora: {0}, punteado";
    LABEL_TO_BE = "to be: {0}, toned", es "después: {0}, con tono";
    TWIN = "The ceiling goes from {0} to {1}. The register throws {2} now, {3} to be.", es "El techo pasa de {0} a {1}. La rejilla alcanza {2} ahora, {3} después.";
}
