//! Air at sea level and room temperature: its velocity pressure and how it runs.

use crate::measure::Measure;
use crate::measure::unit::FPM;
use crate::words;

words! {
    SAYS = "Air of 0.075 lb/cu ft has a velocity pressure of 1 in wc at 4005 fpm; its Reynolds number is 8.56 × diameter in inches × fpm.", es "Aire de 0.075 lb/cu ft tiene una presión de velocidad de 1 in wc a 4005 fpm; su número de Reynolds es 8.56 × diámetro en pulgadas × fpm.";
    SEEN = "from memory of the handbook's US form; worked out again to 0.1 %. Thinner air, as at 5,000 ft, loses about a sixth less", es "de memoria de la forma US del manual; calculado otra vez a 0.1 %. El aire más delgado, como a 5,000 ft, pierde cerca de un sexto menos";
}

source!(
    /// Standard air.
    STANDARD_AIR, "standard-air", "ASHRAE Fundamentals 2021, ch. 21, standard air" es "ASHRAE Fundamentals 2021, cap. 21, aire estándar", SAYS, SEEN, Memory
);

/// The velocity at which the velocity pressure is 1 in of water.
pub const ONE_INCH: Measure = Measure::whole(&FPM, 4005);

/// Pascals in an inch of water at 4 °C. Source: NIST SP 811 (2008), B.8.
pub const PASCALS: f64 = 249.088_91;

/// Velocity pressure in inches of water, at `fpm`.
pub fn velocity_pressure(fpm: f64) -> f64 {
    let share = fpm / ONE_INCH.number();
    share * share
}

/// Reynolds number in a duct of `diameter` inches.
pub fn reynolds(diameter: f64, fpm: f64) -> f64 {
    8.56 * diameter * fpm
}
