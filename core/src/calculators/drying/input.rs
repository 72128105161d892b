//! What is put in: room, coat, spells so far, outdoor air, and water to carry off.

use super::words as w;
use crate::fields::{Form, Item, Kind, Row, Span, When, row};
use crate::measure::unit::{FAHRENHEIT, GALLON, HOUR, PERCENT};
use crate::measure::{Length, Measure, Unit, Volume};
use crate::rules::finish::drying::WETTEST;
use crate::words::Phrase;
use crate::{choice, form};

choice! {
    /// How the water gets out.
    pub enum Way {
        /// Nothing moves the air out.
        Shut = "shut", w::SHUT;
        /// Air comes in as it goes.
        Windows = "windows", w::WINDOWS;
        /// Pulls on all that the room is joined to.
        Fan = "fan", w::FAN;
    }
}

choice! {
    /// Whether something with an open flue shares the air.
    pub enum Flue {
        /// Nobody has looked.
        NotSaid = "not-said", w::NOT_SAID;
        /// Looked, and none.
        None = "none", w::NO_FLUE;
        /// There is.
        There = "there", w::A_FLUE;
    }
}

choice! {
    /// What hardens.
    pub enum Mud {
        /// By drying.
        Drying = "drying", w::DRYING;
        /// By reaction, on its label's clock.
        Set20 = "20", w::SET_20;
        /// The same.
        Set45 = "45", w::SET_45;
        /// The same.
        Set90 = "90", w::SET_90;
        /// The same.
        Set210 = "210", w::SET_210;
    }
}

impl Mud {
    /// Its place among the clocks; none where it dries.
    pub fn clock(self) -> Option<usize> {
        Self::ALL.iter().position(|it| *it == self)?.checked_sub(1)
    }
}

/// In whole units.
const fn measure(
    unit: &'static Unit,
    [least, most]: [i64; 2],
    why: &'static Phrase,
    optional: bool,
) -> Kind {
    let (least, most) = (Measure::whole(unit, least), Measure::whole(unit, most));
    Kind::Measure(Span { least, most, why, common: &[], optional })
}

const fn warm(label: &'static Phrase, least: i64, most: i64) -> Row {
    row(label, &w::NOTHING, measure(&FAHRENHEIT, [least, most], &w::WHY_WARM, false))
}

const fn humid(
    label: &'static Phrase,
    hint: &'static Phrase,
    most: i64,
    why: &'static Phrase,
) -> Row {
    row(label, hint, measure(&PERCENT, [0, most], why, false))
}

const fn degrees(count: i64) -> Measure {
    Measure::whole(&FAHRENHEIT, count)
}

const fn percent(count: i64) -> Measure {
    Measure::whole(&PERCENT, count)
}

/// A working day, a night, a day.
const SHIFTS: &[Measure] =
    &[Measure::whole(&HOUR, 8), Measure::whole(&HOUR, 12), Measure::whole(&HOUR, 24)];

form! {
    /// So many hours in conditions of their own.
    pub struct Spell {
        /// How long.
        hours: Option<Measure>, row(&w::HOURS, &w::NOTHING, Kind::Measure(Span {
            least: Measure::whole(&HOUR, 0), most: Measure::whole(&HOUR, 2_000), why: &w::WHY_HOURS,
            common: SHIFTS, optional: false,
        })).foremost(|_| true);
        /// How warm.
        temperature: Measure = degrees(70), warm(&w::TEMPERATURE, 32, 100).foremost(|_| true);
        /// How humid.
        humidity: Measure = percent(50), humid(&w::HUMIDITY, &w::NOTHING, 100, &w::WHY_ALL).foremost(|_| true);
    }
}

static SPELLS: Item = Item {
    name: &w::SPELL,
    rows: Spell::ROWS,
    most: 12,
    blank: || Spell::blank().write_parts(),
    presets: &[],
};

const DRIES: When = When::Is("mud", &["drying"]);
const OUT: When = When::All(&[DRIES, When::Yes("outdoors")]);
const FAN: When = When::All(&[DRIES, When::Is("way", &["fan"])]);

form! {
    /// A coat that dries.
    pub struct Input {
        /// What hardens.
        mud: Mud, row(&w::MUD, &w::MUD_HINT, Kind::Choice(Mud::PICKS));
        /// How warm the room is.
        temperature: Measure = degrees(70), warm(&w::TEMPERATURE, 32, 100).measured();
        /// How humid it is.
        humidity: Measure = percent(50), humid(&w::HUMIDITY, &w::HUMIDITY_HINT, WETTEST, &w::WHY_WET).when(DRIES).measured();
        /// The wet coat.
        thick: Length = Length::inches(1, 16), row(&w::THICK, &w::THICK_HINT, Kind::Length(Span {
            least: Length::inches(1, 128), most: Length::inches(1, 1), why: &w::WHY_THICK,
            common: &[Length::inches(1, 32), Length::inches(1, 16), Length::inches(1, 8)], optional: false,
        })).when(DRIES).measured();
        /// Since it went on.
        spells: Vec<Spell>, row(&w::SPELLS, &w::SPELLS_HINT, Kind::List(&SPELLS)).when(DRIES);
        /// What it is like outside is known.
        outdoors: bool, row(&w::OUTDOORS, &w::NOTHING, Kind::Flag).when(DRIES);
        /// How warm it is outside.
        out_temperature: Measure = degrees(50), warm(&w::OUT_TEMPERATURE, -40, 120).when(OUT);
        /// How humid it is outside.
        out_humidity: Measure = percent(50), humid(&w::OUT_HUMIDITY, &w::NOTHING, 100, &w::WHY_ALL).when(OUT);
        /// Compound that is put on.
        gallons: Option<Measure>, row(&w::GALLONS, &w::GALLONS_HINT, measure(&GALLON, [0, 500], &w::WHY_GALLONS, true)).when(DRIES);
        /// Air in the room.
        room: Option<Volume>, row(&w::ROOM, &w::ROOM_HINT, Kind::Room(Span {
            least: CUBIC_FOOT.times(10), most: CUBIC_FOOT.times(100_000), why: &w::WHY_ROOM, common: &[], optional: true,
        })).of_room("volume").rather("volume-to-be").when(DRIES);
        /// How the water gets out.
        way: Way, row(&w::WAY, &w::NOTHING, Kind::Choice(Way::PICKS)).when(DRIES);
        /// Whether something with an open flue shares the air.
        flue: Flue, row(&w::FLUE, &w::FLUE_HINT, Kind::Choice(Flue::PICKS)).when(FAN);
    }
    sample {}
}

const CUBIC_FOOT: Volume = Volume::hundredths(172_800);
