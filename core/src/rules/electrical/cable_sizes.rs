//! Nonmetallic-sheathed cables: what is in them, and how large they are from outside.

use super::conductor_volume::Awg;
use crate::measure::unit::{PERCENT, POUNDS_A_THOUSAND_FEET, SQUARE_INCH};
use crate::measure::{Length, Measure, Rounding, divide};
use crate::rules::compare::Limit;
use crate::{choice, words};

words! {
    SAYS = "Outside sizes of nonmetallic cable with its ground: 14-2 0.372 by 0.176 in, 14-3 0.478 by 0.176, 14-2-2 0.350 round, 12-2 0.422 by 0.190, 12-3 0.524 by 0.190, 12-2-2 0.395 round, 10-2 0.505 by 0.218. 1000 ft weigh 61, 81, 95, 87, 115, 138 and 126 lb.", es "Medidas por fuera del cable no metálico con su tierra: 14-2 0.372 por 0.176 in, 14-3 0.478 por 0.176, 14-2-2 0.350 redondo, 12-2 0.422 por 0.190, 12-3 0.524 por 0.190, 12-2-2 0.395 redondo, 10-2 0.505 por 0.218. 1000 ft pesan 61, 81, 95, 87, 115, 138 y 126 lb.";
    SEEN = "read in one maker's data sheet; others differ by a few percent, and some 3-wire cable is round", es "leído en la hoja de datos de un fabricante; otros difieren en un pequeño porcentaje, y algún cable de 3 hilos es redondo";
    HALF_SAYS = "About half of a bored hole is left free, so that cable pulls without burning its sheath. No fill of bored holes is printed.", es "Se deja libre más o menos la mitad de un agujero taladrado, para que el cable se jale sin quemar su forro. No hay llenado impreso para agujeros taladrados.";
    HALF_SEEN = "no publication", es "sin publicación";
    C14_2 = "14-2", es "14-2";
    C14_3 = "14-3", es "14-3";
    C14_4 = "14-2-2", es "14-2-2";
    C12_2 = "12-2", es "12-2";
    C12_3 = "12-3", es "12-3";
    C12_4 = "12-2-2", es "12-2-2";
    C10_2 = "10-2", es "10-2";
    C10_3 = "10-3", es "10-3";
    C8_2 = "8-2", es "8-2";
    C8_3 = "8-3", es "8-3";
    C6_2 = "6-2", es "6-2";
    C6_3 = "6-3", es "6-3";
}

source!(
    /// Where sizes are published.
    SIZES, "nm-b-sizes", "A maker's data sheet for type NM-B, weights and measurements" es "Hoja de datos de un fabricante para tipo NM-B, pesos y medidas", SAYS, SEEN, Read
);

source!(
    /// How much of a hole is taken.
    HALF_FREE, "half-a-hole", "Cables in a bored hole" es "Cables en un agujero taladrado", HALF_SAYS, HALF_SEEN, CommonPractice
);

/// The most of a hole that cables take.
pub const MOST_TAKEN: Limit<Measure> =
    Limit { value: Measure::whole(&PERCENT, 50), source: &HALF_FREE };

/// All of a hole.
pub const WHOLE: Limit<Measure> =
    Limit { value: Measure::whole(&PERCENT, 100), source: &HALF_FREE };

choice! {
    /// Nonmetallic-sheathed cable with a ground, by its size and insulated conductors.
    pub enum Sheathed {
        /// 14 AWG, two.
        Nm14x2 = "14-2", C14_2;
        /// 14 AWG, three.
        Nm14x3 = "14-3", C14_3;
        /// 14 AWG, four.
        Nm14x4 = "14-2-2", C14_4;
        /// 12 AWG, two.
        Nm12x2 = "12-2", C12_2;
        /// 12 AWG, three.
        Nm12x3 = "12-3", C12_3;
        /// 12 AWG, four.
        Nm12x4 = "12-2-2", C12_4;
        /// 10 AWG, two.
        Nm10x2 = "10-2", C10_2;
        /// 10 AWG, three.
        Nm10x3 = "10-3", C10_3;
        /// 8 AWG, two.
        Nm8x2 = "8-2", C8_2;
        /// 8 AWG, three.
        Nm8x3 = "8-3", C8_3;
        /// 6 AWG, two.
        Nm6x2 = "6-2", C6_2;
        /// 6 AWG, three.
        Nm6x3 = "6-3", C6_3;
    }
}

/// Those whose sizes were not read, as a field's condition names them.
pub const UNREAD: &[&str] = &["10-3", "8-2", "8-3", "6-2", "6-3"];

