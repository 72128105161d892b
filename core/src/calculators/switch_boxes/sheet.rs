//! The layout as it is shown.

use super::drawing::drawing;
use super::words as w;
use super::{Answer, Calculator, Filled, Input, Place, Run};
use crate::rules::compare::{Limit, ask, at_most, unverified};
use crate::rules::electrical::box_fill::FILL;
use crate::rules::electrical::switch_neutral::NEUTRAL;
use crate::say;
use crate::sheet::{Expr, Figure, Material, Part, PartRow, Sheet, Step, Verdict};
use crate::words::{Amount, Phrase, Text};

/// A place by its name.
pub(super) fn named(place: Place) -> Text {
    match place {
        Place::Feed => say!(w::FEED_END),
        Place::Onward => say!(w::ONWARD_END),
        Place::Light => say!(w::LIGHT),
        Place::Switch(at) => say!(w::SWITCH, at),
    }
}

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let mut checks = Vec::new();
    let mut working = Vec::new();
    let mut fullest = 0;
    for (at, each) in answer.switches.iter().enumerate() {
        let number = at as i64 + 1;
        let key = ["fill-", &number.to_string()].concat();
        let limit = Limit { value: input.volume, source: &FILL };
        checks.push(at_most(&key, say!(w::FILL, number), each.side.fill, limit));
        working.push(step(key, say!(w::FILL, number), each));
        if each.side.fill > answer.switches[fullest].side.fill {
            fullest = at;
        }
    }
    working.push(step("light".to_owned(), say!(w::LIGHT_FILL), &answer.light));
    let without = answer.switches.iter().filter(|it| !it.has_neutral).count() as i64;
    if without > 0 {
        let none = Limit { value: 0, source: &NEUTRAL };
        let check = at_most("neutral", (&w::WITHOUT).into(), without, none);
        checks.push(ask(check, &w::ASK_NEUTRAL));
    }
    if !answer.edition.is_verified() {
        checks = checks.into_iter().map(unverified).collect();
    }
    let fill = answer.switches.get(fullest).map(|it| it.side.fill).unwrap_or_default();
    let is_over = checks.get(fullest).is_some_and(|it| it.verdict == Verdict::Over);
    Sheet {
        headline: Figure::plain("fullest", &w::FULLEST, fill.into()),
        lead: Some(fullest),
        next: is_over.then(|| say!(w::NEXT_FULL, fill)),
        figures: vec![Figure::plain("four-ways", &w::FOUR_WAYS, Amount::Count(four_ways(input)))],
        checks,
        working,
        parts: answer.runs.iter().map(part).collect(),
        materials: materials(input),
        cautions: super::SwitchBoxes::cautions(None),
        drawing: Some(drawing(answer)),
    }
}

/// What is in a box, item by item.
fn step(key: String, name: Text, of: &Filled) -> Step {
    let mut sum = Vec::new();
    for share in &of.side.shares {
        sum.push(Expr::count(share.count).times(Expr::volume(share.each)));
    }
    Step { key, name, expr: Expr::Sum(sum), source: Some(&FILL) }
}

/// A cable and what its wires do.
fn part(run: &Run) -> Part {
    let mut rows = Vec::new();
    for wire in &run.wires {
        let phrase: &'static Phrase = if wire.is_marked { &w::MARKED } else { &w::COLOUR };
        let name = Text { phrase, args: vec![wire.colour.into()] };
        rows.push(PartRow { name, value: wire.role.words().into(), puts: Vec::new() });
    }
    let title = say!(w::RUN, named(run.from), named(run.to), run.cable.label());
    Part::new("run", title, None, rows)
}

fn four_ways(input: &Input) -> i64 {
    (input.points - 2).max(0)
}

fn materials(input: &Input) -> Vec<Material> {
    let mut all = Vec::new();
    let single = i64::from(input.points == 1);
    for (key, name, count) in [
        ("switch-single", &w::M_SINGLE, single),
        ("switch-three-way", &w::M_THREE, 2 - 2 * single),
        ("switch-four-way", &w::M_FOUR, four_ways(input)),
    ] {
        if count > 0 {
            all.push(Material {
                key: key.to_owned(),
                name: name.into(),
                amount: Amount::Count(count),
            });
        }
    }
    all
}
