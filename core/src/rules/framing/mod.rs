//! Wood framing: sizes, what may be cut out of a member, and what a roof asks of its ties.

pub mod board_sheets;
pub mod door_head;
pub mod lumber;
pub mod one_piece;
pub mod overhead;
pub mod precut;
pub mod stud_height;
