//! What is put in: the room, what breaks its walls, what is there, and where the studs are.

use super::words as w;
use crate::calculators::room::{At, Shape, Walked, rows};
use crate::fields::{Form, Item, Kind, Preset, Row, Span, When, row};
use crate::measure::Length;
use crate::words::Phrase;
use crate::{choice, form};

choice! {
    /// What is in a wall.
    pub enum BreakKind {
        /// A door or a cased opening.
        Door = "door", w::DOOR;
        /// Its panels slide.
        Slider = "slider", w::SLIDER;
        /// With its hearth.
        Fireplace = "fireplace", w::FIREPLACE;
        /// Without a countertop.
        Cabinet = "cabinet", w::CABINET;
        /// It counts as wall, and takes no box.
        Glass = "glass", w::GLASS;
    }
}

impl BreakKind {
    /// Whether the wall ends at it.
    pub const fn breaks(self) -> bool {
        !matches!(self, Self::Glass)
    }
}

/// In sixteenths of an inch.
const fn length(label: &'static Phrase, hint: &'static Phrase, [least, most]: [i64; 2]) -> Row {
    let (least, most) = (Length::inches(least, 16), Length::inches(most, 16));
    row(label, hint, Kind::Length(Span { least, most, why: &w::WHY, common: &[], optional: false }))
}

const WALL: [i64; 2] = [0, 38_400];

form! {
    /// Something in a wall.
    pub struct Break {
        /// What.
        kind: BreakKind, row(&w::KIND, &w::NOTHING, Kind::Choice(BreakKind::PICKS));
        /// In which wall.
        wall: At = At::W1, row(&w::WALL, &w::NOTHING, Kind::Choice(At::PICKS)).foremost(|_| true);
        /// From the wall's start to its nearer edge.
        from: Option<Length>, length(&w::FROM, &w::FROM_HINT, WALL).foremost(|_| true);
        /// How wide.
        wide: Option<Length>, length(&w::WIDE, &w::NOTHING, [16, 4_800]).foremost(|_| true);
    }
}

form! {
    /// A receptacle that is there.
    pub struct There {
        /// In which wall.
        wall: At = At::W1, row(&w::WALL, &w::NOTHING, Kind::Choice(At::PICKS));
        /// From the wall's start to its middle.
        at: Option<Length>, length(&w::AT, &w::FROM_HINT, WALL).foremost(|_| true);
    }
}

static BREAKS: Item = Item {
    name: &w::BREAK,
    rows: Break::ROWS,
    most: 20,
    blank: || Break::blank().write_parts(),
    presets: &[
        Preset { label: &w::DOOR, sets: &[("kind", "door"), ("wide", "32 in")] },
        Preset { label: &w::SLIDER, sets: &[("kind", "slider"), ("wide", "72 in")] },
        Preset { label: &w::FIREPLACE, sets: &[("kind", "fireplace")] },
        Preset { label: &w::CABINET, sets: &[("kind", "cabinet")] },
        Preset { label: &w::GLASS, sets: &[("kind", "glass")] },
    ],
};

static HAVE: Item = Item {
    name: &w::RECEPTACLE,
    rows: There::ROWS,
    most: 30,
    blank: || There::blank().write_parts(),
    presets: &[Preset { label: &w::RECEPTACLE, sets: &[] }],
};

form! {
    /// A room, and what is in its walls.
    pub struct Input {
        /// How its outline is put in, as a room's is.
        shape: Shape, rows::taken::SHAPE;
        /// Along wall 1.
        long: Option<Length>, rows::taken::LONG;
        /// Square to it.
        wide: Option<Length>, rows::taken::WIDE;
        /// An L's notch, along wall 1.
        notch_long: Option<Length>, rows::taken::NOTCH_LONG;
        /// An L's notch, across.
        notch_wide: Option<Length>, rows::taken::NOTCH_WIDE;
        /// A T's leg, along wall 1.
        leg_wide: Option<Length>, rows::taken::LEG_WIDE;
        /// A T's leg, from the bar to its end.
        leg_long: Option<Length>, rows::taken::LEG_LONG;
        /// How far the leg stands in.
        leg_off: Option<Length>, rows::taken::LEG_OFF;
        /// A U's gap, along wall 1.
        gap_long: Option<Length>, rows::taken::GAP_LONG;
        /// A U's gap, how far it reaches in.
        gap_deep: Option<Length>, rows::taken::GAP_DEEP;
        /// How far the gap stands in.
        gap_off: Option<Length>, rows::taken::GAP_OFF;
        /// Wall by wall.
        walls: Vec<Walked>, rows::WALKED;
        /// In the walls.
        breaks: Vec<Break>, row(&w::BREAKS, &w::BREAKS_HINT, Kind::List(&BREAKS));
        /// There now.
        have: Vec<There>, row(&w::HAVE, &w::HAVE_HINT, Kind::List(&HAVE));
        /// Boxes are nailed to studs.
        on_studs: bool = true, row(&w::ON_STUDS, &w::ON_STUDS_HINT, Kind::Flag);
        /// To the first stud counted, in each wall.
        first: Length = Length::inches(16, 1), length(&w::FIRST, &w::NOTHING, [0, 768]).when(When::Yes("on_studs"));
        /// Middle to middle.
        spacing: Length = Length::inches(16, 1), row(&w::SPACING, &w::NOTHING, Kind::Length(Span {
            least: Length::inches(6, 1), most: Length::inches(48, 1), why: &w::WHY,
            common: &[Length::inches(16, 1), Length::inches(24, 1)], optional: false,
        })).when(When::Yes("on_studs"));
        /// A stud's thickness.
        thick: Length = Length::inches(3, 2), length(&w::THICK, &w::NOTHING, [8, 64]).when(When::Yes("on_studs"));
        /// A box's width.
        wide_box: Length = Length::inches(9, 4), length(&w::BOX, &w::NOTHING, [8, 192]);
        /// From an opening's edge to a box.
        keep: Length = Length::inches(13, 4), length(&w::KEEP, &w::KEEP_HINT, [0, 384]);
    }
    sample {
        long: Some(Length::inches(192, 1)),
        wide: Some(Length::inches(144, 1)),
        breaks: vec![Break { kind: BreakKind::Door, wall: At::W3, from: Some(Length::inches(12, 1)), wide: Some(Length::inches(32, 1)) }],
    }
}
