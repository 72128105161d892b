//! Wood framing: sizes, what may be cut out of a member, and what a roof asks of its ties.

pub mod bearing;
pub mod behind_board;
pub mod board_sheets;
pub mod ceiling_joists;
pub mod dead_weights;
pub mod design_loads;
pub mod door_head;
pub mod engineer;
pub mod fireblock;
pub mod gable_ties;
pub mod joists;
pub mod lumber;
pub mod off_mark;
pub mod one_piece;
pub mod overhead;
pub mod precut;
pub mod share;
pub mod shield_plates;
pub mod stud_height;
pub mod studs;
pub mod top_plates;
