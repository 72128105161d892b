//! All that a person reads of primer and paint.

use crate::words;

words! {
    NAME = "Primer and paint";
    ABOUT = "Gallons and cans for a room less its openings, by label or by solids and film";
    NOTHING = "";

    AREA = "Surface";
    AREA_HINT = "Walls or ceiling, from the room: its wall area has the openings off already.";
    OPENINGS = "Openings still in it";
    WHY_AREA = "that is more than a house; work it in parts.";
    PRIMER = "Primer";
    FINISH = "Finish paint";
    COATS = "Coats";
    WHY_COATS = "something else is wrong with it.";
    BY = "A gallon goes";
    BY_LABEL = "As its label says";
    BY_SOLIDS = "By solids and dry film";
    SPREAD_LABEL = "A gallon covers";
    SPREAD_HINT = "From the label: the low end for primer on raw compound, 350 to 400 for most paint.";
    WHY_SPREAD = "no film that thin covers.";
    SOLIDS = "Solids by volume";
    SOLIDS_HINT = "From its data sheet, not by weight.";
    WHY_SOLIDS = "that is all of it.";
    FILM = "Dry film";
    FILM_HINT = "From its data sheet.";
    WHY_FILM = "that is a coating of another kind.";
    WASTE = "Lost";
    WASTE_HINT = "In roller, tray and can. A label's spread mostly has it in.";
    WHY_WASTE = "look for the leak.";
    SANDS = "Old paint or compound is sanded or scraped first";
    SANDS_HINT = "Scuffing counts.";
    OLD = "It is";
    ALL_OPEN = "Less than the surface, {0}.";
    NO_COAT = "At least one coat, of primer or of paint.";

    NET = "Surface to paint";
    PRIMER_GALLONS = "Primer";
    PRIMER_SPREAD = "Primer, a gallon covers";
    PRIMER_WET = "Primer, a coat wet";
    PRIMER_CANS = "Primer, gallon cans";
    PRIMER_QUARTS = "Primer, quarts beside";
    FINISH_GALLONS = "Paint";
    FINISH_SPREAD = "Paint, a gallon covers";
    FINISH_WET = "Paint, a coat wet";
    FINISH_CANS = "Paint, gallon cans";
    FINISH_QUARTS = "Paint, quarts beside";
    FOR_AREA = "{0}, for {1}";
    AT_LEAST = "{0}, at a far spread";
    AT_MOST = "{0}, at a near spread";
    IDEAL = "Spread, nothing lost";
    IN_QUARTS = "In quarts";

    RANGES = "By the spreads that are usual";
    RANGE = "{0} to {1}";

    M_PRIMER = "Primer";
    M_PAINT = "Finish paint";

    NEXT = "New compound: dry, dusted, primed all over, then two coats. Open one can of each batch and mix them.";
    AIR = "Open windows on two sides; a fan that blows out can pull flue gas down an open flue. The label tells gloves and respirator.";
    LEAD = "Old paint, in a house from before 1978 at any rate, is presumed to hold lead: don't sand, scrape or burn it before it is tested.";
    RAGS = "Oil-soaked rags can catch fire by themselves: spread them out to dry outside, or in water in a lidded metal can.";
}
