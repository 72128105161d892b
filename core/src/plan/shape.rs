//! The walls of rooms that have a name, wall 1 along their longest straight run.

use super::{Corner, Wall};
use crate::measure::Length;

const fn wall(length: Length, end: Corner) -> Wall {
    Wall { length: Some(length), end }
}

use Corner::{Inside, Outside};

/// `long` along wall 1, `wide` across it.
pub fn rectangle(long: Length, wide: Length) -> Vec<Wall> {
    [long, wide, long, wide].map(|length| wall(length, Inside)).to_vec()
}

/// A rectangle without a `notch` (along wall 1, across it) in the corner farthest from wall 1's
/// start.
pub fn ell(long: Length, wide: Length, notch: (Length, Length)) -> Vec<Wall> {
    let (notch_long, notch_wide) = notch;
    vec![
        wall(long, Inside),
        wall(wide.minus(notch_wide), Inside),
        wall(notch_long, Outside),
        wall(notch_wide, Inside),
        wall(long.minus(notch_long), Inside),
        wall(wide, Inside),
    ]
}

/// A bar along wall 1 and a `leg` (its width, its length) out of its far side, `off` from the
/// bar's end at wall 1's start. `wide` is bar and leg together.
pub fn tee(long: Length, wide: Length, leg: (Length, Length), off: Length) -> Vec<Wall> {
    let (leg_wide, leg_long) = leg;
    let bar = wide.minus(leg_long);
    vec![
        wall(long, Inside),
        wall(bar, Inside),
        wall(long.minus(leg_wide).minus(off), Outside),
        wall(leg_long, Inside),
        wall(leg_wide, Inside),
        wall(leg_long, Outside),
        wall(off, Inside),
        wall(bar, Inside),
    ]
}

/// A rectangle without a `gap` (along wall 1, across it) in the side opposite wall 1, `off` from
/// the end at wall 1's start.
pub fn u(long: Length, wide: Length, gap: (Length, Length), off: Length) -> Vec<Wall> {
    let (gap_long, gap_deep) = gap;
    vec![
        wall(long, Inside),
        wall(wide, Inside),
        wall(long.minus(gap_long).minus(off), Inside),
        wall(gap_deep, Outside),
        wall(gap_long, Outside),
        wall(gap_deep, Inside),
        wall(off, Inside),
        wall(wide, Inside),
    ]
}
