//! What is put in: the floors under the line, the boxes, and what they are to keep clear of.

use super::words as w;
use crate::fields::{Form, Item, Kind, Preset, Row, Span, row};
use crate::measure::Length;
use crate::rules::electrical::box_setback::Surface;
use crate::words::Phrase;
use crate::{choice, form};

choice! {
    /// What heights count from.
    pub enum Datum {
        /// One floor for all.
        Highest = "highest", w::HIGHEST;
        /// The one under each.
        Own = "own", w::OWN;
    }
}

choice! {
    /// What a box is for.
    pub enum BoxKind {
        /// Along a wall.
        Receptacle = "receptacle", w::RECEPTACLE;
        /// At a door.
        Switch = "switch", w::SWITCH;
        /// Over a counter.
        Counter = "counter", w::COUNTER;
        /// No hand reaches it.
        Alarm = "alarm", w::ALARM;
        /// Else.
        Other = "other", w::OTHER;
    }
}

choice! {
    /// What its height is measured to.
    pub enum To {
        /// Half-way.
        Middle = "middle", w::MIDDLE;
        /// Its lower edge.
        Bottom = "bottom", w::BOTTOM;
        /// Its upper edge.
        Top = "top", w::TOP;
    }
}

/// In sixteenths of an inch.
const fn span([least, most]: [i64; 2], common: &'static [Length], optional: bool) -> Kind {
    let (least, most) = (Length::inches(least, 16), Length::inches(most, 16));
    Kind::Length(Span { least, most, why: &w::WHY, common, optional })
}

const fn length(label: &'static Phrase, hint: &'static Phrase, bounds: [i64; 2]) -> Row {
    row(label, hint, span(bounds, &[], false))
}

/// One that feeds a check of its own.
const fn aside(
    label: &'static Phrase,
    hint: &'static Phrase,
    bounds: [i64; 2],
    common: &'static [Length],
) -> Row {
    row(label, hint, span(bounds, common, true)).aside()
}

const WALL: [i64; 2] = [0, 38_400];
const HIGH: [i64; 2] = [0, 3_840];
const THIN: [i64; 2] = [0, 64];

form! {
    /// A floor under the line.
    pub struct Floor {
        /// What it is called.
        name: String, row(&w::CALL, &w::NOTHING, Kind::Text(24));
        /// From the line to what lies there.
        down: Option<Length>, length(&w::DOWN, &w::DOWN_HINT, HIGH).foremost(|_| true);
        /// Board to come.
        backer: Length, length(&w::BACKER, &w::NOTHING, THIN);
        /// Bed to come.
        bed: Length, length(&w::BED, &w::NOTHING, THIN);
        /// Tile, plank or carpet to come.
        cover: Length, length(&w::COVER, &w::NOTHING, THIN);
    }
}

form! {
    /// A box wanted.
    pub struct Wanted {
        /// What it is for.
        kind: BoxKind, row(&w::KIND, &w::NOTHING, Kind::Choice(BoxKind::PICKS));
        /// What it is called.
        name: String, row(&w::CALL, &w::NOTHING, Kind::Text(24));
        /// Over a finished floor.
        height: Option<Length>, length(&w::HEIGHT, &w::NOTHING, HIGH).foremost(|_| true);
        /// To its middle, bottom or top.
        to: To, row(&w::TO, &w::NOTHING, Kind::Choice(To::PICKS));
        /// The floor that it stands over, from 1.
        floor: i64 = 1, row(&w::STANDS, &w::NOTHING, Kind::Count { least: 1, most: 6, why: &w::WHY }).foremost(|root| root.items("floors").len() > 1);
        /// Along the wall.
        along: Option<Length>, row(&w::ALONG, &w::ALONG_HINT, span(WALL, &[], true));
    }
}

static FLOORS: Item = Item {
    name: &w::FLOOR,
    rows: Floor::ROWS,
    most: 6,
    blank: || Floor::blank().write_parts(),
    presets: &[
        Preset { label: &w::HERE, sets: &[] },
        Preset {
            label: &w::TILED,
            sets: &[("backer", "1/4 in"), ("bed", "1/4 in"), ("cover", "5/16 in")],
        },
    ],
};

