//! What a whole plan of boxes and cables is held to, besides the rules of each part.

use crate::measure::{Length, Measure};
use crate::rules::compare::Limit;
use crate::words;

words! {
    PLAN_SAYS = "Each cable starts and ends in a box, each box is reached, and each circuit branches out from one panel without coming back on itself.", es "Cada cable empieza y termina en una caja, a cada caja le llega uno, y cada circuito se ramifica desde un solo panel sin regresar a sí mismo.";
    PLAN_SEEN = "how branch circuits are drawn; no publication", es "cómo se dibujan los circuitos ramales; sin publicación";
    WALLS_SAYS = "A box on a wall stands on a side of its room, give or take 2 in for board and framing. One that is more than that off a side, and no more than 24 in, mostly stood on it before that wall moved; farther in is a wall within the room, or an island.", es "Una caja en una pared queda en un lado de su cuarto, con 2 in de más o de menos por el tablero y la estructura. La que está a más de eso de un lado, y a no más de 24 in, casi siempre estaba en él antes de que se moviera esa pared; más adentro es una pared dentro del cuarto, o una isla.";
    WALLS_SEEN = "how plans of a room are checked after a change; no publication", es "cómo se revisan los planos de un cuarto después de un cambio; sin publicación";
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
    /// Where a box on a wall stands.
    WALLS, "boxes-on-walls", "Boxes on a room's walls" es "Cajas en las paredes de un cuarto", WALLS_SAYS, WALLS_SEEN, CommonPractice
);

source!(
    /// What a branch may feed.
    LOAD, "nec-210.23", "NEC 210.22 and 210.23" es "NEC 210.22 y 210.23", LOAD_SAYS, LOAD_SEEN, Memory
);

source!(
    /// What a box of several circuits asks of who opens it.
    SEVERAL, "circuits-in-a-box", "Several circuits in one box" es "Varios circuitos en una caja", SEVERAL_SAYS, SEVERAL_SEEN, CommonPractice
);

source!(
    /// What a metal box takes.
    GANGS, "devices-of-a-metal-box", "Devices in one metal box" es "Dispositivos en una caja de metal", GANGS_SAYS, GANGS_SEEN, CommonPractice
);

/// Off a side of the room by no more, a box stands on it.
pub const ON_SIDE: Limit<Length> = Limit { value: Length::inches(2, 1), source: &WALLS };
/// Farther in than this it is on another wall, or on none.
pub const OFF_SIDE: Limit<Length> = Limit { value: Length::inches(24, 1), source: &WALLS };

/// What a branch of this breaker feeds at most.
pub const fn most_fed(breaker: Measure) -> Limit<Measure> {
    Limit { value: breaker, source: &LOAD }
}
