//! The walls of rooms that have a name, wall 1 along their longest straight run.

use super::{Corner, Wall};
use crate::measure::Length;

/// Walls of these lengths; those at the places in `outside` end in an outside corner.
fn walls(lengths: &[Length], outside: &[usize]) -> Vec<Wall> {
    let wall = |(at, length): (usize, &Length)| Wall {
        length: Some(*length),
        end: if outside.contains(&at) { Corner::Outside } else { Corner::Inside },
    };
    lengths.iter().enumerate().map(wall).collect()
}

/// `long` along wall 1, `wide` across it.
pub fn rectangle(long: Length, wide: Length) -> Vec<Wall> {
    walls(&[long, wide, long, wide], &[])
}

/// A rectangle without a `notch` (along wall 1, across it) in the corner farthest from wall 1's
/// start.
pub fn ell(long: Length, wide: Length, notch: (Length, Length)) -> Vec<Wall> {
    let (across, along) = (wide.minus(notch.1), long.minus(notch.0));
    walls(&[long, across, notch.0, notch.1, along, wide], &[2])
}

/// A bar along wall 1 and a `leg` (its width, its length) out of its far side, `off` from the
/// bar's end at wall 1's start. `wide` is bar and leg together.
pub fn tee(long: Length, wide: Length, leg: (Length, Length), off: Length) -> Vec<Wall> {
    let (bar, beside) = (wide.minus(leg.1), long.minus(leg.0).minus(off));
    walls(&[long, bar, beside, leg.1, leg.0, leg.1, off, bar], &[2, 5])
}

/// A rectangle without a `gap` (along wall 1, across it) in the side opposite wall 1, `off` from
/// the end at wall 1's start.
pub fn u(long: Length, wide: Length, gap: (Length, Length), off: Length) -> Vec<Wall> {
    let beside = long.minus(gap.0).minus(off);
    walls(&[long, wide, beside, gap.1, gap.0, gap.1, off, wide], &[3, 4])
}
