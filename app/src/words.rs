//! Every word of the page itself. What a calculator says stands beside the calculator.

use ledgerboard_core::words;

words! {
    // The frame.
    NAME = "Ledgerboard", es "Ledgerboard";
    TITLED = "{0} · Ledgerboard", es "{0} · Ledgerboard";
    TO_HOME = "All calculators", es "Todas las calculadoras";
    VERSION = "Version {0}", es "Versión {0}";
    PRIVACY = "Nothing you type leaves this phone.", es "Nada de lo que escribe sale de este teléfono.";
    NOWHERE = "Nothing is here", es "Aquí no hay nada";
    NOWHERE_SAYS = "This address holds nothing that this version knows. It may be from a newer one, or cut short on its way.", es "Esta dirección no tiene nada que esta versión conozca. Puede ser de una más nueva, o llegó cortada.";
    CLOSE = "Close", es "Cerrar";
    UNDO = "Undo", es "Deshacer";
    FIGURE = "{0}", es "{0}";
    PAIR = "{0}: {1}", es "{0}: {1}";

    // Home.
    HOME_HEADING = "What are you working out?", es "¿Qué va a calcular?";
    CALCULATORS = "Calculators", es "Calculadoras";
    JOBS = "Jobs", es "Trabajos";
    ALL_JOBS = "All jobs", es "Todos los trabajos";
    NO_JOBS = "No jobs yet. Work out a number and save it; it goes to loose notes until you make a job.", es "Todavía no hay trabajos. Calcule un número y guárdelo; va a notas sueltas hasta que haga un trabajo.";
    SEE_DEMO = "See an invented job", es "Ver un trabajo inventado";
    TAKE_DEMO_AWAY = "Hide it", es "Ocultarlo";
    SETTINGS = "Settings", es "Ajustes";

    // The answer.
    ANSWER = "Answer", es "Respuesta";
    SAMPLE = "Sample", es "Ejemplo";
    SAMPLE_OF = "Sample, {0}", es "Ejemplo, {0}";
    AS_LEFT = "As you left it", es "Como lo dejó";
    FROM_LINK = "From a link", es "De un enlace";
    START_OVER = "Start over", es "Empezar de nuevo";
    STARTED_OVER = "The sample stands here again.", es "Aquí está otra vez el ejemplo.";
    BY = "By {0}.", es "Según {0}.";
    LOOK_AT = "look at: {0}", es "revise: {0}";
    OF_AT_MOST = "of {0}", es "de {0}";
    OF_AT_LEAST = "of at least {0}", es "de al menos {0}";
    NOTHING_TO_SPARE = "nothing to spare", es "sin margen";
    TO_SPARE = "{0} to spare", es "{0} de margen";
    TOO_MUCH = "{0} too much", es "{0} de más";
    TOO_LITTLE = "{0} too little", es "{0} de menos";
    MISSING = "{0} missing", es "faltan {0}";
    RULE_NAME = "{0} of {1}, {2}, {3}", es "{0} de {1}, {2}, {3}";
    NEEDS = "needs: {0}", es "falta: {0}";
    NEEDS_MORE = "{0} {0?field|fields} to look at", es "{0} {0?dato|datos} por revisar";
    LEFT_OUT = "Left out, because it can’t be read: {0}.", es "No se tomó, porque no se puede leer: {0}.";
    GO_TO_FIELD = "Go to the field", es "Ir al dato";
    WAITS = "Waits for: {0}", es "En espera de: {0}";
    UNDER = "Worked under {0}.", es "Calculado según {0}.";
    UNDER_STRICTEST = "Edition not set: strictest of {0}, {1}, {2}. Shown: {3}.", es "Edición sin definir: la más estricta de {0}, {1}, {2}. Se muestra: {3}.";
    FLIPS = "The editions disagree. The one your town adopted decides; ask the building department.", es "Las ediciones no coinciden. Decide la que adoptó su ciudad; pregunte en la oficina de construcción.";
    EDITION_NOT_SET = "Not set: strictest", es "Sin definir: la más estricta";
    UNITS = "Units", es "Unidades";
    CUSTOMARY = "Feet and inches", es "Pies y pulgadas";
    METRIC = "Metric", es "Métrico";

    // Fields.
    FIELDS = "What goes in", es "Datos";
    PICK_COMMON = "{0}: {1}", es "{0}: {1}";
    FEWER = "One fewer: {0}", es "Uno menos: {0}";
    MORE = "One more: {0}", es "Uno más: {0}";
    READ_AS = "= {0}", es "= {0}";
    NUMBERED = "{0} {1}", es "{0} {1}";
    ADD = "Add {0}", es "Agregar {0}";
    REMOVE = "Remove", es "Quitar";
    REMOVE_ITEM = "Remove {0} {1}", es "Quitar {0} {1}";
    REMOVED = "Removed.", es "Quitado.";
    MORE_OF_ITEM = "More", es "Más";
    USED = "Put in.", es "Puesto.";
    YES = "Yes", es "Sí";
    RULER = "Tape", es "Cinta";
    RULER_OF = "Set {0} by feet, inches and sixteenths", es "Poner {0} en pies, pulgadas y dieciseisavos";
    FEET = "Feet", es "Pies";
    INCHES = "Inches", es "Pulgadas";
    SIXTEENTHS = "Sixteenths", es "Dieciseisavos";
    NO_SIXTEENTHS = "0", es "0";
    NO_CHOICE = "“{0}” is no choice here", es "«{0}» no es una opción aquí";

    // Holds.
    HOLD_OPEN = "open", es "abierto";
    OPEN_HOLD = "Go to “{0}”", es "Ir a «{0}»";
    OPEN_THAT_HOLD = "See what keeps it shut: {0}", es "Ver qué lo tiene cerrado: {0}";
    BEHIND = "The hold that covers it", es "El alto que lo cubre";
    STILL_SHUT = "The hold that covers it is still shut.", es "El alto que lo cubre sigue cerrado.";
    OPENED_BY = "Opened by: {0}", es "Abierto por: {0}";
    BEHIND_NONE = "No hold yet", es "Ningún alto todavía";
    EVIDENCE_OUT = "The report was about something else: what was found out is taken out.", es "El reporte era de otra cosa: se quitó lo que se había averiguado.";
    NO_EVIDENCE = "The link came with a result. Results are never taken from a link: read the report yourself and enter it.", es "El enlace traía un resultado. Un resultado nunca se toma de un enlace: lea usted mismo el reporte y anótelo.";

    // Links.
    TAKE_ROOM = "Take the room: {0}", es "Tomar el cuarto: {0}";
    TAKE_WHOLE = "Take all of {0}", es "Tomar todo: {0}";
    TAKE_FROM = "Take from the job", es "Tomar del trabajo";
    TAKE_FROM_OF = "Take {0} from another number of the job", es "Tomar {0} de otro número del trabajo";
    TAKEN_FROM = "From {0}", es "De {0}";
    SOURCE_GONE = "a number that is no longer here", es "un número que ya no está aquí";
    LINK_CUT = "Typed over: no longer taken from {0}.", es "Se escribió encima: ya no se toma de {0}.";
    SOURCE_MOVED = "It said {0} when it was taken. Now it says {1}.", es "Decía {0} cuando se tomó. Ahora dice {1}.";
    SOURCE_BEHIND = "That number waits for a changed one itself: look there first.", es "Ese número también espera a uno que cambió: revise primero ahí.";
    SOURCE_LOST = "The number that it came from is no longer in this job.", es "El número de donde vino ya no está en este trabajo.";
    TAKE_VALUE = "Take it", es "Tomarlo";
    KEEP_VALUE = "Keep mine", es "Dejar el mío";
    SETTLED = "Changed here.", es "Se cambió aquí.";
    USED_BY = "Used by {0}", es "Lo usa: {0}";
    TAKES = "{0}: from {1}", es "{0}: de {1}";

    LANGUAGE = "Language · Idioma", es "Idioma · Language";

    // What stands before each part of the work.
    READY = "Ready?", es "¿Listo?";
    READY_SAYS = "What this job's numbers say against published limits, and what the trade looks for. The inspector decides.", es "Lo que dicen los números de este trabajo frente a límites publicados, y lo que el oficio revisa. El inspector decide.";
    READY_COUNTS = "{0} over or held, {1} to ask, {2} not looked at", es "{0} pasados o detenidos, {1} por preguntar, {2} sin revisar";
    READY_NO_MARKS = "No number of this job is about this yet.", es "Ningún número de este trabajo trata de esto todavía.";
    LOOKING_AT_NUMBERS = "Looking at what each number says today …", es "Viendo qué dice hoy cada número …";
    READY_WITHIN = "{0} {0?check|checks} within", es "{0} {0?revisión|revisiones} dentro del límite";
    READY_MOVED = "waits for a number that changed", es "espera un número que cambió";
    LOOKED_FOR = "What is looked for", es "Qué se revisa";
    LOOKED_ON = "looked at {0}", es "revisado {0}";
    HABIT = "common practice", es "costumbre del oficio";

    // Sheets that are handed over.
    OF_ALL_NUMBERS = "Made of all numbers of the job", es "Con todos los números del trabajo";
    TURNOVER = "Turnover sheets", es "Hojas de entrega";
    SHEET_FOR = "Turnover sheet: {0}", es "Hoja de entrega: {0}";
    SHEET_DAY = "{0} · {1}", es "{0} · {1}";
    SHEET_EDITION = "electrical code of {0}", es "código eléctrico de {0}";
    SHEET_NO_EDITION = "edition not set: strictest of those shown", es "edición sin definir: la más estricta de las mostradas";
    SHEET_EMPTY = "No number of this job is theirs yet.", es "Ningún número de este trabajo es para ellos todavía.";
    SHEET_CHANGES = "Changed since {0}", es "Cambios desde {0}";
    SHEET_NO_CHANGE = "Nothing.", es "Nada.";
    SHEET_NEW = "{0}: new, {1}", es "{0}: nuevo, {1}";
    SHEET_NOW = "{0}: {1}; now {2}, {3}", es "{0}: {1}; ahora {2}, {3}";
    SHEET_GONE = "{0}: taken out", es "{0}: se quitó";
    OWNER_SAID = "{0}, {1}", es "{0}, {1}";
    OWNER_SAID_OF = "“{0}” was said of {1} on {2}. It has changed: ask again.", es "«{0}» se dijo de {1} el {2}. Ha cambiado: pregunte de nuevo.";
    SIGN_NOTES = "Notes", es "Notas";
    SIGN_OWNER = "Owner", es "Dueño";
    SIGN_TAKEN = "Taken over by", es "Recibido por";
    SIGN_DAY = "Date", es "Fecha";
    SCALE_BAR = "2 in at 100 %", es "2 in al 100 %";
    HANDED_OVER = "I handed it over", es "Ya la entregué";
    HANDED_OVER_ON = "Noted: handed over {0}. The next sheet tells what has changed since.", es "Anotado: entregada {0}. La próxima hoja dirá qué cambió desde entonces.";

    // What to buy.
    TO_BUY = "What to buy", es "Qué comprar";
    NOTHING_TO_BUY = "No number of this job asks for anything to buy yet.", es "Ningún número de este trabajo pide comprar nada todavía.";
    SPARE_OF_ALL = "Spare for all, percent", es "De más para todo, por ciento";
    NOT_A_PERCENT = "Write a percentage from 0 to 100, such as 10.", es "Escriba un porcentaje de 0 a 100, como 10.";
    NOT_A_PACK = "Write what one package holds, such as 250 or 4.5.", es "Escriba lo que trae un paquete, como 250 o 4.5.";
    NOT_A_PRICE = "Write a price, such as 12.50.", es "Escriba un precio, como 12.50.";
    BUY_MISSING = "{0} {0?number|numbers} of this job can't be worked today: what they ask for is missing here.", es "{0} {0?número|números} de este trabajo no se {0?puede|pueden} calcular hoy: lo que {0?pide|piden} falta aquí.";
    BUY_HELD = "Left out while it is held: {0}", es "Se queda fuera mientras está detenido: {0}";
    BUY_COST = "All together {0}", es "Todo junto {0}";
    BUY_COST_WITHOUT = "All together {0}, {1} {1?line|lines} without a price", es "Todo junto {0}, {1} {1?línea|líneas} sin precio";
    BUY_MORE = "{0} more than you had on {1}.", es "{0} más de lo que tenía el {1}.";
    BUY_NEEDS = "{0} needed", es "hacen falta {0}";
    BUY_NEEDS_SPARE = "{0} needed, with {1} spare {2}", es "hacen falta {0}, con {1} de más {2}";
    BUY_PACK = "One package holds", es "Un paquete trae";
    BUY_PRICE = "Price of one", es "Precio de uno";
    BUY_SPARE = "Spare of this, percent", es "De más de esto, por ciento";
    BUY_HOW = "Added up from this job's numbers and rounded up once. Usual package sizes are common practice: put in your shop's own.", es "Sumado de los números de este trabajo y redondeado hacia arriba una sola vez. Los tamaños usuales son costumbre: ponga los de su tienda.";
    SHARE_WHY = "{0}, {1}", es "{0}, {1}";
    SHARE_OUT = "Leave out", es "No contar";
    SHARE_IN = "Count it", es "Contar";
    SEND_TEXT = "Send as text", es "Enviar como texto";
    TEXT_COPIED = "Copied: paste it into a message.", es "Copiado: péguelo en un mensaje.";
    SAVE_TABLE = "Table (CSV)", es "Tabla (CSV)";
    TABLE_SHARED = "The table was handed on.", es "La tabla se entregó.";
    TABLE_SAVED = "The table went to this phone's downloads.", es "La tabla está en las descargas del teléfono.";
    PRINT = "Print", es "Imprimir";

    // Headings below.
    DRAWING = "Drawing", es "Dibujo";
    DRAWING_LARGE = "Show it large", es "Verlo en grande";
    IN_WORDS = "In words", es "En palabras";
    CHECKS = "Checks", es "Revisiones";
    WORKING = "Working", es "Cálculo";
    MATERIALS = "What to have on hand", es "Qué tener a la mano";
    CAUTIONS = "Cautions", es "Precauciones";
    SOURCES = "Sources", es "Fuentes";
    FIGURES = "Other figures", es "Otros números";
    USE = "Use", es "Usar";
    USE_ROW = "Use: {0}", es "Usar: {0}";
    SURE = "{0} ({1})", es "{0} ({1})";

    // Keeping.
    KEEPING = "Keep this number", es "Guardar este número";
    SAVE = "Save to job", es "Guardar";
    SAVE_OVER = "Save over", es "Reemplazar";
    SAVE_NEW = "Save as new", es "Guardar nuevo";
    SHARE = "Share", es "Compartir";
    CODE = "Code", es "Código";
    CODE_TITLE = "For another phone's camera", es "Para la cámara de otro teléfono";
    CODE_SAYS = "Its camera opens this question. It needs no signal where Ledgerboard has been opened once.", es "Su cámara abre esta pregunta. No necesita señal si Ledgerboard ya se abrió ahí una vez.";
    CODE_TOO_LONG = "This is too much for one code. Share it, or back the job up as a file.", es "Esto es demasiado para un código. Compártalo, o guarde el trabajo como archivo.";
    SAVING = "Saving in {0} …", es "Guardando en {0} …";
    SAVED_ONCE = "Saved once, in {0}", es "Guardado una vez, en {0}";
    SAVED_TWICE = "Saved twice, in {0}", es "Guardado dos veces, en {0}";
    SAVED_OVER = "Saved over the old number, in {0}. Kept once", es "Se reemplazó el número anterior, en {0}. Guardado una vez";
    SAVED_OVER_TWICE = "Saved over the old number, in {0}. Kept twice", es "Se reemplazó el número anterior, en {0}. Guardado dos veces";
    SAVED_ONLY_ONCE = "Saved once, in {0}: there is no other copy on this phone. Back it up.", es "Guardado una vez, en {0}: no hay otra copia en este teléfono. Respáldelo.";
    SAVE_AGAIN = "Save again", es "Guardar otra vez";
    BACK_UP = "Back up", es "Respaldar";
    OTHER_TAB_TITLE = "{0}, from the other tab", es "{0}, de la otra pestaña";
    TAKEN_BACK = "Taken back.", es "Deshecho.";
    SAVED_AS_BEFORE = "Taken back: the number of before is saved. What you typed stands here, not saved.", es "Deshecho: quedó guardado el número de antes. Lo que escribió está aquí, sin guardar.";
    NO_LONGER_SAVED = "Taken back: nothing is saved. What you typed stands here.", es "Deshecho: no hay nada guardado. Lo que escribió está aquí.";
    MARK_GONE = "This number was removed in another tab. Save keeps it as a new one.", es "Este número se quitó en otra pestaña. «Guardar» lo guarda como nuevo.";
    JOB_GONE = "The job that this was for is no longer here. Save puts it in {0}.", es "El trabajo de este número ya no está aquí. «Guardar» lo pone en {0}.";
    NOT_SAVED = "Not saved.", es "No está guardado.";
    TITLE = "Title", es "Título";
    SPOT = "Room or spot", es "Cuarto o lugar";
    NOTE = "Note", es "Nota";
    DONE = "Done", es "Listo";
    CANT_SAVE_FAULT = "Nothing to save yet: look at the field first.", es "Todavía no hay nada que guardar: revise primero el dato.";
    LINK_COPIED = "Link copied. It opens this question and its answer on any phone.", es "Enlace copiado. Abre esta pregunta y su respuesta en cualquier teléfono.";
    LINK_SHOWN = "Copy this link: it opens this question and its answer on any phone.", es "Copie este enlace: abre esta pregunta y su respuesta en cualquier teléfono.";
    LINK = "Address", es "Dirección";
    LOOSE_NOTES = "Loose notes, {0}", es "Notas sueltas, {0}";
    NO_JOB = "Loose notes", es "Notas sueltas";
    THIS_JOB = "Job", es "Trabajo";
    NEW_JOB_PICK = "New job …", es "Trabajo nuevo …";
    COPIED_TITLE = "{0}, again", es "{0}, otra vez";

    // Jobs.
    NEW_JOB = "New job", es "Trabajo nuevo";
    BACK_TO = "Back to {0}", es "Volver a {0}";
    TAKE_ALONG = "Take “{0}” along", es "Llevar «{0}»";
    JOB_NAME = "Name", es "Nombre";
    JOB_PLACE = "Place, way in, who to call", es "Lugar, cómo entrar, a quién llamar";
    JOB_SAMPLE_HINT = "A street and number, or what the crew calls it.", es "Calle y número, o como le diga la cuadrilla.";
    MAKE_JOB = "Make this job", es "Crear este trabajo";
    WORK_ON = "Work on this job", es "Seguir con este trabajo";
    WORKED_ON = "Numbers are saved to this job now.", es "Los números se guardan ahora en este trabajo.";
    EDITION_OF_JOB = "Edition of the electrical code", es "Edición del código eléctrico";
    EDITION_HINT = "The one your town adopted. The building department knows; leave it unset and the strictest is shown.", es "La que adoptó su ciudad. La oficina de construcción la sabe; si no la define, se muestra la más estricta.";
    SAVED_NUMBERS = "Saved numbers", es "Números guardados";
    NO_MARKS = "Nothing saved here yet. Open a calculator, and save its number to this job.", es "Aquí no hay nada guardado todavía. Abra una calculadora y guarde su número en este trabajo.";
    ADD_TO_JOB = "Work out another for this job", es "Calcular otro para este trabajo";
    NO_SPOT = "No room given", es "Sin cuarto";
    RENAME = "About this job", es "Sobre este trabajo";
    REMOVE_JOB = "Remove this job", es "Quitar este trabajo";
    REMOVE_JOB_ASKS = "Remove this job, with {0} saved {0?number|numbers}?", es "¿Quitar este trabajo, con {0} {0?número guardado|números guardados}?";
    BACK_UP_FIRST = "Back up first", es "Respaldar primero";
    JOB_REMOVED = "Removed: {0}.", es "Se quitó: {0}.";
    MARK_REMOVED = "Removed: {0}.", es "Se quitó: {0}.";
    MARK_MOVED = "Moved to {0}.", es "Se pasó a {0}.";
    CHANGE_DETAILS = "Change, copy, move, remove", es "Cambiar, copiar, mover, quitar";
    CHANGE_DETAILS_ALONE = "Change, copy, remove", es "Cambiar, copiar, quitar";
    SAVED_ON = "Saved {0}", es "Guardado {0}";
    SAVED_NOW = "Saved: {0}, {1}. Now: {2}, {3}.", es "Guardado: {0}, {1}. Ahora: {2}, {3}.";
    AGAIN = "Copy", es "Copiar";
    MOVE = "Move to another job …", es "Mover a otro trabajo …";
    THEN_NOW = "Then: {0}, {1}. Now: {2}, {3}.", es "Antes: {0}, {1}. Ahora: {2}, {3}.";
    INVENTED = "Invented: nobody’s house and nobody’s numbers.", es "Inventado: ni la casa ni los números son de nadie.";
    DEMO_SAYS = "Look round, open its numbers, change them. What you save goes to your own jobs.", es "Véalo, abra sus números, cámbielos. Lo que guarde va a sus propios trabajos.";
    NO_SUCH_JOB = "This job is not on this phone", es "Este trabajo no está en este teléfono";
    NO_SUCH_MARK = "This number is not on this phone", es "Este número no está en este teléfono";
    MARK_COUNT = "{0} saved {0?number|numbers}", es "{0} {0?número guardado|números guardados}";
    MARK_COUNT_UNSAVED = "{0} {0?number|numbers}, the last change not saved", es "{0} {0?número|números}, el último cambio sin guardar";

    // Backups.
    BACKUPS = "Backups", es "Respaldos";
    BACK_UP_ALL = "Back up all jobs", es "Respaldar todos los trabajos";
    BACK_UP_ONE = "Back up this job", es "Respaldar este trabajo";
    BACKUP_AS_TEXT = "As text", es "Como texto";
    NO_BACKUP_YET = "No backup of all jobs has been made on this phone yet: {0} saved {0?number|numbers}.", es "En este teléfono todavía no se han respaldado todos los trabajos: {0} {0?número guardado|números guardados}.";
    NOT_BACKED_UP = "{0} saved {0?number|numbers} in no backup of this phone.", es "{0} {0?número guardado|números guardados} sin respaldo en este teléfono.";
    BACKED_UP_SINCE = "Last backup {0}; {1} {1?number|numbers} saved since.", es "Último respaldo {0}; desde entonces {1} {1?número guardado|números guardados}.";
    BACKED_UP_ALL = "Last backup {0}; nothing saved since.", es "Último respaldo {0}; nada guardado desde entonces.";
    BACKUP_SHARED = "Handed on. Keep it somewhere else than on this phone.", es "Entregado. Guárdelo en otro lugar que no sea este teléfono.";
    BACKUP_NOT_SHARED = "Closed without handing it on: no backup was made.", es "Se cerró sin entregarlo: no se hizo respaldo.";
    BACKUP_DOWNLOADED = "Handed to the browser as {0}. Look in your downloads.", es "Se entregó al navegador como {0}. Búsquelo en sus descargas.";
    IT_IS_THERE = "It is there", es "Ahí está";
    BACKUP_IS_THERE = "Noted. Keep it somewhere else than on this phone, too.", es "Anotado. Guárdelo también en otro lugar que no sea este teléfono.";
    NO_FILE = "This browser makes no file.", es "Este navegador no hace archivos.";
    BACKUP_TEXT = "The backup as text", es "El respaldo como texto";
    BACKUP_TEXT_SAYS = "Copy all of this into a note or a message to yourself. To restore it, paste it under Restore.", es "Copie todo esto en una nota o en un mensaje a usted mismo. Para recuperarlo, péguelo en Recuperar.";
    COPY_TEXT = "Copy the text", es "Copiar el texto";
    COPIED = "Copied. Paste it where you keep it.", es "Copiado. Péguelo donde lo guarda.";
    NOT_COPIED = "This browser won’t copy by itself: hold a finger on the text and choose Copy.", es "Este navegador no copia solo: deje el dedo sobre el texto y elija Copiar.";
    RESTORE = "Restore from a file", es "Recuperar de un archivo";
    PASTE = "Or paste a backup’s text", es "O pegue el texto de un respaldo";
    PASTE_GO = "Look at it", es "Revisarlo";
    RESTORE_NOTE = "First you see what it would change.", es "Primero verá qué cambiaría.";
    RESTORE_READS = "Reading the file …", es "Leyendo el archivo …";
    NOTHING_CHANGED = "Nothing was changed.", es "No se cambió nada.";
    RESTORE_WOULD = "What this file would change", es "Qué cambiaría este archivo";
    RESTORE_ALL_HERE = "Nothing to restore", es "Nada que recuperar";
    RESTORE_EMPTY = "There is no job in this file", es "No hay ningún trabajo en este archivo";
    RESTORE_GO = "Restore", es "Recuperar";
    RESTORE_LEAVE = "Leave it", es "Dejarlo";
    BRING_BACK = "Bring those back as copies", es "Traer esos de vuelta como copias";
    CUT_AFTER = "The file stops in the middle: what came after {0} is missing.", es "El archivo se corta a la mitad: falta lo que venía después de {0}.";
    REPLACES = "{0}: {1} → {2}", es "{0}: {1} → {2}";
    LEFT_OUT_LATER = "{0}: file {1} · here {2}", es "{0}: archivo {1} · aquí {2}";
    LEFT_OUT_GONE = "{0}: file {1} · removed here", es "{0}: archivo {1} · aquí se quitó";
    RESTORED = "Restored.", es "Recuperado.";
    RESTORED_BUT_DAMAGED = "Restored, but for what can’t be read.", es "Recuperado, menos lo que no se puede leer.";
    RESTORE_STAYS = "{0} was changed since, so it stays.", es "{0} cambió desde entonces, así que se queda.";
    RESTORES_NEW = "A new job with {0} {0?number|numbers}.", es "Un trabajo nuevo con {0} {0?número|números}.";
    RESTORES_NOTHING = "All of it is here already.", es "Todo esto ya está aquí.";
    RESTORES_CIRCLE = "Together, these would depend on themselves: {0}. Cut one of these links afterwards.", es "Juntos, estos dependerían de sí mismos: {0}. Después corte uno de estos vínculos.";
    FATE_NEW = "{0} {0?number|numbers} added.", es "{0} {0?número agregado|números agregados}.";
    FATE_REPLACED = "{0} {0?number|numbers} replaced by a newer one.", es "{0} {0?número reemplazado|números reemplazados} por uno más nuevo.";
    FATE_BOTH = "{0} {0?number|numbers} changed here and in the file: both are kept.", es "{0} {0?número cambiado|números cambiados} aquí y en el archivo: se guardan los dos.";
    FATE_REMOVED = "{0} {0?number|numbers} removed, as in the file.", es "{0} {0?número quitado|números quitados}, como en el archivo.";
    FATE_STAYS_GONE = "{0} {0?number|numbers} changed or removed here since: what the file has stays out.", es "{0} {0?número cambiado o quitado|números cambiados o quitados} aquí desde entonces: lo del archivo queda fuera.";
    FATE_HERE = "{0} {0?number|numbers} here already.", es "{0} {0?número ya está|números ya están} aquí.";
    FATE_JOTS = "{0} {0?tick, price or answer|ticks, prices and answers} on the job as in the file, where it is later.", es "{0} {0?marca, precio o respuesta|marcas, precios y respuestas} del trabajo como en el archivo, donde es más reciente.";
    TERMS_REPLACED = "Name, place, edition and units as in the file: {0}.", es "Nombre, lugar, edición y unidades como en el archivo: {0}.";
    TERMS_TOLD = "Name, place, edition or units were changed here and in the file. Yours stay. In the file: {0}.", es "El nombre, el lugar, la edición o las unidades se cambiaron aquí y en el archivo. Se quedan los suyos. En el archivo: {0}.";

    // What the phone keeps.
    KEEPS_NOTHING = "This browser keeps nothing: private mode, or storage is turned off. Work goes on; all is gone when you close the page. Back up what you need.", es "Este navegador no guarda nada: está en modo privado, o el almacenamiento está apagado. Puede seguir; todo se pierde al cerrar la página. Respalde lo que necesite.";
    KEEPS_ONLY_JOBS = "This browser keeps your jobs, once, but not what you are typing nor your settings: part of its storage is turned off. Save each number before you close the page.", es "Este navegador guarda sus trabajos, una vez, pero no lo que está escribiendo ni sus ajustes: parte de su almacenamiento está apagado. Guarde cada número antes de cerrar la página.";
    STORE_FULL = "The phone’s room for this page is full{0}. The last change is on this page only, not saved. Back up now; then remove an old job to make room. It is tried again by itself.", es "El espacio del teléfono para esta página está lleno{0}. El último cambio está solo en esta página, sin guardar. Respalde ahora; luego quite un trabajo viejo para hacer espacio. Se vuelve a intentar solo.";
    TYPED_FULL = "The phone’s room for this page is full{0}. What you type is on this page only until you save it to a job. To make room, back up an old job, then remove it.", es "El espacio del teléfono para esta página está lleno{0}. Lo que escribe está solo en esta página hasta que lo guarde en un trabajo. Para hacer espacio, respalde un trabajo viejo y luego quítelo.";
    ROOM_LEFT = ": about {0} KB of 5,120 KB are left", es ": quedan unos {0} KB de 5,120 KB";
    WRITE_DIFFERED = "The phone did not keep what was written. The last change is on this page only, not saved.", es "El teléfono no guardó lo que se escribió. El último cambio está solo en esta página, sin guardar.";
    STOPPED = "The page has stopped; nothing more is saved.", es "La página se detuvo; ya no se guarda nada más.";
    NEVER_LOADED = "What is on the phone could not be read, so nothing is written over it.", es "No se pudo leer lo que hay en el teléfono, así que no se escribe nada encima.";
    JOB_SAVING = "Being saved …", es "Guardando …";
    JOB_ONCE = "Saved once on this phone.", es "Guardado una vez en este teléfono.";
    JOB_TWICE = "Saved twice on this phone.", es "Guardado dos veces en este teléfono.";
    JOB_AWAY = "Saved in the browser's larger store alone, in two slots: its quick copy made room for other jobs. Opened, it comes back.", es "Guardado solo en el almacén grande del navegador, en dos lugares: su copia rápida dejó lugar a otros trabajos. Al abrirlo, vuelve.";
    OPENING = "Opening …", es "Abriendo …";
    PUT_AWAY = "Put this job away", es "Guardar este trabajo como terminado";
    PUT_AWAY_SAYS = "A job that is done is listed below the others. Nothing of it goes.", es "Un trabajo terminado queda abajo de los demás. No se borra nada.";
    TAKE_OUT = "Take this job out again", es "Volver a sacar este trabajo";
    JOBS_PUT_AWAY = "Put away: {0}", es "Terminados: {0}";
    LISTED_AWAY = "{0}, in the larger store alone", es "{0}, solo en el almacén grande";
    OPENED_LAST = "Opened last", es "Abiertos por último";
    FIND_NUMBER = "Find a saved number by a word of it", es "Buscar un número guardado por una palabra";
    FOUND_SOME = "{0} of {1} numbers found: type more of it", es "{0} de {1} números encontrados: escriba más";
    FOUND_COUNT = "{0} {0?number|numbers} found", es "{0} {0?número encontrado|números encontrados}";
    JOB_ONLY_ONCE = "Saved once on this phone: there is no other copy. Back it up.", es "Guardado una vez en este teléfono: no hay otra copia. Respáldelo.";
    MAY_CLEAR = "This browser may clear saved numbers when the phone runs out of room, and a private window forgets all when it is closed. Put this page on the home screen, and back up what must not be lost.", es "Este navegador puede borrar números guardados cuando al teléfono se le acaba el espacio, y una ventana privada olvida todo al cerrarse. Ponga esta página en la pantalla de inicio y respalde lo que no se debe perder.";
    SET_ASIDE = "Set aside", es "Apartado";
    COPY_ASIDE = "One copy of this job could not be read. The job itself is whole: it came from another copy. Nothing to do; the bad copy is kept here.", es "No se pudo leer una copia de este trabajo. El trabajo está completo: se tomó de otra copia. No hay que hacer nada; la copia mala se guarda aquí.";
    OLDER_TOOK_PLACE = "An older copy took its place, saved {0}: what was saved after that may be missing. The later copy could not be read; it is kept under “Set aside”.", es "Una copia más vieja tomó su lugar, guardada {0}: puede faltar lo que se guardó después. La copia más nueva no se pudo leer; está en «Apartado».";
    SET_ASIDE_IN_JOBS = "See what was set aside", es "Ver lo apartado";
    OTHER_ASIDE = "This could not be read, so the page started it anew. What was there is kept here.", es "Esto no se pudo leer, así que la página lo empezó de nuevo. Lo que había se guarda aquí.";
    A_JOB = "A job’s record", es "El registro de un trabajo";
    SAVE_AS_FILE = "Save as a file", es "Guardar como archivo";
    STOPPED_AT_JOB = "The page stopped while it opened this job, so it stays shut. Save it as a file first.", es "La página se detuvo al abrir este trabajo, así que sigue cerrado. Guárdelo primero como archivo.";
    OPEN_ALL_THE_SAME = "Open it all the same", es "Abrirlo de todos modos";
    SET_IT_ASIDE = "Set it aside and start with the sample", es "Apartarlo y empezar con el ejemplo";
    STOPPED_HERE = "The page stopped here the last time", es "La página se detuvo aquí la última vez";
    STOPPED_HERE_SAYS = "So it is not opened by itself. Nothing of it is lost: the rescue page lists all that this phone keeps, and saves it as a file.", es "Por eso no se abre sola. No se pierde nada: la página de rescate muestra todo lo que guarda este teléfono, y lo guarda como archivo.";
    TO_RESCUE = "Rescue page", es "Página de rescate";

    // Settings.
    UNITS_WITHOUT_JOB = "Units where no job says otherwise", es "Unidades si el trabajo no dice otra cosa";
    DEMO = "The invented job on the first page", es "El trabajo inventado en la primera página";

    // Links.
    BAD_LINK = "This address can’t be read", es "No se puede leer esta dirección";
    BAD_LINK_ENCODING = "It was cut or changed on its way. Ask for it again.", es "Se cortó o cambió en el camino. Pídala otra vez.";
    BAD_LINK_LONG = "It is longer than any question of ours.", es "Es más larga que cualquier pregunta de aquí.";
    BAD_LINK_SHAPE = "Its fields don’t fit together.", es "Sus datos no van juntos.";
    BAD_LINK_SETTING = "It asks for an edition or units that this version doesn’t know.", es "Pide una edición o unidades que esta versión no conoce.";
    OPEN_SAMPLE = "Open the sample of {0}", es "Abrir el ejemplo de {0}";

    // Updates.
    OFFLINE_READY = "Works without signal now.", es "Ya funciona sin señal.";
    UPDATE_WAITING = "A new version is on the phone.", es "Hay una versión nueva en el teléfono.";
    TAKE_UPDATE = "Take it", es "Usarla";
    UPDATE_FAILED = "The update could not be fetched. The version you have still works.", es "No se pudo bajar la actualización. La versión que tiene sigue funcionando.";
    FIRST_FAILED = "Not kept for work without signal yet: the fetch was cut short. It tries again by itself.", es "Todavía no se puede trabajar sin señal: la descarga se cortó. Se vuelve a intentar sola.";
    UPDATED_ELSEWHERE = "Another tab took the new version. Reload this one when you are ready.", es "Otra pestaña tomó la versión nueva. Recargue esta cuando esté listo.";
    RELOAD = "Reload", es "Recargar";
    UPDATES = "Updates", es "Actualizaciones";
    WHICH_VERSION = "Version {0}. Phones that show the same letters run the same version.", es "Versión {0}. Los teléfonos que muestran las mismas letras usan la misma versión.";
    LOOK = "Look for an update", es "Buscar actualización";
    LOOKING = "Looking …", es "Buscando …";
    NEWEST = "This is the newest version.", es "Esta es la versión más nueva.";
    FETCHING = "A newer version is there, and is being fetched. You will be asked before it is taken.", es "Hay una versión más nueva y se está bajando. Se le preguntará antes de usarla.";
    NO_ANSWER = "No answer from where this page comes from. The version you have still works. Look again when you have signal.", es "No responde el sitio de donde viene esta página. La versión que tiene sigue funcionando. Busque otra vez cuando tenga señal.";
    NO_WORKER = "This browser does not keep the page for work without signal, so a reload always brings the newest version.", es "Este navegador no guarda la página para trabajar sin señal, así que al recargar siempre llega la versión más nueva.";
    GET_OUT = "Get your records out", es "Sacar sus registros";
}
