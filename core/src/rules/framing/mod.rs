//! Wood framing: sizes, what may be cut out of a member, and what a roof asks of its ties.

pub mod ceiling_joists;
pub mod dead_weights;
pub mod gable_ties;
pub mod lumber;
