//! Whether work on an old surface may be planned on, as its hold has it.

use super::check::{HELD, OPEN};
use crate::words::{Phrase, Text};

/// How a question stands with the holds. It says what is so; it opens nothing.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum Standing {
    /// It disturbs no old surface.
    #[default]
    NotNeeded,
    /// It is held, for these reasons, one at least.
    Held(Vec<Text>),
    /// A hold has been opened for it, and this says which.
    Opened(Text),
}

impl Standing {
    /// The word for what is held.
    pub fn held() -> &'static Phrase {
        &HELD
    }

    /// The word for a hold that isn't shut.
    pub fn open() -> &'static Phrase {
        &OPEN
    }

    /// Whether it is held.
    pub fn is_held(&self) -> bool {
        matches!(self, Self::Held(_))
    }
}
