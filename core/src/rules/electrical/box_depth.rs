//! 314.24: how deep a box has to be for what is in it. Volume can pass while depth fails.

use super::conductor_volume::Awg;
use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    SAYS = "A box is at least 1/2 in deep, 15/16 in with a flush device, 1-3/16 in with 12 or 10 AWG on it; a device that reaches far back needs its own depth and 1/4 in.", es "Una caja tiene al menos 1/2 in de fondo, 15/16 in con un dispositivo al ras, 1-3/16 in con 12 o 10 AWG en él; un dispositivo que llega muy atrás necesita su propio fondo y 1/4 in.";
    SEEN = "read in a forum thread that quotes 314.24(B)", es "leído en un hilo de foro que cita 314.24(B)";
    LARGE_SAYS = "A device fed by 8 or 6 AWG needs a box at least 2-1/16 in deep.", es "Un dispositivo alimentado con 8 o 6 AWG necesita una caja de al menos 2-1/16 in de fondo.";
    LARGE_SEEN = "from memory", es "de memoria";
}

source!(
    /// Where it is published.
    DEPTH, "nec-314.24", "NEC 314.24", SAYS, SEEN, Read
);

source!(
    /// The part for large conductors, from memory.
    DEPTH_LARGE, "nec-314.24(B)(3)", "NEC 314.24(B)(3)", LARGE_SAYS, LARGE_SEEN, Memory
);

const ANY: Length = Length::inches(1, 2);
const FLUSH: Length = Length::inches(15, 16);
const WITH_12_OR_10: Length = Length::inches(19, 16);
const WITH_8_OR_6: Length = Length::inches(33, 16);
const BEHIND_DEVICE: Length = Length::inches(1, 4);
const DEEP_DEVICE: Length = Length::inches(15, 8);
const DEEP_WITH_12_OR_10: Length = Length::inches(1, 1);

/// The least depth of a box without devices.
pub const EMPTY: Limit<Length> = Limit { value: ANY, source: &DEPTH };

/// The least depth of a box behind a device on wire of `size`, that reaches `behind` the
/// plane it is mounted on, where that is known.
///
/// Source: NEC 314.24(B).
pub fn least(size: Option<Awg>, behind: Option<Length>) -> Limit<Length> {
    let thickness = size.map_or(0, Awg::thickness);
    let large = thickness >= Awg::Awg8.thickness();
    let middle = !large && thickness >= Awg::Awg12.thickness();
    let flat = if large {
        WITH_8_OR_6
    } else if middle {
        WITH_12_OR_10
    } else {
        FLUSH
    };
    let far = if middle { DEEP_WITH_12_OR_10 } else { DEEP_DEVICE };
    let value = match behind {
        Some(behind) if behind > far => flat.max(behind.plus(BEHIND_DEVICE)),
        _ => flat,
    };
    Limit { value, source: if large { &DEPTH_LARGE } else { &DEPTH } }
}
