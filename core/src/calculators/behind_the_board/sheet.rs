//! The wall as it is shown: what is where, what waits before it is covered, and what a screw meets.

use super::drawing::drawing;
use super::words as w;
use super::{Answer, BehindTheBoard, Calculator, Input, Meets, Stretch, Thing, What, lies, name};
use crate::measure::Length;
use crate::rules::compare::{Limit, at_least, at_most, settle, unmeasured, unverified};
use crate::rules::electrical::nail_protection::{along, clear};
use crate::rules::framing::behind_board::{NONE_LOOSE, ONE_HOLDS, SHORT};
use crate::rules::framing::shield_plates::CLEAR;
use crate::say;
use crate::sheet::{Check, FOREMOST, Figure, Part, PartRow, Sheet, Table, TableRow, Verdict};
use crate::words::{Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    Sheet {
        headline: Figure::plain("noted", &w::NOTED, (input.things.len() as i64).into()),
        lead: None,
        next: None,
        figures: Vec::new(),
        checks: checks(input, answer),
        working: Vec::new(),
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
        Meets::Wood(at) => name(at, &input.things[at]),
        Meets::Stud(at) if input.studs.is_empty() => say!(w::IS_ON_SPACING, at),
        Meets::Stud(at) => say!(w::IS_STUD, at),
        Meets::Loose(at) => say!(w::IS_LOOSE, name(at, &input.things[at])),
        Meets::Over(at) => say!(w::IS_OVER, at as i64 + 1),
        Meets::Nothing => (&w::IS_NOTHING).into(),
    }
}

/// The least wood that a nail has before it.
fn least(thing: &Thing, answer: &Answer) -> Option<Limit<Length>> {
    if thing.what == What::Pipe {
        return Some(CLEAR);
    }
    // Level it goes through studs; upright it is fastened along one.
    let clause = if thing.wide > thing.tall { clear } else { along };
    answer.edition.or_newest(clause)
}

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let mut all = Vec::new();
    let key = |start: &str, at: usize| [start, &(at + 1).to_string()].concat();
    let of = |at: usize, what: &'static Phrase| say!(w::OF, name(at, &input.things[at]), what);
    for (at, thing) in input.things.iter().enumerate() {
        if thing.what.is_run()
            && !thing.plated
            && let Some(limit) = least(thing, answer)
        {
            let name = of(at, &w::DEEP);
            let check = at_least(&key("deep-", at), name, thing.deep.unwrap_or_default(), limit);
            all.push(match thing.deep {
                None => unmeasured(check, &w::ASK_DEPTH),
                Some(_) => check,
            });
        }
        if thing.what.holds() {
            let ends = lies(input, &answer.studs, thing);
            for (start, lies, why) in
                [("left-", ends[0], &w::LEFT_OFF), ("right-", ends[1], &w::RIGHT_OFF)]
            {
                let is_off = !lies;
                let name = name(at, thing);
                let check = at_most(&key(start, at), name, i64::from(is_off), NONE_LOOSE);
                if is_off {
                    all.push(settle(check, why));
                }
            }
        }
    }
    if !answer.along.is_empty() {
        let check = at_least("hold", (&w::ALONG).into(), held(answer), ONE_HOLDS);
        let is_noted = |it: &Stretch| matches!(it.meets, Meets::Wood(_)) || !input.studs.is_empty();
        let is_sure = answer.along.iter().any(|it| it.meets.holds() && is_noted(it));
        all.push(match check.verdict {
            Verdict::Over => settle(check, ONE_HOLDS.source.says),
            // Nobody has seen it.
            _ if !is_sure => settle(check, &w::FIND_FIRST),
            _ => check,
        });
    }
    for at in answer.reach.iter().copied() {
        let both = input.things[at].deep.zip(input.screw);
        // What isn't known is not said to be clear.
        let (deep, screw) = both.unwrap_or_default();
        let left = deep.minus(screw.minus(input.cover).max(Length::ZERO));
        let check = at_least(&key("tip-", at), of(at, &w::SCREW), left, SHORT);
        all.push(if both.is_none() { unmeasured(check, &w::ASK_REACH) } else { check });
    }
    if answer.edition.is_verified() {
        return all;
    }
    // Nothing is within under a text that nobody has read, whatever it is about.
    let told = |check: Check| if check.verdict == Verdict::Ask { check } else { unverified(check) };
    all.into_iter().map(told).collect()
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
    let heads = [&w::THING, &w::AT_LEFT, &w::FROM_FLOOR, &w::DEEP].map(Text::from).to_vec();
    let mut all = Vec::new();
    let mut add = |key, title, note, rows, table| all.push(Part { key, title, note, rows, table });
    if let (false, Some(low)) = (along.is_empty(), input.at_low) {
        add(FOREMOST, say!(w::OF, &w::ALONG, low), Some((&w::AT_LEFT).into()), along, None);
    }
    if !rows.is_empty() {
        add("things", (&w::THINGS).into(), None, Vec::new(), Some(Table { heads, rows }));
    }
    all
}
