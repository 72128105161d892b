//! What is put in: the room, the register, its places, and what else stands in the room.

use super::words as w;
use crate::calculators::room::{Shape, Walked, rows};
use crate::fields::{Form, Item, Kind, Preset, Row, Span, When, row};
use crate::measure::unit::{CFM, DEGREES};
use crate::measure::{Length, Measure, Unit};
use crate::rules::air::jets::{Outlet, Vanes};
use crate::rules::air::register_sizes::Size;
use crate::words::Phrase;
use crate::{choice, form};

choice! {
    /// Where a register is put.
    pub enum Place {
        /// Under the ceiling.
        HighWall = "high-wall", w::HIGH_WALL;
        /// In the floor.
        Floor = "floor", w::FLOOR;
        /// In the ceiling, to all sides.
        Round = "ceiling", w::ROUND;
        /// In the ceiling, to one.
        Slot = "slot", w::SLOT;
    }
}

impl Place {
    /// What it is there.
    pub const fn outlet(self) -> Outlet {
        match self {
            Self::HighWall => Outlet::HighWall,
            Self::Floor => Outlet::Floor,
            Self::Round => Outlet::Round,
            Self::Slot => Outlet::Slot,
        }
    }

    /// Whether it blows toward one wall.
    pub const fn is_aimed(self) -> bool {
        matches!(self, Self::HighWall | Self::Slot)
    }
}

choice! {
    /// Which way it blows in the drawing, wall 1 on top.
    pub enum Aim {
        /// Away from wall 1's start.
        Right = "right", w::RIGHT;
        /// Toward wall 1.
        Up = "up", w::UP;
        /// Away from it.
        Down = "down", w::DOWN;
        /// Toward wall 1's start.
        Left = "left", w::LEFT;
    }
}

choice! {
    /// When its air has to do its work.
    pub enum Season {
        /// All year.
        Both = "both", w::BOTH_SEASONS;
        /// In summer.
        Cooling = "cooling", w::COOLING;
        /// In winter.
        Heating = "heating", w::HEATING;
    }
}

/// In inches.
const fn length([least, most]: [i64; 2], why: &'static Phrase) -> Kind {
    let (least, most) = (Length::inches(least, 1), Length::inches(most, 1));
    Kind::Length(Span { least, most, why, common: &[], optional: false })
}

/// In hundredths of a unit.
const fn measure(unit: &'static Unit, [least, most]: [i64; 2], why: &'static Phrase) -> Kind {
    let (least, most) = (Measure::hundredths(unit, least), Measure::hundredths(unit, most));
    Kind::Measure(Span { least, most, why, common: &[], optional: false })
}

const fn place(label: &'static Phrase) -> Row {
    row(label, &w::NOTHING, length([0, 2400], &w::WHY_ROOM))
}

form! {
    /// Where something else stands, if there is one.
    pub struct At {
        /// There is one.
        there: bool, row(&w::IS_THERE, &w::NOTHING, Kind::Flag);
        /// From the left.
        x: Option<Length>, place(&w::FROM_LEFT).when(When::Yes("there"));
        /// From the top.
        y: Option<Length>, place(&w::FROM_TOP).when(When::Yes("there"));
    }
}

form! {
    /// A place for the register.
    pub struct Spot {
        /// What it is called.
        name: String, row(&w::LABEL, &w::LABEL_HINT, Kind::Text(30));
        /// Where it is put.
        place: Place, row(&w::PLACE, &w::NOTHING, Kind::Choice(Place::PICKS));
        /// From the left.
        x: Option<Length>, place(&w::FROM_LEFT);
        /// From the top.
        y: Option<Length>, place(&w::FROM_TOP);
        /// Which way it blows.
        aim: Aim, row(&w::AIM, &w::NOTHING, Kind::Choice(Aim::PICKS)).when(When::Is("place", &["high-wall", "slot"]));
    }
}

impl At {
    /// Where; it is asked for, so that nothing is worked from one that nobody put in.
    pub fn at(&self) -> Option<[Length; 2]> {
        if self.there { Some([self.x?, self.y?]) } else { None }
    }
}

impl Spot {
    /// Where; it is asked for.
    pub fn at(&self) -> [Length; 2] {
        [self.x, self.y].map(Option::unwrap_or_default)
    }
}

