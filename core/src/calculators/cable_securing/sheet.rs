//! The answer as it is shown.

use super::Calculator;
use super::words as w;
use super::{Answer, Input};
use crate::edition::Electrical;
use crate::measure::Length;
use crate::rules::compare::{Limit, at_most, unverified};
use crate::rules::electrical::cable_securing::{from_box, spacing};
use crate::say;
use crate::sheet::{
    Anchor, Check, Drawing, Expr, Figure, Ink, Line, Material, Point, Sheet, Step, Surface,
};
use crate::words::{Amount, Phrase};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let figure = |key, name, length: Length| Figure::plain(key, name, length.into());
    Sheet {
        headline: Figure::plain("staples", &w::STAPLES, Amount::Count(answer.staples)),
        lead: Some(0),
        next: None,
        figures: vec![
            figure("gap", &w::GAP, answer.gap),
            figure("first", &w::FIRST, answer.first),
            figure("last", &w::LAST, answer.last),
        ],
        checks: checks(input, answer),
        working: working(input, answer),
        parts: Vec::new(),
        materials: vec![Material {
            key: "staple".to_owned(),
            name: (&w::STAPLE).into(),
            amount: Amount::Count(answer.staples),
        }],
        cautions: super::CableSecuring::cautions(None),
        drawing: Some(drawing(input, answer)),
    }
}

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    type Clause<'a> = &'a dyn Fn(Electrical) -> Option<Limit<Length>>;
    let check = |key, name: &'static Phrase, value: Length, clause: Clause<'_>| {
        let check = at_most(key, name.into(), value, answer.edition.or_newest(clause)?);
        Some(if clause(answer.edition).is_some() { check } else { unverified(check) })
    };
    let from = |end| move |edition| from_box(edition, end);
    let mut checks = Vec::new();
    checks.extend(check("apart", &w::CHECK_GAP, answer.gap, &spacing));
    checks.extend(check("first", &w::CHECK_FIRST, answer.first, &from(input.from)));
    checks.extend(check("last", &w::CHECK_LAST, answer.last, &from(input.to)));
    checks
}

fn working(input: &Input, answer: &Answer) -> Vec<Step> {
    let source = answer.edition.or_newest(spacing).map(|limit| limit.source);
    let step = |key: &str, name: &'static Phrase, expr| Step {
        key: key.to_owned(),
        name: name.into(),
        expr,
        source,
    };
    let less =
        Expr::length(input.run).less(Expr::length(answer.first)).less(Expr::length(answer.last));
    let between = Expr::Most(vec![Expr::length(Length::ZERO), less]);
    let gaps =
        Expr::RoundUp(Box::new(Expr::length(answer.between).over(Expr::length(input.spacing))));
    let mut steps = vec![
        step("between", &w::BETWEEN, between),
        step("staples", &w::STAPLES, Expr::Sum(vec![Expr::count(1), gaps])),
    ];
    if answer.staples > 1 {
        let even = Expr::length(answer.between).over(Expr::count(answer.staples - 1));
        steps.push(step("gap", &w::GAP, even));
    }
    steps
}

/// Staples past this many run together on a phone, and the drawing shows only this many.
const MOST_DRAWN: i64 = 60;

/// The run from box to box on a page 288 px wide.
fn drawing(input: &Input, answer: &Answer) -> Drawing {
    let unit = input.run.part(240).max(Length::from_nanometres(1));
    let px = |count: i64| unit.times(count);
    let (left, line) = (px(24), px(52));
    let right = left.plus(input.run);
    let path = |line, points, closed, means: &'static Phrase| Ink::Path {
        line,
        points,
        closed,
        surface: Surface::Open,
        means: Some(means.into()),
    };
    let mut ink = Vec::new();
    for (x, back) in [(left, -12), (right, 12)] {
        let far = x.plus(px(back));
        let corners = [(x, 40), (far, 40), (far, 64), (x, 64)];
        let points = corners.map(|(x, y)| Point::new(x, px(y))).to_vec();
        ink.push(path(Line::Cut, points, true, &w::FROM));
    }
    ink.push(path(
        Line::Seen,
        vec![Point::new(left, line), Point::new(right, line)],
        false,
        &w::CABLE,
    ));
    let only = answer.staples == 1;
    for number in 0..answer.staples.min(MOST_DRAWN) {
        // One staple stands where both ends allow it; more go from the first on.
        let off = if only {
            answer.first.min(input.run.part(2))
        } else {
            answer.first.plus(answer.gap.times(number))
        };
        let x = left.plus(off.min(input.run));
        let points = vec![Point::new(x, line.minus(px(7))), Point::new(x, line.plus(px(7)))];
        ink.push(path(Line::Cut, points, false, &w::AT));
    }
    let label = |x, y, anchor, text| Ink::Label { at: Point::new(x, px(y)), anchor, text };
    ink.push(label(px(12), 10, Anchor::Start, say!(w::LABEL_FIRST, answer.first)));
    ink.push(label(px(276), 10, Anchor::End, say!(w::LABEL_LAST, answer.last)));
    let mut twin = vec![say!(w::TWIN, answer.staples, input.run, answer.first, answer.last)];
    if !only {
        ink.push(label(px(144), 28, Anchor::Middle, say!(w::LABEL_GAP, answer.gap)));
        twin.push(say!(w::TWIN_GAP, answer.gap));
    }
    let under = px(92);
    ink.push(Ink::Dimension { from: Point::new(left, under), to: Point::new(right, under) });
    Drawing { title: (&w::DRAWING).into(), width: px(288), height: px(100), ink, twin }
}
