//! What is put in: the room's outline, its heights, what is let into its walls, and the framing
//! over it.

use super::choices::{At, End, MOST_WALLS, OpeningKind, Runs, Shape, Spacing};
use super::rows;
use super::words as w;
use crate::fields::{Form, Item, Kind, Preset, Span, When, row};
use crate::form;
use crate::measure::Length;
use crate::words::Phrase;

/// In inches. One that is needed starts empty and is asked for.
pub(super) const fn length(least: i64, most: i64, why: &'static Phrase, optional: bool) -> Kind {
    Kind::Length(Span {
        least: Length::inches(least, 1),
        most: Length::inches(most, 1),
        why,
        common: &[],
        optional,
    })
}

/// A wall of a walk is 200 ft long at most.
pub(super) const LONGEST: i64 = 2400;

form! {
    /// A wall on the walk.
    pub struct Walked {
        /// The corner at its end.
        end: End, row(&w::END, &w::END_HINT, Kind::Choice(End::PICKS));
        /// Its length; one blank in each direction is worked out.
        length: Option<Length>, rows::outline(&w::LENGTH, &w::LENGTH_HINT, true).foremost(|_| true);
        /// The weather is behind it.
        outside: bool, row(&w::OUTSIDE_WALL, &w::NOTHING, Kind::Flag);
    }
}

form! {
    /// An outside wall of a room with a named shape.
    pub struct OutsideWall {
        /// Which.
        wall: At = At::W1, row(&w::WALL_NUMBER, &w::NOTHING, Kind::Choice(At::PICKS));
    }
}

form! {
    /// Doors, windows or openings of one size.
    pub struct Opening {
        /// What they are.
        kind: OpeningKind, row(&w::KIND, &w::NOTHING, Kind::Choice(OpeningKind::PICKS));
        /// How many.
        count: i64 = 1, row(&w::COUNT, &w::NOTHING, Kind::Count { least: 1, most: 20, why: &w::WHY_COUNT });
        /// How wide.
        width: Option<Length>, row(&w::WIDTH, &w::SIZE_HINT, length(1, 240, &w::WHY_OPENING, false));
        /// How high.
        height: Option<Length>, row(&w::HIGH, &w::NOTHING, length(1, 240, &w::WHY_OPENING, false));
        /// Which wall they are in.
        wall: At, row(&w::IN_WALL, &w::IN_WALL_HINT, Kind::Choice(At::PICKS));
    }
}

form! {
    /// The framing over the room.
    pub struct Framing {
        /// Which way it runs.
        runs: Runs, row(&w::RUNS, &w::RUNS_HINT, Kind::Choice(Runs::PICKS));
        /// How far apart.
        spacing: Spacing, row(&w::SPACING, &w::SPACING_HINT, Kind::Choice(Spacing::PICKS));
        /// A member's depth, as measured.
        depth: Option<Length>, row(&w::DEPTH, &w::DEPTH_HINT, length(1, 36, &w::WHY_MEMBER, true));
        /// A member's thickness, as measured.
        thickness: Option<Length>, row(&w::THICKNESS, &w::NOTHING, length(1, 12, &w::WHY_MEMBER, true));
    }
}

macro_rules! item {
    ($name:ident, $form:ident, $label:expr, $most:expr, [$($preset:expr, $sets:expr;)*]) => {
        pub(super) static $name: Item = Item {
            name: &$label,
            rows: $form::ROWS,
            most: $most,
            blank: || $form::blank().write_parts(),
            presets: &[$(Preset { label: &$preset, sets: $sets }),*],
        };
    };
}

