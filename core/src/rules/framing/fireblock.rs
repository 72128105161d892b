//! What a hole through a plate opens: a fireblock, and the house's air barrier. There is no number
//! in either, only what to do.

use crate::words;

words! {
    FIRE_SAYS = "In an unrated wall the top plate is the fireblock: fill round what goes through it with an approved material that holds back flame and smoke. A rated wall takes a listed system.", es "En una pared sin clasificación de fuego la solera superior es el cortafuego: rellene alrededor de lo que la atraviesa con un material aprobado que detenga llama y humo. Una pared clasificada lleva un sistema listado.";
    FIRE_SEEN = "read in code articles that quote it; that R602.8 points to it is from memory", es "leído en artículos de código que lo citan; que R602.8 remite a esto es de memoria";
    AIR_SAYS = "Under an attic, seal the hole against air too.", es "Bajo un ático, selle el agujero también contra el aire.";
    AIR_SEEN = "from memory; that plates and what goes through them are sealed was read in a building science guide", es "de memoria; que se sellan las soleras y lo que las atraviesa se leyó en una guía de ciencia de la construcción";
}

source!(
    /// Where fireblocking of openings is published.
    FIREBLOCK, "irc-r302.11", "IRC R302.11", FIRE_SAYS, FIRE_SEEN, Read
);

source!(
    /// Where the air barrier is published.
    AIR_BARRIER, "irc-n1102.4.1.1", "IRC N1102.4.1.1, IECC R402.4.1.1", AIR_SAYS, AIR_SEEN, Memory
);
