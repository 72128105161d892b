//! All that a person reads of boards and their cuts.

use crate::words;

words! {
    NAME = "Boards and their cuts", es "Hojas de tablaroca y sus cortes";
    ABOUT = "How many boards, how each is cut, and where it hangs, on a ceiling or a wall", es "Cuántas hojas, cómo se corta cada una y dónde va, en un techo o una pared";
    NOTHING = "", es "";

    OF = "To board", es "Tablaroca en";
    CEILING = "A ceiling", es "Un techo";
    WALL = "A wall", es "Una pared";
    WALL_LONG = "Wall, end to end", es "Pared, de punta a punta";
    HIGH = "Floor to ceiling", es "De piso a techo";
    HIGH_HINT = "To the board of the ceiling: ceilings go up first.", es "Hasta la tablaroca del techo: los techos van primero.";
    GAP = "Left open at the floor", es "Hueco abierto en el piso";
    GAP_HINT = "So that board stays off the floor and dry.", es "Para que la tablaroca no toque el piso y quede seca.";
    WHY_GAP = "a baseboard doesn't cover that.", es "un zoclo no tapa eso.";
    WHY_LONG = "that is more than a room; work it in parts.", es "es más que un cuarto; hágalo por partes.";
    OPENINGS = "Doors and windows", es "Puertas y ventanas";
    OPENINGS_HINT = "As framed. Board hangs over what takes a part of a row, and is cut out.", es "Medida de la estructura. La tablaroca pasa por encima de lo que ocupa parte de una hilera, y se recorta.";
    OPENING = "Opening", es "Vano";
    DOOR = "Door", es "Puerta";
    WINDOW = "Window", es "Ventana";
    FROM_LEFT = "From the wall's left end", es "Desde la punta izquierda de la pared";
    OPENING_WIDE = "Wide", es "Ancho";
    SILL = "Its lower edge over the floor", es "Su orilla de abajo, sobre el piso";
    SILL_HINT = "Nothing for a door.", es "Nada para una puerta.";
    OPENING_HIGH = "High", es "Alto";
    OVERLAPS = "Lies over opening {0}: measure each from the wall's left end.", es "Se encima con el vano {0}: mida cada uno desde la punta izquierda de la pared.";
    PAST_EDGE = "Past the wall: no more than {0}.", es "Pasa de la pared: no más de {0}.";
    RUN = "Boards run", es "Las hojas corren";
    RUN_HINT = "Across the joists or studs: wall 1's way, or on a wall level, is the first.", es "Cruzando las viguetas o los montantes: por la pared 1, o en una pared a nivel, es la primera opción.";
    RUN_ALONG = "Along wall 1, or level", es "Por la pared 1, o a nivel";
    RUN_SQUARE = "Square to wall 1, or upright", es "A escuadra de la pared 1, o paradas";
    SPACING = "Framing under their ends, apart", es "Apoyos bajo sus puntas, separación";
    SPACING_HINT = "Center to center along the boards. Where boards run along the joists: the backing that you put in. Upright on a wall: its studs.", es "A centros, a lo largo de las hojas. Si las hojas corren con las viguetas: el refuerzo que usted pone. Paradas en una pared: sus montantes.";
    WHY_SPACING = "no board spans that.", es "ninguna hoja libra ese claro.";
    FIRST = "The first one's center", es "El centro del primero";
    FIRST_HINT = "From where the boards start; nothing where it stands at the wall.", es "Desde donde empiezan las hojas; nada si está pegado a la pared.";
    MEMBERS = "Centers as measured", es "Centros como se midieron";
    MEMBERS_HINT = "Uneven framing: each center from where the boards start, in the place of both figures above.", es "Estructura dispareja: cada centro desde donde empiezan las hojas, en lugar de los dos datos de arriba.";
    MEMBER = "Member", es "Apoyo";
    CENTER = "Its center", es "Su centro";
    PANEL = "Board", es "Hoja";
    BOARD_WIDE = "Wide", es "Ancho";
    W48 = "48 in", es "48 in";
    W54 = "54 in", es "54 in";
    STOCK = "Lengths the shop has", es "Largos que hay en la tienda";
    L8 = "8 ft", es "8 ft";
    L9 = "9 ft", es "9 ft";
    L10 = "10 ft", es "10 ft";
    L12 = "12 ft", es "12 ft";
    L14 = "14 ft", es "14 ft";
    L16 = "16 ft", es "16 ft";
    L16_HINT = "Few shops keep it: order ahead.", es "Pocas tiendas la tienen: pídala antes.";
    LONGEST = "The longest that gets in", es "La más larga que entra";
    LONGEST_HINT = "Through the door, round the hall, up the stair. Blank: any.", es "Por la puerta, la vuelta del pasillo, la escalera. Vacío: cualquiera.";
    WHY_LONGEST = "no longer ones are made.", es "no se hacen más largas.";
    LEAST = "No piece shorter than", es "Ningún pedazo más corto que";
    LEAST_HINT = "Unless its row is.", es "A menos que su hilera lo sea.";
    WHY_LEAST = "that is a board.", es "eso es una hoja.";
    SPARE = "Spare boards, of the longest", es "Hojas de más, de la más larga";
    SPARE_HINT = "For one that breaks or is cut wrong: in what is bought, not in the plan.", es "Por si una se rompe o se corta mal: van en la compra, no en el plano.";
    WHY_SPARE = "look at the plan again.", es "revise otra vez el plano.";
    OVER = "Over an old surface", es "Sobre una superficie vieja";
    OVER_HINT = "Not on bare framing: screws go through it.", es "No sobre estructura limpia: los tornillos la atraviesan.";
    OLD = "Under it", es "Debajo";
    WANT = "What matters most", es "Qué importa más";
    WANT_NEAR = "Few joints and few boards", es "Pocas juntas y pocas hojas";
    WANT_HINT = "Few joints and few boards: the fewest end joints for one board more at most.", es "Pocas juntas y pocas hojas: las menos juntas de punta con una hoja más como máximo.";
    WANT_BOARDS = "Fewest boards", es "Menos hojas";
    WANT_JOINTS = "Fewest end joints", es "Menos juntas de punta";
    WANT_LIGHT = "Lightest to lift", es "Más liviana de levantar";
    WANT_BOUGHT = "Least board bought", es "Menos tablaroca comprada";

    NO_LENGTH = "Tick a length that the shop has.", es "Marque un largo que haya en la tienda.";
    NONE_GETS_IN = "No length that is ticked gets in: tick a shorter one.", es "Ningún largo marcado entra: marque uno más corto.";
    NONE_REACHES = "No board that is ticked reaches from one member to a next that is far enough off.", es "Ninguna hoja marcada llega de un apoyo a otro que quede lo bastante lejos.";
    NOTHING_YET = "Looking for a layout: a moment.", es "Buscando un acomodo: un momento.";
    NONE_FOUND = "No layout was found that keeps end joints on framing and out of line.", es "No se halló un acomodo con las juntas de punta sobre estructura y sin alinearse.";
    TOO_MANY = "More than {0} members in one run: work the surface in parts.", es "Más de {0} apoyos en un tramo: haga la superficie por partes.";

    BOARDS = "Boards: {0}", es "Hojas: {0}";
    OF_ONE = "{0} of {1}", es "{0} de {1}";
    AND_MORE = "{0}, {1}", es "{0}, {1}";
    LONGEST_BOARD = "Longest board", es "Hoja más larga";
    JOINTS = "End joints", es "Juntas de punta";
    SEAMS = "Tapered joints, end to end", es "Juntas rebajadas, largo total";
    ENDS = "End joints, end to end", es "Juntas de punta, largo total";
    CORNERS = "Inside corners, with walls", es "Esquinas interiores, con paredes";
    WALL_CORNERS = "Inside corners, at its two ends", es "Esquinas interiores, en sus dos puntas";
    SCREWS = "Screws", es "Tornillos";
    AREA = "Surface", es "Superficie";
    BOUGHT = "Board bought", es "Tablaroca comprada";
    LEFT = "Left over, of what is bought", es "Sobra, de lo comprado";
    HEAVIEST = "Its weight, to carry and lift", es "Su peso, al cargar y levantar";

    CHECK_EDGES = "Edges on no stud", es "Orillas sin montante";
    OFF_STUDS = "No stud behind the edge at {0}: trim the first board, or put backing there.", es "No hay montante detrás de la orilla en {0}: recorte la primera hoja o ponga refuerzo ahí.";
    CHECK_BACKING = "End joints between studs", es "Juntas de punta entre montantes";
    ASK_BACKING = "Backing behind each, put in before the board.", es "Refuerzo detrás de cada una, puesto antes que la hoja.";

    STEP_BOUGHT = "Board bought", es "Tablaroca comprada";
    STEP_LEFT = "Left over", es "Sobra";
    STEP_SHEET = "The longest board weighs", es "La hoja más larga pesa";


    LOOKING = "{0} or fewer, still looking.", es "{0} o menos, sigue buscando.";
    PROVEN_BOTH = "Proven: with {0} boards no layout has fewer for so few end joints, nor fewer end joints for so few boards.", es "Comprobado: con hojas de {0} ningún acomodo tiene menos hojas con tan pocas juntas de punta, ni menos juntas de punta con tan pocas hojas.";
    PROVEN_BOARDS = "Proven: with {0} boards no layout has fewer for so few end joints.", es "Comprobado: con hojas de {0} ningún acomodo tiene menos hojas con tan pocas juntas de punta.";
    NOT_PROVEN = "The best that was found with {0} boards; none has fewer than {1}.", es "Lo mejor que se halló con hojas de {0}; ninguno tiene menos de {1}.";
    PROVEN_BOUGHT = "Proven: no layout of these lengths buys less.", es "Comprobado: ningún acomodo de estos largos compra menos.";
    NOT_PROVEN_BOUGHT = "The least that was found, of all lengths together; less than {0} can't do.", es "Lo menos que se halló, con todos los largos juntos; con menos de {0} no alcanza.";
    OTHER_WAYS = "By what matters most", es "Según lo que importa más";
    OTHER_NOTE = "A tap draws that plan.", es "Un toque dibuja ese plano.";
    PLAN = "{0} {0?board|boards}, {1} the longest; {2} end {2?joint|joints}; {3} the heaviest", es "{0} {0?hoja|hojas}, la más larga {1}; {2} {2?junta|juntas} de punta; la más pesada {3}";
    LENGTHS = "By length", es "Por largo";
    LENGTHS_NOTE = "Of one length only, the fewest boards.", es "De un solo largo, las menos hojas.";
    OF_LENGTH = "Boards of {0}", es "Hojas de {0}";
    FEWEST = "{0}, proven fewest; {1} end {1?joint|joints}", es "{0}, comprobado que son las menos; {1} {1?junta|juntas} de punta";
    FOUND = "{0}, perhaps fewer; {1} end {1?joint|joints}", es "{0}, quizá menos; {1} {1?junta|juntas} de punta";
    CUTS = "Cut list", es "Lista de cortes";
    CUTS_NOTE = "Board by board, as they are cut; hang them row by row. Of layouts as good, end joints keep out of the middle third and off the corners of openings. Measure before you cut: walls are not square.", es "Hoja por hoja, como se cortan; cuélguelas hilera por hilera. Entre acomodos igual de buenos, las juntas de punta quedan fuera del tercio de en medio y de las esquinas de los vanos. Mida antes de cortar: las paredes no están a escuadra.";
    CUT = "Board {0}, {1}: row {2}", es "Hoja {0}, {1}: hilera {2}";
    CUT_WHOLE = "{0} long, {1} wide, from {2}", es "{0} de largo, {1} de ancho, desde {2}";
    CUT_ONE_STRIP = "{0} long, {1} wide, from {2}; ripped off one edge, its factory edge to the seam", es "{0} de largo, {1} de ancho, desde {2}; cortada de una orilla, su orilla de fábrica hacia la junta";
    CUT_STRIP = "{0} long, {1} wide, from {2}; one of two strips, its factory edge to the seam", es "{0} de largo, {1} de ancho, desde {2}; una de dos tiras, su orilla de fábrica hacia la junta";

    M_BOARD = "Board, {0}", es "Tablaroca, {0}";
    M_LONG = "{0}, {1} by {2}", es "{0}, {1} por {2}";
    M_SCREWS = "Drywall screws", es "Tornillos para tablaroca";

    LIFT = "Board goes overhead with a panel lift or enough hands: one that falls breaks necks.", es "La hoja sube al techo con elevador o con manos suficientes: una que se cae rompe cuellos.";
    LEANS = "Board leaned on a wall tips over: stack it flat, carry it by two.", es "La tablaroca recargada en la pared se voltea: apílela acostada, cárguela entre dos.";
    PLATFORM = "Work from a platform, never from stilts or an upturned pail on debris.", es "Trabaje desde una plataforma, nunca en zancos ni sobre una cubeta volteada encima de escombro.";
    CUT_OUT = "Power off and tested before a blade or saw goes near a box; nothing is buried under board: every box, alarm and damper stays reachable.", es "Corriente apagada y probada antes de acercar navaja o sierra a una caja; nada queda enterrado bajo la tablaroca: cada caja, alarma y compuerta sigue a la mano.";
    DUST = "Cutting and sawing make dust: score and snap, mask on.", es "Cortar y serruchar hace polvo: marque y quiebre, con mascarilla.";
    COVER = "What the inspector wants to see, he sees before it is covered.", es "Lo que el inspector quiere ver, lo ve antes de taparlo.";

    DRAWING = "Where each piece hangs", es "Dónde va cada pedazo";
    MEANS_PIECE = "a piece of board", es "un pedazo de hoja";
    MEANS_STRIP = "a ripped piece of board", es "un pedazo cortado a lo largo";
    MEANS_EDGE = "the surface", es "la superficie";
    MEANS_FRAMING = "framing", es "estructura";
    MEANS_HOLE = "an opening", es "un vano";
    TWIN = "{0} {0?board|boards} in {1} {1?row|rows}, row 1 at the top; numbers are the boards that pieces are cut from.", es "{0} {0?hoja|hojas} en {1} {1?hilera|hileras}, la hilera 1 arriba; los números son las hojas de donde se cortan los pedazos.";
    TWIN_SIZE = "{0} along the boards, {1} across them.", es "{0} a lo largo de las hojas, {1} a través.";
    PIECE_LONG = "{0}", es "{0}";
    TWIN_JOINT = "Row {0}: end joint at {1}.", es "Hilera {0}: junta de punta en {1}.";
    TWIN_HOLE = "Cut out from {0} to {1} along, from {2} to {3} down.", es "Recorte de {0} a {1} a lo largo, de {2} a {3} hacia abajo.";
    TWIN_WALL = "The wall from the room, ceiling at the top.", es "La pared vista desde el cuarto, el techo arriba.";
    TWIN_CEILING = "The ceiling seen from above, wall 1 at the top; boards run from left to right.", es "El techo visto desde arriba, la pared 1 arriba; las hojas corren de izquierda a derecha.";
    NUMBER = "{0}", es "{0}";
}
