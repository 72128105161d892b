//! The walls under a flat ceiling that goes up: studs, short walls, and the sheets that cover them.

use super::words as w;
use super::{By, How, Input, fault};
use crate::measure::{Length, Rounding, divide};
use crate::rules::framing::lumber::THICK;
use crate::rules::framing::precut;
use crate::rules::residential::fireblocking::BAY;
use crate::say;
use crate::sheet::Faults;

/// Studs apart where nobody says. Common practice.
const APART: Length = Length::inches(16, 1);

/// Walls that go up.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Walls {
    /// From the subfloor to the joists, to be.
    pub framing: Length,
    /// How far the joists go up.
    pub raise: Length,
    /// A stud over the whole height, without its plates.
    pub stud: Length,
    /// The shortest sold from which it is cut: a precut, or lumber by even feet.
    pub sold: Length,
    /// Whether that is a precut.
    pub precut: bool,
    /// A stud of the short wall, where there is one.
    pub cripple: Option<Length>,
    /// The walls that go up, end to end.
    pub perimeter: Length,
    /// Studs apart, middle to middle.
    pub spacing: Length,
    /// Studs along them, ends included, without doors and corners.
    pub studs: i64,
    /// New plates along them, one over the other.
    pub plates: i64,
    /// Lines of fireblocks along them: at the old ceiling's line, and every 10 ft.
    pub blocks: i64,
}

impl Walls {
    /// What is cut: the cripple, or the stud.
    pub fn cut(&self) -> Length {
        self.cripple.unwrap_or(self.stud)
    }
}

pub(super) fn walls(input: &Input, old: Length, height: Length) -> Result<Walls, Faults> {
    let asked = |length: Option<Length>| length.unwrap_or_default();
    let framing = height.plus(asked(input.new_board)).plus(asked(input.floor_finish));
    let raise = framing.minus(old);
    if raise <= Length::ZERO {
        let gives = asked(input.board).minus(asked(input.new_board));
        let (path, label) = match input.to.by {
            By::Height => ("to.height", &w::HEIGHT),
            By::Raise => ("to.raise", &w::RAISE),
        };
        return Err(fault(path, label, &height.exact(), say!(w::NOT_RAISED, gives)));
    }
    let cripple = match input.wall.how {
        How::Full => None,
        How::Stacked => {
            let plates = THICK.times(input.wall.added);
            if raise <= plates {
                let says = say!(w::NO_SHORT_WALL, plates, raise);
                let given = input.wall.added.to_string();
                return Err(fault("wall.added", &w::ADDED, &given, says));
            }
            Some(raise.minus(plates))
        }
    };
    let stud = framing.minus(THICK.times(input.plates));
    let sold = precut::nearest(stud);
    let (long, wide) = (asked(input.long), asked(input.wide));
    let spacing = input.wall.spacing.unwrap_or(APART);
    let along = |wall| studs(wall, spacing);
    let (perimeter, studs) = match input.perimeter {
        Some(said) => (said, along(said)),
        None => (long.plus(wide).times(2), 2 * (along(long) + along(wide))),
    };
    Ok(Walls {
        framing,
        raise,
        stud,
        sold: sold.unwrap_or_else(|| precut::EVEN.times(ceiling(stud, precut::EVEN))),
        precut: sold.is_some(),
        cripple,
        perimeter,
        spacing,
        studs,
        plates: if cripple.is_some() { input.wall.added } else { input.plates },
        // The old plates under a short wall close the old line already.
        blocks: if cripple.is_some() { 0 } else { (ceiling(stud, BAY.value) - 1).max(1) },
    })
}

/// Studs along a wall, both ends included: `⌈wall ÷ spacing⌉ + 1`.
pub(super) fn studs(wall: Length, spacing: Length) -> i64 {
    ceiling(wall, spacing).saturating_add(1)
}

/// How many of `by` it takes to cover `length`.
pub(super) fn ceiling(length: Length, by: Length) -> i64 {
    let by = by.nanometres().max(1).into();
    let count = divide(length.nanometres().into(), by, Rounding::Up);
    i64::try_from(count).unwrap_or(i64::MAX)
}
