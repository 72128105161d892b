//! All that a person reads of receptacles at counters.

use crate::words;

words! {
    NAME = "Receptacles at counters and islands", es "Contactos en cubiertas e islas";
    ABOUT = "How many a kitchen's counters need, where along them, and islands by edition", es "Cuántos piden las cubiertas de una cocina, en qué parte de ellas, y las islas por edición";
    NOTHING = "", es "";

    RUNS = "Wall counters, in order along the wall", es "Cubiertas de pared, en orden por la pared";
    RUNS_HINT = "Each piece up to a sink, a range, a refrigerator or the end.", es "Cada tramo hasta un fregadero, una estufa, un refrigerador o la punta.";
    RUN = "Counter", es "Cubierta";
    CALL = "Call it", es "Nombre";
    LONG = "How long, at the wall", es "Qué largo, en la pared";
    END = "Then comes", es "Luego sigue";
    STOP = "Its end, a door or a wall", es "Su punta, una puerta o una pared";
    COLD = "A refrigerator", es "Un refrigerador";
    SINK = "A sink, range or cooktop", es "Fregadero, estufa o parrilla";
    CORNER = "One of those, in a corner", es "Uno de esos, en esquina";
    ACROSS = "How wide that is", es "Qué ancho tiene eso";
    BEHIND = "Counter behind it", es "Cubierta detrás de eso";
    ISLANDS = "Islands and peninsulas", es "Islas y penínsulas";
    ISLAND = "Island", es "Isla";
    PENINSULA = "Peninsula", es "Península";
    KIND = "What it is", es "Qué es";
    SIDE = "Longer side", es "Lado más largo";
    OTHER = "Shorter side", es "Lado más corto";
    SIDE_HINT = "A peninsula from where it leaves the wall.", es "Una península, desde donde sale de la pared.";
    HEIGHT = "Receptacles over the counter", es "Contactos sobre la cubierta";
    HEIGHT_HINT = "From the counter's top to their middle.", es "De arriba de la cubierta a su centro.";
    HAVE = "Receptacles at the counters now", es "Contactos en las cubiertas ahora";
    WHY = "no kitchen of a house takes that.", es "ninguna cocina de casa da para eso.";
    NO_COUNTER = "Put in one counter or island at least.", es "Ponga al menos una cubierta o una isla.";

    NEEDED = "Receptacles at the counters, at least", es "Contactos en las cubiertas, al menos";
    AT_WALLS = "At wall counters", es "En cubiertas de pared";
    AT_ISLAND = "On islands", es "En islas";
    AT_PENINSULA = "On peninsulas", es "En penínsulas";
    AT_ISLANDS = "On islands and peninsulas", es "En islas y penínsulas";
    CHECK_HAVE = "Receptacles at the counters", es "Contactos en las cubiertas";
    CHECK_HIGH = "Over the counter", es "Sobre la cubierta";
    NEXT_WALLS = "Even along each space: half a share from its ends, then a share apart. More is easier to live with.", es "Parejos en cada espacio: media parte desde sus puntas, luego una parte entre uno y otro. Con más se vive mejor.";
    NEXT_2020 = "On a peninsula one of them is within 2 ft of its outer end.", es "En una península, uno de ellos va a 2 ft o menos de su punta de afuera.";
    NEXT_LATER = "An island needs none now, but provision for one later: a cable or a raceway left for it. Ask how.", es "Una isla no pide ninguno ahora, pero sí dejar cómo ponerlo después: un cable o una canalización que se le deja. Pregunte cómo.";
    NEXT_LATER_PENINSULA = "A peninsula needs none now, but provision for one later: a cable or a raceway left for it. Ask how.", es "Una península no pide ninguno ahora, pero sí dejar cómo ponerlo después: un cable o una canalización que se le deja. Pregunte cómo.";
    BOTH = "{0} {1}", es "{0} {1}";

    BY_EDITION_ISLAND = "Islands, by edition", es "Islas, por edición";
    BY_EDITION_PENINSULA = "Peninsulas, by edition", es "Penínsulas, por edición";
    NOTE_ISLAND = "In 2017 one on each of 24 by 12 in or more; in 2020 one for 9 sq ft and one for each 18 more, or part of either; from 2023 none, but provision for one later.", es "En 2017 uno en cada una de 24 por 12 in o más; en 2020 uno por 9 sq ft y uno por cada 18 más, o parte de cualquiera; desde 2023 ninguno, pero sí dejar cómo ponerlo después.";
    BY_EDITION = "Islands and peninsulas, by edition", es "Islas y penínsulas, por edición";
    SPACES = "Each counter", es "Cada cubierta";
    SPACE = "Wall counter {0}, {1}", es "Cubierta de pared {0}, {1}";
    SHORT = "under 12 in, none", es "menos de 12 in, ninguno";
    ONE = "one, {0} from either end", es "uno, a {0} de cada punta";
    EVENLY = "{0}: {1} from the ends, then {2} apart", es "{0}: a {1} de las puntas, luego cada {2}";
    ISLAND_OF = "{0} {1}", es "{0} {1}";
    COUNT = "{0}", es "{0}";
    STEP = "Wall counter {0}", es "Cubierta de pared {0}";
    STEP_ISLAND = "{0} {1}: area past 9 sq ft, by 18", es "{0} {1}: área pasando de 9 sq ft, entre 18";

    GFCI = "All of them GFCI, tamper-resistant, and on two 20 A circuits or more that feed nothing else: from memory, ask.", es "Todos GFCI, tamper-resistant, y en dos o más circuitos de 20 A que no alimentan nada más: de memoria, pregunte.";
    BELOW = "None under the counter's overhang without asking: cords that hang there have scalded children.", es "Ninguno bajo el volado de la cubierta sin preguntar: los cordones que cuelgan ahí han quemado a niños.";
    DEAD = "Dead, and proved dead, before a box or a cable in the wall is touched.", es "Sin corriente, y comprobado sin corriente, antes de tocar una caja o un cable en la pared.";
    LICENSED = "Where the law says so, a licensed electrician adds receptacles; local amendments go first, and islands differ most.", es "Donde la ley lo dice, un electricista con licencia agrega contactos; los cambios locales van primero, y en las islas es donde más difieren.";

    DRAWING = "Each wall counter with its receptacles, to scale", es "Cada cubierta de pared con sus contactos, a escala";
    MEANS_COUNTER = "A counter", es "Una cubierta";
    MEANS_PLACE = "A receptacle", es "Un contacto";
    TWIN = "Wall counter {0}, {1} long: {2}.", es "Cubierta de pared {0}, {1} de largo: {2}.";
}
