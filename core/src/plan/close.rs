//! From walls as measured to a plan that closes, or to what keeps it from closing.

use super::{Axis, Corner, Heading, Plan, Side, Spot, Wall};
use crate::measure::Length;

/// Why walls make no room. Walls are counted from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Problem {
    /// Fewer than four walls.
    TooFew,
    /// A wall of no length, or less.
    NoLength {
        /// Which.
        wall: usize,
    },
    /// A second wall without a length in the same direction: only one can be worked out.
    TwoBlank {
        /// The second.
        wall: usize,
        /// The first.
        other: usize,
    },
    /// Four more outside corners than inside: a walk round the outside of something, or the wrong
    /// way round. It is not turned about: mirrored, its walls and doors would change sides.
    WrongWay,
    /// A closed room has four more inside corners than outside, and this has not.
    Corners {
        /// Inside corners.
        inside: usize,
        /// Outside corners.
        outside: usize,
    },
    /// The last wall doesn't end where the first starts.
    Open {
        /// Along wall 1.
        along: Way,
        /// Across it.
        across: Way,
    },
    /// A wall that is worked out comes to nothing, or less.
    WorkedOut {
        /// Which.
        wall: usize,
        /// What it comes to.
        length: Length,
    },
    /// A wall that meets another away from their corners.
    Meets {
        /// The later of the two.
        wall: usize,
        /// The earlier.
        other: usize,
    },
}

/// How far the walls in one of the directions lead, out and back.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Way {
    /// Out.
    pub out: Length,
    /// And back.
    pub back: Length,
}

impl Way {
    /// How far short of the start it ends; past the start below zero.
    pub const fn short(self) -> Length {
        self.out.minus(self.back)
    }
}

/// A direction's known lengths, and its wall without one.
#[derive(Clone, Copy, Default)]
struct Tally {
    way: Way,
    blank: Option<usize>,
}

impl Plan {
    /// Closes the walls.
    ///
    /// # Errors
    /// The first thing that keeps them from making a room.
    pub fn close(walls: &[Wall]) -> Result<Self, Problem> {
        if walls.len() < 4 {
            return Err(Problem::TooFew);
        }
        let inside = walls.iter().filter(|wall| wall.end == Corner::Inside).count();
        let outside = walls.len() - inside;
        if outside == inside + 4 {
            return Err(Problem::WrongWay);
        }
        if inside != outside + 4 {
            return Err(Problem::Corners { inside, outside });
        }
        let (along, across) = tally(walls)?;
        let [short_along, short_across] = [along, across].map(|tally| tally.way.short());
        let is_open = |tally: Tally| tally.blank.is_none() && tally.way.short() != Length::ZERO;
        if is_open(along) || is_open(across) {
            // A direction whose blank wall takes up what is missing is not open.
            let told = |tally: Tally| if is_open(tally) { tally.way } else { Way::default() };
            return Err(Problem::Open { along: told(along), across: told(across) });
        }
        let mut sides = Vec::with_capacity(walls.len());
        let (mut from, mut heading) = (Spot::default(), Heading::Right);
        for (at, wall) in walls.iter().enumerate() {
            let length = wall.length.unwrap_or_else(|| {
                let short = if heading.axis() == Axis::Along { short_along } else { short_across };
                if heading.is_out() { Length::ZERO.minus(short) } else { short }
            });
            if length <= Length::ZERO {
                return Err(Problem::WorkedOut { wall: at, length });
            }
            let to = match heading {
                Heading::Right => Spot::new(from.x.plus(length), from.y),
                Heading::Down => Spot::new(from.x, from.y.plus(length)),
                Heading::Left => Spot::new(from.x.minus(length), from.y),
                Heading::Up => Spot::new(from.x, from.y.minus(length)),
            };
            let worked_out = wall.length.is_none();
            sides.push(Side { from, to, length, heading, end: wall.end, worked_out });
            (from, heading) = (to, heading.past(wall.end));
        }
        match meeting(&sides) {
            Some((other, wall)) => Err(Problem::Meets { wall, other }),
            None => Ok(Self { sides }),
        }
    }
}

/// Adds up the walls of each direction.
fn tally(walls: &[Wall]) -> Result<(Tally, Tally), Problem> {
    let (mut along, mut across) = (Tally::default(), Tally::default());
    let mut heading = Heading::Right;
    for (at, wall) in walls.iter().enumerate() {
        let tally = match heading.axis() {
            Axis::Along => &mut along,
            Axis::Across => &mut across,
        };
        match (wall.length, tally.blank) {
            (Some(length), _) if length <= Length::ZERO => {
                return Err(Problem::NoLength { wall: at });
            }
            (Some(length), _) if heading.is_out() => tally.way.out = tally.way.out.plus(length),
            (Some(length), _) => tally.way.back = tally.way.back.plus(length),
            (None, Some(other)) => return Err(Problem::TwoBlank { wall: at, other }),
            (None, None) => tally.blank = Some(at),
        }
        heading = heading.past(wall.end);
    }
    Ok((along, across))
}

/// The first two walls that meet away from a corner that they share.
fn meeting(sides: &[Side]) -> Option<(usize, usize)> {
    let last = sides.len().checked_sub(1)?;
    sides.iter().enumerate().find_map(|(at, side)| {
        let rest = sides.iter().enumerate().skip(at + 2);
        let mut apart = rest.filter(|(other, _)| (at, *other) != (0, last));
        apart.find(|(_, other)| side.reaches(other)).map(|(other, _)| (at, other))
    })
}
