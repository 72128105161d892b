//! Friction along a straight duct: laminar, turbulent, and between the two a blend.

use crate::words;
use crate::words::Phrase;

words! {
    SAYS = "Loss is f × length ÷ diameter × velocity pressure; f by Colebrook's equation, or 64 ÷ Re below Re 2300. Galvanized duct is 0.0003 ft rough, flexible duct pulled tight 0.003 ft.", es "La pérdida es f × largo ÷ diámetro × presión de velocidad; f por la ecuación de Colebrook, o 64 ÷ Re abajo de Re 2300. El ducto galvanizado tiene 0.0003 ft de rugosidad, el flexible bien estirado 0.003 ft.";
    SEEN = "read in the 2021 handbook's SI text; between Re 2300 and 4000 no formula holds, and a blend of both is an estimate of ours", es "leído en el texto SI del manual de 2021; entre Re 2300 y 4000 no vale ninguna fórmula, y una mezcla de las dos es un estimado nuestro";
    LAMINAR = "laminar", es "laminar";
    BLENDED = "between laminar and turbulent: an estimate", es "entre laminar y turbulento: un estimado";
    TURBULENT = "turbulent", es "turbulento";
}

source!(
    /// Where the friction equation and roughnesses are published.
    FRICTION, "duct-friction", "ASHRAE Fundamentals 2021, ch. 21, duct friction and Table 1" es "ASHRAE Fundamentals 2021, cap. 21, fricción en ductos y Tabla 1", SAYS, SEEN, Read
);

/// Roughness in feet of galvanized sheet, as the trade's friction chart has it.
pub const GALVANIZED: f64 = 0.0003;
/// Roughness in feet of flexible duct pulled tight.
pub const FLEXIBLE: f64 = 0.003;

/// Below this Reynolds number air runs in layers.
pub const LAMINAR_TO: f64 = 2300.0;
/// From this one on it is turbulent.
pub const TURBULENT_FROM: f64 = 4000.0;

/// How the air runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Regime {
    /// In layers.
    Laminar,
    /// Neither, and worked as a blend.
    Blended,
    /// Turbulent, as nearly always.
    Turbulent,
}

impl Regime {
    /// At a Reynolds number.
    pub fn at(reynolds: f64) -> Self {
        if reynolds < LAMINAR_TO {
            Self::Laminar
        } else if reynolds < TURBULENT_FROM {
            Self::Blended
        } else {
            Self::Turbulent
        }
    }

    /// As a person reads it.
    pub fn words(self) -> &'static Phrase {
        match self {
            Self::Laminar => &LAMINAR,
            Self::Blended => &BLENDED,
            Self::Turbulent => &TURBULENT,
        }
    }
}

/// The Darcy friction factor, and its slope times the Reynolds number: `f'(Re) × Re`.
pub type Factor = (f64, f64);

/// At a Reynolds number above zero, in a duct whose roughness is `relative` of its diameter.
///
/// Loss rises with the flow throughout: the turbulent factor is the larger of the two wherever they
/// are blended.
pub fn factor(reynolds: f64, relative: f64) -> Factor {
    let laminar = 64.0 / reynolds;
    if reynolds <= LAMINAR_TO {
        return (laminar, -laminar);
    }
    let (turbulent, slope) = colebrook(reynolds, relative);
    if reynolds >= TURBULENT_FROM {
        return (turbulent, slope);
    }
    // A cubic whose slope is nothing at both ends, so that the loss bends nowhere sharply.
    let span = TURBULENT_FROM - LAMINAR_TO;
    let part = (reynolds - LAMINAR_TO) / span;
    let share = part * part * (3.0 - 2.0 * part);
    let rises = 6.0 * part * (1.0 - part) / span * reynolds;
    (
        laminar + share * (turbulent - laminar),
        share * (slope + laminar) - laminar + rises * (turbulent - laminar),
    )
}

/// Colebrook's equation by Newton's method on x = 1/√f, from an explicit estimate. The curve is
/// bent so little that five steps reach the last digit; a property test says so.
fn colebrook(reynolds: f64, relative: f64) -> Factor {
    const LOG: f64 = 2.0 / std::f64::consts::LN_10;
    let (rough, thin) = (relative / 3.7, 2.51 / reynolds);
    let mut x = -1.8 * libm::log10(libm::pow(rough, 1.11) + 6.9 / reynolds);
    let mut bend = 0.0;
    for _ in 0..5 {
        let inside = rough + thin * x;
        bend = LOG * thin / inside;
        x -= (x + LOG * libm::log(inside)) / (1.0 + bend);
    }
    let factor = 1.0 / (x * x);
    (factor, -2.0 * factor * bend / (1.0 + bend))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn the_equation_is_met_to_the_last_digits(
            log in 3.3_f64..8.0, relative in 0.0_f64..0.05,
        ) {
            let reynolds = libm::pow(10.0, log);
            let (factor, _) = colebrook(reynolds, relative);
            let x = 1.0 / libm::sqrt(factor);
            let again = -2.0 * libm::log10(relative / 3.7 + 2.51 * x / reynolds);
            prop_assert!((again / x - 1.0).abs() < 1e-13, "{again} and {x}");
        }

        #[test]
        fn the_slope_is_that_of_the_factor(log in 2.0_f64..6.0, relative in 1e-5_f64..0.05) {
            let reynolds = libm::pow(10.0, log);
            let step = reynolds * 1e-6;
            prop_assume!([LAMINAR_TO, TURBULENT_FROM].iter().all(|at| (at - reynolds).abs() > step));
            let (_, slope) = factor(reynolds, relative);
            let rise = factor(reynolds + step, relative).0 - factor(reynolds - step, relative).0;
            let measured = rise / (2.0 * step) * reynolds;
            prop_assert!((slope - measured).abs() < 1e-6, "{slope} and {measured}");
        }
    }

    #[test]
    fn no_jump_where_one_regime_meets_the_next() {
        for relative in [0.0, 0.0003, 0.01, 0.04] {
            for at in [LAMINAR_TO, TURBULENT_FROM] {
                let near = |by: f64| factor(at * (1.0 + by), relative).0;
                assert!((near(1e-9) / near(-1e-9) - 1.0).abs() < 1e-7);
            }
            let mut last = 0.0;
            for reynolds in (100..8000).map(f64::from) {
                // Loss goes with f × Re².
                let loss = factor(reynolds, relative).0 * reynolds * reynolds;
                assert!(loss > last, "{reynolds}");
                last = loss;
            }
        }
    }
}
