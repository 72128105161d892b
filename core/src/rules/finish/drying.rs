//! How long drying-type compound takes, by temperature and humidity: a published table, and a
//! model that was fitted to it. And the clock of setting-type compound.

use super::vapor::saturated;
use crate::measure::Measure;
use crate::measure::unit::{FAHRENHEIT, HOUR, KPA, MIL, PER_HOUR, PERCENT};
use crate::rules::compare::{Limit, is_at_least, is_at_most};
use crate::sheet::Expr;
use crate::words;

words! {
    WINDOW_SAYS = "An open window changes a room's air perhaps 5 times an hour; a tenth less time is not worth the heat.", es "Una ventana abierta cambia el aire de un cuarto quizá 5 veces por hora; un décimo menos de tiempo no vale el calor.";
    WINDOW_SEEN = "from memory; wind and a second window change it much", es "de memoria; el viento y una segunda ventana lo cambian mucho";
    TABLE_SAYS = "Drying-type compound under tape dries in so many hours by temperature and humidity: 17 h at 70 °F and 50 percent, 38 h at 60 °F and 70.", es "La pasta que seca al aire, bajo cinta, se seca en tantas horas según temperatura y humedad: 17 h a 70 °F y 50 por ciento, 38 h a 60 °F y 70.";
    TABLE_SEEN = "from memory of a gypsum handbook's appendix; bands of a finishing council's chart for 1/16 in agree, read", es "de memoria del apéndice de un manual de yeso; coinciden, leídas, las franjas de la tabla de un consejo de acabados para 1/16 in";
    MODEL_SAYS = "Hours = 22.9 × (saturated vapor in kPa)^−1.034 × (1 − humidity)^−0.903 for 1/16 in: within 2.7 percent of the table on average, 12 at worst, so the range is 91 to 114 percent of it.", es "Horas = 22.9 × (vapor saturado en kPa)^−1.034 × (1 − humedad)^−0.903 para 1/16 in: a 2.7 por ciento de la tabla en promedio, 12 en el peor caso, así que el rango es 91 a 114 por ciento de eso.";
    MODEL_SEEN = "fitted to all 77 cells of that table. Thicker, time grows with thickness, or at worst with its square: an assumption of ours", es "ajustado a las 77 casillas de esa tabla. Más gruesa, el tiempo crece con el grueso, o en el peor caso con su cuadrado: una suposición nuestra";
    COLD_SAYS = "The room is kept at 50 °F, or 55, from 48 h before until all is dry. Wet compound that freezes is spoiled.", es "El cuarto se mantiene a 50 °F, o 55, desde 48 h antes hasta que todo seque. La pasta mojada que se congela se echa a perder.";
    COLD_SEEN = "read in two makers' sheets, 50 and 55, and a maker's guide; freezing from memory", es "leído en las hojas de dos fabricantes, 50 y 55, y en la guía de un fabricante; lo de congelarse, de memoria";
    SETTING_SAYS = "Setting compound labeled 20 works 20 to 30 minutes, 45: 30 to 80, 90: 85 to 130, 210: 180 to 240. It hardens by reaction, and can be coated once hard, after about 30 minutes, 1 h, 2 h and 4 h, from 45 °F up, but is painted only when dry.", es "La pasta de fraguado rápido con etiqueta 20 se trabaja 20 a 30 minutos, 45: 30 a 80, 90: 85 a 130, 210: 180 a 240. Endurece por reacción, y recibe otra mano ya dura, después de unos 30 minutos, 1 h, 2 h y 4 h, desde 45 °F, pero se pinta solo ya seca.";
    SETTING_SEEN = "times from memory; that humidity hardly matters read in a builders' magazine, 45 °F in a maker's sheet", es "tiempos de memoria; que la humedad casi no importa, leído en una revista de constructores; 45 °F, en la hoja de un fabricante";
}

