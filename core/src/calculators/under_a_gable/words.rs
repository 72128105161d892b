//! All that a person reads of a ceiling under a gable.

use crate::words;

words! {
    NAME = "A ceiling raised into a gable", es "Subir el techo bajo dos aguas";
    ABOUT = "What is left flat, and what higher ties do to rafters, walls and nails: numbers for the engineer", es "Lo que queda plano, y lo que amarres más altos les hacen a pares, paredes y clavos: números para el ingeniero";
    NOTHING = "", es "";

    // What is asked.
    ROOF = "Roof over it", es "Tejado de arriba";
    ROOF_HINT = "Look in the attic. A ridge beam is posted down to a footing; a ridge board only keeps rafters apart.", es "Vea en el ático. Una viga de cumbrera baja con postes hasta una zapata; una tabla de cumbrera solo separa los pares.";
    UNKNOWN = "Not known", es "No se sabe";
    BOARD = "Rafters on a ridge board", es "Pares (rafters) en tabla de cumbrera";
    BEAM = "Rafters on a ridge beam", es "Pares (rafters) en viga de cumbrera";
    TRUSSES = "Trusses", es "Armaduras (trusses)";
    SPAN = "Span, outside of wall to outside", es "Claro, de pared a pared por fuera";
    SPAN_HINT = "At the top of the plates, square to the ridge. What is left flat is counted the same way: the walls come off it.", es "En lo alto de las soleras, a escuadra con la cumbrera. Lo que queda plano se cuenta igual: las paredes se le restan.";
    WHY_SPAN = "wider than that, nothing here is prescriptive.", es "más ancho que eso, aquí nada es prescriptivo.";
    PITCH = "Slope, rise in 12", es "Inclinación, subida en 12";
    PITCH_HINT = "A level and a tape on a rafter: up in 12 in along.", es "Un nivel y una cinta en un par: lo que sube en 12 in de avance.";
    WHY_PITCH = "steeper than that is a wall.", es "más inclinado que eso ya es pared.";
    UP = "Joists or ties raised by", es "Viguetas o amarres suben";
    UP_HINT = "Top of the plate to their underside. Empty: they stay.", es "De arriba de la solera a su cara de abajo. Vacío: se quedan.";
    RIDGE_UNDER = "Plate to the ridge's underside", es "Solera a cara baja de cumbrera";
    RIDGE_UNDER_HINT = "Measured plumb, from the top of the plate: the code's third is of this. Empty: only span and slope tell.", es "Medido a plomo, desde arriba de la solera: de esto es el tercio del código. Vacío: solo lo dicen claro e inclinación.";
    WHY_RIDGE = "no ridge of a house is that high.", es "ninguna cumbrera de casa es tan alta.";
    WHY_UP = "no room of a house goes up that far.", es "ningún cuarto de casa sube tanto.";
    SPACING = "Ties apart", es "Separación de amarres";
    SPACING_HINT = "Those that go on being ties, center to center.", es "Los que siguen siendo amarres, a centros.";
    WHY_SPACING = "that far apart nothing is tied.", es "tan separados no amarran nada.";
    GIVEN = "Roof load is given", es "Carga del tejado, cómo";
    GIVEN_HINT = "Live or snow from the building department; dead is what the roof itself weighs.", es "Viva o nieve, de la oficina de construcción; muerta es lo que pesa el tejado mismo.";
    ON_THE_FLAT = "All in one, on the flat", es "Toda junta, en planta";
    APART = "Dead on the slope, live or snow on the flat", es "Muerta en la pendiente, viva o nieve en planta";
    LOAD = "Roof load, on the flat", es "Carga del tejado, en planta";
    LOAD_HINT = "Dead and live or snow, over a square foot of floor plan.", es "Muerta y viva o nieve, sobre un pie cuadrado de planta.";
    DEAD = "Roof, along its slope", es "Tejado, por su pendiente";
    DEAD_HINT = "Wood roof with shingles, panel and board: about 15.", es "Tejado de madera con tejas (shingles), panel y tablaroca: cerca de 15.";
    LIVE = "Live or snow, on the flat", es "Viva o nieve, en planta";
    LIVE_HINT = "Roof live load is often 20; snow is local.", es "La viva de tejado suele ser 20; la nieve es local.";
    WHY_LOAD = "no house roof is built for that.", es "ningún tejado de casa se hace para eso.";
    STOPS = "Is any of this so?", es "¿Pasa algo de esto?";
    STOPS_HINT = "Each takes the gable out of the code's tables.", es "Cada cosa lo saca de las tablas del código.";
    CUT = "A tie is cut, notched or spliced", es "Un amarre cortado, con muesca o empalmado";
    ACROSS = "Ties don't run along the rafters, wall to wall", es "Los amarres no van con los pares, de pared a pared";
    PURLINS = "Purlins or braces hold the rafters", es "Correas (purlins) o riostras cargan los pares";
    UNEQUAL = "Sides differ in span, slope or load", es "Los lados difieren en claro, inclinación o carga";
    HIPS = "Hips, valleys or dormers are near", es "Limatesas (hips), limahoyas (valleys) o dormers cerca";
    NAILS = "Nails in a heel joint", es "Clavos en unión de talón";
    NAILS_HINT = "From the heel-joint table of your adopted code, ties at the plate.", es "De la tabla de uniones de talón (heel joint) de su código adoptado, con amarres en la solera.";
    WHY_NAILS = "no heel joint takes that many.", es "ninguna unión de talón lleva tantos.";
    INSULATION = "Insulation wanted", es "Aislante que se quiere";
    NONE = "Not asked", es "No se pide";
    BY_R = "By R", es "Por R";
    BY_DEPTH = "By depth", es "Por grueso";
    R = "R", es "R";
    R_HINT = "The adopted energy code has it.", es "Está en el código de energía adoptado.";
    WHY_R = "no house needs that much.", es "ninguna casa necesita tanto.";
    R_PER_INCH = "R of an inch", es "R de una pulgada";
    R_PER_INCH_HINT = "From the bag.", es "De la bolsa.";
    WHY_R_PER_INCH = "nothing sold holds that much.", es "nada que se venda aísla tanto.";
    DEPTH = "Depth", es "Grueso";
    WHY_DEPTH = "no attic is filled that deep.", es "ningún ático se llena tanto.";
    HEEL = "Plate to top of rafter, plumb", es "De solera a lo alto del par, a plomo";
    HEEL_HINT = "At the outside of the wall.", es "Por fuera de la pared.";
    RAFTER = "Depth of a rafter", es "Peralte de un par";
    RAFTER_HINT = "Measured, square to its slope.", es "Medido, a escuadra con su pendiente.";
    WHY_RAFTER = "no rafter is that deep.", es "ningún par tiene tanto peralte.";

    // What can't be taken.
    TOO_HIGH = "The ridge is {0} over the plate. It has to be less.", es "La cumbrera está a {0} sobre la solera. Tiene que ser menos.";
    TOO_HIGH_LOW = "Under 3 in 12 no tie does: the ridge is a beam for an engineer to design. It is {0} over the plate, and ties have to be lower.", es "Con menos de 3 en 12 ningún amarre sirve: la cumbrera es una viga que diseña un ingeniero. Está a {0} sobre la solera, y los amarres tienen que ir más bajos.";
    RIDGE_HIGH = "By span and slope the rafters meet {0} over the plate, and the ridge's underside is no higher. Measure it, the span or the slope again.", es "Por claro e inclinación los pares se juntan a {0} sobre la solera, y la cara de abajo de la cumbrera no va más alta. Mídala otra vez, o el claro o la inclinación.";
    TOO_MUCH = "These numbers are past what is held. Look again.", es "Estos números pasan de lo que se puede calcular. Revíselos.";

    // What comes out.
    FLAT = "Flat width left, not flat to the eaves", es "Ancho plano que queda, no plano hasta los aleros";
    FLAT_ALL = "Flat width", es "Ancho plano";
    RISE = "Ridge over plate, by span and slope", es "Cumbrera sobre solera, por claro e inclinación";
    SHARE = "Ties, share of the ridge's height", es "Amarres, parte de la altura de la cumbrera";
    ON_FLAT = "Roof load, on the flat", es "Carga del tejado, en planta";
    THRUST_NOW = "Thrust now, ties at the plate", es "Empuje ahora, amarres en la solera";
    THRUST = "Thrust on each foot of wall", es "Empuje en cada pie de pared";
    TIE_NOW = "Tension now, ties at the plate", es "Tensión ahora, amarres en la solera";
    TIE = "Tension in one tie", es "Tensión en un amarre";
    RIDGE = "Ridge beam carries", es "La viga de cumbrera carga";
    WALL = "Each wall carries", es "Cada pared carga";
    RAFTERS = "Rafter spans, times", es "Claros de pares, por";
    NAIL_FACTOR = "Heel nails, times", es "Clavos de talón, por";
    NAIL_COUNT = "Heel nails", es "Clavos de talón";
    EAVE = "Left for insulation at the wall", es "Queda para aislante en la pared";
    SLOPE = "Left for insulation in the slope", es "Queda para aislante en la pendiente";
    WANTED = "Insulation, depth wanted", es "Aislante, grueso que se quiere";

    CHECK_THIRD = "Ties over the plate", es "Amarres sobre la solera";
    CHECK_SLOPE = "Slope of the roof", es "Inclinación del tejado";
    CHECK_SPACING = "Ties apart", es "Separación de amarres";
    CHECK_MOVED = "Ties moved", es "Amarres movidos";
    CHECK_SCOPE = "Outside the tables", es "Fuera de las tablas";
    CHECK_EAVE = "Insulation at the wall", es "Aislante en la pared";
    CHECK_FILL = "Insulation in the slope", es "Aislante en la pendiente";
    ASK_RIDGE = "By span and slope only. The code measures to the ridge's underside, which is lower: measure it.", es "Solo por claro e inclinación. El código mide hasta la cara de abajo de la cumbrera, que va más baja: mídala.";
    ASK_MOVED = "A licensed engineer's to say, whatever the other lines say.", es "Lo dice un ingeniero con licencia, digan lo que digan los otros renglones.";
    ASK_BEAM = "Whether the ridge is a beam, carried down to footings: the engineer's to say.", es "Si la cumbrera es una viga, llevada hasta zapatas: lo dice el ingeniero.";
    ASK_SCOPE = "This gable is outside the code's tables.", es "Este tejado está fuera de las tablas del código.";
    ASK_ROOF = "Find out what the roof is first.", es "Averigüe primero qué es el tejado.";
    ASK_SPACING = "2024 asks for no more. Ask which edition is adopted.", es "2024 no permite más. Pregunte qué edición está adoptada.";
    ASK_AIR = "The 1 in of air is from memory. Ask; a roof made without vents differs.", es "El espacio de 1 in es de memoria. Pregunte; un tejado sin ventilas es distinto.";

    WHY_PART = "Why it takes an engineer", es "Por qué hace falta un ingeniero";
    STOP = "stop", es "alto";
    ROWS_PART = "The code's rows taken", es "Las filas del código que se usan";
    ROWS_NOTE = "The ridge's underside isn't put in: taken as {0} under where the rafters meet.", es "No se puso la cara de abajo de la cumbrera: se toma a {0} abajo de donde se juntan los pares.";
    ROW_RAFTERS = "Rafter spans, ties at {0}", es "Claros de pares, amarres a {0}";
    ROW_NAILS = "Heel nails, ties at {0}", es "Clavos de talón, amarres a {0}";
    TIMES = "× {0}", es "× {0}";

    FIRST = "Moving joists or ties, cutting trusses, and sizing a beam, post or footing is a licensed engineer's work: these numbers are for that talk.", es "Mover viguetas o amarres, cortar armaduras (trusses) y dimensionar una viga, un poste o una zapata es trabajo de un ingeniero con licencia: estos números son para esa plática.";
    FIRST_TRUSS = "Nothing of a truss is moved, cut, notched or spliced without its designer: no numbers here for that.", es "Nada de una armadura (truss) se mueve, corta, muesca o empalma sin quien la diseñó: aquí no hay números para eso.";
    SHORE = "Ties hold walls and ridge. None comes out before its replacement is in, or before shoring that an engineer has drawn.", es "Los amarres sostienen paredes y cumbrera. Ninguno sale antes de que esté puesto su reemplazo, o antes del apuntalamiento que dibujó un ingeniero.";
    LATHER = "Old ceilings, loose fill and vermiculite can hold asbestos, old paint lead: have them tested first. Live cables run over ceilings.", es "Los techos viejos, el aislante suelto y la vermiculita pueden tener asbesto, y la pintura vieja plomo: mándelos analizar primero. Arriba de los techos corren cables vivos.";
    WIND = "Drifted snow, wind uplift, walls over 10 ft and gable walls that lose their ceiling are not in these numbers.", es "La nieve acumulada, el viento que levanta, las paredes de más de 10 ft y las paredes del hastial que pierden su techo no están en estos números.";
    LOCAL = "Local code and the building department decide.", es "Deciden el código local y la oficina de construcción.";

    DRAWING = "The gable in section, to scale", es "El tejado a dos aguas en corte, a escala";
    RAFTER_LINE = "A rafter", es "Un par (rafter)";
    TIE_BEFORE = "The ties now", es "Los amarres ahora";
    TIE_AFTER = "The ties, raised", es "Los amarres, subidos";
    LOWER_THIRD = "The lower third of the rise", es "El tercio de abajo de la subida";
    ABOVE_THIRD = "Over a third of the rise", es "Más de un tercio de la subida";
    WALL_LINE = "A wall", es "Una pared";
    LEGEND = "dashed: ties now; heavy: raised", es "punteado: amarres ahora; grueso: subidos";
    LEGEND_THIRD = "tone: lower third", es "tono: tercio de abajo";
    LEGEND_OVER = "tone: lower third; hatch: over it", es "tono: tercio de abajo; rayado: arriba de él";
    TWIN = "A gable {0} wide, its ridge {1} over the plates.", es "Dos aguas de {0} de ancho, su cumbrera {1} sobre las soleras.";
    TWIN_UP = "The ties go from the plates, dashed, up by {0}, where {1} are left between the rafters.", es "Los amarres suben {0} desde las soleras (punteado), donde quedan {1} entre los pares.";
    TWIN_OVER = "They stand over the lower third, which ends at {0}; what is between is hatched.", es "Quedan arriba del tercio de abajo, que termina a {0}; lo de en medio va rayado.";
    TWIN_NEAR = "By span and slope the lower third ends at {0}; under the ridge itself it ends lower.", es "Por claro e inclinación el tercio de abajo termina a {0}; bajo la cumbrera misma termina más abajo.";
    TWIN_IN = "They stand in the lower third, which ends at {0}.", es "Quedan en el tercio de abajo, que termina a {0}.";
}
