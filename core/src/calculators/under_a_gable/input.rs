//! What is put in: the gable, its load, what stands in the way, nails and insulation.

use super::words as w;
use crate::fields::{Kind, Span, When, row};
use crate::measure::unit::{PITCH, PSF, R_PER_INCH, R_VALUE};
use crate::measure::{Length, Measure};
use crate::rules::framing::design_loads::{ROOF_LIVES, ROOFS};
use crate::words::Phrase;
use crate::{choice, form};

choice! {
    /// What carries the ridge.
    pub enum Roof {
        /// Nobody has looked.
        Unknown = "unknown", w::UNKNOWN;
        /// Nothing: the rafters lean on each other.
        Board = "board", w::BOARD;
        /// A beam on posts.
        Beam = "beam", w::BEAM;
        /// There is no ridge to speak of.
        Trusses = "trusses", w::TRUSSES;
    }
}

choice! {
    /// How the roof's load is put in.
    pub enum Given {
        /// One number.
        Flat = "flat", w::ON_THE_FLAT;
        /// Two, one of them on the slope.
        Apart = "apart", w::APART;
    }
}

choice! {
    /// How the insulation is put in.
    pub enum Wanted {
        /// It isn't.
        No = "no", w::NONE;
        /// By its resistance.
        R = "r", w::BY_R;
        /// By its depth.
        Depth = "depth", w::BY_DEPTH;
    }
}

const fn length(least: (i64, i64), most: i64, why: &'static Phrase, optional: bool) -> Kind {
    Kind::Length(Span {
        least: Length::inches(least.0, least.1),
        most: Length::inches(most, 1),
        why,
        common: &[],
        optional,
    })
}

const fn psf(least: i64, common: &'static [Measure]) -> Kind {
    Kind::Measure(Span {
        least: Measure::whole(&PSF, least),
        most: Measure::whole(&PSF, 400),
        why: &w::WHY_LOAD,
        common,
        optional: false,
    })
}

form! {
    /// What takes the gable out of the code's tables.
    pub struct Stops {
        /// No tie is whole.
        cut: bool, row(&w::CUT, &w::NOTHING, Kind::Flag);
        /// Joists run the other way.
        across: bool, row(&w::ACROSS, &w::NOTHING, Kind::Flag);
        /// The rafters have other supports.
        purlins: bool, row(&w::PURLINS, &w::NOTHING, Kind::Flag);
        /// The ridge isn't in the middle, or one side carries more.
        unequal: bool, row(&w::UNEQUAL, &w::NOTHING, Kind::Flag);
        /// It isn't a plain gable.
        hips: bool, row(&w::HIPS, &w::NOTHING, Kind::Flag);
    }
}

/// How far apart framing mostly is. Common practice.
const APART: &[Length] =
    &[Length::inches(16, 1), Length::inches(24, 1), Length::inches(32, 1), Length::inches(48, 1)];

/// Slopes that roofs mostly have. Common practice.
const SLOPES: &[Measure] = &[
    Measure::whole(&PITCH, 4),
    Measure::whole(&PITCH, 6),
    Measure::whole(&PITCH, 8),
    Measure::whole(&PITCH, 12),
];

