//! Checks that published values stand under core/src/rules: each in one place, beside its source.
//! A list outside it is taken for published, unless its documentation calls it common practice.

use proc_macro2::{TokenStream, TokenTree};

use super::source::{Sources, is_punct, is_word};

/// The modules that work with published values and may hold none. Below them, `measure` holds
/// what units are by definition; above them, `job` works with no value of the trade.
const CHECKED: [&str; 4] = ["sheet", "fields", "calculators", "catalog"];

/// Numbers in a constant list from which on it is a table, and no mere choice of a few.
const TABLE: usize = 6;

pub(super) fn check(core: &Sources) -> Vec<String> {
    let mut found = Vec::new();
    for source in &core.0 {
        let checked = source.module.first().is_some_and(|first| CHECKED.contains(&&**first));
        // Published cases that only the tests know stand beside the tests.
        let tests = source.module.iter().any(|module| module == "tests");
        if checked && !tests {
            look(&source.tokens, &source.file, &mut found);
        }
    }
    found
}

fn look(tokens: &TokenStream, file: &str, found: &mut Vec<String>) {
    let tokens: Vec<TokenTree> = tokens.clone().into_iter().collect();
    // What stands since the last item: the documentation of the next one.
    let mut since = 0;
    for (at, token) in tokens.iter().enumerate() {
        match token {
            TokenTree::Group(_) if at > 0 && is_word(&tokens[at - 1], "tests") => {}
            TokenTree::Group(group) => look(&group.stream(), file, found),
            TokenTree::Punct(mark) if mark.as_char() == ';' => since = at + 1,
            TokenTree::Ident(word) if word == "const" || word == "static" => {
                let Some(name) = tokens.get(at + 1).filter(|_| is_item(&tokens[at..])) else {
                    continue;
                };
                let end = tokens[at..].iter().position(|t| is_punct(t, ';'));
                let item = &tokens[at..end.map_or(tokens.len(), |end| at + end)];
                let value = item.iter().skip_while(|token| !is_punct(token, '='));
                let numbers: usize = value.map(numbers).sum();
                let documented = |word| tokens[since..at].iter().any(|token| says(token, word));
                let sourced = documented("Source:");
                if sourced || (numbers >= TABLE && !documented("Common practice")) {
                    let line = token.span().start().line;
                    let what = if sourced { "names a source" } else { "is a table of numbers" };
                    found.push(format!("{file}:{line}: {name} {what}; it goes in core/src/rules"));
                }
            }
            _ => {}
        }
    }
}

/// Whether `const NAME :` or `static NAME :` starts here, and not a `const fn` or a `'static`.
fn is_item(tokens: &[TokenTree]) -> bool {
    matches!(tokens, [_, TokenTree::Ident(_), colon, ..] if is_punct(colon, ':'))
}

/// How many numbers a constant's value holds.
fn numbers(token: &TokenTree) -> usize {
    match token {
        TokenTree::Literal(literal) => {
            usize::from(literal.to_string().starts_with(|c: char| c.is_ascii_digit()))
        }
        TokenTree::Group(group) => group.stream().into_iter().map(|t| numbers(&t)).sum(),
        _ => 0,
    }
}

/// Whether a token is the bracket of a doc attribute that says something.
fn says(token: &TokenTree, something: &str) -> bool {
    let TokenTree::Group(group) = token else { return false };
    let mut inner = group.stream().into_iter();
    inner.next().is_some_and(|first| is_word(&first, "doc"))
        && inner.any(|token| {
            matches!(token, TokenTree::Literal(text) if text.to_string().contains(something))
        })
}

#[cfg(test)]
mod tests {
    use super::super::source::Source;
    use super::*;

    fn found(file: &str, text: &str) -> Vec<String> {
        check(&Sources(vec![Source::parse(file, file, text).unwrap()]))
    }

    #[test]
    fn a_table_or_a_sourced_value_is_named_outside_rules() {
        let table = "struct S;\nconst AREAS: [(u8, u16); 3] = [(14, 200), (12, 225), (10, 250)];";
        let sourced =
            "/// The most.\n///\n/// Source: a handbook, table 4.\npub const MOST: u8 = 3;";
        for text in [table, sourced] {
            assert_eq!(found("calculators/duct/mod.rs", text).len(), 1, "{text}");
            assert!(found("rules/duct.rs", text).is_empty(), "{text}");
        }
    }

    #[test]
    fn a_few_choices_and_other_items_are_left_alone() {
        for text in [
            "const SIDES: [u8; 2] = [1, 2];",
            "/// Source: a handbook.\nstruct S; const A: u8 = 1;",
            "/// Sold sizes. Common practice.\nconst SOLD: [u8; 6] = [8, 10, 12, 14, 16, 20];",
            "mod tests { const CASES: [u8; 6] = [1, 2, 3, 4, 5, 6]; }",
            "const fn f() -> u8 { g([1, 2, 3, 4, 5, 6, 7]) }",
            "fn f(words: &'static str) -> [u8; 7] { [1, 2, 3, 4, 5, 6, 7] }",
        ] {
            assert!(found("calculators/duct/mod.rs", text).is_empty(), "{text}");
        }
    }
}
