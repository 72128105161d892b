//! Table 314.16(B): the volume that each conductor is allowed. Called 314.16(B)(1) from 2023.

use crate::choice;
use crate::measure::Volume;
use crate::words;

words! {
    /// A wire size.
    AWG18 = "18 AWG", es "18 AWG";
    /// A wire size.
    AWG16 = "16 AWG", es "16 AWG";
    /// A wire size.
    AWG14 = "14 AWG", es "14 AWG";
    /// A wire size.
    AWG12 = "12 AWG", es "12 AWG";
    /// A wire size.
    AWG10 = "10 AWG", es "10 AWG";
    /// A wire size.
    AWG8 = "8 AWG", es "8 AWG";
    /// A wire size.
    AWG6 = "6 AWG", es "6 AWG";
    /// Past the table.
    AWG4 = "4 AWG or larger", es "4 AWG o más grueso";
    SAYS = "The volume each conductor in a box is allowed, by its size.", es "El volumen que se le da a cada conductor en una caja, por su tamaño.";
    SEEN = "read in an independent box sizing guide that reprints the table", es "leído en una guía independiente de tamaños de caja que reimprime la tabla";
}

source!(
    /// Where the allowances are published.
    ALLOWANCE, "nec-314.16(B)-table", "NEC Table 314.16(B)" es "NEC, Tabla 314.16(B)", SAYS, SEEN, Read
);

choice! {
    /// A conductor's size, in the order of a person's likely choice.
    pub enum Awg {
        /// 14.
        Awg14 = "14", AWG14;
        /// 12.
        Awg12 = "12", AWG12;
        /// 10.
        Awg10 = "10", AWG10;
        /// 18.
        Awg18 = "18", AWG18;
        /// 16.
        Awg16 = "16", AWG16;
        /// 8.
        Awg8 = "8", AWG8;
        /// 6.
        Awg6 = "6", AWG6;
        /// 4 and larger, which this table leaves to another rule.
        Awg4 = "4+", AWG4;
    }
}

impl Awg {
    /// The allowance, the same in all editions; none from 4 AWG up, where 314.28 takes over.
    ///
    /// Source: NEC Table 314.16(B).
    pub const fn allowance(self) -> Option<Volume> {
        let hundredths = match self {
            Self::Awg18 => 150,
            Self::Awg16 => 175,
            Self::Awg14 => 200,
            Self::Awg12 => 225,
            Self::Awg10 => 250,
            Self::Awg8 => 300,
            Self::Awg6 => 500,
            Self::Awg4 => return None,
        };
        Some(Volume::hundredths(hundredths))
    }

    /// Thickness, for comparing sizes: more is thicker.
    pub const fn thickness(self) -> u8 {
        match self {
            Self::Awg18 => 0,
            Self::Awg16 => 1,
            Self::Awg14 => 2,
            Self::Awg12 => 3,
            Self::Awg10 => 4,
            Self::Awg8 => 5,
            Self::Awg6 => 6,
            Self::Awg4 => 7,
        }
    }
}
