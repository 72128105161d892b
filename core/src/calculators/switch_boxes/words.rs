//! All that a person reads of switches for one light.

use crate::words;

words! {
    NAME = "Three-way and four-way, box by box";
    ABOUT = "Which cable runs between switches of one light, what each wire does, and how full each box is";
    NOTHING = "";

    POINTS = "Switches for the light";
    WHY_POINTS = "that many are an electrician's control.";
    FEED = "The feed comes to";
    AT_SWITCH = "The first switch";
    AT_LIGHT = "The light";
    ONWARD = "It goes on to other boxes";
    LEAVES = "The light is fed from";
    FIRST = "The first switch's box";
    LAST = "The last switch's box";
    NEUTRAL = "Neutral";
    EACH = "At every switch";
    WHERE_IT_LIES = "Only where it lies anyway";
    SIZE = "Wire";
    S14 = "14 AWG";
    S12 = "12 AWG";
    VOLUME = "Each switch's box, marked";
    VOLUME_HINT = "Read the stamp. One gang, this switch alone.";
    WHY_VOLUME = "that is no one-gang box.";
    CLAMPS = "Clamps inside the boxes";

    FULLEST = "Fullest box";
    FOUR_WAYS = "Four-way switches";
    FILL = "Switch {0}, in the box";
    LIGHT_FILL = "Light, its cables alone";
    WITHOUT = "Switches without a neutral";
    ASK_NEUTRAL = "Allowed where another switch point has one and sees the whole room, or it can be added later: ask.";
    NEXT_FULL = "Take a deeper box: {0} at least.";
    SWITCH = "Switch {0}";
    LIGHT = "Light";
    FEED_END = "Feed";
    ONWARD_END = "Next box";
    RUN = "{0} to {1}: {2}";

    BLACK = "black";
    RED = "red";
    WHITE = "white";
    STRIPED = "white with a red stripe";
    MARKED = "{0}, re-marked as hot";
    COLOUR = "{0}";
    SUPPLY = "supply, always hot";
    SWITCHED = "switched hot, to the light";
    TRAVELER = "traveler";
    NEUTRAL_WIRE = "neutral";

    M_SINGLE = "Single-pole switch";
    M_THREE = "Three-way switch";
    M_FOUR = "Four-way switch";

    DRAWING = "Boxes and wires in a line, not to scale; neutrals dashed";
    L_SWITCH = "switch {0}, {1}";
    L_LIGHT = "light";
    L_FEED = "feed";
    L_FEED_ON = "feed, on";
    L_RUN = "{0}, {1} wires";
    BOX = "A box";
    WIRE = "A wire";
    TWIN = "{0} to {1}: {2}, {3} wires and a ground.";

    DEAD = "Dead, and proved dead: meter proved on a live source before and after.";
    LICENSED = "A plan for the electrician, who connects it where the law says so. No power before the inspection.";
}
