//! The program of a site: compiled and bound, or taken from a site that is there already.

use std::ffi::OsStr;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Stdio;
use std::time::SystemTime;

use anyhow::{Context, Result};

use crate::bindgen::{self, Bound};
use crate::{asset, machine, workspace};

/// # Errors
/// If the compiler fails, or what it made can't be bound.
pub(crate) fn compiled() -> Result<Bound> {
    workspace::ensure_wasm_target()?;
    bindgen::bind(&compile()?)
}

/// Compiles the page, and gives the path of what the compiler made.
fn compile() -> Result<PathBuf> {
    workspace::run(
        workspace::cargo()
            .args(["build", "--quiet", "--package", "ledgerboard-app", "--profile", "site"])
            .args(["--target", workspace::WASM_TARGET])
            .env("CARGO_ENCODED_RUSTFLAGS", machine::compiler_flags())
            .stdout(Stdio::null()),
    )?;
    let folder = workspace::target_dir()?.join(workspace::WASM_TARGET).join("site");
    // A program keeps the hyphen of its package's name, a library doesn't. The newer counts.
    ["ledgerboard-app.wasm", "ledgerboard_app.wasm"]
        .into_iter()
        .map(|name| folder.join(name))
        .filter(|path| path.is_file())
        .max_by_key(|path| {
            path.metadata().and_then(|m| m.modified()).unwrap_or(SystemTime::UNIX_EPOCH)
        })
        .with_context(|| format!("no WebAssembly file in {}", folder.display()))
}

/// The program of a built site.
///
/// # Errors
/// If the folder holds none.
pub(crate) fn of_site(dist: &Path) -> Result<Bound> {
    let names = workspace::file_names(dist)?;
    let read = |plain: &str| {
        let name = names.iter().find(|name| asset::plain_name(name) == plain);
        let name = name.with_context(|| format!("{} holds no {plain}", dist.display()))?;
        Ok::<_, anyhow::Error>(fs::read(dist.join(name))?)
    };
    Ok(Bound { wasm: read("app.wasm")?, glue: String::from_utf8(read("app.js")?)? })
}

/// The same program as other bytes, as the next version's is: with a section of its own at the
/// end, that no engine runs, holding the stamp. As it is where there is none.
///
/// Source: the WebAssembly core specification, 5.5.3: a custom section is a zero, the size of what
/// follows, a name with its own size before it, and any bytes.
pub(crate) fn stamped(mut wasm: Vec<u8>, stamp: &OsStr) -> Vec<u8> {
    const NAME: &[u8] = b"stamp";
    let stamp = stamp.as_encoded_bytes();
    if !stamp.is_empty() {
        let mut section = Vec::new();
        section.extend(leb128(NAME.len()));
        section.extend(NAME);
        section.extend(stamp);
        wasm.push(0);
        wasm.extend(leb128(section.len()));
        wasm.extend(section);
    }
    wasm
}

/// An unsigned number as WebAssembly writes it: seven bits a byte, the lowest first.
fn leb128(mut number: usize) -> Vec<u8> {
    let mut bytes = Vec::new();
    loop {
        let low = (number % 128) as u8;
        number /= 128;
        if number == 0 {
            bytes.push(low);
            return bytes;
        }
        bytes.push(low | 128);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: the WebAssembly core specification, 5.2.2, and the well-known 624485 = E5 8E 26.
    #[test]
    fn sizes_are_written_seven_bits_a_byte() {
        assert_eq!(leb128(0), [0]);
        assert_eq!(leb128(127), [127]);
        assert_eq!(leb128(128), [128, 1]);
        assert_eq!(leb128(624_485), [0xE5, 0x8E, 0x26]);
    }

    #[test]
    fn a_stamp_is_a_section_at_the_end_and_no_stamp_is_nothing() {
        let empty = b"\0asm\x01\0\0\0".to_vec();
        assert_eq!(stamped(empty.clone(), OsStr::new("")), empty);
        let with = stamped(empty.clone(), OsStr::new("two"));
        assert_eq!(with, [&empty[..], b"\0\x09\x05stamptwo"].concat());
    }
}
