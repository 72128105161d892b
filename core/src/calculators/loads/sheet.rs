//! The answer as it is shown: figures, what they add up to, and checks that all ask.

use super::Calculator;
use super::drawing::drawing;
use super::words as w;
use super::{Answer, Input};
use crate::rules::compare::{Limit, ask, at_most};
use crate::rules::framing::bearing::LEAST_BEARING;
use crate::rules::framing::design_loads::RUN_THROUGH;
use crate::rules::framing::engineer::SIZED;
use crate::say;
use crate::sheet::{Caution, Check, Figure, Part, PartRow, Sheet};
use crate::words::{Amount, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let mut cautions = super::Loads::cautions(None);
    if answer.bearing.is_some() {
        let source = Some(&LEAST_BEARING);
        cautions.push(Caution { text: LEAST_BEARING.says.into(), source });
    }
    Sheet {
        headline: Figure::plain("line", &w::LINE, answer.line.into()),
        lead: None,
        next: Some((&w::FIRST).into()),
        figures: figures(answer),
        checks: checks(input),
        working: answer.steps.0.clone(),
        parts: parts(input, answer),
        materials: Vec::new(),
        cautions,
        drawing: drawing(input, answer),
    }
}

fn figures(answer: &Answer) -> Vec<Figure> {
    let mut all = Vec::new();
    let mut add = |key, name, amount: Option<Amount>| {
        if let Some(amount) = amount {
            all.push(Figure::plain(key, name, amount));
        }
    };
    let [dead, live, roof] = answer.lines;
    let [left, right] = answer.ends;
    add("tributary", &w::TRIBUTARY, Some(answer.tributary.into()));
    add("factor", &w::FACTOR, answer.factor.map(Amount::Measure));
    add("dead", &w::DEAD_LINE, Some(dead.into()));
    add("live", &w::LIVE_LINE, Some(live.into()));
    add("roof", &w::ROOF_LINE, (roof.millionths() > 0).then_some(roof.into()));
    add("left", &w::REACTION_LEFT, Some(left.into()));
    add("right", &w::REACTION_RIGHT, Some(right.into()));
    all
}

/// What is not compared with anything can't be within it: each of these asks.
fn checks(input: &Input) -> Vec<Check> {
    let asked =
        |key, name: &'static Phrase, limit, why| ask(at_most(key, name.into(), 0_i64, limit), why);
    let mut all = vec![asked("sized", &w::CHECK_SIZED, SIZED, &w::ASK_SIZED)];
    if input.through {
        let limit = Limit { value: 0, source: &RUN_THROUGH };
        all.push(asked("through", &w::CHECK_THROUGH, limit, &w::ASK_THROUGH));
    }
    all
}

fn parts(input: &Input, answer: &Answer) -> Vec<Part> {
    let line = |name: Text, value: Text| PartRow { name, value, puts: Vec::new() };
    let row = |name: &'static Phrase, amount: Amount| line(name.into(), say!(w::ROW, amount));
    let mut all = Vec::new();
    let mut sums = Vec::new();
    for sum in &answer.sums {
        let value = if sum.left == sum.right {
            say!(w::SUM_EVEN, sum.line, sum.left)
        } else {
            say!(w::SUM, sum.line, sum.left, sum.right)
        };
        sums.push(line(say!(w::ROW, sum.of.sum), value));
    }
    all.push(Part::plain("sums", &w::SUMS, None, sums));
    if let Some(bearing) = answer.bearing {
        let mut rows = vec![row(&w::STRESS, bearing.stress.into())];
        match bearing.published {
            Some(published) => {
                rows.push(line(
                    say!(w::PUBLISHED, input.bearing.on.label()),
                    say!(w::ROW, published),
                ));
                rows.push(row(&w::LENGTH, bearing.length.into()));
            }
            None => rows.push(row(&w::LEAST, bearing.length.into())),
        }
        all.push(Part::plain("bearing", &w::BEARING, Some(&w::BEARING_NOTE), rows));
    }
    if input.shoring {
        let mut rows = Vec::new();
        let names = [(&w::SHORE_LEFT, &w::POST_LEFT), (&w::SHORE_RIGHT, &w::POST_RIGHT)];
        for ((each, post), shore) in names.into_iter().zip(answer.shores) {
            if let Some(shore) = shore {
                rows.push(row(each, shore.line.into()));
                rows.push(row(post, shore.post.into()));
            }
        }
        if input.roof || input.point || input.wall.millionths() > 0 {
            rows.push(line((&w::SHORE_LEFT_OUT).into(), (&w::SHORE_LEFT_OUT_IS).into()));
        }
        all.push(Part::plain("shoring", &w::SHORE_PART, Some(&w::SHORE_NOTE), rows));
    }
    all
}
