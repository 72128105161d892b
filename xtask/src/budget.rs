//! `cargo xtask budget`: weighs the built site against budget.toml, and what a kept number takes in a
//! phone's store.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result, bail, ensure};
use lexopt::Arg;
use serde::Deserialize;

use crate::build::{self, Options};
use crate::{asset, precache, workspace};

pub(crate) fn command(mut args: lexopt::Parser) -> Result<()> {
    let (mut options, mut fresh) = (Options::default(), true);
    while let Some(arg) = args.next()? {
        match arg {
            Arg::Long("dist") => options.dist = Some(args.value()?.into()),
            Arg::Long("no-build") => fresh = false,
            _ => return Err(arg.unexpected().into()),
        }
    }
    if fresh {
        build::build(&options)?;
    }
    check(&options.dist())?;
    // Not in the whole check: a core of its own would be compiled for it.
    println!();
    let example = ["run", "--quiet", "--package", "ledgerboard-core", "--example", "job_sizes"];
    workspace::run(workspace::cargo().args(example))
}

/// Prints what each file and each row of the budget comes to.
///
/// # Errors
/// If any row is over its limit, or names no file.
pub(crate) fn check(dist: &Path) -> Result<()> {
    let text = fs::read_to_string(workspace::root().join("budget.toml"))?;
    let budget: Budget = toml::from_str(&text).context("budget.toml")?;
    let files = weigh(dist)?;

    println!("{:28} {:>9} {:>9} {:>9} {:>7}", "file", "raw", "brotli", "limit", "share");
    for file in &files {
        println!("{:28} {:>9} {:>9}", file.name, file.raw, file.brotli);
    }
    let mut over = Vec::new();
    for limit in &budget.limits {
        for line in limit.weigh(&files)? {
            println!("{line}");
            if line.is_over() {
                over.push(format!("{} ({})", line.name, line.kind));
            }
        }
    }
    if !over.is_empty() {
        bail!("over the limit in budget.toml: {}", over.join(", "));
    }
    Ok(())
}

/// One kept file and its weight, under the name it had before its hash.
struct Weight {
    name: String,
    raw: u64,
    brotli: u64,
}

fn weigh(dist: &Path) -> Result<Vec<Weight>> {
    let worker = fs::read_to_string(dist.join(precache::WORKER))
        .with_context(|| format!("{} is not a built site", dist.display()))?;
    let list = precache::read(&worker)?;
    let weight = |(address, _): &precache::Entry| -> Result<Weight> {
        let name = precache::file_name(address);
        let raw = fs::metadata(dist.join(name))?.len();
        // What isn't smaller packed has no packed twin, and travels as it is.
        let brotli = fs::metadata(dist.join(format!("{name}.br"))).map_or(raw, |twin| twin.len());
        Ok(Weight { name: asset::plain_name(name), raw, brotli })
    };
    list.iter().map(weight).collect()
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Budget {
    #[serde(rename = "limit")]
    limits: Vec<Limit>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Limit {
    name: String,
    files: Vec<String>,
    raw: Option<u64>,
    brotli: Option<u64>,
}

impl Limit {
    /// # Errors
    /// If the row names no file or sets no limit: it could never fail.
    fn weigh(&self, files: &[Weight]) -> Result<Vec<Line<'_>>> {
        let name = &self.name;
        let mut lines = Vec::new();
        let mut count = 0;
        let (mut raw, mut brotli) = (0, 0);
        for file in files {
            if self.files.iter().any(|pattern| matches(pattern, &file.name)) {
                (count, raw, brotli) = (count + 1, raw + file.raw, brotli + file.brotli);
            }
        }
        ensure!(count > 0, "budget.toml: \"{name}\" names no file of the site");
        for (kind, limit, weight) in [("raw", self.raw, raw), ("brotli", self.brotli, brotli)] {
            if let Some(limit) = limit {
                lines.push(Line { name, kind, raw, brotli, weight, limit });
            }
        }
        ensure!(!lines.is_empty(), "budget.toml: \"{name}\" sets no limit");
        Ok(lines)
    }
}

/// One limit, and what counts against it.
struct Line<'a> {
    name: &'a str,
    kind: &'static str,
    raw: u64,
    brotli: u64,
    weight: u64,
    limit: u64,
}

impl Line<'_> {
    /// Just at the limit is within it.
    fn is_over(&self) -> bool {
        self.weight > self.limit
    }
}

impl std::fmt::Display for Line<'_> {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let Self { name, kind, raw, brotli, weight, limit } = self;
        let label = format!("= {name}, {kind}");
        // Rounded up, so that a row at 100 % may be at its limit and never over it.
        let share = (weight * 100).div_ceil(*limit.max(&1));
        write!(f, "{label:28} {raw:>9} {brotli:>9} {limit:>9} {share:>5} %")?;
        if self.is_over() { write!(f, "  over by {}", weight - limit) } else { Ok(()) }
    }
}

/// Whether a name fits a pattern with at most one `*`.
fn matches(pattern: &str, name: &str) -> bool {
    match pattern.split_once('*') {
        None => pattern == name,
        Some((start, end)) => name
            .strip_prefix(start)
            .is_some_and(|rest| rest.len() >= end.len() && rest.ends_with(end)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn files() -> Vec<Weight> {
        [("app.wasm", 300, 100), ("app.js", 30, 10), ("icon.png", 7, 7)]
            .map(|(name, raw, brotli)| Weight { name: name.to_owned(), raw, brotli })
            .into()
    }

    fn limit(pattern: &str, raw: Option<u64>, brotli: Option<u64>) -> Limit {
        Limit { name: "row".to_owned(), files: vec![pattern.to_owned()], raw, brotli }
    }

    #[test]
    fn one_byte_over_is_over_and_at_the_limit_is_not() {
        for (most, is_over) in [(337, false), (336, true)] {
            let row = limit("*", Some(most), None);
            assert_eq!(row.weigh(&files()).unwrap()[0].is_over(), is_over, "{most}");
        }
        let row = limit("app.*", None, Some(109));
        assert!(row.weigh(&files()).unwrap()[0].is_over());
    }

    #[test]
    fn a_row_that_could_never_fail_is_refused() {
        assert!(limit("gone.js", Some(1), None).weigh(&files()).is_err());
        assert!(limit("*", None, None).weigh(&files()).is_err());
    }

    #[test]
    fn a_pattern_fits_whole_names() {
        assert!(matches("app.*", "app.js") && matches("*", "") && matches("a*a", "aba"));
        assert!(!matches("app", "app.js") && !matches("a*a", "a") && !matches("*.js", "x.wasm"));
    }
}
