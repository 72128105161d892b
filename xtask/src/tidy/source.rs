//! Reads Rust sources as the checks need them: tokens, so that comments never count; paths, made
//! whole from the root of their crate; and strings.

use std::fs;
use std::path::{Path, PathBuf};

use anyhow::{Context, Result, anyhow};
use proc_macro2::{Delimiter, TokenStream, TokenTree};

/// All sources of one crate.
pub(super) struct Sources(pub(super) Vec<Source>);

/// One file: its place, the path of its module, and its tokens.
pub(super) struct Source {
    pub(super) file: String,
    pub(super) module: Vec<String>,
    pub(super) tokens: TokenStream,
}

/// A path to something in the same crate, from its root; `*` for all that is there.
#[derive(Debug, PartialEq)]
pub(super) struct Import {
    pub(super) line: usize,
    pub(super) path: Vec<String>,
}

impl Sources {
    /// Reads all sources below a folder of the workspace.
    ///
    /// # Errors
    /// If a file can't be read, or isn't Rust.
    pub(super) fn read(folder: &str) -> Result<Self> {
        let root = crate::workspace::root();
        let mut files = Vec::new();
        list(&root.join(folder), &mut files)?;
        let mut sources = Vec::new();
        for path in files {
            let text = fs::read_to_string(&path)?;
            let file = path.strip_prefix(&root)?.display().to_string();
            let inside = file.strip_prefix(folder).unwrap_or(&file).trim_start_matches('/');
            sources.push(Source::parse(&file, inside, &text)?);
        }
        Ok(Self(sources))
    }
}

impl Source {
    /// # Errors
    /// If the text isn't Rust.
    pub(super) fn parse(file: &str, inside: &str, text: &str) -> Result<Self> {
        let tokens = text.parse::<TokenStream>().map_err(|e| anyhow!("{file}: {e}"))?;
        let mut module: Vec<String> =
            inside.trim_end_matches(".rs").split('/').map(str::to_owned).collect();
        if module.last().is_some_and(|last| matches!(&**last, "mod" | "lib" | "main")) {
            module.pop();
        }
        Ok(Self { file: file.to_owned(), module, tokens })
    }

    /// Every path in the file that starts at `crate`, `super` or `self`, macros included.
    pub(super) fn imports(&self) -> Vec<Import> {
        let mut imports = Vec::new();
        walk(&self.tokens, &self.module, &mut imports);
        imports
    }

    /// Every token, those inside brackets too, in order.
    pub(super) fn flat(&self) -> Vec<TokenTree> {
        let mut all = Vec::new();
        flatten(&self.tokens, &mut all);
        all
    }
}

fn list(folder: &Path, files: &mut Vec<PathBuf>) -> Result<()> {
    let entries = folder.read_dir().with_context(|| format!("can't list {}", folder.display()))?;
    let mut paths = entries.map(|e| Ok(e?.path())).collect::<Result<Vec<_>>>()?;
    paths.sort();
    for path in paths {
        if path.is_dir() {
            list(&path, files)?;
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            files.push(path);
        }
    }
    Ok(())
}

fn flatten(tokens: &TokenStream, all: &mut Vec<TokenTree>) {
    for token in tokens.clone() {
        if let TokenTree::Group(group) = &token {
            flatten(&group.stream(), all);
        } else {
            all.push(token);
        }
    }
}

fn walk(tokens: &TokenStream, module: &[String], imports: &mut Vec<Import>) {
    let tokens: Vec<TokenTree> = tokens.clone().into_iter().collect();
    for (at, token) in tokens.iter().enumerate() {
        match token {
            TokenTree::Group(group) => match at.checked_sub(2).map(|i| &tokens[i..at]) {
                // `mod name { … }` is a module one deeper.
                Some([key, TokenTree::Ident(name)]) if is_word(key, "mod") => {
                    let inner: Vec<String> =
                        module.iter().cloned().chain([name.to_string()]).collect();
                    walk(&group.stream(), &inner, imports);
                }
                // The braces of a `use` are read with the path before them.
                Some([a, b]) if is_colon(a) && is_colon(b) => {}
                _ => walk(&group.stream(), module, imports),
            },
            TokenTree::Ident(word)
                if (word == "crate" || word == "super" || word == "self")
                    && is_double_colon(&tokens[at + 1..])
                    && !(at > 0 && is_colon(&tokens[at - 1])) =>
            {
                follow(&tokens[at..], module, imports);
            }
            _ => {}
        }
    }
}

