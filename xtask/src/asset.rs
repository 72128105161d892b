//! Names that carry a hash of their content, so that a name never means two contents.

use base64::Engine;
use base64::prelude::BASE64_STANDARD;
use sha2::{Digest, Sha256};

/// Digits of the hash in a name: 64 bits, far more than a few dozen files need.
const DIGITS: usize = 16;

/// The first hexadecimal digits of the SHA-256 of some content.
pub(crate) fn short_hash(content: &[u8]) -> String {
    let mut hex: String =
        Sha256::digest(content).iter().map(|byte| format!("{byte:02x}")).collect();
    hex.truncate(DIGITS);
    hex
}

/// A value for `integrity`, as Subresource Integrity (W3C) writes it.
pub(crate) fn integrity(content: &[u8]) -> String {
    format!("sha256-{}", BASE64_STANDARD.encode(Sha256::digest(content)))
}

/// `icon.svg` becomes `icon-0123456789abcdef.svg`.
pub(crate) fn hashed_name(name: &str, content: &[u8]) -> String {
    let hash = short_hash(content);
    match name.rsplit_once('.') {
        Some((stem, extension)) => format!("{stem}-{hash}.{extension}"),
        None => format!("{name}-{hash}"),
    }
}

/// Whether a name carries its hash, and may be kept by a browser for ever. The worker asks the
/// same question, by a pattern of its own.
pub(crate) fn is_hashed(name: &str) -> bool {
    let stem = name.split_once('.').map_or(name, |(stem, _)| stem);
    let Some((_, hash)) = stem.rsplit_once('-') else { return false };
    hash.len() == DIGITS && hash.bytes().all(|b| matches!(b, b'0'..=b'9' | b'a'..=b'f'))
}

/// The name as it was before [`hashed_name`]; a fixed name as it is.
pub(crate) fn plain_name(name: &str) -> String {
    match name.split_once('.') {
        Some((stem, rest)) if is_hashed(name) => {
            format!("{}.{rest}", &stem[..stem.len() - DIGITS - 1])
        }
        _ => name.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_follows_its_content() {
        let one = hashed_name("icon.svg", b"one");
        assert_eq!(one, hashed_name("icon.svg", b"one"));
        assert_ne!(one, hashed_name("icon.svg", b"two"));
        assert!(one.starts_with("icon-") && one.ends_with(".svg"), "{one}");
    }

    /// Source: FIPS 180-4, the worked example for SHA-256 of "abc".
    #[test]
    fn the_hash_is_sha_256() {
        assert_eq!(short_hash(b"abc"), "ba7816bf8f01cfea");
    }

    /// Source: FIPS 180-4 for the digest of "abc", written as Subresource Integrity (W3C, 2016),
    /// section 3.1, asks: the algorithm, a hyphen, and the digest in base64.
    #[test]
    fn integrity_is_base64_of_the_whole_digest() {
        assert_eq!(integrity(b"abc"), "sha256-ungWv48Bz+pBQUDeXa4iI7ADYaOWF3qctBD/YfIAFa0=");
    }

    #[test]
    fn hashed_names_are_told_from_fixed_ones() {
        assert!(is_hashed(&hashed_name("icon-192.png", b"x")));
        assert_eq!(plain_name(&hashed_name("icon-192.png", b"x")), "icon-192.png");
        assert_eq!(plain_name("sw.js"), "sw.js");
        assert!(is_hashed("app-0123456789abcdef.wasm.br"));
        for name in ["index.html", "sw.js", "icon-192.png", "app-0123456789ABCDEF.js", "-", ""] {
            assert!(!is_hashed(name), "{name}");
        }
    }
}
