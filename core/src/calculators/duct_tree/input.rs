//! What is put in: the ducts as somebody meets them who walks from the air handler, and what is held.

use super::words as w;
use crate::fields::{Form, Item, Kind, Preset, Span, When, row};
use crate::measure::unit::{CFM, IN_WC, PERCENT};
use crate::measure::{Length, Measure};
use crate::rules::air::run::{self, DuctKind, Run, along, size, slack};
use crate::{choice, form};

choice! {
    /// What somebody meets on the way.
    pub enum What {
        /// It ends at a register.
        Branch = "branch", w::BRANCH;
        /// It carries on to others.
        Trunk = "trunk", w::TRUNK;
    }
}

choice! {
    /// Where a trunk piece starts.
    pub enum From {
        /// Where the piece above ends.
        End = "end", w::FROM_END;
        /// Where the piece above starts: the two split there.
        Beside = "beside", w::FROM_BESIDE;
        /// At the air handler.
        Handler = "handler", w::FROM_HANDLER;
    }
}

choice! {
    /// What stays as it is.
    pub enum Held {
        /// The air in all.
        Total = "total", w::HELD_TOTAL;
        /// The pressure at the start.
        Pressure = "pressure", w::HELD_PRESSURE;
    }
}

/// Shares that a person can guess by eye.
const OPEN: &[Measure] =
    &[Measure::whole(&PERCENT, 75), Measure::whole(&PERCENT, 50), Measure::whole(&PERCENT, 25)];

form! {
    /// A duct on the way.
    pub struct Piece {
        /// Which of the two.
        what: What, row(&w::WHAT, &w::NOTHING, Kind::Choice(What::PICKS));
        /// What the crew calls it.
        name: String, row(&w::CALLED, &w::CALLED_HINT, Kind::Text(16));
        /// Where a trunk starts.
        from: From, row(&w::FROM, &w::NOTHING, Kind::Choice(From::PICKS)).when(When::Is("what", &["trunk"]));
        /// What it is made of.
        kind: DuctKind, row(&run::KIND, &w::NOTHING, Kind::Choice(DuctKind::PICKS));
        /// Of a round one.
        diameter: Option<Length>, size(&run::DIAMETER, false).when(When::IsNot("kind", &["rectangular"]));
        /// Of a rectangular one.
        wide: Option<Length>, size(&run::WIDE, false).when(When::Is("kind", &["rectangular"]));
        /// Of a rectangular one.
        high: Option<Length>, size(&run::HIGH, false).when(When::Is("kind", &["rectangular"]));
        /// With its fittings as feet.
        length: Option<Length>, along(&w::LENGTH, &w::LENGTH_HINT, 6, false);
        /// Of flexible duct.
        slack: Option<Measure>, slack(&run::SLACK, &w::SLACK_HINT).when(When::Is("kind", &["flex"]));
        /// How much of its boot or grille is open.
        open: Option<Measure>, row(&w::OPEN, &w::OPEN_HINT, Kind::Measure(Span {
            least: Measure::whole(&PERCENT, 0),
            most: Measure::whole(&PERCENT, 100),
            why: &w::WHY_OPEN,
            common: OPEN,
            optional: true,
        })).when(When::Is("what", &["branch"]));
    }
}

static PIECES: Item = Item {
    name: &w::PIECE,
    rows: Piece::ROWS,
    most: 14,
    blank: || Piece::blank().write_parts(),
    presets: &[
        Preset { label: &w::BRANCH, sets: &[("what", "branch")] },
        Preset { label: &w::TRUNK, sets: &[("what", "trunk")] },
    ],
};

form! {
    /// Branches on one air handler.
    pub struct Input {
        /// In the order of a walk.
        pieces: Vec<Piece>, row(&w::PIECES, &w::PIECES_HINT, Kind::List(&PIECES));
        /// What stays.
        held: Held, row(&w::HELD, &w::HELD_HINT, Kind::Choice(Held::PICKS));
        /// All of it.
        total: Option<Measure>, row(&w::TOTAL, &w::NOTHING, Kind::Measure(Span {
            least: Measure::whole(&CFM, 5),
            most: Measure::whole(&CFM, 5000),
            why: &w::WHY_TOTAL,
            common: &[],
            optional: false,
        })).when(When::Is("held", &["total"]));
        /// At the start.
        pressure: Option<Measure>, row(&w::PRESSURE, &w::PRESSURE_HINT, Kind::Measure(Span {
            least: Measure::hundredths(&IN_WC, 1),
            most: Measure::whole(&IN_WC, 2),
            why: &w::WHY_PRESSURE,
            common: &[],
            optional: false,
        })).when(When::Is("held", &["pressure"]));
    }
    sample {
        pieces: vec![
            branch(960, None),
            Piece {
                what: What::Trunk,
                diameter: Some(Length::inches(9, 1)),
                ..branch(240, None)
            },
            branch(480, Some(Measure::whole(&PERCENT, 50))),
            branch(720, None),
        ],
        total: Some(Measure::whole(&CFM, 300)),
    }
}

/// A round 6-in branch of so many inches.
fn branch(long: i64, open: Option<Measure>) -> Piece {
    let (diameter, length) = (Some(Length::inches(6, 1)), Some(Length::inches(long, 1)));
    Piece { diameter, length, open, ..Piece::blank() }
}

impl Piece {
    /// As a run.
    pub(super) fn run(&self) -> Run {
        let Self { kind, diameter, wide, high, length, slack, .. } = *self;
        Run { kind, diameter, wide, high, length, slack }
    }
}
