//! All that a person reads of a room once it is worked out.

use crate::words;

words! {
    PRESSURE = "Room pressure, door shut, at most", es "Presión del cuarto, puerta cerrada, máximo";
    PRESSURE_LOW = "Room pressure, door shut, pulled no lower than", es "Presión del cuarto, puerta cerrada, no baja de";
    PRESSURE_WC = "The same in inches of water", es "Lo mismo en pulgadas de agua";
    BACK = "Air that has to get back", es "Aire que tiene que regresar";
    BACK_IN = "Air that has to come in past the door", es "Aire que tiene que entrar por la puerta";
    TOTAL = "Net open area", es "Área neta abierta";
    UNDERCUT = "Under the door, net", es "Bajo la puerta, área neta";
    NEEDED = "Net area needed", es "Área neta que se necesita";
    MISSING = "Net area missing", es "Área neta que falta";
    FACE = "Grille face that adds it", es "Cara de rejilla que la agrega";
    PASSES = "Air it passes at the limit", es "Aire que pasa en el límite";
    JUMP = "Jump duct that adds it", es "Ducto puente (jump duct) que la agrega";
    RETURN_NET = "Return grille, net", es "Rejilla de retorno, área neta";
    RETURN_FACE = "Return grille, face", es "Rejilla de retorno, cara";
    WAY = "Way {0}, net", es "Paso {0}, área neta";
    WAY_GRILLES = "Way {0}, its two grilles, net", es "Paso {0}, sus dos rejillas, área neta";
    WAY_DUCT = "Way {0}, lost in its duct and boots", es "Paso {0}, pérdida en su ducto y botas";
    WAY_BOOTS = "Way {0}, its two boots, in velocity pressures", es "Paso {0}, sus dos botas, en presiones de velocidad";
    WAY_AIR = "Way {0}, air where both losses are the room's", es "Paso {0}, aire donde las dos pérdidas son la del cuarto";

    CHECK = "Room pressure, leaks not counted", es "Presión del cuarto, sin contar fugas";
    CHECK_LOW = "Room pulled below the house, leaks not counted", es "Cuarto jalado abajo de la casa, sin contar fugas";
    LEAKS = "No room is tight: its leaks pass some of it, so that less is measured. With the door shut and the blower on, a gauge tells.", es "Ningún cuarto es hermético: por sus fugas pasa una parte, y se mide menos. Con la puerta cerrada y el soplador andando, lo dice un manómetro.";
    CHECK_SHUT = "As good as shut, net open area", es "Como cerrado, área neta abierta";
    CHECK_OWN = "Air its own return takes", es "Aire que toma su propio retorno";
    OWN_MORE = "It takes more than the room gets: with the door shut it pulls the room low, and a flue in it backward. Give it more or take less. Ask the HVAC sub.", es "Toma más de lo que recibe el cuarto: con la puerta cerrada baja la presión del cuarto y jala al revés una chimenea que esté en él. Dele más o tome menos. Pregunte al contratista de clima.";
    CHECK_SPEED = "Air through a transfer grille's face", es "Aire por la cara de una rejilla de paso";
    CHECK_RETURN_SPEED = "Air through the return grille", es "Aire por la rejilla de retorno";
    CHECK_FLAME = "Open flame to the return", es "De la llama abierta al retorno";
    LOUD = "A habit, for noise. A larger grille is quieter.", es "Una costumbre, por el ruido. Una rejilla más grande suena menos.";

    STEP_ONE = "Passes at 1 Pa", es "Pasa a 1 Pa";

    NEXT_SHORT = "Short by {0} net: a grille face of {1}, or the door cut {2} higher.", es "Faltan {0} netas: una cara de rejilla de {1}, o la puerta cortada {2} más arriba.";
    NEXT_STOP = "Stop before you change a return near an open flue: have it tested for spillage with every fan on and doors shut.", es "Pare antes de cambiar un retorno cerca de una chimenea abierta: que prueben si regresa gases, con todos los extractores prendidos y las puertas cerradas.";
    NEXT_LOOK = "Look first for an open-flue appliance that shares air with the return.", es "Busque primero un aparato de chimenea abierta que comparta el aire con el retorno.";
    ADD_PART = "Any one of these brings it within", es "Cualquiera de estas lo deja dentro";
    ADD_GRILLE = "One grille, face", es "Una rejilla, cara";
    ADD_PAIR = "Two grilles, a cavity between, each face", es "Dos rejillas, un hueco en medio, cada cara";
    ADD_JUMP = "Jump duct, short, its friction not counted", es "Ducto puente, corto, sin contar su fricción";
    ADD_GAP = "Gap under the door, in all", es "Espacio bajo la puerta, en total";
    AMOUNT = "{0}", es "{0}";
    COMPARED = "By every rule, and the published table", es "Por cada regla, y la tabla publicada";
    NEEDS_NET = "{0} net", es "{0} netas";
    TABLE_ROW = "RR-0005 table, 3 Pa, its row for {0}", es "Tabla de RR-0005, 3 Pa, su fila para {0}";
    OLD_RULE = "This undercut by an older rule, 60 cfm an inch", es "Este espacio por una regla vieja, 60 cfm por pulgada";
    FLORIDA_PART = "By Florida's sizes instead of a test", es "Por las medidas de Florida en vez de una prueba";
    FLORIDA_FACE = "Transfer grille, face, with {0} under the door", es "Rejilla de paso, cara, con {0} bajo la puerta";
    FLORIDA_DUCT = "Or a transfer duct, with that gap", es "O un ducto de paso, con ese espacio";
    FLORIDA_TIMES = "1.5 × the supply duct's area", es "1.5 × el área del ducto de salida";

    DRAWING = "The wall from the side, door shut, heights to scale", es "La pared de lado, puerta cerrada, alturas a escala";
    MEANS_WALL = "Wall", es "Pared";
    MEANS_DOOR = "Door", es "Puerta";
    MEANS_WAY = "Air's way out", es "Paso del aire hacia afuera";
    ROOM = "room, {0} at most", es "cuarto, {0} a lo más";
    SHUT_ROOM = "room, as good as shut", es "cuarto, como cerrado";
    HOUSE = "house, 0 Pa", es "casa, 0 Pa";
    UNDER = "under the door {0}", es "bajo la puerta {0}";
    OVER = "way {0}: {1}", es "paso {0}: {1}";
    TWIN_ROOM = "The room is at {0} at most against the house.", es "El cuarto está a {0} a lo más contra la casa.";
    TWIN_UNDER = "Under the door: {0}.", es "Bajo la puerta: {0}.";
    TWIN_WAY = "Way {0}: {1}.", es "Paso {0}: {1}.";

    CARPET = "Carpet and pad close the gap: count what is left over the finished floor.", es "Alfombra y bajoalfombra cierran el espacio: cuente lo que queda sobre el piso terminado.";
    DOWN = "Shut the air handler down and lock it out before you open a duct.", es "Apague la manejadora y póngale candado antes de abrir un ducto.";
    OLD = "Old tape, wrap and boots can hold asbestos, old doors and trim lead paint. Leave them whole until they are tested.", es "La cinta, la envoltura y las botas viejas pueden tener asbesto, las puertas y molduras viejas pintura con plomo. Déjelas enteras hasta que se analicen.";
    FIRE = "Don't cut a transfer opening into a rated wall, or a garage's. Local code decides.", es "No corte una abertura de paso en una pared con clasificación de fuego, ni en la de un garaje. Decide el código local.";
}
