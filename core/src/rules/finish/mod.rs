//! Finishing board: compound, tape, drying, paint, and what board and pails weigh.

pub mod board_weights;
pub mod compound;
pub mod drying;
pub mod dump;
pub mod labor;
pub mod layout;
pub mod levels;
pub mod old_surface;
pub mod paint;
pub mod screws;
pub mod sheeting;
pub mod skim;
pub mod texture;
pub mod vapor;