form! {
    /// A gable whose ceiling goes up.
    pub struct Input {
        /// What carries the ridge.
        roof: Roof, row(&w::ROOF, &w::ROOF_HINT, Kind::Choice(Roof::PICKS));
        /// Outside of wall to outside, at the top of the plates.
        span: Length, row(&w::SPAN, &w::SPAN_HINT, length((72, 1), 720, &w::WHY_SPAN, false));
        /// Of the roof.
        pitch: Measure = Measure::whole(&PITCH, 0), row(&w::PITCH, &w::PITCH_HINT, Kind::Measure(Span {
            least: Measure::hundredths(&PITCH, 50),
            most: Measure::whole(&PITCH, 24),
            why: &w::WHY_PITCH,
            common: SLOPES,
            optional: false,
        }));
        /// Plate to the underside of the raised ties.
        up: Option<Length>, row(&w::UP, &w::UP_HINT, length((3, 1), 240, &w::WHY_UP, true));
        /// Plate to the ridge's underside.
        ridge: Option<Length>, row(&w::RIDGE_UNDER, &w::RIDGE_UNDER_HINT, length((6, 1), 480, &w::WHY_RIDGE, true))
            .when(When::Is("roof", &["board", "unknown"]));
        /// Of the ties.
        spacing: Length, row(&w::SPACING, &w::SPACING_HINT, Kind::Length(Span {
            least: Length::inches(6, 1),
            most: Length::inches(120, 1),
            why: &w::WHY_SPACING,
            common: APART,
            optional: false,
        }));
        /// How the load is put in.
        given: Given, row(&w::GIVEN, &w::GIVEN_HINT, Kind::Choice(Given::PICKS));
        /// On the flat.
        load: Measure = Measure::whole(&PSF, 0), row(&w::LOAD, &w::LOAD_HINT, psf(1, &[]))
            .when(When::Is("given", &["flat"]));
        /// On the slope.
        dead: Measure = Measure::whole(&PSF, 0), row(&w::DEAD, &w::DEAD_HINT, psf(1, ROOFS))
            .when(When::Is("given", &["apart"]));
        /// On the flat.
        live: Measure = Measure::whole(&PSF, 0), row(&w::LIVE, &w::LIVE_HINT, psf(0, ROOF_LIVES))
            .when(When::Is("given", &["apart"]));
        /// What stands in the way of a table.
        stops: Stops = Stops::blank(), row(&w::STOPS, &w::STOPS_HINT, Kind::Group(Stops::ROWS));
        /// From the person's own table.
        nails: Option<i64>, row(&w::NAILS, &w::NAILS_HINT, Kind::Number(Span {
            least: 1,
            most: 60,
            why: &w::WHY_NAILS,
            common: &[],
            optional: true,
        })).when(When::Is("roof", &["board"]));
        /// How it is put in.
        insulation: Wanted, row(&w::INSULATION, &w::NOTHING, Kind::Choice(Wanted::PICKS));
        /// Of all of it.
        r: Option<Measure>, row(&w::R, &w::R_HINT, Kind::Measure(Span {
            least: Measure::whole(&R_VALUE, 1),
            most: Measure::whole(&R_VALUE, 100),
            why: &w::WHY_R,
            common: &[],
            optional: false,
        })).when(When::Is("insulation", &["r"]));
        /// Of an inch.
        r_per_inch: Option<Measure>, row(&w::R_PER_INCH, &w::R_PER_INCH_HINT, Kind::Measure(Span {
            least: Measure::hundredths(&R_PER_INCH, 100),
            most: Measure::whole(&R_PER_INCH, 10),
            why: &w::WHY_R_PER_INCH,
            common: &[],
            optional: false,
        })).when(When::Is("insulation", &["r"]));
        /// Of the insulation.
        depth: Option<Length>, row(&w::DEPTH, &w::NOTHING, length((1, 2), 48, &w::WHY_DEPTH, false))
            .when(When::Is("insulation", &["depth"]));
        /// Plate to the top of the rafter, plumb, at the outside of the wall.
        heel: Option<Length>, row(&w::HEEL, &w::HEEL_HINT, length((1, 2), 36, &w::WHY_RAFTER, true));
        /// Square to its slope.
        rafter: Option<Length>, row(&w::RAFTER, &w::RAFTER_HINT, length((1, 1), 24, &w::WHY_RAFTER, true));
    }
    sample {
        roof: Roof::Board,
        span: Length::inches(288, 1),
        pitch: Measure::whole(&PITCH, 6),
        up: Some(Length::inches(16, 1)),
        spacing: Length::inches(16, 1),
        load: Measure::whole(&PSF, 30),
    }
}
