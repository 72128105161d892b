//! Asbestos: what counts as holding it, what is presumed to, how many samples an area takes, and
//! from what size on an agency is told ahead.

use super::Material;
use crate::measure::{Area, Length, Volume};
use crate::rules::compare::{Limit, is_at_least, is_at_most};
use crate::sheet::Source;
use crate::words;

words! {
    CONTENT_SAYS = "Material with more than 1 percent asbestos is asbestos-containing.", es "El material con más de 1 por ciento de asbesto es material que contiene asbesto.";
    CONTENT_SEEN = "read in OSHA training slides and in appendix A of 40 CFR 61 subpart M", es "leído en diapositivas de capacitación de OSHA y en el apéndice A de 40 CFR 61 subparte M";
    TRACE_SAYS = "Workers are protected at lower amounts too: no dry sweeping, for one.", es "Los trabajadores están protegidos también con cantidades menores: nada de barrer en seco, por ejemplo.";
    TRACE_SEEN = "from memory of 29 CFR 1926.1101", es "de memoria de 29 CFR 1926.1101";
    PRESUMED_SAYS = "Thermal insulation and sprayed or troweled surfacing in a building put up no later than 1980 is presumed to hold asbestos until samples show otherwise.", es "Se presume que el aislante térmico y el recubrimiento rociado o aplicado con llana de un edificio construido no después de 1980 tienen asbesto, hasta que las muestras demuestren lo contrario.";
    PRESUMED_SEEN = "read in a university's asbestos pages and an industrial hygiene article", es "leído en las páginas de asbesto de una universidad y en un artículo de higiene industrial";
    AFTER_SAYS = "A later year is no proof: old stock was used up after 1980. Have it tested.", es "Un año posterior no es prueba: el material guardado se usó hasta después de 1980. Mándelo analizar.";
    AFTER_SEEN = "common practice; an OSHA letter of August 1, 1997 says so of flooring", es "costumbre del oficio; una carta de OSHA del 1 de agosto de 1997 lo dice de los pisos";
    SAMPLES_SAYS = "Samples of each homogeneous area: 3 up to 1000 sq ft, 5 up to 5000 sq ft, 7 above. Written for schools, and asked for elsewhere.", es "Muestras de cada área homogénea: 3 hasta 1000 sq ft, 5 hasta 5000 sq ft, 7 arriba de eso. Escrito para escuelas, y pedido en otros lados.";
    SAMPLES_SEEN = "read in the 2005 and 2024 texts of 40 CFR 763.86; that it is used elsewhere is from memory", es "leído en los textos de 2005 y 2024 de 40 CFR 763.86; que se usa en otros lados es de memoria";
    ONE_IS_ENOUGH_SAYS = "One sample over 1 percent makes the whole area asbestos-containing.", es "Una muestra con más de 1 por ciento hace que toda el área sea material que contiene asbesto.";
    ONE_IS_ENOUGH_SEEN = "read in a training answer on the schools rule's guidance", es "leído en una respuesta de capacitación sobre la guía de la regla de escuelas";
    VERMICULITE_SAYS = "Loose vermiculite is treated as asbestos: a few grains can't speak for the rest.", es "La vermiculita suelta se trata como asbesto: unos cuantos granos no pueden hablar por el resto.";
    VERMICULITE_SEEN = "from memory of federal advice to homeowners", es "de memoria de consejos federales a dueños de casa";
    NOTICE_SAYS = "Renovation that strips at least 260 ft of pipe, 160 sq ft of other parts, or 35 cu ft where neither could be measured is told to the agency 10 working days ahead.", es "La renovación que quita al menos 260 ft de tubería, 160 sq ft de otras partes, o 35 cu ft donde no se pudo medir ninguna de las dos, se avisa a la agencia 10 días hábiles antes.";
    NOTICE_SEEN = "the amounts, all of one job together, read in the 2002 text of 40 CFR 61.145; the rest in a state air board's rule and its permit answers", es "las cantidades, todas las de un trabajo juntas, leídas en el texto de 2002 de 40 CFR 61.145; lo demás en la regla de una junta estatal del aire y sus respuestas de permisos";
    FLOORING_SAYS = "Asphalt and vinyl flooring put down no later than 1980 is treated as asbestos-containing until samples show otherwise.", es "El piso de asfalto y de vinil colocado no después de 1980 se trata como material que contiene asbesto hasta que las muestras demuestren lo contrario.";
    FLOORING_SEEN = "read in a training institute's summary of 29 CFR 1926.1101 and an OSHA letter of August 1, 1997", es "leído en el resumen de 29 CFR 1926.1101 de un instituto de capacitación y en una carta de OSHA del 1 de agosto de 1997";
    EXEMPT_SAYS = "A residential building of four or fewer dwelling units is left out, unless it is part of a larger installation or project.", es "Un edificio residencial de cuatro unidades de vivienda o menos queda fuera, a menos que sea parte de una instalación o un proyecto más grande.";
    EXEMPT_SEEN = "read in 60 FR 38725 (1995), a letter quoting 61.141 and a regional notification guide", es "leído en 60 FR 38725 (1995), una carta que cita 61.141 y una guía regional de avisos";
    ADVICE_SAYS = "Sound material is best left alone. Do not cut, sand, scrape, sweep or vacuum what may hold asbestos; find out before remodeling, and hire trained people.", es "El material en buen estado es mejor dejarlo quieto. No corte, lije, raspe, barra ni aspire lo que puede tener asbesto; averigüe antes de remodelar, y contrate gente capacitada.";
    ADVICE_SEEN = "read in pages that reprint a 1990 booklet of US agencies", es "leído en páginas que reimprimen un folleto de 1990 de agencias de EE. UU.";
}

