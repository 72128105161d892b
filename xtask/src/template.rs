//! Fills `{{name}}` in a text from a list of values, and refuses whatever doesn't fit.

use std::collections::{BTreeMap, BTreeSet};

use anyhow::{Context, Result};

/// The values that templates may ask for, and which of them have been asked for.
#[derive(Default)]
pub(crate) struct Values {
    values: BTreeMap<String, String>,
    used: BTreeSet<String>,
}

impl Values {
    pub(crate) fn set(&mut self, name: &str, value: impl Into<String>) {
        self.values.insert(name.to_owned(), value.into());
    }

    /// Values that no template has asked for: a file that nothing would ever load.
    pub(crate) fn unused(&self) -> Vec<&str> {
        self.values.keys().filter(|name| !self.used.contains(*name)).map(String::as_str).collect()
    }

    /// # Errors
    /// If the text has a placeholder that is not closed, or has no value.
    pub(crate) fn fill(&mut self, text: &str) -> Result<String> {
        let mut filled = String::with_capacity(text.len());
        let mut rest = text;
        while let Some((before, after)) = rest.split_once("{{") {
            let (name, after) = after.split_once("}}").context("a {{ without its }}")?;
            let value = self.values.get(name).with_context(|| {
                format!("nothing to put at {{{{{name}}}}}: it is no file of public/ and no value")
            })?;
            filled.push_str(before);
            filled.push_str(value);
            self.used.insert(name.to_owned());
            rest = after;
        }
        filled.push_str(rest);
        Ok(filled)
    }
}

#[cfg(test)]
mod tests {
    use super::Values;

    #[test]
    fn every_placeholder_is_filled() {
        let mut values = Values::default();
        values.set("glue", "app-1.js");
        values.set("icon", "icon-2.svg");
        let filled = values.fill("<a href={{glue}}>{{icon}}{{glue}}</a>").unwrap();
        assert_eq!(filled, "<a href=app-1.js>icon-2.svgapp-1.js</a>");
    }

    #[test]
    fn an_unknown_or_open_placeholder_is_refused() {
        let mut values = Values::default();
        values.set("glue", "app-1.js");
        assert!(values.fill("{{gleu}}").unwrap_err().to_string().contains("{{gleu}}"));
        assert!(values.fill("{{glue").is_err());
    }

    #[test]
    fn a_value_that_nobody_asks_for_is_reported() {
        let mut values = Values::default();
        values.set("glue", "app-1.js");
        values.set("stray.png", "stray-3.png");
        values.fill("{{glue}}").unwrap();
        assert_eq!(values.unused(), ["stray.png"]);
    }
}
