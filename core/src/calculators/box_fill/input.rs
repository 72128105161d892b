//! What is put in: the box, what deepens or splits it, and all that goes into it.

use super::choices::{
    AddKind, BarrierKind, CableGround, Clamps, CutInto, DeviceKind, DeviceSize, How, SupportKind,
};
use super::enclosure::{Enclosure, Ring};
use super::sizes::are_mixed;
use super::words as w;
use crate::fields::{Form, Item, Kind, Preset, Row, Span, When, row};
use crate::form;
use crate::measure::{Length, Volume};
use crate::rules::electrical::box_fill::LARGEST_BOX;
use crate::rules::electrical::box_setback::Surface;
use crate::rules::electrical::cable_sizes::{self, Sheathed};
use crate::rules::electrical::conductor_volume::Awg;
use crate::wire::Node;
use crate::words::Phrase;

const fn volume(least: Volume, why: &'static Phrase, common: &'static [Volume]) -> Kind {
    Kind::Volume(Span { least, most: LARGEST_BOX, why, common, optional: false })
}

/// A length that may be left empty. Those that only depth, setback or free conductor is checked by
/// stand aside; where the sheath ends doesn't, for how a loop counts hangs on it too.
const fn length(most: Length, why: &'static Phrase) -> Kind {
    Kind::Length(Span { least: Length::ZERO, most, why, common: &[], optional: true })
}

const fn count(most: i64, why: &'static Phrase) -> Kind {
    Kind::Count { least: 1, most, why }
}

const COUNT: Row = row(&w::COUNT, &w::NOTHING, count(30, &w::WHY_COUNT));
const SIDE: Row = row(&w::SIDE, &w::SIDE_HINT, count(4, &w::WHY_SIDE)).when(When::Any("barriers"));
/// The smallest volume that anything is marked with.
const LEAST_MARK: Volume = Volume::hundredths(10);

/// Volumes stamped on common nonmetallic boxes. Common practice; always read the stamp.
pub(super) const STAMPS: &[Volume] = &[
    Volume::hundredths(1800),
    Volume::hundredths(2030),
    Volume::hundredths(2250),
    Volume::hundredths(2800),
    Volume::hundredths(3200),
    Volume::hundredths(3400),
    Volume::hundredths(4400),
    Volume::hundredths(5000),
];

form! {
    /// Something that adds volume.
    pub struct Add {
        /// How its volume is known.
        kind: AddKind, row(&w::ADD_KIND, &w::NOTHING, Kind::Choice(AddKind::PICKS));
        /// The volume marked on it.
        volume: Volume, row(&w::ADD_VOLUME, &w::ADD_VOLUME_HINT, volume(LEAST_MARK, &w::WHY_MARKED, &[]))
            .when(When::Is("kind", &["marked"]));
        /// The table's size.
        ring: Ring, row(&w::ADD_RING, &w::NOTHING, Kind::Choice(&Ring::PICKS))
            .when(When::Is("kind", &["extension"]));
    }
}

form! {
    /// A barrier between two gangs.
    pub struct Barrier {
        /// What it is of.
        kind: BarrierKind, row(&w::BARRIER_KIND, &w::NOTHING, Kind::Choice(BarrierKind::PICKS));
        /// The volume marked on it.
        volume: Volume, row(&w::BARRIER_VOLUME, &w::NOTHING, volume(LEAST_MARK, &w::WHY_MARKED, &[]))
            .when(When::Is("kind", &["marked"]));
        /// The gang that it stands behind, from the left.
        after: i64 = 1, row(&w::BARRIER_AFTER, &w::BARRIER_AFTER_HINT, count(5, &w::WHY_GANGS));
    }
}

form! {
    /// Cables of one kind.
    pub struct Cable {
        /// The kind.
        cable: Sheathed, row(&w::CABLE, &w::NOTHING, Kind::Choice(Sheathed::PICKS));
        /// How many come in.
        count: i64 = 1, COUNT;
        /// Its ground.
        ground: CableGround, row(&w::GROUND, &w::GROUND_HINT, Kind::Choice(CableGround::PICKS));
        /// Which side of the barriers it comes in on.
        side: i64 = 1, SIDE;
    }
}

form! {
    /// Conductors by hand.
    pub struct Wire {
        /// Their size.
        size: Awg, row(&w::SIZE, &w::NOTHING, Kind::Choice(Awg::PICKS));
        /// How many.
        count: i64 = 1, COUNT;
        /// What they do.
        how: How, row(&w::HOW, &w::NOTHING, Kind::Choice(How::PICKS));
        /// The length of the loop, from where it comes out to where it goes in.
        loop_length: Option<Length>, row(&w::LOOP, &w::LOOP_HINT, length(Length::inches(120, 1), &w::WHY_LOOP))
            .when(When::Is("how", &["looped"]));
        /// Which side they are on.
        side: i64 = 1, SIDE;
    }
}

