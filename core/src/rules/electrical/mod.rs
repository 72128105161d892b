//! Clauses of the electrical code for dwellings, as far as rough-in needs them.

pub mod ampacity;
pub mod box_depth;
pub mod box_fill;
pub mod box_setback;
pub mod bundling;
pub mod cable_bend;
pub mod cable_length;
pub mod cable_securing;
pub mod cable_sizes;
pub mod conductor_volume;
pub mod enclosure;
pub mod equipment_ground;
pub mod fan_boxes;
pub mod free_conductor;
pub mod guard_strips;
pub mod low_voltage;
pub mod metal_boxes;
pub mod nail_protection;
pub mod rough_in;
pub mod splices;
pub mod voltage_drop;
