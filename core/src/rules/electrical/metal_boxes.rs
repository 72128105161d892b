//! Table 314.16(A): standard metal boxes. The columns of counts in the book are the volume
//! divided by each size's allowance, rounded down, so only the volume is held.

use crate::measure::{Length, Volume};
use crate::sheet::Source;
use crate::words;
use crate::words::Phrase;

words! {
    B00 = "4 × 1-1/4 octagon or round", es "4 × 1-1/4 octagonal o redonda";
    B01 = "4 × 1-1/2 octagon or round", es "4 × 1-1/2 octagonal o redonda";
    B02 = "4 × 2-1/8 octagon or round", es "4 × 2-1/8 octagonal o redonda";
    B03 = "4 × 1-1/4 square", es "4 × 1-1/4 cuadrada";
    B04 = "4 × 1-1/2 square", es "4 × 1-1/2 cuadrada";
    B05 = "4 × 2-1/8 square", es "4 × 2-1/8 cuadrada";
    B06 = "4-11/16 × 1-1/4 square", es "4-11/16 × 1-1/4 cuadrada";
    B07 = "4-11/16 × 1-1/2 square", es "4-11/16 × 1-1/2 cuadrada";
    B08 = "4-11/16 × 2-1/8 square", es "4-11/16 × 2-1/8 cuadrada";
    B09 = "3 × 2 × 1-1/2 device", es "3 × 2 × 1-1/2 de dispositivo";
    B10 = "3 × 2 × 2 device", es "3 × 2 × 2 de dispositivo";
    B11 = "3 × 2 × 2-1/4 device", es "3 × 2 × 2-1/4 de dispositivo";
    B12 = "3 × 2 × 2-1/2 device", es "3 × 2 × 2-1/2 de dispositivo";
    B13 = "3 × 2 × 2-3/4 device", es "3 × 2 × 2-3/4 de dispositivo";
    B14 = "3 × 2 × 3-1/2 device", es "3 × 2 × 3-1/2 de dispositivo";
    B15 = "4 × 2-1/8 × 1-1/2 device", es "4 × 2-1/8 × 1-1/2 de dispositivo";
    B16 = "4 × 2-1/8 × 1-7/8 device", es "4 × 2-1/8 × 1-7/8 de dispositivo";
    B17 = "4 × 2-1/8 × 2-1/8 device", es "4 × 2-1/8 × 2-1/8 de dispositivo";
    B18 = "3-3/4 × 2 × 2-1/2 masonry, a gang", es "3-3/4 × 2 × 2-1/2 mampostería, por gang";
    B19 = "3-3/4 × 2 × 3-1/2 masonry, a gang", es "3-3/4 × 2 × 3-1/2 mampostería, por gang";
    B20 = "FS 1-3/4 deep, single cover, a gang", es "FS 1-3/4 de fondo, tapa sencilla, por gang";
    B21 = "FD 2-3/8 deep, single cover, a gang", es "FD 2-3/8 de fondo, tapa sencilla, por gang";
    B22 = "FS 1-3/4 deep, multiple cover, a gang", es "FS 1-3/4 de fondo, tapa múltiple, por gang";
    B23 = "FD 2-3/8 deep, multiple cover, a gang", es "FD 2-3/8 de fondo, tapa múltiple, por gang";
    SAYS = "The least volume of each standard metal box.", es "El volumen mínimo de cada caja de metal estándar.";
    SEEN_READ = "read in an independent box sizing guide that reprints the table", es "leído en una guía independiente de tamaños de caja que reimprime la tabla";
    SEEN_MEMORY = "this row is from memory; the counts it gives agree with the table's arithmetic", es "este renglón es de memoria; las cuentas que da coinciden con la aritmética de la tabla";
}

source!(
    /// Rows that were read.
    READ, "nec-314.16(A)-table", "NEC Table 314.16(A)" es "NEC, Tabla 314.16(A)", SAYS, SEEN_READ, Read
);

