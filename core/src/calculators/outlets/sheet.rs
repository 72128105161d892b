//! The fewest as they are shown: where they go, what stays, what is missing.

use super::drawing::drawing;
use super::words as w;
use super::{Answer, Calculator, Fate, Input, Outlets};
use crate::rules::compare::{ask, at_most, unverified};
use crate::rules::electrical::wall_receptacles::{NONE_MISSING, farthest};
use crate::say;
use crate::sheet::{Check, Expr, Figure, Part, PartRow, Sheet, Step};
use crate::words::{Amount, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let count = |key, name: &'static Phrase, count| Figure::plain(key, name, Amount::Count(count));
    let have = input.have.len() as i64;
    let needs = answer.spaces.iter().filter(|space| space.needs).count() as i64;
    let mut figures = vec![count("spaces", &w::SPACES, needs)];
    // Where a box may go takes more than the code's own count.
    let by_code = by_code(answer);
    let is_more = by_code.is_some_and(|it| it < answer.fewest);
    let floor = match by_code.filter(|_| is_more) {
        None => say!(w::FLOOR, answer.fewest),
        Some(by_code) => {
            figures.push(count("by-code", &w::FEWEST, by_code));
            let phrase = if input.on_studs { &w::FLOOR_STUDS } else { &w::FLOOR_FITS };
            Text { phrase, args: vec![by_code.into(), answer.fewest.into()] }
        }
    };
    let name = match (is_more, input.on_studs) {
        (false, _) => &w::FEWEST,
        (true, true) => &w::FEWEST_STUDS,
        (true, false) => &w::FEWEST_FITS,
    };
    let next = if have == 0 {
        say!(w::NEXT_NEW, floor)
    } else {
        figures.push(count("there", &w::THERE, have));
        figures.push(count("missing", &w::MISSING, answer.missing()));
        say!(w::NEXT_HAVE, floor, have, answer.missing())
    };
    let no_door = !input.breaks.iter().any(|it| it.kind.breaks());
    let next = if no_door { say!(w::BOTH, next, &w::NO_DOOR) } else { next };
    Sheet {
        headline: count("fewest", name, answer.fewest),
        lead: Some(0),
        next: Some(next),
        figures,
        checks: vec![check(answer)],
        working: working(answer),
        parts: parts(input, answer),
        materials: Vec::new(),
        cautions: Outlets::cautions(None),
        drawing: Some(drawing(input, answer)),
    }
}

/// The fewest that the code asks, wherever boxes may go: each space, by twice the farthest, upwards.
fn by_code(answer: &Answer) -> Option<i64> {
    let limit = answer.edition.or_newest(farthest)?;
    let apart = limit.value.plus(limit.value).nanometres();
    let spaces = answer.spaces.iter().filter(|space| space.needs);
    Some(spaces.map(|space| (space.long.nanometres() + apart - 1) / apart).sum())
}

fn check(answer: &Answer) -> Check {
    let check = at_most("missing", (&w::CHECK).into(), answer.missing(), NONE_MISSING);
    let check = if farthest(answer.edition).is_some() { check } else { unverified(check) };
    match answer.bare {
        0 => check,
        _ => ask(check, &w::NO_PLACE),
    }
}

fn working(answer: &Answer) -> Vec<Step> {
    let mut all = Vec::new();
    let Some(limit) = answer.edition.or_newest(farthest) else { return all };
    for (at, space) in answer.spaces.iter().enumerate() {
        if space.needs {
            let apart = Expr::count(2).times(Expr::length(limit.value));
            let expr = Expr::RoundUp(Box::new(Expr::length(space.long).over(apart)));
            let (key, name) =
                (["space-", &(at + 1).to_string()].concat(), say!(w::STEP, at as i64 + 1));
            all.push(Step { key, name, expr, source: Some(limit.source) });
        }
    }
    all
}

fn parts(input: &Input, answer: &Answer) -> Vec<Part> {
    let row = |name: Text, value| PartRow { name, value, puts: Vec::new() };
    let number = |at: usize| at as i64 + 1;
    let mut spots = Vec::new();
    for (at, (wall, along)) in answer.spots.iter().enumerate() {
        let value = say!(w::SPOT, number(*wall), *along);
        spots.push(row(say!(w::NUMBER, number(at)), value));
    }
    let mut stay = Vec::new();
    for (it, fate) in input.have.iter().zip(&answer.fates) {
        let phrase = match fate {
            Fate::Stays => &w::STAYS,
            Fate::NotNeeded => &w::NOT_NEEDED,
            Fate::Goes => &w::IN_BREAK,
        };
        let wall = it.wall.wall().map_or(0, number);
        let args = vec![wall.into(), it.at.unwrap_or_default().into()];
        stay.push(row((&w::RECEPTACLE).into(), Text { phrase, args }));
    }
    let mut spaces = Vec::new();
    for (at, space) in answer.spaces.iter().enumerate() {
        let mut value = say!(w::SPACE_OF, space.long, number(space.wall), space.fewest);
        if !space.needs {
            value.phrase = &w::SHORT_OF;
        }
        spaces.push(row(say!(w::SPACE, number(at)), value));
    }
    let mut all = Vec::new();
    let mut add = |key, title, note, rows| Part::add(&mut all, key, title, note, rows);
    let title = if input.have.is_empty() { &w::SPOTS } else { &w::EXTRA };
    add("spots", title, input.on_studs.then_some(&w::STUDS_NOTE), spots);
    add("stay", &w::STAY, None, stay);
    add("per-space", &w::PER_SPACE, Some(&w::NOT_COUNTED), spaces);
    all
}
