//! Jobs and marks for tests, all invented.

use super::clock::Clock;
use super::edit::{Edit, apply};
use super::mark::{Kept, Mark};
use super::site::Job;
use super::stamp::Stamp;
use super::tie::Tie;
use crate::edition::{Basis, Electrical};
use crate::measure::Units;
use crate::wire::Node;

/// A stamp a minute after another for each step, of one of two devices.
pub(super) fn stamp(step: u64) -> Stamp {
    Stamp {
        at: 1_791_295_200 + 60 * i64::try_from(step).unwrap(),
        zone: -300,
        device: if step.is_multiple_of(2) { "phone" } else { "tablet" }.into(),
        random: step,
    }
}

/// A mark of a calculator that no catalog has. Every part of it is filled.
pub(super) fn mark(step: u64) -> Mark {
    let stamp = stamp(step);
    let mut input = Node::EMPTY;
    input.put("span", Node::text("9 ft 4-1/2 in"));
    input.put("holes", Node::List(vec![Node::Whole(2), Node::Flag(true)]));
    Mark {
        id: stamp.id(),
        calculator: "made-up".into(),
        version: 3,
        basis: Basis { electrical: Some(Electrical::E2017) },
        input,
        ties: vec![Tie {
            path: "span".into(),
            mark: "elsewhere".into(),
            key: "rest".into(),
            seen: "9 ft 4-1/2 in".into(),
        }],
        behind: Some("elsewhere".into()),
        kept: Kept {
            figure: "rest".into(),
            answer: "4-1/2 in".into(),
            verdict: "within".into(),
            edition: Some(Electrical::E2017),
            figures: vec![("used".into(), "9 ft".into())],
            checks: vec![("reach".into(), "ask".into())],
        },
        title: "Shelf over the bench".into(),
        spot: "Workshop".into(),
        note: "Invented. Measured twice, “once” by Ané.".into(),
        at: stamp.moment(),
        clock: Clock::default(),
    }
}

/// A job with something in every part of it. Its fields are all named at the end, so that a new
/// one isn't forgotten here. The frozen record of this schema holds this job: leave it as it is.
pub(super) fn job() -> Job {
    let mut job = Job::new("3 Plumbline Court", "Invented, second gate", &stamp(0)).unwrap();
    let edits = [
        Edit::Basis(Basis { electrical: Some(Electrical::E2020) }),
        Edit::Units(Units::Metric),
        Edit::Keep(mark(1)),
        Edit::Keep(mark(2)),
        Edit::Remove(mark(2).id),
        Edit::Jot { key: "got staple".into(), says: "yes, 3 boxes".into() },
    ];
    for (step, edit) in (1..).zip(edits) {
        apply(&mut job, edit, &stamp(step)).unwrap();
    }
    let Job { id, name, place, basis, units, made, clock, marks, gone, jots, invented } = job;
    Job { id, name, place, basis, units, made, clock, marks, gone, jots, invented }
}