form! {
    /// A support fitting.
    pub struct Support {
        /// Which.
        kind: SupportKind, row(&w::SUPPORT_KIND, &w::NOTHING, Kind::Choice(SupportKind::PICKS));
        /// Which side it is on.
        side: i64 = 1, SIDE;
    }
}

form! {
    /// Devices of one kind, each on a yoke.
    pub struct Device {
        /// What they are.
        kind: DeviceKind, row(&w::DEVICE_KIND, &w::NOTHING, Kind::Choice(DeviceKind::PICKS));
        /// How many.
        count: i64 = 1, COUNT;
        /// The largest wire on it.
        size: DeviceSize, row(&w::DEVICE_SIZE, &w::DEVICE_SIZE_HINT, Kind::Choice(DeviceSize::PICKS))
            .foremost(has_mixed_sizes);
        /// How many gangs each is wide.
        gangs: i64 = 1, row(&w::DEVICE_GANGS, &w::DEVICE_GANGS_HINT, count(4, &w::WHY_GANGS));
        /// How far it reaches behind the plane it is mounted on.
        behind: Option<Length>, row(&w::BEHIND, &w::BEHIND_HINT, length(Length::inches(6, 1), &w::WHY_BEHIND))
            .aside();
        /// Which side it is on.
        side: i64 = 1, SIDE;
    }
}

form! {
    /// Terminal block assemblies.
    pub struct Block {
        /// How many.
        count: i64 = 1, COUNT;
        /// The largest conductor ended on each.
        size: Awg, row(&w::BLOCK_SIZE, &w::NOTHING, Kind::Choice(Awg::PICKS));
        /// Which side they are on.
        side: i64 = 1, SIDE;
    }
}

form! {
    /// Free conductor at the box.
    pub struct Free {
        /// From where the sheath ends to the opening.
        emerges: Option<Length>, row(&w::EMERGES, &w::EMERGES_HINT, length(Length::inches(12, 1), &w::WHY_EMERGES));
        /// What is left free now.
        left: Option<Length>, row(&w::LEFT, &w::LEFT_HINT, length(Length::inches(120, 1), &w::WHY_LOOP))
            .aside();
    }
}

form! {
    /// The wall in front of the box.
    pub struct Finish {
        /// How far the box stands out past the framing.
        proud: Option<Length>, row(&w::PROUD, &w::PROUD_HINT, length(Length::inches(6, 1), &w::WHY_FINISH))
            .aside();
        /// All that goes over the framing, old and new.
        build: Option<Length>, row(&w::BUILD, &w::BUILD_HINT, length(Length::inches(6, 1), &w::WHY_FINISH))
            .aside();
        /// What the surface is of.
        surface: Surface, row(&w::SURFACE, &w::NOTHING, Kind::Choice(Surface::PICKS));
    }
}

/// Whether conductors of several sizes come in, so that the wire on each device matters.
fn has_mixed_sizes(root: &Node) -> bool {
    let leaf = |node: &Node, key| node.get(key).and_then(Node::leaf).unwrap_or_default();
    let cables = root.items("cables").iter().filter_map(|cable| {
        let key = leaf(cable, "cable");
        let kind = Sheathed::ALL.iter().find(|kind| kind.key() == key)?;
        Some((kind.conductors().0, true))
    });
    let wires = root.items("wires").iter().filter_map(|wire| {
        let (size, how) = (leaf(wire, "size"), leaf(wire, "how"));
        let size = Awg::ALL.iter().find(|it| it.key() == size)?;
        let how = How::ALL.iter().find(|it| it.key() == how)?;
        Some((*size, how.is_for_devices()))
    });
    are_mixed(cables.chain(wires))
}

macro_rules! item {
    ($name:ident, $form:ident, $label:expr, $most:literal, [$($preset:expr, $sets:expr;)*]) => {
        static $name: Item = Item {
            name: &$label,
            rows: $form::ROWS,
            most: $most,
            blank: || $form::blank().write_parts(),
            presets: &[$(Preset { label: &$preset, sets: $sets }),*],
        };
    };
}

