//! Joint compound and tape: what joints take, what a published rule allows for an area, what
//! compound weighs, and how far it shrinks.

use crate::measure::unit::{CUBIC_INCH_A_FOOT, GALLON, LB_PER_GAL, PERCENT, WEIGHT};
use crate::measure::{Area, Length, Measure, Volume};
use crate::rules::compare::{Limit, is_at_most};
use crate::{choice, words};

words! {
    JOINTS_SAYS = "A tapered joint takes 12 × (0.05 × 2.5 + 2/3 × 1/32 × 12) = 4.5 in³ a foot, at least 1.73, at most 6.2; an end joint 12 × 2/3 × 1/16 × its width; a corner 2.52, a bead 4.8, three coats on a screw 0.25 in³, all dry. Fewer coats take their share.", es "Una junta rebajada lleva 12 × (0.05 × 2.5 + 2/3 × 1/32 × 12) = 4.5 in³ por pie, al menos 1.73, como máximo 6.2; una junta de punta 12 × 2/3 × 1/16 × su ancho; una esquina 2.52, un esquinero 4.8, tres manos en un tornillo 0.25 in³, todo seco. Menos manos llevan su parte.";
    JOINTS_SEEN = "worked out from wedge and crown; widths as makers' sheets have them, depths common practice", es "calculado de la cuña y el lomo; los anchos como los traen las hojas de fabricantes, los hondos costumbre del oficio";
    RULE_SAYS = "Level 4 takes 5 to 14 gal of ready-mixed compound for 1000 sq ft of board, likely 9.4, 370 to 380 ft of tape and 1000 screws.", es "El nivel 4 lleva 5 a 14 gal de pasta lista para usar por 1000 sq ft de tablaroca, lo probable 9.4, 370 a 380 ft de cinta y 1000 tornillos.";
    RULE_SEEN = "5 gal, 380 ft and 1000 read in an estimating book, 11 on a general page; 9.4, a maker's, from memory; 14 common practice in small rooms", es "5 gal, 380 ft y 1000 leídos en un libro de estimación, 11 en una página general; 9.4, de un fabricante, de memoria; 14 costumbre del oficio en cuartos chicos";
    SHRINK_SAYS = "Ready-mixed compound shrinks 20 to 30 percent by volume, lightweight 10 to 18, setting 1 to 5. No more than 35 is allowed.", es "La pasta lista para usar se encoge 20 a 30 por ciento en volumen, la liviana 10 a 18, la de fraguado 1 a 5. No se permite más de 35.";
    SHRINK_SEEN = "35 read in ASTM C475 of 1994; the rest from memory", es "35 leído en ASTM C475 de 1994; lo demás de memoria";
    WEIGHT_SAYS = "Ready-mixed compound weighs about 13.7 lb a gallon, lightweight 8.9; setting powder goes 72 lb to 1000 sq ft, lightweight 52. A pail holds 4.5 gal, a small one 1, a bag 25 or 18 lb. 30 to 35 percent of ready-mixed is water.", es "La pasta lista para usar pesa unas 13.7 lb por galón, la liviana 8.9; de polvo de fraguado van 72 lb por 1000 sq ft, del liviano 52. A una cubeta le caben 4.5 gal, a una chica 1; una bolsa trae 25 o 18 lb. De la lista para usar, 30 a 35 por ciento es agua.";
    WEIGHT_SEEN = "13.7 and powders from memory; pages have 11.6 to 13.8, safety sheets 8.3 to 15; 8.9 worked out from 35 percent less, read in a maker's sheet; water read in a contractor's page, by weight as taken here", es "13.7 y los polvos de memoria; hay páginas con 11.6 a 13.8, hojas de seguridad con 8.3 a 15; 8.9 calculado de 35 por ciento menos, leído en la hoja de un fabricante; el agua, leída en la página de un contratista, por peso como se toma aquí";
    POP_SAYS = "A popped screw gets two new ones, about 1-1/2 in to each side along the framing, the old one out or set; filled, three coats, 0.94 in³ dry. A cracked joint gets screws a foot apart on both sides, a patch along its edge.", es "Un tornillo botado lleva dos nuevos, a unas 1-1/2 in de cada lado por la estructura, el viejo fuera o hundido; relleno, tres manos, 0.94 in³ seco. Una junta agrietada lleva tornillos cada pie en los dos lados; un parche, en su orilla.";
    POP_SEEN = "screws read on a repair page, others say 1 to 2 in; compound worked out for 6 by 10 in, 0.02 in deep", es "los tornillos leídos en una página de reparación, otras dicen 1 a 2 in; la pasta calculada para 6 por 10 in, 0.02 in de hondo";
    READY = "Ready-mixed", es "Lista para usar";
    LIGHT = "Ready-mixed, lightweight", es "Lista para usar, liviana";
    SETTING_LIGHT = "Setting powder, lightweight", es "Polvo de fraguado, liviano";
    SETTING = "Setting powder", es "Polvo de fraguado";
    W24 = "24 in", es "24 in";
    W18 = "18 in", es "18 in";
    W36 = "36 in", es "36 in";
}

