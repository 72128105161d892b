//! What somebody found out, apart from the rest of an input: what an address never carries.

use super::row::{Kind, Row, row_at};
use crate::sheet::Put;
use crate::wire::Node;

/// The same tree without the parts whose row is evidence. Names that no row has stay.
pub fn without_evidence(rows: &[Row], from: &Node) -> Node {
    let Node::Tree(parts) = from else { return from.clone() };
    let parts = parts.iter().filter_map(|(key, part)| {
        let row = rows.iter().find(|row| row.key == key);
        let left = match row.map(|row| (row.evidence, row.kind)) {
            Some((true, _)) => return None,
            Some((_, Kind::Group(rows))) => without_evidence(rows, part),
            Some((_, Kind::List(item))) => match part {
                Node::List(items) => {
                    Node::List(items.iter().map(|each| without_evidence(item.rows, each)).collect())
                }
                other => other.clone(),
            },
            _ => part.clone(),
        };
        Some((key.clone(), left))
    });
    Node::Tree(parts.collect())
}

/// The parts of a tree whose row is evidence, by their paths: what [`without_evidence`] takes out, so
/// that it can be put back.
pub fn evidence_in(rows: &'static [Row], from: &Node) -> Vec<Put> {
    let mut all = Vec::new();
    collect(rows, from, "", &mut all);
    all
}

fn collect(rows: &'static [Row], from: &Node, above: &str, all: &mut Vec<Put>) {
    for row in rows {
        let Some(part) = from.get(row.key) else { continue };
        let path = [above, row.key].concat();
        let inside = [&path, "."].concat();
        match (row.evidence, row.kind) {
            (true, _) => all.push((path, part.clone())),
            (false, Kind::Group(rows)) => collect(rows, part, &inside, all),
            (false, Kind::List(item)) => {
                for (at, each) in part.items("").iter().enumerate() {
                    collect(item.rows, each, &[&inside, &at.to_string(), "."].concat(), all);
                }
            }
            _ => {}
        }
    }
}

/// Whether what stands at a path is evidence, by its own row or by one that it is under.
pub fn is_evidence(rows: &'static [Row], path: &str) -> bool {
    let ends = path.bytes().enumerate().filter(|(_, sign)| *sign == b'.').map(|(at, _)| at);
    ends.chain([path.len()])
        .filter_map(|end| row_at(rows, path.get(..end)?))
        .any(|row| row.evidence)
}
