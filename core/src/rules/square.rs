//! How far a four-cornered room is out of square, from its two diagonals.

use crate::words;

words! {
    SAYS = "Opposite walls being equal, the two diagonals squared differ by four times wall 1 times how far the wall opposite has shifted along it.", es "Si las paredes opuestas son iguales, la diferencia de los cuadrados de las dos diagonales es cuatro veces la pared 1 por lo que la pared de enfrente se ha corrido a lo largo de ella.";
    SEEN = "worked out from the law of cosines; comparing diagonals is common practice", es "calculado de la ley de los cosenos; comparar diagonales es costumbre del oficio";
}

source!(
    /// What the shift stands on.
    DIAGONALS, "two-diagonals", "Law of cosines, both diagonals of a parallelogram" es "Ley de los cosenos, las dos diagonales de un paralelogramo", SAYS, SEEN, Derived
);