source!(
    /// What counts as asbestos-containing.
    CONTENT, "cfr-40-61-m", "40 CFR 61 subpart M" es "40 CFR 61, subparte M", CONTENT_SAYS, CONTENT_SEEN, Read
);
source!(
    /// What holds below that.
    TRACE, "cfr-29-1926.1101", "29 CFR 1926.1101", TRACE_SAYS, TRACE_SEEN, Memory
);
source!(
    /// What is presumed.
    PRESUMED, "cfr-29-1926.1101(b)", "29 CFR 1926.1101(b)", PRESUMED_SAYS, PRESUMED_SEEN, Read
);
source!(
    /// Floors.
    FLOORING, "cfr-29-1926.1101(k)", "29 CFR 1926.1101(k)", FLOORING_SAYS, FLOORING_SEEN, Read
);
source!(
    /// What a later year is worth.
    AFTER, "practice-after-1980", "Common practice" es "Costumbre del oficio", AFTER_SAYS, AFTER_SEEN, CommonPractice
);
source!(
    /// How many samples.
    SAMPLES, "cfr-40-763.86(a)", "40 CFR 763.86(a)", SAMPLES_SAYS, SAMPLES_SEEN, Read
);
source!(
    /// What one sample says.
    ONE_IS_ENOUGH, "schools-guidance", "Guidance to 40 CFR 763" es "Guía de 40 CFR 763", ONE_IS_ENOUGH_SAYS, ONE_IS_ENOUGH_SEEN, Read
);
source!(
    /// Loose fill.
    VERMICULITE, "advice-vermiculite", "EPA advice" es "Consejo de la EPA", VERMICULITE_SAYS, VERMICULITE_SEEN, Memory
);
source!(
    /// When an agency is told.
    NOTICE, "cfr-40-61.145", "40 CFR 61.145", NOTICE_SAYS, NOTICE_SEEN, Read
);
source!(
    /// Who need not tell it.
    EXEMPT, "cfr-40-61.141-facility", "40 CFR 61.141, facility" es "40 CFR 61.141, qué es una instalación (facility)", EXEMPT_SAYS, EXEMPT_SEEN, Read
);
source!(
    /// What agencies advise.
    ADVICE, "advice-asbestos", "CPSC, EPA and lung association advice" es "Consejo de CPSC, EPA y la asociación del pulmón", ADVICE_SAYS, ADVICE_SEEN, Read
);

