//! Rows whose text names what stands in other lists of the same question: what such a row may
//! choose from, what a rename takes along, and what still names an item that goes.

use super::row::{Kind, Row};
use super::row_at;
use crate::sheet::Put;
use crate::wire::Node;
use crate::words::Phrase;

/// What stands between the names of a row that holds several, and in none of them.
pub const BETWEEN_NAMES: [char; 2] = [',', ';'];

/// How a name is known: one space between its words and none round them, small letters as capitals.
pub fn known_as(typed: &str) -> String {
    let mut all = String::with_capacity(typed.len());
    for word in typed.split_whitespace() {
        if !all.is_empty() {
            all.push(' ');
        }
        all.push_str(word);
    }
    all.make_ascii_uppercase();
    all
}

/// The names in a line of several: between commas, and between spaces too, unless the words together
/// are one of `known`, names as [`known_as`] has them. Of several that begin alike it is the longest.
pub fn each_name<'a>(line: &'a str, known: &[String]) -> Vec<&'a str> {
    spans(line, known).into_iter().filter_map(|[from, to]| line.get(from..to)).collect()
}

/// Where the names in a line of several stand.
fn spans(line: &str, known: &[String]) -> Vec<[usize; 2]> {
    let (mut all, mut words) = (Vec::new(), Vec::new());
    let mut from = None;
    for (at, sign) in line.char_indices().chain([(line.len(), BETWEEN_NAMES[0])]) {
        let ends = BETWEEN_NAMES.contains(&sign);
        match from {
            Some(start) if ends || sign.is_whitespace() => {
                words.push([start, at]);
                from = None;
            }
            None if !ends && !sign.is_whitespace() => from = Some(at),
            _ => {}
        }
        if ends {
            join_words(line, &words, known, &mut all);
            words.clear();
        }
    }
    all
}

/// The words between two commas as names.
fn join_words(line: &str, words: &[[usize; 2]], known: &[String], all: &mut Vec<[usize; 2]>) {
    let mut rest = words;
    while let [first, ..] = rest {
        let whole = |count: &usize| {
            let name = line.get(first[0]..rest[count - 1][1]).unwrap_or_default();
            known.contains(&known_as(name))
        };
        let count = (2..=rest.len()).rev().find(whole).unwrap_or(1);
        all.push([first[0], rest[count - 1][1]]);
        rest = rest.get(count..).unwrap_or_default();
    }
}

/// The names of several words among what `row` may choose from, as they are known.
pub fn long_names(rows: &'static [Row], root: &Node, row: &Row) -> Vec<String> {
    let mut all = Vec::new();
    for (list, named) in row.names.iter().filter_map(|path| found(rows, path)) {
        for item in root.items(list.key).iter().filter(|_| !named.several) {
            let name = known_as(&leaf(item, named.key));
            if name.contains(' ') {
                all.push(name);
            }
        }
    }
    all
}

