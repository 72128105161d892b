//! All that a person reads of a room once it is worked out.

use crate::words;

words! {
    PRESSURE = "Room pressure, door shut";
    PRESSURE_WC = "The same in inches of water";
    BACK = "Air that has to get back";
    TOTAL = "Net open area";
    UNDERCUT = "Under the door, net";
    NEEDED = "Net area needed";
    MISSING = "Net area missing";
    FACE = "Grille face that adds it";
    PASSES = "Air it passes at the limit";
    JUMP = "Jump duct that adds it";
    RETURN_NET = "Return grille, net";
    RETURN_FACE = "Return grille, face";
    WAY = "Way {0}, net";

    CHECK = "Room pressure";
    CHECK_SHUT = "As good as shut: net open area";
    CHECK_OWN = "Air its own return takes";
    OWN_MORE = "It takes more than the room gets: with the door shut it pulls the room low, and a flue in it backward. Ask the HVAC sub.";
    CHECK_SPEED = "Air through a transfer grille's face";
    CHECK_RETURN_SPEED = "Air through the return grille";
    CHECK_FLAME = "Open flame to the return";
    LOUD = "A habit, for noise. A larger grille is quieter.";

    STEP_ONE = "Passes at 1 Pa";

    NEXT_SHORT = "Short by {0} net: a grille face of {1}, or the door cut {2} higher.";
    NEXT_STOP = "Stop before you change a return near an open flue: have it tested for spillage with every fan on and doors shut.";
    NEXT_LOOK = "Look first for an open-flue appliance that shares air with the return.";
    ADD_PART = "Any one of these brings it within";
    ADD_GRILLE = "One grille, face";
    ADD_PAIR = "Two grilles, a cavity between, each face";
    ADD_JUMP = "Jump duct, with grilles far larger";
    ADD_GAP = "Gap under the door, in all";
    AMOUNT = "{0}";
    FLORIDA_PART = "By Florida's sizes instead of a test";
    FLORIDA_FACE = "Transfer grille, face, with {0} under the door";
    FLORIDA_DUCT = "Or a transfer duct, with that gap";
    FLORIDA_TIMES = "1.5 × the supply duct's area";

    CARPET = "Carpet and pad close the gap: count what is left over the finished floor.";
    DOWN = "Shut the air handler down and lock it out before you open a duct.";
    OLD = "Old tape, wrap and boots can hold asbestos, old doors and trim lead paint. Leave them whole until they are tested.";
    FIRE = "Don't cut a transfer opening into a rated wall, or a garage's. Local code decides.";
}
