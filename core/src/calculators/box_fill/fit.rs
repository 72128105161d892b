//! What else has to fit: depth for the device, the wall in front, wire to work with.

use super::enclosure::depth;
use super::input::Input;
use super::sizes::largest;
use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::rules::electrical::{box_depth, box_setback, free_conductor};

/// What was found of a box's fit; each part only as far as it was asked.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fit {
    /// The box's depth and the least it may be, where its depth is known.
    pub depth: Option<(Length, Limit<Length>)>,
    /// From where the sheath ends to the opening: given, or the depth of the box.
    pub emerges: Option<Length>,
    /// The least free conductor to leave.
    pub free_needed: Length,
    /// What is left free now, where given.
    pub free_left: Option<Length>,
    /// How far the front is behind the surface, below zero where it stands proud; with the most it
    /// may be. Only where both measures were given.
    pub setback: Option<(Length, Limit<Length>)>,
}

/// From where the sheath ends to the opening: given, or the depth of the box, which it can't pass.
pub(super) fn emerges(input: &Input) -> Option<Length> {
    input.free.emerges.or_else(|| depth(input))
}

pub(super) fn fit(input: &Input) -> Fit {
    let emerges = emerges(input);
    let setback = match (input.finish.proud, input.finish.build) {
        (Some(proud), Some(build)) => {
            Some((build.minus(proud), box_setback::most(input.finish.surface)))
        }
        _ => None,
    };
    Fit {
        depth: depth(input).map(|depth| (depth, least_depth(input))),
        emerges,
        free_needed: free_conductor::least(emerges.unwrap_or(Length::ZERO)),
        free_left: input.free.left,
        setback,
    }
}

/// The least depth that everything in the box asks for.
pub(super) fn least_depth(input: &Input) -> Limit<Length> {
    let any = largest(input, |_| true);
    let devices = input.devices.iter();
    devices
        .map(|device| box_depth::least(device.size.awg().or(any), device.behind))
        .max_by_key(|limit| limit.value)
        .unwrap_or(box_depth::EMPTY)
}

/// Whether a box of this depth is deep enough, as far as that was asked.
pub(super) fn is_deep_enough(input: &Input) -> bool {
    depth(input).is_none_or(|depth| depth >= least_depth(input).value)
}
