//! What is put in: the wall, its studs and openings, what is in it, and what is to hang.

use super::words as w;
use crate::calculators::boards::{MEMBERS, Member, OPENINGS, Opening};
use crate::fields::{Form, Item, Kind, Preset, Span, When, row};
use crate::measure::Length;
use crate::rules::framing::lumber::THICK;
use crate::{choice, form};

choice! {
    /// What may be in a wall.
    pub enum What {
        /// Of a receptacle, a switch.
        Box = "box", w::BOX;
        /// Of power or signal.
        Cable = "cable", w::CABLE;
        /// Of water, waste or gas.
        Pipe = "pipe", w::PIPE;
        /// Of air.
        Duct = "duct", w::DUCT;
        /// Flat behind the board.
        Backing = "backing", w::BACKING;
        /// Between studs.
        Blocking = "blocking", w::BLOCKING;
        /// Over a run.
        Plate = "plate", w::PLATE;
        /// Through the wall.
        Vent = "vent", w::VENT;
        /// Anything else.
        Other = "other", w::OTHER;
    }
}

impl What {
    /// Whether it is there to be screwed into.
    pub const fn holds(self) -> bool {
        matches!(self, Self::Backing | Self::Blocking)
    }

    /// Whether a nail must not reach it.
    pub const fn is_run(self) -> bool {
        matches!(self, Self::Cable | Self::Pipe)
    }
}

/// In inches.
const fn length(most: i64, common: &'static [Length], optional: bool) -> Kind {
    let (least, most) = (Length::ZERO, Length::inches(most, 1));
    Kind::Length(Span { least, most, why: &w::WHY, common, optional })
}

const fn span(least: i64, most: i64, common: &'static [Length]) -> Kind {
    let (least, most) = (Length::inches(least, 1), Length::inches(most, 1));
    Kind::Length(Span { least, most, why: &w::WHY, common, optional: false })
}

form! {
    /// One thing, as a rectangle; of a straight run one side is its thickness, or nothing.
    pub struct Thing {
        /// What.
        what: What, row(&w::WHAT, &w::NOTHING, Kind::Choice(What::PICKS));
        /// In the crew's words.
        note: String, row(&w::NOTE, &w::NOTHING, Kind::Text(24)).foremost(|_| true);
        /// To its left edge.
        left: Option<Length>, row(&w::LEFT, &w::NOTHING, length(2400, &[], false)).foremost(|_| true);
        /// To its lower edge.
        low: Option<Length>, row(&w::LOW, &w::NOTHING, length(240, &[], false)).foremost(|_| true);
        /// Across.
        wide: Length, row(&w::WIDE, &w::NOTHING, length(2400, &[], false)).foremost(|_| true);
        /// Upwards.
        tall: Length, row(&w::TALL, &w::NOTHING, length(240, &[], false)).foremost(|_| true);
        /// Behind the stud's face.
        deep: Option<Length>, row(&w::DEEP, &w::DEEP_HINT, length(12, &[Length::inches(5, 4)], true)).when(When::IsNot("what", &["backing", "blocking"]));
        /// Under steel.
        plated: bool, row(&w::PLATED, &w::NOTHING, Kind::Flag).when(When::Is("what", &["cable", "pipe"]));
    }
}

impl Thing {
    /// Left, right, bottom, top.
    pub fn edges(&self) -> [Length; 4] {
        let (left, low) = (self.left.unwrap_or_default(), self.low.unwrap_or_default());
        [left, left.plus(self.wide), low, low.plus(self.tall)]
    }
}

