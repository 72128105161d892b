//! The count: each item's share, side by side.

use super::choices::{CableGround, Clamps, DeviceKind, How, SupportKind};
use super::enclosure::{Volumes, fault};
use super::input::Input;
use super::shown as s;
use super::sizes::{self, largest, thicker};
use super::words as w;
use crate::edition::Electrical;
use crate::measure::{Length, Volume};
use crate::rules::electrical::box_fill as rule;
use crate::rules::electrical::box_fill::Grounds;
use crate::rules::electrical::conductor_volume::Awg;
use crate::rules::electrical::equipment_ground::of_circuit;
use crate::rules::electrical::free_conductor;
use crate::say;
use crate::sheet::{Faults, Source};
use crate::words::Text;

/// What a share is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// Conductors, of a cable or by hand.
    Conductors,
    /// Clamps.
    Clamps,
    /// A support fitting.
    Support,
    /// Devices.
    Devices,
    /// Grounds.
    Grounds,
    /// Isolated grounds that count apart.
    Isolated,
    /// Terminal blocks.
    Blocks,
    /// What is named but counts nothing.
    LeftOut,
}

/// What one item takes of the volume.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Share {
    /// What it is for.
    pub kind: Kind,
    /// In words, with its reason.
    pub name: Text,
    /// In a word, for the drawing.
    pub short: Text,
    /// Allowances counted.
    pub count: i64,
    /// Quarters of an allowance counted besides.
    pub quarters: i64,
    /// One allowance.
    pub each: Volume,
    /// What it comes to.
    pub volume: Volume,
    /// The clause that counts it.
    pub source: &'static Source,
}

impl Share {
    fn new(kind: Kind, name: Text, short: Text, each: Volume, source: &'static Source) -> Self {
        let volume = Volume::ZERO;
        Self { kind, name, short, count: 0, quarters: 0, each, volume, source }
    }

    fn counted(self, count: i64, quarters: i64) -> Self {
        let volume = self.each.times(count).plus(self.each.times(quarters).share(1, 4));
        Self { count, quarters, volume, ..self }
    }
}

/// One side of a box.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Side {
    /// How many gangs wide.
    pub gangs: i64,
    /// Its volume.
    pub volume: Volume,
    /// What is in it.
    pub fill: Volume,
    /// Item by item, in the order of the fields.
    pub shares: Vec<Share>,
    /// The largest conductor in it.
    pub largest: Option<Awg>,
    /// More small light fixture wires than the exception takes.
    pub asks: bool,
    /// Said where sizes are mixed and devices are counted by the largest, for want of the wire on
    /// them.
    pub assumed: Option<Text>,
}

impl Side {
    /// What is left; below zero where it is over.
    pub fn spare(&self) -> Volume {
        self.volume.minus(self.fill)
    }
}

/// Counts every side.
///
/// # Errors
/// A conductor that leaves this rule, an item on a side that isn't there.
pub(super) fn sides(
    input: &Input,
    edition: Electrical,
    volumes: &Volumes,
) -> Result<Vec<Side>, Faults> {
    let faults = misplaced(input, volumes.sides.len());
    if !faults.is_empty() {
        return Err(faults);
    }
    let sides = volumes.sides.iter().enumerate();
    Ok(sides.map(|(at, gangs)| side(input, edition, volumes, at, *gangs)).collect())
}

/// The side with the least to spare; the first of equals.
pub(super) fn tightest(sides: &[Side]) -> usize {
    let spare = |at: &usize| sides.get(*at).map(Side::spare);
    (0..sides.len()).min_by_key(spare).unwrap_or(0)
}

