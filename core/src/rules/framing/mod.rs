//! Wood framing: sizes, what may be cut out of a member, and what a roof asks of its ties.

pub mod bearing;
pub mod ceiling_joists;
pub mod dead_weights;
pub mod design_loads;
pub mod engineer;
pub mod gable_ties;
pub mod lumber;
