//! A bad host, for trying what the page and `cargo xtask probe` make of one. Rules stand in a file,
//! a rule a line, and are read anew for each answer:
//!
//! ```text
//! app.wasm answer 500                     with this status, and no file
//! app.wasm cut                            half of it, then the connection breaks
//! index.html rewrite                      with something added at the end
//! sw.js set Cache-Control: max-age=86400  another header, or a changed one
//! * drop Content-Security-Policy          a header less
//! * catch-all                             the page in the place of a file that isn't there
//! ```
//! A name is the file's as it was before its hash; `*` is any file.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result, bail};

use crate::asset;

/// What is done to an answer.
#[derive(Debug, PartialEq, Eq)]
pub(super) enum Rule {
    Answer(u16),
    Cut,
    Rewrite,
    Set(String, String),
    Drop(String),
    CatchAll,
}

/// The rules for one file.
///
/// # Errors
/// If the file of rules can't be read, or a line of it is no rule.
pub(super) fn rules(file: &Path, name: &str) -> Result<Vec<Rule>> {
    let text =
        fs::read_to_string(file).with_context(|| format!("can't read {}", file.display()))?;
    let plain = asset::plain_name(name);
    let mut rules = Vec::new();
    for line in text.lines().filter(|line| !line.is_empty()) {
        let (whom, rule) = line.split_once(' ').unwrap_or((line, ""));
        let rule = read(rule).with_context(|| format!("no rule: {line}"))?;
        if whom == "*" || whom == plain {
            rules.push(rule);
        }
    }
    Ok(rules)
}

fn read(rule: &str) -> Result<Rule> {
    Ok(match rule.split_once(' ') {
        None if rule == "cut" => Rule::Cut,
        None if rule == "rewrite" => Rule::Rewrite,
        None if rule == "catch-all" => Rule::CatchAll,
        Some(("answer", status)) => Rule::Answer(status.parse()?),
        Some(("set", header)) => {
            let (name, value) = header.split_once(": ").context("a header is `Name: value`")?;
            Rule::Set(name.to_owned(), value.to_owned())
        }
        Some(("drop", name)) => Rule::Drop(name.to_owned()),
        _ => bail!("see xtask/src/serve/tamper.rs for the rules"),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_is_a_rule_for_one_file_or_all() {
        let file = std::env::temp_dir().join(format!("xtask-{}-rules", std::process::id()));
        fs::write(&file, "app.wasm cut\n\n* set A: b: c\nsw.js answer 404\n").unwrap();
        let set = || Rule::Set("A".to_owned(), "b: c".to_owned());
        assert_eq!(rules(&file, "app-0123456789abcdef.wasm").unwrap(), [Rule::Cut, set()]);
        assert_eq!(rules(&file, "sw.js").unwrap(), [set(), Rule::Answer(404)]);
        fs::write(&file, "app.wasm vanish\n").unwrap();
        assert!(rules(&file, "sw.js").is_err(), "a line that is no rule fails for every file");
        fs::remove_file(&file).unwrap();
    }
}
