//! What is put in: the old framing, what is wanted, the room, the walls, and what hangs in the way.

use super::choices::{By, Carries, How, Known, OldCeiling, Ridge, Room, Shape};
use super::words as w;
use crate::fields::{Form, Kind, Row, Span, When, row};
use crate::form;
use crate::measure::{Area, Length, Measure, unit};
use crate::rules::framing::overhead::Overhead;
use crate::rules::framing::precut;
use crate::words::Phrase;

const fn span(
    (over, under): (i64, i64),
    most: i64,
    why: &'static Phrase,
    common: &'static [Length],
    optional: bool,
) -> Kind {
    let least = Length::inches(over, under);
    Kind::Length(Span { least, most: Length::inches(most, 1), why, common, optional })
}

/// Boards as they are sold. Common practice.
const BOARDS: &[Length] = &[Length::inches(3, 8), Length::inches(1, 2), Length::inches(5, 8)];

const fn board(label: &'static Phrase, hint: &'static Phrase) -> Row {
    row(label, hint, span((0, 1), 4, &w::WHY_BOARD, BOARDS, false))
}

/// No room is less, and a bare 14 is inches.
const LEAST_SIDE: (i64, i64) = (36, 1);

const fn side(label: &'static Phrase, hint: &'static Phrase) -> Row {
    row(label, hint, span(LEAST_SIDE, 1200, &w::WHY_SIDE, &[], false))
}

/// One that only a check of its own hangs on.
const fn aside(label: &'static Phrase, hint: &'static Phrase) -> Row {
    row(label, hint, span((0, 1), 480, &w::WHY_HEIGHT, &[], true)).aside()
}

const FLAT: When = When::Is("shape", &["flat"]);
const VAULTED: When = When::Is("shape", &["gable", "shed"]);

form! {
    /// What is wanted.
    pub struct Goal {
        /// How it is said.
        by: By, row(&w::BY, &w::NOTHING, Kind::Choice(By::PICKS));
        /// Finished, over the finished floor.
        height: Option<Length>, row(&w::HEIGHT, &w::HEIGHT_HINT, span((48, 1), 360, &w::WHY_HEIGHT, &[], false)).of_room("ceiling-height-to-be")
            .when(When::Is("by", &["height"]));
        /// More than it is now, finish to finish.
        raise: Option<Length>, row(&w::RAISE, &w::RAISE_HINT, span((1, 16), 240, &w::WHY_HEIGHT, &[], false))
            .when(When::Is("by", &["raise"]));
    }
}

form! {
    /// The walls that go up.
    pub struct Wall {
        /// How.
        how: How, row(&w::HOW, &w::HOW_HINT, Kind::Choice(How::PICKS));
        /// Plates under and over the short wall.
        added: i64 = 3, row(&w::ADDED, &w::ADDED_HINT, Kind::Count { least: 1, most: 4, why: &w::WHY_PLATES })
            .when(When::Is("how", &["stacked"]));
        /// What they do.
        carries: Carries, row(&w::CARRIES, &w::CARRIES_HINT, Kind::Choice(Carries::PICKS));
        /// Studs apart; 16 in if blank.
        spacing: Option<Length>, row(&w::SPACING, &w::SPACING_HINT, span((1, 1), 48, &w::WHY_SPACING, &[Length::inches(16, 1), Length::inches(24, 1)], true));
    }
}

form! {
    /// What hangs or stands in the way.
    pub struct Clear {
        /// From the ceiling down to the blades of a fan.
        fan: Option<Length>, aside(&w::FAN, &w::FAN_HINT);
        /// From the floor up to a beam or duct that stays.
        beam: Option<Length>, aside(&w::BEAM, &w::BEAM_HINT);
        /// From the subfloor up to the header over a door.
        door: Option<Length>, aside(&w::DOOR, &w::DOOR_HINT);
    }
}

