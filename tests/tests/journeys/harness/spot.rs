//! How a journey points at something on the page.

use serde::Serialize;

/// A selector, a field's path, or the words that a person reads.
#[derive(Clone, Debug, Serialize)]
pub(crate) struct Spot {
    how: &'static str,
    what: String,
}

/// The control that shows or is named by exactly these words; failing a control, the innermost
/// element that shows them.
pub(crate) fn saying(words: &str) -> Spot {
    Spot { how: "saying", what: words.to_owned() }
}

/// The input of a field, by its path in the question: `cables.0.count`.
pub(crate) fn field(path: &str) -> Spot {
    Spot { how: "field", what: path.to_owned() }
}

impl From<&str> for Spot {
    fn from(selector: &str) -> Self {
        Spot { how: "css", what: selector.to_owned() }
    }
}

impl std::fmt::Display for Spot {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(out, "{} `{}`", self.how, self.what)
    }
}