/// Where the names in a row's text stand.
fn names_in(row: &Row, text: &str, known: &[String]) -> Vec<[usize; 2]> {
    if row.several {
        return spans(text, known);
    }
    let from = text.len() - text.trim_start().len();
    Some([from, text.trim_end().len()]).filter(|[from, to]| from < to).into_iter().collect()
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
        let long = long_names(rows, root, named);
        for (at, item) in root.items(list.key).iter().enumerate() {
            if [list.key, &at.to_string(), named.key].join(".") == here {
                continue;
            }
            let text = leaf(item, named.key);
            for [from, to] in names_in(named, &text, &long) {
                let name = text.get(from..to).unwrap_or_default();
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
    /// The text before, between and behind the places of the name.
    around: Vec<String>,
    /// It may hold other names too.
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
            let long = long_names(rows, root, row);
            for (at, node) in root.items(each.key).iter().enumerate() {
                let text = leaf(node, row.key);
                let (mut around, mut behind) = (Vec::new(), 0);
                for [from, to] in names_in(row, &text, &long) {
                    if known_as(text.get(from..to).unwrap_or_default()) == name {
                        around.push(text.get(behind..from).unwrap_or_default().to_owned());
                        behind = to;
                    }
                }
                if !around.is_empty() {
                    around.push(text.get(behind..).unwrap_or_default().to_owned());
                    let path = [each.key, &at.to_string(), row.key].join(".");
                    let by = (item.name, at as i64 + 1);
                    all.push(Use { path, text, around, several: row.several, by });
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
    /// The most letters that are kept.
    most: usize,
    /// It is named among several, so that nothing that parts them may be in it.
    among_several: bool,
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

/// Whether a row that may hold several names names what stands at a path.
fn is_among_several(rows: &'static [Row], path: &str) -> bool {
    let Some((list, rest)) = path.split_once('.') else { return false };
    let Some((_, key)) = rest.split_once('.') else { return false };
    let named = [list, key].join(".");
    rows.iter().any(|each| match each.kind {
        // What names what other rows of its own kind hold is no name itself.
        Kind::List(item) => item.rows.iter().any(|row| {
            row.several && row.names.contains(&named.as_str()) && (each.key, row.key) != (list, key)
        }),
        _ => false,
    })
}

impl Rename {
    /// Of the text at a path, as things stand.
    pub fn of(rows: &'static [Row], root: &Node, path: &str) -> Self {
        let before = root.at(path).and_then(Node::leaf).unwrap_or_default();
        let (uses, others) = (uses(rows, root, path), others(root, path));
        let most = match row_at(rows, path).map(|row| row.kind) {
            Some(Kind::Text(most)) => most,
            _ => usize::MAX,
        };
        let among_several = is_among_several(rows, path);
        Self { path: path.to_owned(), before, uses, others, most, among_several }
    }

    /// Whether it can't stay so: there is no name, another item has it, it is too long, or it would be
    /// read as two. What named the item waits under the old name until there is a good one.
    pub fn is_open(&self, typed: &str) -> bool {
        let known = known_as(typed);
        known.is_empty()
            || self.others.contains(&known)
            || typed.chars().count() > self.most
            || (self.among_several && typed.contains(BETWEEN_NAMES))
    }

    /// Goes on with a change that came to no good name, after other fields were come to: `now` was typed
    /// last. What was written anew since then, or gone from its place, is followed no more, and the
    /// other items are called what they are called by now.
    pub fn go_on(&mut self, root: &Node, now: &str) {
        let left = self.to(now);
        self.uses.retain(|it| {
            let as_left = left.iter().find(|(path, _)| *path == it.path);
            as_left.is_some_and(|(path, node)| root.at(path).and_then(Node::leaf) == node.leaf())
        });
        self.others = others(root, &self.path);
    }

    /// Where the name stands.
    pub fn path(&self) -> &str {
        &self.path
    }

    /// How many texts follow.
    pub fn count(&self) -> usize {
        self.uses.len()
    }

    /// All texts with the new name; those that follow keep the old one while it can't stay so.
    pub fn to(&self, typed: &str) -> Vec<Put> {
        let mut puts = vec![(self.path.clone(), Node::text(typed))];
        for each in &self.uses {
            let text = match typed.trim() {
                _ if self.is_open(typed) => each.text.clone(),
                name if each.several => each.with(name),
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

impl Use {
    /// The line with another name in the place of this one, the rest as typed. Round a name of several
    /// words a comma parts it from the others.
    fn with(&self, name: &str) -> String {
        let is_long = name.contains(char::is_whitespace);
        let parted = |sign: Option<char>| sign.is_none_or(|sign| BETWEEN_NAMES.contains(&sign));
        let mut all = String::new();
        for (at, piece) in self.around.iter().enumerate() {
            let mut piece = piece.as_str();
            if at > 0 {
                all.push_str(name);
                if is_long && !parted(piece.trim_start().chars().next()) {
                    all.push_str(", ");
                    piece = piece.trim_start();
                }
            }
            if is_long
                && at + 1 < self.around.len()
                && !parted(piece.trim_end().chars().next_back())
            {
                all.push_str(piece.trim_end());
                all.push_str(", ");
            } else {
                all.push_str(piece);
            }
        }
        all
    }
}

/// A line of several names with one of them added at its end, or taken out where it was. `long` are
/// the [`long_names`] that it may hold.
pub fn toggled(line: &str, name: &str, long: &[String]) -> String {
    let known = known_as(name);
    let mut names: Vec<&str> = each_name(line, long);
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
