//! Water vapor in air: its pressure, its dew point, and what it weighs.

use crate::measure::Measure;
use crate::measure::unit::{FAHRENHEIT, GRAIN, KPA, LB_PER_GAL, PERCENT};
use crate::words;

words! {
    FLUES_SAYS = "A fan that blows out of a tight room pulls its air from wherever it can, down a flue too. None may be open where it pulls.", es "Un ventilador que saca aire de un cuarto cerrado jala el aire de donde puede, también por una chimenea hacia abajo. No puede haber ninguna abierta donde jala.";
    FLUES_SEEN = "common practice of combustion safety; from memory", es "costumbre del oficio en seguridad de combustión; de memoria";
    WATER_SAYS = "A gallon of water weighs 8.34 lb.", es "Un galón de agua pesa 8.34 lb.";
    WATER_SEEN = "from memory: 62.4 lb a cubic foot", es "de memoria: 62.4 lb por pie cúbico";
    SAYS = "Saturated vapor has 0.61094 × exp(17.625 × °C ÷ (°C + 243.04)) kPa, over water. Air let in and warmed keeps its vapor, so humidity falls. Vapor weighs 1 kPa ÷ (0.4615 kJ/kg·K × K) a volume.", es "El vapor saturado tiene 0.61094 × exp(17.625 × °C ÷ (°C + 243.04)) kPa, sobre agua. El aire que se mete y se calienta guarda su vapor, así que la humedad baja. El vapor pesa 1 kPa ÷ (0.4615 kJ/kg·K × K) por volumen.";
    SEEN = "the Magnus formula and the gas law from memory; a psychrometrics library agrees within 0.4 percent from 32 to 100 °F", es "la fórmula de Magnus y la ley de los gases, de memoria; una biblioteca de psicrometría coincide a 0.4 por ciento de 32 a 100 °F";
}

source!(
    /// Where vapor's pressure comes from.
    VAPOR, "water-vapor", "Psychrometrics, Magnus formula" es "Psicrometría, fórmula de Magnus", SAYS, SEEN, Memory
);

source!(
    /// Where a fan pulls.
    FLUES, "fan-and-flue", "Fans and open flues" es "Ventiladores y tiros abiertos", FLUES_SAYS, FLUES_SEEN, CommonPractice
);
source!(
    /// What water weighs.
    WATER, "water-weight", "Weight of water" es "Peso del agua", WATER_SAYS, WATER_SEEN, Memory
);

/// A gallon of water. Source: [`WATER`].
pub const WATER_WEIGHS: Measure = Measure::hundredths(&LB_PER_GAL, 834);

/// Magnus's constants, in kPa and °C.
const AT_FREEZING: f64 = 0.61094;
const STEEP: f64 = 17.625;
const SHIFT: f64 = 243.04;
/// Of water vapor, in kJ/kg·K, which is kPa·m³/kg·K.
const GAS: f64 = 0.4615;
/// A grain in a cubic foot is so many kilograms in a cubic metre.
const KILOGRAMS: f64 = 2.288_352e-3;

fn celsius(at: Measure) -> f64 {
    (at.number() - 32.0) / 1.8
}

fn near(unit: &'static crate::measure::Unit, value: f64) -> Measure {
    Measure::nearest(unit, value).unwrap_or(Measure::whole(unit, 0))
}

/// The most vapor that air of a temperature holds. Source: [`VAPOR`].
pub fn saturated(at: Measure) -> Measure {
    let celsius = celsius(at);
    near(&KPA, AT_FREEZING * libm::exp(STEEP * celsius / (celsius + SHIFT)))
}

/// The vapor in air of a temperature and a relative humidity.
pub fn pressure(at: Measure, humidity: Measure) -> Measure {
    near(&KPA, saturated(at).number() * humidity.number() / 100.0)
}

/// Where it begins to condense; none of perfectly dry air.
pub fn dew_point(vapor: Measure) -> Option<Measure> {
    let log = libm::log(vapor.number() / AT_FREEZING);
    let celsius = SHIFT * log / (STEEP - log);
    (vapor.millionths() > 0).then(|| near(&FAHRENHEIT, celsius * 1.8 + 32.0))
}

/// The relative humidity of vapor in air of a temperature; over 100 % it condenses.
pub fn humidity(vapor: Measure, at: Measure) -> Measure {
    near(&PERCENT, 100.0 * vapor.number() / saturated(at).number())
}

/// What vapor weighs in air of a temperature.
pub fn weight(vapor: Measure, at: Measure) -> Measure {
    near(&GRAIN, vapor.number() / (GAS * (celsius(at) + 273.15)) / KILOGRAMS)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn degrees(tenths: i64) -> Measure {
        Measure::hundredths(&FAHRENHEIT, 10 * tenths)
    }

    fn percent(whole: i64) -> Measure {
        Measure::whole(&PERCENT, whole)
    }

    /// Source: PyPI's `psychrolib` 2.5.0, saturation over water in kPa; see
    /// `tests/references/make_drying_vectors.py`.
    #[test]
    fn saturation_is_what_a_psychrometrics_library_has() {
        for (tenths, want) in [
            (321, 0.61368),
            (400, 0.83925),
            (500, 1.22799),
            (600, 1.76743),
            (700, 2.50471),
            (800, 3.49808),
            (900, 4.81866),
            (1000, 6.55216),
        ] {
            let got = saturated(degrees(tenths)).number();
            assert!((got / want - 1.0).abs() < 0.003, "{tenths}: {got}, not {want}");
        }
    }

    /// Source: the same script, °F.
    #[test]
    fn dew_points_are_what_a_psychrometrics_library_has() {
        for (at, humidity, want) in [
            (70, 50, 50.53),
            (60, 70, 50.20),
            (80, 80, 73.27),
            (72, 40, 46.39),
            (90, 90, 86.66),
            (50, 98, 49.46),
        ] {
            let got = dew_point(pressure(degrees(10 * at), percent(humidity))).unwrap().number();
            assert!((got - want).abs() < 0.1, "{at} °F {humidity} %: {got}, not {want}");
        }
        assert_eq!(dew_point(pressure(degrees(700), percent(0))), None);
    }

    /// Source: the same script, percent.
    #[test]
    fn outdoor_air_that_is_let_in_has_the_humidity_of_a_psychrometrics_library() {
        for (out, wet, inside, want) in
            [(35, 90, 70, 24.77), (80, 80, 72, 104.39), (50, 60, 68, 31.50), (90, 50, 75, 81.25)]
        {
            let vapor = pressure(degrees(10 * out), percent(wet));
            let got = humidity(vapor, degrees(10 * inside)).number();
            assert!((got - want).abs() < 0.15, "{out} °F {wet} %: {got}, not {want}");
        }
    }
}
