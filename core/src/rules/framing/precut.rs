//! Studs as they are sold, cut to length at the mill.

use crate::measure::Length;
use crate::words;

words! {
    PRECUT_SAYS = "Studs are sold cut to 92-5/8, 104-5/8 and 116-5/8 in. With three plates they frame 97-1/8, 109-1/8 and 121-1/8 in.", es "Los montantes se venden cortados a 92-5/8, 104-5/8 y 116-5/8 in. Con tres soleras dan 97-1/8, 109-1/8 y 121-1/8 in.";
    PRECUT_SEEN = "the stud lengths read in two trade magazines; the heights are added up from them", es "los largos de montante se leyeron en dos revistas del oficio; las alturas se sumaron de ellos";
}

source!(
    /// Where the lengths are named.
    PRECUT, "precut-studs", "Precut stud lengths" es "Largos de montantes precortados", PRECUT_SAYS, PRECUT_SEEN, Read
);

/// From short to long. Source: [`PRECUT`].
pub const LENGTHS: [Length; 3] =
    [Length::inches(741, 8), Length::inches(837, 8), Length::inches(933, 8)];

/// The shortest from which a stud of this length can be cut.
pub fn nearest(stud: Length) -> Option<Length> {
    LENGTHS.into_iter().find(|sold| *sold >= stud)
}

/// Lumber is sold by even feet. Common practice.
pub const EVEN: Length = Length::inches(24, 1);
