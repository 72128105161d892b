//! What is asked of one homogeneous area: the same material, colour, texture and date.

use super::words as w;
use crate::choice;
use crate::fields::{Kind, Span, When, row};
use crate::form;
use crate::measure::{Area, Day, Length, Volume};
use crate::rules::hazards::{Deed, Material};
use crate::words::Phrase;

/// Letters that a name, a number or a place takes at most.
const LINE: Kind = Kind::Text(80);
/// Letters that what an office says takes at most.
const ANSWER: Kind = Kind::Text(160);

const fn number(least: i64, most: i64, why: &'static Phrase) -> Kind {
    Kind::Number(Span { least, most, why, common: &[], optional: true })
}

const fn area(square_feet: i64) -> Kind {
    let most = Area::square_feet(square_feet);
    Kind::Area(Span { least: Area::ZERO, most, why: &w::WHY_AREA, common: &[], optional: true })
}

const YEAR: Kind = number(1600, 2199, &w::WHY_YEAR);
const DOLLARS: Kind = number(0, 1_000_000, &w::WHY_DOLLARS);
const PIPE: Kind = Kind::Length(Span {
    least: Length::ZERO,
    most: Length::inches(60_000, 1),
    why: &w::WHY_PIPE,
    common: &[],
    optional: true,
});

const LOOSE: Kind = Kind::Room(Span {
    least: Volume::ZERO,
    most: Volume::hundredths(172_800).times(100_000),
    why: &w::WHY_AREA,
    common: &[],
    optional: true,
});

choice! {
    /// What the laboratory found.
    pub enum Asbestos {
        /// Nothing yet.
        NoneYet = "none-yet", w::NONE_YET;
        /// No asbestos.
        NoneDetected = "none-detected", w::NONE_DETECTED;
        /// Some, up to one percent: one percent itself is here.
        Trace = "trace", w::TRACE;
        /// More than one percent.
        Over = "over", w::OVER_ONE;
    }
}

choice! {
    /// What the paint was found to hold.
    pub enum Lead {
        /// Nothing yet.
        NoneYet = "none-yet", w::NONE_YET;
        /// No lead.
        NoLead = "no-lead", w::NO_LEAD;
        /// Lead.
        Found = "found", w::LEAD_FOUND;
    }
}

choice! {
    /// What the state and the local authority were found to ask.
    pub enum Local {
        /// Nobody has asked.
        NotAsked = "not-asked", w::NOT_ASKED;
        /// Nothing beyond the federal rules.
        NothingStricter = "nothing-stricter", w::NOTHING_STRICTER;
        /// More.
        Stricter = "stricter", w::STRICTER;
    }
}

choice! {
    /// Who does the work, as the lead rule sees it.
    pub enum Who {
        /// Nobody has said.
        NotSaid = "not-said", w::NOT_SAID;
        /// Who lives in a house of their own.
        Owner = "owner", w::OWNER;
        /// Paid, not certified for lead.
        Crew = "crew", w::CREW;
        /// A certified firm.
        Certified = "certified", w::CERTIFIED;
    }
}

choice! {
    /// Whether a window is replaced. A blank is not a no.
    pub enum Window {
        /// Nobody has said.
        NotSaid = "not-said", w::NOT_SAID;
        /// None is.
        No = "no", w::NO;
        /// One is.
        Yes = "yes", w::YES;
    }
}

form! {
    /// The laboratory's report.
    pub struct Report {
        /// Its result.
        result: Asbestos, row(&w::RESULT, &w::RESULT_HINT, Kind::Choice(Asbestos::PICKS));
        /// Samples of this area, all told.
        samples: Option<i64>, row(&w::SAMPLES, &w::SAMPLES_HINT, number(0, 99, &w::WHY_SAMPLES))
            .when(TOLD);
        /// Who looked at them.
        lab: String, row(&w::LAB, &w::NOTHING, LINE).when(TOLD);
        /// By what the laboratory finds it again.
        number: String, row(&w::NUMBER, &w::NOTHING, LINE).when(TOLD);
        /// By what it is accredited.
        accreditation: String, row(&w::ACCREDITATION, &w::ACCREDITATION_HINT, LINE).when(TOLD);
        /// The report's date.
        dated: Option<Day>, row(&w::DATED, &w::NOTHING, Kind::Day).when(TOLD);
        /// Where the samples were taken.
        sampled: String, row(&w::SAMPLED, &w::SAMPLED_HINT, LINE).when(TOLD);
    }
}

const TOLD: When = When::IsNot("result", &["none-yet"]);

