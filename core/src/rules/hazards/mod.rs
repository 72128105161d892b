//! What old material may set loose: asbestos, lead and silica. Federal limits only; a state, a
//! county or a city may be stricter and usually is. How asbestos work is done is not here and
//! never will be: that is for those who are trained and licensed for it.

pub mod asbestos;
pub mod lead;
pub mod local;
pub mod silica;

use crate::choice;
use crate::measure::Area;
use crate::words;

words! {
    NOT_SAID = "Not said", es "No se dijo";
    TEXTURE = "Sprayed or troweled ceiling texture", es "Textura de techo rociada o con llana";
    PLASTER = "Plaster", es "Yeso";
    BOARD = "Gypsum board with joint compound", es "Tablaroca con pasta";
    WRAP = "Duct or pipe insulation, wrap or tape", es "Aislante, envoltura o cinta de ducto o tubería";
    VERMICULITE = "Loose vermiculite", es "Vermiculita suelta";
    FLOOR = "Floor tile or sheet, and its mastic", es "Loseta o rollo de piso, y su pegamento";
    OTHER = "Something else", es "Otra cosa";
    CUT = "Cut, drill or screw through", es "Cortar, taladrar o atornillar a través";
    STRIP = "Scrape or strip", es "Raspar o quitar";
    SAND = "Sand", es "Lijar";
    TEAR_OUT = "Tear out", es "Demoler";
    COVER = "Cover over", es "Cubrir";
    /// Common practice.
    HOUSE = "Lived-in house: heat and air off, registers taped, one way in, nothing wet carried out.", es "Casa habitada: calefacción y clima apagados, rejillas con cinta, una sola entrada, no se saca nada mojado.";
}

choice! {
    /// An old material.
    pub enum Material {
        /// Nobody has said.
        NotSaid = "not-said", NOT_SAID;
        /// Surfacing on a ceiling.
        Texture = "texture", TEXTURE;
        /// Plaster on lath or board, troweled.
        Plaster = "plaster", PLASTER;
        /// The whole board system, its compound included.
        Board = "board", BOARD;
        /// Thermal insulation on ducts, pipes and boilers, and its tape.
        Wrap = "wrap", WRAP;
        /// Loose fill of vermiculite.
        Vermiculite = "vermiculite", VERMICULITE;
        /// Flooring with what holds it down.
        Floor = "floor", FLOOR;
        /// Any other.
        Other = "other", OTHER;
    }
}

choice! {
    /// What is done to it.
    pub enum Deed {
        /// Nobody has said.
        NotSaid = "not-said", NOT_SAID;
        /// Holes, slots and screws.
        Cut = "cut", CUT;
        /// Scraping or stripping its surface off.
        Strip = "strip", STRIP;
        /// Sanding.
        Sand = "sand", SAND;
        /// Taking it out.
        TearOut = "tear-out", TEAR_OUT;
        /// Going over it. Boarding over still drives screws through it.
        Cover = "cover", COVER;
    }
}

impl Deed {
    /// Whether who does this also does `other`: tearing out cuts, and boarding over drives screws
    /// through. Common practice; sanding and scraping stand for themselves.
    pub fn takes_in(self, other: Self) -> bool {
        match other {
            Self::NotSaid => false,
            Self::Cut => matches!(self, Self::Cut | Self::TearOut),
            Self::Cover => matches!(self, Self::Cover | Self::Cut | Self::TearOut),
            _ => self == other,
        }
    }
}

/// What a piece of work does to an old surface.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Disturbs {
    /// What the surface is of.
    pub material: Material,
    /// What is done to it.
    pub deed: Deed,
    /// How much of it; where it isn't worked out, a part of what is there.
    pub area: Option<Area>,
    /// How much painted surface of the room that breaks, where it is known.
    pub painted: Option<Area>,
}