fn misplaced(input: &Input, count: usize) -> Faults {
    let mut faults = Vec::new();
    let mut place = |list: &str, at: usize, side: i64| {
        if usize::try_from(side).map_or(true, |side| side > count) {
            let path = [list, &at.to_string(), "side"].join(".");
            let says = say!(w::NO_SUCH_SIDE, count as i64);
            faults.push(fault(&path, &w::SIDE, side.to_string(), says));
        }
    };
    // Without barriers no side is asked, and all that is in the box is on its one side.
    if !input.barriers.is_empty() {
        input.cables.iter().enumerate().for_each(|(at, each)| place("cables", at, each.side));
        input.wires.iter().enumerate().for_each(|(at, each)| place("wires", at, each.side));
        input.supports.iter().enumerate().for_each(|(at, each)| place("supports", at, each.side));
        input.devices.iter().enumerate().for_each(|(at, each)| place("devices", at, each.side));
        input.blocks.iter().enumerate().for_each(|(at, each)| place("blocks", at, each.side));
    }
    let mut sized = |list: &str, at: usize, size: Awg| {
        if size.allowance().is_none() {
            let path = [list, &at.to_string(), "size"].join(".");
            faults.push(fault(&path, &w::SIZE, size.key().to_owned(), say!(w::TOO_LARGE)));
        }
    };
    input.wires.iter().enumerate().for_each(|(at, each)| sized("wires", at, each.size));
    input.blocks.iter().enumerate().for_each(|(at, each)| sized("blocks", at, each.size));
    faults
}

fn allowance(size: Awg) -> Volume {
    size.allowance().unwrap_or(Volume::ZERO)
}

/// The size of a cable's ground, if it has one.
fn ground_of(ground: CableGround, size: Awg) -> Option<Awg> {
    match ground {
        CableGround::Same => Some(of_circuit(size)),
        CableGround::Small => Some(Awg::Awg16),
        CableGround::None => None,
    }
}

fn side(input: &Input, edition: Electrical, volumes: &Volumes, at: usize, gangs: i64) -> Side {
    let number = at as i64 + 1;
    let alone = volumes.sides.len() == 1;
    let on = |side: i64| alone || side == number;
    let largest = largest(input, on);
    let mut shares = Vec::new();
    let mut grounds = Tally::default();
    cables(input, &on, &mut grounds, &mut shares);
    let asks = wires(input, &on, &mut grounds, &mut shares);
    if let Some(size) = largest {
        fittings(input, &on, size, &mut shares);
    }
    let assumed = devices(input, &on, largest, &mut shares);
    grounds.share(edition, &mut shares);
    blocks(input, &on, edition, &mut shares);
    let fill = shares.iter().fold(Volume::ZERO, |sum, share| sum.plus(share.volume));
    Side { gangs, volume: volumes.side(at), fill, shares, largest, asks, assumed }
}

/// Grounds that come in, and isolated ones.
#[derive(Default)]
struct Tally {
    plain: i64,
    isolated: i64,
    largest_plain: Option<Awg>,
    largest_isolated: Option<Awg>,
}

impl Tally {
    fn add(&mut self, isolated: bool, count: i64, size: Awg) {
        let (sum, largest) = if isolated {
            (&mut self.isolated, &mut self.largest_isolated)
        } else {
            (&mut self.plain, &mut self.largest_plain)
        };
        *sum += count;
        *largest = thicker(*largest, size);
    }

