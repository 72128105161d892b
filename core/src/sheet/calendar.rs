//! Days as people say them.

use crate::measure::Day;
use crate::say;
use crate::words;
use crate::words::{Phrase, Text};

words! {
    DAY = "{0} {1}\u{a0}{2}", es "{0} {2}\u{a0}{1}";
    DAY_OF_YEAR = "{0} {1}\u{a0}{2},\u{a0}{3}", es "{0} {2}\u{a0}{1}\u{a0}{3}";
    MON = "Mon", es "lun";
    TUE = "Tue", es "mar";
    WED = "Wed", es "mié";
    THU = "Thu", es "jue";
    FRI = "Fri", es "vie";
    SAT = "Sat", es "sáb";
    SUN = "Sun", es "dom";
    JAN = "Jan", es "ene";
    FEB = "Feb", es "feb";
    MAR = "Mar", es "mar";
    APR = "Apr", es "abr";
    MAY = "May", es "may";
    JUN = "Jun", es "jun";
    JUL = "Jul", es "jul";
    AUG = "Aug", es "ago";
    SEP = "Sep", es "sep";
    OCT = "Oct", es "oct";
    NOV = "Nov", es "nov";
    DEC = "Dec", es "dic";
}

/// By their place in the week.
static WEEK: [&Phrase; 7] = [&MON, &TUE, &WED, &THU, &FRI, &SAT, &SUN];

/// By their place in the year.
static YEAR: [&Phrase; 12] =
    [&JAN, &FEB, &MAR, &APR, &MAY, &JUN, &JUL, &AUG, &SEP, &OCT, &NOV, &DEC];

/// With its weekday and its year: `Tue Dec 1, 2026`.
pub fn told(day: Day) -> Text {
    let (week, month, at) = parts(day);
    say!(DAY_OF_YEAR, week, month, at, day.year().to_string())
}

/// With its weekday, and with its year where that isn't the one that is known from what is beside it.
pub fn told_in(day: Day, year: u16) -> Text {
    if day.year() != year {
        return told(day);
    }
    let (week, month, at) = parts(day);
    say!(DAY, week, month, at)
}

fn parts(day: Day) -> (&'static Phrase, &'static Phrase, i64) {
    (WEEK[day.weekday()], YEAR[usize::from(day.month()) - 1], i64::from(day.of_month()))
}
