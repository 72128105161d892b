//! Keeps the folders of the building machine out of what is shipped: whoever has the page should
//! not learn them, and two machines should make the same bytes.

use std::collections::BTreeSet;
use std::ffi::{OsStr, OsString};
use std::path::{Path, PathBuf};

use anyhow::{Result, bail};

use crate::workspace;

/// Between two flags of `CARGO_ENCODED_RUSTFLAGS`, so that a folder's name may have spaces.
const UNIT: &str = "\u{1f}";

/// The folders of this machine, and what the compiler is to call them. Of two that fit, it takes
/// the later one.
fn folders() -> Vec<(PathBuf, &'static str)> {
    let home = std::env::home_dir();
    let cargo = std::env::var_os("CARGO_HOME").map(PathBuf::from);
    let cargo = cargo.or_else(|| home.as_ref().map(|home| home.join(".cargo")));
    let named = [(home, "home"), (cargo, "cargo"), (Some(workspace::root()), "ledgerboard")];
    named
        .into_iter()
        .filter_map(|(folder, name)| Some((folder?, name)))
        .filter(is_telling)
        .collect()
}

/// Neither the root of all folders nor a relative one: those stand in any text.
fn is_telling((folder, _): &(PathBuf, &str)) -> bool {
    folder.is_absolute() && folder.parent().is_some()
}

/// The value of `CARGO_ENCODED_RUSTFLAGS` for the page. It stands in for flags that the machine
/// may have set for all it builds: the page doesn't depend on them.
pub(crate) fn compiler_flags() -> OsString {
    encoded(&folders())
}

fn encoded(folders: &[(PathBuf, &str)]) -> OsString {
    let flag = |(folder, name): &(PathBuf, &str)| {
        let mut flag = OsString::from("--remap-path-prefix=");
        flag.push(folder);
        flag.push("=");
        flag.push(name);
        flag
    };
    folders.iter().map(flag).collect::<Vec<_>>().join(OsStr::new(UNIT))
}

/// # Errors
/// If a file that is to be shipped names a folder of this machine.
pub(crate) fn check(name: &str, content: &[u8]) -> Result<()> {
    let folders: BTreeSet<PathBuf> = folders().into_iter().map(|(folder, _)| folder).collect();
    for folder in folders {
        if names(content, &folder) {
            bail!("{name} names {}, a folder of this machine", folder.display());
        }
    }
    Ok(())
}

fn names(content: &[u8], folder: &Path) -> bool {
    let folder = folder.as_os_str().as_encoded_bytes();
    content.windows(folder.len().max(1)).any(|window| window == folder)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_folder_with_a_blank_is_one_flag() {
        let folders = [("/home/a b".into(), "home"), ("/job".into(), "ledgerboard")];
        let want = "--remap-path-prefix=/home/a b=home\u{1f}--remap-path-prefix=/job=ledgerboard";
        assert_eq!(encoded(&folders), want);
    }

    #[test]
    fn the_root_of_all_folders_is_left_alone() {
        for (folder, want) in [("/", false), ("", false), ("home", false), ("/home", true)] {
            assert_eq!(is_telling(&(folder.into(), "")), want, "{folder}");
        }
    }

    #[test]
    fn a_file_that_names_the_workspace_is_refused() {
        let root = workspace::root();
        let text = ["at ", root.to_str().unwrap(), "/app/src/main.rs"].concat();
        let message = check("app.wasm", text.as_bytes()).unwrap_err().to_string();
        assert!(message.contains("app.wasm names"), "{message}");
        assert!(check("app.wasm", b"at ledgerboard/app/src/main.rs").is_ok());
        assert!(check("app.wasm", b"").is_ok());
    }
}
