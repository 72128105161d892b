//! What is put in: the cable, its way, what it feeds and what it lies beside.

use super::words as w;
use crate::fields::{Form, Item, Kind, Preset, Row, Span, When, row};
use crate::measure::unit::{AMPERE, PERCENT};
use crate::measure::{Length, Measure};
use crate::rules::electrical::bundling::{Lie, Warmth};
use crate::rules::electrical::cable_length::Ending;
use crate::rules::electrical::cable_securing::End;
use crate::rules::electrical::cable_sizes::Sheathed;
use crate::rules::electrical::guard_strips::Entrance;
use crate::rules::electrical::voltage_drop::Heat;
use crate::words::Phrase;
use crate::{choice, form};

choice! {
    /// How its way is known.
    pub enum Known {
        /// Up from the first box, across, and to the last.
        Over = "over", w::OVER;
        /// The same below the floor.
        Under = "under", w::UNDER;
        /// Added up.
        Parts = "parts", w::PARTS;
    }
}

choice! {
    /// What a part of its way does.
    pub enum Way {
        /// Up, stapled.
        Up = "up", w::UP;
        /// Level, stapled.
        Along = "along", w::ALONG;
        /// Level, through holes.
        Through = "through", w::THROUGH;
        /// Down, stapled.
        Down = "down", w::DOWN;
    }
}

choice! {
    /// How its wires are made.
    pub enum Made {
        /// As the cable is sold.
        AsCable = "as-cable", w::AS_CABLE;
        /// One wire.
        Solid = "solid", w::SOLID;
        /// Several.
        Stranded = "stranded", w::STRANDED;
    }
}

choice! {
    /// Between the two wires.
    pub enum Volts {
        /// 120 V.
        V120 = "120", w::V120;
        /// 240 V.
        V240 = "240", w::V240;
    }
}

const fn span(
    inches: i64,
    why: &'static Phrase,
    common: &'static [Length],
    optional: bool,
) -> Kind {
    let (least, most) = (Length::ZERO, Length::inches(inches, 1));
    Kind::Length(Span { least, most, why, common, optional })
}

/// Up to 500 ft.
const fn length(label: &'static Phrase, hint: &'static Phrase, optional: bool) -> Row {
    row(label, hint, span(6000, &w::WHY_LENGTH, &[], optional))
}

const fn measure(
    most: Measure,
    why: &'static Phrase,
    common: &'static [Measure],
    optional: bool,
) -> Kind {
    Kind::Measure(Span { least: most.of_same(0), most, why, common, optional })
}

/// Breakers of branches.
const USUAL: &[Measure] =
    &[Measure::whole(&AMPERE, 15), Measure::whole(&AMPERE, 20), Measure::whole(&AMPERE, 30)];

form! {
    /// A part of its way.
    pub struct Leg {
        /// Which way it goes.
        way: Way, row(&w::WHICH, &w::NOTHING, Kind::Choice(Way::PICKS));
        /// How long it is.
        length: Option<Length>, length(&w::LENGTH, &w::NOTHING, false).foremost(|_| true);
    }
}

static LEGS: Item = Item {
    name: &w::LEG,
    rows: Leg::ROWS,
    most: 8,
    blank: || Leg::blank().write_parts(),
    presets: &[
        Preset { label: &w::UP, sets: &[("way", "up")] },
        Preset { label: &w::ALONG, sets: &[("way", "along")] },
        Preset { label: &w::THROUGH, sets: &[("way", "through")] },
        Preset { label: &w::DOWN, sets: &[("way", "down")] },
    ],
};

form! {
    /// What it feeds.
    pub struct Load {
        /// What runs at once.
        amperes: Option<Measure>, row(&w::AMPERES, &w::AMPERES_HINT, measure(Measure::whole(&AMPERE, 60), &w::WHY_BREAKER, &[], true));
        /// Between its wires.
        volts: Volts, row(&w::VOLTS, &w::NOTHING, Kind::Choice(Volts::PICKS));
        /// From the panel to the first box.
        before: Option<Length>, length(&w::BEFORE, &w::NOTHING, true);
        /// Solid or stranded.
        made: Made, row(&w::MADE, &w::NOTHING, Kind::Choice(Made::PICKS));
        /// How hot they run.
        heat: Heat, row(&w::HEAT, &w::NOTHING, Kind::Choice(Heat::PICKS));
        /// Of the voltage, before the panel.
        feeder: Option<Measure>, row(&w::FEEDER, &w::NOTHING, measure(Measure::whole(&PERCENT, 10), &w::WHY_FEEDER, &[], true)).aside();
    }
}

form! {
    /// What it lies beside.
    pub struct Near {
        /// How they lie.
        lie: Lie, row(&w::LIE, &w::NOTHING, Kind::Choice(Lie::PICKS));
        /// How many, with it, of its kind.
        cables: i64 = 1, row(&w::CABLES, &w::NOTHING, Kind::Count { least: 1, most: 24, why: &w::WHY_CABLES }).when(When::IsNot("lie", &["apart"]));
        /// How warm it gets.
        warmth: Warmth, row(&w::WARMTH, &w::NOTHING, Kind::Choice(Warmth::PICKS));
        /// Its breaker.
        breaker: Option<Measure>, row(&w::BREAKER, &w::BREAKER_HINT, measure(Measure::whole(&AMPERE, 60), &w::WHY_BREAKER, USUAL, true));
        /// Flat on one face of framing, with it.
        flat: i64 = 1, row(&w::FLAT, &w::FLAT_HINT, Kind::Count { least: 1, most: 6, why: &w::WHY_CABLES });
    }
}

