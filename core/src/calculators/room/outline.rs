//! From the fields to a plan, or to what is wrong at which of them; and what doesn't fit together
//! though the plan stands.

use super::choices::Shape;
use super::shown as s;
use super::words as w;
use super::{Answer, Input};
use crate::measure::{Area, Length};
use crate::plan::{Plan, Problem, Wall, Way, shape};
use crate::say;
use crate::sheet::{Fault, Faults};
use crate::words::{Phrase, Text};

pub(super) fn plan(input: &Input) -> Result<Plan, Faults> {
    let asked = |length: Option<Length>| length.unwrap_or_default();
    let (long, wide) = (asked(input.long), asked(input.wide));
    let mut faults = Faults::new();
    let walls = match input.shape {
        Shape::Rectangle => shape::rectangle(long, wide),
        Shape::Ell => {
            let notch = (asked(input.notch_long), asked(input.notch_wide));
            less("notch_long", &w::NOTCH_LONG, notch.0, long, &mut faults);
            less("notch_wide", &w::NOTCH_WIDE, notch.1, wide, &mut faults);
            shape::ell(long, wide, notch)
        }
        Shape::Tee => {
            let leg = (asked(input.leg_wide), asked(input.leg_long));
            less("leg_wide", &w::LEG_WIDE, leg.0, long, &mut faults);
            less("leg_long", &w::LEG_LONG, leg.1, wide, &mut faults);
            let off = beside("leg_off", &w::LEG_OFF, input.leg_off, leg.0, long, &mut faults);
            shape::tee(long, wide, leg, off)
        }
        Shape::U => {
            let gap = (asked(input.gap_long), asked(input.gap_deep));
            less("gap_long", &w::GAP_LONG, gap.0, long, &mut faults);
            less("gap_deep", &w::GAP_DEEP, gap.1, wide, &mut faults);
            let off = beside("gap_off", &w::GAP_OFF, input.gap_off, gap.0, long, &mut faults);
            shape::u(long, wide, gap, off)
        }
        Shape::Walk => {
            let wall = |it: &super::Walked| Wall { length: it.length, end: it.end.corner() };
            input.walls.iter().map(wall).collect()
        }
    };
    if !faults.is_empty() {
        return Err(faults);
    }
    Plan::close(&walls).map_err(|problem| vec![refused(input, problem)])
}

fn fault(path: &str, label: &'static Phrase, given: Option<Length>, says: Text) -> Fault {
    let given = given.map(Length::exact).unwrap_or_default();
    Fault { path: path.to_owned(), label, given, says }
}

/// A part has to be less than the whole that it is of.
fn less(path: &str, label: &'static Phrase, part: Length, whole: Length, faults: &mut Faults) {
    if part >= whole {
        faults.push(fault(path, label, Some(part), say!(w::SHORTER, whole)));
    }
}

/// Where a part `wide` starts: as said, or so that it stands in the middle.
fn beside(
    path: &str,
    label: &'static Phrase,
    said: Option<Length>,
    wide: Length,
    long: Length,
    faults: &mut Faults,
) -> Length {
    let off = said.unwrap_or_else(|| long.minus(wide).part(2));
    if said.is_some() && off.plus(wide) >= long && wide < long {
        faults.push(fault(path, label, said, say!(w::NO_ROOM_BESIDE, off, wide, long)));
    }
    off
}

