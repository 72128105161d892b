//! Field rows: one row an input, from which come the form, the reader, its messages, the batch
//! door's description and the property tests' strategies.
//!
//! Rows know how to read and what to say; they know no calculator. The kinds of row are
//! [`Kind`]'s variants; a new one names two calculators that need it.

mod ahead;
mod describe;
mod evidence;
mod form;
mod named;
mod plain;
mod reader;
mod row;
mod sampled;
mod typed;
mod units;
mod whole;
mod words;

pub use ahead::ahead;
pub use describe::describe;
pub use evidence::{evidence_in, is_evidence, without_evidence};
pub use form::{Field, Form, write_all};
pub use named::{
    BETWEEN_NAMES, Rename, each_name, hanging, known_as, long_names, names, narrowed, toggled,
};
pub use reader::{Reader, heard, is_missing, missing, two_sums};
pub use row::{Goes, Item, Kind, Pick, Preset, Row, Span, When, row, row_at};
pub use sampled::{is_asked, of_sample, without_item};
pub use typed::Typed;
pub use units::{bare, plain, restate};
pub use whole::{Decided, decided, left_alone};

#[cfg(test)]
mod tests;
