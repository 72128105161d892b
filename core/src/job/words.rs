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

    A_NAME = "The job's name";
    A_PLACE = "The place";
    A_TITLE = "The title";
    A_SPOT = "The room or spot";
    A_NOTE = "The note";
    A_JOT = "What you wrote";
    TOO_LONG = "{0} has {1} characters; at most {2} can be kept. Shorten it.";
    TAKEN = "This job already has a mark of that id. Save it as a new one.";
    NO_SUCH_MARK = "That mark is no longer in this job. Go back to the job's list.";
    CIRCLE = "This would make a number depend on itself: {0}. Cut one of these links first.";
    SAME_JOB = "The mark is in that job already. Pick another job.";
    NO_ID = "This mark came without an id that can be used. Save it as a new one.";

    /// A person's own words.
    AS_TYPED = "{0}", es "{0}";
    NO_NAME = "Job without a name";
    FOREIGN = "A job's record that can't be read. It was left as it is.";
    TORN = "This job was cut off while it was written. Save it as a file, then restore the job from a backup.";
    DAMAGED = "This job was damaged after it was written. Save it as a file, then restore the job from a backup.";
    NEWER = "This job was written by a newer version. Update this one to open it; until then it is left as it is.";
    SHAPE = "This job can't be read. Save it as a file and keep that. Details: {0}";

    /// Packages: how many, what they are called, what one holds.
    PACKS = "{0} × {1} of {2}", es "{0} × {1} de {2}";
    PACKS_OF = "{0} × {1}", es "{0} × {1}";
    AMOUNT = "{0}", es "{0}";
    SHARE_LEFT_OUT = "left out", es "no se cuenta";
    SHARE_BEYOND = "without what is in “{0}”, counted there", es "sin lo de «{0}», que ya se cuenta";
    TO_BUY_FOR = "To buy for {0}", es "Compras para {0}";
    WHAT_AND_HOW_MUCH = "{0}: {1}", es "{0}: {1}";
    MORE_OF = "{0} more", es "{0} más";
    CSV_TRADE = "trade", es "oficio";
    CSV_WHAT = "what", es "qué";
    CSV_BUY = "buy", es "comprar";
    CSV_PACK = "one holds", es "contenido";
    CSV_PRICE = "price of one", es "precio de uno";
    CSV_COST = "cost", es "costo";
    CSV_NEED = "need", es "hace falta";
    CSV_SPARE = "spare", es "de más";
    CSV_GOT = "there already", es "ya está";
    CSV_FROM = "from", es "de";
    CSV_SPOT = "room", es "cuarto";
    CSV_ASKS = "asks for", es "pide";
    CSV_COUNTS = "counted", es "se cuenta";
    CSV_WHY = "why", es "por qué";

    /// The title of a mark that was changed on two devices, the second one of the two.
    OTHER_VERSION_OF = "{0} (other version)";

    /// The title of a mark that was brought back beside what is here.
    FROM_BACKUP = "{0} (from the backup)";

    /// Stands in the file itself.
    BACKUP_ABOUT = "Jobs and saved numbers, for safekeeping. To bring them back, open Ledgerboard, go to Jobs, and restore from this file. What is changed in it by hand is taken for damaged.";
    BACKUP_EMPTY = "There is nothing in this file. Pick another one.";
    BACKUP_TOO_LARGE = "This file is {0} MB; a backup is never more than {1} MB. It is something else, so it was not opened. Pick another one.";
    BACKUP_FOREIGN = "This file is no backup from here. Pick the one that was made by “Back up”.";
    BACKUP_CUT_SHORT = "This file stops in the middle: the end was lost when it was saved or sent. Get it again from where you keep it.";
    BACKUP_TOO_FULL = "This file holds things that no backup holds, so it was not opened. Pick another one.";
    BACKUP_BROKEN = "This file can’t be read: something in it was changed or lost. Get it again from where you keep it. Details: {0}";
    BACKUP_NEWER = "This backup was made by a newer version. Update this one, then restore it.";
    BACKUP_JOB_DAMAGED = "Left out: it was damaged or changed after it was backed up. An older backup may have it whole.";
    BACKUP_JOB_SHAPE = "Left out: it can’t be read. An older backup may have it whole. Details: {0}";
    BACKUP_JOB_FOREIGN = "Left out: it is not one of your jobs.";
    BACKUP_JOB_NEWER = "Left out: it was written by a newer version. Update this one, then restore again.";
    BACKUP_TWICE = "The job “{0}” is in this file twice, so nobody can say which one is meant. Pick another backup.";

    NO_CALCULATOR = "This version has no calculator for this mark. The answer of its day is shown.";
    OTHER_VERSION = "The calculator has changed since this was kept. The answer of its day is shown.";
    NO_LONGER_FITS = "What was put in no longer fits the calculator. The answer of its day is shown.";

    DEMO_NAME = "12 Thistledown Row (an invented job)";
    DEMO_PLACE = "An invented house and crew, to look around in. No such job exists.";
    DEMO_DEN = "Den";
    DEMO_HALL = "Hall";
    DEMO_KITCHEN = "Kitchen";
    DEMO_ROOM = "Den";
    DEMO_ROOM_NOTE = "Invented. Measured once; other numbers take its walls and its ceiling.";
    DEMO_CEILING = "Den ceiling, sprayed texture";
    DEMO_CEILING_NOTE = "Invented: held until a laboratory has looked at it. Its area comes from the den.";
    DEMO_SWITCH = "Switch by the door";
    DEMO_SWITCH_NOTE = "Invented: room to spare, so the box that is in the wall can stay.";
    DEMO_PAIR = "Two switches at the stairs";
    DEMO_PAIR_NOTE = "Invented: exactly on its limit. Nothing more can go in.";
    DEMO_JUNCTION = "Splices over the counter";
    DEMO_JUNCTION_NOTE = "Invented: within under NEC 2017, over under NEC 2020, which counts the grounds past the fourth. Ask the building department which edition holds.";
}

/// From Monday on.
pub(crate) static WEEKDAYS: [&Phrase; 7] =
    [&MONDAY, &TUESDAY, &WEDNESDAY, &THURSDAY, &FRIDAY, &SATURDAY, &SUNDAY];
