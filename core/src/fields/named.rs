//! Rows whose text names what stands in other lists of the same question: what such a row may
//! choose from, what a rename takes along, and what still names an item that goes.

use super::row::{Kind, Row};
use crate::sheet::Put;
use crate::wire::Node;
use crate::words::Phrase;

/// Between the names of a row that holds several.
const BETWEEN: [char; 3] = [',', ';', ' '];

/// How a name is known: without spaces round it, small letters as capitals.
pub fn known_as(typed: &str) -> String {
    typed.trim().to_ascii_uppercase()
}

/// The names in a line of several.
pub fn each_name(line: &str) -> impl Iterator<Item = &str> {
    line.split(BETWEEN).filter(|name| !name.is_empty())
}

/// The names in a row's text.
fn names_in<'a>(row: &Row, text: &'a str) -> Vec<&'a str> {
    if row.several {
        return each_name(text).collect();
    }
    Some(text.trim()).filter(|name| !name.is_empty()).into_iter().collect()
}

/// A list at the top of a form and a row of its items, by a path such as `boxes.label`.
fn found(rows: &'static [Row], path: &str) -> Option<(&'static Row, &'static Row)> {
    let (list, key) = path.split_once('.')?;
    let list = rows.iter().find(|row| row.key == list)?;
    let Kind::List(item) = list.kind else { return None };
    Some((list, item.rows.iter().find(|row| row.key == key)?))
}

fn leaf(item: &Node, key: &str) -> String {
    item.get(key).and_then(Node::leaf).unwrap_or_default()
}

/// What `row` may choose from, as it was typed, each name once: all but what stands at `here`, the
/// row's own path.
pub fn names(rows: &'static [Row], root: &Node, row: &Row, here: &str) -> Vec<String> {
    let (mut all, mut known): (Vec<String>, Vec<String>) = (Vec::new(), Vec::new());
    for (list, named) in row.names.iter().filter_map(|path| found(rows, path)) {
        for (at, item) in root.items(list.key).iter().enumerate() {
            if [list.key, &at.to_string(), named.key].join(".") == here {
                continue;
            }
            for name in names_in(named, &leaf(item, named.key)) {
                let as_known = known_as(name);
                if let Err(at) = known.binary_search(&as_known) {
                    known.insert(at, as_known);
                    all.push(name.to_owned());
                }
            }
        }
    }
    all
}

/// A text that names an item.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Use {
    path: String,
    text: String,
    several: bool,
    /// What the item that holds it is called, and its place in its list.
    by: (&'static Phrase, i64),
}

/// Every text that names what stands at a path such as `boxes.3.label`. None where another item
/// has the same name: nobody can say which of the two is meant.
fn uses(rows: &'static [Row], root: &Node, path: &str) -> Vec<Use> {
    let mut all = Vec::new();
    let Some((list, (at, key))) =
        path.split_once('.').and_then(|(list, rest)| Some((list, rest.split_once('.')?)))
    else {
        return all;
    };
    let same = |at: usize| known_as(&leaf(&root.items(list)[at], key));
    let places = 0..root.items(list).len();
    let Some(at) = at.parse::<usize>().ok().filter(|at| places.contains(at)) else { return all };
    let name = same(at);
    if name.is_empty() || places.filter(|other| same(*other) == name).count() > 1 {
        return all;
    }
    let named = [list, key].join(".");
    for each in rows {
        let Kind::List(item) = each.kind else { continue };
        let naming =
            |row: &&Row| row.names.contains(&named.as_str()) && (each.key, row.key) != (list, key);
        for row in item.rows.iter().filter(naming) {
            for (at, node) in root.items(each.key).iter().enumerate() {
                let text = leaf(node, row.key);
                if names_in(row, &text).iter().any(|it| known_as(it) == name) {
                    let path = [each.key, &at.to_string(), row.key].join(".");
                    let by = (item.name, at as i64 + 1);
                    all.push(Use { path, text, several: row.several, by });
                }
            }
        }
    }
    all
}

/// A name that is being changed, and the texts that named it when that began. However it is typed,
/// letter by letter and past names that others have, these follow, and no others.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Rename {
    path: String,
    before: String,
    uses: Vec<Use>,
    /// Names that the other items have: what is called alike is followed by nothing.
    others: Vec<String>,
}

