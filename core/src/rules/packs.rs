//! What a shop sells things in, where a person hasn't said.

use super::electrical::cable_length::smallest_roll;
use super::finish::compound::{Compound, Package};
use crate::measure::unit::GALLON;
use crate::measure::{Length, Measure};
use crate::words;
use crate::words::{Amount, Phrase};

words! {
    PACKS_SAYS = "Compound is sold in pails of 4.5 gal and bags of 18 or 25 lb, tape in rolls of 500 ft, bead in lengths of 8 ft, plastic in rolls of 100 ft, cable in rolls of 25 to 250 ft, primer and paint by the gallon.", es "La pasta se vende en cubetas de 4.5 gal y bolsas de 18 o 25 lb, la cinta en rollos de 500 ft, el esquinero en tramos de 8 ft, el plástico en rollos de 100 ft, el cable en rollos de 25 a 250 ft, el sellador y la pintura por galón.";
    PACKS_SEEN = "what shops mostly have; put your own in its place", es "lo que casi siempre hay en las tiendas; ponga los suyos en su lugar";
    PAIL = "pail", es "cubeta";
    BAG = "bag", es "bolsa";
    ROLL = "roll", es "rollo";
    STICK = "length", es "tramo";
    CAN = "can", es "lata";
}

source!(
    /// What a shop sells.
    PACKS, "usual-packs", "Usual packages" es "Empaques usuales", PACKS_SAYS, PACKS_SEEN, CommonPractice
);

/// How a material whose key starts so is sold: what a package is called, and what it holds. None
/// where it is sold by the piece, or where shops differ. Source: [`PACKS`].
///
/// `needs` picks the roll of cable, by [`smallest_roll`].
pub fn usual(key: &str, needs: Amount) -> Option<(&'static Phrase, Amount)> {
    if let Some(kind) = key.strip_prefix("compound ") {
        const KINDS: [Compound; 4] =
            [Compound::Ready, Compound::Light, Compound::SettingLight, Compound::Setting];
        return KINDS.into_iter().find(|it| it.key() == kind).map(|it| match it.package() {
            Package::Pail(holds) => (&PAIL, holds.into()),
            Package::Bag(holds, _) => (&BAG, holds.into()),
        });
    }
    const FEET: fn(i64) -> Amount = |feet| Amount::Length(Length::inches(12 * feet, 1));
    Some(match key.split(' ').next()? {
        "joint-tape" => (&ROLL, FEET(500)),
        "corner-bead" => (&STICK, FEET(8)),
        "plastic" => (&ROLL, FEET(100)),
        "cable" => match needs {
            Amount::Length(needs) => {
                (&ROLL, smallest_roll(needs).map_or(FEET(250), Amount::Length))
            }
            _ => return None,
        },
        "primer" | "finish" => (&CAN, Measure::whole(&GALLON, 1).into()),
        _ => return None,
    })
}
