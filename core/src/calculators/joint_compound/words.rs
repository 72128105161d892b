//! All that a person reads of compound, tape and screws.

use crate::words;

words! {
    NAME = "Compound, tape and screws", es "Pasta, cinta y tornillos";
    ABOUT = "What joints or an area take, to which level, and what an old ceiling's pops and cracks add", es "Qué piden las juntas o un área, hasta cuál nivel, y qué agregan los tornillos botados y las grietas de un techo viejo";
    NOTHING = "", es "";

    BY = "Reckon by", es "Calcular por";
    BY_HINT = "Joints, where you know them: one room has more to a square foot than a house.", es "Por juntas, si las conoce: un cuarto tiene más por pie cuadrado que una casa.";
    BY_JOINTS = "Its joints", es "Sus juntas";
    BY_AREA = "Its area", es "Su área";
    AREA = "Board, its surface", es "Tablaroca, su superficie";
    AREA_HINT = "Blank: no published rule beside it. Needed by area and for level 5.", es "Vacío: sin regla publicada al lado. Hace falta por área y para nivel 5.";
    WHY_RUN = "that is more than a house; work it in parts.", es "es más que una casa; hágalo por partes.";
    TAPERED = "Tapered joints", es "Juntas de orilla rebajada";
    TAPERED_HINT = "Long edges that meet, end to end.", es "Orillas largas que se juntan, largo total.";
    ENDS = "End joints", es "Juntas de punta";
    ENDS_HINT = "Board ends that meet, each as long as the board is wide.", es "Puntas de hojas que se juntan, cada una tan larga como el ancho de la hoja.";
    FEATHER = "End joints feathered", es "Juntas de punta, difuminadas";
    FEATHER_HINT = "In all, both sides.", es "En total, los dos lados.";
    CORNERS = "Inside corners", es "Esquinas interiores";
    CORNERS_HINT = "For a ceiling, its way round.", es "En un techo, toda su orilla.";
    BEADS = "Outside corners, with bead", es "Esquinas exteriores, con esquinero";
    SCREWS = "Screws", es "Tornillos";
    SCREWS_HINT = "About one a square foot.", es "Como uno por pie cuadrado.";
    LEVEL = "Level of finish", es "Nivel de acabado";
    LEVEL_HINT = "What each asks for stands below.", es "Lo que pide cada uno está abajo.";
    KIND = "Compound", es "Pasta";
    SHRINK = "It shrinks", es "Se encoge";
    SHRINK_HINT = "From its sheet. Blank: likely for its kind.", es "De su hoja técnica. Vacío: lo probable para su tipo.";
    WHY_SHRINK = "its standard allows no more.", es "su norma no permite más.";
    WASTE = "Lost", es "Se pierde";
    WASTE_HINT = "10 percent is a habit; small rooms lose more.", es "10 por ciento es costumbre; en cuartos chicos se pierde más.";
    WHY_WASTE = "look for the leak.", es "busque la fuga.";
    MENDS = "An old ceiling is mended", es "Se repara un techo viejo";
    MEND = "What is mended", es "Qué se repara";
    POPS = "Popped screws or nails", es "Tornillos o clavos botados";
    POPS_HINT = "A row of them: the board is loose. Screw it down at 12 in first.", es "Una hilera de ellos: la hoja está floja. Primero atorníllela cada 12 in.";
    CRACKS = "Cracked joints, taped anew", es "Juntas agrietadas, con cinta nueva";
    CRACKS_HINT = "Cut loose tape out and screw both sides. One that comes back follows the framing.", es "Corte la cinta floja y atornille los dos lados. Una grieta que vuelve sigue la estructura.";
    PATCHES = "Edges of patches", es "Orillas de parches";
    PATCHES_HINT = "All the way round each, taped like end joints.", es "Todo alrededor de cada uno, con cinta como juntas de punta.";
    OLD = "It is", es "Es";
    OLD_HINT = "Mending cuts and screws into it.", es "Reparar es cortarlo y atornillarlo.";

    NEEDED_BY_AREA = "Needed, to go by area.", es "Hace falta para calcular por área.";
    NEEDED_LEVEL = "Needed for level 5: all of it is skimmed.", es "Hace falta para nivel 5: se le da capa delgada a todo.";

    WET = "Compound, wet", es "Pasta, mojada";
    WET_BY_AREA = "Compound, wet, by {0} of board", es "Pasta, mojada, por {0} de tablaroca";
    LOW = "At least", es "Al menos";
    HIGH = "At most", es "Como máximo";
    RULE = "By the published rule", es "Según la regla publicada";
    RULE_LOW = "By that rule, at least", es "Según esa regla, al menos";
    RULE_HIGH = "By that rule, at most", es "Según esa regla, como máximo";
    WEIGHT = "Its weight", es "Su peso";
    POWDER = "Powder", es "Polvo";
    PAILS = "Pails of {0}", es "Cubetas de {0}";
    PAILS_MOST = "Pails of {0}, at most", es "Cubetas de {0}, como máximo";
    BAGS = "Bags of {0}", es "Bolsas de {0}";
    BAGS_MOST = "Bags of {0}, at most", es "Bolsas de {0}, como máximo";
    PACKAGES = "Pails or bags", es "Cubetas o bolsas";
    TAPE = "Tape", es "Cinta";
    ALL_SCREWS = "Screws to cover", es "Tornillos por tapar";
    NEW_SCREWS = "New screws, to mend", es "Tornillos nuevos, para reparar";
    WATER = "Water in it", es "Agua que trae";

    ON_TAPERED = "Tapered joints, dry", es "Juntas rebajadas, seca";
    ON_ENDS = "End joints, dry", es "Juntas de punta, seca";
    ON_CORNERS = "Inside corners, dry", es "Esquinas interiores, seca";
    ON_BEADS = "Beads, dry", es "Esquineros, seca";
    ON_SCREWS = "Screws, dry", es "Tornillos, seca";
    ON_POPS = "Pops, dry", es "Tornillos botados, seca";
    ON_CRACKS = "Cracks, dry", es "Grietas, seca";
    ON_PATCHES = "Patches, dry", es "Parches, seca";
    DRY = "All, dry", es "Todo, seca";
    SHRUNK = "Wet, before it shrinks", es "Mojada, antes de encoger";
    SKIM = "Level 5 skim, wet", es "Capa delgada de nivel 5, mojada";
    TOTAL = "All, wet", es "Todo, mojada";

    WHY = "Two ways to reckon it", es "Dos maneras de calcularlo";
    WHY_NOTE = "Published rules average whole houses of long boards; a room has more corner and end joint to a square foot. Far apart: measure the joints again.", es "Las reglas publicadas promedian casas enteras con hojas largas; un cuarto tiene más esquinas y juntas de punta por pie cuadrado. Si salen muy distintas: mida otra vez las juntas.";
    WHY_JOINTS = "By joints", es "Por juntas";
    WHY_RULE = "By area", es "Por área";
    SPREAD = "{0}, from {1} to {2}", es "{0}, de {1} a {2}";
    TAPE_RULE = "Tape by area, nothing lost", es "Cinta por área, sin pérdida";
    TAPE_JOINTS = "Tape by joints, nothing lost", es "Cinta por juntas, sin pérdida";
    TAPE_SHORT = "By area, tape falls short in a small room: fill in its joints, and the longer counts.", es "Por área, la cinta no alcanza en un cuarto chico: anote sus juntas, y cuenta lo más largo.";
    JUST = "{0}", es "{0}";
    DRIVERS = "What moves it", es "Qué lo hace cambiar";
    DRIVER_TAPER = "Depth of the taper", es "Hondo del rebaje";
    DRIVER_TAPER_SAYS = "{0} to {1}, dry", es "{0} a {1}, seca";
    DRIVER_FEATHER = "End joints, 18 to 36 in wide", es "Juntas de punta, 18 a 36 in de ancho";
    DRIVER_SHRINK = "Shrinkage", es "Encogimiento";
    DRIVER_SHRINK_SAYS = "{0} to {1}", es "{0} a {1}";
    LEVELS = "What each level asks for", es "Qué pide cada nivel";

    M_COMPOUND = "Compound, {0}", es "Pasta, {0}";
    M_TAPE = "Joint tape", es "Cinta para juntas";
    M_BEAD = "Corner bead", es "Esquinero";
    M_SCREW = "Drywall screws", es "Tornillos para tablaroca";

    NEXT = "Each coat dries before the next; level {0} takes {1} {1?coat|coats} on flat joints.", es "Cada mano se seca antes de la siguiente; el nivel {0} lleva {1} {1?mano|manos} en juntas planas.";
    DUST = "Sanding dust is fine and may hold silica. Sand wet or with a vacuum, in a fit-tested N95 at least.", es "El polvo de lijar es fino y puede tener sílice. Lije en húmedo o con aspiradora, con un N95 con prueba de ajuste al menos.";
    POWDER_DUST = "Setting powder is alkaline: gloves and eye protection, and mix it without dust.", es "El polvo de fraguado es alcalino: guantes y protección de ojos, y mézclelo sin levantar polvo.";
    ELECTRIC = "Power off before a knife or a screw goes near a box or a cable.", es "Corriente apagada antes de acercar una espátula o un tornillo a una caja o un cable.";
    GAPS = "Fill gaps of 1/4 in and more first; drying-type compound then waits 24 h before tape.", es "Rellene primero los huecos de 1/4 in o más; la pasta que seca al aire espera luego 24 h antes de la cinta.";
    CONTRACT = "The contract names the level, the maker's sheet the way. Fire-rated board has a taping of its own.", es "El contrato dice el nivel; la hoja del fabricante, el modo. La tablaroca con clasificación contra fuego lleva su propio encintado.";
}
