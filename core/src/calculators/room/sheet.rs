//! The answer as it is shown. Every figure has a key that never changes: other marks link to them.

use super::Calculator;
use super::drawing::drawing;
use super::shown as s;
use super::words as w;
use super::working::working;
use super::{Answer, Input, Runs, Shape, Tall};
use crate::measure::Length;
use crate::plan::Corner;
use crate::rules::compare::{ask, at_least};
use crate::rules::residential::ceiling_height::{ANY_ROOM, LIVED_IN};
use crate::say;
use crate::sheet::{Check, Figure, Part, PartRow, Sheet, Verdict};
use crate::words::{Amount, Phrase, Text};

/// The keys of the walls' lengths.
pub(super) const WALL_KEYS: [&str; super::choices::MOST_WALLS] = [
    "wall-1", "wall-2", "wall-3", "wall-4", "wall-5", "wall-6", "wall-7", "wall-8", "wall-9",
    "wall-10", "wall-11", "wall-12", "wall-13", "wall-14", "wall-15", "wall-16",
];

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    Sheet {
        headline: Figure::new("floor-area", (&s::FLOOR).into(), answer.floor.into()),
        lead: None,
        next: answer.doubts.first().cloned(),
        figures: figures(input, answer),
        checks: checks(answer),
        working: working(input, answer),
        parts: parts(input, answer),
        materials: Vec::new(),
        cautions: super::Room::cautions(None),
        drawing: Some(drawing(input, answer)),
    }
}

/// The figures as they come together: one way in, so that the page carries it once.
struct Figures(Vec<Figure>);

impl Figures {
    fn add(&mut self, key: &'static str, name: &'static Phrase, amount: Amount) {
        self.0.push(Figure::new(key, name.into(), amount));
    }

    fn length(&mut self, key: &'static str, name: &'static Phrase, length: Length) {
        self.add(key, name, Amount::Length(length));
    }

    /// One that may not be there.
    fn some(&mut self, key: &'static str, name: &'static Phrase, length: Option<Length>) {
        if let Some(length) = length {
            self.length(key, name, length);
        }
    }
}

fn figures(input: &Input, answer: &Answer) -> Vec<Figure> {
    let Answer { plan, now, .. } = answer;
    let mut all = Figures(Vec::new());
    all.length("perimeter", &s::PERIMETER, answer.perimeter);
    for ((at, side), key) in plan.sides().iter().enumerate().zip(WALL_KEYS) {
        let phrase = if side.worked_out { &s::WALL_WORKED_OUT } else { &s::WALL };
        let name = Text { phrase, args: vec![(at as i64 + 1).into()] };
        all.0.push(Figure::new(key, name, side.length.into()));
    }
    let (low, high) = plan.bounds();
    all.add("ceiling-area", &s::CEILING, Amount::Area(answer.floor));
    all.length("ceiling-height", &s::HEIGHT, now.height);
    all.add("wall-area", &s::WALL_AREA, Amount::Area(now.walls));
    all.add("openings", &s::OPENINGS, Amount::Area(answer.openings));
    all.add("wall-area-net", &s::NET, Amount::Area(now.net));
    all.add("volume", &s::VOLUME, Amount::Room(now.volume));
    // Of an L they would make a rectangle that the room isn't.
    if plan.sides().len() == 4 {
        all.length("longest", &s::LONGEST, high.x.minus(low.x));
        all.length("widest", &s::WIDEST, high.y.minus(low.y));
    } else {
        outline(input, &mut all);
    }
    for (key, name, kind) in [
        ("inside-corners", &s::INSIDE, Corner::Inside),
        ("outside-corners", &s::OUTSIDE, Corner::Outside),
    ] {
        all.add(key, name, Amount::Count(plan.corners(kind) as i64));
    }
    if let Some(to_be) = answer.to_be {
        to_be_figures(now, &to_be, &mut all);
    }
    let mut outside = Length::ZERO;
    for (side, is_outside) in plan.sides().iter().zip(&answer.outside) {
        if *is_outside {
            outside = outside.plus(side.length);
        }
    }
    all.some("outside-walls", &s::OUTSIDE_LENGTH, (outside > Length::ZERO).then_some(outside));
    let framing = &input.framing;
    let apart = framing.spacing.length();
    // By a key of its own for each way: what takes it knows which way they run, and learns when that
    // turns out to be the other.
    let way = match framing.runs {
        Runs::Unknown => None,
        Runs::Along => Some(("joists-along", &s::ALONG_APART)),
        Runs::Across => Some(("joists-square", &s::SQUARE_APART)),
    };
    all.some("joist-spacing", &s::APART, way.map(|_| apart));
    if let Some((key, name)) = way {
        all.length(key, name, apart);
    }
    all.some("joist-depth", &s::DEPTH, framing.depth);
    all.some("joist-thickness", &s::THICKNESS, framing.thickness);
    if let Some(off) = uneven(input) {
        let tall = answer.to_be.unwrap_or(*now).height;
        all.length("height-least", &s::LEAST, tall);
        all.length("height-most", &s::MOST, tall.plus(off));
    }
    all.some("diagonals-differ", &s::DIFFERENCE, answer.square.map(|it| it.difference));
    all.some("far-wall-shift", &s::SHIFT, answer.square.map(|it| it.shift));
    all.0
}

