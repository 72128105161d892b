//! What is put in: the surface, the framing behind it, the boards that the shop has, and what
//! matters most.

use super::words as w;
use crate::calculators::room::{Shape, Walked, rows};
use crate::fields::{Form, Item, Kind, Preset, Span, When, row};
use crate::measure::Length;
use crate::rules::finish::board_weights::Panel;
use crate::rules::finish::old_surface::OldSurface;
use crate::rules::framing::board_sheets::WIDTHS;
use crate::words::Phrase;
use crate::{choice, form};

choice! {
    /// What is boarded.
    pub enum Surface {
        /// A ceiling, of any outline.
        Ceiling = "ceiling", w::CEILING;
        /// A wall with what is let into it.
        Wall = "wall", w::WALL;
    }
}

choice! {
    /// Which way boards run.
    pub enum Run {
        /// As wall 1; on a wall, level.
        Along = "along", w::RUN_ALONG;
        /// Square to it; on a wall, upright.
        Square = "square", w::RUN_SQUARE;
    }
}

choice! {
    /// How wide boards are.
    pub enum Wide {
        /// The commonest.
        W48 = "48", w::W48;
        /// For high walls.
        W54 = "54", w::W54;
        /// The shop has both.
        Both = "both", w::BOTH;
    }
}

impl Wide {
    /// Across a board, of all that may be bought.
    pub const fn widths(self) -> &'static [Length] {
        match self {
            Self::W48 => WIDTHS.split_at(1).0,
            Self::W54 => WIDTHS.split_at(1).1,
            Self::Both => &WIDTHS,
        }
    }
}

/// A board's width as a shop calls it.
pub(super) fn named(wide: Length) -> &'static Phrase {
    if wide == WIDTHS[0] { &w::W48 } else { &w::W54 }
}

choice! {
    /// What matters most.
    pub enum Want {
        /// The fewest end joints, for one board more at most.
        Near = "near", w::WANT_NEAR;
        /// The fewest boards.
        Boards = "boards", w::WANT_BOARDS;
        /// The fewest end joints.
        Joints = "joints", w::WANT_JOINTS;
        /// The lightest board.
        Light = "light", w::WANT_LIGHT;
        /// The least board bought.
        Bought = "bought", w::WANT_BOUGHT;
    }
}

/// In inches.
const fn length(
    [least, most]: [i64; 2],
    why: &'static Phrase,
    common: &'static [Length],
    optional: bool,
) -> Kind {
    let (least, most) = (Length::inches(least, 1), Length::inches(most, 1));
    Kind::Length(Span { least, most, why, common, optional })
}

/// Common practice of joists and studs.
const APART: &[Length] =
    &[Length::inches(12, 1), Length::inches(16, 1), Length::inches(96, 5), Length::inches(24, 1)];
const JOISTS: Kind = length([1, 48], &w::WHY_SPACING, APART, true);

const CEILING: When = When::Is("of", &["ceiling"]);
const WALL: When = When::Is("of", &["wall"]);

macro_rules! ceiling {
    ($row:expr, $shape:literal) => {
        $row.when(When::All(&[CEILING, When::Is("shape", &[$shape])]))
    };
}
const NAMED: When = When::All(&[CEILING, When::IsNot("shape", &["walk"])]);

form! {
    /// A door or window in a wall.
    pub struct Opening {
        /// From the wall's left end.
        from: Option<Length>, row(&w::FROM_LEFT, &w::NOTHING, length([0, 2400], &w::WHY_LONG, &[], false)).foremost(|_| true);
        /// How wide, frame to frame.
        wide: Length = Length::inches(32, 1), row(&w::OPENING_WIDE, &w::NOTHING, length([1, 240], &w::WHY_LONG, &[], false));
        /// Its lower edge over the floor.
        sill: Length, row(&w::SILL, &w::SILL_HINT, length([0, 240], &w::WHY_LONG, &[], false));
        /// How high.
        high: Length = Length::inches(80, 1), row(&w::OPENING_HIGH, &w::NOTHING, length([1, 240], &w::WHY_LONG, &[], false));
    }
}

/// Openings, with a door and a window for one tap.
pub static OPENINGS: Item = Item {
    name: &w::OPENING,
    rows: Opening::ROWS,
    most: 12,
    blank: || Opening::blank().write_parts(),
    presets: &[
        Preset { label: &w::DOOR, sets: &[("wide", "34-1/2 in"), ("high", "82-1/2 in")] },
        Preset {
            label: &w::WINDOW,
            sets: &[("wide", "36 in"), ("sill", "32 in"), ("high", "48 in")],
        },
    ],
};

form! {
    /// A member that was measured.
    pub struct Member {
        /// Its center, from where boards start.
        at: Option<Length>, row(&w::CENTER, &w::NOTHING, length([0, 2400], &w::WHY_LONG, &[], false)).foremost(|_| true);
    }
}

/// Members that were measured.
pub static MEMBERS: Item = Item {
    name: &w::MEMBER,
    rows: Member::ROWS,
    most: 60,
    blank: || Member::blank().write_parts(),
    presets: &[Preset { label: &w::MEMBER, sets: &[] }],
};

form! {
    /// The lengths that the shop has.
    pub struct Stock {
        /// 8 ft.
        l8: bool = true, row(&w::L8, &w::NOTHING, Kind::Flag);
        /// 9 ft.
        l9: bool, row(&w::L9, &w::NOTHING, Kind::Flag);
        /// 10 ft.
        l10: bool = true, row(&w::L10, &w::NOTHING, Kind::Flag);
        /// 12 ft.
        l12: bool = true, row(&w::L12, &w::NOTHING, Kind::Flag);
        /// 14 ft.
        l14: bool = true, row(&w::L14, &w::NOTHING, Kind::Flag);
        /// 16 ft.
        l16: bool, row(&w::L16, &w::L16_HINT, Kind::Flag);
    }
}

