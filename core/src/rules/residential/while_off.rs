//! What people in a house need to know, and are owed, while a part of it is off.

use crate::measure::Measure;
use crate::measure::unit::HOUR;
use crate::rules::compare::Limit;
use crate::words;

words! {
    FOOD_SAYS = "Kept shut, a refrigerator keeps food cold for about 4 hours, a full freezer for about 48, a half-full one for 24.", es "Cerrado, un refrigerador conserva fría la comida unas 4 horas, un congelador lleno unas 48, uno a la mitad 24.";
    FOOD_SEEN = "read in reprints of its statements, 2007 and 2012", es "leído en reimpresiones de sus comunicados, 2007 y 2012";
    MEDICAL_SAYS = "Who lives by a powered medical device has power for it planned beforehand: its maker says whether batteries or a generator fit. Nothing it hangs on goes off before.", es "Quien vive de un aparato médico eléctrico tiene su corriente planeada de antemano: su fabricante dice si le sirven baterías o un generador. Antes no se apaga nada de lo que depende.";
    MEDICAL_SEEN = "the plan read on its page on power sources; that nothing goes off before is common practice", es "el plan, leído en su página de fuentes de energía; que antes no se apaga nada es costumbre del oficio";
    WAY_SAYS = "A sleeping room has a door or window to the outside that opens from inside without key or tool. Nobody sleeps where the work shuts the last one.", es "Un cuarto para dormir tiene puerta o ventana al exterior que abre desde adentro sin llave ni herramienta. Nadie duerme donde la obra cierra la última.";
    WAY_SEEN = "read in a window maker's copy of an older edition; the second sentence is common practice", es "leído en la copia de una edición anterior de un fabricante de ventanas; la segunda oración es costumbre del oficio";
    GAS_SAYS = "Gas that was turned off for any reason is turned on again by a qualified professional alone, who relights the pilots too.", es "El gas que se cerró por cualquier razón lo abre de nuevo solo un profesional calificado, que también enciende los pilotos.";
    GAS_SEEN = "read on county emergency pages; that relighting goes with it, in a radio host's advice", es "leído en páginas de emergencia de condados; que incluye encender los pilotos, en el consejo de un programa de radio";
    FROST_SAYS = "In cold weather a house is kept at 55 °F or more, or its pipes may freeze.", es "Con frío una casa se mantiene a 55 °F o más, o se pueden helar sus tubos.";
    FROST_SEEN = "read in a town's letter that quotes it, of a house left empty", es "leído en la carta de un pueblo que la cita, de una casa sola";
    NIGHT_SAYS = "What people need at night is on at night; what can't be, they know beforehand. A sump pump that is off lets water in.", es "Lo que la gente necesita de noche está prendido de noche; si no se puede, lo saben antes. Una bomba de sumidero apagada deja entrar agua.";
    NIGHT_SEEN = "common practice", es "costumbre del oficio";
    CO_SAYS = "A generator runs outside alone, 20 ft or more from the house: indoors, in a garage or on a porch its carbon monoxide kills in minutes.", es "Un generador trabaja solo afuera, a 20 ft o más de la casa: adentro, en la cochera o en el porche su monóxido de carbono mata en minutos.";
    CO_SEEN = "read in its press releases of 2021 and 2026", es "leído en sus comunicados de 2021 y 2026";
}

source!(
    /// How long cold keeps.
    FOOD, "usda-fsis-outage", "USDA FSIS, food in a power outage" es "USDA FSIS, comida en un apagón", FOOD_SAYS, FOOD_SEEN, Read
);
source!(
    /// Who lives by a device.
    MEDICAL, "cdc-power-sources", "CDC, power sources" es "CDC, fuentes de energía", MEDICAL_SAYS, MEDICAL_SEEN, Read
);
source!(
    /// A way out.
    WAY, "irc-r310.1", "IRC R310.1", WAY_SAYS, WAY_SEEN, Read
);
source!(
    /// Who turns gas on.
    GAS, "gas-back-on", "County emergency pages, utility shutoff" es "Páginas de emergencia de condados, cierre de servicios", GAS_SAYS, GAS_SEEN, Read
);
source!(
    /// What freezes.
    FROST, "red-cross-55", "Red Cross, frozen pipes" es "Cruz Roja, tubos helados", FROST_SAYS, FROST_SEEN, Read
);
source!(
    /// What is off while people sleep, and pumps.
    NIGHT, "practice-off-at-night", "Common practice" es "Costumbre del oficio", NIGHT_SAYS, NIGHT_SEEN, CommonPractice
);
source!(
    /// Generators.
    GENERATOR, "cpsc-generators", "CPSC, portable generators" es "CPSC, generadores portátiles", CO_SAYS, CO_SEEN, Read
);

const fn hours(count: i64) -> Limit<Measure> {
    Limit { value: Measure::whole(&HOUR, count), source: &FOOD }
}

/// A refrigerator, kept shut.
pub const REFRIGERATOR: Limit<Measure> = hours(4);
/// A full freezer, kept shut.
pub const FULL_FREEZER: Limit<Measure> = hours(48);
/// A half-full one.
pub const HALF_FREEZER: Limit<Measure> = hours(24);
