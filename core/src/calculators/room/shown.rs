//! All that a person reads of a room once it is worked out.

use crate::words;

words! {
    FLOOR = "Floor area", es "Área del piso";
    PERIMETER = "All walls, end to end", es "Todas las paredes, de punta a punta";
    CEILING = "Ceiling area, flat", es "Área del techo, plano";
    LONGEST = "Longest, along wall 1", es "Lo más largo, por la pared 1";
    WIDEST = "Widest, across", es "Lo más ancho, a través";
    OUTLINE_LONG = "Outline, along wall 1", es "Contorno, por la pared 1";
    OUTLINE_WIDE = "Outline, across", es "Contorno, a través";
    INSIDE = "Inside corners", es "Esquinas interiores";
    OUTSIDE = "Outside corners", es "Esquinas exteriores";
    HEIGHT = "Ceiling height now", es "Altura del techo ahora";
    HEIGHT_TO_BE = "Ceiling height to be", es "Altura del techo después";
    CHANGE_UP = "Ceiling goes up", es "El techo sube";
    CHANGE_DOWN = "Ceiling comes down", es "El techo baja";
    VOLUME = "Air in the room now", es "Aire del cuarto ahora";
    VOLUME_TO_BE = "Air in the room to be", es "Aire del cuarto después";
    AIR_MORE = "More air", es "Más aire";
    AIR_LESS = "Less air", es "Menos aire";
    WALL_AREA = "Wall area now", es "Área de pared ahora";
    WALL_AREA_TO_BE = "Wall area to be", es "Área de pared después";
    OPENINGS = "Doors and windows", es "Puertas y ventanas";
    NET = "Wall area now, less openings", es "Área de pared ahora, menos vanos";
    NET_TO_BE = "Wall area to be, less openings", es "Área de pared después, menos vanos";
    OUTSIDE_LENGTH = "Outside walls, end to end", es "Paredes exteriores, de punta a punta";
    APART = "Joists, apart", es "Viguetas, separación";
    ALONG_APART = "Joists along wall 1, apart", es "Viguetas por la pared 1, separación";
    SQUARE_APART = "Joists square to wall 1, apart", es "Viguetas a escuadra de la pared 1, separación";
    DEPTH = "Depth of a joist", es "Peralte de una vigueta";
    THICKNESS = "Thickness of a joist", es "Grueso de una vigueta";
    LEAST = "Ceiling height, least", es "Altura del techo, la menor";
    MOST = "Ceiling height, most", es "Altura del techo, la mayor";
    DIFFERENCE = "Diagonals differ by", es "Diferencia de diagonales";
    SHIFT = "Far wall shifted along wall 1", es "Pared opuesta corrida a lo largo de la pared 1";
    WALL = "Wall {0}", es "Pared {0}";
    WALL_WORKED_OUT = "Wall {0}, worked out", es "Pared {0}, calculada";

    CHECK_NOW = "Ceiling height now", es "Altura del techo ahora";
    CHECK_TO_BE = "Ceiling height to be", es "Altura del techo después";
    ASK_LOW = "Under 7 ft. A bath, toilet room or laundry may be 6 ft 8 in, parts under a slope or a beam may be lower, and an old ceiling may often stay: ask.", es "Menos de 7 ft. Un baño, un cuarto de inodoro o una lavandería puede tener 6 ft 8 in, partes bajo una pendiente o una viga pueden ser más bajas, y un techo viejo muchas veces se puede quedar: pregunte.";

    LEVEL_PART = "Over this floor", es "Sobre este piso";
    LEVEL_NOTE = "The ceiling taken as level, its height runs with the floor. Cut studs and board to the place, not to one number.", es "Con el techo a nivel, su altura va con el piso. Corte montantes y tablaroca según el lugar, no a un solo número.";
    LEVEL_NOW = "Now", es "Ahora";
    LEVEL_TO_BE = "To be", es "Después";
    FROM_TO = "{0} to {1}", es "{0} a {1}";

    AGAIN_PART = "Look again", es "Revise otra vez";
    AGAIN = "{0}.", es "{0}.";
    NO_SUCH_WALL = "Something stands in wall {0}, and this room has {1} walls. Pick its wall again.", es "Algo está en la pared {0}, y este cuarto tiene {1} paredes. Elija otra vez su pared.";
    TOO_WIDE = "Wall {0} is {1} long, and what stands in it takes {2}. Measure again.", es "La pared {0} mide {1}, y lo que hay en ella ocupa {2}. Mida otra vez.";
    TOO_HIGH = "{0}, {1} high, under a ceiling of {2}. Measure again.", es "{0}, {1} de alto, bajo un techo de {2}. Mida otra vez.";
    TOO_OPEN = "Doors and windows take {0}, and the walls are {1}. Count again.", es "Puertas y ventanas ocupan {0}, y las paredes son {1}. Cuente otra vez.";
    DIAGONALS_DONT_FIT = "These diagonals don't go with these walls. Opposite walls differ, or a length is off: measure all four walls and both again.", es "Estas diagonales no van con estas paredes. Las paredes opuestas difieren, o un largo está mal: mida otra vez las cuatro paredes y las dos diagonales.";

    SQUARE_UP = "Measure both diagonals. An old room is seldom square, and this takes all its corners as square.", es "Mida las dos diagonales. Un cuarto viejo rara vez está a escuadra, y esto toma todas sus esquinas a escuadra.";
    OLD_FINISH = "This measures only. Before you cut, drill or scrape: old plaster, board, tile and paint can hold asbestos or lead. Have them tested.", es "Esto solo mide. Antes de cortar, taladrar o raspar: el yeso, la tablaroca, la loseta y la pintura viejos pueden tener asbesto o plomo. Mándelos analizar.";
    TIES = "Joists above often tie the walls together or carry what is over them. Which may move, and how, is a licensed engineer's to say.", es "Las viguetas de arriba muchas veces amarran las paredes o cargan lo que está sobre ellas. Cuáles se pueden mover, y cómo, lo dice un ingeniero con licencia.";
    LOCAL = "Local code and the building department decide.", es "Deciden el código local y la oficina de construcción.";

    DRAWING = "The room from above, to scale", es "El cuarto desde arriba, a escala";
    DRAWING_FLOOR = "Floor", es "Piso";
    DRAWING_WALL = "Wall", es "Pared";
    JOISTS = "joists {0}", es "vigueta {0}";
    JOIST_WAY = "The way the joists run", es "El sentido en que corren las viguetas";
    NUMBER = "{0}", es "{0}";
    TWIN_SIZE = "{0} walls, {1} by {2} at the most. Wall 1 runs along the top; the rest follow clockwise.", es "{0} paredes, {1} por {2} como máximo. La pared 1 va por arriba; las demás siguen como el reloj.";
    TWIN_WALL = "Wall {0}: {1}, to an inside corner.", es "Pared {0}: {1}, a una esquina interior.";
    TWIN_WALL_OUT = "Wall {0}: {1}, to an outside corner.", es "Pared {0}: {1}, a una esquina exterior.";
    TWIN_OUTSIDE = "Wall {0} is an outside wall, drawn heavier.", es "La pared {0} es exterior, dibujada más gruesa.";
    TWIN_OPENING = "In wall {0}: {1} × {2}, {3} by {4}. Where along it isn't known; drawn evenly spaced.", es "En la pared {0}: {1} × {2}, {3} por {4}. No se sabe en qué punto; se dibuja repartido parejo.";
    TWIN_LOOSE = "Not in the drawing: {0} × {1}, {2} by {3}.", es "No está en el dibujo: {0} × {1}, {2} por {3}.";
    TWIN_ALONG = "Joists above run along wall 1, {0} apart.", es "Las viguetas de arriba corren a lo largo de la pared 1, cada {0}.";
    TWIN_ACROSS = "Joists above run square to wall 1, {0} apart.", es "Las viguetas de arriba corren a escuadra con la pared 1, cada {0}.";
}
