//! What is put in: the old cable, its old way or its length, and its new way.

use super::words as w;
use crate::choice;
use crate::fields::{Form, Item, Kind, Preset, Row, Span, When, row};
use crate::form;
use crate::measure::{Length, Measure, unit};
use crate::words::Phrase;

choice! {
    /// How its length is known.
    pub enum Known {
        /// Measured.
        Length = "length", w::BY_LENGTH;
        /// Added up.
        Way = "way", w::BY_WAY;
    }
}

choice! {
    /// What a part of its way does: for the person alone.
    pub enum Way {
        /// Up.
        Up = "up", w::UP;
        /// Level.
        Across = "across", w::ACROSS;
        /// Through framing.
        Through = "through", w::THROUGH;
        /// Down.
        Down = "down", w::DOWN;
    }
}

choice! {
    /// Where a splice box would be.
    pub enum Place {
        /// Nobody has said.
        NotSaid = "not-said", w::NOT_SAID;
        /// Within reach.
        Attic = "attic", w::ATTIC;
        /// In sight.
        Cover = "cover", w::COVER;
        /// Out of reach.
        Closed = "closed", w::CLOSED;
    }
}

/// 200 ft at the most.
const LONGEST: i64 = 2400;

const fn length(label: &'static Phrase, hint: &'static Phrase, optional: bool) -> Row {
    let most = Length::inches(LONGEST, 1);
    let span = Span { least: Length::ZERO, most, why: &w::WHY_CABLE, common: &[], optional };
    row(label, hint, Kind::Length(span))
}

form! {
    /// A part of a cable's way.
    pub struct Leg {
        /// Which way it goes.
        way: Way, row(&w::WAY, &w::NOTHING, Kind::Choice(Way::PICKS));
        /// How long it is.
        length: Option<Length>, length(&w::LENGTH, &w::NOTHING, false).foremost(|_| true);
    }
}

static LEGS: Item = Item {
    name: &w::LEG,
    rows: Leg::ROWS,
    most: 12,
    blank: || Leg::blank().write_parts(),
    presets: &[
        Preset { label: &w::UP, sets: &[("way", "up")] },
        Preset { label: &w::ACROSS, sets: &[("way", "across")] },
        Preset { label: &w::THROUGH, sets: &[("way", "through"), ("length", "3 in")] },
        Preset { label: &w::DOWN, sets: &[("way", "down")] },
    ],
};

const BY_WAY: When = When::Is("known", &["way"]);

form! {
    /// A cable, or several of one way.
    pub struct Input {
        /// How its length is known.
        known: Known, row(&w::KNOWN, &w::KNOWN_HINT, Kind::Choice(Known::PICKS));
        /// From where it stays fixed to its end.
        there: Option<Length>, row(&w::THERE, &w::THERE_HINT, Kind::Length(Span {
            least: Length::inches(1, 1),
            most: Length::inches(LONGEST, 1),
            why: &w::WHY_CABLE,
            common: &[],
            optional: false,
        }))
            .when(When::Is("known", &["length"]));
        /// From where it stays fixed to the old box.
        old: Vec<Leg>, row(&w::OLD, &w::OLD_HINT, Kind::List(&LEGS)).when(BY_WAY);
        /// What comes free of loops.
        slack: Option<Length>, length(&w::SLACK, &w::SLACK_HINT, true).when(BY_WAY);
        /// Wires in the old box, past the sheath.
        left: Option<Length>, length(&w::LEFT, &w::LEFT_HINT, true).when(BY_WAY);
        /// From where it stays fixed to the new box.
        new: Vec<Leg>, row(&w::NEW, &w::NEW_HINT, Kind::List(&LEGS));
        /// More than that way, up.
        raise: Option<Length>, length(&w::RAISE, &w::RAISE_HINT, true);
        /// Of the way.
        allowance: Measure = Measure::whole(&unit::PERCENT, 10), row(&w::ALLOWANCE, &w::ALLOWANCE_HINT, Kind::Measure(Span {
            least: Measure::whole(&unit::PERCENT, 0),
            most: Measure::whole(&unit::PERCENT, 50),
            why: &w::WHY_ALLOWANCE,
            common: &[],
            optional: false,
        }));
        /// In feet.
        extra: Option<Length>, length(&w::EXTRA, &w::EXTRA_HINT, true);
        /// From the sheath's end to the front of the new box.
        emerges: Option<Length>, row(&w::EMERGES, &w::EMERGES_HINT, Kind::Length(Span {
            least: Length::ZERO,
            most: Length::inches(12, 1),
            why: &w::WHY_EMERGES,
            common: &[],
            optional: true,
        }));
        /// How many have this way.
        cables: i64 = 1, row(&w::CABLES, &w::CABLES_HINT, Kind::Count { least: 1, most: 8, why: &w::WHY_CABLES });
        /// Where a splice box would be.
        splice: Place, row(&w::SPLICE, &w::SPLICE_HINT, Kind::Choice(Place::PICKS));
        /// How far back from the old end.
        back: Option<Length>, length(&w::BACK, &w::BACK_HINT, true);
    }
    sample {
        there: Some(Length::inches(168, 1)),
        new: vec![
            Leg { way: Way::Up, length: Some(Length::inches(54, 1)) },
            Leg { way: Way::Across, length: Some(Length::inches(84, 1)) },
        ],
        raise: Some(Length::inches(14, 1)),
    }
}
