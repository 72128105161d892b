//! The count, and the distances, as they are shown.

use super::words as w;
use super::{Answer, BathHallOutlets, Calculator, Input, Tub};
use crate::rules::compare::{Limit, at_least, at_most, unverified};
use crate::rules::electrical::room_receptacles::{
    BATH, HALLS, REST, below_basin, from_basin, from_tub, over_tub,
};
use crate::say;
use crate::sheet::{Check, Expr, Figure, Sheet, Step, Verdict};
use crate::words::{Amount, Phrase};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let mut figures = Vec::new();
    let mut counts = Vec::new();
    for (key, name, count, source) in [
        ("bath", &w::IN_BATH, answer.bath, &BATH),
        ("halls", &w::IN_HALLS, answer.halls, &HALLS),
        ("foyer", &w::IN_FOYER, answer.foyer, &REST),
        ("laundry", &w::IN_LAUNDRY, answer.laundry, &REST),
    ] {
        figures.push(Figure::plain(key, name, Amount::Count(count)));
        counts.push((key, name, count, source));
    }
    let mut working = Vec::new();
    let mut step = |key: &str, name: &'static Phrase, expr, source| {
        working.push(Step { key: key.to_owned(), name: name.into(), expr, source: Some(source) });
    };
    for (key, name, count, source) in &counts {
        step(key, name, Expr::count(*count), *source);
    }
    let sum = counts.iter().map(|(_, _, count, _)| Expr::count(*count)).collect();
    step("needed", &w::NEEDED, Expr::Sum(sum), &REST);
    Sheet {
        headline: Figure::plain("needed", &w::NEEDED, Amount::Count(answer.needed())),
        lead: input.have.map(|_| 0),
        next: Some((&w::NEXT).into()),
        figures,
        checks: checks(input, answer),
        working,
        parts: Vec::new(),
        materials: Vec::new(),
        cautions: BathHallOutlets::cautions(None),
        drawing: None,
    }
}

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let edition = answer.edition;
    let mut all = Vec::new();
    let mut add =
        |check: Check| all.push(if edition.is_verified() { check } else { unverified(check) });
    if let Some(have) = input.have {
        let limit = Limit { value: answer.needed(), source: &REST };
        add(at_least("have", (&w::CHECK_HAVE).into(), have, limit));
    }
    for (at, basin) in input.basins.iter().enumerate() {
        let number = at as i64 + 1;
        let keyed = |key: &str| [key, &number.to_string()].concat();
        if let Some(limit) = edition.or_newest(from_basin) {
            let side = basin.side.unwrap_or_default();
            add(at_most(&keyed("side-"), say!(w::CHECK_SIDE, number), side, limit));
        }
        if let Some(limit) = edition.or_newest(below_basin) {
            add(at_most(&keyed("below-"), say!(w::CHECK_BELOW, number), basin.below, limit));
        }
    }
    match input.tub {
        Tub::None => {}
        Tub::Over => {
            if let Some(limit) = edition.or_newest(over_tub) {
                add(at_most("tub", (&w::CHECK_OVER).into(), 1, limit));
            }
        }
        Tub::Beside => {
            let beside = input.height.beside();
            let limit = edition.or_newest(|edition| from_tub(edition, beside));
            if let Some(limit) = limit.filter(|_| !input.barrier) {
                let side = input.tub_side.unwrap_or_default();
                let check = at_least("tub", (&w::CHECK_TUB).into(), side, limit);
                let is_over = check.verdict == Verdict::Over;
                add(Check { note: is_over.then(|| (&w::SMALL).into()), ..check });
            }
        }
    }
    all
}
