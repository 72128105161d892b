//! All that a person reads of a box.

use crate::words;

words! {
    NAME = "Box fill", es "Llenado de caja";
    CUT = "Old wall or ceiling cut for it", es "Pared o techo viejo que se corta";
    CUT_HINT = "Old plaster, board and mud are held until a laboratory has looked at them.", es "El yeso, la tablaroca y la pasta viejos quedan detenidos hasta que los haya visto un laboratorio.";
    CUT_OPEN = "None: open framing or new board", es "Nada: estructura abierta o tablaroca nueva";
    CUT_PLASTER = "Old plaster", es "Yeso viejo";
    CUT_BOARD = "Old board and its joint compound", es "Tablaroca vieja y su pasta";
    CUT_OTHER = "Another old surface", es "Otra superficie vieja";
    ABOUT = "Does it all fit in the box, what else would, and what to do if not", es "Si todo cabe en la caja, qué más cabría, y qué hacer si no";
    NOTHING = "", es "";

    // The box.
    ENCLOSURE = "Box", es "Caja";
    ENCLOSURE_HINT = "Plastic and cut-in boxes go by the volume stamped in them. Metal ones go by the table.", es "Las de plástico y las old-work van por el volumen estampado. Las de metal van por la tabla.";
    MARKED = "Stamped volume", es "Volumen estampado";
    MARKED_HINT = "Read it inside the box, all gangs together. Outside measure doesn't count.", es "Léalo dentro de la caja, todos los gangs juntos. La medida de afuera no cuenta.";
    GANGS = "Gangs", es "Gangs";
    GANGS_HINT = "Devices side by side.", es "Dispositivos lado a lado.";
    DEPTH = "Inside depth", es "Fondo por dentro";
    DEPTH_HINT = "Only to check a deep device. Leave it empty if you don't need that.", es "Solo para revisar un dispositivo hondo. Si no lo necesita, déjelo vacío.";
    WHY_BOX = "this rule covers boxes up to 100 in³.", es "esta regla es para cajas de hasta 100 in³.";
    WHY_MARKED = "nothing is marked with more.", es "nada viene marcado con más.";
    WHY_GANGS = "wider ones are built to order; ask their maker.", es "las más anchas se hacen por pedido; pregunte al fabricante.";
    WHY_COUNT = "more than that is a panel, not a box.", es "más que eso es un panel, no una caja.";
    WHY_SIDE = "three barriers make four sides.", es "tres divisiones hacen cuatro lados.";
    WHY_LOOP = "longer is a slip of the thumb.", es "más largo es un error de dedo.";
    WHY_EMERGES = "no box is that deep.", es "ninguna caja es tan honda.";
    WHY_DEPTH = "no box is that deep.", es "ninguna caja es tan honda.";
    WHY_BEHIND = "no device reaches that far.", es "ningún dispositivo llega tan atrás.";
    WHY_FINISH = "no finish is that thick.", es "ningún acabado es tan grueso.";
    DOES_NOT_GANG = "This box takes {0} {0?device|devices} by a cover or ring and doesn't gang. Pick another box, or fewer gangs.", es "Esta caja lleva {0} {0?dispositivo|dispositivos} con tapa o aro y no se une con otra. Elija otra caja, o menos gangs.";

    // What deepens it.
    ADDS = "Rings and covers", es "Aros y tapas";
    ADDS_HINT = "Only what is marked with a volume counts, or an extension of a listed size. An unmarked flat ring adds nothing.", es "Solo cuenta lo que tiene marcado un volumen, o una extensión de medida listada. Un aro plano sin marca no suma nada.";
    ADD = "Ring or cover", es "Aro o tapa";
    ADD_KIND = "Kind", es "Tipo";
    ADD_MARKED = "Marked with a volume", es "Con volumen marcado";
    ADD_EXTENSION = "Extension, listed size", es "Extensión, medida listada";
    ADD_VOLUME = "Marked volume", es "Volumen marcado";
    ADD_VOLUME_HINT = "A plaster ring, raised cover or domed cover: read the mark.", es "Aro para tablaroca, tapa realzada o abombada: lea la marca.";
    ADD_RING = "Size", es "Medida";

    // What splits it.
    BARRIERS = "Barriers", es "Divisiones";
    BARRIERS_HINT = "A barrier shares the volume out by gangs, and each side is checked alone.", es "Una división reparte el volumen por gangs, y cada lado se revisa solo.";
    BARRIER = "Barrier", es "División";
    BARRIER_KIND = "Barrier of", es "División de";
    BARRIER_METAL = "Metal, unmarked", es "Metal, sin marca";
    BARRIER_PLASTIC = "Plastic, unmarked", es "Plástico, sin marca";
    BARRIER_MARKED = "Marked with a volume", es "Con volumen marcado";
    BARRIER_VOLUME = "Marked volume", es "Volumen marcado";
    BARRIER_AFTER = "After gang", es "Después del gang";
    BARRIER_AFTER_HINT = "Counted from the left.", es "Contado desde la izquierda.";
    BARRIER_PLACE = "A barrier stands between two gangs, each further right than the last. This box has {0} {0?gang|gangs}.", es "Una división va entre dos gangs, cada una más a la derecha que la anterior. Esta caja tiene {0} {0?gang|gangs}.";
    NO_VOLUME_LEFT = "The barriers leave no volume.", es "Las divisiones no dejan volumen.";
    SIDE = "Side", es "Lado";
    SIDE_HINT = "Which side of the barriers, counted from the left.", es "Qué lado de las divisiones, contado desde la izquierda.";
    NO_SUCH_SIDE = "The barriers make {0} {0?side|sides}.", es "Las divisiones hacen {0} {0?lado|lados}.";

    // What goes in.
    CABLES = "Cables", es "Cables";
    CABLES_HINT = "Each cable that comes in. One that runs straight through, uncut, counts once.", es "Cada cable que entra. El que pasa derecho, sin cortar, cuenta una vez.";
    CABLE = "Cable", es "Cable";
    COUNT = "How many", es "Cuántos";
    GROUND = "Its ground", es "Su tierra";
    GROUND_HINT = "Today's has one of its own size; 8 and 6 AWG cable has one of 10 AWG. Old cable may have a thin one, or none.", es "El de hoy la trae de su propio tamaño; el cable de 8 y 6 AWG la trae de 10 AWG. El cable viejo puede traerla delgada, o ninguna.";
    GROUND_SAME = "As in today's cable", es "Como en el cable de hoy";
    GROUND_SMALL = "16 AWG", es "16 AWG";
    GROUND_NONE = "None", es "Ninguna";
    WIRES = "Other wires", es "Otros alambres";
    WIRES_HINT = "Wires in pipe, loops, pigtails, grounds by hand, light fixture wires.", es "Alambres en tubo, vueltas, colas (pigtails), tierras a mano, alambres de lámpara.";
    WIRE = "Wires", es "Alambres";
    SIZE = "Size", es "Tamaño";
    HOW = "What it does", es "Qué hace";
    HOW_ENDED = "Ends or is spliced here", es "Termina o se empalma aquí";
    HOW_THROUGH = "Straight through, uncut", es "Pasa derecho, sin cortar";
    HOW_LOOPED = "Loops through, uncut", es "Pasa con vuelta, sin cortar";
    HOW_INSIDE = "Pigtail, stays inside", es "Cola (pigtail), se queda adentro";
    HOW_GROUND = "Ground or bond, comes in", es "Tierra o puente de unión, entra";
    HOW_ISOLATED = "Isolated ground, comes in", es "Tierra aislada, entra";
    HOW_CANOPY = "Light fixture (luminaire) wire, from its canopy", es "Alambre de lámpara (luminaria), de su campana";
    HOW_CANOPY_GROUND = "Light fixture ground, from its canopy", es "Tierra de lámpara, de su campana";
    LOOP = "Length of the loop", es "Largo de la vuelta";
    LOOP_HINT = "Twice the free length or more counts two. If you don't say, it counts two.", es "El doble del largo libre o más cuenta dos. Si no lo dice, cuenta dos.";
    TOO_LARGE = "Conductors of 4 AWG and larger leave this rule: NEC 314.28 sizes the box by distance. Ask your electrician.", es "Los conductores de 4 AWG y más gruesos salen de esta regla: NEC 314.28 da la caja por distancia. Pregunte a su electricista.";
    CLAMPS = "Cable clamps", es "Abrazaderas de cable";
    CLAMPS_HINT = "One allowance in all if any is inside.", es "Un solo espacio por todas, si alguna está adentro.";
    CLAMPS_OUTSIDE = "None, or outside", es "Ninguna, o afuera";
    CLAMPS_INSIDE = "Inside the box", es "Dentro de la caja";
    SUPPORTS = "Light fixture (luminaire) supports", es "Soportes de lámpara (luminaria)";
    SUPPORTS_HINT = "One allowance for each type.", es "Un espacio por cada tipo.";
    SUPPORT = "Support fitting", es "Pieza de soporte";
    SUPPORT_KIND = "Fitting", es "Pieza";
    STUD = "Fixture stud", es "Stud de lámpara";
    HICKEY = "Hickey", es "Hickey";
    DEVICES = "Devices", es "Dispositivos";
    DEVICE = "Device", es "Dispositivo";
    DEVICE_KIND = "Device", es "Dispositivo";
    SWITCH = "Switch", es "Apagador";
    THREE_WAY = "3-way", es "De 3 vías";
    RECEPTACLE = "Receptacle", es "Contacto";
    GFCI = "GFCI", es "GFCI";
    DIMMER = "Dimmer", es "Dimmer";
    HEAVY = "Range or dryer", es "Estufa o secadora";
    DEVICE_SIZE = "Wire on it", es "Alambre conectado";
    DEVICE_SIZE_HINT = "The largest wire connected to it. If you don't say, it counts as the largest wire in the box.", es "El más grueso que lleva conectado. Si no lo dice, cuenta como el más grueso de la caja.";
    SIZE_LARGEST = "Largest here", es "El más grueso aquí";
    DEVICE_GANGS = "Gangs wide", es "Ancho en gangs";
    DEVICE_GANGS_HINT = "2 for a range or dryer receptacle.", es "2 para contacto de estufa o secadora.";
    BEHIND = "Reaches back", es "Fondo que ocupa";
    BEHIND_HINT = "How far it stands behind its yoke: smart dimmers, GFCIs. Leave it empty to skip the depth.", es "Cuánto queda detrás de su yugo: dimmers inteligentes, GFCI. Déjelo vacío para saltar el fondo.";
    BLOCKS = "Terminal blocks", es "Bloques de terminales";
    BLOCKS_HINT = "They count from the 2023 edition on.", es "Cuentan desde la edición 2023.";
    BLOCK = "Terminal block", es "Bloque de terminales";
    BLOCK_SIZE = "Largest wire on it", es "Alambre más grueso en él";

    // Round it.
    FREE = "Free conductor", es "Conductor libre";
    FREE_HINT = "How much wire to leave.", es "Cuánto alambre dejar.";
    EMERGES = "Sheath end to opening", es "Del forro a la abertura";
    EMERGES_HINT = "From where the wires leave the sheath to the front of the box. If you don't say, the depth of the box is used.", es "De donde los alambres salen del forro al frente de la caja. Si no lo dice, se usa el fondo de la caja.";
    LEFT = "Free length you have", es "Largo libre que tiene";
    LEFT_HINT = "Leave it empty to see only what is needed.", es "Déjelo vacío para ver solo lo que hace falta.";
    FINISH = "Wall getting thicker", es "Pared más gruesa";
    FINISH_HINT = "Board over, tile or skim in front of the box.", es "Tablaroca encima, loseta o capa delgada (skim) frente a la caja.";
    PROUD = "Box past framing", es "La caja sobresale";
    PROUD_HINT = "How far its front stands out past the studs or joists.", es "Cuánto sale su frente de los montantes o las viguetas.";
    BUILD = "Finish in all", es "Acabado en total";
    BUILD_HINT = "Old and new layers together, over the framing.", es "Capas viejas y nuevas juntas, sobre la estructura.";
    SURFACE = "Surface of", es "Superficie de";
}
