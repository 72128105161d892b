//! The answer as it is shown.

use super::Calculator;
use super::words as w;
use super::{Answer, Input};
use crate::rules::compare::{Limit, ask, at_most};
use crate::rules::finish::board_weights::{ONE_LIFTS, Panel};
use crate::rules::residential::blown::Board;
use crate::sheet::{Check, Figure, Sheet, Verdict};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let mut figures = vec![
        Figure::plain("each", &w::EACH, answer.each.into()),
        Figure::plain("all", &w::ALL, answer.all.into()),
        Figure::plain("pail", &w::PAIL, answer.pail.into()),
    ];
    figures.extend(answer.load.map(|load| Figure::plain("load", &w::LOAD, load.into())));
    Sheet {
        headline: Figure::plain("sheet", &w::SHEET, answer.sheet.into()),
        lead: Some(0),
        next: Some((&w::NEXT).into()),
        figures,
        checks: checks(input, answer),
        working: answer.working.0.clone(),
        parts: Vec::new(),
        materials: Vec::new(),
        cautions: super::BoardWeight::cautions(None),
        drawing: None,
    }
}

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let lift = at_most("lift", (&w::CHECK_LIFT).into(), answer.each, ONE_LIFTS);
    let lift = if lift.verdict == Verdict::Over { ask(lift, &w::ASK_LIFT) } else { lift };
    let mut all = vec![lift];
    if !input.hung {
        return all;
    }
    let name = || (&w::CHECK_SPACING).into();
    all.push(match input.panel.spacing(input.textured) {
        Some(limit) => at_most("spacing", name(), input.spacing, limit),
        None => {
            // Against the widest of any board, which it may not be taken for.
            let limit = Panel::FiveEighths.spacing(false);
            let value = limit.map_or(input.spacing, |limit| limit.value);
            let source = &crate::rules::finish::board_weights::SPACING;
            ask(at_most("spacing", name(), input.spacing, Limit { value, source }), &w::NO_CEILING)
        }
    });
    let weight = input.insulation;
    let name = (&w::CHECK_SAG).into();
    match input.panel.on(input.spacing) {
        Some(board) => all.push(at_most("sag", name, weight, board.bears())),
        None if weight.millionths() > 0 => {
            all.push(ask(at_most("sag", name, weight, Board::Half24.bears()), &w::THIN));
        }
        None => {}
    }
    all
}
