//! What is put in: heights, what crews add, and the lists of boxes, cables and holes.

use super::words as w;
use crate::fields::{Form, Item, Kind, Preset, Row, Span, Typed, When, row};
use crate::measure::unit::{AMPERE, PERCENT};
use crate::measure::{Day, Length, Measure, Volume};
use crate::rules::electrical::ampacity::amperes;
use crate::rules::electrical::box_fill::LARGEST_BOX;
use crate::rules::electrical::bundling::{Lie, Warmth};
use crate::rules::electrical::cable_length::Ending;
use crate::rules::electrical::cable_sizes::{self, Sheathed};
use crate::rules::electrical::enclosure::Enclosure;
use crate::words::Phrase;
use crate::{choice, form};

choice! {
    /// What a box is for.
    pub enum What {
        /// A receptacle.
        Receptacle = "receptacle", w::RECEPTACLE;
        /// A switch.
        Switch = "switch", w::SWITCH;
        /// A light.
        Light = "light", w::LIGHT;
        /// Splices alone.
        Junction = "junction", w::JUNCTION;
        /// A smoke or carbon monoxide alarm.
        Alarm = "alarm", w::ALARM;
        /// Anything else with a device in it.
        Other = "other", w::OTHER;
        /// Where circuits start.
        Panel = "panel", w::PANEL;
    }
}

/// Kinds of box with devices, as a field's condition names them.
const WITH_DEVICES: &[&str] = &["receptacle", "switch", "other"];

choice! {
    /// Where a box is.
    pub enum Mount {
        /// On a wall.
        Wall = "wall", w::ON_WALL;
        /// Overhead.
        Ceiling = "ceiling", w::OVERHEAD;
    }
}

choice! {
    /// A cable's kind: sheathed ones in the order of [`Sheathed`], then those of signals.
    pub enum Cable {
        /// 14 AWG, two.
        Nm14x2 = "14-2", cable_sizes::C14_2;
        /// 14 AWG, three.
        Nm14x3 = "14-3", cable_sizes::C14_3;
        /// 14 AWG, four.
        Nm14x4 = "14-2-2", cable_sizes::C14_4;
        /// 12 AWG, two.
        Nm12x2 = "12-2", cable_sizes::C12_2;
        /// 12 AWG, three.
        Nm12x3 = "12-3", cable_sizes::C12_3;
        /// 12 AWG, four.
        Nm12x4 = "12-2-2", cable_sizes::C12_4;
        /// 10 AWG, two.
        Nm10x2 = "10-2", cable_sizes::C10_2;
        /// 10 AWG, three.
        Nm10x3 = "10-3", cable_sizes::C10_3;
        /// 8 AWG, two.
        Nm8x2 = "8-2", cable_sizes::C8_2;
        /// 8 AWG, three.
        Nm8x3 = "8-3", cable_sizes::C8_3;
        /// 6 AWG, two.
        Nm6x2 = "6-2", cable_sizes::C6_2;
        /// 6 AWG, three.
        Nm6x3 = "6-3", cable_sizes::C6_3;
        /// Data.
        Data = "data", w::DATA;
        /// Of a thermostat.
        Thermostat = "thermostat", w::THERMOSTAT;
        /// Of a doorbell.
        Doorbell = "doorbell", w::DOORBELL;
    }
}

/// Those of signals, as a field's condition names them.
const SIGNALS: &[&str] = &["data", "thermostat", "doorbell"];

impl Cable {
    /// As a sheathed cable of power; none of a signal's.
    pub fn power(self) -> Option<Sheathed> {
        Sheathed::ALL.get(self as usize).copied()
    }
}

choice! {
    /// Between a circuit's wires.
    pub enum Volts {
        /// 120 V.
        V120 = "120", w::V120;
        /// 240 V.
        V240 = "240", w::V240;
    }
}

choice! {
    /// How far the crew has got with a cable. What was found dead is no part of it.
    pub enum State {
        /// On paper.
        Planned = "planned", w::PLANNED;
        /// It lies.
        Roughed = "roughed", w::ROUGHED;
        /// Its wires are on.
        Connected = "connected", w::CONNECTED;
    }
}

const fn length(
    most: i64,
    why: &'static Phrase,
    common: &'static [Length],
    optional: bool,
) -> Kind {
    let (least, most) = (Length::ZERO, Length::inches(most, 1));
    Kind::Length(Span { least, most, why, common, optional })
}

const fn current(label: &'static Phrase, hint: &'static Phrase, common: &'static [Measure]) -> Row {
    let (least, most) = (Measure::whole(&AMPERE, 0), Measure::whole(&AMPERE, 60));
    let span = Span { least, most, why: &w::WHY_AMPERES, common, optional: true };
    row(label, hint, Kind::Measure(span)).when(POWER)
}

