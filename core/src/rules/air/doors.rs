//! Air that has to get out of a shut room: what an opening passes, and how much pressure is let
//! build up.

use crate::measure::Measure;
use crate::measure::unit::{CFM, PASCAL, PERCENT};
use crate::rules::compare::Limit;
use crate::sheet::{Confidence, Source};
use crate::words;
use crate::words::Phrase;
use crate::{choice, measure};

words! {
    ORIFICE_SAYS = "An opening passes 1.07 × net sq in × √Pa, in cfm. Openings side by side add; one behind the other count as 1 ÷ √(sum of 1 ÷ area²).", es "Una abertura deja pasar 1.07 × sq in netas × √Pa, en cfm. Las aberturas lado a lado se suman; una tras otra cuentan como 1 ÷ √(suma de 1 ÷ área²).";
    ORIFICE_SEEN = "read in RR-0005, whose table counts a pair of grilles as one opening; the sum in series is worked out. It takes doors and walls as tight: real rooms leak, so it asks for more opening than many need", es "leído en RR-0005, cuya tabla cuenta un par de rejillas como una abertura; la suma en serie está calculada. Toma puertas y paredes como herméticas: los cuartos reales tienen fugas, así que pide más abertura de la que muchos necesitan";
    THREE_SAYS = "A bedroom with its door shut and the blower on high stays within 3 Pa of the house.", es "Una recámara con la puerta cerrada y el soplador en alto queda dentro de 3 Pa de la casa.";
    THREE_SEEN = "read in SWS 6.6201.2", es "leído en SWS 6.6201.2";
    FIVE_SAYS = "Within 3 Pa, or within 5 Pa where the room gets 150 cfm or more.", es "Dentro de 3 Pa, o dentro de 5 Pa donde el cuarto recibe 150 cfm o más.";
    FIVE_SEEN = "read in a guide that quotes the program's checklist", es "leído en una guía que cita la lista de revisión del programa";
    FLORIDA_SAYS = "Within 2.5 Pa; or 50 sq in of transfer grille for each 100 cfm with a 1-in undercut, or a transfer duct of 1.5 × the supply duct's area with that undercut.", es "Dentro de 2.5 Pa; o 50 sq in de rejilla de paso por cada 100 cfm con 1 in bajo la puerta, o un ducto de paso de 1.5 × el área del ducto de salida con ese mismo espacio.";
    FLORIDA_SEEN = "read as quoted in a code forum of 2010 and on a certification form. The model codes name no pressure", es "leído como se cita en un foro de código de 2010 y en un formulario de certificación. Los códigos modelo no dan presión";
    THREE = "3 Pa, work specifications", es "3 Pa, especificaciones de trabajo";
    ENERGY_STAR = "3 Pa, 5 from 150 cfm: new-home program", es "3 Pa, 5 desde 150 cfm: programa de casa nueva";
    FLORIDA = "2.5 Pa, Florida code", es "2.5 Pa, código de Florida";
}

source!(
    /// Where the flow through an opening is published.
    ORIFICE, "transfer-orifice", "Building Science Corp. RR-0005, Transfer Grille Sizing", ORIFICE_SAYS, ORIFICE_SEEN, Read
);
static THREE_PA: Source = Source {
    key: "room-3-pa",
    clause: Phrase { en: "NREL Standard Work Specification 6.6201.2", es: "" },
    says: &THREE_SAYS,
    seen: &THREE_SEEN,
    confidence: Confidence::Read,
};
static FIVE_PA: Source = Source {
    key: "room-5-pa",
    clause: Phrase { en: "ENERGY STAR Single-Family New Homes, HVAC checklist", es: "" },
    says: &FIVE_SAYS,
    seen: &FIVE_SEEN,
    confidence: Confidence::Read,
};
source!(
    /// The code with a number of its own.
    FLORIDA_CODE, "room-2.5-pa", "Florida Building Code, Mechanical 601.4, Residential M1602.4", FLORIDA_SAYS, FLORIDA_SEEN, Read
);

choice! {
    /// Which rule a room's pressure is held to.
    pub enum Rule {
        /// Of weatherization crews.
        Three = "3-pa", THREE;
        /// Of a program for new homes.
        EnergyStar = "3-or-5-pa", ENERGY_STAR;
        /// Florida's.
        Florida = "2.5-pa", FLORIDA;
    }
}

impl Rule {
    /// The most pressure, for a room that gets `cfm`.
    pub fn most(self, cfm: Measure) -> Limit<Measure> {
        let (tenths, source) = match self {
            Self::Three => (30, &THREE_PA),
            Self::EnergyStar if cfm >= LARGE_ROOM => (50, &FIVE_PA),
            Self::EnergyStar => (30, &FIVE_PA),
            Self::Florida => (25, &FLORIDA_CODE),
        };
        Limit { value: Measure::hundredths(&PASCAL, tenths * 10), source }
    }
}

/// From here on a room may have 5 Pa.
const LARGE_ROOM: Measure = Measure::whole(&CFM, 150);

/// The published table: supply in cfm, and the net square inches that it needs in all at 3 Pa, in
/// tenths. Source: Building Science Corp. RR-0005. Its row for 275 cfm misprints, and is left out.
pub const TABLE: [[i64; 2]; 6] =
    [[50, 270], [100, 540], [150, 809], [200, 1079], [300, 1619], [350, 1889]];
