//! Reads public/headers.txt: the one place that says which headers the site is served with.

use anyhow::{Context, Result, bail, ensure};

use crate::asset;

pub(crate) const FILE: &str = "headers.txt";

/// The headers of the site, in the file's three groups.
#[derive(Debug, Default)]
pub(crate) struct Headers {
    every: Vec<(String, String)>,
    fixed: Vec<(String, String)>,
    hashed: Vec<(String, String)>,
}

impl Headers {
    /// # Errors
    /// If a line is not `Name: value` in plain ASCII, stands before the first group, or a group is unknown.
    pub(crate) fn read(text: &str) -> Result<Self> {
        let mut headers = Self::default();
        let mut group: Option<&mut Vec<(String, String)>> = None;
        for line in text.lines().map(str::trim).filter(|l| !l.is_empty() && !l.starts_with('#')) {
            let (name, value) = line.split_once(": ").with_context(|| {
                format!("{FILE}: \"{line}\" is not a `Name: value` line or a # comment")
            })?;
            ensure!(line.is_ascii(), "{FILE}: \"{line}\" is not plain ASCII");
            if name == "Applies-To" {
                group = Some(match value {
                    "every answer" => &mut headers.every,
                    "fixed names" => &mut headers.fixed,
                    "hashed names" => &mut headers.hashed,
                    _ => bail!("{FILE}: no group is called \"{value}\""),
                });
            } else {
                let group =
                    group.as_deref_mut().context("headers.txt: a header before its group")?;
                group.push((name.to_owned(), value.to_owned()));
            }
        }
        ensure!(
            !headers.every.is_empty() && !headers.fixed.is_empty() && !headers.hashed.is_empty(),
            "{FILE}: each of the three groups needs a header"
        );
        Ok(headers)
    }

    /// Headers for one file, by its name in the site's folder.
    pub(crate) fn for_file(&self, name: &str) -> impl Iterator<Item = (&str, &str)> {
        let group = if asset::is_hashed(name) { &self.hashed } else { &self.fixed };
        self.every.iter().chain(group).map(|(name, value)| (&**name, &**value))
    }

    /// Headers that go with every answer, whatever it is.
    pub(crate) fn for_every_answer(&self) -> impl Iterator<Item = (&str, &str)> {
        self.every.iter().map(|(name, value)| (&**name, &**value))
    }

    /// The content policy as a page may state it of itself, for hosts that can't set headers:
    /// browsers refuse `frame-ancestors` there.
    ///
    /// # Errors
    /// If no policy is set for every answer.
    pub(crate) fn page_policy(&self) -> Result<String> {
        let (_, policy) = self
            .every
            .iter()
            .find(|(name, _)| name == "Content-Security-Policy")
            .context("headers.txt sets no Content-Security-Policy")?;
        let kept: Vec<&str> = policy
            .split(';')
            .map(str::trim)
            .filter(|part| !part.starts_with("frame-ancestors") && !part.is_empty())
            .collect();
        Ok(kept.join("; "))
    }
}

#[cfg(test)]
mod tests {
    use super::Headers;

    fn ours() -> Headers {
        Headers::read(include_str!("../../public/headers.txt")).unwrap()
    }

    fn cache_control(name: &str) -> String {
        let ours = ours();
        ours.for_file(name).find(|(n, _)| *n == "Cache-Control").unwrap().1.to_owned()
    }

    #[test]
    fn only_a_hashed_name_is_kept_for_ever() {
        for name in ["index.html", "sw.js", "manifest.webmanifest", "headers.txt"] {
            assert_eq!(cache_control(name), "no-cache", "{name}");
        }
        assert!(cache_control("app-0123456789abcdef.wasm").contains("immutable"));
    }

    #[test]
    fn the_page_states_the_policy_but_for_the_part_browsers_refuse_there() {
        let policy = ours().page_policy().unwrap();
        assert!(policy.starts_with("default-src 'none'; "), "{policy}");
        assert!(policy.contains("'wasm-unsafe-eval'"), "{policy}");
        assert!(!policy.contains("frame-ancestors") && !policy.contains("unsafe-inline"));
    }

    #[test]
    fn a_line_that_is_no_header_is_refused() {
        for text in ["Cache-Control", "Cache-Control: no-cache", "Applies-To: some names\nA: b"] {
            assert!(Headers::read(text).is_err(), "{text}");
        }
    }
}