/// How the other items of a list are called.
fn others(root: &Node, path: &str) -> Vec<String> {
    let parts: Vec<&str> = path.splitn(3, '.').collect();
    let [list, at, key] = parts[..] else { return Vec::new() };
    let items = root.items(list).iter().enumerate();
    items
        .filter(|(other, _)| other.to_string() != at)
        .map(|(_, it)| known_as(&leaf(it, key)))
        .collect()
}

impl Rename {
    /// Of the text at a path, as things stand.
    pub fn of(rows: &'static [Row], root: &Node, path: &str) -> Self {
        let before = root.at(path).and_then(Node::leaf).unwrap_or_default();
        let (uses, others) = (uses(rows, root, path), others(root, path));
        Self { path: path.to_owned(), before, uses, others }
    }

    /// Whether it can't stay so: there is no name, or another item has it. What named the item waits
    /// under the old name until there is a good one.
    pub fn is_open(&self, typed: &str) -> bool {
        let known = known_as(typed);
        known.is_empty() || self.others.contains(&known)
    }

    /// Where the name stands.
    pub fn path(&self) -> &str {
        &self.path
    }

    /// How many texts follow.
    pub fn count(&self) -> usize {
        self.uses.len()
    }

    /// All texts with the new name; those that follow keep the old one while there is none, or
    /// another item has it.
    pub fn to(&self, typed: &str) -> Vec<Put> {
        let mut puts = vec![(self.path.clone(), Node::text(typed))];
        for each in &self.uses {
            let text = match typed.trim() {
                _ if self.is_open(typed) => each.text.clone(),
                name if each.several => replaced(&each.text, &self.before, name),
                name => name.to_owned(),
            };
            puts.push((each.path.clone(), Node::Text(text)));
        }
        puts
    }

    /// All texts as they were.
    pub fn before(&self) -> Vec<Put> {
        let mut puts = vec![(self.path.clone(), Node::text(&self.before))];
        puts.extend(self.uses.iter().map(|it| (it.path.clone(), Node::text(&it.text))));
        puts
    }
}

/// A line of several names with one of them changed, the rest as typed.
fn replaced(line: &str, name: &str, to: &str) -> String {
    let known = known_as(name);
    let mut all = String::new();
    for piece in line.split_inclusive(BETWEEN) {
        match piece.strip_suffix(BETWEEN) {
            Some(word) if known_as(word) == known => {
                all.push_str(to);
                all.extend(piece.chars().next_back());
            }
            None if known_as(piece) == known => all.push_str(to),
            _ => all.push_str(piece),
        }
    }
    all
}

/// A line of several names with one of them added at its end, or taken out where it was.
pub fn toggled(line: &str, name: &str) -> String {
    let known = known_as(name);
    let mut names: Vec<&str> = each_name(line).collect();
    let before = names.len();
    names.retain(|it| known_as(it) != known);
    if names.len() == before {
        names.push(name);
    }
    names.join(", ")
}

/// What still names the item at a place of a list: its kind and its number, each once, in order.
pub fn hanging(
    rows: &'static [Row],
    root: &Node,
    list: &str,
    at: usize,
) -> Vec<(&'static Phrase, i64)> {
    let mut all: Vec<(&'static Phrase, i64)> = Vec::new();
    let Some(Kind::List(item)) = rows.iter().find(|row| row.key == list).map(|row| row.kind) else {
        return all;
    };
    for row in item.rows {
        for it in uses(rows, root, &[list, &at.to_string(), row.key].join(".")) {
            let same = |by: &(&'static Phrase, i64)| std::ptr::eq(by.0, it.by.0);
            if !all.iter().any(|by| same(by) && by.1 == it.by.1) {
                let behind = all.iter().position(|by| same(by) && by.1 > it.by.1);
                all.insert(behind.unwrap_or(all.len()), it.by);
            }
        }
    }
    all
}

/// Of many names those that fit what was typed, the ones that begin with it first, and no more than
/// `most`; and how many more fit. A few names are all offered, whatever was typed.
pub fn narrowed(all: Vec<String>, typed: &str, most: usize) -> (Vec<String>, usize) {
    if all.len() <= most {
        return (all, 0);
    }
    let typed = known_as(typed);
    let (mut first, mut inside) = (Vec::new(), Vec::new());
    for name in all {
        let known = known_as(&name);
        if known.starts_with(&typed) {
            first.push(name);
        } else if known.contains(&typed) {
            inside.push(name);
        }
    }
    first.append(&mut inside);
    let more = first.len().saturating_sub(most);
    first.truncate(most);
    (first, more)
}
