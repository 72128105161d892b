//! What is under new compound or paint, where it is sanded, scraped or screwed through.

use crate::rules::hazards::Material;
use crate::{choice, words};

words! {
    NOT_SAID = "Not said", es "No se dijo";
    NEW = "New, this crew's own", es "Nueva, de esta cuadrilla";
    BOARD = "Old board, its joints and paint", es "Tablaroca vieja, sus juntas y pintura";
    TEXTURE = "Old texture, or what is left of it", es "Textura vieja, o lo que queda de ella";
    PLASTER = "Old plaster", es "Yeso viejo";
    OTHER = "Something else that is old", es "Otra cosa vieja";
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
