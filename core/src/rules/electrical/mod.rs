//! Clauses of the electrical code for dwellings, as far as rough-in needs them.

pub mod box_depth;
pub mod box_fill;
pub mod box_setback;
pub mod cable_securing;
pub mod conductor_volume;
pub mod equipment_ground;
pub mod fan_boxes;
pub mod free_conductor;
pub mod metal_boxes;
pub mod splices;
