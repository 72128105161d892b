//! The answer as it is shown.

use super::Calculator;
use super::drawing::drawing;
use super::shown as s;
use super::{Answer, Held, Input, Placed};
use crate::measure::unit::{BILLIONTH, CFM, FACTOR, FPM, IN_WC};
use crate::rules::air::fittings::BLOCKED;
use crate::rules::air::friction::{FRICTION, Regime};
use crate::rules::air::velocity;
use crate::rules::air::working::{loss, near};
use crate::say;
use crate::sheet::{Check, Expr, Figure, Part, PartRow, Sheet, Step};
use crate::words::{Arg, Phrase, Text};

/// The keys of the branches' flows.
const KEYS: [&str; 8] =
    ["flow-1", "flow-2", "flow-3", "flow-4", "flow-5", "flow-6", "flow-7", "flow-8"];
/// And with every boot open.
const OPEN_KEYS: [&str; 8] =
    ["open-1", "open-2", "open-3", "open-4", "open-5", "open-6", "open-7", "open-8"];

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let worst = answer.worst;
    let least = near(&CFM, answer.flows.ends[worst]);
    let name = branch(input, answer, worst);
    Sheet {
        headline: Figure::new("least-flow", say!(s::FLOW, name.clone()), least.into()),
        lead: None,
        next: Some(next(input, answer, name)),
        figures: figures(input, answer),
        checks: checks(input, answer),
        working: working(input, answer),
        parts: parts(input, answer),
        materials: Vec::new(),
        cautions: super::DuctTree::cautions(None),
        drawing: Some(drawing(input, answer)),
    }
}

/// What a duct is called: its number among those of its kind, and its name where it has one.
fn called(input: &Input, place: usize, unnamed: &'static Phrase) -> Text {
    let what = input.pieces[place].what;
    let before = input.pieces[..place].iter().filter(|piece| piece.what == what);
    let number = before.count() as i64 + 1;
    // A brace would be taken for a value's place.
    let mut name = input.pieces[place].name.trim().to_owned();
    name.retain(|sign| !matches!(sign, '{' | '}'));
    if name.is_empty() {
        return Text { phrase: unnamed, args: vec![number.into()] };
    }
    say!(s::NAMED, number, name)
}

/// A branch by its way.
pub(super) fn branch(input: &Input, answer: &Answer, at: usize) -> Text {
    called(input, own(answer, at).at, &s::UNNAMED)
}

/// The branch at the end of a way.
pub(super) fn own(answer: &Answer, at: usize) -> &Placed {
    let last = answer.ways[at].last().copied().unwrap_or_default();
    &answer.ducts[last]
}

fn next(input: &Input, answer: &Answer, name: Text) -> Text {
    let worst = answer.worst;
    match (&answer.all_open, input.held) {
        (None, _) => say!(s::NEXT_ALONE, name),
        (Some(open), held) => {
            let lost = near(&CFM, open.ends[worst] - answer.flows.ends[worst]);
            match held {
                Held::Total => {
                    say!(s::NEXT_TOTAL, name, lost, near(&IN_WC, answer.flows.pressure))
                }
                Held::Pressure => say!(s::NEXT_PRESSURE, name, lost),
            }
        }
    }
}

fn figures(input: &Input, answer: &Answer) -> Vec<Figure> {
    let mut all = Vec::new();
    let total = |flows: &super::Flows| flows.ends.iter().sum::<f64>();
    let mut add =
        |key, name: Text, unit, value| all.push(Figure::new(key, name, near(unit, value).into()));
    add("pressure", (&s::PRESSURE).into(), &IN_WC, answer.flows.pressure);
    add("total", (&s::TOTAL).into(), &CFM, total(&answer.flows));
    for (at, flow) in answer.flows.ends.iter().enumerate() {
        let name = say!(s::FLOW, branch(input, answer, at));
        add(KEYS[at], name, &CFM, *flow);
    }
    if let Some(open) = &answer.all_open {
        if let Some(other) = &answer.other_end {
            let name = say!(s::OTHER_FLOW, branch(input, answer, answer.worst));
            add("least-flow-other-end", name, &CFM, other.ends[answer.worst]);
        }
        add("open-pressure", (&s::OPEN_PRESSURE).into(), &IN_WC, open.pressure);
        add("open-total", (&s::OPEN_TOTAL).into(), &CFM, total(open));
        for (at, flow) in open.ends.iter().enumerate() {
            let name = say!(s::OPEN_FLOW, branch(input, answer, at));
            add(OPEN_KEYS[at], name, &CFM, *flow);
        }
    }
    all
}

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    // Of all branches the one with the least to spare.
    let mut tightest: Option<Check> = None;
    for at in 0..answer.ways.len() {
        let own = own(answer, at);
        let kind = input.pieces[own.at].kind;
        let fpm = near(&FPM, own.duct.velocity(own.flow));
        let name = say!(s::CHECK_VELOCITY, branch(input, answer, at));
        let check = velocity::check("velocity", name, kind, fpm);
        let tighter = |last: &Check| check.margin().raw() < last.margin().raw();
        if tightest.as_ref().is_none_or(tighter) {
            tightest = Some(check);
        }
    }
    tightest.into_iter().collect()
}

