//! The answer as it is shown.

use super::Calculator;
use super::drawing::drawing;
use super::words as w;
use super::{Answer, Input, Roof, flat_name};
use crate::measure::Length;
use crate::rules::compare::{Limit, ask, at_least, at_most, is_at_most};
use crate::rules::framing::engineer::MOVED;
use crate::rules::framing::gable_ties::{
    AIR_SPACE, DEEPEST_RIDGE, LEAST_SLOPE, SCOPE, TIES_APART, highest,
};
use crate::say;
use crate::sheet::{Check, Figure, Part, PartRow, Sheet, Verdict};
use crate::words::{Amount, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let trusses = input.roof == Roof::Trusses;
    let headline = match answer.flat {
        Some(flat) => Figure::plain("flat-width", flat_name(input), flat.into()),
        None => Figure::plain("rise", &w::RISE, answer.rise.into()),
    };
    Sheet {
        headline,
        lead: Some(0),
        next: Some(if trusses { &w::FIRST_TRUSS } else { &w::FIRST }.into()),
        figures: figures(input, answer),
        checks: checks(input, answer),
        working: answer.steps.0.clone(),
        parts: parts(input, answer),
        materials: Vec::new(),
        cautions: super::UnderAGable::cautions(None),
        drawing: (!trusses).then(|| drawing(input, answer)),
    }
}

fn figures(input: &Input, answer: &Answer) -> Vec<Figure> {
    let mut all = Vec::new();
    let mut add = |key, name, amount: Option<Amount>| {
        if let Some(amount) = amount {
            all.push(Figure::plain(key, name, amount));
        }
    };
    if answer.flat.is_some() {
        add("rise", &w::RISE, Some(answer.rise.into()));
        add("under-ridge", &w::RIDGE_UNDER, input.ridge.map(Amount::Length));
        add("share", &w::SHARE, answer.share.map(Amount::Measure));
        add("load", &w::ON_FLAT, Some(answer.load.into()));
    }
    if let Some(tied) = answer.tied {
        add("thrust", &w::THRUST, Some(tied.thrust.into()));
        add("tie", &w::TIE, Some(tied.tie.into()));
        if input.up() > Length::ZERO {
            add("thrust-now", &w::THRUST_NOW, Some(tied.thrust_now.into()));
            add("tie-now", &w::TIE_NOW, Some(tied.tie_now.into()));
        }
    }
    if let Some(carried) = answer.carried {
        add("ridge", &w::RIDGE, Some(carried.ridge.into()));
        add("wall", &w::WALL, Some(carried.wall.into()));
    }
    if let Some(rows) = answer.rows {
        add("rafter-factor", &w::RAFTERS, Some(rows.rafters.times.into()));
        add("nail-factor", &w::NAIL_FACTOR, Some(rows.heel_times.into()));
        add("nails", &w::NAIL_COUNT, rows.nails.map(Amount::Count));
    }
    add("eave", &w::EAVE, answer.eave.map(Amount::Length));
    add("slope", &w::SLOPE, answer.slope.map(Amount::Length));
    add("wanted", &w::WANTED, answer.wanted.map(Amount::Length));
    all
}

/// The engineer's line comes first where something moves, and no line is within where the gable is
/// outside the tables.
fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let inside = |check: Check| {
        let pass = answer.outside && check.verdict == Verdict::Within;
        if pass { ask(check, &w::ASK_SCOPE) } else { check }
    };
    let name = |phrase: &'static Phrase| Text::from(phrase);
    let mut all = Vec::new();
    if matches!(input.roof, Roof::Board | Roof::Unknown) {
        let third = highest(input.height(answer.rise));
        let third = at_most("third", name(&w::CHECK_THIRD), input.up(), third);
        // A third by span and slope may be more than one under a deep ridge.
        let sure = is_at_most(input.up(), highest(answer.under_ridge));
        let third = match third.verdict {
            Verdict::Within if !sure => ask(third, &w::ASK_RIDGE),
            _ => inside(third),
        };
        let slope = at_least("low-slope", name(&w::CHECK_SLOPE), input.pitch, LEAST_SLOPE);
        // Under a slope that is too low no tie helps: that comes first.
        let is_low = slope.verdict == Verdict::Over;
        all.extend([third, inside(slope)]);
        if is_low {
            all.swap(0, 1);
        }
        let apart = at_most("apart", name(&w::CHECK_SPACING), input.spacing, TIES_APART);
        let wide = apart.verdict == Verdict::Over;
        all.push(if wide { ask(apart, &w::ASK_SPACING) } else { inside(apart) });
    }
    if input.roof != Roof::Trusses {
        let moved = at_most("moved", name(&w::CHECK_MOVED), input.up(), MOVED);
        all.push(match (input.roof, moved.verdict) {
            (Roof::Beam, _) => ask(moved, &w::ASK_BEAM),
            (_, Verdict::Over) => ask(moved, &w::ASK_MOVED),
            _ => inside(moved),
        });
    }
    if !answer.stops.is_empty() {
        let stops = answer.stops.len() as i64;
        let none = Limit { value: 0_i64, source: &SCOPE };
        let scope = at_most("scope", name(&w::CHECK_SCOPE), stops, none);
        let only_unknown = input.roof == Roof::Unknown && stops == 1;
        all.push(if only_unknown { ask(scope, &w::ASK_ROOF) } else { scope });
    }
    for (key, phrase, left) in
        [("eave", &w::CHECK_EAVE, answer.eave), ("slope", &w::CHECK_FILL, answer.slope)]
    {
        if let (Some(left), Some(wanted)) = (left, answer.wanted) {
            let wanted = Limit { value: wanted, source: &AIR_SPACE };
            let check = at_least(key, name(phrase), left, wanted);
            let fits = check.verdict == Verdict::Within;
            all.push(if fits { ask(check, &w::ASK_AIR) } else { check });
        }
    }
    all
}

fn parts(input: &Input, answer: &Answer) -> Vec<Part> {
    let line = |name: Text, value: Text| PartRow { name, value, puts: Vec::new() };
    let mut all = Vec::new();
    if !answer.stops.is_empty() {
        let mut rows = Vec::new();
        for stop in &answer.stops {
            let unknown = std::ptr::eq(*stop, &w::UNKNOWN);
            let (name, value) = if unknown { (&w::ROOF, *stop) } else { (*stop, &w::STOP) };
            rows.push(line(name.into(), value.into()));
        }
        all.push(Part::plain("why", &w::WHY_PART, None, rows));
    }
    if let Some(rows) = answer.rows {
        let row = |phrase, share: &str, times| {
            let name = Text { phrase, args: vec![share.into()] };
            line(name, say!(w::TIMES, times))
        };
        let rows = vec![
            row(&w::ROW_RAFTERS, rows.rafters.share, rows.rafters.times),
            row(&w::ROW_NAILS, rows.heel.share, rows.heel_times),
        ];
        let measured = input.ridge.is_some() || input.up() == Length::ZERO;
        let note = (!measured).then(|| say!(w::ROWS_NOTE, DEEPEST_RIDGE));
        all.push(Part::new("rows", (&w::ROWS_PART).into(), note, rows));
    }
    all
}
