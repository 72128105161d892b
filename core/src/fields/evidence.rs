//! What somebody found out, apart from the rest of an input: what an address never carries.

use super::row::{Kind, Row};
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
