//! The choices of a raised ceiling: its shape, what is known and wanted, how its walls are made.

use super::words as w;
use crate::choice;
use crate::rules::hazards::Material;

choice! {
    /// The new ceiling.
    pub enum Shape {
        /// Level, wall to wall.
        Flat = "flat", w::FLAT;
        /// A border stays; within it the ceiling goes up.
        Tray = "tray", w::TRAY;
        /// Two slopes and a ridge.
        Gable = "gable", w::GABLE;
        /// One slope.
        Shed = "shed", w::SHED;
    }
}

choice! {
    /// What was measured of the old framing.
    pub enum Known {
        /// A stud.
        Stud = "stud", w::BY_STUD;
        /// From the subfloor to the joists.
        Framing = "framing", w::BY_FRAMING;
    }
}

choice! {
    /// What is wanted.
    pub enum By {
        /// A height.
        Height = "height", w::BY_HEIGHT;
        /// So much more.
        Raise = "raise", w::BY_RAISE;
    }
}

choice! {
    /// How the walls get up there.
    pub enum How {
        /// New studs, floor to plates.
        Full = "full", w::FULL;
        /// A short wall on the old plates.
        Stacked = "stacked", w::STACKED;
    }
}

choice! {
    /// What the raised walls do.
    pub enum Carries {
        /// Nobody has said.
        Unknown = "unknown", w::NOT_KNOWN;
        /// Outside, or they carry something.
        Bearing = "bearing", w::BEARING;
        /// They carry nothing.
        Nothing = "nothing", w::CARRIES_NOTHING;
    }
}

choice! {
    /// What the room is for.
    pub enum Room {
        /// To live in, and halls.
        LivedIn = "lived-in", w::LIVED_IN;
        /// Bath, toilet room or laundry.
        Bath = "bath", w::BATH;
    }
}

choice! {
    /// Which way the ridge, or the high wall, runs.
    pub enum Ridge {
        /// Along the length.
        Long = "long", w::RIDGE_LONG;
        /// Along the width.
        Wide = "wide", w::RIDGE_WIDE;
    }
}

choice! {
    /// What comes down.
    pub enum OldCeiling {
        /// Nobody has said.
        NotSaid = "not-said", w::NOT_SAID;
        /// Texture, on whatever.
        Texture = "texture", w::TEXTURE;
        /// Plaster.
        Plaster = "plaster", w::PLASTER;
        /// Board with its compound.
        Board = "board", w::BOARD;
        /// Nothing: the joists are bare.
        Bare = "bare", w::BARE;
    }
}

impl OldCeiling {
    /// The old material that is torn out; none where nothing is.
    pub fn material(self) -> Option<Material> {
        Some(match self {
            Self::NotSaid => Material::NotSaid,
            Self::Texture => Material::Texture,
            Self::Plaster => Material::Plaster,
            Self::Board => Material::Board,
            Self::Bare => return None,
        })
    }
}
