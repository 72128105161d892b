//! Where things are in this workspace, and how its tools are started.

use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use anyhow::{Context, Result, bail, ensure};

pub(crate) const WASM_TARGET: &str = "wasm32-unknown-unknown";

/// The folder that holds the workspace's Cargo.toml.
///
/// Cargo tells it to whatever it runs, each time: two copies of the project that share a target
/// folder share this program too, and what it was compiled in may be the other copy. Started
/// without cargo, the folder it was compiled in is all there is to go by.
pub(crate) fn root() -> PathBuf {
    let told = std::env::var_os("CARGO_MANIFEST_DIR").map(PathBuf::from);
    let told = told.and_then(|member| member.parent().map(Path::to_path_buf));
    let compiled = Path::new(env!("CARGO_MANIFEST_DIR"));
    told.filter(|root| root.join("xtask/Cargo.toml").is_file())
        .unwrap_or_else(|| compiled.parent().unwrap_or(compiled).to_path_buf())
}

/// Cargo's target folder, wherever the person or the machine has put it.
pub(crate) fn target_dir() -> Result<PathBuf> {
    let text = read(cargo().args(["metadata", "--no-deps", "--format-version", "1"]))?;
    let metadata: serde_json::Value = serde_json::from_str(&text)?;
    let folder = metadata["target_directory"].as_str().context("cargo metadata names no target")?;
    Ok(folder.into())
}

/// The cargo that started us, so that nested builds use the same toolchain.
pub(crate) fn cargo() -> Command {
    let mut command = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    command.current_dir(root());
    command
}

/// Runs a command whose output goes to the person, and fails if it does.
pub(crate) fn run(command: &mut Command) -> Result<()> {
    let status = command.status().with_context(|| format!("can't start {command:?}"))?;
    ensure!(status.success(), "{command:?} ended with {status}");
    Ok(())
}

/// Runs a command and gives what it printed.
pub(crate) fn read(command: &mut Command) -> Result<String> {
    let output = command
        .stderr(Stdio::inherit())
        .output()
        .with_context(|| format!("can't start {command:?}"))?;
    ensure!(output.status.success(), "{command:?} ended with {}", output.status);
    Ok(String::from_utf8(output.stdout)?)
}

/// Adds the WebAssembly target to the toolchain, if it isn't there.
pub(crate) fn ensure_wasm_target() -> Result<()> {
    let sysroot = read(Command::new("rustc").current_dir(root()).args(["--print", "sysroot"]))?;
    if Path::new(sysroot.trim()).join("lib/rustlib").join(WASM_TARGET).join("lib").is_dir() {
        return Ok(());
    }
    eprintln!("Adding the {WASM_TARGET} target to the toolchain.");
    // What rustup prints goes to stderr: the first line of `serve` on stdout is its address.
    let added = Command::new("rustup")
        .current_dir(root())
        .args(["target", "add", WASM_TARGET])
        .stdout(Stdio::null())
        .status();
    if !added.is_ok_and(|status| status.success()) {
        bail!("add the target by hand, then try again: rustup target add {WASM_TARGET}");
    }
    Ok(())
}

/// The names of all plain files in a folder, sorted. A folder inside it is an error.
pub(crate) fn file_names(folder: &Path) -> Result<Vec<String>> {
    let mut names = Vec::new();
    for entry in folder.read_dir().with_context(|| format!("can't list {}", folder.display()))? {
        let entry = entry?;
        ensure!(entry.file_type()?.is_file(), "{} is not a plain file", entry.path().display());
        let name = entry.file_name();
        names.push(name.to_str().context("a file name must be plain text")?.to_owned());
    }
    names.sort();
    Ok(names)
}
