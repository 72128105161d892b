//! Sprayed texture: how thick and how heavy it is, what water it takes and what comes down.
//! Habits, low, likely and high; a weighed test patch is worth more than all of them.

use crate::measure::unit::{GALLON, LB_PER_GAL, NUMBER, PCF, WEIGHT};
use crate::measure::{Area, Length, Measure};
use crate::rules::compare::Limit;
use crate::words;

words! {
    SAYS = "Sprayed texture is 1/16 to 3/8 in thick on average, likely 1/8, and weighs 10 to 30 lb a cubic foot, likely 15: polystyrene is light, old mineral heavy. It takes 1 to 1-1/2 gal of water for 100 sq ft a pass, likely 1-1/4, in 1 to 3 passes, likely 2, each soaking 10 to 15 minutes. Wet 10 to 40 sq ft at once, likely 25.", es "La textura rociada tiene 1/16 a 3/8 in de grueso en promedio, lo probable 1/8, y pesa 10 a 30 lb por pie cúbico, lo probable 15: el poliestireno es liviano, la mineral vieja pesada. Lleva 1 a 1-1/2 gal de agua por 100 sq ft por pasada, lo probable 1-1/4, en 1 a 3 pasadas, lo probable 2, y cada una remoja 10 a 15 minutos. Moje 10 a 40 sq ft de una vez, lo probable 25.";
    SOAK = "10 to 15 minutes", es "10 a 15 minutos";
    SEEN = "common practice; 10 and 25 sq ft read in how-to pages", es "costumbre del oficio; 10 y 25 sq ft leídos en páginas de instrucciones";
    BULK_SAYS = "Scrapings heap up 1.3 to 2 times, likely 1.5. A 42 gal bag holds 5.6 cu ft, but one person carries some 40 lb: weight fills it first.", es "Lo raspado abulta 1.3 a 2 veces, lo probable 1.5. A una bolsa de 42 gal le caben 5.6 cu ft, pero una persona carga unas 40 lb: el peso la llena primero.";
    BULK_SEEN = "common practice; the bag's volume worked out", es "costumbre del oficio; el volumen de la bolsa, calculado";
    WATER_SAYS = "A gallon of water weighs 8.34 lb.", es "Un galón de agua pesa 8.34 lb.";
    WATER_SEEN = "worked out from water's density, 62.4 lb a cubic foot", es "calculado de la densidad del agua, 62.4 lb por pie cúbico";
    PAINTED_SAYS = "Paint keeps water out: painted texture hardly scrapes. Board over it, or tear it out.", es "La pintura no deja entrar el agua: la textura pintada casi no se raspa. Ponga tablaroca encima, o demuela.";
    PAINTED_SEEN = "read in a county air agency's page on ceiling texture", es "leído en la página sobre textura de techo de una agencia del aire de condado";
    HIGH_SAYS = "Up to some 10 ft a bench or a low platform will do. Above, a rolling scaffold, locked, with rails. Never stilts or a ladder on wet plastic.", es "Hasta unos 10 ft basta una banca o una plataforma baja. Más arriba, andamio con ruedas, frenado, con barandales. Nunca zancos ni escalera sobre plástico mojado.";
    HIGH_SEEN = "common practice; that scaffolds over 10 ft have rails is from memory of 29 CFR 1926.451(g)", es "costumbre del oficio; que los andamios de más de 10 ft llevan barandales es de memoria de 29 CFR 1926.451(g)";
    HEAT_SAYS = "Closed room, plastic, suit: water every 15 to 20 minutes, and rest. Careful from a heat index of 80 °F on, much more from 90.", es "Cuarto cerrado, plástico, traje: agua cada 15 a 20 minutos, y descanso. Cuidado desde un índice de calor de 80 °F, mucho más desde 90.";
    HEAT_SEEN = "from memory of OSHA's and NIOSH's advice", es "de memoria de consejos de OSHA y NIOSH";
}

source!(
    /// What it is like.
    TEXTURE, "texture-habits", "Sprayed texture, habit" es "Textura rociada, costumbre", SAYS, SEEN, CommonPractice
);
source!(
    /// What comes down.
    DEBRIS, "texture-debris", "Bags of scrapings, habit" es "Bolsas de raspado, costumbre", BULK_SAYS, BULK_SEEN, CommonPractice
);
source!(
    /// What water weighs.
    WATER, "water-weight-gallon", "Weight of water" es "Peso del agua", WATER_SAYS, WATER_SEEN, Derived
);
source!(
    /// Under paint.
    PAINTED, "painted-texture", "Painted texture" es "Textura pintada", PAINTED_SAYS, PAINTED_SEEN, Read
);
source!(
    /// Up high.
    HIGH, "overhead-reach", "Overhead work by height, habit" es "Trabajo arriba según la altura, costumbre", HIGH_SAYS, HIGH_SEEN, CommonPractice
);

source!(
    /// Under plastic.
    HEAT, "heat-index", "OSHA and NIOSH advice on heat" es "Consejo de OSHA y NIOSH sobre el calor", HEAT_SAYS, HEAT_SEEN, Memory
);

/// Low, likely and high. Source: [`TEXTURE`].
pub const THICK: [Length; 3] = [Length::inches(1, 16), Length::inches(1, 8), Length::inches(3, 8)];
/// Dry. Source: [`TEXTURE`].
pub const DENSITY: [Measure; 3] =
    [Measure::whole(&PCF, 10), Measure::whole(&PCF, 15), Measure::whole(&PCF, 30)];
/// Water for [`WETTED`], each pass. Source: [`TEXTURE`].
pub const PASS: [Measure; 3] = [
    Measure::whole(&GALLON, 1),
    Measure::hundredths(&GALLON, 125),
    Measure::hundredths(&GALLON, 150),
];
/// What [`PASS`] is for.
pub const WETTED: Area = Area::square_feet(100);
/// Source: [`TEXTURE`].
pub const PASSES: [i64; 3] = [1, 2, 3];
/// Source: [`TEXTURE`].
pub const AT_ONCE: [Area; 3] =
    [Area::square_feet(10), Area::square_feet(25), Area::square_feet(40)];
/// How far scrapings heap up. Source: [`DEBRIS`].
pub const BULKING: [Measure; 3] = [
    Measure::hundredths(&NUMBER, 130),
    Measure::hundredths(&NUMBER, 150),
    Measure::hundredths(&NUMBER, 200),
];
/// A contractor's bag. Source: [`DEBRIS`].
pub const BAG: Measure = Measure::whole(&GALLON, 42);
/// What one carries. Source: [`DEBRIS`].
pub const CARRIED: Measure = Measure::whole(&WEIGHT, 40);
/// Source: [`WATER`].
pub const WATER_WEIGHS: Measure = Measure::hundredths(&LB_PER_GAL, 834);
/// The highest ceiling for a bench. Source: [`HIGH`].
pub const BENCH: Limit<Length> = Limit { value: Length::inches(120, 1), source: &HIGH };
