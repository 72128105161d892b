//! Loads on a beam or a bearing wall, for the engineer: width carried, line loads added up, what the
//! ends carry, how an end bears, and what shoring takes meanwhile.
//!
//! It sizes nothing and says within of nothing.

mod drawing;
mod input;
mod sheet;
mod words;

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::measure::unit::{NUMBER, PLF, POUND, PSF, PSI};
use crate::measure::{Length, Measure, Unit};
use crate::rules::framing::bearing::{ACROSS_GRAIN, LEAST_BEARING, On};
use crate::rules::framing::design_loads::{
    self as rule, BEAM_ENDS, COMBINATIONS, Combination, DEAD_LOADS, HALF_SPANS, LIVE_LOADS,
    RUN_THROUGH, SHORING,
};
use crate::say;
use crate::sheet::{Caution, Expr, Fault, Faults, Sheet, Step, Steps};
use crate::words::{Amount, Phrase, Text};
pub use input::{Input, PointKind, Post, Rests};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct Loads;

/// One way to add the loads up.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Sum {
    /// Which.
    pub of: &'static Combination,
    /// On a foot.
    pub line: Measure,
    /// At the left end.
    pub left: Measure,
    /// At the right end.
    pub right: Measure,
    /// How much of the point load is in it.
    pub point: Option<Measure>,
}

/// How an end bears, at the worst of both.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Bearing {
    /// Across the grain, or on masonry.
    pub stress: Measure,
    /// What is published of the wood.
    pub published: Option<Measure>,
    /// How long a bearing comes to that value, up to the next sixteenth, and no less than the code
    /// has.
    pub length: Length,
}

/// Shoring of one side.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Shore {
    /// On a foot.
    pub line: Measure,
    /// On one post.
    pub post: Measure,
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// Half of each span.
    pub tributary: Length,
    /// How many times that joists which run through bring.
    pub factor: Option<Measure>,
    /// Dead, live, and the roof's, on a foot.
    pub lines: [Measure; 3],
    /// Added up; one at least.
    pub sums: Vec<Sum>,
    /// The largest of them all, by itself.
    pub line: Measure,
    /// The largest at each end.
    pub ends: [Measure; 2],
    /// Where one is asked about.
    pub bearing: Option<Bearing>,
    /// Each side that has a span.
    pub shores: [Option<Shore>; 2],
    /// How all that came about.
    pub steps: Steps,
}

impl Answer {
    /// The sum that is largest on the whole beam.
    pub fn worst(&self) -> Option<&Sum> {
        self.sums
            .iter()
            .max_by_key(|sum| sum.left.millionths().saturating_add(sum.right.millionths()))
    }
}

impl Calculator for Loads {
    const ID: &'static str = "loads";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::Framing;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = false;
    type Input = Input;
    type Answer = Answer;

    fn sample() -> Input {
        Input::sample()
    }

    fn solve(input: &Input, _: Basis) -> Result<Answer, Faults> {
        solve(input)
    }

    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        Caution::all(&[
            (&w::SHORE_FIRST, None),
            (&w::OLD, None),
            (&w::WIND, None),
            (&w::LOCAL, None),
        ])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Works loads.
///
/// - Shape: simple spans, or two that run through; a beam on two supports, an even load and one
///   point.
/// - Running through: `3/4 + (a² + b²) ÷ (4 a b)` times the half spans, from the bending of two spans
///   evenly loaded.
///
/// # Errors
/// Joists that run through on one side only, a point past the beam's end or not told, shoring of
/// no joists, or no load at all, at their fields.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    let fault = |path: &str, label, given: String, says| {
        Err(vec![Fault { path: path.to_owned(), label, given, says }])
    };
    let given = input.left.map(Length::exact).unwrap_or_default();
    if input.through && (input.left.is_none() || input.right.is_none()) {
        return fault("through", &w::THROUGH, "yes".to_owned(), say!(w::ONE_SIDE));
    }
    if input.shoring && input.left.is_none() && input.right.is_none() {
        return fault("left", &w::LEFT, given, say!(w::SHORE_WHAT));
    }
    if input.point && input.post.load.is_none() {
        return fault("post.load", &w::POINT_LOAD, String::new(), say!(w::POINT_NEEDED));
    }
    if input.point && input.point_at() > input.span {
        let given = input.point_at().exact();
        return fault("post.at", &w::POINT_AT, given, say!(w::PAST_END, input.span));
    }
    match worked(input) {
        Some(answer) if answer.ends.iter().any(|end| end.millionths() > 0) => Ok(answer),
        Some(_) => fault("left", &w::LEFT, given, say!(w::NO_LOAD)),
        None => fault("left", &w::LEFT, given, say!(w::TOO_MUCH)),
    }
}

