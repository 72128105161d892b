//! Where a hole may be: clear wood on both sides of it, the largest bit at a place, and the window
//! of centers for a bit. All exact to the nanometre.

use crate::measure::{Length, Rounding, divide};

/// What a hole in a member must keep to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Bore {
    /// The member's width, across which the hole lies.
    pub width: Length,
    /// How far a bit may end up off its mark.
    pub wander: Length,
    /// The least wood on both sides.
    pub edge: Length,
    /// The largest bit, wherever it is.
    pub cap: Length,
}

/// What bits come in.
pub(super) const STEP: Length = Length::inches(1, 16);

impl Bore {
    /// The same, with at least this much wood on both sides.
    pub fn with_edge(self, edge: Length) -> Self {
        Self { edge: self.edge.max(edge), ..self }
    }

    /// The wood between the face and the edge of a hole on its mark, on the side that is measured
    /// from and on the other; below zero where the hole breaks out.
    pub fn clear(&self, center: Option<Length>, bit: Length) -> (Length, Length) {
        match center {
            None => {
                let each = self.width.minus(bit).part(2);
                (each, each)
            }
            Some(center) => {
                let half = half_up(bit);
                (center.minus(half), self.width.minus(center).minus(half))
            }
        }
    }

    /// The room for a hole with its wander on both sides: twice the way to the nearer face.
    pub fn room(&self, center: Option<Length>) -> Length {
        center.map_or(self.width, |center| center.min(self.width.minus(center)).times(2))
    }

    /// The largest bit at a place, in sixteenths; none where none passes.
    pub fn largest(&self, center: Option<Length>) -> Option<Length> {
        let kept = self.edge.plus(self.wander).times(2);
        sixteenths(self.room(center).minus(kept).min(self.cap))
    }

    /// From where to where, off one face, the center of this bit may be marked; none where it may
    /// be nowhere.
    pub fn window(&self, bit: Length) -> Option<(Length, Length)> {
        let gone = self.edge.plus(self.wander);
        if bit > self.cap || bit > self.width.minus(gone.times(2)) {
            return None;
        }
        let low = gone.plus(half_up(bit));
        let high = self.width.minus(low);
        // The one center of an odd width lies between two nanometres.
        Some(if low <= high { (low, high) } else { (high, high) })
    }
}

/// Half of it, up to the nanometre: a center that is a whole number of them is then judged exactly.
fn half_up(length: Length) -> Length {
    length.plus(Length::from_nanometres(1)).part(2)
}

/// Down to a sixteenth of an inch; none under the first.
pub(super) fn sixteenths(length: Length) -> Option<Length> {
    let count = divide(length.nanometres().into(), STEP.nanometres().into(), Rounding::Down);
    (count > 0).then(|| STEP.times(count as i64))
}

/// A window as it can be marked off a tape: inwards to sixteenths where that leaves any of it.
pub(super) fn on_tape((low, high): (Length, Length)) -> (Length, Length) {
    let step = i128::from(STEP.nanometres());
    let to = |length: Length, rounding| {
        STEP.times(divide(length.nanometres().into(), step, rounding) as i64)
    };
    let (up, down) = (to(low, Rounding::Up), to(high, Rounding::Down));
    if up <= down { (up, down) } else { (low, high) }
}