impl Stock {
    /// From short to long.
    pub fn lengths(&self) -> Vec<Length> {
        let all = [
            (self.l8, 8),
            (self.l9, 9),
            (self.l10, 10),
            (self.l12, 12),
            (self.l14, 14),
            (self.l16, 16),
        ];
        all.iter().filter(|it| it.0).map(|it| Length::inches(12 * it.1, 1)).collect()
    }
}

form! {
    /// A surface to board.
    pub struct Input {
        /// What.
        of: Surface, row(&w::OF, &w::NOTHING, Kind::Choice(Surface::PICKS));
        /// How its outline is put in, as a room's is.
        shape: Shape, rows::taken::SHAPE.when(CEILING);
        /// Along wall 1.
        long: Option<Length>, rows::taken::LONG.when(NAMED);
        /// Square to it.
        wide: Option<Length>, rows::taken::WIDE.when(NAMED);
        /// An L's notch, along wall 1.
        notch_long: Option<Length>, ceiling!(rows::taken::NOTCH_LONG, "l");
        /// An L's notch, across.
        notch_wide: Option<Length>, ceiling!(rows::taken::NOTCH_WIDE, "l");
        /// A T's leg, along wall 1.
        leg_wide: Option<Length>, ceiling!(rows::taken::LEG_WIDE, "t");
        /// A T's leg, from the bar to its end.
        leg_long: Option<Length>, ceiling!(rows::taken::LEG_LONG, "t");
        /// How far the leg stands in.
        leg_off: Option<Length>, ceiling!(rows::taken::LEG_OFF, "t");
        /// A U's gap, along wall 1.
        gap_long: Option<Length>, ceiling!(rows::taken::GAP_LONG, "u");
        /// A U's gap, how far it reaches in.
        gap_deep: Option<Length>, ceiling!(rows::taken::GAP_DEEP, "u");
        /// How far the gap stands in.
        gap_off: Option<Length>, ceiling!(rows::taken::GAP_OFF, "u");
        /// Wall by wall.
        walls: Vec<Walked>, ceiling!(rows::WALKED, "walk");
        /// The wall, end to end.
        wall: Option<Length>, row(&w::WALL_LONG, &w::NOTHING, length([12, 2400], &w::WHY_LONG, &[], false)).when(WALL);
        /// Floor to ceiling.
        high: Length = Length::inches(97, 1), row(&w::HIGH, &w::HIGH_HINT, length([24, 240], &w::WHY_LONG, &[], false)).of_room("ceiling-height").rather("ceiling-height-to-be").when(WALL);
        /// Left open at the floor.
        gap: Length = Length::inches(1, 1), row(&w::GAP, &w::GAP_HINT, length([0, 12], &w::WHY_GAP, &[], false)).when(WALL);
        /// Doors and windows.
        openings: Vec<Opening>, row(&w::OPENINGS, &w::OPENINGS_HINT, Kind::List(&OPENINGS)).when(WALL);
        /// Which way boards run.
        run: Run, row(&w::RUN, &w::RUN_HINT, Kind::Choice(Run::PICKS));
        /// Joists over a ceiling, where they run as wall 1.
        joists_along: Option<Length>, row(&w::JOISTS_ALONG, &w::JOISTS_HINT, JOISTS).of_room("joists-along").or("joists-square").when(CEILING);
        /// And where they run square to it.
        joists_square: Option<Length>, row(&w::JOISTS_SQUARE, &w::NOTHING, JOISTS).of_room("joists-square").or("joists-along").when(CEILING);
        /// Members under their ends.
        spacing: Length = Length::inches(16, 1), row(&w::SPACING, &w::SPACING_HINT, length([1, 48], &w::WHY_SPACING, APART, false));
        /// The first one's center from where boards start.
        first: Length, row(&w::FIRST, &w::FIRST_HINT, length([0, 48], &w::WHY_SPACING, &[], false));
        /// Centers as measured, in the place of both.
        members: Vec<Member>, row(&w::MEMBERS, &w::MEMBERS_HINT, Kind::List(&MEMBERS));
        /// A kind of board.
        panel: Panel, row(&w::PANEL, &w::NOTHING, Kind::Choice(Panel::PICKS));
        /// How wide.
        board: Wide, row(&w::BOARD_WIDE, &w::NOTHING, Kind::Choice(Wide::PICKS));
        /// How long.
        stock: Stock = Stock::blank(), row(&w::STOCK, &w::NOTHING, Kind::Group(Stock::ROWS));
        /// The longest that gets in.
        longest: Option<Length>, row(&w::LONGEST, &w::LONGEST_HINT, length([24, 192], &w::WHY_LONGEST, &[], true));
        /// No piece is shorter.
        least: Length = Length::inches(24, 1), row(&w::LEAST, &w::LEAST_HINT, length([1, 96], &w::WHY_LEAST, &[], false));
        /// To have more of, the longest.
        spare: i64, row(&w::SPARE, &w::SPARE_HINT, Kind::Count { least: 0, most: 20, why: &w::WHY_SPARE });
        /// It goes over an old surface, and not on bare framing.
        over: bool, row(&w::OVER, &w::OVER_HINT, Kind::Flag);
        /// Which.
        old: OldSurface, row(&w::OLD, &w::NOTHING, Kind::Choice(OldSurface::PICKS)).when(When::Yes("over"));
        /// What matters most.
        want: Want, row(&w::WANT, &w::WANT_HINT, Kind::Choice(Want::PICKS));
    }
    sample {
        long: Some(Length::inches(192, 1)),
        wide: Some(Length::inches(144, 1)),
    }
}
