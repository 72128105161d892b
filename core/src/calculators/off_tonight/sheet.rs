//! The notice as it is shown, and what is to be settled before anything goes off.

use super::clock::{either_half, in_minutes, long, told, when};
use super::input::{DAY, HOUR};
use super::words as w;
use super::{Answer, Calculator, Cold, Input, Line, Medical, OffTonight, What};
use crate::fields::known_as;
use crate::measure::Day;
use crate::measure::time_of_day::minutes;
use crate::rules::compare::{Limit, at_most, settle};
use crate::rules::residential::smoke_alarms::{ALARMS_OUT, NONE_OUT};
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
        parts: vec![notice(input, answer), know(input)],
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
    let days = span.map(|span| span.map(|at| at.div_euclid(DAY)));
    let last = days.map(|[_, last]| last);
    let back_day = line.back_day.or_else(|| line.off_day.and(last).and_then(Day::of_number));
    let mut off = when(line.off_day, &line.off_time);
    let mut back = when(back_day, &line.back_time);
    match days {
        Some([0, 1]) if line.off_day.is_none() => back = say!(w::NEXT_DAY, back),
        Some([1, 1]) if line.off_day.is_none() => off = say!(w::NEXT_DAY, off),
        _ => {}
    }
    say!(w::WHEN, off, back)
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

/// What goes with the notice to whoever reads it.
fn know(input: &Input) -> Part {
    let is_there = |what| input.off.iter().any(|line| line.what == what);
    let mut rows = Vec::new();
    let mut add = |name: Text, value: Text| rows.push(PartRow { name, value, puts: Vec::new() });
    if is_there(What::Gas) {
        add(What::Gas.label().into(), GAS.says.into());
    }
    if is_there(What::Alarm) {
        add(What::Alarm.label().into(), ALARMS_OUT.says.into());
    }
    add((&w::EMERGENCY).into(), (&w::SMELL).into());
    Part::plain("know", &w::KNOW, None, rows)
}

/// What a line is called: by its own name, or by what it is and its place.
fn called(at: usize, line: &Line) -> Text {
    match line.named.trim() {
        "" => say!(w::BOTH, line.what.label(), Amount::Count(at as i64 + 1)),
        named => say!(w::WORD, named),
    }
}

