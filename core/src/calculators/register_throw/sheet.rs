//! The answer as it is shown.

use super::Calculator;
use super::drawing::drawing;
use super::fit::share;
use super::words as w;
use super::{
    Along, Answer, Input, Know, Temperature, air, at_heads, handed_over, questions, to_inch,
};
use crate::measure::unit::PERCENT;
use crate::measure::{Length, Measure};
use crate::rules::air::comfort_index::COMMON;
use crate::rules::air::flow_guess::{DUCTS, GUESSES};
use crate::rules::air::jets::{
    Blows, CARRIED, DROP, ENDS, LEAVES, SURFACE, Surface, THROW, UPPER_HALF, UPWARD, measured,
    throw, velocity,
};
use crate::rules::air::noise::{SOUND, sound};
use crate::rules::air::register_sizes::OPEN;
use crate::say;
use crate::sheet::{Expr, Figure, Part, PartRow, Sheet, Source, Step};
use crate::words::{Amount, Arg, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let name = match (input.outlet.blows(), input.surface()) {
        (Blows::Up, _) => &w::THROW_50,
        (_, Surface::Attached) => &w::THROW_50_ALONG,
        (_, Surface::Free) => &w::THROW_50_FREE,
    };
    Sheet {
        headline: figure("throw-50", name.into(), answer.told()),
        lead: None,
        next: next(input, answer),
        figures: figures(input, answer),
        checks: answer.checks.clone(),
        working: working(input, answer),
        parts: vec![
            reach(answer),
            behaves(input, answer),
            handed_over("handed", None, input, answer, &[(&w::WAY, input.way.map(Amount::Length))]),
            questions(false),
        ],
        materials: Vec::new(),
        cautions: super::RegisterThrow::cautions(Some(input)),
        drawing: Some(drawing(input, answer)),
    }
}

fn figure(key: &'static str, name: Text, amount: impl Into<Amount>) -> Figure {
    Figure::new(key, name, amount.into())
}

/// How much of the way it is, what the range of its air makes of it, and what would tell more.
fn next(input: &Input, answer: &Answer) -> Option<Text> {
    let mut all = Vec::new();
    all.extend(at_heads(input, answer));
    if input.is_warm_from_above() {
        all.push((&w::WARM_STAYS_UP).into());
    }
    let covers = |way| measured(share(answer.throw(), way));
    if let Some(covers) = input.way.and_then(covers) {
        let [least, most] = COMMON;
        if input.outlet.blows() != Blows::Up {
            all.push(say!(w::COVERS, covers, least.value, most.value));
        } else if input.temperature != Temperature::Warm {
            all.push(say!(w::COVERS_UP, covers, UPPER_HALF.value));
        }
    }
    let [low, _, high] = answer.throws[0].map(|throw| throw.map(to_inch));
    let [least, _, most] = answer.air;
    match (low, high) {
        (Some(low), Some(high)) if answer.is_range() => {
            all.push(say!(w::NEXT_RANGE, least, most, low, high));
        }
        (None, Some(high)) => all.push(say!(w::NEXT_LOW, least, most, high)),
        _ => {}
    }
    if matches!(input.know, Know::Guess | Know::Tons | Know::Duct) {
        all.push((&w::NEXT_MEASURE).into());
    }
    if input.maker.throw.is_none() {
        all.push((&w::NEXT).into());
    }
    all.into_iter().reduce(|sum, one| say!(w::BOTH, sum, one))
}

fn figures(input: &Input, answer: &Answer) -> Vec<Figure> {
    let mut all = Vec::new();
    let mut some = |key, name: &'static Phrase, length: Option<Length>| {
        if let Some(length) = length {
            all.push(figure(key, name.into(), to_inch(length)));
        }
    };
    if answer.is_range() {
        some("throw-50-least", &w::THROW_50_LEAST, answer.throws[0][0]);
        some("throw-50-most", &w::THROW_50_MOST, answer.throws[0][2]);
    }
    some("throw-100", &w::THROW_100, answer.throws[1][1]);
    some("throw-150", &w::THROW_150, answer.throws[2][1]);
    some("off-ceiling", &w::OFF_CEILING, answer.off_ceiling);
    if let Some(bend) = answer.bend {
        let names = match input.temperature {
            Temperature::Warm => [&w::RISE_LEAST, &w::RISE_MOST],
            _ => [&w::DROP_LEAST, &w::DROP_MOST],
        };
        for ((key, name), by) in ["bend-least", "bend-most"].into_iter().zip(names).zip(bend.by) {
            all.push(figure(key, Text { phrase: name, args: vec![bend.end.into()] }, by));
        }
        let names = [("down-least", &w::DOWN_LEAST), ("down-most", &w::DOWN_MOST)];
        for ((key, name), at) in names.into_iter().zip(bend.down.into_iter().flatten()) {
            all.push(figure(key, name.into(), at));
        }
    }
    for (key, name, measure) in [
        ("air", &w::AIR, Some(answer.air[1])),
        ("leaves", &w::LEAVES, Some(answer.leaves[1])),
        ("speed", &w::SPEED, Some(answer.speeds()[1])),
        ("area", &w::AREA, Some(answer.area)),
        ("carried", &w::CARRIED, answer.carried),
        ("up-change", &w::UP_CHANGE, up_change(input)),
    ] {
        if let Some(measure) = measure {
            all.push(figure(key, name.into(), measure));
        }
    }
    all
}