item!(WALLS, Walked, w::WALL, MOST_WALLS, [
    w::TO_INSIDE, &[("end", "inside")];
    w::TO_OUTSIDE, &[("end", "outside")];
]);
item!(OUTSIDES, OutsideWall, w::OUTSIDE_WALL, MOST_WALLS, [
    w::W1, &[("wall", "1")];
    w::W2, &[("wall", "2")];
    w::W3, &[("wall", "3")];
    w::W4, &[("wall", "4")];
    w::W5, &[("wall", "5")];
    w::W6, &[("wall", "6")];
    w::W7, &[("wall", "7")];
    w::W8, &[("wall", "8")];
]);
item!(OPENINGS, Opening, w::OPENING, 20, [
    w::DOOR_2_8, &[("kind", "door"), ("width", "32 in"), ("height", "80 in")];
    w::DOOR_2_6, &[("kind", "door"), ("width", "30 in"), ("height", "80 in")];
    w::DOOR_3_0, &[("kind", "door"), ("width", "36 in"), ("height", "80 in")];
    w::DOOR_6_0, &[("kind", "door"), ("width", "72 in"), ("height", "80 in")];
    w::WINDOW_3_4, &[("kind", "window"), ("width", "36 in"), ("height", "48 in")];
    w::WINDOW_3_5, &[("kind", "window"), ("width", "36 in"), ("height", "60 in")];
    w::OTHER_OPENING, &[("kind", "cased")];
]);

form! {
    /// A room.
    pub struct Input {
        /// How its outline is put in.
        shape: Shape, rows::SHAPE;
        /// Along wall 1.
        long: Option<Length>, rows::LONG;
        /// Square to wall 1.
        wide: Option<Length>, rows::WIDE;
        /// An L's notch, along wall 1.
        notch_long: Option<Length>, rows::NOTCH_LONG;
        /// An L's notch, across.
        notch_wide: Option<Length>, rows::NOTCH_WIDE;
        /// A T's leg, along wall 1.
        leg_wide: Option<Length>, rows::LEG_WIDE;
        /// A T's leg, from the bar to its end.
        leg_long: Option<Length>, rows::LEG_LONG;
        /// How far the leg stands in from where wall 1 starts; in the middle if blank.
        leg_off: Option<Length>, rows::LEG_OFF;
        /// A U's gap, along wall 1.
        gap_long: Option<Length>, rows::GAP_LONG;
        /// A U's gap, how far it reaches in.
        gap_deep: Option<Length>, rows::GAP_DEEP;
        /// How far the gap stands in from where wall 1 starts; in the middle if blank.
        gap_off: Option<Length>, rows::GAP_OFF;
        /// Wall by wall.
        walls: Vec<Walked>, rows::WALKED;
        /// Floor to ceiling now.
        height: Option<Length>, row(&w::HEIGHT, &w::HEIGHT_HINT, length(36, 480, &w::WHY_HEIGHT, false));
        /// Floor to ceiling as it will be.
        height_to_be: Option<Length>, row(&w::TO_BE, &w::TO_BE_HINT, length(36, 480, &w::WHY_HEIGHT, true));
        /// What the walls are open for.
        openings: Vec<Opening>, row(&w::OPENINGS, &w::OPENINGS_HINT, Kind::List(&OPENINGS));
        /// Walls with the weather behind them.
        outside: Vec<OutsideWall>, row(&w::OUTSIDE_WALLS, &w::OUTSIDE_WALLS_HINT, Kind::List(&OUTSIDES))
            .when(When::IsNot("shape", &["walk"]));
        /// What the ceiling hangs on.
        framing: Framing = Framing::blank(), row(&w::FRAMING, &w::FRAMING_HINT, Kind::Group(Framing::ROWS));
        /// How far the floor's lowest place is below its highest.
        out_of_level: Option<Length>, row(&w::LEVEL, &w::LEVEL_HINT, length(0, 24, &w::WHY_LEVEL, true));
        /// From the start of wall 1 to the corner across.
        diagonal_1: Option<Length>, row(&w::DIAGONAL_1, &w::DIAGONAL_HINT, length(1, 3600, &w::WHY_WALL, true))
            .when(When::Is("shape", &["rectangle"]));
        /// From the end of wall 1 to the corner across.
        diagonal_2: Option<Length>, row(&w::DIAGONAL_2, &w::NOTHING, length(1, 3600, &w::WHY_WALL, true))
            .when(When::Is("shape", &["rectangle"]));
    }
    sample {
        long: Some(Length::inches(168, 1)),
        wide: Some(Length::inches(144, 1)),
        height: Some(Length::inches(96, 1)),
    }
}
