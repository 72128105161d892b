//! All that a person is asked about a room. What the answer says stands in `shown`.

use crate::words;

words! {
    NAME = "Room", es "Cuarto";
    ABOUT = "Floor, walls, ceiling and air of a room, for every number that comes after", es "Piso, paredes, techo y aire de un cuarto, para todos los números que siguen";
    NOTHING = "", es "";

    // Its outline.
    SHAPE = "Shape", es "Forma";
    SHAPE_HINT = "Stand inside. Wall 1 is the longest straight one; number on clockwise. All corners are taken as square.", es "Párese adentro. La pared 1 es la recta más larga; siga numerando como el reloj. Todas las esquinas se toman a escuadra.";
    RECTANGLE = "Rectangle", es "Rectángulo";
    ELL = "L", es "L";
    TEE = "T", es "T";
    U = "U", es "U";
    WALK = "Walk the walls", es "Pared por pared";
    LONG = "Along wall 1", es "A lo largo de la pared 1";
    LONG_HINT = "Wall to wall, finish to finish.", es "De pared a pared, de acabado a acabado.";
    WIDE = "Across from wall 1", es "A través, desde la pared 1";
    WIDE_HINT = "From wall 1 to the wall farthest from it.", es "De la pared 1 a la pared más lejos de ella.";
    NOTCH_LONG = "Notch, along wall 1", es "Muesca, por la pared 1";
    NOTCH_HINT = "The corner that the room doesn't have, where walls 3 and 4 stand.", es "La esquina que el cuarto no tiene, donde están las paredes 3 y 4.";
    NOTCH_WIDE = "Notch, across", es "Muesca, a través";
    LEG_WIDE = "Leg, along wall 1", es "Brazo, por la pared 1";
    LEG_HINT = "The part that sticks out of the side opposite wall 1.", es "La parte que sale del lado opuesto a la pared 1.";
    LEG_LONG = "Leg, how far out", es "Brazo, cuánto sale";
    LEG_OFF = "Leg, in from the start of wall 1", es "Brazo, desde el inicio de la pared 1";
    GAP_LONG = "Gap, along wall 1", es "Hueco, por la pared 1";
    GAP_HINT = "The part that the room goes round, in the side opposite wall 1.", es "La parte que el cuarto rodea, en el lado opuesto a la pared 1.";
    GAP_DEEP = "Gap, how far in", es "Hueco, cuánto entra";
    GAP_OFF = "Gap, in from the start of wall 1", es "Hueco, desde el inicio de la pared 1";
    OFF_HINT = "Empty: in the middle.", es "Vacío: al centro.";
    WHY_WALL = "longer than that, measure it as two rooms.", es "más larga, mídalo como dos cuartos.";
    WALLS = "Walls, clockwise", es "Paredes, como el reloj";
    WALLS_HINT = "One tap a wall, by the corner that it ends in. One wall each way may stay empty: it is worked out.", es "Un toque por pared, según la esquina en que termina. Puede quedar vacía una pared en cada sentido: se calcula.";
    WALL = "Wall", es "Pared";
    TO_INSIDE = "wall to an inside corner", es "pared a esquina interior";
    TO_OUTSIDE = "wall to an outside corner", es "pared a esquina exterior";
    END = "Ends in", es "Termina en";
    END_HINT = "Inside: it points away from you, as in any box. Outside: it points at you.", es "Interior: apunta lejos de usted, como en una caja. Exterior: apunta hacia usted.";
    INSIDE = "Inside corner", es "Esquina interior";
    OUTSIDE = "Outside corner", es "Esquina exterior";
    LENGTH = "Length", es "Largo";
    LENGTH_HINT = "Empty: worked out from the others.", es "Vacío: se calcula de las otras.";
    OUTSIDE_WALL = "Outside wall", es "Pared exterior";

    // Its walls.
    OUTSIDE_WALLS = "Outside walls", es "Paredes exteriores";
    OUTSIDE_WALLS_HINT = "Those with the weather behind them.", es "Las que dan a la intemperie.";
    WALL_NUMBER = "Which", es "Cuál";
    NOT_SAID = "Not said", es "No se dijo";
    W1 = "Wall 1", es "Pared 1";
    W2 = "Wall 2", es "Pared 2";
    W3 = "Wall 3", es "Pared 3";
    W4 = "Wall 4", es "Pared 4";
    W5 = "Wall 5", es "Pared 5";
    W6 = "Wall 6", es "Pared 6";
    W7 = "Wall 7", es "Pared 7";
    W8 = "Wall 8", es "Pared 8";
    W9 = "Wall 9", es "Pared 9";
    W10 = "Wall 10", es "Pared 10";
    W11 = "Wall 11", es "Pared 11";
    W12 = "Wall 12", es "Pared 12";
    W13 = "Wall 13", es "Pared 13";
    W14 = "Wall 14", es "Pared 14";
    W15 = "Wall 15", es "Pared 15";
    W16 = "Wall 16", es "Pared 16";
    OPENINGS = "Doors and windows", es "Puertas y ventanas";
    OPENINGS_HINT = "They come off the wall area.", es "Se restan del área de pared.";
    OPENING = "Door or window", es "Puerta o ventana";
    KIND = "Kind", es "Tipo";
    DOOR = "Door", es "Puerta";
    WINDOW = "Window", es "Ventana";
    CASED = "Opening", es "Vano";
    COUNT = "How many", es "Cuántas";
    WHY_COUNT = "more than that is a wall of glass: put in its size.", es "más es una pared de vidrio: ponga su medida.";
    WIDTH = "Width", es "Ancho";
    SIZE_HINT = "The leaf or sash is near enough. What the board leaves free is closer.", es "La medida de la hoja de la puerta o ventana basta. Lo que la tablaroca deja libre es más exacto.";
    HIGH = "Height", es "Alto";
    WHY_OPENING = "larger than that, leave the wall out.", es "si es más grande, no cuente la pared.";
    IN_WALL = "In", es "En";
    IN_WALL_HINT = "To see it in the drawing.", es "Para verla en el dibujo.";
    DOOR_2_8 = "door 2-8 × 6-8", es "puerta 2-8 × 6-8";
    DOOR_2_6 = "door 2-6 × 6-8", es "puerta 2-6 × 6-8";
    DOOR_3_0 = "door 3-0 × 6-8", es "puerta 3-0 × 6-8";
    DOOR_6_0 = "doors 6-0 × 6-8", es "puertas 6-0 × 6-8";
    WINDOW_3_4 = "window 3-0 × 4-0", es "ventana 3-0 × 4-0";
    WINDOW_3_5 = "window 3-0 × 5-0", es "ventana 3-0 × 5-0";
    OTHER_OPENING = "other opening", es "otro vano";

    // Its heights.
    HEIGHT = "Ceiling height now", es "Altura del techo ahora";
    HEIGHT_HINT = "At the floor's highest place, finish to finish: the least there is.", es "En lo más alto del piso, de acabado a acabado: la menor que hay.";
    TO_BE = "Ceiling height to be", es "Altura del techo después";
    TO_BE_HINT = "Only if it will change.", es "Solo si va a cambiar.";
    WHY_HEIGHT = "no ceiling of a room hangs there.", es "ningún techo de cuarto está tan alto.";
    LEVEL = "Floor out of level", es "Desnivel del piso";
    LEVEL_HINT = "The most, from its highest place to its lowest.", es "El mayor, de lo más alto a lo más bajo.";
    WHY_LEVEL = "more than that is a step or a slope.", es "más que eso es un escalón o una rampa.";
    DIAGONAL_1 = "Diagonal from the start of wall 1", es "Diagonal desde el inicio de la pared 1";
    DIAGONAL_HINT = "Corner to corner, over the floor. Both tell how far it is out of square.", es "De esquina a esquina, sobre el piso. Las dos dicen cuánto está fuera de escuadra.";
    DIAGONAL_2 = "Diagonal from the end of wall 1", es "Diagonal desde el final de la pared 1";

    // Over it.
    FRAMING = "Framing above", es "Estructura de arriba";
    FRAMING_HINT = "Look in the attic, or find the nails with a magnet.", es "Vea en el ático, o busque los clavos con un imán.";
    RUNS = "Joists run", es "Las viguetas corren";
    RUNS_HINT = "For the drawing and for what comes after. Nothing is sized by it.", es "Para el dibujo y lo que sigue. Con esto no se dimensiona nada.";
    NOT_KNOWN = "Not known", es "No se sabe";
    ALONG = "Along wall 1", es "A lo largo de la pared 1";
    ACROSS = "Across", es "A través";
    SPACING = "Apart, centre to centre", es "Separación, a centros";
    SPACING_HINT = "Old framing wanders: measure three.", es "La estructura vieja varía: mida tres.";
    S16 = "16 in", es "16 in";
    S24 = "24 in", es "24 in";
    S19 = "19.2 in", es "19.2 in";
    S12 = "12 in", es "12 in";
    DEPTH = "Depth of one", es "Peralte de una";
    DEPTH_HINT = "Measure it. Old lumber isn't today's: a 2x8 of 1920 may be 1-3/4 by 7-3/4 in.", es "Mídalo. La madera vieja no es la de hoy: un 2x8 de 1920 puede medir 1-3/4 por 7-3/4 in.";
    THICKNESS = "Thickness of one", es "Grueso de una";
    WHY_MEMBER = "no joist is that size.", es "ninguna vigueta mide eso.";

    // What can't be taken.
    TOO_FEW = "A room has four walls or more. Add them in the order that you pass them.", es "Un cuarto tiene cuatro paredes o más. Agréguelas en el orden en que pasa por ellas.";
    TWO_BLANK = "Wall {0} and wall {1} run the same way, and both are empty. Measure one of them.", es "La pared {0} y la pared {1} corren en el mismo sentido, y las dos están vacías. Mida una de ellas.";
    WRONG_WAY = "This goes round the outside of something. Walk clockwise inside: a plain room's corners are all inside corners.", es "Esto rodea algo por afuera. Camine adentro como el reloj: en un cuarto sencillo todas las esquinas son interiores.";
    CORNERS = "A room has four more inside corners than outside; here are {0} and {1}. A wall is missing, or a corner is of the other kind.", es "Un cuarto tiene cuatro esquinas interiores más que exteriores; aquí hay {0} y {1}. Falta una pared, o una esquina es del otro tipo.";
    SHORT_ALONG = "The walls end {0} short of the start along wall 1: {1} out, {2} back.", es "Las paredes terminan {0} antes del inicio, por la pared 1: {1} de ida, {2} de vuelta.";
    PAST_ALONG = "The walls end {0} past the start along wall 1: {1} out, {2} back.", es "Las paredes terminan {0} pasadas del inicio, por la pared 1: {1} de ida, {2} de vuelta.";
    SHORT_ACROSS = "The walls end {0} short of the start across wall 1: {1} out, {2} back.", es "Las paredes terminan {0} antes del inicio, a través de la pared 1: {1} de ida, {2} de vuelta.";
    PAST_ACROSS = "The walls end {0} past the start across wall 1: {1} out, {2} back.", es "Las paredes terminan {0} pasadas del inicio, a través de la pared 1: {1} de ida, {2} de vuelta.";
    BOTH = "{0} {1}", es "{0} {1}";
    WORKED_OUT = "Wall {0} comes to {1}. A wall before or after it is too long, or a corner is of the other kind.", es "La pared {0} da {1}. Una pared antes o después es demasiado larga, o una esquina es del otro tipo.";
    MEETS = "Wall {0} meets wall {1}. A length or a corner on the way is wrong.", es "La pared {0} topa con la pared {1}. Un largo o una esquina en el camino está mal.";
    SHORTER = "It has to be less than the room: {0}.", es "Tiene que ser menos que el cuarto: {0}.";
    NO_ROOM_BESIDE = "{0} and {1} don't leave any wall beside it: together they have to be less than {2}.", es "{0} y {1} no dejan pared al lado: juntos tienen que ser menos de {2}.";
}
