//! Quantities of a tree with their units written out, and as a person would type them. What can't
//! be read stays as typed, both ways.

use super::reader::amount;
use super::row::{Kind, Row};
use crate::measure::unit::{MONEY_PERCENT, PERCENT};
use crate::measure::{Rounding, Units};
use crate::wire::Node;
use crate::words::Amount;

/// The same tree with its unit written to every quantity that can be read, so that a change of
/// units doesn't change what was meant.
pub fn restate(rows: &[Row], from: &Node, units: Units) -> Node {
    each_quantity(rows, from, &|kind, text| amount(kind, text, units).map(Amount::exact))
}

/// The same tree with units left out wherever the bare figure says exactly the same, as a person
/// would have typed it.
pub fn plain(rows: &[Row], from: &Node, units: Units) -> Node {
    each_quantity(rows, from, &|kind, text| match kind {
        // Feet and inches are not one figure: they keep their units.
        Kind::Length(_) if units == Units::Customary => None,
        _ => bare(amount(kind, text, units)?, units),
    })
}

/// The figure alone, where it says exactly this amount in these units.
pub fn bare(amount: Amount, units: Units) -> Option<String> {
    let shown = amount.show(units, Rounding::Nearest);
    match amount {
        // Square inches by the ten thousand say nothing to anybody.
        Amount::Area(area) if shown.rounded => area.figure(units),
        _ => (!shown.rounded && !may_be_a_share(amount)).then_some(shown.figure),
    }
}

/// More than nothing and less than a percent: without its sign it could be a share of one.
pub(super) fn may_be_a_share(amount: Amount) -> bool {
    matches!(amount, Amount::Measure(it)
        if [&PERCENT, &MONEY_PERCENT].contains(&it.unit()) && (1..1_000_000).contains(&it.millionths()))
}

/// The same tree with every quantity put as `say` has it; where it says nothing, as it stands.
fn each_quantity(rows: &[Row], from: &Node, say: &dyn Fn(Kind, &str) -> Option<String>) -> Node {
    let Node::Tree(parts) = from else { return from.clone() };
    let parts = parts.iter().map(|(key, part)| {
        let kind = rows.iter().find(|row| row.key == key).map(|row| row.kind);
        let said = match (kind, part) {
            (Some(Kind::Group(rows)), _) => Some(each_quantity(rows, part, say)),
            (Some(Kind::List(item)), Node::List(items)) => {
                let items = items.iter().map(|each| each_quantity(item.rows, each, say));
                Some(Node::List(items.collect()))
            }
            (Some(kind), _) if kind.quantity().is_some() => {
                say(kind, &part.leaf().unwrap_or_default()).map(Node::Text)
            }
            _ => None,
        };
        (key.clone(), said.unwrap_or_else(|| part.clone()))
    });
    Node::Tree(parts.collect())
}
