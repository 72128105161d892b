//! What is put in: the room's air, its door, other ways out, the rule, and what is near.

use super::words as w;
use crate::fields::{Form, Item, Kind, Preset, Row, Span, When, row};
use crate::measure::unit::{CFM, FPM, NET_IN2, PERCENT};
use crate::measure::{Length, Measure};
use crate::rules::air::doors::{NET_SHARE, Rule};
use crate::rules::air::run::{self, along, slack};
use crate::rules::hazards::Material;
use crate::words::Phrase;
use crate::{choice, form};

choice! {
    /// A way out besides the gap under the door.
    pub enum WayKind {
        /// Through the door, or straight through a wall.
        Grille = "grille", w::GRILLE;
        /// One on each side of a wall cavity.
        Pair = "pair", w::PAIR;
        /// Grille, duct, grille, over the ceiling.
        Jump = "jump", w::JUMP;
        /// Its maker says how much is open.
        Known = "known", w::KNOWN;
    }
}

choice! {
    /// What a new opening is cut through.
    pub enum Cut {
        /// Nothing old.
        None = "none", w::CUT_NONE;
        /// Old plaster.
        Plaster = "plaster", w::CUT_PLASTER;
        /// Old board.
        Board = "board", w::CUT_BOARD;
        /// Old duct.
        Wrap = "wrap", w::CUT_WRAP;
        /// Something else, or nobody knows.
        Other = "other", w::CUT_OTHER;
    }
}

impl Cut {
    /// The old material.
    pub fn material(self) -> Option<Material> {
        match self {
            Self::None => None,
            Self::Plaster => Some(Material::Plaster),
            Self::Board => Some(Material::Board),
            Self::Wrap => Some(Material::Wrap),
            Self::Other => Some(Material::Other),
        }
    }
}

choice! {
    /// An appliance that takes its air from the house and sends its smoke up by itself.
    pub enum Flame {
        /// Nobody has looked.
        Unknown = "unknown", w::FLAME_UNKNOWN;
        /// There is one.
        Yes = "yes", w::FLAME_YES;
        /// None.
        No = "no", w::FLAME_NO;
    }
}

choice! {
    /// A grille that is to be sized besides.
    pub enum Central {
        /// None.
        None = "none", w::CENTRAL_NONE;
        /// Without a filter.
        Return = "return", w::CENTRAL_RETURN;
        /// With one in it.
        Filter = "filter", w::CENTRAL_FILTER;
    }
}

const fn length(
    least: i64,
    most: i64,
    why: &'static Phrase,
    common: &'static [Length],
    optional: bool,
) -> Kind {
    let (least, most) = (Length::inches(least, 1), Length::inches(most, 1));
    Kind::Length(Span { least, most, why, common, optional })
}

const fn measure(least: Measure, most: Measure, why: &'static Phrase, optional: bool) -> Kind {
    Kind::Measure(Span { least, most, why, common: &[], optional })
}

const fn cfm(label: &'static Phrase, hint: &'static Phrase, most: i64, optional: bool) -> Row {
    row(
        label,
        hint,
        measure(Measure::whole(&CFM, 5), Measure::whole(&CFM, most), &w::WHY_CFM, optional),
    )
}

const fn face(label: &'static Phrase, optional: bool) -> Row {
    row(label, &w::NOTHING, length(1, 48, &w::WHY_FACE, &[], optional))
}

/// Common practice: widths that doors come in.
const DOORS: &[Length] = &[
    Length::inches(24, 1),
    Length::inches(28, 1),
    Length::inches(30, 1),
    Length::inches(32, 1),
    Length::inches(36, 1),
];
/// Common practice: undercuts.
const GAPS: &[Length] = &[Length::inches(1, 2), Length::inches(3, 4), Length::inches(1, 1)];

