//! What there is still to pay, and what was paid: two sums, as far as prices are known.

use super::{Buying, CENT, Line, narrow, whole_one};
use crate::fields::two_sums;
use crate::job::words as w;
use crate::measure::unit::{MONEY_SPENT, typed};
use crate::measure::{Measure, Problem, Units};
use crate::say;
use crate::words::{Amount, Phrase, Text};

/// A sum of what has a price.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Sum {
    /// What it comes to; none where nothing of it has a price.
    pub cost: Option<Measure>,
    /// How many lines of it have no price.
    pub unpriced: usize,
}

impl Sum {
    fn add(&mut self, cost: Option<Measure>) {
        let Some(cost) = cost else {
            self.unpriced += 1;
            return;
        };
        let sum = self.cost.map_or(0, Measure::millionths);
        self.cost = Some(cost.of_same(sum.saturating_add(cost.millionths())));
    }

    /// In words; none where there is nothing of it.
    pub(super) fn says(self, of: &'static Phrase) -> Option<Text> {
        match (self.cost, self.unpriced as i64) {
            (Some(cost), 0) => Some(say!(w::SUM, of, cost)),
            (Some(cost), without) => Some(say!(w::SUM_WITHOUT, of, cost, without)),
            (None, 0) => None,
            (None, without) => Some(say!(w::SUM_UNPRICED, of, without)),
        }
    }
}

impl Buying {
    /// What is still to be bought.
    pub fn still(&self) -> Sum {
        let mut sum = Sum::default();
        for line in &self.lines {
            if let Some(rest) = line.rest() {
                sum.add(line.costs(rest));
            }
        }
        sum
    }

    /// What was ticked, at the price that is noted: of lines that ask for less by now, or for more, as
    /// much as was bought, and what nothing asks for any more too.
    pub fn paid(&self) -> Sum {
        let mut sum = Sum::default();
        for line in &self.lines {
            if let Some(there) = line.there() {
                sum.add(line.costs(there));
            }
        }
        for bought in &self.bought {
            sum.add(bought.cost);
        }
        sum
    }

    /// Both sums in words, each where there is something of it; none where no price is known.
    pub fn sums(&self) -> Vec<Text> {
        self.named_sums().into_iter().filter_map(|(name, sum)| sum.says(name)).collect()
    }

    /// What is still to be bought and what was bought, with their names. Where no price is known there
    /// is nothing of either.
    pub(super) fn named_sums(&self) -> [(&'static Phrase, Sum); 2] {
        let (mut still, mut paid) = (self.still(), self.paid());
        if still.cost.is_none() && paid.cost.is_none() {
            (still, paid) = (Sum::default(), Sum::default());
        }
        [(&w::STILL_TO_BUY, still), (&w::BOUGHT, paid)]
    }
}

impl Line {
    /// What is still to be bought of it; none where nothing is.
    fn rest(&self) -> Option<Amount> {
        (self.is_counted() && !self.is_got()).then(|| self.more().unwrap_or(self.buys))
    }

    /// What of it was bought; none where nothing was, or nothing counts.
    fn there(&self) -> Option<Amount> {
        let got = self.got.filter(|got| self.is_counted() && got.amount.raw() > 0);
        got.map(|got| got.amount)
    }

    /// What is still to be paid for it, and what was paid, as far as its price is known.
    pub(super) fn to_pay_and_paid(&self) -> [Option<Measure>; 2] {
        [self.rest(), self.there()].map(|amount| self.costs(amount?))
    }

    /// What so much of it costs; none where no price is known.
    fn costs(&self, buys: Amount) -> Option<Measure> {
        Some(times(self.price?, buys))
    }

    /// What it comes to at its price: `3 × $18.49 = $55.47`. What was bought where all of it is there,
    /// else what is still to be bought. None where no price is known, or nothing counts.
    pub fn comes_to(&self) -> Option<Text> {
        let got = self.got.filter(|_| self.is_got()).map(|got| got.amount);
        self.is_counted().then(|| self.bill(got.or_else(|| self.more()).unwrap_or(self.buys)))?
    }

    /// The same of so much of it.
    pub(super) fn bill(&self, buys: Amount) -> Option<Text> {
        let (price, cost) = (self.price?, self.costs(buys)?);
        // Parts of a cent are told where a person gave them, so that the sum can be followed.
        let is_in_cents = price.millionths() % CENT == 0;
        let unit = if is_in_cents { &MONEY_SPENT } else { &typed::MONEY_SPENT };
        Some(say!(w::COMES_TO, buys, Measure::new(unit, price.millionths()), cost))
    }
}

/// So much at the price of one.
pub(super) fn times(price: Measure, buys: Amount) -> Measure {
    let cost = i128::from(price.millionths()).saturating_mul(buys.raw()) / whole_one(buys);
    price.of_same(narrow(cost))
}

/// Reads what one costs, in dollars.
///
/// # Errors
/// The words for what is wrong with it.
pub fn read_price(text: &str) -> Result<Measure, Text> {
    match Measure::read(text, &MONEY_SPENT, Units::Customary) {
        Ok(price) if price.millionths() >= 0 => Ok(price),
        Err(Problem::TwoMeanings) if !text.contains('-') => Err(two_sums(text.trim())),
        _ => Err((&w::NOT_A_PRICE).into()),
    }
}
