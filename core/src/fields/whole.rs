//! What one tap takes of a whole source, a room or another number: which picks its figures decide, and
//! what it has nothing for.

use super::row::{Row, chosen};
use crate::wire::Node;

/// A choice that a source's figures decide.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Decided {
    /// The choice.
    pub key: &'static str,
    /// The pick that the source's figures go with; none where they go with no pick.
    pub pick: Option<&'static str>,
}

/// The choices of a form that such a source decides, a room where `of` is empty. `has` says whether it
/// has a figure of a key.
pub fn decided(rows: &[Row], of: &str, has: &dyn Fn(&str) -> bool) -> Vec<Decided> {
    let mut all = Vec::new();
    for row in rows {
        if !row.by.is_empty() && row.of == of {
            let pick = row.by.iter().find(|(figure, _)| has(figure)).map(|(_, pick)| *pick);
            all.push(Decided { key: row.key, pick });
        }
    }
    all
}

impl Decided {
    /// Whether the choice is asked as things stand and is another than the source's; where the source
    /// has no pick, whether it is one that figures could have gone with.
    pub fn differs(&self, rows: &[Row], root: &Node) -> bool {
        let Some(row) = rows.iter().find(|row| row.key == self.key) else { return false };
        let now = chosen(rows, root, self.key);
        let could = || row.by.iter().any(|(_, pick)| *pick == now);
        row.when.holds(rows, root, root) && self.pick.map_or_else(could, |pick| pick != now)
    }

    /// Whether the choice still is what a question starts with, while the source is of no pick at all:
    /// then a person has to choose first.
    pub fn is_to_be_set(&self, rows: &[Row], root: &Node) -> bool {
        let first = rows.iter().find(|row| row.key == self.key).and_then(|row| row.by.first());
        let is_first = first.is_some_and(|(_, pick)| *pick == chosen(rows, root, self.key));
        self.pick.is_none() && is_first && self.differs(rows, root)
    }
}

/// The rows of a form that are asked as things stand and would take a figure of such a source (a room's
/// where `of` is empty), but it has none: they stay as they are. `has` says whether it has one of a key.
pub fn left_alone(
    rows: &'static [Row],
    root: &Node,
    of: &str,
    has: &dyn Fn(&str) -> bool,
) -> Vec<&'static Row> {
    let mut all = Vec::new();
    for row in rows {
        let would = !row.room.is_empty() && row.of == of && row.when.holds(rows, root, root);
        if would && ![row.room, row.or, row.also].into_iter().any(has) {
            all.push(row);
        }
    }
    all
}
