//! The notice as it is shown, and what is to be settled before anything goes off.

use super::words as w;
use super::{Answer, Calculator, Cold, Input, Line, Medical, OffTonight, What};
use crate::measure::time_of_day::told;
use crate::measure::unit::HOUR;
use crate::measure::{Day, Measure, Rounding, divide};
use crate::rules::compare::{Limit, at_most, settle};
use crate::rules::residential::smoke_alarms::NONE_OUT;
use crate::rules::residential::while_off::{
    FROST, FULL_FREEZER, GAS, HALF_FREEZER, MEDICAL, NIGHT, REFRIGERATOR, WAY,
};
use crate::say;
use crate::sheet::{Asks, Check, FOREMOST, Figure, Part, PartRow, Sheet, Source, Verdict};
use crate::words::{Amount, Arg, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let checks = checks(input, answer);
    let is_over = checks.iter().any(|check| check.verdict == Verdict::Over);
    Sheet {
        headline: Figure::plain("off", &w::COUNT, Amount::Count(input.off.len() as i64)),
        lead: None,
        next: is_over.then(|| (&w::NEXT_STOP).into()),
        figures: Vec::new(),
        checks,
        working: Vec::new(),
        parts: vec![notice(input, answer)],
        materials: Vec::new(),
        cautions: OffTonight::cautions(None),
        drawing: None,
    }
}

/// How long it is, up to the next millionth of an hour.
fn hours([from, to]: [i64; 2]) -> Measure {
    let millionths = divide(i128::from(to - from) * 1_000_000, 60, Rounding::Up);
    Measure::new(&HOUR, i64::try_from(millionths).unwrap_or(i64::MAX))
}

/// As it was given, a time of day as a clock shows it.
fn time(day: Option<Day>, time: &str) -> Arg {
    let both = [day.map(Day::exact).unwrap_or_default(), told(time)].join(" ");
    match both.trim() {
        "" => (&w::NOT_GIVEN).into(),
        both => both.into(),
    }
}

/// One after another, without what is empty.
fn joined(first: Text, more: &[&String]) -> Text {
    let mut all = first;
    for more in more {
        if !more.trim().is_empty() {
            all = say!(w::WITH, all, more.trim());
        }
    }
    all
}

fn notice(input: &Input, answer: &Answer) -> Part {
    let mut rows = Vec::new();
    for at in &answer.order {
        let line = &input.off[*at];
        let (off, back) =
            (time(line.off_day, &line.off_time), time(line.back_day, &line.back_time));
        rows.push(PartRow {
            name: joined(line.what.label().into(), &[&line.named]),
            value: joined(say!(w::WHEN, off, back), &[&line.feeds, &line.who]),
            puts: Vec::new(),
        });
    }
    Part {
        key: FOREMOST,
        title: (&w::NOTICE).into(),
        note: Some((&w::NOTICE_NOTE).into()),
        rows,
        table: None,
    }
}

/// Which lines are counted.
type Is<'a> = &'a dyn Fn(usize, &Line) -> bool;

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let mut all: Vec<Check> = Vec::new();
    let count =
        |is: Is<'_>| input.off.iter().enumerate().filter(|(at, line)| is(*at, line)).count() as i64;
    let none = |source| Limit { value: 0, source };
    // Past its limit it is over; told wherever there is such a line.
    let bans: [(_, _, &'static Phrase, _, Is<'_>); 3] = [
        (What::Circuit, "medical", &w::MEDICAL, none(&MEDICAL), &|_, line| {
            line.what == What::Circuit && line.medical == Medical::Needs
        }),
        (What::Alarm, "alarms", &w::CHECK_ALARMS, NONE_OUT, &|at, line| {
            line.what == What::Alarm && answer.overnight[at]
        }),
        (What::Way, "way", &w::WAY, none(&WAY), &|_, line| line.what == What::Way && !line.kept),
    ];
    for (what, key, name, limit, is) in bans {
        // What nobody asked about is not said to be none.
        let is_told = |line: &Line| {
            line.what == what && (what != What::Circuit || line.medical != Medical::NotAsked)
        };
        if input.off.iter().any(is_told) {
            all.push(at_most(key, name.into(), count(is), limit));
        }
    }
    for (line, span) in input.off.iter().zip(&answer.spans) {
        let limit = match line.cold {
            Cold::Nothing => continue,
            Cold::Fridge => REFRIGERATOR,
            Cold::Full => FULL_FREEZER,
            Cold::Half => HALF_FREEZER,
        };
        if let (What::Circuit, Some(span)) = (line.what, span) {
            let name = joined(line.cold.label().into(), &[&line.named]);
            all.push(at_most(line.cold.key(), name, hours(*span), limit));
        }
    }
    // Those that ask; told where there is one.
    let asked: [(_, &'static Phrase, &'static Source, _, Is<'_>); 6] = [
        ("asked", &w::MEDICAL, &MEDICAL, Asks::Missing, &|_, line| {
            line.what == What::Circuit && line.medical == Medical::NotAsked
        }),
        ("gas", &w::GAS, &GAS, Asks::First, &|_, line| line.what == What::Gas),
        ("frost", &w::FROST, &FROST, Asks::First, &|_, line| {
            line.frost && matches!(line.what, What::Heat | What::Gas)
        }),
        ("sump", &w::SUMP, &NIGHT, Asks::First, &|_, line| line.sump && line.what == What::Circuit),
        ("overnight", &w::OVERNIGHT, &NIGHT, Asks::Minded, &|at, line| {
            line.what != What::Alarm && answer.overnight[at]
        }),
        ("missing", &w::CHECK_TIMES, &NIGHT, Asks::Missing, &|at, line| {
            answer.spans[at].is_none() || line.who.trim().is_empty()
        }),
    ];
    for (key, name, source, asks, is) in asked {
        let count = count(is);
        if count > 0 {
            let why = if key == "missing" { &w::ASK_TIMES } else { source.says };
            let check = settle(at_most(key, name.into(), count, none(source)), why);
            all.push(Check { asks, ..check });
        }
    }
    all
}
