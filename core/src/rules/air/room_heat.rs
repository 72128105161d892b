//! What a room's heat asks of its air, and a rough reckoning of heat lost through walls and leaks.

use crate::measure::Measure;
use crate::measure::unit::{DEGREES, NUMBER, PERCENT, U_VALUE};
use crate::{choice, words};

words! {
    SENSIBLE_SAYS = "Sensible heat in Btu/h = 60 × 0.075 lb/cu ft × 0.24 Btu/lb·°F × cfm × °F = 1.08 × cfm × °F at sea level.", es "Calor sensible en Btu/h = 60 × 0.075 lb/cu ft × 0.24 Btu/lb·°F × cfm × °F = 1.08 × cfm × °F a nivel del mar.";
    SENSIBLE_SEEN = "worked out from standard air, read in HVACR Business, 2019; 1.10 with some moisture in it", es "calculado de aire estándar, leído en HVACR Business, 2019; 1.10 con algo de humedad";
    ALTITUDE_SAYS = "Air thins by (1 − 0.0000068754 × feet)^5.2559 with altitude, and carries so much less heat.", es "El aire se adelgaza por (1 − 0.0000068754 × pies)^5.2559 con la altitud, y lleva ese tanto menos de calor.";
    ALTITUDE_SEEN = "from memory of the standard atmosphere; a psychrometrics library gives the same ratio of pressures", es "de memoria de la atmósfera estándar; una biblioteca de software de psicrometría da la misma razón de presiones";
    LOSS_SAYS = "Heat lost = U × area × °F for each wall, window and ceiling, and 0.018 × changes an hour × cu ft × °F for leaks. U of an old bare frame wall 0.22 to 0.28, 0.25 taken; R-13 in 2x4 0.082; R-19 in 2x6 0.060; single glass 1.1, double 0.5.", es "Calor perdido = U × área × °F por cada pared, ventana y techo, y 0.018 × cambios por hora × cu ft × °F por fugas. U de una pared vieja de madera sin aislar 0.22 a 0.28, se toma 0.25; R-13 en 2x4 0.082; R-19 en 2x6 0.060; vidrio sencillo 1.1, doble 0.5.";
    LOSS_SEEN = "the sum is worked out; the U's are from memory. No sun, no people, no floor: no load calculation", es "la suma está calculada; las U son de memoria. Sin sol, sin gente, sin piso: no es un cálculo de carga";
    RULE_SAYS = "About 1 cfm a sq ft in leaky, bare houses, 0.3 to 0.7 in tight ones. A check of plain sense, no size.", es "Cerca de 1 cfm por sq ft en casas con fugas y sin aislar, 0.3 a 0.7 en las cerradas. Una revisión de sentido común, no una medida.";
    RULE_SEEN = "common practice", es "costumbre del oficio";
    SHARE_SAYS = "A room's share of the system's air is its share of the house's load.", es "La parte de un cuarto en el aire del sistema es su parte en la carga de la casa.";
    SHARE_SEEN = "common practice before a load calculation, ACCA Manual J, and duct design, Manual D, which go first", es "costumbre del oficio antes de un cálculo de carga, ACCA Manual J, y del diseño de ductos, Manual D, que van primero";
    WARM_SAYS = "Heating, supply air is some 30 to 60 °F warmer than the room.", es "En calefacción, el aire de salida está unos 30 a 60 °F más caliente que el cuarto.";
    WARM_SEEN = "common practice", es "costumbre del oficio";
    BARE = "Old frame, bare: U 0.25", es "Madera vieja, sin aislar: U 0.25";
    R13 = "2x4, R-13: U 0.082", es "2x4, R-13: U 0.082";
    R19 = "2x6, R-19: U 0.060", es "2x6, R-19: U 0.060";
    SINGLE = "Single: U 1.1", es "Sencillo: U 1.1";
    DOUBLE = "Double: U 0.5", es "Doble: U 0.5";
}

source!(
    SENSIBLE,
    "air-sensible",
    "Sensible heat of standard air" es "Calor sensible del aire estándar",
    SENSIBLE_SAYS,
    SENSIBLE_SEEN,
    Derived
);
source!(
    THINNER,
    "air-altitude",
    "Standard atmosphere, pressure ratio" es "Atmósfera estándar, razón de presiones",
    ALTITUDE_SAYS,
    ALTITUDE_SEEN,
    Memory
);
source!(LOSS, "room-heat-loss", "Steady heat loss by parts" es "Pérdida de calor constante, por partes", LOSS_SAYS, LOSS_SEEN, Memory);
source!(RULE, "air-per-floor", "Air by floor area, habit" es "Aire por área de piso, costumbre", RULE_SAYS, RULE_SEEN, CommonPractice);
source!(
    SHARE,
    "air-share",
    "Room air by share of load, habit" es "Aire del cuarto por su parte de la carga, costumbre",
    SHARE_SAYS,
    SHARE_SEEN,
    CommonPractice
);

