//! Every word of the page itself. What a calculator says stands beside the calculator.

use ledgerboard_core::words;

words! {
    // The frame.
    NAME = "Ledgerboard";
    TITLED = "{0} · Ledgerboard";
    TO_HOME = "All calculators";
    VERSION = "Version {0}";
    PRIVACY = "Nothing you type leaves this phone.";
    NOWHERE = "Nothing is here";
    NOWHERE_SAYS = "This address holds nothing that this version knows. It may be from a newer one, or cut short on its way.";
    CLOSE = "Close";
    UNDO = "Undo";
    FIGURE = "{0}";
    PAIR = "{0}: {1}";

    // Home.
    HOME_HEADING = "What are you working out?";
    CALCULATORS = "Calculators";
    JOBS = "Jobs";
    ALL_JOBS = "All jobs";
    NO_JOBS = "No jobs yet. Work out a number and save it; it goes to loose notes until you make a job.";
    SEE_DEMO = "See an invented job";
    TAKE_DEMO_AWAY = "Hide it";
    SETTINGS = "Settings";

    // The answer.
    ANSWER = "Answer";
    SAMPLE = "Sample";
    SAMPLE_OF = "Sample, {0}";
    AS_LEFT = "As you left it";
    FROM_LINK = "From a link";
    START_OVER = "Start over";
    STARTED_OVER = "The sample stands here again.";
    BY = "By {0}.";
    LOOK_AT = "look at: {0}";
    OF_AT_MOST = "of {0}";
    OF_AT_LEAST = "of at least {0}";
    NOTHING_TO_SPARE = "nothing to spare";
    TO_SPARE = "{0} to spare";
    TOO_MUCH = "{0} too much";
    TOO_LITTLE = "{0} too little";
    MISSING = "{0} missing";
    RULE_NAME = "{0} of {1}, {2}, {3}";
    NEEDS = "needs: {0}";
    NEEDS_MORE = "{0} {0?field|fields} to look at";
    LEFT_OUT = "Left out, because it can’t be read: {0}.";
    GO_TO_FIELD = "Go to the field";
    WAITS = "Waits for: {0}";
    UNDER = "Worked under {0}.";
    UNDER_STRICTEST = "Edition not set: strictest of {0}, {1}, {2}. Shown: {3}.";
    FLIPS = "The editions disagree. The one your town adopted decides; ask the building department.";
    EDITION_NOT_SET = "Not set: strictest";
    UNITS = "Units";
    CUSTOMARY = "Feet and inches";
    METRIC = "Metric";

    // Fields.
    FIELDS = "What goes in";
    PICK_COMMON = "{0}: {1}";
    FEWER = "One fewer: {0}";
    MORE = "One more: {0}";
    READ_AS = "= {0}";
    NUMBERED = "{0} {1}";
    ADD = "Add {0}";
    REMOVE = "Remove";
    REMOVE_ITEM = "Remove {0} {1}";
    REMOVED = "Removed.";
    MORE_OF_ITEM = "More";
    USED = "Put in.";
    YES = "Yes";
    RULER = "Tape";
    RULER_OF = "Set {0} by feet, inches and sixteenths";
    FEET = "Feet";
    INCHES = "Inches";
    SIXTEENTHS = "Sixteenths";
    NO_SIXTEENTHS = "0";
    NO_CHOICE = "“{0}” is no choice here";

    // Holds.
    HOLD_OPEN = "open";
    OPEN_HOLD = "Go to “{0}”";
    OPEN_THAT_HOLD = "See what keeps it shut: {0}";
    BEHIND = "The hold that covers it";
    STILL_SHUT = "The hold that covers it is still shut.";
    OPENED_BY = "Opened by: {0}";
    BEHIND_NONE = "No hold yet";
    EVIDENCE_OUT = "The report was about something else: what was found out is taken out.";
    NO_EVIDENCE = "The link came with a result. Results are never taken from a link: read the report yourself and enter it.";

    // Links.
    TAKE_ROOM = "Take the room: {0}";
    TAKE_FROM = "Take from the job";
    TAKE_FROM_OF = "Take {0} from another number of the job";
    TAKEN_FROM = "From {0}";
    SOURCE_GONE = "a number that is no longer here";
    LINK_CUT = "Typed over: no longer taken from {0}.";
    SOURCE_MOVED = "It said {0} when it was taken. Now it says {1}.";
    SOURCE_BEHIND = "That number waits for a changed one itself: look there first.";
    SOURCE_LOST = "The number that it came from is no longer in this job.";
    TAKE_VALUE = "Take it";
    KEEP_VALUE = "Keep mine";
    SETTLED = "Changed here.";
    USED_BY = "Used by {0}";
    TAKES = "{0}: from {1}";

    // What stands before each part of the work.
    READY = "Ready?", es "¿Listo?";
    READY_SAYS = "What this job's numbers say against published limits, and what the trade looks for. The inspector decides.", es "Lo que dicen los números de este trabajo frente a límites publicados, y lo que el oficio revisa. El inspector decide.";
    READY_COUNTS = "{0} over, {1} to ask, {2} not looked at", es "{0} pasados, {1} por preguntar, {2} sin revisar";
    READY_NO_MARKS = "No number of this job is about this yet.", es "Ningún número de este trabajo trata de esto todavía.";
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
    DRAWING = "Drawing";
    DRAWING_LARGE = "Show it large";
    IN_WORDS = "In words";
    CHECKS = "Checks";
    WORKING = "Working";
    MATERIALS = "What to have on hand";
    CAUTIONS = "Cautions";
    SOURCES = "Sources";
    FIGURES = "Other figures";
    USE = "Use";
    USE_ROW = "Use: {0}";
    SURE = "{0} ({1})";

    // Keeping.
    KEEPING = "Keep this number";
    SAVE = "Save to job";
    SAVE_OVER = "Save over";
    SAVE_NEW = "Save as new";
    SHARE = "Share";
    SAVING = "Saving in {0} …";
    SAVED_ONCE = "Saved once, in {0}";
    SAVED_TWICE = "Saved twice, in {0}";
    SAVED_OVER = "Saved over the old number, in {0}. Kept once";
    SAVED_OVER_TWICE = "Saved over the old number, in {0}. Kept twice";
    SAVED_ONLY_ONCE = "Saved once, in {0}: there is no other copy on this phone. Back it up.";
    SAVE_AGAIN = "Save again";
    BACK_UP = "Back up";
    OTHER_TAB_TITLE = "{0}, from the other tab";
    TAKEN_BACK = "Taken back.";
    SAVED_AS_BEFORE = "Taken back: the number of before is saved. What you typed stands here, not saved.";
    NO_LONGER_SAVED = "Taken back: nothing is saved. What you typed stands here.";
    MARK_GONE = "This number was removed in another tab. Save keeps it as a new one.";
    JOB_GONE = "The job that this was for is no longer here. Save puts it in {0}.";
    NOT_SAVED = "Not saved.";
    TITLE = "Title";
    SPOT = "Room or spot";
    NOTE = "Note";
    DONE = "Done";
    CANT_SAVE_FAULT = "Nothing to save yet: look at the field first.";
    LINK_COPIED = "Link copied. It opens this question and its answer on any phone.";
    LINK_SHOWN = "Copy this link: it opens this question and its answer on any phone.";
    LINK = "Address";
    LOOSE_NOTES = "Loose notes, {0}";
    NO_JOB = "Loose notes";
    THIS_JOB = "Job";
    NEW_JOB_PICK = "New job …";
    COPIED_TITLE = "{0}, again";

    // Jobs.
    NEW_JOB = "New job";
    BACK_TO = "Back to {0}";
    TAKE_ALONG = "Take “{0}” along";
    JOB_NAME = "Name";
    JOB_PLACE = "Place, way in, who to call";
    JOB_SAMPLE_HINT = "A street and number, or what the crew calls it.";
    MAKE_JOB = "Make this job";
    WORK_ON = "Work on this job";
    WORKED_ON = "Numbers are saved to this job now.";
    EDITION_OF_JOB = "Edition of the electrical code";
    EDITION_HINT = "The one your town adopted. The building department knows; leave it unset and the strictest is shown.";
    SAVED_NUMBERS = "Saved numbers";
    NO_MARKS = "Nothing saved here yet. Open a calculator, and save its number to this job.";
    ADD_TO_JOB = "Work out another for this job";
    NO_SPOT = "No room given";
    RENAME = "About this job";
    REMOVE_JOB = "Remove this job";
    REMOVE_JOB_ASKS = "Remove this job, with {0} saved {0?number|numbers}?";
    BACK_UP_FIRST = "Back up first";
    JOB_REMOVED = "Removed: {0}.";
    MARK_REMOVED = "Removed: {0}.";
    MARK_MOVED = "Moved to {0}.";
    CHANGE_DETAILS = "Change, copy, move, remove";
    CHANGE_DETAILS_ALONE = "Change, copy, remove";
    SAVED_ON = "Saved {0}";
    SAVED_NOW = "Saved: {0}, {1}. Now: {2}, {3}.";
    AGAIN = "Copy";
    MOVE = "Move to another job …";
    THEN_NOW = "Then: {0}, {1}. Now: {2}, {3}.";
    INVENTED = "Invented: nobody’s house and nobody’s numbers.";
    DEMO_SAYS = "Look round, open its numbers, change them. What you save goes to your own jobs.";
    NO_SUCH_JOB = "This job is not on this phone";
    NO_SUCH_MARK = "This number is not on this phone";
    MARK_COUNT = "{0} saved {0?number|numbers}";
    MARK_COUNT_UNSAVED = "{0} {0?number|numbers}, the last change not saved";

    // Backups.
    BACKUPS = "Backups";
    BACK_UP_ALL = "Back up all jobs";
    BACK_UP_ONE = "Back up this job";
    BACKUP_AS_TEXT = "As text";
    NO_BACKUP_YET = "No backup of all jobs has been made on this phone yet: {0} saved {0?number|numbers}.";
    NOT_BACKED_UP = "{0} saved {0?number|numbers} in no backup of this phone.";
    BACKED_UP_SINCE = "Last backup {0}; {1} {1?number|numbers} saved since.";
    BACKED_UP_ALL = "Last backup {0}; nothing saved since.";
    BACKUP_SHARED = "Handed on. Keep it somewhere else than on this phone.";
    BACKUP_NOT_SHARED = "Closed without handing it on: no backup was made.";
    BACKUP_DOWNLOADED = "Handed to the browser as {0}. Look in your downloads.";
    IT_IS_THERE = "It is there";
    BACKUP_IS_THERE = "Noted. Keep it somewhere else than on this phone, too.";
    NO_FILE = "This browser makes no file.";
    BACKUP_TEXT = "The backup as text";
    BACKUP_TEXT_SAYS = "Copy all of this into a note or a message to yourself. To restore it, paste it under Restore.";
    COPY_TEXT = "Copy the text";
    COPIED = "Copied. Paste it where you keep it.";
    NOT_COPIED = "This browser won’t copy by itself: hold a finger on the text and choose Copy.";
    RESTORE = "Restore from a file";
    PASTE = "Or paste a backup’s text";
    PASTE_GO = "Look at it";
    RESTORE_NOTE = "First you see what it would change.";
    RESTORE_READS = "Reading the file …";
    NOTHING_CHANGED = "Nothing was changed.";
    RESTORE_WOULD = "What this file would change";
    RESTORE_ALL_HERE = "Nothing to restore";
    RESTORE_EMPTY = "There is no job in this file";
    RESTORE_GO = "Restore";
    RESTORE_LEAVE = "Leave it";
    BRING_BACK = "Bring those back as copies";
    CUT_AFTER = "The file stops in the middle: what came after {0} is missing.";
    REPLACES = "{0}: {1} → {2}";
    LEFT_OUT_LATER = "{0}: file {1} · here {2}";
    LEFT_OUT_GONE = "{0}: file {1} · removed here";
    RESTORED = "Restored.";
    RESTORED_BUT_DAMAGED = "Restored, but for what can’t be read.";
    RESTORE_STAYS = "{0} was changed since, so it stays.";
    RESTORES_NEW = "A new job with {0} {0?number|numbers}.";
    RESTORES_NOTHING = "All of it is here already.";
    RESTORES_CIRCLE = "Together, these would depend on themselves: {0}. Cut one of these links afterwards.";
    FATE_NEW = "{0} {0?number|numbers} added.";
    FATE_REPLACED = "{0} {0?number|numbers} replaced by a newer one.";
    FATE_BOTH = "{0} {0?number|numbers} changed here and in the file: both are kept.";
    FATE_REMOVED = "{0} {0?number|numbers} removed, as in the file.";
    FATE_STAYS_GONE = "{0} {0?number|numbers} changed or removed here since: what the file has stays out.";
    FATE_HERE = "{0} {0?number|numbers} here already.";
    FATE_JOTS = "{0} {0?tick, price or answer|ticks, prices and answers} on the job as in the file, where it is later.";
    TERMS_REPLACED = "Name, place, edition and units as in the file: {0}.";
    TERMS_TOLD = "Name, place, edition or units were changed here and in the file. Yours stay. In the file: {0}.";

    // What the phone keeps.
    KEEPS_NOTHING = "This browser keeps nothing: private mode, or storage is turned off. Work goes on; all is gone when you close the page. Back up what you need.";
    KEEPS_ONLY_JOBS = "This browser keeps your jobs, once, but not what you are typing nor your settings: part of its storage is turned off. Save each number before you close the page.";
    STORE_FULL = "The phone’s room for this page is full{0}. The last change is on this page only, not saved. Back up now; then remove an old job to make room. It is tried again by itself.";
    TYPED_FULL = "The phone’s room for this page is full{0}. What you type is on this page only until you save it to a job. To make room, back up an old job, then remove it.";
    ROOM_LEFT = ": about {0} KB of 5,120 KB are left";
    WRITE_DIFFERED = "The phone did not keep what was written. The last change is on this page only, not saved.";
    STOPPED = "The page has stopped; nothing more is saved.";
    NEVER_LOADED = "What is on the phone could not be read, so nothing is written over it.";
    JOB_SAVING = "Being saved …";
    JOB_ONCE = "Saved once on this phone.";
    JOB_TWICE = "Saved twice on this phone.";
    JOB_ONLY_ONCE = "Saved once on this phone: there is no other copy. Back it up.";
    MAY_CLEAR = "This browser may clear saved numbers when the phone runs out of room, and a private window forgets all when it is closed. Put this page on the home screen, and back up what must not be lost.";
    SET_ASIDE = "Set aside";
    COPY_ASIDE = "One copy of this job could not be read. The job itself is whole: it came from another copy. Nothing to do; the bad copy is kept here.";
    OLDER_TOOK_PLACE = "An older copy took its place, saved {0}: what was saved after that may be missing. The later copy could not be read; it is kept under “Set aside”.";
    SET_ASIDE_IN_JOBS = "See what was set aside";
    OTHER_ASIDE = "This could not be read, so the page started it anew. What was there is kept here.";
    A_JOB = "A job’s record";
    SAVE_AS_FILE = "Save as a file";
    STOPPED_AT_JOB = "The page stopped while it opened this job, so it stays shut. Save it as a file first.";
    OPEN_ALL_THE_SAME = "Open it all the same";
    SET_IT_ASIDE = "Set it aside and start with the sample";
    STOPPED_HERE = "The page stopped here the last time";
    STOPPED_HERE_SAYS = "So it is not opened by itself. Nothing of it is lost: the rescue page lists all that this phone keeps, and saves it as a file.";
    TO_RESCUE = "Rescue page";

    // Settings.
    UNITS_WITHOUT_JOB = "Units where no job says otherwise";
    DEMO = "The invented job on the first page";

    // Links.
    BAD_LINK = "This address can’t be read";
    BAD_LINK_ENCODING = "It was cut or changed on its way. Ask for it again.";
    BAD_LINK_LONG = "It is longer than any question of ours.";
    BAD_LINK_SHAPE = "Its fields don’t fit together.";
    BAD_LINK_SETTING = "It asks for an edition or units that this version doesn’t know.";
    OPEN_SAMPLE = "Open the sample of {0}";

    // Updates.
    OFFLINE_READY = "Works without signal now.";
    UPDATE_WAITING = "A new version is on the phone.";
    TAKE_UPDATE = "Take it";
    UPDATE_FAILED = "The update could not be fetched. The version you have still works.";
    FIRST_FAILED = "Not kept for work without signal yet: the fetch was cut short. It tries again by itself.";
    UPDATED_ELSEWHERE = "Another tab took the new version. Reload this one when you are ready.";
    RELOAD = "Reload";
    UPDATES = "Updates";
    WHICH_VERSION = "Version {0}. Phones that show the same letters run the same version.";
    LOOK = "Look for an update";
    LOOKING = "Looking …";
    NEWEST = "This is the newest version.";
    FETCHING = "A newer version is there, and is being fetched. You will be asked before it is taken.";
    NO_ANSWER = "No answer from where this page comes from. The version you have still works. Look again when you have signal.";
    NO_WORKER = "This browser does not keep the page for work without signal, so a reload always brings the newest version.";
    GET_OUT = "Get your records out";
}
