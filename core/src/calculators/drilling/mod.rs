//! Drilling and notching: whether this hole or notch may be made here, what the largest is that
//! may, and what steel it takes.
//!
//! `bore` holds the geometry of one hole, `plate` what is gone of a top plate, `judge` the checks.

mod bore;
mod choices;
mod drawing;
mod input;
mod judge;
mod plate;
mod sheet;
mod shown;
mod words;

pub use bore::Bore;
pub use choices::{Cover, Cut, Member, Passes, Place, Remedy, Rule, Wall};
pub use input::{Input, Other};
pub use plate::Across;

use super::{Calculator, Trade};
use crate::edition::{Basis, Electrical};
use crate::measure::{Area, Length};
use crate::rules::compare::{Limit, is_at_least, is_at_most};
use crate::rules::electrical::nail_protection;
use crate::rules::framing::off_mark::{OFF_MARK, WANDER};
use crate::rules::framing::share::Share;
use crate::rules::framing::{joists, shield_plates, studs};
use crate::rules::hazards::{Deed, Disturbs};
use crate::say;
use crate::sheet::{Caution, Fault, Faults, Sheet};
use crate::words::{Phrase, Text};

/// The most paint that a hole breaks, with what comes off beside it. Common practice, and generous.
const PAINT: Area = Area::square_feet(1);

/// The calculator.
#[derive(Debug)]
pub struct Drilling;

/// A hole, worked.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Hole {
    /// The bit.
    pub bit: Length,
    /// Its center off one face; none in the middle.
    pub center: Option<Length>,
    /// What the structure asks of it.
    pub bore: Bore,
    /// The share of the width that limits its size. A top plate has none of its own: there it is
    /// what needs no tie.
    pub share: Share,
    /// That limit.
    pub cap: Limit<Length>,
    /// The limit of the wood beside it. A plate has none: the hole only stays inside.
    pub edge: Limit<Length>,
    /// Wood left on the side measured from, and on the other, with the hole on its mark; nothing
    /// where it breaks out.
    pub clear: (Length, Length),
}

impl Hole {
    /// The less of the wood on both sides.
    pub fn least_clear(&self) -> Length {
        self.clear.0.min(self.clear.1)
    }

    /// The same at the worst, with the bit off its mark; below zero where it may break out.
    pub fn worst(&self) -> Length {
        self.least_clear().minus(self.bore.wander)
    }

    /// Whether no hole at all passes in this member, however true it is bored.
    pub fn none_passes(&self) -> bool {
        Bore { wander: Length::ZERO, ..self.bore }.largest(None).is_none()
    }
}

/// A notch, worked.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Notch {
    /// How deep.
    pub depth: Length,
    /// How long.
    pub long: Length,
    /// The share of the width that limits its depth.
    pub share: Share,
    /// The deepest.
    pub cap: Limit<Length>,
    /// The longest, where that is limited.
    pub longest: Option<Limit<Length>>,
}

/// What is made.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Made {
    /// A hole.
    Hole(Hole),
    /// A notch.
    Notch(Notch),
    /// Something in a member that only paper allows: nothing is worked.
    OnPaper,
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The member's width or depth; nothing where only paper allows a cut.
    pub width: Length,
    /// The hole or notch.
    pub made: Made,
    /// What is gone of a top plate.
    pub across: Option<Across>,
    /// Steel plates that the cable or pipe takes.
    pub steel: i64,
}

impl Calculator for Drilling {
    const ID: &'static str = "drilling";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::Framing;
    const NAME: &'static Phrase = &words::NAME;
    const ABOUT: &'static Phrase = &words::ABOUT;
    // The one electrical limit is the same in every edition that was verified; under another the
    // check on it asks, and the structure's don't.
    const ELECTRICAL: bool = false;
    type Input = Input;
    type Answer = Answer;

    fn sample() -> Input {
        Input::sample()
    }

    fn solve(input: &Input, _: Basis) -> Result<Answer, Faults> {
        solve(input)
    }

    fn cautions(input: Option<&Input>) -> Vec<Caution> {
        sheet::cautions(input)
    }

    fn sheet(input: &Input, answer: &Answer, basis: Basis) -> Sheet {
        sheet::sheet(input, answer, basis)
    }

    fn disturbs(input: &Input) -> Option<Disturbs> {
        let of =
            |material| Disturbs { material, deed: Deed::Cut, area: None, painted: Some(PAINT) };
        input.cover.material().map(of)
    }
}

