//! Where to put the register: up to four places in a room, each with its throw, what it sweeps and
//! what it is near, in order with the reason.

mod drawing;
mod input;
mod place;
mod sheet;
mod words;

use super::{Calculator, Trade};
use super::{register_throw, room};
use crate::edition::Basis;
use crate::fields::Form;
use crate::measure::{Length, Measure, Rounding, divide};
use crate::plan::{Axis, Plan};
use crate::rules::air::jets::measured;
use crate::say;
use crate::sheet::{Caution, Expr, Fault, Faults, Sheet};
use crate::words::{Phrase, Text};
pub use input::{Aim, At, Input, Place, Season, Spot};
use place::{Room, on_plan, to_wall};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct RegisterSpots;

/// A place, worked.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Worked {
    /// Where it is, within the room.
    pub at: [Length; 2],
    /// What is put there.
    pub register: register_throw::Input,
    /// What it throws there.
    pub throw: register_throw::Answer,
    /// The way in front of it: to the wall it blows toward, the nearest, or the ceiling.
    pub way: Length,
    /// The whole line along its jet that lies in the room; all round, the shorter of two.
    pub along: Length,
    /// How much of that it sweeps; none where it blows up.
    pub sweeps: Option<Measure>,
    /// From its edge to the smoke alarm, from its middle to the return and the window, level.
    pub to_alarm: Option<Length>,
    /// See there.
    pub to_return: Option<Length>,
    /// See there.
    pub to_window: Option<Length>,
    /// Whether its stream meets the smoke alarm.
    pub meets_alarm: bool,
    /// What speaks against it, worst first.
    pub against: Vec<Against>,
}

/// What speaks against a place, worst first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Against {
    /// The return is too near the open flue, wherever the register goes.
    Flue,
    /// Within 36 in of the smoke alarm.
    Alarm,
    /// Its air meets the smoke alarm.
    Stream,
    /// The return takes its air back.
    Return,
    /// It blows at the thermostat.
    Thermostat,
    /// Its throw fits neither rule.
    Throw,
    /// Its warm air comes from above.
    Heat,
    /// Its throw fits one rule, or one end of the range.
    Ask,
    /// It leaves fast: loud, or faster than is usual.
    Fast,
    /// The window is left alone.
    Glass,
}

impl Against {
    /// All of them, worst first.
    const ALL: [Self; 10] = [
        Self::Flue,
        Self::Alarm,
        Self::Stream,
        Self::Return,
        Self::Thermostat,
        Self::Throw,
        Self::Heat,
        Self::Ask,
        Self::Fast,
        Self::Glass,
    ];

    fn words(self) -> &'static Phrase {
        match self {
            Self::Flue => &w::BY_FLUE,
            Self::Alarm => &w::BY_ALARM,
            Self::Stream => &w::BY_STREAM,
            Self::Return => &w::BY_RETURN,
            Self::Thermostat => &w::BY_THERMOSTAT,
            Self::Throw => &w::BY_THROW,
            Self::Heat => &w::BY_HEAT,
            Self::Ask => &w::BY_ASK,
            Self::Fast => &w::BY_FAST,
            Self::Glass => &w::BY_GLASS,
        }
    }
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The places, in the order they were put in. Never empty.
    pub spots: Vec<Worked>,
    /// Their places in `spots`, the one with the least against it first.
    pub order: Vec<usize>,
    /// The room's outline.
    pub plan: Plan,
    /// From the return to the open flue, level, so that the way in the air is no shorter.
    pub return_to_flue: Option<Length>,
}

impl Answer {
    /// The one with the least against it.
    pub fn first(&self) -> (usize, &Worked) {
        let at = self.order[0];
        (at, &self.spots[at])
    }
}

impl Calculator for RegisterSpots {
    const ID: &'static str = "register-spots";
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

    fn cautions(input: Option<&Input>) -> Vec<Caution> {
        sheet::cautions(input)
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Works each place.
///
/// - Order: by the worst that speaks against it, then the next; as good as another, the one put in
///   first.
/// - Streams: a jet reaches as far as its throw to 50 fpm and spreads by 22°; all round, a circle.
///
/// # Errors
/// Walls that make no room; no place at all; what stands outside the walls, hangs high on none or
/// blows at its own; air that throws nothing.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    if input.spots.is_empty() {
        let (path, label) = ("spots".to_owned(), &w::SPOTS);
        return Err(vec![Fault { path, label, given: String::new(), says: say!(w::NO_SPOTS) }]);
    }
    let plan = plan(input)?;
    let misplaced = misplaced(input, &plan);
    if !misplaced.is_empty() {
        return Err(misplaced);
    }
    let room = Room::of(input, plan);
    let mut faults = Vec::new();
    for (at, spot) in input.spots.iter().enumerate() {
        if room.blows_at_its_wall(spot) {
            let path = ["spots.", &at.to_string(), ".aim"].concat();
            let given = spot.aim.key().to_owned();
            faults.push(Fault { path, label: &w::AIM, given, says: say!(w::AT_OWN_WALL) });
        }
    }
    if !faults.is_empty() {
        return Err(faults);
    }
    let mut spots = Vec::new();
    for spot in &input.spots {
        spots.push(room.work(spot)?);
    }
    let mut order: Vec<usize> = Vec::new();
    for (at, spot) in spots.iter().enumerate() {
        let before = order.iter().take_while(|other| rank(&spots[**other]) <= rank(spot)).count();
        order.insert(before, at);
    }
    let return_to_flue = room.return_to_flue();
    Ok(Answer { spots, order, plan: room.into_plan(), return_to_flue })
}

