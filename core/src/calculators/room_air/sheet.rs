//! The answer as it is shown, and its working.

use super::Calculator;
use super::words as w;
use super::{Answer, By, Input};
use crate::measure::Measure;
use crate::measure::unit::{AIR_HEAT, CFM, PER_HOUR, PERCENT};
use crate::rules::air::jets::measured;
use crate::rules::air::room_heat::{
    A_SQUARE_FOOT, LOSS, RULE, SENSIBLE, SHARE, THINNER, WARM, WARMER,
};
use crate::rules::compare::{Limit, ask, at_least, at_most};
use crate::rules::residential::heat::{CARRIES, air_for};
use crate::say;
use crate::sheet::{Check, Expr, Figure, Sheet, Source, Step, Verdict};
use crate::words::{Amount, Phrase};

/// What 1 cfm carries in air so dense.
pub(super) fn carries(density: Measure) -> Expr {
    Expr::measure(CARRIES).times(Expr::measure(density)).told_in(&AIR_HEAT)
}

/// The air that its heat asks for.
pub(super) fn air(input: &Input, answer: &Answer) -> Expr {
    air_for(answer.heat, answer.carries, input.apart())
}

/// How often that changes the room's.
pub(super) fn changes(answer: &Answer) -> Expr {
    let volume = Expr::Is(Amount::Room(answer.volume));
    Expr::measure(answer.air).over(volume).told_in(&PER_HOUR)
}

/// Its share of the system's air.
pub(super) fn given(heat: Measure, house: Measure, system: Measure) -> Expr {
    let share = Expr::measure(heat).over(Expr::measure(house));
    Expr::measure(system).times(share).told_in(&CFM)
}

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let mut figures = Vec::new();
    for (key, name, measure) in [
        ("heat", &w::HEAT, Some(answer.heat)),
        ("changes", &w::CHANGES, Some(answer.changes)),
        ("air-a-foot", &w::A_FOOT, Some(answer.a_foot)),
        ("carries", &w::CARRIES, Some(answer.carries)),
        ("given", &w::GIVEN, answer.given),
    ] {
        if let Some(measure) = measure {
            figures.push(Figure::plain(key, name, measure.into()));
        }
    }
    figures.push(Figure::plain("volume", &w::VOLUME, Amount::Room(answer.volume)));
    let next = if input.by == By::Rough { &w::NEXT_ROUGH } else { &w::NEXT };
    Sheet {
        headline: Figure::plain("air", &w::AIR, answer.air.into()),
        lead: None,
        next: Some(say!(w::CHANGES_SAID, answer.changes, next)),
        figures,
        checks: checks(input, answer),
        working: working(input, answer),
        parts: Vec::new(),
        materials: Vec::new(),
        cautions: super::RoomAir::cautions(None),
        drawing: None,
    }
}

/// None is a rule: past it they ask.
fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let [least, most] = A_SQUARE_FOOT.map(|value| Limit { value, source: &RULE });
    let name = || (&w::CHECK_FOOT).into();
    let low = at_least("air-a-foot", name(), answer.a_foot, least);
    let high = at_most("air-a-foot", name(), answer.a_foot, most);
    let foot = if low.verdict == Verdict::Within { high } else { low };
    let over =
        |check: Check, why| if check.verdict == Verdict::Over { ask(check, why) } else { check };
    let mut all = vec![over(foot, &w::ASK_FOOT)];
    if input.by == By::Rough {
        let [least, most] = WARMER.map(|value| Limit { value, source: &WARM });
        let name = || (&w::CHECK_WARM).into();
        let low = at_least("warm", name(), input.warm, least);
        let high = at_most("warm", name(), input.warm, most);
        all.push(over(if low.verdict == Verdict::Within { high } else { low }, &w::ASK_WARM));
    }
    if let Some(given) = answer.given {
        let needed = Limit { value: answer.air, source: &SHARE };
        let given = at_least("given", (&w::CHECK_GIVEN).into(), given, needed);
        all.push(over(given, &w::ASK_GIVEN));
    }
    all
}

fn working(input: &Input, answer: &Answer) -> Vec<Step> {
    let mut all = Vec::new();
    let mut add = |key: &str, name: &'static Phrase, expr, source: Option<&'static Source>| {
        all.push(Step { key: key.to_owned(), name: name.into(), expr, source });
    };
    for (key, name, loss) in &answer.losses {
        add(key, name, loss.clone(), Some(&LOSS));
    }
    if !answer.losses.is_empty() {
        let losses = answer.losses.iter().filter_map(|(_, _, loss)| measured(loss.clone()));
        add("heat", &w::HEAT, Expr::Sum(losses.map(Expr::measure).collect()), Some(&LOSS));
    }
    add("density", &w::DENSITY, Expr::measure(answer.density), Some(&THINNER));
    add("carries", &w::CARRIES, carries(answer.density), Some(&SENSIBLE));
    add("air", &w::AIR, air(input, answer), Some(&SENSIBLE));
    add("changes", &w::CHANGES, changes(answer), None);
    if let (Some(system), Some(house)) = (input.system, input.house) {
        let share = Expr::measure(answer.heat).over(Expr::measure(house)).told_in(&PERCENT);
        add("share", &w::SHARE, share, Some(&SHARE));
        add("given", &w::GIVEN, given(answer.heat, house, system), Some(&SHARE));
    }
    all
}