impl Input {
    fn point_at(&self) -> Length {
        self.post.at.unwrap_or_default()
    }
}

fn asked(measure: Option<Measure>, unit: &'static Unit) -> Measure {
    measure.unwrap_or(Measure::whole(unit, 0))
}

fn worked(input: &Input) -> Option<Answer> {
    let mut steps = Steps::default();
    let [left, right] = [input.left, input.right].map(|it| Expr::length(it.unwrap_or_default()));
    let half = Expr::Sum(vec![left.clone(), right.clone()]).over(Expr::count(2));
    let tributary = steps.length("tributary", &w::TRIBUTARY, Some(&HALF_SPANS), half)?;
    let (mut width, mut factor) = (tributary, None);
    if input.through {
        let square = |side: &Expr| side.clone().times(side.clone());
        let over = Expr::Sum(vec![square(&left), square(&right)]);
        let more = over.over(Expr::count(4).times(left).times(right));
        let times = Expr::Sum(vec![Expr::count(3).over(Expr::count(4)), more]);
        let times = steps.measure("factor", &w::FACTOR, Some(&RUN_THROUGH), &NUMBER, times)?;
        factor = Some(times);
        let wider = Expr::length(tributary).times(Expr::measure(times));
        width = steps.length("width", &w::WIDTH, Some(&RUN_THROUGH), wider)?;
    }
    let lines = lines(input, width, &mut steps)?;
    let sums = sums(input, lines, &mut steps)?;
    let most = |of: fn(&Sum) -> Measure| sums.iter().map(of).max();
    let ends = [most(|sum| sum.left)?, most(|sum| sum.right)?];
    // Under the sheet's own name for it, so that its working ends in its answer.
    let worst = Expr::Most(sums.iter().map(|sum| Expr::measure(sum.line)).collect());
    let line = steps.measure("line", &w::LINE, Some(&COMBINATIONS), &PLF, worst)?;
    let bearing = match input.bearing.on {
        On::NotAsked => None,
        on => Some(bearing(input, on, ends[0].max(ends[1]), &mut steps)?),
    };
    let mut shores = [None, None];
    if input.shoring {
        let sides = [
            (input.left, "shore-left", &w::SHORE_LEFT, "post-left", &w::POST_LEFT),
            (input.right, "shore-right", &w::SHORE_RIGHT, "post-right", &w::POST_RIGHT),
        ];
        for (at, (span, key, name, post_key, post_name)) in sides.into_iter().enumerate() {
            if let Some(span) = span {
                let load = [input.shore_dead, input.work];
                let load = Expr::Sum(load.map(|it| Expr::measure(asked(it, &PSF))).into());
                let mut line = load.times(Expr::length(span)).over(Expr::count(2));
                if let Some(factor) = factor {
                    line = line.times(Expr::measure(factor));
                }
                let line = steps.measure(key, name, Some(&SHORING), &PLF, line)?;
                let post = Expr::measure(line).times(Expr::length(input.posts.unwrap_or_default()));
                let post = steps.measure(post_key, post_name, Some(&SHORING), &POUND, post)?;
                shores[at] = Some(Shore { line, post });
            }
        }
    }
    Some(Answer { tributary, factor, lines, sums, line, ends, bearing, shores, steps })
}

/// Dead, live and the roof's on a foot.
fn lines(input: &Input, width: Length, steps: &mut Steps) -> Option<[Measure; 3]> {
    let on = |load: Measure, wide: Length| Expr::measure(load).times(Expr::length(wide));
    let roof_wide = input.roof_wide.unwrap_or_default();
    let mut dead = vec![on(input.dead, width)];
    if input.roof {
        dead.push(on(asked(input.roof_dead, &PSF), roof_wide));
    }
    for more in [input.wall, input.beam] {
        if more.millionths() > 0 {
            dead.push(Expr::measure(more));
        }
    }
    let dead = steps.measure("dead", &w::DEAD_LINE, Some(&DEAD_LOADS), &PLF, Expr::Sum(dead))?;
    let live =
        steps.measure("live", &w::LIVE_LINE, Some(&LIVE_LOADS), &PLF, on(input.live, width))?;
    let mut roof = Measure::whole(&PLF, 0);
    if input.roof {
        let load = on(asked(input.roof_live, &PSF), roof_wide);
        roof = steps.measure("roof", &w::ROOF_LINE, Some(&LIVE_LOADS), &PLF, load)?;
    }
    Some([dead, live, roof])
}

