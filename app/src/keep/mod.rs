//! Keeping a number, from anywhere, by one tap: nothing is asked before it is saved.

mod bar;
mod share;

pub(crate) use bar::bar;
pub(crate) use share::{Shared, copy, send, then};
