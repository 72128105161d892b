//! One place in the room: its way, its throw, what its stream meets and what it is near.
//!
//! Places are told from the upper left of the smallest rectangle that holds the room.

use super::words as w;
use super::{AT_WALL, Against, Aim, At, Input, Place, Season, Spot, Worked, share};
use crate::calculators::register_throw::{self, Along, Know, Temperature, is_speed};
use crate::measure::Length;
use crate::plan::{Axis, Plan, Side, Spot as Point};
use crate::rules::air::clearances::{FROM_ALARM, FROM_RETURN, NEAR_GLASS};
use crate::rules::air::jets::{HALF_SPREAD, NEAR};
use crate::rules::air::placing::FROM_FLAME;
use crate::rules::compare::{is_at_least, is_at_most};
use crate::sheet::{Faults, Verdict};
use crate::words::Phrase;

/// From wall 4 and from wall 1.
pub(super) type Spots = [Length; 2];

/// What else stands in a room, with its letter in the drawing.
pub(super) fn others(input: &Input) -> [(&At, &'static Phrase, &'static Phrase); 5] {
    [
        (&input.back, &w::RETURN, &w::R),
        (&input.alarm, &w::ALARM, &w::A),
        (&input.window, &w::WINDOW, &w::W),
        (&input.flue, &w::FLUE, &w::F),
        (&input.thermostat, &w::THERMOSTAT, &w::T),
    ]
}

fn nanometres(length: Length) -> f64 {
    length.nanometres() as f64
}

/// How far apart two places are, level, to the nanometre.
pub(super) fn apart(a: Spots, b: Spots) -> Length {
    let [x, y] = [0, 1].map(|at| nanometres(a[at].minus(b[at])));
    Length::from_nanometres(libm::round(libm::sqrt(x * x + y * y)) as i64)
}

/// The room with what stands in it, all within its walls.
pub(super) struct Room<'a> {
    input: &'a Input,
    plan: Plan,
    pub(super) back: Option<Spots>,
    alarm: Option<Spots>,
    window: Option<Spots>,
    pub(super) flue: Option<Spots>,
    thermostat: Option<Spots>,
}

impl<'a> Room<'a> {
    pub(super) fn of(input: &'a Input, plan: Plan) -> Self {
        let [back, alarm, window, flue, thermostat] = others(input).map(|(at, ..)| at.at());
        Self { input, plan, back, alarm, window, flue, thermostat }
    }

    pub(super) fn into_plan(self) -> Plan {
        self.plan
    }

    /// Level, so that the way in the air is no shorter.
    pub(super) fn return_to_flue(&self) -> Option<Length> {
        Some(apart(self.back?, self.flue?))
    }

    pub(super) fn work(&self, spot: &Spot) -> Result<Worked, Faults> {
        let input = self.input;
        let at = spot.at();
        let (way, along) = self.way(spot);
        let register = self.register(spot, way);
        let throw = register_throw::solve(&register)?;
        let reach = throw.throw();
        let meets = |other: Option<Spots>| other.is_some_and(|it| self.meets(spot, at, reach, it));
        let to = |other: Option<Spots>| other.map(|other| apart(at, other));
        let [to_alarm, to_return, to_window] = [self.alarm, self.back, self.window].map(to);
        let edge = if spot.place == Place::Round { input.neck } else { self.width() }.part(2);
        let to_alarm = to_alarm.map(|to| to.minus(edge).max(Length::ZERO));
        let meets_alarm = meets(self.alarm);
        let throw_is = |verdict| {
            let mut checks = throw.checks.iter().filter(|check| !is_speed(check));
            checks.any(|check| check.verdict == verdict)
        };
        let near_flue = self.return_to_flue().is_some_and(|to| !is_at_least(to, FROM_FLAME));
        let served = to_window.is_none_or(|to| is_at_most(to, NEAR_GLASS)) || meets(self.window);
        let against = Against::ALL.into_iter().filter(|against| match against {
            Against::Flue => near_flue,
            Against::Alarm => to_alarm.is_some_and(|to| !is_at_least(to, FROM_ALARM)),
            Against::Stream => meets_alarm,
            Against::Return => {
                meets(self.back) || to_return.is_some_and(|to| !is_at_least(to, FROM_RETURN))
            }
            Against::Thermostat => meets(self.thermostat),
            Against::Throw => throw_is(Verdict::Over),
            Against::Heat => input.season != Season::Cooling && spot.place != Place::Floor,
            Against::Ask => throw_is(Verdict::Ask),
            Against::Fast => {
                let mut speeds = throw.checks.iter().filter(|check| is_speed(check));
                speeds.any(|check| check.verdict != Verdict::Within)
            }
            Against::Glass => !served,
        });
        let against = against.collect();
        let sweeps = match spot.place {
            Place::Floor => None,
            // To both sides.
            Place::Round => share(reach.min(way).times(2), along),
            _ => share(reach.min(way), along),
        };
        Ok(Worked {
            at,
            register,
            throw,
            way,
            along,
            sweeps,
            to_alarm,
            to_return,
            to_window,
            meets_alarm,
            against,
        })
    }