/// So many quarters of it.
fn quarters(of: Measure, count: i64) -> Expr {
    let of = Expr::measure(of);
    if count == 4 { of } else { of.times(Expr::count(count)).over(Expr::count(4)) }
}

fn sums(input: &Input, lines: [Measure; 3], steps: &mut Steps) -> Option<Vec<Sum>> {
    let by_roof = input.roof || (input.point && input.post.kind == PointKind::Roof);
    let load = asked(input.post.load, &POUND);
    let mut sums = Vec::new();
    for of in &rule::ALL {
        if of.roof > 0 && !by_roof {
            continue;
        }
        // A step of a sum is named with it.
        let mut add = |place: &str, phrase, source, unit, expr: Expr| {
            let expr = expr.told_in(unit);
            let amount = expr.value()?.amount()?;
            let name = Text { phrase, args: vec![of.sum.into()] };
            let key = [place, of.key].join("-");
            steps.0.push(Step { key, name, expr, source: Some(source) });
            match amount {
                Amount::Measure(measure) => Some(measure),
                _ => None,
            }
        };
        let mut parts = vec![Expr::measure(lines[0])];
        for (line, count) in [(lines[1], of.live), (lines[2], of.roof)] {
            if count > 0 && line.millionths() > 0 {
                parts.push(quarters(line, count));
            }
        }
        let line = add("line", &w::LINE_OF, &COMBINATIONS, &PLF, Expr::Sum(parts))?;
        let count = match input.post.kind {
            _ if !input.point => 0,
            PointKind::Dead => 4,
            PointKind::Live => of.live,
            PointKind::Roof => of.roof,
        };
        let span = || Expr::length(input.span);
        let mut end = |place, phrase, arm: Length| {
            let mut parts = vec![Expr::measure(line).times(span()).over(Expr::count(2))];
            if count > 0 {
                let point = quarters(load, count);
                parts.push(point.times(Expr::length(arm)).over(span()));
            }
            add(place, phrase, &BEAM_ENDS, &POUND, Expr::Sum(parts))
        };
        let left = end("left", &w::LEFT_OF, input.span.minus(input.point_at()))?;
        let right = end("right", &w::RIGHT_OF, input.point_at())?;
        let point = quarters(load, count).told_in(&POUND).value()?.amount()?;
        let point = match point {
            Amount::Measure(point) if count > 0 => Some(point),
            _ => None,
        };
        sums.push(Sum { of, line, left, right, point });
    }
    Some(sums)
}

fn bearing(input: &Input, on: On, end: Measure, steps: &mut Steps) -> Option<Bearing> {
    let Rests { wide, long, .. } = input.bearing;
    let [wide, long] = [wide, long].map(|it| Expr::length(it.unwrap_or_default()));
    let end = Expr::measure(end);
    let stress = end.clone().over(wide.clone().times(long));
    let stress = steps.measure("stress", &w::STRESS, None, &PSI, stress)?;
    let published = on.published();
    let mut length = on.least();
    if let Some(published) = published {
        let by_value = end.over(wide.times(Expr::measure(published)));
        let needed = Expr::Most(vec![Expr::length(length), by_value]);
        // Up to the next sixteenth, so that what is shown is never too short.
        let mark = || Expr::length(Length::inches(1, 16));
        let needed = mark().times(Expr::RoundUp(Box::new(needed.over(mark()))));
        length = steps.length("bearing-length", &w::LENGTH, Some(&ACROSS_GRAIN), needed)?;
    } else {
        let least = Expr::length(length);
        length = steps.length("bearing-length", &w::LEAST, Some(&LEAST_BEARING), least)?;
    }
    Some(Bearing { stress, published, length })
}

#[cfg(test)]
mod tests;
