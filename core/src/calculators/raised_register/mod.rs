//! The same register after the ceiling goes up: throw, drop, added heat and air changes.

mod drawing;
mod sheet;
mod words;

use super::register_throw::{self, Along, Know, Temperature};
use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::fields::{Kind, Row, Span, row};
use crate::form;
use crate::measure::unit::{BTUH, CFM, DEGREES, PER_HOUR};
use crate::measure::{Area, Length, Measure, Unit, Volume};
use crate::rules::air::jets::{NEAR, Vanes, measured};
use crate::rules::air::register_sizes::Size;
use crate::rules::air::room_heat::Wall;
use crate::rules::compare::is_at_most;
use crate::say;
use crate::sheet::{Caution, Expr, Fault, Faults, Sheet};
use crate::words::{Phrase, Text};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct RaisedRegister;

/// In hundredths of a unit.
const fn measure(
    label: &'static Phrase,
    hint: &'static Phrase,
    unit: &'static Unit,
    [least, most]: [i64; 2],
    why: &'static Phrase,
) -> Row {
    let (least, most) = (Measure::hundredths(unit, least), Measure::hundredths(unit, most));
    row(label, hint, Kind::Measure(Span { least, most, why, common: &[], optional: false }))
}

/// In inches.
const fn length([least, most]: [i64; 2], why: &'static Phrase, optional: bool) -> Kind {
    let (least, most) = (Length::inches(least, 1), Length::inches(most, 1));
    Kind::Length(Span { least, most, why, common: &[], optional })
}

const HEIGHTS: [i64; 2] = [72, 240];
const DIFFERENCES: [i64; 2] = [100, 10_000];

form! {
    /// A high wall register, and the ceiling over it.
    pub struct Input {
        /// Floor to ceiling now.
        now: Length = Length::inches(96, 1), row(&w::NOW, &w::NOTHING, length(HEIGHTS, &w::WHY_HEIGHT, false)).of_room("ceiling-height");
        /// Floor to ceiling to be.
        to_be: Length = Length::inches(114, 1), row(&w::TO_BE, &w::NOTHING, length(HEIGHTS, &w::WHY_HEIGHT, false)).of_room("ceiling-height-to-be");
        /// Its top below the ceiling now.
        gap: Length = Length::inches(6, 1), row(&w::GAP, &w::GAP_HINT, length([0, 48], &w::WHY_GAP, false));
        /// Its nominal size.
        size: Size, row(&w::SIZE, &w::NOTHING, Kind::Choice(Size::PICKS));
        /// How its vanes stand.
        vanes: Vanes, row(&w::VANES, &w::NOTHING, Kind::Choice(Vanes::PICKS));
        /// Its air.
        cfm: Measure = Measure::whole(&CFM, 80), measure(&w::CFM, &w::NOTHING, &CFM, [500, 200_000], &w::WHY_CFM);
        /// Whether that is a guess.
        guess: bool = true, row(&w::GUESS, &w::GUESS_HINT, Kind::Flag);
        /// To the facing wall.
        way: Option<Length>, row(&w::WAY, &w::NOTHING, length([36, 720], &w::WHY_WAY, true)).aside();
        /// Its floor.
        floor: Area = Area::square_feet(168), row(&w::FLOOR, &w::NOTHING, Kind::Area(Span {
            least: Area::square_feet(1), most: Area::square_feet(2500), why: &w::WHY_FLOOR, common: &[], optional: false,
        })).of_room("floor-area");
        /// Outside walls, end to end.
        run: Length, row(&w::RUN, &w::NOTHING, length([0, 2400], &w::WHY_RUN, false)).of_room("outside-walls");
        /// What they are.
        wall: Wall, row(&w::WALL, &w::NOTHING, Kind::Choice(Wall::PICKS));
        /// Room against outdoors.
        outside: Measure = Measure::whole(&DEGREES, 60), measure(&w::OUTSIDE, &w::OUTSIDE_HINT, &DEGREES, [100, 15_000], &w::WHY_OUTSIDE).measured();
        /// Changes by leaks.
        leaks: Measure = Measure::hundredths(&PER_HOUR, 50), measure(&w::LEAKS, &w::LEAKS_HINT, &PER_HOUR, [0, 500], &w::WHY_LEAKS);
        /// Supply against room, cooling.
        cool: Measure = Measure::whole(&DEGREES, 20), measure(&w::COOL, &w::NOTHING, &DEGREES, DIFFERENCES, &w::WHY_DIFFERENCE);
        /// Supply against room, heating.
        warm: Measure = Measure::whole(&DEGREES, 45), measure(&w::WARM, &w::NOTHING, &DEGREES, DIFFERENCES, &w::WHY_DIFFERENCE);
    }
    sample { way: Some(Length::inches(156, 1)), run: Length::inches(312, 1) }
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// As it throws now, and as it will.
    pub throws: [register_throw::Answer; 2],
    /// Where its cold air will come down on people.
    pub heads: Option<Text>,
    /// Whether it blows along the ceiling, now and to be.
    pub attached: [bool; 2],
    /// Air in the room, now and to be.
    pub volumes: [Volume; 2],
    /// How often its air changes that in an hour.
    pub changes: [Measure; 2],
    /// More heat lost through the walls that grow.
    pub wall_heat: Measure,
    /// More heat lost by leaks.
    pub leak_heat: Measure,
    /// Both.
    pub heat: Measure,
    /// More air for that, heating.
    pub extra: Measure,
}

