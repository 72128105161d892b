//! The answer as it is shown. Every figure has a key that never changes: other marks link to them.

use super::drawing::drawing;
use super::shown as s;
use super::working::working;
use super::{Answer, Input, Tall};
use crate::measure::{Length, Rounding};
use crate::plan::Corner;
use crate::rules::compare::{ask, at_least};
use crate::rules::residential::ceiling_height::{ANY_ROOM, LIVED_IN};
use crate::say;
use crate::sheet::{Caution, Check, Figure, Part, PartRow, Sheet, Verdict};
use crate::words::{Amount, Text};

/// The keys of the walls' lengths.
pub(super) const WALL_KEYS: [&str; super::choices::MOST_WALLS] = [
    "wall-1", "wall-2", "wall-3", "wall-4", "wall-5", "wall-6", "wall-7", "wall-8", "wall-9",
    "wall-10", "wall-11", "wall-12", "wall-13", "wall-14", "wall-15", "wall-16",
];

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    Sheet {
        headline: figure("floor-area", &s::FLOOR, answer.floor),
        lead: None,
        next: answer.doubts.first().cloned(),
        figures: figures(input, answer),
        checks: checks(answer),
        working: working(input, answer),
        parts: parts(input, answer),
        materials: Vec::new(),
        cautions: [&s::SQUARE_UP, &s::OLD_FINISH, &s::TIES, &s::LOCAL]
            .map(|phrase| Caution { text: phrase.into(), source: None })
            .into(),
        drawing: Some(drawing(input, answer)),
    }
}

fn figure(key: &'static str, name: impl Into<Text>, amount: impl Into<Amount>) -> Figure {
    Figure { key, name: name.into(), amount: amount.into(), rounding: Rounding::Nearest }
}

fn figures(input: &Input, answer: &Answer) -> Vec<Figure> {
    let Answer { plan, now, .. } = answer;
    let mut all = vec![figure("perimeter", &s::PERIMETER, answer.perimeter)];
    for ((at, side), key) in plan.sides().iter().enumerate().zip(WALL_KEYS) {
        let number = at as i64 + 1;
        let name =
            if side.worked_out { say!(s::WALL_WORKED_OUT, number) } else { say!(s::WALL, number) };
        all.push(figure(key, name, side.length));
    }
    let (low, high) = plan.bounds();
    let corners = |kind| plan.corners(kind) as i64;
    all.extend([
        figure("ceiling-area", &s::CEILING, answer.floor),
        figure("ceiling-height", &s::HEIGHT, now.height),
        figure("wall-area", &s::WALL_AREA, now.walls),
        figure("openings", &s::OPENINGS, answer.openings),
        figure("wall-area-net", &s::NET, now.net),
        figure("volume", &s::VOLUME, Amount::Room(now.volume)),
        figure("longest", &s::LONGEST, high.x.minus(low.x)),
        figure("widest", &s::WIDEST, high.y.minus(low.y)),
        figure("inside-corners", &s::INSIDE, corners(Corner::Inside)),
        figure("outside-corners", &s::OUTSIDE, corners(Corner::Outside)),
    ]);
    if let Some(to_be) = answer.to_be {
        to_be_figures(now, &to_be, &mut all);
    }
    let outside = plan.sides().iter().zip(&answer.outside).filter(|(_, is_outside)| **is_outside);
    let outside = outside.fold(Length::ZERO, |sum, (side, _)| sum.plus(side.length));
    if outside > Length::ZERO {
        all.push(figure("outside-walls", &s::OUTSIDE_LENGTH, outside));
    }
    if input.framing.runs.axis().is_some() {
        all.push(figure("joist-spacing", &s::SPACING, input.framing.spacing.length()));
    }
    if let Some(depth) = input.framing.depth {
        all.push(figure("joist-depth", &s::DEPTH, depth));
    }
    if let Some(thickness) = input.framing.thickness {
        all.push(figure("joist-thickness", &s::THICKNESS, thickness));
    }
    if let Some(off) = uneven(input) {
        let tall = answer.to_be.unwrap_or(*now).height;
        all.push(figure("height-least", &s::LEAST, tall));
        all.push(figure("height-most", &s::MOST, tall.plus(off)));
    }
    if let Some(square) = answer.square {
        all.push(figure("diagonals-differ", &s::DIFFERENCE, square.difference));
        all.push(figure("far-wall-shift", &s::SHIFT, square.shift));
    }
    all
}

fn to_be_figures(now: &Tall, to_be: &Tall, all: &mut Vec<Figure>) {
    let down = to_be.height < now.height;
    let (least, most) = if down { (to_be, now) } else { (now, to_be) };
    let (change, air) =
        if down { (&s::CHANGE_DOWN, &s::AIR_LESS) } else { (&s::CHANGE_UP, &s::AIR_MORE) };
    all.extend([
        figure("ceiling-height-to-be", &s::HEIGHT_TO_BE, to_be.height),
        figure("ceiling-change", change, most.height.minus(least.height)),
        figure("wall-area-to-be", &s::WALL_AREA_TO_BE, to_be.walls),
        figure("wall-area-net-to-be", &s::NET_TO_BE, to_be.net),
        figure("volume-to-be", &s::VOLUME_TO_BE, Amount::Room(to_be.volume)),
        figure("volume-change", air, Amount::Room(most.volume.minus(least.volume))),
    ]);
}

/// How far the floor is off, where it is.
fn uneven(input: &Input) -> Option<Length> {
    input.out_of_level.filter(|off| *off > Length::ZERO)
}

/// The height is measured at the floor's highest place, so it is the least there is.
fn checks(answer: &Answer) -> Vec<Check> {
    let now = at_least("height-now", (&s::CHECK_NOW).into(), answer.now.height, LIVED_IN);
    let mut all = vec![if now.verdict == Verdict::Over { ask(now, &s::ASK_LOW) } else { now }];
    if let Some(to_be) = answer.to_be {
        let name = || Text::from(&s::CHECK_TO_BE);
        let any = at_least("height-to-be", name(), to_be.height, ANY_ROOM);
        let lived_in = at_least("height-to-be", name(), to_be.height, LIVED_IN);
        all.push(match (any.verdict, lived_in.verdict) {
            (Verdict::Over, _) => any,
            (_, Verdict::Over) => ask(lived_in, &s::ASK_LOW),
            _ => lived_in,
        });
    }
    all
}

fn parts(input: &Input, answer: &Answer) -> Vec<Part> {
    let read = |name, value| PartRow { name, value, puts: Vec::new() };
    let mut all = Vec::new();
    if let Some(off) = uneven(input) {
        let row =
            |name, tall: Tall| read(name, say!(s::FROM_TO, tall.height, tall.height.plus(off)));
        let mut rows = vec![row((&s::LEVEL_NOW).into(), answer.now)];
        rows.extend(answer.to_be.map(|tall| row((&s::LEVEL_TO_BE).into(), tall)));
        all.push(Part {
            key: "level",
            title: (&s::LEVEL_PART).into(),
            note: Some((&s::LEVEL_NOTE).into()),
            rows,
        });
    }
    // The first stands under the answer.
    if answer.doubts.len() > 1 {
        let rows = answer.doubts.iter().enumerate();
        all.push(Part {
            key: "look-again",
            title: (&s::AGAIN_PART).into(),
            note: None,
            rows: rows.map(|(at, it)| read(say!(s::AGAIN, at as i64 + 1), it.clone())).collect(),
        });
    }
    all
}
