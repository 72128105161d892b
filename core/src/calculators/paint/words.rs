//! All that a person reads of primer and paint.

use crate::words;

words! {
    NAME = "Primer and paint", es "Sellador y pintura";
    ABOUT = "Gallons and cans for a room less its openings, by label or by solids and film", es "Galones y latas para un cuarto sin sus vanos, por etiqueta o por sólidos y película";
    NOTHING = "", es "";

    AREA = "Surface", es "Superficie";
    AREA_HINT = "Walls or ceiling, from the room: its wall area has the openings off already.", es "Paredes o techo, del cuarto: su área de pared ya no cuenta los vanos.";
    OPENINGS = "Openings still in it", es "Vanos todavía incluidos";
    WHY_AREA = "that is more than a house; work it in parts.", es "es más que una casa; hágalo por partes.";
    PRIMER = "Primer", es "Sellador (primer)";
    FINISH = "Finish paint", es "Pintura de acabado";
    COATS = "Coats", es "Manos";
    WHY_COATS = "something else is wrong with it.", es "el problema es otra cosa.";
    BY = "A gallon goes", es "Un galón rinde";
    BY_LABEL = "As its label says", es "Como dice su etiqueta";
    BY_SOLIDS = "By solids and dry film", es "Por sólidos y película seca";
    SPREAD_LABEL = "A gallon covers", es "Un galón cubre";
    SPREAD_HINT = "From the label: the low end for primer on raw compound, 350 to 400 for most paint.", es "De la etiqueta: lo más bajo para sellador sobre pasta desnuda, 350 a 400 para casi toda pintura.";
    WHY_SPREAD = "no film that thin covers.", es "una película tan delgada no cubre.";
    SOLIDS = "Solids by volume", es "Sólidos por volumen";
    SOLIDS_HINT = "From its data sheet, not by weight.", es "De su hoja técnica, no por peso.";
    WHY_SOLIDS = "that is all of it.", es "eso es todo el galón.";
    FILM = "Dry film", es "Película seca";
    FILM_HINT = "From its data sheet.", es "De su hoja técnica.";
    WHY_FILM = "that is a coating of another kind.", es "eso es un recubrimiento de otro tipo.";
    WASTE = "Lost", es "Se pierde";
    WASTE_HINT = "In roller, tray and can. A label's spread mostly has it in.", es "En rodillo, charola y lata. El rendimiento de la etiqueta casi siempre ya lo cuenta.";
    WHY_WASTE = "look for the leak.", es "busque la fuga.";
    SANDS = "Old paint or compound is sanded or scraped first", es "Primero se lija o raspa pintura o pasta vieja";
    SANDS_HINT = "Scuffing counts.", es "Una lijada ligera cuenta.";
    OLD = "It is", es "Es";
    ALL_OPEN = "Less than the surface, {0}.", es "Menos que la superficie, {0}.";
    NO_COAT = "At least one coat, of primer or of paint.", es "Al menos una mano, de sellador o de pintura.";

    NET = "Surface to paint", es "Superficie por pintar";
    PRIMER_GALLONS = "Primer", es "Sellador";
    PRIMER_SPREAD = "Primer, a gallon covers", es "Sellador, un galón cubre";
    PRIMER_WET = "Primer, a coat wet", es "Sellador, una mano mojada";
    PRIMER_CANS = "Primer, gallon cans", es "Sellador, latas de galón";
    PRIMER_QUARTS = "Primer, quarts beside", es "Sellador, cuartos de galón aparte";
    FINISH_GALLONS = "Paint", es "Pintura";
    FINISH_SPREAD = "Paint, a gallon covers", es "Pintura, un galón cubre";
    FINISH_WET = "Paint, a coat wet", es "Pintura, una mano mojada";
    FINISH_CANS = "Paint, gallon cans", es "Pintura, latas de galón";
    FINISH_QUARTS = "Paint, quarts beside", es "Pintura, cuartos de galón aparte";
    FOR_AREA = "{0}, for {1}", es "{0}, para {1}";
    AT_LEAST = "{0}, at a far spread", es "{0}, si rinde mucho";
    AT_MOST = "{0}, at a near spread", es "{0}, si rinde poco";
    IDEAL = "Spread, nothing lost", es "Rendimiento, sin pérdida";
    IN_QUARTS = "In quarts", es "En cuartos de galón";

    RANGES = "By the spreads that are usual", es "Según lo que rinde por lo común";
    RANGE = "{0} to {1}", es "{0} a {1}";

    M_PRIMER = "Primer", es "Sellador (primer)";
    M_PAINT = "Finish paint", es "Pintura de acabado";

    NEXT = "New compound: dry, dusted, primed all over, then two coats. Open one can of each batch and mix them.", es "Pasta nueva: seca, sin polvo, sellada completa, luego dos manos. Abra una lata de cada lote y mézclelas.";
    AIR = "Open windows on two sides; a fan that blows out can pull flue gas down an open flue. The label tells gloves and respirator.", es "Abra ventanas en dos lados; un ventilador que saca aire puede jalar gas de chimenea hacia abajo por una chimenea abierta. La etiqueta dice qué guantes y respirador.";
    LEAD = "Old paint, in a house from before 1978 at any rate, is presumed to hold lead: don't sand, scrape or burn it before it is tested.", es "La pintura vieja, al menos en una casa de antes de 1978, se presume que tiene plomo: no la lije, raspe ni queme antes de que se analice.";
    RAGS = "Oil-soaked rags can catch fire by themselves: spread them out to dry outside, or in water in a lidded metal can.", es "Los trapos con aceite pueden prenderse solos: extiéndalos afuera a secar, o métalos en agua en un bote de metal con tapa.";
}
