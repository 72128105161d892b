//! All that a person reads of what work on a circuit sets off.

use crate::words;

words! {
    NAME = "What this sets off", es "Qué reglas trae esto";
    ABOUT = "Which of today's rules a change to a circuit brings, to settle with the electrician before it is opened", es "Qué reglas de hoy trae un cambio a un circuito, para acordarlas con el electricista antes de abrirlo";
    NOTHING = "", es "";

    WHAT = "What is done", es "Qué se hace";
    EXTEND = "Cable added to a circuit", es "Cable agregado a un circuito";
    MOVE = "A receptacle moved", es "Contacto que se mueve";
    REPLACE = "A receptacle replaced", es "Contacto que se cambia";
    RECEPTACLE = "A new receptacle", es "Un contacto nuevo";
    SWITCH = "A switch, new or moved", es "Apagador, nuevo o movido";
    LIGHT = "A ceiling box, new or moved", es "Caja de techo, nueva o movida";
    FAN = "A ceiling fan hung", es "Se cuelga un ventilador de techo";
    ALARMS = "Smoke alarms only", es "Solo alarmas de humo";
    ROOM = "Where", es "Dónde";
    BESIDE = "The receptacle is", es "El contacto está";
    FOUND = "Wiring found", es "Alambrado que hay";
    FOUND_HINT = "Look in a dead box. Not looked: it is asked.", es "Vea en una caja sin corriente. Si no la ha visto: se pregunta.";
    WIRE = "Cable added", es "Cable agregado";
    WIRE_HINT = "Between boxes. Empty: not known yet.", es "Entre cajas. Vacío: todavía no se sabe.";
    WHY_WIRE = "measure it again.", es "mídalo otra vez.";
    OUTLET = "An outlet or device is added", es "Se agrega salida (outlet) o dispositivo";
    SPARE = "A spare switched wire runs to it", es "Le llega un alambre de apagador de reserva";
    SERVICE = "The panel or service is touched", es "Se toca el panel o la acometida";

    LINES = "Lines to settle", es "Puntos por resolver";
    STOP = "Old wiring", es "Alambrado viejo";
    SERVICE_LINE = "Panel or service", es "Panel o acometida";
    LOCAL = "Permit", es "Permiso";
    ARC = "Arc-fault protection", es "Protección de falla de arco";
    GROUND_FAULT = "Ground-fault protection", es "Protección de falla a tierra";
    SHUTTERS = "Receptacle with shutters", es "Contacto con obturadores";
    REPLACED = "Receptacle replaced", es "Contacto cambiado";
    NEUTRAL = "Neutral at the switch", es "Neutro en el apagador";
    FAN_BOX = "Box for a fan", es "Caja para ventilador";
    READY = "Box that a fan could hang from", es "Caja que podría llevar ventilador";
    ALARM_LINE = "Smoke alarms", es "Alarmas de humo";
    NO_GROUND = "Ground at the box", es "Tierra en la caja";
    ASK_STOP = "Stop, and hand over.", es "Pare, y entregue.";
    ASK_SERVICE = "Not this crew's: hand it over.", es "No le toca a esta cuadrilla: entréguelo.";
    ASK_LOCAL = "Ask which edition and local changes hold, and who may do it.", es "Pregunte qué edición y qué cambios locales valen, y quién puede hacerlo.";
    ASK_ARC = "By breaker, or by the first receptacle: the electrician chooses.", es "Por breaker, o por el primer contacto: elige el electricista.";
    ASK_GROUND_FAULT = "By breaker, receptacle or one upstream. A reset stays in reach.", es "Por breaker, contacto o uno antes en el circuito. El botón de reset queda al alcance.";
    ASK_SHUTTERS = "Buy it so.", es "Cómprelo así.";
    ASK_REPLACED = "Today's rules at its place.", es "Las reglas de hoy en su lugar.";
    ASK_NEUTRAL = "Run a cable with one, or say which exception holds.", es "Pase un cable con neutro, o diga qué excepción vale.";
    ASK_FAN_BOX = "Listed for a fan, with the weight marked past 35 lb.", es "Listada para ventilador, con el peso marcado si pasa de 35 lb.";
    ASK_READY = "Listed for a fan, or framing in reach.", es "Listada para ventilador, o estructura al alcance.";
    ASK_ALARMS = "The whole dwelling's, by today's rule.", es "Las de toda la vivienda, por la regla de hoy.";
    ASK_NO_GROUND = "Look for one. Without it, how it gets one is settled first.", es "Búsquela. Si no hay, primero se acuerda de dónde sale.";

    EXEMPT = "Not set off", es "Reglas que no trae";
    EXEMPT_ARC = "Arc-fault protection", es "Protección de falla de arco";
    EXEMPT_WHY = "{0} added, no outlet: 6 ft at most", es "{0} agregados, sin salida (outlet): 6 ft a lo más";
    BY_EDITION = "Not in every edition", es "No en todas las ediciones";
    IN = "only {0}", es "solo {0}";
    NEXT_STOP = "Stop here. Leave it as it is, dead, and call the electrician.", es "Pare aquí. Déjelo como está, sin corriente, y llame al electricista.";
    NEXT = "Take this list to the electrician before anything is opened.", es "Lleve esta lista al electricista antes de abrir nada.";

    DEAD = "Dead, and proved dead: meter proved on a live source before and after. A box may hold two circuits, a white wire may be hot, a shared neutral shocks with one breaker off.", es "Sin corriente, y comprobado sin corriente: medidor comprobado en una fuente viva antes y después. Una caja puede tener dos circuitos, un alambre blanco puede estar vivo, un neutro compartido da descarga con un breaker apagado.";
    LICENSED = "This is no verdict. A licensed electrician where the law says so, and no power before the inspection.", es "Esto no es un dictamen. Un electricista con licencia donde la ley lo dice, y nada de corriente antes de la inspección.";
}
