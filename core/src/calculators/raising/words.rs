//! All that a person is asked about a raised ceiling. What the answer says stands in `shown`.

use crate::words;

words! {
    NAME = "Raising a ceiling", es "Subir un techo";
    ABOUT = "Studs to cut, board, air and what has to move with it", es "Montantes a cortar, tablaroca, aire y lo que se mueve con el techo";
    NOTHING = "", es "";

    SHAPE = "New ceiling", es "Techo nuevo";
    FLAT = "Flat", es "Plano";
    TRAY = "Tray", es "Charola (tray)";
    GABLE = "Vault, two slopes", es "Catedral, dos aguas";
    SHED = "Vault, one slope", es "Catedral, una agua";

    KNOWN = "Measured", es "Medido";
    KNOWN_HINT = "A stud is told from a hole in the wall; the framing from where the ceiling is down.", es "El montante se mide por un agujero en la pared; la estructura, donde ya se bajó el techo.";
    BY_STUD = "A stud", es "Un montante";
    BY_FRAMING = "Subfloor to joists", es "Subpiso a viguetas";
    STUD = "Old stud", es "Montante viejo";
    STUD_HINT = "Without its plates. Older studs are often 8 ft and more: measure.", es "Sin sus soleras. Los montantes viejos suelen pasar de 8 ft: mida.";
    FRAMING = "Subfloor to joists", es "Subpiso a viguetas";
    FRAMING_HINT = "Bare framing, to the underside of the joists.", es "Estructura sin tapar, hasta abajo de las viguetas.";
    WHY_STUD = "no wall of a house is that high.", es "ninguna pared de casa es tan alta.";
    PLATES = "Plates, bottom and top", es "Soleras, inferior y superior";
    PLATES_HINT = "Mostly one under and two over.", es "Casi siempre una abajo y dos arriba.";
    WHY_PLATES = "no wall has that many.", es "ninguna pared tiene tantas.";
    OLD_PLATE = "One old plate, thick", es "Grueso de una solera vieja";
    OLD_PLATE_HINT = "Empty: 1-1/2 in. Older ones are 1-5/8 or 2.", es "Vacío: 1-1/2 in. Las más viejas son de 1-5/8 o 2.";
    OLD_BOARD = "Ceiling now, thick", es "Grueso del techo actual";
    OLD_BOARD_HINT = "All of it: board or lath and plaster, strapping too.", es "Todo: tablaroca, o listones y yeso, también las tiras.";
    NEW_BOARD = "New board, thick", es "Tablaroca nueva, grueso";
    WHY_BOARD = "no finish is that thick.", es "ningún acabado es tan grueso.";
    FLOOR_FINISH = "Floor finish, over the subfloor", es "Acabado del piso, sobre el subpiso";

    TO = "What you want", es "Lo que quiere";
    BY = "Say it as", es "Cómo lo dice";
    BY_HEIGHT = "A height", es "Una altura";
    BY_RAISE = "So much higher", es "Cuánto más alto";
    HEIGHT = "Finished height", es "Altura terminada";
    HEIGHT_HINT = "Finished floor to the new ceiling; of a tray, to its top.", es "Del piso terminado al techo nuevo; si es charola, hasta lo más alto.";
    RAISE = "Higher by", es "Más alto por";
    RAISE_HINT = "Finish to finish.", es "De acabado a acabado.";
    WHY_HEIGHT = "no room of a house is that high.", es "ningún cuarto de casa es tan alto.";

    LONG = "Room, length", es "Cuarto, largo";
    LONG_HINT = "Wall to wall.", es "De pared a pared.";
    WIDE = "Room, width", es "Cuarto, ancho";
    WHY_SIDE = "larger than that, work it in parts.", es "si es más grande, calcúlelo por partes.";
    FLOOR = "Floor area", es "Área del piso";
    FLOOR_HINT = "Empty: length times width. For an L, take it from the room.", es "Vacío: largo por ancho. Si es en L, tómela del cuarto.";
    PERIMETER = "Walls that go up, end to end", es "Paredes que suben, largo total";
    PERIMETER_HINT = "Empty: all four.", es "Vacío: las cuatro.";
    BORDER = "Border at today's height, wide", es "Borde a la altura actual, ancho";
    BORDER_HINT = "From the walls to where the tray starts.", es "De las paredes a donde empieza la charola.";
    KEEPS = "The border's old board stays", es "Se queda la tablaroca del borde";
    KEEPS_HINT = "Else it comes down too, and is boarded anew.", es "Si no, también se baja y se pone nueva.";
    LEAN = "Tray's sides lean in", es "Los lados se inclinan adentro";
    LEAN_HINT = "Empty: they stand plumb.", es "Vacío: van a plomo.";
    PITCH = "Slope of the ceiling", es "Inclinación del techo";
    PITCH_HINT = "Its rise in 12. It starts at the walls, at today's height.", es "Lo que sube en 12. Empieza en las paredes, a la altura actual.";
    WHY_PITCH = "steeper than that is a wall.", es "más inclinado que eso ya es pared.";
    RIDGE = "Ridge or high wall runs", es "La cumbrera o la pared alta va";
    RIDGE_LONG = "Along the length", es "A lo largo";
    RIDGE_WIDE = "Along the width", es "A lo ancho";

    ROOM = "Room", es "Cuarto";
    LIVED_IN = "To live in, or a hall", es "Para habitar, o pasillo";
    BATH = "Bath, toilet or laundry", es "Baño, excusado o lavandería";
    OVERHEAD = "Over the ceiling", es "Arriba del techo";
    OVERHEAD_HINT = "Look in the attic: metal plates at the joints are trusses.", es "Vea en el ático: si hay placas de metal en las uniones, son armaduras (trusses).";
    OLD = "What comes down", es "Lo que se baja";
    OLD_HINT = "It is held until it is tested: see Before you disturb old material.", es "Queda detenido hasta que se analice: vea Antes de alterar material viejo.";
    NOT_SAID = "Not said", es "Sin decir";
    TEXTURE = "Textured, on board or plaster", es "Con textura, sobre tablaroca o yeso";
    PLASTER = "Plaster", es "Yeso";
    BOARD = "Board with joint compound", es "Tablaroca con pasta";
    BARE = "Nothing: bare joists", es "Nada: viguetas sin tapar";

    WALL = "Walls that go up", es "Paredes que suben";
    HOW = "Framed with", es "Se arman con";
    HOW_HINT = "New studs carry over the whole height. A short wall is a joint that bends.", es "Los montantes nuevos cargan en toda la altura. Una pared corta deja una junta que se dobla.";
    FULL = "New studs", es "Montantes nuevos";
    STACKED = "A short wall on the old plates", es "Pared corta sobre las soleras viejas";
    ADDED = "Plates of the short wall", es "Soleras de la pared corta";
    ADDED_HINT = "Under and over it, 1-1/2 in each.", es "Abajo y arriba de ella, 1-1/2 in cada una.";
    CARRIES = "They are", es "Son";
    CARRIES_HINT = "If you can't tell, they carry.", es "Si no lo sabe, cargan.";
    NOT_KNOWN = "Not known", es "No se sabe";
    BEARING = "Outside or bearing", es "Exteriores o de carga";
    CARRIES_NOTHING = "Partitions", es "Divisiones";
    SPACING = "Studs apart", es "Separación de montantes";
    SPACING_HINT = "Empty: 16 in.", es "Vacío: 16 in.";
    WHY_SPACING = "no wall is framed that wide.", es "ninguna pared se arma tan abierta.";

    CLEAR = "In the way", es "Lo que estorba";
    CLEAR_HINT = "Only what is there.", es "Solo lo que hay.";
    FAN = "Fan, ceiling to blades", es "Ventilador, del techo a las aspas";
    FAN_HINT = "With its rod.", es "Con su tubo.";
    BEAM = "Beam or duct, over the floor", es "Viga o ducto, sobre el piso";
    BEAM_HINT = "The lowest that stays.", es "Lo más bajo que se queda.";
    DOOR = "Door header, over the subfloor", es "Dintel de puerta, sobre el subpiso";
    DOOR_HINT = "To its underside.", es "Hasta su cara de abajo.";

    // What can't be taken.
    NEEDED = "Needed for this shape: type a length.", es "Hace falta para esta forma: escriba una medida.";
    NOT_HIGHER = "The ceiling is at {0} now: this is no higher.", es "El techo está ahora a {0}: esto no es más alto.";
    NOT_RAISED = "The thinner board alone gives {0}. The joists stay where they are.", es "Con solo la tablaroca más delgada queda en {0}. Las viguetas no se mueven.";
    MORE_THAN_ROOM = "It has to be no more than length times width: {0}.", es "No puede ser más que largo por ancho: {0}.";
    NO_TRAY = "Border and sides take {0} of each side, and the room is {1} wide: no tray is left.", es "El borde y los lados quitan {0} de cada lado, y el cuarto mide {1} de ancho: no queda charola.";
    NO_SHORT_WALL = "The plates alone take {0}, and the joists go up {1}: no short wall fits. Fewer plates, or new studs.", es "Solo las soleras ocupan {0}, y las viguetas suben {1}: no cabe pared corta. Menos soleras, o montantes nuevos.";
}
