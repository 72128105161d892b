//! What is put in: the first day, which days are worked, and the steps with what each waits for.

use super::words as w;
use crate::fields::{Form, Item, Kind, Preset, When, row};
use crate::measure::Day;
use crate::{choice, form};

choice! {
    /// Who does a step.
    pub enum Who {
        /// The crew itself.
        Crew = "crew", w::CREW;
        /// Who wires.
        Electrician = "electrician", w::ELECTRICIAN;
        /// Who does ducts.
        Hvac = "hvac", w::HVAC;
        /// Of the building department.
        Inspector = "inspector", w::INSPECTOR;
        /// Who tests what was sampled.
        Lab = "lab", w::LABORATORY;
        /// Anybody else: a shop, the air that dries.
        Other = "other", w::OTHER;
    }
}

impl Who {
    /// Whether others wait for what they say.
    pub const fn is_awaited(self) -> bool {
        matches!(self, Self::Inspector | Self::Lab)
    }
}

const fn days(least: i64, most: i64) -> Kind {
    Kind::Count { least, most, why: &w::WHY }
}

form! {
    /// Days on which nobody works.
    pub struct Off {
        /// The first of them.
        day: Option<Day>, row(&w::OFF_DAY, &w::NOTHING, Kind::Day);
        /// The last of them; empty where it is one.
        through: Option<Day>, row(&w::OFF_THROUGH, &w::OFF_HINT, Kind::Day);
    }
}

form! {
    /// A step of the job.
    pub struct Step {
        /// What others call it.
        name: String, row(&w::STEP, &w::NOTHING, Kind::Text(24)).foremost(|_| true);
        /// Who does it.
        who: Who, row(&w::WHO, &w::NOTHING, Kind::Choice(Who::PICKS));
        /// How long, in whole days.
        days: i64 = 1, row(&w::DAYS, &w::DAYS_HINT, days(1, 120));
        /// On days that nobody works, too; an inspector's never does.
        through: bool, row(&w::THROUGH, &w::THROUGH_HINT, Kind::Flag).when(When::IsNot("who", &["inspector"]));
        /// Notice to give beforehand, in days from Monday to Friday.
        call: i64, row(&w::CALL, &w::CALL_HINT, days(0, 60));
        /// It hides nothing that an inspector is to see.
        covers_nothing: bool, row(&w::COVERS_NOTHING, &w::COVERS_HINT, Kind::Flag).when(When::Is("who", &["crew", "other"]));
        /// It can't begin before.
        from: Option<Day>, row(&w::FROM, &w::NOTHING, Kind::Day);
        /// The names of the steps that are to be done first.
        after: String, row(&w::AFTER, &w::NOTHING, Kind::Text(200)).names_several(&["steps.name"]).foremost(|_| true);
    }
}

static OFF: Item = Item {
    name: &w::DAY_OFF,
    rows: Off::ROWS,
    most: 30,
    blank: || Off::blank().write_parts(),
    presets: &[],
};

static STEPS: Item = Item {
    name: &w::STEP,
    rows: Step::ROWS,
    most: 40,
    blank: || Step::blank().write_parts(),
    presets: &[
        Preset { label: &w::INSPECTION, sets: &[("who", "inspector")] },
        Preset { label: &w::STRIPPING, sets: &[("covers_nothing", "yes")] },
        Preset { label: &w::DRYING, sets: &[("who", "other"), ("through", "yes")] },
    ],
};

form! {
    /// A job's steps.
    pub struct Input {
        /// Nothing begins before.
        start: Option<Day>, row(&w::START, &w::NOTHING, Kind::Day);
        /// Whether they are.
        saturdays: bool, row(&w::SATURDAYS, &w::WORKED_HINT, Kind::Flag);
        /// Whether they are.
        sundays: bool, row(&w::SUNDAYS, &w::WORKED_HINT, Kind::Flag);
        /// Holidays, and when nobody can come.
        off: Vec<Off>, row(&w::OFF, &w::NOTHING, Kind::List(&OFF));
        /// In any order.
        steps: Vec<Step>, row(&w::STEPS, &w::NOTHING, Kind::List(&STEPS));
    }
}

impl Input {
    /// What the screen opens with: an invented house.
    pub fn sample() -> Self {
        use Who::{Crew, Electrician, Hvac, Inspector, Lab, Other};
        let step = |name: &str, who, days, call, after: &str| Step {
            name: name.to_owned(),
            who,
            days,
            call,
            // What nobody does dries, or is at the lab.
            through: who == Other || who == Lab,
            covers_nothing: name == "STRIP",
            after: after.to_owned(),
            ..Step::blank()
        };
        Self {
            start: Day::new(2027, 1, 4),
            off: vec![Off { day: Day::new(2027, 1, 18), through: None }],
            steps: vec![
                step("LAB", Lab, 3, 0, ""),
                step("STRIP", Crew, 2, 0, "LAB"),
                step("FRAME", Crew, 3, 0, "STRIP"),
                step("WIRES", Electrician, 2, 5, "FRAME"),
                step("DUCTS", Hvac, 1, 5, "FRAME"),
                step("ROUGH-CHECK", Inspector, 1, 2, "WIRES, DUCTS"),
                step("BOARD", Crew, 2, 0, "ROUGH-CHECK"),
                step("TAPE", Crew, 3, 0, "BOARD"),
                step("DRY", Other, 2, 0, "TAPE"),
                step("PAINT", Crew, 2, 0, "DRY"),
            ],
            ..Self::blank()
        }
    }
}