static SPOTS: Item = Item {
    name: &w::SPOT,
    rows: Spot::ROWS,
    most: 4,
    blank: || Spot::blank().write_parts(),
    presets: &[
        Preset { label: &w::HIGH_WALL, sets: &[("place", "high-wall")] },
        Preset { label: &w::ROUND, sets: &[("place", "ceiling")] },
        Preset { label: &w::SLOT, sets: &[("place", "slot")] },
        Preset { label: &w::FLOOR, sets: &[("place", "floor")] },
    ],
};

const fn other(label: &'static Phrase, hint: &'static Phrase) -> Row {
    row(label, hint, Kind::Group(At::ROWS))
}

form! {
    /// A room with places for its register.
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
        /// Floor to ceiling.
        high: Length = Length::inches(96, 1), row(&w::HIGH, &w::NOTHING, length([72, 240], &w::WHY_ROOM)).of_room("ceiling-height").rather("ceiling-height-to-be");
        /// Its places; the first is today's.
        spots: Vec<Spot>, row(&w::SPOTS, &w::SPOTS_HINT, Kind::List(&SPOTS));
        /// Its nominal size, on a wall, in the floor or as a slot.
        size: Size, row(&w::SIZE, &w::NOTHING, Kind::Choice(Size::PICKS));
        /// How its vanes stand.
        vanes: Vanes, row(&w::VANES, &w::NOTHING, Kind::Choice(Vanes::PICKS));
        /// Across its neck, all round in the ceiling.
        neck: Length = Length::inches(6, 1), row(&w::NECK, &w::NOTHING, length([1, 24], &w::WHY_NECK));
        /// Its top below the ceiling, high on a wall.
        gap: Length = Length::inches(6, 1), row(&w::GAP, &w::GAP_HINT, length([0, 48], &w::WHY_GAP));
        /// Its air.
        cfm: Measure = Measure::whole(&CFM, 80), row(&w::CFM, &w::NOTHING, measure(&CFM, [500, 200_000], &w::WHY_CFM));
        /// Whether that is a guess.
        guess: bool = true, row(&w::GUESS, &w::GUESS_HINT, Kind::Flag);
        /// When it has to do its work.
        season: Season, row(&w::SEASON, &w::SEASON_HINT, Kind::Choice(Season::PICKS));
        /// Supply against room, cooling.
        cool: Measure = Measure::whole(&DEGREES, 20), row(&w::COOL, &w::NOTHING, measure(&DEGREES, [100, 10_000], &w::WHY_DIFFERENCE)).when(When::IsNot("season", &["heating"]));
        /// Supply against room, heating.
        warm: Measure = Measure::whole(&DEGREES, 40), row(&w::WARM, &w::NOTHING, measure(&DEGREES, [100, 10_000], &w::WHY_DIFFERENCE)).when(When::Is("season", &["heating"]));
        /// The return.
        back: At = At::blank(), other(&w::RETURN, &w::NOTHING);
        /// The smoke alarm.
        alarm: At = At::blank(), other(&w::ALARM, &w::NOTHING);
        /// The window.
        window: At = At::blank(), other(&w::WINDOW, &w::WINDOW_HINT);
        /// An appliance with an open flue.
        flue: At = At::blank(), other(&w::FLUE, &w::FLUE_HINT);
        /// The thermostat.
        thermostat: At = At::blank(), other(&w::THERMOSTAT, &w::NOTHING);
    }
    sample {
        long: Some(Length::inches(168, 1)),
        wide: Some(Length::inches(144, 1)),
        spots: vec![
            Spot { name: "today".to_owned(), place: Place::Floor, x: Some(Length::inches(84, 1)), y: Some(Length::inches(132, 1)), aim: Aim::Right },
            Spot { name: "inside wall".to_owned(), place: Place::HighWall, x: Some(Length::inches(84, 1)), y: Some(Length::ZERO), aim: Aim::Down },
            Spot { name: "middle of the ceiling".to_owned(), place: Place::Round, x: Some(Length::inches(84, 1)), y: Some(Length::inches(72, 1)), aim: Aim::Right },
        ],
        window: At { there: true, x: Some(Length::inches(84, 1)), y: Some(Length::inches(144, 1)) },
        alarm: At { there: true, x: Some(Length::inches(150, 1)), y: Some(Length::inches(24, 1)) },
        back: At { there: true, x: Some(Length::inches(20, 1)), y: Some(Length::ZERO) },
    }
}
