//! The answer as it is shown.

use super::Calculator;
use super::drawing::drawing;
use super::words as w;
use super::{Answer, Input, Known};
use crate::measure::Length;
use crate::rules::compare::{Limit, ask, at_least, at_most, is_at_most, settle, unverified};
use crate::rules::electrical::ampacity::behind;
use crate::rules::electrical::cable_length::{Ending, highest_box};
use crate::rules::electrical::continuous_load::most_for_hours;
use crate::rules::electrical::free_conductor::FREE_CONDUCTOR;
use crate::rules::electrical::guard_strips::{Entrance, GUARD_STRIPS};
use crate::rules::electrical::nail_protection::{along, below_deck, clear};
use crate::rules::electrical::rough_in::most_fed;
use crate::rules::electrical::voltage_drop::{IN_ALL, OF_BRANCH};
use crate::say;
use crate::sheet::{Check, Figure, Material, Sheet, Verdict};
use crate::words::{Amount, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let checks = checks(input, answer);
    let is_bad = |key: &str| checks.iter().any(|it| it.key == key && it.verdict != Verdict::Within);
    let next = [
        ("load", &w::NEXT_LOAD),
        ("carries", &w::NEXT_BREAKER),
        ("clear", &w::NEXT_STEEL),
        ("beside", &w::NEXT_FLAT),
    ]
    .into_iter()
    .find(|(key, _)| answer.edition.is_verified() && is_bad(key));
    Sheet {
        headline: Figure::plain("cut", &w::CUT, answer.cut.into()),
        lead: Some(0),
        next: next.map(|(_, phrase)| phrase.into()).or_else(|| advice(answer)),
        figures: figures(answer),
        working: answer.steps.0.clone(),
        parts: Vec::new(),
        materials: materials(input, answer),
        cautions: super::CableRun::cautions(None),
        drawing: Some(drawing(answer)),
        checks,
    }
}

/// What it loses past what is advised. Advice is no rule: it is said, and nothing is over for it.
fn advice(answer: &Answer) -> Option<Text> {
    let drop = answer.drop.as_ref()?;
    if !is_at_most(drop.share, OF_BRANCH) {
        return Some(say!(w::ADVICE, drop.share, OF_BRANCH.value));
    }
    let share = drop.in_all.filter(|share| !is_at_most(*share, IN_ALL))?;
    Some(say!(w::ADVICE_ALL, share, IN_ALL.value))
}

fn figures(answer: &Answer) -> Vec<Figure> {
    let mut all = Vec::new();
    let mut add = |key, name, amount| all.push(Figure::plain(key, name, amount));
    add("way", &w::WAY, answer.way.into());
    if let Some(roll) = answer.roll {
        add("roll", &w::ROLL, roll.into());
    }
    add("staples", &w::STAPLES, Amount::Count(answer.staples));
    add("holes", &w::HOLES, Amount::Count(answer.holes));
    if let Some(drop) = &answer.drop {
        add("drop", &w::DROP, drop.volts.into());
        add("share", &w::SHARE, drop.share.into());
        add("farthest", &w::FARTHEST, drop.farthest.into());
    }
    add("carries", &w::CARRIES, answer.here.into());
    if let Some(radius) = answer.radius {
        add("radius", &w::RADIUS, radius.into());
    }
    if let Some(weight) = answer.weight {
        add("weight", &w::WEIGHT, weight.into());
    }
    all
}

/// Holes in all: those in plates too.
fn holes(input: &Input, answer: &Answer) -> i64 {
    answer.holes.saturating_add(input.plates)
}