/// The outline, worked as the room itself is.
fn plan(input: &Input) -> Result<Plan, Faults> {
    let room = room::solve(&room::Input {
        shape: input.shape,
        long: input.long,
        wide: input.wide,
        notch_long: input.notch_long,
        notch_wide: input.notch_wide,
        leg_wide: input.leg_wide,
        leg_long: input.leg_long,
        leg_off: input.leg_off,
        gap_long: input.gap_long,
        gap_deep: input.gap_deep,
        gap_off: input.gap_off,
        walls: input.walls.clone(),
        height: Some(input.high),
        ..room::Input::blank()
    })?;
    Ok(room.plan)
}

/// The more and the worse speaks against it, the larger.
fn rank(spot: &Worked) -> u16 {
    let of = |against: &Against| 512 >> *against as u16;
    spot.against.iter().map(of).fold(0, |sum, one| sum | one)
}

/// What stands outside the walls, or hangs high on none: each at its field.
fn misplaced(input: &Input, plan: &Plan) -> Faults {
    let mut all = Vec::new();
    let mut add = |path: &str, axis, [x, y]: [Length; 2], says| {
        let (key, label, given) = match axis {
            Axis::Along => (".x", &w::FROM_LEFT, x),
            Axis::Across => (".y", &w::FROM_TOP, y),
        };
        let (path, given) = ([path, key].concat(), given.exact());
        all.push(Fault { path, label, given, says });
    };
    let (low, high) = plan.bounds();
    let (long, wide) = (high.x.minus(low.x), high.y.minus(low.y));
    let mut is_in = |path: &str, at: [Length; 2]| {
        let [x, y] = at;
        let past = |most| say!(w::PAST_ROOM, most);
        if x > long {
            add(path, Axis::Along, at, past(long));
        }
        if y > wide {
            add(path, Axis::Across, at, past(wide));
        }
        let fits = x <= long && y <= wide;
        let is_in = fits && plan.contains(on_plan(plan, at));
        if fits && !is_in {
            add(path, Axis::Along, at, say!(w::IN_NOTCH));
        }
        is_in
    };
    let spots = input.spots.iter().enumerate();
    let spots: Vec<_> = spots.map(|(at, it)| (["spots.", &at.to_string()].concat(), it)).collect();
    let mut hung = Vec::new();
    for (path, spot) in &spots {
        let at = spot.at();
        if is_in(path, at) && spot.place == Place::HighWall {
            hung.push((path, at));
        }
    }
    for (key, (at, ..)) in OTHERS.into_iter().zip(place::others(input)) {
        if let Some(at) = at.at() {
            is_in(key, at);
        }
    }
    for (path, at) in hung {
        let (off, runs) = to_wall(plan, on_plan(plan, at));
        if off > AT_WALL {
            let across = if runs == Axis::Along { Axis::Across } else { Axis::Along };
            add(path, across, at, say!(w::NOT_AT_WALL, off));
        }
    }
    all
}

/// As they are put in, in the order of [`place::others`].
const OTHERS: [&str; 5] = ["back", "alarm", "window", "flue", "thermostat"];
/// How far off a wall a register may be measured and still hang on it: a tape's slip, a furred-out
/// piece.
const AT_WALL: Length = Length::inches(6, 1);

/// What a place is called.
fn name(input: &Input, at: usize) -> Text {
    let number = at as i64 + 1;
    match input.spots.get(at) {
        Some(spot) if !spot.name.trim().is_empty() => say!(w::CALLED, number, spot.name.clone()),
        _ => say!(w::NUMBERED, number),
    }
}

/// A share of one length in another.
fn share(part: Length, whole: Length) -> Option<Measure> {
    let of = Expr::length(part).over(Expr::length(whole));
    measured(of.told_in(&crate::measure::unit::PERCENT))
}

/// Down to the inch: what is kept away from is never told farther than it is.
fn down_to_inch(length: Length) -> Length {
    let inch = Length::inches(1, 1);
    let count = divide(length.nanometres().into(), inch.nanometres().into(), Rounding::Down);
    inch.times(count as i64)
}

#[cfg(test)]
mod tests;
