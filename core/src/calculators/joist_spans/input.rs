//! What is put in: the joists, what is above, what hangs on them, what else is so.

use super::words as w;
use crate::fields::{Kind, Span, When, row};
use crate::form;
use crate::measure::unit::PCF;
use crate::measure::{Length, Measure};
use crate::rules::framing::ceiling_joists::{Attic, Size, Spacing, Species};
use crate::rules::framing::dead_weights::{Fill, Layer};

form! {
    /// What takes joists out of the table.
    pub struct Also {
        /// They tie the roof.
        ties: bool, row(&w::TIES, &w::NOTHING, Kind::Flag);
        /// Somebody walks on them.
        floor: bool, row(&w::FLOOR, &w::NOTHING, Kind::Flag);
        /// Something stands or hangs on them.
        loaded: bool, row(&w::LOADED, &w::NOTHING, Kind::Flag);
        /// They aren't whole.
        harmed: bool, row(&w::HARMED, &w::NOTHING, Kind::Flag);
    }
}

form! {
    /// Ceiling joists.
    pub struct Input {
        /// By the stamp.
        species: Species, row(&w::SPECIES, &w::SPECIES_HINT, Kind::Choice(Species::PICKS));
        /// Of one.
        size: Size, row(&w::SIZE, &w::SIZE_HINT, Kind::Choice(Size::PICKS));
        /// Center to center.
        apart: Spacing, row(&w::APART, &w::APART_HINT, Kind::Choice(Spacing::PICKS));
        /// Row of the table.
        attic: Attic, row(&w::ATTIC, &w::ATTIC_HINT, Kind::Choice(Attic::PICKS));
        /// Bearing to bearing.
        span: Length, row(&w::SPAN, &w::SPAN_HINT, Kind::Length(Span {
            // No less than 3 ft: a bare 13 is inches.
            least: Length::inches(36, 1),
            most: Length::inches(480, 1),
            why: &w::WHY_SPAN,
            common: &[],
            optional: false,
        }));
        /// On the joists.
        ceiling: Layer = Layer::Half, row(&w::CEILING, &w::NOTHING, Kind::Choice(Layer::PICKS));
        /// Under that.
        second: Layer, row(&w::SECOND, &w::SECOND_HINT, Kind::Choice(Layer::PICKS));
        /// Loose insulation.
        fill: Fill, row(&w::FILL, &w::NOTHING, Kind::Choice(Fill::PICKS));
        /// Of the insulation.
        depth: Option<Length>, row(&w::DEPTH, &w::NOTHING, Kind::Length(Span {
            least: Length::inches(1, 2),
            most: Length::inches(48, 1),
            why: &w::WHY_DEPTH,
            common: &[],
            optional: false,
        })).when(When::IsNot("fill", &["nothing"]));
        /// Of another.
        density: Option<Measure>, row(&w::DENSITY, &w::DENSITY_HINT, Kind::Measure(Span {
            least: Measure::hundredths(&PCF, 20),
            most: Measure::whole(&PCF, 12),
            why: &w::WHY_DENSITY,
            common: &[],
            optional: false,
        })).when(When::Is("fill", &["other"]));
        /// What else is so.
        also: Also = Also::blank(), row(&w::ALSO, &w::ALSO_HINT, Kind::Group(Also::ROWS));
    }
    sample {
        species: Species::DouglasFirLarch,
        span: Length::inches(144, 1),
        attic: Attic::Storage,
    }
}
