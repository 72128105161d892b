//! What is put in: the ceiling, its texture, water, bags, plastic and crew.

use super::words as w;
use crate::calculators::hold::Prices;
use crate::fields::{Kind, Row, Span, When, row};
use crate::measure::unit::{GALLON, NUMBER, OUNCE, PCF, WEIGHT};
use crate::measure::{Area, Length, Measure, Unit};
use crate::rules::finish::sheeting::{LAP, TURN_UP};
use crate::rules::finish::texture::{BAG, CARRIED};
use crate::words::Phrase;
use crate::{choice, form};

choice! {
    /// Whether the texture is painted. A blank is not a no.
    pub enum Painted {
        /// Nobody has looked.
        NotSaid = "not-said", w::NOT_SAID;
        /// It drinks water.
        No = "no", w::UNPAINTED;
        /// It sheds water.
        Yes = "yes", w::IS_PAINTED;
    }
}

choice! {
    /// What lies under plastic.
    pub enum Spread {
        /// All of the floor.
        Room = "room", w::ALL_FLOOR;
        /// A patch, in a room that stays open.
        Patch = "patch", w::A_PATCH;
    }
}

/// In inches.
const fn length(
    label: &'static Phrase,
    hint: &'static Phrase,
    [least, most]: [i64; 2],
    why: &'static Phrase,
) -> Row {
    let (least, most) = (Length::inches(least, 1), Length::inches(most, 1));
    row(label, hint, Kind::Length(Span { least, most, why, common: &[], optional: false }))
}

/// In hundredths; where `why` is a range of habit, empty takes that range.
const fn measure(
    label: &'static Phrase,
    hint: &'static Phrase,
    unit: &'static Unit,
    [least, most]: [i64; 2],
    optional: bool,
) -> Row {
    let (least, most) = (Measure::hundredths(unit, least), Measure::hundredths(unit, most));
    row(label, hint, Kind::Measure(Span { least, most, why: &w::WHY_MUCH, common: &[], optional }))
}

const ROOM: When = When::Is("spread", &["room"]);

form! {
    /// A textured ceiling.
    pub struct Input {
        /// Along one side.
        long: Length, length(&w::LONG, &w::LONG_HINT, [12, 1200], &w::WHY_ROOM).of_room("longest");
        /// Square to it.
        wide: Length, length(&w::WIDE, &w::NOTHING, [12, 1200], &w::WHY_ROOM).of_room("widest");
        /// Of another shape.
        area: Option<Area>, row(&w::AREA, &w::AREA_HINT, Kind::Area(Span {
            least: Area::square_feet(1), most: Area::square_feet(10_000), why: &w::WHY_ROOM, common: &[], optional: true,
        })).of_room("ceiling-area");
        /// Floor to ceiling.
        height: Length = Length::inches(96, 1), length(&w::HEIGHT, &w::NOTHING, [60, 360], &w::WHY_ROOM).of_room("ceiling-height");
        /// Whether it drinks water.
        painted: Painted, row(&w::PAINTED, &w::PAINTED_HINT, Kind::Choice(Painted::PICKS));
        /// Off one square foot, dried.
        patch: Option<Measure>, measure(&w::PATCH, &w::PATCH_HINT, &OUNCE, [10, 20_000], true);
        /// On average.
        thick: Option<Length>, row(&w::THICK, &w::EMPTY, Kind::Length(Span {
            least: Length::inches(1, 64), most: Length::inches(1, 1), why: &w::WHY_MUCH, common: &[], optional: true,
        }));
        /// Dry.
        density: Option<Measure>, measure(&w::DENSITY, &w::EMPTY, &PCF, [100, 20_000], true);
        /// For 100 square feet, each pass.
        water: Option<Measure>, measure(&w::WATER, &w::EMPTY, &GALLON, [10, 1_000], true);
        /// How often it is wetted.
        passes: Option<i64>, row(&w::PASSES, &w::EMPTY, Kind::Number(Span {
            least: 1, most: 9, why: &w::WHY_MUCH, common: &[], optional: true,
        }));
        /// A pump sprayer.
        sprayer: Measure = Measure::whole(&GALLON, 2), measure(&w::SPRAYER, &w::NOTHING, &GALLON, [10, 5_000], false);
        /// How far scrapings heap up.
        bulking: Option<Measure>, measure(&w::BULKING, &w::EMPTY, &NUMBER, [100, 500], true);
        /// A bag holds.
        bag: Measure = BAG, measure(&w::BAG, &w::NOTHING, &GALLON, [100, 20_000], false);
        /// A bag may weigh.
        carried: Measure = CARRIED, measure(&w::CARRIED, &w::NOTHING, &WEIGHT, [500, 10_000], false);
        /// What lies under plastic.
        spread: Spread, row(&w::SPREAD, &w::NOTHING, Kind::Choice(Spread::PICKS));
        /// Up each wall.
        turn_up: Length = TURN_UP, length(&w::TURN_UP, &w::NOTHING, [0, 48], &w::WHY_MUCH).when(ROOM);
        /// Walls are hung too.
        walls: bool = true, row(&w::WALLS, &w::NOTHING, Kind::Flag).when(ROOM);
        /// As it comes off the roll.
        roll: Length = Length::inches(120, 1), length(&w::ROLL, &w::NOTHING, [24, 480], &w::WHY_MUCH);
        /// One width over the next.
        lap: Length = LAP, length(&w::LAP, &w::NOTHING, [0, 48], &w::WHY_MUCH);
        /// Who work.
        people: i64 = 2, row(&w::PEOPLE, &w::NOTHING, Kind::Count { least: 1, most: 8, why: &w::WHY_MUCH });
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
    /// What is scraped.
    pub fn scraped(&self) -> Area {
        self.area.unwrap_or(Area::of(self.long, self.wide))
    }
}
