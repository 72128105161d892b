//! What a person reads of a cut's answer.

use crate::words;

words! {
    HOLE = "Hole", es "Agujero";
    NOTCH = "Notch", es "Muesca";
    PAPERS = "Paper to get first", es "Papel a conseguir primero";

    // Checks.
    SIZE = "Size, for the structure", es "Tamaño, para la estructura";
    EDGE = "Wood at the nearer edge", es "Madera en la orilla más cercana";
    EDGE_JOIST = "Wood to top or bottom", es "Madera arriba o abajo";
    NONE_PASSES = "None passes; wood to top or bottom", es "Ninguno pasa; madera arriba o abajo";
    OFF = "{0}, bit off its mark", es "{0}, broca fuera de su marca";
    INSIDE = "Hole and bit off its mark, between the faces", es "Agujero y broca fuera de su marca, entre las caras";
    IN_A_ROW = "Doubled studs in a row", es "Montantes dobles seguidos";
    SECTION = "Notches at the hole", es "Muescas junto al agujero";
    APART_HOLE = "Wood to the next hole", es "Madera al siguiente agujero";
    APART_NOTCH = "Wood to the next notch", es "Madera a la siguiente muesca";
    LENGTH = "Length of the notch", es "Largo de la muesca";
    CUT_AWAY = "Gone at one section", es "Lo quitado en una sección";
    SUM = "All holes together", es "Todos los agujeros juntos";
    TIE = "Length of the tie", es "Largo del amarre";
    BARE = "Wood before a steel plate", es "Madera antes de llevar placa";
    STEEL = "Steel plates", es "Placas de acero";
    AT_HAND = "Papers at hand", es "Papeles a la mano";

    ASK_WALL = "This wall's plans or the inspector come first: bracing, fire rating or load may ask more.", es "Primero los planos de esta pared o el inspector: el arriostre, el fuego o la carga pueden pedir más.";
    ASK_WORDS = "More than half. The rule's words are for pipes and ducts in exterior and bearing walls: ask whether it is tied all the same.", es "Más de la mitad. La regla habla de tubos y ductos en paredes exteriores y de carga: pregunte si de todos modos se amarra.";
    ASK_SOLE = "More than half, and no rule is printed for a sole plate: ask how both ends are held.", es "Más de la mitad, y no hay regla impresa para la solera inferior: pregunte cómo se sujetan las dos puntas.";
    ASK_OFF = "On its mark it is within the rule; {0} off it, it isn't. Mark it and start it true.", es "En su marca está dentro de la regla; a {0} de ella, no. Márquelo y empiece derecho.";
    ASK_INSIDE = "It may break out of a face: it is a notch then. Move it, or ask for it as a notch.", es "Puede salirse por una cara: entonces es muesca. Muévalo, o pregunte por él como muesca.";
    ASK_PLACE = "Say where along the span: in the middle third no notch is allowed.", es "Diga en qué parte del claro: en el tercio de en medio no se permite muesca.";
    ASK_THICK = "What is 4 in thick or more is notched on its tension side, mostly its bottom, only at its ends: ask.", es "La de 4 in de grueso o más se muesca en su lado de tensión, casi siempre abajo, solo en las puntas: pregunte.";
    ASK_SHEATHED = "The exception needs wood structural panel over that whole side of the wall. Show it to the inspector.", es "La excepción pide panel estructural de madera en todo ese lado de la pared. Muéstreselo al inspector.";
    ASK_SUM = "Holes at other sections don't add up by the words. Some inspectors add them: ask before you leave the tie out.", es "Los agujeros en otras secciones no se suman, según el texto. Algunos inspectores los suman: pregunte antes de dejar sin amarre.";
    ASK_APART = "Common practice keeps them a hole's width apart.", es "La costumbre del oficio los separa el ancho de un agujero.";
    SEVERED = "Nothing is sure to be left across the plate. A tie alone is no remedy: use wider framing, go round, or ask.", es "No es seguro que quede algo a lo ancho de la solera. Un amarre solo no lo remedia: use madera más ancha, rodee o pregunte.";
    ENGINEER_NOTE = "A licensed engineer's paper says where and how large.", es "El papel de un ingeniero con licencia dice dónde y de qué tamaño.";
    PAPER_NOTE = "Only the maker's literature or a registered designer's paper says where and how large.", es "Solo la literatura del fabricante o el papel de un diseñador registrado dice dónde y de qué tamaño.";
    TIE_NOTE = "Then a steel tie, {0} or longer, {1} nails on each side.", es "Entonces un amarre de acero, de {0} o más largo, {1} clavos en cada lado.";

    // What to do.
    NEXT_PAPER = "Get the paper first. This page gives no numbers for it.", es "Consiga primero el papel. Esta página no da números para esto.";
    NEXT_HERE = "Largest here: {0}.", es "Lo más grande aquí: {0}.";
    NEXT_MOVE = "None passes here. In the middle up to {0}.", es "Aquí no pasa ninguno. En medio, hasta {0}.";
    NEXT_NONE = "No hole passes. Run over it, round it, or on a board beside it.", es "No pasa ningún agujero. Vaya por encima, alrededor, o sobre una tabla al lado.";
    NEXT_TIE = "Tie it: steel {0} long or longer, {1} nails each side.", es "Amárrela: acero de {0} de largo o más, {1} clavos por lado.";
    NEXT_STEEL = "The structure takes it. Put steel on {0}.", es "La estructura lo aguanta. Ponga acero en {0}.";
    NEXT_ASK = "{0} Then steel on {1}.", es "{0} Luego acero en {1}.";
    NEXT_FACES = "Put steel on {0}.", es "Ponga acero en {0}.";
    TOP_EDGE = "the top", es "la orilla de arriba";
    BOTTOM_EDGE = "the bottom", es "la orilla de abajo";
    BOTH_EDGES = "top and bottom", es "las orillas de arriba y abajo";
    NEAR_FACE = "the face you measure from", es "la cara de donde mide";
    FAR_FACE = "the other face", es "la otra cara";
    BOTH_FACES = "both faces", es "las dos caras";
    OPEN_FACE = "the notch", es "la muesca";

    // What may be drilled.
    MAY = "What may I drill?", es "¿Qué puedo perforar?";
    MAY_CUT = "What may I cut?", es "¿Qué puedo cortar?";
    MAY_NOTE = "In sixteenths, with the bit as far off its mark as it may be.", es "En dieciseisavos, con la broca lo más fuera de su marca que puede estar.";
    SOLE_NOTE = "No rule is printed for a sole plate. Up to half its width is advice.", es "No hay regla impresa para la solera inferior. Hasta la mitad de su ancho es consejo.";
    PLATE_NOTE = "A top plate has no limit of its own: up to half its width it needs no tie.", es "La solera superior no tiene límite propio: hasta la mitad de su ancho no necesita amarre.";
    HERE = "Largest bit here", es "Broca más grande aquí";
    CENTERED = "Largest bit in the middle", es "Broca más grande en medio";
    HERE_BARE = "Largest here without a steel plate", es "La más grande aquí sin placa de acero";
    CENTERED_BARE = "Largest in the middle without a steel plate", es "La más grande en medio sin placa de acero";
    WINDOW = "Center of this bit, off the face", es "Centro de esta broca, desde la cara";
    WINDOW_TOP = "Center of this bit, from the top", es "Centro de esta broca, desde arriba";
    WINDOW_PLATE = "Center of this bit, no tie needed", es "Centro de esta broca, sin amarre";
    WINDOW_BARE = "The same without a steel plate", es "Lo mismo sin placa de acero";
    DEEPEST = "Deepest notch", es "Muesca más honda";
    LONGEST = "Longest notch", es "Muesca más larga";
    FROM_TO = "{0} to {1}", es "{0} a {1}";
    IS = "{0}", es "{0}";
    NONE = "none", es "no hay";

    STEEL_TAKES = "Steel plates it takes", es "Placas de acero que lleva";

    // Figures and working.
    SHARE = "Of the width", es "Del ancho";
    LIMIT = "Largest by its width", es "Lo más grande por su ancho";
    CLEAR = "Wood on the side measured from", es "Madera del lado de donde se mide";
    CLEAR_FAR = "Wood on the other side", es "Madera del otro lado";
    CLEAR_TOP = "Wood over it, from the top", es "Madera arriba, desde el tope";
    CLEAR_BOTTOM = "Wood under it", es "Madera abajo de él";
    CLEAR_EACH = "Wood on each side", es "Madera de cada lado";
    TIE_LEAST = "Shortest tie", es "Amarre más corto";
    THIRD_FROM = "Middle third, from", es "Tercio de en medio, desde";
    THIRD_TO = "Middle third, to", es "Tercio de en medio, hasta";

    // On hand.
    STEEL_CABLE = "Steel plate for cable, 1/16 in or listed", es "Placa de acero para cable, 1/16 in o listada";
    STEEL_PIPE = "Steel plate for pipe, 16 gauge", es "Placa de acero para tubo, calibre 16";
    TIE_STEEL = "Galvanized tie, 1-1/2 in wide, 0.054 in thick", es "Amarre galvanizado, 1-1/2 in de ancho, 0.054 in de grueso";
    NAILS = "10d nails, 0.148 × 1-1/2 in", es "Clavos 10d, 0.148 × 1-1/2 in";
    SEALANT = "Approved fireblock fill, a hole", es "Relleno cortafuego aprobado, un agujero";

    COUNTED_BARE = "Counted as bare framing: if anything old covers it, choose that. {0}", es "Se cuenta como estructura sin tapar: si la tapa algo viejo, elíjalo. {0}";
    BEHIND = "Know what is behind: prove wiring dead and find pipes before the bit goes in.", es "Sepa qué hay atrás: compruebe los cables sin corriente y halle los tubos antes de meter la broca.";
    NO_PROOF = "Within a limit is no proof of strength. A moved, sistered or already cut member, and any bearing change, is an engineer's.", es "Estar dentro de un límite no prueba resistencia. Una pieza movida, reforzada al lado o ya cortada, y todo cambio de apoyo, es de un ingeniero.";
    NOT_A_TIE = "A plate against nails is not the tie, unless its maker says so. One tie or one a plate: see the code's figure with the inspector.", es "Una placa contra clavos no es el amarre, salvo que su fabricante lo diga. Un amarre o uno por solera: vea con el inspector la figura del código.";
    LOCAL = "Local code and the inspector decide.", es "Deciden el código local y el inspector.";

    // The drawing.
    DRAWING = "The wood lying, what is measured from on top, and its section", es "La madera acostada, arriba el lado de donde se mide, y su sección";
    WOOD = "The wood", es "La madera";
    SECTION_CUT = "The wood, cut at the hole", es "La madera, cortada en el agujero";
    ZONE = "No hole's edge here", es "Aquí ninguna orilla de agujero";
    ZONE_BARE = "A hole's edge here takes steel", es "Una orilla de agujero aquí lleva acero";
    WINDOW_INK = "Where the center may be", es "Donde puede ir el centro";
    VIEW_SIDE = "along the bit", es "a lo largo de la broca";
    VIEW_SECTION = "in section", es "en sección";
    KEY_ZONE = "hatched: no hole's edge, {0}", es "rayado: ninguna orilla de agujero, {0}";
    KEY_BARE = "shaded: takes steel, {0}", es "sombreado: lleva acero, {0}";
    KEY_HOLE = "hole {0}", es "agujero {0}";
    KEY_NOTCH = "notch {0} deep", es "muesca {0} de fondo";
    KEY_LONG = "and {0} long", es "y {0} de largo";
    KEY_CLEAR = "left {0}, {1}", es "quedan {0}, {1}";
    KEY_WINDOW = "bar: center {0} to {1}", es "barra: centro {0} a {1}";
    KEY_CENTER = "bar: center at {0}", es "barra: centro a {0}";
    TWIN = "{0}, {1} wide.", es "{0}, {1} de ancho.";
    TWIN_HOLE = "A hole of {0}, {1} of wood on one side and {2} on the other.", es "Un agujero de {0}, {1} de madera en un lado y {2} en el otro.";
    TWIN_NOTCH = "A notch {0} deep and {1} long.", es "Una muesca de {0} de fondo y {1} de largo.";
    TWIN_WINDOW = "The center of this bit may be {0} to {1} off the face.", es "El centro de esta broca puede ir de {0} a {1} desde la cara.";
    TWIN_DEEP = "{0}, {1} deep.", es "{0}, {1} de peralte.";
    TWIN_TOP = "The center of this bit may be {0} to {1} from the top.", es "El centro de esta broca puede ir de {0} a {1} desde arriba.";
    TWIN_HALF = "Wherever it is, it takes more than half.", es "Donde sea que vaya, quita más de la mitad.";
    TWIN_NO_WINDOW = "This bit may be nowhere in it.", es "Esta broca no puede ir en ninguna parte.";
}
