//! Which inputs still say what a calculator's sample put there: numbers of a house that nobody lives
//! in. They are known by their paths, from the moment when the sample stands in the fields until
//! each is typed or chosen.

use super::reader::heard;
use super::row::{Kind, Row};
use crate::measure::Units;
use crate::wire::Node;

/// The paths of what a sample fills and a blank question doesn't, and of what is known of the house at
/// hand alone, as long as `draft` says the same there, however it is written. A name and a day are no
/// measure.
pub fn of_sample(
    rows: &[Row],
    (draft, units): (&Node, Units),
    sample: &Node,
    blank: &Node,
) -> Vec<String> {
    let mut found = Vec::new();
    look(rows, [draft, sample, blank], units, "", &mut found);
    found
}

fn look(rows: &[Row], at: [&Node; 3], units: Units, path: &str, found: &mut Vec<String>) {
    const NOTHING: &Node = &Node::EMPTY;
    for row in rows {
        let path = if path.is_empty() { row.key.to_owned() } else { [path, row.key].join(".") };
        let [draft, sample, blank] = at.map(|node| node.get(row.key).unwrap_or(NOTHING));
        match row.kind {
            Kind::Text(_) if !row.measured => {}
            Kind::Day => {}
            Kind::Group(rows) => look(rows, [draft, sample, blank], units, &path, found),
            Kind::List(item) => {
                let fresh = (item.blank)();
                let both = at[0].items(row.key).iter().zip(at[1].items(row.key)).enumerate();
                for (number, (draft, sample)) in both {
                    let path = [&path, ".", &number.to_string()].concat();
                    look(item.rows, [draft, sample, &fresh], units, &path, found);
                }
            }
            _ if says_same(row, (draft, units), sample)
                && (row.is_of_the_house() && sample.leaf().is_some_and(|it| !it.is_empty())
                    || !says_same(row, (blank, UNITS), sample)) =>
            {
                found.push(path);
            }
            _ => {}
        }
    }
}

/// Those of a sample and of a blank don't matter: every unit is written there.
const UNITS: Units = Units::Customary;

fn says_same(row: &Row, (one, units): (&Node, Units), sample: &Node) -> bool {
    let (one, sample) = (one.leaf().unwrap_or_default(), sample.leaf().unwrap_or_default());
    let meant = |leaf: &str, units| heard(row, leaf, units).ok().flatten();
    one == sample || meant(&one, units).is_some_and(|it| meant(&sample, UNITS) == Some(it))
}

/// Whether the input at a path is asked as things stand.
pub fn is_asked(rows: &[Row], root: &Node, path: &str) -> bool {
    fn asked(rows: &[Row], here: &Node, root: &Node, path: &str) -> bool {
        let (key, rest) = path.split_once('.').unwrap_or((path, ""));
        let Some(row) = rows.iter().find(|row| row.key == key) else { return false };
        let within = here.get(key);
        row.when.holds(rows, here, root)
            && match (row.kind, rest.split_once('.')) {
                (Kind::Group(rows), _) if !rest.is_empty() => {
                    asked(rows, within.unwrap_or(&Node::EMPTY), root, rest)
                }
                (Kind::List(item), Some((at, rest))) => at
                    .parse::<usize>()
                    .ok()
                    .and_then(|at| here.items(key).get(at))
                    .is_some_and(|each| asked(item.rows, each, root, rest)),
                _ => true,
            }
    }
    asked(rows, root, root, path)
}

/// The same paths once an item of a list is gone: those of the item go with it, and those behind it
/// move up.
pub fn without_item(paths: &[String], list: &str, gone: usize) -> Vec<String> {
    let moved = |path: &String| {
        let inside = path.strip_prefix(list).and_then(|rest| rest.strip_prefix('.'));
        let Some((at, rest)) = inside.and_then(|inside| inside.split_once('.')) else {
            return Some(path.clone());
        };
        match at.parse::<usize>() {
            Ok(at) if at == gone => None,
            Ok(at) if at > gone => Some([list, &(at - 1).to_string(), rest].join(".")),
            _ => Some(path.clone()),
        }
    };
    paths.iter().filter_map(moved).collect()
}
