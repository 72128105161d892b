//! What a person reads of a plan's answer.

use crate::words;

words! {
    // On top, and the figures.
    OVER_OPEN = "{0}, {1} open", es "{0}, {1} por resolver";
    OVER = "Over, of {0} {0?box|boxes}, {1} {1?circuit|circuits}, {2} {2?hole|holes}", es "Exceden, de {0} {0?caja|cajas}, {1} {1?circuito|circuitos}, {2} {2?agujero|agujeros}";
    NEXT_OVER = "{0} is over by {1}: a bigger box, or a cable less.", es "{0} se pasa por {1}: una caja más grande, o un cable menos.";
    COUNT_BOXES = "Boxes", es "Cajas";
    COUNT_CABLES = "Cables", es "Cables";
    LENGTH = "Cable in all, to cut", es "Cable en total, a cortar";
    KIND = "{0} in all, to cut", es "{0} en total, a cortar";
    CUT_OF = "{0}, cut", es "{0}, corte";
    GROUNDS_ALL = "{0}, {1} {1?ground|grounds}: all count one", es "{0}, {1} {1?tierra|tierras}: todas cuentan una";
    GROUNDS_FOUR = "{0}, {1} {1?ground|grounds}: up to four count one", es "{0}, {1} {1?tierra|tierras}: hasta cuatro cuentan una";
    GROUNDS_PAST = "{0}, {1} grounds: one, and a quarter for each past four", es "{0}, {1} tierras: una, y un cuarto por cada una después de cuatro";
    STAPLES = "Staples, power cables", es "Grapas, cables de corriente";
    STAPLE_CLAMPED = "First staple, from the edge of a box that clamps it", es "Primera grapa, desde la orilla de una caja que lo abraza";
    STAPLE_SINGLE = "First staple, from a one-gang plastic box without clamps", es "Primera grapa, desde una caja de plástico de un gang sin abrazaderas";
    TIGHTEST = "To spare in {0}", es "Sobra en {0}";
    FILL_OF = "{0}, fill", es "{0}, llenado";
    DROP_OF = "Lost on circuit {0}", es "Perdido en circuito {0}";
    SHARE_OF = "Of its voltage", es "De su voltaje";

    // Checks.
    CHECK_FILL = "{0}, fill", es "{0}, llenado";
    CHECK_GANGS = "{0}, gangs of devices", es "{0}, gangs de dispositivos";
    CHECK_REACHED = "{0}, cables that reach it", es "{0}, cables que le llegan";
    CHECK_ENDS = "{0}, cables with both ends in it", es "{0}, cables con las dos puntas en ella";
    CHECK_APART = "{0}, signal cables with power", es "{0}, cables de señal con corriente";
    CHECK_BREAKER = "Circuit {0}, breaker on its thinnest wire", es "Circuito {0}, breaker en su alambre más delgado";
    CHECK_ASSUMED = "Circuit {0}, breaker as assumed, on its thinnest wire", es "Circuito {0}, breaker supuesto, en su alambre más delgado";
    CHECK_CARRIES = "Circuit {0}, its thinnest wire carries", es "Circuito {0}, lo que lleva su alambre más delgado";
    CHECK_LOAD = "Circuit {0}, load", es "Circuito {0}, carga";
    CHECK_LOOP = "Circuit {0}, loops", es "Circuito {0}, lazos";
    CHECK_FED = "Circuit {0}, cables that no panel feeds", es "Circuito {0}, cables que ningún panel alimenta";
    CHECK_DIFFER = "Circuit {0}, breakers besides the largest", es "Circuito {0}, breakers además del mayor";
    CHECK_TAKEN = "Hole {0}, taken", es "Agujero {0}, ocupado";
    CHECK_HOLE = "Hole {0}, {1} carries", es "Agujero {0}, lo que lleva {1}";
    CHECK_CIRCUIT = "Hole {0}, {1} of circuit {2} carries", es "Agujero {0}, lo que lleva {1} del circuito {2}";
    CHECK_LENGTHS = "Cables without a length", es "Cables sin largo";
    CHECK_HOLES = "Power cables that leave a box together, no hole named", es "Cables de corriente que salen juntos de una caja, sin agujero nombrado";
    CHECK_SEVERAL = "{0}, breakers to turn off", es "{0}, breakers por apagar";
    ASK_SEVERAL = "{0} holds circuits {1} and {2}: it is dead when all of them are.", es "{0} lleva los circuitos {1} y {2}: está sin corriente cuando lo están todos.";
    CHECK_NAMED = "Power cables without a circuit", es "Cables de corriente sin circuito";
    CHECK_UNCOUNTED = "Not counted yet", es "Todavía sin contar";
    ASK_UNCOUNTED = "{0}: all here is without.", es "{0}: aquí todo va sin eso.";
    NEXT_UNCOUNTED = "Not counted yet: {0}.", es "Todavía sin contar: {0}.";
    LESS_BOXES = "{0} {0?box|boxes} without a label", es "{0} {0?caja|cajas} sin etiqueta";
    LESS_CABLES = "{0} {0?cable|cables} without an end", es "{0} {0?cable|cables} sin punta";
    LESS_HOLES = "{0} {0?hole|holes} without a label", es "{0} {0?agujero|agujeros} sin etiqueta";
    THESE = "{0}, {1}", es "{0}, {1}";
    ASK_BREAKER = "{0} is assumed: read its breaker and put it in.", es "Se supone {0}: lea su breaker y anótelo.";
    ASK_VOLUME = "Its volume isn't said: read its stamp and put it in.", es "No se dijo su volumen: lea su estampado y anótelo.";
    ASK_REACHED = "No cable reaches it.", es "No le llega ningún cable.";
    ASK_ENDS = "Both ends in one box: name the other box.", es "Las dos puntas en una caja: nombre la otra caja.";
    ASK_APART = "A barrier, or a box of their own.", es "Una división, o una caja propia.";
    ASK_LOOP = "It comes back on itself: {0}. What it loses isn't worked.", es "Regresa a sí mismo: {0}. No se calcula lo que pierde.";
    ASK_FED = "Nothing leads there from a panel.", es "Nada le llega desde un panel.";
    ASK_DIFFER = "Its cables name several breakers. The largest counts.", es "Sus cables nombran varios breakers. Cuenta el mayor.";
    ASK_LENGTHS = "{0}. Type their way, or both boxes' places and heights. No length here counts them.", es "{0}. Escriba su camino, o los lugares y alturas de las dos cajas. Ningún largo de aquí los cuenta.";
    ASK_NAMED = "{0}. Their breaker isn't checked.", es "{0}. No se revisa su breaker.";
    ASK_HOLES = "No hole named: bundling is not looked at.", es "Sin agujero nombrado: no se revisa el agrupamiento.";
    LOSES = "Circuit {0} loses {1} at {2}", es "El circuito {0} pierde {1} en {2}";
    ADVICE_DROP = "{0}. Past the 3 % that is advised: no limit, unless a local code makes it one. A thicker wire, or a shorter way, loses less.", es "{0}. Más del 3 % que se aconseja: no es límite, salvo que un código local lo haga. Un alambre más grueso, o un camino más corto, pierde menos.";
    ASK_TAKEN = "It fits tight: about half free is common, so sheaths don't burn.", es "Queda apretado: lo común es la mitad libre, para que no se quemen los forros.";
    ASK_SIZE = "Some cable's size isn't known here: lay them in.", es "Aquí no se conoce el tamaño de algún cable: métalos para ver.";
    TOO_SMALL = "They don't go in. Another hole, or a larger one.", es "No caben. Otro agujero, o uno más grande.";

    // Parts.
    BOXES = "Boxes, the tightest first", es "Cajas, primero la más justa";
    BOX_ROW = "{0} {1}", es "{0} {1}";
    BOX_SERVES = "{0} {1}, {2}", es "{0} {1}, {2}";
    FILL_ROW = "{0} of {1} in³, {2} {2?cable|cables}: {3}", es "{0} de {1} in³, {2} {2?cable|cables}: {3}";
    AND = "{0} | {1}", es "{0} | {1}";
    OFF_FLOOR = "{0} off the floor", es "{0} sobre el piso";
    PLACE = "{0} from the left, {1} from the back", es "{0} de la izquierda, {1} del fondo";
    NO_VOLUME = "{0} taken, {1} {1?cable|cables}: volume not said", es "{0} ocupado, {1} {1?cable|cables}: no se dijo el volumen";
    PANEL_ROW = "{0} {0?cable|cables}", es "{0} {0?cable|cables}";
    WITHIN = "within", es "dentro";
    IS_OVER = "over", es "excede";
    SCHEDULE = "Cable schedule", es "Lista de cables";
    SCHEDULE_NOTE = "Cut to: up to the whole inch. What isn't marked is planned.", es "Cortar a: hasta la pulgada entera siguiente. Lo que no tiene marca está planeado.";
    RUN_HEAD = "Cable, feeds", es "Cable, alimenta";
    CIRCUIT_HEAD = "Circuit", es "Circuito";
    KIND_HEAD = "Kind", es "Tipo";
    CUT_HEAD = "Cut to", es "Cortar a";
    HOLES_HEAD = "Holes", es "Hoyos";
    RUN_FEEDS = "{0}: {1}", es "{0}: {1}";
    TO = "{0} → {1}", es "{0} → {1}";
    TO_COIL = "{0} → coiled", es "{0} → enrollado";
    TO_COIL_AT = "{0} → coiled: {1}", es "{0} → enrollado: {1}";
    NOT_SAID = "not said", es "no se dijo";
    NONE = "–", es "–";
    LABELS = "Labels to write", es "Etiquetas por escribir";
    LABELS_NOTE = "On each end: box, where from or to, circuit, feeds, cable.", es "En cada punta: caja, de dónde o a dónde, circuito, alimenta, cable.";
    AT = "{0}", es "{0}";
    LABEL = "{0} {1} {2} | {3} | {4} | {5}", es "{0} {1} {2} | {3} | {4} | {5}";
    LABEL_ROLE = "{0} {1} {2} | {3} | {4} | {5} | {6}", es "{0} {1} {2} | {3} | {4} | {5} | {6}";
    COILED = "coiled", es "enrollado";
    COILED_AT = "coiled: {0}", es "enrollado: {0}";
    FEED_IN = "feed in", es "alimentación, entra";
    FEED_OUT = "feed out", es "alimentación, sale";
    TRAVELERS = "travelers", es "viajeros";
    SWITCH_LEG = "switch leg", es "retorno del apagador";
    CIRCUITS = "Circuits", es "Circuitos";
    CIRCUIT = "Circuit {0}, {1}", es "Circuito {0}, {1}";
    CIRCUIT_ROW = "{0} {0?cable|cables}, {1} of way", es "{0} {0?cable|cables}, {1} de camino";
    CIRCUIT_LOAD = "{0} {0?cable|cables}, {1} of way, feeds {2}", es "{0} {0?cable|cables}, {1} de camino, alimenta {2}";
    CIRCUIT_DROP = "{0} {0?cable|cables}, {1} of way, feeds {2}, loses {3} ({4}) at {5}", es "{0} {0?cable|cables}, {1} de camino, alimenta {2}, pierde {3} ({4}) en {5}";
    HOLES = "Holes", es "Agujeros";
    HOLE = "{0}", es "{0}";
    HOLE_BIT = "{0} bit", es "broca de {0}";
    NO_BIT = "bit not said", es "no se dijo la broca";
    HOLE_TAKEN = "{0} taken", es "{0} ocupado";
    HOLE_UNREAD = "{0} taken, less {1} {1?cable|cables} of unknown size", es "{0} ocupado, sin {1} {1?cable|cables} de tamaño desconocido";
    HOLE_LESS = "each carries {0} of its table value", es "cada uno lleva {0} de su valor de tabla";
    BUYS = "What to buy", es "Qué comprar";
    BUYS_NOTE = "Rolls that hold every cable whole, with the least left that was found.", es "Rollos donde cada cable sale entero, con el menor sobrante que se encontró.";
    BUY_ROW = "{0}", es "{0}";
    BUY_ROLLS = "{0}: {1}; {2} left", es "{0}: {1}; sobran {2}";
    ROLL = "{0} × {1}", es "{0} × {1}";
    JOIN = "{0} + {1}", es "{0} + {1}";
    TESTED = "Tested dead", es "Comprobado sin corriente";
    TESTED_NOTE = "A note, no safe state, and not for paper: a breaker may be on again.", es "Es una nota, no un estado seguro, y no va en papel: un breaker puede estar prendido otra vez.";
    DEAD_ROW = "Tested dead {0}: prove again before you touch it.", es "Comprobado sin corriente {0}: compruebe otra vez antes de tocarlo.";
    LIVE_ROW = "Tested dead {0}, power restored {1}: it is live.", es "Comprobado sin corriente {0}, corriente repuesta {1}: está vivo.";
    LIVE_ONLY = "Power restored {0}: it is live.", es "Corriente repuesta {0}: está vivo.";
    WHEN_BY = "{0} by {1}", es "{0} por {1}";

    M_CABLE = "{0} cable with ground", es "Cable {0} con tierra";
    M_ROLL = "{0}, roll of {1}", es "{0}, rollo de {1}";
    PLACES = "Where boxes go", es "Dónde van las cajas";
    M_SIGNAL = "{0} cable", es "Cable de {0}";
    M_STAPLE = "Cable staple, for the cable at hand", es "Grapa de cable, para el cable que se usa";

    // Drawing.
    DRAWING = "Boxes at their places, from above; what is over is hatched", es "Las cajas en su lugar, desde arriba; lo que se pasa va rayado";
    A_BOX = "A box", es "Una caja";
    OVER_BOX = "A box that is over", es "Una caja que se pasa";
    A_CABLE = "A cable", es "Un cable";
    TWIN = "{0}: {1} from the left, {2} from the back.", es "{0}: a {1} de la izquierda, a {2} del fondo.";

    DEAD = "Dead, and proved dead with a meter that was tried on a live source before and after. A white wire may be hot, a box may hold two circuits, and a shared neutral shocks with one breaker off.", es "Sin corriente, y comprobado sin corriente con un medidor que se probó en una fuente viva antes y después. Un alambre blanco puede estar vivo, una caja puede tener dos circuitos, y un neutro compartido da descarga con un breaker apagado.";
    OLD = "Brittle insulation, aluminum, knob-and-tube or no ground: stop and hand over.", es "Aislante quebradizo, aluminio, perilla y tubo (knob-and-tube) o sin tierra: pare y entregue.";
    LICENSED = "A licensed electrician where the law says so, and no power before the inspection.", es "Un electricista con licencia donde la ley lo dice, y nada de corriente antes de la inspección.";
    NOT_ALL = "Fill within its limit isn't all: listing, depth, cover and support count too.", es "Un llenado dentro de su límite no es todo: también cuentan el listado, el fondo, la tapa y el soporte.";
}