/// What it feeds against its breaker, and against what that lets stay on for hours: how long it stays
/// on, nobody is asked.
fn load(input: &Input, answer: &Answer, all: &mut Vec<Check>) {
    let Some(load) = input.load.amperes.filter(|load| load.millionths() > 0) else { return };
    let most = most_fed(answer.breaker);
    all.push(at_most("load", (&w::OF_LOAD).into(), load, most));
    let hours = answer.edition.or_newest(|edition| most_for_hours(edition, answer.breaker));
    if let Some(limit) = hours.filter(|limit| is_at_most(load, most) && !is_at_most(load, *limit)) {
        let check = at_most("load-hours", (&w::LOAD_HOURS).into(), load, limit);
        let says = say!(w::ASK_HOURS, limit.value);
        all.push(Check { note: Some(says), ..settle(check, &w::ASK_HOURS) });
    }
}

/// A box above where its cable goes up and over is a slip, or a way to be given part by part.
fn crossing(input: &Input, all: &mut Vec<Check>) {
    let Some(level) = input.level.filter(|_| input.known == Known::Over) else { return };
    let boxes =
        [("from-high", &w::FROM_HIGH, input.from_high), ("to-high", &w::TO_HIGH, input.to_high)];
    for (key, name, high) in boxes {
        let Some(high) = high else { continue };
        let check = at_most(key, name.into(), high, highest_box(level));
        if check.verdict != Verdict::Within {
            all.push(settle(check, &w::ASK_CROSSING));
        }
    }
}

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let mut all = Vec::new();
    let named = |phrase: &'static Phrase| Text::from(phrase);
    let edition = answer.edition;
    let known = answer.carries;
    all.push(behind("carries", named(&w::CARRIES), answer.here, answer.breaker, &known, answer.by));
    if let Some(largest) = known.largest {
        all.push(at_most("breaker", named(&w::OF_BREAKER), answer.breaker, largest));
    }
    load(input, answer, &mut all);
    crossing(input, &mut all);
    let free = Limit { value: answer.free, source: &FREE_CONDUCTOR };
    let ends = [("free-from", &w::MORE_FROM, input.from), ("free-to", &w::MORE_TO, input.to)];
    for ((key, name, ending), more) in ends.into_iter().zip(answer.more) {
        if ending != Ending::Panel {
            all.push(at_least(key, named(name), more, free));
        }
    }
    type Clause = Option<Limit<Length>>;
    let mut least = |key, name, value: Option<Length>, clause: Clause| {
        if let (Some(value), Some(limit)) = (value, clause) {
            all.push(at_least(key, named(name), value, limit));
        }
    };
    let wood = (holes(input, answer) > 0 && !input.covered).then_some(answer.wood);
    least("clear", &w::CLEAR, wood, edition.or_newest(clear));
    let edge = answer.edge.filter(|_| input.near.flat > 1);
    least("beside", &w::BESIDE, edge, edition.or_newest(along));
    least("deck", &w::BELOW_DECK, input.attic.deck, edition.or_newest(below_deck));
    if input.attic.entrance == Entrance::PullDown && answer.guarded > Length::ZERO {
        let limit = Limit { value: answer.guarded, source: &GUARD_STRIPS };
        let check = at_least("guarded", named(&w::GUARDED), answer.guarded, limit);
        all.push(ask(check, &w::ASK_PULL_DOWN));
    }
    if !edition.is_verified() {
        all = all.into_iter().map(unverified).collect();
    }
    all
}

fn materials(input: &Input, answer: &Answer) -> Vec<Material> {
    let mut all = Vec::new();
    let mut add = |key: String, name: Text, amount: Amount| {
        if amount.raw() > 0 {
            all.push(Material { key, name, amount });
        }
    };
    let cable = input.cable;
    let key = ["cable ", cable.key()].concat();
    add(key, say!(w::M_CABLE, cable.label()), answer.cut.into());
    add("staple".to_owned(), say!(w::M_STAPLE), Amount::Count(answer.staples));
    let steel = if input.covered { holes(input, answer) } else { 0 };
    add("steel-plate/cable".to_owned(), say!(w::M_STEEL), Amount::Count(steel));
    add("guard-strip".to_owned(), say!(w::M_STRIP), answer.guarded.times(2).into());
    all
}