    fn share(&self, edition: Electrical, shares: &mut Vec<Share>) {
        // Worked by the newest verified text where the edition's own could not be verified; the
        // check then asks.
        let known = edition.or_newest(rule::grounds);
        let Some((how, source)) = known else { return };
        let one = |kind, name, short: &'static crate::words::Phrase, size| {
            Share::new(kind, name, short.into(), allowance(size), source)
        };
        match how {
            Grounds::OneForAll => {
                if let Some(size) = self.largest_plain {
                    let name = say!(s::SHARE_GROUNDS, self.plain, size.label());
                    shares.push(one(Kind::Grounds, name, &s::SHORT_GROUNDS, size).counted(1, 0));
                }
                if let Some(size) = self.largest_isolated {
                    let name = say!(s::SHARE_ISOLATED, self.isolated, size.label());
                    shares.push(one(Kind::Isolated, name, &s::SHORT_ISOLATED, size).counted(1, 0));
                }
            }
            Grounds::QuarterPast { .. } => {
                let size = match (self.largest_plain, self.largest_isolated) {
                    (Some(plain), Some(isolated)) => thicker(Some(plain), isolated),
                    (plain, isolated) => plain.or(isolated),
                };
                if let Some(size) = size {
                    let count = self.plain + self.isolated;
                    let name = say!(s::SHARE_GROUNDS, count, size.label());
                    let quarters = how.quarters(count);
                    let share = one(Kind::Grounds, name, &s::SHORT_GROUNDS, size);
                    shares.push(share.counted(1, quarters));
                }
            }
        }
    }
}

fn cables(input: &Input, on: &impl Fn(i64) -> bool, grounds: &mut Tally, shares: &mut Vec<Share>) {
    for cable in input.cables.iter().filter(|cable| on(cable.side)) {
        let (size, conductors) = cable.cable.conductors();
        let count = conductors * cable.count;
        let name = say!(s::SHARE_CABLES, cable.count, cable.cable.label(), count);
        let short = say!(s::SHORT_CABLES, cable.count, cable.cable.label());
        let share = Share::new(Kind::Conductors, name, short, allowance(size), &rule::CONDUCTORS);
        shares.push(share.counted(count, 0));
        if let Some(ground) = ground_of(cable.ground, size) {
            grounds.add(false, cable.count, ground);
        }
    }
}

/// Wires by hand; says whether the canopy exception no longer fits.
fn wires(
    input: &Input,
    on: &impl Fn(i64) -> bool,
    grounds: &mut Tally,
    shares: &mut Vec<Share>,
) -> bool {
    let here = || input.wires.iter().filter(|wire| on(wire.side));
    let small = |size: Awg| size.thickness() < rule::SMALL_BELOW.thickness();
    let canopy: i64 = here()
        .filter(|wire| wire.how == How::Canopy && small(wire.size))
        .map(|wire| wire.count)
        .sum();
    let too_many = canopy > rule::CANOPY_WIRES;
    for wire in here() {
        let (size, count) = (wire.size, wire.count);
        let short = say!(s::SHORT_WIRES, size.key());
        let make = |kind, name, source, counted| {
            Share::new(kind, name, short.clone(), allowance(size), source).counted(counted, 0)
        };
        let plain = |counted| {
            let name = say!(s::SHARE_WIRES, count, size.label(), wire.how.label());
            make(Kind::Conductors, name, &rule::CONDUCTORS, counted)
        };
        shares.push(match wire.how {
            How::Ended | How::Through => plain(count),
            How::Looped if loops_long(input, wire.loop_length) => plain(2 * count),
            How::Looped => plain(count),
            How::Inside => {
                let name = say!(s::SHARE_INSIDE, count, size.label());
                make(Kind::LeftOut, name, &rule::CONDUCTORS, 0)
            }
            How::Ground | How::Isolated => {
                grounds.add(wire.how == How::Isolated, count, size);
                continue;
            }
            How::CanopyGround => {
                let name = say!(s::SHARE_CANOPY_OUT, count, size.label());
                make(Kind::LeftOut, name, &rule::CANOPY, 0)
            }
            How::Canopy if !small(size) => plain(count),
            How::Canopy if too_many => {
                let name = say!(s::SHARE_CANOPY_IN, count, size.label());
                make(Kind::Conductors, name, &rule::CANOPY, count)
            }
            How::Canopy => {
                let name = say!(s::SHARE_CANOPY_OUT, count, size.label());
                make(Kind::LeftOut, name, &rule::CANOPY, 0)
            }
        });
    }
    too_many
}

