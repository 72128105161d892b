//! Loads that houses are designed for, how they are put together, and what a beam's ends carry.

use crate::measure::Measure;
use crate::measure::unit::PSF;
use crate::words;

words! {
    LIVE_SAYS = "Live load, psf: attic without storage 10, with some storage 20, sleeping rooms and attics lived in 30, other rooms 40, roof 20. Snow is the building department's.", es "Carga viva, psf: ático sin almacén 10, con algo de almacén 20, recámaras y áticos habitados 30, otros cuartos 40, tejado 20. La nieve la dice la oficina de construcción.";
    LIVE_SEEN = "from memory, Table R301.5", es "de memoria, Tabla R301.5";
    DEAD_SAYS = "What things weigh, psf: a floor about 10, a wood roof with shingles, panel and board about 15, a 2x4 wall with board on both sides 6 of its face, plaster on wood lath 8 to 10.", es "Lo que pesan las cosas, psf: un piso cerca de 10, un tejado de madera con tejas (shingles), panel y tablaroca cerca de 15, una pared de 2x4 con tablaroca en los dos lados 6 de su cara, yeso sobre listones de madera 8 a 10.";
    DEAD_SEEN = "read in two tables of dead loads and an old handbook", es "leído en dos tablas de cargas muertas y en un manual viejo";
    ASD_SAYS = "Added up for wood: dead + live; dead + roof live or snow; dead + 0.75 live + 0.75 roof live or snow. The worst counts.", es "Sumas para madera: muerta + viva; muerta + viva de tejado o nieve; muerta + 0.75 viva + 0.75 viva de tejado o nieve. Cuenta la peor.";
    ASD_SEEN = "from memory, ASCE 7, 2.4, without wind and earthquake", es "de memoria, ASCE 7, 2.4, sin viento ni sismo";
    HALF_SAYS = "A support takes half of each span that ends on it.", es "Un apoyo toma la mitad de cada claro que termina en él.";
    THROUGH_SAYS = "Joists that run through over a support put more on it: 1.25 times where both spans are alike, more where they differ: 3/4 + (a² + b²) ÷ (4 a b).", es "Las viguetas que pasan corridas sobre un apoyo lo cargan más: 1.25 veces donde los dos claros son iguales, más donde difieren: 3/4 + (a² + b²) ÷ (4 a b).";
    STATICS_SEEN = "worked out from equilibrium, and of joists that run through from their bending", es "calculado del equilibrio y, en viguetas corridas, de su flexión";
    ENDS_SAYS = "An even load goes half to each end of a beam, a point in reverse of its distances: P × (span − a) ÷ span to the left.", es "Una carga pareja va mitad a cada punta de la viga; una puntual, al revés de sus distancias: P × (claro − a) ÷ claro a la izquierda.";
    SHORE_SAYS = "Shoring on each side of a wall takes half of that side's span: all that hangs there, and the people and stacks on it.", es "El apuntalamiento en cada lado de una pared toma la mitad del claro de ese lado: todo lo que cuelga ahí, y la gente y los montones encima.";
}

source!(
    /// What may come and go.
    LIVE_LOADS, "irc-r301.5", "IRC Table R301.5, live loads" es "IRC, Tabla R301.5, cargas vivas", LIVE_SAYS, LIVE_SEEN, Memory
);
source!(
    /// What stays.
    DEAD_LOADS, "dead-load-tables", "Tables of dead loads" es "Tablas de cargas muertas", DEAD_SAYS, DEAD_SEEN, Read
);
source!(
    /// How they are put together.
    COMBINATIONS, "asce-7-2.4", "ASCE 7 section 2.4, allowable stress" es "ASCE 7, sección 2.4, esfuerzos admisibles", ASD_SAYS, ASD_SEEN, Memory
);
source!(
    /// How wide a strip a support takes.
    HALF_SPANS, "tributary-width", "Equilibrium, half of each span" es "Equilibrio, la mitad de cada claro", HALF_SAYS, STATICS_SEEN, Derived
);
source!(
    /// What joists that run through do.
    RUN_THROUGH, "two-spans-running-through", "Two spans over one support" es "Dos claros sobre un apoyo", THROUGH_SAYS,
    STATICS_SEEN, Derived
);
source!(
    /// What a beam's ends carry.
    BEAM_ENDS, "beam-reactions", "Equilibrium of a beam on two supports" es "Equilibrio de una viga en dos apoyos", ENDS_SAYS, STATICS_SEEN,
    Derived
);
source!(
    /// What shoring carries.
    SHORING, "shoring-load", "Equilibrium, each side of a wall" es "Equilibrio, cada lado de un muro", SHORE_SAYS, STATICS_SEEN, Derived
);

/// Of rooms and attics: [`LIVE_LOADS`].
pub const LIVES: &[Measure] = &[
    Measure::whole(&PSF, 10),
    Measure::whole(&PSF, 20),
    Measure::whole(&PSF, 30),
    Measure::whole(&PSF, 40),
];
/// Of a roof without snow: [`LIVE_LOADS`].
pub const ROOF_LIVES: &[Measure] = &[Measure::whole(&PSF, 20)];
/// Of a floor, and of a wood roof: [`DEAD_LOADS`].
pub const FLOORS: &[Measure] = &[Measure::whole(&PSF, 10)];
/// Of a wood roof: [`DEAD_LOADS`].
pub const ROOFS: &[Measure] = &[Measure::whole(&PSF, 15)];

/// A way to add loads up.
#[derive(Debug, PartialEq, Eq)]
pub struct Combination {
    /// Its key.
    pub key: &'static str,
    /// As it is written.
    pub sum: &'static str,
    /// How much of the live load, in quarters.
    pub live: i64,
    /// How much of the roof's, in quarters.
    pub roof: i64,
}

/// All of them: [`COMBINATIONS`].
pub static ALL: [Combination; 3] = [
    Combination { key: "d-l", sum: "D + L", live: 4, roof: 0 },
    Combination { key: "d-r", sum: "D + R", live: 0, roof: 4 },
    Combination { key: "d-l-r", sum: "D + 0.75 L + 0.75 R", live: 3, roof: 3 },
];
