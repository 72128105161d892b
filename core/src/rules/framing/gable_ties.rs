//! What the residential code says of ties that are raised inside a gable, and what statics says.

use crate::measure::unit::{NUMBER, PITCH};
use crate::measure::{Length, Measure};
use crate::rules::compare::{Limit, is_at_most};
use crate::sheet::Source;
use crate::words;

words! {
    THIRD_SAYS = "Ceiling joists or ties that hold a gable's walls together stand in the lowest third of its rise, from the top of the plate; else the ridge is a designed beam. The code's figure measures the rise to the ridge's underside.", es "Las viguetas de techo o amarres que unen las paredes de un tejado a dos aguas van en el tercio más bajo de su subida, desde arriba de la solera; si no, la cumbrera es una viga diseñada. La figura del código mide la subida hasta la cara de abajo de la cumbrera.";
    THIRD_SEEN = "read in a trade magazine and a page on the 2024 text; one third since 2006, two thirds before", es "leído en una revista del oficio y en una página sobre el texto de 2024; un tercio desde 2006, dos tercios antes";
    SLOPE_SAYS = "Under 3 in 12 the ridge, hips and valleys that carry rafters are designed as beams.", es "Con menos de 3 en 12, la cumbrera, las limatesas (hips) y las limahoyas (valleys) que cargan pares se diseñan como vigas.";
    SLOPE_SEEN = "read in a trade magazine; the section's number was not checked", es "leído en una revista del oficio; no se revisó el número de la sección";
    SPACING_SAYS = "Rafter ties are 2x4 or larger, 24 in apart or less.", es "Los amarres de pares son de 2x4 o más, a 24 in o menos entre sí.";
    SPACING_SEEN = "read in a page on the 2024 text; what 2018 and 2021 say was not checked", es "leído en una página sobre el texto de 2024; no se revisó lo que dicen 2018 y 2021";
    SPAN_SAYS = "Rafters may span less the higher their ties stand: 0.90 of the table's span with ties at 1/6 of the rise, 0.83 at 1/5, 0.76 at 1/4, 0.67 at 1/3. Between rows take the harsher. Plain statics is a little harsher for low ties.", es "Los pares pueden salvar menos claro mientras más altos van sus amarres: 0.90 del claro de la tabla con amarres a 1/6 de la subida, 0.83 a 1/5, 0.76 a 1/4, 0.67 a 1/3. Entre filas tome la más severa. La estática simple es un poco más severa con amarres bajos.";
    SPAN_SEEN = "rows read in a forum's copy. From memory: a footnote in 2018, a table of its own in 2021 and 2024", es "filas leídas en la copia de un foro. De memoria: una nota al pie en 2018, una tabla propia en 2021 y 2024";
    SPAN_LOW_SAYS = "With ties at 1/7.5 of the rise or lower, rafters may span what their table says.", es "Con amarres a 1/7.5 de la subida o más bajos, los pares pueden salvar lo que dice su tabla.";
    SPAN_LOW_SEEN = "from memory, as is its place: a footnote in 2018, a table of its own in 2021 and 2024", es "de memoria, igual que su lugar: una nota al pie en 2018, una tabla propia en 2021 y 2024";
    HEEL_SAYS = "Raised ties pull harder: the heel joint takes its table's nails times 1.11 with ties at 1/10 of the rise or lower, 1.2 at 1/6, 1.25 at 1/5, 1.33 at 1/4, 1.5 at 1/3. Between rows take the harsher.", es "Los amarres subidos jalan más: la unión de talón lleva los clavos de su tabla por 1.11 con amarres a 1/10 de la subida o más bajos, 1.2 a 1/6, 1.25 a 1/5, 1.33 a 1/4, 1.5 a 1/3. Entre filas tome la más severa.";
    HEEL_SEEN = "from memory: a footnote in 2018, a table of its own in 2021 and 2024. The rows are 1 ÷ (1 − share), as by statics", es "de memoria: una nota al pie en 2018, una tabla propia en 2021 y 2024. Las filas son 1 ÷ (1 − parte), como por estática";
    THRUST_SAYS = "Each foot of ridge pushes the walls apart with load × span² ÷ (8 × height of ridge over tie). Load is on the flat; both sides are alike, and nothing else holds the ridge.", es "Cada pie de cumbrera empuja las paredes hacia afuera con carga × claro² ÷ (8 × altura de la cumbrera sobre el amarre). La carga es en planta; los dos lados son iguales, y nada más sostiene la cumbrera.";
    THRUST_SEEN = "worked out from the moments about the ridge of half a gable", es "calculado de los momentos alrededor de la cumbrera en medio tejado";
    SLOPE_LOAD_SAYS = "A weight on the slope is more on the flat: times √(1 + pitch²).", es "Un peso en la pendiente es más en planta: por √(1 + pendiente²).";
    SLOPE_LOAD_SEEN = "worked out from the slope's length over its run", es "calculado del largo de la pendiente entre su avance";
    RIDGE_SAYS = "A ridge beam carries half of the roof, each wall a quarter: load × span ÷ 2 and ÷ 4 on each foot. Nothing then pushes the walls apart.", es "Una viga de cumbrera carga la mitad del tejado, cada pared un cuarto: carga × claro ÷ 2 y ÷ 4 en cada pie. Entonces nada empuja las paredes hacia afuera.";
    SCOPE_SAYS = "The code's rules for ties are for a plain gable of rafters on two walls, alike on both sides, tied whole from wall to wall.", es "Las reglas del código para amarres son para un tejado sencillo a dos aguas, de pares sobre dos paredes, igual en los dos lados, amarrado entero de pared a pared.";
    SCOPE_SEEN = "read in part: its tables and figures assume it", es "leído en parte: sus tablas y figuras lo suponen";
    AIR_SAYS = "A vented roof keeps 1 in or more of air between insulation and sheathing.", es "Un tejado ventilado deja 1 in o más de aire entre el aislante y el forro (sheathing).";
    AIR_SEEN = "from memory, R806.3: check it in the book", es "de memoria, R806.3: revíselo en el libro";
}

