//! All that a person reads of a cable from box to box.

use crate::words;

words! {
    NAME = "A cable from box to box", es "Un cable de caja a caja";
    ABOUT = "How long to cut it, its staples and holes, what it loses, carries and is kept clear of", es "Qué largo cortarlo, sus grapas y agujeros, lo que pierde, lo que lleva y de qué se aparta";
    NOTHING = "", es "";

    CABLE = "Cable", es "Cable";
    KNOWN = "Its way", es "Su camino";
    OVER = "Up and over", es "Sube y cruza";
    UNDER = "Down and under", es "Baja y cruza";
    PARTS = "Part by part", es "Parte por parte";
    LEVEL = "Floor to where it crosses", es "Del piso a donde cruza";
    LEVEL_HINT = "Plates are added below.", es "Las soleras se anotan más abajo.";
    BELOW = "Floor down to where it crosses", es "Del piso, abajo, a donde cruza";
    FROM_HIGH = "First box, off the floor", es "Primera caja, sobre el piso";
    TO_HIGH = "Last box, off the floor", es "Última caja, sobre el piso";
    HIGH_HINT = "Empty: where it crosses, as a ceiling box is.", es "Vacío: donde cruza, como una caja de techo.";
    ACROSS = "Across", es "A través";
    BORED = "Across through holes", es "A través, por agujeros";
    BORED_HINT = "In studs or joists. Else it is stapled along.", es "En montantes o viguetas. Si no, va engrapado a lo largo.";
    LEGS = "Parts of its way", es "Partes de su camino";
    LEG = "Part", es "Parte";
    WHICH = "Which way", es "Por dónde";
    LENGTH = "Length", es "Largo";
    UP = "Up", es "Sube";
    ALONG = "Along framing", es "Sobre la estructura";
    THROUGH = "Through framing", es "Por agujeros";
    DOWN = "Down", es "Baja";
    WHY_LENGTH = "a longer run is fed from elsewhere.", es "un tramo más largo se alimenta de otro lado.";
    SPACING = "Studs or joists apart", es "Montantes o viguetas cada";
    WHY_SPACING = "framing stands closer.", es "la estructura va más junta.";
    PLATES = "Plates drilled", es "Soleras perforadas";
    PLATES_HINT = "1-1/2 in each. Up and over two double plates: 4.", es "1-1/2 in cada una. Subir y pasar dos soleras dobles: 4.";
    WHY_PLATES = "no way leads through more.", es "ningún camino pasa por más.";
    BIT = "Hole, across", es "Agujero, diámetro";
    DEPTH = "Framing, deep", es "Estructura, peralte";
    DEPTH_HINT = "A 2×4: 3-1/2 in. Holes in the middle of it.", es "Un 2×4: 3-1/2 in. Los agujeros, en medio.";
    WHY_DEPTH = "no framing is that deep.", es "ninguna estructura es tan honda.";
    COVERED = "A steel plate over each hole", es "Placa de acero sobre cada agujero";
    COVERED_HINT = "On each face that is closer than 1-1/4 in and gets board.", es "En cada cara que quede a menos de 1-1/4 in y lleve tablaroca.";
    FROM = "Starts at", es "Empieza en";
    TO = "Goes to", es "Va a";
    HELD = "Boxes with devices", es "Cajas con dispositivos";
    EXTRA_FROM = "Length past the first box", es "Extra en la primera caja";
    EXTRA_TO = "Length past the last box", es "Extra en la última caja";
    EXTRA_HINT = "Empty: the most that crews give it.", es "Vacío: lo más que las cuadrillas le dan.";
    EMERGES = "Sheath end to opening", es "Del forro a la abertura";
    EMERGES_HINT = "Empty: 6 in of free wire is enough.", es "Vacío: bastan 6 in de alambre libre.";
    LOSS = "Bends, sag and loss", es "Vueltas, colgado y merma";
    WHY_LOSS = "measure its way again.", es "mida su camino otra vez.";

    LOAD = "What it feeds", es "Lo que alimenta";
    LOAD_HINT = "For what it loses. Empty: not worked.", es "Por lo que pierde. Vacío: no se calcula.";
    AMPERES = "Load", es "Carga";
    AMPERES_HINT = "What runs at once. Not sure: 80 % of the breaker.", es "Lo que trabaja a la vez. Si no sabe: 80 % del breaker.";
    VOLTS = "Voltage", es "Voltaje";
    V120 = "120 V", es "120 V";
    V240 = "240 V", es "240 V";
    BEFORE = "Cable before it, from the panel", es "Cable antes de él, desde el panel";
    MADE = "Its wires", es "Sus alambres";
    AS_CABLE = "As sold: solid to 10 AWG", es "Como se vende: sólido hasta 10 AWG";
    SOLID = "Solid", es "Sólido";
    STRANDED = "Stranded", es "Trenzado";
    HEAT = "Wires run at", es "Los alambres trabajan a";
    FEEDER = "Lost in the feeder", es "Perdido en el alimentador";
    WHY_FEEDER = "the electrician looks at the feeder first.", es "el electricista ve primero el alimentador.";

    NEAR = "Beside others", es "Junto a otros";
    LIE = "Where they lie closest", es "Donde van más juntos";
    CABLES = "Cables there, with it", es "Cables ahí, con este";
    WHY_CABLES = "spread them.", es "sepárelos.";
    WARMTH = "Warmest it gets", es "Lo más caliente ahí";
    BREAKER = "Breaker", es "Breaker";
    BREAKER_HINT = "Empty: usual for its wire.", es "Vacío: el usual para su alambre.";
    WHY_BREAKER = "that is past a branch in this cable.", es "eso es más que un ramal en este cable.";
    FLAT = "Side by side on one face", es "Lado a lado en una cara";
    FLAT_HINT = "Flat on the framing's edge face, with it.", es "Acostados en el canto de la estructura, contando este.";

    ATTIC = "In the attic", es "En el ático";
    ENTRANCE = "People get up by", es "La gente sube por";
    CROSSING = "Across joists or rafters", es "A través de viguetas o pares";
    CROSSING_HINT = "Over joists, or across rafters within 7 ft above them. Along their sides: none.", es "Sobre viguetas, o atravesado en pares hasta 7 ft arriba de ellas. Por sus lados: nada.";
    HATCH = "Of it, within 6 ft of the hatch", es "De eso, a 6 ft o menos del acceso";
    DECK = "Below a metal roof deck", es "Bajo cubierta de lámina";
    DECK_HINT = "NEC 2026: any deck. Empty: it isn't under one.", es "NEC 2026: toda cubierta. Vacío: no está bajo una.";

    CUT = "Cut it to", es "Córtelo a";
    WAY = "Its way", es "Su camino";
    LOST_LENGTH = "Bends, sag and loss", es "Vueltas, colgado y merma";
    MORE_FROM = "Past the first box", es "Extra, primera caja";
    MORE_TO = "Past the last box", es "Extra, última caja";
    ROLL = "Smallest roll that holds it", es "Rollo más chico donde cabe";
    STAPLES = "Staples", es "Grapas";
    HOLES = "Holes in studs or joists", es "Agujeros, montante o vigueta";
    ONE_WAY = "From the panel, one way", es "Desde el panel, de ida";
    DROP = "Lost at the load", es "Se pierde en la carga";
    SHARE = "Lost, of the voltage", es "Perdido, del voltaje";
    SHARE_ALL = "Lost, with the feeder's", es "Perdido, con el alimentador";
    FARTHEST = "Farthest at 3 %", es "Lo más lejos al 3 %";
    TOGETHER = "It carries, being together", es "Lleva, por ir juntos";
    CARRIES = "It carries", es "Lleva";
    RADIUS = "Bend, inside, at least", es "Doblez, por dentro, mínimo";
    WEIGHT = "Weighs", es "Pesa";
    STRIPS = "Guard strips, both sides", es "Tiras de protección, dos lados";
    GUARDED = "Between guard strips", es "Entre tiras de protección";
    CLEAR = "Wood beside a hole", es "Madera junto al agujero";
    BESIDE = "Edge beside the cables", es "Orilla junto a los cables";
    OF_BREAKER = "Its breaker", es "Su breaker";
    BELOW_DECK = "Below the deck", es "Bajo la cubierta";
    ADVICE = "It loses {0}, past the {1} that is advised: no limit, but lights dim and motors run hot. A thicker wire, or a shorter way.", es "Pierde {0}, más del {1} que se aconseja: no es límite, pero las luces bajan y los motores se calientan. Un alambre más grueso, o un camino más corto.";
    ADVICE_ALL = "With its feeder it loses {0}, past the {1} that is advised: no limit. A thicker wire, or a shorter way.", es "Con su alimentador pierde {0}, más del {1} que se aconseja: no es límite. Un alambre más grueso, o un camino más corto.";
    ASK_PULL_DOWN = "Some inspectors take these as permanent stairs. This guards all of it.", es "Algunos inspectores la toman como escalera fija. Esto protege todo.";
    NEXT_STEEL = "Put steel over each hole, or take a smaller bit.", es "Ponga acero sobre cada agujero, o use una broca más chica.";
    NEXT_FLAT = "Use a stacker, or one cable on each face.", es "Use un separador (stacker), o un cable por cara.";
    NEXT_BREAKER = "It carries less than its breaker: the electrician decides.", es "Lleva menos que su breaker: decide el electricista.";
    NO_WAY = "Say its way.", es "Diga su camino.";
    NO_SUCH = "6 AWG isn't sold solid here: take stranded.", es "El 6 AWG no se vende sólido aquí: tome trenzado.";

    M_CABLE = "{0} cable with ground", es "Cable {0} con tierra";
    M_STAPLE = "Cable staple, for the cable at hand", es "Grapa de cable, para el cable que se usa";
    M_STEEL = "Steel plate over a hole", es "Placa de acero sobre un agujero";
    M_STRIP = "Guard strip, no lower than the cable", es "Tira de protección, no más baja que el cable";

    DRAWING = "Its way from the side, to scale", es "Su camino de lado, a escala";
    LINE = "The cable", es "El cable";
    BOX = "A box", es "Una caja";
    L_UP = "up {0}", es "sube {0}";
    L_ALONG = "along {0}", es "sobre estructura {0}";
    L_THROUGH = "through {0}", es "por agujeros {0}";
    L_DOWN = "down {0}", es "baja {0}";
    TWIN = "{0} of way, cut to {1}.", es "{0} de camino, se corta a {1}.";

    DEAD = "Dead, and proved dead, before you touch old cable: meter proved on a live source before and after. A white wire may be hot, and a shared neutral shocks with one breaker off.", es "Sin corriente, y comprobado sin corriente, antes de tocar cable viejo: medidor comprobado en una fuente viva antes y después. Un alambre blanco puede estar vivo, y un neutro compartido da descarga con un breaker apagado.";
    OLD = "Brittle insulation, aluminum, knob-and-tube or no ground: stop and hand over.", es "Aislante quebradizo, aluminio, perilla y tubo (knob-and-tube) o sin tierra: pare y entregue.";
    LICENSED = "A licensed electrician where the law says so, and no power before the inspection.", es "Un electricista con licencia donde la ley lo dice, y nada de corriente antes de la inspección.";
}