/// Undercut by an older rule: cfm an inch. Source: Home Energy, Jan/Feb 2006, quoting Manual T.
pub const AN_INCH: i64 = 60;

/// The least that a grille's vanes and mesh leave open of its face, as the transfer table takes it.
pub const NET_SHARE: Measure = Measure::whole(&PERCENT, 75);

/// Florida's own grille: square inches of face for each 100 cfm.
pub const FLORIDA_FACE: i64 = 50;
/// With an undercut of so much.
pub const FLORIDA_UNDERCUT: measure::Length = measure::Length::inches(1, 1);

/// cfm that a square inch passes at 1 Pa.
pub const PASSES: f64 = 1.07;

/// Pressure in pascals that pushes `cfm` through `net` square inches.
pub fn pressure(cfm: f64, net: f64) -> f64 {
    let each = cfm / (PASSES * net);
    each * each
}

/// Square inches that pass `cfm` at `pascals`.
pub fn area(cfm: f64, pascals: f64) -> f64 {
    cfm / (PASSES * libm::sqrt(pascals))
}

/// cfm through `net` square inches at `pascals`.
pub fn flow(net: f64, pascals: f64) -> f64 {
    PASSES * net * libm::sqrt(pascals)
}

/// Square inches that openings one behind the other are worth; nothing where one is shut.
pub fn in_series(areas: &[f64]) -> f64 {
    let sum: f64 = areas.iter().map(|area| 1.0 / (area * area)).sum();
    if areas.is_empty() { 0.0 } else { 1.0 / libm::sqrt(sum) }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: Building Science Corp. RR-0005, table at 3 Pa: a 32-in door with a 1/2-in undercut.
    /// Its row for 275 cfm prints 14.4 where its own arithmetic gives 148.4, and is left out.
    #[test]
    fn the_published_table_at_3_pa() {
        let rest =
            [(11.0, 3.7), (38.0, 7.0), (64.9, 9.1), (91.9, 10.8), (145.9, 13.6), (172.9, 14.8)];
        for ([cfm, net], (less, jump)) in TABLE.into_iter().zip(rest) {
            let (cfm, net) = (cfm as f64, net as f64 / 10.0);
            let needed = area(cfm, 3.0);
            let left = needed - 32.0 * 0.5;
            assert!((needed - net).abs() < 0.06, "{cfm}: {needed}");
            assert!((left - less).abs() < 0.06, "{cfm}: {left}");
            let diameter = libm::sqrt(left / std::f64::consts::FRAC_PI_4);
            assert!((diameter - jump).abs() < 0.06, "{cfm}: {diameter}");
        }
    }

    /// Source: the same equation, worked by hand at 2.5, 3 and 5 Pa. Manual D's own figure for a
    /// 1-in undercut of a 30- to 32-in door is 60 to 70 cfm, an older rule 60 cfm an inch.
    #[test]
    fn undercuts_pass_what_was_worked_by_hand() {
        for (door, gap, want) in [
            (24.0, 0.5, [20.0, 22.0, 29.0]),
            (24.0, 0.75, [30.0, 33.0, 43.0]),
            (24.0, 1.0, [41.0, 44.0, 57.0]),
            (24.0, 1.5, [61.0, 67.0, 86.0]),
            (24.0, 2.0, [81.0, 89.0, 115.0]),
            (28.0, 0.5, [24.0, 26.0, 34.0]),
            (28.0, 0.75, [36.0, 39.0, 50.0]),
            (28.0, 1.0, [47.0, 52.0, 67.0]),
            (28.0, 1.5, [71.0, 78.0, 100.0]),
            (28.0, 2.0, [95.0, 104.0, 134.0]),
            (30.0, 0.5, [25.0, 28.0, 36.0]),
            (30.0, 0.75, [38.0, 42.0, 54.0]),
            (30.0, 1.0, [51.0, 56.0, 72.0]),
            (30.0, 1.5, [76.0, 83.0, 108.0]),
            (30.0, 2.0, [102.0, 111.0, 144.0]),
            (32.0, 0.5, [27.0, 30.0, 38.0]),
            (32.0, 0.75, [41.0, 44.0, 57.0]),
            (32.0, 1.0, [54.0, 59.0, 77.0]),
            (32.0, 1.5, [81.0, 89.0, 115.0]),
            (32.0, 2.0, [108.0, 119.0, 153.0]),
            (36.0, 0.5, [30.0, 33.0, 43.0]),
            (36.0, 0.75, [46.0, 50.0, 65.0]),
            (36.0, 1.0, [61.0, 67.0, 86.0]),
            (36.0, 1.5, [91.0, 100.0, 129.0]),
            (36.0, 2.0, [122.0, 133.0, 172.0]),
        ] {
            for (pascals, want) in [2.5, 3.0, 5.0].into_iter().zip(want) {
                let got = flow(door * gap, pascals);
                assert!((got - want).abs() <= 0.51, "{door} × {gap} at {pascals}: {got}");
            }
        }
    }

    /// Source: 1 ÷ A² = sum of 1 ÷ Aᵢ², worked by hand.
    #[test]
    fn one_behind_the_other_passes_less_than_the_smaller() {
        assert!((in_series(&[50.0, 50.0]) - 35.355).abs() < 1e-3);
        assert!((in_series(&[60.0, 40.0]) - 33.282).abs() < 1e-3);
        assert!(in_series(&[]) == 0.0 && in_series(&[0.0, 5.0]) == 0.0);
    }
}
