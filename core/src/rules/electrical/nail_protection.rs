//! 300.4(A): when cable through wood framing takes a steel plate over it.

use crate::edition::Electrical;
use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    SAYS = "Cable in a bored hole whose edge is less than 1-1/4 in from the nearest edge of the wood, or in a notch, is covered by a steel plate 1/16 in thick or one listed for it. Rigid, intermediate, EMT and PVC conduit take none.", es "El cable en un agujero taladrado cuya orilla queda a menos de 1-1/4 in de la orilla más cercana de la madera, o en una muesca, se cubre con una placa de acero de 1/16 in de grueso o una listada para eso. El conduit rígido, intermedio, EMT y de PVC no la lleva.";
    SEEN = "read in a trade magazine's code answers; that listed plates may be thinner is from memory. The 2026 edition moves it to 300.6 and could not be verified", es "leído en respuestas de código de una revista del oficio; que las placas listadas pueden ser más delgadas es de memoria. La edición 2026 lo pasa a 300.6 y no se pudo verificar";
}

source!(
    /// Where it is published.
    CABLES, "nec-300.4(A)", "NEC 300.4(A)", SAYS, SEEN, Read
);

/// The least wood beside a hole that takes no plate. 2026: not verified.
pub const fn clear(edition: Electrical) -> Option<Limit<Length>> {
    match edition {
        Electrical::E2026 => None,
        _ => Some(Limit { value: Length::inches(5, 4), source: &CABLES }),
    }
}
