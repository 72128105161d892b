//! R602.6: how much of a stud may be bored or notched away.

use super::share::Share;
use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    SAYS = "A stud is bored to 40 % of its width at most, to 60 % where it carries nothing or is doubled, no more than two such in a row. It is notched to 25 %, or 40 % where it carries nothing. 5/8 in stays beside a hole, and a hole never shares its section with a notch.", es "Un montante se perfora al 40 % de su ancho a lo más, al 60 % donde no carga nada o es doble, no más de dos así seguidos. Se muesca al 25 %, o al 40 % donde no carga nada. Quedan 5/8 in junto a un agujero, y un agujero nunca comparte sección con una muesca.";
    SEEN = "read in parts: a scan of 2018, quotations of newer text, a state rule. Where 2018 prints the 5/8 in as the most, newer text says the least. 2021 and 2024 are taken to say the same; neither book was seen", es "leído por partes: un escaneo de 2018, citas de texto más nuevo, una regla estatal. Donde 2018 imprime las 5/8 in como lo más, el texto nuevo dice lo menos. Se supone que 2021 y 2024 dicen lo mismo; no se vio ninguno de los dos libros";
    APART_SAYS = "Holes up a stud closer than their own width act as one slot. No distance is printed.", es "Agujeros en un montante, más cerca entre sí que su propio ancho, actúan como una sola ranura. No hay distancia impresa.";
    APART_SEEN = "no publication", es "sin publicación";
}

source!(
    /// Where all of it is published.
    STUDS, "irc-r602.6", "IRC R602.6", SAYS, SEEN, Read
);

source!(
    /// How far apart holes are kept, without a rule.
    HOLES_APART, "holes-up-a-stud", "Holes up a stud" es "Agujeros a lo alto de un montante", APART_SAYS, APART_SEEN, CommonPractice
);

const fn limit<T>(value: T) -> Limit<T> {
    Limit { value, source: &STUDS }
}

/// The largest hole in a stud. `wide` where it carries nothing, or is doubled with no more than
/// [`IN_A_ROW`] of them bored so.
pub const fn hole(wide: bool) -> Share {
    Share { over: if wide { 3 } else { 2 }, under: 5, source: &STUDS }
}

/// The deepest notch in a stud.
pub const fn notch(carries: bool) -> Share {
    let (over, under) = if carries { (1, 4) } else { (2, 5) };
    Share { over, under, source: &STUDS }
}

/// The least wood between a hole's edge and the stud's.
pub const EDGE: Limit<Length> = limit(Length::inches(5, 8));

/// The most doubled studs in a row that are bored past 40 %.
pub const IN_A_ROW: Limit<i64> = limit(2);

/// Cuts in one section with a hole.
pub const SAME_SECTION: Limit<i64> = limit(0);
