//! The checks: structure, tie and steel are three answers, each with its own.

use super::choices::{Member, Passes, Remedy, Rule, Wall};
use super::input::Input;
use super::shown as s;
use super::{Across, Answer, Hole, Made, Notch, bare};
use crate::edition::Basis;
use crate::measure::Length;
use crate::rules::compare::{Limit, ask, at_least, at_most, is_at_most, unverified};
use crate::rules::electrical::nail_protection;
use crate::rules::framing::{joists, studs, top_plates};
use crate::say;
use crate::sheet::{Check, Verdict};
use crate::words::Phrase;

/// All checks; the first is the one that the answer belongs to.
pub(super) fn checks(input: &Input, answer: &Answer, basis: Basis) -> Vec<Check> {
    let mut all = Vec::new();
    match &answer.made {
        Made::OnPaper => {
            let planned = at_most("paper", (&s::ON_PAPER).into(), 1, joists::WITHOUT_PAPER);
            return vec![Check { note: Some((&s::PAPER_NOTE).into()), ..planned }];
        }
        Made::Hole(hole) => {
            match &answer.across {
                Some(across) => tie(input, across, &mut all),
                None => all.push(size(input, answer.width, hole)),
            }
            edge(input, hole, &mut all);
            in_a_row(input, answer.width, hole, &mut all);
        }
        Made::Notch(notch) => match &answer.across {
            Some(across) => tie(input, across, &mut all),
            None => notched(input, answer.width, notch, &mut all),
        },
    }
    along(input, answer, &mut all);
    if !input.wall.is_plain() && matches!(input.member.rule(), Rule::Plate | Rule::Stud) {
        for check in &mut all {
            if check.verdict == Verdict::Within {
                *check = ask(check.clone(), &s::ASK_WALL);
            }
        }
    }
    steel(input, answer, basis, &mut all);
    all
}

fn size(input: &Input, width: Length, hole: &Hole) -> Check {
    let check = at_most("size", (&s::SIZE).into(), hole.bit, hole.cap);
    // In a wall that may carry nothing it may pass.
    let maybe = input.member.rule() == Rule::Stud
        && input.wall == Wall::Unknown
        && is_at_most(hole.bit, studs::hole(true).of(width));
    if maybe { ask(check, &s::ASK_WALL) } else { check }
}

fn edge(input: &Input, hole: &Hole, all: &mut Vec<Check>) {
    let name = match input.member.rule() {
        Rule::Joist => &s::EDGE_JOIST,
        _ => &s::EDGE,
    };
    let check = at_least("edge", name.into(), hole.least_clear(), hole.edge);
    // In a top plate the hole only stays inside: nothing to say where it does.
    if input.member.rule() != Rule::Plate || check.verdict == Verdict::Over {
        all.push(check);
    }
}

fn in_a_row(input: &Input, width: Length, hole: &Hole, all: &mut Vec<Check>) {
    let wide = !is_at_most(hole.bit, studs::hole(false).of(width));
    if input.member == Member::StudDouble && input.wall != Wall::Partition && wide {
        all.push(at_most("in-a-row", (&s::IN_A_ROW).into(), input.in_a_row, studs::IN_A_ROW));
    }
}

fn notched(input: &Input, width: Length, notch: &Notch, all: &mut Vec<Check>) {
    let check = at_most("size", (&s::SIZE).into(), notch.depth, notch.cap);
    let maybe = input.member.rule() == Rule::Stud
        && input.wall == Wall::Unknown
        && is_at_most(notch.depth, studs::notch(false).of(width));
    all.push(if maybe { ask(check, &s::ASK_WALL) } else { check });
    if let Some(longest) = notch.longest {
        all.push(at_most("length", (&s::LENGTH).into(), notch.long, longest));
    }
}

/// What is next to the cut along a stud or joist.
fn along(input: &Input, answer: &Answer, all: &mut Vec<Check>) {
    let near =
        [("to-hole", &s::APART_HOLE, input.to_hole), ("to-notch", &s::APART_NOTCH, input.to_notch)];
    for (key, name, left) in near {
        let Some(left) = left else { continue };
        let is_notch = key == "to-notch";
        match (input.member.rule(), &answer.made) {
            // Two notches are no hole's matter.
            (_, Made::Notch(_)) if is_notch => {}
            (Rule::Joist, _) => all.push(at_least(key, name.into(), left, joists::CLEAR)),
            (Rule::Stud, Made::Hole(hole)) if !is_notch => {
                let limit = Limit { value: hole.bit, source: &studs::HOLES_APART };
                let check = at_least(key, name.into(), left, limit);
                let short = check.verdict == Verdict::Over;
                all.push(if short { ask(check, &s::ASK_APART) } else { check });
            }
            (Rule::Stud, _) => {
                let shared = i64::from(left == Length::ZERO);
                all.push(at_most("section", (&s::SECTION).into(), shared, studs::SAME_SECTION));
            }
            _ => {}
        }
    }
}

/// Whether the words of the tie's rule are about this cut.
pub(super) fn is_tied(input: &Input) -> bool {
    let piped = matches!(input.passes, Passes::Pipe | Passes::Duct);
    piped && !matches!(input.wall, Wall::Partition | Wall::Unknown)
}

fn tie(input: &Input, across: &Across, all: &mut Vec<Check>) {
    let check = |key, name: &'static Phrase, value| at_most(key, name.into(), value, across.untied);
    let gone = check("tie", &s::CUT_AWAY, across.section);
    if across.severed {
        all.push(Check { note: Some((&s::SEVERED).into()), ..gone });
        return;
    }
    let sum = check("all-holes", &s::SUM, across.sum);
    let (cut, summed) = (gone.verdict == Verdict::Over, sum.verdict == Verdict::Over);
    if let Some(tie) = input.tie.filter(|_| input.remedy == Remedy::Tie && (cut || summed)) {
        all.push(at_least("tie-length", (&s::TIE).into(), tie, across.tie));
        return;
    }
    all.push(if !cut {
        gone
    } else if !is_tied(input) {
        ask(gone, &s::ASK_WORDS)
    } else if input.remedy == Remedy::Sheathed {
        ask(gone, &s::ASK_SHEATHED)
    } else {
        let note = say!(s::TIE_NOTE, across.tie.value, top_plates::NAILS_A_SIDE);
        Check { note: Some(note), ..gone }
    });
    // Shown where the two readings differ.
    if across.sum != across.section {
        all.push(if summed { ask(sum, &s::ASK_SUM) } else { sum });
    }
}

/// Steel against nails and screws: the wood that needs none, or, once steel is planned, how many
/// faces take it.
fn steel(input: &Input, answer: &Answer, basis: Basis, all: &mut Vec<Check>) {
    let Some(bare) = bare(input.passes) else { return };
    let check = match &answer.made {
        Made::Hole(hole) if answer.steel == 0 || input.plates == 0 => {
            at_least("bare", (&s::BARE).into(), hole.least_clear(), bare)
        }
        _ => {
            let faces = Limit { value: answer.steel, source: bare.source };
            at_least("steel", (&s::STEEL).into(), input.plates, faces)
        }
    };
    let unread = |edition| nail_protection::clear(edition).is_none();
    let cable = input.passes == Passes::Cable;
    all.push(if cable && basis.electrical.is_some_and(unread) { unverified(check) } else { check });
}
