//! How far the residential code lets a ceiling joist span: the formula behind its table, and the
//! values that go into it.

use super::lumber::Nominal;
use crate::measure::unit::{NUMBER, PSF, PSI};
use crate::measure::{Length, Measure};
use crate::sheet::Source;
use crate::{choice, words};

words! {
    SAYS = "A ceiling joist spans so far that its live load bends it down by 1/240 of the span at the most and all its load doesn't pass the wood's strength, to the nearest inch, 26 ft at the most.", es "Una vigueta de techo salva un claro tal que su carga viva la flexiona a lo más 1/240 del claro y toda su carga no pasa la resistencia de la madera, a la pulgada más cercana, 26 ft a lo más.";
    READ_SEEN = "this row was read, with the other 24 in rows with storage and all 19.2 in rows: 128 cells. The formula gives 127 of them to the inch, and one an inch off. 2021 and 2024 were not compared", es "esta fila se leyó, con las otras filas de 24 in con almacén y todas las de 19.2 in: 128 celdas. La fórmula da 127 de ellas a la pulgada, y una con una pulgada de diferencia. 2021 y 2024 no se compararon";
    DERIVED_SEEN = "this row is worked out by the formula, which gives 127 of 128 cells that were read to the inch. 2021 and 2024 were not compared", es "esta fila se calcula con la fórmula, que da a la pulgada 127 de las 128 celdas leídas. 2021 y 2024 no se compararon";
    VALUES_SAYS = "Strength and stiffness of graded framing lumber: No. 2 by species, times a factor for its size, and 1.15 for joists side by side.", es "Resistencia y rigidez de madera clasificada para estructura: No. 2 por especie, por un factor de su tamaño, y 1.15 para viguetas una junto a otra.";
    VALUES_SEEN = "from memory, and in part read in a library's data that quotes the NDS Supplement; spans worked out with them were compared with the printed ones", es "de memoria, y en parte leído en los datos de una biblioteca de software que cita el NDS Supplement; los claros calculados con ellos se compararon con los impresos";
    SCOPE_SAYS = "The table is for graded, whole, dressed joists that carry a ceiling and an attic with or without storage, and nothing else.", es "La tabla es para viguetas clasificadas, enteras y cepilladas que cargan un techo y un ático con o sin almacén, y nada más.";
    SCOPE_SEEN = "read in its title and loads", es "leído en su título y sus cargas";
    UNKNOWN = "Old, or no grade stamp", es "Vieja, o sin sello de grado";
    DF_L = "Douglas fir-larch No. 2", es "Douglas fir-larch No. 2";
    HF = "Hem-fir No. 2", es "Hem-fir No. 2";
    SPF = "Spruce-pine-fir No. 1 or 2", es "Spruce-pine-fir No. 1 o 2";
    SP = "Southern pine No. 2", es "Southern pine No. 2";
    TWO_BY_FOUR = "2x4", es "2x4";
    TWO_BY_SIX = "2x6", es "2x6";
    TWO_BY_EIGHT = "2x8", es "2x8";
    TWO_BY_TEN = "2x10", es "2x10";
    OTHER = "Another size", es "Otro tamaño";
    S12 = "12 in", es "12 in";
    S16 = "16 in", es "16 in";
    S19 = "19.2 in", es "19.2 in";
    S24 = "24 in", es "24 in";
    BARE = "No storage: live 10, dead 5", es "Sin almacén: viva 10, muerta 5";
    STORAGE = "Some storage: live 20, dead 10", es "Algo de almacén: viva 20, muerta 10";
}

source!(
    /// A row that was read.
    READ_ROW, "irc-2018-r802.5.1-read", "IRC 2018 Table R802.5.1, ceiling joists" es "IRC 2018, Tabla R802.5.1, viguetas de techo", SAYS, READ_SEEN,
    Read
);
source!(
    /// A row that was worked out.
    DERIVED_ROW, "irc-2018-r802.5.1-derived", "IRC 2018 Table R802.5.1, ceiling joists" es "IRC 2018, Tabla R802.5.1, viguetas de techo", SAYS,
    DERIVED_SEEN, Derived
);
source!(
    /// Strength and stiffness.
    VALUES, "nds-supplement-no-2", "NDS Supplement Tables 4A and 4B" es "NDS Supplement, Tablas 4A y 4B", VALUES_SAYS, VALUES_SEEN,
    Memory
);
source!(
    /// What the table is for.
    SCOPE, "irc-2018-r802.5.1-scope", "IRC 2018 Table R802.5.1, what it is for" es "IRC 2018, Tabla R802.5.1, para qué sirve", SCOPE_SAYS,
    SCOPE_SEEN, Read
);

