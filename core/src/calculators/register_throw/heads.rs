//! Where cold air comes down on people.

use super::words as w;
use super::{Answer, Input, Temperature};
use crate::rules::air::jets::{Blows, OCCUPIED};
use crate::say;
use crate::words::Text;

/// Cold air at head height while it is still felt: before its throw to 50 fpm ends, and before the
/// wall. None where it stays above, runs along the ceiling, or the height isn't known.
pub fn at_heads(input: &Input, answer: &Answer) -> Option<Text> {
    let bend = answer.bend.as_ref().filter(|_| input.temperature == Temperature::Cold)?;
    if input.height? <= OCCUPIED && input.outlet.blows() == Blows::Across {
        return Some(say!(w::STARTS_AT_HEADS, OCCUPIED));
    }
    let [nearest, farthest] = bend.down?;
    let felt = answer.throws[0][2].unwrap_or_default();
    let felt = input.way.map_or(felt, |way| felt.min(way));
    if nearest >= felt {
        None
    } else if farthest >= felt {
        Some(say!(w::MAY_FALL_TO_HEADS, OCCUPIED, nearest))
    } else {
        Some(say!(w::FALLS_TO_HEADS, OCCUPIED, nearest, farthest))
    }
}
