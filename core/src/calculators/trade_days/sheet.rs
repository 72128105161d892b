//! The days as they are shown.

use super::words as w;
use super::{Answer, Because, Calculator, Input, Step as Of, TradeDays, Who};
use crate::measure::Day;
use crate::rules::compare::{Limit, at_least, at_most, settle};
use crate::rules::hazards::asbestos::CONTENT;
use crate::rules::planning::{CRITICAL_PATH, ROUGH_INSPECTION};
use crate::say;
use crate::sheet::calendar;
use crate::sheet::{Check, Expr, FOREMOST, Figure, Part, PartRow, Sheet, Step, Table, TableRow};
use crate::words::Text;

/// What to look at before anybody is called.
fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let mut all = Vec::new();
    let mut ask = |check, note| all.push(Check { note: Some(note), ..settle(check, &w::NOTHING) });
    let name = |step: usize| input.steps[step].name.trim();
    let is_lab = |step: usize| input.steps[step].who == Who::Lab;
    let limit = |step: usize, value: i64| {
        let source = if is_lab(step) { &CONTENT } else { &ROUGH_INSPECTION };
        Limit { value, source }
    };
    for &step in &answer.unasked {
        let it = name(step);
        let unasked = if is_lab(step) { &w::ASK_LAB } else { &w::ASK_UNASKED };
        let key = ["unasked ", it].concat();
        ask(at_least(&key, say!(w::UNASKED, it), 0, limit(step, 1)), say!(*unasked, it));
    }
    for early in &answer.early {
        let (it, check) = (name(early.step), name(early.inspection));
        let key = ["early ", it, " ", check].concat();
        let days = at_most(&key, say!(w::EARLY, it, check), early.days, limit(early.inspection, 0));
        let why = if is_lab(early.inspection) { &w::ASK_BEFORE_LAB } else { &w::ASK_EARLY };
        ask(days, say!(*why, it, check));
    }
    all
}

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let told = |day| calendar::told_in(day, answer.first.year());
    let name = |step: usize| input.steps[step].name.trim();
    let named = |step: usize| say!(w::NAMED, name(step), input.steps[step].who.label());
    let row = |step, value| PartRow { name: named(step), value, puts: Vec::new() };
    let slack_of = |step: usize| {
        let phrase = match input.steps[step] {
            Of { who: Who::Inspector, .. } => &w::SLACK_OFFICE,
            Of { through: true, .. } => &w::SLACK_DAYS,
            _ => &w::SLACK_WORK,
        };
        say!(*phrase, answer.steps[step].slack)
    };
    let (mut chain, mut days) = (Vec::new(), Vec::new());
    let mut before = answer.first.number() - 1;
    for &step in &answer.chain {
        let it = &answer.steps[step];
        let because = match it.because {
            Because::First => say!(w::IS_FIRST),
            Because::Own => say!(w::IS_OWN),
            Because::After(wait, false) => say!(w::IS_AFTER, name(wait)),
            Because::After(wait, true) => say!(w::IS_PAST, name(wait)),
        };
        let when = if it.begins == it.done {
            say!(w::ONE_DAY, told(it.begins), because)
        } else {
            say!(w::SPAN, told(it.begins), told(it.done), because)
        };
        // Days off behind it may leave it some.
        let when = if it.slack > 0 { say!(w::WITH_FLOAT, when, slack_of(step)) } else { when };
        chain.push(row(step, when));
        days.push(Expr::count(it.done.number() - before));
        before = it.done.number();
    }
    let (mut rows, mut late) = (Vec::new(), Vec::new());
    let mut first_call: Option<Day> = None;
    let mut to_call: Vec<&str> = Vec::new();
    for &step in &answer.order {
        let it = &answer.steps[step];
        if let Some(call) = it.call {
            if first_call.is_none_or(|day| call < day) {
                first_call = Some(call);
                to_call.clear();
            }
            if first_call == Some(call) {
                to_call.push(name(step));
            }
        }
        let call = it.call.map_or((&w::NOTHING).into(), told);
        let cells = vec![told(it.begins), told(it.done), call, slack_of(step)];
        rows.push(TableRow { name: say!(w::COUNT, name(step)), cells });
        let moved: Vec<&str> = it.moves.iter().map(|other| name(*other)).collect();
        let last = told(it.last);
        let value = if moved.is_empty() {
            say!(w::STAYS, last)
        } else {
            say!(w::MOVES, moved.join(", "), last)
        };
        late.push(row(step, value));
    }
    let heads = [&w::STEP, &w::BEGINS, &w::DONE, &w::CALL_BY, &w::SLACK].map(Text::from).into();
    let mut all = Part::plain("days", &w::ALL, None, Vec::new());
    all.table = Some(Table { heads, rows });
    let in_all = answer.last.number() - answer.first.number() + 1;
    let last = Figure::plain("last-day", &w::LAST, answer.last.into());
    Sheet {
        headline: Figure { said: Some(told(answer.last)), ..last },
        lead: None,
        next: first_call.map(|day| {
            let next = if day < answer.first { &w::NEXT_AHEAD } else { &w::NEXT };
            say!(*next, to_call.join(", "), told(day))
        }),
        figures: vec![Figure::plain("days", &w::IN_ALL, in_all.into())],
        checks: checks(input, answer),
        working: vec![Step {
            key: "days".to_owned(),
            name: (&w::IN_ALL).into(),
            expr: Expr::Sum(days),
            source: Some(&CRITICAL_PATH),
        }],
        parts: vec![
            Part::plain(FOREMOST, &w::CHAIN, None, chain),
            all,
            Part::plain("late", &w::LATE, None, late),
        ],
        materials: Vec::new(),
        cautions: TradeDays::cautions(None),
        drawing: None,
    }
}
