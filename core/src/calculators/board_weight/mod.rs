//! What board and pails weigh to carry and to lift, and what a ceiling of it bears.

mod sheet;
mod words;

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::fields::{Kind, Row, Span, When, row};
use crate::measure::unit::{PSF, WEIGHT};
use crate::measure::{Area, Length, Measure};
use crate::rules::finish::board_weights::{BOARDS, Panel};
use crate::rules::finish::compound::{PAIL, READY_WEIGHS, WEIGHTS};
use crate::rules::framing::board_sheets::WIDTHS;
use crate::rules::framing::dead_weights::CEILINGS;
use crate::sheet::{Caution, Expr, Faults, Sheet, Steps};
use crate::words::Phrase;
use crate::{choice, form};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct BoardWeight;

choice! {
    /// How wide a sheet is.
    pub enum Wide {
        /// The commonest.
        W48 = "48", w::W48;
        /// For high walls.
        W54 = "54", w::W54;
    }
}

impl Wide {
    const fn width(self) -> Length {
        match self {
            Self::W48 => WIDTHS[0],
            Self::W54 => WIDTHS[1],
        }
    }
}

const fn count(label: &'static Phrase, [least, most]: [i64; 2], why: &'static Phrase) -> Row {
    row(label, &w::NOTHING, Kind::Count { least, most, why })
}

const HUNG: When = When::Yes("hung");

form! {
    /// Board and pails.
    pub struct Input {
        /// A kind of board.
        panel: Panel, row(&w::PANEL, &w::NOTHING, Kind::Choice(Panel::PICKS));
        /// How wide.
        wide: Wide, row(&w::WIDE, &w::NOTHING, Kind::Choice(Wide::PICKS));
        /// How long.
        long: Length = Length::inches(96, 1), row(&w::LONG, &w::NOTHING, Kind::Length(Span {
            least: Length::inches(12, 1), most: Length::inches(192, 1), why: &w::WHY_LONG,
            common: &[Length::inches(96, 1), Length::inches(120, 1), Length::inches(144, 1)], optional: false,
        }));
        /// Sheets.
        sheets: i64 = 1, count(&w::SHEETS, [0, 500], &w::WHY_SHEETS);
        /// Pails of compound.
        pails: i64, count(&w::PAILS, [0, 100], &w::WHY_SHEETS);
        /// Who lift a sheet together.
        people: i64 = 2, count(&w::PEOPLE, [1, 6], &w::WHY_PEOPLE);
        /// It is hung under a ceiling.
        hung: bool, row(&w::HUNG, &w::NOTHING, Kind::Flag);
        /// Framing over it.
        spacing: Length = Length::inches(16, 1), row(&w::SPACING, &w::SPACING_HINT, Kind::Length(Span {
            least: Length::inches(1, 1), most: Length::inches(48, 1), why: &w::WHY_SPACING,
            common: &[Length::inches(16, 1), Length::inches(24, 1)], optional: false,
        })).when(HUNG);
        /// Texture goes on wet.
        textured: bool, row(&w::TEXTURED, &w::TEXTURED_HINT, Kind::Flag).when(HUNG);
        /// Lies on it.
        insulation: Measure = Measure::whole(&PSF, 0), row(&w::INSULATION, &w::INSULATION_HINT, Kind::Measure(Span {
            least: Measure::whole(&PSF, 0), most: Measure::whole(&PSF, 50), why: &w::WHY_INSULATION, common: &[], optional: false,
        })).when(HUNG);
    }
    sample {
        panel: Panel::FiveEighths,
        long: Length::inches(144, 1),
        sheets: 4,
        pails: 2,
    }
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// A sheet.
    pub sheet: Measure,
    /// What each who lifts it has.
    pub each: Measure,
    /// A pail.
    pub pail: Measure,
    /// All of it.
    pub all: Measure,
    /// On a square foot of framing, as it is reckoned.
    pub load: Option<Measure>,
    /// How.
    pub working: Steps,
}

impl Calculator for BoardWeight {
    const ID: &'static str = "board-weight";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::Finish;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = false;
    type Input = Input;
    type Answer = Answer;

    fn sample() -> Input {
        Input::sample()
    }

    fn solve(input: &Input, _: Basis) -> Result<Answer, Faults> {
        Ok(solve(input))
    }

    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        Caution::all(&[(&w::STACK, None), (&w::BACK, None), (&w::JOISTS, None)])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Works weights.
///
/// - Sheet: area × what a square foot weighs to carry; each of those who lift has an equal part.
/// - Load: board as framing is reckoned for, which is more, and insulation on it.
pub fn solve(input: &Input) -> Answer {
    let mut steps = Steps::default();
    let none = Measure::whole(&WEIGHT, 0);
    let area = Area::of(input.wide.width(), input.long);
    let sheet = Expr::area(area).times(Expr::measure(input.panel.weighs()));
    let sheet = steps.measure("sheet", &w::SHEET, Some(&BOARDS), &WEIGHT, sheet).unwrap_or(none);
    let each = Expr::measure(sheet).over(Expr::count(input.people));
    let each = steps.measure("each", &w::EACH, None, &WEIGHT, each).unwrap_or(none);
    let pail = Expr::measure(PAIL).times(Expr::measure(READY_WEIGHS));
    let pail = steps.measure("pail", &w::PAIL, Some(&WEIGHTS), &WEIGHT, pail).unwrap_or(none);
    let sum = Expr::Sum(vec![
        Expr::measure(sheet).times(Expr::count(input.sheets)),
        Expr::measure(pail).times(Expr::count(input.pails)),
    ]);
    let all = steps.measure("all", &w::ALL, None, &WEIGHT, sum).unwrap_or(none);
    let load = input.panel.dead_load().filter(|_| input.hung).and_then(|board| {
        let load = Expr::Sum(vec![Expr::measure(board), Expr::measure(input.insulation)]);
        steps.measure("load", &w::LOAD, Some(&CEILINGS), &PSF, load)
    });
    Answer { sheet, each, pail, all, load, working: steps }
}

#[cfg(test)]
mod tests;
