//! Words that were typed with one slip of the thumb.

/// The shortest word that is looked for with a slip in it: of a shorter one too much is one letter
/// away.
const LONG_ENOUGH: usize = 5;

/// Whether `typed` is a word with one slip in it: a letter wrong, missing or too many, or two that
/// changed places. Then it is within that slip of `word` or of what `word` begins with, since a
/// person types on. A short word and a figure are never a slip: 12345 is not meant by 12346.
pub(super) fn is_slip_of(typed: &str, word: &str) -> bool {
    let is_figure = typed.bytes().any(|byte| byte.is_ascii_digit());
    !is_figure && typed.chars().count() >= LONG_ENOUGH && begins_within_one(word, typed)
}

/// Whether something that `word` begins with comes to `typed` by one slip at most.
///
/// The slip, if there is only one, can be taken to stand where the two first differ: what follows
/// has to agree.
fn begins_within_one(word: &str, typed: &str) -> bool {
    let (mut typed, mut word) = (typed.chars(), word.chars());
    loop {
        let (left, there) = (typed.as_str(), word.as_str());
        let Some(one) = typed.next() else { return true };
        let other = word.next();
        if other == Some(one) {
            continue;
        }
        let is_extra = there.starts_with(typed.as_str());
        let is_missing = word.as_str().starts_with(left);
        let is_wrong = word.as_str().starts_with(typed.as_str());
        let is_swapped = typed.next() == other
            && word.next() == Some(one)
            && word.as_str().starts_with(typed.as_str());
        return is_extra || other.is_some() && (is_missing || is_wrong || is_swapped);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use strsim::osa_distance;

    #[test]
    fn one_slip_and_no_more() {
        for typed in ["kitchen", "kitchwn", "kitchn", "kittchen", "kicthen", "iktchen", "kicthe"] {
            assert!(is_slip_of(typed, "kitchen"), "{typed}");
        }
        for typed in ["kit", "kich", "kticehn", "chicken", "kitchen12"] {
            assert!(!is_slip_of(typed, "kitchen"), "{typed}");
        }
        assert!(!is_slip_of("12346", "12345"));
        assert!(is_slip_of("bañio", "baño") && is_slip_of("tehco", "techo"));
    }

    proptest! {
        /// Against the optimal string alignment distance of a library, over all beginnings.
        #[test]
        fn it_is_one_edit_of_some_beginning(typed in "[abñ]{0,7}", word in "[abñ]{0,8}") {
            let ends = word.char_indices().map(|(at, _)| at).chain([word.len()]);
            let within = ends.map(|end| osa_distance(&typed, word.get(..end).unwrap()));
            let want = within.min().unwrap() <= 1;
            prop_assert_eq!(begins_within_one(&word, &typed), want);
            prop_assert_eq!(is_slip_of(&typed, &word), want && typed.chars().count() >= 5);
        }

        /// The same where the one was made of the other.
        #[test]
        fn a_word_with_one_slip_is_found(
            word in "[a-zñ]{6,10}", at in 0_usize..6, new in "[a-z]", how in 0..4,
        ) {
            let mut typed: Vec<char> = word.chars().collect();
            match how {
                0 => typed[at] = new.chars().next().unwrap(),
                1 => typed.insert(at, new.chars().next().unwrap()),
                2 => drop(typed.remove(at)),
                _ => typed.swap(at, (at + 1) % 6),
            }
            let typed: String = typed.into_iter().collect();
            let one = at < 5 || how < 3;
            prop_assert!(!one || is_slip_of(&typed, &word), "{typed}");
        }
    }
}
