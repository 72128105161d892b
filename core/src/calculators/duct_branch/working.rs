//! Each figure as an equation with its numbers in.

use super::shown as s;
use super::{Answer, Input, cost};
use crate::measure::unit::{CFM, FACTOR, IN_WC};
use crate::rules::air::friction::FRICTION;
use crate::rules::air::rectangular::EQUIVALENT;
use crate::rules::air::run::{Duct, DuctKind};
use crate::rules::air::standard_air::STANDARD_AIR;
use crate::rules::air::working::{loss, near, velocity};
use crate::rules::air::{fittings::Cost, flex};
use crate::say;
use crate::sheet::{Expr, Source, Step};
use crate::words::{Amount, Phrase, Text};

pub(super) fn working(input: &Input, answer: &Answer) -> Vec<Step> {
    let mut steps = Vec::new();
    let mut step = |key: [&str; 2], name: Text, expr, source| {
        steps.push(Step { key: key.concat(), name, expr, source });
    };
    let mut after = vec![(("run-", &s::RUN_AFTER), answer.run)];
    after.extend(answer.piece.map(|piece| (("piece-", &s::PIECE), piece)));
    let mut lost = Vec::new();
    let now = ((("now-", &s::RUN_NOW), answer.now), answer.flow);
    let all = [now].into_iter().chain(after.into_iter().map(|each| (each, answer.after)));
    for (((key, name), duct), flow) in all {
        let of = |phrase: &'static Phrase| Text { phrase, args: vec![name.into()] };
        step([key, "velocity"], of(&s::STEP_VELOCITY), velocity(&duct, flow), None);
        let factor = near(&FACTOR, duct.factor(flow));
        let at = say!(s::STEP_FACTOR, name, reynolds(&duct, flow));
        step([key, "factor"], at, Expr::measure(factor), Some(&FRICTION));
        if duct.correction > 1.0 {
            let times = Expr::measure(near(&FACTOR, duct.correction));
            step([key, "slack"], of(&s::STEP_CORRECTION), times, Some(&flex::SLACK));
        }
        let source = if matches!(input.now.kind, DuctKind::Rectangular) && key != "piece-" {
            &EQUIVALENT
        } else {
            &STANDARD_AIR
        };
        step([key, "loss"], of(&s::STEP_LOSS), loss(&duct, flow), Some(source));
        if key != "now-" {
            lost.push(Expr::measure(near(&IN_WC, duct.loss(flow).drop)));
        }
    }
    // It closes: after, at its own flow, all of it loses what the branch loses now.
    if lost.len() > 1 {
        step(["after-", "loss"], (&s::STEP_CLOSES).into(), Expr::Sum(lost), None);
    }
    if let Some(held) = answer.held {
        let mut sum = vec![loss(&answer.run, held.flow)];
        sum.extend(answer.piece.map(|piece| loss(&piece, held.flow)));
        let name = say!(s::STEP_HELD, near(&CFM, held.flow));
        step(["held-", "loss"], name, Expr::Sum(sum), Some(&FRICTION));
    }
    steps
}

pub(super) fn reynolds(duct: &Duct, flow: f64) -> i64 {
    libm::round(duct.reynolds(flow)) as i64
}

/// The published sources of the fittings, once each.
pub(super) fn fitting_sources(input: &Input) -> Vec<&'static Source> {
    let mut all: Vec<&'static Source> = Vec::new();
    for fit in input.fittings.iter().chain(&input.added_fittings) {
        let (known, source) = fit.kind.cost();
        if known != Cost::Said && !all.contains(&source) {
            all.push(source);
        }
    }
    all
}

/// What a person is told that one of them costs.
pub(super) fn told(fit: &super::Fit, duct: &Duct, flow: f64) -> Text {
    let feet = |feet: f64| Amount::Length(crate::rules::air::working::inches(feet * 12.0));
    match cost(fit) {
        Cost::C(c) => {
            let worth = c * duct.diameter / 12.0 / duct.factor(flow);
            say!(s::COST_C, near(&FACTOR, c), feet(worth))
        }
        Cost::Feet(each) => say!(s::COST_FEET, feet(each)),
        Cost::Said => say!(s::COST_FEET, feet(0.0)),
    }
}