source!(
    /// How high ties may stand.
    LOWER_THIRD, "irc-r802.5.2-third", "IRC R802.5.2, ties in the lower third" es "IRC R802.5.2, amarres en el tercio de abajo",
    THIRD_SAYS, THIRD_SEEN, Read
);
source!(
    /// From which slope on a ridge board will do.
    LOW_SLOPE, "irc-r802-low-slope", "IRC R802, low-slope ridges" es "IRC R802, cumbreras de poca pendiente",
    SLOPE_SAYS, SLOPE_SEEN, Read
);
source!(
    /// How far apart ties stand.
    TIE_SPACING, "irc-2024-tie-spacing", "IRC 2024 R802.5.2, rafter ties" es "IRC 2024 R802.5.2, amarres de pares", SPACING_SAYS,
    SPACING_SEEN, Read
);
source!(
    /// How far rafters may span under raised ties.
    RAFTER_SPAN, "irc-rafter-span-raised-ties", "IRC rafter span tables, ties raised" es "IRC, tablas de claros de pares, amarres altos", SPAN_SAYS,
    SPAN_SEEN, Read
);
source!(
    /// The row of the lowest ties.
    RAFTER_SPAN_LOW, "irc-rafter-span-low-ties", "IRC rafter span tables, ties low" es "IRC, tablas de claros de pares, amarres bajos", SPAN_LOW_SAYS,
    SPAN_LOW_SEEN, Memory
);
source!(
    /// How many more nails a heel joint takes.
    HEEL_JOINT, "irc-heel-joint-raised-ties",
    "IRC 2018 heel-joint table, footnote; 2021, 2024 R802.5.2(2)" es "IRC 2018, tabla de la unión de talón, nota al pie; 2021, 2024 R802.5.2(2)", HEEL_SAYS, HEEL_SEEN, Memory
);
source!(
    /// What pushes the walls apart.
    THRUST, "gable-thrust", "Equilibrium of half a gable" es "Equilibrio de medio techo a dos aguas", THRUST_SAYS, THRUST_SEEN, Derived
);
source!(
    /// Weight along a slope as load on the flat.
    SLOPE_LOAD, "slope-load", "Geometry of a slope" es "Geometría de una pendiente", SLOPE_LOAD_SAYS, SLOPE_LOAD_SEEN, Derived
);
source!(
    /// What a ridge beam and the walls carry.
    RIDGE_BEAM, "ridge-beam-loads", "Equilibrium of a gable on a ridge beam" es "Equilibrio de un techo a dos aguas sobre viga cumbrera", RIDGE_SAYS,
    THRUST_SEEN, Derived
);
source!(
    /// What gable the rules are for.
    SCOPE, "irc-r802-scope", "IRC R802, gables as the tables have them" es "IRC R802, dos aguas como los de las tablas",
    SCOPE_SAYS, SCOPE_SEEN, Derived
);
source!(
    /// Air over insulation.
    AIR_SPACE, "irc-r806.3", "IRC R806.3, air under the roof" es "IRC R806.3, aire bajo el tejado", AIR_SAYS, AIR_SEEN, Memory
);