impl Sheathed {
    /// Its size, its insulated conductors, and how wide and thick it is, in thousandths of an inch.
    const fn row(self) -> (Awg, i64, Option<(i64, i64)>) {
        match self {
            Self::Nm14x2 => (Awg::Awg14, 2, Some((372, 176))),
            Self::Nm14x3 => (Awg::Awg14, 3, Some((478, 176))),
            Self::Nm14x4 => (Awg::Awg14, 4, Some((350, 350))),
            Self::Nm12x2 => (Awg::Awg12, 2, Some((422, 190))),
            Self::Nm12x3 => (Awg::Awg12, 3, Some((524, 190))),
            Self::Nm12x4 => (Awg::Awg12, 4, Some((395, 395))),
            Self::Nm10x2 => (Awg::Awg10, 2, Some((505, 218))),
            Self::Nm10x3 => (Awg::Awg10, 3, None),
            Self::Nm8x2 => (Awg::Awg8, 2, None),
            Self::Nm8x3 => (Awg::Awg8, 3, None),
            Self::Nm6x2 => (Awg::Awg6, 2, None),
            Self::Nm6x3 => (Awg::Awg6, 3, None),
        }
    }

    /// Size and number of its insulated conductors. Each is counted as carrying current.
    pub const fn conductors(self) -> (Awg, i64) {
        let (size, count, _) = self.row();
        (size, count)
    }

    /// What 1000 ft of it weigh; none where that was not read.
    pub fn weight(self) -> Option<Measure> {
        const POUNDS: [i64; 7] = [61, 81, 95, 87, 115, 138, 126];
        let pounds = POUNDS.get(self as usize)?;
        Some(Measure::whole(&POUNDS_A_THOUSAND_FEET, *pounds))
    }

    /// How wide and how thick it is; none where that was not read.
    pub fn size(self) -> Option<(Length, Length)> {
        let (wide, thick) = self.row().2?;
        Some((Length::inches(wide, 1000), Length::inches(thick, 1000)))
    }
}

/// What a cable takes of a hole: a flat one has round edges. A round one, or a hole, is as wide as
/// it is thick. Rounded to a millionth of a square inch, with 103 993 ÷ 33 102 for π.
pub fn outline(wide: Length, thick: Length) -> Measure {
    /// π ÷ 4 and a square inch.
    const ROUND: (i128, i128) = (103_993, 4 * 33_102);
    const SQUARE: i128 = 25_400_000 * 25_400_000;
    let (wide, thick) = (wide.max(thick), wide.min(thick));
    let [wide, thick] = [wide, thick].map(|length| i128::from(length.nanometres()));
    // Both within a mile, so well within 128 bits.
    let area = thick * (wide - thick) * ROUND.1 + thick * thick * ROUND.0;
    let millionths = divide(area * 1_000_000, ROUND.1 * SQUARE, Rounding::Nearest);
    Measure::new(&SQUARE_INCH, i64::try_from(millionths).unwrap_or(i64::MAX))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: a maker's data sheet for type NM-B, weights and measurements: pounds of all, and of
    /// their copper, in 1000 ft. Copper by hand: 14 AWG 12.4 lb, 12 AWG 19.8 lb, 10 AWG 31.4 lb.
    #[test]
    fn cable_weighs_more_than_its_copper() {
        for (cable, pounds, copper) in [
            (Sheathed::Nm14x2, 61, 37),
            (Sheathed::Nm14x3, 81, 49),
            (Sheathed::Nm14x4, 95, 62),
            (Sheathed::Nm12x2, 87, 59),
            (Sheathed::Nm12x3, 115, 79),
            (Sheathed::Nm12x4, 138, 99),
            (Sheathed::Nm10x2, 126, 91),
        ] {
            assert_eq!(cable.weight(), Some(Measure::whole(&POUNDS_A_THOUSAND_FEET, pounds)));
            let (size, count) = cable.conductors();
            // With its ground, of the same size; 8.89 g/cm³.
            let bare = match size {
                Awg::Awg14 => 12.4,
                Awg::Awg12 => 19.8,
                _ => 31.4,
            } * (count + 1) as f64;
            assert!((bare - f64::from(copper)).abs() < 4.0 && copper < pounds as i32, "{cable:?}");
        }
        // Sizes and weights are of one sheet: what has the one has the other.
        assert!(Sheathed::ALL.iter().all(|it| it.weight().is_some() == it.size().is_some()));
    }
}
