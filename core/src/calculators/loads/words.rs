//! All that a person reads of loads.

use crate::words;

words! {
    NAME = "Loads, for the engineer", es "Cargas, para el ingeniero";
    ABOUT = "What a beam or a bearing wall is asked to carry. It sizes nothing", es "Lo que se le pide cargar a una viga o pared de carga. No dimensiona nada";
    NOTHING = "", es "";

    // What is asked.
    LEFT = "Joist span on one side", es "Claro de viguetas, un lado";
    LEFT_HINT = "Support to support. Empty: none.", es "De apoyo a apoyo. Vacío: ninguno.";
    RIGHT = "Joist span on the other side", es "Claro de viguetas, otro lado";
    WHY_SPAN = "no joist of a house spans that far.", es "ninguna vigueta de casa salva tanto claro.";
    THROUGH = "Joists run through over it", es "Las viguetas pasan corridas encima";
    THROUGH_HINT = "One piece over both spans, not lapped or butted there.", es "De una pieza en los dos claros, sin traslape ni tope ahí.";
    DEAD = "Dead load on the joists", es "Carga muerta en las viguetas";
    DEAD_HINT = "What stays: joists, floor, ceiling, insulation.", es "Lo que se queda: viguetas, piso, techo, aislante.";
    LIVE = "Live load on the joists", es "Carga viva en las viguetas";
    LIVE_HINT = "What comes and goes: people, furniture, storage.", es "Lo que va y viene: gente, muebles, cosas guardadas.";
    WHY_LOAD = "no house is built for that.", es "ninguna casa se hace para eso.";
    ROOF = "A roof bears here too", es "También apoya aquí un tejado";
    ROOF_WIDE = "Roof carried here, level width", es "Tejado que carga aquí, ancho a nivel";
    ROOF_WIDE_HINT = "Half of each rafter span that ends here.", es "La mitad de cada claro de pares que termina aquí.";
    ROOF_DEAD = "Roof, dead, on the flat", es "Tejado, muerta, en planta";
    ROOF_DEAD_HINT = "What it weighs on its slope is more on the flat.", es "Lo que pesa en su pendiente es más en planta.";
    ROOF_LIVE = "Roof live or snow, on the flat", es "Viva de tejado o nieve, en planta";
    ROOF_LIVE_HINT = "Whichever is more; snow from the building department.", es "La que sea mayor; la nieve, de la oficina de construcción.";
    WALL = "Wall or other weight on its line", es "Pared u otro peso en su línea";
    WALL_HINT = "Of a foot. A 2x4 wall with board both sides, 8 ft high: about 48.", es "Por pie. Una pared de 2x4 con tablaroca en los dos lados, de 8 ft de alto: cerca de 48.";
    BEAM = "Beam's own weight", es "Peso propio de la viga";
    BEAM_HINT = "Of a foot. The engineer's choice; 15 is a start.", es "Por pie. Lo elige el ingeniero; 15 es para empezar.";
    WHY_LINE = "no line in a house carries that.", es "ninguna línea de una casa carga eso.";
    SPAN = "Beam span", es "Claro de la viga";
    SPAN_HINT = "Middle of bearing to middle of bearing.", es "De medio apoyo a medio apoyo.";
    WHY_BEAM = "no beam of a house spans that far.", es "ninguna viga de casa salva tanto claro.";
    POINT = "A point load on it too", es "También una carga puntual";
    POST = "Point load", es "Carga puntual";
    POINT_LOAD = "How much", es "Cuánto";
    WHY_POINT = "no post in a house carries that.", es "ningún poste de casa carga eso.";
    POINT_AT = "From the left end", es "Desde la punta izquierda";
    POINT_KIND = "It is", es "Es";
    KIND_DEAD = "Dead", es "Muerta";
    KIND_LIVE = "Live", es "Viva";
    KIND_ROOF = "Roof live or snow", es "Viva de tejado o nieve";
    RESTS = "Bearing of an end", es "Apoyo de una punta";
    RESTS_HINT = "Only if it is asked.", es "Solo si se pide.";
    ON = "The heavier end bears on", es "La punta más pesada apoya en";
    ON_HINT = "The weaker of beam and plate counts.", es "Cuenta lo más débil entre viga y solera.";
    WIDE = "Bearing, across the beam", es "Apoyo, a lo ancho de la viga";
    WIDE_HINT = "What really touches: the narrower of beam and plate, or a post's foot.", es "Lo que de veras toca: lo más angosto entre viga y solera, o el pie de un poste.";
    LONG = "Bearing, along the beam", es "Apoyo, a lo largo de la viga";
    WHY_BEARING = "no bearing in a house is that long.", es "ningún apoyo de casa es tan largo.";
    SHORING = "Shoring while it is open", es "Apuntalado mientras está abierto";
    SHORE_DEAD = "Hanging on the joists then", es "Cuelga entonces de las viguetas";
    SHORE_DEAD_HINT = "Plaster stays on until it is stripped: count it.", es "El yeso sigue puesto hasta que se quita: cuéntelo.";
    WORK = "People and stacks on them", es "Gente y montones encima";
    WORK_HINT = "20 is common.", es "20 es lo común.";
    POSTS = "Shoring posts apart", es "Separación de puntales";
    WHY_POSTS = "nothing holds between posts so far apart.", es "nada aguanta entre puntales tan separados.";

    // What can't be taken.
    ONE_SIDE = "Joists that run through have a span on both sides. Put in both.", es "Las viguetas corridas tienen claro en los dos lados. Ponga los dos.";
    NO_LOAD = "Nothing bears here yet. Put in a span, a roof, a weight or a point.", es "Todavía no apoya nada aquí. Ponga un claro, un tejado, un peso o una carga puntual.";
    SHORE_WHAT = "Shoring holds joists up: put in the span of those that it holds.", es "El apuntalamiento sostiene viguetas: ponga el claro de las que sostiene.";
    POINT_NEEDED = "A point load needs its pounds.", es "Una carga puntual necesita sus libras.";
    PAST_END = "The beam is {0} long. It has to be less.", es "La viga mide {0} de largo. Tiene que ser menos.";
    TOO_MUCH = "These numbers are past what is held. Look again.", es "Estos números pasan de lo que se puede calcular. Revíselos.";

    // What comes out.
    LINE = "Line load, for the engineer", es "Carga lineal, para el ingeniero";
    TRIBUTARY = "Tributary width", es "Ancho tributario";
    FACTOR = "Joists run through, times", es "Viguetas corridas, por";
    WIDTH = "Tributary width, joists run through", es "Ancho tributario, viguetas corridas";
    DEAD_LINE = "Dead, D", es "Muerta, D";
    LIVE_LINE = "Live, L", es "Viva, L";
    ROOF_LINE = "Roof live or snow, R", es "Viva de tejado o nieve, R";
    REACTION_LEFT = "Reaction, left end, for the engineer", es "Reacción, punta izquierda, para el ingeniero";
    REACTION_RIGHT = "Reaction, right end, for the engineer", es "Reacción, punta derecha, para el ingeniero";
    LINE_OF = "Line load, {0}", es "Carga lineal, {0}";
    LEFT_OF = "Reaction, left end, {0}", es "Reacción, punta izquierda, {0}";
    RIGHT_OF = "Reaction, right end, {0}", es "Reacción, punta derecha, {0}";
    SHORE_LEFT = "Shoring, one side", es "Apuntalamiento, un lado";
    SHORE_RIGHT = "Shoring, other side", es "Apuntalamiento, otro lado";
    POST_LEFT = "One shoring post, one side", es "Un puntal, un lado";
    POST_RIGHT = "One shoring post, other side", es "Un puntal, otro lado";
    STRESS = "Bearing stress, across the grain", es "Esfuerzo de apoyo, a través de la veta";
    PUBLISHED = "Published for {0}", es "Publicado para {0}";
    LENGTH = "Along the beam, by that value", es "A lo largo de la viga, con ese valor";
    LEAST = "Code's least", es "Mínimo del código";

    CHECK_SIZED = "Beams, posts and footings, for the engineer to size", es "Vigas, postes y zapatas, que dimensiona el ingeniero";
    ASK_SIZED = "None is sized here: these are the loads to bring.", es "Aquí no se dimensiona ninguna: estas son las cargas para llevarle.";
    CHECK_THROUGH = "Joists running through", es "Viguetas corridas";
    ASK_THROUGH = "How they share is the engineer's to say; a cut over the support changes it, and a short end may lift.", es "Cómo se reparten lo dice el ingeniero; un corte sobre el apoyo lo cambia, y una punta corta se puede levantar.";

    SUMS = "Added up, for the engineer", es "Sumadas, para el ingeniero";
    SUM = "{0}, ends {1} and {2}", es "{0}, puntas {1} y {2}";
    SUM_EVEN = "{0}, each end {1}", es "{0}, cada punta {1}";
    BEARING = "Bearing, for the engineer", es "Apoyo, para el ingeniero";
    BEARING_NOTE = "Side by side, and no verdict. It sizes no post: buckling, nails, and the path down to a footing are checks of their own.", es "Lado a lado, sin veredicto. No dimensiona ningún poste: el pandeo, los clavos y el camino hasta una zapata son revisiones aparte.";
    SHORE_PART = "Shoring, for the engineer", es "Apuntalamiento, para el ingeniero";
    SHORE_NOTE = "Both sides, carried down to ground or to what holds it, never on bare subfloor over air.", es "En los dos lados, llevado hasta el suelo o lo que lo sostenga, nunca sobre subpiso solo con hueco abajo.";
    SHORE_LEFT_OUT = "Not in it", es "No se cuenta";
    SHORE_LEFT_OUT_IS = "roof, weight and point on the same line", es "tejado, peso y carga puntual en la misma línea";
    ROW = "{0}", es "{0}";

    FIRST = "Moving joists or ties, removing a bearing wall, sizing a beam, post or footing is a licensed engineer's work. These are loads to talk about, no sizes.", es "Mover viguetas o amarres, quitar una pared de carga, dimensionar una viga, un poste o una zapata es trabajo de un ingeniero con licencia. Estas son cargas para platicarlas, no tamaños.";
    SHORE_FIRST = "Shore before you cut, on both sides, as the engineer drew it. Nobody under a wall that is open and not shored.", es "Apuntale antes de cortar, en los dos lados, como lo dibujó el ingeniero. Nadie debajo de una pared abierta y sin apuntalar.";
    OLD = "Before walls and ceilings are opened: asbestos and lead tests, live wires, gas and water known.", es "Antes de abrir paredes y techos: análisis de asbesto y plomo, y saber qué hay de cables vivos, gas y agua.";
    WIND = "Wind, earthquake, drifted snow and loads from floors above are not in it unless you put them in.", es "Viento, sismo, nieve acumulada y cargas de pisos de arriba no se cuentan si usted no las pone.";
    LOCAL = "Local code and the building department decide.", es "Deciden el código local y la oficina de construcción.";

    DRAWING = "The beam with its loads, to scale", es "La viga con sus cargas, a escala";
    BEAM_LINE = "The beam", es "La viga";
    EVEN_LOAD = "The even load", es "La carga pareja";
    POINT_ARROW = "The point load", es "La carga puntual";
    END_ARROW = "What an end carries", es "Lo que carga una punta";
    LABEL_POINT = "{0} at {1}", es "{0} a {1}";
    TWIN = "A beam of {0}, {1} along it. Worst sum: {2}.", es "Una viga de {0}, con {1} a lo largo. Peor suma: {2}.";
    TWIN_POINT = "A point of {0} stands {1} from its left end.", es "Una carga puntual de {0} está a {1} de su punta izquierda.";
    TWIN_ENDS = "The left end carries {0}, the right end {1}; arrows are to one scale, the even load's block as high as half of it.", es "La punta izquierda carga {0}, la derecha {1}; las flechas van a una misma escala, el bloque de la carga pareja con la mitad de su altura.";
}