/// The air of [`AIR_SPACE`].
pub const AIR: Length = Length::inches(1, 1);

/// How high ties may stand under a ridge at `rise` over the plate.
pub fn highest(rise: Length) -> Limit<Length> {
    Limit { value: rise.part(3), source: &LOWER_THIRD }
}

/// How deep a ridge is at the most: the deepest common lumber. Where rafters meet by span and slope,
/// its underside is no lower than that.
pub const DEEPEST_RIDGE: Length = Length::inches(45, 4);

/// The least slope of a ridge that is no beam.
pub const LEAST_SLOPE: Limit<Measure> =
    Limit { value: Measure::whole(&PITCH, 3), source: &LOW_SLOPE };

/// How far apart ties may stand.
pub const TIES_APART: Limit<Length> = Limit { value: Length::inches(24, 1), source: &TIE_SPACING };

/// A row of one of the code's two tables for raised ties.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Raised<T> {
    /// The share of the rise, as printed.
    pub share: &'static str,
    /// What is multiplied by.
    pub times: T,
    /// Where it is published.
    pub source: &'static Source,
}

/// The harsher row for ties that stand at `up` under a ridge at `rise`; none over a third. Rows are
/// twice the share's upper and its lower number, so that 1/7.5 is whole.
fn row<T: Copy>(up: Length, rise: Length, rows: &[((i64, i64), T)]) -> Option<T> {
    let fits = |&&((over, under), _): &&((i64, i64), T)| {
        is_at_most(up, Limit { value: rise.times(over).part(under), source: &LOWER_THIRD })
    };
    rows.iter().find(fits).map(|(_, row)| *row)
}

/// How much of its table's span a rafter has left.
pub fn rafter_span(up: Length, rise: Length) -> Option<Raised<Measure>> {
    let raised = |share, hundredths, source| Raised {
        share,
        times: Measure::hundredths(&NUMBER, hundredths),
        source,
    };
    row(
        up,
        rise,
        &[
            ((2, 15), raised("1/7.5", 100, &RAFTER_SPAN_LOW)),
            ((1, 6), raised("1/6", 90, &RAFTER_SPAN)),
            ((1, 5), raised("1/5", 83, &RAFTER_SPAN)),
            ((1, 4), raised("1/4", 76, &RAFTER_SPAN)),
            ((1, 3), raised("1/3", 67, &RAFTER_SPAN)),
        ],
    )
}

/// How many times its table's nails a heel joint takes, as a fraction: the printed 1.33 is 4/3. Ties
/// on the plate are not raised, and take what the table says.
pub fn heel_nails(up: Length, rise: Length) -> Option<Raised<(i64, i64)>> {
    let raised = |share, over, under| Raised { share, times: (over, under), source: &HEEL_JOINT };
    row(
        up,
        rise,
        &[
            ((0, 1), raised("0", 1, 1)),
            ((1, 10), raised("1/10", 10, 9)),
            ((1, 6), raised("1/6", 6, 5)),
            ((1, 5), raised("1/5", 5, 4)),
            ((1, 4), raised("1/4", 4, 3)),
            ((1, 3), raised("1/3", 3, 2)),
        ],
    )
}
