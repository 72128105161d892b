//! Takes a stored tree apart, part by part. Every part is taken once by its name; what is missing,
//! of another kind or left over is refused, and the refusal says where.
//!
//! One walk for all shapes, so that its code is there once: a reader derived for each struct came
//! to four times as much. Inputs of calculators are read in `fields`, never here.

use super::Node;

/// The named parts that nobody has taken yet.
#[derive(Debug)]
pub struct Parts<'a> {
    /// Where they stand: empty, or a path with a dot behind it.
    path: &'a str,
    parts: Vec<(String, Node)>,
    /// What did not fit first. Blanks stand in for it and what follows, and are never seen:
    /// [`Parts::read`] gives back this instead.
    problem: &'a mut Option<String>,
}

impl Parts<'_> {
    /// Reads a whole tree.
    ///
    /// # Errors
    /// What did not fit first, with its path: `marks.0.title is missing`.
    pub fn read<T>(node: Node, read: impl FnOnce(&mut Parts<'_>) -> T) -> Result<T, String> {
        let mut problem = None;
        let value = within("", node, &mut problem, read);
        match problem {
            None => Ok(value),
            Some(problem) => Err(problem),
        }
    }

    /// Whether there is a part of this name.
    pub fn has(&self, key: &str) -> bool {
        self.parts.iter().any(|(name, _)| name == key)
    }

    /// A part as it stands.
    pub fn node(&mut self, key: &str) -> Node {
        if let Some(at) = self.parts.iter().position(|(name, _)| name == key) {
            return self.parts.remove(at).1;
        }
        self.refuse(key, "is missing");
        Node::EMPTY
    }

    /// Text.
    pub fn text(&mut self, key: &str) -> String {
        match self.node(key) {
            Node::Text(text) => text,
            _ => {
                self.refuse(key, "is not text");
                String::new()
            }
        }
    }

    /// Text that is one of a few words.
    pub fn word<T>(&mut self, key: &str, from: fn(&str) -> Option<T>) -> Option<T> {
        let word = from(&self.text(key));
        if word.is_none() {
            self.refuse(key, "is a word that is not known");
        }
        word
    }

    /// A whole number.
    pub fn whole<T: TryFrom<i64> + Default>(&mut self, key: &str) -> T {
        let whole = match self.node(key) {
            Node::Whole(whole) => T::try_from(whole).ok(),
            _ => None,
        };
        if whole.is_none() {
            self.refuse(key, "is not a whole number that fits");
        }
        whole.unwrap_or_default()
    }

    /// Yes or no.
    pub fn flag(&mut self, key: &str) -> bool {
        match self.node(key) {
            Node::Flag(flag) => flag,
            _ => {
                self.refuse(key, "is neither true nor false");
                false
            }
        }
    }

    /// A tree of its own.
    pub fn tree<T>(&mut self, key: &str, read: impl FnOnce(&mut Parts<'_>) -> T) -> T {
        let node = self.node(key);
        within(&[self.path, key, "."].concat(), node, self.problem, read)
    }

    /// A list of trees.
    pub fn trees<T>(&mut self, key: &str, mut read: impl FnMut(&mut Parts<'_>) -> T) -> Vec<T> {
        let mut all = Vec::new();
        for (at, item) in self.list(key).into_iter().enumerate() {
            // Nothing that follows a problem is ever seen, and blanks take more than what is read.
            if self.problem.is_some() {
                break;
            }
            let path = [self.path, key, ".", &at.to_string(), "."].concat();
            all.push(within(&path, item, self.problem, &mut read));
        }
        all
    }

    /// A list of two texts each.
    pub fn pairs(&mut self, key: &str) -> Vec<(String, String)> {
        let mut all = Vec::new();
        for item in self.list(key) {
            match item {
                Node::List(pair) => match <[Node; 2]>::try_from(pair) {
                    Ok([Node::Text(one), Node::Text(other)]) => all.push((one, other)),
                    _ => self.refuse(key, "is not a list of two texts each"),
                },
                _ => self.refuse(key, "is not a list of two texts each"),
            }
        }
        all
    }

    /// The names of all parts that are left.
    pub fn names(&self) -> Vec<String> {
        self.parts.iter().map(|(name, _)| name.clone()).collect()
    }

    fn list(&mut self, key: &str) -> Vec<Node> {
        match self.node(key) {
            Node::List(items) => items,
            _ => {
                self.refuse(key, "is not a list");
                Vec::new()
            }
        }
    }

    fn refuse(&mut self, key: &str, what: &str) {
        if self.problem.is_none() {
            *self.problem = Some([self.path, key, " ", what].concat());
        }
    }
}

/// Reads one tree, and refuses what is left of it.
fn within<T>(
    path: &str,
    node: Node,
    problem: &mut Option<String>,
    read: impl FnOnce(&mut Parts<'_>) -> T,
) -> T {
    let mut parts = open(path, node, problem);
    let value = read(&mut parts);
    if let Some((left, _)) = parts.parts.pop() {
        parts.refuse(&left, "is not known here");
    }
    value
}

fn open<'a>(path: &'a str, node: Node, problem: &'a mut Option<String>) -> Parts<'a> {
    let mut parts = Parts { path, parts: Vec::new(), problem };
    match node {
        Node::Tree(named) => parts.parts = named,
        _ => parts.refuse("", "does not have named parts"),
    }
    parts
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A made-up shape with a part of every kind.
    fn read(json: &str) -> Result<(Vec<i8>, usize), String> {
        let node = serde_json::from_str(json).unwrap();
        Parts::read(node, |parts| {
            let count = parts.pairs("pairs").len() + parts.text("text").len();
            if parts.has("word") {
                parts.word("word", |word| (word == "known").then_some(()));
            }
            let flagged = parts.tree("inner", |inner| inner.flag("flag"));
            (parts.trees("items", |item| item.whole("n")), count + usize::from(flagged))
        })
    }

    const WHOLE: &str = r#"{"inner":{"flag":true},"items":[{"n":-7},{"n":127}],"word":"known","text":"ab","pairs":[["a","b"]]}"#;

    #[test]
    fn every_part_is_taken_whatever_their_order() {
        assert_eq!(read(WHOLE), Ok((vec![-7, 127], 4)));
        assert_eq!(read(&WHOLE.replace(r#""word":"known","#, "")), Ok((vec![-7, 127], 4)));
    }

    #[test]
    fn what_does_not_fit_is_named() {
        #[rustfmt::skip]
        let cases = [
            (r#""text":"ab","#,  "",                  "text is missing"),
            (r#""text":"ab""#,   r#""text":2"#,       "text is not text"),
            (r#""known""#,       r#""Known""#,        "word is a word that is not known"),
            ("127",              "128",               "items.1.n is not a whole number that fits"),
            ("127",              r#""127""#,          "items.1.n is not a whole number that fits"),
            ("true",             "1",                 "inner.flag is neither true nor false"),
            ("true",             r#"true,"more":1"#,  "inner.more is not known here"),
            (r#"{"n":-7}"#,      "7",                 "items.0. does not have named parts"),
            (r#"["a","b"]"#,     r#"["a","b","c"]"#,  "pairs is not a list of two texts each"),
            (r#"["a","b"]"#,     r#"["a",1]"#,        "pairs is not a list of two texts each"),
            (r#"["a","b"]"#,     "1",                 "pairs is not a list of two texts each"),
            (r#"[["a","b"]]"#,   "{}",                "pairs is not a list"),
            (r#"{"inner""#,      r#"{"zz":1,"inner""#, "zz is not known here"),
        ];
        for (part, other, want) in cases {
            let json = WHOLE.replacen(part, other, 1);
            assert_ne!(json, WHOLE, "{want}");
            assert_eq!(read(&json), Err(want.to_owned()), "{json}");
        }
        assert_eq!(read("[]"), Err(" does not have named parts".to_owned()));
    }
}
