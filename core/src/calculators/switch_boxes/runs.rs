//! Which cable runs where, and what each of its wires does.

use super::words as w;
use super::{Feed, Input, Leaves, Neutral, Size};
use crate::rules::electrical::cable_sizes::Sheathed;
use crate::words::Phrase;

/// What a wire does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Role {
    /// Always hot, on its way to a switch.
    Supply,
    /// From the last switch to the light.
    Switched,
    /// Between switches.
    Traveler,
    /// Back.
    Neutral,
}

impl Role {
    /// As a person reads it.
    pub fn words(self) -> &'static Phrase {
        match self {
            Self::Supply => &w::SUPPLY,
            Self::Switched => &w::SWITCHED,
            Self::Traveler => &w::TRAVELER,
            Self::Neutral => &w::NEUTRAL_WIRE,
        }
    }
}

/// Where a cable ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    /// What feeds the circuit.
    Feed,
    /// What the feed goes on to.
    Onward,
    /// The light.
    Light,
    /// A switch, from 1 on.
    Switch(i64),
}

/// A wire of a cable.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wire {
    /// Its colour.
    pub colour: &'static Phrase,
    /// What it does.
    pub role: Role,
    /// White, and hot.
    pub is_marked: bool,
}

/// A cable between two places.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Run {
    /// From here.
    pub from: Place,
    /// To here.
    pub to: Place,
    /// Which cable.
    pub cable: Sheathed,
    /// Its insulated wires.
    pub wires: Vec<Wire>,
}

fn cable(size: Size, wires: usize) -> Sheathed {
    match (size, wires) {
        (Size::Awg14, 2) => Sheathed::Nm14x2,
        (Size::Awg14, 3) => Sheathed::Nm14x3,
        (Size::Awg14, _) => Sheathed::Nm14x4,
        (Size::Awg12, 2) => Sheathed::Nm12x2,
        (Size::Awg12, 3) => Sheathed::Nm12x3,
        (Size::Awg12, _) => Sheathed::Nm12x4,
    }
}

/// A cable for what its wires do. The neutral is the white one; of a cable without a neutral, or
/// with two whites, the other white brings supply and is marked as hot: NEC 200.7(C).
fn run(size: Size, from: Place, to: Place, roles: &[Role]) -> Run {
    let colours: &[&'static Phrase] = match roles.len() {
        2 => &[&w::WHITE, &w::BLACK],
        3 => &[&w::WHITE, &w::BLACK, &w::RED],
        _ => &[&w::WHITE, &w::STRIPED, &w::BLACK, &w::RED],
    };
    // White wires take the neutral first, then the supply.
    let mut left = roles.to_vec();
    left.sort_by_key(|role| match role {
        Role::Neutral => 0,
        Role::Supply => 1,
        Role::Switched => 2,
        Role::Traveler => 3,
    });
    let wire = |(&colour, role): (&&'static Phrase, Role)| {
        let is_white = std::ptr::eq(colour, &w::WHITE) || std::ptr::eq(colour, &w::STRIPED);
        Wire { colour, role, is_marked: is_white && role != Role::Neutral }
    };
    let wires = colours.iter().zip(left).map(wire).collect();
    Run { from, to, cable: cable(size, roles.len()), wires }
}

/// All cables of a layout.
///
/// - Light fed from the last switch: travelers and the neutral run from box to box.
/// - Else the switches are a dead end: supply runs to the last one, and the travelers come back.
pub(super) fn runs(input: &Input) -> Vec<Run> {
    use Place::{Light, Switch};
    use Role::{Neutral as Return, Supply, Switched, Traveler};
    let size = input.size;
    let with = input.neutral == Neutral::Each;
    let is_through = input.feed == Feed::Switch && input.leaves == Leaves::Last;
    let mut all = Vec::new();
    let mut add = |from, to, roles: &[Role]| all.push(run(size, from, to, roles));
    if input.onward {
        let from = if input.feed == Feed::Light { Light } else { Switch(1) };
        add(from, Place::Onward, &[Supply, Return]);
    }
    if input.feed == Feed::Light {
        add(Place::Feed, Light, &[Supply, Return]);
        let loop_roles = [Supply, Switched, Return];
        add(Light, Switch(1), if with { &loop_roles } else { &loop_roles[..2] });
    } else {
        add(Place::Feed, Switch(1), &[Supply, Return]);
    }
    let between: &[Role] = match (is_through, with) {
        (true, _) => &[Traveler, Traveler, Return],
        (false, true) => &[Supply, Traveler, Traveler, Return],
        (false, false) => &[Supply, Traveler, Traveler],
    };
    for at in 1..input.points {
        add(Switch(at), Switch(at + 1), between);
    }
    if input.feed == Feed::Switch {
        let from = if is_through { input.points } else { 1 };
        add(Switch(from), Light, &[Switched, Return]);
    }
    all
}
