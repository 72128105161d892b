//! Inspections and laboratory results that the plan goes past: asked by what waits for what, and of what
//! isn't said to cover nothing. A step's name is free and tells nothing.

use super::input::{Step, Who};
use super::waits::Waits;

/// A step that begins before an inspection or a laboratory's result is done, though neither waits for
/// the other.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Early {
    /// The step.
    pub step: usize,
    /// The inspection, or the laboratory.
    pub inspection: usize,
    /// So many days of the calendar, the inspection's last among them.
    pub days: i64,
}

/// All that each step waits for, through others too.
fn before(by: &Waits) -> Vec<Vec<usize>> {
    let mut all = vec![Vec::new(); by.waits.len()];
    for &step in &by.order {
        let mut before = by.waits[step].clone();
        for wait in &by.waits[step] {
            before.extend_from_slice(&all[*wait]);
        }
        all[step] = before;
    }
    all
}

/// The inspections and results that no step waits for. One at the end of all work is as it should be.
pub(super) fn unasked(steps: &[Step], by: &Waits) -> Vec<usize> {
    let before = before(by);
    let mut all = Vec::new();
    for (at, it) in steps.iter().enumerate() {
        let is_waited_for = by.waits.iter().any(|waits| waits.contains(&at));
        let is_beside =
            |other: usize| !steps[other].who.is_awaited() && !before[at].contains(&other);
        if it.who.is_awaited() && !is_waited_for && (0..steps.len()).any(is_beside) {
            all.push(at);
        }
    }
    all
}

/// What is begun on the day of an inspection or a result, or before, by the first and last days of all
/// steps. The less a step waits for, the more it is asked.
pub(super) fn early(steps: &[Step], by: &Waits, spans: &[[i64; 2]]) -> Vec<Early> {
    let before = before(by);
    let mut all = Vec::new();
    for inspection in 0..steps.len() {
        for step in 0..steps.len() {
            let pair = (steps[step].who, steps[inspection].who);
            let days = spans[inspection][1] - spans[step][0] + 1;
            let waits = before[step].contains(&inspection) || before[inspection].contains(&step);
            let is_asked = match pair {
                (Who::Inspector | Who::Lab, _) => false,
                // What goes on over days off dries, or is on its way.
                (Who::Other, _) if steps[step].through => false,
                // Nor does what the plan says covers nothing; it may still disturb what was sampled.
                (_, Who::Inspector) if steps[step].covers_nothing => false,
                // Whoever works may disturb what was sampled.
                (_, Who::Lab) => true,
                // Who wires and who does ducts cover nothing.
                (Who::Crew | Who::Other, Who::Inspector) => true,
                _ => false,
            };
            if is_asked && days > 0 && !waits {
                all.push(Early { step, inspection, days });
            }
        }
    }
    all
}
