//! The list as it is shown.

use super::words as w;
use super::{Answer, Input, Taken, What};
use crate::rules::compare::{at_most, settle};
use crate::rules::electrical::fan_boxes::FAN_BOXES;
use crate::rules::residential::smoke_alarms::{ALARMS_OUT, CO_ALARMS, NONE_OUT, SMOKE_ALARMS};
use crate::say;
use crate::sheet::{Caution, Figure, Part, PartRow, Sheet, Verdict};
use crate::words::{Phrase, Text};

/// What it is, and where if that is said.
fn named(taken: &Taken) -> Text {
    let what = taken.what.label();
    if taken.place.is_empty() {
        say!(w::IT, what)
    } else {
        say!(w::IT_AT, what, taken.place.as_str())
    }
}

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let count = |count: usize| i64::try_from(count).unwrap_or(i64::MAX);
    let down = Figure::plain("down", &w::DOWN, count(answer.order.len()).into());
    let out = Figure::plain("alarms-out", &w::ALARMS, answer.alarms.into());
    let listed = Figure::plain("listed", &w::ON_LIST, count(input.items.len()).into());
    let check = at_most("alarms", (&w::CHECK).into(), answer.alarms, NONE_OUT);
    let is_out = check.verdict == Verdict::Over;
    let check = if is_out { settle(check, &w::NEXT_ALARM) } else { check };
    let next = match answer.order.first() {
        _ if is_out => say!(w::NEXT_ALARM),
        Some(at) => say!(w::NEXT_DOWN, named(&input.items[*at])),
        None => say!(w::NEXT_NONE),
    };
    // An alarm that is out is the answer, so that the job's list has it too.
    let (headline, other) = if is_out { (out, down) } else { (down, out) };
    Sheet {
        headline,
        lead: is_out.then_some(0),
        next: Some(next),
        figures: vec![other, listed],
        checks: vec![check],
        working: Vec::new(),
        parts: parts(input, answer),
        materials: Vec::new(),
        cautions: cautions(Some(input)),
        drawing: None,
    }
}

fn parts(input: &Input, answer: &Answer) -> Vec<Part> {
    let row = |taken: &Taken, value| PartRow { name: named(taken), value, puts: Vec::new() };
    let mut down = Vec::new();
    for at in &answer.order {
        let taken = &input.items[*at];
        down.push(row(
            taken,
            match (taken.back, taken.off) {
                (Some(day), _) => say!(w::PLANNED, day.exact()),
                (None, Some(day)) => say!(w::SINCE, day.exact()),
                (None, None) => say!(w::UNDATED),
            },
        ));
    }
    let mut back = Vec::new();
    for taken in input.items.iter().filter(|taken| taken.is_back()) {
        back.push(row(
            taken,
            match taken.back {
                Some(day) => say!(w::BACK_ON, day.exact()),
                None => say!(w::IS_TESTED),
            },
        ));
    }
    let mut all = Vec::new();
    Part::add(&mut all, "order", &w::ORDER, Some(&w::ORDER_NOTE), down);
    Part::add(&mut all, "back", &w::DONE, None, back);
    all
}

/// Of what is on the list; without one, all.
pub(super) fn cautions(input: Option<&Input>) -> Vec<Caution> {
    let any_is = |is: &dyn Fn(&Taken) -> bool| input.is_none_or(|it| it.items.iter().any(is));
    let any = |what: What| any_is(&|taken| taken.what == what);
    let monitored = any_is(&|taken| taken.monitored);
    let mut all = Vec::new();
    let told: [(bool, &'static Phrase, _); 8] = [
        (monitored, &w::CALL, None),
        (true, ALARMS_OUT.says, Some(&ALARMS_OUT)),
        (true, &w::POWER, None),
        (any(What::Fan), &w::FAN_TWO, None),
        (any(What::Fan), FAN_BOXES.says, Some(&FAN_BOXES)),
        (any(What::Register), &w::OPENINGS, None),
        (true, SMOKE_ALARMS.says, Some(&SMOKE_ALARMS)),
        (true, CO_ALARMS.says, Some(&CO_ALARMS)),
    ];
    for (is_told, text, source) in told {
        if is_told {
            all.push(Caution { text: text.into(), source });
        }
    }
    all
}
