//! The rows that ask for a room's outline: a calculator whose work lies in a room asks by the same.

use super::choices::Shape;
use super::input::{LONGEST, WALLS, length};
use super::words as w;
use crate::fields::{Kind, Row, When, row};
use crate::words::Phrase;

pub(super) const fn outline(label: &'static Phrase, hint: &'static Phrase, optional: bool) -> Row {
    row(label, hint, length(1, LONGEST, &w::WHY_WALL, optional))
}

/// The side of a whole room: less than 2 ft of it is feet that were read as inches.
const fn side(label: &'static Phrase, hint: &'static Phrase) -> Row {
    row(label, hint, length(24, LONGEST, &w::WHY_WALL, false))
}

/// How its outline is put in.
pub(crate) const SHAPE: Row = row(&w::SHAPE, &w::SHAPE_HINT, Kind::Choice(Shape::PICKS));
/// Along wall 1.
pub(crate) const LONG: Row = side(&w::LONG, &w::LONG_HINT).when(When::IsNot("shape", &["walk"]));
/// Square to wall 1.
pub(crate) const WIDE: Row = side(&w::WIDE, &w::WIDE_HINT).when(When::IsNot("shape", &["walk"]));
/// An L's notch, along wall 1.
pub(crate) const NOTCH_LONG: Row =
    outline(&w::NOTCH_LONG, &w::NOTCH_HINT, false).when(When::Is("shape", &["l"]));
/// An L's notch, across.
pub(crate) const NOTCH_WIDE: Row =
    outline(&w::NOTCH_WIDE, &w::NOTHING, false).when(When::Is("shape", &["l"]));
/// A T's leg, along wall 1.
pub(crate) const LEG_WIDE: Row =
    outline(&w::LEG_WIDE, &w::LEG_HINT, false).when(When::Is("shape", &["t"]));
/// A T's leg, from the bar to its end.
pub(crate) const LEG_LONG: Row =
    outline(&w::LEG_LONG, &w::NOTHING, false).when(When::Is("shape", &["t"]));
/// How far the leg stands in from where wall 1 starts; in the middle if blank.
pub(crate) const LEG_OFF: Row =
    outline(&w::LEG_OFF, &w::OFF_HINT, true).when(When::Is("shape", &["t"]));
/// A U's gap, along wall 1.
pub(crate) const GAP_LONG: Row =
    outline(&w::GAP_LONG, &w::GAP_HINT, false).when(When::Is("shape", &["u"]));
/// A U's gap, how far it reaches in.
pub(crate) const GAP_DEEP: Row =
    outline(&w::GAP_DEEP, &w::NOTHING, false).when(When::Is("shape", &["u"]));
/// How far the gap stands in from where wall 1 starts; in the middle if blank.
pub(crate) const GAP_OFF: Row =
    outline(&w::GAP_OFF, &w::OFF_HINT, true).when(When::Is("shape", &["u"]));
/// Wall by wall.
pub(crate) const WALKED: Row =
    row(&w::WALLS, &w::WALLS_HINT, Kind::List(&WALLS)).when(When::Is("shape", &["walk"]));

/// The same rows where a question lies in a room and takes its outline from one: the shape goes by the
/// figures that the room has, so that an L is never taken for a rectangle.
pub(crate) mod taken {
    use super::Row;

    /// How its outline is put in.
    pub(crate) const SHAPE: Row = super::SHAPE.by_figures(&[
        ("longest", "rectangle"),
        ("notch-long", "l"),
        ("leg-long", "t"),
        ("gap-long", "u"),
    ]);
    /// Along wall 1.
    pub(crate) const LONG: Row = super::LONG.of_room("longest").also("outline-long");
    /// Square to wall 1.
    pub(crate) const WIDE: Row = super::WIDE.of_room("widest").also("outline-wide");
    /// An L's notch, along wall 1.
    pub(crate) const NOTCH_LONG: Row = super::NOTCH_LONG.of_room("notch-long");
    /// An L's notch, across.
    pub(crate) const NOTCH_WIDE: Row = super::NOTCH_WIDE.of_room("notch-wide");
    /// A T's leg, along wall 1.
    pub(crate) const LEG_WIDE: Row = super::LEG_WIDE.of_room("leg-wide");
    /// A T's leg, from the bar to its end.
    pub(crate) const LEG_LONG: Row = super::LEG_LONG.of_room("leg-long");
    /// How far the leg stands in from where wall 1 starts.
    pub(crate) const LEG_OFF: Row = super::LEG_OFF.of_room("leg-off");
    /// A U's gap, along wall 1.
    pub(crate) const GAP_LONG: Row = super::GAP_LONG.of_room("gap-long");
    /// A U's gap, how far it reaches in.
    pub(crate) const GAP_DEEP: Row = super::GAP_DEEP.of_room("gap-deep");
    /// How far the gap stands in from where wall 1 starts.
    pub(crate) const GAP_OFF: Row = super::GAP_OFF.of_room("gap-off");
}