source!(
    /// What joints take.
    JOINTS, "compound-joints", "Compound by joints, a model" es "Pasta por juntas, un modelo", JOINTS_SAYS, JOINTS_SEEN, Derived
);
source!(
    /// What an area takes, as published.
    RULE, "compound-per-area", "Published compound and tape for an area" es "Pasta y cinta publicadas para un área", RULE_SAYS, RULE_SEEN, Memory
);
source!(
    /// How far it shrinks.
    SHRINKAGE, "compound-shrinkage", "ASTM C475, shrinkage; makers' sheets" es "ASTM C475, encogimiento; hojas de fabricantes", SHRINK_SAYS, SHRINK_SEEN, Memory
);
source!(
    /// What it weighs.
    WEIGHTS, "compound-weights", "Makers' sheets, compound weights" es "Hojas de fabricantes, pesos de pasta", WEIGHT_SAYS, WEIGHT_SEEN, Memory
);
source!(
    /// What a popped fastener takes.
    POPS, "fastener-pops", "Popped fasteners, habit" es "Tornillos botados, costumbre", POP_SAYS, POP_SEEN, CommonPractice
);

/// In hundredths of a cubic inch a foot.
const fn a_foot(hundredths: i64) -> Measure {
    Measure::hundredths(&CUBIC_INCH_A_FOOT, hundredths)
}

/// A tapered joint, dry: low, likely, high. Source: [`JOINTS`].
pub const TAPERED: [Measure; 3] = [a_foot(173), a_foot(450), a_foot(620)];
/// An inside corner. Source: [`JOINTS`].
pub const CORNER: Measure = a_foot(252);
/// An outside corner's bead. Source: [`JOINTS`].
pub const BEAD: Measure = a_foot(480);
/// A screw, three coats. Source: [`JOINTS`].
pub const SCREW: Volume = Volume::hundredths(25);
/// A popped fastener, three spots. Source: [`POPS`].
pub const POP: Volume = Volume::hundredths(94);
/// Screws that take the place of a popped one. Source: [`POPS`].
pub const SCREWS_A_POP: i64 = 2;

choice! {
    /// How wide an end joint is feathered.
    pub enum Feather {
        /// Two feet.
        W24 = "24", W24;
        /// A handbook's least.
        W18 = "18", W18;
        /// To hide in bad light.
        W36 = "36", W36;
    }
}

impl Feather {
    /// A foot of it, dry. Source: [`JOINTS`].
    pub const fn takes(self) -> Measure {
        match self {
            Self::W18 => a_foot(900),
            Self::W24 => a_foot(1200),
            Self::W36 => a_foot(1800),
        }
    }
}

/// The area of the published rule, and gallons for it at level 4: low, likely, high. Source:
/// [`RULE`].
pub const FOR_AREA: Area = Area::square_feet(1000);
/// Gallons for [`FOR_AREA`].
pub const GALLONS: [Measure; 3] =
    [Measure::whole(&GALLON, 5), Measure::hundredths(&GALLON, 940), Measure::whole(&GALLON, 14)];
/// Tape for [`FOR_AREA`].
pub const TAPE: Length = Length::inches(12 * 380, 1);
/// Screws for [`FOR_AREA`].
pub const SCREWS: i64 = 1000;

