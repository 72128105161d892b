//! All that a person reads of a register's throw.

use crate::words;

words! {
    NAME = "What a register throws";
    ABOUT = "How far its air reaches, how it falls or rises, how loud it is";
    NOTHING = "";

    // What is asked.
    OUTLET = "Register";
    SIZE = "Size, in inches";
    SIZE_HINT = "The inside of the opening, width first. Floor registers are often told the other way round.";
    WIDE = "Measured inside, wide";
    HIGH = "Measured inside, high";
    SIDE_HINT = "Only where it isn't what its size says.";
    WHY_SIZE = "larger than that is no register of a house.";
    NECK = "Neck, across";
    NECK_HINT = "The round collar it hangs on.";
    VANES = "Vanes";
    ALONG = "The jet runs along";
    ALONG_HINT = "A beam, a light or a soffit in the way, or its top over 1 ft below the ceiling: free.";
    USUAL = "As this register mostly does";
    TAKEN = "{0}, as it mostly does: look";
    KNOW = "How the air is known";
    KNOW_HINT = "A flow hood is best. The rest leave a range, and the answer has it too.";
    GUESS = "A guess";
    MEASURED = "Measured, or from the plan";
    BAG = "A bag filled and timed";
    READING = "A reading at its face";
    TONS = "Tons and registers";
    DUCT = "The size of its duct";
    CFM = "Air";
    CFM_HINT = "A bedroom gets some 50 to 120 cfm.";
    WHY_CFM = "no register of a house gives more.";
    BAG_SIZE = "The bag holds";
    BAG_HINT = "Tape its mouth to a frame over the register. Time it from flat to full, three times.";
    WHY_BAG = "no bag is that large.";
    FILLS = "Fills in";
    WHY_FILLS = "that slow, the bag leaks more than it takes.";
    FACE = "Mean of the readings";
    FACE_HINT = "Sweep the whole face. With the maker's area factor it goes by that, else by 65 % of the size.";
    WHY_FACE = "no register of a house blows that hard.";
    TONNAGE = "Tons of cooling";
    WHY_TONS = "that is more than one house.";
    REGISTERS = "Registers on it";
    REGISTERS_HINT = "All alike, which they never are.";
    WHY_REGISTERS = "that is more than one house.";
    DUCT_SIZE = "Duct, across";
    TEMPERATURE = "Its air is";
    AS_ROOM = "As warm as the room";
    COLD = "Colder";
    WARM = "Warmer";
    DIFFERENCE = "Colder or warmer by";
    DIFFERENCE_HINT = "Some 15 to 20 °F when cooling; 30 to 60 when heating.";
    WHY_DIFFERENCE = "no house blows that.";
    ROOM = "Room temperature";
    WHY_ROOM = "nobody stays in that.";
    WAY = "The way in front of it";
    WAY_HINT = "To the facing wall, or half-way to a facing register; one that blows up: to the ceiling.";
    WHY_WAY = "that is a hall: ask a designer.";
    HEIGHT = "Its middle above the floor";
    HEIGHT_HINT = "To see where cold air comes down to head height.";
    PRESSURE = "Pressure at it";
    PRESSURE_HINT = "To see where cold air leaves the ceiling. Blank: not worked.";
    WHY_PRESSURE = "no register of a house has that.";
    LOAD = "Heat it has to cool";
    LOAD_HINT = "For the comfort index.";
    MAKER = "From its maker";
    MAKER_HINT = "It goes before every formula here.";
    MAKER_AREA = "Area factor or free area";
    MAKER_AREA_HINT = "Makers give it in sq ft: times 144.";
    MAKER_THROW = "Throw to 50 fpm";
    MAKER_THROW_HINT = "Made of the table's row for your vanes.";
    MAKER_CFM = "At this air";
    MAKER_ALONG = "Measured along";
    MAKER_ALONG_HINT = "High wall and ceiling registers are mostly measured along a ceiling.";
    WHY_THROW = "no register of a house throws that.";
    NEEDED_TOO = "A throw goes with the air it was measured at. Put that in too.";
    NO_THROW = "This air leaves at {0}, no faster than the 50 fpm asked for: nothing is thrown. More air, or a smaller register.";

    // What is answered.
    THROW_50 = "Throw to 50 fpm";
    THROW_50_ALONG = "Throw to 50 fpm, along the ceiling";
    THROW_50_FREE = "Throw to 50 fpm, free in the room";
    THROW_50_LEAST = "Throw to 50 fpm, at the least air";
    THROW_50_MOST = "Throw to 50 fpm, at the most air";
    THROW_100 = "Throw to 100 fpm";
    THROW_150 = "Throw to 150 fpm";
    AIR = "Air";
    LEAVES = "It leaves at";
    FACE_SPEED = "At its face";
    AREA = "Open area, for throw";
    FACE_AREA = "Open area, at its face";
    CARRIED = "Carried along at 100 fpm, times its own air";
    DROP_LEAST = "Drop where its throw to {0} ends, least";
    DROP_MOST = "Drop where its throw to {0} ends, most";
    RISE_LEAST = "Rise where its throw to {0} ends, least";
    RISE_MOST = "Rise where its throw to {0} ends, most";
    DOWN_LEAST = "Cold air is down at 6 ft, nearest";
    DOWN_MOST = "Cold air is down at 6 ft, farthest";
    OFF_CEILING = "Cold air leaves the ceiling at";
    UP_CHANGE = "Throw to 75 fpm changes by about";
    NEXT = "The maker's own throw figures beat this.";
    NEXT_RANGE = "With {0} to {1} it is {2} to {3}. Measure the air to narrow it. The maker's own throw figures beat this.";
    NEXT_LOW = "With {0} nothing is thrown; with {1} it is {2}. Measure the air. The maker's own throw figures beat this.";

    CHECK_FACE = "Speed at its face";
    FACE_NOTE = "Heard in many houses from 700 fpm on. A larger register is quieter and throws less.";
    CHECK_COMMON = "Throw for the way, by the habit in houses";
    CHECK_INDEX = "Throw for the way, by the comfort index when cooling";
    CHECK_UP = "Throw up the wall";
    SPREAD = "The range of the air changes this. Measure the air.";
    DIFFER = "The two rules disagree: one keeps draughts off people, one mixes the room when cooling. Ask the HVAC sub.";

    CORE = "Its size";
    NECK_AREA = "Its neck";
    K = "K of the jet";
    FORMULA_50 = "Throw to 50 fpm, 30 % off";

    REACH = "How far, by speed";
    REACH_NOTE = "To the inch, and good to a fifth or so. Below 50 fpm nobody feels it.";
    TO = "To {0}";
    ONE = "{0}";
    THREE = "{0}, {1}, {2}";
    NO_REACH = "none: it leaves at {0}";
    BEHAVES = "How its air behaves";
    SOUND = "Sound, at the opening";
    SOUND_NOTE = "NC 30 suits bedrooms. A stamped face is louder; so is a damper shut at the register and not back at the take-off.";
    CEILING = "Along the ceiling";
    STAYS = "holds on; where cold air leaves it is not known without the pressure";
    STAYS_WALL = "holds on; no formula for a grille says where cold air leaves it";
    LEAVES_AT = "cold air leaves it at about {0}";
    HOLDS_WARM = "holds on";
    NOT_ALONG = "free: 0.707 of the throw along a ceiling";

    ESTIMATE = "An estimate for planning. Published throw figures of its maker, a measured flow and the HVAC sub's design go first.";
    SHUT_DOWN = "Shut the air handler down and lock it out before you open ducts. Attics: mind falls and heat.";
    OLD = "Old duct tape, wrap and boots can hold asbestos, old register paint lead. Have them tested before you touch them.";

    DRAWING = "Its throw, to scale";
    JET = "Throw to {0}";
    WALL = "End of the way";
    LABEL_WAY = "way {0}";
    TWIN_WAY = "The way in front of it is {0}.";
    TWIN = "To {0}: {1}.";
}
