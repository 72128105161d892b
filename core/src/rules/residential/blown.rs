//! Blown insulation: how well an inch holds heat back, what it weighs, and what a ceiling bears.

use crate::measure::{Measure, unit};
use crate::rules::compare::Limit;
use crate::{choice, words};

words! {
    BLOWN_SAYS = "Settled: cellulose about R 3.2 an inch and 1.5 to 2 lb a cubic foot, loose glass R 2.0 to 2.7 and 0.5 to 1, mineral wool R 3.0 to 3.3 and 1.7. The bag's label rules.", es "Asentado: celulosa como R 3.2 por pulgada y de 1.5 a 2 lb por pie cúbico, vidrio suelto R 2.0 a 2.7 y de 0.5 a 1, lana mineral R 3.0 a 3.3 y 1.7. Manda la etiqueta de la bolsa.";
    BLOWN_SEEN = "cellulose, glass and all weights read in pages with the energy department's table; mineral wool's R from memory", es "celulosa, vidrio y todos los pesos leídos en páginas con la tabla del departamento de energía; la R de la lana mineral de memoria";
    SAG_SAYS = "1/2 in board bears 1.3 lb a square foot of insulation on joists 24 in apart, 2.2 on 16; 5/8 in board 2.2 on 24. Above that it sags.", es "La tablaroca de 1/2 in aguanta 1.3 lb de aislante por pie cuadrado con viguetas cada 24 in, 2.2 cada 16; la de 5/8 in, 2.2 cada 24. Arriba de eso se pandea.";
    SAG_SEEN = "read in a trade magazine and a board maker's page; a maker's own sheet rules", es "leído en una revista del oficio y en la página de un fabricante de tablaroca; manda la hoja de cada fabricante";
    NOT_SAID = "Not said", es "No se dijo";
    CELLULOSE = "Cellulose", es "Celulosa";
    GLASS = "Loose glass fiber", es "Fibra de vidrio suelta";
    MINERAL = "Mineral wool", es "Lana mineral";
    HALF_24 = "1/2 in, joists 24 in apart", es "1/2 in, viguetas cada 24 in";
    HALF_16 = "1/2 in, joists 16 in apart", es "1/2 in, viguetas cada 16 in";
    FIVE_EIGHTHS = "5/8 in, joists 24 in or less", es "5/8 in, viguetas cada 24 in o menos";
}

source!(
    /// Where R and weight are told.
    BLOWN, "blown-insulation", "Blown insulation, R and weight" es "Aislante soplado, R y peso", BLOWN_SAYS, BLOWN_SEEN, Read
);

source!(
    /// Where it is told what board bears.
    SAG, "board-sag", "Ceiling board makers, weight of insulation" es "Fabricantes de tablaroca de techo, peso del aislante", SAG_SAYS, SAG_SEEN, Read
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
