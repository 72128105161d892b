//! Boxes that stand off the walls of their room: by its outline, since a plan knows no more of it.

use super::input::{Input, Mount, PlacedBox};
use super::shown as s;
use super::words as w;
use crate::measure::Length;
use crate::rules::compare::is_at_most;
use crate::rules::electrical::rough_in::{OFF_SIDE, ON_SIDE};
use crate::say;
use crate::words::{Phrase, Text};

/// A box that is near a wall, but not on one.
pub(super) struct OffWall<'a> {
    of: &'a PlacedBox,
    by: Length,
    wall: &'static Phrase,
    /// Where its place is typed, and what.
    typed: (&'static Phrase, Length),
}

impl OffWall<'_> {
    /// Which box, by how much, off which wall, and where that is typed.
    pub(super) fn told(&self) -> Text {
        let (field, place) = self.typed;
        say!(s::OFF_WALL, self.of.label.trim(), self.by, self.wall, field, place)
    }
}

/// Those in a plan, in its order; none where a side of the room isn't said: a box may stand on that.
pub(super) fn off_walls(input: &Input) -> Vec<OffWall<'_>> {
    let mut all = Vec::new();
    let Some((long, wide)) = input.longest.zip(input.widest) else { return all };
    for of in input.boxes.iter().filter(|of| of.mount == Mount::Wall) {
        let Some((x, y)) = of.x.zip(of.y) else { continue };
        let [across, down] = [(&w::X, x), (&w::Y, y)];
        let sides = [
            (x, &s::LEFT_WALL, across),
            (long.minus(x), &s::RIGHT_WALL, across),
            (y, &s::BACK_WALL, down),
            (wide.minus(y), &s::FAR_WALL, down),
        ];
        // The nearest; of two as near, the first.
        let [mut near, rest @ ..] = sides;
        for side in rest {
            if side.0 < near.0 {
                near = side;
            }
        }
        let (by, wall, typed) = near;
        if !is_at_most(by, ON_SIDE) && is_at_most(by, OFF_SIDE) {
            all.push(OffWall { of, by, wall, typed });
        }
    }
    all
}