source!(
    /// What an open window is worth.
    WINDOW, "window-worth", "Open windows, habit" es "Ventanas abiertas, costumbre", WINDOW_SAYS, WINDOW_SEEN, CommonPractice
);
source!(
    /// The table.
    TABLE_SOURCE, "drying-table", "Gypsum handbook, drying time of compound" es "Manual de yeso, secado de la pasta", TABLE_SAYS, TABLE_SEEN, Memory
);
source!(
    /// The model.
    MODEL, "drying-model", "Drying time, fitted to the table" es "Tiempo de secado, ajustado a la tabla", MODEL_SAYS, MODEL_SEEN, Derived
);
source!(
    /// How warm a room is kept.
    WARM, "finishing-temperature", "Makers' sheets, room temperature" es "Hojas de fabricantes, temperatura del cuarto", COLD_SAYS, COLD_SEEN, Read
);
source!(
    /// The clock of setting compound.
    SETTING, "setting-times", "Makers' sheets, setting compound" es "Hojas de fabricantes, pasta de fraguado", SETTING_SAYS, SETTING_SEEN, Memory
);

/// The columns of [`TABLE`], °F.
pub const TEMPERATURES: [i64; 7] = [32, 40, 50, 60, 70, 80, 100];
/// Percent of humidity, and hours at [`TEMPERATURES`]. Source: [`TABLE_SOURCE`].
#[rustfmt::skip]
pub const TABLE: [(i64, [i64; 7]); 11] = [
    (0,  [38,   28,  19,  13,  9,   6,   3]),
    (20, [48,   34,  23,  16,  11,  8,   4]),
    (40, [60,   44,  29,  20,  14,  10,  5]),
    (50, [72,   48,  36,  24,  17,  12,  6]),
    (60, [84,   60,  42,  29,  20,  14,  8]),
    (70, [108,  84,  54,  38,  26,  19,  10]),
    (80, [168,  114, 78,  54,  38,  27,  14]),
    (85, [240,  144, 96,  72,  48,  34,  18]),
    (90, [312,  216, 144, 108, 72,  49,  26]),
    (95, [600,  384, 288, 192, 144, 96,  48]),
    (98, [1272, 912, 624, 432, 288, 216, 120]),
];
/// Above this the table ends, and nothing dries.
pub const WETTEST: i64 = 98;
/// What the table's hours come to against the model's, at least and at most. Worked out over all
/// cells of [`TABLE`].
pub const AGAINST_MODEL: [Measure; 2] =
    [Measure::whole(&PERCENT, 91), Measure::whole(&PERCENT, 114)];
/// The coat that the table is taken to be for: 1/16 in.
pub const NOMINAL: Measure = Measure::hundredths(&MIL, 6250);
/// The least of a room's temperature. Source: [`WARM`].
pub const LEAST_WARM: Limit<Measure> =
    Limit { value: Measure::whole(&FAHRENHEIT, 55), source: &WARM };
/// Labels of setting compound, and its minutes of working: least and most. Source: [`SETTING`].
pub const CLOCKS: [(i64, [i64; 2]); 4] =
    [(20, [20, 30]), (45, [30, 80]), (90, [85, 130]), (210, [180, 240])];

/// The least for setting compound. Source: [`SETTING`].
pub const LEAST_SETTING: Limit<Measure> =
    Limit { value: Measure::whole(&FAHRENHEIT, 45), source: &SETTING };

/// Freezes wet compound. Source: [`WARM`].
pub const FREEZING: Limit<Measure> =
    Limit { value: Measure::whole(&FAHRENHEIT, 32), source: &WARM };
/// The most that a window changes a room's air. Source: [`WINDOW`].
const WINDOW_GIVES: Limit<Measure> = Limit { value: Measure::whole(&PER_HOUR, 5), source: &WINDOW };

/// Minutes after which it may be coated again, once hard, of each of [`CLOCKS`]; about. Source:
/// [`SETTING`].
pub const AGAIN: [i64; 4] = [30, 60, 120, 240];

/// Whether an open window saves a tenth of the hours, with air changes that it gives.
pub fn is_worth_a_window(now: Measure, open: Measure, changes: Option<Measure>) -> bool {
    let most = now.of_same(now.millionths() / 10 * 9);
    is_at_most(open, Limit { value: most, source: &WINDOW })
        && changes.is_none_or(|changes| is_at_most(changes, WINDOW_GIVES))
}

