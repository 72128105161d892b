//! Skim coats: how thick they go on, and what is lost.

use crate::measure::unit::MIL;
use crate::measure::{Length, Measure};
use crate::{choice, words};

words! {
    SAYS = "Two coats, 1/32 to 1/16 in wet, level a scraped ceiling; a level 5 skim is wiped to 0.010 to 0.016 in. Some 10 percent is lost. Prime torn or fuzzed paper first.", es "Dos manos, 1/32 a 1/16 in mojadas, nivelan un techo raspado; un skim de nivel 5 se limpia a 0.010 a 0.016 in. Se pierde un 10 por ciento. Selle primero el papel roto o peludo.";
    SEEN = "common practice; level 5 itself asks for no thickness", es "costumbre del oficio; el nivel 5 por sí mismo no pide grueso";
    VOLUME_SAYS = "A coat takes area × wet thickness: 623.38 gal for 1000 sq ft an inch thick. Blade passes: (width − overlap) ÷ (blade − overlap), rounded up.", es "Una mano lleva área × grueso mojado: 623.38 gal por 1000 sq ft de una pulgada de grueso. Pasadas de espátula: (ancho − traslape) ÷ (espátula − traslape), redondeado hacia arriba.";
    VOLUME_SEEN = "worked out: a gallon is 231 in³ exactly", es "calculado: un galón es 231 in³ exactas";
    LEVEL_5 = "Level 5, over finished joints", es "Nivel 5, sobre juntas acabadas";
    FLAT = "Scraped, fairly flat: 1/32 in", es "Raspado, bastante parejo: 1/32 in";
    UNEVEN = "Scraped, uneven: 3/64 in", es "Raspado, disparejo: 3/64 in";
    ROUGH = "Rough: 1/16 in", es "Rugoso: 1/16 in";
    OWN = "Own thickness", es "Grueso propio";
}

source!(
    /// How thick.
    SKIM, "skim-thickness", "Skim coats, habit" es "Capas de skim, costumbre", SAYS, SEEN, CommonPractice
);
source!(
    /// What that comes to.
    GEOMETRY, "skim-volume", "Area times thickness" es "Área por grueso", VOLUME_SAYS, VOLUME_SEEN, Derived
);

choice! {
    /// What is skimmed.
    pub enum Ground {
        /// Scraped well.
        Flat = "flat", FLAT;
        /// With low and high places.
        Uneven = "uneven", UNEVEN;
        /// Gouged, or texture feathered over.
        Rough = "rough", ROUGH;
        /// Board with finished joints.
        Level5 = "level-5", LEVEL_5;
        /// The person's own.
        Own = "own", OWN;
    }
}

/// In thousandths of a mil.
const fn mil(thousandths: i64) -> Measure {
    Measure::new(&MIL, 1_000 * thousandths)
}

impl Ground {
    /// A coat, wet: low, likely, high; none of an own thickness. Source: [`SKIM`].
    pub const fn thickness(self) -> Option<[Measure; 3]> {
        let (least, most) = (mil(31_250), mil(62_500));
        Some(match self {
            Self::Level5 => LEVEL_5_SKIM,
            Self::Flat => [least, least, most],
            Self::Uneven => [least, mil(46_875), most],
            Self::Rough => [least, most, most],
            Self::Own => return None,
        })
    }
}

/// A level 5 skim, wet. Source: [`SKIM`].
pub const LEVEL_5_SKIM: [Measure; 3] = [mil(10_000), mil(13_000), mil(16_000)];

/// Blades that are sold, for one tap: common practice.
pub const BLADES: &[Length] =
    &[Length::inches(10, 1), Length::inches(12, 1), Length::inches(14, 1), Length::inches(24, 1)];
