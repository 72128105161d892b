//! What is put in: the register, how its air is known, how warm that is, and the way in front.

use super::words as w;
use crate::fields::{Kind, Row, Span, When, row};
use crate::measure::unit::{CFM, DEGREES, FAHRENHEIT, FPM, GALLON, IN_WC, NET_IN2, NUMBER, SECOND};
use crate::measure::{Length, Measure, Unit};
use crate::rules::air::comfort_index::Load;
use crate::rules::air::flow_guess::Duct;
use crate::rules::air::jets::{ATTACHED, Blows, FREE, Outlet, Surface, Vanes};
use crate::rules::air::register_sizes::Size;
use crate::words::Phrase;
use crate::{choice, form};

choice! {
    /// How the air is known.
    pub enum Know {
        /// Not at all.
        Guess = "guess", w::GUESS;
        /// By a flow hood or a design.
        Measured = "cfm", w::MEASURED;
        /// By a bag and a watch.
        Bag = "bag", w::BAG;
        /// By an anemometer at the face.
        Reading = "reading", w::READING;
        /// By the system's size.
        Tons = "tons", w::TONS;
        /// By the duct that feeds it.
        Duct = "duct", w::DUCT;
    }
}

choice! {
    /// Its air against the room's.
    pub enum Temperature {
        /// No difference.
        Same = "same", w::AS_ROOM;
        /// Cooling.
        Cold = "cold", w::COLD;
        /// Heating.
        Warm = "warm", w::WARM;
    }
}

choice! {
    /// What the jet runs along, as far as anybody has looked.
    pub enum Along {
        /// As its outlet mostly does.
        Usual = "usual", w::USUAL;
        /// Nothing.
        Free = "free", FREE;
        /// The ceiling.
        Attached = "attached", ATTACHED;
    }
}

/// In inches.
const fn length(least: i64, most: i64, why: &'static Phrase, optional: bool) -> Kind {
    let (least, most) = (Length::inches(least, 1), Length::inches(most, 1));
    Kind::Length(Span { least, most, why, common: &[], optional })
}

/// In hundredths of a unit.
const fn measure(
    unit: &'static Unit,
    [least, most]: [i64; 2],
    why: &'static Phrase,
    optional: bool,
) -> Kind {
    let (least, most) = (Measure::hundredths(unit, least), Measure::hundredths(unit, most));
    Kind::Measure(Span { least, most, why, common: &[], optional })
}

/// The air of one register.
pub(super) const MOST_AIR: [i64; 2] = [500, 200_000];
const TALLEST: i64 = 480;
const NECKS: &[&str] = &["ceiling-round", "ceiling-four-way"];
const CEILINGS: &[&str] = &["ceiling-round", "ceiling-four-way", "slot"];
/// Those that a raised ceiling leaves where they are.
const ON_WALLS: &[&str] = &["high-wall", "bar-low", "bar-high"];
const WITH_VANES: &[&str] = &["high-wall", "low-wall", "baseboard", "floor"];
const UP: &[&str] = &["low-wall", "baseboard", "floor"];

const fn air(label: &'static Phrase, hint: &'static Phrase, optional: bool) -> Row {
    row(label, hint, measure(&CFM, MOST_AIR, &w::WHY_CFM, optional))
}

const fn side(label: &'static Phrase) -> Row {
    row(label, &w::SIDE_HINT, length(1, 48, &w::WHY_SIZE, true)).when(When::IsNot("outlet", NECKS))
}

form! {
    /// What its maker publishes.
    pub struct Maker {
        /// Area factor, or free area.
        area: Option<Measure>, row(&w::MAKER_AREA, &w::MAKER_AREA_HINT, measure(&NET_IN2, [200, 200_000], &w::WHY_SIZE, true));
        /// Throw to 50 fpm.
        throw: Option<Length>, row(&w::MAKER_THROW, &w::MAKER_THROW_HINT, length(6, 1200, &w::WHY_THROW, true));
        /// At this air.
        cfm: Option<Measure>, air(&w::MAKER_CFM, &w::NOTHING, true);
        /// What it was measured along.
        along: Surface = Surface::Attached, row(&w::MAKER_ALONG, &w::MAKER_ALONG_HINT, Kind::Choice(Surface::PICKS));
    }
}