item!(ADDS, Add, w::ADD, 4, [
    w::ADD_MARKED, &[("kind", "marked"), ("volume", "")];
    w::ADD_EXTENSION, &[("kind", "extension")];
]);
item!(BARRIERS, Barrier, w::BARRIER, 3, [
    w::BARRIER_METAL, &[("kind", "metal")];
    w::BARRIER_PLASTIC, &[("kind", "plastic")];
]);
item!(CABLES, Cable, w::CABLE, 20, [
    cable_sizes::C14_2, &[("cable", "14-2")];
    cable_sizes::C14_3, &[("cable", "14-3")];
    cable_sizes::C12_2, &[("cable", "12-2")];
    cable_sizes::C12_3, &[("cable", "12-3")];
    cable_sizes::C10_2, &[("cable", "10-2")];
    cable_sizes::C10_3, &[("cable", "10-3")];
    cable_sizes::C14_4, &[("cable", "14-2-2")];
    cable_sizes::C12_4, &[("cable", "12-2-2")];
    cable_sizes::C8_3, &[("cable", "8-3")];
    cable_sizes::C6_3, &[("cable", "6-3")];
    cable_sizes::C8_2, &[("cable", "8-2")];
    cable_sizes::C6_2, &[("cable", "6-2")];
]);
item!(WIRES, Wire, w::WIRE, 20, [
    w::HOW_ENDED, &[("how", "ended")];
    w::HOW_THROUGH, &[("how", "through")];
    w::HOW_LOOPED, &[("how", "looped")];
    w::HOW_INSIDE, &[("how", "inside")];
    w::HOW_GROUND, &[("how", "ground")];
    w::HOW_CANOPY, &[("how", "canopy"), ("size", "18"), ("count", "2")];
    w::HOW_CANOPY_GROUND, &[("how", "canopy-ground"), ("size", "18")];
]);
item!(SUPPORTS, Support, w::SUPPORT, 4, [
    w::STUD, &[("kind", "stud")];
    w::HICKEY, &[("kind", "hickey")];
]);
item!(DEVICES, Device, w::DEVICE, 12, [
    w::SWITCH, &[("kind", "switch")];
    w::THREE_WAY, &[("kind", "3-way")];
    w::RECEPTACLE, &[("kind", "receptacle")];
    w::GFCI, &[("kind", "gfci")];
    w::DIMMER, &[("kind", "dimmer")];
    w::HEAVY, &[("kind", "range"), ("gangs", "2")];
]);
item!(BLOCKS, Block, w::BLOCK, 4, [w::BLOCK, &[];]);

form! {
    /// A box and what goes into it.
    pub struct Input {
        /// A marked box, or a row of the metal box table.
        enclosure: Enclosure, row(&w::ENCLOSURE, &w::ENCLOSURE_HINT, Kind::Choice(&Enclosure::PICKS));
        /// The volume marked in the box, of all its gangs.
        marked: Volume, row(&w::MARKED, &w::MARKED_HINT, volume(Volume::hundredths(100), &w::WHY_BOX, STAMPS))
            .when(When::Is("enclosure", &["marked"]));
        /// Gangs side by side.
        gangs: i64 = 1, row(&w::GANGS, &w::GANGS_HINT, count(6, &w::WHY_GANGS));
        /// Cables that come in.
        cables: Vec<Cable>, row(&w::CABLES, &w::CABLES_HINT, Kind::List(&CABLES));
        /// Devices on their yokes.
        devices: Vec<Device>, row(&w::DEVICES, &w::NOTHING, Kind::List(&DEVICES));
        /// Where the cables are clamped.
        clamps: Clamps, row(&w::CLAMPS, &w::CLAMPS_HINT, Kind::Choice(Clamps::PICKS));
        /// What is cut for it.
        cut: CutInto, row(&w::CUT, &w::CUT_HINT, Kind::Choice(CutInto::PICKS));
        /// Conductors by hand.
        wires: Vec<Wire>, row(&w::WIRES, &w::WIRES_HINT, Kind::List(&WIRES));
        /// Rings, covers and extensions.
        adds: Vec<Add>, row(&w::ADDS, &w::ADDS_HINT, Kind::List(&ADDS));
        /// Support fittings.
        supports: Vec<Support>, row(&w::SUPPORTS, &w::SUPPORTS_HINT, Kind::List(&SUPPORTS));
        /// Terminal block assemblies.
        blocks: Vec<Block>, row(&w::BLOCKS, &w::BLOCKS_HINT, Kind::List(&BLOCKS));
        /// Barriers that split the box.
        barriers: Vec<Barrier>, row(&w::BARRIERS, &w::BARRIERS_HINT, Kind::List(&BARRIERS));
        /// Inside depth of a marked box.
        depth: Option<Length>, row(&w::DEPTH, &w::DEPTH_HINT, length(Length::inches(12, 1), &w::WHY_DEPTH))
            .aside()
            .when(When::Is("enclosure", &["marked"]));
        /// Free conductor.
        free: Free = Free::blank(), row(&w::FREE, &w::FREE_HINT, Kind::Group(Free::ROWS));
        /// The wall in front of it.
        finish: Finish = Finish::blank(), row(&w::FINISH, &w::FINISH_HINT, Kind::Group(Finish::ROWS));
    }
    sample {
        marked: Volume::hundredths(1800),
        cables: vec![Cable { count: 2, ..Cable::blank() }],
        devices: vec![Device::blank()],
    }
}