/// Whether a loop counts two. One that nobody measured does.
fn loops_long(input: &Input, length: Option<Length>) -> bool {
    let least = free_conductor::least(super::fit::emerges(input).unwrap_or(Length::ZERO));
    length.is_none_or(|length| length >= least.times(free_conductor::LOOP_TIMES))
}

fn fittings(input: &Input, on: &impl Fn(i64) -> bool, size: Awg, shares: &mut Vec<Share>) {
    // A side that no cable comes in on has no clamp in it.
    let clamped = input.clamps == Clamps::Inside
        && (input.barriers.is_empty() || input.cables.iter().any(|cable| on(cable.side)));
    if clamped {
        let name = say!(s::SHARE_CLAMPS, size.label());
        let short = (&s::SHORT_CLAMPS).into();
        let share = Share::new(Kind::Clamps, name, short, allowance(size), &rule::CLAMPS);
        shares.push(share.counted(1, 0));
    }
    for kind in [SupportKind::Stud, SupportKind::Hickey] {
        if input.supports.iter().any(|support| support.kind == kind && on(support.side)) {
            let name = say!(s::SHARE_SUPPORT, kind.label(), size.label());
            let short = match kind {
                SupportKind::Stud => (&s::SHORT_STUD).into(),
                SupportKind::Hickey => kind.label().into(),
            };
            let share = Share::new(Kind::Support, name, short, allowance(size), &rule::SUPPORTS);
            shares.push(share.counted(1, 0));
        }
    }
}

/// Devices; says what was assumed of the wire on them where that may be too much.
fn devices(
    input: &Input,
    on: &impl Fn(i64) -> bool,
    largest: Option<Awg>,
    shares: &mut Vec<Share>,
) -> Option<Text> {
    let mixed = sizes::are_mixed(sizes::all(input, on));
    let mut assumed = None;
    for device in input.devices.iter().filter(|device| on(device.side)) {
        let kind: &'static crate::words::Phrase = DeviceKind::label(device.kind);
        let short = if device.kind == DeviceKind::Heavy { &s::SHORT_HEAVY } else { kind };
        let make = |name, each| Share::new(Kind::Devices, name, short.into(), each, &rule::DEVICES);
        let Some(size) = device.size.awg().or(largest) else {
            // Nothing to connect it to yet: it is named, and counts once a wire is there.
            let name = say!(s::SHARE_NO_DEVICE_WIRE, device.count, kind);
            shares.push(make(name, Volume::ZERO));
            continue;
        };
        let untold = mixed && device.size.awg().is_none();
        if untold {
            assumed = Some(match assumed {
                None if device.count == 1 => say!(s::ASSUMED, kind, size.label()),
                _ => say!(s::ASSUMED_ALL, size.label()),
            });
        }
        let phrase = match (device.gangs > 1, untold) {
            (false, false) => &s::SHARE_DEVICES,
            (false, true) => &s::SHARE_DEVICES_LARGEST,
            (true, false) => &s::SHARE_DEVICES_WIDE,
            (true, true) => &s::SHARE_DEVICES_WIDE_LARGEST,
        };
        let args = vec![device.count.into(), kind.into(), size.label().into(), device.gangs.into()];
        let name = Text { phrase, args };
        let count = rule::PER_YOKE * device.gangs * device.count;
        shares.push(make(name, allowance(size)).counted(count, 0));
    }
    assumed
}

fn blocks(input: &Input, on: &impl Fn(i64) -> bool, edition: Electrical, shares: &mut Vec<Share>) {
    let each = edition.or_newest(rule::terminal_block);
    for block in input.blocks.iter().filter(|block| on(block.side)) {
        let name = say!(s::SHARE_BLOCKS, block.count, block.size.label());
        let short = (&s::SHORT_BLOCKS).into();
        let share = Share::new(Kind::Blocks, name, short, allowance(block.size), &rule::BLOCKS);
        shares.push(share.counted(each.unwrap_or(0) * block.count, 0));
    }
}
