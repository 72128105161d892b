//! Published limits and tables, each beside its source, and the one door through which a value
//! is compared with a limit.
//!
//! A clause is a function of the edition that gives `None` where its text could not be verified.

/// A source in its fields' order, where a file has many: name, key, clause, what it says, what was
/// seen, how sure.
macro_rules! source {
    ($(#[$doc:meta])* $name:ident, $key:literal, $clause:literal $(es $es:literal)?, $says:ident, $seen:ident, $sure:ident) => {
        $(#[$doc])*
        #[doc = concat!("Published as: ", $clause, ".")]
        pub static $name: $crate::sheet::Source = $crate::sheet::Source {
            key: $key,
            clause: $crate::words::Phrase { en: $clause, es: concat!($($es)?) },
            says: &$says,
            seen: &$seen,
            confidence: $crate::sheet::Confidence::$sure,
        };
    };
}

pub mod air;
pub mod compare;
pub mod contracts;
pub mod electrical;
pub mod finish;
pub mod framing;
pub mod hazards;
pub mod packs;
pub mod planning;
pub mod residential;
pub mod solids;
pub mod square;
