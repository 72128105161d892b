//! All that a person reads of a raised ceiling once it is worked out.

use crate::words;

words! {
    STUD = "Studs to cut", es "Montantes a cortar";
    CRIPPLE = "Short studs to cut", es "Montantes cortos a cortar";
    BOARD = "Ceiling board", es "Tablaroca de techo";
    FRAMING = "Subfloor to joists now", es "Subpiso a viguetas, ahora";
    FRAMING_TO_BE = "Subfloor to joists to be", es "Subpiso a viguetas, nuevo";
    NOW = "Finished height now", es "Altura terminada actual";
    TO_BE = "Finished height to be", es "Altura terminada nueva";
    HIGHEST = "Finished height, highest", es "Altura terminada, lo más alto";
    HIGHER = "Finished ceiling goes up", es "El techo terminado sube";
    RAISE = "Joists go up", es "Las viguetas suben";
    WHOLE_STUD = "A stud over the whole height", es "Un montante en toda la altura";
    PRECUT = "Precut stud to buy", es "Montante precortado a comprar";
    BY_THE_FOOT = "Lumber to buy", es "Madera a comprar";
    CUT_OFF = "Cut off it", es "Se le corta";
    STUDS = "Studs along the walls, before doors and corners", es "Montantes en las paredes, sin contar puertas ni esquinas";
    PERIMETER = "Walls that go up", es "Paredes que suben";
    FLOOR = "Floor", es "Piso";
    INFILL = "Wall to fill in", es "Pared por rellenar";
    AIR = "Air added", es "Aire de más";
    AIR_TRAY = "Air in the tray", es "Aire en la charola";
    TRAY_LONG = "Tray opening, length", es "Abertura de la charola, largo";
    TRAY_WIDE = "Tray opening, width", es "Abertura de la charola, ancho";
    LID_LONG = "Tray top, length", es "Tapa de la charola, largo";
    LID_WIDE = "Tray top, width", es "Tapa de la charola, ancho";
    SLANT = "Along a side", es "Por un lado inclinado";
    SIDES = "Tray sides", es "Lados de la charola";
    OPENING = "Tray opening", es "Abertura de la charola";
    TOP = "Tray top", es "Tapa de la charola";
    RISE = "Rise over the low wall", es "Subida sobre la pared baja";
    SLOPE = "Along the slope", es "A lo largo de la pendiente";
    ENDS = "Both end walls, triangles", es "Las dos puntas, triángulos";
    HIGH_WALL = "High wall, above today's", es "Pared alta, sobre la altura actual";
    UPRIGHT = "Wall to fill in, ends and high side", es "Pared por rellenar, puntas y lado alto";
    STRIP_5 = "Low wall to 5 ft high", es "Pared baja a 5 ft de alto";
    STRIP_7 = "Low wall to 7 ft high", es "Pared baja a 7 ft de alto";
    COUNTED = "Floor that counts, 5 ft and more", es "Piso que cuenta, 5 ft y más";
    FULL = "Floor under 7 ft and more", es "Piso bajo 7 ft y más";
    FULL_SHARE = "Share of what counts", es "Parte de lo que cuenta";

    CHECK_HEIGHT = "Ceiling height to be", es "Altura nueva del techo";
    CHECK_BORDER = "Height under the border", es "Altura bajo el borde";
    CHECK_LOW = "Height at the low wall", es "Altura en la pared baja";
    CHECK_ROOM = "Floor that counts", es "Piso que cuenta";
    CHECK_REQUIRED = "7 ft high, half of the 70 sq ft required", es "7 ft de alto, la mitad de los 70 sq ft exigidos";
    CHECK_COUNTED = "7 ft high, half of all that counts", es "7 ft de alto, la mitad de todo lo que cuenta";
    CHECK_OVERHEAD = "Moving what is overhead", es "Mover lo que hay arriba";
    CHECK_STUD = "Stud height", es "Altura del montante";
    CHECK_JOINT = "Joints in a wall's height", es "Juntas en la altura de la pared";
    CHECK_FAN = "Fan blades over the floor", es "Aspas de ventilador sobre el piso";
    CHECK_BEAM = "Beam or duct over the floor", es "Viga o ducto sobre el piso";
    CHECK_DOOR = "Door header over the subfloor", es "Dintel de puerta sobre el subpiso";

    ASK_BORDER = "An old height may often stay: ask.", es "Una altura vieja muchas veces puede quedarse: pregunte.";
    ASK_LOW = "6 ft 8 in is needed where fixtures are used and at a shower: ask where they stand.", es "Se necesitan 6 ft 8 in donde se usan los muebles de baño y en la regadera: pregunte dónde están.";
    ASK_SMALL = "The 70 sq ft hold for rooms to live in; halls and kitchens are other: ask.", es "Los 70 sq ft valen para cuartos de habitar; pasillos y cocinas son aparte: pregunte.";
    ASK_READING = "It passes by the 70 sq ft, not by half of all that counts. Inspectors differ: ask.", es "Pasa por los 70 sq ft, no por la mitad de todo lo que cuenta. Los inspectores no coinciden: pregunte.";
    ASK_UNKNOWN = "Stop until somebody has looked. If they are trusses, nothing is cut or moved.", es "Pare hasta que alguien haya visto. Si son armaduras (trusses), no se corta ni se mueve nada.";
    ASK_STICKS = "Joists often tie the rafters. How far each may move, and what holds the roof meanwhile, an engineer says.", es "Las viguetas muchas veces amarran los pares (rafters). Cuánto puede moverse cada una, y qué sostiene el tejado mientras tanto, lo dice un ingeniero.";
    ASK_TIES = "A vault takes out the ties: the walls spread and the roof comes down, unless a ridge beam on posts carries it. An engineer draws that first.", es "El techo catedral quita los amarres: las paredes se abren y el tejado se cae, a menos que lo cargue una viga de cumbrera sobre postes. Un ingeniero lo dibuja primero.";
    ASK_STORY = "These joists carry a floor. What holds it instead, an engineer says.", es "Estas viguetas cargan un piso. Qué lo sostiene en su lugar, lo dice un ingeniero.";
    ASK_STUD = "Past the table: an engineer designs the wall.", es "Pasa de la tabla: un ingeniero diseña la pared.";
    ASK_JOINT = "This joint bends under wind, least where the ceiling holds it. Outside walls take studs in one piece, or an engineer's design.", es "Esta junta se dobla con el viento, menos donde el techo la sujeta. Las paredes exteriores llevan montantes de una pieza, o el diseño de un ingeniero.";
    ASK_PARTITION = "This joint bends when the wall is pushed or hung from. The rule was read of outside walls: ask of partitions.", es "Esta junta se dobla cuando se empuja la pared o se le cuelga algo. La regla se leyó de paredes exteriores: pregunte por las divisiones.";
    ASK_GABLE = "A wall under a slope has its studs in one piece up to the slope, or an engineer's design.", es "Una pared bajo un techo inclinado lleva montantes de una pieza hasta la pendiente, o el diseño de un ingeniero.";
    ASK_FAN = "Makers ask for 7 ft: see your fan's own sheet.", es "Los fabricantes piden 7 ft: vea la hoja de su ventilador.";
    ASK_BEAM = "Under 7 ft only beams 3 ft apart, and basements: ask.", es "A menos de 7 ft, solo vigas a 3 ft entre sí, y sótanos: pregunte.";
    ASK_DOOR = "A door of 6 ft 8 in may not fit: measure the one you hang.", es "Tal vez no quepa una puerta de 6 ft 8 in: mida la que va a colgar.";

    STOP_TRUSSES = "Stop: trusses. Cutting or moving one can bring the roof down; their designer or an engineer draws it first.", es "Pare: armaduras (trusses). Cortar o mover una puede tirar el tejado; primero lo dibuja quien las diseñó o un ingeniero.";
    STOP_UNKNOWN = "Look in the attic first. Cut nothing until you know what is over it.", es "Vea primero en el ático. No corte nada hasta saber qué hay arriba.";

    MOVES = "What moves with it", es "Lo que se mueve con el techo";
    MOVES_NOTE = "Each needs length, a new place or a new hole before the board goes up.", es "Cada cosa necesita largo, otro lugar u otro agujero antes de subir la tablaroca.";
    MOVED = "{0}: {1}", es "{0}: {1}";
    MOVED_BY = "{0}: {1} {2}, {3}.", es "{0}: {1} {2}, {3}.";
    NOTHING = "", es "";
    LIGHTS = "Lights", es "Luces";
    LIGHTS_WHY = "Their cables may be too short for the new height: see A cable that hung in the old ceiling.", es "Sus cables pueden quedar cortos para la altura nueva: vea Un cable que colgaba del techo viejo.";
    FAN_BOX = "Fan box", es "Caja de ventilador";
    ALARMS = "Smoke alarms", es "Alarmas de humo";
    ALARMS_WHY = "They go up too, and the permit brings today's rule for the whole house.", es "También suben, y el permiso trae la regla de hoy para toda la casa.";
    HEADERS = "Headers", es "Dinteles (headers)";
    HEADERS_WHY = "They stay where they are: the short studs over them grow.", es "Se quedan donde están: crecen los montantes cortos de arriba.";
    DUCTS = "Registers and ducts", es "Rejillas y ductos";
    DUCTS_WHY = "Boots go up with the board; a duct over it may lose its space.", es "Las botas suben con la tablaroca; un ducto de arriba puede perder su espacio.";
    WIRES = "Thermostat, bell and data wires", es "Cables de termostato, timbre y datos";
    WIRES_WHY = "They run across joists that move.", es "Cruzan viguetas que se mueven.";
    VENTS = "Pipes and vents through it", es "Tubos y ventilas que lo atraviesan";
    VENTS_WHY = "Fans, flues and stacks keep their clearances.", es "Extractores, chimeneas y bajantes conservan sus separaciones.";
    INSULATION = "Attic insulation", es "Aislante del ático";
    BLOCKS = "Fireblocks", es "Cortafuegos";
    BLOCKS_FLAT = "Close every stud bay at the new line, and at the old one where a ceiling next door stays.", es "Cierre cada espacio entre montantes en la línea nueva, y en la vieja donde el techo de al lado se queda.";
    BLOCKS_TRAY = "The tray's sides leave stud tops and joist spaces open: close them along all four.", es "Los lados de la charola dejan abiertas las puntas de los montantes y los espacios entre viguetas: ciérrelos en los cuatro lados.";
    BLOCKS_VAULT = "Close stud bays where walls meet the slope, and where a ceiling next door stays.", es "Cierre los espacios entre montantes donde la pared llega a la pendiente, y donde el techo de al lado se queda.";

    SHEETS = "Sheets on the walls", es "Hojas en las paredes";
    SHEETS_NOTE = "Laid flat, from the ceiling down.", es "Acostadas, del techo hacia abajo.";
    WIDE = "{0} wide", es "{0} de ancho";
    ROWS = "{0} {0?row|rows}; seams {1} over the floor", es "{0} {0?hilera|hileras}; juntas a {1} del piso";
    ROWS_NONE = "{0} {0?row|rows}; no seam", es "{0} {0?hilera|hileras}; sin junta";
    AND = "{0}, {1}", es "{0}, {1}";
    ONE = "{0}", es "{0}";

    M_STUD = "Stud, cut to {0}", es "Montante cortado a {0}";
    M_CRIPPLE = "Short stud, cut to {0}", es "Montante corto, a {0}";
    M_PLATE = "Plate, as wide as the wall", es "Solera, del ancho de la pared";
    M_BLOCK = "Fireblock, 2 in lumber", es "Cortafuego, madera de 2 in";
    M_BOARD = "Gypsum board, ceiling", es "Tablaroca, techo";
    M_WALL_BOARD = "Gypsum board, wall filled in", es "Tablaroca, pared rellenada";

    TEST = "Test before you disturb it: texture, plaster, joint compound and loose fill above can hold asbestos, paint lead.", es "Analice antes de alterarlo: la textura, el yeso, la pasta y el aislante suelto de arriba pueden tener asbesto, y la pintura plomo.";
    LIVE = "Dead, and proved dead, before you touch a cable. Loose fill comes down with the ceiling: look above it first.", es "Sin corriente, y comprobado sin corriente, antes de tocar un cable. El aislante suelto se viene abajo con el techo: vea primero arriba de él.";
    SHORE = "Shore before you cut. A ceiling's joists may hold walls and roof; an engineer says what and how.", es "Apuntale antes de cortar. Las viguetas del techo pueden sostener paredes y tejado; un ingeniero dice qué y cómo.";
    PERMIT = "This needs a permit. Local code and the building department decide.", es "Esto necesita permiso. Deciden el código local y la oficina de construcción.";

    DRAWING = "The room cut across, before and after, to scale", es "El cuarto en corte, antes y después, a escala";
    D_FLOOR = "Finished floor", es "Piso terminado";
    D_WALL = "Wall", es "Pared";
    D_OLD = "Ceiling now", es "Techo actual";
    D_NEW = "New ceiling", es "Techo nuevo";
    D_JOINT = "Old plates, a joint", es "Soleras viejas, una junta";
    UP = "up {0}", es "sube {0}";
    L_STUD = "studs {0}", es "montantes {0}";
    L_CRIPPLE = "short studs {0}", es "montantes cortos {0}";
    L_NOW = "now {0}", es "ahora {0}";
    L_TO_BE = "new {0}", es "nuevo {0}";
    TWIN_FLAT = "The ceiling goes from {0} to {1} over the floor, {2} up, in a room {3} across.", es "El techo pasa de {0} a {1} sobre el piso, sube {2}, en un cuarto de {3} de lado a lado.";
    TWIN_STUD = "New studs of {0} stand from plate to plate.", es "Montantes nuevos de {0} van de solera a solera.";
    TWIN_CRIPPLE = "Short studs of {0} stand on the old plates.", es "Montantes cortos de {0} van sobre las soleras viejas.";
    TWIN_TRAY = "A border {0} wide stays at {1}. Within it the tray goes up {2} to {3}, its sides leaning in {4}.", es "Un borde de {0} de ancho se queda a {1}. Adentro, la charola sube {2} hasta {3}, con los lados inclinados {4} hacia adentro.";
    TWIN_GABLE = "Two slopes go from {0} at the walls up to {1} in the middle of {2}.", es "Dos aguas suben de {0} en las paredes a {1} en medio de {2}.";
    TWIN_SHED = "One slope goes from {0} at the low wall up to {1} across {2}.", es "Una agua sube de {0} en la pared baja a {1}, a lo largo de {2}.";
}