fn working(input: &Input, answer: &Answer) -> Vec<Step> {
    let mut steps = Vec::new();
    let mut step = |key: [&str; 2], name: Text, expr, source| {
        steps.push(Step { key: key.concat(), name, expr, source });
    };
    let lost = |placed: &Placed| near(&IN_WC, placed.duct.loss(placed.flow).drop);
    for (at, placed) in answer.ducts.iter().enumerate() {
        let number = (at + 1).to_string();
        let is_end = answer.ways.iter().any(|way| way.last() == Some(&at));
        let unnamed = if is_end { &s::UNNAMED } else { &s::PLAIN_TRUNK };
        let name = called(input, placed.at, unnamed);
        if placed.flow <= 0.0 {
            continue;
        }
        if placed.open < 1.0 {
            let c = Expr::measure(near(&FACTOR, placed.duct.c));
            step(["open-", &number], say!(s::STEP_BLOCKED, name.clone()), c, Some(&BLOCKED));
        }
        let name = say!(s::STEP_LOSS, name, near(&CFM, placed.flow));
        step(["loss-", &number], name, loss(&placed.duct, placed.flow), Some(&FRICTION));
    }
    for (at, way) in answer.ways.iter().enumerate() {
        // A branch straight at the start is its way by itself, and one that is shut is none.
        if way.len() == 1 || own(answer, at).flow <= 0.0 {
            continue;
        }
        let number = (at + 1).to_string();
        let parts = way.iter().map(|at| Expr::measure(lost(&answer.ducts[*at])));
        let name = say!(s::STEP_WAY, branch(input, answer, at));
        step(["way-", &number], name, Expr::Sum(parts.collect()), None);
    }
    let flows = answer.flows.ends.iter().map(|flow| Expr::measure(near(&CFM, *flow)));
    step(["total", ""], (&s::STEP_TOTAL).into(), Expr::Sum(flows.collect()), None);
    let left = Expr::measure(near(&BILLIONTH, answer.flows.left_over * 1e9));
    step(["left", "-over"], (&s::STEP_LEFT).into(), left, None);
    steps
}

fn parts(input: &Input, answer: &Answer) -> Vec<Part> {
    let mut all = Vec::new();
    let mut part = |key, title: &'static Phrase, rows: Vec<(Text, Text)>| {
        let row = |(name, value)| PartRow { name, value, puts: Vec::new() };
        let rows = rows.into_iter().map(row).collect();
        all.push(Part::plain(key, title, None, rows));
    };
    let mut rows = Vec::new();
    for (at, flow) in answer.flows.ends.iter().enumerate() {
        let duct = own(answer, at).duct;
        let reynolds = duct.reynolds(*flow);
        let mut args: Vec<Arg> = vec![near(&CFM, *flow).into()];
        let phrase = match &answer.all_open {
            Some(open) => {
                args.push(near(&CFM, open.ends[at]).into());
                &s::ROW_OPEN
            }
            None => &s::ROW,
        };
        args.push((libm::round(reynolds) as i64).into());
        args.push(Regime::at(reynolds).words().into());
        rows.push((branch(input, answer, at), Text { phrase, args }));
    }
    part("shares", &s::PART, rows);
    if let Some(other) = &answer.other_end {
        let title = match input.held {
            Held::Total => &s::OTHER_PRESSURE,
            Held::Pressure => &s::OTHER_TOTAL,
        };
        let row = |at| (branch(input, answer, at), say!(s::AMOUNT, near(&CFM, other.ends[at])));
        part("other-end", title, (0..answer.ways.len()).map(row).collect());
    }
    if !answer.blind.is_empty() {
        let number = |place: usize| {
            let before = input.pieces[..place].iter();
            before.filter(|piece| piece.what == super::What::Trunk).count() as i64 + 1
        };
        let rows = answer.blind.iter().enumerate();
        let rows =
            rows.map(|(at, place)| (say!(s::AGAIN, at as i64 + 1), say!(s::BLIND, number(*place))));
        part("look-again", &s::AGAIN_PART, rows.collect());
    }
    all
}