form! {
    /// A ceiling that is to go up.
    pub struct Input {
        /// The new ceiling.
        shape: Shape, row(&w::SHAPE, &w::NOTHING, Kind::Choice(Shape::PICKS));
        /// What was measured.
        known: Known, row(&w::KNOWN, &w::KNOWN_HINT, Kind::Choice(Known::PICKS));
        /// An old stud.
        stud: Option<Length>, row(&w::STUD, &w::STUD_HINT, span((36, 1), 240, &w::WHY_STUD, &precut::LENGTHS, false))
            .when(When::Is("known", &["stud"]));
        /// From the subfloor to the underside of the joists.
        framing: Option<Length>, row(&w::FRAMING, &w::FRAMING_HINT, span((36, 1), 300, &w::WHY_STUD, &[], false))
            .when(When::Is("known", &["framing"]));
        /// Plates, bottom and top.
        plates: i64 = 3, row(&w::PLATES, &w::PLATES_HINT, Kind::Count { least: 2, most: 5, why: &w::WHY_PLATES });
        /// One old plate; dressed if blank.
        old_plate: Option<Length>, row(&w::OLD_PLATE, &w::OLD_PLATE_HINT, span((1, 2), 4, &w::WHY_PLATES, &[], true))
            .when(When::Is("known", &["stud"]));
        /// All that is under the joists now.
        board: Option<Length>, board(&w::OLD_BOARD, &w::OLD_BOARD_HINT);
        /// All that will be.
        new_board: Option<Length>, board(&w::NEW_BOARD, &w::NOTHING)
            .when(When::Is("shape", &["flat", "tray"]));
        /// All that is over the subfloor.
        floor_finish: Option<Length>, row(&w::FLOOR_FINISH, &w::NOTHING, span((0, 1), 6, &w::WHY_BOARD, &[Length::inches(3, 4)], false));
        /// What is wanted.
        to: Goal = Goal::blank(), row(&w::TO, &w::NOTHING, Kind::Group(Goal::ROWS))
            .when(When::Is("shape", &["flat", "tray"]));
        /// The room's length.
        long: Option<Length>, side(&w::LONG, &w::LONG_HINT).of_room("longest");
        /// Its width.
        wide: Option<Length>, side(&w::WIDE, &w::NOTHING).of_room("widest");
        /// Its floor, where it is no rectangle.
        floor: Option<Area>, row(&w::FLOOR, &w::FLOOR_HINT, Kind::Area(Span {
            least: Area::square_feet(1), most: Area::square_feet(10_000), why: &w::WHY_SIDE, common: &[], optional: true,
        })).of_room("floor-area").when(FLAT);
        /// The walls that go up, end to end, where they aren't all four.
        perimeter: Option<Length>, row(&w::PERIMETER, &w::PERIMETER_HINT, span(LEAST_SIDE, 4800, &w::WHY_SIDE, &[], true))
            .when(FLAT);
        /// From the walls to where a tray starts.
        border: Option<Length>, row(&w::BORDER, &w::BORDER_HINT, span((6, 1), 240, &w::WHY_SIDE, &[], false))
            .when(When::Is("shape", &["tray"]));
        /// The border's old board isn't touched.
        keeps: bool, row(&w::KEEPS, &w::KEEPS_HINT, Kind::Flag).when(When::Is("shape", &["tray"]));
        /// How far a tray's sides lean in; plumb if blank.
        lean: Option<Length>, row(&w::LEAN, &w::LEAN_HINT, span((0, 1), 240, &w::WHY_SIDE, &[], true))
            .when(When::Is("shape", &["tray"]));
        /// A vault's rise in 12 in of run.
        pitch: Option<Measure>, row(&w::PITCH, &w::PITCH_HINT, Kind::Measure(Span {
            least: Measure::hundredths(&unit::PITCH, 25), most: Measure::whole(&unit::PITCH, 24), why: &w::WHY_PITCH, common: &[], optional: false,
        })).when(VAULTED);
        /// Which way the ridge runs.
        ridge: Ridge, row(&w::RIDGE, &w::NOTHING, Kind::Choice(Ridge::PICKS))
            .when(VAULTED);
        /// What the room is for.
        room: Room, row(&w::ROOM, &w::NOTHING, Kind::Choice(Room::PICKS));
        /// What is over the ceiling.
        overhead: Overhead, row(&w::OVERHEAD, &w::OVERHEAD_HINT, Kind::Choice(Overhead::PICKS));
        /// What comes down.
        old: OldCeiling, row(&w::OLD, &w::OLD_HINT, Kind::Choice(OldCeiling::PICKS));
        /// The walls that go up.
        wall: Wall = Wall::blank(), row(&w::WALL, &w::NOTHING, Kind::Group(Wall::ROWS))
            .when(FLAT);
        /// What hangs in the way.
        clear: Clear = Clear::blank(), row(&w::CLEAR, &w::CLEAR_HINT, Kind::Group(Clear::ROWS));
    }
    sample {
        stud: Some(Length::inches(741, 8)),
        board: Some(Length::inches(5, 8)),
        new_board: Some(Length::inches(5, 8)),
        floor_finish: Some(Length::inches(3, 4)),
        to: Goal { height: Some(Length::inches(105, 1)), ..Goal::blank() },
        long: Some(Length::inches(168, 1)),
        wide: Some(Length::inches(144, 1)),
        wall: Wall { spacing: Some(Length::inches(16, 1)), ..Wall::blank() },
    }
}
