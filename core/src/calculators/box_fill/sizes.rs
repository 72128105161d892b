//! The sizes of the conductors in a box: the largest, and whether they differ.

use super::input::Input;
use crate::rules::electrical::conductor_volume::Awg;

/// The thicker of two.
pub(super) fn thicker(a: Option<Awg>, b: Awg) -> Option<Awg> {
    match a {
        Some(a) if a.thickness() >= b.thickness() => Some(a),
        _ => Some(b),
    }
}

/// The sizes of all that is `on` this side, pigtails and grounds by hand too, each with whether a
/// device may be connected to it.
pub(super) fn all(
    input: &Input,
    on: impl Fn(i64) -> bool + Clone,
) -> impl Iterator<Item = (Awg, bool)> + Clone {
    let here = on.clone();
    let cables = input.cables.iter().filter(move |cable| here(cable.side));
    let cables = cables.map(|cable| (cable.cable.conductors().0, true));
    let wires = input.wires.iter().filter(move |wire| on(wire.side));
    cables.chain(wires.map(|wire| (wire.size, wire.how.is_for_devices())))
}

/// The largest conductor of all that is `on` this side.
pub(super) fn largest(input: &Input, on: impl Fn(i64) -> bool + Clone) -> Option<Awg> {
    all(input, on).map(|(size, _)| size).fold(None, thicker)
}

/// Whether a device may be on a thinner wire than the largest of `sizes`, as [`all`] gives them.
pub(super) fn are_mixed(sizes: impl Iterator<Item = (Awg, bool)> + Clone) -> bool {
    let largest = sizes.clone().map(|(size, _)| size).fold(None, thicker);
    sizes.into_iter().any(|(size, for_devices)| for_devices && Some(size) != largest)
}