source!(
    WARM,
    "air-heating-difference",
    "Supply against room when heating, habit" es "Aire de salida frente al cuarto al calentar, costumbre",
    WARM_SAYS,
    WARM_SEEN,
    CommonPractice
);

/// How dense air is against sea level, at an altitude in feet.
pub fn thinned(altitude: Measure) -> Option<Measure> {
    let share = libm::pow(1.0 - 6.8754e-6 * altitude.number(), 5.2559);
    Measure::nearest(&PERCENT, 100.0 * share)
}

/// cfm for a square foot, by plain sense: least in a tight house, most in a leaky one.
pub const A_SQUARE_FOOT: [Measure; 2] =
    [Measure::hundredths(&NUMBER, 30), Measure::whole(&NUMBER, 1)];

/// How much warmer supply air is than the room when heating, least and most.
pub const WARMER: [Measure; 2] = [Measure::whole(&DEGREES, 30), Measure::whole(&DEGREES, 60)];

choice! {
    /// An outside wall.
    pub enum Wall {
        /// Nothing in it.
        Bare = "bare", BARE;
        /// R-13 between 2x4s.
        R13 = "r-13", R13;
        /// R-19 between 2x6s.
        R19 = "r-19", R19;
    }
}

choice! {
    /// A window's glass.
    pub enum Glass {
        /// One pane.
        Single = "single", SINGLE;
        /// Two.
        Double = "double", DOUBLE;
    }
}

const fn u(thousandths: i64) -> Measure {
    Measure::new(&U_VALUE, thousandths * 1000)
}

impl Wall {
    /// How well it passes heat.
    pub const fn u(self) -> Measure {
        match self {
            Self::Bare => u(250),
            Self::R13 => u(82),
            Self::R19 => u(60),
        }
    }
}

impl Glass {
    /// How well it passes heat.
    pub const fn u(self) -> Measure {
        match self {
            Self::Single => u(1100),
            Self::Double => u(500),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::unit::ALTITUDE;
    use crate::rules::residential::heat::CARRIES;

    /// Source: ratios of pressure by PyPI's `psychrolib` 2.5.0, `GetStandardAtmPressure` over that
    /// of sea level; see `tests/references/make_air_vectors.py`. Factors: 1.08 times that.
    #[test]
    fn air_thins_as_a_psychrometrics_library_has_it() {
        #[rustfmt::skip]
        const RATIOS: [(i64, f64); 9] = [
            (0, 1.0), (1000, 0.964388), (2000, 0.929811), (3000, 0.896244), (4000, 0.863665),
            (5000, 0.832052), (6000, 0.801382), (7000, 0.771634), (8000, 0.742787),
        ];
        for (feet, want) in RATIOS {
            let got = thinned(Measure::whole(&ALTITUDE, feet)).unwrap().number() / 100.0;
            assert!((got - want).abs() < 5e-5, "{feet} ft: {got}, not {want}");
        }
    }

    /// Source: PyPI's `psychrolib` 2.5.0, 60 × (enthalpy of one degree) ÷ (volume of moist air), at
    /// a dry bulb in °F, relative humidity and altitude in feet; see the same script. Our factor is
    /// within 4 % in any house; the hottest, driest air carries 7 % less than it says.
    #[test]
    fn a_degree_of_air_carries_what_a_psychrometrics_library_has() {
        for (name, feet, want, within) in [
            ("70 °F, dry", 0, 1.07841, 0.002),
            ("55 °F, 90 %", 0, 1.11203, 0.04),
            ("75 °F, 50 %", 0, 1.07068, 0.04),
            ("75 °F, 50 %", 5000, 0.89126, 0.04),
            ("105 °F, 10 %", 0, 1.01271, 0.07),
        ] {
            let thinned = thinned(Measure::whole(&ALTITUDE, feet)).unwrap().number() / 100.0;
            let got = CARRIES.number() * thinned;
            assert!((got / want - 1.0).abs() < within, "{name}, {feet} ft: {got}");
        }
    }
}