/// Which lines are counted.
type Is<'a> = &'a dyn Fn(usize, &Line) -> bool;

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let mut all: Vec<Check> = Vec::new();
    let count =
        |is: Is<'_>| input.off.iter().enumerate().filter(|(at, line)| is(*at, line)).count() as i64;
    let none = |source| Limit { value: 0, source };
    if input.off.iter().any(|line| line.what == What::Circuit) {
        all.push(medical(input, answer));
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
    cold(input, answer, &mut all);
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

/// Lines about one thing that go on from each other.
struct Run {
    /// By their places.
    lines: Vec<usize>,
    /// From the first to the last minute of them.
    span: [i64; 2],
}

impl Run {
    fn long(&self) -> i64 {
        self.span[1] - self.span[0]
    }
}

/// Whether two lines may be about one thing: they have one name, or one of them has none.
fn is_one_thing(one: &Line, other: &Line) -> bool {
    let [a, b] = [one, other].map(|line| known_as(&line.named));
    a == b || a.is_empty() || b.is_empty()
}

/// Circuits that `is` tells of, those together that are about one thing and leave no minute between
/// them; those without times aren't among them.
fn runs(input: &Input, answer: &Answer, is: &dyn Fn(&Line) -> bool) -> Vec<Run> {
    let mut runs: Vec<Run> = Vec::new();
    for (at, line) in input.off.iter().enumerate() {
        let Some(span) = answer.spans[at].filter(|_| line.what == What::Circuit && is(line)) else {
            continue;
        };
        let mut run = Run { lines: vec![at], span };
        // Whatever it touches becomes one with it, and may touch more then.
        while let Some(place) = runs.iter().position(|other| {
            let is_same = |at: &usize| is_one_thing(line, &input.off[*at]);
            let touches = other.span[0] <= run.span[1] && run.span[0] <= other.span[1];
            touches && other.lines.iter().any(is_same)
        }) {
            let other = runs.remove(place);
            run.span = [run.span[0].min(other.span[0]), run.span[1].max(other.span[1])];
            run.lines = [other.lines, run.lines].concat();
        }
        runs.push(run);
    }
    runs
}

/// How long food is without power.
fn cold(input: &Input, answer: &Answer, all: &mut Vec<Check>) {
    let is_dated = |line: &Line| line.off_day.is_some();
    let is_mixed = input.off.iter().any(is_dated) && input.off.iter().any(|line| !is_dated(line));
    for (kind, limit) in
        [(Cold::Fridge, REFRIGERATOR), (Cold::Full, FULL_FREEZER), (Cold::Half, HALF_FREEZER)]
    {
        let runs = runs(input, answer, &|line| line.cold == kind);
        let limit = Limit { value: in_minutes(limit.value), source: limit.source };
        for run in &runs {
            let line = &input.off[run.lines[0]];
            // In minutes, which nothing rounds: 4 h 1 min is seen to be over 4 h.
            let off = run.long();
            let name = joined(kind.label().into(), &[&line.named]);
            let name = say!(w::MINUTES_OFF, name, long(off));
            let check = at_most(kind.key(), name, off, limit);
            let why = run.lines.iter().find_map(|at| half(&input.off[*at].typed()));
            // One without a day may go on from this one.
            let undated = |(_, other): &(usize, &Line)| {
                other.cold == kind && !is_dated(other) && is_one_thing(line, other)
            };
            let undated = input.off.iter().enumerate().find(undated);
            let day = undated.filter(|_| is_mixed);
            let day = day.map(|(at, line)| say!(w::SHORT_DAY, called(at, line)));
            // Off again within a day, nobody says whether it was cold again by then.
            let again = runs.iter().filter(|other| {
                let gap = (other.span[0] - run.span[1]).max(run.span[0] - other.span[1]);
                (1..DAY).contains(&gap) && is_one_thing(line, &input.off[other.lines[0]])
            });
            let again = again.map(Run::long).sum::<i64>();
            // Nobody's zone is known here, nor when its clocks go back: at two in the night.
            let [from, to] = run.span.map(|at| (at - 2 * HOUR).div_euclid(DAY));
            all.push(match why.or(day) {
                _ if check.verdict != Verdict::Within => check,
                Some(why) => unsure(check, why),
                None if again > 0 && off + again > limit.value => {
                    let note = Some(say!(w::ASK_AGAIN, long(off + again)));
                    Check { note, ..settle(check, &w::NOTHING) }
                }
                None if from < to && off + HOUR > limit.value => {
                    Check { note: Some((&w::CLOCKS_BACK).into()), ..check }
                }
                None => check,
            });
        }
    }
}

/// One for all circuits: over where somebody needs one, and not within before all were asked about,
/// nor before its own power is known to last.
fn medical(input: &Input, answer: &Answer) -> Check {
    let (mut not_asked, mut lasts): (Option<Text>, Vec<Text>) = (None, Vec::new());
    let (mut some, mut open, mut own) = (0, 0, 0);
    for (at, line) in input.off.iter().enumerate() {
        some += i64::from(needs(line));
        if line.what != What::Circuit {
            continue;
        }
        let name = called(at, line);
        if line.medical == Medical::NotAsked {
            open += 1;
            not_asked = Some(match not_asked {
                Some(all) => say!(w::AND, all, name),
                None => name,
            });
        } else if line.medical == Medical::OwnPower {
            own += 1;
            if answer.spans[at].is_none() {
                lasts.push(say!(w::ASK_LASTS_UNKNOWN, name));
            }
        }
    }
    for run in runs(input, answer, &|line| line.medical == Medical::OwnPower) {
        let at = run.lines[0];
        lasts.push(say!(w::ASK_LASTS, called(at, &input.off[at]), long(run.long())));
    }
    let lasts = lasts.into_iter().reduce(|all, one| say!(w::BOTH, all, one));
    let check = |count| {
        at_most("medical", (&w::MEDICAL).into(), count, Limit { value: 0, source: &MEDICAL })
    };
    let not_asked = not_asked.map(|all| say!(w::ASK_ABOUT, all));
    let note = match (not_asked, lasts) {
        (Some(one), Some(other)) => Some(say!(w::BOTH, one, other)),
        (one, other) => one.or(other),
    };
    match note {
        Some(note) if some == 0 && open > 0 => unsure(check(open + own), note),
        Some(note) if some == 0 => Check { note: Some(note), ..settle(check(own), &w::NOTHING) },
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

/// Times and names that aren't given, and times that may mean either half of a day, each with its line;
/// the hours when people sleep count as a line.
fn missing(input: &Input, answer: &Answer) -> Option<Check> {
    let is_lost = |typed: &str| !typed.trim().is_empty() && minutes(typed).is_none();
    let short = |typed: &[&str; 2], is_whole: bool| {
        let short: &'static Phrase = match typed.iter().any(|it| is_lost(it)) {
            true => &w::SHORT_READ,
            false if typed.iter().any(|it| it.trim().is_empty()) => &w::SHORT_TIME,
            false if !is_whole => &w::SHORT_ORDER,
            false => return None,
        };
        Some(short)
    };
    let (mut count, mut why): (i64, Option<Text>) = (0, None);
    let mut tell = |name: Text, short: Option<&'static Phrase>, half: Option<Text>| {
        let one = match (short, half) {
            (Some(short), _) => Text { phrase: short, args: vec![name.into()] },
            (None, Some(half)) => half,
            (None, None) => return,
        };
        count += 1;
        why = Some(match why.take() {
            Some(all) => say!(w::BOTH, all, one),
            None => one,
        });
    };
    let is_dated = input.off.iter().any(|line| line.off_day.is_some());
    for (at, (line, span)) in input.off.iter().zip(&answer.spans).enumerate() {
        let undated = (is_dated && line.off_day.is_none()).then_some(&w::SHORT_DAY);
        let nobody = line.who.trim().is_empty().then_some(&w::SHORT_WHO);
        let short = short(&line.typed(), span.is_some()).or(undated).or(nobody);
        tell(called(at, line), short, half(&line.typed()));
    }
    let night = [&*input.night, &*input.morning];
    tell((&w::SLEEP).into(), short(&night, true), half(&night));
    let check =
        at_most("missing", (&w::CHECK_TIMES).into(), count, Limit { value: 0, source: &NIGHT });
    why.map(|why| unsure(check, why))
}
