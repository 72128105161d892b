//! The answer as it is shown: the order with its reasons, a page for each place, and what to ask.

use super::drawing::drawing;
use super::words as w;
use super::{Against, Answer, Input, Place, Worked, down_to_inch, name};
use crate::calculators::register_throw::{handed_over, questions, to_inch};
use crate::measure::Length;
use crate::rules::air::clearances::{ALARM, FROM_ALARM, GLASS, HEATS, NEAR_GLASS};
use crate::rules::air::jets::{LAST, THROW, throw};
use crate::rules::air::placing::{FLAME, FLUE, FROM_FLAME};
use crate::rules::compare::{ask, at_least, at_most, is_at_least, is_at_most};
use crate::say;
use crate::sheet::{Caution, Check, Figure, Part, PartRow, Sheet, Step, Verdict};
use crate::words::{Amount, Text};

const KEYS: [&str; 4] = ["place-1", "place-2", "place-3", "place-4"];
const THROW_KEYS: [&str; 4] = ["throw-1", "throw-2", "throw-3", "throw-4"];

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let (at, first) = answer.first();
    let mut figures = Vec::new();
    let mut parts = vec![order(input, answer)];
    for (at, spot) in answer.spots.iter().enumerate() {
        let name = say!(w::THROW_OF, name(input, at));
        figures.push(Figure::new(THROW_KEYS[at], name, spot.throw.told().into()));
        parts.push(handed(input, at, spot));
    }
    parts.push(questions(input.flue.there));
    let headline = Figure::plain("place", &w::FIRST, Amount::Count(at as i64 + 1));
    Sheet {
        headline: Figure { said: Some(name(input, at)), ..headline },
        lead: None,
        next: Some(next(input, answer)),
        figures,
        checks: checks(input, answer, at, first),
        working: working(input, answer),
        parts,
        materials: Vec::new(),
        cautions: cautions(Some(input)),
        drawing: Some(drawing(input, answer)),
    }
}

/// The places as they were put in, with what speaks against each; a return near a flue before all.
fn next(input: &Input, answer: &Answer) -> Text {
    if let Some(to) = answer.return_to_flue.filter(|to| !is_at_least(*to, FROM_FLAME)) {
        return say!(w::NEXT_FLUE, down_to_inch(to), FROM_FLAME.value);
    }
    let (best, _) = answer.first();
    let mut all: Option<Text> = None;
    for (at, spot) in answer.spots.iter().enumerate() {
        let (throw, way) = (spot.throw.told(), to_inch(spot.way));
        let said = match input.spots[at].place {
            Place::Floor => say!(w::UP_OF, throw, way, reason(spot)),
            Place::Round => say!(w::ROUND_OF, throw, way, reason(spot)),
            _ => say!(w::ACROSS_OF, throw, way, reason(spot)),
        };
        let name = name(input, at);
        let said = if at == best { say!(w::BEST, name, said) } else { say!(w::OTHER, name, said) };
        all = Some(match all {
            None => said,
            Some(before) => say!(w::TWO, before, said),
        });
    }
    say!(w::TWO, all.unwrap_or_else(|| (&w::NO_SPOTS).into()), &w::NO_VERDICT)
}

pub(super) fn cautions(input: Option<&Input>) -> Vec<Caution> {
    let mut all = Caution::all(&[
        (&FLUE, Some(&FLAME)),
        (&w::ESTIMATE, None),
        (ALARM.says, Some(&ALARM)),
        (FLAME.says, Some(&FLAME)),
        (GLASS.says, Some(&GLASS)),
        (&w::OLD_HOLE, None),
        (&w::SHUT_DOWN, None),
        (&w::OLD, None),
    ]);
    if input.is_some_and(|it| !it.flue.there) {
        all.remove(0);
    }
    all
}

fn checks(input: &Input, answer: &Answer, at: usize, first: &Worked) -> Vec<Check> {
    let mut all = Vec::new();
    if let Some(to) = first.to_alarm {
        let check = at_least("alarm", (&w::CHECK_ALARM).into(), down_to_inch(to), FROM_ALARM);
        let stream = first.meets_alarm && check.verdict == Verdict::Within;
        all.push(if stream { ask(check, &w::IN_STREAM) } else { check });
    }
    if let Some(to) = answer.return_to_flue {
        all.push(at_least("flue", (&w::CHECK_FLUE).into(), down_to_inch(to), FROM_FLAME));
    }
    if first.against.contains(&Against::Heat) {
        // Nothing is compared: what is moved off the glass is told as that.
        let from_glass = input.spots[0].place == Place::Floor
            && at != 0
            && answer.spots[0].to_window.is_some_and(|to| is_at_most(to, NEAR_GLASS));
        let why = if from_glass { &w::HEAT_MOVED } else { &w::HEAT_ABOVE };
        all.push(ask(at_most("heating", (&w::CHECK_HEAT).into(), 0_i64, HEATS), why));
    }
    all.extend(first.throw.checks.iter().cloned());
    all
}

fn working(input: &Input, answer: &Answer) -> Vec<Step> {
    let mut all = Vec::new();
    for (at, spot) in answer.spots.iter().enumerate() {
        let of = &spot.throw;
        let expr = throw(of.k, of.air[1], of.area, LAST);
        let key = ["formula-", THROW_KEYS[at]].concat();
        all.push(Step { key, name: name(input, at), expr, source: Some(&THROW) });
    }
    all
}

/// All that speaks against a place.
fn reason(spot: &Worked) -> Text {
    let mut all = spot.against.iter().map(|against| Text::from(against.words()));
    let Some(first) = all.next() else { return (&w::CLEAR).into() };
    all.fold(first, |sum, one| say!(w::BOTH, sum, one))
}

fn read(name: Text, value: Text) -> PartRow {
    PartRow { name, value, puts: Vec::new() }
}

fn order(input: &Input, answer: &Answer) -> Part {
    let mut rows = Vec::new();
    for (at, spot) in answer.spots.iter().enumerate() {
        let rank = 1 + answer.order.iter().take_while(|other| **other != at).count();
        let value = say!(w::RANKED, rank as i64, answer.order.len() as i64, reason(spot));
        rows.push(read(name(input, at), value));
    }
    Part::plain("order", &w::ORDER, Some(&w::ORDER_NOTE), rows)
}

/// What the sub is given of a place.
fn handed(input: &Input, at: usize, spot: &Worked) -> Part {
    let to = |length: Option<Length>| length.map(|length| Amount::Length(to_inch(length)));
    let [x, y] = spot.at;
    let near = [
        (&w::FROM_LEFT, Some(x.into())),
        (&w::FROM_TOP, Some(y.into())),
        (&w::ROW_WAY, to(Some(spot.way))),
        (&w::ROW_SWEEP, spot.sweeps.map(Amount::Measure)),
        (&w::ROW_ALARM, to(spot.to_alarm)),
        (&w::ROW_RETURN, to(spot.to_return)),
        (&w::ROW_GLASS, to(spot.to_window)),
    ];
    handed_over(KEYS[at], Some(name(input, at)), &spot.register, &spot.throw, &near)
}
