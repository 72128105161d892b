//! What is put in: the new wall and air, the climate, the ceiling, and what is blown onto it.

use super::words as w;
use crate::choice;
use crate::fields::{Form, Kind, Row, Span, When, row};
use crate::form;
use crate::measure::{Area, Measure, Unit, Volume, unit};
use crate::rules::residential::blown::{Board, Fill};
use crate::rules::residential::insulation::Zone;
use crate::words::Phrase;

choice! {
    /// What is behind the new wall.
    pub enum Behind {
        /// The weather.
        Outside = "outside", w::OUTSIDE;
        /// As cold as outside, to be careful.
        Attic = "attic", w::ATTIC;
        /// Nothing goes through.
        Heated = "heated", w::HEATED;
    }
}

choice! {
    /// How a wall's hold on heat is told.
    pub enum By {
        /// Resistance.
        R = "r", w::BY_R;
        /// Its inverse.
        U = "u", w::BY_U;
    }
}

/// In hundredths of a unit.
const fn measure(
    unit: &'static Unit,
    (least, most): (i64, i64),
    why: &'static Phrase,
    optional: bool,
) -> Kind {
    let (least, most) = (Measure::hundredths(unit, least), Measure::hundredths(unit, most));
    Kind::Measure(Span { least, most, why, common: &[], optional })
}

const fn r(label: &'static Phrase, hint: &'static Phrase) -> Row {
    row(label, hint, measure(&unit::R_VALUE, (50, 10_000), &w::WHY_R, false))
}

const fn degrees(label: &'static Phrase, hint: &'static Phrase, least: i64, optional: bool) -> Row {
    row(label, hint, measure(&unit::DEGREES, (least, 15_000), &w::WHY_DEGREES, optional))
}

const fn area(label: &'static Phrase, hint: &'static Phrase, optional: bool) -> Row {
    let (least, most) = (Area::ZERO, Area::square_feet(10_000));
    row(label, hint, Kind::Area(Span { least, most, why: &w::WHY_AREA, common: &[], optional }))
}

/// A cubic foot.
const FOOT: Volume = Volume::hundredths(172_800);
const COUNTED: When = When::Yes("count");
const FILLED: When = When::IsNot("kind", &["not-said"]);

const PASSES: When = When::IsNot("behind", &["heated"]);

form! {
    /// What is behind a wall, and how well it holds heat.
    pub struct Holds {
        /// What is behind it.
        behind: Behind, row(&w::BEHIND, &w::NOTHING, Kind::Choice(Behind::PICKS));
        /// So much of it is beside heated rooms.
        inside: Option<Area>, area(&w::INSIDE, &w::INSIDE_HINT, true).when(PASSES);
        /// How it is told.
        by: By, row(&w::BY, &w::NOTHING, Kind::Choice(By::PICKS)).when(PASSES);
        /// R.
        r: Option<Measure>, r(&w::R, &w::R_HINT).when(When::All(&[PASSES, When::Is("by", &["r"])]));
        /// U.
        u: Option<Measure>, row(&w::U, &w::NOTHING, measure(&unit::U_VALUE, (0, 200), &w::WHY_U, false))
            .when(When::All(&[PASSES, When::Is("by", &["u"])]));
    }
}

form! {
    /// The ceiling, before and after.
    pub struct Ceiling {
        /// Whether it counts.
        count: bool, row(&w::COUNT, &w::NOTHING, Kind::Flag);
        /// Its area now.
        old_area: Option<Area>, area(&w::OLD_AREA, &w::NOTHING, false).when(COUNTED);
        /// Its R now.
        old_r: Option<Measure>, r(&w::OLD_R, &w::OLD_R_HINT).when(COUNTED);
        /// Its area to be.
        area: Option<Area>, area(&w::NEW_AREA, &w::NOTHING, false).when(COUNTED);
        /// Its R to be.
        r: Option<Measure>, r(&w::NEW_R, &w::NOTHING).when(COUNTED);
        /// Where the house stands.
        zone: Zone, row(&w::ZONE, &w::ZONE_HINT, Kind::Choice(Zone::PICKS)).when(COUNTED);
    }
}

form! {
    /// What is blown onto the ceiling.
    pub struct Blown {
        /// What it is.
        kind: Fill, row(&w::KIND, &w::NOTHING, Kind::Choice(Fill::PICKS));
        /// How much R.
        r: Option<Measure>, r(&w::WANTED, &w::NOTHING).when(FILLED);
        /// R an inch, from the bag.
        per_inch: Option<Measure>, row(&w::PER_INCH, &w::PER_INCH_HINT, measure(&unit::R_PER_INCH, (100, 800), &w::WHY_PER_INCH, true)).when(FILLED);
        /// Weight, from the bag.
        density: Option<Measure>, row(&w::DENSITY, &w::DENSITY_HINT, measure(&unit::PCF, (10, 800), &w::WHY_DENSITY, true)).when(FILLED);
        /// What it lies on.
        board: Board, row(&w::BOARD, &w::NOTHING, Kind::Choice(Board::PICKS)).when(FILLED);
    }
}

form! {
    /// What a raised ceiling changes.
    pub struct Input {
        /// The new wall.
        wall: Option<Area>, area(&w::WALL, &w::WALL_HINT, false).of_mark("raising", "infill");
        /// What is behind it, and how well it holds heat.
        holds: Holds = Holds::blank(), row(&w::HOLDS, &w::HOLDS_HINT, Kind::Group(Holds::ROWS));
        /// The new air.
        air: Option<Volume>, row(&w::AIR, &w::AIR_HINT, Kind::Room(Span {
            least: Volume::ZERO, most: FOOT.times(1_000_000), why: &w::WHY_AREA, common: &[], optional: false,
        })).of_mark("raising", "air-added");
        /// How often it changes.
        changes: Measure = Measure::hundredths(&unit::PER_HOUR, 50), row(&w::CHANGES, &w::CHANGES_HINT, measure(&unit::PER_HOUR, (0, 1_000), &w::WHY_CHANGES, false));
        /// Inside over outside.
        heating: Option<Measure>, degrees(&w::HEATING, &w::HEATING_HINT, 0, false);
        /// Outside over inside.
        cooling: Option<Measure>, degrees(&w::COOLING, &w::COOLING_HINT, 0, true);
        /// Register over room.
        supply_heat: Option<Measure>, degrees(&w::SUPPLY_HEAT, &w::SUPPLY_HEAT_HINT, 500, true);
        /// Register under room.
        supply_cool: Option<Measure>, degrees(&w::SUPPLY_COOL, &w::SUPPLY_COOL_HINT, 500, true);
        /// The ceiling.
        ceiling: Ceiling = Ceiling::blank(), row(&w::CEILING, &w::CEILING_HINT, Kind::Group(Ceiling::ROWS));
        /// What is blown onto it.
        blown: Blown = Blown::blank(), row(&w::FILL, &w::FILL_HINT, Kind::Group(Blown::ROWS));
    }
    sample {
        wall: Some(Area::square_feet(32)),
        holds: Holds { by: By::U, u: Some(Measure::new(&unit::U_VALUE, 82_000)), ..Holds::blank() },
        air: Some(FOOT.times(252)),
        heating: Some(Measure::whole(&unit::DEGREES, 60)),
        cooling: Some(Measure::whole(&unit::DEGREES, 20)),
        supply_heat: Some(Measure::whole(&unit::DEGREES, 50)),
        supply_cool: Some(Measure::whole(&unit::DEGREES, 20)),
    }
}