/// The table stops here.
pub const LONGEST: Length = Length::inches(312, 1);
/// Live load bends it down by one of so many parts of its span.
pub const STIFFNESS: i64 = 240;
/// For joists side by side.
pub const SIDE_BY_SIDE: Measure = Measure::hundredths(&NUMBER, 115);

choice! {
    /// What a joist is sawn from.
    pub enum Species {
        /// No stamp tells.
        Unknown = "unknown", UNKNOWN;
        /// Douglas fir-larch.
        DouglasFirLarch = "df-l", DF_L;
        /// Hem-fir.
        HemFir = "hf", HF;
        /// Spruce-pine-fir.
        SprucePineFir = "spf", SPF;
        /// Southern pine.
        SouthernPine = "sp", SP;
    }
}

choice! {
    /// A size that the table has.
    pub enum Size {
        /// 2x6.
        TwoBySix = "2x6", TWO_BY_SIX;
        /// 2x4.
        TwoByFour = "2x4", TWO_BY_FOUR;
        /// 2x8.
        TwoByEight = "2x8", TWO_BY_EIGHT;
        /// 2x10.
        TwoByTen = "2x10", TWO_BY_TEN;
        /// It isn't in the table.
        Other = "other", OTHER;
    }
}

impl Size {
    /// Its dressed depth; none of another size.
    pub const fn depth(self) -> Option<Length> {
        match self {
            Self::TwoByFour => Nominal::TwoByFour.width(),
            Self::TwoBySix => Nominal::TwoBySix.width(),
            Self::TwoByEight => Nominal::TwoByEight.width(),
            Self::TwoByTen => Nominal::TwoByTen.width(),
            Self::Other => None,
        }
    }
}

choice! {
    /// How far apart joists stand in the table.
    pub enum Spacing {
        /// 16 in.
        S16 = "16", S16;
        /// 12 in.
        S12 = "12", S12;
        /// 19.2 in.
        S19 = "19.2", S19;
        /// 24 in.
        S24 = "24", S24;
    }
}

impl Spacing {
    /// Center to center.
    pub const fn length(self) -> Length {
        Length::inches(
            match self {
                Self::S12 => 120,
                Self::S16 => 160,
                Self::S19 => 192,
                Self::S24 => 240,
            },
            10,
        )
    }
}

choice! {
    /// What is above, as the table has it.
    pub enum Attic {
        /// Nobody stores anything.
        Bare = "bare", BARE;
        /// Some things are stored.
        Storage = "storage", STORAGE;
    }
}

impl Attic {
    /// Live load.
    pub const fn live(self) -> Measure {
        Measure::whole(
            &PSF,
            match self {
                Self::Bare => 10,
                Self::Storage => 20,
            },
        )
    }

    /// Dead load: joists, ceiling and insulation.
    pub const fn dead(self) -> Measure {
        Measure::whole(
            &PSF,
            match self {
                Self::Bare => 5,
                Self::Storage => 10,
            },
        )
    }
}

/// Strength and stiffness of a grade in a size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Design {
    /// In bending.
    pub strength: Measure,
    /// For its size.
    pub size_factor: Measure,
    /// Stiffness.
    pub stiffness: Measure,
}

/// Of a species and a size; none where no stamp tells or the table has no such size.
pub fn design(species: Species, size: Size) -> Option<Design> {
    // Southern pine's strengths have the size in them.
    let (pine, factor) = match size {
        Size::TwoByFour => (1_100, 150),
        Size::TwoBySix => (1_000, 130),
        Size::TwoByEight => (925, 120),
        Size::TwoByTen => (800, 110),
        Size::Other => return None,
    };
    let (strength, factor, stiffness) = match species {
        Species::Unknown => return None,
        Species::DouglasFirLarch => (900, factor, 1_600_000),
        Species::HemFir => (850, factor, 1_300_000),
        Species::SprucePineFir => (875, factor, 1_400_000),
        Species::SouthernPine => (pine, 100, 1_400_000),
    };
    Some(Design {
        strength: Measure::whole(&PSI, strength),
        size_factor: Measure::hundredths(&NUMBER, factor),
        stiffness: Measure::whole(&PSI, stiffness),
    })
}

/// Whether the table's row was read or worked out.
pub fn row(spacing: Spacing, attic: Attic) -> &'static Source {
    match (spacing, attic) {
        (Spacing::S19, _) | (Spacing::S24, Attic::Storage) => &READ_ROW,
        _ => &DERIVED_ROW,
    }
}
