//! All that a person reads of what is taken down.

use crate::words;

words! {
    NAME = "Taken down and put back", es "Lo que se baja y se repone";
    ABOUT = "What comes off before the work, in which order it goes back, which alarms are out", es "Qué se quita antes del trabajo, en qué orden se repone, qué alarmas están fuera";
    NOTHING = "", es "";

    ITEMS = "What comes down", es "Qué se baja";
    ITEMS_HINT = "In the order in which it does.", es "En el orden en que se baja.";
    ITEM = "A thing", es "Una cosa";
    WHAT = "It is", es "Qué es";
    LIGHT = "Light fixture", es "Lámpara";
    FAN = "Ceiling fan", es "Ventilador de techo";
    BLADES = "Fan blades", es "Aspas de ventilador";
    SMOKE = "Smoke or heat alarm", es "Alarma de humo o de calor";
    CO = "Carbon monoxide alarm", es "Alarma de monóxido de carbono";
    DETECTOR = "Detector of an alarm system", es "Detector de un sistema de alarma";
    REGISTER = "Register or grille", es "Rejilla de salida o de retorno";
    DOOR = "Door", es "Puerta";
    OTHER = "Something else", es "Otra cosa";
    PLACE = "Where", es "Dónde";
    PLACE_HINT = "Mark it and its screws the same.", es "Márquela igual que sus tornillos.";
    HOW = "It is", es "Está";
    OFF_IT = "Taken off, stored", es "Quitada, guardada";
    COVERED = "Covered in place", es "Tapada en su lugar";
    MONITORED = "Monitored", es "Con monitoreo";
    MONITORED_HINT = "Somebody is called when it sounds.", es "Se avisa a alguien cuando suena.";
    OFF = "Down on", es "Se bajó el";
    BACK = "Back on", es "Se repuso el";
    BACK_HINT = "An alarm's day alone is only a plan.", es "El día solo de una alarma es nada más un plan.";
    TESTED = "Back and tested", es "Repuesta y probada";
    TESTED_HINT = "Yes once it hangs again and has sounded its test.", es "Sí cuando ya esté puesta y haya sonado en su prueba.";
    TOO_EARLY = "Not before it came down, {0}.", es "No antes de que se bajó, {0}.";

    ALARMS = "Alarms out of service", es "Alarmas fuera de servicio";
    DOWN = "Still down", es "Todavía abajo";
    ON_LIST = "On the list", es "En la lista";
    CHECK = "Alarms out of service", es "Alarmas fuera de servicio";
    ORDER = "Back in this order", es "Se repone en este orden";
    ORDER_NOTE = "What came down last goes first. An alarm doesn't wait its turn.", es "Lo último que se bajó va primero. Una alarma no espera su turno.";
    DONE = "Back", es "Repuesto";
    IT_AT = "{0}, {1}", es "{0}, {1}";
    IT = "{0}", es "{0}";
    SINCE = "down since {0}", es "abajo desde {0}";
    UNDATED = "no day yet", es "todavía sin día";
    PLANNED = "planned for {0}, not tested", es "planeado para el {0}, sin probar";
    IS_TESTED = "back and tested", es "repuesta y probada";
    BACK_ON = "back on {0}", es "repuesto el {0}";

    NEXT_ALARM = "Before anyone sleeps there: alarms back and tested, or others in their place.", es "Antes de que alguien duerma ahí: alarmas repuestas y probadas, u otras en su lugar.";
    NEXT_DOWN = "Next back: {0}.", es "Sigue reponer: {0}.";
    NEXT_NONE = "All is back.", es "Todo está repuesto.";
    CALL = "Monitored: call who monitors it before you touch it, and when it is back.", es "Con monitoreo: llame a quien la monitorea antes de tocarla, y cuando esté de vuelta.";
    POWER = "Breaker off, tested dead at each box; a switch is not off. Cap each wire, close each box.", es "Breaker apagado, sin corriente probado en cada caja; un apagador no es corte. Ponga capuchón a cada alambre, cierre cada caja.";
    FAN_TWO = "A fan is two people's work: one holds, one unhooks.", es "Un ventilador es trabajo de dos: uno sostiene, otro desengancha.";
    OPENINGS = "Cap open ducts; a person falls into an open floor register.", es "Tape los ductos abiertos; una persona se cae en una rejilla de piso abierta.";
}
