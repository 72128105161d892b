//! What is under new compound or paint, where it is sanded, scraped or screwed through.

use crate::rules::hazards::Material;
use crate::{choice, words};

words! {
    NOT_SAID = "Not said";
    NEW = "New, this crew's own";
    BOARD = "Old board, its joints and paint";
    TEXTURE = "Old texture, or what is left of it";
    PLASTER = "Old plaster";
    OTHER = "Something else that is old";
}

choice! {
    /// A surface that is worked over.
    pub enum OldSurface {
        /// Nobody has said.
        NotSaid = "not-said", NOT_SAID;
        /// Nothing old in it.
        New = "new", NEW;
        /// Old board with its joint compound.
        Board = "board", BOARD;
        /// Old ceiling texture.
        Texture = "texture", TEXTURE;
        /// Old plaster.
        Plaster = "plaster", PLASTER;
        /// Any other old surface.
        Other = "other", OTHER;
    }
}

impl OldSurface {
    /// The old material that is disturbed; none where nothing old is.
    pub const fn material(self) -> Option<Material> {
        Some(match self {
            Self::NotSaid => Material::NotSaid,
            Self::New => return None,
            Self::Board => Material::Board,
            Self::Texture => Material::Texture,
            Self::Plaster => Material::Plaster,
            Self::Other => Material::Other,
        })
    }
}
