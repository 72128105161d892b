//! What the tests share.

pub mod any_bytes;
pub mod from_rows;
pub mod open_hold;
pub mod placed;
pub mod rooms;
