//! The box's place as it is shown.

use super::drawing::drawing;
use super::packing::Packing;
use super::words as w;
use super::{Aim, Answer, Held, Input};
use crate::measure::Length;
use crate::rules::compare::{Limit, ask, at_least, at_most};
use crate::rules::electrical::box_heights::CLEAR;
use crate::rules::electrical::box_packing::{
    INSIDE, INTO_STUD, MOST_PACKED, NO_OVERLAP, OFF_PLACE, PACKING,
};
use crate::say;
use crate::sheet::{Caution, Check, Expr, Figure, Material, Sheet, Step, Verdict};
use crate::words::{Amount, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let figure = |key, name, length: Length| Figure::plain(key, name, length.into());
    let middle = answer.left.plus(input.wide.part(2));
    let mut figures =
        vec![figure("right", &w::AT_RIGHT, answer.right), figure("middle", &w::MIDDLE, middle)];
    let mut materials = Vec::new();
    let next = match &answer.held {
        Held::Beside { stud, on_right, wanted, packing, screw } => {
            let off = packing.made().minus(*wanted);
            figures.push(figure("stud", &w::BESIDE, *stud));
            figures.push(figure("wanted", &w::WANTED, *wanted));
            figures.push(figure("made", &w::MADE, packing.made()));
            figures.push(figure("off", &w::OFF, off.max(Length::ZERO.minus(off))));
            figures.push(Figure::plain("pieces", &w::PIECES, Amount::Count(packing.count())));
            if let Some(screw) = screw {
                figures.push(figure("screw", &w::SCREW, *screw));
            }
            for (thick, count) in &packing.pieces {
                materials.push(Material {
                    key: ["packing-", &thick.exact()].concat(),
                    name: say!(w::STOCK, *thick),
                    amount: Amount::Count(*count),
                });
            }
            let phrase = if *on_right { &w::NEXT_RIGHT } else { &w::NEXT_LEFT };
            Text { phrase, args: vec![(*stud).into(), told(packing).into()] }
        }
        Held::Block(_) => (&w::NEXT_BLOCK).into(),
        Held::Clash { left, right, .. } => say!(w::NEXT_CLASH, *left, *right),
    };
    let even = answer.left == answer.right;
    let name = if even { &w::EACH_SIDE } else { &w::AT_LEFT };
    Sheet {
        headline: figure("left", name, answer.left),
        lead: None,
        next: Some(next),
        figures,
        checks: checks(input, answer),
        working: working(input, answer),
        parts: Vec::new(),
        materials,
        cautions: cautions(),
        drawing: Some(drawing(input, answer)),
    }
}

pub(super) fn cautions() -> Vec<Caution> {
    Caution::all(&[(&w::DEAD, None), (INSIDE.says, Some(&INSIDE)), (&w::LICENSED, None)])
}

/// So many of each.
fn told(packing: &Packing) -> Text {
    let mut all: Option<Text> = None;
    for (thick, count) in &packing.pieces {
        let one = say!(w::ONE_KIND, *count, *thick);
        all = Some(match all {
            None => one,
            Some(before) => say!(w::AND, before, one),
        });
    }
    all.unwrap_or_else(|| (&w::NO_PACKING).into())
}

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let mut all = Vec::new();
    let habit = |check: Check, why| {
        if check.verdict == Verdict::Over { ask(check, why) } else { check }
    };
    let overlap = match answer.held {
        Held::Clash { left, right, .. } => left.min(right),
        _ => Length::ZERO,
    };
    all.push(at_most("stud", (&w::CHECK_STUD).into(), overlap, NO_OVERLAP));
    // Half of what the plate is wider by.
    let lap = input.plate.minus(input.wide).max(Length::ZERO).part(2);
    let (nearer, limit) = (answer.left.min(answer.right), Limit { value: lap, source: &CLEAR });
    all.push(at_least("plate", (&w::CHECK_PLATE).into(), nearer, limit));
    match &answer.held {
        Held::Beside { wanted, packing, .. } => {
            let off = packing.made().minus(*wanted);
            let off = off.max(Length::ZERO.minus(off));
            let check = at_most("off", (&w::CHECK_OFF).into(), off, OFF_PLACE);
            all.push(habit(check, &w::ASK_OFF));
        }
        Held::Block(off) => {
            let check = at_most("packing", (&w::CHECK_PACK).into(), *off, MOST_PACKED);
            all.push(habit(check, &w::ASK_PACK));
        }
        Held::Clash { .. } => {}
    }
    all
}

fn working(input: &Input, answer: &Answer) -> Vec<Step> {
    let mut all = Vec::new();
    let mut step = |key: &str, name: &'static Phrase, expr| {
        let source = Some(&PACKING);
        all.push(Step { key: key.to_owned(), name: name.into(), expr, source });
    };
    let gap = Expr::length(input.gap.unwrap_or_default());
    if input.aim == Aim::Even {
        step("middle", &w::MIDDLE, gap.clone().over(Expr::count(2)));
    }
    if let Held::Beside { packing, .. } = &answer.held {
        let mut pieces = Vec::new();
        for (thick, count) in &packing.pieces {
            pieces.push(Expr::count(*count).times(Expr::length(*thick)));
        }
        if !pieces.is_empty() {
            step("made", &w::MADE, Expr::Sum(pieces));
        }
        let through = [packing.made(), input.side, INTO_STUD].map(Expr::length).to_vec();
        step("screw", &w::NEEDS, Expr::Sum(through));
    }
    let right = gap.less(Expr::length(answer.left)).less(Expr::length(input.wide));
    step("right", &w::AT_RIGHT, right);
    all
}
