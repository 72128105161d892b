//! Which edition of a code a job is under.
//!
//! The adopted edition with its local amendments governs, not the newest; only the building
//! department knows which that is.

use crate::wire::{Node, Parts};
use crate::words;
use crate::words::Phrase;

words! {
    /// An edition of the electrical code.
    E2017 = "NEC 2017", es "NEC 2017";
    /// An edition of the electrical code.
    E2020 = "NEC 2020", es "NEC 2020";
    /// An edition of the electrical code.
    E2023 = "NEC 2023", es "NEC 2023";
    /// Offered, and labelled: its text could not be checked.
    E2026 = "NEC 2026, not verified here", es "NEC 2026, sin verificar aquí";
}

/// An edition of the National Electrical Code (NFPA 70).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Electrical {
    /// 2017.
    E2017,
    /// 2020.
    E2020,
    /// 2023.
    E2023,
    /// 2026: offered, but its rules could not be verified. Nothing is called within under it, and
    /// over only what is over in every verified edition.
    E2026,
}

impl Electrical {
    /// All of them, oldest first.
    pub const ALL: [Self; 4] = [Self::E2017, Self::E2020, Self::E2023, Self::E2026];
    /// Those whose rules were verified: the ones compared where a job has no edition.
    pub const VERIFIED: [Self; 3] = [Self::E2017, Self::E2020, Self::E2023];
    /// The newest of them: its text stands in, as a question, where an edition's own could not be
    /// verified.
    pub const NEWEST_VERIFIED: Self = Self::E2023;

    /// Whether its rules were verified.
    pub fn is_verified(self) -> bool {
        Self::VERIFIED.contains(&self)
    }

    /// What a clause says under this edition, or under the newest verified one.
    pub fn or_newest<T>(self, clause: impl Fn(Self) -> Option<T>) -> Option<T> {
        clause(self).or_else(|| clause(Self::NEWEST_VERIFIED))
    }

    /// As it is written in links and records.
    pub fn key(self) -> &'static str {
        match self {
            Self::E2017 => "2017",
            Self::E2020 => "2020",
            Self::E2023 => "2023",
            Self::E2026 => "2026",
        }
    }

    /// Reads [`Electrical::key`].
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|edition| edition.key() == key)
    }

    /// As a person reads it.
    pub fn name(self) -> &'static Phrase {
        match self {
            Self::E2017 => &E2017,
            Self::E2020 => &E2020,
            Self::E2023 => &E2023,
            Self::E2026 => &E2026,
        }
    }
}

/// The editions that a job is worked under. `None` is "not set": the strictest of the verified
/// ones is shown, and the sheet asks only where they disagree.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Basis {
    /// The electrical code.
    pub electrical: Option<Electrical>,
}

impl Basis {
    /// As it is written in records: only what is set.
    pub fn write(self) -> Node {
        let mut node = Node::EMPTY;
        if let Some(edition) = self.electrical {
            node.put("electrical", Node::text(edition.key()));
        }
        node
    }

    /// Reads [`Basis::write`].
    pub fn read(parts: &mut Parts<'_>) -> Self {
        let set = parts.has("electrical");
        let edition = |parts: &mut Parts<'_>| parts.word("electrical", Electrical::from_key);
        Self { electrical: if set { edition(parts) } else { None } }
    }
}
