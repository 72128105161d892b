//! Turns what the compiler made into a WebAssembly file and the script that starts it.

use std::path::Path;

use anyhow::{Context, Result, ensure};
use wasm_bindgen_cli_support::Bindgen;

use crate::order;

pub(crate) struct Bound {
    pub(crate) wasm: Vec<u8>,
    pub(crate) glue: String,
}

/// # Errors
/// If the file can't be read; if a crate wants to ship scripts of its own, for the site is one
/// script and one WebAssembly file, so that an update is whole or not at all; or if a crate
/// exports a class: nothing on the page uses one, and no linker can leave out what it calls.
pub(crate) fn bind(compiled: &Path) -> Result<Bound> {
    let mut output = Bindgen::new()
        .input_path(compiled)
        .web(true)?
        .typescript(false)
        .remove_name_section(true)
        .remove_producers_section(true)
        // The name is hashed later, so a name written into the script would be wrong.
        .omit_default_module_path(true)
        .generate_output()
        .with_context(|| format!("wasm-bindgen can't read {}", compiled.display()))?;
    // Every crate that uses wasm-bindgen is listed, most of them with no script.
    let inline = output.snippets().iter().filter(|(_, scripts)| !scripts.is_empty());
    let stray: Vec<_> = inline.map(|(name, _)| name).chain(output.local_modules().keys()).collect();
    ensure!(stray.is_empty(), "these crates bring scripts of their own: {stray:?}");
    let glue = output.js().to_owned();
    let classes = exported_classes(&glue);
    ensure!(classes.is_empty(), "these exported classes weigh on the page, unused: {classes:?}");
    Ok(Bound { glue, wasm: order::order(&output.wasm_mut().emit_wasm())? })
}

fn exported_classes(glue: &str) -> Vec<&str> {
    let lines = glue.lines().filter_map(|line| line.strip_prefix("export class "));
    lines.filter_map(|line| line.split_whitespace().next()).collect()
}

#[cfg(test)]
mod tests {
    use super::exported_classes;

    #[test]
    fn an_exported_class_is_found_by_name() {
        let glue = "export class Reel {\n}\nclass Inner {\n}\nexport function answer() {}\n";
        assert_eq!(exported_classes(glue), ["Reel"]);
    }
}
