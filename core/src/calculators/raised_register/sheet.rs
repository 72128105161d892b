//! The answer as it is shown, and its working.

use super::Calculator;
use super::drawing::drawing;
use super::words as w;
use super::{Answer, Input, register};
use crate::calculators::register_throw::{handed_over, questions, to_inch};
use crate::measure::unit::PER_HOUR;
use crate::measure::{Length, Measure, Volume};
use crate::rules::air::jets::{HOLDS, SURFACE};
use crate::rules::air::room_heat::{LOSS, SENSIBLE};
use crate::rules::residential::heat::{CARRIES, air_for, through, with_air};
use crate::say;
use crate::sheet::{Expr, Figure, Part, PartRow, Sheet, Source, Step};
use crate::words::{Amount, Phrase};

/// How far the ceiling goes up.
fn rise(input: &Input) -> Expr {
    Expr::length(input.to_be).less(Expr::length(input.now))
}

/// More heat through the walls that grow.
pub(super) fn wall_heat(input: &Input) -> Expr {
    let wall = Expr::length(input.run).times(rise(input));
    through(input.wall.u(), wall, input.outside)
}

/// More heat by leaks.
pub(super) fn leak_heat(input: &Input) -> Expr {
    let air = Expr::area(input.floor).times(rise(input));
    with_air(input.leaks, air, CARRIES, input.outside)
}

/// How often so much air changes a room's.
pub(super) fn changes(cfm: Expr, volume: Volume) -> Expr {
    cfm.over(Expr::Is(Amount::Room(volume))).told_in(&PER_HOUR)
}

/// The air that so much heat asks for.
pub(super) fn extra(input: &Input, heat: Measure) -> Expr {
    air_for(heat, CARRIES, input.warm)
}

fn figure(key: &'static str, name: &'static Phrase, amount: impl Into<Amount>) -> Figure {
    Figure::plain(key, name, amount.into())
}

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let [now, to_be] = answer.throws.each_ref().map(|throw| throw.told());
    let more = answer.volumes[1].minus(answer.volumes[0]);
    let mut figures = vec![figure("throw-50", &w::THROW_NOW, now)];
    if let ([Some(least), _, Some(most)], true) = (answer.throws[1].throws[0], input.guess) {
        figures.push(figure("throw-50-to-be-least", &w::THROW_LEAST, to_inch(least)));
        figures.push(figure("throw-50-to-be-most", &w::THROW_MOST, to_inch(most)));
    }
    if let Some(bend) = answer.throws[1].bend {
        figures.push(figure("drop-least", &w::DROP_LEAST, bend.by[0]));
        figures.push(figure("drop-most", &w::DROP_MOST, bend.by[1]));
    }
    figures.push(figure("more-air", &w::MORE_AIR, Amount::Room(more)));
    for (key, name, measure) in [
        ("wall-heat", &w::WALL_HEAT, answer.wall_heat),
        ("leak-heat", &w::LEAK_HEAT, answer.leak_heat),
        ("heat", &w::HEAT, answer.heat),
        ("extra", &w::EXTRA, answer.extra),
        ("changes", &w::CHANGES_NOW, answer.changes[0]),
        ("changes-to-be", &w::CHANGES_TO_BE, answer.changes[1]),
    ] {
        figures.push(figure(key, name, measure));
    }
    Sheet {
        headline: figure("throw-50-to-be", &w::THROW_TO_BE, to_be),
        lead: None,
        next: Some(answer.turns()),
        figures,
        checks: answer.throws[1].checks.clone(),
        working: working(input, answer),
        parts: vec![both(input, answer, [now, to_be]), handed(input, answer), questions(false)],
        materials: Vec::new(),
        cautions: super::RaisedRegister::cautions(None),
        drawing: Some(drawing(input, answer)),
    }
}

/// As it will be.
fn handed(input: &Input, answer: &Answer) -> Part {
    let gap = input.to_be.minus(input.now).plus(input.gap);
    let near = [
        (&w::GAP_TO_BE, Some(gap.into())),
        (&w::WAY, input.way.map(Amount::Length)),
        (&w::EXTRA, Some(answer.extra.into())),
    ];
    let register = register(input, answer.attached[1]);
    handed_over("handed", None, &register, &answer.throws[1], &near)
}

fn both(input: &Input, answer: &Answer, throws: [Length; 2]) -> Part {
    let mut rows = Vec::new();
    let mut add = |name: &'static Phrase, [now, to_be]: [Amount; 2]| {
        let value = say!(w::NOW_TO_BE, now, to_be);
        rows.push(PartRow { name: name.into(), value, puts: Vec::new() });
    };
    add(&w::ROW_THROW, throws.map(Amount::Length));
    let gap = input.to_be.minus(input.now).plus(input.gap);
    add(&w::ROW_GAP, [input.gap, gap].map(Amount::Length));
    add(&w::ROW_VOLUME, answer.volumes.map(Amount::Room));
    add(&w::ROW_CHANGES, answer.changes.map(Amount::Measure));
    Part::plain("both", &w::BOTH, Some(&w::BOTH_NOTE), rows)
}

fn working(input: &Input, answer: &Answer) -> Vec<Step> {
    let mut all = Vec::new();
    let mut add = |key: &str, name: &'static Phrase, expr, source: Option<&'static Source>| {
        all.push(Step { key: key.to_owned(), name: name.into(), expr, source });
    };
    let gap = Expr::Sum(vec![Expr::length(input.gap), rise(input)]);
    add("gap-to-be", &w::GAP_TO_BE, gap, Some(&HOLDS));
    let [now, to_be] = answer.throws.each_ref().map(|throw| throw.throw());
    add("formula-now", &w::THROW_NOW, Expr::length(now), Some(&SURFACE));
    let root = Expr::Root(2, Box::new(Expr::count(2)));
    let then = if answer.attached == [true, false] {
        Expr::length(now).over(root)
    } else {
        Expr::length(to_be)
    };
    add("formula-to-be", &w::THROW_TO_BE, then, Some(&SURFACE));
    add("wall-heat", &w::WALL_HEAT, wall_heat(input), Some(&LOSS));
    add("leak-heat", &w::LEAK_HEAT, leak_heat(input), Some(&LOSS));
    let heat = [answer.wall_heat, answer.leak_heat].map(Expr::measure).to_vec();
    add("heat", &w::HEAT, Expr::Sum(heat), Some(&LOSS));
    add("extra", &w::EXTRA, extra(input, answer.heat), Some(&SENSIBLE));
    for ((key, name), volume) in
        [("changes", &w::CHANGES_NOW), ("changes-to-be", &w::CHANGES_TO_BE)]
            .into_iter()
            .zip(answer.volumes)
    {
        add(key, name, changes(Expr::measure(input.cfm), volume), None);
    }
    all
}
