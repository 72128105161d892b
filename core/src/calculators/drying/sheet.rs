//! The answer as it is shown.

use super::Calculator;
use super::words as w;
use super::{Answer, Flue, Input, Way};
use crate::measure::Measure;
use crate::measure::unit::{FAHRENHEIT, HOUR, PERCENT};
use crate::rules::compare::{Limit, at_least, at_most, settle};
use crate::rules::finish::drying::{
    AGAIN, CLOCKS, LEAST_SETTING, LEAST_WARM, SETTING, TABLE, TEMPERATURES, is_warm,
    is_worth_a_window,
};
use crate::rules::finish::vapor::FLUES;
use crate::say;
use crate::sheet::{Check, Expr, Figure, Part, PartRow, Sheet, Steps, Table, TableRow, Verdict};
use crate::words::{Arg, Text};

/// By its label's clock: humidity has no part in it.
fn by_clock(input: &Input, at: usize) -> Sheet {
    let hours = |minutes: i64| Measure::new(&HOUR, minutes * 1_000_000 / 60);
    let [least, most] = CLOCKS[at].1;
    let mut working = Steps::default();
    let mut figure = |key, name, minutes| {
        working.measure(key, name, Some(&SETTING), &HOUR, Expr::measure(hours(minutes)));
        Figure::plain(key, name, hours(minutes).into())
    };
    let headline = figure("again", &w::AGAIN_AFTER, AGAIN[at]);
    let figures =
        vec![figure("least", &w::WORKS_LEAST, least), figure("most", &w::WORKS_MOST, most)];
    let name = (&w::CHECK_WARM).into();
    Sheet {
        headline,
        lead: None,
        next: Some((&w::CLOCKS_NOTE).into()),
        figures,
        checks: vec![at_least("temperature", name, input.temperature, LEAST_SETTING)],
        working: working.0,
        parts: vec![clocks()],
        materials: Vec::new(),
        cautions: super::Drying::cautions(Some(input)),
        drawing: None,
    }
}

fn clocks() -> Part {
    let mut rows = Vec::new();
    for ((label, [least, most]), again) in CLOCKS.into_iter().zip(AGAIN) {
        let value = say!(w::CLOCK_VALUE, least, most, again);
        rows.push(PartRow { name: say!(w::CLOCK, label), value, puts: Vec::new() });
    }
    let note = Some((&w::CLOCKS_NOTE).into());
    Part::new("clocks", (&w::CLOCKS).into(), note, rows)
}

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    if let Some(clock) = input.mud.clock() {
        return by_clock(input, clock);
    }
    let mut figures = figures(input, answer);
    let name = say!(w::TO_DRY_AT, input.thick, input.temperature, input.humidity);
    figures.push(Figure::new("hours", name, answer.hours.into()));
    let key = match answer.open {
        _ if !input.spells.is_empty() => "left",
        Some(_) => "hours-let-in",
        None => "hours",
    };
    let at = figures.iter().position(|figure| figure.key == key).unwrap_or(0);
    let headline = figures.remove(at);
    Sheet {
        headline,
        lead: None,
        next: Some(next(input, answer)),
        figures,
        checks: checks(input),
        working: answer.working.0.clone(),
        parts: parts(input, answer),
        materials: Vec::new(),
        cautions: super::Drying::cautions(Some(input)),
        drawing: None,
    }
}

fn next(input: &Input, answer: &Answer) -> Text {
    let changes = answer.water.and_then(|water| water.changes);
    let window = answer.outdoors.map(|outdoors| match outdoors.hours {
        _ if !is_warm(input.temperature) => &w::NEXT_HEAT,
        Some(open) if outdoors.drier => {
            let worth = is_worth_a_window(answer.hours, open, changes);
            if worth { &w::NEXT_OPEN } else { &w::NEXT_SAME }
        }
        _ => &w::NEXT_KEEP,
    });
    if input.spells.is_empty() {
        return window.unwrap_or(&w::NEXT_FRESH).into();
    }
    let so_far = if answer.left.millionths() > 0 {
        say!(w::NEXT_LEFT, answer.done, answer.left)
    } else {
        (&w::NEXT_DRY).into()
    };
    match window {
        Some(window) => say!(w::NEXT_BOTH, so_far, window),
        None => so_far,
    }
}

