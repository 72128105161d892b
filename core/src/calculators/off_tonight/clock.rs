//! Times of day as who lives there reads them, and those that may mean either half of a day.

use super::words as w;
use crate::measure::time_of_day::{minutes, two};
use crate::measure::{Day, Measure};
use crate::say;
use crate::sheet::calendar;
use crate::words::{Arg, Text};

/// The first of two times that may mean morning or evening: from 1:00 to 11:59 with neither am nor
/// pm, where nothing beside it is written by 24 hours (`08:00`, `13:00`).
pub(super) fn either_half<'a>(typed: &[&'a str; 2]) -> Option<&'a str> {
    let bare = typed.iter().map(|it| it.trim()).filter_map(|it| {
        let is_bare = !it.trim_end_matches('.').ends_with(['m', 'M']);
        minutes(it).filter(|_| is_bare).map(|at| (it, at / 60))
    });
    let is_by_24 = |(typed, hour): (&str, i64)| hour >= 13 || typed.starts_with('0');
    if bare.clone().any(is_by_24) {
        return None;
    }
    bare.clone().find(|(_, hour)| (1..12).contains(hour)).map(|(typed, _)| typed)
}

/// `8:00 am`, `noon`; none of what can't be read.
pub(super) fn told(typed: &str) -> Option<Text> {
    let at = minutes(typed)?;
    // Nobody is sure which of the two 12:00 pm is.
    match at {
        0 => return Some(say!(w::MIDNIGHT)),
        720 => return Some(say!(w::NOON)),
        _ => {}
    }
    let half = if at < 720 { " am" } else { " pm" };
    let time = [&((at / 60 + 11) % 12 + 1).to_string(), ":", &two(at % 60), half].concat();
    Some(say!(w::WORD, time))
}

/// The time, with its day where that is known.
pub(super) fn when(day: Option<Day>, typed: &str) -> Text {
    match (day.map(calendar::told), told(typed)) {
        (Some(day), Some(time)) => say!(w::TIME_ON_DAY, time, day),
        (Some(day), None) => say!(w::DAY_ALONE, day),
        (None, Some(time)) => time,
        (None, None) => (&w::NOT_GIVEN).into(),
    }
}

/// `4 h 1 min`.
pub(super) fn long(minutes: i64) -> Arg {
    [&(minutes / 60).to_string(), " h ", &(minutes % 60).to_string(), " min"].concat().into()
}

/// Whole minutes in a limit of hours.
pub(super) fn in_minutes(hours: Measure) -> i64 {
    hours.millionths() * 60 / 1_000_000
}
