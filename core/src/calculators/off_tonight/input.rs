//! What is put in: each line that is off, until when, and who hangs on it.

use super::words as w;
use crate::fields::{Form, Item, Kind, Preset, When, row};
use crate::measure::Day;
use crate::measure::time_of_day::minutes;
use crate::{choice, form};

choice! {
    /// What is off or shut.
    pub enum What {
        /// A breaker.
        Circuit = "circuit", w::CIRCUIT;
        /// Cold.
        ColdWater = "cold-water", w::COLD_WATER;
        /// Hot.
        HotWater = "hot-water", w::HOT_WATER;
        /// At its valve.
        Gas = "gas", w::GAS;
        /// Warm or cool air.
        Heat = "heat", w::HEAT;
        /// Shut to who lives there.
        Room = "room", w::ROOM;
        /// Shut.
        Way = "way", w::WAY;
        /// Warns nobody.
        Alarm = "alarm", w::ALARM;
    }
}

choice! {
    /// Whether somebody lives by it.
    pub enum Medical {
        /// Nobody asked.
        NotAsked = "not-asked", w::NOT_ASKED;
        /// Nobody does.
        None = "none", w::NO_DEVICE;
        /// Somebody does.
        Needs = "needs", w::NEEDS;
        /// With batteries or a generator, tried.
        OwnPower = "own-power", w::OWN_POWER;
    }
}

choice! {
    /// What it keeps cold.
    pub enum Cold {
        /// Nothing.
        Nothing = "nothing", w::NO_COLD;
        /// A refrigerator; with a freezer in it too.
        Fridge = "refrigerator", w::FRIDGE;
        /// A full freezer.
        Full = "full-freezer", w::FULL;
        /// One that isn't full.
        Half = "half-freezer", w::HALF;
    }
}

const POWER: When = When::Is("what", &["circuit"]);
const TIME: Kind = Kind::Text(20);
const NAME: Kind = Kind::Text(30);

form! {
    /// One line.
    pub struct Line {
        /// What.
        what: What, row(&w::WHAT, &w::NOTHING, Kind::Choice(What::PICKS));
        /// Which, in plain words.
        named: String, row(&w::NAMED, &w::NOTHING, NAME).foremost(|_| true);
        /// What people are without.
        feeds: String, row(&w::FEEDS, &w::NOTHING, Kind::Text(60)).foremost(|_| true);
        /// From which day.
        off_day: Option<Day>, row(&w::OFF_DAY, &w::OFF_DAY_HINT, Kind::Day);
        /// At what time.
        off_time: String, row(&w::OFF_TIME, &w::TIME_HINT, TIME).foremost(|_| true).measured();
        /// Back on which day.
        back_day: Option<Day>, row(&w::BACK_DAY, &w::BACK_DAY_HINT, Kind::Day);
        /// By what time.
        back_time: String, row(&w::BACK_TIME, &w::NOTHING, TIME).foremost(|_| true).measured();
        /// Who turns it on, and whom to call.
        who: String, row(&w::WHO, &w::NOTHING, Kind::Text(60)).measured();
        /// Who lives by it.
        medical: Medical, row(&w::MEDICAL, &w::NOTHING, Kind::Choice(Medical::PICKS)).when(POWER);
        /// What it keeps cold.
        cold: Cold, row(&w::COLD, &w::NOTHING, Kind::Choice(Cold::PICKS)).when(POWER);
        /// A pump.
        sump: bool, row(&w::SUMP, &w::NOTHING, Kind::Flag).when(POWER);
        /// Pipes may freeze.
        frost: bool, row(&w::FROST, &w::NOTHING, Kind::Flag).when(When::Is("what", &["heat", "gas"]));
        /// Another way out.
        kept: bool, row(&w::KEPT, &w::NOTHING, Kind::Flag).when(When::Is("what", &["way"]));
    }
}

/// Minutes in an hour.
pub(super) const HOUR: i64 = 60;
/// Minutes in a day.
pub(super) const DAY: i64 = 1440;

impl Line {
    /// Both times, as they were typed.
    pub fn typed(&self) -> [&str; 2] {
        [&self.off_time, &self.back_time]
    }

    /// From when to when, in minutes past the midnight that began 1 January 1970, or, where no day
    /// is given, today. None of times that can't be read, of which one is missing, or of which
    /// the second isn't later.
    pub fn span(&self) -> Option<[i64; 2]> {
        let (off, back) = (minutes(&self.off_time)?, minutes(&self.back_time)?);
        let span = match (self.off_day, self.back_day) {
            (None, Some(_)) => return None,
            (Some(from), Some(to)) => [from.number() * DAY + off, to.number() * DAY + back],
            (from, None) => {
                let day = from.map_or(0, |from| from.number() * DAY);
                let next = if back <= off { DAY } else { 0 };
                [day + off, day + back + next]
            }
        };
        (span[0] < span[1]).then_some(span)
    }
}

static LINES: Item = Item {
    name: &w::LINE,
    rows: Line::ROWS,
    most: 30,
    blank: || Line::blank().write_parts(),
    presets: &[
        Preset { label: &w::CIRCUIT, sets: &[] },
        Preset { label: &w::COLD_WATER, sets: &[("what", "cold-water")] },
        Preset { label: &w::HOT_WATER, sets: &[("what", "hot-water")] },
        Preset { label: &w::GAS, sets: &[("what", "gas")] },
        Preset { label: &w::HEAT, sets: &[("what", "heat")] },
        Preset { label: &w::ROOM, sets: &[("what", "room")] },
        Preset { label: &w::WAY, sets: &[("what", "way")] },
        Preset { label: &w::ALARM, sets: &[("what", "alarm")] },
    ],
};

form! {
    /// All of it.
    pub struct Input {
        /// In any order.
        off: Vec<Line>, row(&w::OFF, &w::NOTHING, Kind::List(&LINES));
        /// When people go to bed.
        night: String = "22:00".to_owned(), row(&w::NIGHT, &w::NOTHING, TIME);
        /// When they get up.
        morning: String = "6:00".to_owned(), row(&w::MORNING, &w::NOTHING, TIME);
    }
}

impl Input {
    /// What the screen opens with: invented.
    pub fn sample() -> Self {
        let [named, off_time, back_time, who] =
            ["Kitchen", "13:00", "16:30", "Crew, 555-0142"].map(str::to_owned);
        // Nobody was asked about a house that isn't there.
        let cold = Cold::Fridge;
        let line = Line { named, off_time, back_time, who, cold, ..Line::blank() };
        Self { off: vec![line], ..Self::blank() }
    }

    /// A line without a day that goes off before people get up, and is back the same day, is of the
    /// night that follows: one at 1:00 am comes after one at 10:00 pm.
    pub fn tonight(&self, line: &Line, [from, to]: [i64; 2]) -> [i64; 2] {
        let morning = minutes(&self.morning).unwrap_or(6 * HOUR);
        let next = if line.off_day.is_none() && from < morning && to < DAY { DAY } else { 0 };
        [from + next, to + next]
    }

    /// Whether any of it falls where people sleep; none where their hours aren't given.
    pub fn is_overnight(&self, [from, to]: [i64; 2]) -> Option<bool> {
        let (night, morning) = (minutes(&self.night)?, minutes(&self.morning)?);
        let long = if morning <= night { morning + DAY - night } else { morning - night };
        // The last night that began before it ends.
        let began = (to - 1 - night).div_euclid(DAY) * DAY + night;
        Some(from < to && from < began + long)
    }
}