form! {
    /// A register and the air out of it.
    pub struct Input {
        /// What it is.
        outlet: Outlet, row(&w::OUTLET, &w::NOTHING, Kind::Choice(Outlet::PICKS));
        /// Its nominal size.
        size: Size, row(&w::SIZE, &w::SIZE_HINT, Kind::Choice(Size::PICKS)).when(When::IsNot("outlet", NECKS));
        /// Measured, wide; else by its size.
        wide: Option<Length>, side(&w::WIDE);
        /// Measured, high; else by its size.
        high: Option<Length>, side(&w::HIGH);
        /// Across its neck.
        neck: Length = Length::inches(6, 1), row(&w::NECK, &w::NECK_HINT, length(1, 24, &w::WHY_SIZE, false)).when(When::Is("outlet", NECKS));
        /// How its vanes stand.
        vanes: Vanes, row(&w::VANES, &w::NOTHING, Kind::Choice(Vanes::PICKS)).when(When::Is("outlet", WITH_VANES));
        /// What its jet runs along.
        along: Along, row(&w::ALONG, &w::ALONG_HINT, Kind::Choice(Along::PICKS)).when(When::IsNot("outlet", UP));
        /// How its air is known.
        know: Know, row(&w::KNOW, &w::KNOW_HINT, Kind::Choice(Know::PICKS));
        /// Its air.
        cfm: Measure = Measure::whole(&CFM, 80), air(&w::CFM, &w::CFM_HINT, false).when(When::Is("know", &["guess", "cfm"]));
        /// What the bag holds.
        bag: Measure = Measure::whole(&GALLON, 55), row(&w::BAG_SIZE, &w::BAG_HINT, measure(&GALLON, [200, 20_000], &w::WHY_BAG, false)).when(When::Is("know", &["bag"]));
        /// How long it takes to fill.
        fills: Measure = Measure::whole(&SECOND, 5), row(&w::FILLS, &w::NOTHING, measure(&SECOND, [50, 12_000], &w::WHY_FILLS, false)).when(When::Is("know", &["bag"]));
        /// Mean velocity read at the face.
        face: Measure = Measure::whole(&FPM, 400), row(&w::FACE, &w::FACE_HINT, measure(&FPM, [2_000, 300_000], &w::WHY_FACE, false)).when(When::Is("know", &["reading"]));
        /// Tons of the system.
        tons: Measure = Measure::whole(&NUMBER, 2), row(&w::TONNAGE, &w::NOTHING, measure(&NUMBER, [50, 1_000], &w::WHY_TONS, false)).when(When::Is("know", &["tons"]));
        /// Registers that share it.
        registers: i64 = 10, row(&w::REGISTERS, &w::REGISTERS_HINT, Kind::Count { least: 1, most: 60, why: &w::WHY_REGISTERS }).when(When::Is("know", &["tons"]));
        /// The duct that feeds it.
        duct: Duct, row(&w::DUCT_SIZE, &w::NOTHING, Kind::Choice(Duct::PICKS)).when(When::Is("know", &["duct"]));
        /// The way in front of it.
        way: Option<Length>, row(&w::WAY, &w::WAY_HINT, length(36, 720, &w::WHY_WAY, true)).aside();
        /// Its air against the room's.
        temperature: Temperature, row(&w::TEMPERATURE, &w::NOTHING, Kind::Choice(Temperature::PICKS));
        /// How far apart the two are.
        difference: Measure = Measure::whole(&DEGREES, 20), row(&w::DIFFERENCE, &w::DIFFERENCE_HINT, measure(&DEGREES, [100, 10_000], &w::WHY_DIFFERENCE, false)).when(When::IsNot("temperature", &["same"]));
        /// The room.
        room: Measure = Measure::whole(&FAHRENHEIT, 75), row(&w::ROOM, &w::NOTHING, measure(&FAHRENHEIT, [4_000, 10_000], &w::WHY_ROOM, false)).when(When::IsNot("temperature", &["same"]));
        /// Its middle above the floor.
        height: Option<Length>, row(&w::HEIGHT, &w::HEIGHT_HINT, length(1, TALLEST, &w::WHY_WAY, true)).aside().when(When::Is("temperature", &["cold"]));
        /// The ceiling over it.
        ceiling: Option<Length>, row(&w::CEILING_OVER, &w::CEILING_OVER_HINT, length(1, TALLEST, &w::WHY_WAY, true)).aside().of_room("ceiling-height").rather("ceiling-height-to-be").when(When::All(&[
            When::Is("outlet", ON_WALLS),
            When::IsNot("along", &["free"]),
            When::Is("temperature", &["cold"]),
        ]));
        /// Pressure behind it.
        pressure: Option<Measure>, row(&w::PRESSURE, &w::PRESSURE_HINT, measure(&IN_WC, [1, 100], &w::WHY_PRESSURE, true)).aside().when(When::Is("outlet", CEILINGS));
        /// Heat that it has to cool.
        load: Load, row(&w::LOAD, &w::LOAD_HINT, Kind::Choice(Load::PICKS)).when(When::IsNot("outlet", UP));
        /// From its maker.
        maker: Maker = Maker::blank(), row(&w::MAKER, &w::MAKER_HINT, Kind::Group(Maker::ROWS));
    }
    sample {
        way: Some(Length::inches(156, 1)),
        temperature: Temperature::Cold,
    }
}

impl Input {
    /// Whether it heats from a ceiling or high on a wall.
    pub fn is_warm_from_above(&self) -> bool {
        self.temperature == Temperature::Warm && self.outlet.blows() != Blows::Up
    }

    /// Its top above the floor, where that is known of one on a wall.
    pub fn top(&self) -> Option<Length> {
        let [_, high] = self.size.sides();
        let half = self.high.unwrap_or(high).part(2);
        self.height.filter(|_| self.outlet.blows() == Blows::Across).map(|height| height.plus(half))
    }

    /// What its jet is taken to run along: from a ceiling or high on a wall, the ceiling.
    pub fn surface(&self) -> Surface {
        match self.along {
            Along::Usual if self.outlet.blows() == Blows::Up => Surface::Free,
            Along::Free => Surface::Free,
            Along::Usual | Along::Attached => Surface::Attached,
        }
    }
}