source!(
    /// Rows from memory.
    MEMORY, "nec-314.16(A)-table-memory", "NEC Table 314.16(A)" es "NEC, Tabla 314.16(A)", SAYS, SEEN_MEMORY, Memory
);

/// Boxes that take each other's rings and covers, or gang together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Family {
    /// 4 in octagon or round.
    Octagon,
    /// 4 in square.
    Square,
    /// 4-11/16 in square.
    BigSquare,
    /// 3 × 2 in, whose sides come off to gang them.
    Device,
    /// 4 × 2-1/8 in, one device.
    Handy,
    /// For masonry, by the gang.
    Masonry,
    /// Cast, single cover, by the gang.
    Cast,
    /// Cast, multiple cover, by the gang.
    CastMany,
}

impl Family {
    /// Volumes add gang by gang.
    pub const fn gangs(self) -> bool {
        matches!(self, Self::Device | Self::Masonry | Self::CastMany)
    }

    /// A ring of the same face deepens it.
    pub const fn extends(self) -> bool {
        matches!(self, Self::Octagon | Self::Square | Self::BigSquare)
    }

    /// The most devices side by side that one box of it takes, by a cover or ring; boxes that
    /// gang take one each. Common practice of covers sold.
    pub const fn devices(self) -> i64 {
        match self {
            Self::Square | Self::BigSquare => 2,
            _ => 1,
        }
    }
}

/// One row of the table.
#[derive(Debug, PartialEq, Eq)]
pub struct Metal {
    /// As written in the tree.
    pub key: &'static str,
    /// As a person reads it, in inches.
    pub name: &'static Phrase,
    /// Width and height of the opening side, where the row gives them.
    pub face: Option<(Length, Length)>,
    /// Depth; for cast boxes the least.
    pub depth: Length,
    /// Least volume, of one box or one gang.
    pub volume: Volume,
    /// What it goes with.
    pub family: Family,
    /// Where the row is from.
    pub source: &'static Source,
}