/// Whether a room is as warm as makers ask for.
pub fn is_warm(at: Measure) -> bool {
    is_at_least(at, LEAST_WARM)
}

/// The table's own hours, where these conditions stand in it.
pub fn in_table(at: Measure, humidity: Measure) -> Option<Measure> {
    let whole = |measure: Measure, count| measure.millionths() == 1_000_000 * count;
    let column = TEMPERATURES.iter().position(|degrees| whole(at, *degrees))?;
    let (_, hours) = TABLE.iter().find(|(percent, _)| whole(humidity, *percent))?;
    Some(Measure::whole(&HOUR, hours[column]))
}

/// The model's hours for [`NOMINAL`]; below [`WETTEST`].
pub fn hours(at: Measure, humidity: Measure) -> Expr {
    let one = Expr::measure(Measure::whole(&KPA, 1));
    let vapor = Expr::Power(-1034, Box::new(Expr::measure(saturated(at)).over(one)));
    let dry = Expr::count(1).less(Expr::measure(humidity));
    let first = Expr::measure(Measure::hundredths(&HOUR, 2290));
    first.times(vapor).times(Expr::Power(-903, Box::new(dry))).told_in(&HOUR)
}

/// What is dry after spells, each of so many hours in conditions that take so many: 1 is all.
pub fn done(spells: &[(Measure, Measure)]) -> f64 {
    spells.iter().map(|(spent, takes)| spent.number() / takes.number()).sum()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rules::air::jets::measured;
    use proptest::prelude::*;

    fn model(at: i64, humidity: i64) -> f64 {
        let (at, humidity) =
            (Measure::hundredths(&FAHRENHEIT, at), Measure::hundredths(&PERCENT, humidity));
        measured(hours(at, humidity)).unwrap().number()
    }

    /// Source: the table, which is from memory: each cell is near the model, which is evidence that
    /// it was remembered right.
    #[test]
    fn every_cell_of_the_table_is_within_the_stated_error_of_the_model() {
        let mut sum = 0.0;
        let mut ratios = Vec::new();
        for (humidity, row) in TABLE {
            for (at, want) in TEMPERATURES.into_iter().zip(row) {
                let got = model(100 * at, 100 * humidity);
                sum += (got / want as f64 - 1.0).abs();
                ratios.push(want as f64 / got);
                assert!((got / want as f64 - 1.0).abs() < 0.12, "{at} °F {humidity} %: {got}");
                let (at, humidity) =
                    (Measure::whole(&FAHRENHEIT, at), Measure::whole(&PERCENT, humidity));
                assert_eq!(in_table(at, humidity), Some(Measure::whole(&HOUR, want)));
            }
        }
        assert_eq!(ratios.len(), 77);
        assert!((sum / 77.0 - 0.027).abs() < 0.0005, "{sum}");
        let [least, most] = AGAINST_MODEL.map(|share| share.number() / 100.0);
        let (low, high) = ratios
            .iter()
            .fold((9.0_f64, 0.0_f64), |(low, high), ratio| (low.min(*ratio), high.max(*ratio)));
        assert!(least <= low && low < least + 0.01 && high <= most && most < high + 0.01);
        assert_eq!(in_table(Measure::whole(&FAHRENHEIT, 71), Measure::whole(&PERCENT, 50)), None);
    }

    /// Worked by hand from the table: 12 of 17 h, then 38 h: 11.2 more.
    #[test]
    fn progress_adds_up_over_changing_conditions() {
        let hours = |count| Measure::whole(&HOUR, count);
        let after = done(&[(hours(12), hours(17))]);
        assert!((after - 12.0 / 17.0).abs() < 1e-9);
        assert!(((1.0 - after) * 38.0 - 11.18).abs() < 0.01);
    }

    proptest! {
        #[test]
        fn wetter_dries_slower_and_warmer_faster(
            at in 3_200_i64..10_000, warmer in 0_i64..2_000, wet in 0_i64..9_800, wetter in 0_i64..900,
        ) {
            let (hot, damp) = ((at + warmer).min(10_000), (wet + wetter).min(9_800));
            prop_assert!(model(hot, wet) <= model(at, wet));
            prop_assert!(model(at, damp) >= model(at, wet));
        }
    }
}
