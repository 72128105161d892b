//! What jobs say to a person.

use crate::words;
use crate::words::Phrase;

words! {
    MONDAY = "Mon", es "lun";
    TUESDAY = "Tue", es "mar";
    WEDNESDAY = "Wed", es "mié";
    THURSDAY = "Thu", es "jue";
    FRIDAY = "Fri", es "vie";
    SATURDAY = "Sat", es "sáb";
    SUNDAY = "Sun", es "dom";
    /// Weekday, then date and time.
    WHEN = "{0} {1}", es "{0} {1}";

    A_NAME = "The job's name", es "El nombre del trabajo";
    A_PLACE = "The place", es "El lugar";
    A_TITLE = "The title", es "El título";
    A_SPOT = "The room or spot", es "El cuarto o lugar";
    A_NOTE = "The note", es "La nota";
    A_JOT = "What you wrote", es "Lo que escribió";
    TOO_LONG = "{0} has {1} characters; at most {2} can be kept. Shorten it.", es "{0} tiene {1} caracteres; se pueden guardar {2} como máximo. Acórtelo.";
    TAKEN = "This job already has a number by that name. Save it as a new one.", es "Este trabajo ya tiene un número guardado con ese nombre. Guárdelo como nuevo.";
    NO_SUCH_MARK = "That number is no longer in this job. Go back to the job's list.", es "Ese número guardado ya no está en este trabajo. Vuelva a la lista del trabajo.";
    CIRCLE = "This would make a number depend on itself: {0}. Cut one of these links first.", es "Así un número dependería de sí mismo: {0}. Corte primero uno de estos vínculos.";
    SAME_JOB = "That number is in that job already. Pick another job.", es "El número guardado ya está en ese trabajo. Elija otro trabajo.";
    NO_ID = "This number came without a name that can be used. Save it as a new one.", es "Este número guardado llegó sin un nombre que sirva. Guárdelo como nuevo.";

    /// A person's own words.
    AS_TYPED = "{0}", es "{0}";
    NO_NAME = "Job without a name", es "Trabajo sin nombre";
    FOREIGN = "A job's record that can't be read. It was left as it is.", es "El registro de un trabajo que no se puede leer. Se dejó como está.";
    TORN = "This job was cut off while it was written. Save it as a file, then restore the job from a backup.", es "Este trabajo se cortó mientras se escribía. Guárdelo como archivo y recupere el trabajo de un respaldo.";
    DAMAGED = "This job was damaged after it was written. Save it as a file, then restore the job from a backup.", es "Este trabajo se dañó después de escribirse. Guárdelo como archivo y recupere el trabajo de un respaldo.";
    NEWER = "This job was written by a newer version. Update this one to open it; until then it is left as it is.", es "Este trabajo lo escribió una versión más nueva. Actualice esta para abrirlo; hasta entonces se deja como está.";
    SHAPE = "This job can't be read. Save it as a file and keep that. Details: {0}", es "No se puede leer este trabajo. Guárdelo como archivo y consérvelo. Detalles: {0}";

    /// A field under what it stands in: `Cables 2, Count`.
    PART_OF = "{0}, {1}", es "{0}, {1}";
    NUMBERED = "{0} {1}", es "{0} {1}";
    EMPTY = "empty", es "vacío";
    FIELD_SAYS = "{0}: {1}", es "{0}: {1}";
    AND_ALSO = "{0}; {1}", es "{0}; {1}";
    AND_OTHERS = "{0}; and {1} more", es "{0}; y {1} más";
    YES = "yes", es "sí";
    NO = "no", es "no";

    AWAY_TOO = "Put away, as in the file.", es "Terminado, como en el archivo.";
    AWAY_THERE = "Put away in the file, not here.", es "Terminado en el archivo, aquí no.";
    AWAY_NO_MORE = "No longer put away, as in the file.", es "Ya no está terminado, como en el archivo.";
    ITS_TERMS = "name, place, edition or units", es "nombre, lugar, edición o unidades";
    ITS_JOTS = "ticks, prices or answers", es "marcas, precios o respuestas";

    /// Packages: how many, what they are called, what one holds.
    PACKS = "{0} × {1} of {2}", es "{0} × {1} de {2}";
    PACKS_OF = "{0} × {1}", es "{0} × {1}";
    AMOUNT = "{0}", es "{0}";
    SHARE_WAITS = "waits for a number that changed", es "espera un número que cambió";
    BUY_SAMPLED = "Counted with fields still from the sample: {0}.", es "Contado con datos todavía del ejemplo: {0}.";
    BUY_TAKES_SAMPLE = "Counted on figures with fields still from the sample: {0}.", es "Contado sobre cifras con datos todavía del ejemplo: {0}.";
    TAKES_SAMPLE = "on figures of {0}, with fields from the sample", es "sobre cifras de {0}, con datos del ejemplo";
    TAKES_SAMPLE_MORE = "on figures of {0} and {1} more, with fields from the sample", es "sobre cifras de {0} y {1} más, con datos del ejemplo";
    UNLIKE_HERE = "{1} in {0}: {2}, not taken from there", es "{1} en {0}: {2}, sin tomarlo de ahí";
    UNLIKE_ROOM = "{0}: {1} here. {3} in {2}: {4}, not taken from there", es "{0}: aquí {1}. {3} en {2}: {4}, sin tomarlo de ahí";
    BUY_UNKNOWN = "Not on this list yet, from “{0}”: {1}.", es "Todavía no está en esta lista, de «{0}»: {1}.";
    UNKNOWN_SINCE = "{0} ({1})", es "{0} ({1})";
    UNKNOWN_AND = "{0}; {1}", es "{0}; {1}";
    CSV_UNKNOWN = "not counted: {0}", es "sin contar: {0}";
    BUY_UNCOUNTED = "Not counted: {0}.", es "Sin contar: {0}.";
    /// What isn't counted, and why.
    UNCOUNTED_SINCE = "{0} ({1})", es "{0} ({1})";
    COUNTED_IN = "counted in “{0}”", es "se cuenta en «{0}»";
    AS_IT_CAME = "the sample as it came", es "el ejemplo tal cual";
    BUY_ROLLS_TOO = "{0}: a plan’s rolls and single runs are both on this list. See what the rolls leave before you buy more.", es "{0}: en esta lista hay rollos de un plano y tramos sueltos. Vea qué sobra de los rollos antes de comprar más.";
    BUY_WAITS = "Counted with old figures, since a number that they took has changed: {0}. Look at them on the job's page first.", es "Contado con cifras viejas, porque cambió un número que tomaron: {0}. Véalos primero en la página del trabajo.";
    BUY_HELD = "Counted, though this work is held, since nothing on record covers the old material: {0}.", es "Contado, aunque este trabajo está detenido porque nada de lo que consta cubre el material viejo: {0}.";
    BUY_VERSIONS = "Two versions wait for a choice: {0}. The one in use is counted; choose on the job's page.", es "Dos versiones esperan que usted elija: {0}. Se cuenta la que está en uso; elija en la página del trabajo.";
    UNLIKE_OF = "{0}, {1}.", es "{0}, {1}.";
    IS_OTHER = "another version", es "otra versión";
    SHARE_OTHER_VERSION = "another version of a number: the one in use is counted", es "otra versión de un número: se cuenta la que está en uso";
    SHARE_LEFT_OUT = "left out", es "no se cuenta";
    SHARE_SAMPLE = "the sample as it came: not counted", es "el ejemplo tal cual: no se cuenta";
    SHARE_BEYOND = "without what is in “{0}”, counted there", es "sin lo de «{0}», que ya se cuenta";
    /// How many, the price of one, what they cost.
    COMES_TO = "{0} × {1} = {2}", es "{0} × {1} = {2}";
    STILL_TO_BUY = "Still to buy", es "Falta comprar";
    BOUGHT = "Bought", es "Comprado";
    /// Of what, what it costs, and how many lines that leaves out.
    SUM = "{0} {1}", es "{0} {1}";
    SUM_WITHOUT = "{0} {1}, {2} {2?line|lines} without a price", es "{0} {1}, {2} {2?línea|líneas} sin precio";
    SUM_UNPRICED = "{0}: {1} {1?line|lines} without a price", es "{0}: {1} {1?línea|líneas} sin precio";
    NOT_A_PRICE = "Write a price, such as 12.50.", es "Escriba un precio, como 12.50.";
    /// Over a list, and why a line of a table is there.
    BOUGHT_BEFORE = "Bought, and no longer asked for", es "Comprado, y ya no se pide";
    TO_BUY_FOR = "To buy for {0}", es "Compras para {0}";
    WHAT_AND_HOW_MUCH = "{0}: {1}", es "{0}: {1}";
    MORE_OF = "{0} more", es "{0} más";
    CSV_TRADE = "trade", es "oficio";
    CSV_WHAT = "what", es "qué";
    CSV_BUY = "buy", es "comprar";
    CSV_GOT = "there already", es "ya está";
    CSV_SOLD = "sold by", es "se vende por";
    CSV_PRICE = "price of one ($)", es "precio de uno ($)";
    CSV_COST = "cost ($)", es "costo ($)";
    CSV_STILL = "still to pay ($)", es "falta pagar ($)";
    CSV_PAID = "paid ($)", es "pagado ($)";
    CSV_NEED = "need", es "hace falta";
    CSV_SPARE = "spare (%)", es "de más (%)";
    CSV_PACK = "one holds", es "contenido";
    CSV_FROM = "from", es "de";
    CSV_SPOT = "room", es "cuarto";
    CSV_ASKS = "asks for", es "pide";
    CSV_COUNTS = "counted", es "se cuenta";
    CSV_UNIT = "unit", es "unidad";
    CSV_WHY = "why", es "por qué";
    /// What a number of a table counts.
    CSV_PIECE = "piece", es "pieza";
    CSV_PACKAGE = "package", es "paquete";

    /// The title of a mark that was changed on two devices, the second one of the two.
    OTHER_VERSION_OF = "{0} (other version)", es "{0} (otra versión)";

    /// The title of a mark that was brought back beside what is here.
    FROM_BACKUP = "{0} (from the backup)", es "{0} (del respaldo)";

    /// Stands in the file itself.
    BACKUP_ABOUT = "Jobs and saved numbers, for safekeeping. To bring them back, open Ledgerboard, go to Jobs, and restore from this file. What is changed in it by hand is taken for damaged.", es "Trabajos y números guardados, como respaldo. Para recuperarlos, abra Ledgerboard, vaya a Trabajos y recupere de este archivo. Lo que se cambie a mano en él se toma por dañado.";
    BACKUP_EMPTY = "There is nothing in this file. Pick another one.", es "Este archivo no tiene nada. Elija otro.";
    BACKUP_TOO_LARGE = "This file is {0} MB; a backup is never more than {1} MB. It is something else, so it was not opened. Pick another one.", es "Este archivo tiene {0} MB; un respaldo nunca pasa de {1} MB. Es otra cosa, así que no se abrió. Elija otro.";
    BACKUP_FOREIGN = "This file is no backup from here. Pick the one that was made by “Back up”.", es "Este archivo no es un respaldo de aquí. Elija el que se hizo con «Respaldar».";
    BACKUP_CUT_SHORT = "This file stops in the middle: the end was lost when it was saved or sent. Get it again from where you keep it.", es "Este archivo se corta a la mitad: el final se perdió al guardarlo o enviarlo. Tráigalo otra vez de donde lo guarda.";
    BACKUP_TOO_FULL = "This file holds things that no backup holds, so it was not opened. Pick another one.", es "Este archivo tiene cosas que ningún respaldo tiene, así que no se abrió. Elija otro.";
    BACKUP_BROKEN = "This file can’t be read: something in it was changed or lost. Get it again from where you keep it. Details: {0}", es "No se puede leer este archivo: algo en él cambió o se perdió. Tráigalo otra vez de donde lo guarda. Detalles: {0}";
    BACKUP_NEWER = "This backup was made by a newer version. Update this one, then restore it.", es "Este respaldo lo hizo una versión más nueva. Actualice esta y luego recupérelo.";
    BACKUP_JOB_DAMAGED = "Left out: it was damaged or changed after it was backed up. An older backup may have it whole.", es "No se tomó: se dañó o se cambió después de respaldarse. Un respaldo más viejo puede tenerlo completo.";
    BACKUP_JOB_SHAPE = "Left out: it can’t be read. An older backup may have it whole. Details: {0}", es "No se tomó: no se puede leer. Un respaldo más viejo puede tenerlo completo. Detalles: {0}";
    BACKUP_JOB_FOREIGN = "Left out: it is not one of your jobs.", es "No se tomó: no es uno de sus trabajos.";
    BACKUP_JOB_NEWER = "Left out: it was written by a newer version. Update this one, then restore again.", es "No se tomó: lo escribió una versión más nueva. Actualice esta y recupere otra vez.";
    BACKUP_TWICE = "The job “{0}” is in this file twice, so nobody can say which one is meant. Pick another backup.", es "El trabajo «{0}» está dos veces en este archivo, y nadie puede decir cuál es el bueno. Elija otro respaldo.";

    NO_CALCULATOR = "This version has no calculator for this number. The answer of its day is shown.", es "Esta versión no tiene calculadora para este número guardado. Se muestra la respuesta de su día.";
    OTHER_VERSION = "The calculator has changed since this was kept. The answer of its day is shown.", es "La calculadora cambió desde que se guardó esto. Se muestra la respuesta de su día.";
    NO_LONGER_FITS = "What was put in no longer fits the calculator. The answer of its day is shown.", es "Los datos que se pusieron ya no van con la calculadora. Se muestra la respuesta de su día.";

    DEMO_NAME = "12 Thistledown Row (an invented job)", es "12 Thistledown Row (un trabajo inventado)";
    DEMO_PLACE = "An invented house and crew, to look around in. No such job exists.", es "Una casa y una cuadrilla inventadas, para conocer la página. Este trabajo no existe.";
    DEMO_DEN = "Den", es "Estudio";
    DEMO_HALL = "Hall", es "Pasillo";
    DEMO_KITCHEN = "Kitchen", es "Cocina";
    DEMO_ROOM_NOTE = "Invented. Measured once; the other numbers take its walls and its ceiling.", es "Inventado. Medido una vez; los otros números toman sus paredes y su techo.";
    DEMO_CEILING = "Den ceiling, sprayed texture", es "Techo del estudio, textura rociada";
    DEMO_HALL_CEILING = "Hall ceiling, sprayed texture", es "Techo del pasillo, textura rociada";
    DEMO_KITCHEN_CEILING = "Kitchen ceiling, sprayed texture", es "Techo de la cocina, textura rociada";
    DEMO_CEILING_NOTE = "Invented: held until a laboratory has looked at it.", es "Inventado: detenido hasta que lo haya visto un laboratorio.";
    DEMO_DOWN = "Taken down for the work", es "Quitado para el trabajo";
    DEMO_STRIP = "Strip the hall ceiling", es "Raspar el techo del pasillo";
    DEMO_RAISE = "Raise the den ceiling", es "Subir el techo del estudio";
    DEMO_RAISE_NOTE = "Invented: an engineer has still to say what the joists and ties carry.", es "Inventado: un ingeniero todavía tiene que decir qué cargan las viguetas y los amarres.";
    DEMO_JOISTS = "Joists over the den, as they are", es "Viguetas sobre el estudio, como están";
    DEMO_SWITCH = "Switch by the door", es "Apagador junto a la puerta";
    DEMO_SWITCH_NOTE = "Invented: room to spare, so the box that is in the wall can stay.", es "Inventado: sobra lugar, así que la caja que está en la pared se puede quedar.";
    DEMO_PAIR = "Two switches at the stairs", es "Dos apagadores en la escalera";
    DEMO_PAIR_NOTE = "Invented: exactly on its limit. Nothing more can go in.", es "Inventado: justo en su límite. Ya no cabe nada más.";
    DEMO_JUNCTION = "Splices over the counter", es "Empalmes sobre la cubierta de cocina";
    DEMO_JUNCTION_NOTE = "Invented: within under NEC 2017, over under NEC 2020, which counts the grounds past the fourth. Ask the building department which edition holds.", es "Inventado: dentro con NEC 2017, excede con NEC 2020, que cuenta las tierras después de la cuarta. Pregunte en la oficina de construcción cuál edición vale.";
    DEMO_OUTLETS = "Receptacles in the den", es "Contactos en el estudio";
    DEMO_SET_OUT = "Box heights, den", es "Alturas de cajas, estudio";
    DEMO_DRILL = "Hole in the den's top plates", es "Agujero en las soleras superiores del estudio";
    DEMO_DRILL_NOTE = "Invented: a steel plate on each face.", es "Inventado: una placa de acero en cada cara.";
    DEMO_HOLE = "Three cables through it", es "Tres cables por él";
    DEMO_FEED = "14-3 between the stairs’ switches", es "14-3 entre los apagadores de la escalera";
    DEMO_LIGHT = "Old cable to the den light", es "Cable viejo a la luz del estudio";
    DEMO_PLAN = "Rough-in plan, den", es "Plano de cajas y cables, estudio";
    DEMO_ALARMS = "Smoke alarms", es "Detectores de humo";
    DEMO_AIR = "Air for the den", es "Aire para el estudio";
    DEMO_SPOTS = "Where the den's register goes", es "Dónde va la rejilla del estudio";
    DEMO_THROW = "Register set under the new ceiling", es "Rejilla puesta bajo el techo nuevo";
    DEMO_REGISTER = "Register left where it is", es "Rejilla donde está hoy";
    DEMO_DUCT = "Its branch, made longer", es "Su ramal, más largo";
    DEMO_BACK = "The air's way back", es "El retorno del aire";
    DEMO_BOARDS = "Boards for the den ceiling", es "Tablaroca para el techo del estudio";
    DEMO_WEIGHT = "Those boards, carried in", es "Esas hojas, cargadas adentro";
    DEMO_COMPOUND = "Compound and tape", es "Pasta y cinta";
    DEMO_SKIM = "Skim coat, den ceiling", es "Capa delgada (skim), techo del estudio";
    DEMO_DRYING = "Drying of the skim coat", es "Secado de la capa delgada";
    DEMO_PAINT = "Paint, den ceiling", es "Pintura, techo del estudio";
    DEMO_HALL_PAINT = "Paint, hall ceiling", es "Pintura, techo del pasillo";
}

/// From Monday on.
pub(crate) static WEEKDAYS: [&Phrase; 7] =
    [&MONDAY, &TUESDAY, &WEDNESDAY, &THURSDAY, &FRIDAY, &SATURDAY, &SUNDAY];
