//! R602.6.1: when a top plate that is cut for a pipe or duct is tied together again.

use super::share::Share;
use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    SAYS = "Where a pipe or duct cuts, bores or notches more than half the width of a top plate in an exterior or bearing wall, a galvanized steel tie at least 0.054 in thick and 1-1/2 in wide goes across, 6 in or more past the opening, with eight 10d nails (0.148 by 1-1/2 in) or more on each side. None is needed where that whole side of the wall is sheathed in wood structural panel.", es "Donde un tubo o ducto corta, perfora o muesca más de la mitad del ancho de una solera superior en una pared exterior o de carga, se cruza un amarre de acero galvanizado de al menos 0.054 in de grueso y 1-1/2 in de ancho, 6 in o más después de la abertura, con ocho clavos 10d (0.148 por 1-1/2 in) o más en cada lado. No hace falta donde todo ese lado de la pared va forrado con panel estructural de madera.";
    SEEN = "read in a scan of 2018 and in quotations of newer text; 2024 is taken to say the same; its book was not seen. Older text asks for 16d nails, and a tie to each plate", es "leído en un escaneo de 2018 y en citas de texto más nuevo; se supone que 2024 dice lo mismo; su libro no se vio. El texto viejo pide clavos 16d, y un amarre en cada solera";
    SOLE_SAYS = "No limit is printed for holes in a sole plate. Half its width, as of a top plate, is advice.", es "No hay límite impreso para agujeros en una solera inferior. La mitad de su ancho, como en la superior, es consejo.";
    SOLE_SEEN = "no publication", es "sin publicación";
}

source!(
    /// Where it is published.
    TOP_PLATES, "irc-r602.6.1", "IRC R602.6.1", SAYS, SEEN, Read
);

/// The widest cut that needs no tie.
pub const UNTIED: Share = Share { over: 1, under: 2, source: &TOP_PLATES };

source!(
    /// What is said of sole plates, without a rule.
    SOLE_PLATES, "sole-plates", "Sole plates" es "Soleras de piso", SOLE_SAYS, SOLE_SEEN, CommonPractice
);

/// The widest cut in a sole plate that nobody asks about.
pub const SOLE: Share = Share { over: 1, under: 2, source: &SOLE_PLATES };

/// How far a tie goes past the opening, on each side.
pub const PAST_OPENING: Length = Length::inches(6, 1);

/// The shortest tie across an opening of this length along the plate.
pub fn tie(opening: Length) -> Limit<Length> {
    Limit { value: opening.plus(PAST_OPENING.times(2)), source: &TOP_PLATES }
}

/// Nails on each side of the opening.
pub const NAILS_A_SIDE: i64 = 8;
