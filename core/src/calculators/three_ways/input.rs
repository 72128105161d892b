//! What is put in: the ceiling, the boards of each way, boxes, the air, the truck and own rates.

use super::words as w;
use crate::calculators::hold::Prices;
use crate::calculators::strip::Painted;
use crate::fields::{Kind, Row, Span, row};
use crate::form;
use crate::measure::unit::{
    CUBIC_YARD, FAHRENHEIT, MONEY_AN_HOUR, MONEY_SPENT, PERCENT, PSF, WEIGHT,
};
use crate::measure::{Area, Length, Measure, Unit};
use crate::rules::finish::board_weights::Panel;
use crate::rules::finish::drying::WETTEST;
use crate::rules::framing::ceiling_joists::Attic;
use crate::rules::framing::dead_weights::{BATT, JOISTS};
use crate::words::Phrase;

/// In sixteenths of an inch.
const fn length(label: &'static Phrase, hint: &'static Phrase, [least, most]: [i64; 2]) -> Row {
    let (least, most) = (Length::inches(least, 16), Length::inches(most, 16));
    row(label, hint, Kind::Length(Span { least, most, why: &w::WHY, common: &[], optional: false }))
}

const fn measure(
    label: &'static Phrase,
    unit: &'static Unit,
    [least, most]: [i64; 2],
    optional: bool,
) -> Row {
    let (least, most) = (Measure::whole(unit, least), Measure::whole(unit, most));
    row(
        label,
        &w::NOTHING,
        Kind::Measure(Span { least, most, why: &w::WHY, common: &[], optional }),
    )
}

const fn waste() -> Row {
    let row = measure(&w::WASTE, &PERCENT, [0, 50], false);
    Row { hint: &w::WASTE_HINT, ..row }
}

/// In hundredths of a pound.
const fn load(label: &'static Phrase, hint: &'static Phrase) -> Row {
    let row = measure(label, &PSF, [0, 50], true);
    Row { hint, ..row }
}

const fn panel(label: &'static Phrase) -> Row {
    row(label, &w::NOTHING, Kind::Choice(Panel::PICKS))
}

form! {
    /// The user's own rates; what is empty isn't counted.
    pub struct Rates {
        /// One worker.
        hour: Option<Measure>, measure(&w::RATE_HOUR, &MONEY_AN_HOUR, [0, 10_000], true);
        /// A board.
        board: Option<Measure>, measure(&w::RATE_BOARD, &MONEY_SPENT, [0, 10_000], true);
        /// A pail of compound.
        pail: Option<Measure>, measure(&w::RATE_PAIL, &MONEY_SPENT, [0, 10_000], true);
        /// To the dump.
        load: Option<Measure>, measure(&w::RATE_LOAD, &MONEY_SPENT, [0, 10_000], true);
    }
}

form! {
    /// A textured ceiling and three ways to be rid of it.
    pub struct Input {
        /// Along one side.
        long: Length, length(&w::LONG, &w::LONG_HINT, [192, 19_200]).of_room("longest");
        /// Square to it.
        wide: Length, length(&w::WIDE, &w::NOTHING, [192, 19_200]).of_room("widest");
        /// Of another shape.
        area: Option<Area>, row(&w::AREA, &w::NOTHING, Kind::Area(Span {
            least: Area::square_feet(1), most: Area::square_feet(10_000), why: &w::WHY, common: &[], optional: true,
        })).of_room("ceiling-area");
        /// Floor to the old board.
        height: Length = Length::inches(96, 1), length(&w::HEIGHT, &w::HEIGHT_HINT, [960, 5_760]).of_room("ceiling-height");
        /// Whether the texture is.
        painted: Painted, row(&w::PAINTED, &w::NOTHING, Kind::Choice(Painted::PICKS));
        /// As it hangs, and as it stays under a board.
        texture: Length = Length::inches(1, 8), length(&w::TEXTURE, &w::TEXTURE_HINT, [0, 16]);
        /// What is there.
        old: Panel, panel(&w::OLD);
        /// What goes over it.
        over: Panel = Panel::ThreeEighths, panel(&w::OVER);
        /// What goes up on bare framing.
        new: Panel, panel(&w::NEW);
        /// A board's.
        board: Length = Length::inches(96, 1), length(&w::BOARD, &w::BOARD_HINT, [1_536, 3_072]);
        /// Under the ends of boards.
        spacing: Length = Length::inches(16, 1), length(&w::SPACING, &w::SPACING_HINT, [16, 768]);
        /// Cut away.
        waste: Measure = Measure::whole(&PERCENT, 10), waste();
        /// In the ceiling.
        boxes: i64 = 1, row(&w::BOXES, &w::NOTHING, Kind::Count { least: 0, most: 50, why: &w::WHY });
        /// Their fronts behind the old surface.
        behind: Length, length(&w::BEHIND, &w::BEHIND_HINT, [0, 32]);
        /// Over it.
        attic: Attic, row(&w::ATTIC, &w::NOTHING, Kind::Choice(Attic::PICKS));
        /// Themselves, on a square foot; empty isn't known.
        joists: Option<Measure> = Some(JOISTS), load(&w::JOISTS, &w::JOISTS_HINT);
        /// On them, on a square foot; empty isn't known.
        insulation: Option<Measure> = Some(BATT), load(&w::INSULATION, &w::INSULATION_HINT);
        /// While compound dries.
        temperature: Measure = Measure::whole(&FAHRENHEIT, 70), measure(&w::TEMPERATURE, &FAHRENHEIT, [32, 100], false).measured();
        /// While compound dries.
        humidity: Measure = Measure::whole(&PERCENT, 50), measure(&w::HUMIDITY, &PERCENT, [0, WETTEST], false).measured();
        /// A load weighs at most.
        carries: Measure = Measure::whole(&WEIGHT, 1_000), measure(&w::CARRIES, &WEIGHT, [50, 40_000], false);
        /// A load holds at most.
        bed: Measure = Measure::whole(&CUBIC_YARD, 2), measure(&w::BED, &CUBIC_YARD, [1, 40], false);
        /// Own rates.
        rates: Rates = Rates::blank(), row(&w::RATES, &w::RATES_HINT, Kind::Group(Rates::ROWS));
        /// Prices given.
        prices: Prices = Prices::blank(), row(&w::PRICES, &w::PRICES_HINT, Kind::Group(Prices::ROWS));
    }
    sample {
        long: Length::inches(192, 1),
        wide: Length::inches(144, 1),
        painted: Painted::No,
    }
}

impl Input {
    /// The ceiling.
    pub fn ceiling(&self) -> Area {
        self.area.unwrap_or(Area::of(self.long, self.wide))
    }
}
