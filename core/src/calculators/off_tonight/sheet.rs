//! The notice as it is shown, and what is to be settled before anything goes off.

use super::clock::{either_half, in_minutes, long, told, when};
use super::input::DAY;
use super::words as w;
use super::{Answer, Calculator, Cold, Input, Line, Medical, OffTonight, What};
use crate::measure::Day;
use crate::measure::time_of_day::minutes;
use crate::rules::compare::{Limit, at_most, settle};
use crate::rules::residential::smoke_alarms::NONE_OUT;
use crate::rules::residential::while_off::{
    FROST, FULL_FREEZER, GAS, HALF_FREEZER, MEDICAL, NIGHT, REFRIGERATOR, WAY,
};
use crate::say;
use crate::sheet::{Asks, Check, FOREMOST, Figure, Part, PartRow, Sheet, Source, Verdict};
use crate::words::{Amount, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let checks = checks(input, answer);
    let is_over = checks.iter().any(|check| check.verdict == Verdict::Over);
    Sheet {
        headline: headline(input, answer),
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

/// How many, with what presses most.
fn headline(input: &Input, answer: &Answer) -> Figure {
    let count = Amount::Count(input.off.len() as i64);
    let lines = || input.off.iter().enumerate();
    let said = [
        (&w::HEAD_MEDICAL, lines().filter(|(_, line)| needs(line)).count()),
        (&w::HEAD_NIGHT, lines().filter(|(at, _)| answer.overnight[*at] == Some(true)).count()),
        (&w::HEAD_UNTIMED, lines().filter(|(at, _)| answer.spans[*at].is_none()).count()),
    ];
    let first = said.into_iter().find(|(_, some)| *some > 0);
    let said = first.map(|(phrase, some)| Text {
        phrase,
        args: vec![count.into(), Amount::Count(some as i64).into()],
    });
    Figure { said, ..Figure::plain("off", &w::COUNT, count) }
}

fn needs(line: &Line) -> bool {
    line.what == What::Circuit && line.medical == Medical::Needs
}

/// From when, and by when it is back: with their days where any is given.
fn off_and_back(line: &Line, span: Option<[i64; 2]>) -> Text {
    let last = span.map(|[_, back]| back.div_euclid(DAY));
    let back_day = line.back_day.or_else(|| line.off_day.and(last).and_then(Day::of_number));
    let mut back = when(back_day, &line.back_time);
    if line.off_day.is_none() && last == Some(1) {
        back = say!(w::NEXT_DAY, back);
    }
    say!(w::WHEN, when(line.off_day, &line.off_time), back)
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
        rows.push(PartRow {
            name: joined(line.what.label().into(), &[&line.named]),
            value: joined(off_and_back(line, answer.spans[*at]), &[&line.feeds, &line.who]),
            puts: Vec::new(),
        });
    }
    Part::plain(FOREMOST, &w::NOTICE, Some(&w::NOTICE_NOTE), rows)
}

/// Which lines are counted.
type Is<'a> = &'a dyn Fn(usize, &Line) -> bool;

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let mut all: Vec<Check> = Vec::new();
    let count =
        |is: Is<'_>| input.off.iter().enumerate().filter(|(at, line)| is(*at, line)).count() as i64;
    let none = |source| Limit { value: 0, source };
    if input.off.iter().any(|line| line.what == What::Circuit) {
        all.push(medical(input));
    }
    if input.off.iter().any(|line| line.what == What::Alarm) {
        let of =
            |night| count(&|at, line| line.what == What::Alarm && answer.overnight[at] == night);
        let (out, unknown) = (of(Some(true)), of(None));
        let check = |count| at_most("alarms", (&w::CHECK_ALARMS).into(), count, NONE_OUT);
        all.push(match (out, unknown) {
            (0, 1..) => unsure(check(unknown), say!(w::NIGHT_UNKNOWN)),
            _ => check(out),
        });
    }
    if input.off.iter().any(|line| line.what == What::Way) {
        let shut = count(&|_, line| line.what == What::Way && !line.kept);
        all.push(at_most("way", (&w::WAY).into(), shut, none(&WAY)));
    }
    for (line, span) in input.off.iter().zip(&answer.spans) {
        let limit = match line.cold {
            Cold::Nothing => continue,
            Cold::Fridge => REFRIGERATOR,
            Cold::Full => FULL_FREEZER,
            Cold::Half => HALF_FREEZER,
        };
        if let (What::Circuit, Some(span)) = (line.what, span) {
            // In minutes, which nothing rounds: 4 h 1 min is seen to be over 4 h.
            let off = span[1] - span[0];
            let name = joined(line.cold.label().into(), &[&line.named]);
            let name = say!(w::MINUTES_OFF, name, long(off));
            let limit = Limit { value: in_minutes(limit.value), source: limit.source };
            let check = at_most(line.cold.key(), name, off, limit);
            all.push(match half(&line.typed()) {
                Some(why) if check.verdict == Verdict::Within => unsure(check, why),
                _ => check,
            });
        }
    }
    // Those that ask; told where there is one.
    let asked: [(_, &'static Phrase, &'static Source, _, Is<'_>); 4] = [
        ("gas", &w::GAS, &GAS, Asks::First, &|_, line| line.what == What::Gas),
        ("frost", &w::FROST, &FROST, Asks::First, &|_, line| {
            line.frost && matches!(line.what, What::Heat | What::Gas)
        }),
        ("sump", &w::SUMP, &NIGHT, Asks::First, &|_, line| line.sump && line.what == What::Circuit),
        ("overnight", &w::OVERNIGHT, &NIGHT, Asks::Minded, &|at, line| {
            line.what != What::Alarm && answer.overnight[at] == Some(true)
        }),
    ];
    for (key, name, source, asks, is) in asked {
        let count = count(is);
        if count > 0 {
            let check = settle(at_most(key, name.into(), count, none(source)), source.says);
            all.push(Check { asks, ..check });
        }
    }
    all.extend(missing(input, answer));
    all
}

/// One for all circuits: over where somebody needs one, and not within before all were asked about.
fn medical(input: &Input) -> Check {
    let mut not_asked: Option<Text> = None;
    let (mut some, mut open) = (0, 0);
    for (at, line) in input.off.iter().enumerate() {
        some += i64::from(needs(line));
        if line.what == What::Circuit && line.medical == Medical::NotAsked {
            open += 1;
            let name = match line.named.trim() {
                "" => say!(w::BOTH, &w::CIRCUIT, Amount::Count(at as i64 + 1)),
                named => say!(w::WORD, named),
            };
            not_asked = Some(not_asked.map_or(name.clone(), |all| say!(w::AND, all, name)));
        }
    }
    let check = |count| {
        at_most("medical", (&w::MEDICAL).into(), count, Limit { value: 0, source: &MEDICAL })
    };
    let note = not_asked.map(|all| say!(w::ASK_ABOUT, all));
    match note {
        Some(note) if some == 0 => unsure(check(open), note),
        note => Check { note, ..check(some) },
    }
}

/// Waits for what was not typed.
fn unsure(check: Check, why: Text) -> Check {
    Check { verdict: Verdict::Ask, asks: Asks::Missing, note: Some(why), ..check }
}

/// How the first of two times was read that may mean either half of a day.
fn half(typed: &[&str; 2]) -> Option<Text> {
    let typed = either_half(typed)?;
    told(typed).map(|time| say!(w::ASK_HALF, typed, time))
}

/// Times and names that aren't given, and times that may mean either half of a day; the hours when
/// people sleep count as a line.
fn missing(input: &Input, answer: &Answer) -> Option<Check> {
    let night = [&*input.night, &*input.morning];
    let of_night = (night.iter().any(|it| minutes(it).is_none()), half(&night));
    let of_lines =
        input.off.iter().zip(&answer.spans).map(|(line, span)| {
            (span.is_none() || line.who.trim().is_empty(), half(&line.typed()))
        });
    let (mut count, mut is_short, mut halves) = (0_i64, false, None);
    for (short, half) in of_lines.chain([of_night]) {
        count += i64::from(short || half.is_some());
        is_short |= short;
        halves = halves.or(half);
    }
    let why = match (is_short, halves) {
        (true, Some(half)) => say!(w::BOTH, &w::ASK_TIMES, half),
        (false, Some(half)) => half,
        _ => (&w::ASK_TIMES).into(),
    };
    let check =
        at_most("missing", (&w::CHECK_TIMES).into(), count, Limit { value: 0, source: &NIGHT });
    (count > 0).then(|| unsure(check, why))
}