fn figures(input: &Input, answer: &Answer) -> Vec<Figure> {
    let mut all = Vec::new();
    let mut add = |key, name, measure: Option<Measure>| {
        all.extend(measure.map(|measure| Figure::plain(key, name, measure.into())));
    };
    let [low, high] = answer.range;
    let spells = !input.spells.is_empty();
    add("low", &w::AT_LEAST, Some(low));
    add("high", &w::AT_MOST, Some(high));
    add("left", &w::LEFT, spells.then_some(answer.left));
    add("done", &w::DONE, spells.then_some(answer.done));
    add("in-table", &w::IN_TABLE, answer.in_table);
    add("dew", &w::DEW, answer.dew);
    if let Some(outdoors) = answer.outdoors {
        add("out-dew", &w::OUT_DEW, outdoors.dew);
        add("let-in", &w::LET_IN, Some(outdoors.humidity));
        add("hours-let-in", &w::WITH_OUT, outdoors.hours);
    }
    if let Some(water) = answer.water {
        add("water", &w::WATER, Some(water.weight));
        add("pints", &w::PINTS, Some(water.pints));
        add("pints-a-day", &w::A_DAY, Some(water.a_day));
        add("air", &w::AIR, water.air);
        add("changes", &w::CHANGES, water.changes);
        add("heat", &w::HEAT, water.heat);
    }
    all
}

fn checks(input: &Input) -> Vec<Check> {
    let warm = at_least("temperature", (&w::CHECK_WARM).into(), input.temperature, LEAST_WARM);
    let cold = warm.verdict == Verdict::Over;
    let mut all = vec![Check { note: cold.then(|| (&w::WARM_IT).into()), ..warm }];
    if input.way == Way::Fan {
        let flues = i64::from(input.flue == Flue::There);
        let check =
            at_most("flue", (&w::CHECK_FLUE).into(), flues, Limit { value: 0, source: &FLUES });
        all.push(match input.flue {
            Flue::NotSaid => settle(check, &w::ASK_FLUE),
            Flue::There => Check { note: Some((&w::STOP_FLUE).into()), ..check },
            Flue::None => check,
        });
    }
    all
}

fn parts(input: &Input, answer: &Answer) -> Vec<Part> {
    let row = |name: Text, value: Text| PartRow { name, value, puts: Vec::new() };
    let mut all = Vec::new();
    let mut so_far = Vec::new();
    for ((number, spell), takes) in (1..).zip(&input.spells).zip(&answer.spells) {
        let value = match (spell.hours, takes) {
            (Some(hours), Some(takes)) => say!(w::SPELL_TAKES, hours, *takes),
            _ => (&w::SPELL_NONE).into(),
        };
        so_far.push(row(say!(w::SPELL_NUMBER, number), value));
    }
    Part::add(&mut all, "so-far", &w::SO_FAR, None, so_far);
    all.push(hours(input));
    all.push(clocks());
    all
}

/// The published table; the humidity that is nearest to the room's is told.
fn hours(input: &Input) -> Part {
    let off = |percent: &Measure| input.humidity.minus(*percent).millionths().abs();
    let at = |unit, count| Measure::whole(unit, count);
    let nearest = TABLE.map(|(percent, _)| at(&PERCENT, percent)).into_iter().min_by_key(off);
    let mut heads = vec![(&w::HEAD_HUMIDITY).into()];
    heads.extend(TEMPERATURES.map(|degrees| say!(w::JUST, at(&FAHRENHEIT, degrees))));
    let mut rows = Vec::new();
    for (percent, hours) in TABLE {
        let bare = |hours| Arg::Bare(at(&HOUR, hours).into());
        let cells = hours.map(|hours| say!(w::JUST, bare(hours))).to_vec();
        rows.push(TableRow { name: say!(w::JUST, at(&PERCENT, percent)), cells });
    }
    Part {
        key: "table",
        title: (&w::TABLE).into(),
        note: nearest.map(|percent| say!(w::TABLE_NOTE, percent)),
        rows: Vec::new(),
        table: Some(Table { heads, rows }),
    }
}