static BOXES: Item = Item {
    name: &w::BOX,
    rows: Wanted::ROWS,
    most: 12,
    blank: || Wanted::blank().write_parts(),
    presets: &[
        Preset { label: &w::RECEPTACLE, sets: &[("kind", "receptacle"), ("height", "16 in")] },
        Preset { label: &w::SWITCH, sets: &[("kind", "switch"), ("height", "48 in")] },
        Preset { label: &w::COUNTER, sets: &[("kind", "counter"), ("height", "44 in")] },
        Preset { label: &w::ALARM, sets: &[("kind", "alarm")] },
        Preset { label: &w::OTHER, sets: &[("kind", "other")] },
    ],
};

form! {
    /// A wall with its line.
    pub struct Input {
        /// Under the line.
        floors: Vec<Floor>, row(&w::FLOORS, &w::FLOORS_HINT, Kind::List(&FLOORS));
        /// What heights count from.
        from: Datum, row(&w::FROM, &w::NOTHING, Kind::Choice(Datum::PICKS));
        /// Wanted.
        boxes: Vec<Wanted>, row(&w::BOXES, &w::NOTHING, Kind::List(&BOXES));
        /// A box's height.
        tall: Length = Length::inches(15, 4), length(&w::TALL, &w::NOTHING, [16, 192]);
        /// And width.
        wide: Length = Length::inches(9, 4), length(&w::WIDE, &w::NOTHING, [16, 320]);
        /// The instrument's error …
        off: Length = Length::inches(1, 8), length(&w::OFF, &w::NOTHING, [0, 32]);
        /// … over so much.
        over: Length = Length::inches(360, 1), length(&w::OVER, &w::NOTHING, [192, 19_200]);
        /// From the instrument to the farthest mark.
        reach: Option<Length>, row(&w::REACH, &w::NOTHING, span(WALL, &[], true));
        /// The board's seam.
        seam: Option<Length>, aside(&w::SEAM, &w::SEAM_HINT, HIGH, &[Length::inches(48, 1), Length::inches(54, 1)]);
        /// A counter's top.
        counter: Option<Length>, aside(&w::COUNTER_TOP, &w::NOTHING, HIGH, &[Length::inches(36, 1)]);
        /// What stands on it against the wall.
        splash: Length = Length::inches(4, 1), length(&w::SPLASH, &w::NOTHING, [0, 960]);
        /// A course of tile from the counter up.
        course: Option<Length>, row(&w::COURSE, &w::NOTHING, span([8, 960], &[], true));
        /// Of a door, along the wall.
        door: Option<Length>, aside(&w::DOOR, &w::DOOR_HINT, WALL, &[]);
        /// Its casing.
        casing: Length = Length::inches(9, 4), length(&w::CASING, &w::NOTHING, [0, 192]);
        /// Reach is checked.
        hand: bool, row(&w::HAND, &w::NOTHING, Kind::Flag);
        /// What the finish is of.
        surface: Surface, row(&w::SURFACE, &w::NOTHING, Kind::Choice(Surface::PICKS));
        /// Board on the stud.
        board: Length = Length::inches(1, 2), length(&w::BOARD, &w::NOTHING, THIN);
        /// Tile on the board.
        tile: Length, length(&w::TILE, &w::NOTHING, THIN);
        /// Compound on the board.
        skim: Length, length(&w::SKIM, &w::NOTHING, [0, 16]);
        /// The box's front past the stud.
        proud: Length = Length::inches(1, 2), length(&w::PROUD, &w::NOTHING, THIN);
    }
    sample {
        floors: vec![
            Floor { name: "by the hall".to_owned(), down: Some(Length::inches(48, 1)), ..Floor::blank() },
        ],
        boxes: vec![
            Wanted { height: Some(Length::inches(16, 1)), along: Some(Length::inches(24, 1)), ..Wanted::blank() },
            Wanted { kind: BoxKind::Switch, height: Some(Length::inches(48, 1)), along: Some(Length::inches(60, 1)), ..Wanted::blank() },
            Wanted { height: Some(Length::inches(16, 1)), along: Some(Length::inches(110, 1)), ..Wanted::blank() },
        ],
        seam: Some(Length::inches(48, 1)),
    }
}

impl Floor {
    /// What is to come on it.
    pub fn build_up(&self) -> Length {
        self.backer.plus(self.bed).plus(self.cover)
    }
}

impl Input {
    /// The finish over the stud.
    pub fn projection(&self) -> Length {
        self.board.plus(self.tile).plus(self.skim)
    }
}
