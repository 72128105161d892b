//! A run of duct: as it is put in, and what it loses.

use super::fittings::{Cost, Fitting};
use super::friction::{self, FLEXIBLE, GALVANIZED};
use super::{flex, rectangular, standard_air};
use crate::fields::{Kind, Row, Span, When, row};
use crate::measure::unit::PERCENT;
use crate::measure::{Length, Measure};
use crate::words::Phrase;
use crate::{choice, form, words};

words! {
    NOTHING = "", es "";
    KIND = "Duct", es "Ducto";
    ROUND = "Round metal", es "Redondo de lámina";
    RECTANGULAR = "Rectangular metal", es "Rectangular de lámina";
    FLEX = "Flexible", es "Flexible";
    DIAMETER = "Diameter, inside", es "Diámetro, por dentro";
    WIDE = "Inside, one side", es "Por dentro, un lado";
    HIGH = "Inside, other side", es "Por dentro, otro lado";
    LENGTH = "Length as it lies", es "Largo como está puesto";
    LENGTH_HINT = "Straight duct. With fittings already counted as feet, put in the effective length.", es "Ducto recto. Si las piezas ya se contaron como pies, ponga el largo efectivo.";
    SLACK = "Shorter than pulled tight by", es "Más corto que bien estirado, por";
    SLACK_HINT = "Blank for pulled tight. 12 ft pulled tight, put in over 10 ft 2-3/8 in: 15 %.", es "Vacío si va bien estirado. 12 ft bien estirados, puestos en 10 ft 2-3/8 in: 15 %.";
    WHY_SIZE = "larger ducts are trunks of a system for its designer.", es "ductos más grandes son troncales de un sistema, para su diseñador.";
    WHY_LENGTH = "no branch in a house is that long.", es "ningún ramal de casa es tan largo.";
    WHY_SLACK = "that is a heap, no duct.", es "eso es un montón, no un ducto.";
}

choice! {
    /// What a duct is made of.
    pub enum DuctKind {
        /// Galvanized, round.
        Round = "round", ROUND;
        /// Galvanized, square-cornered.
        Rectangular = "rectangular", RECTANGULAR;
        /// A wire spiral in film.
        Flex = "flex", FLEX;
    }
}

/// Of a side or a diameter, in inches.
pub const fn size(label: &'static Phrase, optional: bool) -> Row {
    row(
        label,
        &NOTHING,
        Kind::Length(Span {
            least: Length::inches(1, 1),
            most: Length::inches(24, 1),
            why: &WHY_SIZE,
            common: SIZES,
            optional,
        }),
    )
}

/// Along a duct, in inches.
pub const fn along(
    label: &'static Phrase,
    hint: &'static Phrase,
    least: i64,
    optional: bool,
) -> Row {
    row(
        label,
        hint,
        Kind::Length(Span {
            least: Length::inches(least, 1),
            most: Length::inches(3600, 1),
            why: &WHY_LENGTH,
            common: &[],
            optional,
        }),
    )
}

/// How much shorter than pulled tight.
pub const fn slack(label: &'static Phrase, hint: &'static Phrase) -> Row {
    row(
        label,
        hint,
        Kind::Measure(Span {
            least: Measure::whole(&PERCENT, 0),
            most: Measure::whole(&PERCENT, 60),
            why: &WHY_SLACK,
            common: SLACKS,
            optional: true,
        }),
    )
}

/// Common practice: the sizes that branches come in.
const SIZES: &[Length] = &[
    Length::inches(4, 1),
    Length::inches(5, 1),
    Length::inches(6, 1),
    Length::inches(7, 1),
    Length::inches(8, 1),
];
/// The shares that were tested.
const SLACKS: &[Measure] =
    &[Measure::whole(&PERCENT, 4), Measure::whole(&PERCENT, 15), Measure::whole(&PERCENT, 30)];

form! {
    /// A run of one kind and size.
    pub struct Run {
        /// What it is made of.
        kind: DuctKind, row(&KIND, &NOTHING, Kind::Choice(DuctKind::PICKS));
        /// Of a round one.
        diameter: Option<Length>, size(&DIAMETER, false).when(When::IsNot("kind", &["rectangular"]));
        /// Of a rectangular one.
        wide: Option<Length>, size(&WIDE, false).when(When::Is("kind", &["rectangular"]));
        /// Of a rectangular one.
        high: Option<Length>, size(&HIGH, false).when(When::Is("kind", &["rectangular"]));
        /// As it lies.
        length: Option<Length>, along(&LENGTH, &LENGTH_HINT, 6, false);
        /// Of flexible duct.
        slack: Option<Measure>, slack(&SLACK, &SLACK_HINT).when(When::Is("kind", &["flex"]));
    }
}

/// In inches.
pub fn inches(length: Length) -> f64 {
    length.nanometres() as f64 / 25_400_000.0
}

impl Run {
    /// With `diameter` and `length`, round or flexible.
    pub fn round(kind: DuctKind, diameter: Length, length: Length, slack: Option<Measure>) -> Self {
        let (diameter, length) = (Some(diameter), Some(length));
        Self { kind, diameter, wide: None, high: None, length, slack }
    }

