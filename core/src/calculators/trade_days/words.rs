//! All that a person reads of a job's days.

use crate::words;

words! {
    NAME = "Earliest day for each trade", es "Primer día de cada oficio";
    ABOUT = "When each step can begin, what the last day hangs on, whom to call when", es "Cuándo puede empezar cada paso, de qué depende el último día, cuándo llamar";
    NOTHING = "", es "";
    START = "First day for work", es "Primer día de trabajo";
    SATURDAYS = "Saturdays are worked", es "Se trabaja en sábado";
    SUNDAYS = "Sundays are worked", es "Se trabaja en domingo";
    WORKED_HINT = "By all but the inspector, who comes Monday to Friday.", es "Por todos menos el inspector, que viene de lunes a viernes.";
    OFF = "Days off", es "Días libres";
    DAY_OFF = "Day off", es "Día libre";
    OFF_DAY = "From", es "Desde";
    OFF_THROUGH = "Through", es "Hasta";
    OFF_HINT = "Empty is one day.", es "Vacío es un día.";
    STEPS = "Steps", es "Pasos";
    STEP = "Step", es "Paso";
    WHO = "Who", es "Quién";
    CREW = "Crew", es "Cuadrilla";
    ELECTRICIAN = "Electrician", es "Electricista";
    HVAC = "HVAC", es "Aire";
    INSPECTOR = "Inspector", es "Inspector";
    LABORATORY = "Laboratory", es "Laboratorio";
    OTHER = "Other", es "Otro";
    DAYS = "Days it takes", es "Días que toma";
    DAYS_HINT = "Whole days: what waits for it begins a day later.", es "Días enteros: lo que lo espera empieza un día después.";
    THROUGH = "Goes on over days off", es "Sigue en días libres";
    THROUGH_HINT = "Drying, a lab, a delivery.", es "Secado, laboratorio, entrega.";
    COVERS_NOTHING = "Covers nothing", es "No cubre nada";
    COVERS_HINT = "It leaves in view what an inspector is to see.", es "Deja a la vista lo que va a ver un inspector.";
    CALL = "Notice, days", es "Aviso, días";
    CALL_HINT = "Monday to Friday, days off left out.", es "De lunes a viernes, sin días libres.";
    FROM = "Not before", es "No antes de";
    AFTER = "Waits for", es "Espera a";
    WHY = "split it.", es "divídalo.";
    INSPECTION = "Inspection", es "Inspección";
    STRIPPING = "Taking down, stripping", es "Quitar, raspar";
    DRYING = "Drying or delivery", es "Secado o entrega";

    NO_STEPS = "Add a step.", es "Agregue un paso.";
    NO_COMMA = "A comma parts two names: write {0}.", es "Una coma separa dos nombres: escriba {0}.";
    TWICE = "Another step is called “{0}”.", es "Otro paso se llama «{0}».";
    NO_SUCH = "No step is called “{0}”.", es "Ningún paso se llama «{0}».";
    CIRCLE = "It waits for itself: {0}.", es "Se espera a sí mismo: {0}.";
    BACKWARDS = "It ends before it begins, {0}.", es "Termina antes de empezar, {0}.";
    TOO_FAR = "Past what is reckoned, ten years on or one back: look at its days and at days off.", es "Pasa de lo que se calcula, diez años adelante o uno atrás: revise sus días y los días libres.";

    LAST = "Last day", es "Último día";
    IN_ALL = "Days, first to last", es "Días, del primero al último";
    /// Never broken over two lines.
    CHAIN = "What the last day hangs on", es "De qué depende el último día";
    SPAN = "{0} to {1}: {2}", es "{0} a {1}: {2}";
    ONE_DAY = "{0}: {1}", es "{0}: {1}";
    WITH_FLOAT = "{0}; float {1}", es "{0}; holgura {1}";
    IS_FIRST = "the first day", es "el primer día";
    IS_OWN = "not before its day", es "no antes de su día";
    IS_AFTER = "after {0}", es "después de {0}";
    IS_PAST = "after {0} and days off", es "después de {0} y días libres";
    NAMED = "{0}, {1}", es "{0}, {1}";
    COUNT = "{0}", es "{0}";
    ALL = "All steps", es "Todos los pasos";
    BEGINS = "Begins", es "Empieza";
    DONE = "Done", es "Termina";
    CALL_BY = "Call by", es "Llamar";
    SLACK = "Float", es "Holgura";
    SLACK_DAYS = "{0} {0?day|days}", es "{0} {0?día|días}";
    SLACK_WORK = "{0} work {0?day|days}", es "{0} {0?día|días} de trabajo";
    SLACK_OFFICE = "{0} {0?weekday|weekdays}", es "{0} {0?día hábil|días hábiles}";
    LATE = "If a step takes a day longer", es "Si un paso toma un día más";
    MOVES = "moves {0}; last day {1}", es "mueve {0}; último día {1}";
    STAYS = "moves no other; last day {0}", es "no mueve otro; último día {0}";
    NEXT = "First call: {0}, by {1}.", es "Primera llamada: {0}, a más tardar {1}.";
    NEXT_AHEAD = "First call: {0}, by {1}, before the first day for work.", es "Primera llamada: {0}, a más tardar {1}, antes del primer día de trabajo.";
    UNASKED = "Steps that wait for {0}", es "Pasos que esperan a {0}";
    ASK_LAB = "Nothing waits for what {0} finds.", es "Nada espera lo que encuentre {0}.";
    ASK_BEFORE_LAB = "{0} doesn’t wait for what {1} finds. Does it disturb what was sampled?", es "{0} no espera lo que encuentre {1}. ¿Toca lo que se muestreó?";
    ASK_UNASKED = "Nothing waits for {0}: what does it inspect?", es "Nada espera a {0}: ¿qué inspecciona?";
    EARLY = "{0} before {1} is done, days", es "{0} antes de que termine {1}, días";
    ASK_EARLY = "{0} doesn't wait for {1}. Does it cover what is inspected? If not, mark it: covers nothing.", es "{0} no espera a {1}. ¿Cubre lo que se inspecciona? Si no, márquelo: no cubre nada.";

    COVER = "Strip nothing before the laboratory's report, cover nothing before the inspection.", es "No raspe nada antes del informe del laboratorio; no cubra nada antes de la inspección.";
    GUESS = "Days are your guess; an inspector's day is the inspector's to give.", es "Los días son su cálculo; el día del inspector lo da el inspector.";
    DRIES = "Nothing dries by the calendar: test it before you go on.", es "Nada seca por calendario: pruébelo antes de seguir.";
}
