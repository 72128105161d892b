//! All that a person reads of what is off.

use crate::words;

words! {
    NAME = "What is off tonight", es "Qué está apagado esta noche";
    ABOUT = "A notice for who lives in the house: what is off, and until when", es "Un aviso para quien vive en la casa: qué está apagado, y hasta cuándo";
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
    FEEDS = "What they are without", es "Lo que no tienen";
    OFF_DAY = "Off on", es "Se apaga el";
    OFF_DAY_HINT = "Empty: today, or tonight past midnight.", es "Vacío: hoy, o esta noche pasada la medianoche.";
    OFF_TIME = "At", es "A las";
    TIME_HINT = "14:10, or 2:10 pm.", es "14:10, o 2:10 pm.";
    BACK_DAY = "Back on", es "Regresa el";
    BACK_DAY_HINT = "Empty: the same day, or the next where its time is earlier.", es "Vacío: el mismo día, o el siguiente si su hora es antes.";
    BACK_TIME = "By", es "Antes de las";
    WHO = "Who turns it back on, whom to call", es "Quién lo prende, a quién llamar";
    MEDICAL = "Medical device on it", es "Aparato médico conectado";
    NOT_ASKED = "Not asked yet", es "Aún no se pregunta";
    NO_DEVICE = "Asked: none", es "Se preguntó: ninguno";
    NEEDS = "Yes", es "Sí";
    OWN_POWER = "Yes, with its own power, tried", es "Sí, con corriente propia ya probada";
    COLD = "Kept cold by it", es "Lo que enfría";
    NO_COLD = "Nothing", es "Nada";
    FRIDGE = "Refrigerator", es "Refrigerador";
    FULL = "Full freezer", es "Congelador lleno";
    HALF = "Freezer, not full", es "Congelador no lleno";
    SUMP = "Sump pump on it", es "Bomba de sumidero conectada";
    FROST = "Heat off below 40 °F outside", es "Sin calefacción a menos de 40 °F afuera";
    KEPT = "Sleeping rooms keep another way out", es "Los cuartos para dormir conservan otra salida";
    NIGHT = "People sleep from", es "La gente duerme desde las";
    MORNING = "To", es "Hasta las";

    CANNOT_READ = "Can't read “{0}” as a time. Write it like 14:10 or 2:10 pm.", es "No se lee “{0}” como hora. Escríbala como 14:10 o 2:10 pm.";
    NEEDS_OFF_DAY = "Put in the day it goes off.", es "Ponga el día en que se apaga.";
    TOO_EARLY = "Back must be later than off.", es "El regreso debe ser después del apagado.";
    NONE = "Put in one line at least.", es "Ponga al menos un renglón.";

    COUNT = "Off or shut by plan", es "Apagado o cerrado según el plan";
    HEAD_MEDICAL = "{0}, {1} with a medical device", es "{0}, {1} con aparato médico";
    HEAD_NIGHT = "{0}, {1} overnight", es "{0}, {1} de noche";
    HEAD_UNTIMED = "{0}, {1} without a time", es "{0}, {1} sin hora";
    OVERNIGHT = "Off while people sleep", es "Apagado mientras la gente duerme";
    NEXT_STOP = "Settle what is over first.", es "Resuelva antes lo que excede.";
    NOTICE = "Switched off or shut by plan", es "Apagado o cerrado según el plan";
    NOTICE_NOTE = "A plan says nothing about what a wire or a pipe holds: leave all of it alone.", es "Un plan no dice qué hay en un cable o un tubo: no toque nada.";
    NEXT_DAY = "{0} the next day", es "{0} del día siguiente";
    TIME_ON_DAY = "{0} on {1}", es "{0} el {1}";
    DAY_ALONE = "{0}, time not given", es "{0}, sin hora";
    WORD = "{0}", es "{0}";
    WHEN = "off {0}, back by {1}", es "se apaga {0}, regresa antes de {1}";
    WITH = "{0} · {1}", es "{0} · {1}";
    NOON = "noon", es "mediodía";
    MIDNIGHT = "midnight", es "medianoche";
    KNOW = "To know", es "Para saber";
    EMERGENCY = "Emergency", es "Emergencia";
    NOT_GIVEN = "not given", es "sin dato";

    CHECK_ALARMS = "Alarms out while people sleep", es "Alarmas fuera mientras la gente duerme";
    NIGHT_UNKNOWN = "Whether it is back in time isn't known: see the times.", es "No se sabe si regresa a tiempo: vea las horas.";
    CHECK_TIMES = "Lines short of a time or a name", es "Renglones sin hora o sin nombre";
    SLEEP = "Sleeping hours", es "Horas de dormir";
    SHORT_TIME = "{0}: a time is missing.", es "{0}: falta una hora.";
    SHORT_READ = "{0}: a time can't be read.", es "{0}: no se lee una hora.";
    SHORT_ORDER = "{0}: back isn't later than off.", es "{0}: el regreso no es después del apagado.";
    SHORT_DAY = "{0}: on which day?", es "{0}: ¿qué día?";
    SHORT_WHO = "{0}: nobody is named.", es "{0}: no hay a quién llamar.";
    ASK_HALF = "{0} is read as {1}: write am or pm.", es "{0} se lee como {1}: escriba am o pm.";
    BOTH = "{0} {1}", es "{0} {1}";
    AND = "{0}, {1}", es "{0}, {1}";
    ASK_LASTS = "{0}: does its own power last {1}? Its maker says.", es "{0}: ¿su corriente propia dura {1}? Lo dice el fabricante.";
    ASK_LASTS_UNKNOWN = "{0}: does its own power last as long as that is off?", es "{0}: ¿su corriente propia dura todo el apagado?";
    ASK_AGAIN = "Off again within a day, {0} in all: is it cold again in between?", es "Se apaga otra vez en el mismo día, {0} en total: ¿se enfría antes?";
    CLOCKS_BACK = "By the clock: an hour more on the night when clocks go back.", es "Según el reloj: una hora más la noche en que se atrasa.";
    ASK_ABOUT = "Not asked yet: {0}.", es "Aún no se pregunta: {0}.";
    MINUTES_OFF = "{0}, off {1}, in minutes", es "{0}, apagado {1}, en minutos";

    NOT_PROVED = "Off by plan is not proved: nobody touches a wire, a pipe or a burner for it.", es "Apagado según el plan no es comprobado: nadie toca por eso un cable, un tubo ni un quemador.";
    SMELL = "Smell gas, or an alarm sounds: everybody out, then call 911.", es "Si huele a gas o suena una alarma: todos afuera, luego llamen al 911.";
}
