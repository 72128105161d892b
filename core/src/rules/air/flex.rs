//! Flexible duct that is not pulled tight, and how it is hung.

use crate::measure::unit::PERCENT;
use crate::measure::{Length, Measure};
use crate::rules::compare::{Limit, ask, at_most};
use crate::sheet::{Check, Verdict};
use crate::words;
use crate::words::Text;

words! {
    SLACK_SAYS = "Flexible duct put in shorter than it is pulled tight loses 1 + 0.58 × short % × e^(−0.126 × inches of diameter) times as much a foot put in.", es "El ducto flexible puesto más corto que bien estirado pierde 1 + 0.58 × % de lo corto × e^(−0.126 × pulgadas de diámetro) veces más por pie puesto.";
    SLACK_SEEN = "read in the 2021 handbook's SI text, the inch exponent worked out from it. Tests: 6 to 16 in, up to about 30 % short; 4 and 5 in are past them", es "leído en el texto SI del manual de 2021, el exponente en pulgadas calculado de ahí. Pruebas: 6 a 16 in, hasta cerca de 30 % más corto; 4 y 5 in quedan fuera de ellas";
    PAST = "Past what was tested: the loss may be larger than shown. Pull it tight and cut the rest off.", es "Pasa de lo que se probó: la pérdida puede ser más de lo que se muestra. Estírelo bien y corte lo que sobra.";
    HANG_SAYS = "Hang flexible duct so that it sags 1/2 in or less a foot between supports, on straps 1 in wide or more; supports 4 ft apart or as its maker says, never over 10 ft.", es "Cuelgue el ducto flexible de modo que cuelgue 1/2 in o menos por pie entre soportes, en cintas de 1 in de ancho o más; soportes a 4 ft o como diga su fabricante, nunca a más de 10 ft.";
    HANG_SEEN = "read in an article on the flexible duct makers' standard and in the 1995 sheet-metal standard; makers also ask for straps of 1-1/2 in, from memory", es "leído en un artículo sobre la norma de los fabricantes de ducto flexible y en la norma de lámina de 1995; los fabricantes también piden cintas de 1-1/2 in, de memoria";
    BEND_SAYS = "Bend flexible duct round a centerline of one duct diameter or more, and leave a collar straight for about a diameter.", es "Doble el ducto flexible con una línea de centro de un diámetro de ducto o más, y deje recto el collarín cerca de un diámetro.";
    BEND_SEEN = "from memory of the flexible duct makers' standard", es "de memoria de la norma de los fabricantes de ducto flexible";
}

source!(
    /// Where the loss of slack duct is published.
    SLACK, "flex-slack", "ASHRAE Fundamentals 2021, ch. 21, flexible duct correction" es "ASHRAE Fundamentals 2021, cap. 21, corrección por ducto flexible", SLACK_SAYS, SLACK_SEEN, Read
);

source!(
    /// How it is hung.
    HANG, "flex-hung", "Flexible duct installation standard; SMACNA HVAC Duct Construction Standards S3.36" es "Norma de instalación de ducto flexible; SMACNA HVAC Duct Construction Standards S3.36", HANG_SAYS, HANG_SEEN, Read
);

source!(
    /// How it is bent.
    BEND, "flex-bent", "Flexible duct installation standard, bends" es "Norma de instalación de ducto flexible, curvas", BEND_SAYS, BEND_SEEN, Memory
);

/// Shortest share that was tested: past it nothing is known.
pub const TESTED: Limit<Measure> = Limit { value: Measure::whole(&PERCENT, 30), source: &SLACK };

/// Past what was tested it asks. Slack in percent.
pub fn check(key: &str, name: Text, slack: Measure) -> Check {
    let check = at_most(key, name, slack, TESTED);
    if check.verdict == Verdict::Over { ask(check, &PAST) } else { check }
}

/// How much more a foot of it loses, put in `share` (0 to 1) shorter than pulled tight, at a
/// diameter in inches.
pub fn correction(share: f64, diameter: f64) -> f64 {
    1.0 + 58.0 * share * libm::exp(-0.126 * diameter)
}

/// The share by which a piece is put in short of its length pulled tight, from 0 to 1.
pub fn share(installed: Length, tight: Length) -> f64 {
    let tight = tight.nanometres().max(1) as f64;
    ((tight - installed.nanometres() as f64) / tight).max(0.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: ASHRAE Fundamentals 2021, ch. 21, Example 6: a 250-mm duct 4, 15 and 30 % short. Its
    /// Table 2 prints 5.9 for the last, where its own losses of 68.9 and 11.4 Pa give 6.04. The
    /// inch table is the same equation.
    #[test]
    fn slack_costs_what_the_handbook_prints() {
        for (share, diameter, want) in [
            (0.04, 250.0 / 25.4, 1.67),
            (0.15, 250.0 / 25.4, 3.52),
            (0.30, 250.0 / 25.4, 6.04),
            (0.04, 4.0, 2.40),
            (0.30, 4.0, 11.51),
            (0.15, 5.0, 5.63),
            (0.04, 6.0, 2.09),
            (0.08, 6.0, 3.18),
            (0.15, 6.0, 5.09),
            (0.30, 6.0, 9.17),
            (0.15, 8.0, 4.18),
            (0.30, 12.0, 4.84),
        ] {
            let got = correction(share, diameter);
            assert!((got - want).abs() < 0.006, "{share} at {diameter}: {got}");
        }
    }
}
