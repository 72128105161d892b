//! The one form in which inputs travel: drafts, marks, links, batch lines and backups.
//!
//! A [`Node`] is a tree whose leaves are what was typed, word for word. A draft is the same
//! tree as a kept input, only with leaves that may not be readable yet, so nothing typed is lost.
//! Quantities are text with their unit; JSON numbers are for counts.

mod parts;

pub use parts::Parts;

use serde::de::{DeserializeSeed, Error, MapAccess, SeqAccess, Visitor};
use serde::ser::{SerializeMap, SerializeSeq};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::cell::Cell;
use std::fmt;

/// A tree of what was given.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Node {
    /// Text, as typed.
    Text(String),
    /// A whole number.
    Whole(i64),
    /// Yes or no.
    Flag(bool),
    /// A list.
    List(Vec<Node>),
    /// Named parts, in order.
    Tree(Vec<(String, Node)>),
}

/// The deepest tree that is accepted: inputs are three or four deep.
pub const DEEPEST: usize = 12;

/// The most named parts that one tree may have: forms have some tens, a clock one for each device.
/// Each name is compared with those before it, so that a file of nothing else would take for ever.
const MOST_PARTS: usize = 1_000;

impl Node {
    /// An empty tree.
    pub const EMPTY: Self = Self::Tree(Vec::new());

    /// Text.
    pub fn text(text: &str) -> Self {
        Self::Text(text.to_owned())
    }

    /// The part called `key`.
    pub fn get(&self, key: &str) -> Option<&Self> {
        match self {
            Self::Tree(parts) => parts.iter().find(|(name, _)| name == key).map(|(_, node)| node),
            Self::List(items) => key.parse::<usize>().ok().and_then(|at| items.get(at)),
            _ => None,
        }
    }

    /// The node at a path such as `cables.0.count`; the empty path is the tree itself.
    pub fn at(&self, path: &str) -> Option<&Self> {
        path.split('.').filter(|key| !key.is_empty()).try_fold(self, |node, key| node.get(key))
    }

    /// Puts `value` at a path, making trees on the way where nothing stood. A list takes its own
    /// places and the one behind its last; elsewhere in a list nothing happens.
    pub fn put(&mut self, path: &str, value: Self) {
        let (key, rest) = path.split_once('.').unwrap_or((path, ""));
        if let Self::List(items) = self {
            let Ok(at) = key.parse::<usize>() else { return };
            if at == items.len() {
                items.push(Self::EMPTY);
            }
            if let Some(item) = items.get_mut(at) {
                item.place(rest, value);
            }
            return;
        }
        if !matches!(self, Self::Tree(_)) {
            *self = Self::EMPTY;
        }
        if let Self::Tree(parts) = self {
            let at = parts.iter().position(|(name, _)| name == key).unwrap_or_else(|| {
                parts.push((key.to_owned(), Self::EMPTY));
                parts.len() - 1
            });
            parts[at].1.place(rest, value);
        }
    }

    fn place(&mut self, rest: &str, value: Self) {
        if rest.is_empty() { *self = value } else { self.put(rest, value) }
    }

    /// The items at a path, empty where there is no list.
    pub fn items(&self, path: &str) -> &[Self] {
        match self.at(path) {
            Some(Self::List(items)) => items,
            _ => &[],
        }
    }

    /// A leaf as the text a field would hold. Lists and trees have none.
    pub fn leaf(&self) -> Option<String> {
        Some(match self {
            Self::Text(text) => text.clone(),
            Self::Whole(whole) => whole.to_string(),
            Self::Flag(true) => "yes".to_owned(),
            Self::Flag(false) => "no".to_owned(),
            Self::List(_) | Self::Tree(_) => return None,
        })
    }

    /// Every leaf with its path, in order. An empty list shows as its path with no leaf.
    pub fn leaves(&self) -> Vec<(String, Option<String>)> {
        let mut all = Vec::new();
        self.collect("", &mut all);
        all
    }

    fn collect(&self, path: &str, all: &mut Vec<(String, Option<String>)>) {
        let join = |key: &str| if path.is_empty() { key.to_owned() } else { [path, key].join(".") };
        match self {
            Self::List(items) if items.is_empty() => all.push((path.to_owned(), None)),
            Self::List(items) => {
                for (at, item) in items.iter().enumerate() {
                    item.collect(&join(&at.to_string()), all);
                }
            }
            Self::Tree(parts) => {
                for (key, part) in parts {
                    part.collect(&join(key), all);
                }
            }
            leaf => all.push((path.to_owned(), leaf.leaf())),
        }
    }
}

impl Serialize for Node {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Text(text) => to.serialize_str(text),
            Self::Whole(whole) => to.serialize_i64(*whole),
            Self::Flag(flag) => to.serialize_bool(*flag),
            Self::List(items) => {
                let mut list = to.serialize_seq(Some(items.len()))?;
                for item in items {
                    list.serialize_element(item)?;
                }
                list.end()
            }
            Self::Tree(parts) => {
                let mut map = to.serialize_map(Some(parts.len()))?;
                for (key, part) in parts {
                    map.serialize_entry(key, part)?;
                }
                map.end()
            }
        }
    }
}

