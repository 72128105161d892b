//! What is put in: each thing that comes down or is covered, where, and when.

use super::words as w;
use crate::fields::{Form, Item, Kind, Preset, When, row};
use crate::measure::Day;
use crate::{choice, form};

choice! {
    /// What it is.
    pub enum What {
        /// On a ceiling or a wall.
        Light = "light", w::LIGHT;
        /// With its motor.
        Fan = "fan", w::FAN;
        /// A fan's.
        Blades = "blades", w::BLADES;
        /// Smoke or heat.
        Smoke = "smoke", w::SMOKE;
        /// Carbon monoxide.
        Co = "co", w::CO;
        /// Of an alarm system.
        Detector = "detector", w::DETECTOR;
        /// For air.
        Register = "register", w::REGISTER;
        /// Off its hinges.
        Door = "door", w::DOOR;
        /// Anything else.
        Other = "other", w::OTHER;
    }
}

impl What {
    /// Whether people are warned by it.
    pub fn is_alarm(self) -> bool {
        matches!(self, Self::Smoke | Self::Co | Self::Detector)
    }
}

impl Taken {
    /// Whether it is back. An alarm is only once it is said to have passed its test: a day can be
    /// one that is yet to come.
    pub fn is_back(&self) -> bool {
        if self.what.is_alarm() { self.tested } else { self.back.is_some() }
    }
}

choice! {
    /// What is done with it.
    pub enum How {
        /// Off and stored.
        Off = "off", w::OFF_IT;
        /// It stays, under plastic.
        Covered = "covered", w::COVERED;
    }
}

form! {
    /// One thing.
    pub struct Taken {
        /// What it is.
        what: What, row(&w::WHAT, &w::NOTHING, Kind::Choice(What::PICKS));
        /// Where it goes back.
        place: String, row(&w::PLACE, &w::PLACE_HINT, Kind::Text(60)).foremost(|_| true);
        /// What is done with it.
        how: How, row(&w::HOW, &w::NOTHING, Kind::Choice(How::PICKS));
        /// Somebody is called when it sounds.
        monitored: bool, row(&w::MONITORED, &w::MONITORED_HINT, Kind::Flag).when(When::Is("what", &["smoke", "co", "detector"]));
        /// When it came down.
        off: Option<Day>, row(&w::OFF, &w::NOTHING, Kind::Day);
        /// When it was back, or is to be.
        back: Option<Day>, row(&w::BACK, &w::BACK_HINT, Kind::Day).foremost(|_| true);
        /// An alarm hangs again and has sounded its test.
        tested: bool, row(&w::TESTED, &w::TESTED_HINT, Kind::Flag).when(When::Is("what", &["smoke", "co", "detector"])).foremost(|_| true);
    }
}

static ITEMS: Item = Item {
    name: &w::ITEM,
    rows: Taken::ROWS,
    most: 40,
    blank: || Taken::blank().write_parts(),
    presets: &[
        Preset { label: &w::LIGHT, sets: &[("what", "light")] },
        Preset { label: &w::FAN, sets: &[("what", "fan")] },
        Preset { label: &w::BLADES, sets: &[("what", "blades")] },
        Preset { label: &w::SMOKE, sets: &[("what", "smoke")] },
        Preset { label: &w::CO, sets: &[("what", "co")] },
        Preset { label: &w::DETECTOR, sets: &[("what", "detector"), ("monitored", "yes")] },
        Preset { label: &w::REGISTER, sets: &[("what", "register")] },
        Preset { label: &w::DOOR, sets: &[("what", "door")] },
    ],
};

form! {
    /// All of it.
    pub struct Input {
        /// In the order in which it comes down.
        items: Vec<Taken>, row(&w::ITEMS, &w::ITEMS_HINT, Kind::List(&ITEMS));
    }
}

impl Input {
    /// What the screen opens with: invented.
    pub fn sample() -> Self {
        let items = vec![
            taken(What::Smoke, "Hall"),
            taken(What::Fan, "Den"),
            taken(What::Register, "Den, by the window"),
        ];
        Self { items }
    }
}

/// An invented one.
fn taken(what: What, place: &str) -> Taken {
    Taken { what, place: place.to_owned(), ..Taken::blank() }
}
