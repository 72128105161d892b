//! A change order: what a change adds to a contract's price or takes off it, at rates and prices that
//! are the person's own, to the cent.

mod input;
mod sheet;
mod words;

pub use input::{Base, Bought, Input, Labor, LeftOut, Why};

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::fields::missing;
use crate::measure::unit::{CENT, MONEY_SPENT};
use crate::measure::{Measure, Unit};
use crate::rules::contracts::{CALIFORNIA_CHANGE, STATES_CHANGE};
use crate::sheet::{Caution, Expr, Faults, Sheet, Steps};
use crate::words::Phrase;
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct ChangeOrder;

/// What comes out: money, in whole cents.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// Each line of labor.
    pub labor: Vec<Measure>,
    /// Each line of materials.
    pub materials: Vec<Measure>,
    /// Each credit.
    pub credits: Vec<Measure>,
    /// All labor, all materials, markup, tax, and all credits.
    pub parts: [Measure; 5],
    /// The first four of them.
    pub charged: Measure,
    /// That less the credits: below nothing where these are more.
    pub total: Measure,
    /// The contract's price with it, where it was given.
    pub after: Option<Measure>,
    /// How.
    pub working: Steps,
}

impl Calculator for ChangeOrder {
    const ID: &'static str = "change-order";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::Job;
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
            (&w::OLD, None),
            (STATES_CHANGE.says, Some(&STATES_CHANGE)),
            (CALIFORNIA_CHANGE.says, Some(&CALIFORNIA_CHANGE)),
        ])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// To the cent, halves up.
fn cents(of: Expr) -> Expr {
    Expr::ToNearest(Box::new(of.told_in(&CENT))).told_in(&MONEY_SPENT)
}

/// So many at so much.
fn line(count: Option<Measure>, each: Option<Measure>, lines: &mut Vec<Expr>) {
    if let (Some(count), Some(each)) = (count, each) {
        lines.push(cents(Expr::measure(count).times(Expr::measure(each))));
    }
}

/// What expressions of money come to.
fn each(lines: &[Expr]) -> Vec<Measure> {
    let mut all = Vec::new();
    for line in lines {
        all.extend(Steps::default().measure("", &w::NOTHING, None, &MONEY_SPENT, line.clone()));
    }
    all
}

/// Works out what a change comes to.
///
/// - Units: hours, money an hour, money; whole cents from the lines on.
/// - Formula: each line is rounded to the cent, then markup on materials or on labor and materials, then
///   tax on materials without markup, each rounded once; credits are taken off the sum as they are.
/// - Rounding: halves up.
///
/// # Errors
/// It isn't said what changes.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    if input.what.trim().is_empty() {
        return Err(vec![missing("what".to_owned(), &w::WHAT, Some("two more lights"))]);
    }
    let [mut labor, mut materials, mut credits] = [const { Vec::new() }; 3];
    for it in &input.labor {
        line(it.hours, it.rate, &mut labor);
    }
    for it in &input.materials {
        line(it.count, it.price, &mut materials);
    }
    for it in &input.credits {
        credits.extend(it.worth.map(|worth| cents(Expr::measure(worth))));
    }
    let mut working = Steps::default();
    let none = Measure::whole(&MONEY_SPENT, 0);
    let lines = [each(&labor), each(&materials), each(&credits)];
    let mut sum = |key, name, unit: &'static Unit, of: Vec<Expr>| {
        if of.is_empty() {
            return none;
        }
        working.measure(key, name, None, unit, Expr::Sum(of)).unwrap_or(none)
    };
    let labor = sum("labor", &w::LABOR, &MONEY_SPENT, labor);
    let materials = sum("materials", &w::MATERIALS, &MONEY_SPENT, materials);
    let credits = sum("credits", &w::CREDITS, &MONEY_SPENT, credits);
    let mut base = vec![Expr::measure(materials)];
    if input.on == Base::All {
        base.insert(0, Expr::measure(labor));
    }
    let share = |of: Measure, base| vec![cents(Expr::measure(of).times(Expr::Sum(base)))];
    let markup = sum("markup", &w::MARKED_UP, &MONEY_SPENT, share(input.markup, base));
    let tax = share(input.tax, vec![Expr::measure(materials)]);
    let tax = sum("tax", &w::TAXED, &MONEY_SPENT, tax);
    let charges = [labor, materials, markup, tax].map(Expr::measure).into();
    let charged = sum("charged", &w::CHARGED, &MONEY_SPENT, charges);
    let total = vec![Expr::measure(charged).less(Expr::measure(credits))];
    let total = sum("total", name(charged, credits), &MONEY_SPENT, total);
    let after = input.before.map(|before| {
        let both = vec![cents(Expr::measure(before)), Expr::measure(total)];
        sum("after", &w::AFTER, &MONEY_SPENT, both)
    });
    let parts = [labor, materials, markup, tax, credits];
    let [labor, materials, credits] = lines;
    Ok(Answer { labor, materials, credits, parts, charged, total, after, working })
}

/// What the total is called.
fn name(charged: Measure, credits: Measure) -> &'static Phrase {
    if credits > charged { &w::TAKEN_OFF } else { &w::ADDED }
}

#[cfg(test)]
mod tests;
