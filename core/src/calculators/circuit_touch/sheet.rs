//! The list as it is shown: every line asks.

use super::words as w;
use super::{Answer, Calculator, Input};
use crate::rules::compare::{Limit, ask, at_most, unverified};
use crate::say;
use crate::sheet::{Figure, Part, PartRow, Sheet};
use crate::words::{Amount, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let mut checks = Vec::new();
    for line in &answer.lines {
        // One that is open, of none.
        let none = Limit { value: 0, source: line.source };
        let check = ask(at_most(line.key, line.name.into(), 1, none), line.note);
        checks.push(if answer.edition.is_verified() { check } else { unverified(check) });
    }
    let count = i64::try_from(answer.lines.len()).unwrap_or(i64::MAX);
    let next = if input.found.stops() { &w::NEXT_STOP } else { &w::NEXT };
    Sheet {
        headline: Figure::plain("lines", &w::LINES, Amount::Count(count)),
        lead: None,
        next: Some(next.into()),
        figures: Vec::new(),
        checks,
        working: Vec::new(),
        parts: parts(input, answer),
        materials: Vec::new(),
        cautions: super::CircuitTouch::cautions(None),
        drawing: None,
    }
}

fn parts(input: &Input, answer: &Answer) -> Vec<Part> {
    let row =
        |name: &'static Phrase, value: Text| PartRow { name: name.into(), value, puts: Vec::new() };
    let mut all = Vec::new();
    let mut add = |key, title, rows| Part::add(&mut all, key, title, None, rows);
    let mut exempt = Vec::new();
    if answer.is_exempt {
        let wire = input.wire.unwrap_or_default();
        exempt.push(row(&w::EXEMPT_ARC, say!(w::EXEMPT_WHY, wire)));
    }
    add("exempt", &w::EXEMPT, exempt);
    let mut differing = Vec::new();
    for (line, having) in &answer.differing {
        let having: Vec<_> = having.iter().map(|edition| edition.key()).collect();
        differing.push(row(line.name, say!(w::IN, having.join(", "))));
    }
    add("editions", &w::BY_EDITION, differing);
    all
}
