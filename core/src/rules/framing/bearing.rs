//! How hard a beam or a post may press across the grain, and how much of it rests at the least.

use crate::measure::unit::PSI;
use crate::measure::{Length, Measure};
use crate::{choice, words};

words! {
    SAYS = "Wood pressed across its grain, psi: spruce-pine-fir 425, hem-fir 405, Douglas fir-larch 625, southern pine 565. No factor for how long a load stays. The weaker of beam and plate counts.", es "Madera apretada a través de la veta, psi: spruce-pine-fir 425, hem-fir 405, Douglas fir-larch 625, southern pine 565. Sin factor por lo que dura la carga. Cuenta lo más débil entre viga y solera.";
    SEEN = "read in a trade magazine's table and in timber design notes", es "leído en la tabla de una revista del oficio y en notas de diseño en madera";
    LEAST_SAYS = "Joists and beams rest 1-1/2 in or more on wood or metal, 3 in or more on masonry or concrete.", es "Viguetas y vigas apoyan 1-1/2 in o más en madera o metal, 3 in o más en mampostería o concreto.";
    LEAST_SEEN = "both lengths read in a trade magazine", es "los dos largos se leyeron en una revista del oficio";
    NOT_ASKED = "Not asked", es "No se pide";
    SPF = "Spruce-pine-fir", es "Spruce-pine-fir";
    HF = "Hem-fir", es "Hem-fir";
    DF_L = "Douglas fir-larch", es "Douglas fir-larch";
    SP = "Southern pine", es "Southern pine";
    MASONRY = "Masonry or concrete", es "Mampostería o concreto";
}

source!(
    /// What wood is published to stand.
    ACROSS_GRAIN, "fc-perpendicular", "NDS Supplement, compression perpendicular to grain" es "NDS Supplement, compresión perpendicular a la fibra", SAYS, SEEN, Read
);

source!(
    /// How much rests.
    LEAST_BEARING, "irc-r502.6", "IRC R502.6, R802.6, bearing" es "IRC R502.6, R802.6, apoyo", LEAST_SAYS, LEAST_SEEN, Read
);

choice! {
    /// What it rests on.
    pub enum On {
        /// It isn't asked.
        NotAsked = "not-asked", NOT_ASKED;
        /// Spruce-pine-fir.
        SprucePineFir = "spf", SPF;
        /// Hem-fir.
        HemFir = "hf", HF;
        /// Douglas fir-larch.
        DouglasFirLarch = "df-l", DF_L;
        /// Southern pine.
        SouthernPine = "sp", SP;
        /// Masonry or concrete.
        Masonry = "masonry", MASONRY;
    }
}

impl On {
    /// What is published of it across the grain; none of what isn't wood.
    pub const fn published(self) -> Option<Measure> {
        let psi = match self {
            Self::SprucePineFir => 425,
            Self::HemFir => 405,
            Self::DouglasFirLarch => 625,
            Self::SouthernPine => 565,
            Self::NotAsked | Self::Masonry => return None,
        };
        Some(Measure::whole(&PSI, psi))
    }

    /// How much of a beam rests on it at the least.
    pub const fn least(self) -> Length {
        match self {
            Self::Masonry => Length::inches(3, 1),
            _ => Length::inches(3, 2),
        }
    }
}
