//! `cargo xtask probe`: fetches a published site as the worker would, and says what its host makes
//! of it. A host that adds to files, answers with the page for what isn't there, or sends the wrong
//! headers breaks updates in silence: the old version just goes on for ever.

mod answer;
mod fetch;
mod judge;

use std::path::PathBuf;

use anyhow::{Context, Result, bail, ensure};
use lexopt::{Arg, ValueExt};

use crate::{precache, workspace};
use answer::Answer;

/// A name that no site has, and that must be answered with 404.
const MISSING: &str = "app-0000000000000000.js";

pub(crate) fn command(mut args: lexopt::Parser) -> Result<()> {
    let (mut place, mut dist, mut names) = (None, None, false);
    while let Some(arg) = args.next()? {
        match arg {
            Arg::Long("dist") => dist = Some(PathBuf::from(args.value()?)),
            Arg::Long("names") => names = true,
            Arg::Value(value) if place.is_none() => place = Some(value.string()?),
            _ => return Err(arg.unexpected().into()),
        }
    }
    if names {
        print_names(dist.unwrap_or_else(|| workspace::root().join("dist")))
    } else {
        let place = place.context("give the address of a site, or a folder that holds one")?;
        let found = judge::look(&Source::at(&place)?, dist.as_deref())?;
        for line in &found.notes {
            println!("note: {line}");
        }
        for line in &found.faults {
            println!("NO:   {line}");
        }
        ensure!(found.faults.is_empty(), "{} faults, listed above", found.faults.len());
        println!("The host sends {} files as they are.", found.whole);
        Ok(())
    }
}

fn print_names(dist: PathBuf) -> Result<()> {
    let worker = std::fs::read_to_string(dist.join(precache::WORKER))
        .with_context(|| format!("{} is not a built site", dist.display()))?;
    for (address, _) in precache::read(&worker)? {
        println!("{}", precache::file_name(&address));
    }
    println!("{}\n{MISSING}", precache::WORKER);
    Ok(())
}

/// Where a site is looked at.
enum Source {
    /// On its host: an address that ends with a slash.
    Host(hyper::Uri),
    /// In a folder: each file, and beside it the headers that came with it, in `<name>.headers`.
    Folder(PathBuf),
}

impl Source {
    /// # Errors
    /// For https, with what to do instead; for what is neither an address nor a folder.
    fn at(place: &str) -> Result<Self> {
        if place.starts_with("https:") {
            bail!(
                "this program speaks no TLS. Fetch the files with one that does, and look at the \
                 folder:\n  mkdir published\n  \
                 for name in $(cargo xtask probe --names); do curl --silent --show-error \
                 --dump-header \"published/$name.headers\" --output \"published/$name\" \
                 \"{}${{name#index.html}}\"; done\n  cargo xtask probe published",
                with_slash(place)
            );
        }
        if place.starts_with("http:") {
            return Ok(Self::Host(with_slash(place).parse()?));
        }
        let folder = PathBuf::from(place);
        ensure!(folder.is_dir(), "{place} is neither an http address nor a folder");
        Ok(Self::Folder(folder))
    }

    /// Asks for a file by its address below the site, for its bytes as they are or packed.
    fn get(&self, address: &str, encoding: &str) -> Result<Answer> {
        match self {
            Self::Host(site) => fetch::get(site, address, encoding),
            Self::Folder(folder) => Answer::in_folder(folder, precache::file_name(address)),
        }
    }
}

/// The address of the site's folder.
fn with_slash(place: &str) -> String {
    let place = place.strip_suffix(precache::PAGE).unwrap_or(place);
    if place.ends_with('/') { place.to_owned() } else { format!("{place}/") }
}

#[cfg(test)]
mod tests;
