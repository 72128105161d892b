//! CRC-32 with the reflected polynomial 0xEDB88320, as in gzip and PNG.
//!
//! Own code because of its size: a table of 16 entries is 64 bytes in the page's file, where the
//! usual crate brings 16 KB of tables. The tests compare it with that crate.

/// What four bits do to the register.
const TABLE: [u32; 16] = {
    let mut table = [0; 16];
    let mut entry = 0;
    while entry < 16 {
        let mut register = entry as u32;
        let mut bit = 0;
        while bit < 4 {
            register = if register & 1 == 1 { register >> 1 ^ 0xEDB8_8320 } else { register >> 1 };
            bit += 1;
        }
        table[entry] = register;
        entry += 1;
    }
    table
};

/// The CRC-32 of several pieces as if they were one.
///
/// # Source
/// ISO/IEC 15948 (PNG), annex D; RFC 1952 (gzip), section 8.
pub(super) fn crc32(pieces: &[&[u8]]) -> u32 {
    let mut register = u32::MAX;
    for &byte in pieces.iter().copied().flatten() {
        register ^= u32::from(byte);
        for _ in 0..2 {
            register = register >> 4 ^ TABLE[(register & 15) as usize];
        }
    }
    !register
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// Source: the check value of CRC-32/ISO-HDLC in the CRC catalogue of G. Cook, "123456789".
    #[test]
    fn the_check_value_is_the_published_one() {
        assert_eq!(crc32(&[b"1234", b"", b"56789"]), 0xCBF4_3926);
        assert_eq!(crc32(&[]), 0);
    }

    proptest! {
        /// Against the `crc32fast` crate.
        #[test]
        fn it_is_the_crc_of_the_usual_library(one: Vec<u8>, other: Vec<u8>) {
            let whole = [one.as_slice(), other.as_slice()].concat();
            prop_assert_eq!(crc32(&[&one, &other]), crc32fast::hash(&whole));
        }
    }
}
