//! 406.4(D) and 406.12: receptacles that are replaced, and shutters in all of them.

use crate::words;

words! {
    REPLACED_SAYS = "A receptacle that is replaced meets today's rules at its place: ground-fault, arc-fault, shutters, weather. With no ground in its box: again without one, or behind ground-fault protection and marked so.";
    REPLACED_SEEN = "that it applies read in continuing-education pages; its parts from memory";
    SHUTTERS_SAYS = "All 15 and 20 A receptacles in a dwelling have shutters (tamper-resistant), but for those over 5-1/2 ft up and for fixed appliances.";
    SHUTTERS_SEEN = "written down from memory";
}

source!(
    /// Where replacements are published.
    REPLACED, "nec-406.4(D)", "NEC 406.4(D)", REPLACED_SAYS, REPLACED_SEEN, Memory
);

source!(
    /// Where shutters are published.
    SHUTTERS, "nec-406.12", "NEC 406.12", SHUTTERS_SAYS, SHUTTERS_SEEN, Memory
);
