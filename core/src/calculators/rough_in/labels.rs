//! Labels, found by their letters, and things put in order.

pub(super) use crate::fields::known_as;
use std::cmp::Ordering;

/// The places `0..count` in order; equals stay as they stand. The one sort of the plan: a list of
/// hundreds is too long to be put in place one by one.
pub(super) fn ordered(count: usize, order: &dyn Fn(usize, usize) -> Ordering) -> Vec<usize> {
    let mut all: Vec<usize> = (0..count).collect();
    let mut wide = 1;
    while wide < count {
        let mut merged = Vec::with_capacity(count);
        for pair in all.chunks(2 * wide) {
            let (mut one, mut other) = (pair, &pair[pair.len()..]);
            if pair.len() > wide {
                (one, other) = pair.split_at(wide);
            }
            while let (Some(a), Some(b)) = (one.first(), other.first()) {
                if order(*b, *a) == Ordering::Less {
                    merged.push(*b);
                    other = &other[1..];
                } else {
                    merged.push(*a);
                    one = &one[1..];
                }
            }
            merged.extend_from_slice(one);
            merged.extend_from_slice(other);
        }
        all = merged;
        wide *= 2;
    }
    all
}

/// Labels in order, each with its place in its list.
#[derive(Debug)]
pub(super) struct Index {
    names: Vec<String>,
    order: Vec<usize>,
}

impl Index {
    pub(super) fn new(names: Vec<String>) -> Self {
        let order = ordered(names.len(), &|a, b| names[a].cmp(&names[b]));
        Self { names, order }
    }

    /// The place of a label.
    pub(super) fn find(&self, typed: &str) -> Option<usize> {
        let name = known_as(typed);
        let at = self.order.binary_search_by(|at| self.names[*at].as_str().cmp(&name)).ok()?;
        Some(self.order[at])
    }

    /// Items by label: each label once, in order, with the places of its items.
    pub(super) fn groups(&self) -> Vec<(&str, &[usize])> {
        let mut all = Vec::new();
        let mut rest = self.order.as_slice();
        while let Some(first) = rest.first() {
            let name = self.names[*first].as_str();
            let count = rest.iter().take_while(|at| self.names[**at] == name).count();
            let (group, others) = rest.split_at(count);
            all.push((name, group));
            rest = others;
        }
        all
    }
}
