//! All that a person reads of what is off.

use crate::words;

words! {
    NAME = "What is off tonight", es "Qué está apagado esta noche";
    ABOUT = "A notice for the people who live in the house: what is off, until when, and what that means for them", es "Un aviso para la gente que vive en la casa: qué está apagado, hasta cuándo, y qué significa para ellos";
    NOTHING = "", es "";

    OFF = "What will be off or shut", es "Lo que se va a apagar o cerrar";
    LINE = "Line", es "Renglón";
    WHAT = "What it is", es "Qué es";
    CIRCUIT = "Circuit", es "Circuito";
    COLD_WATER = "Cold water", es "Agua fría";
    HOT_WATER = "Hot water", es "Agua caliente";
    GAS = "Gas", es "Gas";
    HEAT = "Heat or cooling", es "Calefacción o clima";
    ROOM = "A room", es "Un cuarto";
    WAY = "Stair or way out", es "Escalera o salida";
    ALARM = "Smoke or CO alarm", es "Alarma de humo o CO";
    NAMED = "Which", es "Cuál";
    FEEDS = "What that means for them", es "Qué significa para ellos";
    FEEDS_HINT = "In their words: no oven, no light in the hall.", es "En sus palabras: sin horno, sin luz en el pasillo.";
    OFF_DAY = "Off on", es "Se apaga el";
    OFF_DAY_HINT = "Empty: today.", es "Vacío: hoy.";
    OFF_TIME = "At", es "A las";
    TIME_HINT = "14:10, or 2:10 pm.", es "14:10, o 2:10 pm.";
    BACK_DAY = "Back on", es "Regresa el";
    BACK_DAY_HINT = "Empty: the same day, or the next where its time is earlier.", es "Vacío: el mismo día, o el siguiente si su hora es antes.";
    BACK_TIME = "By", es "Antes de las";
    WHO = "Who turns it back on", es "Quién lo prende de nuevo";
    CALL = "Call", es "Llamar a";
    MEDICAL = "A medical device hangs on it", es "De él depende un aparato médico";
    NOT_ASKED = "Not asked yet", es "Aún no se pregunta";
    NO_DEVICE = "Asked: none", es "Se preguntó: ninguno";
    NEEDS = "Yes", es "Sí";
    OWN_POWER = "Yes, and it has tried power of its own for that long", es "Sí, y tiene corriente propia ya probada por ese tiempo";
    COLD = "Kept cold by it", es "Lo que enfría";
    NO_COLD = "Nothing", es "Nada";
    FRIDGE = "A refrigerator", es "Un refrigerador";
    FULL = "A full freezer", es "Un congelador lleno";
    HALF = "A freezer, not full", es "Un congelador no lleno";
    SUMP = "A sump pump is on it", es "Tiene una bomba de sumidero";
    FROST = "Colder than 40 °F outside", es "A menos de 40 °F afuera";
    KEPT = "Each sleeping room keeps another way out", es "Cada cuarto para dormir conserva otra salida";
    NIGHT = "People sleep from", es "La gente duerme desde las";
    MORNING = "To", es "Hasta las";

    NONE = "Put in one line at least.", es "Ponga al menos un renglón.";
    NO_TIME = "No time of day: 14:10, or 2:10 pm.", es "No es una hora: 14:10, o 2:10 pm.";
    TOO_EARLY = "Before it goes off, {0}. One of the two is wrong.", es "Antes de apagarse, {0}. Uno de los dos está mal.";

    COUNT = "Off or shut by plan", es "Apagado o cerrado según el plan";
    OVERNIGHT = "Off while people sleep", es "Apagado mientras la gente duerme";
    LONGEST = "The longest", es "Lo más largo";
    NEXT_LAST = "The last is back by {0}: {1}.", es "Lo último regresa antes de {0}: {1}.";
    NEXT_STOP = "Settle what is over before anything goes off.", es "Resuelva lo que excede antes de apagar nada.";
    NOTICE = "Switched off or shut by plan", es "Apagado o cerrado según el plan";
    NOTICE_NOTE = "The first that is back stands first. A plan says nothing about what a wire or a pipe holds: leave all of it alone.", es "Primero lo que regresa primero. Un plan no dice qué hay en un cable o un tubo: no toque nada.";
    ONE = "{0}", es "{0}";
    PAIR = "{0}, {1}", es "{0}, {1}";
    WHEN = "off {0}, back by {1}", es "se apaga {0}, regresa antes de {1}";
    WITH = "{0} · {1}", es "{0} · {1}";
    NOT_GIVEN = "not given", es "sin dato";

    CHECK_MEDICAL = "Medical devices left without power", es "Aparatos médicos sin corriente";
    CHECK_ASKED = "Circuits nobody asked about", es "Circuitos por los que nadie preguntó";
    ASK_LIVING = "Ask everyone who lives here what they can't be without.", es "Pregunte a todos los que viven aquí sin qué no pueden estar.";
    CHECK_ALARMS = "Alarms out while people sleep", es "Alarmas fuera mientras la gente duerme";
    CHECK_WAY = "Ways out shut, with no other", es "Salidas cerradas, sin otra";
    CHECK_GAS = "Gas lines to be turned on again", es "Líneas de gas por abrir de nuevo";
    CHECK_FROST = "Heat off in frost", es "Sin calefacción con helada";
    ASK_FROST = "Heat before it falls under 55 °F inside, or have the pipes drained by who may.", es "Caliente antes de que baje de 55 °F adentro, o que vacíe los tubos quien puede.";
    CHECK_FRIDGE = "Refrigerator off, door shut", es "Refrigerador apagado, cerrado";
    CHECK_FULL = "Full freezer off, door shut", es "Congelador lleno apagado, cerrado";
    CHECK_HALF = "Freezer off, not full, door shut", es "Congelador no lleno apagado, cerrado";
    CHECK_SUMP = "Sump pumps off", es "Bombas de sumidero apagadas";
    ASK_SUMP = "Look at the pit, and have another pump at hand where it rises.", es "Vigile el pozo, y tenga otra bomba a la mano si sube.";
    ASK_NIGHT = "Back before they sleep, or tell each of them.", es "Que regrese antes de que duerman, o avise a cada uno.";
    CHECK_TIMES = "Lines with no time to be back", es "Renglones sin hora de regreso";
    ASK_TIMES = "A line without its times is worked by no limit here.", es "Un renglón sin sus horas no se compara con ningún límite.";
    CHECK_WHO = "Lines with nobody to turn it on or to call", es "Renglones sin quién lo prenda o a quién llamar";
    ASK_WHO = "Somebody who is reached tonight.", es "Alguien a quien se encuentra esta noche.";

    NOT_PROVED = "Off by plan is not proved: nobody touches a wire, a pipe or a burner on the word of this paper.", es "Apagado según el plan no es comprobado: nadie toca un cable, un tubo ni un quemador por lo que dice este papel.";
    SMELL = "Smell gas, or an alarm sounds: everybody out, then call 911.", es "Si huele a gas o suena una alarma: todos afuera, luego llamen al 911.";
}
