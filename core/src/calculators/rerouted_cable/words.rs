//! All that a person reads of a cable that hung in the old ceiling.

use crate::words;

words! {
    NAME = "A cable that hung in the old ceiling", es "Un cable que colgaba en el techo viejo";
    ABOUT = "Whether it reaches the new box, and what to do where it doesn't", es "Si alcanza la caja nueva, y qué hacer si no";
    NOTHING = "", es "";

    KNOWN = "The old cable", es "El cable viejo";
    KNOWN_HINT = "From where it stays fixed: the last staple, hole or box that isn't moved.", es "Desde donde queda fijo: la última grapa, agujero o caja que no se mueve.";
    BY_LENGTH = "Measured loose", es "Medido suelto";
    BY_WAY = "By its old way", es "Por su camino viejo";
    THERE = "Loose, to its end", es "Suelto, hasta su punta";
    THERE_HINT = "Off its staples, out of the old box, pulled straight.", es "Sin grapas, fuera de la caja vieja, jalado derecho.";
    WHY_CABLE = "measure it from nearer by.", es "mídalo desde más cerca.";
    OLD = "Its old way, to the old box", es "Su camino viejo, a la caja vieja";
    OLD_HINT = "One part after the other.", es "Una parte tras otra.";
    SLACK = "Slack that comes free", es "Holgura que se libera";
    SLACK_HINT = "Loops and coils. Empty: none.", es "Vueltas y rollos. Vacío: nada.";
    LEFT = "Free wires in the old box", es "Alambres libres en la caja vieja";
    LEFT_HINT = "From where they leave the sheath to their ends.", es "De donde salen del forro a sus puntas.";
    NEW = "Its new way, to the new box", es "Su camino nuevo, a la caja nueva";
    NEW_HINT = "From the same place. Empty: the old way.", es "Desde el mismo punto. Vacío: el camino viejo.";
    RAISE = "And up by", es "Y sube";
    RAISE_HINT = "What the ceiling goes up. Empty if the new way has it.", es "Lo que sube el techo. Vacío si el camino nuevo ya lo tiene.";
    LEG = "Part", es "Parte";
    WAY = "Which way", es "Por dónde";
    LENGTH = "Length", es "Largo";
    UP = "Up the wall", es "Sube por la pared";
    ACROSS = "Across", es "A través";
    THROUGH = "Through plates", es "Por las soleras";
    DOWN = "Down to the box", es "Baja a la caja";

    ALLOWANCE = "Allowance", es "Extra";
    ALLOWANCE_HINT = "For bends, sag and staples; 10 % is common. Of the way, not of the free wires.", es "Por vueltas, colgado y grapas; 10 % es lo común. Del camino, no de los alambres libres.";
    WHY_ALLOWANCE = "measure its way again.", es "mida su camino otra vez.";
    EXTRA = "And more, in feet", es "Y además, en pies";
    EXTRA_HINT = "To lower a light, or for a box nobody has placed yet.", es "Para bajar una luz, o para una caja que nadie ha ubicado todavía.";
    EMERGES = "Sheath end to opening", es "Del forro a la abertura";
    EMERGES_HINT = "In the new box. Empty: 6 in of free wire is enough.", es "En la caja nueva. Vacío: bastan 6 in de alambre libre.";
    WHY_EMERGES = "no box is that deep.", es "ninguna caja es tan honda.";
    CABLES = "Cables at this box", es "Cables en esta caja";
    CABLES_HINT = "With the same way.", es "Con el mismo camino.";
    WHY_CABLES = "a ceiling box holds no more.", es "en una caja de techo no caben más.";
    SPLICE = "A splice box would be", es "La caja de empalme quedaría";
    SPLICE_HINT = "Only if a cable is short.", es "Solo si un cable queda corto.";
    NOT_SAID = "Not said", es "No se dijo";
    ATTIC = "In an attic with a hatch", es "En un ático con acceso";
    COVER = "Behind a blank cover in sight", es "Detrás de una tapa ciega a la vista";
    CLOSED = "Closed in by board", es "Encerrada con tablaroca";
    BACK = "Splice box, back from the old end", es "Caja de empalme, atrás de la punta vieja";
    BACK_HINT = "How much of the old cable is cut off to get to where it can be reached.", es "Cuánto del cable viejo se corta para llegar a donde se puede alcanzar.";

    HAVE = "Cable there", es "Cable que hay";
    NEED = "Cable needed", es "Cable que hace falta";
    RUN = "New way", es "Camino nuevo";
    SPARE = "To spare", es "Sobra";
    SHORT = "Short by", es "Faltan";
    FREE = "Free wires at the box", es "Alambres libres en la caja";
    OVERAGE = "Allowance for the way", es "Extra por el camino";
    BOXES = "Splice boxes", es "Cajas de empalme";
    BUY = "New cable, each, up to the inch", es "Cable nuevo, cada uno, a la pulgada de arriba";
    BUY_ALL = "New cable to buy", es "Cable nuevo por comprar";
    STAPLES = "Staples, a run", es "Grapas, por tramo";

    CHECK_REACH = "Reaches the new box", es "Alcanza la caja nueva";
    CHECK_CLOSED = "Splice boxes closed in", es "Cajas de empalme encerradas";
    ASK_WHERE = "Say where the splice box would be. It has to stay within reach for good.", es "Diga dónde quedaría la caja de empalme. Tiene que quedar al alcance para siempre.";
    NEXT = "Short by {0}. Pull a new cable from the last box, or put a splice box where it stays in reach: {1} of new cable each.", es "Faltan {0}. Jale un cable nuevo desde la última caja, o ponga una caja de empalme donde quede al alcance: {1} de cable nuevo cada uno.";
    NEXT_CLOSED = "Short by {0}, and no splice may be closed in: pull a new cable from the last box that can be reached.", es "Faltan {0}, y ningún empalme puede quedar encerrado: jale un cable nuevo desde la última caja que se pueda alcanzar.";

    M_BOX = "Splice box with blank cover", es "Caja de empalme con tapa ciega";
    M_CABLE = "Cable as the old one, with ground", es "Cable como el viejo, con tierra";
    M_STAPLE = "Cable staple, for the cable at hand", es "Grapa de cable, para el cable que se usa";

    NO_WAY = "Say its way part by part.", es "Diga su camino parte por parte.";
    NO_NEW_WAY = "Say its new way, or its old one.", es "Diga su camino nuevo, o el viejo.";
    TOO_SHORT = "At {0} it is too short to be joined: a splice takes {1} of it. Pull a new cable, or measure again.", es "Con {0} es demasiado corto para unirlo: un empalme ocupa {1}. Jale un cable nuevo, o mida otra vez.";
    PAST_OLD = "There are only {0} of old cable: the box can't be that far back.", es "Solo hay {0} de cable viejo: la caja no puede estar tan atrás.";

    DEAD = "Dead, and proved dead, before you touch it. Tag what you take off.", es "Sin corriente, y comprobado sin corriente, antes de tocarlo. Etiquete lo que desconecte.";
    BRITTLE = "Brittle or cloth-covered wires, or no ground: leave them. An electrician looks before anything is joined to them.", es "Alambres quebradizos o forrados de tela, o sin tierra: déjelos. Un electricista revisa antes de que se les una algo.";
    LICENSED = "Moving and joining cable is a licensed electrician's work where the law says so: get it ready, and have it checked before the board goes up.", es "Mover y unir cable es trabajo de un electricista con licencia donde la ley lo dice: déjelo listo, y que lo revisen antes de poner la tablaroca.";
}