/// Percent of asbestos past which material is asbestos-containing; 1 percent itself is not past.
pub const CONTENT_PERCENT: Limit<i64> = Limit { value: 1, source: &CONTENT };
/// The last year whose buildings are presumed.
const PRESUMED_YEAR: Limit<i64> = Limit { value: 1980, source: &PRESUMED };
/// The largest area that takes three samples, and the largest that takes five.
const THREE: Limit<Area> = Limit { value: Area::square_feet(1000), source: &SAMPLES };
const FIVE: Limit<Area> = Limit { value: Area::square_feet(5000), source: &SAMPLES };
/// The least of each that is told ahead.
pub const NOTICE_PIPE: Limit<Length> =
    Limit { value: Length::inches(260 * 12, 1), source: &NOTICE };
/// On other parts of a building.
pub const NOTICE_AREA: Limit<Area> = Limit { value: Area::square_feet(160), source: &NOTICE };
/// Off its parts, where neither length nor area could be measured: 35 cu ft.
pub const NOTICE_LOOSE: Limit<Volume> =
    Limit { value: Volume::hundredths(35 * 1728 * 100), source: &NOTICE };
/// How many working days ahead.
pub const NOTICE_DAYS: Limit<i64> = Limit { value: 10, source: &NOTICE };
/// The most dwelling units of a building that is left out.
const EXEMPT_UNITS: Limit<i64> = Limit { value: 4, source: &EXEMPT };

/// Whether a building's year and a material make it presumed to hold asbestos.
///
/// Sources: 29 CFR 1926.1101(b), thermal insulation and surfacing; [`FLOORING`]. An unknown year
/// is not a later one. Loose vermiculite is, of whatever year: [`VERMICULITE`].
pub fn presumed(built: Option<i64>, material: Material) -> Option<&'static Source> {
    let by_year = match material {
        // What nobody has named may be any of them.
        Material::NotSaid | Material::Texture | Material::Plaster | Material::Wrap => &PRESUMED,
        Material::Floor => &FLOORING,
        Material::Vermiculite => return Some(&VERMICULITE),
        _ => return None,
    };
    built.is_none_or(|year| is_at_most(year, PRESUMED_YEAR)).then_some(by_year)
}

/// Whether a building is later than the presumption reaches. That proves nothing.
pub fn is_later(built: i64) -> bool {
    !is_at_most(built, PRESUMED_YEAR)
}

/// The fewest samples of one homogeneous area.
///
/// Source: 40 CFR 763.86(a).
pub fn samples(area: Area) -> Limit<i64> {
    let value = if is_at_most(area, THREE) {
        3
    } else if is_at_most(area, FIVE) {
        5
    } else {
        7
    };
    Limit { value, source: &SAMPLES }
}

/// Whether so much is told ahead; none where too little is known to say no.
///
/// Source: 40 CFR 61.145.
pub fn is_told(area: Option<Area>, pipe: Option<Length>, loose: Option<Volume>) -> Option<bool> {
    let told = area.is_some_and(|area| is_at_least(area, NOTICE_AREA))
        || pipe.is_some_and(|pipe| is_at_least(pipe, NOTICE_PIPE))
        || loose.is_some_and(|loose| is_at_least(loose, NOTICE_LOOSE));
    if told { Some(true) } else { area.map(|_| false) }
}

/// Whether a building of so many dwelling units is left out; none where the number isn't known
/// and would decide it.
///
/// Source: 40 CFR 61.141, facility.
pub fn is_left_out(dwellings: Option<i64>, of_a_larger_project: bool) -> Option<bool> {
    if of_a_larger_project {
        return Some(false);
    }
    dwellings.map(|units| is_at_most(units, EXEMPT_UNITS))
}

#[cfg(test)]
mod tests {
    use super::*;

    const IN2: i64 = 144;

    fn square_inches(count: i64) -> Area {
        Area::of(Length::inches(count, 1), Length::inches(1, 1))
    }

    /// Source: 40 CFR 763.86(a): up to 1000 sq ft, then up to 5000, then above.
    #[test]
    fn an_area_takes_three_five_or_seven_samples() {
        for (area, want) in [
            (Area::ZERO, 3),
            (square_inches(1000 * IN2 - 1), 3),
            (square_inches(1000 * IN2), 3),
            (square_inches(1000 * IN2 + 1), 5),
            (square_inches(5000 * IN2 - 1), 5),
            (square_inches(5000 * IN2), 5),
            (square_inches(5000 * IN2 + 1), 7),
        ] {
            assert_eq!(samples(area).value, want, "{area:?}");
        }
    }

