//! The answer as it is shown: the order with its reasons, a page for each place, and what to ask.

use super::drawing::drawing;
use super::words as w;
use super::{Answer, Input, Place, Worked, down_to_inch, name, share};
use crate::calculators::register_throw::to_inch;
use crate::measure::Length;
use crate::rules::air::clearances::{ALARM, FROM_ALARM, GLASS};
use crate::rules::air::jets::{LAST, THROW, throw};
use crate::rules::air::noise::sound;
use crate::rules::air::placing::{FLAME, FLUE, FROM_FLAME};
use crate::rules::compare::{ask, at_least, is_at_least};
use crate::say;
use crate::sheet::{Caution, Check, Figure, Part, PartRow, Sheet, Step, Verdict};
use crate::words::{Amount, Phrase, Text};

const KEYS: [&str; 4] = ["place-1", "place-2", "place-3", "place-4"];
const THROW_KEYS: [&str; 4] = ["throw-1", "throw-2", "throw-3", "throw-4"];

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let (at, first) = answer.first();
    let figure = |key, name, length: Length| Figure::new(key, name, length.into());
    let mut figures = Vec::new();
    let mut parts = vec![order(input, answer)];
    for (at, spot) in answer.spots.iter().enumerate() {
        figures.push(figure(THROW_KEYS[at], name(input, at), spot.throw.told()));
        parts.push(handed_over(input, at, spot));
    }
    parts.push(questions(input));
    Sheet {
        headline: figure("throw-50", say!(w::FIRST, name(input, at)), first.throw.told()),
        lead: None,
        next: Some(next(input, answer)),
        figures,
        checks: checks(answer, first),
        working: working(input, answer),
        parts,
        materials: Vec::new(),
        cautions: cautions(Some(input)),
        drawing: Some(drawing(input, answer)),
    }
}

fn next(input: &Input, answer: &Answer) -> Text {
    let (at, first) = answer.first();
    match answer.return_to_flue {
        Some(to) if !is_at_least(to, FROM_FLAME) => {
            say!(w::NEXT_FLUE, down_to_inch(to), FROM_FLAME.value)
        }
        _ => say!(w::BEST, name(input, at), reason(first)),
    }
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

fn checks(answer: &Answer, first: &Worked) -> Vec<Check> {
    let mut all = Vec::new();
    if let Some(to) = first.to_alarm {
        let check = at_least("alarm", (&w::CHECK_ALARM).into(), down_to_inch(to), FROM_ALARM);
        let stream = first.meets_alarm && check.verdict == Verdict::Within;
        all.push(if stream { ask(check, &w::IN_STREAM) } else { check });
    }
    if let Some(to) = answer.return_to_flue {
        all.push(at_least("flue", (&w::CHECK_FLUE).into(), down_to_inch(to), FROM_FLAME));
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
    let row = |at: &usize| read(name(input, *at), reason(&answer.spots[*at]));
    let rows = answer.order.iter().map(row).collect();
    Part { key: "order", title: (&w::ORDER).into(), note: Some((&w::ORDER_NOTE).into()), rows }
}

/// What the sub is given of a place.
fn handed_over(input: &Input, at: usize, spot: &Worked) -> Part {
    let mut rows = Vec::new();
    let place = input.spots[at].place;
    let register = if place == Place::Round {
        say!(w::NECKED, place.label(), input.neck)
    } else {
        say!(w::SIZED, place.label(), input.size.label())
    };
    rows.push(read((&w::ROW_REGISTER).into(), register));
    let throw = &spot.throw;
    let [low, middle, high] = throw.air;
    let throws = throw.throws[0].map(|throw| throw.map(to_inch));
    let (air, reach) = match throws {
        _ if !throw.is_range() => (say!(w::ONE, middle), say!(w::ONE, throw.told())),
        [Some(least), _, Some(most)] => {
            (say!(w::RANGE, middle, low, high), say!(w::RANGE, throw.told(), least, most))
        }
        [_, _, most] => {
            let most = most.unwrap_or_default();
            (say!(w::RANGE, middle, low, high), say!(w::RANGE_LOW, throw.told(), most))
        }
    };
    rows.push(read((&w::ROW_AIR).into(), air));
    rows.push(read((&w::ROW_THROW).into(), reach));
    let mut some = |name: &'static Phrase, amount: Option<Amount>| {
        if let Some(amount) = amount {
            rows.push(read(name.into(), say!(w::ONE, amount)));
        }
    };
    some(&w::ROW_WAY, Some(Amount::Length(to_inch(spot.way))));
    some(&w::ROW_FIT, share(throw.throw(), spot.way).map(Amount::Measure));
    some(&w::ROW_SWEEP, spot.sweeps.map(Amount::Measure));
    some(&w::ROW_ALARM, spot.to_alarm.map(|to| Amount::Length(to_inch(to))));
    some(&w::ROW_RETURN, spot.to_return.map(|to| Amount::Length(to_inch(to))));
    some(&w::ROW_GLASS, spot.to_window.map(|to| Amount::Length(to_inch(to))));
    if let Some(bend) = throw.bend {
        let [least, most] = bend.by;
        rows.push(read(say!(w::ROW_DROP, bend.end), say!(w::BAND, least, most)));
    }
    rows.push(read((&w::ROW_SOUND).into(), sound(throw.speeds()[1])));
    Part { key: KEYS[at], title: name(input, at), note: None, rows }
}

fn questions(input: &Input) -> Part {
    let rows = [
        (&w::ASK_FLUE, &w::ASK_FLUE_2),
        (&w::ASK_LOAD, &w::ASK_LOAD_2),
        (&w::ASK_PRESSURE, &w::ASK_PRESSURE_2),
        (&w::ASK_DUCT, &w::ASK_DUCT_2),
        (&w::ASK_DAMPER, &w::ASK_DAMPER_2),
        (&w::ASK_RETURN, &w::ASK_RETURN_2),
    ];
    let rows = &rows[usize::from(!input.flue.there)..];
    let rows = rows.iter().map(|(name, value)| read((*name).into(), (*value).into())).collect();
    Part { key: "ask", title: (&w::ASK).into(), note: None, rows }
}