impl<'de> Deserialize<'de> for Node {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        let problem = Cell::new(None);
        let node = Reader(&problem).deserialize(from)?;
        problem.get().map_or(Ok(node), |problem| Err(D::Error::custom(problem)))
    }
}

impl Node {
    /// Reads JSON, as `Deserialize` does, but without an error of the library's own making: those
    /// cut texts by place, and a cut that fails prints what it cut, with the tables of every
    /// letter there is. That was 5 KB of the packed page, and is again wherever a text is cut as
    /// `text[from..to]`: `get`, `split_once` and `strip_prefix` need none of it.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn from_json(json: &str) -> Result<Self, String> {
        let problem = Cell::new(None);
        let mut from = serde_json::Deserializer::from_str(json);
        let node = Reader(&problem).deserialize(&mut from).map_err(|error| error.to_string())?;
        from.end().map_err(|error| error.to_string())?;
        problem.get().map_or(Ok(node), |problem| Err(problem.to_owned()))
    }
}

/// Reads any JSON to its end. What no tree may hold leaves a problem and an empty tree.
#[derive(Clone, Copy)]
struct Reader<'a>(&'a Cell<Option<&'static str>>);

impl Reader<'_> {
    fn refuse(self, problem: &'static str) -> Node {
        self.0.set(Some(self.0.get().unwrap_or(problem)));
        Node::EMPTY
    }
}

impl<'de> DeserializeSeed<'de> for Reader<'_> {
    type Value = Node;

    fn deserialize<D: Deserializer<'de>>(self, from: D) -> Result<Node, D::Error> {
        from.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for Reader<'_> {
    type Value = Node;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("text, a whole number, true or false, a list or named parts")
    }
    fn visit_str<E: Error>(self, text: &str) -> Result<Node, E> {
        Ok(Node::text(text))
    }
    fn visit_bool<E: Error>(self, flag: bool) -> Result<Node, E> {
        Ok(Node::Flag(flag))
    }
    fn visit_i64<E: Error>(self, whole: i64) -> Result<Node, E> {
        Ok(Node::Whole(whole))
    }
    fn visit_u64<E: Error>(self, whole: u64) -> Result<Node, E> {
        let fits = i64::try_from(whole).map(Node::Whole);
        Ok(fits.unwrap_or_else(|_| self.refuse("a number too large to hold")))
    }
    fn visit_f64<E: Error>(self, _: f64) -> Result<Node, E> {
        Ok(self.refuse("a number with a point: write it as text with its unit, \"20.3 in3\""))
    }
    fn visit_unit<E: Error>(self) -> Result<Node, E> {
        Ok(self.refuse("null: leave the part out"))
    }
    fn visit_seq<A: SeqAccess<'de>>(self, mut from: A) -> Result<Node, A::Error> {
        let mut items = Vec::new();
        while let Some(item) = from.next_element_seed(self)? {
            items.push(item);
        }
        // A list grows by more than it needs, which many short ones would take several times over.
        items.shrink_to_fit();
        Ok(Node::List(items))
    }
    fn visit_map<A: MapAccess<'de>>(self, mut from: A) -> Result<Node, A::Error> {
        let mut parts: Vec<(String, Node)> = Vec::new();
        while let Some(key) = from.next_key::<String>()? {
            let part = from.next_value_seed(self)?;
            if parts.len() == MOST_PARTS {
                self.refuse("more named parts than anything here has");
                continue;
            }
            if parts.iter().any(|(name, _)| *name == key) {
                self.refuse("the same name twice");
            }
            parts.push((key, part));
        }
        parts.shrink_to_fit();
        Ok(Node::Tree(parts))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_path_finds_puts_and_appends() {
        let mut node = Node::EMPTY;
        node.put("cables", Node::List(Vec::new()));
        node.put("cables.0.count", Node::text("2"));
        node.put("cables.5.count", Node::text("9"));
        node.put("box", Node::text("marked"));
        assert_eq!(node.at("cables.0.count"), Some(&Node::text("2")));
        assert_eq!(node.items("cables").len(), 1, "a place past the end of a list is no place");
        let paths: Vec<_> = node.leaves().into_iter().map(|(path, _)| path).collect();
        assert_eq!(paths, ["cables.0.count", "box"]);
    }

    #[test]
    fn json_comes_back_as_it_went() {
        let json = r#"{"a":"9 ft","b":[{"n":2},{"n":"two"}],"c":true,"d":[]}"#;
        let node: Node = serde_json::from_str(json).unwrap();
        assert_eq!(serde_json::to_string(&node).unwrap(), json);
    }

    #[test]
    fn what_a_quantity_may_not_be_is_refused() {
        for json in ["20.3", "null", r#"{"a":1,"a":2}"#, "18446744073709551615"] {
            assert!(serde_json::from_str::<Node>(json).is_err(), "{json}");
        }
    }
}
