//! All that a person reads of what board weighs.

use crate::words;

words! {
    NAME = "Weight of board and pails", es "Peso de tablaroca y cubetas";
    ABOUT = "What there is to carry and to lift, and what board bears on a ceiling", es "Qué hay que cargar y levantar, y qué aguanta la tablaroca en un techo";
    NOTHING = "", es "";

    PANEL = "Board", es "Tablaroca";
    WIDE = "Wide", es "Ancho";
    W48 = "48 in", es "48 in";
    W54 = "54 in", es "54 in";
    LONG = "Long", es "Largo";
    WHY_LONG = "no longer ones are made.", es "no se hacen más largas.";
    SHEETS = "Sheets", es "Hojas";
    WHY_SHEETS = "that is a truckload.", es "eso es un camión lleno.";
    PAILS = "Pails of compound, 4.5 gal", es "Cubetas de pasta, 4.5 gal";
    PEOPLE = "Lift one together", es "Levantan una entre";
    WHY_PEOPLE = "they won't fit.", es "no caben.";
    HUNG = "Hung on a ceiling", es "Colgada en un techo";
    SPACING = "Framing apart", es "Estructura, separación";
    SPACING_HINT = "Center to center, board across it.", es "A centros, con la hoja cruzada.";
    WHY_SPACING = "no board spans that.", es "ninguna hoja libra ese claro.";
    TEXTURED = "Water-based texture goes on it", es "Lleva textura a base de agua";
    TEXTURED_HINT = "A wet board sags.", es "Una hoja mojada se pandea.";
    INSULATION = "Insulation lying on it", es "Aislante encima de ella";
    INSULATION_HINT = "What it weighs on a square foot: the heat of a raised ceiling tells it.", es "Lo que pesa por pie cuadrado: lo dice «Calor de un techo subido».";
    WHY_INSULATION = "that is no insulation.", es "eso no es aislante.";

    SHEET = "A sheet", es "Una hoja";
    EACH = "Each who lifts it", es "Cada uno que la levanta";
    PAIL = "A pail, full", es "Una cubeta, llena";
    ALL = "To carry in all", es "Por cargar, en total";
    LOAD = "Weight the framing carries", es "Peso que carga la estructura";

    CHECK_LIFT = "Lifted by each", es "Lo que levanta cada uno";
    MORE_HANDS = "More hands or a panel lift: no law makes it a limit, backs do.", es "Más manos o un elevador de tablaroca: ninguna ley lo pone de límite, la espalda sí.";
    CHECK_SAG = "Insulation on the board", es "Aislante sobre la tablaroca";
    THIN = "No figure for board this thin: take thicker board, or its maker's word.", es "No hay cifra para tablaroca tan delgada: use una más gruesa, o lo que diga su fabricante.";

    NEXT = "{0} to a sheet, on edge, a clear way. A panel lift for ceilings.", es "{0} por hoja, de canto, con el paso libre. Elevador de tablaroca para techos.";
    STACK = "A stack is heavy: 60 sheets of 1/2 in weigh a ton and a half. Spread it flat along walls, across joists; leaned, it tips and kills.", es "Una pila pesa mucho: 60 hojas de 1/2 in pesan tonelada y media. Repártala acostada junto a las paredes, cruzando las viguetas; recargada se voltea y mata.";
    BACK = "Over the head, and on ladders or stairs, a back bears far less. Lift the pail with the legs.", es "Arriba de la cabeza, y en escaleras, la espalda aguanta mucho menos. Levante la cubeta con las piernas.";
    JOISTS = "Whether old joists hold it is a question of their span: see ceiling joists, or an engineer.", es "Si las viguetas viejas aguantan depende de su claro: vea las viguetas de techo, o un ingeniero.";
}
