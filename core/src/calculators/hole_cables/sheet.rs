//! The answer as it is shown.

use super::Calculator;
use super::words as w;
use super::{Answer, Load, taken};
use crate::rules::compare::{Limit, ask, at_least, at_most, is_at_most, unverified};
use crate::rules::electrical::ampacity::{AMPACITY, behind};
use crate::rules::electrical::bundling::{self, ADJUSTMENT, SEALED, WARMTH};
use crate::rules::electrical::cable_sizes::{HALF_FREE, MOST_TAKEN, SIZES, WHOLE};
use crate::say;
use crate::sheet::{Check, Expr, Figure, Sheet, Source, Step, Verdict};
use crate::words::{Amount, Phrase, Text};

pub(super) fn sheet(answer: &Answer) -> Sheet {
    let known = answer.edition.is_verified();
    let mut checks = fits(answer);
    // No edition prints these; where nothing else could be verified, they don't pass alone.
    for check in &mut checks {
        if !known && check.verdict == Verdict::Within {
            *check = ask(check.clone(), &w::ASK_HALF);
        }
    }
    for (at, load) in answer.loads.iter().enumerate() {
        carried(answer, at + 1, load, known, &mut checks);
    }
    let bad = |of: &[Check], key: &str| {
        of.iter().any(|it| it.verdict != Verdict::Within && it.key.starts_with(key))
    };
    let next = if bad(&checks, "widest") || bad(&checks, "taken") {
        Some(say!(w::NEXT_SMALLEST, answer.smallest))
    } else {
        let apart = answer.together.is_some() && bad(&checks, "carries");
        apart.then(|| say!(w::NEXT_APART))
    };
    let mut figures = vec![
        Figure::plain("smallest", &w::SMALLEST, answer.smallest.into()),
        Figure::plain("cables", &w::AREA_CABLES, answer.cables.into()),
        Figure::plain("hole", &w::AREA_HOLE, answer.hole.into()),
        Figure::plain("carrying", &w::CARRYING, Amount::Count(answer.carrying)),
    ];
    if let Some(together) = answer.together {
        figures.push(Figure::plain("together", &w::TOGETHER, together.into()));
    }
    Sheet {
        headline: Figure::plain("taken", &w::TAKEN, answer.taken.into()),
        lead: Some(0),
        next: next.filter(|_| known),
        figures,
        working: working(answer),
        parts: Vec::new(),
        materials: Vec::new(),
        cautions: super::HoleCables::cautions(None),
        drawing: None,
        checks,
    }
}

fn fits(answer: &Answer) -> Vec<Check> {
    let name = || Text::from(&w::TAKEN);
    let half = at_most("taken", name(), answer.taken, MOST_TAKEN);
    let taken = match half.verdict {
        Verdict::Over if is_at_most(answer.taken, WHOLE) => ask(half, &w::ASK_HALF),
        Verdict::Over => at_most("taken", name(), answer.taken, WHOLE),
        _ => half,
    };
    let widest = Limit { value: answer.widest, source: &SIZES };
    let mut all = vec![taken, at_least("widest", (&w::WIDEST).into(), answer.bit, widest)];
    for check in &mut all {
        if check.verdict == Verdict::Over {
            check.note = Some((&w::TOO_SMALL).into());
        }
    }
    all
}

/// The rule that decides what cables carry here.
fn source(answer: &Answer) -> &'static Source {
    match answer.together {
        Some(_) if answer.sealed => &SEALED,
        Some(_) => &ADJUSTMENT,
        None => &AMPACITY,
    }
}

fn carried(answer: &Answer, number: usize, load: &Load, known: bool, all: &mut Vec<Check>) {
    let settled = |check: Check| if known { check } else { unverified(check) };
    let key = |name: &str| [name, "-", &number.to_string()].concat();
    let name = |phrase: &'static Phrase| Text { phrase, args: vec![load.cable.label().into()] };
    let carries = name(&w::CARRIES);
    let of = &load.carries;
    all.push(settled(behind(
        &key("carries"),
        carries,
        load.here,
        load.breaker,
        of,
        source(answer),
    )));
    if let Some(largest) = of.largest {
        let check = at_most(&key("breaker"), name(&w::BREAKER_OF), load.breaker, largest);
        all.push(settled(check));
    }
}

fn working(answer: &Answer) -> Vec<Step> {
    let mut all = Vec::new();
    let mut step = |key: String, name: Text, expr: Expr, source| {
        all.push(Step { key, name, expr, source: Some(source) });
    };
    let share = taken(answer.cables, answer.hole);
    step("taken".to_owned(), (&w::TAKEN).into(), share, &HALF_FREE);
    for (at, load) in answer.loads.iter().enumerate() {
        let key = ["carries-", &(at + 1).to_string()].concat();
        let expr = bundling::carried(&load.carries, answer.together, answer.warm);
        step(key, say!(w::CARRIES, load.cable.label()), expr, &AMPACITY);
    }
    if let Some(together) = answer.together {
        let expr = Expr::measure(together);
        step("together".to_owned(), (&w::TOGETHER).into(), expr, &ADJUSTMENT);
    }
    let warm = Expr::measure(answer.warm);
    step("warm".to_owned(), (&w::WARM).into(), warm, &WARMTH);
    all
}
