//! All that a person reads of the three ways.

use crate::words;

words! {
    NAME = "Three ways with a textured ceiling", es "Tres maneras con un techo con textura";
    ABOUT = "Strip and skim, board over, or tear out and board anew: side by side", es "Raspar y skim, tablaroca encima, o demoler y tablaroca nueva: lado a lado";
    NOTHING = "", es "";

    LONG = "One side", es "Un lado";
    LONG_HINT = "Across the joists: boards run along it.", es "Cruzando las viguetas: las hojas corren por él.";
    WIDE = "The other", es "El otro";
    AREA = "Ceiling area, of another shape", es "Área del techo, de otra forma";
    WHY = "look at it again.", es "revíselo otra vez.";
    HEIGHT = "Floor to ceiling", es "De piso a techo";
    HEIGHT_HINT = "To the old board, under the texture.", es "Hasta la tablaroca vieja, bajo la textura.";
    PAINTED = "The texture is", es "La textura está";
    TEXTURE = "Texture, on average", es "Textura, en promedio";
    TEXTURE_HINT = "Left under a new board too. Zero once it is scraped off.", es "También la que se queda bajo una hoja nueva. Cero una vez raspada.";
    OLD = "Board that is there", es "Tablaroca que ya está";
    OVER = "Board over it", es "Tablaroca encima";
    NEW = "Board on bare framing", es "Tablaroca en estructura limpia";
    BOARD = "Boards, long", es "Hojas, largo";
    BOARD_HINT = "The longest that gets in.", es "La más larga que entra.";
    SPACING = "Joists, apart", es "Viguetas, separación";
    SPACING_HINT = "Board ends land on them.", es "Las puntas de las hojas caen en ellas.";
    WASTE = "Cut away", es "Recorte";
    WASTE_HINT = "Of another shape alone: of two sides, boards are laid out.", es "Solo con otra forma: con dos lados, se acomodan las hojas.";
    BOXES = "Boxes in the ceiling", es "Cajas en el techo";
    BEHIND = "Their fronts behind the old board", es "Sus frentes, atrás de la tablaroca vieja";
    BEHIND_HINT = "Flush is zero.", es "Al ras es cero.";
    ATTIC = "Above", es "Arriba";
    JOISTS = "Joists weigh", es "Las viguetas pesan";
    JOISTS_HINT = "2x6 at 16 in: 1.51 psf. Empty if not known.", es "2x6 a 16 in: 1.51 psf. Vacío si no se sabe.";
    INSULATION = "Insulation weighs", es "El aislante pesa";
    INSULATION_HINT = "A 5-1/2 in batt: 0.46 psf. Loose fill weighs more. Empty if not known.", es "Una colcha de 5-1/2 in: 0.46 psf. El suelto pesa más. Vacío si no se sabe.";
    TEMPERATURE = "While it dries", es "Mientras se seca";
    HUMIDITY = "Humidity", es "Humedad";
    CARRIES = "A load weighs at most", es "Un viaje pesa como máximo";
    BED = "A load holds at most", es "A un viaje le cabe como máximo";
    RATES = "Your rates", es "Sus precios";
    RATES_HINT = "What is empty isn't counted.", es "Lo vacío no se cuenta.";
    RATE_HOUR = "An hour's work", es "Una hora de trabajo";
    RATE_BOARD = "A board", es "Una hoja";
    RATE_PAIL = "A pail of compound", es "Una cubeta de pasta";
    RATE_LOAD = "A load to the dump", es "Un viaje al basurero";
    PRICES = "Prices you were given", es "Precios que le dieron";
    PRICES_HINT = "In whole dollars; told while it is held.", es "En dólares enteros; se muestran mientras está detenido.";

    STRIP = "Strip and skim", es "Raspar y skim";
    OVER_IT = "Board over", es "Tablaroca encima";
    TEAR_OUT = "Tear out, board anew", es "Demoler y tablaroca nueva";

    FEWEST = "{0}, fewest hours, likely", es "{0}, menos horas, lo probable";
    OF = "{0}, {1}", es "{0}, {1}";
    THREE = "{0} · {1} · {2}", es "{0} · {1} · {2}";
    ONE = "{0}", es "{0}";
    NONE = "none", es "nada";
    SIDE_BY_SIDE = "Side by side", es "Lado a lado";
    ORDER = "Strip and skim · board over · tear out", es "Raspar y skim · tablaroca encima · demoler";
    RANGES = "Low, likely, high", es "Bajo, probable, alto";
    LOST = "Height lost", es "Altura perdida";
    HIGH = "Ceiling, after", es "Techo, después";
    BACK = "Boxes behind it, as they are", es "Cajas atrás de él, como están";
    SCREW = "Screws", es "Tornillos";
    SCREW_NEEDED = "Screw needed", es "Tornillo necesario";
    LOAD = "Board on framing", es "Tablaroca sobre la estructura";
    CARRIED = "Boarded over, all the joists carry", es "Tablaroca encima, todo lo que cargan las viguetas";
    OUT = "Weight out", es "Peso que sale";
    INTO = "Weight in", es "Peso que entra";
    LOADS = "Dump loads", es "Viajes al basurero";
    BOARDS = "Boards", es "Hojas";
    LAID_OUT = "Boards, laid out", es "Hojas, acomodadas";
    BY_JOINTS = "Compound, by the joints laid out", es "Pasta, por las juntas acomodadas";
    BY_AREA = "Compound, by the area's rule", es "Pasta, por la regla del área";
    PAILS = "Pails of compound", es "Cubetas de pasta";
    DAYS = "Days to dry", es "Días para secar";
    HOURS = "One worker's hours", es "Horas de un trabajador";
    MONEY = "Money, of your rates", es "Dinero, con sus precios";
    TORN = "Old board, torn out", es "Tablaroca vieja, demolida";
    HEAP_LEAST = "It heaps up to, at least", es "Amontonada llega a, al menos";
    HEAP_MOST = "It heaps up to, at most", es "Amontonada llega a, como máximo";
    TRIM = "Trim", es "Molduras";
    TRIM_STRIP = "stays, masked", es "se quedan, tapadas";
    TRIM_OVER = "crown comes off and is cut anew", es "la moldura de techo se quita y se corta de nuevo";
    TRIM_OUT = "crown comes off and goes back", es "la moldura de techo se quita y se repone";
    EXTENDERS = "Box extenders", es "Extensiones de caja";

    HOLDS = "What each is held by", es "Qué alto detiene a cada una";
    HOLDS_NOTE = "Each way by itself, asbestos and paint, before anybody starts: this comparison opens none.", es "Cada manera por separado, asbesto y pintura, antes de que alguien empiece: esta comparación no abre ninguno.";
    HELD_BY = "{0}: {1}", es "{0}: {1}";
    HELD_BY_TWO = "{0}; and by itself {1}: {2}", es "{0}; y por separado {1}: {2}";

    CHECK_HEIGHT = "{0}, ceiling after", es "{0}, techo después";
    ASK_LOW = "Too low for a room to live in; a bath or a laundry may be 6 ft 8 in. Ask.", es "Demasiado bajo para un cuarto habitable; un baño o una lavandería puede tener 6 ft 8 in. Pregunte.";
    CHECK_BOX = "{0}, boxes behind it", es "{0}, cajas atrás de él";
    ASK_BOX = "A listed extender on each box, or the box moved.", es "Una extensión listada en cada caja, o mueva la caja.";
    CHECK_BOARD = "Tear out, holds open for board and compound", es "Demoler, altos abiertos para tablaroca y pasta";
    ASK_BOARD = "Board and its joint compound need a result and a hold of their own before they come out.", es "La tablaroca y su pasta necesitan su propio resultado y su propio alto antes de quitarlas.";
    CHECK_JOISTS = "Board over, on the joists", es "Tablaroca encima, sobre las viguetas";
    ASK_LEFT = "Joists or insulation aren't said: {0} is left for what isn't. Find out.", es "No se dijeron las viguetas o el aislante: quedan {0} para lo que falta. Averígüelo.";
    ASK_JOISTS = "More than the joist table has for board, joists and insulation together: see ceiling joists, or an engineer.", es "Más de lo que trae la tabla de viguetas para tablaroca, viguetas y aislante juntos: vea las viguetas de techo, o un ingeniero.";

    NEXT = "Paint is the same each way and not counted; joists and insulation count in the joists' check alone.", es "La pintura es igual en las tres y no se cuenta; las viguetas y el aislante solo cuentan en la revisión de las viguetas.";
    NEVER_BURY = "Never bury a sprinkler head, a box or an alarm under new board.", es "Nunca entierre un rociador contra incendio, una caja o una alarma bajo tablaroca nueva.";
    LIFT = "Ceiling board by two with a lift; torn board falls in sheets: stand clear.", es "Hojas de techo entre dos con elevador; la tablaroca que se demuele cae por hojas: quítese de abajo.";
    ABOVE = "Torn out, what lies above comes down: loose fill may be vermiculite. Look first.", es "Al demoler, lo que está arriba se viene abajo: el aislante suelto puede ser vermiculita. Revise primero.";
}
