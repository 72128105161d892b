//! The choices that a box's fields offer.

use super::words as w;
use crate::choice;
use crate::rules::electrical::conductor_volume::Awg;
use crate::rules::hazards::Material;

choice! {
    /// What is put on or in the opening.
    pub enum AddKind {
        /// A plaster ring, cover or extension with its volume marked on it.
        Marked = "marked", w::ADD_MARKED;
        /// An extension ring of a size that the table lists.
        Extension = "extension", w::ADD_EXTENSION;
    }
}

choice! {
    /// What a barrier is of.
    pub enum BarrierKind {
        /// Metal, no volume marked.
        Metal = "metal", w::BARRIER_METAL;
        /// Anything else, no volume marked.
        Other = "plastic", w::BARRIER_PLASTIC;
        /// Its volume is marked.
        Marked = "marked", w::BARRIER_MARKED;
    }
}

choice! {
    /// The ground that a cable brings.
    pub enum CableGround {
        /// As today's cable has it: of the size of its conductors up to 10 AWG, and of 10 AWG in
        /// cable of 8 or 6 AWG.
        Same = "same", w::GROUND_SAME;
        /// A 16 AWG one, as in some old cable.
        Small = "small", w::GROUND_SMALL;
        /// None, as in older cable.
        None = "none", w::GROUND_NONE;
    }
}

choice! {
    /// What a conductor does in the box.
    pub enum How {
        /// Comes in and ends or is spliced.
        Ended = "ended", w::HOW_ENDED;
        /// Runs straight through, uncut.
        Through = "through", w::HOW_THROUGH;
        /// Comes in, loops and leaves, uncut.
        Looped = "looped", w::HOW_LOOPED;
        /// Never leaves the box: a pigtail or jumper.
        Inside = "inside", w::HOW_INSIDE;
        /// An equipment ground or bonding jumper that comes in.
        Ground = "ground", w::HOW_GROUND;
        /// An isolated ground that comes in.
        Isolated = "isolated", w::HOW_ISOLATED;
        /// A light fixture's wire out of its canopy.
        Canopy = "canopy", w::HOW_CANOPY;
        /// A light fixture's ground out of its canopy.
        CanopyGround = "canopy-ground", w::HOW_CANOPY_GROUND;
    }
}

impl How {
    /// Whether a device may be connected to it: not to a ground or to what a canopy brings.
    pub const fn is_for_devices(self) -> bool {
        matches!(self, Self::Ended | Self::Through | Self::Looped | Self::Inside)
    }
}

choice! {
    /// Where the cables are clamped.
    pub enum Clamps {
        /// No clamps, or connectors whose clamp is outside the box.
        Outside = "outside", w::CLAMPS_OUTSIDE;
        /// One or more inside, built in or added.
        Inside = "inside", w::CLAMPS_INSIDE;
    }
}

choice! {
    /// A fitting that carries a light fixture.
    pub enum SupportKind {
        /// A fixture stud.
        Stud = "stud", w::STUD;
        /// A hickey.
        Hickey = "hickey", w::HICKEY;
    }
}

choice! {
    /// What sits on the yoke. It only names it: all count alike.
    pub enum DeviceKind {
        /// A switch.
        Switch = "switch", w::SWITCH;
        /// A switch at one of two or more places.
        ThreeWay = "3-way", w::THREE_WAY;
        /// A receptacle.
        Receptacle = "receptacle", w::RECEPTACLE;
        /// A ground-fault receptacle.
        Gfci = "gfci", w::GFCI;
        /// A dimmer or a control with a deep body.
        Dimmer = "dimmer", w::DIMMER;
        /// A range or dryer receptacle.
        Heavy = "range", w::HEAVY;
    }
}

choice! {
    /// The largest wire that is connected to a device.
    pub enum DeviceSize {
        /// Not told: the largest in the box stands for it.
        Largest = "largest", w::SIZE_LARGEST;
        /// 14 AWG.
        Awg14 = "14", crate::rules::electrical::conductor_volume::AWG14;
        /// 12 AWG.
        Awg12 = "12", crate::rules::electrical::conductor_volume::AWG12;
        /// 10 AWG.
        Awg10 = "10", crate::rules::electrical::conductor_volume::AWG10;
        /// 8 AWG.
        Awg8 = "8", crate::rules::electrical::conductor_volume::AWG8;
        /// 6 AWG.
        Awg6 = "6", crate::rules::electrical::conductor_volume::AWG6;
    }
}

impl DeviceSize {
    /// The size, where it is told.
    pub const fn awg(self) -> Option<Awg> {
        match self {
            Self::Largest => None,
            Self::Awg14 => Some(Awg::Awg14),
            Self::Awg12 => Some(Awg::Awg12),
            Self::Awg10 => Some(Awg::Awg10),
            Self::Awg8 => Some(Awg::Awg8),
            Self::Awg6 => Some(Awg::Awg6),
        }
    }
}

choice! {
    /// What is cut for the box.
    pub enum CutInto {
        /// Nothing old: open framing, or board that is new.
        Open = "open", w::CUT_OPEN;
        /// Old plaster.
        Plaster = "plaster", w::CUT_PLASTER;
        /// Old board with its joint compound.
        Board = "board", w::CUT_BOARD;
        /// Any other old surface.
        Other = "other", w::CUT_OTHER;
    }
}

impl CutInto {
    /// The old material that is cut; none where nothing old is.
    pub fn material(self) -> Option<Material> {
        match self {
            Self::Open => None,
            Self::Plaster => Some(Material::Plaster),
            Self::Board => Some(Material::Board),
            Self::Other => Some(Material::Other),
        }
    }
}
