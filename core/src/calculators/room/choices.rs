//! The choices of a room: its shape, its corners, its walls by number, what is let into them and
//! how it is framed above.

use super::words as w;
use crate::choice;
use crate::measure::Length;
use crate::plan::{Axis, Corner};

choice! {
    /// How a room is put in.
    pub enum Shape {
        /// Two lengths.
        Rectangle = "rectangle", w::RECTANGLE;
        /// A rectangle less a notch in a corner.
        Ell = "l", w::ELL;
        /// A bar and a leg.
        Tee = "t", w::TEE;
        /// A rectangle less a gap in a side.
        U = "u", w::U;
        /// Wall by wall.
        Walk = "walk", w::WALK;
    }
}

choice! {
    /// The corner at a wall's end.
    pub enum End {
        /// It points away from the room.
        Inside = "inside", w::INSIDE;
        /// It points into the room.
        Outside = "outside", w::OUTSIDE;
    }
}

impl End {
    pub(super) const fn corner(self) -> Corner {
        match self {
            Self::Inside => Corner::Inside,
            Self::Outside => Corner::Outside,
        }
    }
}

choice! {
    /// A wall by its number.
    pub enum At {
        /// Not said.
        Unknown = "unknown", w::NOT_SAID;
        /// The first.
        W1 = "1", w::W1;
        /// And so on.
        W2 = "2", w::W2;
        /// And so on.
        W3 = "3", w::W3;
        /// And so on.
        W4 = "4", w::W4;
        /// And so on.
        W5 = "5", w::W5;
        /// And so on.
        W6 = "6", w::W6;
        /// And so on.
        W7 = "7", w::W7;
        /// And so on.
        W8 = "8", w::W8;
        /// And so on.
        W9 = "9", w::W9;
        /// And so on.
        W10 = "10", w::W10;
        /// And so on.
        W11 = "11", w::W11;
        /// And so on.
        W12 = "12", w::W12;
        /// And so on.
        W13 = "13", w::W13;
        /// And so on.
        W14 = "14", w::W14;
        /// And so on.
        W15 = "15", w::W15;
        /// The last that a walk takes.
        W16 = "16", w::W16;
    }
}

/// The most walls that are taken.
pub(super) const MOST_WALLS: usize = At::ALL.len() - 1;

impl At {
    /// The wall's place, from 0.
    pub const fn wall(self) -> Option<usize> {
        (self as usize).checked_sub(1)
    }
}

choice! {
    /// What a wall is open for.
    pub enum OpeningKind {
        /// A door.
        Door = "door", w::DOOR;
        /// A window.
        Window = "window", w::WINDOW;
        /// Neither.
        Cased = "cased", w::CASED;
    }
}

choice! {
    /// Which way the joists above run.
    pub enum Runs {
        /// Not known yet.
        Unknown = "unknown", w::NOT_KNOWN;
        /// As wall 1.
        Along = "along", w::ALONG;
        /// Square to wall 1.
        Across = "across", w::ACROSS;
    }
}

impl Runs {
    pub(super) const fn axis(self) -> Option<Axis> {
        match self {
            Self::Unknown => None,
            Self::Along => Some(Axis::Along),
            Self::Across => Some(Axis::Across),
        }
    }
}

choice! {
    /// How far apart the joists above are, centre to centre. Common practice.
    pub enum Spacing {
        /// 16 in.
        S16 = "16", w::S16;
        /// 24 in.
        S24 = "24", w::S24;
        /// 19.2 in, five to eight feet.
        S19 = "19.2", w::S19;
        /// 12 in.
        S12 = "12", w::S12;
    }
}

impl Spacing {
    /// Centre to centre.
    pub const fn length(self) -> Length {
        match self {
            Self::S16 => Length::inches(16, 1),
            Self::S24 => Length::inches(24, 1),
            Self::S19 => Length::inches(96, 5),
            Self::S12 => Length::inches(12, 1),
        }
    }
}
