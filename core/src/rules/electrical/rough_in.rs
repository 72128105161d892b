//! What a whole plan of boxes and cables is held to, besides the rules of each part.

use crate::measure::Measure;
use crate::rules::compare::Limit;
use crate::words;

words! {
    PLAN_SAYS = "Each cable starts and ends in a box, each box is reached, and each circuit branches out from one panel without coming back on itself.", es "Cada cable empieza y termina en una caja, a cada caja le llega uno, y cada circuito se ramifica desde un solo panel sin regresar a sí mismo.";
    PLAN_SEEN = "how branch circuits are drawn; no publication", es "cómo se dibujan los circuitos ramales; sin publicación";
    LOAD_SAYS = "What a branch feeds at once is no more than its breaker.", es "Lo que un ramal alimenta a la vez no pasa de su breaker.";
    LOAD_SEEN = "from memory of 210.22 and 210.23", es "de memoria de 210.22 y 210.23";
    SEVERAL_SAYS = "Circuits may share a box; each of them has a breaker of its own, and until all are off and proved dead the box is live.", es "Varios circuitos pueden compartir una caja; cada uno tiene su breaker, y hasta que todos estén apagados y comprobados la caja está viva.";
    SEVERAL_SEEN = "how electricians work; no publication", es "cómo trabajan los electricistas; sin publicación";
    GANGS_SAYS = "A square box takes two devices by a cover or ring, other metal boxes that don't gang one.", es "Una caja cuadrada lleva dos dispositivos con tapa o aro; otras cajas de metal que no se unen, uno.";
    GANGS_SEEN = "the covers that are sold; no publication", es "las tapas que se venden; sin publicación";
}

source!(
    /// How a plan hangs together.
    PLAN, "rough-in-plan", "A plan of boxes and cables" es "Un plano de cajas y cables", PLAN_SAYS, PLAN_SEEN, CommonPractice
);

source!(
    /// What a branch may feed.
    LOAD, "nec-210.23", "NEC 210.22 and 210.23", LOAD_SAYS, LOAD_SEEN, Memory
);

source!(
    /// What a box of several circuits asks of who opens it.
    SEVERAL, "circuits-in-a-box", "Several circuits in one box" es "Varios circuitos en una caja", SEVERAL_SAYS, SEVERAL_SEEN, CommonPractice
);

source!(
    /// What a metal box takes.
    GANGS, "devices-of-a-metal-box", "Devices in one metal box" es "Dispositivos en una caja de metal", GANGS_SAYS, GANGS_SEEN, CommonPractice
);

/// What a branch of this breaker feeds at most.
pub const fn most_fed(breaker: Measure) -> Limit<Measure> {
    Limit { value: breaker, source: &LOAD }
}
