//! P2603.2.1: when a pipe through framing takes a steel plate over it.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    SAYS = "A pipe, but of cast iron or galvanized steel, in a hole less than 1-1/4 in from the edge of the wood, or in a notch, is shielded by steel 0.0575 in thick (16 gauge) that reaches 2 in above sole plates and 2 in below top plates.", es "Un tubo, salvo de hierro fundido o acero galvanizado, en un agujero a menos de 1-1/4 in de la orilla de la madera, o en una muesca, se protege con acero de 0.0575 in de grueso (calibre 16) que llega 2 in arriba de soleras inferiores y 2 in abajo de soleras superiores.";
    SEEN = "from memory: 1-1/4 in since 2015; 1-1/2 in before, and the gauge, read in forum quotations", es "de memoria: 1-1/4 in desde 2015; 1-1/2 in antes, y el calibre, leídos en citas de foros";
}

source!(
    /// Where it is published.
    PIPES, "irc-p2603.2.1", "IRC P2603.2.1", SAYS, SEEN, Memory
);

/// The least wood beside a hole that takes no plate.
pub const CLEAR: Limit<Length> = Limit { value: Length::inches(5, 4), source: &PIPES };