    /// How it loses.
    pub fn duct(&self) -> Duct {
        let side = |side: Option<Length>| inches(side.unwrap_or_default()).max(0.1);
        let round = |d: f64| (d, std::f64::consts::FRAC_PI_4 * d * d);
        let (diameter, area) = match self.kind {
            DuctKind::Rectangular => {
                let (a, b) = (side(self.wide), side(self.high));
                (rectangular::diameter(a, b), a * b)
            }
            _ => round(side(self.diameter)),
        };
        let slack = self.slack.map_or(0.0, |slack| slack.number() / 100.0);
        let (rough, correction) = match self.kind {
            DuctKind::Flex => (FLEXIBLE, flex::correction(slack, diameter)),
            _ => (GALVANIZED, 1.0),
        };
        let feet = inches(self.length.unwrap_or_default()) / 12.0;
        Duct { diameter, area, rough, feet, correction, fittings: 0.0, c: 0.0 }
    }
}

/// A duct as its loss sees it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Duct {
    /// Inches, for friction: of a rectangular one that of the round duct that loses as much.
    pub diameter: f64,
    /// Real area in square inches.
    pub area: f64,
    /// Roughness in feet.
    pub rough: f64,
    /// Feet as it lies.
    pub feet: f64,
    /// Times so much, where flexible duct is slack.
    pub correction: f64,
    /// Feet of tight duct that its fittings are worth.
    pub fittings: f64,
    /// Velocity pressures that its fittings cost.
    pub c: f64,
}

/// In inches of water, and how much more of it a cfm more loses.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Loss {
    /// Lost.
    pub drop: f64,
    /// Its slope.
    pub slope: f64,
}

impl Duct {
    /// With `count` fittings of a `cost` more.
    pub fn fitted(self, cost: Cost, count: f64) -> Self {
        match cost {
            Cost::C(c) => Self { c: self.c + c * count, ..self },
            Cost::Feet(feet) => Self { fittings: self.fittings + feet * count, ..self },
            Cost::Said => self,
        }
    }

    /// Feet per minute in its real area.
    pub fn velocity(&self, cfm: f64) -> f64 {
        cfm * 144.0 / self.area
    }

    /// Its Reynolds number; of a rectangular one that of the round duct that loses as much.
    pub fn reynolds(&self, cfm: f64) -> f64 {
        standard_air::reynolds(self.diameter, self.round_velocity(cfm))
    }

    /// Its Darcy friction factor, at a flow above zero.
    pub fn factor(&self, cfm: f64) -> f64 {
        friction::factor(self.reynolds(cfm), self.relative()).0
    }

    fn relative(&self) -> f64 {
        self.rough * 12.0 / self.diameter
    }

    /// In the round duct that friction is worked in.
    pub fn round_velocity(&self, cfm: f64) -> f64 {
        cfm * 144.0 / (std::f64::consts::FRAC_PI_4 * self.diameter * self.diameter)
    }

    /// Feet that friction sees.
    pub fn friction_feet(&self) -> f64 {
        self.correction * self.feet + self.fittings
    }

    /// What it loses; nothing at no flow.
    pub fn loss(&self, cfm: f64) -> Loss {
        if cfm <= 0.0 {
            return Loss::default();
        }
        let (factor, slope) = friction::factor(self.reynolds(cfm), self.relative());
        let pressure = standard_air::velocity_pressure(self.round_velocity(cfm));
        let lengths = 12.0 * self.friction_feet() / self.diameter * pressure;
        let fittings = self.c * standard_air::velocity_pressure(self.velocity(cfm));
        let drop = factor * lengths + fittings;
        Loss { drop, slope: (2.0 * drop + slope * lengths) / cfm }
    }

    /// In inches of water per 100 ft as it lies.
    pub fn rate(&self, cfm: f64) -> f64 {
        let plain = Self { feet: 100.0, fittings: 0.0, c: 0.0, ..*self };
        plain.loss(cfm).drop
    }
}

/// What ducts one behind the other lose.
pub fn in_series(ducts: &[Duct], cfm: f64) -> Loss {
    ducts.iter().fold(Loss::default(), |sum, duct| {
        let loss = duct.loss(cfm);
        Loss { drop: sum.drop + loss.drop, slope: sum.slope + loss.slope }
    })
}

/// The cfm at which something that rises from nothing reaches `want`, to the last digit: by halving.
/// `most` is where it surely is past it.
pub fn flow_at(want: f64, most: f64, rises: &dyn Fn(f64) -> f64) -> f64 {
    let (mut low, mut high) = (0.0, most);
    for _ in 0..200 {
        let middle = f64::midpoint(low, high);
        if middle <= low || middle >= high {
            break;
        }
        if rises(middle) < want {
            low = middle;
        } else {
            high = middle;
        }
    }
    f64::midpoint(low, high)
}

impl Fitting {
    /// Whether it turns, so that its angle counts.
    pub fn is_elbow(self) -> bool {
        std::ptr::eq(self.cost().1, &super::fittings::ELBOWS) && self.cost().0 != Cost::Said
    }
}