const POWER: When = When::IsNot("cable", SIGNALS);
/// What a cable's ends name.
const BOX_NAMES: &[&str] = &["boxes.label"];
/// Letters of a label, and of a line.
const LABEL: Kind = Kind::Text(12);
const LINE: Kind = Kind::Text(40);
const PLACE: Kind = length(2400, &w::WHY_PLACE, &[], true);
/// A side of a room: less than 2 ft of it is feet that were read as inches.
const SIDE: Kind = Kind::Length(Span {
    least: Length::inches(24, 1),
    most: Length::inches(2400, 1),
    why: &w::WHY_PLACE,
    common: &[],
    optional: true,
});
/// Common practice of bits for cable.
const BIT: Kind = Kind::Length(Span {
    least: Length::inches(1, 4),
    most: Length::inches(4, 1),
    why: &w::WHY_BIT,
    common: &[Length::inches(3, 4), Length::inches(7, 8), Length::inches(1, 1)],
    optional: true,
});

form! {
    /// A box.
    pub struct PlacedBox {
        /// What is written on it.
        label: String, row(&w::LABEL, &w::LABEL_HINT, LABEL).foremost(|_| true);
        /// What it is for.
        what: What, row(&w::WHAT, &w::NOTHING, Kind::Choice(What::PICKS));
        /// What it serves, in the crew's words.
        serves: String, row(&w::SERVES, &w::NOTHING, LINE);
        /// On a wall or overhead.
        mount: Mount, row(&w::MOUNT, &w::NOTHING, Kind::Choice(Mount::PICKS));
        /// Off the floor.
        high: Option<Length>, row(&w::BOX_HIGH, &w::BOX_HIGH_HINT, length(360, &w::WHY_HIGH, HEIGHTS, true)).aside().when(When::Is("mount", &["wall"]));
        /// From the left wall of the room's plan.
        x: Option<Length>, row(&w::X, &w::X_HINT, PLACE).aside();
        /// From its back wall.
        y: Option<Length>, row(&w::Y, &w::NOTHING, PLACE).aside();
        /// Which box it is.
        enclosure: Enclosure, row(&w::ENCLOSURE, &w::NOTHING, Kind::Choice(&Enclosure::PICKS)).when(BOXED);
        /// The volume marked in it, all gangs together.
        marked: Option<Volume>, row(&w::MARKED, &w::MARKED_HINT, Kind::Volume(Span {
            least: Volume::hundredths(100),
            most: LARGEST_BOX,
            why: &w::WHY_MARKED,
            common: STAMPS,
            optional: true,
        })).aside().when(When::All(&[BOXED, When::Is("enclosure", &["marked"])]));
        /// Gangs that its devices need.
        devices: i64 = 1, row(&w::DEVICES, &w::DEVICES_HINT, Kind::Count { least: 0, most: 6, why: &w::WHY_DEVICES }).when(When::Is("what", WITH_DEVICES));
        /// A clamp is inside.
        clamps: bool, row(&w::CLAMPS, &w::NOTHING, Kind::Flag).when(BOXED);
    }
}

const BOXED: When = When::IsNot("what", &["panel"]);
/// Common practice of receptacles, counters and switches.
const HEIGHTS: &[Length] = &[Length::inches(16, 1), Length::inches(44, 1), Length::inches(48, 1)];
/// Volumes that are stamped. Common practice; always read the stamp.
const STAMPS: &[Volume] = &[
    Volume::hundredths(1800),
    Volume::hundredths(2030),
    Volume::hundredths(2250),
    Volume::hundredths(3200),
];
/// Common practice of branches.
const BREAKERS: &[Measure] = &[amperes(15), amperes(20), amperes(30)];

/// Common practice of crews.
const LOSSES: &[Measure] = &[Measure::whole(&PERCENT, 10), Measure::whole(&PERCENT, 15)];

impl PlacedBox {
    /// Gangs of devices in it.
    pub fn gangs(&self) -> i64 {
        match self.what {
            What::Receptacle | What::Switch | What::Other => self.devices,
            _ => 0,
        }
    }
}

form! {
    /// What was found dead, and when power came back. Evidence: it travels nowhere.
    pub struct Proof {
        /// Tested dead on.
        dead: Option<Day>, row(&w::DEAD_DAY, &w::PROVE_AGAIN, Kind::Day).past().evidence();
        /// At what time.
        dead_time: String, row(&w::TIME, &w::TIME_HINT, LABEL).evidence();
        /// By whom.
        dead_by: String, row(&w::BY, &w::NOTHING, Kind::Text(24)).evidence();
        /// Power restored on.
        live: Option<Day>, row(&w::LIVE_DAY, &w::NOTHING, Kind::Day).past().evidence();
        /// At what time.
        live_time: String, row(&w::TIME, &w::NOTHING, LABEL).evidence();
        /// By whom.
        live_by: String, row(&w::BY, &w::NOTHING, Kind::Text(24)).evidence();
    }
}

