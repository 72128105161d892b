//! One place in the room: its way, its throw, what its stream meets and what it is near.

use super::words as w;
use super::{Against, Aim, At, Input, Place, Spot, Worked, share};
use crate::calculators::register_throw::{self, Along, Know, Temperature};
use crate::measure::Length;
use crate::rules::air::clearances::{FROM_ALARM, FROM_RETURN, NEAR_GLASS};
use crate::rules::air::jets::{HALF_SPREAD, NEAR};
use crate::rules::air::placing::FROM_FLAME;
use crate::rules::compare::{is_at_least, is_at_most};
use crate::sheet::{Check, Faults, Verdict};
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
    pub(super) back: Option<Spots>,
    alarm: Option<Spots>,
    window: Option<Spots>,
    pub(super) flue: Option<Spots>,
    thermostat: Option<Spots>,
}

impl<'a> Room<'a> {
    pub(super) fn of(input: &'a Input) -> Self {
        let [back, alarm, window, flue, thermostat] =
            others(input).map(|(at, ..)| at.there.then_some([at.x, at.y]));
        Self { input, back, alarm, window, flue, thermostat }
    }

    /// Level, so that the way in the air is no shorter.
    pub(super) fn return_to_flue(&self) -> Option<Length> {
        Some(apart(self.back?, self.flue?))
    }

    pub(super) fn work(&self, spot: &Spot) -> Result<Worked, Faults> {
        let input = self.input;
        let at = [spot.x, spot.y];
        let way = way(input, spot, at);
        let throw = self.throw(spot, way)?;
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
            Place::Round => share(reach.min(way).times(2), input.long.min(input.wide)),
            _ => share(reach.min(way), along(input, spot.aim)),
        };
        Ok(Worked { at, throw, way, sweeps, to_alarm, to_return, to_window, meets_alarm, against })
    }

    fn throw(&self, spot: &Spot, way: Length) -> Result<register_throw::Answer, Faults> {
        let input = self.input;
        let attached = match spot.place {
            Place::HighWall => is_at_most(input.gap, NEAR),
            place => place != Place::Floor,
        };
        register_throw::solve(&register_throw::Input {
            outlet: spot.place.outlet(),
            size: input.size,
            neck: input.neck,
            vanes: input.vanes,
            along: if attached { Along::Attached } else { Along::Free },
            know: if input.guess { Know::Guess } else { Know::Measured },
            cfm: input.cfm,
            way: Some(way),
            temperature: Temperature::Cold,
            difference: input.cool,
            ..register_throw::Input::sample()
        })
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
            (Place::Round, _) => return libm::sqrt(x * x + y * y) <= reach,
            (_, Aim::W1) => (-y, x),
            (_, Aim::W2) => (x, y),
            (_, Aim::W3) => (y, x),
            (_, Aim::W4) => (-x, y),
        };
        let half = nanometres(self.width()) / 2.0 + on * spread();
        on >= 0.0 && on <= reach && libm::fabs(off) <= half
    }
}

/// How far a jet has spread to either side, of how far it has come.
pub(super) fn spread() -> f64 {
    libm::tan(HALF_SPREAD.to_radians())
}

/// Whether it is about how fast the air leaves, not how far it gets.
fn is_speed(check: &Check) -> bool {
    check.key == "face" || check.key == "sound"
}

/// How far a place is from the nearest wall.
pub(super) fn to_wall(input: &Input, spot: &Spot) -> Length {
    let (right, down) = (input.long.minus(spot.x), input.wide.minus(spot.y));
    spot.x.min(spot.y).min(right).min(down)
}

/// The room's length along a jet.
pub(super) fn along(input: &Input, aim: Aim) -> Length {
    if matches!(aim, Aim::W2 | Aim::W4) { input.long } else { input.wide }
}

fn way(input: &Input, spot: &Spot, [x, y]: Spots) -> Length {
    let (right, down) = (input.long.minus(x), input.wide.minus(y));
    match (spot.place, spot.aim) {
        (Place::Floor, _) => input.high,
        (Place::Round, _) => to_wall(input, spot),
        (_, Aim::W1) => y,
        (_, Aim::W2) => right,
        (_, Aim::W3) => down,
        (_, Aim::W4) => x,
    }
}
