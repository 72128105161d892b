//! The answer as it is shown.

use super::Calculator;
use super::words as w;
use super::{Answer, Input};
use crate::rules::compare::at_most;
use crate::rules::finish::board_weights::{NOTHING_ON, ONE_LIFTS};
use crate::say;
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
        lead: None,
        next: Some(say!(w::NEXT, input.people)),
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
    let heavy = lift.verdict == Verdict::Over;
    let lift = Check { note: heavy.then(|| (&w::MORE_HANDS).into()), ..lift };
    let mut all = vec![lift];
    if !input.hung {
        return all;
    }
    all.push(input.panel.hung(input.textured, input.spacing));
    if input.panel.spacing(input.textured).is_none() {
        return all;
    }
    let weight = input.insulation;
    let name = (&w::CHECK_SAG).into();
    match input.panel.on(input.spacing) {
        Some(board) => all.push(at_most("sag", name, weight, board.bears())),
        None if weight.millionths() > 0 => {
            let check = at_most("sag", name, weight, NOTHING_ON);
            all.push(Check { note: Some((&w::THIN).into()), ..check });
        }
        None => {}
    }
    all
}
