//! All that a person reads of what is taken down.

use crate::words;

words! {
    NAME = "Taken down and put back";
    ABOUT = "What comes off before the work, in which order it goes back, which alarms are out";
    NOTHING = "";

    ITEMS = "What comes down";
    ITEMS_HINT = "In the order in which it does.";
    ITEM = "A thing";
    WHAT = "It is";
    LIGHT = "Light fixture";
    FAN = "Ceiling fan";
    BLADES = "Fan blades";
    SMOKE = "Smoke or heat alarm";
    CO = "Carbon monoxide alarm";
    DETECTOR = "Detector of an alarm system";
    REGISTER = "Register or grille";
    DOOR = "Door";
    OTHER = "Something else";
    PLACE = "Where";
    PLACE_HINT = "Mark it and its screws the same.";
    HOW = "It is";
    OFF_IT = "Taken off, stored";
    COVERED = "Covered in place";
    MONITORED = "Monitored";
    MONITORED_HINT = "Somebody is called when it sounds.";
    OFF = "Down on";
    BACK = "Back on";
    BACK_HINT = "An alarm: back and tested.";
    TOO_EARLY = "Not before it came down, {0}.";

    ALARMS = "Alarms out of service";
    DOWN = "Still down";
    ON_LIST = "On the list";
    CHECK = "Alarms out of service";
    ORDER = "Back in this order";
    ORDER_NOTE = "What came down last goes first. An alarm doesn't wait its turn.";
    DONE = "Back";
    IT_AT = "{0}, {1}";
    IT = "{0}";
    SINCE = "down since {0}";
    UNDATED = "no day yet";
    BACK_ON = "back on {0}";

    NEXT_ALARM = "Before anyone sleeps there: alarms back and tested, or others in their place.";
    NEXT_DOWN = "Next back: {0}.";
    NEXT_NONE = "All is back.";
    CALL = "Monitored: call who monitors it before you touch it, and when it is back.";
    POWER = "Breaker off, tested dead at each box; a switch is not off. Cap each wire, close each box.";
    FAN_TWO = "A fan is two people's work: one holds, one unhooks.";
    OPENINGS = "Cap open ducts; a person falls into an open floor register.";
}
