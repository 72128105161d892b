//! A version vector: how often each device has changed a thing.
//!
//! Of two copies the one whose clock is past the other replaces it; two that are aside of each
//! other were changed on two devices without word between them, and both are kept.

use crate::wire::{Node, Parts};

/// How often each device has changed a thing, by the device's name. One that isn't named has not.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Clock(Vec<(String, u32)>);

/// How one clock stands to another.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Order {
    /// The same changes.
    Same,
    /// Lacks changes that the other has.
    Before,
    /// Has all of the other's changes and more.
    After,
    /// Each has changes that the other lacks.
    Aside,
}

impl Clock {
    /// How often `device` has changed it.
    pub fn count(&self, device: &str) -> u32 {
        self.place_of(device).map_or(0, |at| self.0[at].1)
    }

    /// One more change by `device`. Stays where it is after four thousand million of them.
    pub fn bump(&mut self, device: &str) {
        self.set(device, self.count(device).saturating_add(1));
    }

    fn set(&mut self, device: &str, count: u32) {
        match self.place_of(device) {
            Ok(at) => self.0[at].1 = count,
            Err(at) => self.0.insert(at, (device.to_owned(), count)),
        }
    }

    fn place_of(&self, device: &str) -> Result<usize, usize> {
        self.0.binary_search_by(|(name, _)| name.as_str().cmp(device))
    }

    /// Takes in the changes of another clock.
    pub fn join(&mut self, other: &Self) {
        for (device, count) in &other.0 {
            if *count > self.count(device) {
                self.set(device, *count);
            }
        }
    }

    /// How this clock stands to `other`.
    pub fn versus(&self, other: &Self) -> Order {
        let lacks = |these: &Self, those: &Self| {
            those.0.iter().any(|(device, count)| these.count(device) < *count)
        };
        match (lacks(self, other), lacks(other, self)) {
            (false, false) => Order::Same,
            (true, false) => Order::Before,
            (false, true) => Order::After,
            (true, true) => Order::Aside,
        }
    }

    pub(super) fn stored(&self) -> Node {
        let counts = self.0.iter();
        Node::Tree(
            counts.map(|(name, count)| (name.clone(), Node::Whole((*count).into()))).collect(),
        )
    }

    pub(super) fn restore(parts: &mut Parts<'_>) -> Self {
        let mut clock = Self::default();
        for device in parts.names() {
            let count = parts.whole(&device);
            clock.set(&device, count);
        }
        clock
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn clock(counts: &[(&str, u32)]) -> Clock {
        let mut clock = Clock::default();
        counts.iter().for_each(|(device, count)| clock.set(device, *count));
        clock
    }

    #[test]
    fn clocks_stand_to_each_other_as_their_changes_do() {
        #[rustfmt::skip]
        let cases = [
            ("nothing yet",        clock(&[]),                   clock(&[]),           Order::Same),
            ("not named is zero",  clock(&[("a", 0)]),           clock(&[]),           Order::Same),
            ("one ahead",          clock(&[("a", 2)]),           clock(&[("a", 1)]),   Order::After),
            ("another took part",  clock(&[("a", 1), ("b", 1)]), clock(&[("a", 1)]),   Order::After),
            ("both went on",       clock(&[("a", 2)]),           clock(&[("b", 1)]),   Order::Aside),
        ];
        for (case, one, other, want) in cases {
            assert_eq!(one.versus(&other), want, "{case}");
            let back = match want {
                Order::After => Order::Before,
                same => same,
            };
            assert_eq!(other.versus(&one), back, "{case}, the other way round");
        }
    }

    fn any_clock() -> impl Strategy<Value = Clock> {
        proptest::collection::btree_map("[a-c]", 0_u32..4, 0..4)
            .prop_map(|counts| Clock(counts.into_iter().collect()))
    }

    proptest! {
        #[test]
        fn joined_clocks_are_before_neither(one in any_clock(), other in any_clock()) {
            let mut both = one.clone();
            both.join(&other);
            for each in [&one, &other] {
                prop_assert!(matches!(both.versus(each), Order::Same | Order::After));
            }
            let mut back = other.clone();
            back.join(&one);
            prop_assert_eq!(both.versus(&back), Order::Same);
            both.bump("a");
            prop_assert_eq!(both.versus(&back), Order::After);
        }
    }
}
