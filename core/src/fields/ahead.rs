//! Days that can't be yet to come.

use super::row::{Kind, Row};
use super::words as w;
use crate::measure::Day;
use crate::say;
use crate::sheet::{Fault, Faults};
use crate::wire::Node;

/// What is wrong with the days of a form as of `today`: rows of what was found out or done hold
/// none that is later. A day that can't be read is the reader's to tell.
pub fn ahead(rows: &'static [Row], root: &Node, today: Day) -> Faults {
    let mut faults = Faults::new();
    look(rows, root, "", today, &mut faults);
    faults
}

fn look(rows: &'static [Row], here: &Node, path: &str, today: Day, faults: &mut Faults) {
    for row in rows {
        let Some(node) = here.get(row.key) else { continue };
        let path = if path.is_empty() { row.key.to_owned() } else { [path, row.key].join(".") };
        match row.kind {
            Kind::Group(rows) => look(rows, node, &path, today, faults),
            Kind::List(item) if has_past(item.rows) => {
                for (at, each) in here.items(row.key).iter().enumerate() {
                    look(item.rows, each, &[&path, ".", &at.to_string()].concat(), today, faults);
                }
            }
            Kind::Day if row.past => {
                let given = node.leaf().unwrap_or_default();
                if Day::read(&given).is_ok_and(|day| day > today) {
                    let says = say!(w::AHEAD, given.trim(), today.exact());
                    faults.push(Fault { path, label: row.label, given, says });
                }
            }
            _ => {}
        }
    }
}

/// Whether any of these rows, or of those under them, holds such a day.
fn has_past(rows: &[Row]) -> bool {
    rows.iter().any(|row| match row.kind {
        Kind::Group(rows) => has_past(rows),
        Kind::List(item) => has_past(item.rows),
        _ => row.past,
    })
}