form! {
    /// A cable from box to box.
    pub struct Run {
        /// The box it starts in.
        from: String, row(&w::FROM, &w::NOTHING, LABEL).names(BOX_NAMES).foremost(|_| true);
        /// The box it ends in; empty while it is coiled.
        to: String, row(&w::TO, &w::TO_HINT, LABEL).names(BOX_NAMES).foremost(|_| true);
        /// Its kind.
        cable: Cable, row(&w::CABLE, &w::NOTHING, Kind::Choice(Cable::PICKS));
        /// Its circuit.
        circuit: String, row(&w::CIRCUIT, &w::NOTHING, LABEL).names(&["cables.circuit"]).when(POWER).foremost(|_| true);
        /// What it feeds, in the crew's words.
        feeds: String, row(&w::FEEDS, &w::NOTHING, LINE);
        /// Its circuit's breaker.
        breaker: Option<Measure>, current(&w::BREAKER, &w::BREAKER_HINT, BREAKERS);
        /// Between its wires.
        volts: Volts, row(&w::VOLTS, &w::NOTHING, Kind::Choice(Volts::PICKS)).when(POWER);
        /// What runs at once in the box at its far end.
        load: Option<Measure>, current(&w::LOAD, &w::LOAD_HINT, &[]);
        /// Box to box, measured. One that can't be read leaves its cable without a length.
        length: Typed, row(&w::LENGTH, &w::LENGTH_HINT, length(6000, &w::WHY_LENGTH, &[], true));
        /// Labels of the holes that it goes through.
        holes: String, row(&w::HOLES, &w::HOLES_HINT, LINE).names_several(&["holes.label", "cables.holes"]);
        /// Where its end is coiled.
        coiled: String, row(&w::COILED, &w::NOTHING, LINE);
        /// How far it has got.
        state: State, row(&w::STATE, &w::NOTHING, Kind::Choice(State::PICKS));
        /// What was found out about it.
        proof: Proof = Proof::blank(), row(&w::PROOF, &w::PROVE_AGAIN, Kind::Group(Proof::ROWS)).evidence();
    }
}

form! {
    /// A hole that isn't as the others.
    pub struct Hole {
        /// What is written at it.
        label: String, row(&w::LABEL, &w::NOTHING, LABEL);
        /// How wide it is.
        bit: Option<Length>, row(&w::BIT, &w::NOTHING, BIT);
        /// What closes it.
        lie: Lie, row(&w::LIE, &w::NOTHING, Kind::Choice(Lie::PICKS));
    }
}

form! {
    /// Rolls that the shop has.
    pub struct Rolls {
        /// 25 ft.
        r25: bool = true, row(&w::R25, &w::NOTHING, Kind::Flag);
        /// 50 ft.
        r50: bool = true, row(&w::R50, &w::NOTHING, Kind::Flag);
        /// 100 ft.
        r100: bool = true, row(&w::R100, &w::NOTHING, Kind::Flag);
        /// 250 ft.
        r250: bool = true, row(&w::R250, &w::NOTHING, Kind::Flag);
    }
}

static BOXES: Item = Item {
    name: &w::BOX,
    rows: PlacedBox::ROWS,
    most: 300,
    blank: || PlacedBox::blank().write_parts(),
    presets: &[
        Preset { label: &w::RECEPTACLE, sets: &[("what", "receptacle")] },
        Preset { label: &w::SWITCH, sets: &[("what", "switch")] },
        Preset { label: &w::LIGHT, sets: &[("what", "light"), ("mount", "ceiling")] },
        Preset { label: &w::JUNCTION, sets: &[("what", "junction"), ("mount", "ceiling")] },
        Preset { label: &w::ALARM, sets: &[("what", "alarm"), ("mount", "ceiling")] },
        Preset { label: &w::PANEL, sets: &[("what", "panel"), ("label", "PANEL")] },
    ],
};

static CABLES: Item = Item {
    name: &w::CABLE,
    rows: Run::ROWS,
    most: 500,
    blank: || Run::blank().write_parts(),
    presets: &[
        Preset { label: &cable_sizes::C14_2, sets: &[("cable", "14-2")] },
        Preset { label: &cable_sizes::C14_3, sets: &[("cable", "14-3")] },
        Preset { label: &cable_sizes::C12_2, sets: &[("cable", "12-2")] },
        Preset { label: &cable_sizes::C12_3, sets: &[("cable", "12-3")] },
        Preset { label: &cable_sizes::C10_3, sets: &[("cable", "10-3")] },
        Preset { label: &w::DATA, sets: &[("cable", "data")] },
        Preset { label: &w::THERMOSTAT, sets: &[("cable", "thermostat")] },
    ],
};

