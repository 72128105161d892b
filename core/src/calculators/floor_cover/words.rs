//! All that a person reads of the floor under a ceiling that is scraped.

use crate::words;

words! {
    NAME = "The floor under a stripped ceiling";
    ABOUT = "Plastic, a pan at the blade or a bare slab: side by side";
    NOTHING = "";

    LONG = "One side";
    WIDE = "The other";
    WHY = "look at it again.";
    WET = "Wet debris";
    WET_HINT = "From stripping.";
    TEXTURE = "The texture is";
    FLOOR = "The floor is";
    NOT_SAID = "Not said";
    FINISHED = "Finished, it stays";
    SLAB = "A bare slab";
    TURN_UP = "Plastic turned up each wall";
    ROLL = "Roll, wide";
    LAPS = "Laps";
    CARRIED = "A bag weighs at most";
    CAUGHT = "Caught at the blade";
    CAUGHT_HINT = "A guess, common practice: half to nine tenths. Weigh one pass.";
    PAN = "A full pan";
    CLEAN = "Your rate, cleaning a slab";
    PROTECT = "Your rate, laying plastic";
    EMPTY = "Empty takes the usual range.";
    PRICES = "Prices you were given";
    PRICES_HINT = "In whole dollars; told while it is held.";

    PLASTIC = "Floor plastic";
    BAGS = "Bags to carry";
    FALLS = "Misses the pan";
    PANS = "Pans to empty";
    LAYING = "One worker's hours, laying plastic";
    CLEANING = "One worker's hours, cleaning a slab";

    SIDE_BY_SIDE = "Side by side";
    ORDER = "Plastic · pan at the blade, over plastic · bare slab";
    ROW_PLASTIC = "Plastic";
    ROW_FALLS = "On the floor";
    ROW_LOADS = "Bags";
    ROW_PANS = "Pans";
    ROW_HOURS = "Hours, likely";
    THREE = "{0} · {1} · {2}";
    NONE = "none";
    NOT_HERE = "not here";
    RANGES = "Low, likely, high";

    CHECK_SLAB = "Bare slab";
    ASK_SLAB = "A finished floor takes up what runs down: plastic, or strip the floor first.";
    NEXT = "Plastic under all of it unless the slab is bare and sealed off.";
    SLIP = "Wet plastic is slick: paper or board on top, shoes off at the way out.";
    SLURRY = "Shovel it damp, then mop; never dry, no shop vacuum. Keep it out of drains. Slurry dried in a slab is another cleaning.";
    PAN_ARM = "A full pan overhead tires an arm: empty it early.";
}
