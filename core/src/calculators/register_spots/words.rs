//! All that a person reads of places for a register.

use crate::words;

words! {
    NAME = "Where to put the register", es "Dónde poner la rejilla";
    ABOUT = "Up to four places side by side: how far each throws, returns, alarms and glass", es "Hasta cuatro lugares lado a lado: alcance de cada uno, retornos, alarmas y ventanas";
    NOTHING = "", es "";

    HIGH = "Ceiling height", es "Altura del techo";
    WHY_ROOM = "that is a hall: ask a designer.", es "eso es un salón: pregunte a un diseñador.";
    SPOTS = "Places", es "Lugares";
    SPOTS_HINT = "Today's first: of two as good, the one put in first stays.", es "Primero el de hoy: de dos igual de buenos, se queda el que se puso primero.";
    SPOT = "Place", es "Lugar";
    LABEL = "Call it", es "Nombre";
    LABEL_HINT = "So that it is known again in a week.", es "Para reconocerlo en una semana.";
    HIGH_WALL = "High on a wall", es "En lo alto de la pared";
    FLOOR = "Floor, blows up", es "Piso, sopla hacia arriba";
    ROUND = "Ceiling, all round", es "Techo, en redondo";
    SLOT = "Ceiling slot, one way", es "Ranura de techo, un lado";
    PLACE = "Where", es "Dónde";
    FROM_LEFT = "From the left, along wall 1", es "Desde la izquierda, por la pared 1";
    FROM_TOP = "From wall 1, into the room", es "Desde la pared 1, hacia adentro";
    AIM = "Blows, in the drawing", es "Sopla, en el dibujo";
    UP = "Up, to wall 1's side", es "Arriba, hacia la pared 1";
    DOWN = "Down, away from wall 1", es "Abajo, desde la pared 1";
    RIGHT = "To the right", es "A la derecha";
    LEFT = "To the left", es "A la izquierda";
    SIZE = "Register, in inches", es "Rejilla, en pulgadas";
    VANES = "Vanes", es "Aletas";
    NECK = "Neck of a ceiling one", es "Cuello de la de techo";
    WHY_NECK = "larger than that is no register of a house.", es "ninguna rejilla de casa es más grande.";
    GAP = "Top below the ceiling, high on a wall", es "Tope abajo del techo, en pared alta";
    GAP_HINT = "Within 1 ft it blows along the ceiling.", es "A 1 ft o menos sopla a lo largo del techo.";
    WHY_GAP = "that is no high register.", es "esa no es rejilla alta.";
    CFM = "Its air", es "Su aire";
    WHY_CFM = "no register of a house gives more.", es "ninguna rejilla de casa da más.";
    GUESS = "That is a guess", es "Es al tanteo";
    GUESS_HINT = "A guess is off by a quarter either way.", es "Al tanteo falla un cuarto, para más o para menos.";
    SEASON = "Season that matters", es "Temporada que importa";
    SEASON_HINT = "Heating from above is another matter than cooling.", es "Calentar desde arriba es otra cosa que enfriar.";
    BOTH_SEASONS = "Cooling and heating", es "Frío y calefacción";
    COOLING = "Cooling", es "Frío";
    HEATING = "Heating", es "Calefacción";
    COOL = "Supply against room, cooling", es "Salida contra el cuarto, frío";
    WARM = "Supply against room, heating", es "Salida contra el cuarto, calefacción";
    WHY_DIFFERENCE = "no house blows that.", es "ninguna casa sopla eso.";
    RETURN = "Return", es "Retorno";
    ALARM = "Smoke alarm", es "Alarma de humo";
    WINDOW = "Window", es "Ventana";
    WINDOW_HINT = "The middle of its glass.", es "El centro de su vidrio.";
    FLUE = "Appliance with an open flue", es "Aparato con chimenea abierta";
    FLUE_HINT = "A water heater or furnace that takes its air from the room. A sealed one isn't meant.", es "Un calentador de agua o calefactor que toma su aire del cuarto. No se trata de uno sellado.";
    THERMOSTAT = "Thermostat", es "Termostato";
    IS_THERE = "There is one here", es "Hay uno aquí";

    NO_SPOTS = "Put in one place at least: today's.", es "Ponga al menos un lugar: el de hoy.";
    PAST_ROOM = "That is outside the room, {0} at most. Measure again.", es "Eso queda fuera del cuarto, {0} a lo más. Mida otra vez.";
    IN_NOTCH = "That is outside the walls, in the part that the room doesn't have. Measure again.", es "Eso queda fuera de las paredes, en la parte que el cuarto no tiene. Mida otra vez.";
    NOT_AT_WALL = "It is {0} from the nearest wall, and hangs on one. Put in where that wall is.", es "Está a {0} de la pared más cercana, y cuelga de una. Ponga dónde está esa pared.";
    AT_OWN_WALL = "It hangs on the wall that it blows at. Turn it round.", es "Cuelga de la misma pared a la que sopla. Voltéela.";

    FIRST = "Best place", es "Mejor lugar";
    NUMBER = "{0}", es "{0}";
    NUMBERED = "Place {0}", es "Lugar {0}";
    CALLED = "Place {0}, {1}", es "Lugar {0}, {1}";
    THROW_OF = "Throw to 50 fpm, {0}", es "Alcance a 50 fpm, {0}";
    CHECK_ALARM = "Smoke alarm to the register's edge", es "Alarma de humo a orilla de rejilla";
    CHECK_FLUE = "Return to the open flue", es "Retorno a chimenea abierta";
    IN_STREAM = "Far enough, but in its stream: move one of the two.", es "Bastante lejos, pero en su chorro: mueva una de las dos.";
    CHECK_HEAT = "Heating from above", es "Calefacción desde arriba";
    HEAT_MOVED = "Today's floor register meets the cold air that falls off the glass. From above nothing does: ask the HVAC sub how the room stays warm.", es "La rejilla de piso de hoy topa el aire frío que baja del vidrio. Desde arriba nada lo topa: pregunte al contratista de clima cómo queda caliente el cuarto.";
    HEAT_ABOVE = "Warm air from above stays up there. Ask the HVAC sub.", es "El aire caliente de arriba se queda allá. Pregunte al contratista de clima.";
    ACROSS_OF = "throws {0}, blows at a wall {1} off; {2}.", es "alcanza {0}, sopla a una pared a {1}; {2}.";
    ROUND_OF = "throws {0}, nearest wall {1} off; {2}.", es "alcanza {0}, pared más cercana a {1}; {2}.";
    UP_OF = "throws {0}, ceiling {1} up; {2}.", es "alcanza {0}, techo a {1} arriba; {2}.";
    BEST = "{0} (best): {1}", es "{0} (el mejor): {1}";
    OTHER = "{0}: {1}", es "{0}: {1}";
    TWO = "{0} {1}", es "{0} {1}";
    NO_VERDICT = "An order to talk about, no verdict: the HVAC sub decides.", es "Un orden para platicarlo, no un veredicto: decide el contratista de clima.";

    NEXT_FLUE = "Carbon monoxide kills: the return is {0} from the open flue, and the least is {1}. Before anything moves, have a licensed sub test it under worst-case depressurization.", es "El monóxido de carbono mata: el retorno está a {0} de la chimenea abierta, y lo mínimo es {1}. Antes de mover nada, que un contratista con licencia la pruebe con la despresurización del peor caso.";

    ORDER = "The places, with the reason", es "Los lugares, con la razón";
    ORDER_NOTE = "Alarms count most, then returns, thermostats, throw, heating, speed, glass. As good as another: the one put in first.", es "Lo que más cuenta son las alarmas, luego retornos, termostatos, alcance, calefacción, velocidad, vidrio. Si son iguales: el que se puso primero.";
    RANKED = "{0} of {1}: {2}", es "{0} de {1}: {2}";
    BOTH = "{0}; {1}", es "{0}; {1}";
    CLEAR = "nothing here speaks against it", es "nada habla en contra";
    BY_FLUE = "the return is too near the open flue", es "el retorno está demasiado cerca de la chimenea abierta";
    BY_ALARM = "it is within 36 in of the smoke alarm", es "está a menos de 36 in de la alarma de humo";
    BY_STREAM = "its air meets the smoke alarm", es "su aire da en la alarma de humo";
    BY_RETURN = "the return takes its air straight back", es "el retorno se lleva su aire de inmediato";
    BY_THERMOSTAT = "it blows at the thermostat", es "le sopla al termostato";
    BY_THROW = "its throw fits neither rule", es "su alcance no cumple ninguna regla";
    BY_HEAT = "from above it heats less well", es "desde arriba calienta peor";
    BY_ASK = "its throw is a question: the rules or the range of the air disagree", es "su alcance queda en duda: las reglas o el rango de aire no coinciden";
    BY_FAST = "its air leaves fast, and may be heard", es "su aire sale rápido, y se puede oír";
    BY_GLASS = "it leaves the window alone", es "deja la ventana sin atender";

    ROW_WAY = "Way in front", es "Distancia enfrente";
    ROW_SWEEP = "Of the floor's length it reaches", es "Del largo del piso alcanza";
    ROW_ALARM = "Its edge to the smoke alarm", es "De su orilla a la alarma de humo";
    ROW_RETURN = "To the return", es "Al retorno";
    ROW_GLASS = "To the window", es "A la ventana";


    ESTIMATE = "An estimate to talk with. Its maker's throw figures, local code and the HVAC sub's design go first.", es "Un estimado para platicarlo. Van primero el alcance del fabricante, el código local y el diseño del contratista de clima.";
    OLD_HOLE = "Disconnect the old run at the trunk and patch its hole: a capped stub leaks.", es "Desconecte el tramo viejo en la troncal y tape su agujero: un pedazo tapado en la punta tiene fugas.";
    SHUT_DOWN = "Shut the air handler down and lock it out before you open ducts. Attics: mind falls and heat.", es "Apague la manejadora y póngale candado antes de abrir ductos. Áticos: cuídese de caídas y del calor.";
    OLD = "Old ceilings, duct tape, wrap and boots can hold asbestos, old paint lead. Have them tested before you touch them.", es "Los techos viejos y la cinta, la envoltura y las botas viejas de ductos pueden tener asbesto, y la pintura vieja plomo. Mándelos analizar antes de tocarlos.";

    DRAWING = "Plan, and a section along the best place's jet, to scale", es "Planta, y un corte por el chorro del mejor lugar, a escala";
    MEANS_ROOM = "Walls", es "Paredes";
    MEANS_JET = "Throw to 50 fpm", es "Alcance a 50 fpm";
    MEANS_REGISTER = "A place for the register", es "Un lugar para la rejilla";
    MEANS_OTHER = "What is in the room", es "Lo que hay en el cuarto";
    KEY_PLAN = "from above, wall 1 on top", es "desde arriba, pared 1 arriba";
    KEY_SECTION = "section along {0}", es "corte por {0}";
    R = "R", es "R";
    A = "A", es "A";
    W = "W", es "V";
    F = "F", es "C";
    T = "T", es "T";
    TWIN = "Place {0} throws {1} over a way of {2}.", es "El lugar {0} alcanza {1} en una distancia de {2}.";
    TWIN_OTHER = "{0}: {1}.", es "{0}: {1}.";
}
