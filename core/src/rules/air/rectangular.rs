//! The round duct that loses as much as a rectangular one at the same flow.

use crate::words;

words! {
    SAYS = "A rectangular duct of sides a and b loses as much as a round one of 1.30 × (a × b)^0.625 ÷ (a + b)^0.25 at equal flow. Velocity and fittings go by the real area.", es "Un ducto rectangular de lados a y b pierde igual que uno redondo de 1.30 × (a × b)^0.625 ÷ (a + b)^0.25 con el mismo flujo. Velocidad y piezas van por el área real.";
    SEEN = "read in the 2021 handbook, SI text and its Table 3", es "leído en el manual de 2021, texto SI y su Tabla 3";
}

source!(
    /// Where the equivalent diameter is published.
    EQUIVALENT, "duct-equivalent-diameter", "ASHRAE Fundamentals 2021, ch. 21, rectangular ducts" es "ASHRAE Fundamentals 2021, cap. 21, ductos rectangulares", SAYS, SEEN, Read
);

/// Equivalent diameter, in the unit of the sides.
pub fn diameter(a: f64, b: f64) -> f64 {
    1.30 * libm::pow(a * b, 0.625) / libm::pow(a + b, 0.25)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: ASHRAE Fundamentals 2021, ch. 21, Table 3, in millimetres; the inch rows are worked
    /// out by hand from its equation.
    #[test]
    fn diameters_are_those_of_the_table() {
        for (a, b, want) in [
            (200.0, 100.0, 152.0),
            (250.0, 150.0, 210.0),
            (400.0, 200.0, 305.0),
            (300.0, 300.0, 328.0),
            (3.25, 10.0, 6.00),
            (3.25, 12.0, 6.49),
            (3.25, 14.0, 6.93),
            (10.0, 6.0, 8.40),
            (12.0, 8.0, 10.66),
            (20.0, 10.0, 15.23),
        ] {
            let got = diameter(a, b);
            assert!((got / want - 1.0).abs() < 0.0025, "{a} × {b}: {got}");
        }
    }
}
