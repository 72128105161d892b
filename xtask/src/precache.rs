//! The list of files that the worker keeps: written into the worker, and read back from it.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use anyhow::{Context, Result, bail, ensure};

use crate::{asset, headers, workspace};

pub(crate) const WORKER: &str = "sw.js";
pub(crate) const PAGE: &str = "index.html";
/// How the worker asks for the page. Hosts may answer `index.html` with a redirect, which no
/// worker may keep; the folder itself they all answer.
const FOLDER: &str = "./";

/// One kept file: its address, relative to the worker, and its integrity.
pub(crate) type Entry = (String, String);

pub(crate) fn entry(name: &str, content: &[u8]) -> Entry {
    let address = if name == PAGE { FOLDER } else { name };
    (address.to_owned(), asset::integrity(content))
}

/// The list in a built worker.
///
/// # Errors
/// If the worker has no such line, or it isn't a list of pairs.
pub(crate) fn read(worker: &str) -> Result<Vec<Entry>> {
    let line = worker.lines().find_map(|line| line.strip_prefix("const FILES = "));
    let list = line.context("the worker has no line `const FILES = …`")?;
    Ok(serde_json::from_str(list.trim_end_matches(';'))?)
}

/// The name in the site's folder of a kept file.
pub(crate) fn file_name(address: &str) -> &str {
    if address == FOLDER { PAGE } else { address }
}

/// Checks that a site's folder and its worker's list are the same, both ways and byte for byte.
///
/// # Errors
/// If a file is kept that isn't there, is there and isn't kept, or differs from its integrity.
pub(crate) fn check(dist: &Path) -> Result<()> {
    let list = read(&fs::read_to_string(dist.join(WORKER))?)?;
    let mut kept = BTreeSet::new();
    for (address, integrity) in &list {
        let name = file_name(address);
        ensure!(kept.insert(name), "the worker would keep {name} twice");
        let content = fs::read(dist.join(name))
            .with_context(|| format!("the worker would keep {name}, which isn't in the site"))?;
        ensure!(*integrity == asset::integrity(&content), "{name} differs from its integrity");
    }
    for name in workspace::file_names(dist)? {
        let plain = name.strip_suffix(".br").unwrap_or(&name);
        match plain {
            WORKER | headers::FILE => {}
            _ if kept.contains(plain) => {}
            _ => bail!("{name} is in the site, but the worker doesn't keep it"),
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A site of one page, one style and a worker, in a folder of its own.
    fn site(test: &str) -> std::path::PathBuf {
        let folder = std::env::temp_dir().join(format!("xtask-{}-{test}", std::process::id()));
        fs::create_dir_all(&folder).unwrap();
        fs::write(folder.join(PAGE), "page").unwrap();
        fs::write(folder.join("style.css"), "style").unwrap();
        let list = [entry(PAGE, b"page"), entry("style.css", b"style")];
        let list = serde_json::to_string(&list).unwrap();
        fs::write(folder.join(WORKER), format!("// worker\nconst FILES = {list};\n")).unwrap();
        folder
    }

    fn fault(folder: &Path) -> String {
        let message = check(folder).unwrap_err().to_string();
        fs::remove_dir_all(folder).unwrap();
        message
    }

    #[test]
    fn a_whole_site_passes() {
        let folder = site("whole");
        check(&folder).unwrap();
        fs::remove_dir_all(folder).unwrap();
    }

    #[test]
    fn a_file_that_is_not_kept_is_named() {
        let folder = site("stray");
        fs::write(folder.join("stray.png"), "x").unwrap();
        assert!(fault(&folder).contains("stray.png"));
    }

    #[test]
    fn a_kept_file_that_is_missing_or_changed_is_named() {
        let folder = site("missing");
        fs::remove_file(folder.join("style.css")).unwrap();
        assert!(fault(&folder).contains("style.css"));
        let folder = site("changed");
        fs::write(folder.join("style.css"), "other").unwrap();
        assert!(fault(&folder).contains("style.css"));
    }
}