/// Works a hole or a notch.
///
/// - Size: compared as it is, no allowance in it.
/// - Clear wood: `center − bit ÷ 2`, and the same from the other face; at the worst less the wander.
/// - Rounding: none; the largest bit goes down to a sixteenth of an inch.
///
/// # Errors
/// A cut as wide as the wood, but of a plate, which it severs; or a center outside of the wood.
///
/// # Source
/// IRC R602.6, R602.6.1, R502.8.1, R802.7.1 and P2603.2.1, NEC 300.4(A), as `rules` names them.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    let width = match input.member.rule() {
        Rule::Paper => Length::ZERO,
        _ => input.size.width().or(input.width).unwrap_or_default(),
    };
    fits(input, width)?;
    let across = plate::across(input, width);
    let made = match (input.member.rule(), input.cut, input.bit) {
        (Rule::Paper, ..) => Made::OnPaper,
        (_, Cut::Hole, Some(bit)) => Made::Hole(hole(input, width, bit)),
        _ => Made::Notch(notch(input, width)),
    };
    let steel = match &made {
        Made::Hole(hole) => bare(input.passes).map_or(0, |bare| {
            let short =
                |clear: Length| i64::from(!is_at_least(clear.minus(hole.bore.wander), bare));
            short(hole.clear.0) + short(hole.clear.1)
        }),
        // A notch is open to the nails.
        Made::Notch(_) => i64::from(bare(input.passes).is_some()),
        Made::OnPaper => 0,
    };
    Ok(Answer { width, made, across, steel })
}

/// The wood that shields by itself what passes; none where it takes no plate.
pub(super) fn bare(passes: Passes) -> Option<Limit<Length>> {
    match passes {
        Passes::Cable => nail_protection::clear(Electrical::NEWEST_VERIFIED),
        Passes::Pipe => Some(shield_plates::CLEAR),
        Passes::Conduit | Passes::Duct => None,
    }
}

fn hole(input: &Input, width: Length, bit: Length) -> Hole {
    let rule = input.member.rule();
    let (share, edge) = match rule {
        Rule::Stud => (studs::hole(bored_wide(input)), studs::EDGE),
        Rule::Joist => (joists::HOLE, joists::CLEAR),
        _ => (plate::untied(input.member), Limit { value: Length::ZERO, source: &OFF_MARK }),
    };
    let cap = share.of(width);
    let wander = input.wander.unwrap_or(WANDER);
    let bore = Bore { width, wander, edge: edge.value, cap: cap.value };
    let (near, far) = bore.clear(input.center, bit);
    let clear = (near.max(Length::ZERO), far.max(Length::ZERO));
    Hole { bit, center: input.center, bore, share, cap, edge, clear }
}

/// Whether a stud's hole may take 60 % of it.
fn bored_wide(input: &Input) -> bool {
    let few = is_at_most(input.in_a_row, studs::IN_A_ROW);
    input.wall == Wall::Partition || (input.member == Member::StudDouble && few)
}

fn notch(input: &Input, width: Length) -> Notch {
    let share = match (input.member.rule(), input.place) {
        (Rule::Stud, _) => studs::notch(input.wall != Wall::Partition),
        (Rule::Joist, Place::End) => joists::END_NOTCH,
        (Rule::Joist, Place::NotSaid | Place::Outer) => joists::NOTCH,
        (Rule::Joist, Place::Middle) => joists::MIDDLE_NOTCH,
        _ => plate::untied(input.member),
    };
    let limited = input.member.rule() == Rule::Joist && input.place != Place::End;
    Notch {
        depth: input.depth.unwrap_or_default(),
        long: input.long.unwrap_or_default(),
        share,
        cap: share.of(width),
        longest: limited.then(|| joists::NOTCH_LENGTH.of(width)),
    }
}

/// What the fields can't see one by one.
fn fits(input: &Input, width: Length) -> Result<(), Faults> {
    let mut faults = Vec::new();
    let is_plate = input.member.rule() == Rule::Plate;
    let mut within = |path: String, label: &'static Phrase, given: Option<Length>, says: Text| {
        if let Some(given) = given.filter(|given| *given >= width) {
            faults.push(Fault { path, label, given: given.exact(), says });
        }
    };
    if input.member.rule() != Rule::Paper {
        let (through, outside) = (say!(words::CUT_THROUGH, width), say!(words::OUTSIDE, width));
        // What cuts a plate in two is answered: a drain does.
        let cut = |given: Option<Length>| given.filter(|_| !is_plate);
        match input.cut {
            Cut::Notch => within("depth".to_owned(), &words::DEPTH, cut(input.depth), through),
            Cut::Hole => {
                within("bit".to_owned(), &words::BIT, cut(input.bit), through);
                within("center".to_owned(), &words::CENTER, input.center, outside.clone());
                let others = if is_plate { &*input.holes } else { &[] };
                for (at, other) in others.iter().enumerate() {
                    let path = |key| ["holes", &at.to_string(), key].join(".");
                    within(path("center"), &words::CENTER, other.center, outside.clone());
                }
            }
        }
    }
    if faults.is_empty() { Ok(()) } else { Err(faults) }
}

#[cfg(test)]
mod tests;
#[cfg(test)]
mod told;
