//! All that a person reads of cables in a hole.

use crate::words;

words! {
    NAME = "Cables through a hole", es "Cables por un agujero";
    ABOUT = "Whether cables fit one hole, the smallest bit for them, and whether sealing it or bundling them asks for smaller breakers", es "Si los cables caben en un agujero, la broca más chica para ellos, y si sellarlo o juntarlos pide breakers más chicos";
    NOTHING = "", es "";
    CABLES = "Cables in the hole", es "Cables en el agujero";
    CABLE = "Cable", es "Cable";
    COUNT = "How many", es "Cuántos";
    WIDE = "Measured width", es "Ancho medido";
    WIDE_HINT = "No published size was read for it.", es "No se leyó ninguna medida publicada de él.";
    THICK = "Measured thickness", es "Grueso medido";
    BREAKER = "Breaker", es "Breaker";
    BY_SIZE = "Usual for its wire", es "El usual para su alambre";
    B15 = "15 A", es "15 A";
    B20 = "20 A", es "20 A";
    B25 = "25 A", es "25 A";
    B30 = "30 A", es "30 A";
    B35 = "35 A", es "35 A";
    B40 = "40 A", es "40 A";
    B45 = "45 A", es "45 A";
    B50 = "50 A", es "50 A";
    B60 = "60 A", es "60 A";
    HOLE = "Hole, across", es "Agujero, diámetro";
    ROUND = "The hole round them", es "El agujero alrededor de ellos";
    ROUND_HINT = "Foam, caulk and insulation seal it. Through a plate it mostly is.", es "La espuma, el sellador y el aislante lo sellan. Por una solera casi siempre lo está.";
    SEALED = "Sealed", es "Sellado";
    OPEN = "Open", es "Abierto";
    BUNDLED = "Together without gaps for over 24 in", es "Juntos sin separación por más de 24 in";
    WARMTH = "Warmest it gets there", es "Lo más caliente ahí";
    WARMTH_HINT = "An attic in summer: look it up or measure it.", es "Un ático en verano: búsquelo o mídalo.";
    WHY_COUNT = "more than that takes another hole.", es "más que eso lleva otro agujero.";
    WHY_WIDE = "no cable here is that large.", es "ningún cable de aquí es tan grande.";
    WHY_HOLE = "wider holes are an engineer's.", es "los agujeros más anchos son de un ingeniero.";

    TAKEN = "Of the hole, taken", es "Del agujero, ocupado";
    WIDEST = "Hole, for the widest cable", es "Agujero, para el cable más ancho";
    SMALLEST = "Smallest bit that leaves half free", es "Broca más chica que deja la mitad libre";
    AREA_CABLES = "Cables, outside", es "Los cables, por fuera";
    AREA_HOLE = "The hole", es "El agujero";
    CARRYING = "Conductors that carry", es "Conductores que llevan corriente";
    TOGETHER = "They carry, being together", es "Llevan, por ir juntos";
    WARM = "They carry, being warm", es "Llevan, por el calor";
    CARRIES = "{0} carries", es "{0} lleva";
    BREAKER_OF = "{0}, its breaker", es "{0}, su breaker";
    ASK_HALF = "Common practice, no rule: a fuller hole burns sheaths when you pull.", es "Costumbre del oficio, no regla: un agujero más lleno quema forros al jalar.";
    TOO_SMALL = "They don't go in.", es "No caben.";
    NEXT_APART = "Two cables to a sealed hole need no adjustment. Drill another.", es "Dos cables por agujero sellado no piden ajuste. Haga otro agujero.";
    NEXT_SMALLEST = "Smallest bit for them: {0}.", es "La broca más chica para ellos: {0}.";

    OLD = "This is for today's cable. Old wire is good for 60 °C, and brittle near ceiling boxes: stop and call the electrician.", es "Esto es para cable de hoy. El alambre viejo aguanta 60 °C, y está quebradizo cerca de las cajas de techo: pare y llame al electricista.";
    PULL = "Dead, and proved dead, before you touch any cable already there.", es "Sin corriente, y comprobado sin corriente, antes de tocar cualquier cable que ya esté ahí.";
    LICENSED = "Running cable and choosing breakers is a licensed electrician's work where the law says so.", es "Tender cable y elegir breakers es trabajo de un electricista con licencia donde la ley lo dice.";
}
