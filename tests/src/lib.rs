//! What the tests share.

pub mod from_rows;
pub mod rooms;