    fn register(&self, spot: &Spot, way: Length) -> register_throw::Input {
        let input = self.input;
        let heats = input.season == Season::Heating;
        let attached = match spot.place {
            Place::HighWall => is_at_most(input.gap, NEAR),
            place => place != Place::Floor,
        };
        register_throw::Input {
            outlet: spot.place.outlet(),
            size: input.size,
            neck: input.neck,
            vanes: input.vanes,
            along: if attached { Along::Attached } else { Along::Free },
            know: if input.guess { Know::Guess } else { Know::Measured },
            cfm: input.cfm,
            way: Some(way),
            // Its middle, where it hangs on a wall.
            height: (spot.place == Place::HighWall)
                .then(|| input.high.minus(input.gap).minus(input.size.sides()[1].part(2)))
                .filter(|height| *height > Length::ZERO),
            temperature: if heats { Temperature::Warm } else { Temperature::Cold },
            difference: if heats { input.warm } else { input.cool },
            ..register_throw::Input::sample()
        }
    }

    /// The longer side of its register.
    fn width(&self) -> Length {
        let [wide, high] = self.input.size.sides();
        wide.max(high)
    }

    /// Whether a stream that reaches so far meets a place.
    fn meets(&self, spot: &Spot, at: Spots, reach: Length, other: Spots) -> bool {
        let reach = nanometres(reach);
        let [x, y] = [0, 1].map(|side| nanometres(other[side].minus(at[side])));
        let (on, off) = match (spot.place, spot.aim) {
            (Place::Floor, _) => return false,
            (Place::Round, _) => {
                return libm::sqrt(x * x + y * y) <= reach && self.sees(at, other);
            }
            (_, Aim::Up) => (-y, x),
            (_, Aim::Right) => (x, y),
            (_, Aim::Down) => (y, x),
            (_, Aim::Left) => (-x, y),
        };
        let half = nanometres(self.width()) / 2.0 + on * spread();
        on >= 0.0 && on <= reach && libm::fabs(off) <= half && self.sees(at, other)
    }

    /// Whether no wall stands between two places.
    fn sees(&self, a: Spots, b: Spots) -> bool {
        let [a, b] = [a, b].map(|at| {
            let Point { x, y } = on_plan(&self.plan, at);
            [x, y].map(nanometres)
        });
        let crosses = |side: &Side| {
            let ends = |at: Point| [at.x, at.y].map(nanometres);
            let (from, to) = (ends(side.from), ends(side.to));
            // A level wall is passed in y, a plumb one in x.
            let across = usize::from(side.heading.axis() == Axis::Along);
            let (near, far) = (a[across] - from[across], b[across] - from[across]);
            if near * far >= 0.0 {
                return false;
            }
            let other = 1 - across;
            let at = a[other] + (b[other] - a[other]) * near / (near - far);
            (at - from[other]) * (at - to[other]) < 0.0
        };
        !self.plan.sides().iter().any(crosses)
    }

    /// How far it is to what a place blows at, and the whole line through it that lies in the room:
    /// all round, the shorter of the two.
    fn way(&self, spot: &Spot) -> (Length, Length) {
        let at = on_plan(&self.plan, spot.at());
        let along = |axis| chord(&self.plan, axis, at);
        let ((left, right), (up, down)) = (along(Axis::Along), along(Axis::Across));
        let (long, wide) = (right.minus(left), down.minus(up));
        match (spot.place, spot.aim) {
            (Place::Floor, _) => (self.input.high, long),
            (Place::Round, _) => (to_wall(&self.plan, at).0, long.min(wide)),
            (_, Aim::Up) => (at.y.minus(up), wide),
            (_, Aim::Right) => (right.minus(at.x), long),
            (_, Aim::Down) => (down.minus(at.y), wide),
            (_, Aim::Left) => (at.x.minus(left), long),
        }
    }

    /// Whether a register high on a wall blows at that.
    pub(super) fn blows_at_its_wall(&self, spot: &Spot) -> bool {
        spot.place == Place::HighWall && self.way(spot).0 <= AT_WALL
    }
}

/// How far a jet has spread to either side, of how far it has come.
pub(super) fn spread() -> f64 {
    libm::tan(HALF_SPREAD.to_radians())
}

/// As the plan has it, whose wall 1 starts at nothing.
pub(super) fn on_plan(plan: &Plan, [x, y]: Spots) -> Point {
    let (low, _) = plan.bounds();
    Point::new(low.x.plus(x), low.y.plus(y))
}

/// From where to where the line through a place lies in the room.
pub(super) fn chord(plan: &Plan, axis: Axis, at: Point) -> (Length, Length) {
    let (on, across) = match axis {
        Axis::Along => (at.x, at.y),
        Axis::Across => (at.y, at.x),
    };
    // On a wall a line counts as just past it: the room may lie on this side.
    let hair = Length::from_nanometres(1);
    let mut lines = plan.chords(axis, across);
    lines.extend(plan.chords(axis, across.minus(hair)));
    let here = lines.into_iter().find(|(from, to)| *from <= on && on <= *to);
    here.unwrap_or((on, on))
}

/// How far a place is from the nearest wall, and which way that wall runs.
pub(super) fn to_wall(plan: &Plan, at: Point) -> (Length, Axis) {
    let off = |at: Length, a: Length, b: Length| {
        let (low, high) = (a.min(b), a.max(b));
        low.minus(at).max(at.minus(high)).max(Length::ZERO)
    };
    let far = |side: &Side| {
        let x = off(at.x, side.from.x, side.to.x);
        let y = off(at.y, side.from.y, side.to.y);
        let straight = x == Length::ZERO || y == Length::ZERO;
        if straight { x.max(y) } else { apart([x, y], [Length::ZERO; 2]) }
    };
    let mut nearest = (Length::from_nanometres(i64::MAX), Axis::Along);
    for side in plan.sides() {
        let far = far(side);
        if far < nearest.0 {
            nearest = (far, side.heading.axis());
        }
    }
    nearest
}