form! {
    /// Where it lies in an attic.
    pub struct Attic {
        /// How people get up.
        entrance: Entrance, row(&w::ENTRANCE, &w::NOTHING, Kind::Choice(Entrance::PICKS));
        /// Across framing.
        crossing: Option<Length>, length(&w::CROSSING, &w::CROSSING_HINT, true);
        /// Near the hatch.
        near: Option<Length>, length(&w::HATCH, &w::NOTHING, true).when(When::Is("entrance", &["hatch"]));
        /// Under a roof deck.
        deck: Option<Length>, row(&w::DECK, &w::DECK_HINT, span(48, &w::WHY_LENGTH, &[], true)).aside();
    }
}

const ROUTED: When = When::IsNot("known", &["parts"]);

form! {
    /// A cable and its way.
    pub struct Input {
        /// What it is.
        cable: Sheathed, row(&w::CABLE, &w::NOTHING, Kind::Choice(Sheathed::PICKS));
        /// How its way is known.
        known: Known, row(&w::KNOWN, &w::NOTHING, Kind::Choice(Known::PICKS));
        /// Off the floor.
        level: Option<Length>, row(&w::LEVEL, &w::LEVEL_HINT, span(360, &w::WHY_LENGTH, &[], false)).of_room("ceiling-height").rather("ceiling-height-to-be").when(When::Is("known", &["over"]));
        /// Below the floor.
        below: Option<Length>, row(&w::BELOW, &w::NOTHING, span(120, &w::WHY_LENGTH, &[], false)).when(When::Is("known", &["under"]));
        /// Of the first box.
        from_high: Option<Length>, row(&w::FROM_HIGH, &w::HIGH_HINT, span(360, &w::WHY_LENGTH, &[Length::inches(16, 1), Length::inches(48, 1)], true)).when(ROUTED);
        /// Of the last box.
        to_high: Option<Length>, row(&w::TO_HIGH, &w::HIGH_HINT, span(360, &w::WHY_LENGTH, &[Length::inches(16, 1), Length::inches(48, 1)], true)).when(ROUTED);
        /// Level.
        across: Option<Length>, length(&w::ACROSS, &w::NOTHING, false).when(ROUTED);
        /// Through holes.
        bored: bool, row(&w::BORED, &w::BORED_HINT, Kind::Flag).when(ROUTED);
        /// Part by part.
        legs: Vec<Leg>, row(&w::LEGS, &w::NOTHING, Kind::List(&LEGS)).when(When::Is("known", &["parts"]));
        /// What it starts at.
        from: Ending, row(&w::FROM, &w::NOTHING, Kind::Choice(Ending::PICKS));
        /// What it goes to.
        to: Ending, row(&w::TO, &w::NOTHING, Kind::Choice(Ending::PICKS));
        /// Plates on its way.
        plates: i64, row(&w::PLATES, &w::PLATES_HINT, Kind::Count { least: 0, most: 12, why: &w::WHY_PLATES });
        /// Framing, centre to centre.
        spacing: Length = Length::inches(16, 1), row(&w::SPACING, &w::NOTHING, Kind::Length(Span {
            least: Length::inches(1, 1),
            most: Length::inches(48, 1),
            why: &w::WHY_SPACING,
            common: &[],
            optional: false,
        }));
        /// The hole.
        bit: Length = Length::inches(3, 4), row(&w::BIT, &w::NOTHING, span(4, &w::WHY_DEPTH, &[], false));
        /// The framing's depth.
        depth: Length = Length::inches(7, 2), row(&w::DEPTH, &w::DEPTH_HINT, span(16, &w::WHY_DEPTH, &[Length::inches(7, 2), Length::inches(11, 2)], false));
        /// Steel over holes.
        covered: bool, row(&w::COVERED, &w::COVERED_HINT, Kind::Flag);
        /// Whether boxes with devices clamp it.
        held: End, row(&w::HELD, &w::NOTHING, Kind::Choice(End::PICKS));
        /// Own allowance.
        from_more: Option<Length>, row(&w::EXTRA_FROM, &w::EXTRA_HINT, span(240, &w::WHY_LENGTH, &[], true));
        /// Own allowance.
        to_more: Option<Length>, row(&w::EXTRA_TO, &w::EXTRA_HINT, span(240, &w::WHY_LENGTH, &[], true));
        /// From the sheath's end to the front of the box.
        emerges: Option<Length>, row(&w::EMERGES, &w::EMERGES_HINT, span(12, &w::WHY_DEPTH, &[], true));
        /// Of the way.
        loss: Measure = Measure::whole(&PERCENT, 10), row(&w::LOSS, &w::NOTHING, measure(Measure::whole(&PERCENT, 50), &w::WHY_LOSS, &[], false));
        /// What it feeds.
        load: Load = Load::blank(), row(&w::LOAD, &w::LOAD_HINT, Kind::Group(Load::ROWS));
        /// What it lies beside.
        near: Near = Near::blank(), row(&w::NEAR, &w::NOTHING, Kind::Group(Near::ROWS));
        /// Where it lies in an attic.
        attic: Attic = Attic::blank(), row(&w::ATTIC, &w::NOTHING, Kind::Group(Attic::ROWS));
    }
    sample {
        level: Some(Length::inches(96, 1)),
        from_high: Some(Length::inches(48, 1)),
        to_high: Some(Length::inches(16, 1)),
        across: Some(Length::inches(144, 1)),
        bored: true,
        plates: 4,
        load: Load { amperes: Some(Measure::whole(&AMPERE, 12)), ..Load::blank() },
    }
}