impl Answer {
    /// What becomes of its jet.
    fn turns(&self) -> Text {
        let turns = match self.attached {
            [true, false] => &w::LEAVES_CEILING,
            [true, true] => &w::STAYS_ON,
            _ => &w::WAS_FREE,
        };
        match &self.heads {
            Some(heads) => say!(w::AND, turns, heads.clone()),
            None => turns.into(),
        }
    }
}

impl Calculator for RaisedRegister {
    const ID: &'static str = "raised-register";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::Air;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = false;
    const TELLS_PLACES: bool = true;
    type Input = Input;
    type Answer = Answer;

    fn sample() -> Input {
        Input::sample()
    }

    fn solve(input: &Input, _: Basis) -> Result<Answer, Faults> {
        solve(input)
    }

    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        Caution::all(&[(&w::ESTIMATE, None), (&w::TIES, None), (&w::OLD, None)])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Works the register under both ceilings.
///
/// - Throw: free of the ceiling once its top is more than 1 ft below it: 0.707 of attached.
/// - Heat: `U × run × rise × °F`, and leaks: `changes × (floor × rise) × 1.08 ÷ 60 × °F`.
/// - Changes: `cfm × 60 ÷ volume`.
///
/// # Errors
/// A ceiling that doesn't go up, a register below the floor, and what its throw refuses.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    let high = input.size.sides()[1];
    if input.to_be <= input.now {
        let says = say!(w::NOT_UP, input.now);
        return Err(fault("to_be", &w::TO_BE, input.to_be, says));
    }
    if input.gap.plus(high) >= input.now {
        return Err(fault("gap", &w::GAP, input.gap, say!(w::TOO_LOW, input.now)));
    }
    let near = |ceiling: Length| is_at_most(ceiling.minus(input.now).plus(input.gap), NEAR);
    let attached = [near(input.now), near(input.to_be)];
    let registers = attached.map(|attached| register(input, attached));
    let throws = [register_throw::solve(&registers[0])?, register_throw::solve(&registers[1])?];
    let of = |unit, expr| measured(expr).unwrap_or(Measure::whole(unit, 0));
    let volumes = [input.now, input.to_be].map(|height| Volume::over(input.floor, height));
    let cfm = Expr::measure(input.cfm);
    let heats = [sheet::wall_heat(input), sheet::leak_heat(input)].map(|heat| of(&BTUH, heat));
    let heat = heats[0].of_same(heats[0].millionths().saturating_add(heats[1].millionths()));
    Ok(Answer {
        heads: register_throw::at_heads(&registers[1], &throws[1]),
        throws,
        attached,
        volumes,
        changes: volumes.map(|volume| of(&PER_HOUR, sheet::changes(cfm.clone(), volume))),
        wall_heat: heats[0],
        leak_heat: heats[1],
        heat,
        extra: of(&CFM, sheet::extra(input, heat)),
    })
}

/// The register as it is worked, along a ceiling or free of it.
fn register(input: &Input, attached: bool) -> register_throw::Input {
    let half = input.size.sides()[1].part(2);
    register_throw::Input {
        size: input.size,
        vanes: input.vanes,
        along: if attached { Along::Attached } else { Along::Free },
        know: if input.guess { Know::Guess } else { Know::Measured },
        cfm: input.cfm,
        way: input.way,
        temperature: Temperature::Cold,
        difference: input.cool,
        height: Some(input.now.minus(input.gap).minus(half)),
        ..register_throw::Input::sample()
    }
}

fn fault(path: &str, label: &'static Phrase, given: Length, says: Text) -> Faults {
    vec![Fault { path: path.to_owned(), label, given: given.exact(), says }]
}

#[cfg(test)]
mod tests;
