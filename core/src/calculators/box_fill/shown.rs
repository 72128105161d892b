//! What a person reads of a box's answer.

use crate::words;

words! {
    FILL = "Box fill", es "Llenado de caja";
    FILL_SIDE = "Fill, side {0}", es "Llenado, lado {0}";
    VOLUME = "Volume of the box", es "Volumen de la caja";
    VOLUME_SIDE = "Volume, side {0}", es "Volumen, lado {0}";
    SPARE = "To spare", es "Sobra";
    FREE_NEEDED = "Free wire to leave", es "Alambre libre por dejar";
    SETBACK = "Box behind the surface", es "Caja detrás de la superficie";
    DEPTH = "Depth of the box", es "Fondo de la caja";
    FREE = "Free wire at the box", es "Alambre libre en la caja";
    STANDS_PROUD = "The box stands out past the surface. The plate needs it flush, or the box set deeper.", es "La caja sale de la superficie. La placa la necesita al ras, o la caja más adentro.";

    NEXT_OVER = "Over by {0}. Least work that fits it: {1}.", es "Se pasa por {0}. Lo de menos trabajo para que quepa: {1}.";
    NEXT_TAKE_OUT = "Over by {0}. Take something out, or use a bigger box.", es "Se pasa por {0}. Saque algo, o ponga una caja más grande.";

    // Each item's share.
    SHARES = "What takes the room", es "Qué ocupa el espacio";
    SHARES_SIDE = "What takes the room, side {0}", es "Qué ocupa el espacio, lado {0}";
    SHARE_CABLES = "{0} × {1}: {2} {2?conductor|conductors}", es "{0} × {1}: {2} {2?conductor|conductores}";
    SHARE_WIRES = "{0} × {1}: {2}", es "{0} × {1}: {2}";
    SHARE_CLAMPS = "Clamps inside, all together, as {0}", es "Abrazaderas adentro, todas juntas, como {0}";
    SHARE_SUPPORT = "{0}, as {1}", es "{0}, como {1}";
    SHARE_DEVICES = "{0} × {1} on {2}", es "{0} × {1} con {2}";
    SHARE_DEVICES_LARGEST = "{0} × {1}, counted as {2}, the largest here", es "{0} × {1}, cuenta como {2}, el más grueso aquí";
    SHARE_DEVICES_WIDE = "{0} × {1}, {3} gangs, on {2}", es "{0} × {1}, {3} gangs, con {2}";
    SHARE_DEVICES_WIDE_LARGEST = "{0} × {1}, {3} gangs, counted as {2}, the largest here", es "{0} × {1}, {3} gangs, cuenta como {2}, el más grueso aquí";
    ASSUMED = "{0} counted as {1}, the largest here; say what is on it.", es "{0} cuenta como {1}, el más grueso aquí; diga qué lleva conectado.";
    ASSUMED_ALL = "Devices counted as {0}, the largest here; say what is on each.", es "Los dispositivos cuentan como {0}, el más grueso aquí; diga qué lleva cada uno.";
    SHARE_GROUNDS = "{0} {0?ground|grounds}, largest {1}", es "{0} {0?tierra|tierras}, la más gruesa {1}";
    SHARE_ISOLATED = "{0} isolated {0?ground|grounds}, largest {1}", es "{0} {0?tierra aislada|tierras aisladas}, la más gruesa {1}";
    SHARE_BLOCKS = "{0} terminal {0?block|blocks} on {1}", es "{0} {0?bloque|bloques} de terminales con {1}";
    SHARE_INSIDE = "{0} × {1} {0?pigtail|pigtails}: stays inside, counts none", es "{0} × {1} {0?cola (pigtail)|colas (pigtails)}: se queda adentro, no cuenta";
    SHARE_CANOPY_OUT = "{0} × {1} from the canopy: may be left out", es "{0} × {1} de la campana: se puede no contar";
    SHARE_CANOPY_IN = "{0} × {1} from the canopy: more than four, all counted", es "{0} × {1} de la campana: más de cuatro, se cuentan todos";
    SHARE_NO_DEVICE_WIRE = "{0} × {1}: no wire in the box yet", es "{0} × {1}: todavía no hay alambre en la caja";
    CANOPY_ASK = "More than four small light fixture (luminaire) wires: the exception no longer fits. All are counted here, the cautious reading.", es "Más de cuatro alambres delgados de lámpara (luminaria): la excepción ya no aplica. Aquí se cuentan todos, la lectura prudente.";
    SHORT_STUD = "Stud", es "Stud";
    SHORT_HEAVY = "Range", es "Estufa";
    SHORT_WIRES = "{0} wires", es "alambres {0}";
    SHORT_CABLES = "{0}×{1}", es "{0}×{1}";
    SHORT_CLAMPS = "Clamps", es "Abrazaderas";
    SHORT_GROUNDS = "Grounds", es "Tierras";
    SHORT_ISOLATED = "Isolated", es "Aisladas";
    SHORT_BLOCKS = "Blocks", es "Bloques";

    // What else would fit.
    ROOM = "What else would fit", es "Qué más cabría";
    ROOM_SIDE = "What else would fit, side {0}", es "Qué más cabría, lado {0}";
    ROOM_NOTE = "Each line alone, with its ground as in today's cable.", es "Cada renglón solo, con su tierra como en el cable de hoy.";
    ROOM_CABLES = "More {0}", es "Más {0}";
    ROOM_COUNT = "{0}", es "{0}";
    ROOM_NONE = "none", es "ninguno";
    ROOM_DEVICE = "One more device, one gang", es "Un dispositivo más, un gang";
    ROOM_YES = "fits by volume", es "cabe por volumen";

    // Boxes that would hold it.
    SUITS = "Boxes that hold it", es "Cajas donde cabe";
    SUITS_NOTE = "The smallest that do, without rings. Depth is looked at where you gave it.", es "Las más chicas que alcanzan, sin aros. El fondo se revisa donde usted lo dio.";
    SUITS_MARKED = "Any box marked", es "Cualquier caja marcada";
    SUITS_OR_MORE = "{0} or more", es "{0} o más";
    SUITS_GANGS = "{0}, {1} ganged", es "{0}, {1} unidas";
    SUITS_HOLD = "{0} of {1}", es "{0} de {1}";

    // Mends.
    MENDS = "What would make it fit", es "Qué haría que cupiera";
    MENDS_NOTE = "Least work first. Each was worked through and fits by volume. What to have on hand is for the first one.", es "Primero lo de menos trabajo. Cada una se calculó y cabe por volumen. Lo que debe tener a la mano es para la primera.";
    MEND_RING = "a ring or cover marked {0} or more", es "un aro o tapa marcado {0} o más";
    MEND_EXTENSION = "an extension ring, {0}", es "una extensión, {0}";
    MEND_BOX = "a deeper box, {0}", es "una caja más honda, {0}";
    MEND_MARKED = "a box marked {0} or more; in a finished wall a cut-in (old-work) one", es "una caja marcada {0} o más; en pared terminada, una old-work (para cortar y meter)";
    MEND_CUT_IN = "a cut-in (old-work) box marked {0} or more", es "una caja old-work (para cortar y meter) marcada {0} o más";
    MEND_CUT_IN_WIDER = "a cut-in (old-work) box, {0}-gang, marked {1} or more", es "una caja old-work (para cortar y meter), de {0} gangs, marcada {1} o más";
    MEND_OPENS = "{0} (in an old wall: test before you cut)", es "{0} (en pared vieja: haga la prueba antes de cortar)";
    MEND_GANG = "the same box, {0} ganged", es "la misma caja, {0} unidas";
    MEND_OTHER = "another box, {0}", es "otra caja, {0}";

    // Working.
    STEP_VOLUME = "Volume of the box", es "Volumen de la caja";
    STEP_TOTAL = "Volume for this side", es "Volumen de este lado";
    STEP_SPARE = "To spare", es "Sobra";
    STEP_FREE = "Free wire to leave", es "Alambre libre por dejar";
    STEP_SETBACK = "Box behind the surface", es "Caja detrás de la superficie";

    // Materials.
    BOX_MARKED = "Box, marked {0} or more, {1}-gang", es "Caja, marcada {0} o más, gangs: {1}";
    BOX_METAL = "Box, {0}", es "Caja, {0}";
    RING_MARKED = "Ring or cover, marked {0} or more", es "Aro o tapa, marcado {0} o más";
    RING_EXTENSION = "Extension ring, {0}", es "Extensión, {0}";

    // Cautions.
    DEAD = "Turn the breaker off and lock it. Test every wire to every other and to ground, with a meter you prove on a live source before and after.", es "Apague el breaker y póngale candado. Pruebe cada alambre contra cada otro y contra tierra, con un probador que usted compruebe en una fuente viva antes y después.";
    TWO_CIRCUITS = "A box may hold two circuits. A white wire may be hot. A stick tester alone is no proof.", es "Una caja puede tener dos circuitos. Un alambre blanco puede estar vivo. Un probador de lápiz solo no es prueba.";
    OLD_WALL = "Changing a box may cut an old wall. Plaster, board and mud may hold asbestos, paint from before 1978 lead. Have it tested before you cut, and leave it alone until you know.", es "Cambiar una caja puede cortar una pared vieja. El yeso, la tablaroca y la pasta pueden tener asbesto; la pintura de antes de 1978, plomo. Mándelos analizar antes de cortar, y no los toque hasta saber.";
    LICENSED = "Wiring is a licensed electrician's where the law says so. Nothing is energized before inspection.", es "El cableado es de un electricista con licencia donde la ley lo dice. No se energiza nada antes de la inspección.";
    NOT_ALL = "Fill within the limit is not the whole of a box: listing, depth, cover, support and heat count too. The inspector's edition decides.", es "Un llenado dentro del límite no es todo en una caja: también cuentan el listado, el fondo, la tapa, el soporte y el calor. Decide la edición del inspector.";
    OLD_WIRING = "Cable with a thin ground or none is old. Aluminum, knob and tube, brittle insulation or no ground: stop, and hand over to the electrician.", es "El cable con tierra delgada o sin tierra es viejo. Aluminio, perilla y tubo (knob and tube), aislante quebradizo o sin tierra: pare, y entréguelo al electricista.";
    DEAD_SAYS = "Prove dead with a tester that is itself proved before and after.", es "Compruebe que no hay corriente con un probador que a su vez se comprueba antes y después.";
    DEAD_SEEN = "read in a published checklist that quotes OSHA 1910.333(b)(2)", es "leído en una lista publicada que cita OSHA 1910.333(b)(2)";

    // The drawing.
    SECTION = "The box in section on its back, filled to scale by volume", es "La caja en corte sobre su espalda, llena a escala por volumen";
    SECTION_OPEN = "front", es "frente";
    OUTLINE = "The box, cut", es "La caja, cortada";
    LABEL = "{0} {1}", es "{0} {1}";
    LABEL_OVER = "over {0}", es "pasa {0}";
    LABEL_SPARE = "spare {0}", es "sobra {0}";
    TWIN_BOX = "The box is {0} wide and {1} deep, on its back with the front up.", es "La caja mide {0} de ancho y {1} de fondo, sobre su espalda con el frente arriba.";
    TWIN_BOX_MARKED = "The depth was not given: the box is drawn {0} wide, and as deep as its volume asks if it is {1} tall.", es "No se dio el fondo: la caja se dibuja de {0} de ancho, y tan honda como pide su volumen si mide {1} de alto.";
    TWIN_LAYER = "{0}: {1}.", es "{0}: {1}.";
    TWIN_OVER = "{0} stands above the front: over.", es "{0} quedan arriba del frente: excede.";
    TWIN_SPARE = "{0} is left at the front.", es "{0} quedan libres al frente.";
}
