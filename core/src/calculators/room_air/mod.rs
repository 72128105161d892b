//! Air for a room: what its sensible heat asks for, at its altitude; its share of the system; how
//! often it changes.

mod sheet;
mod words;

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::fields::{Kind, Row, Span, When, row};
use crate::measure::unit::{
    AIR_HEAT, ALTITUDE, BTUH, CFM, DEGREES, NUMBER, PER_HOUR, PERCENT, R_VALUE,
};
use crate::measure::{Area, Length, Measure, Unit, Volume};
use crate::rules::air::jets::measured;
use crate::rules::air::room_heat::{Glass, Wall, thinned};
use crate::rules::residential::heat::{through, with_air};
use crate::say;
use crate::sheet::{Caution, Expr, Fault, Faults, Sheet};
use crate::words::Phrase;
use crate::{choice, form};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct RoomAir;

choice! {
    /// How its heat is known.
    pub enum By {
        /// From a load calculation.
        Load = "load", w::KNOWN;
        /// By its walls, glass, ceiling and leaks.
        Rough = "rough", w::ROUGH;
    }
}

/// In hundredths of a unit.
const fn measure(
    unit: &'static Unit,
    [least, most]: [i64; 2],
    why: &'static Phrase,
    optional: bool,
) -> Kind {
    let (least, most) = (Measure::hundredths(unit, least), Measure::hundredths(unit, most));
    Kind::Measure(Span { least, most, why, common: &[], optional })
}

/// In inches.
const fn length(most: i64, why: &'static Phrase) -> Kind {
    let (least, most) = (Length::ZERO, Length::inches(most, 1));
    Kind::Length(Span { least, most, why, common: &[], optional: false })
}

const fn area(least: i64, why: &'static Phrase) -> Kind {
    let (least, most) = (Area::square_feet(least), Area::square_feet(2500));
    Kind::Area(Span { least, most, why, common: &[], optional: false })
}

/// A cubic foot.
const FOOT: Volume = Volume::hundredths(172_800);
const ROUGH: When = When::Is("by", &["rough"]);

const fn rough(label: &'static Phrase, hint: &'static Phrase, kind: Kind) -> Row {
    row(label, hint, kind).when(ROUGH)
}

form! {
    /// A room and its heat.
    pub struct Input {
        /// How its heat is known.
        by: By, row(&w::BY, &w::BY_HINT, Kind::Choice(By::PICKS));
        /// Its sensible load.
        load: Measure = Measure::whole(&BTUH, 3000), row(&w::LOAD, &w::LOAD_HINT, measure(&BTUH, [1_000, 10_000_000], &w::WHY_LOAD, false)).when(When::Is("by", &["load"])).measured();
        /// Supply against room.
        difference: Measure = Measure::whole(&DEGREES, 20), row(&w::DIFFERENCE, &w::DIFFERENCE_HINT, measure(&DEGREES, [100, 10_000], &w::WHY_DIFFERENCE, false)).when(When::Is("by", &["load"]));
        /// Supply against room, heating, of a rough reckoning.
        warm: Measure = Measure::whole(&DEGREES, 45), rough(&w::WARM, &w::WARM_HINT, measure(&DEGREES, [100, 10_000], &w::WHY_DIFFERENCE, false));
        /// Above the sea.
        altitude: Measure = Measure::whole(&ALTITUDE, 0), row(&w::ALTITUDE, &w::NOTHING, measure(&ALTITUDE, [-50_000, 1_200_000], &w::WHY_ALTITUDE, false));
        /// Its floor.
        floor: Area = Area::square_feet(168), row(&w::FLOOR, &w::NOTHING, area(1, &w::WHY_FLOOR)).of_room("floor-area");
        /// Floor to ceiling.
        height: Length = Length::inches(96, 1), row(&w::HEIGHT, &w::NOTHING, Kind::Length(Span {
            least: Length::inches(36, 1), most: Length::inches(480, 1), why: &w::WHY_HEIGHT, common: &[], optional: false,
        })).of_room("ceiling-height").rather("ceiling-height-to-be");
        /// What it holds, where that isn't floor times height.
        volume: Option<Volume>, row(&w::VOLUME, &w::VOLUME_HINT, Kind::Room(Span {
            least: FOOT, most: FOOT.times(100_000), why: &w::WHY_FLOOR, common: &[], optional: true,
        })).of_room("volume").rather("volume-to-be");
        /// Room against outdoors.
        outside: Measure = Measure::whole(&DEGREES, 60), rough(&w::OUTSIDE, &w::OUTSIDE_HINT, measure(&DEGREES, [100, 15_000], &w::WHY_OUTSIDE, false)).measured();
        /// Outside walls, end to end.
        run: Length, rough(&w::RUN, &w::NOTHING, length(2400, &w::WHY_RUN)).of_room("outside-walls");
        /// What they are.
        wall: Wall, rough(&w::WALL, &w::NOTHING, Kind::Choice(Wall::PICKS));
        /// Windows in them.
        windows: Area, rough(&w::GLASS_AREA, &w::NOTHING, area(0, &w::WHY_FLOOR));
        /// Their glass.
        glass: Glass, rough(&w::GLASS, &w::NOTHING, Kind::Choice(Glass::PICKS));
        /// What is over the ceiling, if the attic is.
        attic: Option<Measure>, rough(&w::ATTIC, &w::ATTIC_HINT, measure(&R_VALUE, [100, 10_000], &w::WHY_ATTIC, true));
        /// Changes by leaks.
        leaks: Measure = Measure::hundredths(&PER_HOUR, 50), rough(&w::LEAKS, &w::LEAKS_HINT, measure(&PER_HOUR, [0, 500], &w::WHY_LEAKS, false));
        /// All that the system moves.
        system: Option<Measure>, row(&w::SYSTEM, &w::SYSTEM_HINT, measure(&CFM, [5_000, 500_000], &w::WHY_SYSTEM, true));
        /// All that the house loses or takes in.
        house: Option<Measure>, row(&w::HOUSE, &w::HOUSE_HINT, measure(&BTUH, [10_000, 50_000_000], &w::WHY_LOAD, true));
    }
    sample { run: Length::inches(312, 1), windows: Area::square_feet(24) }
}

