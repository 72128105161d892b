//! What is put in: what changes and why, hours and prices of the person's own, what is left out.

use super::words as w;
use crate::fields::{Form, Item, Kind, Row, Span, row};
use crate::measure::unit::typed::{HOUR, MONEY_AN_HOUR, MONEY_PERCENT, MONEY_SPENT, NUMBER};
use crate::measure::{Day, Measure, Unit};
use crate::words::Phrase;
use crate::{choice, form};

choice! {
    /// Why there is a change.
    pub enum Why {
        /// Something else is wanted.
        Owner = "owner", w::OWNER_ASKED;
        /// It could not be seen before.
        Found = "found", w::FOUND;
        /// It has to be.
        Code = "code", w::CODE;
        /// Of who works.
        Error = "error", w::ERROR;
    }
}

choice! {
    /// What markup is on.
    pub enum Base {
        /// On what materials cost.
        Materials = "materials", w::ON_MATERIALS;
        /// On hours too.
        All = "all", w::ON_ALL;
    }
}

/// In whole ones of a unit, from nothing on.
const fn measure(
    label: &'static Phrase,
    hint: &'static Phrase,
    unit: &'static Unit,
    most: i64,
    optional: bool,
) -> Row {
    let (least, most) = (Measure::whole(unit, 0), Measure::whole(unit, most));
    let span = Span { least, most, why: &w::TOO_MUCH, common: &[], optional };
    row(label, hint, Kind::Measure(span))
}

/// Somebody's time: written in hours and parts of one.
const fn hours() -> Row {
    const COMMON: &[Measure] =
        &[Measure::hundredths(&HOUR, 350), Measure::whole(&HOUR, 4), Measure::whole(&HOUR, 8)];
    let (least, most) = (Measure::whole(&HOUR, 0), Measure::whole(&HOUR, 10_000));
    let span = Span { least, most, why: &w::TOO_MUCH, common: COMMON, optional: false };
    row(&w::HOURS, &w::HOURS_HINT, Kind::Measure(span))
}

const fn text(label: &'static Phrase, hint: &'static Phrase, most: usize) -> Row {
    row(label, hint, Kind::Text(most))
}

form! {
    /// Somebody's hours.
    pub struct Labor {
        /// Who, or what for.
        who: String, text(&w::LABOR_LINE, &w::NOTHING, 40).foremost(|_| true);
        /// How long.
        hours: Option<Measure>, hours();
        /// The person's own.
        rate: Option<Measure>, measure(&w::RATE, &w::OWN, &MONEY_AN_HOUR, 10_000, false);
    }
}

form! {
    /// Something that is bought.
    pub struct Bought {
        /// What.
        what: String, text(&w::MATERIAL, &w::NOTHING, 40).foremost(|_| true);
        /// How many, or how much.
        count: Option<Measure>, measure(&w::COUNT, &w::NOTHING, &NUMBER, 10_000, false);
        /// What one costs.
        price: Option<Measure>, measure(&w::PRICE, &w::OWN, &MONEY_SPENT, 100_000, false);
    }
}

form! {
    /// Work of the contract that isn't done.
    pub struct LeftOut {
        /// What.
        what: String, text(&w::CREDIT, &w::NOTHING, 40).foremost(|_| true);
        /// What the owner gets back for it.
        worth: Option<Measure>, measure(&w::CREDIT_WORTH, &w::NOTHING, &MONEY_SPENT, 1_000_000, false);
    }
}

static LABOR: Item = Item {
    name: &w::LABOR_LINE,
    rows: Labor::ROWS,
    most: 20,
    blank: || Labor::blank().write_parts(),
    presets: &[],
};

static MATERIALS: Item = Item {
    name: &w::MATERIAL,
    rows: Bought::ROWS,
    most: 40,
    blank: || Bought::blank().write_parts(),
    presets: &[],
};

static CREDITS: Item = Item {
    name: &w::CREDIT,
    rows: LeftOut::ROWS,
    most: 20,
    blank: || LeftOut::blank().write_parts(),
    presets: &[],
};

const NO_SHARE: Measure = Measure::whole(&MONEY_PERCENT, 0);

form! {
    /// A change.
    pub struct Input {
        /// Its place among the changes of a contract.
        number: String, text(&w::NUMBER, &w::NOTHING, 20);
        /// When it is given to the owner.
        issued: Option<Day>, row(&w::ISSUED, &w::NOTHING, Kind::Day);
        /// In the owner's words.
        what: String, text(&w::WHAT, &w::NOTHING, 200);
        /// Its reason.
        why: Why, row(&w::WHY, &w::NOTHING, Kind::Choice(Why::PICKS));
        /// Hours.
        labor: Vec<Labor>, row(&w::LABOR, &w::NOTHING, Kind::List(&LABOR));
        /// What is bought for it.
        materials: Vec<Bought>, row(&w::MATERIALS, &w::NOTHING, Kind::List(&MATERIALS));
        /// What is not done.
        credits: Vec<LeftOut>, row(&w::CREDITS, &w::NOTHING, Kind::List(&CREDITS));
        /// The person's own.
        markup: Measure = NO_SHARE, measure(&w::MARKUP, &w::OWN, &MONEY_PERCENT, 200, false);
        /// What it is on.
        on: Base, row(&w::MARKUP_ON, &w::NOTHING, Kind::Choice(Base::PICKS));
        /// On materials.
        tax: Measure = NO_SHARE, measure(&w::TAX, &w::TAX_HINT, &MONEY_PERCENT, 30, false);
        /// To the day when the job is done.
        days: i64, row(&w::DAYS, &w::NOTHING, Kind::Count { least: 0, most: 365, why: &w::TOO_MUCH });
        /// Before this change.
        before: Option<Measure>, measure(&w::BEFORE, &w::NOTHING, &MONEY_SPENT, 100_000_000, true);
        /// With which payment.
        paid: String, text(&w::PAID, &w::PAID_HINT, 80);
    }
}

impl Input {
    /// What the screen opens with: an invented change at invented prices.
    pub fn sample() -> Self {
        let dollars = |cents| Some(Measure::hundredths(&MONEY_SPENT, cents));
        let labor = |who: &str, quarters: i64, rate| Labor {
            who: who.to_owned(),
            hours: Some(Measure::hundredths(&HOUR, 25 * quarters)),
            rate: Some(Measure::hundredths(&MONEY_AN_HOUR, rate)),
        };
        let bought = |what: &str, count, price| Bought {
            what: what.to_owned(),
            count: Some(Measure::whole(&NUMBER, count)),
            price: dollars(price),
        };
        Self {
            what: "Invented: two more lights in the den, none in the hall".to_owned(),
            labor: vec![labor("Invented lead", 14, 5_250), labor("Invented helper", 10, 3_175)],
            materials: vec![bought("Invented light", 2, 4_395), bought("Invented box", 2, 345)],
            credits: vec![LeftOut {
                what: "Invented hall light".to_owned(),
                worth: dollars(9_000),
            }],
            markup: Measure::whole(&MONEY_PERCENT, 15),
            tax: Measure::hundredths(&MONEY_PERCENT, 725),
            days: 1,
            ..Self::blank()
        }
    }
}
