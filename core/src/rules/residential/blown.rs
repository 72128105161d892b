//! Blown insulation: how well an inch holds heat back, what it weighs, and what a ceiling bears.

use crate::measure::{Measure, unit};
use crate::rules::compare::Limit;
use crate::{choice, words};

words! {
    BLOWN_SAYS = "Settled: cellulose about R 3.2 an inch and 1.5 to 2 lb a cubic foot, loose glass R 2.0 to 2.7 and 0.5 to 1, mineral wool R 3.0 to 3.3 and 1.7. The bag's label rules.";
    BLOWN_SEEN = "cellulose, glass and all weights read in pages with the energy department's table; mineral wool's R from memory";
    SAG_SAYS = "1/2 in board bears 1.3 lb a square foot of insulation on joists 24 in apart, 2.2 on 16; 5/8 in board 2.2 on 24. Above that it sags.";
    SAG_SEEN = "read in a trade magazine and a board maker's page; a maker's own sheet rules";
    NOT_SAID = "Not said";
    CELLULOSE = "Cellulose";
    GLASS = "Loose glass fiber";
    MINERAL = "Mineral wool";
    HALF_24 = "1/2 in, joists 24 in apart";
    HALF_16 = "1/2 in, joists 16 in apart";
    FIVE_EIGHTHS = "5/8 in, joists 24 in or less";
}

source!(
    /// Where R and weight are told.
    BLOWN, "blown-insulation", "Blown insulation, R and weight", BLOWN_SAYS, BLOWN_SEEN, Read
);

source!(
    /// Where it is told what board bears.
    SAG, "board-sag", "Ceiling board makers, weight of insulation", SAG_SAYS, SAG_SEEN, Read
);

choice! {
    /// What is blown in.
    pub enum Fill {
        /// Nobody has said.
        NotSaid = "not-said", NOT_SAID;
        /// Paper.
        Cellulose = "cellulose", CELLULOSE;
        /// Glass.
        Glass = "glass", GLASS;
        /// Rock or slag.
        Mineral = "mineral", MINERAL;
    }
}

impl Fill {
    /// R an inch and weight, each at the cautious end: low and heavy. Source: [`BLOWN`].
    pub fn typical(self) -> Option<(Measure, Measure)> {
        let (r, weight) = match self {
            Self::NotSaid => return None,
            Self::Cellulose => (320, 200),
            Self::Glass => (200, 100),
            Self::Mineral => (300, 170),
        };
        let r = Measure::hundredths(&unit::R_PER_INCH, r);
        Some((r, Measure::hundredths(&unit::PCF, weight)))
    }
}

choice! {
    /// Board on a ceiling.
    pub enum Board {
        /// The weakest.
        Half24 = "1/2-24", HALF_24;
        /// The commonest.
        Half16 = "1/2-16", HALF_16;
        /// Thick.
        FiveEighths = "5/8-24", FIVE_EIGHTHS;
    }
}

impl Board {
    /// The most insulation that it bears.
    pub const fn bears(self) -> Limit<Measure> {
        let hundredths = match self {
            Self::Half24 => 130,
            _ => 220,
        };
        Limit { value: Measure::hundredths(&unit::PSF, hundredths), source: &SAG }
    }
}
