//! What its air has to do: leave quietly, and reach as far as the way in front of it.

use super::words as w;
use super::{Answer, Input, Temperature};
use crate::measure::unit::PERCENT;
use crate::measure::{Length, Measure};
use crate::rules::air::comfort_index::{COMMON, Range, index};
use crate::rules::air::jets::{Blows, NEAR, Surface, UPPER_HALF, measured};
use crate::rules::air::noise::{FASTEST, QUIET, USUAL};
use crate::rules::compare::{Limit, ask, at_least, at_most, is_at_least, is_at_most, settle};
use crate::say;
use crate::sheet::{Check, Expr, Sense, Verdict};
use crate::words::{Amount, Phrase};

/// The share of the way that a throw covers.
pub(super) fn share(throw: Length, way: Length) -> Expr {
    Expr::length(throw).over(Expr::length(way)).told_in(&PERCENT)
}

fn face(speed: Measure) -> Check {
    let name = || (&w::CHECK_FACE).into();
    let most = at_most("face", name(), speed, FASTEST);
    if most.verdict == Verdict::Within && !is_at_most(speed, USUAL) {
        return ask(at_most("face", name(), speed, USUAL), &w::FACE_NOTE);
    }
    most
}

/// Of a range the end that matters.
fn within(key: &str, name: &'static Phrase, value: Measure, [least, most]: Range) -> Check {
    if is_at_least(value, least) {
        at_most(key, name.into(), value, most)
    } else {
        at_least(key, name.into(), value, least)
    }
}

/// What is said of the middle of the air, unless its least or most changes that: then it asks.
fn over_range(values: [Option<Measure>; 3], judge: &dyn Fn(Measure) -> Check) -> Option<Check> {
    let check = judge(values[1]?);
    let nothing = |value: &Option<Measure>| value.unwrap_or(Measure::whole(&PERCENT, 0));
    let others = values.iter().map(|value| judge(nothing(value)));
    let Some(other) = others.into_iter().find(|other| other.verdict != check.verdict) else {
        return Some(check);
    };
    // The limit that is crossed: the middle's own, or where that is within the end's.
    let crossed = if check.verdict == Verdict::Within { &other } else { &check };
    let (limit, sense) = (crossed.limit, crossed.sense);
    let note = Some(say!(w::SPREAD, other.value));
    Some(Check { limit, sense, verdict: Verdict::Ask, note, ..check })
}

/// A living room's, since nobody is asked which room it is.
fn quiet(speed: Measure) -> Check {
    let check = at_most("sound", (&w::CHECK_SOUND).into(), speed, QUIET);
    if check.verdict == Verdict::Over { ask(check, &w::LOUD) } else { check }
}

/// Whether a check is about how fast the air leaves, not how far it gets.
pub fn is_speed(check: &Check) -> bool {
    check.key == "face" || check.key == "sound"
}

pub(super) fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let mut all = Vec::new();
    let speeds = answer.speeds().map(Some);
    all.extend(over_range(speeds, &face));
    if let Some(way) = input.way {
        reach(input, answer, way, &mut all);
    }
    all.extend(under_ceiling(input));
    all.extend(over_range(speeds, &quiet));
    all
}

/// Of a jet that is taken to run along the ceiling: whether its register's top is near enough for that.
fn under_ceiling(input: &Input) -> Option<Check> {
    let (top, ceiling) = input.top().zip(input.ceiling)?;
    if input.surface() != Surface::Attached {
        return None;
    }
    let over = at_least("ceiling", (&w::CHECK_OVER).into(), ceiling, Limit { value: top, ..NEAR });
    if over.verdict == Verdict::Over {
        return Some(settle(over, &w::TOP_OVER));
    }
    let below = ceiling.minus(top);
    let check = at_most("ceiling", (&w::CHECK_UNDER).into(), below, NEAR);
    if check.verdict == Verdict::Within {
        return Some(check);
    }
    let note = say!(w::FARTHER, below.minus(NEAR.value), Surface::Free.label());
    Some(Check { note: Some(note), ..settle(check, &w::TOP_OVER) })
}

/// Over by less than the formula itself may be off by, a fifth of the throw: it asks. A maker's own
/// throw is no formula's.
fn near(input: &Input, check: Check) -> Check {
    let (Amount::Measure(value), Amount::Measure(limit)) = (check.value, check.limit) else {
        return check;
    };
    let reaches = |fifths: i64| value.millionths().saturating_mul(fifths);
    let limit = limit.millionths().saturating_mul(5);
    let near = match check.sense {
        Sense::AtMost => reaches(4) <= limit,
        Sense::AtLeast => reaches(6) >= limit,
    };
    let over = check.verdict == Verdict::Over;
    if over && near && input.maker.throw.is_none() { ask(check, &w::NEAR) } else { check }
}

/// By how much of the way it covers.
fn reach(input: &Input, answer: &Answer, way: Length, all: &mut Vec<Check>) {
    let shares = |throws: [Option<Length>; 3]| {
        throws.map(|throw| throw.and_then(|throw| measured(share(throw, way))))
    };
    let by_50 = shares(answer.throws[0]);
    if input.outlet.blows() == Blows::Up {
        // A rule of cool air.
        if input.temperature == Temperature::Warm {
            return;
        }
        let judge = |value| at_least("way", (&w::CHECK_UP).into(), value, UPPER_HALF);
        all.extend(over_range(by_50, &judge).map(|check| near(input, check)));
        return;
    }
    let habit = over_range(by_50, &|value| within("way", &w::CHECK_COMMON, value, COMMON));
    let wanted = index(input.outlet, input.load);
    let wanted = wanted.filter(|_| input.temperature != Temperature::Warm);
    let cooled = wanted.and_then(|(range, by_100)| {
        let by = if by_100 { shares(answer.throws[1]) } else { by_50 };
        over_range(by, &|value| within("index", &w::CHECK_INDEX, value, range))
    });
    let disagree = match (&habit, &cooled) {
        (Some(one), Some(other)) => one.verdict != other.verdict,
        _ => false,
    };
    for check in habit.into_iter().chain(cooled) {
        let over = check.verdict == Verdict::Over;
        all.push(if disagree && over { ask(check, &w::DIFFER) } else { near(input, check) });
    }
}
