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
use crate::words::{Amount, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let count = |count: usize| Amount::Count(count as i64);
    let overnight = answer.overnight.iter().filter(|is_off| **is_off).count();
    let mut figures = vec![Figure::plain("overnight", &w::OVERNIGHT, count(overnight))];
    if let Some(longest) = answer.spans.iter().flatten().map(|span| hours(*span)).max() {
        figures.push(Figure::plain("longest", &w::LONGEST, longest.into()));
    }
    let checks = checks(input, answer);
    let is_over = checks.iter().any(|check| check.verdict == Verdict::Over);
    let last = answer.order.iter().rfind(|at| answer.spans[**at].is_some());
    let next = match last {
        _ if is_over => Some((&w::NEXT_STOP).into()),
        Some(at) => {
            let line = &input.off[*at];
            Some(say!(w::NEXT_LAST, time(line.back_day, &line.back_time), name(line)))
        }
        None => None,
    };
    Sheet {
        headline: Figure::plain("off", &w::COUNT, count(input.off.len())),
        lead: None,
        next,
        figures,
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

fn name(line: &Line) -> Text {
    match line.named.trim() {
        "" => line.what.label().into(),
        named => say!(w::PAIR, line.what.label(), named),
    }
}

/// As it was given, a time of day as a clock shows it.
fn time(day: Option<Day>, time: &str) -> Text {
    let both = [day.map(Day::exact).unwrap_or_default(), told(time)].join(" ");
    match both.trim() {
        "" => (&w::NOT_GIVEN).into(),
        both => say!(w::ONE, both),
    }
}

fn notice(input: &Input, answer: &Answer) -> Part {
    let mut rows = Vec::new();
    for at in &answer.order {
        let line = &input.off[*at];
        let (off, back) =
            (time(line.off_day, &line.off_time), time(line.back_day, &line.back_time));
        let mut value = say!(w::WHEN, off, back);
        for more in [&line.feeds, &line.who, &line.call] {
            if !more.trim().is_empty() {
                value = say!(w::WITH, value, more.trim());
            }
        }
        rows.push(PartRow { name: name(line), value, puts: Vec::new() });
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
        (What::Circuit, "medical", &w::CHECK_MEDICAL, none(&MEDICAL), &|_, line| {
            line.what == What::Circuit && line.medical == Medical::Needs
        }),
        (What::Alarm, "alarms", &w::CHECK_ALARMS, NONE_OUT, &|at, line| {
            line.what == What::Alarm && answer.overnight[at]
        }),
        (What::Way, "way", &w::CHECK_WAY, none(&WAY), &|_, line| {
            line.what == What::Way && !line.kept
        }),
    ];
    for (what, key, name, limit, is) in bans {
        if input.off.iter().any(|line| line.what == what) {
            all.push(at_most(key, name.into(), count(is), limit));
        }
    }
    for (cold, key, name, limit) in [
        (Cold::Fridge, "refrigerator", &w::CHECK_FRIDGE, REFRIGERATOR),
        (Cold::Full, "full-freezer", &w::CHECK_FULL, FULL_FREEZER),
        (Cold::Half, "half-freezer", &w::CHECK_HALF, HALF_FREEZER),
    ] {
        let mut longest: Option<Measure> = None;
        for (line, span) in input.off.iter().zip(&answer.spans) {
            if let (true, true, Some(span)) = (line.what == What::Circuit, line.cold == cold, span)
            {
                longest = longest.max(Some(hours(*span)));
            }
        }
        if let Some(longest) = longest {
            all.push(at_most(key, name.into(), longest, limit));
        }
    }
    // Those that ask; told where there is one.
    let asked: [(_, &'static Phrase, &'static Source, &'static Phrase, _, Is<'_>); 7] = [
        ("asked", &w::CHECK_ASKED, &MEDICAL, &w::ASK_LIVING, Asks::First, &|_, line| {
            line.what == What::Circuit && line.medical == Medical::NotAsked
        }),
        ("gas", &w::CHECK_GAS, &GAS, GAS.says, Asks::First, &|_, line| line.what == What::Gas),
        ("frost", &w::CHECK_FROST, &FROST, &w::ASK_FROST, Asks::First, &|_, line| {
            line.frost && matches!(line.what, What::Heat | What::Gas)
        }),
        ("sump", &w::CHECK_SUMP, &NIGHT, &w::ASK_SUMP, Asks::First, &|_, line| {
            line.sump && line.what == What::Circuit
        }),
        ("overnight", &w::OVERNIGHT, &NIGHT, &w::ASK_NIGHT, Asks::Minded, &|at, line| {
            line.what != What::Alarm && answer.overnight[at]
        }),
        ("times", &w::CHECK_TIMES, &NIGHT, &w::ASK_TIMES, Asks::Missing, &|at, _| {
            answer.spans[at].is_none()
        }),
        ("who", &w::CHECK_WHO, &NIGHT, &w::ASK_WHO, Asks::Missing, &|_, line| {
            line.who.trim().is_empty() || line.call.trim().is_empty()
        }),
    ];
    for (key, name, source, why, asks, is) in asked {
        let count = count(is);
        if count > 0 {
            let check = settle(at_most(key, name.into(), count, none(source)), why);
            all.push(Check { asks, ..check });
        }
    }
    all
}
