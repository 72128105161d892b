//! Wood framing: sizes, what may be cut out of a member, and what a roof asks of its ties.

pub mod gable_ties;
pub mod lumber;
