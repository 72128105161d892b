//! All that a person reads of what work on a circuit sets off.

use crate::words;

words! {
    NAME = "What this sets off";
    ABOUT = "Which of today's rules a change to a circuit brings, to settle with the electrician before it is opened";
    NOTHING = "";

    WHAT = "What is done";
    EXTEND = "Cable added to a circuit";
    MOVE = "A receptacle moved";
    REPLACE = "A receptacle replaced";
    RECEPTACLE = "A new receptacle";
    SWITCH = "A switch, new or moved";
    LIGHT = "A ceiling box, new or moved";
    FAN = "A ceiling fan hung";
    ALARMS = "Smoke alarms only";
    ROOM = "Where";
    BESIDE = "The receptacle is";
    FOUND = "Wiring found";
    FOUND_HINT = "Look in a dead box. Not looked: it is asked.";
    WIRE = "Cable added";
    WIRE_HINT = "Between boxes. Empty: not known yet.";
    WHY_WIRE = "measure it again.";
    OUTLET = "An outlet or device is added";
    SPARE = "A spare switched wire runs to it";
    SERVICE = "The panel or service is touched";

    LINES = "Lines to settle";
    STOP = "Old wiring";
    SERVICE_LINE = "Panel or service";
    LOCAL = "Permit";
    ARC = "Arc-fault protection";
    GROUND_FAULT = "Ground-fault protection";
    SHUTTERS = "Receptacle with shutters";
    REPLACED = "Receptacle replaced";
    NEUTRAL = "Neutral at the switch";
    FAN_BOX = "Box for a fan";
    READY = "Box that a fan could hang from";
    ALARM_LINE = "Smoke alarms";
    NO_GROUND = "No ground";
    ASK_STOP = "Stop, and hand over.";
    ASK_SERVICE = "Not this crew's: hand it over.";
    ASK_LOCAL = "Ask which edition and local changes hold, and who may do it.";
    ASK_ARC = "By breaker, or by the first receptacle: the electrician chooses.";
    ASK_GROUND_FAULT = "By breaker, receptacle or one upstream. A reset stays in reach.";
    ASK_SHUTTERS = "Buy it so.";
    ASK_REPLACED = "Today's rules at its place.";
    ASK_NEUTRAL = "Run a cable with one, or say which exception holds.";
    ASK_FAN_BOX = "Listed for a fan, with the weight marked past 35 lb.";
    ASK_READY = "Listed for a fan, or framing in reach.";
    ASK_ALARMS = "The whole dwelling's, by today's rule.";
    ASK_NO_GROUND = "Not simply extended: how it gets a ground is settled first.";

    EXEMPT = "Not set off";
    EXEMPT_ARC = "Arc-fault protection";
    EXEMPT_WHY = "{0} added, no outlet: 6 ft at most";
    BY_EDITION = "Not in every edition";
    IN = "only {0}";
    NEXT_STOP = "Stop here. Leave it as it is, dead, and call the electrician.";
    NEXT = "Take this list to the electrician before anything is opened.";

    DEAD = "Dead, and proved dead: meter proved on a live source before and after. A box may hold two circuits, a white wire may be hot, a shared neutral shocks with one breaker off.";
    LICENSED = "This is no verdict. A licensed electrician where the law says so, and no power before the inspection.";
}
