//! The choices that the fields offer.

use super::words as w;
use crate::choice;
use crate::measure::Length;
use crate::rules::framing::lumber::THICK;
use crate::rules::hazards::Material;

choice! {
    /// What is cut.
    pub enum Member {
        /// Two top plates, one on the other.
        PlateDouble = "top-plate-double", w::PLATE_DOUBLE;
        /// A top plate by itself.
        PlateSingle = "top-plate-single", w::PLATE_SINGLE;
        /// The plate that a wall stands on.
        Sole = "sole-plate", w::SOLE;
        /// A stud.
        Stud = "stud", w::STUD;
        /// Two studs nailed together.
        StudDouble = "stud-double", w::STUD_DOUBLE;
        /// A sawn floor joist.
        Joist = "joist", w::JOIST;
        /// A sawn ceiling joist.
        CeilingJoist = "ceiling-joist", w::CEILING_JOIST;
        /// A sawn rafter.
        Rafter = "rafter", w::RAFTER;
        /// A header over an opening, or a beam, of whatever wood.
        Header = "header", w::HEADER;
        /// Any part of a truss.
        Truss = "truss", w::TRUSS;
        /// An I-joist.
        IJoist = "i-joist", w::I_JOIST;
        /// Laminated veneer or strand, or glued boards.
        Laminated = "laminated", w::LAMINATED;
    }
}

/// Which rule a member is under.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rule {
    /// Top plates; advice alone for a sole plate.
    Plate,
    /// Studs.
    Stud,
    /// Sawn joists and rafters.
    Joist,
    /// Its maker's or an engineer's paper.
    Paper,
}

impl Member {
    /// Which rule it is under.
    pub const fn rule(self) -> Rule {
        match self {
            Self::PlateDouble | Self::PlateSingle | Self::Sole => Rule::Plate,
            Self::Stud | Self::StudDouble => Rule::Stud,
            Self::Joist | Self::CeilingJoist | Self::Rafter => Rule::Joist,
            Self::Header | Self::Truss | Self::IJoist | Self::Laminated => Rule::Paper,
        }
    }

    /// Its thickness, each piece as it is sold today: only for the drawing.
    pub fn thickness(self) -> Length {
        match self {
            Self::PlateDouble | Self::StudDouble => THICK.times(2),
            _ => THICK,
        }
    }
}

/// Members of each rule, as the fields' conditions name them.
pub(super) const TOP_PLATES: &[&str] = &["top-plate-double", "top-plate-single"];
pub(super) const PLATES: &[&str] = &["top-plate-double", "top-plate-single", "sole-plate"];
pub(super) const IN_WALLS: &[&str] =
    &["top-plate-double", "top-plate-single", "sole-plate", "stud", "stud-double"];
pub(super) const JOISTS: &[&str] = &["joist", "ceiling-joist", "rafter"];
pub(super) const PAPER: &[&str] = &["header", "truss", "i-joist", "laminated"];

choice! {
    /// What the wall does.
    pub enum Wall {
        /// It is outside, or carries a floor, ceiling or roof.
        Bearing = "bearing", w::BEARING;
        /// It only divides rooms.
        Partition = "partition", w::PARTITION;
        /// It braces the house against wind or quakes.
        Braced = "braced", w::BRACED;
        /// It is rated against fire.
        Rated = "rated", w::RATED;
        /// Nobody knows yet.
        Unknown = "unknown", w::UNKNOWN;
    }
}

impl Wall {
    /// It is known, and under no paper of its own.
    pub const fn is_plain(self) -> bool {
        matches!(self, Self::Bearing | Self::Partition)
    }
}

choice! {
    /// What is made.
    pub enum Cut {
        /// A bored hole.
        Hole = "hole", w::HOLE;
        /// A notch in an edge.
        Notch = "notch", w::NOTCH;
    }
}

choice! {
    /// What goes through.
    pub enum Passes {
        /// Cable.
        Cable = "cable", w::CABLE;
        /// A pipe.
        Pipe = "pipe", w::PIPE;
        /// Conduit that takes no plate.
        Conduit = "conduit", w::CONDUIT;
        /// A duct.
        Duct = "duct", w::DUCT;
    }
}

choice! {
    /// Where along the span a notch is.
    pub enum Place {
        /// Nobody has said: no more than in an outer third, and asked about.
        NotSaid = "not-said", w::NOT_SAID;
        /// At a bearing.
        End = "end", w::END;
        /// In an outer third.
        Outer = "outer", w::OUTER;
        /// In the middle third.
        Middle = "middle", w::MIDDLE;
    }
}

choice! {
    /// What holds a cut plate together.
    pub enum Remedy {
        /// Nothing yet.
        None = "none", w::NO_TIE;
        /// A steel tie.
        Tie = "tie", w::TIE;
        /// Wood structural panel over that whole side of the wall.
        Sheathed = "sheathed", w::SHEATHED;
    }
}

choice! {
    /// What covers the framing where it is drilled.
    pub enum Cover {
        /// Nobody has said.
        NotSaid = "not-said", w::NOT_SAID;
        /// Nothing.
        Bare = "bare", w::BARE;
        /// Board that this crew has put up.
        New = "new", w::NEW_BOARD;
        /// Old plaster.
        Plaster = "plaster", w::OLD_PLASTER;
        /// Old board with its joint compound.
        Board = "board", w::OLD_BOARD;
        /// Old ceiling texture.
        Texture = "texture", w::OLD_TEXTURE;
        /// Any other old surface.
        Other = "other", w::OLD_OTHER;
    }
}

impl Cover {
    /// The old material that is drilled through; none where nothing old is.
    pub const fn material(self) -> Option<Material> {
        match self {
            Self::NotSaid => Some(Material::NotSaid),
            Self::Bare | Self::New => None,
            Self::Plaster => Some(Material::Plaster),
            Self::Board => Some(Material::Board),
            Self::Texture => Some(Material::Texture),
            Self::Other => Some(Material::Other),
        }
    }
}
