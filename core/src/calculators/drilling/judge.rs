//! The checks: structure, tie and steel are three answers, each with its own.

use super::choices::{Member, Passes, Place, Remedy, Rule, Wall};
use super::input::Input;
use super::shown as s;
use super::{Across, Answer, Hole, Made, Notch, bare};
use crate::edition::Basis;
use crate::measure::Length;
use crate::rules::compare::{Limit, ask, at_least, at_most, is_at_most, unverified};
use crate::rules::electrical::nail_protection;
use crate::rules::framing::engineer::ENGINEER;
use crate::rules::framing::off_mark::OFF_MARK;
use crate::rules::framing::{joists, studs, top_plates};
use crate::say;
use crate::sheet::{Check, Verdict};
use crate::words::Phrase;

/// Against nails and screws. Every other check is the structure's.
pub(super) const STEEL: &[&str] = &["bare", "steel"];

/// All checks; the first is the one that the answer belongs to, but where no hole passes at all.
pub(super) fn checks(input: &Input, answer: &Answer, basis: Basis) -> Vec<Check> {
    let mut all = Vec::new();
    match &answer.made {
        Made::OnPaper => {
            let (source, note) = match input.member {
                Member::Header => (&ENGINEER, &s::ENGINEER_NOTE),
                _ => (joists::PAPERS.source, &s::PAPER_NOTE),
            };
            let papers = Limit { source, ..joists::PAPERS };
            let check = at_least("paper", (&s::AT_HAND).into(), 0, papers);
            return vec![Check { note: Some(note.into()), ..check }];
        }
        Made::Hole(hole) => {
            match &answer.across {
                Some(across) => {
                    tie(input, across, &mut all);
                    if !across.severed {
                        inside(hole, &mut all);
                    }
                }
                None => {
                    let size = at_most("size", (&s::SIZE).into(), hole.bit, hole.cap);
                    let name = match (hole.none_passes(), input.member.rule()) {
                        (true, _) => &s::NONE_PASSES,
                        (false, Rule::Joist) => &s::EDGE_JOIST,
                        _ => &s::EDGE,
                    };
                    all = vec![size, wood("edge", name, hole, hole.edge)];
                    if hole.none_passes() {
                        all.reverse();
                    }
                }
            }
            in_a_row(input, answer.width, hole, &mut all);
        }
        Made::Notch(notch) => match &answer.across {
            Some(across) => tie(input, across, &mut all),
            None => notched(input, notch, &mut all),
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

/// Wood beside a hole: by the limit's own words for a hole on its mark; what a bit off its mark
/// would leave is no rule, but asked about.
fn wood(key: &str, name: &'static Phrase, hole: &Hole, limit: Limit<Length>) -> Check {
    let on_mark = at_least(key, name.into(), hole.least_clear(), limit);
    let off = Limit { source: &OFF_MARK, ..limit };
    let off = at_least(key, say!(s::OFF, name), hole.worst(), off);
    if on_mark.verdict == Verdict::Over || off.verdict == Verdict::Within {
        return on_mark;
    }
    let note = Some(say!(s::ASK_OFF, hole.bore.wander));
    Check { verdict: Verdict::Ask, note, ..off }
}

/// Whether a hole stays inside of a plate: where it does there is nothing to say.
fn inside(hole: &Hole, all: &mut Vec<Check>) {
    let room = Limit { value: hole.bore.room(hole.center), source: &OFF_MARK };
    let taken = hole.bit.plus(hole.bore.wander.times(2));
    let check = at_most("edge", (&s::INSIDE).into(), taken, room);
    if check.verdict == Verdict::Over {
        all.push(ask(check, &s::ASK_INSIDE));
    }
}

fn in_a_row(input: &Input, width: Length, hole: &Hole, all: &mut Vec<Check>) {
    let wide = !is_at_most(hole.bit, studs::hole(false).of(width));
    if input.member == Member::StudDouble && input.wall != Wall::Partition && wide {
        all.push(at_most("in-a-row", (&s::IN_A_ROW).into(), input.in_a_row, studs::IN_A_ROW));
    }
}

fn notched(input: &Input, notch: &Notch, all: &mut Vec<Check>) {
    let check = at_most("size", (&s::SIZE).into(), notch.depth, notch.cap);
    let why = match (input.member.rule(), input.place) {
        (Rule::Joist, Place::NotSaid) => Some(&s::ASK_PLACE),
        (Rule::Joist, Place::Outer) if input.thick => Some(&s::ASK_THICK),
        _ => None,
    };
    all.push(match why {
        Some(why) if check.verdict == Verdict::Within => ask(check, why),
        _ => check,
    });
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
    piped && input.wall != Wall::Partition && input.member != Member::Sole
}

fn tie(input: &Input, across: &Across, all: &mut Vec<Check>) {
    let check = |key, name: &'static Phrase, value| at_most(key, name.into(), value, across.untied);
    let gone = check("tie", &s::CUT_AWAY, across.section);
    let is_sole = input.member == Member::Sole;
    if across.severed {
        let over = gone.verdict == Verdict::Over && !is_sole;
        let note = Some((&s::SEVERED).into());
        all.push(Check { note, verdict: if over { Verdict::Over } else { Verdict::Ask }, ..gone });
        return;
    }
    let sum = check("all-holes", &s::SUM, across.sum);
    let (cut, summed) = (gone.verdict == Verdict::Over, sum.verdict == Verdict::Over);
    if let Some(tie) =
        input.tie.filter(|_| input.remedy == Remedy::Tie && !is_sole && (cut || summed))
    {
        all.push(at_least("tie-length", (&s::TIE).into(), tie, across.tie));
        return;
    }
    all.push(if !cut {
        gone
    } else if !is_tied(input) {
        ask(gone, if is_sole { &s::ASK_SOLE } else { &s::ASK_WORDS })
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
            wood("bare", &s::BARE, hole, bare)
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
