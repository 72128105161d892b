//! The box itself: which one, and what volume it has with all that deepens or splits it.

use super::choices::{AddKind, BarrierKind};
use super::input::Input;
use super::words as w;
use crate::fields::{Field, Pick, Reader, Row};
use crate::measure::{Length, Volume};
use crate::rules::electrical::box_fill::{METAL_BARRIER, OTHER_BARRIER};
pub use crate::rules::electrical::enclosure::Enclosure;
use crate::rules::electrical::enclosure::MARKED_BOX;
use crate::rules::electrical::metal_boxes::{METAL, Metal, RINGS, TABLE};
use crate::say;
use crate::sheet::{Fault, Faults};
use crate::wire::Node;

/// An extension ring, by its row in the table.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Ring(usize);

impl Ring {
    /// As a row offers them.
    pub const PICKS: [Pick; RINGS] = {
        let mut picks = [Pick { key: "", label: &MARKED_BOX }; RINGS];
        let mut at = 0;
        while at < RINGS {
            picks[at] = Pick { key: METAL[at].key, label: METAL[at].name };
            at += 1;
        }
        picks
    };

    /// The ring of this row of the table, if rings of it are made.
    pub const fn of(row: usize) -> Option<Self> {
        if row < RINGS { Some(Self(row)) } else { None }
    }

    /// The table's row.
    pub fn metal(self) -> &'static Metal {
        &TABLE[self.0.min(RINGS - 1)]
    }
}

impl Field for Ring {
    fn take(&mut self, from: Option<&Node>, _: &'static Row, reader: &mut Reader<'_>) -> bool {
        let at = reader.pick(from, &Self::PICKS);
        if let Some(at) = at {
            *self = Self(at);
        }
        at.is_some()
    }
    fn write(&self) -> Node {
        Node::text(self.metal().key)
    }
}

/// Volumes of a box, and the sides that barriers make.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Volumes {
    /// The box with all its gangs.
    pub body: Volume,
    /// Rings and covers.
    pub added: Volume,
    /// What barriers take.
    pub barriers: Volume,
    /// Gangs of each side, left to right.
    pub sides: Vec<i64>,
}

impl Volumes {
    /// All that the sides share.
    pub(super) fn total(&self) -> Volume {
        self.body.plus(self.added).minus(self.barriers)
    }

    /// One side's share, by its gangs.
    pub(super) fn side(&self, at: usize) -> Volume {
        let gangs: i64 = self.sides.iter().sum();
        self.total().share(self.sides.get(at).copied().unwrap_or(0), gangs)
    }
}

/// # Errors
/// A box that doesn't gang given more than its devices' width, a barrier past the last gang, two
/// in one place, or nothing left.
pub(super) fn volumes(input: &Input) -> Result<Volumes, Faults> {
    let mut faults = Vec::new();
    let body = match input.enclosure.metal() {
        None => input.marked,
        Some(metal) if metal.family.gangs() => metal.volume.times(input.gangs),
        Some(metal) => {
            if input.gangs > metal.family.devices() {
                let says = say!(w::DOES_NOT_GANG, metal.family.devices());
                faults.push(fault("gangs", &w::GANGS, input.gangs.to_string(), says));
            }
            metal.volume
        }
    };
    let added = input.adds.iter().map(|add| match add.kind {
        AddKind::Marked => add.volume,
        AddKind::Extension => add.ring.metal().volume,
    });
    let added = added.fold(Volume::ZERO, Volume::plus);
    let (mut sides, mut left, mut barriers) = (Vec::new(), 0, Volume::ZERO);
    for (at, barrier) in input.barriers.iter().enumerate() {
        barriers = barriers.plus(match barrier.kind {
            BarrierKind::Metal => METAL_BARRIER,
            BarrierKind::Other => OTHER_BARRIER,
            BarrierKind::Marked => barrier.volume,
        });
        if barrier.after <= left || barrier.after >= input.gangs {
            let path = ["barriers", &at.to_string(), "after"].join(".");
            let says = say!(w::BARRIER_PLACE, input.gangs);
            faults.push(fault(&path, &w::BARRIER_AFTER, barrier.after.to_string(), says));
        } else {
            sides.push(barrier.after - left);
            left = barrier.after;
        }
    }
    sides.push((input.gangs - left).max(1));
    let volumes = Volumes { body, added, barriers, sides };
    if volumes.total() <= Volume::ZERO {
        let says = say!(w::NO_VOLUME_LEFT);
        faults.push(fault("barriers", &w::BARRIERS, String::new(), says));
    }
    if faults.is_empty() { Ok(volumes) } else { Err(faults) }
}

/// The box's inside depth, where it is known, with a table ring's depth on it.
pub(super) fn depth(input: &Input) -> Option<Length> {
    let body = match input.enclosure.metal() {
        Some(metal) => metal.depth,
        None => input.depth?,
    };
    let rings = input.adds.iter().filter(|add| add.kind == AddKind::Extension);
    Some(rings.fold(body, |depth, add| depth.plus(add.ring.metal().depth)))
}

pub(super) fn fault(
    path: &str,
    label: &'static crate::words::Phrase,
    given: String,
    says: crate::words::Text,
) -> Fault {
    Fault { path: path.to_owned(), label, given, says }
}
