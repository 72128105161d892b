//! All that a person reads of branches before they are worked out.

use crate::words;

words! {
    NAME = "Branches together, and one blocked", es "Ramales juntos, y uno tapado";
    ABOUT = "Which branch loses air, and who gets it", es "Qué ramal pierde aire, y quién lo recibe";
    NOTHING = "", es "";
    PIECE = "Duct", es "Ducto";
    PIECES = "Walk from the air handler", es "Recorrido desde la manejadora";
    PIECES_HINT = "A branch leaves where the trunk piece above it ends; above all of them, at the air handler.", es "Un ramal sale donde termina el pedazo de troncal de arriba en la lista; antes de todos, en la manejadora.";
    WHAT = "It is a", es "Es";
    BRANCH = "Branch", es "Ramal";
    TRUNK = "Trunk piece", es "Pedazo de troncal";
    CALLED = "Called", es "Nombre";
    CALLED_HINT = "Such as the room.", es "Por ejemplo, el cuarto.";
    FROM = "Starts", es "Empieza";
    FROM_END = "Where the piece above ends", es "Donde termina el pedazo de arriba";
    FROM_BESIDE = "Where the piece above starts", es "Donde empieza el pedazo de arriba";
    FROM_HANDLER = "At the air handler", es "En la manejadora";
    LENGTH = "Effective length", es "Largo efectivo";
    LENGTH_HINT = "Duct and fittings, as feet of this duct.", es "Ducto y piezas, en pies de este ducto.";
    SLACK_HINT = "Blank for pulled tight.", es "Vacío si va bien estirado.";
    OPEN = "Open share of boot or grille", es "Parte abierta de bota o rejilla";
    OPEN_HINT = "Blank for all, 0 for shut tight. A rug, a damper or a crushed boot leaves less.", es "Vacío es toda, 0 cerrada por completo. Un tapete, una compuerta o una bota aplastada dejan menos.";
    HELD = "What stays", es "Lo que se mantiene";
    HELD_HINT = "A blower that holds its air, or one of fixed speed on a large trunk: the truth lies between.", es "Un soplador que mantiene su aire, o uno de velocidad fija en una troncal grande: la verdad queda en medio.";
    HELD_TOTAL = "The system's air", es "El aire del sistema";
    HELD_PRESSURE = "The pressure at the start", es "La presión al principio";
    TOTAL = "Air in all", es "Aire en total";
    PRESSURE = "Pressure at the start", es "Presión al principio";
    PRESSURE_HINT = "What these ducts have to lose: not the whole of the blower's.", es "Lo que estos ductos tienen para perder: no toda la del soplador.";
    WHY_OPEN = "all is open then.", es "entonces está toda abierta.";
    WHY_TOTAL = "that is no house's blower.", es "ningún soplador de casa da eso.";
    WHY_PRESSURE = "that is no house's blower.", es "ningún soplador de casa da eso.";

    NO_BRANCH = "List at least one branch: air has to come out somewhere.", es "Ponga al menos un ramal: el aire tiene que salir por algún lado.";
    ALL_SHUT = "Every branch is shut: open one, or the air has no way out.", es "Todos los ramales están cerrados: abra uno, o el aire no tiene salida.";
    MANY = "{0} branches, and up to {1} are worked together. Take some as one.", es "{0} ramales, y se calculan hasta {1} juntos. Tome algunos como uno.";
    NOT_FOUND = "The flows could not be found to a billionth: check sizes and lengths for slips.", es "No se pudieron hallar los flujos hasta la milmillonésima: revise medidas y largos.";
}