/// What the outline of a room with a named shape is put in by, so that a question in that room takes
/// the same; a leg or a gap in the middle by where that is.
fn outline(input: &Input, all: &mut Figures) {
    let middle = |off: Option<Length>, part: Option<Length>| {
        off.or_else(|| Some(input.long?.minus(part?).part(2)))
    };
    let parts = match input.shape {
        // Four walls have names of their own, and a walk has its walls.
        Shape::Rectangle | Shape::Walk => return,
        Shape::Ell => [
            ("notch-long", &w::NOTCH_LONG, input.notch_long),
            ("notch-wide", &w::NOTCH_WIDE, input.notch_wide),
            ("", &w::NOTHING, None),
        ],
        Shape::Tee => [
            ("leg-wide", &w::LEG_WIDE, input.leg_wide),
            ("leg-long", &w::LEG_LONG, input.leg_long),
            ("leg-off", &w::LEG_OFF, middle(input.leg_off, input.leg_wide)),
        ],
        Shape::U => [
            ("gap-long", &w::GAP_LONG, input.gap_long),
            ("gap-deep", &w::GAP_DEEP, input.gap_deep),
            ("gap-off", &w::GAP_OFF, middle(input.gap_off, input.gap_long)),
        ],
    };
    all.some("outline-long", &s::OUTLINE_LONG, input.long);
    all.some("outline-wide", &s::OUTLINE_WIDE, input.wide);
    for (key, name, length) in parts {
        all.some(key, name, length);
    }
}

fn to_be_figures(now: &Tall, to_be: &Tall, all: &mut Figures) {
    let down = to_be.height < now.height;
    let (least, most) = if down { (to_be, now) } else { (now, to_be) };
    let (change, air) =
        if down { (&s::CHANGE_DOWN, &s::AIR_LESS) } else { (&s::CHANGE_UP, &s::AIR_MORE) };
    all.length("ceiling-height-to-be", &s::HEIGHT_TO_BE, to_be.height);
    all.length("ceiling-change", change, most.height.minus(least.height));
    all.add("wall-area-to-be", &s::WALL_AREA_TO_BE, Amount::Area(to_be.walls));
    all.add("wall-area-net-to-be", &s::NET_TO_BE, Amount::Area(to_be.net));
    all.add("volume-to-be", &s::VOLUME_TO_BE, Amount::Room(to_be.volume));
    all.add("volume-change", air, Amount::Room(most.volume.minus(least.volume)));
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
        all.push(Part::plain("level", &s::LEVEL_PART, Some(&s::LEVEL_NOTE), rows));
    }
    // The first stands under the answer.
    if answer.doubts.len() > 1 {
        let rows = answer.doubts.iter().enumerate();
        all.push(Part::plain(
            "look-again",
            &s::AGAIN_PART,
            None,
            rows.map(|(at, it)| read(say!(s::AGAIN, at as i64 + 1), it.clone())).collect(),
        ));
    }
    all
}