/// The table, in its own order.
///
/// Source: NEC Table 314.16(A), the same in all editions.
#[rustfmt::skip]
pub const METAL: [Metal; 24] = [
    Metal { key: "oct-4x1-1/4", name: &B00, face: Some((Length::inches(4, 1), Length::inches(4, 1))), depth: Length::inches(5, 4), volume: Volume::hundredths(1250), family: Family::Octagon, source: &READ },
    Metal { key: "oct-4x1-1/2", name: &B01, face: Some((Length::inches(4, 1), Length::inches(4, 1))), depth: Length::inches(3, 2), volume: Volume::hundredths(1550), family: Family::Octagon, source: &READ },
    Metal { key: "oct-4x2-1/8", name: &B02, face: Some((Length::inches(4, 1), Length::inches(4, 1))), depth: Length::inches(17, 8), volume: Volume::hundredths(2150), family: Family::Octagon, source: &READ },
    Metal { key: "sq-4x1-1/4", name: &B03, face: Some((Length::inches(4, 1), Length::inches(4, 1))), depth: Length::inches(5, 4), volume: Volume::hundredths(1800), family: Family::Square, source: &READ },
    Metal { key: "sq-4x1-1/2", name: &B04, face: Some((Length::inches(4, 1), Length::inches(4, 1))), depth: Length::inches(3, 2), volume: Volume::hundredths(2100), family: Family::Square, source: &READ },
    Metal { key: "sq-4x2-1/8", name: &B05, face: Some((Length::inches(4, 1), Length::inches(4, 1))), depth: Length::inches(17, 8), volume: Volume::hundredths(3030), family: Family::Square, source: &READ },
    Metal { key: "sq-4-11/16x1-1/4", name: &B06, face: Some((Length::inches(75, 16), Length::inches(75, 16))), depth: Length::inches(5, 4), volume: Volume::hundredths(2550), family: Family::BigSquare, source: &READ },
    Metal { key: "sq-4-11/16x1-1/2", name: &B07, face: Some((Length::inches(75, 16), Length::inches(75, 16))), depth: Length::inches(3, 2), volume: Volume::hundredths(2950), family: Family::BigSquare, source: &READ },
    Metal { key: "sq-4-11/16x2-1/8", name: &B08, face: Some((Length::inches(75, 16), Length::inches(75, 16))), depth: Length::inches(17, 8), volume: Volume::hundredths(4200), family: Family::BigSquare, source: &READ },
    Metal { key: "dev-3x2x1-1/2", name: &B09, face: Some((Length::inches(2, 1), Length::inches(3, 1))), depth: Length::inches(3, 2), volume: Volume::hundredths(750), family: Family::Device, source: &READ },
    Metal { key: "dev-3x2x2", name: &B10, face: Some((Length::inches(2, 1), Length::inches(3, 1))), depth: Length::inches(2, 1), volume: Volume::hundredths(1000), family: Family::Device, source: &READ },
    Metal { key: "dev-3x2x2-1/4", name: &B11, face: Some((Length::inches(2, 1), Length::inches(3, 1))), depth: Length::inches(9, 4), volume: Volume::hundredths(1050), family: Family::Device, source: &READ },
    Metal { key: "dev-3x2x2-1/2", name: &B12, face: Some((Length::inches(2, 1), Length::inches(3, 1))), depth: Length::inches(5, 2), volume: Volume::hundredths(1250), family: Family::Device, source: &READ },
    Metal { key: "dev-3x2x2-3/4", name: &B13, face: Some((Length::inches(2, 1), Length::inches(3, 1))), depth: Length::inches(11, 4), volume: Volume::hundredths(1400), family: Family::Device, source: &MEMORY },
    Metal { key: "dev-3x2x3-1/2", name: &B14, face: Some((Length::inches(2, 1), Length::inches(3, 1))), depth: Length::inches(7, 2), volume: Volume::hundredths(1800), family: Family::Device, source: &MEMORY },
    Metal { key: "dev-4x2-1/8x1-1/2", name: &B15, face: Some((Length::inches(17, 8), Length::inches(4, 1))), depth: Length::inches(3, 2), volume: Volume::hundredths(1030), family: Family::Handy, source: &MEMORY },
    Metal { key: "dev-4x2-1/8x1-7/8", name: &B16, face: Some((Length::inches(17, 8), Length::inches(4, 1))), depth: Length::inches(15, 8), volume: Volume::hundredths(1300), family: Family::Handy, source: &MEMORY },
    Metal { key: "dev-4x2-1/8x2-1/8", name: &B17, face: Some((Length::inches(17, 8), Length::inches(4, 1))), depth: Length::inches(17, 8), volume: Volume::hundredths(1450), family: Family::Handy, source: &MEMORY },
    Metal { key: "mas-3-3/4x2x2-1/2", name: &B18, face: Some((Length::inches(2, 1), Length::inches(15, 4))), depth: Length::inches(5, 2), volume: Volume::hundredths(1400), family: Family::Masonry, source: &MEMORY },
    Metal { key: "mas-3-3/4x2x3-1/2", name: &B19, face: Some((Length::inches(2, 1), Length::inches(15, 4))), depth: Length::inches(7, 2), volume: Volume::hundredths(2100), family: Family::Masonry, source: &MEMORY },
    Metal { key: "fs-single", name: &B20, face: None, depth: Length::inches(7, 4), volume: Volume::hundredths(1350), family: Family::Cast, source: &MEMORY },
    Metal { key: "fd-single", name: &B21, face: None, depth: Length::inches(19, 8), volume: Volume::hundredths(1800), family: Family::Cast, source: &MEMORY },
    Metal { key: "fs-multiple", name: &B22, face: None, depth: Length::inches(7, 4), volume: Volume::hundredths(1800), family: Family::CastMany, source: &MEMORY },
    Metal { key: "fd-multiple", name: &B23, face: None, depth: Length::inches(19, 8), volume: Volume::hundredths(2400), family: Family::CastMany, source: &MEMORY },
];

/// The table where it stands in memory.
pub static TABLE: [Metal; 24] = METAL;

/// The rows that can be had as an extension ring: octagons and squares, the first nine.
pub const RINGS: usize = 9;
