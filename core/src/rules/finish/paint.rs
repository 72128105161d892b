//! Primer and paint: how far a gallon goes.

use crate::measure::Measure;
use crate::measure::unit::SPREAD;
use crate::words;

words! {
    SOLIDS_SAYS = "A gallon covers 1604 sq ft a mil thick, times its solids by volume: solids ÷ dry film.", es "Un galón cubre 1604 sq ft de una milésima (mil) de grueso, por sus sólidos por volumen: sólidos ÷ película seca.";
    SOLIDS_SEEN = "worked out: a gallon is 231 in³ exactly; 65 percent at 5 mils is 208.5, as a coating bulletin has it", es "calculado: un galón es 231 in³ exactas; 65 por ciento a 5 mils son 208.5, como lo trae un boletín de recubrimientos";
    LABEL_SAYS = "Primer goes 250 to 400 sq ft a gallon on new board or skim, 200 on bare, thirsty compound; wall and ceiling paint 350 to 400. The can rules.", es "El sellador rinde 250 a 400 sq ft por galón en tablaroca nueva o skim, 200 en pasta desnuda que chupa; la pintura de pared y techo 350 a 400. Manda la lata.";
    LABEL_SEEN = "primer read in general pages, paint from memory", es "el sellador leído en páginas generales, la pintura de memoria";
    CANS_SAYS = "Up to two quarts are bought as quarts, more as another gallon: three cost about as much.", es "Hasta dos cuartos de galón se compran sueltos; más, como otro galón: tres cuestan más o menos lo mismo.";
    CANS_SEEN = "common practice", es "costumbre del oficio";
}

source!(
    /// By solids and film.
    SOLIDS, "paint-solids", "Spread of a coating by its solids" es "Rendimiento de una pintura por sus sólidos", SOLIDS_SAYS, SOLIDS_SEEN, Derived
);
source!(
    /// By label.
    LABELS, "paint-spread", "Spread of primer and paint" es "Rendimiento de sellador y pintura", LABEL_SAYS, LABEL_SEEN, Memory
);
source!(
    /// Which cans.
    CANS, "paint-cans", "Cans, habit" es "Botes, costumbre", CANS_SAYS, CANS_SEEN, CommonPractice
);

/// Primer on new board or skim. Source: [`LABELS`].
pub const PRIMER: Measure = Measure::whole(&SPREAD, 250);
/// Paint on walls and ceilings. Source: [`LABELS`].
pub const PAINT: Measure = Measure::whole(&SPREAD, 350);
/// The usual ends for primer on new board or skim, far and near. Source: [`LABELS`].
pub const PRIMER_USUAL: [Measure; 2] = [Measure::whole(&SPREAD, 400), Measure::whole(&SPREAD, 200)];
/// The same for paint. Source: [`LABELS`].
pub const PAINT_USUAL: [Measure; 2] = [Measure::whole(&SPREAD, 400), PAINT];
/// The most quarts that are bought beside gallons. Source: [`CANS`].
pub const MOST_QUARTS: i64 = 2;
