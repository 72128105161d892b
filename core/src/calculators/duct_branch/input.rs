//! What is put in: the branch as it is, its air, and what changes.

use super::words as w;
use crate::fields::{Form, Item, Kind, Preset, Row, Span, When, row};
use crate::measure::unit::{CFM, FACTOR};
use crate::measure::{Length, Measure};
use crate::rules::air::fittings::{Angle, Fitting};
use crate::rules::air::run::{DuctKind, Run, along, size, slack};
use crate::rules::hazards::Material;
use crate::words::Phrase;
use crate::{choice, form};

choice! {
    /// What is put in besides.
    pub enum Piece {
        /// Nothing of another kind.
        None = "none", w::PIECE_NONE;
        /// Flexible duct.
        Flex = "flex", w::PIECE_FLEX;
        /// Round metal of a size of its own.
        Round = "round", w::PIECE_ROUND;
    }
}

choice! {
    /// What may be on the old duct.
    pub enum OldWrap {
        /// Nobody has looked.
        Unknown = "unknown", w::WRAP_UNKNOWN;
        /// There is some.
        Yes = "yes", w::WRAP_YES;
        /// There is none.
        No = "no", w::WRAP_NO;
    }
}

impl OldWrap {
    /// What is cut with the duct; what nobody has looked at may be it.
    pub fn material(self) -> Option<Material> {
        match self {
            Self::No => None,
            Self::Unknown | Self::Yes => Some(Material::Wrap),
        }
    }
}

const fn cfm(label: &'static Phrase, hint: &'static Phrase, most: i64, optional: bool) -> Row {
    row(
        label,
        hint,
        Kind::Measure(Span {
            least: Measure::whole(&CFM, 5),
            most: Measure::whole(&CFM, most),
            why: &w::WHY_CFM,
            common: &[],
            optional,
        }),
    )
}

const ELBOWS: &[&str] = &[
    "smooth-1",
    "smooth-0.5",
    "smooth-0.75",
    "smooth-1.5",
    "smooth-2",
    "pieced-0.75",
    "pieced-1",
    "pieced-1.5",
];

form! {
    /// Fittings of one kind.
    pub struct Fit {
        /// What they are.
        kind: Fitting, row(&w::FIT, &w::NOTHING, Kind::Choice(Fitting::PICKS));
        /// How far an elbow turns.
        angle: Angle, row(&w::ANGLE, &w::NOTHING, Kind::Choice(Angle::PICKS)).when(When::Is("kind", ELBOWS));
        /// Velocity pressures, where somebody knows.
        c: Option<Measure>, row(&w::C, &w::C_HINT, Kind::Measure(Span {
            least: Measure::whole(&FACTOR, 0),
            most: Measure::whole(&FACTOR, 20),
            why: &w::WHY_C,
            common: &[],
            optional: false,
        })).when(When::Is("kind", &["c"]));
        /// Feet of duct, where somebody knows.
        feet: Option<Length>, along(&w::FEET, &w::NOTHING, 0, false).when(When::Is("kind", &["feet"]));
        /// How many.
        count: i64 = 1, row(&w::COUNT, &w::NOTHING, Kind::Count { least: 1, most: 12, why: &w::WHY_COUNT });
    }
}

static FITS: Item = Item {
    name: &w::FIT,
    rows: Fit::ROWS,
    most: 12,
    blank: || Fit::blank().write_parts(),
    presets: &[
        Preset { label: &w::ADD_ELBOW, sets: &[("kind", "smooth-1")] },
        Preset { label: &w::ADD_PIECED, sets: &[("kind", "pieced-1")] },
        Preset { label: &w::ADD_BOOT, sets: &[("kind", "boot")] },
        Preset { label: &w::ADD_TEE, sets: &[("kind", "tee")] },
        Preset { label: &w::ADD_PLENUM, sets: &[("kind", "plenum")] },
    ],
};

form! {
    /// A branch and what is done to it.
    pub struct Input {
        /// As it is.
        now: Run = Run::blank(), row(&w::NOW, &w::NOTHING, Kind::Group(Run::ROWS));
        /// On its way.
        fittings: Vec<Fit>, row(&w::FITTINGS, &w::FITTINGS_HINT, Kind::List(&FITS));
        /// The air that comes out of it.
        flow: Option<Measure>, cfm(&w::FLOW, &w::FLOW_HINT, 1000, false);
        /// If it is a guess: no less.
        flow_least: Option<Measure>, cfm(&w::FLOW_LEAST, &w::FLOW_LEAST_HINT, 1000, true);
        /// And no more.
        flow_most: Option<Measure>, cfm(&w::FLOW_MOST, &w::NOTHING, 1000, true);
        /// All that the blower moves.
        system: Option<Measure>, cfm(&w::SYSTEM, &w::SYSTEM_HINT, 5000, true);
        /// Branches beside this one.
        others: i64 = 5, row(&w::OTHERS, &w::OTHERS_HINT, Kind::Count { least: 1, most: 40, why: &w::WHY_COUNT });
        /// More of the same duct, or less.
        added: Option<Length>, row(&w::ADDED, &w::ADDED_HINT, Kind::Length(Span {
            least: Length::inches(-3600, 1),
            most: Length::inches(3600, 1),
            why: &w::WHY_ADDED,
            common: &[],
            optional: true,
        }));
        /// In the same duct.
        added_fittings: Vec<Fit>, row(&w::ADDED_FITTINGS, &w::NOTHING, Kind::List(&FITS));
        /// Of another kind.
        piece: Piece, row(&w::PIECE, &w::NOTHING, Kind::Choice(Piece::PICKS));
        /// Its size.
        piece_diameter: Option<Length>, size(&w::PIECE_DIAMETER, false).when(When::IsNot("piece", &["none"]));
        /// As it lies.
        piece_length: Option<Length>, along(&w::PIECE_LENGTH, &w::NOTHING, 6, false).when(When::IsNot("piece", &["none"]));
        /// How much shorter than pulled tight.
        piece_slack: Option<Measure>, slack(&w::PIECE_SLACK, &w::NOTHING).when(When::Is("piece", &["flex"]));
        /// Or how long it is pulled tight.
        piece_tight: Option<Length>, along(&w::PIECE_TIGHT, &w::PIECE_TIGHT_HINT, 6, true).when(When::Is("piece", &["flex"]));
        /// The whole run in a new size.
        new_diameter: Option<Length>, size(&w::NEW_DIAMETER, true);
        /// The run pulled tight.
        cut_slack: bool, row(&w::CUT_SLACK, &w::CUT_SLACK_HINT, Kind::Flag);
        /// What the old duct may have on it.
        wrap: OldWrap, row(&w::WRAP, &w::WRAP_HINT, Kind::Choice(OldWrap::PICKS));
    }
    sample {
        now: Run::round(DuctKind::Round, Length::inches(6, 1), Length::inches(480, 1), None),
        fittings: vec![
            Fit { kind: Fitting::Tee, ..Fit::blank() },
            Fit { kind: Fitting::PiecedOne, count: 2, ..Fit::blank() },
            Fit { kind: Fitting::Boot, ..Fit::blank() },
        ],
        flow: Some(Measure::whole(&CFM, 100)),
        system: Some(Measure::whole(&CFM, 900)),
        others: 8,
        piece: Piece::Flex,
        piece_diameter: Some(Length::inches(6, 1)),
        piece_length: Some(Length::inches(144, 1)),
        piece_slack: Some(Measure::whole(&crate::measure::unit::PERCENT, 15)),
    }
}
