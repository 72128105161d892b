//! Ceiling joists as they are: how far the code's table lets them span, and whether what hangs on
//! them is in its row. Nothing is sized, and nothing is guessed of lumber without a stamp.

mod input;
mod sheet;
mod words;

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::measure::unit::PSF;
use crate::measure::{Length, Measure};
use crate::rules::framing::ceiling_joists::{
    self as rule, LONGEST, SIDE_BY_SIDE, STIFFNESS, Size, Species, VALUES,
};
use crate::rules::framing::dead_weights::{CEILINGS, FILLS, LUMBER, WOOD};
use crate::rules::framing::lumber::THICK;
use crate::say;
use crate::sheet::{Caution, Expr, Fault, Faults, Sheet, Steps};
use crate::words::Phrase;
pub use input::{Also, Input};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct JoistSpans;

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// By the table; none where it has no such joist.
    pub table: Option<Length>,
    /// What joists, ceiling and insulation weigh; none of a joist whose size isn't known.
    pub dead: Option<Measure>,
    /// What takes the joists out of the table.
    pub stops: Vec<&'static Phrase>,
    /// How all that came about.
    pub steps: Steps,
}

impl Calculator for JoistSpans {
    const ID: &'static str = "joist-spans";
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
        Caution::all(&[(&w::SAG, None), (&w::OLD, None), (&w::STEP, None), (&w::LOCAL, None)])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Works joists.
///
/// - Stiffness: `∛(384 E I ÷ (5 × 240 w))`, `w` the live load on one joist.
/// - Strength: `√(8 F S ÷ w)`, `F` with the factors for size and side by side, `w` all load.
/// - Rounding: the smaller to the nearest inch, as the table is printed; 26 ft at the most.
///
/// # Errors
/// Numbers past what is held.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    worked(input).ok_or_else(|| {
        let says = say!(w::TOO_MUCH);
        vec![Fault { path: "span".to_owned(), label: &w::SPAN, given: input.span.exact(), says }]
    })
}

fn stops(input: &Input) -> Vec<&'static Phrase> {
    let Also { ties, floor, loaded, harmed } = input.also;
    let mut all = Vec::new();
    for (is, stop) in [
        (input.species == Species::Unknown, Species::Unknown.label()),
        (input.size == Size::Other, Size::Other.label()),
        (ties, &w::TIES),
        (floor, &w::FLOOR),
        (loaded, &w::LOADED),
        (harmed, &w::HARMED),
    ] {
        if is {
            all.push(stop);
        }
    }
    all
}

fn worked(input: &Input) -> Option<Answer> {
    let mut steps = Steps::default();
    let dead = match input.size.depth() {
        Some(depth) => Some(dead(input, depth, &mut steps)?),
        None => None,
    };
    let table = match (rule::design(input.species, input.size), input.size.depth()) {
        (Some(design), Some(depth)) => Some(table(input, design, depth, &mut steps)?),
        _ => None,
    };
    Some(Answer { table, dead, stops: stops(input), steps })
}

fn table(input: &Input, design: rule::Design, depth: Length, steps: &mut Steps) -> Option<Length> {
    let product = |first: Expr, rest: Vec<Expr>| rest.into_iter().fold(first, Expr::times);
    let deep = || Expr::length(depth);
    let (thick, apart) = (|| Expr::length(THICK), || Expr::length(input.apart.length()));
    let (live, dead) = (Expr::measure(input.attic.live()), Expr::measure(input.attic.dead()));
    let over = product(
        Expr::count(384),
        vec![Expr::measure(design.stiffness), thick(), deep(), deep(), deep()],
    );
    let under = product(
        Expr::count(12),
        vec![Expr::count(5), Expr::count(STIFFNESS), live.clone(), apart()],
    );
    let stiff = Expr::Root(3, Box::new(over.over(under)));
    let stiff = steps.length("stiff", &w::STIFF, Some(&VALUES), stiff)?;
    let over = product(
        Expr::count(8),
        vec![
            Expr::measure(design.strength),
            Expr::measure(design.size_factor),
            Expr::measure(SIDE_BY_SIDE),
            thick(),
            deep(),
            deep(),
        ],
    );
    let under = product(Expr::count(6), vec![Expr::Sum(vec![live, dead]), apart()]);
    let strong = Expr::Root(2, Box::new(over.over(under)));
    let strong = steps.length("strong", &w::STRONG, Some(&VALUES), strong)?;
    let inch = || Expr::length(Length::inches(1, 1));
    let least = Expr::Least(vec![Expr::length(stiff), Expr::length(strong)]);
    let half = Expr::count(1).over(Expr::count(2));
    let inches = Expr::RoundDown(Box::new(Expr::Sum(vec![least.over(inch()), half])));
    let span = Expr::Least(vec![inch().times(inches), Expr::length(LONGEST)]);
    steps.length("table", &w::TABLE, Some(rule::row(input.apart, input.attic)), span)
}

fn dead(input: &Input, depth: Length, steps: &mut Steps) -> Option<Measure> {
    let mut parts = Vec::new();
    let mut add = |key, name, source, expr| {
        let weight = steps.measure(key, name, source, &PSF, expr)?;
        parts.push(Expr::measure(weight));
        Some(())
    };
    let joist = Expr::measure(LUMBER).times(Expr::length(THICK)).times(Expr::length(depth));
    add("joists", &w::JOISTS, Some(&WOOD), joist.over(Expr::length(input.apart.length())))?;
    let layers = [input.ceiling, input.second].map(|layer| Expr::measure(layer.weight()));
    add("ceiling", &w::LAYERS, Some(&CEILINGS), Expr::Sum(layers.into()))?;
    if let (Some(deep), Some(weight)) = (input.depth, input.fill.weight().or(input.density)) {
        let fill = Expr::length(deep).times(Expr::measure(weight));
        let source = input.fill.weight().map(|_| &FILLS);
        add("fill", &w::FILL_WEIGHS, source, fill)?;
    }
    steps.measure("dead", &w::DEAD, None, &PSF, Expr::Sum(parts))
}

#[cfg(test)]
mod published_cells;
#[cfg(test)]
mod tests;
