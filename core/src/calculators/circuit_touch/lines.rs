//! The lines of the list: each a clause, and what brings it.

use super::words as w;
use super::{Input, What};
use crate::edition::Electrical;
use crate::rules::electrical::arc_fault::{self, ARC_FAULT};
use crate::rules::electrical::building_department::DECIDES;
use crate::rules::electrical::fan_boxes::{self, FAN_BOXES, READY};
use crate::rules::electrical::ground_fault::{self, GROUND_FAULT};
use crate::rules::electrical::old_wiring::{STOP, UNGROUNDED};
use crate::rules::electrical::receptacles::{REPLACED, SHUTTERS};
use crate::rules::electrical::switch_neutral::{self, NEUTRAL};
use crate::rules::residential::smoke_alarms::SMOKE_ALARMS;
use crate::sheet::Source;
use crate::words::Phrase;

/// A line to settle.
#[derive(Debug)]
pub struct Line {
    /// Stable name.
    pub key: &'static str,
    /// What it is.
    pub name: &'static Phrase,
    /// What to settle.
    pub note: &'static Phrase,
    /// Where it is published.
    pub source: &'static Source,
    /// Whether work brings it under an edition.
    pub brings: fn(&Input, Electrical) -> bool,
}

impl PartialEq for Line {
    fn eq(&self, other: &Self) -> bool {
        self.key == other.key
    }
}
impl Eq for Line {}

/// What a clause says under this edition, or the newest verified.
fn says(edition: Electrical, clause: impl Fn(Electrical) -> Option<bool>) -> bool {
    edition.or_newest(clause).unwrap_or(false)
}

/// Whether arc-fault protection would be there but for the short wire.
pub(super) fn in_arc_fault_room(input: &Input, edition: Electrical) -> bool {
    says(edition, |edition| arc_fault::covers(edition, input.room))
}

/// Whether added wire is known to be short enough for none. A receptacle that is replaced comes
/// under its own clause, and one that is new is an outlet.
pub(super) fn is_exempt(input: &Input, edition: Electrical) -> bool {
    let may_be = !matches!(input.what, What::Replace | What::Receptacle);
    let exempts = |wire| says(edition, |it| arc_fault::exempts(it, wire, input.outlet));
    may_be && input.wire.is_some_and(exempts)
}

/// Those that stop come first.
pub(super) static LINES: [Line; 12] = [
    Line {
        key: "stop",
        name: &w::STOP,
        note: &w::ASK_STOP,
        source: &STOP,
        brings: |input, _| input.found.stops(),
    },
    Line {
        key: "service",
        name: &w::SERVICE_LINE,
        note: &w::ASK_SERVICE,
        source: &DECIDES,
        brings: |input, _| input.service,
    },
    Line {
        key: "no-ground",
        name: &w::NO_GROUND,
        note: &w::ASK_NO_GROUND,
        source: &UNGROUNDED,
        brings: |input, _| input.found.lacks_ground(),
    },
    Line {
        key: "arc-fault",
        name: &w::ARC,
        note: &w::ASK_ARC,
        source: &ARC_FAULT,
        brings: |input, edition| in_arc_fault_room(input, edition) && !is_exempt(input, edition),
    },
    Line {
        key: "ground-fault",
        name: &w::GROUND_FAULT,
        note: &w::ASK_GROUND_FAULT,
        source: &GROUND_FAULT,
        brings: |input, edition| {
            let covers = |edition| ground_fault::covers(edition, input.room, input.beside);
            input.what.is_receptacle() && says(edition, covers)
        },
    },
    Line {
        key: "shutters",
        name: &w::SHUTTERS,
        note: &w::ASK_SHUTTERS,
        source: &SHUTTERS,
        brings: |input, _| input.what.is_receptacle(),
    },
    Line {
        key: "replaced",
        name: &w::REPLACED,
        note: &w::ASK_REPLACED,
        source: &REPLACED,
        brings: |input, _| input.what == What::Replace,
    },
    Line {
        key: "neutral",
        name: &w::NEUTRAL,
        note: &w::ASK_NEUTRAL,
        source: &NEUTRAL,
        brings: |input, edition| {
            let covers = |edition| switch_neutral::covers(edition, input.room);
            input.what == What::Switch && says(edition, covers)
        },
    },
    Line {
        key: "fan-box",
        name: &w::FAN_BOX,
        note: &w::ASK_FAN_BOX,
        source: &FAN_BOXES,
        brings: |input, _| input.what == What::Fan,
    },
    Line {
        key: "fan-ready",
        name: &w::READY,
        note: &w::ASK_READY,
        source: &READY,
        brings: |input, edition| {
            let covers = |edition| fan_boxes::covers(edition, input.room, input.spare);
            input.what == What::Light && says(edition, covers)
        },
    },
    Line {
        key: "alarms",
        name: &w::ALARM_LINE,
        note: &w::ASK_ALARMS,
        source: &SMOKE_ALARMS,
        brings: |_, _| true,
    },
    Line {
        key: "local",
        name: &w::LOCAL,
        note: &w::ASK_LOCAL,
        source: &DECIDES,
        brings: |_, _| true,
    },
];
