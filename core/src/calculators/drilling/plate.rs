//! How much of a top plate is cut away, with other holes in it.

use super::choices::{Cut, Member, Rule};
use super::input::Input;
use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::rules::framing::off_mark::WANDER;
use crate::rules::framing::share::Share;
use crate::rules::framing::top_plates;

/// What is cut out of a plate, by both readings.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Across {
    /// The most that is gone at one section across the plate.
    pub section: Length,
    /// All holes' diameters together.
    pub sum: Length,
    /// From the start of the first opening along the plate to the end of the last.
    pub opening: Length,
    /// What needs no tie.
    pub untied: Limit<Length>,
    /// The shortest tie.
    pub tie: Limit<Length>,
    /// Nothing of the plate is sure to be left at a section, with bits off their marks.
    pub severed: bool,
}

/// A hole from above: from where to where along the plate and across it.
struct Hole {
    along: (Length, Length),
    across: (Length, Length),
}

/// From half of it before a place to half behind.
fn about(at: Length, size: Length) -> (Length, Length) {
    let from = at.minus(size.part(2));
    (from, from.plus(size))
}

/// So much of a plate is cut without a tie; of a sole plate, without asking.
pub(super) fn untied(member: Member) -> Share {
    match member {
        Member::Sole => top_plates::SOLE,
        _ => top_plates::UNTIED,
    }
}

/// Works the plate; none for other members.
pub(super) fn across(input: &Input, width: Length) -> Option<Across> {
    if input.member.rule() != Rule::Plate {
        return None;
    }
    let untied = untied(input.member).of(width);
    if input.cut == Cut::Notch {
        let (depth, opening) = (input.depth?, input.long?);
        let (tie, severed) = (top_plates::tie(opening), depth >= width);
        return Some(Across {
            section: depth.min(width),
            sum: depth,
            opening,
            untied,
            tie,
            severed,
        });
    }
    let middle = width.part(2);
    let hole = |bit, center: Option<Length>, along| Hole {
        along: about(along, bit),
        across: about(center.unwrap_or(middle), bit),
    };
    let mut sum = input.bit?;
    let mut holes = vec![hole(sum, input.center, Length::ZERO)];
    for other in &input.holes {
        let bit = other.bit?;
        sum = sum.plus(bit);
        holes.push(hole(bit, other.center, other.along?));
    }
    // The most is gone where some hole begins.
    let wander = input.wander.unwrap_or(WANDER);
    let (mut section, mut at_worst) = (Length::ZERO, Length::ZERO);
    let (mut first, mut last) = holes[0].along;
    for start in &holes {
        let at = start.along.0;
        let here = holes.iter().filter(|hole| hole.along.0 <= at && at <= hole.along.1);
        let here: Vec<_> = here.map(|hole| hole.across).collect();
        let off = here.iter().map(|(from, to)| (from.minus(wander), to.plus(wander))).collect();
        section = section.max(covered(here, width));
        at_worst = at_worst.max(covered(off, width));
        first = first.min(at);
        last = last.max(start.along.1);
    }
    let opening = last.minus(first);
    let severed = at_worst >= width;
    Some(Across { section, sum, opening, untied, tie: top_plates::tie(opening), severed })
}

/// How much of the width these stretches cover together.
fn covered(mut stretches: Vec<(Length, Length)>, width: Length) -> Length {
    let (mut total, mut done) = (Length::ZERO, Length::ZERO);
    while let Some(next) = (0..stretches.len()).min_by_key(|at| stretches[*at].0) {
        let (from, to) = stretches.swap_remove(next);
        let (from, to) = (from.max(done), to.min(width));
        if to > from {
            total = total.plus(to.minus(from));
            done = to;
        }
    }
    total
}