form! {
    /// The paint on it and round it.
    pub struct Paint {
        /// Painted surface that is broken, in one room or outside.
        painted: Option<Area>, row(&w::PAINTED, &w::PAINTED_HINT, area(100_000));
        /// It is outside.
        outside: bool, row(&w::OUTSIDE, &w::NOTHING, Kind::Flag);
        /// A window is replaced.
        window: Window, row(&w::WINDOW, &w::NOTHING, Kind::Choice(Window::PICKS));
        /// What was found.
        result: Lead, row(&w::LEAD, &w::LEAD_HINT, Kind::Choice(Lead::PICKS)).evidence();
        /// Who tested.
        tester: String, row(&w::TESTER, &w::NOTHING, LINE).when(TESTED).evidence();
        /// When.
        tested: Option<Day>, row(&w::TESTED, &w::NOTHING, Kind::Day).when(TESTED).evidence();
        /// Who does the work.
        who: Who, row(&w::WHO, &w::CERTIFIED_HINT, Kind::Choice(Who::PICKS)).evidence();
    }
}

const TESTED: When = When::IsNot("result", &["none-yet"]);

form! {
    /// The building as the notice rule sees it.
    pub struct Building {
        /// Dwelling units.
        dwellings: Option<i64>, row(&w::DWELLINGS, &w::NOTHING, number(1, 10_000, &w::WHY_DWELLINGS));
        /// Part of a larger installation or project.
        project: bool, row(&w::PROJECT, &w::PROJECT_HINT, Kind::Flag);
    }
}

form! {
    /// What the state and the local authority say.
    pub struct Office {
        /// What they ask.
        asks: Local, row(&w::LOCAL, &w::LOCAL_HINT, Kind::Choice(Local::PICKS));
        /// From what area on their rule reaches.
        limit: Option<Area>, row(&w::LOCAL_LIMIT, &w::LOCAL_LIMIT_HINT, area(100_000)).when(When::Is("asks", &["stricter"]));
        /// Who said so, and what.
        says: String, row(&w::LOCAL_SAYS, &w::NOTHING, ANSWER).when(ASKED);
        /// What they ask has been done.
        met: bool, row(&w::LOCAL_MET, &w::NOTHING, Kind::Flag).when(When::Is("asks", &["stricter"]));
    }
}

const ASKED: When = When::IsNot("asks", &["not-asked"]);

form! {
    /// Prices that the user was given.
    pub struct Prices {
        /// One sample at the laboratory, in whole dollars.
        sample: Option<i64>, row(&w::PRICE_SAMPLE, &w::NOTHING, DOLLARS);
        /// An abatement contractor, in whole dollars.
        abatement: Option<i64>, row(&w::PRICE_ABATEMENT, &w::NOTHING, DOLLARS);
    }
}

form! {
    /// One homogeneous area, and what is known of it. Nothing is preset: a blank is a hold.
    pub struct Input {
        /// Which surface, in which room.
        place: String, row(&w::PLACE, &w::PLACE_HINT, LINE);
        /// What it is of.
        material: Material, row(&w::MATERIAL, &w::MATERIAL_HINT, Kind::Choice(Material::PICKS))
            .identifies();
        /// What will be done to it.
        deed: Deed, row(&w::DEED, &w::DEED_HINT, Kind::Choice(Deed::PICKS));
        /// How much of it.
        area: Option<Area>, row(&w::AREA, &w::AREA_HINT, area(100_000));
        /// How much pipe or duct it is on.
        pipe: Option<Length>, row(&w::PIPE, &w::PIPE_HINT, PIPE).when(When::Is("material", &["wrap"]));
        /// How much loose fill there is.
        loose: Option<Volume>, row(&w::LOOSE, &w::LOOSE_HINT, LOOSE).when(When::Is("material", &["vermiculite"]));
        /// The year of the house.
        built: Option<i64>, row(&w::BUILT, &w::BUILT_HINT, YEAR);
        /// The year of the material, if later.
        put_up: Option<i64>, row(&w::PUT_UP, &w::PUT_UP_HINT, YEAR);
        /// The laboratory's report.
        report: Report = Report::blank(), row(&w::REPORT, &w::REPORT_HINT, Kind::Group(Report::ROWS))
            .evidence();
        /// The paint.
        paint: Paint = Paint::blank(), row(&w::PAINT, &w::PAINT_HINT, Kind::Group(Paint::ROWS));
        /// The building.
        building: Building = Building::blank(),
            row(&w::BUILDING, &w::NOTHING, Kind::Group(Building::ROWS));
        /// The state and the local authority.
        office: Office = Office::blank(), row(&w::OFFICE, &w::OFFICE_HINT, Kind::Group(Office::ROWS))
            .evidence();
        /// Prices given.
        prices: Prices = Prices::blank(), row(&w::PRICES, &w::PRICES_HINT, Kind::Group(Prices::ROWS));
    }
    sample {}
}

impl Input {
    /// How much of it there is, where that was measured: nothing at all is no measure of it.
    pub(super) fn measured(&self) -> Option<Area> {
        self.area.filter(|area| *area > Area::ZERO)
    }

    /// How much pipe or duct it is on, where that was measured.
    pub(super) fn measured_pipe(&self) -> Option<Length> {
        self.pipe.filter(|pipe| *pipe > Length::ZERO)
    }

    /// How much loose fill there is, where that was measured.
    pub(super) fn measured_loose(&self) -> Option<Volume> {
        self.loose.filter(|loose| *loose > Volume::ZERO)
    }
}
