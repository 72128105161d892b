//! Turns what the compiler made into a WebAssembly file and the script that starts it.

use std::path::Path;

use anyhow::{Context, Result, ensure};
use wasm_bindgen_cli_support::Bindgen;

pub(crate) struct Bound {
    pub(crate) wasm: Vec<u8>,
    pub(crate) glue: String,
}

/// # Errors
/// If the file can't be read, or a crate wants to ship scripts of its own: the site is one
/// script and one WebAssembly file, so that an update is whole or not at all.
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
    Ok(Bound { glue: output.js().to_owned(), wasm: output.wasm_mut().emit_wasm() })
}
