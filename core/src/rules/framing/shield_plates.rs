//! P2603.2.1: when a pipe through framing takes a steel plate over it.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    SAYS = "A pipe, but of cast iron or galvanized steel, in a hole less than 1-1/4 in from the edge of the wood, or in a notch, is shielded by steel 0.0575 in thick (16 gauge) that reaches 2 in above sole plates and 2 in below top plates.";
    SEEN = "from memory: 1-1/4 in since 2015; 1-1/2 in before, and the gauge, read in forum quotations";
}

source!(
    /// Where it is published.
    PIPES, "irc-p2603.2.1", "IRC P2603.2.1", SAYS, SEEN, Memory
);

/// The least wood beside a hole that takes no plate.
pub const CLEAR: Limit<Length> = Limit { value: Length::inches(5, 4), source: &PIPES };
