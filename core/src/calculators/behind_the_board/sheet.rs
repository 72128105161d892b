//! The wall as it is shown: what is where, what waits before it is covered, and what a screw meets.

use super::drawing::drawing;
use super::words as w;
use super::{Answer, BehindTheBoard, Calculator, Input, Meets, Thing, What, name, on_stud};
use crate::measure::Length;
use crate::rules::compare::{Limit, at_least, at_most, settle, unverified};
use crate::rules::electrical::nail_protection::{along, clear};
use crate::rules::framing::behind_board::{KEEP_OFF, NONE_LOOSE, ONE_HOLDS, SHORT};
use crate::rules::framing::shield_plates::CLEAR;
use crate::say;
use crate::sheet::{
    Asks, Check, Expr, FOREMOST, Figure, Part, PartRow, Sheet, Step, Table, TableRow, Verdict,
};
use crate::words::{Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let count = |key, title, count: usize| Figure::plain(key, title, (count as i64).into());
    let mut working = Vec::new();
    if let (true, Some(screw)) = (input.hang, input.screw) {
        let expr = Expr::length(screw).less(Expr::length(input.cover));
        working.push(Step { key: "past".to_owned(), name: (&w::PAST).into(), expr, source: None });
    }
    let next = match answer.along.as_slice() {
        [] => None,
        [one] => Some(say!(w::NEXT, range(one.from, one.to), met(input, one.meets))),
        _ => Some(say!(w::NEXT_MANY, held(answer), input.across)),
    };
    Sheet {
        headline: count("noted", &w::NOTED, input.things.len()),
        lead: None,
        next,
        figures: vec![count("studs", &w::COUNT_STUDS, answer.studs.len())],
        checks: checks(input, answer),
        working,
        parts: parts(input, answer),
        materials: Vec::new(),
        cautions: BehindTheBoard::cautions(None),
        drawing: Some(drawing(input, answer)),
    }
}

/// Stretches to screw into.
fn held(answer: &Answer) -> i64 {
    answer.along.iter().filter(|it| it.meets.holds()).count() as i64
}

/// From here to there, or one place.
pub(super) fn range(from: Length, to: Length) -> Text {
    if from == to { say!(w::ONE, from) } else { say!(w::TO, from, to) }
}

fn met(input: &Input, meets: Meets) -> Text {
    match meets {
        Meets::KeepOff(at) => say!(w::IS_OFF, name(at, &input.things[at])),
        Meets::Opening(at) => say!(w::IS_OPENING, at as i64 + 1),
        Meets::Wood(at) => say!(w::IS_WOOD, name(at, &input.things[at])),
        Meets::Stud(at) => say!(w::IS_STUD, at),
        Meets::Nothing => (&w::IS_NOTHING).into(),
    }
}

/// The least wood that a nail has before it, and whether that text was read.
fn least(thing: &Thing, answer: &Answer) -> Option<(Limit<Length>, bool)> {
    if thing.what == What::Pipe {
        return Some((CLEAR, true));
    }
    // Level it goes through studs; upright it is fastened along one.
    let clause = if thing.wide > thing.tall { clear } else { along };
    Some((answer.edition.or_newest(clause)?, clause(answer.edition).is_some()))
}

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let mut all = Vec::new();
    let named = |phrase: &'static Phrase, at: usize| Text {
        phrase,
        args: vec![name(at, &input.things[at]).into()],
    };
    let key = |start: &str, at: usize| [start, &(at + 1).to_string()].concat();
    let (mut unknown, mut loose, mut wood) = (0, 0, 0);
    for (at, thing) in input.things.iter().enumerate() {
        if thing.what.is_run() && !thing.plated {
            match (thing.deep, least(thing, answer)) {
                (Some(deep), Some((limit, is_read))) => {
                    let check = at_least(&key("deep-", at), named(&w::CHECK_DEEP, at), deep, limit);
                    all.push(if is_read { check } else { unverified(check) });
                }
                _ => unknown += 1,
            }
        }
        if thing.what.holds() {
            wood += 1;
            let [left, right, ..] = thing.edges();
            let off = [left, right].map(|end| on_stud(input, &answer.studs, end).is_none());
            let why = match off {
                [false, false] => continue,
                [true, false] => &w::LEFT_OFF,
                [false, true] => &w::RIGHT_OFF,
                _ => &w::BOTH_OFF,
            };
            loose += 1;
            let count = off.iter().filter(|is_off| **is_off).count() as i64;
            let check = at_most(&key("ends-", at), named(&w::CHECK_ENDS_OF, at), count, NONE_LOOSE);
            all.push(settle(check, why));
        }
    }
    if wood > 0 && loose == 0 {
        all.push(at_most("ends", (&w::CHECK_ENDS).into(), 0, NONE_LOOSE));
    }
    if unknown > 0 {
        let none = Limit { value: 0, source: CLEAR.source };
        let none = answer
            .edition
            .or_newest(along)
            .map_or(none, |it| Limit { value: 0, source: it.source });
        let check =
            settle(at_most("no-depth", (&w::CHECK_NO_DEPTH).into(), unknown, none), &w::ASK_DEPTH);
        all.push(Check { asks: Asks::Missing, ..check });
    }
    if !answer.along.is_empty() {
        let check = at_least("hold", (&w::CHECK_HOLD).into(), held(answer), ONE_HOLDS);
        let is_over = check.verdict == Verdict::Over;
        all.push(if is_over { settle(check, ONE_HOLDS.source.says) } else { check });
    }
    let mut untold = 0;
    for at in answer.reach.iter().copied() {
        match (input.things[at].deep, input.screw) {
            (Some(deep), Some(screw)) => {
                let left = deep.minus(screw.minus(input.cover).max(Length::ZERO));
                all.push(at_least(&key("tip-", at), named(&w::CHECK_TIP, at), left, SHORT));
            }
            _ => untold += 1,
        }
    }
    if untold > 0 {
        let none = Limit { value: 0, source: &KEEP_OFF };
        all.push(settle(at_most("reach", (&w::CHECK_REACH).into(), untold, none), &w::ASK_REACH));
    }
    all
}

fn parts(input: &Input, answer: &Answer) -> Vec<Part> {
    let mut along = Vec::new();
    for it in &answer.along {
        let (name, value) = (range(it.from, it.to), met(input, it.meets));
        along.push(PartRow { name, value, puts: Vec::new() });
    }
    let mut rows = Vec::new();
    for at in &answer.order {
        let thing = &input.things[*at];
        let [left, right, low, top] = thing.edges();
        let deep = thing.deep.map_or((&w::NOT_GIVEN).into(), |deep| say!(w::ONE, deep));
        let deep = if thing.what.holds() { (&w::NOTHING).into() } else { deep };
        rows.push(TableRow {
            name: name(*at, thing),
            cells: vec![range(left, right), range(low, top), deep],
        });
    }
    let heads = [&w::THING, &w::FROM_LEFT, &w::FROM_FLOOR, &w::BEHIND].map(Text::from).to_vec();
    let mut all = Vec::new();
    let mut add = |key, title, note, rows, table| all.push(Part { key, title, note, rows, table });
    if let (false, Some(low)) = (along.is_empty(), input.at_low) {
        add(FOREMOST, say!(w::ALONG, low), Some((&w::ALONG_NOTE).into()), along, None);
    }
    if !rows.is_empty() {
        add("things", (&w::THINGS).into(), None, Vec::new(), Some(Table { heads, rows }));
    }
    all
}
