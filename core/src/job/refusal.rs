//! Why an edit is refused, and how long a text may be.

use super::words as w;
use crate::say;
use crate::words::{Phrase, Text};

/// Characters in a job's name.
pub const LONGEST_NAME: usize = 80;
/// Characters in a job's place: an address fits on one line.
pub const LONGEST_PLACE: usize = 120;
/// Characters in a mark's title.
pub const LONGEST_TITLE: usize = 80;
/// Characters in the name of a room or spot.
pub const LONGEST_SPOT: usize = 80;
/// Characters in a mark's note: a thumb's paragraph, so that marks stay small.
pub const LONGEST_NOTE: usize = 1_000;
/// Characters in what is said under a name.
pub const LONGEST_JOT: usize = 1_000;
/// Bytes in such a name.
pub(super) const LONGEST_KEY: usize = 120;

/// An edit that was not made. The job is as it was.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// A text is too long.
    TooLong {
        /// Which one, as a person calls it.
        what: &'static Phrase,
        /// How many characters it has.
        given: usize,
        /// How many it may have.
        most: usize,
    },
    /// The job has a mark of this id.
    Taken(String),
    /// The job has no mark of this id.
    NoSuchMark(String),
    /// A mark would take a value from itself, along these titles.
    Circle(Vec<String>),
    /// A mark can't move to the job that it is in.
    SameJob,
    /// An id is one to 24 digits and small letters, because it stands in addresses.
    BadId(String),
}

impl Refusal {
    /// As a person reads it.
    pub fn says(&self) -> Text {
        match self {
            Self::TooLong { what, given, most } => {
                say!(w::TOO_LONG, *what, count(*given), count(*most))
            }
            Self::Taken(_) => say!(w::TAKEN),
            Self::NoSuchMark(_) => say!(w::NO_SUCH_MARK),
            Self::Circle(way) => say!(w::CIRCLE, way.join(" ← ")),
            Self::SameJob => say!(w::SAME_JOB),
            Self::BadId(_) => say!(w::NO_ID),
        }
    }
}

fn count(of: usize) -> i64 {
    i64::try_from(of).unwrap_or(i64::MAX)
}

/// Refuses a text of more than `most` characters.
pub(super) fn fits(what: &'static Phrase, text: &str, most: usize) -> Result<(), Refusal> {
    let given = text.chars().count();
    if given <= most { Ok(()) } else { Err(Refusal::TooLong { what, given, most }) }
}

/// Whether an id can stand in an address.
pub(super) fn usable(id: &str) -> bool {
    let plain = |byte: u8| byte.is_ascii_digit() || byte.is_ascii_lowercase();
    (1..=24).contains(&id.len()) && id.bytes().all(plain)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Voice;

    #[test]
    fn a_text_fits_up_to_its_last_character() {
        assert_eq!(fits(&w::A_SPOT, &"é".repeat(80), LONGEST_SPOT), Ok(()));
        let refused = fits(&w::A_SPOT, &"é".repeat(81), LONGEST_SPOT).unwrap_err();
        assert_eq!(
            Voice::default().say(&refused.says()),
            "The room or spot has 81 characters; at most 80 can be kept. Shorten it."
        );
    }

    #[test]
    fn an_id_is_digits_and_small_letters() {
        for (id, want) in [("t0x", true), ("", false), ("T0X", false), ("a/b", false), ("é", false)]
        {
            assert_eq!(usable(id), want, "{id}");
        }
        assert!(usable(&"a".repeat(24)));
        assert!(!usable(&"a".repeat(25)));
    }
}