/// Follows one path from its first word to where it ends, or into its braces.
fn follow(tokens: &[TokenTree], start: &[String], imports: &mut Vec<Import>) {
    let mut path = start.to_vec();
    let mut rest = tokens;
    let Some(line) = rest.first().map(|token| token.span().start().line) else { return };
    loop {
        match rest.first() {
            Some(TokenTree::Ident(word)) if word == "crate" => path.clear(),
            Some(TokenTree::Ident(word)) if word == "super" => drop(path.pop()),
            Some(TokenTree::Ident(word)) if word == "self" => {}
            Some(TokenTree::Ident(word)) => path.push(word.to_string()),
            Some(TokenTree::Punct(star)) if star.as_char() == '*' => path.push("*".to_owned()),
            Some(TokenTree::Group(group)) if group.delimiter() == Delimiter::Brace => {
                let inner: Vec<TokenTree> = group.stream().into_iter().collect();
                for one in inner.split(|token| is_punct(token, ',')).filter(|one| !one.is_empty()) {
                    follow(one, &path, imports);
                }
                return;
            }
            _ => {}
        }
        if !is_double_colon(rest.get(1..).unwrap_or_default()) {
            break;
        }
        rest = &rest[3..];
    }
    imports.push(Import { line, path });
}

fn is_double_colon(tokens: &[TokenTree]) -> bool {
    matches!(tokens, [a, b, ..] if is_colon(a) && is_colon(b))
}

fn is_colon(token: &TokenTree) -> bool {
    is_punct(token, ':')
}

pub(super) fn is_punct(token: &TokenTree, mark: char) -> bool {
    matches!(token, TokenTree::Punct(punct) if punct.as_char() == mark)
}

pub(super) fn is_word(token: &TokenTree, word: &str) -> bool {
    matches!(token, TokenTree::Ident(ident) if ident == word)
}

/// The text of a plain string; none for any other token.
pub(super) fn string(token: &TokenTree) -> Option<String> {
    let TokenTree::Literal(literal) = token else { return None };
    let text = literal.to_string();
    Some(text.strip_prefix('"')?.strip_suffix('"')?.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn paths(inside: &str, text: &str) -> Vec<String> {
        let source = Source::parse(inside, inside, text).unwrap();
        source.imports().iter().map(|import| import.path.join("::")).collect()
    }

    #[test]
    fn a_path_is_read_from_the_root_of_the_crate() {
        assert_eq!(paths("a/b.rs", "use crate::x::Y;"), ["x::Y"]);
        assert_eq!(paths("a/b.rs", "use super::c::Y;"), ["a::c::Y"]);
        assert_eq!(paths("a/mod.rs", "use super::c::Y;"), ["c::Y"]);
        assert_eq!(paths("a/b.rs", "fn f() -> crate::x::Y { g(self::h()) }"), ["x::Y", "a::b::h"]);
    }

    #[test]
    fn braces_and_inner_modules_are_followed() {
        let text = "use crate::{x::{self, Y}, super_word, z::*};";
        assert_eq!(paths("a.rs", text), ["x", "x::Y", "super_word", "z::*"]);
        let text = "mod tests { use super::*; use super::super::c; }";
        assert_eq!(paths("a/b.rs", text), ["a::b::*", "a::c"]);
    }

    #[test]
    fn macros_count_and_comments_do_not() {
        assert_eq!(paths("a.rs", "say!(crate::x::Y, $crate::w::Z);"), ["x::Y", "w::Z"]);
        assert!(paths("a.rs", "// use crate::x;\n/// See [`crate::x`].\nfn f() {}").is_empty());
        assert!(paths("a.rs", "pub(crate) fn f() -> std::io::Result<()> {}").is_empty());
    }
}
