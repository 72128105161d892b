//! All that a person reads of receptacles in baths, halls, foyers and laundries.

use crate::words;

words! {
    NAME = "Receptacles in bath, hall and laundry";
    ABOUT = "How many these need, how near a basin, and how far from a tub or shower by edition";
    NOTHING = "";

    BASINS = "Basins of one bathroom";
    BASINS_HINT = "Each with the receptacle nearest to it: one may serve two.";
    BASIN = "Basin";
    SIDE = "Its outside edge to the receptacle";
    BELOW = "Receptacle below the basin's top";
    BELOW_HINT = "Level or over it is zero.";
    HALLS = "Halls";
    HALL = "Hall";
    LONG = "Long, along its middle";
    AREA = "Foyer, its floor";
    WALLS = "Foyer walls 3 ft wide or more";
    LAUNDRY = "There is a laundry area";
    HAVE = "Receptacles there now, in all of these";
    TUB = "Receptacle nearest a tub or shower";
    NO_TUB = "None near";
    OVER = "In it, or straight over it";
    BESIDE = "Beside it";
    TUB_SIDE = "Level distance to its rim or threshold";
    HEIGHT = "How high";
    WITHIN = "From the rim to 8 ft over it";
    LOW = "Below the rim";
    HIGH = "More than 8 ft over the rim";
    BARRIER = "A wall, door or fixed barrier between";
    WHY = "no such room of a house takes that.";
    NOTHING_IN = "Put in a basin, a hall, a foyer, a laundry or a tub.";

    NEEDED = "Receptacles needed, at least";
    IN_BATH = "At basins, one may serve two";
    IN_HALLS = "In halls";
    IN_FOYER = "In the foyer";
    IN_LAUNDRY = "In the laundry";
    NEXT = "A small count: the rest is where you will plug in.";
    CHECK_HAVE = "Receptacles there";
    CHECK_SIDE = "Basin {0}: from its edge";
    CHECK_BELOW = "Basin {0}: below its top";
    CHECK_OVER = "In or over a tub or shower";
    CHECK_TUB = "From the tub or shower";
    SMALL = "Where the bath is too small for that, its receptacle goes on the farthest wall. Ask.";

    GFCI = "GFCI in baths and laundries, tamper-resistant everywhere; a bath's own 20 A circuit. From memory: ask.";
    DEAD = "Dead, and proved dead, before a box or a cable in the wall is touched.";
    LICENSED = "Where the law says so, a licensed electrician adds receptacles; local amendments go first.";
}
