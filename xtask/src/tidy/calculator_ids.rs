//! Checks that the page names no calculator: a new one must touch no file of app.

use std::collections::BTreeSet;

use proc_macro2::TokenTree;

use super::source::{Sources, is_punct, is_word, string};

pub(super) fn check(core: &Sources, app: &Sources) -> Vec<String> {
    let ids = ids(core);
    if ids.is_empty() {
        return vec!["no calculator's id was found in core/src/calculators".to_owned()];
    }
    let mut found = Vec::new();
    for source in &app.0 {
        for token in source.flat() {
            let Some(text) = string(&token) else { continue };
            // An id may also stand in an address.
            let id = text.split(['/', '#', '?', '&', '=']).find(|part| ids.contains(*part));
            if let Some(id) = id {
                let line = token.span().start().line;
                found.push(format!(
                    "{}:{line}: {id} is a calculator's id; ask the catalog, or put it in core",
                    source.file
                ));
            }
        }
    }
    found
}

/// What stands after `ID: &'static str =`, or after `id:`, in the calculators.
fn ids(core: &Sources) -> BTreeSet<String> {
    let mut ids = BTreeSet::new();
    for source in core.0.iter().filter(|s| s.module.first().is_some_and(|m| m == "calculators")) {
        let tokens = source.flat();
        for window in tokens.windows(3) {
            if is_word(&window[0], "id") && is_punct(&window[1], ':') {
                ids.extend(string(&window[2]));
            }
        }
        for (at, _) in tokens.iter().enumerate().filter(|(_, token)| is_word(token, "ID")) {
            let value = |token: &&TokenTree| !is_punct(token, '=');
            let mut value = tokens[at..].iter().take(9).skip_while(value).skip(1);
            ids.extend(value.next().and_then(string));
        }
    }
    ids
}

#[cfg(test)]
mod tests {
    use super::super::source::Source;
    use super::*;

    fn crate_of(name: &str, text: &str) -> Sources {
        Sources(vec![Source::parse(name, name, text).unwrap()])
    }

    #[test]
    fn an_id_in_the_page_is_named() {
        let text = "impl Calculator for Duct { const ID: &'static str = \"duct-drop\"; }";
        let core = crate_of("calculators/duct/mod.rs", text);
        for text in ["f(\"duct-drop\")", "go!(\"#/duct-drop?w=3\")"] {
            let found = check(&core, &crate_of("route.rs", text));
            assert!(found[0].starts_with("route.rs:1: duct-drop"), "{found:?}");
        }
        let clean = crate_of("route.rs", "// \"duct-drop\"\nf(\"duct\", \"my-duct-drop\")");
        assert!(check(&core, &clean).is_empty());
    }

    #[test]
    fn a_check_that_finds_no_id_at_all_fails() {
        let core = crate_of("calculators/mod.rs", "trait Calculator { const ID: &'static str; }");
        assert_eq!(check(&core, &crate_of("route.rs", "")).len(), 1);
    }
}
