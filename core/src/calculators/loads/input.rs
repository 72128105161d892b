//! What is put in: what bears, the beam, one of its ends, and the shoring.

use super::words as w;
use crate::fields::{Kind, Row, Span, When, row};
use crate::measure::unit::{PLF, POUND, PSF};
use crate::measure::{Length, Measure};
use crate::rules::framing::bearing::On;
use crate::rules::framing::design_loads::{FLOORS, LIVES, ROOF_LIVES, ROOFS};
use crate::words::Phrase;
use crate::{choice, form};

choice! {
    /// What a point load is.
    pub enum PointKind {
        /// It stays.
        Dead = "dead", w::KIND_DEAD;
        /// It comes and goes.
        Live = "live", w::KIND_LIVE;
        /// It comes from a roof.
        Roof = "roof", w::KIND_ROOF;
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

/// A side that has no joists is left empty. No less than 3 ft: a bare 12 is inches.
const fn joists(label: &'static Phrase, hint: &'static Phrase) -> Row {
    row(label, hint, length((36, 1), 480, &w::WHY_SPAN, true))
}

const fn measure(
    least: Measure,
    most: i64,
    why: &'static Phrase,
    common: &'static [Measure],
) -> Kind {
    let most = Measure::whole(least.unit(), most);
    Kind::Measure(Span { least, most, why, common, optional: false })
}

const fn psf(common: &'static [Measure]) -> Kind {
    measure(NO_PSF, 400, &w::WHY_LOAD, common)
}

/// One that is there if it is asked about at all.
const fn some_psf(common: &'static [Measure]) -> Kind {
    measure(Measure::whole(&PSF, 1), 400, &w::WHY_LOAD, common)
}

const NO_PSF: Measure = Measure::whole(&PSF, 0);
const NO_PLF: Measure = Measure::whole(&PLF, 0);

const fn line(label: &'static Phrase, hint: &'static Phrase) -> Row {
    row(label, hint, measure(NO_PLF, 5_000, &w::WHY_LINE, &[]))
}

const fn bearing(label: &'static Phrase, hint: &'static Phrase) -> Row {
    row(label, hint, length((1, 2), 48, &w::WHY_BEARING, false))
        .when(When::IsNot("on", &["not-asked"]))
}

form! {
    /// Something that stands on the beam.
    pub struct Post {
        /// How much.
        load: Option<Measure>, row(&w::POINT_LOAD, &w::NOTHING,
            measure(Measure::whole(&POUND, 1), 50_000, &w::WHY_POINT, &[]));
        /// From the left end.
        at: Option<Length>, row(&w::POINT_AT, &w::NOTHING, length((6, 1), 720, &w::WHY_BEAM, false));
        /// What it is.
        kind: PointKind, row(&w::POINT_KIND, &w::NOTHING, Kind::Choice(PointKind::PICKS));
    }
}

form! {
    /// How the heavier end bears.
    pub struct Rests {
        /// What it bears on.
        on: On, row(&w::ON, &w::ON_HINT, Kind::Choice(On::PICKS));
        /// Across the beam.
        wide: Option<Length>, bearing(&w::WIDE, &w::WIDE_HINT);
        /// Along the beam.
        long: Option<Length>, bearing(&w::LONG, &w::NOTHING);
    }
}

form! {
    /// What bears on a line, and the beam along it.
    pub struct Input {
        /// On one side.
        left: Option<Length>, joists(&w::LEFT, &w::LEFT_HINT);
        /// On the other.
        right: Option<Length>, joists(&w::RIGHT, &w::NOTHING);
        /// They don't end there.
        through: bool, row(&w::THROUGH, &w::THROUGH_HINT, Kind::Flag);
        /// On a square foot.
        dead: Measure = NO_PSF, row(&w::DEAD, &w::DEAD_HINT, psf(FLOORS));
        /// On a square foot.
        live: Measure = NO_PSF, row(&w::LIVE, &w::LIVE_HINT, psf(LIVES));
        /// The roof has loads of its own.
        roof: bool, row(&w::ROOF, &w::NOTHING, Kind::Flag);
        /// On the flat. Half of a rafter's span, so less than a joist's.
        roof_wide: Option<Length>, row(&w::ROOF_WIDE, &w::ROOF_WIDE_HINT, length((24, 1), 480, &w::WHY_SPAN, false))
            .when(When::Yes("roof"));
        /// On the flat.
        roof_dead: Option<Measure>, row(&w::ROOF_DEAD, &w::ROOF_DEAD_HINT, some_psf(ROOFS)).when(When::Yes("roof"));
        /// On the flat.
        roof_live: Option<Measure>, row(&w::ROOF_LIVE, &w::ROOF_LIVE_HINT, some_psf(ROOF_LIVES)).when(When::Yes("roof"));
        /// On a foot.
        wall: Measure = NO_PLF, line(&w::WALL, &w::WALL_HINT);
        /// On a foot.
        beam: Measure = NO_PLF, line(&w::BEAM, &w::BEAM_HINT);
        /// Of the beam.
        span: Length, row(&w::SPAN, &w::SPAN_HINT, length((36, 1), 720, &w::WHY_BEAM, false));
        /// Something stands on it.
        point: bool, row(&w::POINT, &w::NOTHING, Kind::Flag);
        /// What.
        post: Post = Post::blank(), row(&w::POST, &w::NOTHING, Kind::Group(Post::ROWS))
            .when(When::Yes("point"));
        /// How the heavier end bears.
        bearing: Rests = Rests::blank(), row(&w::RESTS, &w::RESTS_HINT, Kind::Group(Rests::ROWS));
        /// It is opened up.
        shoring: bool, row(&w::SHORING, &w::NOTHING, Kind::Flag);
        /// On a square foot.
        shore_dead: Option<Measure>, row(&w::SHORE_DEAD, &w::SHORE_DEAD_HINT, some_psf(&[]))
            .when(When::Yes("shoring"));
        /// On a square foot.
        work: Option<Measure>, row(&w::WORK, &w::WORK_HINT, some_psf(&[])).when(When::Yes("shoring"));
        /// Center to center.
        posts: Option<Length>, row(&w::POSTS, &w::NOTHING, length((6, 1), 144, &w::WHY_POSTS, false))
            .when(When::Yes("shoring"));
    }
    sample {
        left: Some(Length::inches(144, 1)),
        right: Some(Length::inches(144, 1)),
        dead: Measure::whole(&PSF, 10),
        live: Measure::whole(&PSF, 20),
        beam: Measure::whole(&PLF, 15),
        span: Length::inches(192, 1),
    }
}
