//! What is put in: joints or an area, level and kind, and what an old ceiling has to mend.

use super::words as w;
use crate::fields::{Kind, Row, Span, When, row};
use crate::measure::unit::PERCENT;
use crate::measure::{Area, Length, Measure};
use crate::rules::finish::compound::{Compound, Feather};
use crate::rules::finish::levels::Level;
use crate::rules::finish::old_surface::OldSurface;
use crate::words::Phrase;
use crate::{choice, form};

choice! {
    /// What the answer goes by.
    pub enum By {
        /// Lengths of joints.
        Joints = "joints", w::BY_JOINTS;
        /// Area of board.
        Area = "area", w::BY_AREA;
    }
}

const fn run(label: &'static Phrase, hint: &'static Phrase) -> Row {
    let (least, most) = (Length::ZERO, Length::inches(12 * 5_000, 1));
    row(
        label,
        hint,
        Kind::Length(Span { least, most, why: &w::WHY_RUN, common: &[], optional: true }),
    )
}

const fn number(label: &'static Phrase, hint: &'static Phrase) -> Row {
    row(
        label,
        hint,
        Kind::Number(Span {
            least: 0,
            most: 50_000,
            why: &w::WHY_RUN,
            common: &[],
            optional: true,
        }),
    )
}

const fn percent(most: i64, why: &'static Phrase, optional: bool) -> Kind {
    let (least, most) = (Measure::whole(&PERCENT, 0), Measure::whole(&PERCENT, most));
    Kind::Measure(Span { least, most, why, common: &[], optional })
}

/// Whose joints these are, where boards were laid out.
const BOARDS: &str = "boards";

const JOINTS: When = When::Is("by", &["joints"]);

form! {
    /// What an old ceiling has to mend.
    pub struct Mend {
        /// Popped fasteners.
        pops: Option<i64>, number(&w::POPS, &w::POPS_HINT);
        /// Cracked joints.
        cracks: Length, run(&w::CRACKS, &w::CRACKS_HINT);
        /// Round patches of board.
        patches: Length, run(&w::PATCHES, &w::PATCHES_HINT);
        /// What is mended.
        old: OldSurface, row(&w::OLD, &w::OLD_HINT, Kind::Choice(OldSurface::PICKS));
    }
}

form! {
    /// Board to tape and finish.
    pub struct Input {
        /// What the answer goes by.
        by: By, row(&w::BY, &w::BY_HINT, Kind::Choice(By::PICKS));
        /// Board, by its surface.
        area: Option<Area>, row(&w::AREA, &w::AREA_HINT, Kind::Area(Span {
            least: Area::square_feet(1), most: Area::square_feet(20_000), why: &w::WHY_RUN, common: &[], optional: true,
        })).of_mark(BOARDS, "surface");
        /// Long edges that meet.
        tapered: Length, run(&w::TAPERED, &w::TAPERED_HINT).of_mark(BOARDS, "tapered");
        /// Ends that meet.
        ends: Length, run(&w::ENDS, &w::ENDS_HINT).of_mark(BOARDS, "ends");
        /// How wide those are feathered.
        feather: Feather, row(&w::FEATHER, &w::FEATHER_HINT, Kind::Choice(Feather::PICKS)).when(JOINTS);
        /// Corners that turn in.
        corners: Length, run(&w::CORNERS, &w::CORNERS_HINT).of_mark(BOARDS, "corners");
        /// Corners with bead.
        beads: Length, run(&w::BEADS, &w::NOTHING).when(JOINTS);
        /// Screws to cover.
        screws: Option<i64>, number(&w::SCREWS, &w::SCREWS_HINT).of_mark(BOARDS, "screws").when(JOINTS);
        /// How far it is finished.
        level: Level = Level::Four, row(&w::LEVEL, &w::LEVEL_HINT, Kind::Choice(Level::PICKS));
        /// What with.
        kind: Compound, row(&w::KIND, &w::NOTHING, Kind::Choice(Compound::PICKS));
        /// By volume.
        shrink: Option<Measure>, row(&w::SHRINK, &w::SHRINK_HINT, percent(35, &w::WHY_SHRINK, true));
        /// Left in pails, on tools and on the floor.
        waste: Measure = Measure::whole(&PERCENT, 10), row(&w::WASTE, &w::WASTE_HINT, percent(50, &w::WHY_WASTE, false));
        /// There is something to mend.
        mends: bool, row(&w::MENDS, &w::NOTHING, Kind::Flag);
        /// What.
        mend: Mend = Mend::blank(), row(&w::MEND, &w::NOTHING, Kind::Group(Mend::ROWS)).when(When::Yes("mends"));
    }
    sample {
        area: Some(Area::square_feet(192)),
        tapered: Length::inches(12 * 32, 1),
        ends: Length::inches(12 * 12, 1),
        corners: Length::inches(12 * 56, 1),
        screws: Some(200),
    }
}