static HOLES: Item = Item {
    name: &w::HOLE,
    rows: Hole::ROWS,
    most: 100,
    blank: || Hole { lie: Lie::InHole, ..Hole::blank() }.write_parts(),
    presets: &[Preset { label: &w::HOLE, sets: &[] }],
};

form! {
    /// A job's boxes and cables.
    pub struct Input {
        /// Floor to finished ceiling.
        high: Length = Length::inches(96, 1), row(&w::HIGH, &w::NOTHING, length(360, &w::WHY_HIGH, &[], false)).of_room("ceiling-height").rather("ceiling-height-to-be");
        /// The room's plan, as far as boxes are placed from its left wall. By the name of a room's figure, so
        /// that this is offered first; not taken with the rest of a room, since many a plan goes on past it.
        longest: Option<Length>, row(&w::ROOM_LONG, &w::ROOM_HINT, SIDE).aside();
        /// And from its back wall.
        widest: Option<Length>, row(&w::ROOM_WIDE, &w::NOTHING, SIDE).aside();
        /// From there up to where cables cross.
        above: Length = Length::inches(6, 1), row(&w::ABOVE, &w::ABOVE_HINT, length(240, &w::WHY_HIGH, &[], false));
        /// Boxes.
        boxes: Vec<PlacedBox>, row(&w::BOXES, &w::NOTHING, Kind::List(&BOXES));
        /// Cables.
        cables: Vec<Run>, row(&w::CABLES, &w::NOTHING, Kind::List(&CABLES));
        /// Holes that no other line tells of: how wide.
        bit: Option<Length>, row(&w::ALL_BIT, &w::ALL_BIT_HINT, BIT);
        /// What closes them.
        lie: Lie = Lie::InHole, row(&w::ALL_LIE, &w::NOTHING, Kind::Choice(Lie::PICKS));
        /// Holes that differ.
        holes: Vec<Hole>, row(&w::OTHER_HOLES, &w::NOTHING, Kind::List(&HOLES));
        /// How warm it gets round cables.
        warmth: Warmth, row(&w::WARMTH, &w::NOTHING, Kind::Choice(Warmth::PICKS));
        /// Past a box on a wall.
        device_more: Length = Ending::Device.allowance().1, row(&w::DEVICE_MORE, &w::MORE_HINT, length(120, &w::WHY_MORE, &[], false));
        /// Past a box overhead.
        ceiling_more: Length = Ending::Ceiling.allowance().1, row(&w::CEILING_MORE, &w::NOTHING, length(120, &w::WHY_MORE, &[], false));
        /// Past the panel's edge.
        panel_more: Length = Ending::Panel.allowance().1, row(&w::PANEL_MORE, &w::NOTHING, length(120, &w::WHY_MORE, &[], false));
        /// Of the way.
        loss: Measure = Measure::whole(&PERCENT, 10), row(&w::LOSS, &w::NOTHING, Kind::Measure(Span {
            least: Measure::whole(&PERCENT, 0),
            most: Measure::whole(&PERCENT, 50),
            why: &w::WHY_LOSS,
            common: LOSSES,
            optional: false,
        }));
        /// What the shop has.
        rolls: Rolls = Rolls::blank(), row(&w::ROLLS, &w::ROLLS_HINT, Kind::Group(Rolls::ROWS));
    }
    sample {
        boxes: vec![
            placed("PANEL", What::Panel, (60, 0, 0)),
            placed("K1", What::Receptacle, (44, 144, 0)),
            placed("K2", What::Receptacle, (44, 192, 0)),
        ],
        cables: vec![
            Run { breaker: Some(amperes(20)), ..run("PANEL", "K1") },
            Run { load: Some(amperes(12)), ..run("K1", "K2") },
            Run { cable: Cable::Data, circuit: String::new(), coiled: "above PANEL".to_owned(), ..run("PANEL", "") },
        ],
        bit: Some(Length::inches(3, 4)),
    }
}

/// A box on a wall, with its height and place in inches.
fn placed(label: &str, what: What, (high, x, y): (i64, i64, i64)) -> PlacedBox {
    let [high, x, y] = [high, x, y].map(|at| Some(Length::inches(at, 1)));
    let marked = (what != What::Panel).then_some(Volume::hundredths(2250));
    PlacedBox { label: label.to_owned(), what, high, x, y, marked, ..PlacedBox::blank() }
}

fn run(from: &str, to: &str) -> Run {
    let [from, to, circuit] = [from, to, "1"].map(str::to_owned);
    Run { from, to, circuit, cable: Cable::Nm12x2, ..Run::blank() }
}
