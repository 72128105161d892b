//! Why a backup can't be read.

use super::super::words as w;
use super::MOST_BYTES;
use crate::say;
use crate::words::Text;

/// A file that was refused. Nothing has changed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum BackupProblem {
    /// There is nothing in it.
    Empty,
    /// Larger than any backup, by its bytes.
    TooLarge(u64),
    /// Something else than a backup from here.
    Foreign,
    /// It ends in the middle.
    CutShort,
    /// Nested deeper than anything of ours.
    TooDeep,
    /// Holds more small parts than anything of ours, or more jobs.
    TooFull,
    /// Not JSON, or JSON that no tree may hold; what is wrong, and where.
    Broken(String),
    /// Of a schema that came later.
    Newer,
    /// Not the shape that its schema has; what is wrong.
    Shape(String),
    /// A job is in it twice, by its name: nobody can say which one is meant.
    Twice(String),
}

impl BackupProblem {
    /// As a person reads it.
    pub fn says(&self) -> Text {
        let megabytes = |bytes: u64| i64::try_from(bytes.div_ceil(1_048_576)).unwrap_or(i64::MAX);
        match self {
            Self::Empty => say!(w::BACKUP_EMPTY),
            Self::TooLarge(bytes) => {
                let most = u64::try_from(MOST_BYTES).unwrap_or(u64::MAX);
                say!(w::BACKUP_TOO_LARGE, megabytes(*bytes), megabytes(most))
            }
            Self::Foreign => say!(w::BACKUP_FOREIGN),
            Self::CutShort => say!(w::BACKUP_CUT_SHORT),
            Self::TooDeep | Self::TooFull => say!(w::BACKUP_TOO_FULL),
            Self::Broken(details) | Self::Shape(details) => {
                say!(w::BACKUP_BROKEN, details.as_str())
            }
            Self::Newer => say!(w::BACKUP_NEWER),
            Self::Twice(name) => say!(w::BACKUP_TWICE, name.as_str()),
        }
    }
}