/// A percent a degree, of what blows up or down.
fn up_change(input: &Input) -> Option<Measure> {
    let blows_up = input.outlet.blows() == Blows::Up;
    let differs = input.temperature != Temperature::Same;
    let percent = Measure::new(&PERCENT, input.difference.millionths());
    (blows_up && differs).then_some(percent)
}

/// The steps as they come together: one way in, so that the page carries it once.
struct Steps(Vec<Step>);

impl Steps {
    fn add(
        &mut self,
        key: &str,
        name: &'static Phrase,
        expr: Expr,
        source: Option<&'static Source>,
    ) {
        self.0.push(Step { key: key.to_owned(), name: name.into(), expr, source });
    }
}

fn working(input: &Input, answer: &Answer) -> Vec<Step> {
    let mut all = Steps(Vec::new());
    let middle = answer.air[1];
    let guessed = if input.know == Know::Duct { &DUCTS } else { &GUESSES };
    all.add("air", &w::AIR, air::middle(input), answer.is_range().then_some(guessed));
    let size = if input.outlet.has_neck() { &w::NECK_AREA } else { &w::CORE };
    all.add("core", size, air::core(input), None);
    all.add("area", &w::AREA, air::area(input), Some(&THROW));
    let surface =
        (input.surface() == Surface::Attached || input.maker.throw.is_some()).then_some(&SURFACE);
    all.add("k", &w::K, air::k(input), surface.or(Some(&THROW)));
    all.add("leaves", &w::LEAVES, velocity(middle, answer.area), Some(&SOUND));
    let names = [&w::FORMULA_50, &w::THROW_100, &w::THROW_150];
    for (((key, name), end), throws) in ["formula-50", "formula-100", "formula-150"]
        .into_iter()
        .zip(names)
        .zip(ENDS)
        .zip(answer.throws)
    {
        if throws[1].is_some() {
            all.add(key, name, throw(answer.k, middle, answer.area, end), Some(&THROW));
        }
    }
    all.add("face-area", &w::FACE_AREA, air::face_area(input), Some(&OPEN));
    all.add("face", &w::FACE_SPEED, velocity(middle, answer.face_area), None);
    if answer.carried.is_some() {
        all.add("carried", &w::CARRIED, air::carried(input, answer.leaves[1]), Some(&CARRIED));
    }
    if let Some(way) = input.way {
        let name = if input.outlet.blows() == Blows::Up { &w::CHECK_UP } else { &w::CHECK_COMMON };
        all.add("way", name, share(answer.throw(), way), None);
    }
    if let Some(bend) = answer.bend {
        let phrase =
            if input.temperature == Temperature::Warm { &w::RISE_MOST } else { &w::DROP_MOST };
        let (key, name) = ("bend-most".to_owned(), Text { phrase, args: vec![bend.end.into()] });
        all.0.push(Step { key, name, expr: Expr::length(bend.by[1]), source: Some(&DROP) });
    }
    if let Some(at) = answer.off_ceiling {
        all.add("off-ceiling", &w::OFF_CEILING, Expr::length(at), Some(&LEAVES));
    }
    if let Some(percent) = up_change(input) {
        all.add("up-change", &w::UP_CHANGE, Expr::measure(percent), Some(&UPWARD));
    }
    all.0
}

fn read(name: Text, value: Text) -> PartRow {
    PartRow { name, value, puts: Vec::new() }
}

/// How far by speed, at the least, the middle and the most of the air.
fn reach(answer: &Answer) -> Part {
    let mut rows = Vec::new();
    if answer.is_range() {
        let [low, middle, high] = answer.air;
        rows.push(read((&w::AIR).into(), say!(w::THREE, low, middle, high)));
    }
    for (end, throws) in ENDS.into_iter().zip(answer.throws) {
        let one = |at: usize| match throws[at] {
            Some(throw) => say!(w::ONE, to_inch(throw)),
            None => say!(w::NO_REACH, answer.leaves[at]),
        };
        let all = if answer.is_range() {
            Text { phrase: &w::THREE, args: [0, 1, 2].map(|at| Arg::Text(one(at))).to_vec() }
        } else {
            one(1)
        };
        rows.push(read(say!(w::TO, end), all));
    }
    Part::plain("reach", &w::REACH, Some(&w::REACH_NOTE), rows)
}

fn behaves(input: &Input, answer: &Answer) -> Part {
    let mut rows = vec![read((&w::SOUND).into(), sound(answer.speeds()[1]))];
    if input.outlet.blows() != Blows::Up {
        let cold = input.temperature == Temperature::Cold;
        if input.along == Along::Usual {
            rows.push(read((&w::ALONG).into(), say!(w::TAKEN, input.surface().label())));
        }
        let along = match (input.surface(), answer.off_ceiling) {
            (Surface::Free, _) => (&w::NOT_ALONG).into(),
            (_, Some(at)) => say!(w::LEAVES_AT, at),
            _ if !cold => (&w::HOLDS_WARM).into(),
            _ if input.outlet.blows() == Blows::Across => (&w::STAYS_WALL).into(),
            _ => (&w::STAYS).into(),
        };
        rows.push(read((&w::CEILING).into(), along));
    }
    if let Some(carried) = answer.carried {
        rows.push(read((&w::CARRIED).into(), say!(w::ONE, carried)));
    }
    Part::plain("behaves", &w::BEHAVES, Some(&w::SOUND_NOTE), rows)
}