/// Usual sizes, common practice.
static THINGS: Item = Item {
    name: &w::THING,
    rows: Thing::ROWS,
    most: 60,
    blank: || Thing::blank().write_parts(),
    presets: &[
        Preset { label: &w::BOX, sets: &[("wide", "2-1/4 in"), ("tall", "3-3/4 in")] },
        Preset { label: &w::CABLE, sets: &[("what", "cable")] },
        Preset { label: &w::PIPE, sets: &[("what", "pipe")] },
        Preset { label: &w::DUCT, sets: &[("what", "duct")] },
        Preset { label: &w::BACKING, sets: &[("what", "backing"), ("tall", "5-1/2 in")] },
        Preset {
            label: &w::BLOCKING,
            sets: &[("what", "blocking"), ("wide", "14-1/2 in"), ("tall", "1-1/2 in")],
        },
        Preset {
            label: &w::PLATE,
            sets: &[("what", "plate"), ("wide", "1-1/2 in"), ("tall", "3 in")],
        },
        Preset { label: &w::VENT, sets: &[("what", "vent")] },
    ],
};

const HANGS: When = When::Yes("hang");

form! {
    /// One wall from the room.
    pub struct Input {
        /// End to end.
        wall: Option<Length>, row(&w::WALL, &w::NOTHING, span(12, 2400, &[]));
        /// Floor to ceiling.
        high: Length = Length::inches(96, 1), row(&w::HIGH, &w::NOTHING, span(24, 240, &[])).of_room("ceiling-height").rather("ceiling-height-to-be");
        /// Studs, center to center.
        spacing: Length = Length::inches(16, 1), row(&w::SPACING, &w::NOTHING, span(6, 48, &[Length::inches(16, 1), Length::inches(24, 1)]));
        /// The first center on it.
        first: Length = Length::inches(16, 1), row(&w::FIRST, &w::FIRST_HINT, length(48, &[], false));
        /// Centers in the place of both.
        studs: Vec<Member>, row(&w::STUDS, &w::STUDS_HINT, Kind::List(&MEMBERS));
        /// A stud, across its face.
        thick: Length = THICK, row(&w::THICK, &w::NOTHING, span(1, 6, &[THICK]));
        /// Doors and windows.
        openings: Vec<Opening>, row(OPENINGS.name, &w::NOTHING, Kind::List(&OPENINGS));
        /// What is in it.
        things: Vec<Thing>, row(&w::THINGS, &w::THINGS_HINT, Kind::List(&THINGS));
        /// Something is to hang.
        hang: bool, row(&w::HANG, &w::NOTHING, Kind::Flag);
        /// How high.
        at_low: Option<Length>, row(&w::AT_LOW, &w::NOTHING, length(240, &[], false)).when(HANGS);
        /// From the left.
        at_left: Option<Length>, row(&w::AT_LEFT, &w::NOTHING, length(2400, &[], false)).when(HANGS);
        /// How far on.
        across: Length, row(&w::ACROSS, &w::ACROSS_HINT, length(2400, &[], false)).when(HANGS);
        /// Its screw.
        screw: Option<Length>, row(&w::SCREW, &w::NOTHING, length(12, &[Length::inches(2, 1), Length::inches(5, 2), Length::inches(3, 1)], true)).when(HANGS);
        /// Before the stud's face.
        cover: Length = Length::inches(1, 2), row(&w::COVER, &w::NOTHING, length(6, &[], false)).when(HANGS);
    }
}

impl Input {
    /// What the screen opens with: an invented wall.
    pub fn sample() -> Self {
        let thing = |what, [left, low, wide, tall]: [i64; 4], deep| {
            let of = |sixteenths| Length::inches(sixteenths, 16);
            Thing {
                what,
                left: Some(of(left)),
                low: Some(of(low)),
                wide: of(wide),
                tall: of(tall),
                deep,
                ..Thing::blank()
            }
        };
        let deep = Some(Length::inches(3, 2));
        Self {
            wall: Some(Length::inches(144, 1)),
            things: vec![
                thing(What::Box, [524, 226, 36, 60], Some(Length::ZERO)),
                thing(What::Cable, [542, 286, 0, 1250], deep),
                thing(What::Backing, [1024, 736, 512, 88], None),
            ],
            ..Self::blank()
        }
    }
}
