//! All that a person reads of stripping texture.

use crate::words;

words! {
    NAME = "Stripping a textured ceiling", es "Raspar un techo con textura";
    ABOUT = "Water, bags, plastic and hours, once a result has opened it", es "Agua, bolsas, plástico y horas, una vez que un resultado lo abrió";
    NOTHING = "", es "";

    LONG = "One side", es "Un lado";
    LONG_HINT = "From the room.", es "Del cuarto.";
    WIDE = "The other", es "El otro";
    AREA = "Ceiling area, of another shape", es "Área del techo, de otra forma";
    AREA_HINT = "Plastic still goes by both sides.", es "El plástico sigue yendo por los dos lados.";
    WHY_ROOM = "work it in parts.", es "hágalo por partes.";
    HEIGHT = "Floor to ceiling", es "De piso a techo";
    PAINTED = "The texture is", es "La textura está";
    PAINTED_HINT = "Once the hold is open, wet a square foot: bare texture drinks it.", es "Ya abierto el alto, moje un pie cuadrado: la textura sin pintar se chupa el agua.";
    NOT_SAID = "Not said", es "No se dijo";
    UNPAINTED = "Bare", es "Sin pintar";
    IS_PAINTED = "Painted", es "Pintada";
    PATCH = "Off a test square foot, dried", es "De un pie cuadrado de prueba, seco";
    PATCH_HINT = "Once the hold is open, scrape one square foot, dry it, weigh it: it speaks for the whole ceiling.", es "Ya abierto el alto, raspe un pie cuadrado, séquelo, péselo: habla por todo el techo.";
    THICK = "Thickness, on average", es "Grueso, en promedio";
    EMPTY = "Empty takes the usual range.", es "Vacío toma el rango común.";
    DENSITY = "Weight, dry", es "Peso, seca";
    WATER = "Water for 100 sq ft, a pass", es "Agua por 100 sq ft, una pasada";
    PASSES = "Passes of water", es "Pasadas de agua";
    SPRAYER = "Sprayer holds", es "Al rociador le caben";
    BULKING = "Scrapings heap up, times", es "Lo raspado abulta, veces";
    BAG = "A bag holds", es "A una bolsa le caben";
    CARRIED = "A bag weighs at most", es "Una bolsa pesa como máximo";
    WHY_MUCH = "look at it again.", es "revíselo otra vez.";
    SPREAD = "Under plastic", es "Bajo plástico";
    ALL_FLOOR = "The whole floor", es "Todo el piso";
    A_PATCH = "6 ft round a patch, in an open room", es "6 ft alrededor de un parche, en un cuarto abierto";
    TURN_UP = "Turned up each wall", es "Subido en cada pared";
    WALLS = "Walls are hung with plastic", es "Se cuelga plástico en las paredes";
    ROLL = "Roll, wide", es "Rollo, ancho";
    LAP = "Laps", es "Traslapes";
    PEOPLE = "Who work", es "Personas que trabajan";
    PRICES = "Prices you were given", es "Precios que le dieron";
    PRICES_HINT = "In whole dollars; told while it is held.", es "En dólares enteros; se muestran mientras está detenido.";
    TOO_FAR_OVER = "Less than the roll, {0}.", es "Menos que el rollo, {0}.";

    VOLUME = "Texture", es "Textura";
    DRY = "It weighs, dry", es "Pesa, seca";
    SPRAYED = "Water to spray", es "Agua por rociar";
    FILLS = "Sprayer fills", es "Llenadas del rociador";
    WET = "Wet debris", es "Escombro mojado";
    WET_RANGE = "Wet debris, {0} to {1}", es "Escombro mojado, {0} a {1}";
    HEAPED = "Heaped", es "Amontonado";
    BAGS = "Bags", es "Bolsas";
    HOURS = "One worker's hours", es "Horas de un trabajador";
    CREW = "The crew's hours", es "Horas de la cuadrilla";
    STRIPPED = "Ceiling to strip", es "Techo por raspar";
    FLOOR = "Floor plastic", es "Plástico de piso";
    WIDTHS = "Widths of the roll", es "Anchos del rollo";
    ALONG_FIRST = "Roll for the floor, along the first side", es "Rollo para el piso, por el primer lado";
    ALONG_OTHER = "Roll for the floor, along the other", es "Rollo para el piso, por el otro";
    ROLL_ALL = "Roll to buy, strips cut whole", es "Rollo por comprar, tiras enteras";
    WALL_PLASTIC = "Wall plastic", es "Plástico de pared";
    WALL_ROLL = "Roll for the walls", es "Rollo para las paredes";
    LAID = "{0} × {1} = {2}", es "{0} × {1} = {2}";
    WAYS = "Which way the roll goes", es "Para qué lado va el rollo";
    RANGES = "Low, likely, high", es "Bajo, probable, alto";
    RANGES_NOTE = "Habits, not rules: weigh and measure your own.", es "Costumbres, no reglas: pese y mida lo suyo.";
    SOAKS = "Each pass soaks", es "Cada pasada remoja";
    WETTED = "Wetted at once", es "Mojado de una vez";
    DRIVERS = "What drives them", es "De qué dependen";
    THREE = "{0} · {1} · {2}", es "{0} · {1} · {2}";
    ONE = "{0}", es "{0}";

    CHECK_WATER = "Takes water", es "Absorbe agua";
    ASK_WATER = "Wet a square foot first: painted texture won't take water.", es "Moje primero un pie cuadrado: la textura pintada no absorbe el agua.";
    CHECK_HIGH = "Ceiling, for a bench", es "Techo, para una banca";

    M_FLOOR = "Floor plastic, 6 mil, {0} wide; stripping counts it too", es "Plástico de piso, 6 mil, {0} de ancho; raspar también lo cuenta";
    M_WALLS = "Wall plastic, 6 mil, {0} wide", es "Plástico de pared, 6 mil, {0} de ancho";
    M_BAGS = "Bags, heavy", es "Bolsas, gruesas";

    NEXT = "Scrape and weigh a test square foot first; until then bags are bought for the high end.", es "Primero raspe y pese un pie cuadrado de prueba; hasta entonces las bolsas se compran para lo más alto.";
    NEXT_WEIGHED = "Wet, soak, scrape, bag as you go.", es "Moje, remoje, raspe, embolse sobre la marcha.";
    POWER = "Power off at the ceiling's boxes, tested dead, boxes and holes taped: water runs into them.", es "Corriente apagada en las cajas del techo, probadas sin corriente, cajas y agujeros con cinta: el agua se les mete.";
    SEAL = "Plastic over registers and doors; one way in, with a flap; out through it only bagged and wiped.", es "Plástico en rejillas y puertas; una sola entrada, con cortina; por ahí nada sale si no va embolsado y limpio.";
    MASK = "A fit-tested N95 at least, goggles, hood. Where lead was found, half-mask P100. Wet it; never dry.", es "Un N95 con prueba de ajuste al menos, goggles, capucha. Donde se halló plomo, media cara P100. Mójelo; nunca en seco.";
    SAG = "Too wet, board sags and tape lets go. Scrape as soon as it gives.", es "Demasiado mojada, la tablaroca se pandea y la cinta se suelta. Raspe en cuanto afloje.";
    OTHER = "Another layer, color or joint compound under it is another material: stop, and have it sampled.", es "Otra capa, color o pasta debajo es otro material: pare, y mande tomarle muestras.";
}
