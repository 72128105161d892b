//! Table 250.122: the ground that comes with the conductors of a circuit, as cable is made today.

use super::conductor_volume::Awg;

/// The ground in nonmetallic-sheathed cable whose conductors are of this size: theirs up to 10 AWG,
/// and 10 AWG with 8 and 6, whose circuits are of 60 A at most.
///
/// Source: NEC Table 250.122, the same in all editions; from memory, and a ground that is larger
/// than this is counted by hand.
pub const fn of_circuit(size: Awg) -> Awg {
    match size {
        Awg::Awg8 | Awg::Awg6 => Awg::Awg10,
        same => same,
    }
}
