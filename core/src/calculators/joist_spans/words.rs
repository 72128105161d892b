//! All that a person reads of ceiling joists.

use crate::words;

words! {
    NAME = "Ceiling joists, as a check on what is there", es "Viguetas de techo, revisión de lo que hay";
    ABOUT = "How far the code's table lets them span, and what hangs on them", es "Qué claro les permite la tabla del código, y qué les cuelga";
    NOTHING = "", es "";

    SPECIES = "Species and grade", es "Especie y grado";
    SPECIES_HINT = "From the stamp on a joist. Nothing is guessed of old lumber.", es "Del sello en una vigueta. De madera vieja no se adivina nada.";
    SIZE = "Size", es "Tamaño";
    SIZE_HINT = "Dressed sizes of today. Old lumber is another size.", es "Medidas cepilladas de hoy. La madera vieja mide distinto.";
    APART = "Joists apart", es "Separación de viguetas";
    APART_HINT = "Take the farthest two. Between these, the next one up.", es "Tome las dos más separadas. Si cae entre estas, la siguiente mayor.";
    ATTIC = "Attic above, row of the table", es "Ático arriba, fila de la tabla";
    ATTIC_HINT = "Pounds on a square foot. Heavy board or deep insulation belongs in the row with storage.", es "Libras por pie cuadrado. Tablaroca pesada o mucho aislante van en la fila con almacén.";
    SPAN = "Span there", es "Claro que hay";
    SPAN_HINT = "Level, from bearing to bearing.", es "A nivel, de apoyo a apoyo.";
    WHY_SPAN = "no ceiling joist spans that far.", es "ninguna vigueta de techo salva tanto claro.";
    CEILING = "Ceiling on them", es "Techo que cargan";
    SECOND = "And under it", es "Y debajo";
    SECOND_HINT = "New board over old stays in the weight.", es "Si va tablaroca nueva sobre vieja, la vieja sigue pesando.";
    FILL = "Insulation on it", es "Aislante encima";
    DEPTH = "Insulation, depth", es "Aislante, grueso";
    WHY_DEPTH = "no attic is filled that deep.", es "ningún ático se llena tanto.";
    DENSITY = "Insulation, weight of a cubic foot", es "Aislante, peso de un pie cúbico";
    DENSITY_HINT = "From the bag, settled.", es "De la bolsa, ya asentado.";
    WHY_DENSITY = "nothing loose is that heavy.", es "nada suelto pesa tanto.";
    ALSO = "Is any of this so?", es "¿Pasa algo de esto?";
    ALSO_HINT = "Each takes the joists out of the table.", es "Cada cosa saca las viguetas de la tabla.";
    TIES = "They are the roof's ties", es "Son los amarres del tejado";
    FLOOR = "An attic floor or a walkway is on them", es "Cargan un piso de ático o un pasillo";
    LOADED = "Ducts, equipment, a wall or roof braces stand or hang on them", es "Cargan o les cuelgan ductos, equipo, una pared o riostras del tejado";
    HARMED = "Some are cut, notched, bored, cracked or spliced", es "Algunas cortadas, con muesca, perforadas, rajadas o empalmadas";

    TOO_MUCH = "These numbers are past what is held. Look again.", es "Estos números pasan de lo que se puede calcular. Revíselos.";

    TABLE = "Span by the table", es "Claro según la tabla";
    STIFF = "By stiffness", es "Por rigidez";
    STRONG = "By strength", es "Por resistencia";
    THERE = "Span there", es "Claro que hay";
    JOISTS = "Joists weigh", es "Pesan las viguetas";
    LAYERS = "Ceiling weighs", es "Pesa el techo";
    FILL_WEIGHS = "Insulation weighs", es "Pesa el aislante";
    DEAD = "Joists, ceiling and insulation weigh", es "Pesan viguetas, techo y aislante";
    CHECK_SPAN = "Span of the joists", es "Claro de las viguetas";
    CHECK_DEAD = "Weight against the row's", es "Peso contra el de la fila";
    CHECK_SCOPE = "Outside the table", es "Fuera de la tabla";
    ASK_SCOPE = "These joists are outside the table.", es "Estas viguetas están fuera de la tabla.";
    ASK_WHO = "The table has no such joist: the engineer or the inspector tells.", es "La tabla no tiene esa vigueta: lo dice el ingeniero o el inspector.";
    NOTE_DEAD = "Take the row with storage, or less weight. Over that too: an engineer.", es "Tome la fila con almacén, o menos peso. Si también pasa de esa: un ingeniero.";

    WHY_PART = "What the table doesn't know", es "Lo que la tabla no sabe";
    ASK = "ask", es "pregunte";
    FIRST = "A check on what is there, and no design. New, moved or cut joists, ties and beams are a licensed engineer's work.", es "Es una revisión de lo que hay, no un diseño. Viguetas, amarres y vigas nuevos, movidos o cortados son trabajo de un ingeniero con licencia.";
    OLD = "Old ceilings, loose fill and vermiculite can hold asbestos: have them tested before anything is disturbed.", es "Los techos viejos, el aislante suelto y la vermiculita pueden tener asbesto: mándelos analizar antes de alterar nada.";
    STEP = "Walk on joists or planks only, lit, with live cables known. Ceilings carry nobody.", es "Pise solo viguetas o tablones, con luz, y sabiendo qué cables están vivos. Los techos no cargan a nadie.";
    SAG = "A joist that sags, is split or wet needs an engineer, whatever a table says. Trusses are in no such table.", es "Una vigueta pandeada, rajada o mojada necesita un ingeniero, diga lo que diga la tabla. Las armaduras (trusses) no están en ninguna tabla así.";
    LOCAL = "Local code and the building department decide.", es "Deciden el código local y la oficina de construcción.";
}
