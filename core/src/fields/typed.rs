//! A length that hides nothing else where it can't be read.

use super::form::Field;
use super::reader::Reader;
use super::row::Row;
use crate::measure::Length;
use crate::wire::Node;
use crate::words::Text;

/// A length that may be left empty, and that is kept as it was typed where it can't be read. Reading
/// it is never a fault: its calculator tells it in what it leaves out, and answers as one who doesn't
/// know the length, which is another thing than that nobody gave one.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum Typed {
    /// Nothing was given.
    #[default]
    Empty,
    /// A length within the row's bounds.
    Read(Length),
    /// Neither.
    Unread {
        /// As it was typed.
        given: String,
        /// What is wrong with it.
        says: Text,
    },
}

impl From<Option<Length>> for Typed {
    fn from(length: Option<Length>) -> Self {
        length.map_or(Self::Empty, Self::Read)
    }
}

impl Field for Typed {
    fn take(&mut self, from: Option<&Node>, row: &'static Row, reader: &mut Reader<'_>) -> bool {
        let given = from.and_then(Node::leaf).unwrap_or_default();
        *self = match reader.length(row, &given) {
            _ if given.trim().is_empty() => Self::Empty,
            Ok(length) => Self::Read(length),
            Err(says) => Self::Unread { given, says },
        };
        true
    }
    fn write(&self) -> Node {
        match self {
            Self::Empty => Node::text(""),
            Self::Read(length) => Node::Text(length.exact()),
            Self::Unread { given, .. } => Node::text(given),
        }
    }
}
