//! The plan of a room: a polygon whose corners are all square, exactly.
//!
//! It is walked along the walls from inside, clockwise as seen from above, with the wall at the
//! left hand: an inside corner turns right, an outside corner turns left. Wall 1 runs to the
//! right along the top of the drawing. No word, rule or calculator is known here.

mod close;
mod cut;
pub mod shape;

pub use close::{Problem, Way};
pub use cut::{Rectangle, put_in_order};

use crate::measure::{Area, Length};

/// A place on the plan: x along wall 1 from where it starts, y across it into the room.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Spot {
    /// Along wall 1.
    pub x: Length,
    /// Across it.
    pub y: Length,
}

impl Spot {
    /// A place.
    pub const fn new(x: Length, y: Length) -> Self {
        Self { x, y }
    }
}

/// Which way two walls meet, as drywall has it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Corner {
    /// It points away from the room: the walk turns right.
    Inside,
    /// It points into the room: the walk turns left.
    Outside,
}

/// A wall as measured, and the corner at its end.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wall {
    /// Its length; one blank in each of the two directions is worked out.
    pub length: Option<Length>,
    /// The corner that it ends in.
    pub end: Corner,
}

/// Which way a wall is walked, as it stands on the drawing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Heading {
    /// As wall 1.
    Right,
    /// Away from wall 1, into the room.
    Down,
    /// Back along wall 1.
    Left,
    /// Toward wall 1.
    Up,
}

impl Heading {
    /// The way on, past a corner.
    pub const fn past(self, corner: Corner) -> Self {
        match (self, corner) {
            (Self::Right, Corner::Inside) | (Self::Left, Corner::Outside) => Self::Down,
            (Self::Down, Corner::Inside) | (Self::Up, Corner::Outside) => Self::Left,
            (Self::Left, Corner::Inside) | (Self::Right, Corner::Outside) => Self::Up,
            (Self::Up, Corner::Inside) | (Self::Down, Corner::Outside) => Self::Right,
        }
    }

    /// Away from where the walk began, and not back.
    pub const fn is_out(self) -> bool {
        matches!(self, Self::Right | Self::Down)
    }

    /// Which of the two directions it is in.
    pub const fn axis(self) -> Axis {
        match self {
            Self::Right | Self::Left => Axis::Along,
            Self::Down | Self::Up => Axis::Across,
        }
    }
}

/// The two directions that walls run in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Axis {
    /// Along wall 1.
    Along,
    /// Square to it.
    Across,
}

/// A wall in its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Side {
    /// Where it starts.
    pub from: Spot,
    /// Where it ends.
    pub to: Spot,
    /// How long it is; above nothing.
    pub length: Length,
    /// Which way it is walked.
    pub heading: Heading,
    /// The corner that it ends in.
    pub end: Corner,
    /// It was left blank, and follows from the others.
    pub worked_out: bool,
}

/// A room that closes, four walls or more, none of which meets another but at their corners.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plan {
    sides: Vec<Side>,
}

impl Plan {
    /// The walls in the order of the walk; wall 1 comes first.
    pub fn sides(&self) -> &[Side] {
        &self.sides
    }

    /// The floor, exactly.
    pub fn area(&self) -> Area {
        // Each wall across sweeps what lies between it and the line through the start.
        let swept = |side: &Side| Area::of(side.from.x, side.to.y.minus(side.from.y));
        self.sides.iter().fold(Area::ZERO, |sum, side| sum.plus(swept(side)))
    }

    /// All walls together.
    pub fn perimeter(&self) -> Length {
        self.sides.iter().fold(Length::ZERO, |sum, side| sum.plus(side.length))
    }

    /// The upper left and the lower right corner of the smallest rectangle that holds it.
    pub fn bounds(&self) -> (Spot, Spot) {
        let start = (Spot::default(), Spot::default());
        self.sides.iter().fold(start, |(low, high), side| {
            let (x, y) = (side.from.x, side.from.y);
            (Spot::new(low.x.min(x), low.y.min(y)), Spot::new(high.x.max(x), high.y.max(y)))
        })
    }

    /// How many of its corners are of this kind.
    pub fn corners(&self, kind: Corner) -> usize {
        self.sides.iter().filter(|side| side.end == kind).count()
    }

    /// Whether a place is in the room; on a wall it is.
    pub fn contains(&self, spot: Spot) -> bool {
        let on = |side: &Side| side.reaches(&Side { from: spot, to: spot, ..*side });
        // Walls to the right that pass its height: an odd number of them from inside.
        let passes = |side: &&Side| {
            let (low, high) = ordered(side.from.y, side.to.y);
            side.from.x > spot.x && low <= spot.y && spot.y < high
        };
        self.sides.iter().any(on) || self.sides.iter().filter(passes).count() % 2 == 1
    }
}

impl Side {
    /// Whether the two share a place. They are level or plumb, so it is enough that their
    /// reaches overlap both ways.
    fn reaches(&self, other: &Self) -> bool {
        let overlap = |a: (Length, Length), b: (Length, Length)| a.0 <= b.1 && b.0 <= a.1;
        overlap(ordered(self.from.x, self.to.x), ordered(other.from.x, other.to.x))
            && overlap(ordered(self.from.y, self.to.y), ordered(other.from.y, other.to.y))
    }
}

fn ordered(a: Length, b: Length) -> (Length, Length) {
    (a.min(b), a.max(b))
}

#[cfg(test)]
mod tests;