choice! {
    /// What kind of compound.
    pub enum Compound {
        /// From a pail, dries.
        Ready = "ready", READY;
        /// From a pail, dries, with less water and chalk.
        Light = "light", LIGHT;
        /// Mixed, hardens by itself; sands more easily.
        SettingLight = "setting-light", SETTING_LIGHT;
        /// Mixed, hardens by itself.
        Setting = "setting", SETTING;
    }
}

const fn pounds(count: i64) -> Measure {
    Measure::whole(&WEIGHT, count)
}

/// What a package holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Package {
    /// Gallons in a pail.
    Pail(Measure),
    /// Pounds in a bag, and of powder in so much as [`GALLONS`] likely takes.
    Bag(Measure, Measure),
}

/// In a pail. Source: [`WEIGHTS`].
pub const PAIL: Measure = Measure::hundredths(&GALLON, 450);
const SMALL_PAIL: Measure = Measure::whole(&GALLON, 1);

/// The pail that so much is bought in. Source: [`WEIGHTS`].
pub fn pail_for(wet: Measure) -> Measure {
    let small = is_at_most(wet, Limit { value: SMALL_PAIL, source: &WEIGHTS });
    if small { SMALL_PAIL } else { PAIL }
}

/// A gallon of ready-mixed compound. Source: [`WEIGHTS`].
pub const READY_WEIGHS: Measure = Measure::hundredths(&LB_PER_GAL, 1370);
/// Of its weight, the most that is water. Source: [`WEIGHTS`].
pub const WATER: Measure = Measure::whole(&PERCENT, 35);

impl Compound {
    /// By volume: least, likely, most. Source: [`SHRINKAGE`].
    pub fn shrinks(self) -> [Measure; 3] {
        let percent = match self {
            Self::Ready => [20, 25, 30],
            Self::Light => [10, 14, 18],
            Self::SettingLight | Self::Setting => [1, 3, 5],
        };
        percent.map(|percent| Measure::whole(&PERCENT, percent))
    }

    /// A gallon of it; none of a powder. Source: [`WEIGHTS`].
    pub const fn weighs(self) -> Option<Measure> {
        match self {
            Self::Ready => Some(READY_WEIGHS),
            Self::Light => Some(Measure::hundredths(&LB_PER_GAL, 890)),
            Self::SettingLight | Self::Setting => None,
        }
    }

    /// How it is sold. Source: [`WEIGHTS`].
    pub const fn package(self) -> Package {
        match self {
            Self::Ready | Self::Light => Package::Pail(PAIL),
            Self::SettingLight => Package::Bag(pounds(18), pounds(52)),
            Self::Setting => Package::Bag(pounds(25), pounds(72)),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The model that [`JOINTS`] tells, in inches: two edge wedges and a parabolic crown.
    #[test]
    fn rates_are_what_wedges_and_crowns_come_to() {
        let crown = |high: f64, wide: f64| 12.0 * 2.0 / 3.0 * high * wide;
        let tapered = |deep: f64, wide: f64, high, across| 12.0 * deep * wide + crown(high, across);
        let near = |rate: Measure, want: f64| {
            assert!((rate.number() - want).abs() < 0.011, "{rate:?}, not {want}");
        };
        near(TAPERED[0], tapered(0.02, 2.0, 1.0 / 64.0, 10.0));
        near(TAPERED[1], tapered(0.05, 2.5, 1.0 / 32.0, 12.0));
        near(TAPERED[2], tapered(0.09, 2.5, 1.0 / 32.0, 14.0));
        for (feather, wide) in [(Feather::W18, 18.0), (Feather::W24, 24.0), (Feather::W36, 36.0)] {
            near(feather.takes(), crown(1.0 / 16.0, wide));
        }
        near(CORNER, 12.0 * 2.0 * 3.5 * 0.03);
        near(BEAD, 12.0 * 0.10 * 4.0);
        let pop = std::f64::consts::FRAC_PI_4 * 6.0 * 10.0 * 0.02;
        assert!((pop - 0.94).abs() < 0.005);
    }
}