    /// Source: 29 CFR 1926.1101(b): no later than 1980, thermal insulation and surfacing.
    #[test]
    fn a_building_of_1980_is_presumed_and_one_of_1981_is_not() {
        for (year, want) in [(1979, true), (1980, true), (1981, false)] {
            for material in [Material::Texture, Material::Floor] {
                assert_eq!(presumed(Some(year), material).is_some(), want, "{year}");
            }
            assert_eq!(is_later(year), !want, "{year}");
        }
        assert_eq!(presumed(None, Material::Wrap), Some(&PRESUMED));
        assert_eq!(presumed(Some(1962), Material::Plaster), Some(&PRESUMED));
        assert_eq!(presumed(Some(1962), Material::Board), None);
        assert_eq!(presumed(Some(2005), Material::Vermiculite), Some(&VERMICULITE));
    }

    /// Source: 40 CFR 61.145: at least 160 sq ft or 260 linear feet.
    #[test]
    fn notice_starts_on_its_limit() {
        for (area, want) in [(160 * IN2 - 1, false), (160 * IN2, true), (160 * IN2 + 1, true)] {
            assert_eq!(is_told(Some(square_inches(area)), None, None), Some(want));
        }
        let feet = |feet: i64| Length::inches(feet * 12, 1);
        let less = feet(260).minus(Length::inches(1, 16));
        for (pipe, want) in [(less, None), (feet(260), Some(true)), (feet(261), Some(true))] {
            assert_eq!(is_told(None, Some(pipe), None), want);
        }
        assert_eq!(is_told(Some(Area::ZERO), Some(less), None), Some(false));
    }

    /// Source: 40 CFR 61.145: 35 cubic feet; a cubic foot is 1728 cubic inches by definition.
    #[test]
    fn loose_material_is_measured_in_cubic_feet() {
        assert_eq!(NOTICE_LOOSE.value, Volume::hundredths(6_048_000));
        for (off, want) in [(-1, false), (0, true), (1, true)] {
            let loose = NOTICE_LOOSE.value.plus(Volume::from_units(off));
            assert_eq!(is_told(Some(Area::ZERO), None, Some(loose)), Some(want), "{off}");
        }
        assert_eq!(NOTICE_DAYS.value, 10);
    }

    /// Source: 40 CFR 61.141, facility: four or fewer dwelling units; 60 FR 38725 on one owner's
    /// houses on one site; a regional guide on a building of five units.
    #[test]
    fn four_dwellings_are_left_out_and_five_are_not() {
        for (units, want) in [(3, true), (4, true), (5, false)] {
            assert_eq!(is_left_out(Some(units), false), Some(want), "{units}");
            assert_eq!(is_left_out(Some(units), true), Some(false), "{units}");
        }
        assert_eq!(is_left_out(None, false), None);
        assert_eq!(is_left_out(None, true), Some(false));
    }

    #[test]
    fn each_limit_names_its_regulation() {
        let of = |source: &Source| source.clause.en;
        assert_eq!(of(CONTENT_PERCENT.source), "40 CFR 61 subpart M");
        assert_eq!(of(PRESUMED_YEAR.source), "29 CFR 1926.1101(b)");
        assert_eq!([THREE, FIVE].map(|it| of(it.source)), ["40 CFR 763.86(a)"; 2]);
        let notice =
            [NOTICE_AREA.source, NOTICE_PIPE.source, NOTICE_LOOSE.source, NOTICE_DAYS.source];
        assert_eq!(notice.map(of), ["40 CFR 61.145"; 4]);
        assert_eq!(of(EXEMPT_UNITS.source), "40 CFR 61.141, facility");
    }

    /// Source: 40 CFR 61 subpart M: more than 1 percent, so that 1 percent itself is not.
    #[test]
    fn one_percent_is_not_more_than_one_percent() {
        assert!(is_at_most(1, CONTENT_PERCENT));
        assert!(!is_at_most(2, CONTENT_PERCENT));
    }
}
