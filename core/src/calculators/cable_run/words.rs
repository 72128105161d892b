//! All that a person reads of a cable from box to box.

use crate::words;

words! {
    NAME = "A cable from box to box";
    ABOUT = "How long to cut it, its staples and holes, what it loses, carries and is kept clear of";
    NOTHING = "";

    CABLE = "Cable";
    KNOWN = "Its way";
    OVER = "Up and over";
    UNDER = "Down and under";
    PARTS = "Part by part";
    LEVEL = "Floor to where it crosses";
    LEVEL_HINT = "Plates are added below.";
    BELOW = "Floor down to where it crosses";
    FROM_HIGH = "First box, off the floor";
    TO_HIGH = "Last box, off the floor";
    HIGH_HINT = "Empty: where it crosses, as a ceiling box is.";
    ACROSS = "Across";
    BORED = "Across through holes";
    BORED_HINT = "In studs or joists. Else it is stapled along.";
    LEGS = "Parts of its way";
    LEG = "Part";
    WHICH = "Which way";
    LENGTH = "Length";
    UP = "Up";
    ALONG = "Along framing";
    THROUGH = "Through framing";
    DOWN = "Down";
    WHY_LENGTH = "a longer run is fed from elsewhere.";
    SPACING = "Studs or joists apart";
    WHY_SPACING = "framing stands closer.";
    PLATES = "Plates drilled";
    PLATES_HINT = "1-1/2 in each. Up and over two double plates: 4.";
    WHY_PLATES = "no way leads through more.";
    BIT = "Hole, across";
    DEPTH = "Framing, deep";
    DEPTH_HINT = "A 2×4: 3-1/2 in. Holes in the middle of it.";
    WHY_DEPTH = "no framing is that deep.";
    COVERED = "A steel plate over each hole";
    COVERED_HINT = "On each face that is closer than 1-1/4 in and gets board.";
    FROM = "Starts at";
    TO = "Goes to";
    HELD = "Boxes with devices";
    EXTRA_FROM = "Length past the first box";
    EXTRA_TO = "Length past the last box";
    EXTRA_HINT = "Empty: the most that crews give it.";
    EMERGES = "Sheath end to opening";
    EMERGES_HINT = "Empty: 6 in of free wire is enough.";
    LOSS = "Bends, sag and loss";
    WHY_LOSS = "measure its way again.";

    LOAD = "What it feeds";
    LOAD_HINT = "For what it loses. Empty: not worked.";
    AMPERES = "Load";
    AMPERES_HINT = "What runs at once. Not sure: 80 % of the breaker.";
    VOLTS = "Voltage";
    V120 = "120 V";
    V240 = "240 V";
    BEFORE = "Cable before it, from the panel";
    MADE = "Its wires";
    AS_CABLE = "As sold: solid to 10 AWG";
    SOLID = "Solid";
    STRANDED = "Stranded";
    HEAT = "Wires run at";
    FEEDER = "Lost in the feeder";
    WHY_FEEDER = "the electrician looks at the feeder first.";

    NEAR = "Beside others";
    LIE = "Where they lie closest";
    CABLES = "Cables there, with it";
    WHY_CABLES = "spread them.";
    WARMTH = "Warmest it gets";
    BREAKER = "Breaker";
    BREAKER_HINT = "Empty: usual for its wire.";
    WHY_BREAKER = "that is past a branch in this cable.";
    FLAT = "Side by side on one face";
    FLAT_HINT = "Flat on the framing's edge face, with it.";

    ATTIC = "In the attic";
    ENTRANCE = "People get up by";
    CROSSING = "Across joists or rafters";
    CROSSING_HINT = "Over joists, or across rafters within 7 ft above them. Along their sides: none.";
    HATCH = "Of it, within 6 ft of the hatch";
    DECK = "Below a metal roof deck";
    DECK_HINT = "NEC 2026: any deck. Empty: it isn't under one.";

    CUT = "Cut it to";
    WAY = "Its way";
    LOST_LENGTH = "Bends, sag and loss";
    MORE_FROM = "Past the first box";
    MORE_TO = "Past the last box";
    ROLL = "Smallest roll that holds it";
    STAPLES = "Staples";
    HOLES = "Holes in studs or joists";
    ONE_WAY = "From the panel, one way";
    DROP = "Lost at the load";
    SHARE = "Lost, of the voltage";
    SHARE_ALL = "Lost, with the feeder's";
    FARTHEST = "Farthest at 3 %";
    TOGETHER = "It carries, being together";
    CARRIES = "It carries";
    RADIUS = "Bend, inside, at least";
    WEIGHT = "Weighs";
    STRIPS = "Guard strips, both sides";
    GUARDED = "Between guard strips";
    CLEAR = "Wood beside a hole";
    BESIDE = "Edge beside the cables";
    OF_BREAKER = "Its breaker";
    BELOW_DECK = "Below the deck";
    ASK_DROP = "Advice, no limit: lights dim and motors run hot. A thicker wire, or a shorter way.";
    ASK_PULL_DOWN = "Some inspectors take these as permanent stairs. This guards all of it.";
    NEXT_STEEL = "Put steel over each hole, or take a smaller bit.";
    NEXT_FLAT = "Use a stacker, or one cable on each face.";
    NEXT_BREAKER = "It carries less than its breaker: the electrician decides.";
    NO_WAY = "Say its way.";
    NO_SUCH = "6 AWG isn't sold solid here: take stranded.";

    M_CABLE = "{0} cable with ground";
    M_STAPLE = "Cable staple, for the cable at hand";
    M_STEEL = "Steel plate over a hole";
    M_STRIP = "Guard strip, no lower than the cable";

    DRAWING = "Its way from the side, to scale";
    LINE = "The cable";
    BOX = "A box";
    L_UP = "up {0}";
    L_ALONG = "along {0}";
    L_THROUGH = "through {0}";
    L_DOWN = "down {0}";
    TWIN = "{0} of way, cut to {1}.";

    DEAD = "Dead, and proved dead, before you touch old cable: meter proved on a live source before and after. A white wire may be hot, and a shared neutral shocks with one breaker off.";
    OLD = "Brittle insulation, aluminum, knob-and-tube or no ground: stop and hand over.";
    LICENSED = "A licensed electrician where the law says so, and no power before the inspection.";
}