impl Input {
    /// Supply against room, as its heat is reckoned.
    pub fn apart(&self) -> Measure {
        if self.by == By::Rough { self.warm } else { self.difference }
    }
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// Its heat: what was given, or the sum of the losses.
    pub heat: Measure,
    /// Through walls, glass, ceiling and by leaks, of a rough reckoning.
    pub losses: Vec<(&'static str, &'static Phrase, Expr)>,
    /// Density of air against sea level.
    pub density: Measure,
    /// What 1 cfm carries in an hour at 1 °F.
    pub carries: Measure,
    /// cfm.
    pub air: Measure,
    /// In the room.
    pub volume: Volume,
    /// Of the room's air in an hour.
    pub changes: Measure,
    /// cfm for 1 sq ft.
    pub a_foot: Measure,
    /// Of the system's air, by the loads, where both are known.
    pub given: Option<Measure>,
}

impl Calculator for RoomAir {
    const ID: &'static str = "room-air";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::Air;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = false;
    type Input = Input;
    type Answer = Answer;

    fn sample() -> Input {
        Input::sample()
    }

    fn solve(input: &Input, _: Basis) -> Result<Answer, Faults> {
        solve(input)
    }

    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        Caution::all(&[(&w::NO_SIZING, None), (&w::STARVE, None), (&w::FLUE, None)])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Works a room.
///
/// - Air: `load ÷ (1.08 × density × °F)`, density by altitude.
/// - Rough heat: `U × area × °F` for walls less glass, glass and ceiling, and leaks.
/// - Share: the system's air × the room's load ÷ the house's.
///
/// # Errors
/// More glass than outside wall; a room that loses more than its house.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    let none = |unit| Measure::whole(unit, 0);
    let of = |unit, expr| measured(expr).unwrap_or(none(unit));
    let density = thinned(input.altitude).unwrap_or(Measure::whole(&PERCENT, 100));
    let carries = of(&AIR_HEAT, sheet::carries(density));
    let volume = input.volume.unwrap_or_else(|| Volume::over(input.floor, input.height));
    let mut losses = Vec::new();
    if input.by == By::Rough {
        let walls = Area::of(input.run, input.height);
        if input.windows > walls {
            let says = say!(w::TOO_MUCH_GLASS, input.windows, walls);
            return Err(fault("windows", &w::GLASS_AREA, input.windows.exact(), says));
        }
        let walls = walls.minus(input.windows);
        losses.push((
            "walls-lose",
            &w::WALLS_LOSE,
            through(input.wall.u(), Expr::area(walls), input.outside),
        ));
        let glass = through(input.glass.u(), Expr::area(input.windows), input.outside);
        losses.push(("glass-loses", &w::GLASS_LOSES, glass));
        if let Some(r) = input.attic {
            let warm = Expr::area(input.floor).times(Expr::measure(input.outside));
            let ceiling = warm.over(Expr::measure(r)).told_in(&BTUH);
            losses.push(("ceiling-loses", &w::CEILING_LOSES, ceiling));
        }
        let air = Expr::Is(crate::words::Amount::Room(volume));
        let leaks = with_air(input.leaks, air, carries, input.outside);
        losses.push(("leaks-lose", &w::LEAKS_LOSE, leaks));
    }
    let mut heat = if losses.is_empty() { input.load } else { none(&BTUH) };
    for (_, _, loss) in &losses {
        let loss = of(&BTUH, loss.clone());
        heat = heat.of_same(heat.millionths().saturating_add(loss.millionths()));
    }
    let mut answer = Answer {
        heat,
        losses,
        density,
        carries,
        air: none(&CFM),
        volume,
        changes: none(&PER_HOUR),
        a_foot: none(&NUMBER),
        given: None,
    };
    answer.air = of(&CFM, sheet::air(input, &answer));
    answer.changes = of(&PER_HOUR, sheet::changes(&answer));
    let feet =
        input.floor.square_nanometres() as f64 / Area::square_feet(1).square_nanometres() as f64;
    answer.a_foot = Measure::nearest(&NUMBER, answer.air.number() / feet).unwrap_or(answer.a_foot);
    if let (Some(system), Some(house)) = (input.system, input.house) {
        if heat > house {
            let says = say!(w::MORE_THAN_HOUSE, heat);
            return Err(fault("house", &w::HOUSE, house.exact(), says));
        }
        answer.given = measured(sheet::given(heat, house, system));
    }
    Ok(answer)
}

fn fault(path: &str, label: &'static Phrase, given: String, says: crate::words::Text) -> Faults {
    vec![Fault { path: path.to_owned(), label, given, says }]
}

#[cfg(test)]
mod tests;