/// A plan's problem, at its wall where the walls are fields of their own.
fn refused(input: &Input, problem: Problem) -> Fault {
    let number = |wall: usize| wall as i64 + 1;
    let (at, says) = match problem {
        Problem::TooFew => (None, say!(w::TOO_FEW)),
        Problem::WrongWay => (None, say!(w::WRONG_WAY)),
        Problem::Corners { inside, outside } => {
            (None, say!(w::CORNERS, inside as i64, outside as i64))
        }
        Problem::Open { along, across } => (None, open(along, across)),
        Problem::TwoBlank { wall, other } => {
            (Some(wall), say!(w::TWO_BLANK, number(other), number(wall)))
        }
        Problem::NoLength { wall } => (Some(wall), say!(w::WORKED_OUT, number(wall), Length::ZERO)),
        Problem::WorkedOut { wall, length } => {
            (Some(wall), say!(w::WORKED_OUT, number(wall), length))
        }
        Problem::Meets { wall, other } => (Some(wall), say!(w::MEETS, number(wall), number(other))),
    };
    match at {
        _ if input.shape != Shape::Walk => fault("shape", &w::SHAPE, None, says),
        None => fault("walls", &w::WALLS, None, says),
        Some(wall) => {
            let path = ["walls.", &wall.to_string(), ".length"].concat();
            fault(&path, &w::LENGTH, input.walls.get(wall).and_then(|it| it.length), says)
        }
    }
}

fn open(along: Way, across: Way) -> Text {
    let one = |way: Way, short: &'static Phrase, past: &'static Phrase| {
        let by = way.short();
        let (phrase, by) =
            if by > Length::ZERO { (short, by) } else { (past, Length::ZERO.minus(by)) };
        Text { phrase, args: vec![by.into(), way.out.into(), way.back.into()] }
    };
    let first = || one(along, &w::SHORT_ALONG, &w::PAST_ALONG);
    let second = || one(across, &w::SHORT_ACROSS, &w::PAST_ACROSS);
    if across.short() == Length::ZERO {
        first()
    } else if along.short() == Length::ZERO {
        second()
    } else {
        say!(w::BOTH, first(), second())
    }
}

/// What is to be looked at again: it changes no area of floor, and stops nothing.
pub(super) fn doubts(input: &Input, answer: &Answer) -> Vec<Text> {
    let sides = answer.plan.sides();
    let walls = sides.len() as i64;
    let mut doubts = Vec::new();
    // Once a wall, whatever is said of it.
    let mut gone: Vec<usize> = Vec::new();
    let said =
        input.openings.iter().map(|it| it.wall).chain(input.outside.iter().map(|it| it.wall));
    for wall in said.filter_map(super::At::wall) {
        if wall >= sides.len() && !gone.contains(&wall) {
            gone.push(wall);
            doubts.push(say!(s::NO_SUCH_WALL, wall as i64 + 1, walls));
        }
    }
    for (wall, side) in sides.iter().enumerate() {
        let open = open_in(input, wall);
        if open > side.length {
            doubts.push(say!(s::TOO_WIDE, wall as i64 + 1, side.length, open));
        }
    }
    for it in &input.openings {
        if let Some(height) = it.height.filter(|height| *height > answer.now.height) {
            doubts.push(say!(s::TOO_HIGH, it.kind.label(), height, answer.now.height));
        }
    }
    if answer.openings > answer.now.walls {
        doubts.push(say!(s::TOO_OPEN, answer.openings, answer.now.walls));
    }
    if let (Some(first), Some(second)) = (input.diagonal_1, input.diagonal_2)
        && let (Some(long), Some(wide)) = (input.long, input.wide)
    {
        let of = |length: Length| Area::of(length, length);
        let (seen, want) = (of(first).plus(of(second)), of(long).plus(of(wide)).times(2));
        // A diagonal an inch off shows as four times that, along it, in the two squares.
        let slack = Area::of(first.plus(second), Length::inches(2, 1));
        if seen.minus(want) > slack || want.minus(seen) > slack {
            doubts.push(say!(s::DIAGONALS_DONT_FIT));
        }
    }
    doubts
}

/// How much of a wall is open.
pub(super) fn open_in(input: &Input, wall: usize) -> Length {
    let here = input.openings.iter().filter(|it| it.wall.wall() == Some(wall));
    here.fold(Length::ZERO, |sum, it| sum.plus(it.width.unwrap_or_default().times(it.count)))
}
