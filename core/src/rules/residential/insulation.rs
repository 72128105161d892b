//! What R new houses need in their ceilings and walls, by climate zone and edition.

use crate::choice;
use crate::measure::{Measure, unit};
use crate::rules::compare::Limit;
use crate::words;

words! {
    SAYS = "New houses insulate ceilings and wood walls to an R by climate zone. In an old house, cavities that are opened are filled; local code says what else.", es "Las casas nuevas aíslan techos y paredes de madera a un R según la zona de clima. En una casa vieja, se rellenan los huecos que se abren; el código local dice qué más.";
    SEEN = "read in a government table of 2009 to 2021 values. That opened cavities are filled, and the 2024 values, are from memory", es "leído en una tabla del gobierno con valores de 2009 a 2021. Que se rellenan los huecos abiertos, y los valores de 2024, son de memoria";
    NEW_SEEN = "written down from memory; sources disagree", es "escrito de memoria; las fuentes no coinciden";
    NOT_SAID = "Not said", es "No se dijo";
    Z1 = "1", es "1";
    Z2 = "2", es "2";
    Z3 = "3", es "3";
    Z4 = "4, but marine", es "4, menos marina";
    Z5 = "5, or marine 4", es "5, o marina 4";
    Z6 = "6", es "6";
    Z7 = "7 or 8", es "7 u 8";
}

source!(
    /// Where the values of 2018 and 2021 are published.
    INSULATION, "irc-n1102.1", "IRC 2018, 2021 N1102.1, insulation by climate zone" es "IRC 2018, 2021 N1102.1, aislante por zona climática", SAYS, SEEN, Read
);

source!(
    /// The same of 2024.
    INSULATION_2024, "irc-n1102.1-2024", "IRC 2024 N1102.1, insulation by climate zone" es "IRC 2024 N1102.1, aislante por zona climática", SAYS, NEW_SEEN, Memory
);

choice! {
    /// A climate zone.
    pub enum Zone {
        /// Nobody has said.
        NotSaid = "not-said", NOT_SAID;
        /// 1.
        One = "1", Z1;
        /// 2.
        Two = "2", Z2;
        /// 3.
        Three = "3", Z3;
        /// 4, but marine.
        Four = "4", Z4;
        /// 5, and marine 4.
        Five = "5", Z5;
        /// 6.
        Six = "6", Z6;
        /// 7 and 8.
        Seven = "7", Z7;
    }
}

/// Ceilings in 2018, 2021 and 2024, zone by zone. Source: [`INSULATION`], [`INSULATION_2024`].
const CEILINGS: [[i64; 3]; 7] = [
    [30, 30, 30],
    [38, 49, 38],
    [38, 49, 38],
    [49, 60, 49],
    [49, 60, 49],
    [49, 60, 49],
    [49, 60, 49],
];

const LATE: &str = "R 30, 20+5, 13+10 or 0+20";

/// Wood walls in 2018 and 2021, in the cavity + over the studs. Source: [`INSULATION`].
const WALLS: [[&str; 2]; 7] = [
    ["R 13", "R 13 or 0+10"],
    ["R 13", "R 13 or 0+10"],
    ["R 20 or 13+5", "R 20, 13+5 or 0+15"],
    ["R 20 or 13+5", LATE],
    ["R 20 or 13+5", LATE],
    ["R 20+5 or 13+10", LATE],
    ["R 20+5 or 13+10", LATE],
];

impl Zone {
    fn row<T: Copy>(self, table: &[T; 7]) -> Option<T> {
        table.get((self as usize).checked_sub(1)?).copied()
    }

    /// The least R of a new ceiling in 2018, 2021 and 2024; none where no zone is said.
    pub fn ceilings(self) -> Option<[Limit<Measure>; 3]> {
        let of = |r, source| Limit { value: Measure::whole(&unit::R_VALUE, r), source };
        let [first, second, third] = self.row(&CEILINGS)?;
        Some([of(first, &INSULATION), of(second, &INSULATION), of(third, &INSULATION_2024)])
    }

    /// What a new wood wall takes in 2018 and 2021.
    pub fn walls(self) -> Option<[&'static str; 2]> {
        self.row(&WALLS)
    }
}
