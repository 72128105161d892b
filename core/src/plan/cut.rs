//! A plan cut by lines: into rectangles, as its area is worked out by hand, and into the lengths
//! that something laid across it has.

use super::{Axis, Plan, Side, Spot, ordered};
use crate::measure::Length;

/// A rectangle of floor.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rectangle {
    /// Its corner nearest the start of wall 1.
    pub low: Spot,
    /// The corner across.
    pub high: Spot,
}

impl Rectangle {
    /// Along wall 1, and across it.
    pub const fn sizes(&self) -> (Length, Length) {
        (self.high.x.minus(self.low.x), self.high.y.minus(self.low.y))
    }
}

impl Plan {
    /// From where to where a line lies in the room, in order. It runs along `axis`, `at` so far
    /// across it; on a wall, it counts as just past it.
    pub fn chords(&self, axis: Axis, at: Length) -> Vec<(Length, Length)> {
        let mut ends: Vec<Length> = Vec::new();
        for side in self.sides.iter().filter(|side| side.heading.axis() != axis) {
            let (from, to, place) = match axis {
                Axis::Along => (side.from.y, side.to.y, side.from.x),
                Axis::Across => (side.from.x, side.to.x, side.from.y),
            };
            let (low, high) = ordered(from, to);
            if low <= at && at < high {
                put_in_order(&mut ends, place);
            }
        }
        let starts = ends.iter().copied().step_by(2);
        starts.zip(ends.iter().copied().skip(1).step_by(2)).collect()
    }

    /// The floor as rectangles, cut along `axis` at every corner.
    pub fn rectangles(&self, axis: Axis) -> Vec<Rectangle> {
        let across = |spot: Spot| if axis == Axis::Along { spot.y } else { spot.x };
        let mut cuts: Vec<Length> = Vec::new();
        for Side { from, .. } in &self.sides {
            if !cuts.contains(&across(*from)) {
                put_in_order(&mut cuts, across(*from));
            }
        }
        let spot = |along, across| match axis {
            Axis::Along => Spot::new(along, across),
            Axis::Across => Spot::new(across, along),
        };
        let mut all = Vec::new();
        for (low, high) in cuts.iter().zip(cuts.iter().skip(1)) {
            for (from, to) in self.chords(axis, *low) {
                all.push(Rectangle { low: spot(from, *low), high: spot(to, *high) });
            }
        }
        all
    }
}

/// Puts a length among others, the shortest first. There are few: the library's sort would cost
/// the page more than it saves.
pub fn put_in_order(all: &mut Vec<Length>, length: Length) {
    let at = all.iter().position(|other| *other > length).unwrap_or(all.len());
    all.insert(at, length);
}
