//! All that a person reads of a room once it is worked out.

use crate::words;

words! {
    PRESSURE = "Room pressure, door shut: no more than";
    PRESSURE_LOW = "Room pressure, door shut: pulled no lower than";
    PRESSURE_WC = "The same in inches of water";
    BACK = "Air that has to get back";
    BACK_IN = "Air that has to come in past the door";
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
    WAY_GRILLES = "Way {0}, its two grilles, net";
    WAY_DUCT = "Way {0}, lost in its duct and boots";
    WAY_BOOTS = "Way {0}, its two boots, in velocity pressures";
    WAY_AIR = "Way {0}, air where both losses are the room's";

    CHECK = "Room pressure, leaks not counted";
    CHECK_LOW = "Room pulled below the house, leaks not counted";
    LEAKS = "No room is tight: its leaks pass some of it, so that less is measured. With the door shut and the blower on, a gauge tells.";
    CHECK_SHUT = "As good as shut: net open area";
    CHECK_OWN = "Air its own return takes";
    OWN_MORE = "It takes more than the room gets: with the door shut it pulls the room low, and a flue in it backward. Give it more or take less. Ask the HVAC sub.";
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
    ADD_JUMP = "Jump duct, short, its friction not counted";
    ADD_GAP = "Gap under the door, in all";
    AMOUNT = "{0}";
    COMPARED = "By every rule, and the published table";
    NEEDS_NET = "{0} net";
    TABLE_ROW = "RR-0005 table, 3 Pa, its row for {0}";
    OLD_RULE = "This undercut by an older rule, 60 cfm an inch";
    FLORIDA_PART = "By Florida's sizes instead of a test";
    FLORIDA_FACE = "Transfer grille, face, with {0} under the door";
    FLORIDA_DUCT = "Or a transfer duct, with that gap";
    FLORIDA_TIMES = "1.5 × the supply duct's area";

    DRAWING = "The wall from the side, door shut, heights to scale";
    MEANS_WALL = "Wall";
    MEANS_DOOR = "Door";
    MEANS_WAY = "Air's way out";
    ROOM = "room, {0} at most";
    SHUT_ROOM = "room, as good as shut";
    HOUSE = "house, 0 Pa";
    UNDER = "under the door {0}";
    OVER = "way {0}: {1}";
    TWIN_ROOM = "The room is at {0} at most against the house.";
    TWIN_UNDER = "Under the door: {0}.";
    TWIN_WAY = "Way {0}: {1}.";

    CARPET = "Carpet and pad close the gap: count what is left over the finished floor.";
    DOWN = "Shut the air handler down and lock it out before you open a duct.";
    OLD = "Old tape, wrap and boots can hold asbestos, old doors and trim lead paint. Leave them whole until they are tested.";
    FIRE = "Don't cut a transfer opening into a rated wall, or a garage's. Local code decides.";
}
