//! What stands over a ceiling that is to move, and who may say that it can.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::rules::framing::engineer::MOVED;
use crate::rules::framing::gable_ties::LOWER_THIRD;
use crate::{choice, words};

words! {
    TRUSS_CHORDS_SAYS = "No member of a truss is cut, notched, moved or spliced without a registered designer's drawing. The ceiling hangs on its bottom chord.", es "Ninguna pieza de una armadura (truss) se corta, muesca, mueve o empalma sin el dibujo de un diseñador registrado. El techo cuelga de su cuerda inferior.";
    TRUSS_CHORDS_SEEN = "that trusses are cut by design only was read in guides that quote R802.7; the section's number is from memory", es "que las armaduras se cortan solo por diseño se leyó en guías que citan R802.7; el número de la sección es de memoria";
    UNKNOWN = "Not known yet", es "Todavía no se sabe";
    STICKS = "Rafters and joists, cut on site", es "Pares y viguetas, cortados en obra";
    TRUSSES = "Trusses", es "Armaduras (trusses)";
    STORY = "A floor", es "Un piso";
}

source!(
    /// Where trusses are kept whole.
    TRUSS_CHORDS, "irc-r802.10.4", "IRC R802.10.4, trusses" es "IRC R802.10.4, armaduras (trusses)", TRUSS_CHORDS_SAYS, TRUSS_CHORDS_SEEN, Read
);

choice! {
    /// What is over the ceiling.
    pub enum Overhead {
        /// Nobody has looked.
        Unknown = "unknown", UNKNOWN;
        /// Sticks.
        Sticks = "sticks", STICKS;
        /// Trusses.
        Trusses = "trusses", TRUSSES;
        /// A floor, with its own joists.
        Story = "story", STORY;
    }
}

impl Overhead {
    /// How far it may be moved without an engineer: not at all.
    pub fn moved(self) -> Limit<Length> {
        let source = match self {
            Self::Trusses => &TRUSS_CHORDS,
            Self::Sticks => &LOWER_THIRD,
            Self::Unknown | Self::Story => MOVED.source,
        };
        Limit { source, ..MOVED }
    }
}