form! {
    /// A way out.
    pub struct Way {
        /// Which.
        kind: WayKind, row(&w::WAY, &w::NOTHING, Kind::Choice(WayKind::PICKS));
        /// A side of the grille's opening.
        wide: Option<Length>, face(&w::WIDE, false).when(When::IsNot("kind", &["known"]));
        /// The other side.
        high: Option<Length>, face(&w::HIGH, false).when(When::IsNot("kind", &["known"]));
        /// Of the second grille.
        other_wide: Option<Length>, face(&w::OTHER_WIDE, true).when(When::Is("kind", &["pair", "jump"]));
        /// Of the second grille.
        other_high: Option<Length>, face(&w::OTHER_HIGH, true).when(When::Is("kind", &["pair", "jump"]));
        /// Of a jump duct.
        diameter: Option<Length>, row(&w::DIAMETER, &w::DIAMETER_HINT, length(1, 24, &w::WHY_FACE, &[], false))
            .when(When::Is("kind", &["jump"]));
        /// Of a jump duct, as it lies.
        length: Option<Length>, along(&w::LENGTH, &w::LENGTH_HINT, 6, false).when(When::Is("kind", &["jump"]));
        /// Of a jump duct, which is flexible.
        slack: Option<Measure>, slack(&run::SLACK, &w::SLACK_HINT).when(When::Is("kind", &["jump"]));
        /// How much of a face is open.
        share: Option<Measure>, row(&w::SHARE, &w::SHARE_HINT, measure(
            Measure::whole(&PERCENT, 10),
            Measure::whole(&PERCENT, 100),
            &w::WHY_SHARE,
            true,
        )).when(When::IsNot("kind", &["known"]));
        /// Open, where the maker says.
        net: Option<Measure>, row(&w::NET, &w::NOTHING, measure(
            Measure::whole(&NET_IN2, 1),
            Measure::whole(&NET_IN2, 2000),
            &w::WHY_FACE,
            false,
        )).when(When::Is("kind", &["known"]));
    }
}

impl Way {
    /// How much of a face is open.
    pub fn open(&self) -> Measure {
        self.share.unwrap_or(NET_SHARE)
    }
}

static WAYS: Item = Item {
    name: &w::WAY,
    rows: Way::ROWS,
    most: 4,
    blank: || Way::blank().write_parts(),
    presets: &[
        Preset { label: &w::GRILLE, sets: &[("kind", "grille")] },
        Preset { label: &w::PAIR, sets: &[("kind", "pair")] },
        Preset { label: &w::JUMP, sets: &[("kind", "jump")] },
    ],
};

form! {
    /// A room with its door shut.
    pub struct Input {
        /// What the registers give it.
        flow: Option<Measure>, cfm(&w::FLOW, &w::FLOW_HINT, 1000, false);
        /// What a return in the room takes.
        own: Option<Measure>, cfm(&w::OWN, &w::OWN_HINT, 1000, true);
        /// The door's width.
        door: Option<Length>, row(&w::DOOR, &w::NOTHING, length(12, 120, &w::WHY_DOOR, DOORS, false));
        /// The gap under it.
        gap: Option<Length>, row(&w::GAP, &w::GAP_HINT, length(0, 4, &w::WHY_GAP, GAPS, true));
        /// What is still laid on the floor.
        floor: Option<Length>, row(&w::FLOOR, &w::FLOOR_HINT, length(0, 4, &w::WHY_GAP, &[], true));
        /// Other ways out.
        ways: Vec<Way>, row(&w::WAYS, &w::WAYS_HINT, Kind::List(&WAYS));
        /// What the pressure is held to.
        rule: Rule, row(&w::RULE, &w::RULE_HINT, Kind::Choice(Rule::PICKS));
        /// What a new opening is cut through.
        cut: Cut, row(&w::CUT, &w::CUT_HINT, Kind::Choice(Cut::PICKS));
        /// An open flame near.
        flame: Flame, row(&w::FLAME, &w::FLAME_HINT, Kind::Choice(Flame::PICKS));
        /// How far it is from the return opening.
        flame_off: Option<Length>, row(&w::FLAME_OFF, &w::NOTHING, length(0, 1200, &w::WHY_DOOR, &[], false))
            .when(When::Is("flame", &["yes"]));
        /// A grille to size besides.
        central: Central, row(&w::CENTRAL, &w::NOTHING, Kind::Choice(Central::PICKS));
        /// Its air.
        central_flow: Option<Measure>, cfm(&w::CENTRAL_FLOW, &w::CENTRAL_FLOW_HINT, 5000, true).aside()
            .when(When::IsNot("central", &["none"]));
        /// A side of one that is looked at.
        central_wide: Option<Length>, face(&w::CENTRAL_WIDE, true).when(When::IsNot("central", &["none"]));
        /// Its other side.
        central_high: Option<Length>, face(&w::CENTRAL_HIGH, true).when(When::IsNot("central", &["none"]));
        /// How fast.
        central_speed: Option<Measure>, row(&w::CENTRAL_SPEED, &w::CENTRAL_SPEED_HINT, measure(
            Measure::whole(&FPM, 100),
            Measure::whole(&FPM, 900),
            &w::WHY_SPEED,
            true,
        )).when(When::IsNot("central", &["none"]));
    }
    sample {
        flow: Some(Measure::whole(&CFM, 110)),
        door: Some(Length::inches(32, 1)),
        gap: Some(Length::inches(3, 4)),
        ways: vec![Way {
            wide: Some(Length::inches(6, 1)),
            high: Some(Length::inches(8, 1)),
            ..Way::blank()
        }],
        flame: Flame::No,
    }
}
