//! The answer as it is shown.

use super::Calculator;
use super::words as w;
use super::{Answer, Input};
use crate::rules::compare::{Limit, ask, at_most};
use crate::rules::framing::ceiling_joists::{SCOPE, row};
use crate::sheet::{Check, Figure, Part, PartRow, Sheet, Verdict};
use crate::words::Text;

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let mut figures = Vec::new();
    let there = Figure::plain("span", &w::THERE, input.span.into());
    let headline = match answer.table {
        Some(table) => {
            figures.push(there);
            Figure::plain("table", &w::TABLE, table.into())
        }
        None => there,
    };
    if let Some(dead) = answer.dead {
        figures.push(Figure::plain("dead", &w::DEAD, dead.into()));
    }
    Sheet {
        headline,
        lead: Some(0),
        next: Some((&w::FIRST).into()),
        figures,
        checks: checks(input, answer),
        working: answer.steps.0.clone(),
        parts: parts(answer),
        materials: Vec::new(),
        cautions: super::JoistSpans::cautions(None),
        drawing: None,
    }
}

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let outside = !answer.stops.is_empty();
    let inside = |check: Check| {
        let pass = outside && check.verdict == Verdict::Within;
        if pass { ask(check, &w::ASK_SCOPE) } else { check }
    };
    let source = row(input.apart, input.attic);
    let mut all = Vec::new();
    if let Some(table) = answer.table {
        let limit = Limit { value: table, source };
        all.push(inside(at_most("span", (&w::CHECK_SPAN).into(), input.span, limit)));
    }
    if outside {
        let none = Limit { value: 0_i64, source: &SCOPE };
        let stops = answer.stops.len() as i64;
        all.push(ask(at_most("scope", (&w::CHECK_SCOPE).into(), stops, none), &w::ASK_WHO));
    }
    if let Some(dead) = answer.dead {
        let limit = Limit { value: input.attic.dead(), source };
        let check = inside(at_most("dead", (&w::CHECK_DEAD).into(), dead, limit));
        // Where there is no span by a row, its load is no limit either.
        let check = if answer.table.is_none() { ask(check, &w::ASK_SCOPE) } else { check };
        let over = check.verdict == Verdict::Over;
        let note = if over { Some((&w::NOTE_DEAD).into()) } else { check.note.clone() };
        all.push(Check { note, ..check });
    }
    all
}

fn parts(answer: &Answer) -> Vec<Part> {
    if answer.stops.is_empty() {
        return Vec::new();
    }
    let mut rows = Vec::new();
    for stop in &answer.stops {
        let (name, value) = (Text::from(*stop), Text::from(&w::ASK));
        rows.push(PartRow { name, value, puts: Vec::new() });
    }
    vec![Part::plain("why", &w::WHY_PART, None, rows)]
}
