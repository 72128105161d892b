//! Checks that wasm-bindgen and the library that reads its output are one version.

use anyhow::{Context, Result, bail, ensure};

const PAIR: [&str; 2] = ["wasm-bindgen", "wasm-bindgen-cli-support"];

/// # Errors
/// If Cargo.lock holds other than one version of each of the pair, or two that differ.
pub(crate) fn check(lock: &str) -> Result<()> {
    let lock: toml::Table = lock.parse().context("Cargo.lock can't be read")?;
    let packages = lock.get("package").and_then(toml::Value::as_array).context("no packages")?;
    let version = |name| -> Result<&str> {
        let mut found = packages
            .iter()
            .filter(|package| package.get("name").and_then(toml::Value::as_str) == Some(name))
            .filter_map(|package| package.get("version").and_then(toml::Value::as_str));
        let first = found.next().with_context(|| format!("Cargo.lock has no {name}"))?;
        ensure!(found.next().is_none(), "Cargo.lock has more than one version of {name}");
        Ok(first)
    };
    let [bindgen, support] = [version(PAIR[0])?, version(PAIR[1])?];
    if bindgen != support {
        bail!(
            "wasm-bindgen is {bindgen} and wasm-bindgen-cli-support is {support}, but they share a \
             private format and must be the same version. Set both to \"={bindgen}\" under \
             [workspace.dependencies] in Cargo.toml, then run: cargo update -p \
             wasm-bindgen-cli-support --precise {bindgen}"
        );
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::check;

    fn lock(rows: &[(&str, &str)]) -> String {
        rows.iter()
            .map(|(name, version)| {
                format!("[[package]]\nname = \"{name}\"\nversion = \"{version}\"\n")
            })
            .collect()
    }

    #[test]
    fn one_version_passes() {
        let text = lock(&[("wasm-bindgen", "0.2.1"), ("wasm-bindgen-cli-support", "0.2.1")]);
        assert!(check(&text).is_ok());
    }

    #[test]
    fn two_versions_fail_and_the_message_tells_the_fix() {
        let text = lock(&[("wasm-bindgen", "0.2.2"), ("wasm-bindgen-cli-support", "0.2.1")]);
        let message = check(&text).unwrap_err().to_string();
        assert!(message.contains("cargo update -p wasm-bindgen-cli-support --precise 0.2.2"));
    }

    #[test]
    fn a_missing_or_doubled_package_fails() {
        assert!(check(&lock(&[("wasm-bindgen", "0.2.1")])).is_err());
        let text = lock(&[
            ("wasm-bindgen", "0.2.1"),
            ("wasm-bindgen", "0.2.2"),
            ("wasm-bindgen-cli-support", "0.2.1"),
        ]);
        assert!(check(&text).is_err());
    }
}
