//! All that a person reads of switches for one light.

use crate::words;

words! {
    NAME = "Three-way and four-way, box by box", es "De 3 y 4 vías, caja por caja";
    ABOUT = "Which cable runs between switches of one light, what each wire does, and how full each box is", es "Qué cable va entre los apagadores de una luz, qué hace cada alambre, y qué tan llena queda cada caja";
    NOTHING = "", es "";

    POINTS = "Switches for the light", es "Apagadores para la luz";
    WHY_POINTS = "that many are an electrician's control.", es "tantos ya son un control de electricista.";
    FEED = "The feed comes to", es "La alimentación llega a";
    AT_SWITCH = "The first switch", es "El primer apagador";
    AT_LIGHT = "The light", es "La luz";
    ONWARD = "It goes on to other boxes", es "Sigue a otras cajas";
    LEAVES = "The light is fed from", es "La luz se alimenta desde";
    FIRST = "The first switch's box", es "La caja del primer apagador";
    LAST = "The last switch's box", es "La caja del último apagador";
    NEUTRAL = "Neutral", es "Neutro";
    EACH = "At every switch", es "En cada apagador";
    WHERE_IT_LIES = "Only where it lies anyway", es "Solo donde de todos modos pasa";
    SIZE = "Wire", es "Alambre";
    S14 = "14 AWG", es "14 AWG";
    S12 = "12 AWG", es "12 AWG";
    VOLUME = "Each switch's box, marked", es "Caja de cada apagador, marcada";
    VOLUME_HINT = "Read the stamp. One gang, this switch alone.", es "Lea el estampado. Un gang, solo este apagador.";
    WHY_VOLUME = "that is no one-gang box.", es "esa no es caja de un gang.";
    CLAMPS = "Clamps inside the boxes", es "Abrazaderas en las cajas";

    FULLEST = "Fullest box", es "Caja más llena";
    FOUR_WAYS = "Four-way switches", es "Apagadores de 4 vías";
    FILL = "Switch {0}, in the box", es "Apagador {0}, en la caja";
    LIGHT_FILL = "Light, its cables alone", es "Luz, solo sus cables";
    WITHOUT = "Switches without a neutral", es "Apagadores sin neutro";
    ASK_NEUTRAL = "Allowed where another switch point has one and sees the whole room, or it can be added later: ask.", es "Se permite donde otro punto de apagador lo tiene y ve todo el cuarto, o se puede agregar después: pregunte.";
    NEXT_FULL = "Take a deeper box: {0} at least.", es "Tome una caja más honda: {0} al menos.";
    SWITCH = "Switch {0}", es "Apagador {0}";
    LIGHT = "Light", es "Luz";
    FEED_END = "Feed", es "Alimentación";
    ONWARD_END = "Next box", es "Siguiente caja";
    RUN = "{0} to {1}: {2}", es "{0} a {1}: {2}";

    BLACK = "black", es "negro";
    RED = "red", es "rojo";
    WHITE = "white", es "blanco";
    STRIPED = "white with a red stripe", es "blanco con franja roja";
    MARKED = "{0}, re-marked as hot", es "{0}, remarcado como vivo";
    COLOUR = "{0}", es "{0}";
    SUPPLY = "supply, always hot", es "alimentación, siempre vivo";
    SWITCHED = "switched hot, to the light", es "vivo de apagador, a la luz";
    TRAVELER = "traveler", es "viajero";
    NEUTRAL_WIRE = "neutral", es "neutro";

    M_SINGLE = "Single-pole switch", es "Apagador sencillo";
    M_THREE = "Three-way switch", es "Apagador de 3 vías";
    M_FOUR = "Four-way switch", es "Apagador de 4 vías";

    DRAWING = "Boxes and wires in a line, not to scale; neutrals dashed", es "Cajas y alambres en línea, sin escala; neutros a rayas";
    L_SWITCH = "switch {0}, {1}", es "apagador {0}, {1}";
    L_LIGHT = "light", es "luz";
    L_FEED = "feed", es "alim.";
    L_FEED_ON = "feed, on", es "alim., sigue";
    L_RUN = "{0}, {1} wires", es "{0}, {1} alambres";
    BOX = "A box", es "Una caja";
    WIRE = "A wire", es "Un alambre";
    TWIN = "{0} to {1}: {2}, {3} wires and a ground.", es "{0} a {1}: {2}, {3} alambres y una tierra.";

    DEAD = "Dead, and proved dead: meter proved on a live source before and after.", es "Sin corriente, y comprobado sin corriente: medidor comprobado en una fuente viva antes y después.";
    LICENSED = "A plan for the electrician, who connects it where the law says so. No power before the inspection.", es "Un plan para el electricista, que lo conecta donde la ley lo dice. Nada de corriente antes de la inspección.";
}
