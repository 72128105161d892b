//! Checks that core depends on nothing that belongs to the browser.

use anyhow::Result;
use toml::{Table, Value};

/// Crates of the browser, by how their names begin.
const WEB: [&str; 5] = ["leptos", "web-sys", "js-sys", "wasm-bindgen", "gloo"];

/// # Errors
/// If the manifest isn't TOML.
pub(super) fn check(manifest: &str) -> Result<Vec<String>> {
    let manifest: Table = manifest.parse()?;
    let mut found = Vec::new();
    look(&manifest, &mut found);
    Ok(found)
}

/// Looks through every table of dependencies, at whatever depth: those of a target lie deeper.
fn look(table: &Table, found: &mut Vec<String>) {
    for (key, value) in table {
        let Value::Table(inner) = value else { continue };
        if !key.ends_with("dependencies") {
            look(inner, found);
            continue;
        }
        for (name, dependency) in inner {
            // A dependency may be renamed; its package never lies.
            let package = dependency.get("package").and_then(Value::as_str).unwrap_or(name);
            if WEB.iter().any(|web| package.starts_with(web)) {
                found.push(format!(
                    "core/Cargo.toml: {package} belongs to the browser; what needs it goes in app"
                ));
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::check;

    #[test]
    fn a_web_crate_is_found_wherever_it_hides() {
        for text in [
            "[dependencies]\nweb-sys = \"0.3\"",
            "[dependencies]\nplain = { package = \"gloo-storage\", version = \"0.4\" }",
            "[dev-dependencies]\nleptos.workspace = true",
            "[target.'cfg(unix)'.dependencies]\njs-sys = \"0.3\"",
        ] {
            assert_eq!(check(text).unwrap().len(), 1, "{text}");
        }
        assert!(
            check("[dependencies]\nserde = \"1\"\n[lints]\nworkspace = true").unwrap().is_empty()
        );
    }
}
